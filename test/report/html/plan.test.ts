import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { type Proof, proof } from '../../../src/index.ts';
import { momentsOf } from '../../../src/replay/moments.ts';
import { columnRows, foldLines } from '../../../src/report/plan/fold.ts';
import { markerPlan } from '../../../src/report/plan/free-columns.ts';
import { type PlanLine, planLines, widthOf, workedSquares } from '../../../src/report/plan/layout.ts';
import { sayColumns, sayLine } from '../../../src/report/plan/say.ts';
import { planSvg } from '../../../src/report/plan/svg.ts';
import { attributes, nestingProblems } from './documents.ts';

const linesOf = (draft: Proof, size = 0) =>
  planLines(
    draft,
    size,
    momentsOf(draft, () => true),
  );
const plan = (body: string, size = 0) => linesOf(proof(`# Tarn\n\n## Body\n\n${body}\n`), size);
const rowsOnly = (lines: readonly PlanLine[]) => lines.filter((line) => line.unit !== 'step');

const wedge = plan(
  'Cast on 20 sts.\n\nRow 1 (RS): K14, turn.\n\nRow 2: P8, turn.\n\nRow 3: K10, turn.\n\nRow 4: P12, turn.\n\nRow 5: K16.\n\nRow 6: P20.',
);

describe('short rows', () => {
  // Drawn by hand on squared paper.
  test('are shorter lines at their place, as the right side shows them', () => {
    expect(rowsOnly(wedge).map((line) => [line.label, workedSquares(line), line.waitsLeft, line.waitsRight])).toEqual([
      ['Row 1', 14, 6, 0],
      ['Row 2', 8, 6, 6],
      ['Row 3', 10, 4, 6],
      ['Row 4', 12, 4, 4],
      ['Row 5', 16, 0, 4],
      ['Row 6', 20, 0, 0],
    ]);
    expect(new Set(wedge.map((line) => line.right))).toEqual(new Set([0]));
  });

  test('counted per column show the height of the wedge', () => {
    expect(columnRows(wedge)).toEqual([
      { from: 0, columns: 4, rows: 2 },
      { from: 4, columns: 2, rows: 4 },
      { from: 6, columns: 8, rows: 6 },
      { from: 14, columns: 2, rows: 4 },
      { from: 16, columns: 4, rows: 2 },
    ]);
    expect(sayColumns(columnRows(wedge) ?? [])).toBe(
      'Rows in each column, from the right edge: 2 in 4 columns, 4 in 2 columns, 6 in 8 columns, 4 in 2 columns, 2 in 4 columns.',
    );
    expect(sayLine(rowsOnly(wedge)[2] as PlanLine)).toBe('Row 3, RS: 20 stitches; 10 worked; unworked: left 4, right 6; turn');
  });
});

describe('shaping that is told and not written out', () => {
  const front = (title: string, words: string) =>
    linesOf(proof(`# Tarn\n\n## ${title}\n\nCast on 20 sts.\n\n${words}\n`))
      .filter((line) => line.after === 19)
      .map((line) => [line.right, line.runs.map((run) => run.kind), line.note === undefined]);

  // A neck edge is the right edge of a right front as its right side shows it: drawn by hand.
  test.each([
    ['Right front', 1, ['decrease', 'plain'], true],
    ['Left front', 0, ['plain', 'decrease'], true],
    ['Front', 0, ['plain', 'decrease'], false],
  ])('at the neck edge of the %s', (title, right, kinds, sure) => {
    expect(front(title, 'Dec 1 st at neck edge on next 4 rows.')).toEqual([[right, kinds, sure]]);
  });

  test('which edge was assumed is said', () => {
    const [line] = linesOf(proof('# Tarn\n\n## Front\n\nCast on 20 sts.\n\nDec 1 st at neck edge on next 4 rows.\n')).filter(
      (each) => each.after === 19,
    );
    expect(sayLine(line as PlanLine)).toMatch(
      /19 stitches; 1 decrease; drawn at the left edge: on which side the neck edge lies the name of the piece does not tell/,
    );
  });

  test('at both ends, at each of them', () => {
    const [line] = plan('Cast on 20 sts.\n\nDec 1 st at each end of next and every foll alt row until 12 sts rem.').filter(
      (each) => each.after === 18,
    );
    expect([line?.right, line?.runs.map((run) => [run.kind, run.n])]).toEqual([
      1,
      [
        ['decrease', 1],
        ['plain', 16],
        ['decrease', 1],
      ],
    ]);
  });
});

describe('shaping', () => {
  const tip = plan(
    'Cast on 10 sts.\n\nRow 1 (RS): K1, ssk, k4, k2tog, k1.\n\nRow 2: Purl.\n\nRow 3: K1, m1, k to last st, m1, k1.\n\nRow 4: Purl.\n\nRow 5: Bind off 3 sts, k to end.\n\nRow 6: P to end.',
  );

  test('leans as the stitch leans and stands where it was worked, from the right edge', () => {
    const first = rowsOnly(tip)[0] as PlanLine;
    expect(first.runs.map((run) => [run.kind, run.n, run.lean])).toEqual([
      ['plain', 1, null],
      ['decrease', 1, 'left'],
      ['plain', 4, null],
      ['decrease', 1, 'right'],
      ['plain', 1, null],
    ]);
  });

  test('in the right half moves the right edge, in the left half the left one', () => {
    expect(rowsOnly(tip).map((line) => [line.right, widthOf(line)])).toEqual([
      [1, 8],
      [1, 8],
      [0, 10],
      [0, 10],
      [0, 10],
      [3, 7],
    ]);
  });

  test('a stitch that two others are passed over is one decrease', () => {
    const [row] = rowsOnly(plan('Cast on 9 sts.\n\nRow 1 (RS): K3, sl 1, k2tog, psso, k3.'));
    expect(row?.runs.map((run) => [run.kind, run.n, run.takes])).toEqual([
      ['plain', 3, 3],
      ['doubleDecrease', 1, 3],
      ['plain', 3, 3],
    ]);
  });
});

describe('every clean draft of the press', () => {
  const folder = new URL('../../../fixtures/clean/', import.meta.url);
  let total = 0;
  test.each(readdirSync(folder).filter((name) => name.endsWith('.md')))(
    '%s: the squares of a row are the stitches the sheet counts',
    (name) => {
      const draft = proof(readFileSync(new URL(name, folder), 'utf8'));
      const moments = momentsOf(draft, () => true);
      let checked = 0;
      draft.pattern.sizes.forEach((_, size) => {
        const lines = planLines(draft, size, moments);
        lines.forEach((line, index) => {
          if (line.kind !== 'squares' || lines[index + 1]?.entry === line.entry) return;
          const gone = line.runs.filter((run) => run.kind === 'boundOff' || run.kind === 'held').reduce((sum, run) => sum + run.n, 0);
          if (line.after === null || line.unit === 'step') return;
          const entry = draft.replay.entries[line.entry];
          // A count that the draft's words settle is not made by the squares.
          if (
            entry !== undefined &&
            gone === 0 &&
            (entry.before[size] ?? 0) - (entry.takes[size] ?? 0) + (entry.makes[size] ?? 0) !== line.after
          )
            return;
          checked += 1;
          expect([line.label, widthOf(line) - gone]).toEqual([line.label, line.after]);
        });
        const folded = foldLines(lines);
        const svg = planSvg(folded, columnRows(lines), {
          id: 'x',
          pattern: 'y',
          proportion: 0.75,
          named: true,
          wordsOf: () => '#w',
          sayLine,
        });
        if (svg !== null) {
          expect(nestingProblems(svg.markup)).toEqual([]);
          const ids = attributes(svg.markup, 'id');
          expect(ids.length).toBe(new Set(ids).size);
          expect(svg.markup).not.toContain('NaN');
        }
      });
      total += checked;
    },
  );
  test('they are many', () => {
    expect(total).toBeGreaterThan(500);
  });
});

describe('folding', () => {
  test('plain rows become one band, and nothing is lost', () => {
    const lines = plan(
      'Cast on 20 sts.\n\nRow 1 (RS): Knit.\n\nRow 2: Purl.\n\nRep Rows 1 and 2 six times more.\n\nRow 3: K1, ssk, k to end.',
    );
    const folded = foldLines(lines);
    expect(folded.map((each) => each.kind)).toEqual(['line', 'even', 'line']);
    expect(folded[1]).toMatchObject({ rows: 14 });
  });

  test('a block worked again is drawn once', () => {
    const lines = plan(
      'Cast on 20 sts.\n\nRow 1 (RS): K1, *yo, k2tog; rep from * to last st, k1.\n\nRow 2: Purl.\n\nRep Rows 1 and 2 eleven times more.',
    );
    const folded = foldLines(lines);
    expect(folded.map((each) => each.kind)).toEqual(['line', 'line', 'line', 'again']);
    expect(folded.at(-1)).toMatchObject({ block: 2, times: 11 });
  });

  test('a row that was not understood, or cannot be worked, is a line torn through', () => {
    const lines = plan('Cast on 20 sts.\n\nRow 1 (RS): K2, *yo, k3tog, k4; rep from * to end.\n\nRow 2: Purl.');
    expect(lines[1]?.kind).toBe('stopped');
    expect(sayLine(lines[1] as PlanLine)).toContain('cannot be worked as printed');
    const svg = planSvg(foldLines(lines), null, {
      id: 'x',
      pattern: 'y',
      proportion: 1,
      named: true,
      wordsOf: () => '#w',
      sayLine,
    })?.markup;
    expect(svg).toContain('class="torn"');
  });
});

describe('markers that may stay', () => {
  const lace = (rows: string) => markerPlan(rowsOnly(plan(rows)));

  test('stand in no stitch that takes two', () => {
    // The repeat of ten takes its fourth and fifth stitch together: a marker may stand anywhere but between the two.
    const found = lace(
      'Cast on 60 sts.\n\nRow 1 (RS): *K3, k2tog, yo, k5; rep from * to end.\n\nRow 2: Purl.\n\nRep Rows 1 and 2 three times more.',
    );
    expect(found).toMatchObject({ every: 10, changes: [] });
    expect((found?.first ?? 4) % 10).not.toBe(4);
  });

  test('are moved off the border of the repeat where a double decrease crosses it', () => {
    // Ten stitches to the repeat, one before it; the last stitch of a repeat and its two neighbours are taken together.
    const found = lace(
      'Cast on 61 sts.\n\nRow 1 (RS): Ssk, *k3, yo, k1, yo, k3, sk2p; rep from * to last 9 sts, k3, yo, k1, yo, k3, k2tog.\n\nRow 2: Purl.',
    );
    expect(found?.every).toBe(10);
    expect([0, 9, 10]).not.toContain((found?.first ?? 0) % 10);
  });

  test('there are none where every place is crossed', () => {
    expect(lace('Cast on 60 sts.\n\nRow 1 (RS): *K2tog, yo; rep from * to end.\n\nRow 2: *P2tog, yo; rep from * to end.')).toBeNull();
  });

  test('the number between two of them is told where it changes', () => {
    const found = lace('Cast on 60 sts.\n\nRow 1 (RS): *K4, m1, k6; rep from * to end.\n\nRow 2: Purl.');
    expect(found).toMatchObject({ every: 10, changes: [{ label: 'Row 1', between: 11 }] });
  });
});
