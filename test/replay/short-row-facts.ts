/**
 * Short rows with where the yarn stands after each row (stitches that a right-side row has behind it), the rows and
 * stitches worked, and what is left. Worked stitch by stitch or summed apart from this program; the ways of turning
 * follow common practice, no source.
 */
export interface ShortRowFact {
  readonly title: string;
  readonly start: number;
  readonly mode?: 'round';
  readonly text: string;
  readonly cursors?: readonly number[];
  /** In a round: stitches past the beginning (before it: less than nothing) after each row. */
  readonly around?: readonly number[];
  readonly end: number;
  readonly rows?: number;
  /** Stitches worked in all the rows. */
  readonly worked?: number;
  /** Turns that no row has crossed since, as the stitches on their right. */
  readonly open?: readonly number[];
  /** Kinds of what a knitter would meet; empty when not given. */
  readonly met?: readonly string[];
}

const down = (from: number, step: number, least: number): number[] => {
  const out: number[] = [];
  for (let n = from; n >= least; n -= step) out.push(n);
  return out;
};
const andBack = (turns: readonly number[]): number[] => turns.flatMap((turn) => [turn, 0]);

const heel = (plain: number): string =>
  `Row 1 (RS): K${plain}, ssk, k1, turn. Row 2: Sl 1, p5, p2tog, p1, turn. Row 3: Sl 1, k to 1 st before gap, ssk, k1, turn. Row 4: Sl 1, p to 1 st before gap, p2tog, p1, turn. Rep Rows 3 and 4 until all sts are worked.`;
const edging = (rows: string): string =>
  `Cast on 9 sts. Row 1 (RS): K8, ssk (last edging st with next shawl st), turn. Row 2: Sl 1, k8. ${rows}`;

export const shortRowFacts: readonly ShortRowFact[] = [
  {
    title: 'wrapped turns',
    start: 10,
    text: 'Row 1 (RS): K7, w&t. Row 2 (WS): P4, w&t. Row 3: K to end.',
    cursors: [7, 3, 10],
    end: 10,
    open: [3],
    met: ['loopsOpen'],
  },
  {
    title: 'wrapped turns, both traces',
    start: 8,
    text: 'Row 1 (RS): K5, w&t. Row 2 (WS): P2, w&t. Row 3: K to end, picking up wrap. Row 4: P to end, picking up wrap.',
    cursors: [5, 3, 8, 0],
    worked: 20,
    end: 8,
    open: [],
  },
  {
    title: 'double stitches',
    start: 10,
    text: 'Row 1 (RS): K7, turn. Row 2 (WS): DS, p4, turn. Row 3: DS, k to DS, k DS, k3. Row 4: P to DS, p DS, p to end.',
    cursors: [7, 2, 10, 0],
    end: 10,
    open: [],
  },
  {
    title: 'the same numbers turn one stitch further with a double stitch',
    start: 8,
    text: 'Row 1 (RS): K5, turn. Row 2 (WS): DS, p2, turn. Row 3: DS, k to DS, k DS, k to end. Row 4: P to DS, p DS, p to end.',
    cursors: [5, 2, 8, 0],
    end: 8,
    open: [],
  },
  {
    title: 'plain turns',
    start: 8,
    text: 'Row 1 (RS): K5, turn. Row 2: P3, turn. Row 3: K to end.',
    cursors: [5, 2, 8],
    worked: 14,
    end: 8,
    open: [2],
  },
  {
    title: 'a list that goes on',
    start: 96,
    text: 'K90, turn; k84, turn; k78, turn; k72, turn … k6, turn.',
    cursors: [90, 6, 84, 12, 78, 18, 72, 24, 66, 30, 60, 36, 54, 42, 48],
    rows: 15,
    worked: 720,
    end: 96,
  },
  {
    title: 'a list told by its step and its end',
    start: 96,
    text: 'K90, turn; k84, turn. Cont in this way, working 6 sts fewer each row, until 6 sts rem between turns.',
    rows: 15,
    worked: 720,
    end: 96,
  },
  {
    title: 'one-sided, before the last turn',
    start: 60,
    text: 'Row 1: K54, turn. Row 2: P54. Row 3: K to 6 sts before last turn, turn. Row 4: P to end. Rep last 2 rows 7 times more.',
    cursors: andBack(down(54, 6, 6)),
    rows: 18,
    worked: 540,
    end: 60,
  },
  {
    title: 'one-sided, before the double stitch',
    start: 60,
    text: 'Row 1: K54, turn. Row 2: DS, p53. Row 3: K to 5 sts before DS, turn. Row 4: DS, p to end. Rep last 2 rows 7 times more. Next row: K to end.',
    cursors: [...andBack(down(54, 6, 6)), 60],
    rows: 19,
    end: 60,
  },
  {
    title: 'a tenth pair that is not there',
    start: 60,
    text: 'Row 1: K54, turn. Row 2: P54. Row 3: K to 6 sts before last turn, turn. Row 4: P to end. Rep last 2 rows 8 times more.',
    end: 60,
    met: ['tooFew'],
  },
  {
    title: '4 before the gap',
    start: 24,
    text: 'Row 1: K20, turn. Row 2: P to end. Row 3: K to 4 sts before gap, turn. Row 4: P to end. Rep last 2 rows 3 times more.',
    cursors: andBack([20, 16, 12, 8, 4]),
    end: 24,
  },
  {
    title: '4 before the wrapped stitch',
    start: 24,
    text: 'Row 1: K20, w&t. Row 2: P to end. Row 3: K to 4 sts before wrapped st, w&t. Row 4: P to end. Rep last 2 rows 3 times more. Next row: K to end.',
    cursors: [...andBack([20, 16, 12, 8, 4]), 24],
    end: 24,
    open: [],
  },
  {
    title: '4 before the double stitch is 5 from turn to turn',
    start: 24,
    text: 'Row 1: K20, turn. Row 2: DS, p to end. Row 3: K to 4 sts before DS, turn. Row 4: DS, p to end. Rep last 2 rows 2 times more. Next row: K to end.',
    cursors: [...andBack([20, 15, 10, 5]), 24],
    end: 24,
    open: [],
  },
  {
    title: 'fewer than the last row of its side',
    start: 24,
    text: 'Row 1 (RS): K20, w&t. Row 2: P to end. Row 3 (RS): K 4 sts fewer than on last RS row, w&t. Row 4: P to end. Rep last 2 rows 3 times more. Next row: K to end.',
    cursors: [...andBack([20, 16, 12, 8, 4]), 24],
    end: 24,
    open: [],
  },
  {
    title: '4 past the gap lands on the edge',
    start: 30,
    text: 'Row 1: K6, turn. Row 2: P to end. Row 3: K to 4 sts past gap, turn. Row 4: P to end. Rep last 2 rows until all sts have been worked.',
    cursors: andBack([6, 10, 14, 18, 22, 26, 30]),
    end: 30,
    open: [],
  },
  {
    title: '4 past the double stitch lands on the edge',
    start: 30,
    text: 'Row 1: K6, turn. Row 2: DS, p to end. Row 3: K to DS, k DS, k4, turn. Row 4: DS, p to end. Rep last 2 rows until all sts have been worked.',
    cursors: andBack([6, 10, 14, 18, 22, 26, 30]),
    end: 30,
  },
  {
    title: '4 past the wrapped stitch wants a 31st',
    start: 30,
    text: 'Row 1: K6, w&t. Row 2: P to end. Row 3: K to 4 sts past wrapped st, w&t. Row 4: P to end. Rep last 2 rows until all sts have been worked.',
    end: 30,
    met: ['tooFew'],
  },
  {
    title: 'two closing rows are needed',
    start: 12,
    text: 'K9, w&t; p6, w&t; k4, w&t; p2, w&t; k to end.',
    cursors: [9, 3, 7, 5, 12],
    end: 12,
    open: [3, 5],
    met: ['loopsOpen'],
  },
  {
    title: 'written out with double stitches',
    start: 44,
    text: 'Row 1: K33, turn. Row 2: DS, p22, turn. Row 3: DS, k26, turn. Row 4: DS, p30, turn. Row 5: DS, k to end. Row 6: P to end.',
    cursors: [33, 10, 37, 6, 44, 0],
    end: 44,
    open: [],
  },
  {
    title: 'wrapped, two-sided',
    start: 24,
    text: 'Row 1: K12, w&t. Row 2: P8, w&t. Row 3: K7, w&t. Row 4: P6, w&t. Row 5: K to end. Row 6: P to end.',
    cursors: [12, 4, 11, 5, 24, 0],
    end: 24,
    open: [],
  },
  {
    title: 'short-row heel, in and out',
    start: 28,
    text: 'Row 1 (RS): K27, w&t. Row 2: P26, w&t. Row 3: K to 1 st before wrapped st, w&t. Row 4: P to 1 st before wrapped st, w&t. Rep Rows 3-4 until 8 sts rem unwrapped, ending with a WS row. Row 21: K to first wrapped st, k it tog with its wrap, w&t. Row 22: P to first wrapped st, p it tog with its wrap, w&t. Rep Rows 21-22 until all sts have been worked.',
    rows: 40,
    worked: 720,
    end: 28,
    open: [],
  },
  {
    title: 'heel with double stitches to 8 between',
    start: 28,
    text: 'Row 1: K28, turn. Row 2: DS, p to end, turn. Row 3: DS, k to DS, turn. Row 4: DS, p to DS, turn. Rep Rows 3 and 4 until 8 single sts rem between DS.',
    rows: 20,
    end: 28,
    met: ['loopsOpen'],
  },
  { title: 'heel turn on 28', start: 28, text: heel(16), rows: 12, end: 16, open: [], cursors: [18, 9, 18, 7, 18, 5, 18, 3, 18, 1, 17, 0] },
  { title: 'heel turn on 30', start: 30, text: heel(17), rows: 12, end: 18, open: [] },
  { title: 'heel turn on 32', start: 32, text: heel(18), rows: 14, end: 18, open: [] },
  { title: 'heel turn on 36', start: 36, text: heel(20), rows: 16, end: 20, open: [] },
  { title: 'heel turn off its centre', start: 32, text: heel(17), rows: 13, end: 19, open: [] },
  {
    title: 'square heel',
    start: 30,
    text: 'Row 1: K19, ssk, turn. Row 2: Sl 1, p8, p2tog, turn. Row 3: Sl 1, k8, ssk, turn. Rep Rows 2 and 3 until all side sts are used. (10 sts)',
    rows: 20,
    end: 10,
    open: [],
  },
  {
    title: 'flap of a heel from the toe up',
    start: 50,
    text: 'Row 1: K39, ssk, turn. Row 2: Sl 1, p28, p2tog, turn. Row 3: Sl 1, k28, ssk, turn. Rep Rows 2 and 3 until all gusset sts have been worked. (30 sts)',
    rows: 20,
    end: 30,
    open: [],
  },
  {
    title: 'crescent, one stitch past the decrease',
    start: 131,
    text: 'Row 1 (RS): K73, turn. Row 2: K15, turn. Row 3: K to 1 st before gap, k2tog, k1, turn. Rep Row 3 until all sts are worked (73 sts).',
    rows: 60,
    end: 73,
    open: [],
  },
  {
    title: 'crescent, three stitches past the decrease',
    start: 119,
    text: 'Row 1 (RS): K67, turn. Row 2: P15, turn. Row 3: K to 1 st before gap, ssk, k3, turn. Row 4: P to 1 st before gap, p2tog, p3, turn. Rep last 2 rows until all sts are worked.',
    rows: 28,
    end: 93,
    open: [],
  },
  {
    title: 'crescent whose sides are no multiple of its step',
    start: 131,
    text: 'Row 1 (RS): K73, turn. Row 2: K15, turn. Row 3: K to 1 st before gap, k2tog, k3, turn. Rep Row 3 until all sts are worked.',
    end: 103,
    met: ['tooFew'],
  },
  {
    title: 'triangle, increase into a stitch',
    start: 14,
    text: 'Row 1 (RS): K1, kfb, k1, turn. Row 2: Sl 1, k to end. Row 3: K1, kfb, k to gap, k1, turn. Row 4: As Row 2. Rep Rows 3 and 4 until all CO sts have been worked - 26 sts.',
    rows: 24,
    end: 26,
    open: [],
  },
  {
    title: 'triangle, increase between stitches',
    start: 14,
    text: 'Row 1 (RS): K1, M1, k1, turn. Row 2: Sl 1, k to end. Row 3: K1, M1, k to gap, k1, turn. Row 4: As Row 2. Rep Rows 3 and 4 until all CO sts have been worked - 27 sts.',
    rows: 26,
    end: 27,
    open: [],
  },
  {
    title: 'triangle joined by a decrease',
    start: 16,
    text: 'Row 1: K1, M1, k2tog, turn. Row 2: Sl 1, k to end. Row 3: K1, M1, k to 1 st before gap, k2tog, turn. Row 4: Sl 1, k to end. Rep Rows 3-4 until all sts have been worked.',
    rows: 28,
    end: 16,
    open: [],
  },
  {
    title: 'in the round, past its beginning',
    start: 96,
    mode: 'round',
    text: 'SR1 (RS): K16, turn. SR2 (WS): DS, p to BOR, sm, p16, turn. SR3: DS, k to BOR, sm, k to DS, k DS, k4, turn. SR4: DS, p to BOR, sm, p to DS, p DS, p4, turn. Rep SR3–4 once more. Next row (RS): DS, k to BOR.',
    around: [16, -16, 20, -20, 24, -24, 0],
    worked: 240,
    end: 96,
    met: ['loopsOpen'],
  },
  {
    title: 'the next round takes all of it',
    start: 96,
    mode: 'round',
    text: 'SR1 (RS): K16, turn. SR2 (WS): DS, p to BOR, sm, p16, turn. Next row (RS): DS, k to BOR. Next rnd: K all sts, working rem DS as single sts. (96 sts)',
    worked: 160,
    end: 96,
    open: [],
  },
  {
    title: 'a round is left and not come back to',
    start: 96,
    mode: 'round',
    text: 'Rnd 8: K20, turn. Rnd 9: Knit.',
    end: 96,
    met: ['turnInRound'],
  },
  {
    title: 'rounds begin somewhere else',
    start: 96,
    mode: 'round',
    text: 'Rnd 8: K20, turn. Row 9: P30, turn. Row 10: K5. Rnd 11: Knit.',
    end: 96,
    met: ['notAtBeginning'],
  },
  {
    title: 'wedge of a round blanket',
    start: 50,
    text: 'K48, turn, k48; k46, turn, k46; cont, working 2 fewer sts each time, to k2, turn, k2. K 2 rows.',
    rows: 50,
    end: 50,
    open: [],
  },
  {
    title: 'out and back in one line',
    start: 16,
    text: 'K12, turn, p12; k9, turn, p9; k6, turn, p6; k3, turn, p3.',
    cursors: andBack([12, 9, 6, 3]),
    worked: 60,
    end: 16,
  },
  {
    title: 'edging, one stitch joined every second row',
    start: 144,
    text: edging('Rep last 2 rows until all shawl sts have been worked.'),
    rows: 288,
    end: 9,
  },
  { title: 'edging, joined as often as said', start: 24, text: edging('Rep last 2 rows 23 times more.'), rows: 48, end: 9 },
  { title: 'edging with one join too many', start: 24, text: edging('Rep last 2 rows 24 times more.'), end: 9, met: ['tooFew'] },
  {
    title: 'double stitch written at the end of the row',
    start: 30,
    text: 'Row 1 (RS): K to last 5 sts, DS. Row 2: P to last 5 sts, DS. Row 3: K to 2 sts before DS, DS. Row 4: P to end. Row 5: K to end.',
    cursors: [24, 6, 21, 0, 30],
    end: 30,
    open: [],
  },
  {
    title: 'one turn written twice',
    start: 30,
    text: 'Row 1 (RS): K26, w&t, turn. Row 2: P to end. Row 3: K to end.',
    cursors: [26, 0, 30],
    end: 30,
    met: ['turnAgain'],
  },
  {
    title: 'the same place again and again',
    start: 60,
    text: 'Row 1: K to last 5 sts, turn. Row 2: P to end. Rep last 2 rows 3 times.',
    end: 60,
    met: ['noProgress'],
  },
  {
    title: 'the same place in different wedges',
    start: 60,
    text: 'Row 1: K40, turn. Row 2: P to end. Row 3: K to end. Row 4: P to end. Rep last 4 rows 3 times more.',
    end: 60,
    rows: 16,
    open: [],
  },
  {
    title: 'more left than said',
    start: 30,
    text: 'Row 1 (RS): K24, turn, leaving rem 8 sts unworked. Row 2: P to end. Row 3: K to end.',
    end: 30,
    met: ['leftDiffers'],
  },
  { title: 'no turn ahead', start: 30, text: 'Row 1 (RS): K to 3 sts before wrapped st, w&t.', end: 30, met: ['noGap'] },
  { title: 'nothing left to wrap', start: 30, text: 'Row 1 (RS): K to end, w&t.', end: 30, met: ['tooFew'] },
  {
    title: 'a closing row that stops short',
    start: 44,
    text: 'Row 1: K33, w&t. Row 2: P20, w&t. Row 3 (RS): K26.',
    end: 44,
    met: ['leftOver'],
  },
  {
    title: 'yarn overs at the turns are no stitches',
    start: 40,
    text: 'K18, turn; yo, p9, turn; yo, k to yo, k2tog, k to end. Next row: P to yo, ssp, p to end.',
    cursors: [18, 9, 40, 0],
    end: 40,
    open: [],
  },
];
