/** Series of shaping rows and rounds, and rows worked again. Common practice, no source; numbers and words made up here. */
import { describe, test } from 'vitest';
import { holds, type Wording } from './worked.ts';

const rounds: readonly Wording[] = [
  [
    'Dec rnd: K1, k2tog, k to last 3 sts, ssk, k1. Rep dec rnd every foll 4th rnd 6 times, then every 2nd rnd 3 times.',
    60,
    40,
    { rows: 31 },
  ],
  [
    'Dec rnd: k1, k2tog, k to last 3 sts, ssk, k1. Work dec rnd every 8th rnd 4 more times, then every 6th rnd 5 more times.',
    72,
    52,
    { rows: 63 },
  ],
  [
    'Work 7 rnds even. Rnd 8: k1, k2tog, k to last 3 sts, ssk, k1. Repeat these 8 rnds 4 (5, 5) more times.',
    [64, 68, 72],
    [54, 56, 60],
    { rows: 40 },
  ],
  [
    'Inc rnd: K1, M1L, k to last st, M1R, k1. Repeat Inc rnd every 6th round five more times, then every 4th round until there are 70 sts.',
    50,
    70,
  ],
  ['Rnd 1: K1, k2tog, k to last 3 sts, ssk, k1. K 9 rnds. Rep the last 10 rnds 3 times, then rep Rnd 1 once more.', 60, 50, { rows: 41 }],
  [
    'Dec rnd: *k8, k2tog; rep from *. Knit 3 rnds. Dec rnd: *k7, k2tog; rep from *. Knit 2 rnds. Dec rnd: *k6, k2tog; rep from *. K 1 rnd. Dec rnd: *k5, k2tog; rep from *.',
    80,
    48,
    { rows: 10 },
  ],
  ['Dec 2 sts every 10 (8, 8) rnds 5 (6, 7) times.', [60, 64, 68], [50, 52, 54]],
  ['Dec rnd: ssk, k to last 2 sts, k2tog. Repeat dec rnd alternately every 2nd and 4th rnd until 44 sts rem.', 60, 44],
  ['Dec rnd: K1, ssk, k to last 3 sts, k2tog, k1. Knit 5 (4) rnds. Rep these 6 (5) rnds 7 (8) times more.', [60, 62], [44, 44]],
  [
    'Rnds 1–3: K. Rnd 4: K2tog, k to last 2 sts, ssk. Rep Rnds 1–4 until 40 sts remain, then work Rnds 3 and 4 only until 30 sts remain.',
    50,
    30,
    { rows: 30 },
  ],
];

const rows: readonly Wording[] = [
  ['Dec 1 st at each end of next and every foll 4th row until 48 sts rem.', 60, 48, { rows: 21 }],
  ['Inc 1 st at each end of 5th and every foll 6th row until there are 70 sts.', 50, 70, { rows: 59 }],
  ['Dec 1 st at neck edge on next 4 rows, then on foll 3 alt rows.', 30, 23, { rows: 10 }],
  ['Dec one stitch at both ends of the next row and following 3 alternate rows.', 40, 32, { rows: 7 }],
  ['Dec 1 st at each end of every row until 12 sts rem.', 30, 12, { rows: 9 }],
  ['Inc 1 st at both ends of next and foll 4th row, then on every 6th row until there are 50 sts.', 40, 50, { rows: 23 }],
  ['Inc row (RS): K2, M1, k to last 2 sts, M1, k2. Rep inc row every 8 rows 5 times, then every 6 rows 3 times.', 40, 58, { rows: 59 }],
  ['Dec row: k1, ssk, k to last 3 sts, k2tog, k1. Rep dec row every RS row 9 more times. P 1 row.', 60, 40, { rows: 20 }],
  ['Dec 1 st at beg of every row until 20 sts rem.', 30, 20, { rows: 10 }],
  ['Work 21 rows, dec 1 st at each end of 5th and every foll 4th row.', 40, 30, { rows: 21 }],
  ['Cast off 4 sts at beg of next 2 rows, 3 sts at beg of foll 2 rows, then 2 sts at beg of next 4 rows.', 60, 38, { rows: 8 }],
  ['Dec 1 st at each end of next 3 rows, then every alt row 5 times, then every 4th row twice.', 60, 40],
  ['Inc 1 st at each end of every 4th row 3 times, then of every 6th row 4 times. 54 sts.', 40, 54],
  ['Dec 1 st each side every other row 6 times, every 4th row 3 times.', 50, 32],
  ['Bind off 5 sts at the beginning of the next 2 rows, then decrease 1 stitch each end every RS row 4 times.', 50, 32],
  [
    'Row 1 (RS): K. Row 2: P. Row 3: k2tog, k to end. Row 4: P. Rep these 4 rows 5 times more, then rep rows 3 and 4 only until 10 sts rem.',
    24,
    10,
  ],
];

const again: readonly Wording[] = [
  ['Row 1: K. Row 2: P. Rep last 2 rows 4 times.', 20, 20, { rows: 10 }],
  ['Row 1: K. Row 2: P. Rep last 2 rows 4 times in all.', 20, 20, { rows: 8 }],
  [
    'Row 1: K. Row 2: P. Row 3: K1, *yo, k2tog; rep from * to last st, k1. Row 4: P. These 4 rows form the pattern. Work a further 12 rows in pattern.',
    20,
    20,
    { rows: 16 },
  ],
  ['Row 1: K2tog, k to end. Row 2: P. Work last 2 rows 5 times more.', 20, 14, { rows: 12 }],
  ['Row 1: K. Row 2: P. Work these 2 rows 6 times.', 20, 20, { rows: 12 }],
  ['Row 1: Kfb, k to end. Row 2: As Row 1. Rep Rows 1 and 2 until 30 sts.', 20, 30, { rows: 10 }],
  ['Row 1: K2tog, k to last 2 sts, ssk. Row 2: P. Rep these two rows once more, then Row 1 again.', 20, 14, { rows: 5 }],
  ['Rnd 1: K. Rnd 2: P. Work these two rounds a total of 5 times.', 20, 20, { rows: 10, mode: 'round' }],
  ['Rnd 1: K. Rnd 2: P. Repeat the last two rounds until you have 8 purl ridges.', 20, 20, { mode: 'round' }],
  ['Row 1: K. Row 2: P. Rows 3–10: Rep Rows 1 and 2 four times.', 20, 20, { rows: 10 }],
  ['9th to 14th rows: knit.', 20, 20, { rows: 6 }],
  ['Row 1: K2tog, k to end. Row 2: P. Rep rows 1 & 2, 3 (4, 5) times, ending after Row 1.', [20, 22, 24], [16, 17, 18]],
  ['Rnd 1: *K2, p2; rep from *. Rep Rnd 1 for 12 rnds.', 40, 40, { mode: 'round', rows: 13 }],
  ['Rnd 1: *K2, p2; rep from *. Rep this rnd until 12 rnds have been worked.', 40, 40, { mode: 'round', rows: 12 }],
];

describe('series', () => {
  test.each(rounds.map((each) => [each[0], each] as const))('%s', (_, each) => holds(each, { mode: 'round' }));
  test.each([...rows, ...again].map((each) => [each[0], each] as const))('%s', (_, each) => holds(each));
});
