/** Measures in running text: a number or a list of numbers with its unit, `36 [37: 38] cm`, `19½ (20) in`, `45 × 45 cm`. */

import { dimensionAt } from './dimensions.ts';
import type { Measure } from './front-matter.ts';
import { type FoundList, numberListAt, numberLists } from './numbers.ts';
import { isLetter } from './printed-number.ts';

export type Unit = Measure['unit'];

const unitWords: Readonly<Record<string, Unit>> = {
  cm: 'cm',
  cms: 'cm',
  centimetre: 'cm',
  centimetres: 'cm',
  centimeter: 'cm',
  centimeters: 'cm',
  mm: 'mm',
  millimetres: 'mm',
  millimeters: 'mm',
  in: 'in',
  ins: 'in',
  inch: 'in',
  inches: 'in',
  m: 'm',
  metre: 'm',
  metres: 'm',
  meter: 'm',
  meters: 'm',
  mtrs: 'm',
  yd: 'yd',
  yds: 'yd',
  yard: 'yd',
  yards: 'yd',
  g: 'g',
  gm: 'g',
  gms: 'g',
  gr: 'g',
  gram: 'g',
  grams: 'g',
  gramme: 'g',
  grammes: 'g',
  oz: 'oz',
  ounce: 'oz',
  ounces: 'oz',
};

/** Whether a unit is named at all: rows of stitches seldom do, and need not be searched for numbers. */
const someUnit = new RegExp(String.raw`["″]|''|(?<![a-z])(?:${Object.keys(unitWords).join('|')})(?![a-z])`, 'i');

/** After "6 in" these words show that inches are meant; after "6 in the same way" they are not. */
const afterInches = new Set(
  (
    'long wide tall high deep square circular circ circumference from below above shorter longer less more of blocked after over on ' +
    'and or to x by bust chest ending measured before when needle needles tail buttons button cable around unstretched straight flat ' +
    'hip waist at in between with wingspan depth'
  ).split(' '),
);

interface UnitAt {
  readonly unit: Unit;
  readonly length: number;
}

/** The unit at the index, if one stands there: `cm`, `in.`, `"`, `yds`. `value` keeps `2 m` (markers) from being metres. */
export function unitAt(text: string, index: number, value: number | null): UnitAt | null {
  const letter = text[index];
  if (letter === '″') return { unit: 'in', length: 1 };
  if (letter === '"') return opensQuote(text, index) ? null : { unit: 'in', length: 1 };
  if (letter === "'" && text[index + 1] === "'") return { unit: 'in', length: 2 };
  let end = index;
  while (end - index < 12 && isLetter(text[end])) end += 1;
  const word = text.slice(index, end);
  const unit = unitWords[word.toLowerCase()];
  if (unit === undefined || /[\d&(]/.test(text[end] === '(' ? '' : (text[end] ?? ''))) return null;
  const dot =
    text[end] === '.' && (word === 'in' || word === 'ins' || word === 'cm' || word === 'yd' || word === 'yds' || word === 'oz') ? 1 : 0;
  if (word.toLowerCase() === 'in' && !meansInches(text, end)) return null;
  if (word.toLowerCase() === 'm' && value !== null && value < 10) return null;
  if (word.toLowerCase() === 'g' && /^\s{0,2}sts?\b/i.test(text.slice(end, end + 6))) return null;
  // The full stop of "in." belongs to the unit only where the sentence goes on.
  const goesOn = dot === 1 && /^\.\s?[a-z(/,;]/.test(text.slice(end, end + 3));
  return { unit, length: end - index + (goesOn ? 1 : 0) };
}

/** A straight quote after a number is an inch mark, unless a quotation was opened before it on the line. */
function opensQuote(text: string, index: number): boolean {
  let from = index;
  while (from > 0 && index - from < 300 && text[from - 1] !== '\n') from -= 1;
  let open = false;
  for (let at = from; at < index; at += 1) {
    if (text[at] !== '"') continue;
    // Outside a quotation a mark right after a number is an inch mark.
    open = open ? false : !/[\d½¼¾⅛⅜⅝⅞]/.test(text[at - 1] ?? '');
  }
  return open;
}

function meansInches(text: string, end: number): boolean {
  const next = text.slice(end, end + 24);
  const word = /^[\s]{0,3}([A-Za-z]+)/.exec(next);
  if (word === null) return true;
  return afterInches.has(word[1]!.toLowerCase());
}

export interface FoundMeasure {
  readonly measure: Measure;
  /** Offsets into the text. */
  readonly start: number;
  readonly end: number;
  /** Second side of `45 × 45 cm`: the measure before it belongs with it. */
  readonly side: 'width' | 'height' | null;
}

function measure(
  list: FoundList | { values: Measure['values']; upper: Measure['upper'] },
  unit: Unit,
  start: number,
  end: number,
): Measure {
  return { values: list.values, upper: list.upper, unit, span: { start, end } };
}

/** `per inch`, `to an inch`, `= 1 in`: an inch with no number is one inch. */
const bareUnit = /\b(?:per|to the|to an|an|each|every)\s(inch|cm|centimetre|centimeter)\b/gi;

/**
 * Every measure in the text, in order. `offset` is where the text stands in the source; spans are offsets of the source.
 * `given` is a unit named beforehand, as in a table row "Bust (cm)": numbers with no unit then have it.
 */
export function measuresIn(text: string, offset: number, sizeCount: number | null, given: Unit | null = null): readonly FoundMeasure[] {
  if (given === null && !someUnit.test(text)) return [];
  const found: FoundMeasure[] = [];
  let done = 0;
  for (const list of numberLists(text, sizeCount)) {
    if (list.index < done) continue;
    const start = list.index;
    const dimension = dimensionAt(text, start, sizeCount, list);
    if (dimension !== null) {
      const end = start + dimension.length;
      const unit = unitAfter(text, end, dimension.height.values[0] ?? null);
      const heightAt = end - dimension.height.length;
      if (unit !== null && unit.unit !== 'g' && unit.unit !== 'oz') {
        found.push({
          measure: measure(dimension.width, unit.unit, offset + start, offset + start + dimension.width.length),
          start,
          end: heightAt,
          side: 'width',
        });
        found.push({
          measure: measure(dimension.height, unit.unit, offset + heightAt, offset + unit.end),
          start: heightAt,
          end: unit.end,
          side: 'height',
        });
        done = unit.end;
        continue;
      }
    }
    const plainEnd = start + list.length;
    const inner = withInnerUnits(text, start, sizeCount);
    const unit = unitAfter(text, plainEnd, list.values[0] ?? null);
    if (inner !== null) {
      found.push({ measure: measure(inner.list, inner.unit, offset + start, offset + inner.end), start, end: inner.end, side: null });
      done = inner.end;
    } else if (unit !== null) {
      found.push({ measure: measure(list, unit.unit, offset + start, offset + unit.end), start, end: unit.end, side: null });
      done = unit.end;
    } else if (given !== null && !isLetter(text[plainEnd])) {
      found.push({ measure: measure(list, given, offset + start, offset + plainEnd), start, end: plainEnd, side: null });
      done = plainEnd;
    }
  }
  bareUnit.lastIndex = 0;
  for (let match = bareUnit.exec(text); match !== null; match = bareUnit.exec(text)) {
    const start = match.index + match[0].length - match[1]!.length;
    const end = match.index + match[0].length;
    const unit = unitWords[match[1]!.toLowerCase()]!;
    found.push({ measure: { values: [1], upper: null, unit, span: { start: offset + start, end: offset + end } }, start, end, side: null });
  }
  return found.sort((a, b) => a.start - b.start);
}

function unitAfter(text: string, end: number, value: number | null): { unit: Unit; end: number } | null {
  // The last value may have taken the inch mark with it: 36" (40", 44").
  if ((text[end - 1] === '"' || text[end - 1] === '″') && !opensQuote(text, end - 1)) return { unit: 'in', end };
  if (text[end - 2] === '"' && /[)\]}]/.test(text[end - 1] ?? '')) return { unit: 'in', end };
  let at = end;
  while (at < end + 3 && (text[at] === ' ' || text[at] === '\u00a0' || text[at] === '\u2009' || text[at] === '-' || text[at] === '\n'))
    at += 1;
  const unit = unitAt(text, at, value);
  return unit === null ? null : { unit: unit.unit, end: at + unit.length };
}

/** `89 cm (95 cm, 101 cm)`: the unit printed with every value. */
function withInnerUnits(text: string, start: number, sizeCount: number | null) {
  const piece = text.slice(start, start + 160);
  const match = /^([^()[\]\n]{1,24}?)\s?(cm|in|ins|"|mm)\s?([([])([^()[\]\n]{1,120})([)\]])/.exec(piece);
  if (match === null) return null;
  const [whole, head, word, open, inside, close] = match;
  const parts = inside!.split(/[,;:]/);
  if (!parts.every((part) => part.trim().endsWith(word!))) return null;
  if (parts.length < 2 && sizeCount !== 2) return null;
  const plain = `${head} ${open}${parts.map((part) => part.trim().slice(0, -word!.length)).join(',')}${close}`;
  const list = numberListAt(plain, 0, sizeCount);
  if (list === null || list.values.length < 2) return null;
  return { list, unit: unitWords[word!] ?? 'in', end: start + whole.length };
}

const lengths: ReadonlySet<Unit> = new Set(['cm', 'mm', 'in', 'm', 'yd']);
/** Whether two units measure the same thing. */
export const sameKind = (a: Unit, b: Unit): boolean => lengths.has(a) === lengths.has(b);
/** Metric against imperial, which is what a pair in two units gives. */
export const isMetric = (unit: Unit): boolean => unit === 'cm' || unit === 'mm' || unit === 'm' || unit === 'g';
