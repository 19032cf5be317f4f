/** Hats: brims, crowns of every shape, closings. Common practice, no source; numbers and words made up here. */
import { describe, test } from 'vitest';
import { holds, type Wording } from './worked.ts';

const inRounds: readonly Wording[] = [
  ['Inc rnd: *K8, M1; rep from * around. (108 sts)', 96, 108],
  ['Next round (increase): (k7, kfb) 12 times. 108 sts', 96, 108],
  ['Dec rnd: K2, k2tog, *k10, k2tog; rep from * to end – 91 (102) sts.', [100, 112], [91, 102]],
  ['Knit, inc 6 (8, 10) sts evenly. [102 (112, 122) sts]', [96, 104, 112], [102, 112, 122]],
  [
    'Crown. 1st rnd: *K8, k2tog; rep from * to end. 2nd and every alt rnd: K. 3rd rnd: *K7, k2tog; rep from * to end. 5th rnd: *K6, k2tog; rep from * to end.',
    90,
    63,
  ],
  ['Begin crown shaping: Rnd 1: [K9, k2tog] 8 times (80 sts). Rnd 2: Knit. Rnd 3: [K8, k2tog] 8 times (72 sts).', 88, 72],
  ['SHAPE CROWN: Round 1: K2tog, k10; repeat to end. 88 sts.', 96, 88],
  ['Next Rnd - (K10, K2tog) rep to end of rnd.', 96, 88],
  ['Decrease round: knit 10, knit 2 together, all the way around.', 96, 88],
  [
    'Dec Rnd: *Knit to 2 sts before marker, k2tog, slip marker; rep from * around. 8 sts decreased.',
    80,
    72,
    { markers: [10, 20, 30, 40, 50, 60, 70] },
  ],
  [
    'Place markers: *K12, pm; rep from * 7 times, omitting last marker (BOR). Dec rnd: *k to 2 sts before m, k2tog, sm; rep from * around.',
    96,
    88,
  ],
  [
    'Rnd 1: *K4, k2tog; rep from *. Rnd 2: K. Rnd 3: *K3, k2tog; rep from *. Rnd 4: K. Continue decreasing in this manner, with one st fewer between decreases every other rnd until 9 sts remain.',
    54,
    9,
  ],
  ['Decrease Round 5: K4, ssk around. 40 sts.', 48, 40],
  ['K2tog around; k1 rnd; k2tog around. 10 (11) sts.', [40, 44], [10, 11]],
  ['Rnd 31: *k4, s2kp, k4; rep from * around (72 sts).', 88, 72],
  ['[K2tog, p2tog] around – 44 sts.', 88, 44],
  ['Next rnd: *Sl 1, k2tog, psso, k9; rep from * 7 times more.', 96, 80],
  ['Rnd 2: *P2tog, k2; rep from * to end. Rnd 3: *P1, k2tog; rep from *.', 64, 32],
  ['Next rnd: K2 tog all round. (12 sts)', 24, 12],
  ['Last rnd: (k2tog) 6 times.', 12, 6],
  ['K2tog to last st, k1 – 7 sts.', 13, 7],
  ['Work 2 tog to end of rnd.', 20, 10],
  ['Break yarn, thread through rem 8 sts, pull up and fasten off securely.', 8, 0],
  ['Cut yarn leaving a 20 cm tail. Draw tail through rem sts twice.', 9, 0],
  ['Break off wool and run the end through remaining 6 stitches; draw up and fasten off.', 6, 0],
  [
    'Cut yarn, leaving a long tail. Thread tail onto yarn needle and pull through the live stitches; cinch closed and weave in the end on the inside.',
    10,
    0,
  ],
  ['B&T tightly.', 8, 0],
  ['Gather the remaining 12 sts onto the tail, pull tight and secure.', 12, 0],
  ['Using a tapestry needle, run tail through all 8 sts on needle twice and pull snug.', 8, 0],
  ['Rnd 1: *P5, p2tog; rep from * to end. Rnd 2: P. Rnd 3: *P4, p2tog; rep from * to end. Rnd 4: P.', 56, 40],
  ['Round 15: k1, *k2tog, k6, ssk; rep from * to last st, k1.', 82, 66],
  ['Knit until work measures 15 cm from cast-on edge. Next rnd: *k13, k2tog; rep from * 5 times more.', 90, 84],
  ['CO 8 sts. Join. Rnd 1: kfb around (16). Rnd 2: k. Rnd 3: *k1, kfb; rep from * (24). Rnd 4: k. Rnd 5: *k2, kfb* (32).', 0, 32],
  [
    'Dec rnd: *K2tog, k to 2 sts before m, ssk, sm; rep from * to end. Rep dec rnd every 4th round 3 times, then every other round 5 times. 8 sts.',
    80,
    8,
    { markers: [20, 40, 60] },
  ],
  ['Rnd 1: *K2, k2tog; rep from * to last 2 sts, k2. Rnd 2: Knit. Rnd 3: *K1, k2tog; rep from * to last 2 sts, k2.', 82, 42],
  ['For an adult: [k2tog, k8] x 9 = 81 st', 90, 81],
  ['R1: (k8, k2tog) x 10. R2: k all. R3: (k7, k2tog) x 10. R4: k all. R5: (k6, k2tog) x 10.', 100, 70],
  ['Turn the work inside out, so that the brim faces outwards, and knit 1 round.', 90, 90],
  ['Set-up: k13, pm, (k26, pm) 3 times, k13.', 104, 104],
];

const inRows: readonly Wording[] = [
  ['Row 1 (RS): K1, *k8, k2tog; rep from * to last st, k1.', 82, 74],
  ['1st row: K.1, (k.2 tog., k.6) 10 times, k.1. 2nd row: Purl. 3rd row: K.1, (k.2 tog., k.5) 10 times, k.1.', 82, 62],
  ['Shape top. Next row (RS): K1, (k2tog, k9) to last st, k1 – 72 sts. Next row: P.', 79, 72],
  ['Dec row: P2tog across to last st, p1.', 25, 13],
  ['Next Row: K2tog all across. Break yarn, thread through rem sts, draw up and sew back seam.', 22, 0],
  ['Sl 1, [k2tog, k4] 11 times, k1. Purl one row. Sl 1, [k2tog, k3] 11 times, k1.', 68, 46],
  ['With RS facing, (k2tog, k7) nine times, k1: 73 sts. P 1 row. (K2tog, k6) nine times, k1: 64 sts.', 82, 64],
  ['Work 3 rows st st. Next row: (K5, sl 1, k1, psso) to last 3 sts, k3.', 73, 63],
  ['Next row (WS): P1, *p2tog, p3; rep from * to end. 49 (53) sts.', [61, 66], [49, 53]],
  ['Cont as set, dec 7 sts on every RS row, until 15 sts rem.', 71, 15, { title: 'Crown' }],
];

const flaps: readonly Wording[] = [
  [
    'Cast on 12, k across 20 sts of first flap, cast on 28, k across 20 sts of second flap, cast on 12; pm and join (92 sts).',
    0,
    92,
    {
      held: [
        { name: 'first flap', n: [20] },
        { name: 'second flap', n: [20] },
      ],
    },
  ],
  [
    'CO 5. Row 1: K. Row 2: K1, kfb, k to last 2 sts, kfb, k1. Rep these 2 rows until there are 19 sts. Break yarn and leave sts on a spare needle.',
    0,
    0,
  ],
  [
    'Next rnd: BO 20 sts, k until there are 14 sts on right needle, BO 32 sts, k until 14 sts after bind-off, BO remaining 20 sts.',
    100,
    28,
    {},
  ],
];

describe('hats', () => {
  test.each(inRounds.map((each) => [each[0], each] as const))('%s', (_, each) => holds(each, { mode: each[1] === 0 ? 'flat' : 'round' }));
  test.each([...inRows, ...flaps].map((each) => [each[0], each] as const))('%s', (_, each) => holds(each));
});
