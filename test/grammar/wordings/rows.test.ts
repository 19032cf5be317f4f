/**
 * Rows and rounds told in sentences, old and new. What is not followed stands as UNREAD: openly, and never as another row. Wordings
 * made up here; forms of the trade.
 */
import { expect, test } from 'vitest';
import { read } from '../outline.ts';

const rows: readonly (readonly [string, string])[] = [
  ['Row 1: K2, p to last 2 sts keeping ribs correct, k2.', 'row 1: k{2} p→last 2 k{2}'],
  ['Row 5: Knit, knitting the last 2 sts together.', 'row 5: k→end UNREAD "knitting the last 2 sts together"'],
  ['Row 6: P2 tog, purl to within two of the end, p2 tog.', 'row 6: pNtog{2} p→last 2 pNtog{2}'],
  ['Row 8: Slip one, knit to the end, knitting the slipped edge firmly.', 'row 8: sl{1} k→end'],
  ['Rnd 4: Knit, increasing one stitch either side of each marker.', 'round 4: plain 1 rounds knit (inc 1 eachSideOfMarkers {this})'],
  ['Rnd 4: Knit, but purl the 3 marked sts.', 'round 4: k→end UNREAD "but purl the 3 marked sts"'],
  ['Next row: Knit across, decreasing 4 stitches evenly.', 'row next: k→end evenly dec 4'],
  ['Next row: K1, inc in next st, knit until 2 sts remain, inc in next st, k1.', 'row next: k{1} kfb k→last 2 kfb k{1}'],
  ['Next row: K4, m1, repeat to last 4 sts, k4.', 'row next: list[k{4} M1]→last 4 k{4}'],
  ['Rnd 7: (K6, k2tog) rep to end.', 'round 7: [k{6} kNtog{2}]→end'],
  ['Rnd 7: k6, k2tog, repeat between brackets to end.', 'round 7: k{6} kNtog{2} UNREAD "repeat between brackets to end"'],
  ['Rnd 9: K2tog all round.', 'round 9: kNtog→end'],
  ['Row 3: Knit the knits and purl the purls, casting off the first 4 sts.', 'row 3: BO 4 as they appear→end'],
  ['Row 3: Bind off the first 5 stitches, work in pattern over the remaining stitches.', 'row 3: BO 5 patt→end'],
  ['Row 10: Knit to the middle stitch, m1, k1, m1, knit to end.', 'row 10: k→to centre M1 k{1} M1 k→end'],
  ['Row 2: Purl back.', 'row 2: p→end'],
  ['Row 2: Turn and purl back across all sts.', 'row 2: turn p→end'],
  [
    'Rnd 12: Knit round to 1 stitch before the marker, remove marker, slip 1, replace marker.',
    'round 12: k→1 before marker marker remove sl{1} marker replace',
  ],
  [
    'Next row: Work across 14 sts, turn and leave the remaining stitches on a spare needle.',
    'row next: work→over 14 turn holds spare needle',
  ],
  ['Next row: K10, then k the next 2 sts together, k the rest.', 'row next: k{10} kNtog{2} k→end'],
  [
    'Row 7: K3, (yo, k2tog) as many times as possible, k to end.',
    'row 7: k{3} [yo kNtog{2}]→never UNREAD "as many times as possible" k→end',
  ],
  ['Row 1: *K1, yo; repeat from * in every stitch to last st, k1.', 'row 1: *[k{1} yo]→end k{1}'],
  ['Next row: Knit into the front and back of every stitch.', 'row next: kfb→end'],
  ['Next row: [Inc in next st, k2] across, ending k1.', 'row next: [kfb k{2}]→end k{1}'],
  ['Rnd 3: Work 5 sts in patt, then rib round to the same place.', 'round 3: work→over 5 UNREAD "rib round to the same place"'],
  ['Next row: K2 together across row.', 'row next: kNtog→end'],
  ['Next row: (K2 tog) to end of row - 12 sts.', 'row next: [kNtog{2}]→end =12 total'],
  ['Next row: K1, *k2tog* all across row to last st, k1.', 'row next: k{1} *[kNtog{2}]→last 1 k{1}'],
  ['Row 4: As row 2 but begin with p1.', 'row 4: as row rows 2 UNREAD "but begin with p1"'],
  ['Row 6: Repeat row 4, ending p2.', 'row 6: rep rows [numbers 4] UNREAD "ending p2."'],
  ['Row 7: As row 1, moving the pattern one stitch to the left.', 'row 7: as row rows 1'],
  ['Next row: Cast on 3, knit these 3 sts, knit to end.', 'row next: CO 3 here k{3} k→end'],
  ['Row 9: Drop the next st and unravel it 4 rows, then k1.', 'row 9: UNREAD "Drop the next st and unravel it 4 rows" k{1}'],
  ['Row 3: K8; leave these; with second ball cast off centre 10, k to end.', 'row 3: k{8} change yarn BO centre 10 k→end'],
  ['Next rnd: Purl one round.', 'round next: plain 1 rounds purl'],
  ['Row 1: With the right side facing: k5, p5, k5.', 'row 1: change side k{5} p{5} k{5}'],
  ['Next row: Cast off 3 sts, 1 st on needle, k6, turn.', 'row next: BO 3 k{6} turn'],
  ['Row 5: Yo at beg of row, k to end.', 'row 5: yo at edge k→end'],
  ['Row 5: K to end, yo at end of row.', 'row 5: k→end yo'],
  ['Set chart patt: k2, work 10-st rep of Row 1 of Chart A 4 times, k2.', 'row: k{2} as chart A rows 1 (4 repeats) k{2}'],
  ['Row 1: K2, 12-st rep 8 times, k2.', 'row 1: k{2} UNREAD "12-st rep 8 times" k{2}'],
  ['Row 1: Work Chart A, 12-st rep 8 times, k2.', 'row 1: as chart A (8 repeats) k{2}'],
  ['Row 5: K3, k2tog, yo to last 3 sts, k3.', 'row 5: list of which last[k{3} kNtog{2} yo]→last 3 k{3}'],
  ['Always slip first st of every row.', 'UNREAD "Always slip first st of every row."'],
  [
    'Next rnd: K8, place 8 sts below and 8 above on separate needles.',
    'round next: k{8} UNREAD "place 8 sts below and 8 above on separate needles"',
  ],
  ['Row 3: Inc 1 st at each side.', 'row 3: inc 1 bothEnds {this}'],
  ['Keep 1 st at each side in garter st.', 'declare rule keep 1 st at each side in garter st'],
  ['Knit to thumb sts, k15 thumb sts, k to end.', 'row: k UNREAD "to thumb sts" k{15} k→end'],
  ['There are now 15 thumb sts.', '=15 total'],
  ['Work 10 rnds in st st, change to k1, p1 rib for 8 rnds.', 'plain 10 rounds st st | plain 8 rounds rib'],
  ['Change to k1, p1 rib for 8 rnds.', 'plain 8 rounds rib'],
  ['BO all but 1 st.', 'BO all all:0'],
  ['B and T.', 'join thread'],
  ['Finish off with 2 more rows in rib.', 'plain 2 rows rib'],
  [
    'Buttonhole row: Rib 4, (yo, k2tog, rib 12) 5 times, rib to end, and make another when band measures 6 cm.',
    'row buttonhole: rib→over 4 [yo kNtog{2} rib→over 12]→5× rib→end UNREAD "make another when band measures 6 cm"',
  ],
  ['At end of next row do not turn, CO 8.', 'UNREAD "At end of next row do not turn, CO 8."'],
  ['Dec 1 st at each end of next and every alt row in this way until 20 sts rem.', 'dec 1 bothEnds {next; every k=2 until 20}'],
  ['K2tog at each end of every row until 4 sts rem.', 'dec 1 bothEnds {every k=1 until 4}'],
  ['Cont dec on every rnd until 15 sts rem on each of N1 and N3.', 'work until 15 sts needle (n1)'],
  ['Work the square.', 'UNREAD "Work the square"'],
  [
    'Stop increasing sleeves, but continue to increase body on every 4th row.',
    'UNREAD "Stop increasing sleeves, but continue to increase body on every 4th row."',
  ],
  ['Rem 56 sleeve sts: divide onto 4 needles.', 'UNREAD "Rem 56 sleeve sts: divide onto 4 needles."'],
  ['When front is 6 cm shorter than back, shape neck.', 'UNREAD "When front is 6 cm shorter than back, shape neck."'],
  ['Work 1 rnd plain, then 8 rnds of k2, p2 rib.', 'plain 1 rounds | plain 8 rounds rib'],
  ['K2, place next 20 sts on holder, CO 20, k to end.', 'row: k{2} hold next 20 on holder CO 20 here k→end'],
  ['Pick up and knit 20 sts, turn and p back.', 'row: pick up 20 turn | row: p→end'],
  ['Rib 5 rows, then bind off.', 'plain 5 rows rib | BO all all:0'],
  ['Work 8 sts fewer on either side of the marker every RS row.', 'UNREAD "Work 8 sts fewer on either side of the marker every RS row"'],
];

test.each(rows)('%s', (text, tree) => {
  expect(read(text)).toBe(tree);
});
