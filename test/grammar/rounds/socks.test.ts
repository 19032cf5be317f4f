/** Flaps, turned heels, gussets, toes and inserted heels. */
import { expect, test } from 'vitest';
import { read } from '../outline.ts';

const sizes = ['S', 'M', 'L'];

const rows: readonly (readonly [text: string, tree: string])[] = [
  ['Row 1 (RS): *Sl 1, k1; rep from * to end. Turn.', 'row 1 (RS): *[sl{1} k{1}]→end turn'],
  ['Row 2 (WS): Sl 1, p to end.', 'row 2 (WS): sl{1} p→end'],
  ['Row 3: Sl 1, *k1, sl 1; rep from * to last st, k1.', 'row 3: sl{1} *[k{1} sl{1}]→last 1 k{1}'],
  ['Rep Rows 1 and 2 13 (14, 15) times more, ending with a WS row.', 'rep rows [numbers 1,2] 13 (14, 15)× more ending WS'],
  ['Rep last 2 rows until 30 rows have been worked.', 'rep rows [last 2] until 30 rows'],
  [
    'Turn heel: Row 1 (RS): K16 (17, 18), ssk, k1, turn. Row 2 (WS): Sl 1, p5, p2tog, p1, turn. Row 3: Sl 1, k to 1 st before gap, ssk, k1, turn. Row 4: Sl 1, p to 1 st before gap, p2tog, p1, turn.',
    'declare title Turn heel | row 1 (RS): k{16 (17, 18)} ssk k{1} turn | row 2 (WS): sl{1} p{5} pNtog{2} p{1} turn | row 3: sl{1} k→1 before gap ssk k{1} turn | row 4: sl{1} p→1 before gap pNtog{2} p{1} turn',
  ],
  ['Rep Rows 3 and 4 until all heel sts have been worked. 16 (18, 18) sts.', 'rep rows [numbers 3,4] until all worked =16 (18, 18) total'],
  ['Every heel stitch has now been worked and 16 (18, 18) stitches remain.', '=16 (18, 18) total'],
  ['All the side sts have been worked and 20 sts rem.', '=20 total'],
  ['Sl 1, p13, p2tog, p1, turn; sl 1, k5, ssk, k1, turn.', 'row: sl{1} p{13} pNtog{2} p{1} turn | row: sl{1} k{5} ssk k{1} turn'],
  ['Row 2: Sl 1, p9, p2tog, turn.', 'row 2: sl{1} p{9} pNtog{2} turn'],
  [
    'Row 3: Sl 1, k9, ssk, turn. Row 4: Sl 1, p9, p2tog, turn. Rep last 2 rows until 11 sts rem.',
    'row 3: sl{1} k{9} ssk turn | row 4: sl{1} p{9} pNtog{2} turn | rep rows [last 2] until 11 sts',
  ],
  [
    'Sl 1, k across 17 heel sts, with same needle pick up and k 14 sts along side of flap.',
    'row: sl{1} k→over 17 change needle pick up 14',
  ],
  [
    'N1: k17, pick up and k 15 sts along flap. N2: work 28 instep sts. N3: pick up and k 15 sts along other side of flap, k8 from heel.',
    'row: needle 1:{k{17} pick up 15} needle 2:{work→over 28} needle 3:{pick up 15 k{8}}',
  ],
  [
    'Pick up and k 15 (16, 17) sts along left side of flap, pm, work across instep, pm, pick up and k 15 (16, 17) sts along right side of flap.',
    'row: pick up 15 (16, 17) marker place work→instep marker place pick up 15 (16, 17)',
  ],
  ['With RS facing, join yarn at left edge of flap; PU&K 16.', 'row: change side join rejoin pick up 16'],
  [
    'Rnd 1: N1: k to last 3 sts, k2tog, k1; N2: work instep; N3: k1, ssk, k to end.',
    'round 1: needle 1:{k→last 3 kNtog{2} k{1}} needle 2:{work→instep} needle 3:{k{1} ssk k→end}',
  ],
  ['Rnd 2: Work even.', 'round 2: work→end'],
  [
    "Rnd 3: K to 3 sts before m, k2tog, k1, sm, patt to m, sm, k1, ssk, k to end (2 sts dec'd).",
    'round 3: k→3 before marker kNtog{2} k{1} marker slip patt→to marker marker slip k{1} ssk k→end =2 decreased',
  ],
  ['Rep last 2 rnds 8 (9, 10) times more. 56 (60, 64) sts.', 'rep rows [last 2] 8 (9, 10)× more =56 (60, 64) total'],
  ['Rep Rnds 1 and 2 until 60 sts rem, ending after a dec rnd.', 'rep rows [numbers 1,2] until 60 sts ending'],
  ['Dec every alt rnd to 32 sts, then every rnd to 16 sts.', 'rep rows [shaping dec] {every k=2 until 32; every k=1 until 16}'],
  ['[Ssk, k to last 2 sts of needle, k2tog] twice.', 'row: [ssk k→last 2 of needle kNtog{2}]→2×'],
  [
    "Rnd 1: *K1, ssk, k to 3 sts before m, k2tog, k1, sm; rep from * once more (4 sts dec'd).",
    'round 1: *[k{1} ssk k→3 before marker kNtog{2} k{1} marker slip]→1× more =4 decreased',
  ],
  [
    'Rep Rnds 1 and 2 until 28 sts rem, then Rnd 1 only until 12 sts rem. K3 from N1.',
    'rep rows [numbers 1,2] until 28 sts | rep rows [numbers 1] until 12 sts | row: k{3}',
  ],
  ['CO 20 sts (10 per needle).', 'CO 20 here (10 per needle)'],
  ['CO 8 (10, 12) sts on each needle.', 'CO 16 (20, 24) here (8 (10, 12) per needle)'],
  ["Using Brann's magic cast-on, CO 24 sts (12 on each needle).", 'change yarn | CO 24 here (12 per needle)'],
  [
    "Inc rnd: [k1, M1R, k to last st of needle, M1L, k1] twice. 4 sts inc'd.",
    'round inc: [k{1} M1R k→last 1 of needle M1L k{1}]→2× =4 increased',
  ],
  ['[K1, kfb, k to 2 sts before end of needle, kfb, k1] twice.', 'row: [k{1} kfb k→last 2 of needle kfb k{1}]→2×'],
  ['Inc every rnd to 36, then every other rnd to 60.', 'rep rows [shaping inc] {every k=1 until 36; every k=2 until 60}'],
  ['Rep last 2 rnds until there are 56 (60, 64) sts.', 'rep rows [last 2] until 56 (60, 64) sts'],
  [
    'Row 1: K26, w&t. Row 2: P25, w&t. Row 3: k to 1 st before wrapped st, w&t. Row 4: p to 1 st before wrapped st, w&t.',
    'row 1: k{26} turn wrap | row 2: p{25} turn wrap | row 3: k→1 before wrapped turn wrap | row 4: p→1 before wrapped turn wrap',
  ],
  ['Rep Rows 3 and 4 until 9 sts rem unwrapped, ending with a WS row.', 'rep rows [numbers 3,4] until 9 sts between ending WS'],
  ['Row 19: k to first wrapped st, k it tog with its wrap, w&t (this st now has 2 wraps).', 'row 19: k→to wrapped pick up wrap turn wrap'],
  ['Row 20: p to first wrapped st, p it together with wrap, w&t.', 'row 20: p→to wrapped pick up wrap turn wrap'],
  ['Row 21: K to wrapped st, pick up both wraps and k them tog with st, w&t.', 'row 21: k→to wrapped pick up wrap turn wrap'],
  ['SR5: DS, k to DS, turn. SR6: DS, p to DS, turn.', 'row short 5: DS (make) k→to double turn | row short 6: DS (make) p→to double turn'],
  ['Row 14: yo, p9, ssp (yo + next st), turn.', 'row 14: yo p{9} close yo gap turn'],
  [
    '*Sl 1, k to 1 st before gap, ssk, turn; sl 1, p to 1 st before gap, p2tog, turn; rep from * until 1 gusset st rem each side.',
    'row: *[sl{1} k→1 before gap ssk turn sl{1} p→1 before gap pNtog{2} turn]→until 1 sts section',
  ],
  [
    'With waste yarn k next 28 sts. Sl these sts back to LH needle and k them again with main yarn.',
    'row: change yarn k{28} | row: ret{all:0} k→these change yarn',
  ],
  [
    'K28 with waste yarn, slip the 28 sts back to left needle, k across them with main yarn, k to end.',
    'row: k{28} change yarn ret{28} k→these change yarn k→end',
  ],
  [
    "Dec rnd: [k1, ssk, k to 3 sts before corner, k2tog, k1] twice. 4 sts dec'd.",
    'round dec: [k{1} ssk k→3 before corner kNtog{2} k{1}]→2× =4 decreased',
  ],
  ['Rep every other rnd until 22 sts rem; graft.', 'rep rows [these] {every k=2 until 22} | join graft'],
  ['Cut yarn; graft toe.', 'change break | join graft'],
  [
    'Knit the sts of Needle 1 onto Needle 3. There are 10 sts on each needle. Graft.',
    'row: k→needle 1 =10 part (on each needle) | join graft',
  ],
  [
    'Needle 1 holds 22 (24, 26) stitches, Needle 2 holds 28 (30, 32) and Needle 3 holds 22 (24, 26).',
    '=22 (24, 26) part (needle 1) | =28 (30, 32) part (needle 2) | =22 (24, 26) part (needle 3)',
  ],
  ['On the last RS row you should knit 11 sts before turning.', '=11 worked (the last rs row before turning)'],
  ['There are now 4 unworked sts beyond the turning point at each side.', '=4 left (beyond the turning point)'],
];

test.each(rows)('%s', (text, tree) => {
  expect(read(text, { sizes })).toBe(tree);
});
