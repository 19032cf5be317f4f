/** Rounds: joined, marked, divided over needles, begun somewhere else. Common practice, no source; numbers and words made up here. */
import { describe, test } from 'vitest';
import { holds, type Wording } from './worked.ts';

const joining: readonly Wording[] = [
  ['Cast on 96 (104, 112) sts and join to work in the round, taking care not to twist the cast-on edge.', 0, [96, 104, 112]],
  ["With circular needle CO 120 sts. Place a marker for the beginning of the round, then join, making sure sts aren't twisted.", 0, 120],
  [
    'Cast on 64 stitches loosely. Divide stitches evenly on four double-pointed needles (16 on each). Join into a ring; place marker.',
    0,
    64,
  ],
  ['CO 81 sts; slip the last stitch cast on to the left needle and knit it together with the first. 80 sts.', 0, 80],
  ['Cast on 72 sts on a set of four needles, 24 on each. Being careful not to twist sts, join and k 1 round.', 0, 72],
  ['CO 100. Join for working in the rnd; PM at start of rnd. Rnd 1: *k3, p2; rep from * around.', 0, 100],
  ['Cast on 61 sts. Join by passing the last st over the first st. (60 sts)', 0, 60],
  [
    'Using 4 mm circular needle, cast on 88 [96:104] sts. Do not turn. Slip a marker on right needle to mark beg of rnds and join.',
    0,
    [88, 96, 104],
  ],
  ['Cast on 48 sts over 3 needles (16, 16, 16) and form into a ring. 1st rnd: Purl.', 0, 48],
  ['CO 90 sts, join in a circle without twisting, and mark the first stitch. Rnds 1-3: [P1, K2] around.', 0, 90],
  ['Row 1: Knit. Row 2: Knit. Do not turn at the end of Row 2; place marker and join in the round. Rnd 1: Knit.', 60, 60],
  ['Cast on 40 sts with waste yarn. Change to main yarn, join in the round. Rounds 1 to 8: knit.', 0, 40],
  ['CO 84 sts. Join, PM. 1st to 5th rounds - K2, P2 rib.', 0, 84],
];

const plain: readonly Wording[] = [
  ['Rnds 1–6: *K1 tbl, p1; rep from * around.', 60, 60],
  ['1st round: * K. 2, p. 2; repeat from * to end of round.', 64, 64],
  ['1st rnd. Knit. 2nd rnd. Purl. Repeat these 2 rounds twice more.', 50, 50, { rows: 6 }],
  ['Purl 1 round. Knit 1 round. Purl 1 round.', 48, 48, { rows: 3 }],
  ['Rnd 1: K to BOR.', 50, 50],
  ['Rnd 3: Slip BOR marker, k2tog, knit to end of round.', 44, 43],
  ['Dec rnd: [K2tog, k14] 5 times. 75 sts rem', 80, 75],
  ['Next round: *Knit to marker, slip marker; repeat from * around.', 60, 60, { markers: [15, 30, 45] }],
  ['Rnd 7: K8, [pm, k16] 3 times, pm, k8. Rnd 8: *Knit to 1 st before m, kfb, sm, kfb; rep from * 3 times more, k to end.', 64, 72],
  ['Next rnd: P to end of rnd, dec 6 sts evenly. 90 sts.', 96, 90],
  ['Knit one round, increasing 8 (10, 12) stitches evenly spaced — 88 (98, 108) sts.', [80, 88, 96], [88, 98, 108]],
  ['Rnd 10 (inc): K1, M1, k to last st before marker, M1, k1.', 40, 42],
  ['Rnd 4: K30, sl m, k30.', 60, 60, { markers: [30] }],
  ['Rnd 11: K to end, removing all markers except BOR.', 60, 60, { markers: [20, 40] }],
  ['Last rnd: *P2tog, p6; rep from * — 56 sts.', 64, 56],
  ['Rnd 2: P to m, sl m, k to end of rnd.', 60, 60, { markers: [25] }],
  ['Set-up round: K36, place side marker, k36.', 72, 72],
  [
    'Rnd 9: Knit to 2 sts before side marker, k2tog, slip marker, ssk, knit to 2 sts before end of round, k2tog.',
    72,
    69,
    { markers: [36] },
  ],
  ['Rnd 3: (K9, k2tog) seven times, k3.', 80, 73],
  [
    'Rnds 1 & 3: Knit. Rnd 2: Purl. Rnd 4: *Yo, k2tog* to end. Rep Rnds 1-4 five more times, then work Rnds 1 and 2 again.',
    40,
    40,
    { rows: 26 },
  ],
  ['Rnd 4: *K1, p1; rep from *. Rounds 5 to 12: As Rnd 4.', 40, 40, { rows: 9 }],
  ['Rib round: (K3, P1) to end. Work 11 further rounds of rib.', 84, 84, { rows: 12 }],
  ['Rnd 1: K. Rnd 2 and all even-numbered rnds: K. Rnd 3: *K6, M1; rep from * around. Rnd 5: *K7, M1; rep from * around.', 48, 64],
  ['Knit 3 rnds. Next Rnd: k2tog around. Knit 1 rnd. Next Rnd: k2tog, *k1, k2tog* around', 46, 15],
  ['Bind off all stitches in pattern.', 60, 0],
  ['Cast off loosely knitwise.', 60, 0],
  ['Round 1: knit into back of each stitch. Round 2: purl.', 36, 36],
  ['Rnd 6: K to 3 sts before m, ssk, k1, sm, k1, k2tog, k to end.', 52, 50, { markers: [26] }],
  ['Rnd 2: M1L, k to side m, M1R, sm, M1L, k to BOR, M1R. 4 sts increased.', 52, 56, { markers: [26] }],
];

const needles: readonly Wording[] = [
  ['Arrange sts 16-32-16. N1: k16; N2: p2, k28, p2; N3: k16.', 64, 64],
  [
    'Divide sts over three needles: 14, 28, 14. Rnd 1: Needle 1: K to last 3 sts, k2tog, k1. Needle 2: K1, ssk, k to last 3 sts, k2tog, k1. Needle 3: K1, ssk, k to end.',
    56,
    52,
  ],
  ['Divide sts evenly over 4 needles. Rnd 5: On each needle, k to last 2 sts, k2tog (4 sts dec’d).', 40, 36],
  ['Place the first 28 sts on Needle 1 and the remaining 28 on Needle 2. Needle 1: k1, m1, k to last st, m1, k1. Needle 2: knit.', 56, 58],
  [
    'Sts are now on 4 dpns, 15 per needle. Next rnd: Needles 1 and 3: k to last 3 sts, k2tog, k1. Needles 2 and 4: k1, ssk, k to end.',
    60,
    56,
  ],
  ['N 1 - knit; N 2 - (p1, k1) to end; N 3 - knit.', 48, 48],
  ['Arrange the sts so that there are 20 on needle 1, 20 on needle 2 and 24 on needle 3. Knit 1 round.', 64, 64],
  ['Front needle: [k1, p1] to end; back needle: knit.', 40, 40],
  ['Change to double-pointed needles when the sts no longer reach around. Rnd 20: *k4, k2tog* around.', 60, 50],
];

const beginning: readonly Wording[] = [
  ['Next rnd: Remove marker, k5, place marker for new beginning of round. Rnd 1: *K3, p1; rep from * around.', 40, 40],
  ['Shift the beginning of the rnd 2 sts to the left: remove m, sl 2, replace m. Next rnd: k.', 40, 40],
  ['Rnd 12: Remove BOR marker, slip next st, replace marker, *k8, cdd; rep from * around.', 44, 36],
  ['K12; this is the new start of round. Rnd 1: K.', 48, 48],
  ['Next rnd: K to 4 sts before end of rnd, place new marker for beg of rnd, remove old marker when you come to it.', 48, 48],
  ['Rnd 20: knit to last 2 sts, pm for new beg of rnd.', 48, 48],
  ['Move BOR one stitch to the right as foll: k to last st, pm; the old marker is removed on the next round. Rnd 21: Knit.', 48, 48],
  ['Sl 1, pm. Rnd now begins here. Rnd 1: *ssk, k6; rep from * around.', 48, 42],
  ['Break yarn. Slip next 12 sts without knitting. Rejoin yarn; round now begins at the underarm. Rnd 1: k.', 48, 48],
  ['K across first 7 sts of the round; rnd now starts at centre back. Rnd 1: (K2tog, k12) 3 times.', 42, 39],
];

describe('rounds', () => {
  test.each(joining.map((each) => [each[0], each] as const))('%s', (_, each) => holds(each));
  test.each([...plain, ...needles, ...beginning].map((each) => [each[0], each] as const))('%s', (_, each) =>
    holds(each, { mode: 'round' }),
  );
});
