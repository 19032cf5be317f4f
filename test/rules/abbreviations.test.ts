import { describe, expect, it } from 'vitest';
import { findings, told } from './drafts.ts';

const list = 'k = knit; p = purl; rep = repeat; RS = right side; st(s) = stitch(es); WS = wrong side';
const draft = (entries: string, rows: string, notes = ''): string =>
  `# Kelp\n\n## Abbreviations\n\n${entries}\n\n${notes}\n\n## Square\n\nCast on 20 sts.\n\n${rows}\n`;

describe('an abbreviation that the list leaves out', () => {
  it.each([
    ['a decrease', 'Row 1 (RS): K1, ssk, k to end.', 'ssk', 13],
    ['a wrap, which is no stitch', 'Row 1 (RS): K12, w&t.', 'w&t', 13],
    ['the lift over of a slipped stitch', 'Row 1 (RS): K4, sl 1, k1, psso, k to end.', 'psso', 13],
    ['a fabric in two words', 'Row 1 (RS): Knit.\n\nWork 4 rows in st st.', 'st st', 15],
    ['a crossing', 'Row 1 (RS): P7, C6B, p7.', 'C6B', 13],
    ['one of the same kind with another number', 'Row 1 (RS): K3tog, k to end.', 'K3tog', 13],
  ])('%s is asked for where it is first used', (_, rows, term, line) => {
    const [first] = findings('unexplained-abbreviation', draft(`${list}; k2tog = knit 2 together; sl = slip`, rows));
    expect(first?.line).toBe(line);
    expect(first?.message).toContain(`"${term}"`);
    expect(first?.level).toBe('query');
  });

  it.each([
    ['in the list under another case', `${list}; SSK = slip, slip, knit`, 'Row 1: K1, ssk, k to end.', ''],
    ['written out', list, 'Row 1: Knit 1, knit 2 together, knit to end.', ''],
    ['in brackets behind its own words', list, 'Row 1: K12, w&t.', 'Short rows: wrap and turn (w&t) as follows.'],
    ['in a note', list, 'Row 1: K1, mb, k to end.', 'MB: (k1, p1, k1) into next st, turn, p3, turn, k3tog.'],
    ['by a directive', list, 'Row 1: K1, zig, k to end.', '::stitch[zig]{takes=1 makes=1}'],
    ['a number of plain stitches', list, 'Row 1: K5, p5, k10.', ''],
  ])('nothing is asked where it is explained %s', (_, entries, rows, notes) => {
    expect(told('unexplained-abbreviation', draft(entries, rows, notes))).toEqual([]);
  });

  it('needs a list that means to be complete', () => {
    expect(told('unexplained-abbreviation', draft('k = knit; p = purl', 'Row 1: K1, ssk, k to end.'))).toEqual([]);
  });

  it('asks for several short words of the language at once', () => {
    const [one, ...more] = told(
      'unexplained-abbreviation',
      draft(
        'k = knit; p = purl; RS = right side; WS = wrong side; yo = yarn over',
        'Row 1 (RS): K2, yo, k to end.\n\nRep last row 3 times, then cont in patt, inc at beg of foll rows.',
      ),
    );
    expect(one).toMatch(/short words/);
    expect(more).toEqual([]);
  });
});

describe('an abbreviation that nothing uses', () => {
  it('is a matter of style, all in one finding', () => {
    expect(
      told(
        'unused-abbreviation',
        draft(`${list}; mb = make bobble; kfb = knit into front and back`, 'Row 1 (RS): K2, p to end.\n\nRow 2 (WS): Knit. Rep both rows.'),
      ),
    ).toEqual(['style "mb" and "kfb" are explained and used nowhere. Leave them out, unless this is the house\'s standing list.']);
  });
  it('is used where another explanation uses it', () => {
    expect(
      told(
        'unused-abbreviation',
        draft(
          `${list}; cn = cable needle; C6B = slip 3 sts to cn, k3, k3 from cn`,
          'Row 1 (RS): P7, C6B, p7.\n\nRow 2 (WS): K7, p6, k7. Rep both rows.',
        ),
      ),
    ).toEqual([]);
  });
});
