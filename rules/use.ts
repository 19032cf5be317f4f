/** What a stretch of steps takes and makes by itself, and which stitches it is made of, as the lexicon and the draft define them. */
import { sizeValue } from '../grammar/count.ts';
import type { Entry } from '../grammar/lexicon/entry.ts';
import { entryNamed } from '../grammar/lexicon/index.ts';
import { stitchUse } from '../grammar/lexicon/use.ts';
import type { Step, Work } from '../grammar/tree.ts';
import type { Pattern } from '../src/pattern/pattern.ts';

export interface Use {
  readonly takes: number;
  readonly makes: number;
}

/** The entry of a stitch, the draft's own before the common one. */
export function entryOf(pattern: Pattern, step: Work): Entry | undefined {
  return pattern.vocabulary.stitches.get(step.stitch) ?? entryNamed(step.stitch);
}

/** What one stitch takes and makes in a size; null where that is open. */
export function workUse(pattern: Pattern, step: Work, size = 0): Use | null {
  const entry = entryOf(pattern, step);
  if (entry === undefined || entry.kind === 'shortRow' || (step.readings?.length ?? 0) > 1) return null;
  const n = step.n === null ? 1 : sizeValue(step.n.values, size);
  const times = step.times ? sizeValue(step.times.values, size) : 1;
  if (n === null || times === null) return { takes: 0, makes: 0 };
  const { takes, makes } = n === 0 ? { takes: 0, makes: 0 } : stitchUse(entry, n, step.m ?? 1);
  return { takes: takes * times, makes: makes * times };
}

/** What steps take and make together when that does not hang on the needle; null when it does. */
export function stepsUse(pattern: Pattern, steps: readonly Step[], size = 0): Use | null {
  let takes = 0;
  let makes = 0;
  for (const step of steps) {
    const use = stepUse(pattern, step, size);
    if (use === null) return null;
    takes += use.takes;
    makes += use.makes;
  }
  return { takes, makes };
}

function stepUse(pattern: Pattern, step: Step, size: number): Use | null {
  switch (step.type) {
    case 'work':
      return workUse(pattern, step, size);
    case 'intoOne': {
      const inner = stepsUse(pattern, step.children, size);
      const times = step.times ? sizeValue(step.times.values, size) : 1;
      if (inner === null || times === null || step.everywhere === true) return null;
      const takes = step.into === 'doubleYarnOver' ? 2 : step.takes === null ? 1 : (sizeValue(step.takes.values, size) ?? 1);
      return { takes: takes * times, makes: inner.makes * times };
    }
    case 'repeat': {
      const { extent } = step;
      if (step.ending !== null || step.once.length > 0) return null;
      if (extent === null) return stepsUse(pattern, step.children, size);
      if (extent.kind === 'over' && step.form === 'run' && extent.count.all !== true) {
        const n = sizeValue(extent.count.values, size) ?? 0;
        return { takes: n, makes: n };
      }
      if (extent.kind !== 'times' || (extent.sense === 'plain' && extent.form === 'from')) return null;
      const inner = stepsUse(pattern, step.children, size);
      const n = sizeValue(extent.count.values, size) ?? 0;
      const passes = extent.sense === 'more' ? n + 1 : n;
      return inner === null ? null : { takes: inner.takes * passes, makes: inner.makes * passes };
    }
    case 'pullOver':
      return { takes: 0, makes: -step.count };
    case 'remark':
    case 'resolve':
    case 'stated':
    case 'marker':
    case 'change':
      return { takes: 0, makes: 0 };
    default:
      return null;
  }
}

/** Yarn overs made by the steps at a place, counted as loops: `yo twice` is 2. */
export function yarnOvers(pattern: Pattern, step: Step | undefined): number {
  if (step === undefined || step.type !== 'work') return 0;
  return entryOf(pattern, step)?.kind === 'yarnOver' ? (workUse(pattern, step)?.makes ?? 0) : 0;
}
