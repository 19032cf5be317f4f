/** Casting on: every wording with the tree it must read into. Forms of the trade; numbers and words made up here. */
import { describe, expect, it } from 'vitest';
import { read } from '../outline.ts';

/** Sizes of the draft, then each text with its outline. */
const tables: readonly { readonly sizes: readonly string[]; readonly rows: readonly (readonly [string, string])[] }[] = [
  {
    sizes: ['XS', 'S', 'M', 'L'],
    rows: [
      ['Using 3.25 mm needles and yarn A, cast on 100 (108: 116: 124) sts.', 'change needle | CO 100 (108, 116, 124) here'],
      [
        'With smaller circular needle and MC, and using the tubular method, CO 182 (198, 214, 226) sts.',
        'change needle | change yarn | CO 182 (198, 214, 226) here',
      ],
      ['Cast on 48 (50: 52: 56) sts using 3.25 mm needles and thumb method.', 'CO 48 (50, 52, 56) here'],
      ['Using the long-tail method, CO 65 sts.', 'change yarn | CO 65 here'],
      ['Work 7 rows, then join and cont in rnds.', 'plain 7 rows | join round'],
      ['Place marker and join to work in the round, being careful not to twist sts.', 'marker place | join round'],
      ['Using waste yarn and provisional method, CO 86 (92, 98, 102) sts.', 'change yarn | CO 86 (92, 98, 102) here provisional'],
      ['Provisionally cast on 41 sts, leaving a 22 cm tail.', 'CO 41 here provisional | change yarn'],
      ['Unzip provisional cast-on and place resulting 86 (92, 98, 102) sts on needle.', 'take up 86 (92, 98, 102) provisional unworked'],
      ['Remove waste yarn from cast-on edge: 86 sts on holder.', 'take up 86 provisional unworked'],
      ['Cast on 9 sts at beg of next 3 rows.', 'castOn rows 9 {next n=3}'],
      ['Next 2 rows: CO 3 (3, 4, 4) sts, work to end.', 'row next 2: CO 3 (3, 4, 4) here work→end'],
      ['Cast on 5 (6: 7: 8) sts at beg of next 4 rows, working new sts into patt.', 'castOn rows 5 (6, 7, 8) {next n=4}'],
      [
        'Using cable cast-on, cast on 14 sts at beg of next row and 12 at beg of foll row.',
        'change yarn | castOn rows 14 {next} + 12 {follEach}',
      ],
      ['Cast on 4 sts at the beginning of the next 2 rows.', 'castOn rows 4 {next n=2}'],
      [
        'K to marker, place next 54 (58, 62, 66) sts on waste yarn, using backward-loop method CO 6 (6, 8, 8) sts, k to next marker.',
        'row: k→to marker hold next 54 (58, 62, 66) on waste yarn change yarn CO 6 (6, 8, 8) here k→to marker',
      ],
      [
        'Next row (RS): K to end, turn, CO 14 (16: 16: 18) sts, turn; pm, join.',
        'row next (RS): k→end turn CO 14 (16, 16, 18) here turn marker place join round',
      ],
      ['At end of last row, cast on 4 sts.', 'CO 4 end'],
      ['K to end, CO 7 sts.', 'row: k→end CO 7 here'],
      ['Next row: K to end, cast on 4 sts.', 'row next: k→end CO 4 here'],
    ],
  },
  {
    sizes: ['XS', 'S', 'M'],
    rows: [
      ['Using larger needles, CO 80 (84, 88) sts loosely.', 'change needle | CO 80 (84, 88) here'],
      ['With A and smaller needles, cast on 80 (84, 88) stitches using the long tail method.', 'change needle | CO 80 (84, 88) here'],
      ['Loosely cast on 80 (84, 88) sts.', 'CO 80 (84, 88) here'],
      ['CO 80 (84, 88) sts. Do not join.', 'CO 80 (84, 88) here | join noRound'],
      ['CO 96 (104, 112) sts, pm and join in the round, being careful not to twist.', 'CO 96 (104, 112) here | marker place | join round'],
      [
        'Cast on 96 sts. Join in a ring, taking care not to twist. Place marker for beg of rnd.',
        'CO 96 here | join round | marker place BOR',
      ],
      ['Cast on 96 sts; join for working in the rnd.', 'CO 96 here | join round'],
      ['With crochet hook and waste yarn, provisionally cast on 40 sts.', 'change yarn | CO 40 here provisional'],
      ['Using a provisional cast-on, CO 40 (44, 48) sts.', 'change yarn | CO 40 (44, 48) here provisional'],
      ['Cast on 6 (6, 7) sts at the start of the next 2 rows.', 'castOn rows 6 (6, 7) {next n=2}'],
      ['Cast on 6 sts at beg of next row, k to end.', 'castOn rows 6 {next}'],
      ['Cast on 3 sts at beg of next 4 rows, then 4 sts at beg of foll 2 rows.', 'castOn rows 3 {next n=4} + 4 {follEach n=2}'],
      ['At beg of next 2 rows, cast on 10 sts.', 'castOn rows 10 {next n=2}'],
      ['K to end, turn and cast on 6 sts.', 'row: k→end turn CO 6 here'],
      ['K20, cast on 8 sts, k20.', 'row: k{20} CO 8 here k{20}'],
      ['K20, turn, cast on 8 sts, turn, k20.', 'row: k{20} turn CO 8 here turn k{20}'],
      ['P to end, CO 5 (6, 7) sts using the backward loop method.', 'row: p→end CO 5 (6, 7) here'],
      ['Using the cable method, cast on 5 sts at beg of next 2 rows.', 'change yarn | castOn rows 5 {next n=2}'],
      ['CO 5 sts at end of next 2 rows.', 'castOn rows at end 5 {next n=2}'],
      ['Next row: Cast on 5 sts, k across these 5 sts, k to end.', 'row next: CO 5 here k→over 5 k→end'],
      ['CO 80 sts in MC.', 'CO 80 here'],
      ['Cast on eighty sts.', 'CO 80 here'],
      ['Join, being careful not to twist sts; pm for beg of rnd.', 'join round | marker place BOR'],
      ['Join to work in rounds.', 'join round'],
      ['Join for working in the round, pm for BOR.', 'join round | marker place BOR'],
      ['Carefully undo provisional cast-on and place 40 sts onto needle.', 'take up 40 provisional unworked'],
      ['Undo cast-on and slip 40 sts to needle.', 'take up 40 provisional unworked'],
      ['Rejoin for working in the round.', 'join round'],
      ['Do not join, turn.', 'row: join noRound turn'],
    ],
  },
];

describe('Casting on', () => {
  for (const { sizes, rows } of tables) {
    it.each(rows)('%s', (text, expected) => {
      expect(read(text, { sizes })).toBe(expected);
    });
  }
});
