/** Increases and decreases spread over a row: every wording with the tree it must read into. Forms of the trade; numbers and words made up here. */
import { describe, expect, it } from 'vitest';
import { read } from '../outline.ts';

/** Sizes of the draft, then each text with its outline. */
const tables: readonly { readonly sizes: readonly string[]; readonly rows: readonly (readonly [string, string])[] }[] = [
  {
    sizes: ['XS', 'S', 'M'],
    rows: [
      ['Work 18 rows rib, inc 6 (6: 8) sts evenly across last row. 106 (114: 124) sts.', 'plain 18 rows rib (evenly inc 6 (6, 8) on last row) =106 (114, 124) total'],
      ['Next row (WS): Purl, dec 4 (6, 6) sts evenly.', 'row next (WS): p→end evenly dec 4 (6, 6)'],
      ['Work in rib for 6 cm, inc 10 (12: 12) sts on last row.', 'work rib until it 6 cm (evenly inc 10 (12, 12) on last row)'],
      ['Knit 1 rnd, dec to 92 (98, 104) sts.', 'plain 1 rounds knit (evenly to 92 (98, 104))'],
      ['Inc row (WS): Rib 4, [m1, rib 9 (10: 11)] 8 times, rib 5.', 'row inc (WS): rib→over 4 [M1 rib→over 9 (10, 11)]→8× rib→over 5'],
      ['Dec rnd: *K6, k2tog; rep from * around.', 'round dec: *[k{6} kNtog{2}]→end'],
      ['P5, *inc in next st, p7; rep from * to last 6 sts, inc in next st, p5.', 'row: p{5} *[kfb p{7}]→last 6 kfb p{5}'],
      ['K1, [k2tog, k8 (9, 9)] 9 times, k to end.', 'row: k{1} [kNtog{2} k{8 (9, 9)}]→9× k→end'],
      ['Rib 1 row, dec 2 sts.', 'plain 1 rows rib (evenly dec 2)'],
      ['Next row: Purl, inc 6 sts evenly across row.', 'row next: p→end evenly inc 6'],
      ['Next row: K, inc 1 st at each end.', 'row next: plain 1 rows knit (inc 1 bothEnds {this})'],
      ['Next row: K and inc 8 sts evenly.', 'row next: k→end evenly inc 8'],
      ['Next row: K, increasing 8 sts evenly spaced.', 'row next: k→end evenly inc 8'],
      ['Work 9 rows in rib, dec 1 st at centre of last row.', 'plain 9 rows rib (evenly dec 1 on last row)'],
      ['Next rnd: Knit, increasing to 122 (130, 138) sts.', 'round next: k→end evenly to 122 (130, 138)'],
      ['Work 5 cm in rib, ending with a WS row and inc 4 sts evenly on last row.', 'work rib until it 5 cm (evenly inc 4 on last row) ending WS'],
      ['K 1 row, inc 3 sts across row.', 'plain 1 rows knit (evenly inc 3)'],
    ],
  },
];

describe('Increases and decreases spread over a row', () => {
  for (const { sizes, rows } of tables) {
    it.each(rows)('%s', (text, expected) => {
      expect(read(text, { sizes })).toBe(expected);
    });
  }
});
