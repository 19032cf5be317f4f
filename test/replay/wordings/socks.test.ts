/** Socks: cuffs, flaps, turned heels, gussets, toes. Common practice, no source; numbers and words made up here. */
import { describe, test } from 'vitest';
import { holds, type Wording } from './worked.ts';

const legs: readonly Wording[] = [
  ['Cast on 60 (64, 68) sts. Divide over 4 needles, join, and work 18 rounds in k2, p2 rib.', 0, [60, 64, 68], { mode: 'flat' }],
  ['Cuff: *K1 tbl, p1; rep from * to end of rnd. Rep this round 14 more times.', 64, 64, { rows: 15 }],
  ['Next rnd: dec 2 sts at centre back: K1, k2tog, k to last 3 sts, ssk, k1. 62 sts.', 64, 62],
  ['Knit 30 rounds, or until leg is the desired length.', 60, 60],
  [
    'Leg shaping: Rnd 1: k1, k2tog, k to last 3 sts, ssk, k1. Rnds 2-6: knit. Rep these 6 rnds 3 times more – 56 sts.',
    64,
    56,
    { rows: 24 },
  ],
];

const flaps: readonly Wording[] = [
  [
    'Row 1 (RS): *Sl 1 pwise wyib, k1; rep from * to end. Row 2 (WS): Sl 1, p to end. Rep these 2 rows 14 times more, ending with a WS row (30 rows).',
    30,
    30,
    { rows: 30 },
  ],
  ['1st row: * S1, K1; rep from * to end. 2nd row: S1, p to end. Rep 1st and 2nd rows 13 times.', 28, 28, { rows: 28 }],
  [
    'Heel flap is worked back and forth. Row 1: Sl 1, k to end. Row 2: Sl 1, p to end. Work these two rows until you have worked 32 rows.',
    32,
    32,
    { rows: 32 },
  ],
  [
    'Eye of partridge: Row 1 (RS): (sl 1, k1) across. Row 2: Sl 1, p across. Row 3: Sl 1, *sl 1, k1; rep from * to last st, k1. Row 4: as Row 2. Work Rows 1–4 seven times in all.',
    32,
    32,
    { rows: 28 },
  ],
  ['Row 1: Sl1, (k1, sl1) to last st, k1. Row 2: Sl1, p to last st, k1.', 30, 30],
  [
    'Row 1: K3, *sl 1, k1; rep from * to last 3 sts, k3. Row 2: K3, p to last 3 sts, k3. Rep Rows 1 and 2 until there are 15 garter ridges at the edges.',
    30,
    30,
  ],
  ['Work 32 rows of heel stitch in all: Row 1: (sl 1, k1) to end; Row 2: sl 1, p to end.', 32, 32],
];

/** Turned heels on rows: the heel's stitches only. */
const turns: readonly Wording[] = [
  [
    'Turn heel as follows: 1st row: K17, skpo, k1, turn. 2nd row: Sl 1, p5, p2tog, p1, turn. 3rd row: Sl 1, k6, skpo, k1, turn. 4th row: Sl 1, p7, p2tog, p1, turn. 5th row: Sl 1, k8, skpo, k1, turn. 6th row: Sl 1, p9, p2tog, p1, turn. Continue in this way, working one more st before the decrease on each row, until all sts have been worked. 18 sts.',
    30,
    18,
    { rows: 12 },
  ],
  [
    'sl 1, p14, p2tog, p1, turn; sl 1, k5, k2tog, k1, turn; sl 1, p6, p2tog, p1, turn; sl 1, k7, k2tog, k1, turn; sl 1, p8, p2tog, p1, turn; sl 1, k9, k2tog, k1, turn',
    26,
    20,
    { side: 'WS' },
  ],
  [
    'Row 1 (RS): Knit 18 sts, ssk, k1. Turn. Row 2 (WS): Slip 1, purl 5, p2tog, p1. Turn. Row 3: Slip 1, knit to one st before gap, ssk (using one st on either side of the gap), k1. Turn. Row 4: Slip 1, purl to one st before gap, p2tog, p1. Turn. Repeat Rows 3 & 4 until all of the heel stitches have been used. 18 sts remain.',
    32,
    18,
    { rows: 14 },
  ],
  [
    'Row 1: K15, k2 tog, k1, turn. Row 2: P6, p2 tog, p1, turn. Row 3: K7, k2 tog, k1, turn. Row 4: P8, p2 tog, p1, turn.',
    26,
    22,
    { cursors: [17, 8, 17, 6] },
  ],
  [
    'Dutch heel: Row 1: K19, ssk, turn. Row 2: Sl 1, p8, p2tog, turn. Row 3: Sl 1, k8, ssk, turn. Repeat Rows 2 and 3 until 10 sts remain.',
    30,
    10,
  ],
  [
    '1st row: K20, sl 1, k1, psso, turn. 2nd row: Sl 1, p8, p2 tog, turn. 3rd row: Sl 1, k8, sl 1, k1, psso, turn. Rep 2nd and 3rd rows until all side stitches are worked off. 10 sts.',
    32,
    10,
  ],
  [
    'Band heel. Set-up row (RS): k17, ssk, turn. Next row: sl 1, p6, p2tog, turn. Next row: sl 1, k6, ssk, turn. Rep last 2 rows until 8 sts are left, ending with a WS row.',
    28,
    8,
  ],
  ['Row 9: Sl 1, k to last 2 sts, ssk, turn. Row 10: Sl 1, p to last 2 sts, p2tog.', 20, 18],
  [
    'Row 1: S1, K14, K2TOG, K1, TURN. Row 2: S1, P5, P2TOG, P1, TURN. Row 3: S1, K TO 1 ST BEFORE GAP, K2TOG, K1, TURN. Row 4: S1, P TO 1 ST BEFORE GAP, P2TOG, P1, TURN. REP ROWS 3 AND 4 UNTIL ALL STS ARE WORKED. 16 STS.',
    26,
    16,
  ],
  [
    'Heel turn: Knit 14, k2tog, k1, turn; slip 1, purl 5, purl 2 together, purl 1, turn; * slip 1, knit to the stitch before the gap, k2tog across the gap, k1, turn; slip 1, purl to the stitch before the gap, p2tog, p1, turn; repeat from * until all heel stitches have been worked.',
    24,
    14,
  ],
  ['Three-needle heel: K15, turn, and with right sides together cast off both halves together.', 30, 0],
];

const shortHeels: readonly Wording[] = [
  [
    'Row 1 (RS): K27, w&t. Row 2 (WS): P26, w&t. Row 3: K to 1 st before wrapped st, w&t. Row 4: P to 1 st before wrapped st, w&t. Rep last 2 rows until 8 sts remain unwrapped in the centre.',
    28,
    28,
    { rows: 20 },
  ],
  [
    '1st row: K to last st, wrap next st, turn. 2nd row: P to last st, wrap next st, turn. 3rd row: K to last 2 sts, wrap next st, turn. 4th row: P to last 2 sts, wrap next st, turn. Cont in this way, leaving 1 more st unworked at end of every row, until 10 sts are left in the centre.',
    30,
    30,
    { rows: 20 },
  ],
  [
    'Row 1: K28, turn. Row 2: MDS, p to end, turn. Row 3: MDS, k to DS, turn. Row 4: MDS, p to DS, turn. Repeat last 2 rows until there are 10 DS at each side.',
    28,
    28,
    { rows: 20 },
  ],
  ['K27, turn. Yo, p26, turn. Yo, k25, turn. Yo, p24, turn.', 28, 28, { cursors: [27, 1, 26, 2] }],
  [
    'SR1: K to last st, turn. SR2: sl 1 wyif, p to last st, turn. SR3: sl 1 wyib, k to 1 st before gap, turn. SR4: sl 1 wyif, p to 1 st before gap, turn.',
    24,
    24,
    { cursors: [23, 1, 22, 2] },
  ],
  [
    'Working on the 32 heel sts only: Row 1: K31, w&t. Row 2: P30, w&t. Row 3: K29, w&t. Row 4: P28, w&t.',
    32,
    32,
    { cursors: [31, 1, 30, 2] },
  ],
];

const gussets: readonly Wording[] = [
  ['K18, pick up and k 16 sts along side of flap.', 18, 34],
  ['Next row: Sl 1, k to end, then pick up and knit 15 (16, 17) stitches down left side of heel flap.', [16, 18, 18], [31, 34, 35]],
  [
    "Rnd 1: K to 3 sts before m, k2tog, k1, sm, work to m, sm, k1, ssk, k to BOR (2 sts dec'd). Rnd 2: Work even. Rep Rnds 1 and 2 9 times more. 60 sts.",
    80,
    60,
    { mode: 'round', markers: [25, 55] },
  ],
  [
    'Gusset: 1st rnd: 1st needle: K to last 3 sts, k2 tog, k1. 2nd needle: K. 3rd needle: K1, skpo, k to end. 2nd rnd: K. Rep these 2 rnds until 64 sts rem.',
    82,
    64,
    { mode: 'round' },
  ],
  [
    'Inc rnd: K1, M1R, k to last st before marker, M1L, k1, sm, work instep to end. Rnd 2: work even. Rep last 2 rnds until there are 50 sts before the marker.',
    60,
    80,
    { mode: 'round', markers: [30] },
  ],
  [
    'Gusset increases: Rnd 1: work instep sts, sm, M1L, k to end of rnd, M1R. Rnd 2: work even. Work these 2 rnds 10 times in total. 80 sts.',
    60,
    80,
    { mode: 'round', markers: [30] },
  ],
];

const toes: readonly Wording[] = [
  [
    'Rnd 1: N1: k to last 3 sts, k2tog, k1; N2: k1, ssk, k to last 3 sts, k2tog, k1; N3: k1, ssk, k to end. Rnd 2: k. Rep Rnds 1 and 2 8 times more. 24 sts.',
    60,
    24,
    { mode: 'round' },
  ],
  [
    'Toe dec: *K1, ssk, k to 3 sts before m, k2tog, k1, sm; rep from * once more. 4 sts decreased. Rep on every alt rnd until 32 sts rem, then on every rnd until 16 sts rem.',
    64,
    16,
    { mode: 'round', markers: [32] },
  ],
  ['[Ssk, k to last 2 sts of needle, k2tog] twice. Knit 1 rnd.', 56, 52, { mode: 'round' }],
  [
    'Rnd 1: *K6, k2tog; rep from * around. Knit 6 rnds. *K5, k2tog; rep from * around. Knit 5 rnds. *K4, k2tog; rep from * around. Knit 4 rnds.',
    64,
    40,
    { mode: 'round', rows: 18 },
  ],
  ['Divide sts over 2 needles, 12 on each, and graft toe.', 24, 0, { mode: 'round' }],
  ['Graft the 2 sets of 8 sts together.', 16, 0, { mode: 'round' }],
  ['K6 from first needle onto third needle. Cut yarn and weave the toe sts together using Kitchener stitch.', 24, 0, { mode: 'round' }],
  ['Star toe: [k6, k2tog] 7 times; knit 6 rounds; [k5, k2tog] 7 times; knit 5 rounds; [k4, k2tog] 7 times.', 56, 35, { mode: 'round' }],
  ['Cast off 3-needle style with right sides together.', 20, 0, { mode: 'round' }],
  [
    'CO 24 sts (12 per needle). Rnd 1: knit. Rnd 2: [k1, M1R, k to last st of needle, M1L, k1] twice. Rep last 2 rnds until there are 60 sts.',
    0,
    60,
  ],
  [
    'Using a toe-up cast-on, CO 8 sts on each of 2 needles. Rnd 1: K. Rnd 2: *K1, kfb, k to last 2 sts on needle, kfb, k1; rep from * once. Rep Rnds 1 and 2 until 56 sts.',
    0,
    56,
  ],
  ['Using a figure-eight cast-on, cast on 20 sts, 10 on each needle. Next rnd: *K1, M1, k8, M1, k1; rep from * once more. 24 sts.', 0, 24],
  [
    'Inc rnd: [k1, M1R, k to last st of needle, M1L, k1] twice. Inc every rnd to 40, then every other rnd to 64.',
    24,
    64,
    { mode: 'round' },
  ],
];

const inserted: readonly Wording[] = [
  ['K30 with waste yarn, slip the 30 sts back to left needle, k across them with main yarn, k to end.', 60, 60, { mode: 'round' }],
  [
    'With a length of contrast yarn, knit the next 28 sts; slide these sts back to the left needle and knit them again in working yarn; knit to end of rnd.',
    56,
    56,
    { mode: 'round' },
  ],
  [
    'Dec rnd: [k1, ssk, k to 3 sts before marker, k2tog, k1, sm] twice. Knit 1 rnd. Rep these 2 rnds until 20 sts remain; graft heel.',
    60,
    0,
    { mode: 'round', markers: [30] },
  ],
  [
    'Heel shaping: Rnd 1: (K1, ssk, k24, k2tog, k1) twice (56). Rnd 2 and all alt rnds: k. Rnd 3: (K1, ssk, k22, k2tog, k1) twice (52). Rnd 5: (K1, ssk, k20, k2tog, k1) twice.',
    60,
    48,
    { mode: 'round' },
  ],
];

const flat = [...flaps, ...turns, ...shortHeels, ...gussets, ...toes.filter((each) => each[3]?.mode === undefined)];
const round = [...legs, ...toes.filter((each) => each[3]?.mode !== undefined), ...inserted];

describe('socks', () => {
  test.each(flat.map((each) => [each[0], each] as const))('%s', (_, each) => holds(each));
  test.each(round.map((each) => [each[0], each] as const))('%s', (_, each) => holds(each, { mode: 'round' }));
});
