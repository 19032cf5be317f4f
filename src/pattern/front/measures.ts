/** Named measures ("Actual bust 89 [100: 111] cm") and measures given in two units, anywhere in the draft. */
import type { Manuscript } from '../../manuscript/manuscript.ts';
import type { Measure, MeasurePair, NamedMeasure } from './front-matter.ts';
import { measuresOfTable } from './measure-tables.ts';
import { type FoundMeasure, isMetric, measuresIn, sameKind, type Unit } from './measure-words.ts';
import type { Front, Segment } from './segments.ts';
import { type Topic, topicOf } from './topics.ts';

export interface FoundMeasures {
  readonly named: readonly NamedMeasure[];
  readonly pairs: readonly MeasurePair[];
}

/** What may stand between the two units of one measure: `24 in (61 cm)`, `19½ in / 42 cm`, `81 cm; 32 in`. */
const joint = /^\s{0,4}(?:[([/|;,=–—-]|\bor\b|\bi\.?e\.?\b)?\s{0,4}(?:approx(?:\.|imately)?|about|to)?\s{0,3}$/i;

/** By its own words, or else by the heading it stands under. */
export function kindOf(name: string, above: string): NamedMeasure['kind'] {
  const own = kindOfWords(name);
  return own === 'other' ? kindOfWords(above) : own;
}

function kindOfWords(name: string): NamedMeasure['kind'] {
  const words = name.toLowerCase();
  if (/\bto fit\b|\bfits\b|\bbody (bust|chest|measurements?)\b|\byour\b/.test(words)) return 'toFit';
  if (/\b(finished|actual|knitted|final|garment)\b/.test(words)) return 'finished';
  return 'other';
}

/** Words after a measure on its line that name it: "24 in circumference". */
const after =
  /^[^\S\n]{0,2}[)\]]?[^\S\n]{1,3}(?:(?:in|all)\s(?=circumference|around|round|height|length|width|diameter))?((?:(?:head|foot|hand|leg|unstretched|finished|brim)\s){0,2}(?:circumference|circ|around|round(?!\s*(?:neck|yoke|up|down|\d))|tall|wide|long|high|deep|square|length|width|wingspan|height|depth|diameter|across|bust|chest|hip|waist)|(?:of\s)?(?:positive|negative|zero)\sease)\b/i;

/** The words before a measure, back to the start of its clause and not before `floor`. */
function wordsBefore(text: string, index: number, floor: number): string {
  let from = index;
  while (from > floor && index - from < 90) {
    const letter = text[from - 1]!;
    if (letter === '\n' || letter === ';' || letter === '|' || letter === '•') break;
    if ((letter === '.' || letter === '!' || letter === '?') && /\s/.test(text[from] ?? ' ')) break;
    from -= 1;
  }
  return tidy(text.slice(from, index));
}

const tidy = (words: string): string =>
  words
    .replace(/[\s*_]+/g, ' ')
    .replace(/\s?[([]?(?:approx\.?|approximately|about|is|are|to|=)?[:=–—(\s-]*$/i, '')
    .replace(/^(?:[\s,:.)\]–—/×-]|(?:and|by|x)(?!\S))+/i, '')
    .replace(/,$/, '')
    .replace(/^.*[,;]\s(?=to fit\b)/i, '')
    .trim();

const unitInName = /[([]?\b(cm|mm|in|ins|inches|centimet(?:re|er)s)\b\.?[)\]]?\s*:?\s*$/i;

/** A unit in the name of the measure: "Bust (cm)", "Length in cm". */
export function unitOfName(name: string): Unit | null {
  const match = /[([](cm|mm|in|ins|inches|")[)\]]|,\s*(cm|mm|in|ins|inches)$|\bin\s(cm|inches)$/i.exec(name.trim());
  const word = (match?.[1] ?? match?.[2] ?? match?.[3])?.toLowerCase();
  if (word === undefined) return null;
  return word === 'cm' || word === 'mm' ? word : 'in';
}

/** Measures that stand together, one group per thing measured. */
function groupsOf(text: string, found: readonly FoundMeasure[]): readonly FoundMeasure[][] {
  const groups: FoundMeasure[][] = [];
  for (const item of found) {
    const group = groups.at(-1);
    const last = group?.at(-1);
    const between = last === undefined ? '' : text.slice(last.end, item.start);
    // "4.5 mm 24 in" is a needle and its length; "19 mm (¾ in)" is one measure.
    const mm = last?.measure.unit === 'mm' || item.measure.unit === 'mm';
    const near = last !== undefined && joint.test(between) && (mm ? /[([/=]/ : /\S/).test(between);
    const side = last?.side === 'width' && item.side === 'height';
    if (
      group !== undefined &&
      last !== undefined &&
      (side || (near && sameKind(last.measure.unit, item.measure.unit) && !repeatsUnit(group, item)))
    ) {
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

/** What is measured, by the words before or behind it or by its label, and where those words end. */
function nameOf(text: string, group: readonly FoundMeasure[], label: string | null, floor: number): { name: string; end: number } {
  const last = group.at(-1)!;
  const before = wordsBefore(text, group[0]!.start, floor).replace(unitInName, '').trim();
  const behind = after.exec(text.slice(last.end, last.end + 50));
  const plain = label === null || topicOf(label) !== null ? null : label;
  const ease = behind?.[1];
  if (ease !== undefined && /ease$/i.test(ease)) return { name: ease.replace(/^of\s/i, ''), end: last.end + behind![0].length };
  if (behind !== null && before.split(' ').length < 5) {
    const words = [plain, before, behind[1]!].filter((part) => part !== null && part !== '');
    return { name: words.join(' '), end: last.end + behind[0].length };
  }
  if (before === '') return { name: label ?? '', end: last.end };
  return { name: plain !== null && before.split(' ').length < 6 ? `${plain} ${before}` : before, end: last.end };
}

/** The closing bracket of `24 in (61 cm)` belongs to the words measured. */
function withBracket(text: string, start: number, end: number): number {
  const words = text.slice(start, end);
  const opens = words.split(/[([]/).length - words.split(/[)\]]/).length;
  return opens > 0 && /[)\]]/.test(text[end] ?? '') ? end + 1 : end;
}

export function readText(text: string, start: number, label: string | null, sizeCount: number | null, above: string): FoundMeasures {
  const unit = label === null ? null : unitOfName(label);
  const found = measuresIn(text, start, sizeCount, unit);
  const named: NamedMeasure[] = [];
  const pairs: MeasurePair[] = [];
  let floor = 0;
  // A label names what stands in its own sentence.
  const stop = label === null ? -1 : text.search(/(?<!\bapprox|\bno|\bin)[.!?]\s/i);
  for (const group of groupsOf(text, found)) {
    const own = stop >= 0 && stop < group[0]!.start ? null : label;
    const { name, end } = nameOf(text, group, own, floor);
    floor = end;
    const measures: readonly Measure[] = group.map((item) => item.measure);
    const first = group[0]!.start;
    const span = { start: start + first, end: start + withBracket(text, first, group.at(-1)!.end) };
    if (isThing(group)) named.push({ name, kind: kindOf(`${name} ${own ?? ''}`, above), measures, span });
    pairs.push(...pairsOf(group, name));
  }
  return { named, pairs };
}

/** Weights and lengths of yarn are not measures of the work. */
const isThing = (group: readonly FoundMeasure[]): boolean =>
  group.every((item) => item.measure.unit === 'cm' || item.measure.unit === 'in');

/** Topics whose numbers belong to tools, yarn or gauge. */
export const ofTools: ReadonlySet<Topic | null> = new Set<Topic | null>([
  'yarn',
  'needles',
  'notions',
  'materials',
  'gauge',
  'abbreviations',
]);

function fromSegment(segment: Segment, sizeCount: number | null): FoundMeasures {
  if (ofTools.has(segment.topic)) {
    const name = (segment.label ?? segment.heading ?? '').trim();
    const { pairs } = readText(segment.text, segment.start, null, sizeCount, '');
    return { named: [], pairs: pairs.map((pair) => ({ ...pair, name })) };
  }
  const above = segment.topic === 'sizes' || segment.topic === 'measures' ? (segment.heading ?? '') : '';
  return readText(segment.text, segment.start, segment.label, sizeCount, above);
}

/** Reads every measure of the draft: of the front by segment, of the instructions by block. */
export function readMeasures(manuscript: Manuscript, front: Front, sizeCount: number | null): FoundMeasures {
  const named: NamedMeasure[] = [];
  const pairs: MeasurePair[] = [];
  const inSegments = new Set(front.segments.map((segment) => segment.at));
  const add = (read: FoundMeasures): void => {
    named.push(...read.named);
    pairs.push(...read.pairs);
  };
  for (const segment of front.segments) add(fromSegment(segment, sizeCount));
  for (const table of front.tables) add(measuresOfTable(table, sizeCount));
  for (const [at, block] of manuscript.blocks.entries()) {
    if (inSegments.has(at)) continue;
    if (block.kind === 'paragraph' || block.kind === 'item' || block.kind === 'heading')
      add(readText(block.text, block.start, null, sizeCount, ''));
  }
  named.sort((a, b) => a.span.start - b.span.start);
  pairs.sort((a, b) => a.first.span.start - b.first.span.start);
  return { named, pairs };
}
