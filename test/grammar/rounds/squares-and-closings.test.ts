/** Mitred squares, entrelac, toys, provisional edges, grafting, marks resolved. */
import { expect, test } from 'vitest';
import { read } from '../outline.ts';

const sizes = ['S', 'M', 'L'];

const rows: readonly (readonly [text: string, tree: string])[] = [
  ['CO 37. Row 2 (RS): K17, s2kp, k17 (35 sts).', 'CO 37 here | row 2 (RS): k{17} s2kp k{17} =35 total'],
  ["Row 2 (RS): K to 1 st before centre st, s2kp, k to end (2 sts dec'd).", 'row 2 (RS): k→1 before centre s2kp k→end =2 decreased'],
  ['K to 2 sts before m, k2tog, sm, ssk, k to end. 38 sts.', 'row: k→2 before marker kNtog{2} marker slip ssk k→end =38 total'],
  ['Rep Rows 1 and 2 until 3 sts rem; sk2p; fasten off.', 'rep rows [numbers 1,2] until 3 sts | row: sk2p join fastenOff'],
  ['Rep Rows 1 and 2 until 1 st rem. Fasten off.', 'rep rows [numbers 1,2] until 1 sts | join fastenOff'],
  ['Every RS row: K to 1 st before centre st, cdd, k to end.', 'row every (RS): k→1 before centre s2kp k→end'],
  ['Pick up and k 18 sts down left edge of square 1, 1 st in corner, CO 18.', 'row: pick up 18 pick up 1 CO 18 here'],
  [
    'Square 4: Pick up and k 18 sts along square 2, 1 in corner, 18 along square 3.',
    'declare title Square 4 | row: pick up 18 pick up 1 pick up 18',
  ],
  ['Rnd 5: *K4, yo; rep from * 8 times (40 sts).', 'round 5: *[k{4} yo]→8× =40 total'],
  ['*K to marked st, yo, k1, yo; rep from * around.', 'row: *[k→to centre yo k{1} yo]→end'],
  ['Strip 2: Pick up and k 16 sts (1 per ridge) along Strip 1.', 'declare title Strip 2 | row: pick up 16'],
  [
    'Base triangles: *K2, turn; p2, turn; k3, turn; p3, turn; … k6; rep from * 5 times (30 sts).',
    'declare title Base triangles | row: *[k{2} turn p{2} turn k{3} turn p{3} turn and so on k{6}]→5× =30 total',
  ],
  [
    '*K1, turn; p1, turn; k2, turn; p2, turn; k3, turn; p3, turn; k4; rep from * to end.',
    'row: *[k{1} turn p{1} turn k{2} turn p{2} turn k{3} turn p{3} turn k{4}]→end',
  ],
  [
    'Pick up and p 6 along edge of triangle, turn; *k6, turn; p5, p2tog, turn; rep from * 5 times more.',
    'row: pick up 6 purl turn | row: *[k{6} turn p{5} pNtog{2} turn]→5× more',
  ],
  [
    'Pick up and k 7 sts along edge of next rectangle, turn; *sl 1, p6, turn; k6, ssk (last st with next live st), turn; rep from * until all live sts are used.',
    'row: pick up 7 turn | row: *[sl{1} p{6} turn k{6} ssk joins 1 live turn]→until all worked',
  ],
  [
    'End triangle: Pick up and p 6, turn; k6, turn; p4, p2tog, turn.',
    'declare title End triangle | row: pick up 6 purl turn | row: k{6} turn | row: p{4} pNtog{2} turn',
  ],
  ['Rnd 3: (K1, kfb) 6 times [18].', 'round 3: [k{1} kfb]→6× =18 total'],
  ['Rnd 4: Knit. Rnd 5: (k2, kfb) 6 times [24].', 'round 4: k→end | round 5: [k{2} kfb]→6× =24 total'],
  [
    'Muzzle: K12, w&t; p8, w&t; k7, w&t; p6, w&t; k to end.',
    'declare title Muzzle | row: k{12} turn wrap | row: p{8} turn wrap | row: k{7} turn wrap | row: p{6} turn wrap | row: k→end',
  ],
  ['Next rnd: [K3, k2tog] 6 times. 24 sts. Stuff. K2tog around (12).', 'round next: [k{3} kNtog{2}]→6× kNtog→end =24 total =12 total'],
  ['Row 7: Inc in every st (24 sts).', 'row 7: kfb→end =24 total'],
  ['Join legs: K12 of leg 1, CO 4, k12 of leg 2, CO 4.', 'declare title Join legs | row: k{12} CO 4 here k{12} CO 4 here'],
  ['Provisionally cast on 36 sts.', 'CO 36 here provisional'],
  ['Using a provisional cast-on, CO 40 (44, 48) sts.', 'change yarn | CO 40 (44, 48) here provisional'],
  ['With waste yarn CO 30 sts; change to main yarn.', 'change yarn | CO 30 here | change yarn'],
  ['Unpick waste yarn and place 28 sts on spare needle.', 'take up 28 provisional unworked'],
  ['Undo provisional cast-on and place 36 sts on needle.', 'take up 36 provisional unworked'],
  ['Unzip provisional CO, placing 35 sts on needle.', 'take up 35 provisional unworked'],
  ['Graft last row to cast-on edge.', 'join graft'],
  ['Graft 36 live sts to provisional CO.', 'join graft 36'],
  ['Place 14 sts on each of 2 needles and graft.', 'arrange 2 needles 14 each | join graft'],
  ['Cut yarn and graft toe.', 'change break | join graft'],
  ['With RS tog, join shoulders using three-needle bind-off.', 'change side | join threeNeedle'],
  ['With right sides together, work three-needle BO across all sts.', 'change yarn | join threeNeedle'],
  ['Place 14 sts on holder; do not break yarn.', 'hold next 14 on holder | change break'],
  ['Leave sts on a spare needle.', 'hold these on spare needle'],
  ['Break yarn, leaving sts on needle.', 'change break | hold these on holder'],
  ['Thread tail through rem sts and gather.', 'join thread'],
  ['Knit 1 rnd, picking up wraps as you come to them.', 'plain 1 rounds knit (resolve wraps)'],
  ['Knit 2 rows over all sts, hiding wraps.', 'plain 2 rows knit (resolve wraps)'],
  ['Work 2 rnds even, closing gaps.', 'plain 2 rounds (resolve gap)'],
  ['Purl 1 row, working rem wraps with their sts.', 'plain 1 rows purl (resolve wraps)'],
  ['Next row (RS): K to end, picking up all wraps.', 'row next (RS): k→end resolve wraps'],
  [
    'Next row (WS): Purl across all 48 (52, 56) sts, hiding wraps as you come to them.',
    'row next (WS): p→over all:48 (52, 56) resolve wraps',
  ],
  ['Next row: K to end, knitting each DS as one st.', 'row next: k→end resolve doubles'],
  ['Next row: Purl to end, resolving rem DS. (64 sts)', 'row next: p→end resolve doubles =64 total'],
  ['Next rnd: Knit, working all twins as one st.', 'round next: k→end resolve twins'],
  ['Row 16: p to end, treating both loops as one st.', 'row 16: p→end resolve loops'],
  [
    'Row 12: DS, k to end, working each DS as 1 st. Row 13: P to end, working rem DS as 1 st.',
    'row 12: DS (make) k→end resolve doubles | row 13: p→end resolve doubles',
  ],
  ['On next row, close each gap by picking up the st below and working it tog with next st.', 'row next: resolve gap'],
];

test.each(rows)('%s', (text, tree) => {
  expect(read(text, { sizes })).toBe(tree);
});
