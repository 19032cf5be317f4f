/** Rows in a bracket, worked over again: "(K 1 row, p 1 row) 3 times", "[k 2 rows, p 2 rows] twice". */
import {
  Comma,
  Count as CountToken,
  endOf,
  FullStop,
  isA,
  type KnitToken,
  Open,
  PlainStitch,
  Semicolon,
  TimesNumber,
  W,
} from '../tokens.ts';
import type { Count } from '../tree.ts';
import { readBody } from './body.ts';
import type { Passage } from './passage.ts';

/** "(K 1 row, p 1 row) 3 times": rows in a bracket, worked over again; false where the bracket holds anything else. */
export function bracketedRows(passage: Passage, at: number, to: number): boolean {
  const { text, base, tokens, out, flush } = passage;
  const close = tokens[at]?.payload?.close ?? -1;
  if (!isA(tokens[at], Open) || close <= at || close >= to) return false;
  const inside = tokens.slice(at + 1, close);
  const rows = inside.filter((token) => isA(token, W.Row, W.Round)).length;
  if (rows === 0 || !inside.every((token) => isA(token, PlainStitch, CountToken, W.Row, W.Round, Comma, Semicolon, W.And, W.Then)))
    return false;
  const often = timesBehind(tokens.slice(close + 1, to), base);
  if (often === null || close + 1 + often.eaten < to) return false;
  flush();
  const from = out.length;
  readBody(passage, at + 1, close, false);
  flush();
  const worked = out.slice(from);
  const each = worked.map((statement) => (statement.type === 'plain' ? (statement.count.values[0] ?? 0) : 0));
  const span = { start: base + (tokens[at] as KnitToken).startOffset, end: base + endOf(tokens[to - 1] as KnitToken) };
  if (each.some((count) => count === 0)) {
    out.splice(from, worked.length, { type: 'unread', text: text.slice(span.start - base, span.end - base), span });
    return true;
  }
  const last = { type: 'count' as const, values: [each.reduce((sum, count) => sum + count, 0)], span };
  out.push({
    type: 'repeatRows',
    verb: 'rep',
    rows: { kind: 'last', count: last, numbers: [], name: null, of: null, mark: null, toMark: null },
    times: {
      count: {
        ...often.count,
        values: often.count.values.map((value) => (value === null ? null : Math.max(0, value - (often.more ? 0 : 1)))),
      },
      sense: 'more',
    },
    until: null,
    ending: null,
    schedule: [],
    step: null,
    inPlace: null,
    stated: [],
    span: { start: base + (tokens[close] as KnitToken).startOffset, end: span.end },
  });
  return true;
}

/** "3 times", "twice", "3 times more" behind a bracket, with how many tokens it takes; null where nothing of the kind stands. */
function timesBehind(tokens: readonly KnitToken[], base: number): { count: Count; more: boolean; eaten: number } | null {
  const [number] = tokens;
  if (number === undefined || !isA(number, CountToken, TimesNumber)) return null;
  let eaten = 1;
  while (isA(tokens[eaten], W.Times, W.More, W.InAll)) eaten += 1;
  if (eaten === 1 && isA(number, CountToken)) return null;
  const more = tokens.slice(1, eaten).some((token) => isA(token, W.More));
  const span = { start: base + number.startOffset, end: base + endOf(number) };
  return {
    count: { type: 'count', values: number.payload?.values ?? [1], span },
    more,
    eaten: isA(tokens[eaten], FullStop) ? eaten + 1 : eaten,
  };
}
