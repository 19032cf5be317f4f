/** Short rows repeated, lists that go on, named shaping. */
import { expect, test } from 'vitest';
import { read } from '../outline.ts';

const sizes = ['S', 'M', 'L'];

const rows: readonly (readonly [text: string, tree: string])[] = [
  ['Rep last 2 rows until 7 sts rem unworked at each side.', 'rep rows [last 2] until 7 sts unworked'],
  ['Repeat Short Rows 3 and 4 four more times.', 'rep rows [name short 3,4] 4× more'],
  ['Rep Short Rows 3 and 4 another 5 (6, 6) times.', 'rep rows [name short 3,4] 5 (6, 6)× more'],
  ['Rep SR3 and SR4 until 6 sts rem unwrapped.', 'rep rows [name short 3,4] until 6 sts between'],
  ['Rep SR5–6 twice more.', 'rep rows [name short 5,6] 2× more'],
  ['Rep last two short rows 3 times more.', 'rep rows [last 2] 3× more'],
  ['Rep Rows 3 and 4 until 9 sts rem between wraps.', 'rep rows [numbers 3,4] until 9 sts between'],
  ['Rep Rows 3–4 until there are 11 wrapped sts each side.', 'rep rows [numbers 3,4] until 11 wrapped each side'],
  ['Rep Rows 3 and 4 until 8 DS on either side.', 'rep rows [numbers 3,4] until 8 double each side'],
  ['Rep these two rows until all gusset sts have been used.', 'rep rows [these 2] until all worked'],
  ['Rep last 2 rows until no stitches remain unworked.', 'rep rows [last 2] until all worked'],
  ['Repeat the last two rows until all stitches have been worked, ending with a WS row.', 'rep rows [last 2] until all worked ending WS'],
  ['Rep Row 3 until all sts are worked.', 'rep rows [numbers 3] until all worked'],
  ['Rep this row until all sts have been worked – 61 sts.', 'rep rows [last] until all worked =61 total'],
  ['Rep these 2 rows until 14 single sts rem between DS.', 'rep rows [these 2] until 14 sts between'],
  ['Rep until all heel sts have been worked.', 'rep rows [these] until all worked'],
  ['Rep until 1 st rem.', 'rep rows [these] until 1 sts'],
  ['Repeat until there are 52 (56, 60) sts.', 'rep rows [these] until 52 (56, 60) sts'],
  ['Rep 6 (7, 8) more times.', 'rep rows [these] 6 (7, 8)× more'],
  ['Repeat twice more.', 'rep rows [these] 2× more'],
  ['Rep every other rnd until 24 sts rem.', 'rep rows [these] {every k=2 until 24}'],
  ['Rep wedge 5 times more.', 'rep rows [name wedge] 5× more'],
  ['Rep wedge 10 more times (11 wedges in all).', 'rep rows [name wedge] 10× more'],
  ['Work 7 more wedges.', 'work rows [name wedge] 7× more'],
  ['Work 4 more triangles in the same way.', 'work rows [name triangle] 4× more'],
  ['Rep Rows 5 and 6 until all wrapped sts have been worked, omitting the final w&t.', 'rep rows [numbers 5,6] until all worked omitting'],
  [
    'Rep Rows 3 and 4 until all sts are worked, omitting k1 and p1 at end of last 2 rows.',
    'rep rows [numbers 3,4] until all worked omitting',
  ],
  ['Rep last 2 rows, working 3 sts fewer each time, until 9 sts rem.', 'rep rows [last 2] until 9 sts step 3 fewer'],
  ['Rep last 2 rows 4 times, working 5 sts less each time.', 'rep rows [last 2] 4× step 5 fewer'],
  ['Repeat Rows 1 and 2 another 11 (12, 13) times: 24 (26, 28) rows worked.', 'rep rows [numbers 1,2] 11 (12, 13)× more =24 (26, 28) rows'],
  ['Repeat Rounds 3 and 4 a further 6 times: 48 sts.', 'rep rows [numbers 3,4] 6× more =48 total'],
  ['Rows 1–2 a total of 14 times.', 'rep rows [numbers 1,2] 14× all'],
  ['Rnd 1 only until 20 sts rem.', 'rep rows [numbers 1] until 20 sts'],
  [
    'Rep Rnds 1 and 2 until 32 sts rem, then Rnd 1 only until 12 sts rem.',
    'rep rows [numbers 1,2] until 32 sts | rep rows [numbers 1] until 12 sts',
  ],
  ['k70, turn; k64, turn; k58, turn; etc.', 'row: k{70} turn | row: k{64} turn | row: k{58} turn | and so on'],
  ['k70, turn; k64, turn; k58, turn; … k10, turn.', 'row: k{70} turn | row: k{64} turn | row: k{58} turn | and so on | row: k{10} turn'],
  [
    'K20, turn, p20; k17, turn, p17; k14, turn, p14; and so on.',
    'row: k{20} turn | row: p{20} | row: k{17} turn | row: p{17} | row: k{14} turn | row: p{14} | and so on',
  ],
  [
    'k40, w&t; p32, w&t; k24, w&t; cont in this way, working 8 sts fewer each row, until 8 sts rem.',
    'row: k{40} turn wrap | row: p{32} turn wrap | row: k{24} turn wrap | and so on 8 fewer until 8 sts',
  ],
  ['Cont in this way, working 5 sts less on every row, until 15 sts rem.', 'and so on 5 fewer until 15 sts'],
  ['Cont in this manner until 10 sts rem unwrapped in the centre.', 'and so on until 10 sts between (the centre)'],
  ['Continue in this way until all sts have been worked.', 'and so on until all worked'],
  ['Cont as set, working 1 more st before dec on every row, until all sts are worked.', 'and so on 1 more until all worked'],
  [
    'Cont in this manner, working 2 more sts on each row, until all sts have been worked, ending with a WS row.',
    'and so on 2 more until all worked ending WS',
  ],
  [
    'Cont in this way, leaving 3 more sts unworked on every row, until 6 sts rem in the centre.',
    'and so on 3 fewer until 6 sts (the centre)',
  ],
  [
    'K36, turn, k36; k33, turn, k33; cont, working 3 fewer sts each time, to k3, turn, k3.',
    'row: k{36} turn | row: k{36} | row: k{33} turn | row: k{33} | and so on 3 fewer | row: k{3} turn | row: k{3}',
  ],
  ['Cont to dec in this way, working 1 st less between decs, until 7 sts rem.', 'and so on 1 fewer until 7 sts'],
  [
    'sl 1, p7, p2tog, p1, turn; sl 1, k8, ssk, k1, turn; sl 1, p9, p2tog, p1, turn …',
    'row: sl{1} p{7} pNtog{2} p{1} turn | row: sl{1} k{8} ssk k{1} turn | row: sl{1} p{9} pNtog{2} p{1} turn | and so on',
  ],
  ['Rep from * until 10 wrapped sts at each edge.', 'rep rows [mark *] until 10 wrapped each side'],
  [
    '*Sl 1, k to 1 st before gap, ssk, turn; sl 1, p to 1 st before gap, p2tog, turn; rep from * until 2 gusset sts rem each side.',
    'row: *[sl{1} k→1 before gap ssk turn sl{1} p→1 before gap pNtog{2} turn]→until 2 sts section',
  ],
  ['*K to 3 sts before last turn, turn; k back; rep from * until 6 sts rem.', 'row: *[k→3 before last gap turn k→end]→until 6 sts'],
  ['Rep Rows 3 and 4 until gap is 4 sts from end.', 'rep rows [numbers 3,4] until 4 sts unworked'],
  [
    'Dec every other rnd until 30 sts rem, then every rnd until 10 sts rem.',
    'rep rows [shaping dec] {every k=2 until 30; every k=1 until 10}',
  ],
  ['Dec as set every 4th rnd 3 times more.', 'rep rows [shaping dec] {every n=3 k=4 more}'],
  ['Inc in this way every 3rd rnd until there are 60 (64, 68) sts.', 'rep rows [shaping inc] {every k=3 until 60 (64, 68)}'],
  ['Rep Row 4 until there are 40 ridges.', 'rep rows [numbers 4] until 80 rows'],
  ['Rep Rows 1–6 18 times (108 live sts used).', 'rep rows [numbers 1,2,3,4,5,6] 18× =108 used'],
];

test.each(rows)('%s', (text, tree) => {
  expect(read(text, { sizes })).toBe(tree);
});
