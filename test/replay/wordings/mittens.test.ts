/** Mittens and gloves: cuffs, thumb gussets, thumbs, tips, fingers. Common practice, no source; numbers and words made up here. */
import { describe, test } from 'vitest';
import { holds, type Wording } from './worked.ts';

const hands: readonly Wording[] = [
  ['Rnd 1: K17, pm, M1L, k1, M1R, pm, k18 (38 sts; 3 between m).', 36, 38],
  ['Set-up rnd: k1, pm, M1R, k1, M1L, pm, k to end.', 40, 42],
  [
    'Thumb gusset: Next round: K20, place marker, make 1, k1, make 1, place marker, k to end. Knit 2 rounds. Next round: K to marker, slip marker, make 1, k to next marker, make 1, slip marker, k to end.',
    41,
    45,
  ],
  [
    'Inc rnd: K to m, sm, M1L, k to m, M1R, sm, k to end (2 sts inc’d). Knit 2 rnds. Rep last 3 rnds until there are 15 sts between markers.',
    39,
    51,
    { markers: [18, 21] },
  ],
  ['M1, k to m, M1, sm, knit to end.', 43, 45, { markers: [7] }],
  ['1st inc. round: K. 19, inc. in next st., k. 1, inc. in next st., k. to end.', 42, 44],
  ['Next rnd: K18, inc 1, k2, inc 1, k to end. Work 3 rnds. Next rnd: K18, inc 1, k4, inc 1, k to end.', 40, 44],
  ['Rnd 4: k to marker, slm, kfb, k to 1 st before next marker, kfb, slm, k to end.', 42, 44, { markers: [20, 26] }],
  [
    'Next rnd: K to m, remove m, place next 15 sts on waste yarn, remove m, CO 1 over gap, k to end (36 sts).',
    50,
    36,
    { markers: [17, 32] },
  ],
  ['K to m, sl 15 thumb sts to holder, CO 1 over gap, k to end (36 sts).', 50, 36, { markers: [17, 32] }],
  ['Next rnd: K19, slip next 17 sts onto a thread, cast on 3 sts, k to end. 44 sts.', 58, 44],
  ['Place next 17 sts on waste yarn; using backward loops CO 3; join and k to end – 40 (44) sts.', [54, 58], [40, 44]],
  [
    'Next round: Knit to marker; leave the 13 gusset sts on a safety-pin; turn, cast on 1 st, turn; knit to end.',
    49,
    37,
    { markers: [18, 31] },
  ],
  [
    'Thumb opening: k3, k next 8 sts with scrap yarn, slip these 8 sts back to left needle and k them again with main yarn, k to end.',
    44,
    44,
  ],
  ['Rnd 25: K2, bind off 8 sts, k to end. Rnd 26: K2, CO 8 sts over gap, k to end.', 44, 44],
  ['K2, place 8 sts on holder for thumb, CO 8, knit to end of rnd.', 44, 44],
  ['Cont straight for 20 rnds. Shape top. Rnd 1: *K1, ssk, k15, k2tog, k1; rep from * once more. 38 sts.', 42, 38],
  ['[K1, ssk, k to 3 sts before side marker, k2tog, k1] twice.', 44, 40, { markers: [22] }],
  ['Dec rnd: (ssk, k to 2 sts before m, k2tog, sm) twice. Rep this rnd every rnd until 12 sts rem.', 44, 12, { markers: [22] }],
  ['Rnd 1: (K9, k2tog) 4 times. Rnd 2: Knit. Rnd 3: (K8, k2tog) 4 times. Rnd 5: (K7, k2tog) 4 times.', 44, 32],
  [
    'Rnd 40: *k2, k2tog; rep from *. Rnds 41-42: k. Rnd 43: *k1, k2tog; rep from *. Rnd 44: k. Rnd 45: k2tog around. Break yarn, draw through remaining sts.',
    40,
    0,
  ],
  ['Rnd 12: K1, M1R, k3, M1L, k to end.', 40, 42],
  [
    'Pm after first st for thumb gusset: k1, pm, k to end. Rnd 2: M1, k1, M1, sm, k to end. Rnd 3: k. Rnd 4: M1, k3, M1, sm, k to end.',
    38,
    42,
  ],
  ['Next rnd: k4, sl 14 sts to holder without working them, pull yarn across firmly, k to end.', 54, 40],
  ['Turn back cuff: purl 1 rnd, then k 12 rnds, dec 4 sts evenly on last rnd. 40 sts.', 44, 40],
  ['Bind off 15 thumb sts, k to end. Next rnd: CO 15 over bound-off sts, k to end.', 60, 60],
];

const thumbs: readonly Wording[] = [
  [
    'Thumb: k15 held sts, pick up and k 3 sts over gap (18 sts). Knit 14 rnds. *K1, k2tog; rep from * (12). K2tog around (6). Break yarn, thread through.',
    0,
    0,
    { held: [{ name: 'thumb', n: [15] }] },
  ],
  [
    'Slip the 17 thumb sts from the thread onto 3 needles, rejoin yarn and pick up and k 3 sts from base of hand. 20 sts. Knit 16 rounds.',
    0,
    20,
    { held: [{ name: 'thumb', n: [17] }] },
  ],
  [
    'Return 13 held sts to needles. Pick up and knit 1 st in the gap, 14 sts. Join. Knit every round for 5 cm.',
    0,
    14,
    { held: [{ name: 'thumb', n: [13] }] },
  ],
  [
    'Place held 15 sts onto dpns. With RS facing, k across 15 sts, then pick up and k 1 st in corner, 1 st in CO st and 1 st in next corner. 18 sts. Next rnd: k14, k2tog, k2tog: 16 sts.',
    0,
    16,
    { held: [{ name: 'thumb', n: [15] }] },
  ],
  [
    'Thumb tip: Rnd 1: (k4, k2tog) 3 times. Rnd 2: (k3, k2tog) 3 times. Rnd 3: (k2, k2tog) 3 times. Cut yarn, thread through 9 sts.',
    18,
    0,
    { mode: 'round' },
  ],
  ['Next rnd: [k2tog, k1] 6 times – 12 sts. Next rnd: k2tog 6 times. Fasten off through rem 6 sts.', 18, 0, { mode: 'round' }],
  ['K2tog all round, fasten off.', 14, 0, { mode: 'round' }],
  ['Work thumb in rib for 4 rnds, then cast off in rib.', 16, 0, { mode: 'round' }],
  ['Purl 1 round, knit 1 round, purl 1 round. Bind off knitwise.', 20, 0, { mode: 'round' }],
  ['Rnd 1: K to last 4 sts, k2tog, ssk. 16 sts. Rnd 2: Knit.', 18, 16, { mode: 'round' }],
];

const fingers: readonly Wording[] = [
  [
    'Little finger: K first 5 sts of rnd, slip next 38 sts onto waste yarn, cast on 2 sts, k last 5 sts. 12 sts.',
    48,
    12,
    { mode: 'round' },
  ],
  ['First finger. Next row: K34, turn and cast on 2 sts. Next row: P16, turn. Work on these 16 sts for 6 cm.', 53, 55],
  ['Index finger: rnd 1: k6, place all but last 6 sts on holder, CO 2 sts, k6: 14 sts.', 44, 14, { mode: 'round' }],
  ['Knit 20 rounds. Next rnd: k2tog around. Cut yarn and thread through 8 sts.', 16, 0, { mode: 'round' }],
  ['Work 22 rnds. [K2tog, k2] 4 times. K 1 rnd. (K2tog) to end. Fasten off.', 16, 0, { mode: 'round' }],
];

const flat: readonly Wording[] = [
  ['Row 9 (RS): K20, M1, k2, M1, k20. Row 10: P. Row 11: K20, M1, k4, M1, k20. Row 12: P.', 42, 46],
  ['Next row: K. 25, turn, cast on 1, p. 11, turn, cast on 1.', 40, 42],
  [
    'Shape top. 1st row: K1, (sl 1, k1, psso, k14, k2 tog, k1) twice. 2nd row: P. 3rd row: K1, (sl 1, k1, psso, k12, k2 tog, k1) twice.',
    39,
    31,
  ],
  ['Next row: K1, *k2tog, k3; rep from * to last 2 sts, k2. P 1 row. K1, *k2tog, k2; rep from * to last 2 sts, k2.', 43, 27],
  [
    'Thumb: with RS facing, k across 13 sts from holder, cast on 1. Beg with a p row, work 11 rows st st. Next row: (k2tog) 7 times. Thread yarn through.',
    0,
    0,
    { held: [{ name: 'thumb', n: [13] }] },
  ],
  ['Cuff: cast on 38 sts and work 6 cm in k1, p1 rib, inc 4 sts evenly on last row. 42 sts.', 0, 42],
];

describe('mittens', () => {
  test.each(hands.map((each) => [each[0], each] as const))('%s', (_, each) => holds(each, { mode: 'round' }));
  test.each([...thumbs, ...fingers, ...flat].map((each) => [each[0], each] as const))('%s', (_, each) => holds(each));
});
