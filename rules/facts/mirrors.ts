/** Places of a row that mirror each other: its two edges, and the stitches on both sides of a marker. */
import type { Row, Step, Work } from '../../grammar/tree.ts';
import type { Pattern } from '../../src/pattern/pattern.ts';
import { entryOf, stepsUse } from '../use.ts';

export interface Mirror {
  readonly row: Row;
  readonly section: number;
  readonly at: 'edges' | 'marker';
  /** Steps outward from the middle on either side; those of one place of the mirror stand at the same index. */
  readonly first: readonly Work[];
  readonly second: readonly Work[];
  /** Stitches are made or taken away in it. */
  readonly shaped: boolean;
}

const silent = new Set<Step['type']>(['remark', 'stated', 'resolve', 'change']);

/** A stitch by what it is for a mirror; null where it belongs in none. */
function kindOf(pattern: Pattern, step: Step): string | null {
  if (step.type !== 'work' || step.times !== undefined || (step.readings?.length ?? 0) > 1) return null;
  const entry = entryOf(pattern, step);
  if (entry === undefined) return null;
  if (entry.kind === 'plain')
    return step.n !== null && step.n.values.length > 1 ? null : `plain ${entry.face ?? ''} ${step.manner.join(' ')}`;
  return ['decrease', 'doubleDecrease', 'increase', 'yarnOver'].includes(entry.kind) ? entry.kind : null;
}

const isRun = (step: Step): boolean => step.type === 'repeat' && step.form === 'run' && step.ending === null;

/** The mirror that two lists of steps make, both told outward from its middle; null where they make none. */
function mirror(
  pattern: Pattern,
  row: Row,
  section: number,
  at: Mirror['at'],
  first: readonly Step[],
  second: readonly Step[],
): Mirror | null {
  if (first.length === 0 || first.length !== second.length) return null;
  let shaped = false;
  for (let place = 0; place < first.length; place += 1) {
    const [one, two] = [first[place] as Step, second[place] as Step];
    const [kind, other] = [kindOf(pattern, one), kindOf(pattern, two)];
    if (kind === null || kind !== other || one.type !== 'work' || two.type !== 'work') return null;
    if (kind.startsWith('plain')) continue;
    shaped = true;
    const [lean, opposite] = [entryOf(pattern, one)?.lean, entryOf(pattern, two)?.lean];
    // Leaning the same way they are another figure, unless one stitch serves for both.
    if (lean !== undefined && lean === opposite && one.stitch !== two.stitch) return null;
  }
  return { row, section, at, first: first as Work[], second: second as Work[], shaped };
}

/** Every mirror in a list of steps and in the repeats it holds. */
export function mirrorsOf(pattern: Pattern, row: Row, section: number, steps: readonly Step[] = row.children): Mirror[] {
  const list = steps.filter((step) => !silent.has(step.type));
  const found: Mirror[] = [];
  list.forEach((step, at) => {
    if (step.type !== 'repeat') return;
    if (!isRun(step)) {
      found.push(...mirrorsOf(pattern, row, section, step.children));
      return;
    }
    const { extent } = step;
    const short =
      extent?.kind === 'last'
        ? extent.count
        : extent?.kind === 'place' && extent.place === 'marker' && extent.side === 'before'
          ? extent.n
          : null;
    if (short === null || short.values.length !== 1) return;
    const stops = (each: Step): boolean => each.type !== 'work';
    const back = list.slice(0, at).findLastIndex(stops);
    const head = list.slice(back + 1, at);
    const opener = back < 0 ? null : (list[back] as Step);
    const ahead = list.findIndex((each, position) => position > at && stops(each));
    const tail = list.slice(at + 1, ahead < 0 ? list.length : ahead);
    const closer = ahead < 0 ? null : (list[ahead] as Step);
    if (stepsUse(pattern, tail)?.takes !== short.values[0]) return;
    // From one edge, or one marker, to the other.
    if ((opener === null || opener.type === 'marker') && (closer === null || closer.type === 'marker')) {
      const edges = mirror(pattern, row, section, 'edges', [...head].reverse(), tail);
      if (edges !== null) found.push(edges);
    }
    if (closer?.type === 'marker' && closer.op === 'slip') {
      const beyond = list.slice(ahead + 1);
      const end = beyond.findIndex(stops);
      const after = end < 0 ? beyond : beyond.slice(0, end);
      const around = mirror(pattern, row, section, 'marker', [...tail].reverse(), after);
      if (around !== null) found.push(around);
    }
  });
  return found;
}
