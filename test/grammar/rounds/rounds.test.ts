/** Joining, the beginning of the round, needles and parts of a round. */
import { expect, test } from 'vitest';
import { read } from '../outline.ts';

const sizes = ['S', 'M', 'L'];

const rows: readonly (readonly [text: string, tree: string])[] = [
  ['Cast on 72 (80, 88) sts. Join to work in the round, being careful not to twist.', 'CO 72 (80, 88) here | join round'],
  ['CO 64 sts, pm for BOR and join in the rnd.', 'CO 64 here | marker place BOR | join round'],
  ['Join for working in the round, taking care not to twist sts; place marker for beginning of round.', 'join round | marker place BOR'],
  ['Being careful not to twist, join into a round.', 'join round'],
  ['Join, pm.', 'join round | marker place'],
  ['Cast on 73 sts. Join by knitting the first and last st together. (72 sts)', 'CO 73 here | join round loses 1 | =72 total'],
  ['Slip last cast-on st to left needle, k2tog with first st.', 'join round loses 1'],
  ['Form a ring, taking care not to twist.', 'join round'],
  ['Next rnd: knit to BOR, sm.', 'round next: k→to beginning marker marker slip'],
  ['*K3, p1; rep from * around.', 'row: *[k{3} p{1}]→end'],
  ['[K6, M1] to end of rnd. (84 sts)', 'row: [k{6} M1]→end =84 total'],
  [
    'Rnd 7: remove BOR m, k3, replace BOR m, *k4, cdd; rep from * around.',
    'round 7: marker remove BOR k{3} marker replace BOR *[k{4} s2kp]→end',
  ],
  ['Remove marker, k2, pm for new BOR.', 'row: marker remove k{2} marker place BOR'],
  ['Shift BOR 2 sts to the left.', 'marker move BOR 2 left'],
  ['Move the beginning-of-round marker 1 st to the right.', 'marker move BOR 1 right'],
  ['Knit to 2 sts before BOR; pm for new BOR.', 'row: k→2 before beginning marker marker place BOR'],
  ['Divide sts over 4 dpns (14 sts per needle).', 'arrange 4 needles 14 each'],
  ['Distribute the sts evenly over 3 dpns (20 sts on each needle).', 'arrange 3 needles 20 each'],
  ['Arrange sts on 3 needles: 16 on N1, 32 on N2 and 16 on N3.', 'arrange 3 needles needle 1 16 / needle 2 32 / needle 3 16'],
  ['Distribute 64 sts as follows: N1 16, N2 32, N3 16.', 'arrange needle 1 16 / needle 2 32 / needle 3 16'],
  ['N1: 15 (16, 17); N2: 30 (32, 34); N3: 15 (16, 17).', 'arrange needle 1 15 (16, 17) / needle 2 30 (32, 34) / needle 3 15 (16, 17)'],
  ['Place first 28 sts on needle 1 and next 28 sts on needle 2.', 'arrange needle 1 28 / needle 2 28'],
  ['Redistribute sts so that 30 sts are on Needle 1.', 'arrange needle 1 30'],
  [
    'Rnd 3: N1: k to last 2 sts, k2tog. N2: patt. N3: ssk, k to end.',
    'round 3: needle 1:{k→last 2 kNtog{2}} needle 2:{patt→end} needle 3:{ssk k→end}',
  ],
  ['Rnd 4: Needle 1: knit. Needle 2: work in pattern. Needle 3: knit.', 'round 4: needle 1:{k→end} needle 2:{patt→end} needle 3:{k→end}'],
  [
    'Rnd 5: Ndl 1: k1, ssk, k to end; Ndl 2: k to last 3 sts, k2tog, k1.',
    'round 5: needle 1:{k{1} ssk k→end} needle 2:{k→last 3 kNtog{2} k{1}}',
  ],
  ["On each needle: k1, ssk, k to last 3 sts, k2tog, k1 (8 sts dec'd).", 'row: each needle:{k{1} ssk k→last 3 kNtog{2} k{1}} =8 decreased'],
  ['On needles 1 and 3: ssk, k to end.', 'row: needle 1,3:{ssk k→end}'],
  ['Every needle: k to last 2 sts, k2tog.', 'row: each needle:{k→last 2 kNtog{2}}'],
  [
    '1st needle: k to last 3 sts, k2tog, k1. 2nd needle: k across. 3rd needle: k1, ssk, k to end.',
    'row: needle 1:{k→last 3 kNtog{2} k{1}} needle 2:{k→end} needle 3:{k{1} ssk k→end}',
  ],
  [
    'Front needle: k1, ssk, k to last 3 sts, k2tog, k1. Back needle: knit.',
    'row: front needle:{k{1} ssk k→last 3 kNtog{2} k{1}} back needle:{k→end}',
  ],
  ['Instep: p2, k2tog, yo, p2; sole: k to end.', 'row: instep:{p{2} kNtog{2} yo p{2}} sole:{k→end}'],
  ['Instep sts: patt to m. Sole sts: knit.', 'row: instep sts:{patt→to marker} sole sts:{k→end}'],
  ['[K1, ssk, k to last 3 sts of needle, k2tog, k1] twice.', 'row: [k{1} ssk k→last 3 of needle kNtog{2} k{1}]→2×'],
  ['Rnd 2: Work every needle without shaping.', 'round 2: work→end'],
  ['Rnd 6: work instep, then k to end.', 'round 6: work→instep k→end'],
  ['Rnd 6: work instep sts, M1L, k to end, M1R.', 'round 6: work→instep M1L k→end M1R'],
  ['K across heel sts.', 'row: k→heel'],
  ['K the sts of N1 onto N3.', 'row: k→needle 1'],
  ['Knit the sts of Needle 1 onto Needle 4.', 'row: k→needle 1'],
  [
    'K14, turn. Sl 1, p27. These 28 sts are the heel; leave rem 28 sts on hold.',
    'row: k{14} turn | row: sl{1} p{27} =28 part (heel) | hold remaining 28 on hold',
  ],
  ['The first 30 (32, 34) sts form the heel.', '=30 (32, 34) part (heel)'],
  ['Working back and forth on these 28 sts only, work 26 rows.', 'only these 28 | plain 26 rows'],
  ['Next row (RS): work first 28 sts back and forth in rows.', 'row next (RS): only first 28'],
  ['Work on these 30 sts only.', 'only these 30'],
  [
    'Heel is worked over next 28 (30, 32) sts; leave rem 28 (30, 32) sts on hold for instep.',
    'only next 28 (30, 32) | hold remaining 28 (30, 32) on hold for instep',
  ],
  ['The flap is worked back and forth on the first 26 sts of the round.', 'only first 26'],
  ['Leave rem 24 sts on waste yarn.', 'hold remaining 24 on waste yarn'],
  ['Do not work rem 26 sts. Turn.', '=26 left | row: turn'],
  ['Resume working in the rnd.', 'join resumeRound'],
  ['Resume working in the round over all sts.', 'join resumeRound'],
  ['Turn work inside out.', 'row: turn inside out'],
  ['Change to dpns when needed.', 'change needle'],
  [
    'SR1 (RS): k20, turn. SR2 (WS): DS, p to BOR, sm, p20, turn. SR3: DS, k to BOR, sm, k to DS, k DS, k3, turn.',
    'row short 1 (RS): k{20} turn | row short 2 (WS): DS (make) p→to beginning marker marker slip p{20} turn | row short 3: DS (make) k→to beginning marker marker slip k→to double DS (work) k{3} turn',
  ],
  ['Next rnd: k all sts, working rem DS as single sts.', 'round next: k→end resolve doubles'],
  ['Rnd 8: k12, w&t; p24, w&t; k to BOR.', 'round 8: k{12} turn wrap | round 8: p{24} turn wrap | round 8: k→to beginning marker'],
  [
    'Needle 1 holds 18 (20, 22) sts, Needle 2 holds 36 (40, 44) sts and Needle 3 holds 18 (20, 22) sts.',
    '=18 (20, 22) part (needle 1) | =36 (40, 44) part (needle 2) | =18 (20, 22) part (needle 3)',
  ],
  ['There are 14 sts on each needle.', '=14 part (on each needle)'],
];

test.each(rows)('%s', (text, tree) => {
  expect(read(text, { sizes })).toBe(tree);
});
