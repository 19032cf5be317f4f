/** Pockets: every wording with the tree it must read into. Forms of the trade; numbers and words made up here. */
import { describe, expect, it } from 'vitest';
import { read } from '../outline.ts';

/** Sizes of the draft, then each text with its outline. */
const tables: readonly { readonly sizes: readonly string[]; readonly rows: readonly (readonly [string, string])[] }[] = [
  {
    sizes: ['XS', 'S', 'M', 'L'],
    rows: [
      [
        'Next row: Patt 12, slip next 24 sts onto a holder, patt across 24 sts of pocket lining, patt to end.',
        'row next: patt→over 12 hold next 24 on holder take up 24 pocket lining patt→end',
      ],
      [
        'Pocket row (RS): K 12, place next 24 sts on holder, k 24 sts of lining, k to end.',
        'row pocket (RS): k{12} hold next 24 on holder take up 24 pocket lining k→end',
      ],
      [
        'K 14, cast off next 22 sts, k to end. Next row: P to gap, p across 22 sts of lining, p to end.',
        'row: k{14} BO 22 k→end | row next: p→to gap take up 22 pocket lining p→end',
      ],
      ['Slip 24 sts from holder onto 3.25 mm needle; work 6 rows rib; cast off.', 'take up 24 unworked | plain 6 rows rib | BO all all:0'],
      ['Leave sts on a holder.', 'hold these on holder'],
      [
        'With RS facing, slip 24 sts from holder onto smaller needle, rejoin yarn and k to end.',
        'row: change side take up 24 unworked join rejoin k→end',
      ],
      [
        'Place pocket: K10, slip next 26 sts onto a holder, k across 26 sts from first pocket lining, k to end.',
        'declare title Place pocket | row: k{10} hold next 26 on holder take up 26 pocket lining k→end',
      ],
    ],
  },
  {
    sizes: ['XS', 'S', 'M'],
    rows: [
      ['K14, BO next 20 sts, k to end.', 'row: k{14} BO 20 k→end'],
      ['Next row: P14, p across 20 sts of pocket lining, p to end.', 'row next: p{14} take up 20 pocket lining p→end'],
      [
        'Next row (RS): K14, place next 20 sts on holder, k across 20 sts from pocket lining, k to end.',
        'row next (RS): k{14} hold next 20 on holder take up 20 pocket lining k→end',
      ],
      [
        'Next row: K14, slip next 20 sts onto holder, k 20 pocket lining sts from holder, k to end.',
        'row next: k{14} hold next 20 on holder take up 20 pocket lining k→end',
      ],
      ['Work 20 rows in st st, ending with a WS row. Leave sts on a holder.', 'plain 20 rows st st ending WS | hold these on holder'],
      ['Place 20 sts from holder onto needle. Work 5 rows in rib. BO in rib.', 'take up 20 unworked | plain 5 rows rib | BO all all:0'],
    ],
  },
];

describe('Pockets', () => {
  for (const { sizes, rows } of tables) {
    it.each(rows)('%s', (text, expected) => {
      expect(read(text, { sizes })).toBe(expected);
    });
  }
});
