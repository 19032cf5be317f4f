/** Wordings that were once misread: every wording with the tree it must read into. Forms of the trade; numbers and words made up here. */
import { describe, expect, it } from 'vitest';
import { read } from '../outline.ts';

/** Sizes of the draft, then each text with its outline. */
const tables: readonly { readonly sizes: readonly string[]; readonly rows: readonly (readonly [string, string])[] }[] = [
  {
    sizes: ['XS', 'S', 'M', 'L', 'XL'],
    rows: [
      [
        'Beg with a k row, cont in st st; inc 1 st at each end of 5th and every foll 8th [8th: 6th: 6th: 6th] row until there are 76 [80: 86: 92: 96] sts.',
        'work st st beg k until loose "" | inc 1 bothEnds {nth k=5; every k=8 (8, 6, 6, 6) until 76 (80, 86, 92, 96)}',
      ],
      [
        'Work as given for back until 82 [88: 92: 98: 102] sts rem in armhole shaping.',
        'as piece back to 82 (88, 92, 98, 102) sts (armhole shaping)',
      ],
      [
        'AT THE SAME TIME, when front measures 30 cm from cast-on edge, ending with Row 2, shape neck.',
        'at the same time when front 30 cm from cast-on edge ending row 2 {}',
      ],
      ['Work 20 rows in rib as given for back.', 'plain 20 rows rib of back'],
      ['K all 83 sts.', 'row: k→over all:83'],
      ['pick up and k 4 sts up left back neck. 96 [100: 104: 108: 112] sts.', 'row: pick up 4 =96 (100, 104, 108, 112) total'],
      ['Pick up and k 24 sts up right front neck and 4 sts down right back neck.', 'row: pick up 24 pick up 4'],
    ],
  },
  {
    sizes: ['one'],
    rows: [
      [
        'Beg at right shoulder, knit up 36 sts across back neck, 24 down left front and 24 up right front—84 sts.',
        'row: change yarn pick up 36 pick up 24 pick up 24 =84 total',
      ],
    ],
  },
];

describe('Wordings that were once misread', () => {
  for (const { sizes, rows } of tables) {
    it.each(rows)('%s', (text, expected) => {
      expect(read(text, { sizes })).toBe(expected);
    });
  }
});
