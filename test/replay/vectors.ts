/**
 * Shaping, repeats, casting off and dividing in garment language, with what is on the needles afterwards. The sums
 * are arithmetic; they were worked out apart from this program. Common practice, no source.
 */
export interface Vector {
  readonly text: string;
  readonly start: readonly number[];
  readonly first?: 'RS' | 'WS';
  readonly mode?: 'round';
  readonly end?: readonly number[];
  readonly rows?: readonly number[];
  /** Fewest and most rows, where the words leave it open. */
  readonly rowsBetween?: readonly [number, number];
  readonly last?: readonly ('RS' | 'WS' | null)[];
  readonly held?: readonly number[];
  readonly holders?: readonly { readonly name: string; readonly n: readonly number[] }[];
  /** Kind of the observation that the text must lead to. */
  readonly refused?: string;
}

const decRow = 'Row 1 (RS): K1, ssk, k to last 3 sts, k2tog, k1. Row 2: P to end.';

export const vectors: readonly Vector[] = [
  {
    start: [104, 112, 122, 130],
    text: 'Cast off 5 (6: 7: 8) sts at beg of next 2 rows.',
    end: [94, 100, 108, 114],
    rows: [2, 2, 2, 2],
    last: ['WS', 'WS', 'WS', 'WS'],
  },
  {
    start: [94, 100, 108, 114],
    text: 'Dec 1 st at each end of next 3 (3: 5: 5) rows, then on foll 2 (3: 3: 4) alt rows, then on foll 4th row.',
    end: [82, 86, 90, 94],
    rows: [11, 13, 15, 17],
    last: ['RS', 'RS', 'RS', 'RS'],
  },
  {
    start: [82, 86, 90, 94],
    text: 'Cast off 7 (8: 8: 9) sts at beg of next 4 rows, then 8 (7: 9: 8) sts at beg of foll 2 rows.',
    end: [38, 40, 40, 42],
    rows: [6, 6, 6, 6],
    last: ['WS', 'WS', 'WS', 'WS'],
  },
  {
    start: [80, 84, 90, 94],
    text: 'Cast off 4 (–: 5: –) sts at beg of next 2 (–: 4: –) rows.',
    end: [72, 84, 70, 94],
    rows: [2, 0, 4, 0],
    last: ['WS', null, 'WS', null],
  },
  { start: [78], text: 'Dec 1 st at each end of next and foll 6 rows.', end: [64], rows: [7], last: ['RS'] },
  { start: [78], text: 'Dec 1 st at each end of next and foll 6th row.', end: [74], rows: [7], last: ['RS'] },
  { start: [90, 98], text: 'Dec 1 st at each end of next and 3 foll 4th rows.', end: [82, 90], rows: [13, 13], last: ['RS', 'RS'] },
  {
    start: [75, 83],
    text: 'Dec 1 st at each end of 4th and foll 12th row, then on 2 foll 6th rows.',
    end: [67, 75],
    rows: [28, 28],
    last: ['WS', 'WS'],
  },
  {
    start: [46, 48, 50, 54],
    text: 'Inc 1 st at each end of next and every foll 6th row until there are 70 (74: 80: 84) sts.',
    end: [70, 74, 80, 84],
    rows: [67, 73, 85, 85],
    last: ['RS', 'RS', 'RS', 'RS'],
  },
  {
    start: [50, 52],
    text: 'Inc 1 st at each end of 3rd and every foll 6th row to 58 sts, then on every foll 8th row until there are 64 (66) sts.',
    end: [64, 66],
    rows: [45, 47],
    last: ['RS', 'RS'],
  },
  {
    start: [57, 61],
    text: 'Work 21 (23) rows dec 1 st at each end of next and every foll alt row.',
    end: [35, 37],
    rows: [21, 23],
    last: ['RS', 'RS'],
  },
  { start: [57], text: 'Work 22 rows dec 1 st at each end of next and every foll alt row.', end: [35], rows: [22], last: ['WS'] },
  {
    start: [40, 44],
    text: 'Work 30 (34) rows inc 1 st at each end of 5th and every foll 8th row.',
    end: [48, 52],
    rows: [30, 34],
    last: ['WS', 'WS'],
  },
  {
    start: [84, 90, 96, 104],
    text: 'Dec Row (RS): K1, ssk, k to last 3 sts, k2tog, k1. Rep Dec Row every RS row 3 (4, 5, 6) more times, then every 4th row 2 times.',
    end: [72, 76, 80, 86],
    rows: [15, 17, 19, 21],
    last: ['RS', 'RS', 'RS', 'RS'],
  },
  {
    start: [58, 62, 68, 72],
    text: 'Dec Row (RS): K1, k2tog, k to last 3 sts, ssk, k1. Rep Dec Row every 8th (8th, 6th, 6th) row 5 (6, 8, 9) more times.',
    end: [46, 48, 50, 52],
    rows: [41, 49, 49, 55],
    last: ['RS', 'RS', 'RS', 'RS'],
  },
  {
    start: [100, 106, 110],
    text: `${decRow} Rep last 2 rows 5 (6, 7) times more.`,
    end: [88, 92, 94],
    rows: [12, 14, 16],
    last: ['WS', 'WS', 'WS'],
  },
  { start: [100], text: `${decRow} Rep last 2 rows 5 times in all.`, end: [90], rows: [10], last: ['WS'] },
  { start: [100], text: `${decRow} Rep last 2 rows until 76 sts rem.`, end: [76], rows: [24], last: ['WS'] },
  {
    start: [60, 64],
    text: 'Row 1 (RS): K2, k2tog, k to end. Row 2: P to end. Rep last 2 rows 0 (2) times more.',
    end: [59, 61],
    rows: [2, 6],
    last: ['WS', 'WS'],
  },
  {
    start: [98, 106, 114, 122],
    text: 'Row 1 (RS): K2, *p2, k2; rep from * to end.',
    end: [98, 106, 114, 122],
    rows: [1, 1, 1, 1],
    last: ['RS', 'RS', 'RS', 'RS'],
  },
  { start: [100], text: 'Row 1 (RS): K2, *p2, k2; rep from * to end.', refused: 'repeatDoesNotFit' },
  {
    start: [81, 89, 97],
    text: 'Row 1 (WS): P4, [m1, p9 (10: 11)] 8 times, p5.',
    first: 'WS',
    end: [89, 97, 105],
    rows: [1, 1, 1],
    last: ['WS', 'WS', 'WS'],
  },
  {
    start: [62, 75, 80, 94],
    text: 'Row 1 (WS): P3 (5: 4: 6), p2tog, [p7 (7: 8: 8), p2tog] 6 (7: 7: 8) times, p3 (5: 4: 6).',
    first: 'WS',
    end: [55, 67, 72, 85],
    rows: [1, 1, 1, 1],
    last: ['WS', 'WS', 'WS', 'WS'],
  },
  {
    start: [248, 264, 280],
    mode: 'round',
    text: 'Rnd 1: *K6, k2tog; rep from * to end. Rnd 2: *K5, k2tog; rep from * to end. Rnd 3: *K4, k2tog; rep from * to end. Rnd 4: *K3, k2tog; rep from * to end.',
    end: [124, 132, 140],
    rows: [4, 4, 4],
    last: ['RS', 'RS', 'RS'],
  },
  { start: [248], mode: 'round', text: 'Rnd 1: *K5, k2tog; rep from * to end.', refused: 'repeatDoesNotFit' },
  { start: [94], text: 'Row 1 (RS): K3, ssk, k to last 5 sts, k2tog, k2.', refused: 'leftOver' },
  { start: [73], text: 'Row 1 (RS): K26, BO 21 sts, k26.', end: [52], rows: [1], last: ['RS'] },
  { start: [74], text: 'Row 1 (RS): K26, BO 21 sts, k26.', end: [53], rows: [1], last: ['RS'] },
  { start: [16], text: 'Row 1 (RS): K6, BO 4 sts, k5.', end: [12], rows: [1], last: ['RS'] },
  {
    start: [94, 100, 106],
    text: 'Row 1 (RS): K4, [BO 2 sts, k until 12 (13: 14) sts after BO] 6 times, BO 2 sts, k to end.',
    end: [80, 86, 92],
    rows: [1, 1, 1],
    last: ['RS', 'RS', 'RS'],
  },
  {
    start: [100, 106, 112],
    text: 'Row 1 (RS): K3, [yo, k2tog, k13 (14: 15)] 6 times, yo, k2tog, k5.',
    end: [100, 106, 112],
    rows: [1, 1, 1],
    last: ['RS', 'RS', 'RS'],
  },
  {
    start: [80, 84, 88, 92],
    mode: 'round',
    text: 'Rnd 1: K28 (30, 32, 34), pm, k12, pm, k28 (30, 32, 34), pm, k12, pm. Rnd 2: [K1, m1, k to 1 st before m, m1, k1, sm] 4 times. Rnd 3: K to end. Rep last 2 rnds 19 (21, 23, 25) times more.',
    end: [240, 260, 280, 300],
    rows: [41, 45, 49, 53],
    last: ['RS', 'RS', 'RS', 'RS'],
  },
  {
    start: [248],
    mode: 'round',
    text: 'Rnd 1: K72, pm, k52, pm, k72, pm, k52, pm. Rnd 2: [K1, ssk, k to 3 sts before m, k2tog, k1, sm] 4 times. Rnd 3: K to end. Rep last 2 rnds 19 times more.',
    end: [88],
    rows: [41],
    last: ['RS'],
  },
  {
    start: [82, 86, 90, 94],
    text: 'Row 1 (RS): K30 (31: 34: 35), turn, leaving rem sts on a holder.',
    end: [30, 31, 34, 35],
    rows: [1, 1, 1, 1],
    last: ['RS', 'RS', 'RS', 'RS'],
    held: [52, 55, 56, 59],
  },
  {
    start: [30, 31, 34, 35],
    first: 'WS',
    text: 'Dec 1 st at neck edge of next 4 rows, then on foll 4 (4: 5: 5) alt rows.',
    end: [22, 23, 25, 26],
    rows: [12, 12, 14, 14],
    last: ['RS', 'RS', 'RS', 'RS'],
  },
  { start: [118, 128, 138], text: 'Cast on 8 sts at beg of next 2 rows.', end: [134, 144, 154], rows: [2, 2, 2], last: ['WS', 'WS', 'WS'] },
  { start: [104], text: 'Dec 1 st at each end every other row 4 times.', end: [96], rowsBetween: [7, 8] },
  { start: [60], text: 'Cast off 6 sts at beg of next and foll 5 rows.', end: [24], rows: [6], last: ['WS'] },
  {
    start: [0, 0, 0, 0],
    text: 'Pick up and k 20 (20: 22: 22) sts, k 22 (24: 22: 24) sts from holder, pick up and k 20 (20: 22: 22) sts, k 38 (40: 40: 42) sts from holder.',
    holders: [
      { name: 'front neck holder', n: [22, 24, 22, 24] },
      { name: 'back neck holder', n: [38, 40, 40, 42] },
    ],
    end: [100, 104, 106, 110],
    rows: [1, 1, 1, 1],
    last: ['RS', 'RS', 'RS', 'RS'],
  },
  { start: [126], mode: 'round', text: 'Rnd 1: K43, s2kp, k80. Rnd 2: K to end.', end: [124], rows: [2], last: ['RS'] },
];
