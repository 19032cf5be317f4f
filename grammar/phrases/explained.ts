/**
 * A bracket that tells once more, in other words, the stitch it stands behind: "ssk (slip, slip, knit)", "make 3 from 1 (k1, p1, k1 all
 * in next st)", "work cable over next 6 sts (slip 3 to cn and hold in back, k3, k3 from cn)". It is worked once, not twice.
 */
import { ambiguityOf } from '../lexicon/ambiguous.ts';
import { entryNamed } from '../lexicon/index.ts';
import { stitchUse } from '../lexicon/use.ts';
import type { Repeat, Step, Work } from '../tree.ts';

interface Use {
  readonly takes: number;
  readonly makes: number;
}

const one = (values: readonly (number | null)[] | undefined): number | null => (values?.length === 1 ? (values[0] ?? null) : null);

function stitchUses(step: Work): Use[] {
  const named = step.spelling === undefined ? undefined : ambiguityOf(step.spelling)?.readings;
  const count = step.n === null ? null : one(step.n.values);
  if (step.n !== null && count === null) return [];
  const times = step.times === undefined ? 1 : one(step.times.values);
  const uses: Use[] = [];
  for (const reading of named ?? [{ name: step.stitch, n: count ?? 1, m: step.m }]) {
    const entry = entryNamed(reading.name);
    const n = typeof reading.n === 'number' ? reading.n : (count ?? 1);
    if (entry === undefined || times === null) continue;
    const { takes, makes } = stitchUse(entry, n, typeof reading.m === 'number' ? reading.m : (step.m ?? 1));
    uses.push({ takes: takes * times, makes: makes * times });
  }
  return uses;
}

/** What the steps take and make, where simple stitches tell it; null where they do not. */
function sumOf(steps: readonly Step[]): Use | null {
  let takes = 0;
  let makes = 0;
  for (const step of steps) {
    if (step.type === 'remark') continue;
    if (step.type === 'work') {
      const [use] = stitchUses(step);
      if (use === undefined) return null;
      takes += use.takes;
      makes += use.makes;
    } else if (step.type === 'pullOver') makes -= step.count;
    else if (step.type === 'intoOne' && step.times === undefined && step.into === 'stitch') {
      const inner = sumOf(step.children);
      const into = step.takes === null ? 1 : one(step.takes.values);
      if (inner === null || into === null) return null;
      takes += into;
      makes += inner.makes;
    } else return null;
  }
  return { takes, makes };
}

function usesOf(step: Step): Use[] {
  if (step.type === 'work') return ['k', 'p', 'sl'].includes(step.stitch) ? [] : stitchUses(step);
  if (step.type !== 'repeat' || step.form !== 'run' || step.extent?.kind !== 'over') return [];
  const n = one(step.extent.count.values);
  return n === null ? [] : [{ takes: n, makes: n }];
}

const explains = (step: Step | undefined): step is Repeat =>
  step?.type === 'repeat' && step.form === 'bracket' && step.extent === null && step.children.length > 0;

/** Takes the brackets that only explain out of the steps. `text` gives the author's words of a span. */
export function explained(steps: readonly Step[], text: (span: Step['span']) => string): Step[] {
  const out: Step[] = [];
  for (let index = 0; index < steps.length; index += 1) {
    const step = steps[index] as Step;
    const bracket = steps[index + 1];
    const close = explains(bracket) && /^\s*$/.test(text({ start: step.span.end, end: bracket.span.start }));
    const uses = close ? usesOf(step) : [];
    const sum = uses.length > 0 && explains(bracket) ? sumOf(bracket.children) : null;
    const which = sum === null ? -1 : uses.findIndex((use) => use.takes === sum.takes && use.makes === sum.makes);
    if (which < 0 || bracket === undefined) {
      out.push(step);
      continue;
    }
    // A name with several meanings, or no name at all, is the stitch that the bracket tells.
    if (which === 0 && step.type === 'work') out.push(step, { type: 'remark', known: true, span: bracket.span });
    else out.push({ type: 'remark', known: true, span: step.span }, bracket);
    index += 1;
  }
  return out;
}
