/** Lists of sizes read as a melody: which one value does not go with the rest. Evidence only; honest gradings are uneven too. */
import type { Statement } from '../grammar/tree.ts';
import type { Observation } from '../src/replay/replay.ts';
import type { Context } from './rule.ts';

/** How uneven the steps of a list are: the sum of the changes from step to step. */
function unevenness(values: readonly number[]): number {
  const steps = values.slice(1).map((value, at) => value - (values[at] as number));
  return steps.slice(1).reduce((sum, step, at) => sum + Math.abs(step - (steps[at] as number)), 0);
}

/** The place of the value without which the list is even, where there is just one such value; null else. */
export function outOfStep(values: readonly number[]): number | null {
  if (values.length < 4) return null;
  const whole = unevenness(values);
  if (whole < 4) return null;
  // A value may be mended by any other number: the gap it leaves counts as two even steps.
  const mended = values.map((_, at) => {
    const [one, two] = [values[at - 1], values[at + 1]];
    const even =
      one === undefined
        ? 2 * (values[1] as number) - (values[2] as number)
        : two === undefined
          ? 2 * one - (values[at - 2] as number)
          : (one + two) / 2;
    return unevenness(values.map((value, index) => (index === at ? even : value)));
  });
  const best = Math.min(...mended);
  if (best * 3 > whole) return null;
  const places = mended.flatMap((value, at) => (value === best ? [at] : []));
  return places.length === 1 ? (places[0] as number) : null;
}

/** A sentence for each list near the slip whose value for the one size at fault is out of step. */
export function melody(context: Context, met: Observation): string[] {
  const [size] = met.sizes;
  if (met.sizes.length !== 1 || size === undefined || context.pattern.sizes.length < 4 || met.node === null) return [];
  const found = new Set<string>();
  const visit = (value: unknown): void => {
    if (typeof value !== 'object' || value === null) return;
    if (Array.isArray(value)) {
      value.forEach(visit);
      return;
    }
    const count = value as { type?: unknown; values?: unknown };
    if (count.type === 'count' && Array.isArray(count.values)) {
      const values = count.values.filter((each): each is number => typeof each === 'number');
      if (values.length === context.pattern.sizes.length && outOfStep(values) === size)
        found.add(
          `In ${values[0]} (${values.slice(1).join(', ')}) the value ${values[size]} for size ${context.pattern.sizes[size]} is out of step with the others.`,
        );
    }
    Object.values(value).forEach(visit);
  };
  visit(met.node satisfies Statement);
  return [...found].slice(0, 2);
}
