/** Whether another number of stitches cast on would let a row work that does not: each is tried with the rows in between. */
import type { CastOn, PickUp, Span, Statement, Step } from '../../grammar/tree.ts';
import type { Pattern } from '../pattern/pattern.ts';
import { headOf, workMoment } from './moments.ts';
import { live, type Needles } from './needles.ts';
import type { Moment } from './play.ts';
import type { Observation, Replay } from './replay.ts';

export interface CastOnEdit {
  readonly span: Span;
  readonly text: string;
  /** The number that would do. */
  readonly count: number;
  readonly setter: CastOn | PickUp;
}

/** So far a number is looked for, so many rows between the cast-on and the row, so many rows behind it. */
const farthest = 4;
const rowsBetween = 40;
const rowsBehind = 6;

/**
 * The nearest numbers of stitches to cast on with which the row of an observation works, and every row from the cast-on to
 * some rows behind it. Empty where something between the two changes the count.
 */
export function castOnEdits(pattern: Pattern, replay: Replay, met: Observation, words: (span: Span) => string): readonly CastOnEdit[] {
  const heads = (replay.heads ?? []).filter((head) => head.row === met.node && head.inline && head.needles.sure);
  const [first] = heads;
  if (first === undefined) return [];
  const out = heads.filter((head) => head.entry === first.entry && met.sizes.includes(head.size));
  const at = castOnOf(replay, out);
  const setter = at === null ? null : setterOf(replay.entries[at]?.node);
  if (at === null || setter === null) return [];
  const rows = Array.from({ length: first.entry - at + rowsBehind }, (_, index) => at + 1 + index);
  const works = (by: number): boolean => out.every((head) => allWork(pattern, replay, head, rows, live(head.needles) + by));
  if (works(0)) return [];
  for (let by = 1; by <= farthest; by += 1) {
    const fitting = [by, -by].filter(works);
    const edits = fitting.flatMap((each) => printed(setter, met.sizes, each, words));
    if (edits.length > 0) return edits;
  }
  return [];
}

/** "CO 40", "pick up and k 40": the one number that sets the count, alone or as the only pick-up of its row. */
function setterOf(node: Statement | undefined): CastOn | PickUp | null {
  if (node?.type === 'castOn' || node?.type === 'pickUp') return node;
  const [first, ...more] = node?.type === 'row' ? node.children.filter((step) => step.type === 'pickUp' || step.type === 'work') : [];
  return first?.type === 'pickUp' && more.length === 0 ? first : null;
}

/** The entry of the cast-on whose stitches are still all there, and no more; null where the count has changed since. */
function castOnOf(replay: Replay, out: readonly Moment[]): number | null {
  const [first] = out;
  if (first === undefined) return null;
  for (let index = first.entry - 1; index >= Math.max(0, first.entry - rowsBetween); index -= 1) {
    const entry = replay.entries[index];
    if (entry === undefined || !out.every((head) => entry.after[head.size] === live(head.needles))) return null;
    if (setterOf(entry.node) !== null) return out.every((head) => entry.before[head.size] === 0) ? index : null;
    if (!out.every((head) => entry.before[head.size] === entry.after[head.size])) return null;
  }
  return null;
}

/** Works the rows one behind the other, each from the needles the last one left. */
function allWork(pattern: Pattern, replay: Replay, head: Moment, rows: readonly number[], from: number): boolean {
  let needles: Needles | null = null;
  for (const index of rows) {
    const entry = replay.entries[index];
    const own: readonly Step[] | undefined = replay.steps?.get(index);
    if (entry === undefined || (own === undefined && index > head.entry)) return true;
    // Rows told without their steps leave the count as it is; the row itself has its own.
    if (own === undefined && index < head.entry) continue;
    const end = workMoment({ pattern }, { ...head, needles: needles ?? headOf(head, from) }, { steps: own ?? head.steps });
    if (end.trouble !== null) return end.trouble.kind === 'unread' && index > head.entry;
    if (end.left > 0) return false;
    needles = end.needles;
    if (entry.node.type !== 'row') continue;
    for (const stated of entry.node.stated) {
      const value = stated.count.values.length === 1 ? stated.count.values[0] : stated.count.values[head.size];
      if (stated.what === 'total' && stated.scope === null && value !== null && value !== undefined && value !== live(needles))
        return false;
    }
  }
  return true;
}

/** The number in the author's own list: of the one size that is out, or the one number of all. */
function printed(setter: CastOn | PickUp, sizes: readonly number[], by: number, words: (span: Span) => string): readonly CastOnEdit[] {
  const { count } = setter;
  if (count === null) return [];
  const text = words(count.span);
  const numbers = [...text.matchAll(/\d+/g)];
  const { values } = count;
  const told = values.filter((value) => value !== null);
  if (numbers.length !== told.length || numbers.some((each, index) => Number(each[0]) !== told[index])) return [];
  const one = values.length === 1 ? 0 : sizes.length === 1 ? (sizes[0] as number) : null;
  if (one === null) return [];
  const place = numbers[values.slice(0, one).filter((value) => value !== null).length];
  const value = values[one];
  if (place === undefined || value === null || value === undefined) return [];
  const start = count.span.start + place.index;
  return [{ span: { start, end: start + place[0].length }, text: String(value + by), count: value + by, setter }];
}
