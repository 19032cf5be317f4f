/**
 * The number token: one number, or one per size in any bracket style, read at one place of the text.
 *
 * `5` · `7½` · `7 1/2` · `five` · `5 (6, 7)` · `5[6:7]` · `5, (6, 7)` · `1 (2, 3)[4, 5]` · `92-98-104` · `– (–, 7, 8)` · `8th [8th: 6th]`
 */
import type { Sized } from './count.ts';
import { type Cell, cellAt, holePattern, mayBeginNumber, type NumberKind, skip } from './number-cells.ts';

export interface NumberMatch {
  readonly values: Sized;
  readonly kind: NumberKind;
  readonly length: number;
  /** Number of size brackets read: 0 for a bare number. */
  readonly tail: boolean;
}

interface Tail {
  readonly values: (number | null)[];
  readonly kind: NumberKind | null;
  readonly end: number;
}

/** "(6, –, 8)" at `index`; the cells may carry "times" or an ordinal ending. Null when anything else stands inside. */
function tailAt(text: string, index: number): Tail | null {
  const open = text[index];
  if (open !== '(' && open !== '[' && open !== '{') return null;
  const close = open === '(' ? ')' : open === '[' ? ']' : '}';
  const values: (number | null)[] = [];
  let kind: NumberKind | null = null;
  let at = skip(text, index + 1);
  for (;;) {
    holePattern.lastIndex = at;
    const hole = holePattern.exec(text);
    const cell = hole === null ? cellAt(text, at) : null;
    if (cell !== null) {
      values.push(cell.value);
      if (cell.kind !== 'hole') kind = cell.kind;
      at = skip(text, cell.end);
      const times = /times?\b/iy;
      times.lastIndex = at;
      if (times.test(text)) {
        kind = 'times';
        at = skip(text, times.lastIndex);
      }
    } else if (hole !== null) {
      values.push(null);
      at = skip(text, holePattern.lastIndex);
    } else if (text[at] === ',' || text[at] === ':' || text[at] === ';') {
      values.push(null);
    } else return null;
    const next = text[at];
    if (next === close) return { values, kind, end: at + 1 };
    if (next === undefined || !/[,:;/–-]/.test(next)) return null;
    at = skip(text, at + 1);
  }
}

const listStep = /\s*[-–/]\s*/y;

/**
 * A bare list such as `92-98-104`, `20/24/28` or `220 - 240 - 260` with as many numbers as there are sizes. A list of three or
 * more that stops one short or goes one past is read all the same, so that a rule can point at it; two numbers may be a range.
 */
function dashList(text: string, index: number, sizes: number): Tail | null {
  const values: (number | null)[] = [];
  let at = index;
  let separator: string | null = null;
  let kind: NumberKind = 'number';
  for (;;) {
    const cell = cellAt(text, at);
    holePattern.lastIndex = at;
    if (cell === null || cell.kind === 'hole' || cell.kind === 'times' || !/\d/.test(text[at] ?? '')) {
      // "56 – – 64" is no list; a size left out is written x or 0 here.
      if (values.length === 0 || !/^x\b/i.test(text.slice(at, at + 2))) return null;
      values.push(null);
      at += 1;
    } else {
      values.push(cell.value);
      if (cell.kind === 'ordinal') kind = 'ordinal';
      at = cell.end;
    }
    listStep.lastIndex = at;
    const step = listStep.exec(text)?.[0];
    if (
      step === undefined ||
      !/\d|x\b/i.test(text.slice(at + step.length, at + step.length + 2)) ||
      (separator !== null && separator !== step)
    )
      break;
    separator = step;
    at += step.length;
    if (values.length > sizes) return null;
  }
  const whole = values.length === sizes || (values.length >= 3 && Math.abs(values.length - sizes) === 1);
  return !whole || (kind === 'number' && /^(?:[\w/–]|-[\w-])/.test(text.slice(at, at + 2))) ? null : { values, kind, end: at };
}

/** Whether a dash or a stroke follows, as between the numbers of a list. */
function listGoesOn(text: string, index: number): boolean {
  listStep.lastIndex = index;
  return listStep.test(text);
}

const counted = /\s*(?:sts|stitches)\b/iy;

/**
 * "56/64 sts": two sizes without a bracket, a list that breaks off where the draft has more; "56-64 sts" is one where the
 * draft has two sizes.
 */
function pairList(text: string, index: number, sizes: number): Tail | null {
  const pair = /(\d+)\s?([/–-])\s?(\d+)/y;
  pair.lastIndex = index;
  const match = pair.exec(text);
  if (match === null || /[\d/–-]/.test(text[index - 1] ?? '')) return null;
  counted.lastIndex = pair.lastIndex;
  if (!counted.test(text) || (match[2] !== '/' && sizes !== 2)) return null;
  const values = [Number(match[1]), Number(match[3])];
  // "1/2 sts" is no list.
  return (values[0] ?? 0) < 4 ? null : { values, kind: 'number', end: pair.lastIndex };
}

/**
 * Length of "56-64" in "CO 56-64 sts" where the draft has three sizes or more: neither one number nor a list, so no number is
 * read there. 0 where no such range stands at `index` or goes on there.
 */
export function looseRange(text: string, index: number, sizes: number | null): number {
  if (sizes === null || sizes < 3) return 0;
  let start = index;
  while (start > 0 && /[\d–-]/.test(text[start - 1] ?? '')) start -= 1;
  const range = /\d+[–-]\d+(?![\d/–-])/y;
  range.lastIndex = start;
  if (!range.test(text)) return 0;
  counted.lastIndex = range.lastIndex;
  return counted.test(text) ? range.lastIndex - index : 0;
}

const commaStep = /\s*([,:;])\s*/y;
const listUnit = /\s*(?:sts?|stitch(?:es)?|cms?|ins|inches|")(?![a-z])/iy;

/** "84, 90, 96 sts", "84: 90: 96 sts": as many numbers as sizes with nothing but one sign between them, and the unit behind the last. */
function commaList(text: string, index: number, sizes: number): Tail | null {
  if (/[\d,]\s*$/.test(text.slice(Math.max(0, index - 3), index))) return null;
  const values: number[] = [];
  let at = index;
  let sign: string | null = null;
  for (;;) {
    const cell = /\d/.test(text[at] ?? '') ? cellAt(text, at) : null;
    if (cell === null || cell.kind !== 'number' || cell.value === null) return null;
    values.push(cell.value);
    at = cell.end;
    if (values.length === sizes) break;
    commaStep.lastIndex = at;
    const step = commaStep.exec(text)?.[1];
    if (step === undefined || (sign !== null && step !== sign)) return null;
    sign = step;
    at = commaStep.lastIndex;
  }
  listUnit.lastIndex = at;
  return listUnit.test(text) ? { values, kind: 'number', end: at } : null;
}

/** "(11 12 13)" with the separators forgotten, where the numbers are as many as the other sizes. */
function spacedTail(text: string, index: number, sizes: number | null): Tail | null {
  if (sizes === null || sizes < 4 || (text[index] !== '(' && text[index] !== '[')) return null;
  const match = /[([](\d+(?: \d+)+)[)\]]/y;
  match.lastIndex = index;
  const found = match.exec(text);
  const values = (found?.[1] ?? '').split(' ').map(Number);
  return found !== null && values.length === sizes - 1 ? { values, kind: 'number', end: match.lastIndex } : null;
}

/** "(60) 66 (72) 78": sizes by turns, the first in a bracket. */
function bracketFirst(text: string, index: number, sizes: number | null): NumberMatch | null {
  if (sizes === null || sizes < 3) return null;
  const head = tailAt(text, index);
  if (head === null || head.values.length !== 1) return null;
  const cell = cellAt(text, skip(text, head.end));
  if (cell === null || (cell.kind !== 'number' && cell.kind !== 'ordinal')) return null;
  const rest = byTurns(text, cell, sizes - 1) ?? lastTurn(text, cell, sizes - 1);
  if (rest === null) return null;
  return {
    values: [head.values[0] ?? null, ...rest.values],
    kind: rest.kind ?? head.kind ?? 'number',
    length: rest.end - index,
    tail: true,
  };
}

/** "66 (72)" behind a first size in a bracket. */
function lastTurn(text: string, first: Cell, sizes: number): Tail | null {
  if (sizes !== 2) return null;
  const tail = tailAt(text, skip(text, first.end));
  return tail === null || tail.values.length !== 1
    ? null
    : { values: [first.value, tail.values[0] ?? null], kind: tail.kind, end: tail.end };
}

/** "(100-104-110)(84-88-92)": every size stands in a bracket, and there are as many numbers as sizes. */
function wholeInBrackets(text: string, index: number, sizes: number | null): NumberMatch | null {
  if (sizes === null || sizes < 3) return null;
  const values: (number | null)[] = [];
  let kind: NumberKind | null = null;
  let end = index;
  while (values.length < sizes) {
    const tail = tailAt(text, skip(text, end));
    if (tail === null) return null;
    values.push(...tail.values);
    kind = tail.kind ?? kind;
    end = tail.end;
  }
  return values.length === sizes ? { values, kind: kind ?? 'number', length: end - index, tail: true } : null;
}

/** "188 (208) 232 (252) 276": sizes by turns in and out of brackets, exactly as many as there are sizes. */
function byTurns(text: string, first: Cell, sizes: number): Tail | null {
  const values: (number | null)[] = [first.value];
  let kind: NumberKind = 'number';
  let at = first.end;
  for (;;) {
    const tail = tailAt(text, skip(text, at));
    if (tail === null || tail.values.length !== 1) return null;
    values.push(tail.values[0] ?? null);
    if (tail.kind === 'ordinal') kind = 'ordinal';
    at = tail.end;
    if (values.length === sizes) return values.length > 2 ? { values, kind, end: at } : null;
    const next = skip(text, at);
    const cell = cellAt(text, next);
    if (cell === null || (cell.kind !== 'number' && cell.kind !== 'ordinal')) return null;
    if (cell.kind === 'ordinal') kind = 'ordinal';
    values.push(cell.value);
    at = cell.end;
    if (values.length === sizes) return { values, kind, end: at };
  }
}

/**
 * Reads the number that begins at `index`, with the sizes that follow it. `sizes` is how many sizes the draft has, or
 * null while that is not known. A list of the wrong length is read all the same, so that a rule can point at it.
 */
export function numberAt(text: string, index: number, sizes: number | null): NumberMatch | null {
  const letter = text[index] ?? '';
  if (!mayBeginNumber(letter) && !opensList.has(letter)) return null;
  // The same place is asked for a number by every spelling that holds one.
  if (text !== asked.text || sizes !== asked.sizes) {
    asked.text = text;
    asked.sizes = sizes;
    asked.answers.clear();
  }
  const known = asked.answers.get(index);
  if (known !== undefined) return known;
  const found = readNumber(text, index, sizes);
  asked.answers.set(index, found);
  return found;
}

/** Marks that may open a list of sizes: a dash for the first, or a bracket. */
const opensList = new Set('–—−_-([');
const asked = { text: '', sizes: null as number | null, answers: new Map<number, NumberMatch | null>() };

function readNumber(text: string, index: number, sizes: number | null): NumberMatch | null {
  let first: Cell | null;
  if (/[–—−_-]/.test(text[index] ?? '')) {
    // A dash opens a list only where a bracket of sizes follows: "– (–, 276, 287) sts".
    const after = skip(text, index + 1);
    const tail = tailAt(text, after);
    if (
      tail === null ||
      (tail.values.length < 2 && sizes !== 2) ||
      (sizes !== null && sizes !== 2 && tail.values.length + 1 !== sizes && !(text[tail.end] === '[' || text[tail.end] === '('))
    )
      return null;
    first = { value: null, kind: tail.kind ?? 'number', end: index + 1 };
  } else if (text[index] === '(' || text[index] === '[') return bracketFirst(text, index, sizes) ?? wholeInBrackets(text, index, sizes);
  else first = cellAt(text, index);
  if (first === null) return null;
  if (sizes !== null && sizes > 1 && first.kind === 'number' && listGoesOn(text, first.end)) {
    const pair = pairList(text, index, sizes);
    if (pair !== null) return { values: pair.values, kind: 'number', length: pair.end - index, tail: true };
  }
  if (looseRange(text, index, sizes) > 0) return null;
  if (sizes !== null && sizes > 2 && first.kind !== 'times') {
    const list = (listGoesOn(text, first.end) ? dashList(text, index, sizes) : null) ?? commaList(text, index, sizes);
    if (list !== null) return { values: list.values, kind: list.kind ?? 'number', length: list.end - index, tail: true };
  }
  const turns = sizes !== null && sizes > 2 && (first.kind === 'number' || first.kind === 'ordinal') ? byTurns(text, first, sizes) : null;
  if (turns !== null) return { values: turns.values, kind: turns.kind ?? 'number', length: turns.end - index, tail: true };
  const values: (number | null)[] = [first.value];
  let kind: NumberKind = first.kind === 'hole' ? 'number' : first.kind;
  let end = first.end;
  for (;;) {
    let at = skip(text, end);
    if (values.length === 1 && kind === 'times') {
      const times = /times?\b/iy;
      times.lastIndex = at;
      if (times.test(text)) at = skip(text, times.lastIndex);
    }
    if (text[at] === ',' && values.length === 1) at = skip(text, at + 1);
    const tail = tailAt(text, at) ?? (values.length === 1 ? spacedTail(text, at, sizes) : null);
    if (tail === null) break;
    // One number in a bracket is a remark unless the draft has two sizes or a longer list is being read.
    // "15 (15) sts" in three sizes is a list that breaks off: a rule says so.
    const broken = /\s*(?:sts?|stitch(?:es)?|times|more times|rows?|rnds?|rounds?)\b/iy;
    broken.lastIndex = tail.end;
    if (
      values.length === 1 &&
      tail.values.length === 1 &&
      sizes !== 2 &&
      !(sizes !== null && sizes > 2 && tail.kind === 'number' && broken.test(text)) &&
      !(text[tail.end] === '(' || text[tail.end] === '[' || text[tail.end] === '{' || /[([{]/.test(text[tail.end + 1] ?? ''))
    )
      break;
    // "[…] 8 (8: 9) times": never read past the number of sizes when the list is already whole.
    if (sizes !== null && values.length === sizes) break;
    values.push(...tail.values);
    if (tail.kind === 'ordinal') kind = 'ordinal';
    if (tail.kind === 'times' && kind === 'number') kind = 'times';
    end = tail.end;
  }
  if (values.length > 1) {
    // "every 8 (8, 6)th row": the ending stands behind the bracket.
    const ending = /(?:st|nd|rd|th)\b/iy;
    ending.lastIndex = end;
    if (ending.test(text) && !/^st/i.test(text.slice(end, end + 2))) {
      kind = 'ordinal';
      end = ending.lastIndex;
    }
  }
  const boundary = text[end - 1] ?? '';
  if (values.length === 1 && /\w/.test(boundary) && /[a-z]/i.test(boundary) && /\w/.test(text[end] ?? '')) return null;
  return { values, kind, length: end - index, tail: values.length > 1 };
}
