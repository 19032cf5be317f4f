/** Putting the worked count in the place of a stated one that is at fault. */
import type { Observation } from '../src/replay/replay.ts';
import type { Context, Edit } from './rule.ts';

/** The edit, where exactly one printed number has to change; null where that cannot be told. */
export function countFix(context: Context, met: Observation): Edit | null {
  const text = context.manuscript.source.slice(met.span.start, met.span.end);
  const numbers = [...text.matchAll(/\d+/g)];
  const sizes = context.pattern.sizes.length;
  const stated = met.numbers['stated'] ?? [];
  const replayed = met.numbers['replayed'] ?? [];
  const edits = met.sizes.map((size, position) => {
    const number = numbers.length === 1 ? numbers[0] : numbers.length === sizes ? numbers[size] : undefined;
    const value = replayed[position];
    if (number === undefined || value === null || value === undefined || Number(number[0]) !== stated[position]) return null;
    return { start: met.span.start + number.index, end: met.span.start + number.index + number[0].length, value };
  });
  const [first] = edits;
  if (first === undefined || first === null) return null;
  if (!edits.every((edit) => edit !== null && edit.start === first.start && edit.value === first.value)) return null;
  return { span: { start: first.start, end: first.end }, text: String(first.value) };
}
