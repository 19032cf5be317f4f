/** The numbers of a label: "1, 3 and 5", "5–8", "1st to 4th", "3–6 (8, 10)", "1 (RS) & 3", "5 to row 8", "3rd and foll 2". */
import type { Sized } from '../count.ts';
import {
  Comma,
  Count as CountToken,
  Dash,
  endOf,
  FullStop,
  isA,
  type KnitToken,
  Open,
  Ordinal,
  Other,
  rowWords,
  Slash,
  W,
  Word,
} from '../tokens.ts';

/** Most rows one label may name; a longer range is read up to here. */
const mostRows = 2000;
/** A higher number is no row's: rows are counted one by one where some are missing. */
const highestRow = 99_999;

export interface LabelNumbers {
  readonly numbers: number[];
  lastBySize: Sized | null;
  /** Where the numbers stand in the passage; -1 while none is taken. */
  start: number;
  end: number;
  /** "1 (RS) & 3": the side printed with the first of them. */
  side: KnitToken | null;
  /** Index of the first token behind them. */
  at: number;
}

function take(all: LabelNumbers, token: KnitToken, range: boolean): void {
  // "Rows 5/6:" is read as a fraction.
  const pair = /^(\d+)\/(\d+)$/.exec(token.image);
  const values: Sized = pair ? [Number(pair[1])] : (token.payload?.values ?? []);
  const value = values[0];
  if (typeof value !== 'number' || !Number.isInteger(value) || value > highestRow) return;
  if (all.start < 0) all.start = token.startOffset;
  all.end = endOf(token);
  if (range) {
    // Where the last number differs by size, all that any size works are named.
    const last = Math.max(...values.map((each) => each ?? 0));
    const from = all.numbers.at(-1) ?? value;
    for (let row = from + 1; row <= Math.min(last, from + mostRows); row += 1) all.numbers.push(row);
    if (last <= from) all.numbers.push(value);
  } else all.numbers.push(value);
  if (pair) all.numbers.push(Number(pair[2]));
  if (values.length > 1) all.lastBySize = values;
}

/** Index of the next number of the list behind what joins it to the one before; -1 where the list ends. */
function joined(tokens: readonly KnitToken[], at: number): number {
  let next = at;
  if (isA(tokens[next], Comma) && isA(tokens[next + 1], W.And)) next += 2;
  else if (isA(tokens[next], Dash, W.To, Comma, W.And, W.Plus, Slash)) next += 1;
  else return -1;
  // "5 to row 8"
  if (isA(tokens[next], ...rowWords)) next += 1;
  return isA(tokens[next], CountToken, Ordinal) ? next : -1;
}

/** "(RS)" between the numbers of a list. */
function sideBetween(tokens: readonly KnitToken[], at: number): number {
  if (!isA(tokens[at], Open) || tokens[at]?.payload?.holds !== 'side') return -1;
  const close = tokens[at]?.payload?.close ?? -1;
  return close > at && joined(tokens, close + 1) > 0 ? close + 1 : -1;
}

/** Takes the list of numbers that begins at `at`. */
export function labelNumbers(tokens: readonly KnitToken[], at: number): LabelNumbers {
  const all: LabelNumbers = { numbers: [], lastBySize: null, start: -1, end: -1, side: null, at };
  // "Row #1", "Row no. 1"
  while (isA(tokens[all.at], Other, Word, FullStop) && /^(?:#|no|nr|number|\.)$/i.test(tokens[all.at]?.image ?? '') && all.at < at + 2)
    all.at += 1;
  if (!isA(tokens[all.at], CountToken, Ordinal)) {
    all.at = at;
    return all;
  }
  take(all, tokens[all.at] as KnitToken, false);
  all.at += 1;
  while (all.at < tokens.length && all.numbers.length > 0) {
    const side = sideBetween(tokens, all.at);
    if (side > 0) {
      all.side ??= tokens.slice(all.at, side).find((token) => isA(token, W.Rs, W.Ws)) ?? null;
      all.at = side;
    }
    const next = joined(tokens, all.at);
    if (next < 0) break;
    take(all, tokens[next] as KnitToken, isA(tokens[all.at], Dash, W.To));
    all.at = next + 1;
  }
  return all;
}

/** "… and foll 2 rows", "… and following row": the rows behind the last number, by how many; the row word is the next token. */
export function rowsBehind(tokens: readonly KnitToken[], all: LabelNumbers): boolean {
  const last = all.numbers.at(-1);
  if (last === undefined || !isA(tokens[all.at], W.And) || !isA(tokens[all.at + 1], W.Foll, W.Next)) return false;
  const count = isA(tokens[all.at + 2], CountToken) ? tokens[all.at + 2] : undefined;
  const word = all.at + (count === undefined ? 2 : 3);
  const more = count === undefined ? 1 : (count.payload?.values?.[0] ?? 0);
  if (!isA(tokens[word], ...rowWords) || (count === undefined && /s$/i.test(tokens[word]?.image ?? ''))) return false;
  for (let row = last + 1; row <= last + Math.min(more, mostRows); row += 1) all.numbers.push(row);
  all.end = endOf(tokens[word - 1] as KnitToken);
  all.at = word;
  return true;
}
