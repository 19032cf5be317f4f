/** Binding off as people word it. The sums were worked out by hand. Common practice, no source. */
import { describe } from 'vitest';
import { holdsFor } from './rows-told.ts';

describe('All stitches', () => {
  holdsFor([
    ['Bind off loosely.', [40], [0]],
    ['Cast off all stitches loosely and evenly in pattern.', [40], [0]],
    ['BO.', [40], [0]],
    ['BO all rem sts purlwise on WS.', [40], [0]],
    ['Cast off remaining 40 sts knitwise.', [40], [0]],
    ['Using a larger needle, cast off in rib.', [40], [0]],
    ['Bind off in pattern as established.', [40], [0]],
    ['BO all sts using the sewn bind-off.', [40], [0]],
    ['Cast off in k1, p1 rib.', [40], [0]],
    ['With WS facing, bind off all sts knitwise.', [40], [0]],
    ['Bind off all sts until 1 st remains; fasten off.', [40], [0]],
    ['Fasten off rem st.', [1], [0]],
    ['Work 4 rows in rib. Cast off fairly loosely in rib.', [40], [0]],
    ['Cast off rib-wise.', [40], [0]],
    ['Knit 2 rows, then bind off kwise.', [40], [0]],
    ['BO rem 12 (14, 16) sts for back neck.', [12, 14, 16], [0, 0, 0]],
    ['Next row: Bind off all sts in patt.', [40], [0], { rows: [1] }],
  ]);
});

describe('At the beginning of rows', () => {
  holdsFor([
    ['Cast off 4 sts at beginning of next 6 rows.', [60], [36], { rows: [6] }],
    ['Cast off 4 stitches at the beginning of every row until 20 stitches remain.', [60], [20], { rows: [10] }],
    ['BO 4 sts at beg of next 4 rows, 3 sts at beg of next 2 rows, and 2 sts at beg of next 2 rows.', [60], [34], { rows: [8] }],
    ['At the beginning of the next 2 rows cast off 5 stitches.', [60], [50], { rows: [2] }],
    ['BO 5 sts, k to end. BO 5 sts, p to end.', [60], [50], { rows: [2] }],
    ['Next row: BO 5, work to end. Rep this row once more.', [60], [50], { rows: [2] }],
    ['Next 2 rows: BO 5 sts, work even to end of row.', [60], [50], { rows: [2] }],
    ['BO 5 at beg next 2 rows, 3 at beg foll 2 rows.', [60], [44], { rows: [4] }],
    ['Cast off 10 sts at beg of next and foll alt row.', [30], [10], { rows: [3] }],
    ['Cast off 2 sts at beg of next row and every foll alt row until 50 sts rem.', [60], [50], { rows: [9] }],
    ['Cast off 2 sts at beg of next and every row until 20 sts remain.', [60], [20], { rows: [20] }],
    ['BO 7 sts at beg of next 2 rows for armholes.', [60], [46], { rows: [2] }],
    ['Shape armholes by casting off 5 sts at beg of next 2 rows.', [60], [50], { rows: [2] }],
    ['BO 5 (0, 5) sts at beg of next 2 (0, 2) rows.', [60, 60, 60], [50, 60, 50], { rows: [2, 0, 2] }],
    ['BO 8 (9: 9) sts at beg of next 4 rows and 7 (8: 9) sts at beg of foll 2 rows.', [60, 60, 60], [14, 8, 6], { rows: [6, 6, 6] }],
    ['BO 2 sts at beg of next 3 RS rows.', [60], [54], { rows: [5] }],
    ['Cast off 3 sts at beg of foll alt row.', [60], [57], { rows: [2] }],
    ['Work 1 row. Cast off 8 sts at beg of next row.', [60], [52], { rows: [2] }],
    ['BO 3 sts at beg of row, k to end.', [60], [57], { rows: [1] }],
    ['cast off 3sts at beg of next 2rows,2sts at beg of next 4rows', [60], [46], { rows: [6] }],
    [
      'Bind off 6 sts at the beginning of each of the next 4 rows, then 7 sts at the beginning of each of the following 2 rows.',
      [60],
      [22],
      { rows: [6] },
    ],
    ['Cast off 5 at the beginning of next four rows.', [60], [40], { rows: [4] }],
    [
      'Cast off 6 (7) sts loosely at beg of next 2 rows, then 5 (6) sts at beg of next 2 rows: 38 (38) sts.',
      [60, 64],
      [38, 38],
      { rows: [4, 4] },
    ],
    ['BO 3 sts at the start of the next 4 rows. 48 sts remain.', [60], [48], { rows: [4] }],
    ['Keeping patt correct, cast off 5 sts at beg of next 2 rows.', [60], [50], { rows: [2] }],
    ['Next row (RS): BO 6 sts, patt to end. Next row: BO 6 sts, patt to end—48 sts.', [60], [48], { rows: [2] }],
    ['Cast off 4 sts in rib at beg of next 2 rows.', [60], [52], { rows: [2] }],
  ]);
});

describe('At one edge, or at each edge', () => {
  holdsFor([
    ['Bind off 3 sts at neck edge every other row 3 times.', [30], [21]],
    ['BO 3 sts at neck edge on next row, 2 sts at neck edge on foll 2 alt rows.', [30], [23], { rows: [5] }],
    ['Cast off 5 sts at armhole edge on next and foll 2 alt rows.', [30], [15], { rows: [5] }],
    ['Cast off 8 at beg of next row and 7 at beg of foll 2 alt rows.', [30], [8], { rows: [5] }],
    ['At armhole edge cast off 4 sts once and 2 sts twice.', [40], [32]],
    ['Bind off 5 sts at each armhole edge once, then 2 sts at each armhole edge twice.', [60], [42], { rows: [6] }],
    ['Bind off 6 (7, 8) sts at each side for armholes.', [60, 64, 68], [48, 50, 52], { rows: [2, 2, 2] }],
    ['From armhole edge bind off 6 sts every other row 3 times.', [30], [12]],
    ['BO 4 sts at neck edge once, then dec 1 st at neck edge on next 3 rows.', [30], [23]],
    ['At shoulder edge, BO 7 sts twice.', [30], [16]],
  ]);
});

describe('Inside a row', () => {
  holdsFor([
    ['Next row: K20, BO centre 20 sts, k20.', [60], [40], { rows: [1] }],
    ['Next row: K20, cast off next 20 sts, k to end.', [60], [40], { rows: [1] }],
    ['Next row (RS): K20, join second ball of yarn, BO center 20 sts, k to end.', [60], [40], { rows: [1] }],
    ['Cast off 5 sts, patt to last 5 sts, cast off last 5 sts.', [60], [50], { rows: [1] }],
    ['Next row: BO 5 sts, k to last 5 sts, BO rem 5 sts. Break yarn.', [60], [50], { rows: [1] }],
    ['Next row: BO first 10 sts, k to end.', [60], [50], { rows: [1] }],
    ['BO 10 sts in rib, rib to end.', [60], [50], { rows: [1] }],
    ['Next row: K10, cast off the next 12 sts for pocket opening, k to end.', [60], [48], { rows: [1] }],
    ['Next row (WS): Cast off 25 sts knitwise, p to end.', [60], [35], { side: 'WS', rows: [1] }],
    ['Next row: Cast off 25 (1 st on right needle), k4, k2tog, k to end.', [60], [34], { rows: [1] }],
    ['Next row: K19, cast off 22 sts (1 st on right needle after casting off), k18.', [60], [38], { rows: [1] }],
    ['Next rnd: K to 4 sts before marker, BO 8 sts removing marker, k to end.', [60], [52], { mode: 'round', markers: [30], rows: [1] }],
  ]);
});

describe('With other things in one sentence', () => {
  holdsFor([
    ['Cast off 5 sts at beg of next 2 rows, then dec 1 st at each end of next 3 rows.', [60], [44], { rows: [5] }],
    ['BO 2 sts at beg of next 10 rows, BO rem 40 sts.', [60], [0]],
    ['Cast off 6 sts at beg of next 2 rows. Leave rem 48 sts on a holder.', [60], [0], { waiting: [48], rows: [2] }],
    [
      'Cast off 4 sts at beg of next 2 rows, 3 sts at beg of next 2 rows, dec 1 st at each end of next and foll 3 alt rows (38 sts).',
      [60],
      [38],
      { rows: [11] },
    ],
    [
      '3rd size only: cast off 3 sts at beg of next 2 rows. All sizes: cast off 4 sts at beg of next 2 rows.',
      [60, 60, 60],
      [52, 52, 46],
      { rows: [2, 2, 4] },
    ],
    ['Cast off 5 sts, k to end, inc 2 sts evenly.', [60], [57], { rows: [1] }],
  ]);
});
