/** Sentences that say on which side rows end, or with which an order waits for its goal. */
import { endingAt, triggerAt } from '../phrases/parser.ts';
import { Comma, endOf, FullStop, isA, type KnitToken, W, Word } from '../tokens.ts';
import type { Passage } from './passage.ts';
import { untilGoal } from './prose.ts';

/** "End with a WS row." behind rows to a goal: the side of their last row. */
export function readEnding(passage: Passage, at: number, to: number): boolean {
  const { text, base, tokens, out, state } = passage;
  const last = out.at(-1);
  if (state.open !== null || (last?.type !== 'until' && last?.type !== 'plain' && last?.type !== 'repeatRows') || last.ending !== null)
    return false;
  const ending = endingAt(tokens.slice(at, to), base, text);
  if (ending === null || ending.value.last === null || at + ending.eaten < (isA(tokens[to - 1], FullStop) ? to - 1 : to)) return false;
  out[out.length - 1] = { ...last, ending: ending.value, span: { start: last.span.start, end: ending.value.span.end } };
  return true;
}

/** "Bind off when piece measures 30 cm", "Change to larger needles when work measures 5 cm": the goal comes first. */
export function readAtGoal(
  passage: Passage,
  at: number,
  to: number,
  readSentence: (passage: Passage, from: number, to: number, index: number) => void,
): boolean {
  const { text, base, tokens, out, flush } = passage;
  if (!isA(tokens[at], W.BindOff, W.Change)) return false;
  const when = tokens.findIndex((token, index) => index > at && index < to && isA(token, Word) && /^(?:when|once)$/i.test(token.image));
  const trigger = when < 0 ? null : triggerAt(tokens.slice(when, to), base, text);
  if (trigger === null || (trigger.value.when.kind !== 'measure' && trigger.value.when.kind !== 'rows')) return false;
  if (when + trigger.eaten < (isA(tokens[to - 1], FullStop) ? to - 1 : to)) return false;
  flush();
  const span = { start: base + (tokens[when] as KnitToken).startOffset, end: base + endOf(tokens[when + trigger.eaten - 1] as KnitToken) };
  out.push(untilGoal(trigger.value.when, trigger.value.ending, span));
  readSentence(passage, at, isA(tokens[when - 1], Comma) ? when - 1 : when, -1);
  return true;
}
