/**
 * Sentences from whole drafts of very different hands: leaflets, magazines, downloads. The tree was set down from the words before it was
 * read. Forms of the trade from memory; numbers and words made up here.
 */
import { describe, expect, it } from 'vitest';
import { read } from '../outline.ts';

const sizes = ['S', 'M', 'L'];

const rows: readonly (readonly [string, string])[] = [
  [
    'With RS facing leave the centre 20 (22, 24) sts on a holder, rejoin yarn to the rem 14 (15, 16) sts and k to end.',
    'row: change side hold centre 20 (22, 24) on holder join rejoin 14 (15, 16) k→end',
  ],
  [
    'With WS facing rejoin yarn to the 87 sts of the front and work as for the back until the armhole measures 10 cm, ending with a WS row.',
    'change side | join rejoin 87 | as piece back to armhole 10 cm ending WS',
  ],
  ['Pick up and knit 110 sts evenly along left front edge, incl side edge of neckband.', 'row: pick up 110'],
  ['Pick up and k 110 sts along left front edge, incl. side edge of neckband. Knit 1 row.', 'row: pick up 110 | plain 1 rows knit'],
  ['Pick up and knit 110 sts along the edge, including the 8 sts from the neckband holder.', 'row: pick up 110 including held'],
  [
    'Pick up and knit 90 sts along the side edge, one from each slipped stitch; place a marker; pick up and knit 90 sts along the cast-on edge.',
    'row: pick up 90 marker place pick up 90',
  ],
  ['Pick up and k 90 sts along the side, 1 st for every 2 rows, pm, then 20 sts along top.', 'row: pick up 90 marker place pick up 20'],
  [
    'Next row: Rib 4, * cast off 2 sts, rib 15 (incl st rem on right needle after cast-off), rep from * 5 times more, rib 2.',
    'row next: rib→over 4 *[BO 2 rib→over 15]→5× more rib→over 2',
  ],
  ['Rib 4, cast off 2, rib 15 incl. st on needle, rib to end.', 'row: rib→over 4 BO 2 rib→over 15 rib→end'],
  ['K15 (including the stitch left on the right-hand needle after binding off), k to end.', 'row: k{15} k→end'],
  ['K.1, k.2 tog. t.b.l., k.22, k.2 tog., k.3.', 'row: k{1} kNtog tbl{2} k{22} kNtog{2} k{3}'],
  ['K.1, w.fwd., k.2 tog., y.fwd., k.1.', 'row: k{1} yfwd(or yf (move)) kNtog{2} yfwd(or yf (move)) k{1}'],
  ['K1, k2tog t.b.l. Turn.', 'row: k{1} kNtog tbl{2} turn'],
  [
    'The two purl sts are the seam sts and are purled on every round.',
    'declare rule two purl sts are the seam sts and are purled on every round',
  ],
  ['The purl st is the seam st.', 'declare rule purl st is the seam st'],
  [
    'The last st of every odd row is knitted together with one st of the border.',
    'declare rule the last st of every odd row is knitted together with one st of the border',
  ],
  ['Cont on the last 87 sts only for the back, working to and fro in rows.', 'only last 87 | join noRound'],
  ['Work backwards and forwards in rows.', 'join noRound'],
  ['Cont on first 30 sts only, leaving the other sts waiting on the cable.', 'only first 30'],
  ['Row 1: K2, k last edging st together with next border st.', 'row 1: k{2} kNtog{2} joins 1 live'],
  ['K to last st, knit the last st together with the next live stitch of the shawl.', 'row: k→last 1 kNtog{2} joins 1 live'],
  ['P to last st, p last st together with one border st.', 'row: p→last 1 pNtog{2} joins 1 live'],
  ['K together the last edging st and the next st of the border.', 'row: kNtog{2} joins 1 live'],
  ['K first st together with last st.', 'join round loses 1'],
  ['Do not cast off and do not turn.', 'row: change other turn not'],
  ['Rep 1st and 2nd rows 8 times more, dec 1 st in centre of last row.', 'rep rows [numbers 1,2] 8× more | evenly dec 1 on last row'],
  ['Rep last 2 rows 8 times, then dec 1 st at centre of last row.', 'rep rows [last 2] 8× | evenly dec 1 on last row'],
  ['Rep Rows 1 and 2 five times, decreasing one st in the middle of the last row.', 'rep rows [numbers 1,2] 5× | evenly dec 1 on last row'],
  ['Dec 1 st at centre of every RS row until 20 sts rem.', 'dec 1 centre {every RS until 20}'],
  [
    "Keep going like this, knitting one more st before each kfb on every even-numbered rnd and changing to the circular needle when there's room, until you have 72 (80, 88) sts.",
    'and so on 1 more until 72 (80, 88) sts',
  ],
  ["You'll be working back and forth over the 30 (34, 38) sts of N1 only; let N2 rest.", 'only these 30 (34, 38)'],
  [
    'Inc 1 st at each end of every foll 8th row until there are 71 (73, 59) sts, for size L only then in every foll 6th row until there are (77) sts.',
    'inc 1 bothEnds {every k=8 until 71 (73, 59)} | sizes 2 {UNREAD "then in every foll 6th row until there are (77) sts."}',
  ],
  ['These four rows make the pattern. Work them eight times altogether.', 'declare forms | work rows [these] 8× all'],
  [
    'Carefully pick out the waste yarn, placing 6 (7, 8) sts from below and 6 (7, 8) sts from above on two dpns.',
    'take up 12 (14, 16) provisional unworked',
  ],
  [
    'Row 1 (WS): K4, p to last 4 sts, k4, inc 10 sts evenly across the purl section. 54 sts.',
    'row 1 (WS): k{4} p→last 4 k{4} evenly inc 10 =54 total',
  ],
  ['K across 37 sts, dec 1 st in centre, then pick up and k 32 sts down left front.', 'row: k→over 37 evenly dec 1 pick up 32'],
  ['Keep going in stockinette until piece measures 5 in.', 'work st st until piece 5 in'],
];

describe('Sentences of whole drafts', () => {
  it.each(rows)('%s', (text, tree) => {
    expect(read(text, { sizes })).toBe(tree);
  });
});
