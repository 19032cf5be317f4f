/** Shawls, knitted-on edgings and cords. Common practice, no source; numbers and words made up here. */
import { describe, test } from 'vitest';
import { holds, type Wording } from './worked.ts';

const tabs: readonly Wording[] = [
  ['CO 3 sts. K 6 rows. Turn 90° clockwise, pick up and k 3 sts along edge, then 3 along CO edge (9 sts).', 0, 9],
  ['Garter tab: CO 2, k 14 rows, pick up 7, pick up 2 – 11 sts.', 0, 11],
  [
    'Cast on 3 sts. Knit 7 rows. Rotate work 90 degrees, pick up and knit 3 sts down the side, then 3 sts from the cast-on edge: 9 sts.',
    0,
    9,
  ],
  [
    'CO 3. Knit 12 rows; do not turn after the last row. Rotate piece a quarter turn and pick up and knit 6 sts in the garter bumps, then pick up and knit 3 sts in the cast-on. 12 sts',
    0,
    12,
  ],
  ['Set-up row (WS): K3, p3, k3.', 9, 9, { side: 'WS' }],
];

const triangles: readonly Wording[] = [
  ['Row 1: k3, yo, k to m, yo, sm, k1, sm, yo, k to last 3 sts, yo, k3. (13 sts)', 9, 13, { markers: [4, 5] }],
  ['Row 1 (RS): K2, yo, k to centre st, yo, k1, yo, k to last 2 sts, yo, k2. Row 2: K2, p to last 2 sts, k2.', 7, 11],
  [
    'Row 1 (RS): K3, yo, knit to marker, yo, slip marker, k1, slip marker, yo, knit to last 3 sts, yo, k3. Row 2 (WS): K3, purl to last 3 sts, k3. Repeat Rows 1–2 19 more times (89 sts).',
    9,
    89,
    { markers: [4, 5] },
  ],
  ['1st row: K1, M1, k to last st, M1, k1. 2nd row: K. Rep these 2 rows until there are 121 sts.', 5, 121],
  ['Row 1: Kfb, k to end. Row 2: Knit. Work Rows 1 and 2 until 100 sts on needle.', 4, 100],
  ['Row 1: k2, M1L, k to end. Row 2: k to last 2 sts, k2. Rep until 120 sts.', 6, 120],
  ['Row 1: kfb, k to last 2 sts, k2tog. Row 2: kfb, k to end. (1 st inc’d every 2 rows)', 30, 31],
  ['Dec half: Row 1: k2, ssk, k to end. Row 2: K. Rep Rows 1 and 2 until 6 sts rem.', 40, 6],
  ['Row 1: K2, yo, k to last 2, yo, k2. Row 2: K2, yo, k to last 2, yo, k2. Rep until 183 sts.', 7, 183],
  ['Inc row: k3, *yo, k1; rep from * to last 3 sts, yo, k3.', 45, 85],
  ['Every row: k2, yo, k to end. Work until there are 60 sts.', 6, 60],
  ['Row 5 (RS): k1, (k1, yo, k1) in next st, k to last 2 sts, (k1, yo, k1) in next st, k1.', 20, 24],
  ['Row 3: K1, kfb twice, k to last 3 sts, kfb twice, k1. Row 4: P.', 20, 24],
  ['Next RS row: k3, [yo, k to m, yo, sm, k1, sm] twice, yo, k to last 3 sts, yo, k3.', 47, 53, { markers: [14, 15, 32, 33] }],
  ['Half circle: Row 1: k3, *yo, k1; rep from * to last 3 sts, k3. Rows 2–4: k. Row 5: k3, *yo, k1; rep from * to last 3 sts, k3.', 9, 18],
  ['Row 1: K to last 3 sts, k2tog, k1. Row 2: K1, kfb, k to end.', 30, 30],
  ['Row 1 (WS): K5, p to 5 sts before m, k5, sm, k1, sm, k5, p to last 5 sts, k5.', 41, 41, { side: 'WS', markers: [20, 21] }],
  ['Cast off very loosely using a larger needle.', 200, 0],
];

const crescents: readonly Wording[] = [
  [
    'Row 1 (RS): K73, turn. Row 2: K15, turn. Row 3: Knit to 1 st before gap, k2tog, k1, turn. Rep Row 3 until all sts are worked (73 sts).',
    131,
    73,
  ],
  [
    'Short Row 1: k67, turn; SR2: p15, turn; SR3: k to 1 st before gap, ssk, k3, turn; SR4: p to 1 st before gap, p2tog, p3, turn. Rep SR3 and 4 until all sts have been worked.',
    119,
    93,
  ],
];

const edgings: readonly Wording[] = [
  [
    'Cast on 9 sts onto LH needle. Row 1 (RS): K8, ssk (last edging st with next shawl st), turn. Row 2: Sl 1, k8. Rep last 2 rows until all shawl sts have been used.',
    60,
    9,
  ],
  ['CO 5. Row 1: K4, k2tog (last edging st and next live st), turn. Row 2: Sl 1, k4. Rep last 2 rows 39 times more.', 40, 5],
  [
    'With shawl on left needle, cast on 6 sts. Row 1: K5, k2tog tbl (1 st of edging together with 1 st of shawl), turn. Row 2: K6. Repeat these two rows until all the shawl stitches are worked off. Bind off 6 sts.',
    30,
    0,
  ],
  ['Using knitted cast-on, CO 7 sts. Edging Row 1: K6, ssk joining edging to shawl, turn. Row 2: Sl 1, k6, turn.', 50, 56],
  ['CO 4. Row 1: k3, skp (last edging st with next border st), turn; Row 2: sl 1, k3.', 20, 23],
  ['Row 1: sl 1, k2, yo, k2tog, yo, k3. Row 2: k9. Row 3: sl 1, k2, yo, k2tog, yo, k4. Row 4: BO 2, k to end.', 8, 8],
  ['Row 12: Bind off 5, k3.', 9, 4],
];

const cords: readonly Wording[] = [
  ['CO 3. *K3; do not turn; slide sts to other end of needle; rep from * until cord measures 20 cm. BO.', 0, 0],
  ['I-cord: k3, sl 3 back.', 3, 3],
  ['*K4, do not turn, slide sts to other end of dpn; rep from * until cord measures 40 cm.', 4, 4],
  ['Row 1: K3, slide.', 3, 3],
  ['CO 3 sts at beg of row. *K2, k2tog tbl, slip 3 sts back to left needle; rep from * until 3 sts rem. BO 3.', 40, 0],
  ['Work a 4-st i-cord for 20 cm. Next row: k1, k2tog, k1, slide. K3tog; fasten off.', 4, 0],
  ['Sl 3 wyif, k to last 3 sts, sl 3 wyif.', 30, 30],
  ['Row 1: K3, patt to last 3 sts, sl 3 wyif.', 30, 30],
  ['With dpns CO 3. Row 1: Knit; without turning, push sts to right end of needle. Rep this row for 10 cm. Thread yarn through sts.', 0, 0],
  ['K3tog. Fasten off.', 3, 0],
];

describe('shawls and edgings', () => {
  test.each([...tabs, ...triangles, ...crescents, ...edgings, ...cords].map((each) => [each[0], each] as const))('%s', (_, each) =>
    holds(each),
  );
});
