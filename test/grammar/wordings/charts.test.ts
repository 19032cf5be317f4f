/** Orders to work from a chart, as drafts word them. Wordings made up here; forms of the trade. */
import { expect, test } from 'vitest';
import { read } from '../outline.ts';

const sizes = ['S', 'M', 'L'];

/** The text, and the tree in one line. */
const rows: readonly (readonly [string, string])[] = [
  ['Work Row 1 of Chart A across next 12 sts.', 'as chart A rows 1 over 12'],
  ['Row 1 (RS): K5, work Row 1 of Chart A across next 12 sts, k5.', 'row 1 (RS): k{5} as chart A rows 1 over 12 k{5}'],
  ['Row 1: K5, work row 1 of chart over next 12 stitches, k to end.', 'row 1: k{5} as chart rows 1 over 12 k→end'],
  ['Row 1: Work row 1 of Fender over 12 sts, k to end.', 'row 1: as chart fender rows 1 over 12 k→end'],
  ['Rnd 5: K4, work rnd 5 of Fender over the next 12 sts, k to end.', 'round 5: k{4} as chart fender rows 5 over 12 k→end'],
  ['Row 1: K5, beg with row 1, work 12 sts from chart, k5.', 'row 1: k{5} as chart rows 1 over 12 k{5}'],
  ['Row 1: K5, work across 12 sts of row 1 of chart, k5.', 'row 1: k{5} as chart rows 1 over 12 k{5}'],
  ['Row 1: K5, work 12 sts as row 1 of Chart A, k5.', 'row 1: k{5} as chart A rows 1 over 12 k{5}'],
  ['Row 1: K3, work Chart A, p2, work Chart B, p2, work Chart A, k3.', 'row 1: k{3} as chart A p{2} as chart B p{2} as chart A k{3}'],
  [
    'Row 1 (RS): K3, *work Row 1 of Chart A over next 12 sts, p2; rep from * twice more, k3.',
    'row 1 (RS): k{3} *[as chart A rows 1 over 12 p{2}]→2× more k{3}',
  ],
  ['Rnd 1: Work Rnd 1 of Wave Chart 8 times around.', 'round 1: as chart wave rows 1 end 8×'],
  ['Rnd 1: *Work Row 1 of Chart A; rep from * to end.', 'round 1: *[as chart A rows 1]→end'],
  ['Rnd 1: Repeat Rnd 1 of Chart A 8 times.', 'round 1: as chart A rows 1 8×'],
  ['Work Rnds 1-24 of Chart A.', 'as chart A rows 1,2,3,4,5,6,7,8,9,10,11,12,13,14,15,16,17,18,19,20,21,22,23,24'],
  ['Work rows 1 to 8 of chart 3 times in all.', 'as chart rows 1,2,3,4,5,6,7,8 3× all'],
  ['Work Rows 1–8 from Chart A twice, then Rows 1–5 once.', 'as chart A rows 1,2,3,4,5,6,7,8 2× then as chart A rows 1,2,3,4,5 1×'],
  ['Now work Rows 1–8 of the chart.', 'as chart rows 1,2,3,4,5,6,7,8'],
  ['Knit Rows 1–8 of Chart A.', 'as chart A rows 1,2,3,4,5,6,7,8'],
  ['Follow Chart A from Row 1 to Row 24.', 'as chart A rows 1,2,3,4,5,6,7,8,9,10,11,12,13,14,15,16,17,18,19,20,21,22,23,24'],
  ['Follow chart rows 1-10.', 'as chart rows 1,2,3,4,5,6,7,8,9,10'],
  ['Cont in patt from chart until Row 30 has been worked.', 'as chart to loose "row 30 has been worked"'],
  ['Cont from chart until 30 rows have been worked.', 'as chart to 30 rows'],
  ['Continue as set by chart to end of Row 30.', 'as chart to loose "row 30"'],
  ['Work from chart for 30 rows.', 'as chart to 30 rows'],
  ['Work 30 rows from Chart B.', 'as chart B to 30 rows'],
  ['Work next 30 rows from chart.', 'as chart to 30 rows'],
  ['Starting with Row 1, work Chart B.', 'as chart B rows 1'],
  ['Begin working Chart B at Row 5.', 'as chart B rows 5'],
  ['Beg at Row 1, work patt from Chart A across all sts.', 'as chart A rows 1 end'],
  ['Row 1: Foll chart, beg and end where indicated for your size.', 'row 1: as chart'],
  ['Row 1: Work Chart A to last 5 sts, working 8-st repeat 6 times, k5.', 'row 1: as chart A last 5 (6 repeats) k{5}'],
  ['Row 1: K1, work across Chart A, repeating the boxed 8 sts 6 times, k1.', 'row 1: k{1} as chart A (6 repeats) k{1}'],
  ['Row 2 (WS): Work Row 2 of chart to m, sm, p to end.', 'row 2 (WS): as chart rows 2 to marker marker slip p→end'],
  ['Row 3: K to m, sm, work next row of chart, sm, k to end.', 'row 3: k→to marker marker slip as chart marker slip k→end'],
  ['Row 3: K to m, sm, work chart to next m, sm, k to end.', 'row 3: k→to marker marker slip as chart to marker marker slip k→end'],
  [
    'Set-up row (WS): K5, pm, work set-up row of Chart A over 12 sts, pm, k5.',
    'row set-up (WS): k{5} marker place as chart A over 12 marker place k{5}',
  ],
  ['Next row: Work across 25 (31, 37) sts of Chart A.', 'row next: as chart A over 25 (31, 37)'],
  ['Next row: K2, work centre 21 sts from chart, k2.', 'row next: k{2} as chart over 21 k{2}'],
  ['Next rnd: Knit 12, then work Chart B over 21 sts, then knit to end.', 'round next: k{12} as chart B over 21 k→end'],
  ['Next row (RS): Work 4 patt reps of Chart A across, ending at left-hand edge.', 'row next (RS): as chart A end (4 repeats)'],
  ['Row 1 (RS): Reading from right to left, work Chart A to end.', 'row 1 (RS): as chart A end'],
  ['Next row: K3, Chart A over 12 sts, k3.', 'row next: k{3} as chart A over 12 k{3}'],
  ['Rnd 1: P1, Chart B over next 14 sts, p1, k to end.', 'round 1: p{1} as chart B over 14 p{1} k→end'],
  ['Rnd 1: Work Chart A, working the 12-st rep 8 times around.', 'round 1: as chart A end (8 repeats)'],
  ['Beg with st 4 and end with st 15, work Row 1 of Chart A.', 'as chart A rows 1'],
  ['Row 1: Beg with st 4 of Chart A, work 12-st rep 5 times, end with st 8.', 'row 1: as chart A (5 repeats)'],
  [
    'Work Rows 1–24 of Chart C, joining in colours as required.',
    'as chart C rows 1,2,3,4,5,6,7,8,9,10,11,12,13,14,15,16,17,18,19,20,21,22,23,24',
  ],
  ['Cont in patt from chart, ending with a WS row.', 'as chart to  ending WS'],
  ['Work Chart A until piece measures 30 cm, ending with a WS row.', 'as chart A to piece 30 cm ending WS'],
  ['Follow Chart A until Row 16 has been worked twice.', 'as chart A to loose "row 16 has been worked twice"'],
  [
    'Reading odd-numbered rows from right to left and even-numbered rows from left to right, work Rows 1 to 20 of chart.',
    'as chart rows 1,2,3,4,5,6,7,8,9,10,11,12,13,14,15,16,17,18,19,20',
  ],
  ['Place chart as follows: k4, work Row 1 of Chart B over next 11 sts, k4.', 'row: k{4} as chart B rows 1 over 11 k{4}'],
  ['Set chart patt: k2, work 10-st rep of Row 1 of Chart A 4 (5, 6) times, k2.', 'row: k{2} as chart A rows 1 (4 (5, 6) repeats) k{2}'],
  ['Rnd 3: *Work Row 3 of Chart A over 10 sts, k2; rep from * around.', 'round 3: *[as chart A rows 3 over 10 k{2}]→end'],
  ['Repeat Rows 5–12 of Chart B until sleeve measures 40 cm.', 'as chart B rows 5,6,7,8,9,10,11,12 to sleeve 40 cm'],
  ['Next rnd: Beg Chart D at Rnd 7 over all sts.', 'round next: as chart D rows 7 end'],
  [
    'Keeping first and last 3 sts in garter st, work Chart A over centre 25 sts.',
    'declare rule keeping first and last 3 sts in garter st | as chart A over 25',
  ],
  ['Now work the 20 rnds of Chart 2.', 'as chart 2 to 20 rows'],
  [
    'Row 5: K to chart marker, sm, work Row 5 of chart, sm, k to end.',
    'row 5: k→to chart marker marker slip as chart rows 5 marker slip k→end',
  ],
  [
    'Next row: Patt 10 sts as Row 1 of Chart A, k20, patt 10 sts as Row 1 of Chart B.',
    'row next: as chart A rows 1 over 10 k{20} as chart B rows 1 over 10',
  ],
  [
    'Commence working from Chart B, thus: 1st row: k6, work 1st row of Chart B, k6.',
    'declare title Commence working from Chart B, thus | row 1: k{6} as chart B rows 1 k{6}',
  ],
  ['Row 9: Work Row 9 of Chart A twice, k1.', 'row 9: as chart A rows 9 2× k{1}'],
  ['Rep the 16 rows of Chart A a total of 5 times.', 'as chart A to 16 rows 5× all'],
  ['Rnds 1–10: Work Chart A 6 times per rnd.', 'round 1,2,3,4,5,6,7,8,9,10: as chart A 6×'],
  ['With MC and CC1, work Rnds 1–14 of Chart A.', 'change yarn | as chart A rows 1,2,3,4,5,6,7,8,9,10,11,12,13,14'],
  ['Work chart rows 1–8 four times, then rows 1–4 once more.', 'as chart rows 1,2,3,4,5,6,7,8 4× then as chart rows 1,2,3,4 1× more'],
  ['Row 2 (WS): P3, work from chart as set to last 3 sts, p3.', 'row 2 (WS): p{3} as chart last 3 p{3}'],
];

test.each(rows)('%s', (text, tree) => {
  expect(read(text, { sizes })).toBe(tree);
});
