/** Shaping as people word it. The sums were worked out by hand. Common practice, no source. */
import { describe } from 'vitest';
import { holdsFor } from './rows-told.ts';

describe('Both ends, terse and in full words', () => {
  holdsFor([
    ['Decrease 1 stitch at both ends of the next row.', [60], [58], { rows: [1] }],
    ['Decrease once at each end of next and every alternate row until 40 stitches remain.', [60], [40], { rows: [19] }],
    ['Dec 1 st at both ends of next and every alt row to 40 sts.', [60], [40], { rows: [19] }],
    ['Take in 1 stitch at each end of the next 3 rows.', [60], [54], { rows: [3] }],
    ['Knit 2 together at each end of every row until 40 stitches remain.', [60], [40], { rows: [10] }],
    ['K2tog at each end of next 4 rows.', [60], [52], { rows: [4] }],
    ['K 2 tog at both ends of every other row until 50 sts are left.', [60], [50]],
    ['Work 2 tog at each end of next and foll 3 alt rows.', [60], [52], { rows: [7] }],
    ['Dec one st each end of needle on next row and on the 4 following alternate rows.', [60], [50], { rows: [9] }],
    ['Dec one stitch at each end of the next and the following five rows.', [60], [48], { rows: [6] }],
    ['Dec 1 st each end next 3 rows then alt rows 4 times.', [60], [46], { rows: [11] }],
    ['Decrease one stitch at beginning and end of every knit row 5 times.', [60], [50]],
    ['Dec 1 st each end of needle every RS row, 6 times in all.', [60], [48]],
    ['Dec 1 st each side every row 3 times; every other row 4 times.', [60], [46]],
    ['dec 1 st each end of next 3 rows,then foll 2 alt rows,then every foll 4th row to 44sts', [60], [44], { rows: [19] }],
    [
      'Dec 1 st at each end of next 5 (5: 7) rows, then every foll alt row until 40 (42: 44) sts rem.',
      [60, 64, 68],
      [40, 42, 44],
      { rows: [15, 17, 17] },
    ],
    ['Dec 1 st at both ends of the 3rd row, then at both ends of every 4th row until 50 sts rem.', [60], [50], { rows: [19] }],
    ['Dec 1 st at each end of 5th row and of the foll 6th row.', [60], [56], { rows: [11] }],
    ['Working all decs 2 sts in from edge, dec 1 st at each end of next 4 RS rows.', [60], [52], { rows: [7] }],
    ['Increase 1 stitch at each end. Repeat the increase every 6th row a total of 4 times.', [60], [68]],
    ['Dec 1 st each end on the next row and then on every 6th row four more times.', [60], [50], { rows: [25] }],
    ['Dec 1 st at each end of next row and every foll 4th row, 5 times altogether.', [60], [50], { rows: [17] }],
  ]);
});

describe('Increases', () => {
  holdsFor([
    ['Increase in the first and last stitch of the next row.', [40], [42], { rows: [1] }],
    ['Inc in first and last st of next and every foll 6th row until there are 50 sts.', [40], [50], { rows: [25] }],
    ['Increase 1 stitch at each end of every 8th row 5 times.', [40], [50]],
    ['Inc at both ends of the 7th and every following 8th row to 50 sts.', [40], [50], { rows: [39] }],
    ['Shape sides by inc 1 st at each end of next and every foll 6th row to 50 sts.', [40], [50], { rows: [25] }],
    [
      'Shape sleeve by increasing 1 st each end of 5th and every foll 10th row until there are 48 (52) sts on the needle.',
      [40, 44],
      [48, 52],
      { rows: [35, 35] },
    ],
    [
      'Increase one stitch at both ends of the needle in the next row and every following fourth row until there are 48 stitches.',
      [40],
      [48],
      { rows: [13] },
    ],
    ['Inc 1 st each end of every 6th row 3 (4) times, then of every 8th row twice.', [40, 40], [50, 52]],
    ['Inc 1 st each side every 6th row 4x.', [40], [48]],
    ['Inc 1 st at each end of next row, then every 6 (4) rows to 50 (54) sts.', [40, 40], [50, 54], { rows: [25, 25] }],
    ['Inc 1 st each end this row and every 8 rows thereafter 4 times.', [40], [50]],
    ['Inc 1 st at each end of 3rd, 6th and 9th rows.', [40], [46], { rows: [9] }],
    ['Inc 1 st at each end of the 4th and every foll 5th row until 50 sts are on the needle.', [40], [50], { rows: [24] }],
    ['Inc every 4th row at both ends until you have 50 sts.', [40], [50]],
    ['Inc 2 sts at each end of next and foll 3 RS rows.', [40], [56], { rows: [7] }],
    ['Inc 1 st at each end of every foll alt row until there are 46 sts, then on every foll 4th row until there are 50 sts.', [40], [50]],
    ['Cont in st st, shaping sides by inc 1 st at each end of 3rd and every foll 4th row to 46 sts.', [40], [46], { rows: [11] }],
    ['Inc 1 st at each end of every 6th row, taking the extra sts into the patt, until there are 50 sts.', [40], [50]],
  ]);
});

describe('One edge', () => {
  holdsFor([
    ['Dec 1 st at neck edge on next 4 rows.', [30], [26], { rows: [4] }],
    ['Dec 1 st at neck edge of every row until 22 sts rem.', [30], [22], { rows: [8] }],
    ['Dec 1 st at neck edge on every row 3 times then on alternate rows 3 times.', [30], [24]],
    ['At neck edge, decrease 1 stitch every other row 4 times.', [30], [26]],
    ['Keeping armhole edge straight, dec 1 st at neck edge on next and every foll alt row until 24 sts rem.', [30], [24], { rows: [11] }],
    ['Dec 1 st at front edge on next row and every 4th row after that until 24 sts rem.', [30], [24], { rows: [21] }],
    ['Dec 1 st at armhole edge every RS row 5 times and at the same time dec 1 st at neck edge every 4th row 2 times.', [30], [23]],
    ['Decrease 1 stitch at the beginning of the next row and the same edge on the following 3 rows.', [30], [26], { rows: [4] }],
    ['Dec one st at end of next row.', [30], [29], { rows: [1] }],
    ['Dec 1 st at end of every RS row 4 times.', [30], [26]],
    ['Inc 1 st at neck edge on next 3 rows and foll alt row.', [30], [34], { rows: [5] }],
    ['Inc 1 st at beg of next and foll 4 alt rows.', [30], [35], { rows: [9] }],
    ['Inc 1 st at centre front edge on every row 4 times.', [30], [34]],
    ['Dec 1 st at raglan edge on next and every foll RS row until 2 sts rem.', [12], [2], { rows: [19] }],
    ['Dec at side edge every 10th row 3 times.', [30], [27]],
    ['Dec 1 st at shaped edge on next 5 rows.', [30], [25], { rows: [5] }],
    ['Dec 1 st at same edge on next 3 rows.', [30], [27], { rows: [3] }],
  ]);
});

describe('A named row worked again', () => {
  const dec = 'Dec Row (RS): K2, ssk, k to last 4 sts, k2tog, k2.';
  const inc = 'Increase Row (RS): K2, M1, knit to last 2 sts, M1, k2.';
  holdsFor([
    [`${dec} Repeat decrease row every RS row 4 times more.`, [60], [50], { rows: [9] }],
    [`${dec} Rep this dec row every 4th row 4 more times—50 sts.`, [60], [50], { rows: [17] }],
    [`${dec} Continue to dec in this manner every RS row 4 more times.`, [60], [50], { rows: [9] }],
    [`${dec} Dec in this way on every foll 4th row until 50 sts rem.`, [60], [50], { rows: [17] }],
    [`${dec} Work 3 rows even. Rep these 4 rows 4 times more.`, [60], [50], { rows: [20] }],
    [`${dec} Work this row every 6 rows 3 times in total.`, [60], [54], { rows: [13] }],
    [`${dec} Purl 1 row. Rep these two rows until 40 sts remain.`, [60], [40], { rows: [20] }],
    [`${inc} Rep inc row every 6 rows 3 times, then every 8 rows twice.`, [40], [52], { rows: [35] }],
    [`${inc} Working in St st, rep Inc Row every 8th (6th) row 2 (4) more times. 46 (50) sts.`, [40, 40], [46, 50], { rows: [17, 25] }],
    [`${inc} Inc in same way on every following 4th row until there are 50 sts.`, [40], [50], { rows: [17] }],
    [`${inc} Repeat the increase row on the following 4th row, then every 6th row until you have 50 sts.`, [40], [50], { rows: [23] }],
  ]);
});

describe('Windows of rows, and shaping with other things in one sentence', () => {
  holdsFor([
    ['Work 12 rows, dec 1 st at each end of every 4th row.', [60], [54], { rows: [12] }],
    ['Work 8 rows in patt, dec 1 st at neck edge on 1st and every foll alt row.', [30], [26], { rows: [8] }],
    ['Knit 10 rows, decreasing 1 st at each end of 3rd and 7th rows.', [60], [56], { rows: [10] }],
    ['Work 9 (13) rows, inc 1 st at both ends of next and every foll 4th row.', [40, 40], [46, 48], { rows: [9, 13] }],
    ['Cast off 4 sts at beg of next 2 rows, then dec 1 st each end of every RS row until 40 sts rem, ending with a WS row.', [60], [40]],
    ['Bind off 5 sts at beg of next 2 rows; dec 1 st each end every other row 3 times—44 sts.', [60], [44]],
    ['Dec 1 st at each end of next row, work 3 rows, then dec 1 st at each end of next row.', [60], [56], { rows: [5] }],
    [
      'Dec 1 st at each end of next and foll alt row, work 3 rows straight, then cast off 3 sts at beg of next 2 rows.',
      [60],
      [50],
      { rows: [8] },
    ],
    ['Work 4 rows straight then dec 1 st at each end of next row and foll 6th row (56 sts).', [60], [56], { rows: [11] }],
    ['While continuing armhole shaping, dec 1 st at neck edge on next 4 rows.', [30], [26], { rows: [4] }],
    ['3rd size only: dec 1 st at each end of next 2 rows. All sizes: dec 1 st at each end of foll 3 alt rows.', [60, 60, 60], [54, 54, 50]],
    ['Dec 0 (1, 1) st at each end of next row.', [60, 60, 60], [60, 58, 58]],
    ['Dec 1 st at each end of next 3 rows. 54 sts. Work 1 row.', [60], [54], { rows: [4] }],
  ]);
});

describe('At markers', () => {
  holdsFor([
    ['Dec 1 st each side of both markers on next rnd.', [80], [76], { mode: 'round', markers: [20, 60], rows: [1] }],
    ['Inc 1 st before and after each marker on next row.', [80], [88], { markers: [20, 60, 40, 70], rows: [1] }],
    ['Inc 1 st either side of each marker every RS row 3 times.', [80], [92], { markers: [20, 60] }],
    ['Dec 1 st on each side of each marker every 6th rnd 4 times.', [80], [64], { mode: 'round', markers: [20, 60] }],
  ]);
});
