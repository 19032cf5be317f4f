/** Stitches made or lost over a whole row, as people word it. Common practice, no source. */
import { describe } from 'vitest';
import { holdsFor } from './rows-told.ts';

describe('Evenly', () => {
  holdsFor([
    ['Increase 6 stitches evenly across the next row.', [60], [66], { rows: [1] }],
    ['Inc 6 sts evenly across next row.', [60], [66], { rows: [1] }],
    ['Knit 1 row, increasing 6 sts evenly spaced.', [60], [66], { rows: [1] }],
    ['P 1 row inc 6 sts evenly.', [60], [66], { rows: [1] }],
    ['Purl 1 row, evenly increasing 6 sts.', [60], [66], { rows: [1] }],
    ['K 1 row and inc 6 sts evenly across row.', [60], [66], { rows: [1] }],
    ['Purl across, increasing 6 (8) sts evenly spaced across row—66 (72) sts.', [60, 64], [66, 72], { rows: [1, 1] }],
    ['Next row (WS): Purl and inc 6 sts evenly spaced.', [60], [66], { rows: [1] }],
    ["Next row: Knit, inc'ing 6 sts evenly.", [60], [66], { rows: [1] }],
    ['Next row: *K10, m1; rep from * to end.', [60], [66], { rows: [1] }],
    ['Next row (inc): Rib 3, [m1, rib 6] 9 times, m1, rib 3.', [60], [70], { rows: [1] }],
    ['Next row: K, dec 5 sts evenly along the row.', [60], [55], { rows: [1] }],
    ['Next Row (RS): Knit across row decreasing 5 sts evenly.', [60], [55], { rows: [1] }],
    ['Next rnd: K and dec 5 sts evenly around.', [60], [55], { mode: 'round', rows: [1] }],
    ['Knit one round, decreasing five stitches evenly around.', [60], [55], { mode: 'round', rows: [1] }],
    ['Knit 1 rnd, dec 4 (5, 6) sts evenly spaced to 56 (60, 64) sts.', [60, 65, 70], [56, 60, 64], { mode: 'round' }],
    ['Dec 5 sts evenly on next RS row.', [60], [55], { rows: [1] }],
    ['On next row, dec 5 sts evenly across.', [60], [55], { rows: [1] }],
    ['In the next row decrease 5 stitches evenly.', [60], [55], { rows: [1] }],
    ['Decrease evenly to 52 sts on next row.', [60], [52], { rows: [1] }],
    ['Next row: P, dec to 52 sts.', [60], [52], { rows: [1] }],
    ['Next row: Knit, increasing evenly to 72 (76) sts.', [60, 60], [72, 76], { rows: [1, 1] }],
    ['Increase to 72 sts evenly across the next row.', [60], [72], { rows: [1] }],
    ['K 1 row, inc in every 10th st.', [60], [66], { rows: [1] }],
    ['Knit 1 row, increasing in every 5th stitch—72 sts.', [60], [72], { rows: [1] }],
    ['Next row: inc in every st to end.', [12], [24], { rows: [1] }],
    ['Next row: K twice into every st.', [12], [24], { rows: [1] }],
    ['Next row: (Inc in next st) to end.', [12], [24], { rows: [1] }],
    ['Next row: (k2tog) to end.', [24], [12], { rows: [1] }],
    ['Next row: K2tog across.', [24], [12], { rows: [1] }],
    ['Next row: K2 tog all across the row.', [24], [12], { rows: [1] }],
    ['Next row: [K4, k2tog] 8 times, k to end.', [60], [52], { rows: [1] }],
    ['Next row: K3, *k2tog, k4; rep from * to last 3 sts, k3.', [60], [51], { rows: [1] }],
    ['Next row (dec row): K1 (3), *k2tog, k3; rep from * to last 4 (2) sts, k4 (2).', [60, 60], [49, 49], { rows: [1, 1] }],
    ['Dec row: P4, (p2tog, p8) 5 times, p2tog, p4. 54 sts.', [60], [54], { rows: [1] }],
    ['Inc row (WS): Rib 6, inc in next st, [rib 7, inc in next st] 6 times, rib 5.', [60], [67], { rows: [1] }],
  ]);
});

describe('On the last row of a stretch', () => {
  holdsFor([
    ['Work 8 rows in rib, inc 6 sts evenly on last row.', [60], [66], { rows: [8] }],
    ['Work 8 rows in rib, increasing 6 sts evenly across the last row.', [60], [66], { rows: [8] }],
    ['Work 7 rows rib then inc 6 sts evenly across next row.', [60], [66], { rows: [8] }],
    ['Work in rib for 8 rows and inc 6 sts evenly in last row.', [60], [66], { rows: [8] }],
    ['Rib 8 rows, inc 6 (8) sts evenly in the last row. 66 (68) sts.', [60, 60], [66, 68], { rows: [8, 8] }],
    ['Work 8 rows in k1, p1 rib, inc 1 st at end of last row.', [60], [61], { rows: [8] }],
    ['Work 8 rows in k2, p2 rib, dec 1 st at centre of last row.', [60], [59], { rows: [8] }],
    ['Work 8 rows in rib, inc 1 st at each end of last row.', [60], [62], { rows: [8] }],
    ['Work 7 rows in garter st, dec 2 (0, 1) sts in last row.', [60, 60, 60], [58, 60, 59], { rows: [7, 7, 7] }],
    ['Rib 7 rows. Next row: Rib 5, m1, (rib 10, m1) 5 times, rib 5.', [60], [66], { rows: [8] }],
    ['Cont in rib until 12 rows have been worked, inc 4 sts evenly across last row.', [60], [64]],
    ['Work 3 rounds, decreasing 4 sts evenly on the final round.', [60], [56], { mode: 'round', rows: [3] }],
    ['Knit 4 rows, dec 1 st in centre of 4th row.', [60], [59], { rows: [4] }],
    ['Work in rib for 6 cm, dec 4 sts evenly on last row, ending with a WS row.', [60], [56]],
    ['Work 8 rows in rib, inc one st in last row (61 sts).', [60], [61], { rows: [8] }],
  ]);
});

describe('With other things in one sentence', () => {
  holdsFor([
    [
      'Change to larger needles and knit 1 row, inc 10 (12: 14) sts evenly. 70 (74: 78) sts.',
      [60, 62, 64],
      [70, 74, 78],
      { rows: [1, 1, 1] },
    ],
    ['Change to 4 mm needles. Beg with a k row and inc 4 sts evenly across 1st row, work 10 rows in st st.', [60], [64], { rows: [10] }],
    ['Beg with a k row work 10 rows in st st, dec 1 st at each end of last row.', [60], [58], { rows: [10] }],
    ['Cast on 60 sts. Work 6 rows in rib, inc 5 sts across last row. Change to larger needles and st st.', [0], [65], { rows: [6] }],
    ['Work 6 rows in rib. Change to larger needles and rib to end.', [60], [60], { rows: [7] }],
    ['Purl 1 row, dec 2 sts at centre.', [60], [58], { rows: [1] }],
    ['Next row (WS): P, dec 1 (0: 1) st at centre of row. 59 (62: 63) sts.', [60, 62, 64], [59, 62, 63], { rows: [1, 1, 1] }],
    ['K 1 row, working k2tog 5 times evenly across.', [60], [55], { rows: [1] }],
    ['Next rnd: Knit, at the same time decrease 6 sts evenly.', [60], [54], { mode: 'round', rows: [1] }],
    ['Work 1 row in patt, dec 4 sts evenly over cables.', [60], [56], { rows: [1] }],
    ['Next row: Inc 8 sts evenly across.', [60], [68], { rows: [1] }],
    ['Knit 2 rows, inc 3 sts evenly across 2nd row.', [60], [63], { rows: [2] }],
  ]);
});
