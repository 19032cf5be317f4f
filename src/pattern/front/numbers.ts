/**
 * Number lists as patterns print them, one value per size, in every style of bracket: `98 [110: 122]`, `5(6:7)`,
 * `5, (6, 7)`, `32 (35, 38)(44, 47)`, `92-98-104`, with ranges and with dashes for sizes that skip the step.
 *
 * Pure and linear in the text. A list of the wrong length is returned as it stands: saying so is a rule's work.
 */
import type { Sized } from '../../../grammar/count.ts';
import { isBlank, isLetter, type NumberReading, printedNumberAt, skipBlanks } from './printed-number.ts';
import { turnsAt } from './sizes-by-turns.ts';

export interface NumberList {
  /** In the order printed; null where a dash or a blank stands for a size. */
  readonly values: Sized;
  /** Upper ends where at least one value is a range; a value that is none has its own value here. */
  readonly upper: Sized | null;
  /** How many characters of the text the list takes. */
  readonly length: number;
  /** Where each value stands, as offsets into the text. */
  readonly places: readonly { readonly start: number; readonly end: number }[];
  /** The opening bracket of the first group; null for a single number or a list with no bracket. */
  readonly bracket: '(' | '[' | '{' | null;
  /** False when the bracket is never closed. */
  readonly closed: boolean;
}

interface Value {
  readonly low: number | null;
  readonly high: number | null;
  readonly start: number;
  readonly end: number;
}

type Token =
  | { readonly kind: 'number'; readonly value: number; readonly start: number; readonly end: number }
  | { readonly kind: 'dash' | 'nothing' | 'separator'; readonly start: number; readonly end: number };

const closing: Readonly<Record<string, string>> = { '(': ')', '[': ']', '{': '}' };

/** More values than any pattern has sizes; keeps the work bounded. */
const mostTokens = 1_000;

const isDash = (letter: string | undefined): boolean =>
  letter === '-' || letter === '–' || letter === '—' || letter === '−' || letter === '‑';

/** A dash between two numbers outside brackets: the long dash introduces a count instead (`k3—44 sts`). */
const isJoin = (letter: string | undefined): boolean => letter === '-' || letter === '–' || letter === '‑';

const isDigit = (letter: string | undefined): boolean => letter !== undefined && letter >= '0' && letter <= '9';

/** `th` of `8th`, and the inch mark of `36"`: they belong to the value and not to the list. */
function skipSuffix(text: string, index: number): number {
  if (text[index] === '"' || text[index] === '″') return index + 1;
  const two = text.slice(index, index + 2).toLowerCase();
  if ((two === 'st' || two === 'nd' || two === 'rd' || two === 'th') && !isLetter(text[index + 2])) return index + 2;
  return index;
}

/** `_`, `x` or `n/a`, standing alone for a size that skips. */
function nothingAt(text: string, index: number): number {
  const letter = text[index];
  if (letter === '_') return 1;
  if ((letter === 'x' || letter === 'X') && !isLetter(text[index + 1]) && !isDigit(text[index + 1])) return 1;
  return /^n\/a$/i.test(text.slice(index, index + 3)) ? 3 : 0;
}

interface Group {
  readonly tokens: readonly Token[];
  /** After the closing bracket, or after the last number when it is missing. */
  readonly end: number;
  readonly closed: boolean;
}

/** Everything between brackets, if it is numbers, dashes and separators and nothing else. */
function readGroup(text: string, open: number, reading: NumberReading): Group | null {
  const close = closing[text[open] ?? ''];
  if (close === undefined) return null;
  const tokens: Token[] = [];
  let at = open + 1;
  while (at < text.length && tokens.length < mostTokens) {
    at = skipBlanks(text, at);
    const letter = text[at];
    if (letter === close) return { tokens, end: at + 1, closed: true };
    const number = printedNumberAt(text, at, reading);
    if (number !== null) {
      const end = skipSuffix(text, at + number.length);
      if (isLetter(text[end])) break;
      tokens.push({ kind: 'number', value: number.value, start: at, end });
      at = end;
      continue;
    }
    if (isDash(letter)) {
      tokens.push({ kind: 'dash', start: at, end: at + 1 });
      at += 1;
    } else if (letter === ',' || letter === ':' || letter === ';' || letter === '/' || (letter === '.' && isBlank(text[at + 1]))) {
      // A full stop with a blank after it is a comma typed wrongly.
      tokens.push({ kind: 'separator', start: at, end: at + 1 });
      at += 1;
    } else {
      const width = nothingAt(text, at);
      if (width === 0) break;
      tokens.push({ kind: 'nothing', start: at, end: at + width });
      at += width;
    }
  }
  return unclosed(text, at, close, tokens);
}

/** A list whose closing bracket was forgotten: at least two numbers with a separator, and no such bracket follows in the phrase. */
function unclosed(text: string, stop: number, close: string, tokens: readonly Token[]): Group | null {
  const numbers = tokens.filter((token) => token.kind === 'number');
  const last = numbers.at(-1);
  if (last === undefined || numbers.length < 2 || !tokens.some((token) => token.kind === 'separator')) return null;
  for (let at = stop; at < text.length && at < stop + 60; at += 1) {
    const letter = text[at];
    if (letter === close) return null;
    if (letter === '(' || letter === '[' || letter === '{' || letter === '\n' || letter === '.') break;
  }
  return { tokens: tokens.slice(0, tokens.indexOf(last) + 1), end: last.end, closed: false };
}

const asValue = (token: Token): Value =>
  token.kind === 'number'
    ? { low: token.value, high: null, start: token.start, end: token.end }
    : { low: null, high: null, start: token.start, end: token.end };

/** Values of one group. `ranges`: a lone dash between two numbers is a range, not a separator. */
function valuesOf(tokens: readonly Token[], ranges: boolean): readonly Value[] {
  const values: Value[] = [];
  let afterSeparator = true;
  for (let i = 0; i < tokens.length; i += 1) {
    const token = tokens[i]!;
    const before = tokens[i - 1];
    const next = tokens[i + 1];
    if (token.kind === 'separator') {
      // Nothing between two separators is a size left blank.
      if (afterSeparator) values.push({ low: null, high: null, start: token.start, end: token.start });
      afterSeparator = true;
      continue;
    }
    if (token.kind === 'dash' && before?.kind === 'number' && next?.kind === 'number') {
      if (ranges) {
        const low = values.pop()!;
        values.push({ low: low.low, high: next.value, start: low.start, end: next.end });
        i += 1;
      }
      afterSeparator = false;
      continue;
    }
    values.push(asValue(token));
    afterSeparator = false;
  }
  return values;
}

function finish(values: readonly Value[], start: number, end: number, bracket: NumberList['bracket'], closed: boolean): NumberList {
  const ranged = values.some((value) => value.high !== null);
  return {
    values: values.map((value) => value.low),
    upper: ranged ? values.map((value) => value.high ?? value.low) : null,
    length: end - start,
    places: values.map((value) => ({ start: value.start, end: value.end })),
    bracket,
    closed,
  };
}

/** The values before the first bracket: `81`, `81–86`, `–`. `dashes` counts the dashes read. */
interface Head {
  readonly values: readonly Value[];
  readonly end: number;
  readonly dashes: number;
  readonly slashes: number;
}

function readHead(text: string, index: number, reading: NumberReading): Head | null {
  const first = printedNumberAt(text, index, reading);
  if (first === null) {
    const width = isDash(text[index]) || text[index] === '_' ? 1 : /^n\/a/i.test(text.slice(index, index + 3)) ? 3 : 0;
    if (width === 0) return null;
    return { values: [{ low: null, high: null, start: index, end: index + width }], end: index + width, dashes: 0, slashes: 0 };
  }
  const values: Value[] = [{ low: first.value, high: null, start: index, end: index + first.length }];
  let end = index + first.length;
  let dashes = 0;
  let slashes = 0;
  while (values.length < mostTokens) {
    // "18 / 20 / 22 cm" stands for "18/20/22 cm".
    const wide = text[end] === ' ' && text[end + 1] === '/' && text[end + 2] === ' ';
    const slash = wide || text[end] === '/';
    const gap = wide ? end + 1 : slash ? end : skipBlanks(text, end);
    if (!slash && (!isJoin(text[gap]) || gap > end !== isBlank(text[gap + 1]))) break;
    const at = skipBlanks(text, gap + 1);
    if (at > gap + 3 || text.slice(end, at).includes('\n')) break;
    const next = printedNumberAt(text, at, { ...reading, words: false });
    if (next === null || isLetter(text[at + next.length])) break;
    if (slash ? dashes > 0 : slashes > 0) break;
    if (slash) slashes += 1;
    else dashes += 1;
    values.push({ low: next.value, high: null, start: at, end: at + next.length });
    end = at + next.length;
  }
  return { values, end, dashes, slashes };
}

/** One number out of `head` where its joints make no list. */
function headAlone(head: Head, sizeCount: number | null): { values: readonly Value[]; end: number } {
  const [first, second] = [head.values[0]!, head.values[1]];
  if (second === undefined) return { values: [first], end: first.end };
  if (head.values.length > 2 || sizeCount === 2) return { values: head.values, end: head.end };
  if (head.dashes === 1 && first.low !== null && second.low !== null && second.low > first.low) {
    return { values: [{ low: first.low, high: second.low, start: first.start, end: second.end }], end: second.end };
  }
  return { values: [first], end: first.end };
}

/** `1 (2) 3 (4) 5 (6)`: bare and bracketed values in turn, read only when they come to the number of sizes. */
function readAlternating(text: string, values: readonly Value[], end: number, sizeCount: number, reading: NumberReading) {
  const found = [...values];
  let at = end;
  while (found.length < sizeCount) {
    const start = skipBlanks(text, at);
    const bare = start > at ? printedNumberAt(text, start, reading) : null;
    if (bare === null) return null;
    found.push({ low: bare.value, high: null, start, end: start + bare.length });
    at = start + bare.length;
    if (found.length === sizeCount) break;
    const group = readGroup(text, skipBlanks(text, at), reading);
    const only = group?.tokens[0];
    if (group === null || only?.kind !== 'number' || group.tokens.length !== 1) return null;
    found.push(asValue(only));
    at = group.end;
  }
  return { values: found, end: at };
}

function readList(text: string, index: number, sizeCount: number | null, reading: NumberReading): NumberList | null {
  const opensWithBracket = closing[text[index] ?? ''] !== undefined;
  const head = opensWithBracket ? null : readHead(text, index, reading);
  if (head === null && !opensWithBracket) return null;
  const alone = head === null ? { values: [], end: index } : headAlone(head, sizeCount);
  let values: readonly Value[] = alone.values;
  let end = alone.end;
  let bracket: NumberList['bracket'] = null;
  let closed = true;
  // A bracket follows the whole head: a single dash before it makes a range of the first value (`81–86 (92–97)`).
  const from = head === null ? index : head.end;
  const headRange = head !== null && head.dashes === 1;
  const headValues =
    headRange && head.values[0]!.low !== null && head.values[1]?.low !== null
      ? [{ low: head.values[0]!.low, high: head.values[1]!.low, start: head.values[0]!.start, end: head.values[1]!.end }]
      : (head?.values ?? []);
  let at = from;
  for (let groups = 0; groups < 12; groups += 1) {
    let next = groups === 0 && head === null ? at : skipBlanks(text, skipSuffix(text, at));
    if (text[next] === ',' && groups === 0) next = skipBlanks(text, next + 1);
    const group = readGroup(text, next, groups === 0 ? reading : { ...reading, words: false });
    if (group === null) break;
    const strong = group.tokens.some((token) => token.kind === 'separator');
    const joins = group.tokens.filter((token, i) => token.kind === 'dash' && i > 0).length;
    const ranges = strong || (headRange && joins === 1);
    const inside = valuesOf(group.tokens, ranges);
    if (inside.length === 0 || !inside.some((value) => value.low !== null || group.tokens.length > 0)) break;
    const so = groups === 0 ? headValues : values;
    if (sizeCount !== null && groups > 0 && so.length === sizeCount) break;
    values = [...so, ...inside];
    end = group.end;
    at = group.end;
    closed = closed && group.closed;
    bracket ??= text[next] as NumberList['bracket'];
    if (!group.closed) break;
  }
  if (bracket !== null && closed && sizeCount !== null && values.length === 2 && sizeCount > 2) {
    const more = readAlternating(text, values, end, sizeCount, reading);
    if (more !== null) {
      values = more.values;
      end = more.end;
    }
  }
  const numbers = values.filter((value) => value.low !== null).length;
  if (numbers === 0 || (head === null && values.length < 2)) return null;
  // A dash is a value only in front of a bracket.
  if (bracket === null && values[0]!.low === null) return null;
  return finish(values, index, end, bracket, closed);
}

/** A comma between digits of an outer number, as in `87,5 (92,5: 100,5) cm` or `12,5 cm`: no list can be meant. */
function commaIsDecimal(text: string, index: number): boolean {
  const match = /^\d{1,4},\d{1,2}(?!\d)(?!\s*,\s*\d)\s{0,2}(\(|\[|cm\b|mm\b|in\b|m\b|"|kg\b|g\b)/.exec(text.slice(index, index + 24));
  if (match === null) return false;
  return !/[\d][,:;]\s*$/.test(text.slice(Math.max(0, index - 4), index));
}

/** Within a bracket with `:` or `;`, a tight comma between digits can only be a decimal comma. */
function bracketCommasAreDecimal(text: string, index: number): boolean {
  const stop = text.slice(index, index + 200);
  const match = /^[^([{\n]{0,24}[([{]([^)\]}]{0,160})/.exec(stop);
  const inside = match?.[1] ?? '';
  return /[:;]/.test(inside) && /\d,\d{1,2}(?!\d)/.test(inside) && !/,\s/.test(inside);
}

/** `1,040` inside a bracket is a thousand only when the value before it is large, else `100(110,120)` would be one. */
function thousandsInBracket(text: string, index: number): boolean {
  const first = printedNumberAt(text, index);
  return first === null || first.value >= 400;
}

/** Whether a list may begin here at all: most words and marks of a draft are answered by this. */
function mayBegin(text: string, index: number): boolean {
  const letter = text[index];
  return (
    closing[letter ?? ''] !== undefined ||
    isDash(letter) ||
    letter === '_' ||
    letter === 'n' ||
    letter === 'N' ||
    printedNumberAt(text, index) !== null
  );
}

/**
 * The number or list of numbers that starts at `index`, or null. `sizeCount` is the number of sizes of the draft where
 * it is known: it decides between readings, it never changes what is printed.
 */
export function numberListAt(text: string, index: number, sizeCount: number | null): NumberList | null {
  if (text[index] === '(' && sizeCount !== null && sizeCount >= 3) {
    const turns = turnsAt(text, index, sizeCount);
    if (turns !== null) return turns;
  }
  if (!mayBegin(text, index)) return null;
  const reading: NumberReading = {
    decimalComma: commaIsDecimal(text, index) || bracketCommasAreDecimal(text, index),
    thousands: thousandsInBracket(text, index),
  };
  const list = readList(text, index, sizeCount, reading);
  if (list === null || sizeCount === null || list.values.length === sizeCount || list.values.length < 2) return list;
  // The other reading of commas, where only it comes to the number of sizes.
  const other = readList(text, index, sizeCount, { ...reading, decimalComma: reading.decimalComma !== true });
  return other !== null && other.values.length === sizeCount ? other : list;
}

export interface FoundList extends NumberList {
  readonly index: number;
}

/** Every number or list of numbers in the text, in order, none inside another. A `2` inside a word (`k2tog`) is none. */
export function numberLists(text: string, sizeCount: number | null): readonly FoundList[] {
  const found: FoundList[] = [];
  let at = 0;
  while (at < text.length) {
    const letter = text[at]!;
    const digit = isDigit(letter);
    const glyph = !digit && letter >= '¼' && printedNumberAt(text, at, { words: false }) !== null;
    const word = !digit && !glyph && isLetter(letter) && !isLetter(text[at - 1]);
    const mark = (isDash(letter) || letter === '_') && closing[text[skipBlanks(text, at + 1)] ?? ''] !== undefined;
    const group = closing[letter] !== undefined && !isDigit(text[at - 1]);
    const list = digit || glyph || word || mark || group ? numberListAt(text, at, sizeCount) : null;
    if (list === null) {
      at = isLetter(letter) ? endOfWord(text, at) : at + 1;
      continue;
    }
    const inWord = digit && isLetter(text[at - 1]) && isLetter(text[at + list.length]);
    if (!inWord) found.push({ ...list, index: at });
    at += list.length;
  }
  return found;
}

function endOfWord(text: string, index: number): number {
  let end = index + 1;
  while (end < text.length && isLetter(text[end])) end += 1;
  return end;
}
