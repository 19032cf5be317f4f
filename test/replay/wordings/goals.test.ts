/** Rows to a goal as people word it: how many are worked where that is certain, and what stands after. Common practice, no source. */
import { describe } from 'vitest';
import { holdsFor } from './rows-told.ts';

describe('So many rows by their goal', () => {
  holdsFor([
    ['Work until 12 rows have been worked.', [20], [20], { rows: [12] }],
    ['Work in st st until 12 rows have been completed.', [20], [20], { rows: [12] }],
    ['K 4 rows. Cont in garter st until 12 rows in all have been worked.', [20], [20], { rows: [12] }],
    ['K 4 rows. Cont in garter st until 12 rows have been worked from beg.', [20], [20], { rows: [12] }],
    ['Row 1: K. Row 2: P. Rep these 2 rows until 12 rows have been worked.', [20], [20], { rows: [12] }],
    ['Row 1: K. Row 2: P. Rep these 2 rows until 12 (14) rows in total have been worked.', [20, 20], [20, 20], { rows: [12, 14] }],
    ['Row 1: K. Row 2: P. Rep last 2 rows until you have worked 12 rows.', [20], [20], { rows: [12] }],
    ['Row 1: K2tog, k to end. Row 2: P. Rep last 2 rows until 14 sts rem.', [20], [14], { rows: [12] }],
    ['Row 1: K2tog, k to end. Row 2: P. Rep last 2 rows until there are 14 sts left on your needle.', [20], [14], { rows: [12] }],
    ['Row 1: K2tog, k to end. Row 2: P. Rep last 2 rows to 14 sts.', [20], [14], { rows: [12] }],
    ['Row 1: K2tog, k to end. Row 2: P. Work these 2 rows until 14 sts remain, ending with Row 2.', [20], [14], { rows: [12] }],
    ['Row 1: K2tog, k to end. Row 2: P. Repeat Rows 1-2 until you are down to 14 sts.', [20], [14], { rows: [12] }],
    ['Row 1: K1, m1, k to end. Row 2: P. Rep these 2 rows until you have 26 sts.', [20], [26], { rows: [12] }],
    ['Row 1: K1, m1, k to end. Row 2: P. Rep these 2 rows until stitch count is 26.', [20], [26], { rows: [12] }],
    ['Row 1: K1, m1, k to end. Row 2: P. Continue to rep Rows 1 and 2 until 26 sts are on needle.', [20], [26], { rows: [12] }],
    ['Dec 1 st at each end of every row until 4 sts rem.', [20], [4], { rows: [8] }],
    ['Dec 1 st at each end of next and every alt row until 14 sts remain, then k 1 row.', [20], [14], { rows: [6] }],
    ['Inc 1 st at each end of next and every foll 4th row until there are 26 sts.', [20], [26], { rows: [9] }],
    ['Inc 1 st at both ends of every 3rd row until 26 sts on needle.', [20], [26], {}],
    ['Work 30 rows or until piece measures 10 cm.', [20], [20], { rows: [30] }],
    ['Work 30 rows, or to desired length.', [20], [20], { rows: [30] }],
  ]);
});

describe('Rows told once and worked once more', () => {
  holdsFor([
    ['Row 1: K2tog, k to end. Rep this row once.', [20], [18], { rows: [2] }],
    ['Row 1: K2tog, k to end. Row 2: P. Rep these 2 rows once.', [20], [18], { rows: [4] }],
    ['Row 1: K2tog, k to end. Rep Row 1 once more.', [20], [18], { rows: [2] }],
  ]);
});

describe('A step told once and then again and again', () => {
  holdsFor([
    ['Next rnd: K1, m1, k to last st, m1, k1. Rep this inc rnd every 6th rnd 5 more times.', [40], [52], { mode: 'round', rows: [31] }],
    ['Increase 1 st at each end of next rnd. Repeat the increase every 6th round 5 more times.', [40], [52], { mode: 'round', rows: [31] }],
    ['Dec 1 st at each end of next row. Rep this dec every 4th row 3 times more.', [40], [32], { rows: [13] }],
    ['Dec 1 st at each end of next row. Repeat the decrease every 4 rows 3 times more.', [40], [32], { rows: [13] }],
    ['Dec 1 st at each end of next row. Dec again every foll 4th row 3 times.', [40], [32], { rows: [13] }],
    ['Dec 1 st at each end of next row. Rep these decs on foll 4th row.', [40], [36], { rows: [5] }],
    ['Dec row: K1, k2tog, k to last 3 sts, ssk, k1. Rep dec row every RS row 4 times more.', [40], [30], { rows: [9] }],
    ['Dec row: K1, k2tog, k to last 3 sts, ssk, k1. Work Dec row on every foll 4th row until 30 sts rem.', [40], [30], { rows: [17] }],
    ['Next row: K1, k2tog, k to last 3 sts, ssk, k1. P 1 row. Rep last 2 rows 4 times more.', [40], [30], { rows: [10] }],
    ['Next row: K1, k2tog, k to last 3 sts, ssk, k1. Dec as set on every foll alt row until 30 sts rem.', [40], [30], { rows: [9] }],
    ['Next row: K1, k2tog, k to last 3 sts, ssk, k1. Dec in same way at each end of 4 foll alt rows.', [40], [30], { rows: [9] }],
    [
      'Next row: K1, k2tog, k to last 3 sts, ssk, k1. Dec 1 st at each end as before on every foll 4th row to 30 sts.',
      [40],
      [30],
      { rows: [17] },
    ],
  ]);
});
