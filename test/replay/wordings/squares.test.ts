/** Squares, circles, wedges, entrelac, toys, provisional edges and closings. Common practice, no source; numbers and words made up here. */
import { describe, test } from 'vitest';
import { holds, type Wording } from './worked.ts';

const squares: readonly Wording[] = [
  ['CO 41. Row 1 (WS): K. Row 2: k19, s2kp, k19 (39 sts).', 0, 39],
  ['Row 2 (RS): K to 1 st before centre st, cdd, k to end (2 sts dec’d).', 41, 39],
  [
    'Cast on 31 sts and mark the centre stitch. Row 1 (WS): Knit. Row 2: K to 1 st before centre st, s2kp, k to end. Rep Rows 1 and 2 until 3 sts rem. Next row: K. Next row: sl 1, k2tog, psso. Fasten off.',
    0,
    0,
  ],
  ['K to 2 sts before m, k2tog, sm, ssk, k to end. (38 sts)', 40, 38, { markers: [20] }],
  ['Next RS row: k to centre 3 sts, cdd, k to end.', 21, 19],
  [
    'Mitre: Row 1 (RS): k14, sl 1, k2tog, psso, k14. Row 2: k14, p1, k14. Row 3: k13, sl 1, k2tog, psso, k13. Row 4: k13, p1, k13. Cont in this way until 1 st rem.',
    31,
    1,
  ],
  ['Pick up 20 sts down left edge of sq 1, 1 st in corner, CO 20 (41 sts).', 0, 41],
  ['With RS facing, pick up and knit 15 sts along top of square 1, 1 st in the corner and 15 sts along side of square 2. 31 sts.', 0, 31],
  [
    'Row 1: K1, k2tog, k to last 3 sts, k2tog, k1. Row 2: K. Rep these 2 rows until 5 sts remain, then K2tog, k1, k2tog; k3tog; fasten off.',
    25,
    0,
  ],
  [
    'Corner-to-corner: CO 3. Row 1: K1, yo, k to end. Rep Row 1 until 50 sts. Row 2: k1, k2tog, yo, k2tog, k to end. Rep Row 2 until 4 sts rem.',
    0,
    4,
  ],
  ['Turn block a quarter turn, pick up and k 11 sts along edge (12 sts with the st on needle). K 23 rows. BO until 1 st rem.', 1, 1],
  ['Strip 3: pick up and k 24 (1 per ridge) along Strip 1, then k 12 live sts (36).', 12, 36],
];

const circles: readonly Wording[] = [
  ['CO 8. Rnd 1: *k1, yo; rep from * around (16). Rnd 2: k. Rnd 3: *k2, yo; rep from * around (24).', 0, 24],
  [
    'Cast on 9 sts by the circle method, join. Round 1: k. Round 2: *yo, k1; rep from *. 18 sts. Rounds 3–5: k. Round 6: *yo, k1; rep from *. 36 sts. Rounds 7-12: K. Round 13: *yo, k1; rep from *. 72 sts.',
    0,
    72,
  ],
  ['Rnd 5: *k3, yo; rep from * 8 times (32 sts).', 24, 32, { mode: 'round' }],
  ['Inc rnd: *k to marked st, yo, k1, yo; rep from * 3 times more (8 inc’d).', 24, 32, { mode: 'round', markers: [5, 11, 17, 23] }],
  [
    'Inc rnd: *k to m, yo, sm; rep from * around. Knit 1 rnd. Rep these 2 rnds 9 times more.',
    12,
    72,
    { mode: 'round', markers: [2, 4, 6, 8, 10] },
  ],
  ['Rnd 1: *Yo, k to marker, yo, slip m, k1; rep from * 3 times.', 16, 24, { mode: 'round', markers: [3, 7, 11, 15] }],
  [
    'Pinwheel: Rnd 1: (yo, k2) 5 times: 15 sts. Rnd 2 and all alt rnds: k. Rnd 3: (yo, k3) 5 times: 20 sts. Rnd 5: (yo, k4) 5 times. Cont in this manner until there are 100 sts.',
    10,
    100,
    { mode: 'round' },
  ],
  ['Border: *P1 rnd, k1 rnd; rep from * twice more. Cast off purlwise.', 80, 0, { mode: 'round' }],
];

const wedges: readonly Wording[] = [
  ['CO 50. Row 1: k. Wedge: k48, turn, k48; k46, turn, k46; cont, working 2 fewer sts each time, to k2, turn, k2. K 2 rows.', 0, 50],
  [
    'Row 1: K to last 2 sts, turn. Row 2: K. Row 3: K to 2 sts before gap, turn. Row 4: K. Rep Rows 3 and 4 until 2 sts rem before gap. K 2 rows over all sts.',
    40,
    40,
  ],
  ['K20, turn, k20; k16, turn, k16; k12, turn, k12; k8, turn, k8; k4, turn, k4.', 24, 24],
];

const entrelac: readonly Wording[] = [
  ['*K2, turn; p2, turn; k3, turn; p3, turn; k4, turn; p4, turn; k5; rep from * 3 times.', 20, 20],
  ['*K1, turn, p1, turn, k2, turn, p2, turn, k3, turn, p3, turn, k4; rep from * to end.', 20, 20],
  [
    'Base triangles: *P2, turn; k2, turn; p3, turn; k3, turn; p4, turn; k4, turn; p5, do not turn; rep from * to end.',
    30,
    30,
    { side: 'WS' },
  ],
  ['P2, turn; k1, M1, k1, turn; p2, p2tog, turn; k2, M1, k1, turn; p3, p2tog, p to end.', 20, 20, { side: 'WS' }],
];

const toys: readonly Wording[] = [
  ['CO 6; join. Rnd 1: (kfb) 6 times (12). Rnd 2: *k1, kfb; rep from * (18). Rnd 3: k. Rnd 4: (k2, kfb) 6 times [24].', 0, 24],
  ['Cast on 8 sts. 1st row: inc in every st (16 sts). 2nd row: P. 3rd row: (k1, inc in next st) 8 times. 24 sts. 4th row: P.', 0, 24],
  ['Muzzle: k12, w&t; p8, w&t; k7, w&t; p6, w&t; k to end.', 24, 24],
  [
    'Row 7: inc in every st (24 sts). Row 8: P. Row 9: (k2, m1) to end. 36 sts. Rows 10-16: st st. Row 17: (k1, k2tog) to end. 24 sts.',
    12,
    24,
  ],
  [
    'Ear: CO 9. K 6 rows. Next row: k3, sl 1, k2tog, psso, k3. K 1 row. Next row: k2, sl 1, k2tog, psso, k2. K 1 row. Next row: k1, k3tog, k1. K3tog, fasten off.',
    0,
    0,
  ],
  [
    'Body: Rows 1–10: st st, beg with a k row. Row 11: k2, skpo, k to last 4 sts, k2tog, k2. Row 12: p2, p2tog, p to last 4 sts, p2tog tbl, p2.',
    30,
    26,
  ],
];

const closings: readonly Wording[] = [
  ['Provisionally CO 32. Row 1: K. Row 2: P.', 0, 32],
  ['Using a crochet chain provisional cast-on, CO 45 sts. Work 10 rows in st st.', 0, 45],
  ['Graft 20 live sts to cast-on edge.', 20, 0],
  ['Place 12 sts on each of 2 needles and graft.', 24, 0],
  ['Divide remaining sts evenly over two needles. With RS held together, work a three-needle bind-off.', 40, 0],
  ['Leave the 30 sts on a holder; do not break yarn.', 30, 0],
  ['Cut yarn, leaving a tail three times the width of the piece, and graft the live sts to the provisional edge.', 30, 0],
  ['Fasten off last st.', 1, 0],
  ['Cast off 10 sts, fasten off.', 10, 0],
  ['Cast off to last st, fasten off.', 15, 0],
  ['BO all sts kwise on WS.', 33, 0],
  ['Bind off in k1, p1 rib. Cut yarn and pull through last st.', 33, 0],
  ['Cast off until 1 stitch remains. Break off and draw through.', 33, 0],
  ['Thread end through rem 14 sts, draw up tightly and secure. Join side seam.', 14, 0],
];

describe('squares, circles and closings', () => {
  test.each([...squares, ...circles, ...wedges, ...entrelac, ...toys, ...closings].map((each) => [each[0], each] as const))(
    '%s',
    (_, each) => holds(each),
  );
});
