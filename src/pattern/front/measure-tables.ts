/** Measures set as tables: a row per measure with a column per size, a row per size, or name and values in two columns. */
import type { Passage } from '../../manuscript/manuscript.ts';
import type { Measure, MeasurePair, NamedMeasure } from './front-matter.ts';
import { isMetric, measuresIn, type Unit } from './measure-words.ts';
import { type FoundMeasures, kindOf, ofTools, readText, unitOfName } from './measures.ts';
import type { TableLines } from './segments.ts';

const spanOf = (cells: readonly Passage[]) => ({ start: cells[0]!.start, end: cells.at(-1)!.end });

const inTwoUnits = (first: Measure | undefined, second: Measure | undefined): boolean =>
  first !== undefined && second !== undefined && isMetric(first.unit) !== isMetric(second.unit);

/** "To fit bust (cm)" and "To fit bust (in)" name one thing. */
const withoutUnit = (name: string): string =>
  name
    .replace(/[\s,]*[([]?\b(?:cm|mm|in|ins|inches)\b\.?[)\]]?\s*$/i, '')
    .trim()
    .toLowerCase();

/** The measures of a table; nothing where it is a table of something else. */
export function measuresOfTable(table: TableLines, sizeCount: number | null): FoundMeasures {
  const turned = sizeCount === null ? null : rowPerSize(table, sizeCount);
  return turned ?? rowPerMeasure(table, sizeCount);
}

function rowPerMeasure(table: TableLines, sizeCount: number | null): FoundMeasures {
  const named: NamedMeasure[] = [];
  const pairs: MeasurePair[] = [];
  const above = table.heading ?? '';
  for (const row of table.rows) {
    const printed = row.cells[0]?.text.trim() ?? '';
    // A row with no name goes on with the one above: the same measure in the other unit.
    const label = printed === '' ? (named.at(-1)?.name ?? '') : printed;
    const rest = row.cells.slice(1).filter((cell) => cell.text.trim() !== '');
    if (rest.length === 1 || sizeCount === null || rest.length !== sizeCount) {
      for (const cell of rest) {
        const read = readText(cell.text, cell.start, label, sizeCount, above);
        if (!ofTools.has(table.topic)) named.push(...read.named);
        pairs.push(...read.pairs);
      }
      continue;
    }
    const columns = columnsOf(rest, unitOfName(label), label);
    if (columns === null || ofTools.has(table.topic)) continue;
    const before = named.at(-1);
    const [first, second] = columns;
    if (inTwoUnits(first, second)) pairs.push({ first: first!, second: second!, name: label });
    else if (
      before !== undefined &&
      before.measures.length === 1 &&
      withoutUnit(before.name) === withoutUnit(label) &&
      inTwoUnits(before.measures[0], first)
    ) {
      pairs.push({ first: before.measures[0]!, second: first!, name: label });
    }
    named.push({ name: label, kind: kindOf(label, above), measures: columns, span: spanOf(rest) });
  }
  return { named, pairs };
}

/** A table with one row per size: the columns hold the measures, named by the header. */
function rowPerSize(table: TableLines, sizeCount: number): FoundMeasures | null {
  const header = table.rows[0];
  const body = table.rows.slice(1);
  if (header === undefined || body.length !== sizeCount || sizeCount < 2 || !/^\s*sizes?\s*$/i.test(header.cells[0]?.text ?? ''))
    return null;
  const named: NamedMeasure[] = [];
  const pairs: MeasurePair[] = [];
  for (const [i, head] of header.cells.entries()) {
    const cells = body.map((row) => row.cells[i]).filter((cell) => cell !== undefined);
    const name = head.text.trim();
    const columns = i > 0 && cells.length === sizeCount ? columnsOf(cells, unitOfName(name), name) : null;
    if (columns === null) continue;
    named.push({ name, kind: kindOf(name, table.heading ?? ''), measures: columns, span: spanOf(cells) });
    const [first, second] = columns;
    if (inTwoUnits(first, second)) pairs.push({ first: first!, second: second!, name });
  }
  return { named, pairs };
}

/** One cell per size made into one measure per unit: `7 in (18 cm) | 8 in (20.5 cm)`. */
function columnsOf(cells: readonly Passage[], unit: Unit | null, name: string): readonly Measure[] | null {
  const read = cells.map((cell) => measuresIn(cell.text, cell.start, null, unit).filter((item) => item.measure.values.length === 1));
  const model = read.find((found) => found.length > 0);
  if (model === undefined || name === '') return null;
  const measures: Measure[] = [];
  for (const [i, item] of model.entries()) {
    const column = read.map((found) => found[i]?.measure);
    const places = column.filter((one) => one !== undefined);
    if (places.some((one) => one.unit !== item.measure.unit)) return null;
    const ranged = places.some((one) => one.upper !== null);
    measures.push({
      values: column.map((one) => one?.values[0] ?? null),
      upper: ranged ? column.map((one) => one?.upper?.[0] ?? one?.values[0] ?? null) : null,
      unit: item.measure.unit,
      span: { start: places[0]!.span.start, end: places.at(-1)!.span.end },
    });
  }
  return measures;
}
