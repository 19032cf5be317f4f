/** Orders for some sizes only, as people word them: rows and stitches per size. Common practice, no source. */
import { describe } from 'vitest';
import { holdsFor } from './rows-told.ts';

const three = [60, 66, 72];

describe('A size named at the head of its order', () => {
  holdsFor([
    ['3rd size only: Dec 1 st at each end of next row. All sizes: K 1 row.', three, [60, 66, 70], { rows: [1, 1, 2] }],
    ['For 3rd size only dec 1 st at each end of next row.', three, [60, 66, 70], { rows: [0, 0, 1] }],
    ['For the third size only, cast off 2 sts at beg of next 2 rows.', three, [60, 66, 68], { rows: [0, 0, 2] }],
    ['Third size only. K 2 rows.', three, three, { rows: [0, 0, 2] }],
    ['2nd and 3rd sizes: Knit 1 row.', three, three, { rows: [0, 1, 1] }],
    ['Larger 2 sizes only: Work 2 rows straight.', [50, 60, 66, 72], [50, 60, 66, 72], { rows: [0, 0, 2, 2] }],
    ['Last 2 sizes: Work 2 rows straight.', [50, 60, 66, 72], [50, 60, 66, 72], { rows: [0, 0, 2, 2] }],
    ['Last size only: Work 2 rows straight.', three, three, { rows: [0, 0, 2] }],
    ['For the two smallest sizes work 4 rows.', three, three, { rows: [4, 4, 0] }],
    ['Smaller 2 sizes only: K 2 rows.', three, three, { rows: [2, 2, 0] }],
    ['Both larger sizes: K 2 rows.', three, three, { rows: [0, 2, 2] }],
    ['Middle size only: K 2 rows.', three, three, { rows: [0, 2, 0] }],
    ['1st size ONLY - work 2 rows in garter st', three, three, { rows: [2, 0, 0] }],
    ['Size 1 ~ knit 2 rows.', three, three, { rows: [2, 0, 0] }],
    ['Sizes 2 & 3 only – k 2 rows.', three, three, { rows: [0, 2, 2] }],
    ['Sizes 2 and 3 only, k 2 rows.', three, three, { rows: [0, 2, 2] }],
    ['All sizes but the first: K 2 rows.', three, three, { rows: [0, 2, 2] }],
    ['All sizes except 2: K 2 rows.', three, three, { rows: [2, 0, 2] }],
    ['Every size except the smallest: K 2 rows.', three, three, { rows: [0, 2, 2] }],
    ['On 3rd size only, work 2 more rows.', three, three, { rows: [0, 0, 2] }],
    ['In 3rd size only, dec 1 st at each end of next row.', three, [60, 66, 70], { rows: [0, 0, 1] }],
    ['If working size 3, work 2 more rows.', three, three, { rows: [0, 0, 2] }],
    ['If you are knitting the third size, work 2 rows more.', three, three, { rows: [0, 0, 2] }],
    ['(Size 3 only: work 2 rows.)', three, three, { rows: [0, 0, 2] }],
    ['[1st and 3rd sizes only: K 1 row.]', three, three, { rows: [1, 0, 1] }],
    ['(2nd and 3rd sizes only) K 1 row.', three, three, { rows: [0, 1, 1] }],
    ['Size 1: K 1 row. Size 2: K 3 rows. Size 3: K 5 rows. All sizes: P 1 row.', three, three, { rows: [2, 4, 6] }],
    ['Size 1 only, k 1 row; all other sizes, k 3 rows.', three, three, { rows: [1, 3, 3] }],
    ['Size 3 only: K 2 rows. Remaining sizes: K 4 rows.', three, three, { rows: [4, 4, 2] }],
    [
      '3rd size only: Next row: K2tog, k to last 2 sts, k2tog. Next row: P. All sizes: Next row: K to last 2 sts, k2tog.',
      three,
      [59, 65, 69],
      { rows: [1, 1, 3] },
    ],
  ]);
});

describe('A size named behind its label or its order', () => {
  holdsFor([
    ['Dec 1 st at each end of next row, for 3rd size only. K 2 rows.', three, [60, 66, 70], { rows: [2, 2, 3] }],
    ['Dec 1 st at each end of next row on 3rd size only.', three, [60, 66, 70], { rows: [0, 0, 1] }],
    ['Dec 1 st at each end of next row (3rd size only).', three, [60, 66, 70], { rows: [0, 0, 1] }],
    ['Cast off 2 sts at beg of next 2 rows (2nd and 3rd sizes only), then k 1 row.', three, [60, 62, 68], { rows: [1, 3, 3] }],
    ['Next row (3rd size only): K2tog, k to last 2 sts, k2tog. Next row: K.', three, [60, 66, 70], { rows: [1, 1, 2] }],
    ['Next row, sizes 2 and 3 only: K2tog, k to last 2 sts, k2tog.', three, [60, 64, 70], { rows: [0, 1, 1] }],
    ['Next row (RS, 1st size only): K2tog, k to end.', three, [59, 66, 72], { rows: [1, 0, 0] }],
    ['Next row – 1st size only – K2tog, k to end.', three, [59, 66, 72], { rows: [1, 0, 0] }],
    ['K 1 row, p 1 row. Rep last 2 rows once more for 3rd size only.', three, three, { rows: [2, 2, 4] }],
    ['K 2 rows. Work 2 rows more on 2nd and 3rd sizes only.', three, three, { rows: [2, 4, 4] }],
    ['Work 6 rows for 1st and 2nd sizes, 8 rows for 3rd size.', three, three, { rows: [6, 6, 8] }],
    ['Work 4 rows for 1st size, 6 rows for 2nd size and 8 rows for 3rd size.', three, three, { rows: [4, 6, 8] }],
    ['Work 4 rows (3rd size 6 rows).', three, three, { rows: [4, 4, 6] }],
    ['Knit 2 rows (4 rows for 3rd size).', three, three, { rows: [2, 2, 4] }],
    ['Knit 1 row, dec 1 st at each end of row for size 3 only.', three, [60, 66, 70], { rows: [1, 1, 1] }],
    ['K20, for 3rd size only k2tog, k to end.', three, [60, 66, 71], { rows: [1, 1, 1] }],
    ['K2, (2nd size only: k2tog), k to end.', three, [60, 65, 72], { rows: [1, 1, 1] }],
  ]);
});

describe('Numbers of several sizes', () => {
  holdsFor([
    ['BO 3 (3, 4) sts at beg of next 2 (4, 4) rows.', three, [54, 54, 56], { rows: [2, 4, 4] }],
    ['BO – (–, 4) sts at beg of next – (–, 2) rows. K 2 rows.', three, [60, 66, 64], { rows: [2, 2, 4] }],
    ['K2tog 5[6:8] times, k to end.', three, [55, 60, 64], { rows: [1, 1, 1] }],
    ['Dec 1 st at each end of next 3 (5: 7) rows.', three, [54, 56, 58], { rows: [3, 5, 7] }],
    ['*K4 (5, 6), k2tog*, rep from * to * to end.', [60, 70, 80], [50, 60, 70], { rows: [1, 1, 1] }],
    ['Cast off 3 sts for 1st size, 4 sts for 2nd size and 5 sts for 3rd size at beg of next 2 rows.', three, [54, 58, 62], {}],
    ['K 1 row. P 1 row. Rep last 2 rows 0 (1, 2) times more.', three, three, { rows: [2, 4, 6] }],
    ['K5 / 6 / 7, k2tog, k to end.', three, [59, 65, 71], { rows: [1, 1, 1] }],
    ['Cast off 5-6-7 sts at the beginning of the next 2 rows.', three, [50, 54, 58], { rows: [2, 2, 2] }],
    ['Cast off 5 [6] {7} sts at beg of next 2 rows.', three, [50, 54, 58], { rows: [2, 2, 2] }],
    ['Cast off 5, 6, 7 sts at beg of next 2 rows.', three, [50, 54, 58], { rows: [2, 2, 2] }],
    ['Cast off 5 (6) 7 sts at beg of next 2 rows.', three, [50, 54, 58], { rows: [2, 2, 2] }],
    ['Cast off 5(5:6)sts at beg of next 2 rows and 4(5:5)sts at beg of foll 2 rows.', three, [42, 46, 50], { rows: [4, 4, 4] }],
    ['Cast off five (six, seven) sts at beg of next two rows.', three, [50, 54, 58], { rows: [2, 2, 2] }],
    ['Dec 1 (0, 1) st at beg of next row.', three, [59, 66, 71], {}],
  ]);
});
