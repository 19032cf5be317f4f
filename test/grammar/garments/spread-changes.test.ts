/** Increases and decreases spread over a row: every wording with the tree it must read into. Forms of the trade; numbers and words made up here. */
import { describe, expect, it } from 'vitest';
import { read } from '../outline.ts';

/** Sizes of the draft, then each text with its outline. */
const tables: readonly { readonly sizes: readonly string[]; readonly rows: readonly (readonly [string, string])[] }[] = [
  {
    sizes: ['XS', 'S', 'M'],
    rows: [
      [
        'Work 18 rows rib, inc 6 (6: 8) sts evenly across last row. 106 (114: 124) sts.',
        'plain 18 rows rib (evenly inc 6 (6, 8) on last row) =106 (114, 124) total',
      ],
      ['Next row (WS): Purl, dec 5 (7, 7) sts evenly.', 'row next (WS): p→end evenly dec 5 (7, 7)'],
      ['Work in rib for 7 cm, inc 12 (14: 14) sts on last row.', 'work rib until it 7 cm (evenly inc 12 (14, 14) on last row)'],
      ['Knit 1 rnd, dec to 92 (98, 104) sts.', 'plain 1 rounds knit (evenly to 92 (98, 104))'],
      ['Inc row (WS): Rib 5, [m1, rib 11 (12: 13)] 9 times, rib 6.', 'row inc (WS): rib→over 5 [M1 rib→over 11 (12, 13)]→9× rib→over 6'],
      ['Dec rnd: *K7, k2tog; rep from * around.', 'round dec: *[k{7} kNtog{2}]→end'],
      ['P6, *inc in next st, p8; rep from * to last 7 sts, inc in next st, p6.', 'row: p{6} *[kfb p{8}]→last 7 kfb p{6}'],
      ['K1, [k2tog, k8 (9, 9)] 9 times, k to end.', 'row: k{1} [kNtog{2} k{8 (9, 9)}]→9× k→end'],
      ['Rib 1 row, dec 3 sts.', 'plain 1 rows rib (evenly dec 3)'],
      ['Next row: Purl, inc 6 sts evenly across row.', 'row next: p→end evenly inc 6'],
      ['Next row: K, inc 1 st at each end.', 'row next: plain 1 rows knit (inc 1 bothEnds {this})'],
      ['Next row: K and inc 8 sts evenly.', 'row next: k→end evenly inc 8'],
      ['Next row: K, increasing 8 sts evenly spaced.', 'row next: k→end evenly inc 8'],
      ['Work 9 rows in rib, dec 1 st at centre of last row.', 'plain 9 rows rib (evenly dec 1 on last row)'],
      ['Next rnd: Knit, increasing to 122 (130, 138) sts.', 'round next: k→end evenly to 122 (130, 138)'],
      [
        'Work 5 cm in rib, ending with a WS row and inc 4 sts evenly on last row.',
        'work rib until it 5 cm (evenly inc 4 on last row) ending WS',
      ],
      ['K 1 row, inc 3 sts across row.', 'plain 1 rows knit (evenly inc 3)'],
      ['Inc row: K4 (5, 6), [M1L, k8] 9 times, M1L, k to end.', 'row inc: k{4 (5, 6)} [M1L k{8}]→9× M1L k→end'],
      ['Next row (WS): P6, *p2tog, p8; rep from * to last 4 sts, p4.', 'row next (WS): p{6} *[pNtog{2} p{8}]→last 4 p{4}'],
      ['Knit 1 row, dec 6 sts evenly across—72 (76, 80) sts.', 'plain 1 rows knit (evenly dec 6) =72 (76, 80) total'],
      ['Next rnd: K, dec 8 (8, 10) sts evenly around.', 'round next: k→end evenly dec 8 (8, 10)'],
      ['On last row of rib inc 8 sts evenly.', 'evenly inc 8 on last row'],
      ['Work 7 cm in rib, inc 10 sts evenly across last row.', 'work rib until it 7 cm (evenly inc 10 on last row)'],
      ['Work 6 rows in rib, inc 1 st at centre of last row.', 'plain 6 rows rib (evenly inc 1 on last row)'],
      ['Purl 1 row, inc 1 st in centre.', 'plain 1 rows purl (inc 1 centre {this})'],
      ['Inc 8 sts evenly on next row.', 'plain 1 rows (evenly inc 8)'],
      ['Inc 8 (8, 10) sts evenly across next row.', 'plain 1 rows (evenly inc 8 (8, 10))'],
      ['Dec 4 sts evenly across next RS row.', 'plain 1 rows (evenly dec 4)'],
      ['Increase to 96 (104, 112) sts on next row.', 'plain 1 rows (evenly to 96 (104, 112))'],
      ['Next row: Rib to end, inc 4 sts evenly.', 'row next: rib→end evenly inc 4'],
      ['Next row: Patt, dec 4 sts evenly across row.', 'row next: patt→end evenly dec 4'],
      ['Next row: Purl to end, increasing 1 st at each end.', 'row next: plain 1 rows purl (inc 1 bothEnds {this})'],
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
