/**
 * Short rows of every method as people write them, with where the yarn stands after each row. Worked stitch by stitch
 * apart from this program; the methods follow common practice, no source.
 */
import { describe, test } from 'vitest';
import { holds, type Wording } from './worked.ts';

const wrapped: readonly Wording[] = [
  [
    'Row 1 (RS): Knit 20, wrap and turn. Row 2: Purl 10, wrap and turn. Row 3: Knit to wrapped st, knit it with its wrap, k3, wrap and turn. Row 4: Purl to wrapped st, purl it with its wrap, p3, wrap and turn. Row 5: Knit to end. Row 6: Purl to end.',
    30,
    30,
    { cursors: [20, 10, 24, 6, 30, 0] },
  ],
  [
    'Next 2 rows: Work to last 5 sts, w&t. Next 2 rows: Work to last 10 sts, w&t. Next 2 rows: Work to last 15 sts, w&t. Next 2 rows: Work to end.',
    60,
    60,
    { cursors: [55, 5, 50, 10, 45, 15, 60, 0] },
  ],
  [
    'Rows 1 & 2: Knit to last 5 sts, w&t. Rows 3 & 4: Knit to 5 sts before wrapped st, w&t. Rows 5 & 6: Knit to end.',
    40,
    40,
    { cursors: [35, 5, 30, 10, 40, 0] },
  ],
  [
    '1st row: K to last 6 sts, yfwd, sl 1, ybk, return sl st to left needle, turn. 2nd row: P to last 6 sts, ybk, sl 1, yfwd, return sl st to left needle, turn. 3rd row: K to end. 4th row: P.',
    40,
    40,
    { cursors: [34, 6, 40, 0] },
  ],
  [
    'Knit to the last 8 stitches, wrap the next stitch, turn. Purl to the last 8 stitches, wrap the next stitch, turn. Knit to 4 stitches before the wrapped stitch, wrap the next stitch, turn. Purl to 4 stitches before the wrapped stitch, wrap the next stitch, turn. Knit to end, picking up the wraps. Purl to end, picking up the wraps.',
    40,
    40,
    { cursors: [32, 8, 28, 12, 40, 0] },
  ],
  [
    'SR 1: K25, W+T; SR 2: P10, W+T; SR 3: K9, W+T; SR 4: P8, W+T; SR 5: knit to end; SR 6: purl all.',
    40,
    40,
    { cursors: [25, 15, 24, 16, 40, 0] },
  ],
  ['K12, wrap 1, turn, p to end; k9, wrap 1, turn, p to end; k6, wrap 1, turn, p to end.', 18, 18, { cursors: [12, 0, 9, 0, 6, 0] }],
  ['Row 1: K to last 7 sts, wr & t. Row 2: P to end.', 20, 20, { cursors: [13, 0] }],
];

const doubles: readonly Wording[] = [
  [
    'Row 1 (RS): K20, turn. Row 2 (WS): DS, p9, turn. Row 3: DS, k to DS, k DS, k3, turn. Row 4: DS, p to DS, p DS, p3, turn. Row 5: DS, k to end. Row 6: P to end.',
    30,
    30,
    { cursors: [20, 10, 23, 7, 30, 0] },
  ],
  [
    'Knit to 5 sts before end, turn, make double stitch, purl to 5 sts before end, turn, make double stitch, knit to 2 sts before double stitch, turn, make double stitch, purl to 2 sts before double stitch, turn, make double stitch, knit to end.',
    30,
    30,
    { cursors: [25, 5, 22, 8, 30] },
  ],
  [
    'Short row 1: knit to last 4 sts, turn. Short row 2: slip 1 wyif, pull yarn up and over needle to make a DS, purl to last 4 sts, turn.',
    24,
    24,
    { cursors: [20, 4] },
  ],
  [
    'Row 1: K to last 6 sts, GSR. Row 2: P to last 6 sts, GSR. Row 3: K to 3 sts before last DS, GSR. Row 4: P to 3 sts before last DS, GSR. Row 5: Knit. Row 6: Purl.',
    40,
    40,
    { cursors: [33, 7, 29, 11, 40, 0] },
  ],
  ['Row 2 (WS): DS, p19, turn.', 40, 40, { side: 'WS', cursors: [20] }],
  [
    'Row 1 (RS): K to end. Row 2 (WS): P30, turn. Row 3 (RS): DS, k19, turn. Row 4: DS, p to DS, p DS, p to end.',
    40,
    40,
    { cursors: [40, 10, 30, 0] },
  ],
  ['K30, turn, DS, p19. Turn, DS, k to DS, k DS, k to end.', 40, 40, { cursors: [30, 10, 40] }],
  [
    'Row 1: k30, turn and make DS. Row 2: p19, turn and make DS. Row 3: k to end, knitting both legs of DS together. Row 4: purl to end, purling both legs of DS tog.',
    40,
    40,
    { cursors: [29, 11, 40, 0] },
  ],
  [
    'With German short rows: k to 3 sts past 2nd marker, turn; DS, p to 3 sts past 2nd marker, turn; DS, k to 3 sts past DS, turn; DS, p to 3 sts past DS, turn; DS, k to end; p to end.',
    40,
    40,
    { markers: [15, 25], cursors: [28, 12, 31, 9, 40, 0] },
  ],
  ['Row 1: K30, turn. Row 2: DS, p 19 (including DS), turn. Row 3: DS, k to end.', 40, 40, { cursors: [30, 11, 40] }],
  [
    'Row 1: K10, turn. Row 2: DS, p to end. Row 3: K to DS, knit DS, k5, turn. Row 4: DS, p to end. Rep rows 3 and 4 twice more. Row 9: K across, working DS as one stitch.',
    40,
    40,
    { cursors: [10, 0, 15, 0, 20, 0, 25, 0, 40] },
  ],
];

const otherMethods: readonly Wording[] = [
  [
    'K18, turn; place a pin on the yarn, sl 1, p9, turn; pin, sl 1, k to gap, lift pinned loop and k it tog with next st, k to end.',
    24,
    24,
    { cursors: [18, 8, 24] },
  ],
  [
    'Row 1: K18, turn, hang a removable marker on working yarn. Row 2: sl 1 pwise, p11, turn, hang a marker on working yarn. Row 3: sl 1, k to end, closing gap.',
    24,
    24,
    { cursors: [18, 6, 24] },
  ],
  [
    'K18, make twin, turn; p12, make twin, turn; k to end, working twin as one; p across, working twin sts as one.',
    24,
    24,
    { cursors: [18, 6, 24, 0] },
  ],
  [
    'Row 1: K18, shadow wrap next st, turn. Row 2: P12, shadow wrap next st, turn. Row 3: K14, shadow wrap next st, turn.',
    24,
    24,
    { cursors: [18, 6, 20] },
  ],
  [
    'K18, turn; yo, p12, turn; yo, k to yo, k2tog (yo with next st), k to end. P to yo, ssp (yo with next st), p to end.',
    24,
    24,
    { cursors: [18, 6, 24, 0] },
  ],
  ['Row 1: K18, turn, yo. Row 2: P12, turn, yo. Row 3: K to yo, k2tog, k to end.', 24, 24, { cursors: [18, 6, 24] }],
  ['K18, bring yarn to front, slip next st, turn; bring yarn to back, slip the same st back, p12, turn.', 24, 24, { cursors: [19, 6] }],
  [
    'Row 1 (RS): K18, turn (no wrap). Row 2: P12, turn. Row 3: K to gap, close gap by picking up the bar and knitting it tog with next st, k2, turn.',
    24,
    24,
    { cursors: [18, 6, 21] },
  ],
  ['Work 18 sts, turn using the method you prefer, work 12 sts, turn, work to end.', 24, 24, { cursors: [18, 6, 24] }],
  [
    'Row 1: K to 5 sts before end of row; turn. Row 2: Sl 1 purlwise, p to 5 sts before end of row; turn. Row 3: Sl 1, k to 5 sts before gap; turn. Row 4: Sl 1, p to 5 sts before gap; turn. Row 5: Sl 1, k to end, closing gaps as you go. Row 6: P to end, closing gaps.',
    40,
    40,
    { cursors: [35, 5, 30, 10, 40, 0] },
  ],
];

const lists: readonly Wording[] = [
  [
    'Row 1 (RS): K18, turn. Row 2: P. Row 3: K12, turn. Row 4: P. Row 5: K6, turn. Row 6: P. Row 7: K across all sts.',
    24,
    24,
    { cursors: [18, 0, 12, 0, 6, 0, 24] },
  ],
  [
    'Knit 20, w&t; purl 10, w&t; knit 12, w&t; purl 14, w&t. Continue in this way, working 2 more sts on each row, until all sts have been worked.',
    30,
    30,
    { rows: 12 },
  ],
  ['K50, turn; p40, turn; k35, turn; p30, turn; k25, turn; p20, turn; k to end.', 60, 60, { cursors: [50, 10, 45, 15, 40, 20, 60] }],
  [
    'Next row: K to last 4 sts, turn. Next row: Sl 1, p to last 4 sts, turn. Next row: Sl 1, k to last 8 sts, turn. Next row: Sl 1, p to last 8 sts, turn. Next row: Sl 1, k to end. Next row: P across all sts.',
    40,
    40,
    { cursors: [36, 4, 32, 8, 40, 0] },
  ],
  [
    'Turning rows: K 45 turn, p 30 turn, k 35 turn, p 40 turn, k 45 turn, p 50 turn, k to end.',
    60,
    60,
    { cursors: [45, 15, 50, 10, 55, 5, 60] },
  ],
  [
    '1st and 2nd rows. Knit to last 6 sts., turn. 3rd and 4th rows. Knit to last 12 sts., turn. 5th and 6th rows. Knit to last 18 sts., turn. 7th and 8th rows. Knit to end.',
    60,
    60,
    { cursors: [54, 6, 48, 12, 42, 18, 60, 0] },
  ],
  [
    'K 30 (32, 34), turn; sl 1, p 19 (21, 23), turn; sl 1, k 24 (26, 28), turn; sl 1, p 29 (31, 33), turn; k to end of row.',
    [40, 44, 48],
    [40, 44, 48],
    { cursors: [30, 10, 35, 5, 40] },
  ],
  [
    'Row 1: K5, turn. Row 2: K5. Row 3: K10, turn. Row 4: K10. Row 5: K15, turn. Row 6: K15. Row 7: K all sts.',
    20,
    20,
    { cursors: [5, 0, 10, 0, 15, 0, 20] },
  ],
  [
    'Row 1: K35, turn. Row 2: P30, turn. Work 5 more rows in this way, working 5 sts fewer on each row.',
    40,
    40,
    { cursors: [35, 5, 30, 10, 25, 15, 20] },
  ],
  [
    'Row 1 (RS): K35, w&t. Row 2: P to end. Row 3: K 5 sts fewer than last RS row, w&t. Row 4: P to end. Rep last 2 rows 4 times more. Next row: K across all sts, hiding wraps.',
    40,
    40,
    { cursors: [35, 0, 30, 0, 25, 0, 20, 0, 15, 0, 10, 0, 40] },
  ],
];

const byRule: readonly Wording[] = [
  ['Leave 6 sts unworked at end of next 2 rows, then 5 sts at end of foll 2 rows.', 60, 60, { cursors: [11] }],
  ['Work in short rows, leaving 8 sts unworked at the end of the next 4 rows.', 60, 60, { cursors: [16] }],
  [
    'Row 1: Work to last 6 sts, turn. Row 2: Work to last 6 sts, turn. Next 4 rows: work to 6 sts before last turning point, turn. Next 2 rows: work to end.',
    60,
    60,
    { cursors: [54, 6, 48, 12, 42, 18, 60, 0] },
  ],
  [
    'Row 1 (RS): k40, turn. Row 2: p20, turn. Rows 3-8: work to 4 sts past last turn, turn. Rows 9-10: work to end.',
    60,
    60,
    { cursors: [40, 20, 44, 16, 48, 12, 52, 8, 60, 0] },
  ],
];

const around: readonly Wording[] = [
  ['Next rnd: k10, w&t, p20, w&t, k to BOR.', 96, 96, { around: [10, -10, 0] }],
  [
    'Short row 1 (RS): K to 12 sts past BOR marker, turn. Short row 2 (WS): DS, p to 12 sts past BOR marker, turn. Short row 3: DS, k to BOR.',
    96,
    96,
    { around: [12, -12, 0] },
  ],
  [
    'Work back neck short rows: Row 1: K8, w&t. Row 2: P to m, sm, p8, w&t. Row 3: K to m, sm, k14, picking up wrap, w&t. Row 4: P to m, sm, p14, picking up wrap, w&t. Row 5: K to BOR. Next rnd: K all sts, picking up remaining wraps.',
    80,
    80,
    { around: [8, -8, 14, -14, 0, 0] },
  ],
  ['K20, turn; sl 1, p39, turn; sl 1, k29, turn; sl 1, p19, turn; sl 1, k to end of rnd.', 80, 80, { around: [20, -20, 10, -10, 0] }],
  [
    'Rnd 12: k to 6 sts before side m, w&t; p to 6 sts before BOR, w&t; k to BOR; resume working in rounds, picking up wraps.',
    80,
    80,
    { markers: [40], around: [34, 6, 0] },
  ],
  [
    'Row 1 (RS): Knit to 4 sts before the BOR, turn. Row 2 (WS): MDS, purl to 4 sts before the BOR, turn. Row 3: MDS, knit to BOR. Next rnd: Knit, working all DS as single sts.',
    60,
    60,
    { around: [56, 4, 0, 0] },
  ],
];

const goals: readonly Wording[] = [
  [
    'Row 1: K to last 2 sts, w&t. Row 2: P to last 2 sts, w&t. Row 3: K to 2 sts before wrapped st, w&t. Row 4: P to 2 sts before wrapped st, w&t. Rep Rows 3-4 until 8 sts rem between wraps.',
    32,
    32,
    { rows: 12 },
  ],
  [
    'Rows 1 and 2: K to last st, w&t. Rows 3 and 4: K to 1 st before wrapped st, w&t. Rep last 2 rows until there are 7 wrapped sts at each side.',
    30,
    30,
    { rows: 14 },
  ],
  [
    'Row 1: K27, w&t. Row 2: P26, w&t. Row 3: K to 1 st before wrapped st, w&t. Row 4: P to 1 st before wrapped st, w&t. Rep Rows 3 and 4 until 8 sts rem unwrapped. Row 21: K to wrapped st, k wrap tog with st, w&t. Row 22: P to wrapped st, p wrap tog with st, w&t. Rep Rows 21 and 22 until one wrapped st remains at each end.',
    28,
    28,
    { rows: 38 },
  ],
  [
    'Row 1: K to 5 sts before end, turn. Row 2: P. Row 3: K to 5 sts before last turn, turn. Row 4: P. Rep Rows 3 and 4 until 5 sts rem. Next row: K.',
    30,
    30,
    { rows: 11 },
  ],
  [
    'Row 1: K20, turn. Row 2: DS, p to end. Row 3: K to 3 sts before DS, turn. Row 4: DS, p to end. Rep Rows 3 and 4 until 7 sts rem before DS.',
    24,
    24,
    { rows: 8 },
  ],
];

describe('short rows', () => {
  const all = [...wrapped, ...doubles, ...otherMethods, ...lists, ...byRule, ...goals];
  test.each(all.map((each) => [each[0], each] as const))('%s', (_, each) => holds(each));
  test.each(around.map((each) => [each[0], each] as const))('%s', (_, each) => holds(each, { mode: 'round' }));
});
