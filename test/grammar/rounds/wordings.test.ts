/** The same forms in words that designers, leaflets and shorthand give them. */
import { expect, test } from 'vitest';
import { read } from '../outline.ts';

const sizes = ['S', 'M', 'L'];

const rows: readonly (readonly [text: string, tree: string])[] = [
  ['Next row: Knit until 6 stitches remain, then turn your work.', 'row next: k→last 6 turn'],
  ['Row 1 (RS): Knit 28 stitches; wrap the next stitch and turn.', 'row 1 (RS): k{28} turn wrap'],
  ['Row 2: Purl back until 3 sts before the end of the row, wrap & turn.', 'row 2: p→last 3 turn wrap'],
  ['Row 2: Purl back to last 3 sts, w&t.', 'row 2: p→last 3 turn wrap'],
  ['2nd row: Sl. 1, p. 9, p. 2 tog., turn.', 'row 2: sl{1} p{9} pNtog{2} turn'],
  ['1st row: K. 16, k. 2 tog., k. 1, turn.', 'row 1: k{16} kNtog{2} k{1} turn'],
  [
    'Work in short rows as follows: K20, turn; p10, turn; k12, turn; p14, turn.',
    'declare title Work in short rows as follows | row: k{20} turn | row: p{10} turn | row: k{12} turn | row: p{14} turn',
  ],
  ['Short rows: k20, w&t; p10, w&t.', 'row short: k{20} turn wrap | row short: p{10} turn wrap'],
  [
    'Continue in this manner, always working one stitch more, until all the stitches are on one needle.',
    'and so on 1 more until all worked',
  ],
  [
    'Continue turning in this way, working 2 sts fewer each time, until 10 sts remain between the turns.',
    'and so on 2 fewer until 10 sts between (between the turns)',
  ],
  ['Row 5 (RS): Double stitch, knit to 3 stitches before the double stitch, turn.', 'row 5 (RS): DS (make) k→3 before double turn'],
  [
    'Row 6: knit to the previous double stitch, work the double stitch, knit 3 more stitches, turn.',
    'row 6: k→to last double DS (work) k{3} turn',
  ],
  ['Row 7: K to double st from previous row, k double st, k2, turn.', 'row 7: k→to double DS (work) k{2} turn'],
  ['Work across all stitches, knitting both legs of each double stitch together.', 'row: work→end resolve doubles'],
  ['Knit the next round, working the wraps together with the stitches they wrap.', 'row: k→end resolve wraps'],
  ['Knit one more round.', 'plain 1 rounds knit'],
  [
    'Needle 1: Knit to the last 3 stitches, k2tog, k1. Needle 2: K1, ssk, knit to the last 3 sts, k2tog, k1. Needle 3: K1, ssk, knit to end.',
    'row: needle 1:{k→last 3 kNtog{2} k{1}} needle 2:{k{1} ssk k→last 3 kNtog{2} k{1}} needle 3:{k{1} ssk k→end}',
  ],
  [
    'First needle: k to last 3 sts, k2 tog, k1; second needle: k1, sl 1, k1, psso, k to last 3 sts, k2 tog, k1; third needle: k1, sl 1, k1, psso, k to end.',
    'row: needle 1:{k→last 3 kNtog{2} k{1}} needle 2:{k{1} sl1-kN-psso{1} k→last 3 kNtog{2} k{1}} needle 3:{k{1} sl1-kN-psso{1} k→end}',
  ],
  ['Work the heel back and forth in rows on these 28 sts.', 'only these 28'],
  ['Slip the next 28 sts to a spare needle for the instep.', 'hold next 28 on spare needle for instep'],
  ['Arrange these 60 sts on three needles, 20 on each.', 'arrange 3 needles 20 each'],
  ['Divide the sts onto 3 needles: 18-36-18.', 'arrange 3 needles 18 / 36 / 18'],
  ['Heel flap: work on 30 sts only.', 'declare title Heel flap | only these 30'],
  ['Pick up and knit 1 stitch in each slipped edge stitch along the heel flap (15 sts).', 'row: pick up 1 per 1 st =15 total'],
  ['Repeat these two rounds 8 times more, 56 sts.', 'rep rows [these 2] 8× more =56 total'],
  ['Continue in rounds until foot measures 18 (19, 20) cm from back of heel.', 'work until foot 18 (19, 20) cm from back of heel'],
  ['Break wool, thread end through remaining sts, draw up tightly and fasten off.', 'change break | join thread | join fastenOff'],
  ['Turn, k7, turn, p7.', 'row: turn k{7} turn | row: p{7}'],
  ['*K1, turn, p1, turn; k2, turn, p2, turn; rep from * to end.', 'row: *[k{1} turn p{1} turn k{2} turn p{2} turn]→end'],
  ['K2tog, k to last 2 sts of needle, ssk.', 'row: kNtog{2} k→last 2 of needle ssk'],
  [
    'Remove beg-of-rnd marker, knit 6, replace marker: this is the new beginning of the round.',
    'row: marker remove BOR k{6} marker replace marker place BOR',
  ],
  [
    'Set-up row (RS): K60, turn. Next row: P20, turn. Next row: K to 1 st before gap, k2tog, k1, turn.',
    'row set-up (RS): k{60} turn | row next: p{20} turn | row next: k→1 before gap kNtog{2} k{1} turn',
  ],
  [
    'Work short rows over the back neck as follows: SR1 (RS): K42, w&t. SR2 (WS): P24, w&t.',
    'declare title Work short rows over the back neck as follows | row short 1 (RS): k{42} turn wrap | row short 2 (WS): p{24} turn wrap',
  ],
  [
    'Row 3: K to wrapped st, lift wrap onto needle and knit together with the stitch, k4, w&t.',
    'row 3: k→to wrapped pick up wrap k{4} turn wrap',
  ],
  ['Next row: DS, knit across, working DSs as you come to them.', 'row next: DS (make) k→end resolve doubles'],
  ['Row 8: k to 6 sts before end, turn.', 'row 8: k→last 6 turn'],
  [
    'Rows 3-10: Rep Rows 1 and 2, working 3 sts fewer before the turn each time.',
    'row 3,4,5,6,7,8,9,10: rep rows [numbers 1,2] step 3 fewer',
  ],
  ['The next 24 (26, 28) sts are the instep; leave them on a holder.', '=24 (26, 28) part (instep) | hold these on holder'],
  ['Row 2: Purl back until 3 sts before the end of the row, wrap & turn.', 'row 2: p→last 3 turn wrap'],
  ['Row 2: Purl back to last 3 sts, w&t.', 'row 2: p→last 3 turn wrap'],
  ['Row 2: Purl back to end.', 'row 2: p→end'],
  ['Row 2: Purl back.', 'row 2: p→end'],
  [
    'Continue in this manner, always working one stitch more, until all the stitches are on one needle.',
    'and so on 1 more until all worked',
  ],
  [
    'Continue turning in this way, working 2 sts fewer each time, until 10 sts remain between the turns.',
    'and so on 2 fewer until 10 sts between (between the turns)',
  ],
];

test.each(rows)('%s', (text, tree) => {
  expect(read(text, { sizes })).toBe(tree);
});
