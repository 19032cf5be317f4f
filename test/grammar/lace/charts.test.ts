/**
 * Orders to work from a chart; what the chart holds is not read here.
 */
import { describe, expect, test } from 'vitest';
import { read } from '../outline.ts';

const sizes = ['S', 'M', 'L'];

const rows: Readonly<Record<string, readonly (readonly [string, string])[]>> = {
  'where a chart lies and which of its rows': [
    ['Work Row 1 of Chart A over next 17 sts.', 'as chart A rows 1 over 17'],
    [
      'Next row: K4, pm, work Row 1 of Tern chart over next 19 sts, pm, k4.',
      'row next: k{4} marker place as chart tern rows 1 over 19 marker place k{4}',
    ],
    ['Row 5: k4, work Row 5 of Chart A across next 34 sts (2 reps), k4.', 'row 5: k{4} as chart A rows 5 over 34 (2 repeats) k{4}'],
    ['Work Rows 1–8 of Chart A 3 times.', 'as chart A rows 1,2,3,4,5,6,7,8 3×'],
    ['Work Rows 1–8 of Chart A 3 times more.', 'as chart A rows 1,2,3,4,5,6,7,8 3× more'],
    ['Work Chart A twice, then Rows 1–4 once more.', 'as chart A 2× then as chart A rows 1,2,3,4 1× more'],
    ['Next row: Work chart to m, sm, work Chart B to end.', 'row next: as chart to marker marker slip as chart B end'],
    ['Rep chart around.', 'as chart end'],
    ['Work Chart 6 times around.', 'as chart end 6×'],
    ['Work centre 43 (49, 55) sts from chart, working 6-st rep 6 (7, 8) times.', 'as chart over 43 (49, 55) (6 (7, 8) repeats)'],
    ['Beg Chart A on WS (Row 2).', 'as chart A rows 2'],
    ['Cont in chart as set until Row 24 is complete.', 'as chart to loose "row 24 is complete"'],
    [
      'Work Rows 1-4 of Tern chart 5 times, then Rows 1 and 2 once more.',
      'as chart tern rows 1,2,3,4 5× then as chart tern rows 1,2 1× more',
    ],
    ['Work across Row 1 of Chart B.', 'as chart B rows 1'],
    ['Follow Chart A for 24 rows.', 'as chart A to 24 rows'],
    ['Foll Chart A to end of Row 16.', 'as chart A to loose "row 16"'],
    ['Cont foll chart until Row 24 has been worked.', 'as chart to loose "row 24 has been worked"'],
    ['Begin Chart 2.', 'as chart 2'],
    ['Work Rows 1 to 12 of Leaf Chart once.', 'as chart leaf rows 1,2,3,4,5,6,7,8,9,10,11,12 1×'],
    ['Rnd 1: *Work Row 1 of Chart A; rep from * around.', 'round 1: *[as chart A rows 1]→end'],
    ['Rnd 1: Work Chart A around.', 'round 1: as chart A end'],
    ['Row 1: k2, work chart row 1 over 21 sts, k2.', 'row 1: k{2} as chart rows 1 over 21 k{2}'],
    ['Row 1 (RS): K3, work Row 1 of Chart B to last 3 sts, k3.', 'row 1 (RS): k{3} as chart B rows 1 last 3 k{3}'],
    ['Row 1: K2, beg with st 4 and end with st 15 for your size, work Chart A, k2.', 'row 1: k{2} as chart A k{2}'],
    ['Row 1 (RS): K3, working Chart A over next 12 sts, p to end.', 'row 1 (RS): k{3} as chart A over 12 p→end'],
    ['Row 3: K3, work next row of Chart A over 12 sts, k3.', 'row 3: k{3} as chart A over 12 k{3}'],
    ['Work chart Rows 1-10.', 'as chart rows 1,2,3,4,5,6,7,8,9,10'],
    ['Rows 1-10: Work Chart A.', 'row 1,2,3,4,5,6,7,8,9,10: as chart A'],
    ['Rows 1–8: Work Rows 1–8 of Chart A.', 'row 1,2,3,4,5,6,7,8: as chart A rows 1,2,3,4,5,6,7,8'],
    ['Cont in this way until Row 16 of Chart A is complete.', 'as chart to loose "row 16 of chart a is complete"'],
    ['Rep Rows 1-8 of chart twice more.', 'as chart rows 1,2,3,4,5,6,7,8 2× more'],
    ['Row 5: Work Row 5 of Chart A twice, k1.', 'row 5: as chart A rows 5 2× k{1}'],
    ['Work across the 12 sts of Chart B.', 'as chart B over 12'],
    ['Next row: P3, work Chart B Row 2 over 24 sts, p3.', 'row next: p{3} as chart B rows 2 over 24 p{3}'],
    ['Rnds 1–12: Work Rnds 1–12 of Chart C.', 'round 1,2,3,4,5,6,7,8,9,10,11,12: as chart C rows 1,2,3,4,5,6,7,8,9,10,11,12'],
    ['Work Chart C 4 (5, 6) times around.', 'as chart C end 4 (5, 6)×'],
    [
      'Rnd 1: K2, work Rnd 1 of Chart A to 2 sts before m, k2, sm, k to end.',
      'round 1: k{2} as chart A rows 1 2 before marker k{2} marker slip k→end',
    ],
    ['Row 1 (RS): Work Row 1 of Chart to last 4 sts, k4.', 'row 1 (RS): as chart rows 1 last 4 k{4}'],
    ['Row 2 (WS): K4, work Row 2 of Chart to end.', 'row 2 (WS): k{4} as chart rows 2 end'],
    ['Work Rows 9–16 of Wave chart twice.', 'as chart wave rows 9,10,11,12,13,14,15,16 2×'],
    ['Beg with Row 5, work Chart A over centre 25 sts.', 'as chart A rows 5 over 25'],
    ['Cont working Chart A until Row 40 has been completed.', 'as chart A to loose "row 40 has been completed"'],
    ['Repeat Rows 1–12 of chart 5 more times.', 'as chart rows 1,2,3,4,5,6,7,8,9,10,11,12 5× more'],
    ['Set chart: K3, work Row 1 of Chart A, k3.', 'declare title Set chart | row: k{3} as chart A rows 1 k{3}'],
    ['Next row (RS): Work first 12 sts of Chart A, k to end.', 'row next (RS): as chart A over 12 k→end'],
    ['Follow the chart for Rows 1–20.', 'as chart rows 1,2,3,4,5,6,7,8,9,10,11,12,13,14,15,16,17,18,19,20'],
    ['Work 24 rows of Chart A.', 'as chart A to 24 rows'],
  ],
};

describe('Charts', () => {
  for (const [family, table] of Object.entries(rows)) {
    describe(family, () => {
      test.each(table)('%s', (text, expected) => {
        expect(read(text, { sizes })).toBe(expected);
      });
    });
  }
});
