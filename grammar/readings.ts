/**
 * Names with several readings, settled as far as the row's own words settle them: what stands before and after decides
 * whether "yf" is a yarn over or only moves the yarn. All readings stay in the tree, the likeliest first.
 */
import { ambiguityOf, type Condition, type Neighbour, type Reading } from './lexicon/ambiguous.ts';
import { entryNamed } from './lexicon/index.ts';
import { fill } from './lexicon/use.ts';
import type { Count, Side, Step, Work } from './tree.ts';
import type { Vocabulary } from './vocabulary.ts';

interface Place {
  readonly before: Neighbour;
  readonly after: Neighbour;
  readonly side: Side | null;
  readonly vocabulary: Vocabulary;
}

/** Settles the readings in the steps of a row. */
export function settled(steps: readonly Step[], side: Side | null, vocabulary: Vocabulary): Step[] {
  return within(steps, { before: 'start', after: 'end', side, vocabulary });
}

function within(steps: readonly Step[], place: Place): Step[] {
  return steps.map((step, index) => {
    const before = faceBefore(steps, index, place);
    const after = faceAfter(steps, index + 1, place);
    switch (step.type) {
      case 'work':
        if (step.stitch === 'work from cn' && step.n === null) return { ...step, n: onCable(steps.slice(0, index)) };
        return step.spelling === undefined ? step : settledWork(step, steps.slice(index + 1), { ...place, before, after });
      case 'pullOver':
        return waiting(steps.slice(0, index)) === 2 && step.count === 1 ? { ...step, count: 2, readings: [2, 1] } : step;
      case 'repeat': {
        // Behind the last stitch of a repeat stands its first one again.
        const again = faceAfter(step.children, 0, { ...place, after });
        const ending =
          step.ending === null ? null : { ...step.ending, children: within(step.ending.children, { ...place, before, after }) };
        return {
          ...step,
          children: within(step.children, { ...place, before, after: step.form === 'run' ? after : again }),
          once: within(step.once, { ...place, before, after }),
          ending,
        };
      }
      case 'intoOne':
      case 'needlePart':
        return { ...step, children: within(step.children, { ...place, before, after }) };
      default:
        return step;
    }
  });
}

/** "k sts from cable needle": as many as were put there last. */
function onCable(before: readonly Step[]): Count | null {
  const put = before.findLast((step) => step.type === 'work' && step.stitch === 'sl to cn');
  return put?.type === 'work' ? put.n : null;
}

/** How the stitch of a step looks to its neighbours; null where it is none. */
function faceOf(step: Step, rest: readonly Step[], vocabulary: Vocabulary): Neighbour | null {
  if (step.type === 'intoOne') return faceAfter(step.children, 0, { before: 'start', after: 'k', side: null, vocabulary });
  if (step.type === 'repeat') return faceAfter(step.children, 0, { before: 'start', after: 'k', side: null, vocabulary });
  if (step.type === 'turn') return 'turn';
  if (step.type === 'bindOff' || step.type === 'evenly') return 'k';
  if (step.type !== 'work') return null;
  const entry = vocabulary.stitches.get(step.stitch) ?? entryNamed(step.stitch);
  if (entry === undefined) return 'k';
  if (entry.kind === 'yarnOver' || (entry.takes === 0 && entry.makes === 0)) return null;
  // A slip that is passed over afterwards belongs to a decrease.
  if (entry.kind === 'slip') return rest.slice(0, 3).some((each) => each.type === 'pullOver') ? 'k' : 'slip';
  return entry.face ?? 'k';
}

function faceBefore(steps: readonly Step[], index: number, place: Place): Neighbour {
  for (let at = index - 1; at >= 0; at -= 1) {
    const step = steps[at] as Step;
    const last =
      step.type === 'repeat' || step.type === 'intoOne'
        ? faceBefore(step.children, step.children.length, { ...place, before: 'k' })
        : faceOf(step, steps.slice(at + 1), place.vocabulary);
    if (last !== null) return last;
  }
  return place.before;
}

function faceAfter(steps: readonly Step[], index: number, place: Place): Neighbour {
  for (let at = index; at < steps.length; at += 1) {
    const next = faceOf(steps[at] as Step, steps.slice(at + 1, at + 5), place.vocabulary);
    if (next !== null) return next;
  }
  return place.after;
}

/** Stitches slipped since the last one passed over. */
function waiting(before: readonly Step[]): number {
  let count = 0;
  for (let at = before.length - 1; at >= 0 && at > before.length - 6; at -= 1) {
    const step = before[at] as Step;
    if (step.type === 'pullOver') break;
    if (step.type !== 'work') continue;
    const entry = entryNamed(step.stitch);
    if (entry?.kind === 'slip')
      count += (step.n?.values[0] ?? (typeof entry.takes === 'number' ? entry.takes : 1)) * (step.times?.values[0] ?? 1);
  }
  return count;
}

/** Whether a condition holds; null where only the replay can know. */
function holds(condition: Condition, rest: readonly Step[], place: Place): boolean | null {
  switch (condition.kind) {
    case 'previous':
      return condition.is.includes(place.before);
    case 'next':
      return condition.is.includes(place.after);
    case 'undoneBy':
      return rest
        .slice(0, 2)
        .some((step) => step.type === 'work' && (step.stitch === condition.entry || step.manner.includes(condition.entry)));
    case 'side':
      return place.side === null ? null : place.side === condition.side;
    case 'slipsWaiting':
    case 'nextRowDrops':
      return null;
  }
}

function settledWork(step: Work, rest: readonly Step[], place: Place): Work {
  const ambiguity = ambiguityOf(step.spelling ?? '');
  if (ambiguity === undefined) return step;
  const sure: Reading[] = [];
  const open: Reading[] = [];
  const unsure: Reading[] = [];
  for (const reading of ambiguity.readings) {
    const verdicts = (reading.when ?? []).map((condition) => holds(condition, rest, place));
    if (verdicts.includes(false)) continue;
    if (reading.when === undefined) open.push(reading);
    else if (verdicts.includes(null)) unsure.push(reading);
    else sure.push(reading);
  }
  const readings = [...sure, ...open, ...unsure].map((reading) => written(reading, step));
  const different = readings.filter((reading, index) => readings.findIndex((each) => same(each, reading)) === index);
  const first = different[0];
  if (first === undefined) return step;
  const { m: _m, times: own, ...kept } = step;
  const times = first.times ?? own;
  return {
    ...kept,
    stitch: first.stitch,
    n: first.n,
    ...(first.m === undefined ? {} : { m: first.m }),
    ...(times === undefined ? {} : { times }),
    readings: different,
  };
}

type Written = NonNullable<Work['readings']>[number];

/** A reading with the numbers of the draft filled in. */
function written(reading: Reading, step: Work): Written {
  const values = step.n?.values ?? [1];
  const span = step.n?.span ?? step.span;
  const count = (formula: number | string): Count => ({
    type: 'count',
    values: typeof formula === 'number' ? [formula] : values.map((value) => (value === null ? null : fill(formula, value, step.m ?? 1))),
    span,
  });
  return {
    stitch: reading.name,
    n: reading.n === undefined ? null : count(reading.n),
    ...(reading.m === undefined ? {} : { m: typeof reading.m === 'number' ? reading.m : fill(reading.m, values[0] ?? 1, 1) }),
    ...(reading.times === undefined ? {} : { times: count(reading.times) }),
    ...(reading.netOnly ? { netOnly: true } : {}),
  };
}

function same(a: Written, b: Written): boolean {
  return (
    a.stitch === b.stitch &&
    a.m === b.m &&
    String(a.n?.values) === String(b.n?.values) &&
    String(a.times?.values) === String(b.times?.values)
  );
}
