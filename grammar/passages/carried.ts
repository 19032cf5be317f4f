/**
 * Numbers that a verb before them goes on to work: "knit the 78 sts of the back, the 50 sts of one sleeve, the 78 sts of the
 * front and the 50 sts of the other sleeve".
 */
import { Comma, Count as CountToken, endOf, FullStop, isA, type KnitToken, Name, Ordinal, Semicolon, W, Word } from '../tokens.ts';
import type { Work } from '../tree.ts';
import type { Passage } from './passage.ts';

/** The stitches at `from` as the verb of the step before works them, and the tokens they take; null where no verb is carried on. */
export function carriedAt(passage: Passage, from: number, to: number): { readonly step: Work; readonly eaten: number } | null {
  const { base, tokens, state } = passage;
  const last = state.open?.steps.at(-1);
  if (last?.type !== 'work' || !/^[kp]$/.test(last.stitch) || last.n === null || last.times !== undefined) return null;
  if (!isA(tokens[from - 1], Comma, W.And) || !isA(tokens[from], CountToken) || !isA(tokens[from + 1], W.St)) return null;
  if (!isA(tokens[from + 2], W.Of, W.From)) return null;
  let end = from + 3;
  if (/^(?:one|each|both)$/i.test(tokens[end]?.image ?? '') && isA(tokens[end + 1], Word, Name)) end += 1;
  while (end < to && end < from + 8 && isA(tokens[end], Word, Name, Ordinal, W.Other, W.First, W.Edge, W.Rem)) end += 1;
  if (end === from + 3 || (end < to && !isA(tokens[end], Comma, W.And, FullStop, Semicolon))) return null;
  const number = tokens[from] as KnitToken;
  const span = { start: base + number.startOffset, end: base + endOf(number) };
  const step: Work = {
    type: 'work',
    stitch: last.stitch,
    n: { type: 'count', values: number.payload?.values ?? [1], span },
    manner: [],
    span: { start: span.start, end: base + endOf(tokens[end - 1] as KnitToken) },
  };
  return { step, eaten: end - from };
}
