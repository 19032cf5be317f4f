/** Tabs, triangles, crescents, edgings joined to their piece, cords. */
import { expect, test } from 'vitest';
import { read } from '../outline.ts';

const sizes = ['S', 'M', 'L'];

const rows: readonly (readonly [text: string, tree: string])[] = [
  [
    'CO 3 sts. K 6 rows. Turn 90° clockwise, pick up and k 3 sts along edge, then 3 along CO edge. 9 sts.',
    'CO 3 here | plain 6 rows knit | row: turn quarter pick up 3 pick up 3 =9 total',
  ],
  [
    'Cast on 2 sts. Knit 12 rows. Do not turn after last row. Rotate work a quarter turn, pick up and knit 6 sts down the side edge (one in each ridge), then 2 sts from the cast-on edge. 10 sts.',
    'CO 2 here | plain 12 rows knit | row: turn not | row: turn quarter pick up 6 pick up 2 =10 total',
  ],
  [
    'Garter tab: CO 2, k 14 rows, pick up 7 along side, pick up 2 along CO edge – 11 sts.',
    'declare title Garter tab | CO 2 here | plain 14 rows knit | row: pick up 7 pick up 2 =11 total',
  ],
  [
    'Row 1 (RS): K3, yo, k to centre st, yo, k1, yo, k to last 3 sts, yo, k3. 15 sts.',
    'row 1 (RS): k{3} yo k→to centre yo k{1} yo k→last 3 yo k{3} =15 total',
  ],
  [
    "Row 1: K2, yo, k to m, yo, sm, k1, sm, yo, k to last 2 sts, yo, k2 (4 sts inc'd).",
    'row 1: k{2} yo k→to marker yo marker slip k{1} marker slip yo k→last 2 yo k{2} =4 increased',
  ],
  ['Row 2 (WS): K3, p to last 3 sts, k3.', 'row 2 (WS): k{3} p→last 3 k{3}'],
  ['Rep Rows 1 and 2 21 more times. 97 sts.', 'rep rows [numbers 1,2] 21× more =97 total'],
  ['Rep Rows 1 and 2 until there are 153 sts.', 'rep rows [numbers 1,2] until 153 sts'],
  ['Row 1: Kfb, k to end. Row 2: Knit.', 'row 1: kfb k→end | row 2: k→end'],
  ['Row 1: K1, kfb, k to last 3 sts, k2tog, k1.', 'row 1: k{1} kfb k→last 3 kNtog{2} k{1}'],
  ['Rep until 96 sts.', 'rep rows [these] until 96 sts'],
  [
    'Row 1 (RS): K68, turn. Row 2: K14, turn. Row 3: K to 1 st before gap, k2tog, k1, turn.',
    'row 1 (RS): k{68} turn | row 2: k{14} turn | row 3: k→1 before gap kNtog{2} k{1} turn',
  ],
  ['Rep Row 3 until all sts are worked. 68 sts.', 'rep rows [numbers 3] until all worked =68 total'],
  [
    'SR1: K61, turn. SR2: P13, turn. SR3: k to 1 st before gap, ssk, k3, turn. SR4: p to 1 st before gap, p2tog, p3, turn.',
    'row short 1: k{61} turn | row short 2: p{13} turn | row short 3: k→1 before gap ssk k{3} turn | row short 4: p→1 before gap pNtog{2} p{3} turn',
  ],
  ['SR3: k14, close gap, k4, turn.', 'row short 3: k{14} close gap k{4} turn'],
  ['Row 5: K to gap, close gap, k4, turn.', 'row 5: k→to gap close gap k{4} turn'],
  ['*K to 3 sts before last turn, turn; k back; rep from * until 5 sts rem.', 'row: *[k→3 before last gap turn k→end]→until 5 sts'],
  ['Row: k to 4 sts before gap, w&t, k back.', 'row: k→4 before gap turn wrap | row: k→end'],
  ['Work 9 more wedges (10 in all).', 'work rows [name wedge] 9× more'],
  ['CO 8 sts onto left needle.', 'CO 8 start'],
  ['At end of last row CO 20 sts.', 'CO 20 end'],
  ['CO 10 sts at end of last row.', 'CO 10 end'],
  [
    'CO 9 sts onto LH needle. Row 1 (RS): K8, ssk (last edging st with next shawl st), turn. Row 2: Sl 1, k8.',
    'CO 9 start | row 1 (RS): k{8} ssk joins 1 live turn | row 2: sl{1} k{8}',
  ],
  ['Row 1: K7, ssk (last edging st + next live st), turn.', 'row 1: k{7} ssk joins 1 live turn'],
  ['Row 3: k6, k2tog (1 edging st and 1 shawl st), turn.', 'row 3: k{6} kNtog{2} joins 1 live turn'],
  ['Row 5: K2, yo, k2tog, yo, k3, ssk (edging st tog with next body st), turn.', 'row 5: k{2} yo kNtog{2} yo k{3} ssk joins 1 live turn'],
  ['Row 7: k5, sssk (with next 2 live sts), turn.', 'row 7: k{5} sssk joins 2 live turn'],
  ['Row 9: K8, p2tog (last edging st with next border st), turn.', 'row 9: k{8} pNtog{2} joins 1 live turn'],
  ['Row 1: k7, ssk last st with next edge loop, turn.', 'row 1: k{7} ssk joins 1 edge turn'],
  ['Row 1: k7, k2tog (last st with next picked-up loop), turn.', 'row 1: k{7} kNtog{2} joins 1 edge turn'],
  ['Row 1: K8, k2tog last edging st with next live st, turn.', 'row 1: k{8} kNtog{2} joins 1 live turn'],
  ['Row 3: k2, yo, k2tog, yo, k4, join. Row 4: sl 1, k9.', 'row 3: k{2} yo kNtog{2} yo k{4} kNtog{2} joins 1 live | row 4: sl{1} k{9}'],
  ['Row 5: K9, JS, turn.', 'row 5: k{9} kNtog{2} joins 1 live turn'],
  ['Rep Rows 1–8 17 times (68 live sts used; 4 per rep).', 'rep rows [numbers 1,2,3,4,5,6,7,8] 17× =68 used'],
  ['Corner: Work Rows 1–4 without joining.', 'declare title Corner | work rows [numbers 1,2,3,4] | join noRound'],
  [
    '*K3, do not turn, slide sts to other end of dpn; rep from * until cord measures 30 cm.',
    'row: *[k{3} turn not change slide]→until cord 30 cm',
  ],
  ['*K4, slide; rep from * 40 times.', 'row: *[k{4} change slide]→40×'],
  ['I-cord: K3, sl 3 back to LH needle.', 'declare title I-cord | row: k{3} ret{3}'],
  [
    'CO 3 sts onto LH needle. *K2, k2tog tbl (last cord st with next st), sl 3 sts back to LH needle; rep from * until 3 sts rem.',
    'CO 3 start | row: *[k{2} kNtog tbl{2} joins 1 live ret{3}]→last 3',
  ],
  ['*K2, ssk, slip 3 sts back to left needle; rep from * to end.', 'row: *[k{2} ssk ret{3}]→end'],
  ['Next row: K1, k2tog, slide. 2 sts.', 'row next: k{1} kNtog{2} change slide =2 total'],
  ['Sl 3 wyif, k to end.', 'row: sl wyif{3} k→end'],
  ['K3, patt to last 3 sts, sl 3 wyif.', 'row: k{3} patt→last 3 sl wyif{3}'],
  ['Graft 3 cord sts to beg of cord.', 'join graft 3'],
  ['Pick up and k 48 sts (1 per garter ridge) along left edge.', 'row: pick up 48'],
  ['Pick up and k 3 sts for every 4 rows – 66 sts.', 'row: pick up 3 per 4 row =66 total'],
  ['Bind off loosely: k1, *k1, slip both sts back to left needle, k2tog tbl; rep from * until all sts are bound off.', 'BO all all:0'],
  ['Do not cast on after the last wedge.', 'declare rule do not cast on after the last wedge'],
];

test.each(rows)('%s', (text, tree) => {
  expect(read(text, { sizes })).toBe(tree);
});
