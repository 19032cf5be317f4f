/** How much of the draft was understood, for rules that lean on the words before a place. */
import type { Observation } from '../src/replay/replay.ts';
import type { Context } from './rule.ts';

/** Whether something in the same piece, before this place, could not be read. */
export function unreadBefore(context: Context, met: Observation): boolean {
  const { sections, reading } = context.pattern;
  const piece = sections[met.section]?.piece ?? null;
  const first = sections.find((section) => section.piece === piece) ?? sections[met.section];
  const from = first?.span.start ?? 0;
  return reading.notRead.some((gap) => gap.span.start >= from && gap.span.start < met.span.start);
}

/** Whether something between two offsets could not be read. */
export function unreadBetween(context: Context, from: number, to: number): boolean {
  return context.pattern.reading.notRead.some((gap) => gap.span.start >= from && gap.span.start < to);
}
