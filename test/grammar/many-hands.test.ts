/**
 * Wordings of many hands, found by writing drafts as different people write them: old leaflets with a stop behind every
 * abbreviation, translations with sizes by dashes, terse shorthand, colours named beside numbers. Common practice, no source.
 */
import { describe, expect, test } from 'vitest';
import { coloursIn } from '../../grammar/colours.ts';
import { withoutShorteningStops } from '../../grammar/full-stops.ts';
import { read } from './outline.ts';

const three = ['S', 'M', 'L'];
const four = ['S', 'M', 'L', 'XL'];

const families: Readonly<Record<string, readonly (readonly [text: string, expected: string, sizes: readonly string[]])[]>> = {
  'stops behind abbreviations': [
    [
      'Rep. these 2 rows until work measures 3 ins. from beg., ending with a 1st row.',
      'rep rows [these 2] until work 3 in from beg ending row 1',
      three,
    ],
    ['1st row: K. 4 (7, 10), * p. 2, k. 12; rep. from * to last 2 sts., p. 2.', 'row 1: k{4 (7, 10)} *[p{2} k{12}]→last 2 p{2}', three],
    [
      'Dec. 1 st. at each end of next and every alt. row until 84 (88, 92) sts. remain.',
      'dec 1 bothEnds {next; every k=2 until 84 (88, 92)}',
      three,
    ],
    [
      'Next row: Patt. 33 (34, 36), cast off next 18 (20, 20) sts., patt. to end.',
      'row next: patt→over 33 (34, 36) BO 18 (20, 20) patt→end',
      three,
    ],
    [
      'Dec. 1 st. at each end of every row until 41 (43, 45) sts. remain, then at each end of every alt. row until 23 (25, 25) sts. remain.',
      'dec 1 bothEnds {every k=1 until 41 (43, 45); every k=2 until 23 (25, 25)}',
      three,
    ],
    ['6th row: As 2nd.', 'row 6: as row rows 2', three],
  ],
  'sizes by dashes, slashes and turns': [
    ['Cast on 220 - 240 - 260 - 280 sts.', 'CO 220 (240, 260, 280) here', four],
    ['k27/31/35/37, w&t.', 'row: k{27 (31, 35, 37)} turn wrap', four],
    [
      'CO 10/12/14/16 sts onto each = 20/24/28/32 sts.',
      'CO 20 (24, 28, 32) here (10 (12, 14, 16) per needle) | =20 (24, 28, 32) total',
      four,
    ],
    ['Cast on (81) 89 (97) sts.', 'CO 81 (89, 97) here', three],
    ['Cast on 66 {70, 74, 82} sts.', 'CO 66 (70, 74, 82) here', four],
    ['CO 46 (50) [56] sts.', 'CO 46 (50, 56) here', three],
    ['Rows 1 - 4: knit.', 'row 1,2,3,4: k→end', four],
  ],
  'colours beside numbers': [
    ['Round 2: *k2 A, 1 B, 2 A; rep from * to end.', 'round 2: *[k{2} k{1} k{2}]→end', three],
    ['Round 2: *k2 B, k1 A, k2 B; rep from * around.', 'round 2: *[k{2} k{1} k{2}]→end', three],
    ['Round 2: * knit 2 pattern colour, 1 main colour, 2 pattern colour *, repeat from * to *.', 'round 2: *[k{2} k{1} k{2}]→end', three],
    ['Round 2: K2 in blue, *1 white, 3 blue; rep from * to last st, 1 white.', 'round 2: k{2} *[k{1} k{3}]→last 1 k{1}', three],
  ],
  'translated and terse': [
    ['On round 1 increase 2 sts evenly distributed = 54 sts.', 'round 1: evenly inc 2 =54 total', ['one']],
    [
      'On the next round cast off for armholes as follows: cast off 5 sts, knit 100 sts, cast off 10 sts.',
      'round next: BO 5 k{100} BO 10',
      ['one'],
    ],
    [
      'When the sleeve measures 7 cm increase 1 st on each side of the marker.',
      'work until sleeve 7 cm | inc 1 eachSideOfMarkers {}',
      ['one'],
    ],
    [
      'Rnd 2: N1: k1, m1r, k to last st, m1l, k1. N2: same as N1.',
      'round 2: needle 1:{k{1} M1R k→last 1 M1L k{1}} needle 2:{k{1} M1R k→last 1 M1L k{1}}',
      ['one'],
    ],
    ['Repeat Rows 2 through 5 another 6 times.', 'rep rows [numbers 2,3,4,5] 6× more', ['one']],
    ['Now work Rows 2 and 3 only 3 times.', 'work rows [numbers 2,3] 3×', ['one']],
    ['Back to working in the rnd over all 56 sts.', 'join resumeRound 56', ['one']],
    ['Cast off loosely with knit over knit and purl over purl.', 'BO all all:0', ['one']],
    ['r1: *k to 3 before m, k2tog, k1, sm, k1, ssk; rep from * once more, k to end.', 'round', ['one']],
    ['work r1–2 14 times in all.', 'work rows [numbers 1,2] 14× all', ['one']],
    ['rep both until 28 sts.', 'rep rows [last 2] until 28 sts', ['one']],
    ['Work 15 rounds of (k1, p1).', 'plain 15 rounds patt', ['one']],
  ],
  'told of the whole row': [
    ['Row 3: Purl across, slipping markers as you come to them.', 'row 3: p→end', ['one']],
    ['Repeat these 2 rounds until there are 13 stitches between the markers.', 'rep rows [these 2] until 13 sts markers', ['one']],
    ['Cont to dec 2 sts at the centre of every RS row in this way until 3 sts remain.', 'dec 2 centre {every RS until 3}', ['one']],
    ['Work as given for First square from 1st row.', 'as piece first square from row 1', ['one']],
    [
      'Slip the first 8 sts to one needle and the other 8 sts to a second needle and graft them together.',
      'arrange 1 needles 8 / 8 | join graft',
      ['one'],
    ],
  ],
};

for (const [family, table] of Object.entries(families)) {
  describe(family, () => {
    test.each(table)('%s', (text, expected, sizes) => {
      const outline = read(text, { sizes });
      if (expected === 'round') expect(outline).toContain('k→3 before marker kNtog{2} k{1} marker slip k{1} ssk');
      else expect(outline).toBe(expected);
    });
  });
}

describe('the text itself', () => {
  test('a stop that shortens becomes a blank, one that ends a sentence stays', () => {
    const text = 'Dec. 1 st. at each end. Work 3 sts. Rep. from * to end. K. 2, p. 2 tog., turn.';
    const bare = withoutShorteningStops(text);
    expect(bare).toHaveLength(text.length);
    expect(bare).toBe('Dec  1 st  at each end. Work 3 sts. Rep  from * to end. K  2, p  2 tog , turn.');
  });

  test('a text that shortens nothing is left as it is', () => {
    const text = 'Work 2 rows. Cast off 3 sts. Turn.';
    expect(withoutShorteningStops(text)).toBe(text);
  });

  test('one number with a colour may be of anything; a list is of stitches', () => {
    expect(coloursIn('Work 4 rows, 1 A.', null).counts.size).toBe(0);
    expect([...coloursIn('*2A, 1B, 2A; rep from *', null).counts.values()].map((each) => each.length)).toEqual([1, 1, 1]);
  });
});
