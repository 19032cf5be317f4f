/** The words around a number that a finding points at. */
import type { Observation } from '../src/replay/replay.ts';
import type { Context } from './rule.ts';
import { excerpt } from './telling.ts';
import { stepsOf } from './tree-walk.ts';

/** "rep from * 5 times" for the 5 in it; else the words at the place. */
export function phraseAt(context: Context, met: Observation): string {
  const steps = met.node?.type === 'row' ? stepsOf(met.node.children) : [];
  const holder = steps.find(
    (step) => step.type === 'repeat' && step.extent?.kind === 'times' && step.extent.count.span.start === met.span.start,
  );
  if (holder === undefined) return excerpt(context, met.span);
  const text = context.manuscript.source.slice(holder.span.start, holder.span.end);
  const at = text.lastIndexOf('rep');
  return excerpt(context, at < 0 ? holder.span : { start: holder.span.start + at, end: holder.span.end });
}
