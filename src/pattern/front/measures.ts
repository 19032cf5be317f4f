/** Named measures ("Actual bust 89 [100: 111] cm") and measures given in two units, anywhere in the draft. */
import type { Manuscript, Passage, Span } from '../../manuscript/manuscript.ts';
import type { Measure, MeasurePair, NamedMeasure } from './front-matter.ts';
import { type FoundMeasure, isMetric, measuresIn, sameKind, type Unit } from './measure-words.ts';
import type { Front, Segment, TableLines } from './segments.ts';
import type { Topic } from './topics.ts';

export interface Measures {
  readonly named: readonly NamedMeasure[];
  readonly pairs: readonly MeasurePair[];
}

/** What may stand between the two units of one measure: `24 in (61 cm)`, `19½ in / 42 cm`, `81 cm; 32 in`. */
const joint = /^\s{0,4}(?:[([/|;,=–—-]|\bor\b|\bi\.?e\.?\b)?\s{0,4}(?:approx(?:\.|imately)?|about|to)?\s{0,3}$/i;

export function kindOf(name: string): NamedMeasure['kind'] {
  const words = name.toLowerCase();
  if (/\bto fit\b|\bfits\b|\bbody (bust|chest|measure)|\byour\b/.test(words)) return 'toFit';
  if (/\b(finished|actual|knitted|final|garment)\b/.test(words)) return 'finished';
  return 'other';
}

/** Words after a measure that name it: "24 in circumference". */
const after = /^\s{0,2}[)\]]?\s{1,3}((?:(?:head|foot|hand|leg|unstretched|finished|brim)\s){0,2}(?:circumference|circ|tall|wide|long|high|deep|square|length|width|wingspan|height|depth|diameter|across|bust|chest|hip|waist))\b/i;

/** The words before a measure, back to the start of its clause. */
export function wordsBefore(text: string, index: number): string {
  let from = index;
  while (from > 0 && index - from < 90) {
    const letter = text[from - 1]!;
    if (letter === '\n' || letter === ';' || letter === '|' || letter === '•' || letter === ')' || letter === ']') break;
    if ((letter === '.' || letter === '!' || letter === '?') && /\s/.test(text[from] ?? ' ')) break;
    from -= 1;
  }
  return tidy(text.slice(from, index));
}

const tidy = (words: string): string =>
  words
    .replace(/[\s*_]+/g, ' ')
    .replace(/\s?[([]?(?:approx\.?|approximately|about|is|are|to|=)?[:=–—(\s-]*$/i, '')
    .replace(/^[\s,:.)\]–—/-]+/, '')
    .trim();

const unitInName = /[([]?\b(cm|mm|in|ins|inches|centimet(?:re|er)s)\b\.?[)\]]?\s*:?\s*$/i;

/** A unit in the name of the measure: "Bust (cm)", "Length in cm". */
export function unitOfName(name: string): Unit | null {
  const match = /[([](cm|mm|in|ins|inches|")[)\]]|,\s*(cm|mm|in|ins|inches)$|\bin\s(cm|inches)$/i.exec(name.trim());
  const word = (match?.[1] ?? match?.[2] ?? match?.[3])?.toLowerCase();
  if (word === undefined) return null;
  return word === 'cm' || word === 'mm' ? word : 'in';
}

interface Group {
  readonly name: string;
  readonly items: readonly FoundMeasure[];
  readonly nameSpan: Span | null;
}

/** Measures that stand together, one group per thing measured. */
function groupsOf(text: string, found: readonly FoundMeasure[]): readonly FoundMeasure[][] {
  const groups: FoundMeasure[][] = [];
  for (const item of found) {
    const group = groups.at(-1);
    const last = group?.at(-1);
    const near = last !== undefined && joint.test(text.slice(last.end, item.start));
    const side = last?.side === 'width' && item.side === 'height';
    if (group !== undefined && last !== undefined && (side || (near && sameKind(last.measure.unit, item.measure.unit) && !repeatsUnit(group, item)))) {
      group.push(item);
    } else groups.push([item]);
  }
  return groups;
}

/** Two measures in the same unit side by side are two things, except the sides of one rectangle. */
function repeatsUnit(group: readonly FoundMeasure[], item: FoundMeasure): boolean {
  return item.side === null && group.some((one) => one.measure.unit === item.measure.unit);
}

function pairsOf(group: readonly FoundMeasure[], name: string): readonly MeasurePair[] {
  const pairs: MeasurePair[] = [];
  const widths = group.filter((item) => item.side === 'width');
  const heights = group.filter((item) => item.side === 'height');
  const plain = group.filter((item) => item.side === null);
  for (const side of [widths, heights, plain]) {
    const [first, second] = [side[0]?.measure, side[1]?.measure];
    if (first !== undefined && second !== undefined && isMetric(first.unit) !== isMetric(second.unit)) pairs.push({ first, second, name });
  }
  return pairs;
}

function nameOf(text: string, group: readonly FoundMeasure[], label: string | null): string {
  const first = group[0]!;
  const last = group.at(-1)!;
  const before = wordsBefore(text, first.start).replace(unitInName, '').trim();
  const behind = after.exec(text.slice(last.end, last.end + 50))?.[1];
  if (behind !== undefined && before.split(' ').length < 3) {
    return [label, before, behind].filter((part) => part !== null && part !== '').join(' ').trim();
  }
  if (before === '') return label ?? '';
  return label !== null && before.split(' ').length < 6 ? `${label} ${before}`.trim() : before;
}

function readText(text: string, start: number, label: string | null, sizeCount: number | null): { named: NamedMeasure[]; pairs: MeasurePair[] } {
  const unit = label === null ? null : unitOfName(label);
  const found = measuresIn(text, start, sizeCount, unit);
  const named: NamedMeasure[] = [];
  const pairs: MeasurePair[] = [];
  for (const group of groupsOf(text, found)) {
    const name = nameOf(text, group, label);
    const measures: readonly Measure[] = group.map((item) => item.measure);
    const span = { start: start + group[0]!.start, end: start + group.at(-1)!.end };
    if (isThing(group)) named.push({ name, kind: kindOf(name), measures, span });
    pairs.push(...pairsOf(group, name));
  }
  return { named, pairs };
}

/** Weights and lengths of yarn are not measures of the work. */
const isThing = (group: readonly FoundMeasure[]): boolean => group.every((item) => item.measure.unit === 'cm' || item.measure.unit === 'in');

/** Topics whose numbers belong to tools, yarn or gauge. */
const ofTools: ReadonlySet<Topic | null> = new Set<Topic | null>(['yarn', 'needles', 'notions', 'materials', 'gauge', 'abbreviations']);

function fromSegment(segment: Segment, sizeCount: number | null): { named: NamedMeasure[]; pairs: MeasurePair[] } {
  const heading = segment.topic === 'measures' || segment.topic === 'sizes' ? segment.label : null;
  const read = readText(segment.text, segment.start, heading ?? (isLabelOfMeasure(segment) ? segment.label : null), sizeCount);
  return ofTools.has(segment.topic) ? { named: [], pairs: read.pairs } : read;
}

const isLabelOfMeasure = (segment: Segment): boolean => segment.label !== null && !ofTools.has(segment.topic);

/** A table with one measure per row: the cells after the name hold its values, alone or one per size. */
function fromTable(table: TableLines, sizeCount: number | null): { named: NamedMeasure[]; pairs: MeasurePair[] } {
  const named: NamedMeasure[] = [];
  const pairs: MeasurePair[] = [];
  for (const row of table.rows) {
    const cells = row.cells;
    const label = cells[0]?.text.trim() ?? '';
    const rest = cells.slice(1).filter((cell) => cell.text.trim() !== '');
    if (rest.length === 1 || sizeCount === null || rest.length !== sizeCount) {
      for (const cell of rest) {
        const read = readText(cell.text, cell.start, label, sizeCount);
        if (!ofTools.has(table.topic)) named.push(...read.named);
        pairs.push(...read.pairs);
      }
      continue;
    }
    const columns = columnsOf(rest, unitOfName(label), label);
    if (columns === null) continue;
    if (!ofTools.has(table.topic)) named.push({ name: label, kind: kindOf(label), measures: columns, span: { start: rest[0]!.start, end: rest.at(-1)!.end } });
    const [first, second] = columns;
    if (first !== undefined && second !== undefined && isMetric(first.unit) !== isMetric(second.unit)) pairs.push({ first, second, name: label });
  }
  return { named, pairs };
}

/** One cell per size made into one measure per unit: `7 in (18 cm) | 8 in (20.5 cm)`. */
function columnsOf(cells: readonly Passage[], unit: Unit | null, name: string): readonly Measure[] | null {
  const read = cells.map((cell) => measuresIn(cell.text, cell.start, null, unit).filter((item) => item.measure.values.length === 1));
  const first = read.find((found) => found.length > 0);
  if (first === undefined || name === '') return null;
  const measures: Measure[] = [];
  for (const [i, item] of first.entries()) {
    const column = read.map((found) => found[i]?.measure);
    const values = column.map((one) => (one === undefined ? null : (one.values[0] ?? null)));
    const ranged = column.some((one) => one?.upper != null);
    const places = column.filter((one) => one !== undefined);
    if (places.some((one) => one.unit !== item.measure.unit)) return null;
    measures.push({
      values,
      upper: ranged ? column.map((one) => one?.upper?.[0] ?? one?.values[0] ?? null) : null,
      unit: item.measure.unit,
      span: { start: places[0]!.span.start, end: places.at(-1)!.span.end },
    });
  }
  return measures;
}

/** Reads every measure of the draft: of the front by segment, of the instructions by block. */
export function readMeasures(manuscript: Manuscript, front: Front, sizeCount: number | null): Measures {
  const named: NamedMeasure[] = [];
  const pairs: MeasurePair[] = [];
  const inSegments = new Set(front.segments.map((segment) => segment.at));
  const add = (read: { named: NamedMeasure[]; pairs: MeasurePair[] }): void => {
    named.push(...read.named);
    pairs.push(...read.pairs);
  };
  for (const segment of front.segments) add(fromSegment(segment, sizeCount));
  for (const table of front.tables) add(fromTable(table, sizeCount));
  for (const [at, block] of manuscript.blocks.entries()) {
    if (inSegments.has(at)) continue;
    if (block.kind === 'paragraph' || block.kind === 'item' || block.kind === 'heading') add(readText(block.text, block.start, null, sizeCount));
  }
  named.sort((a, b) => a.span.start - b.span.start);
  pairs.sort((a, b) => a.first.span.start - b.first.span.start);
  return { named, pairs };
}
