/**
 * A named row worked on a schedule: "rep Dec Row every 8th row 5 more times". The rows between are plain; how many
 * they are decides the side on which the named row falls and how long the piece grows.
 */
import { sizeValue } from '../../grammar/count.ts';
import type { RepeatRows, Segment } from '../../grammar/tree.ts';
import { live } from './needles.ts';
import { passRows } from './plain-rows.ts';
import { type Hand, handOf, met, type Play } from './play.ts';

/** Rows from one working of the named row to the next, one number for each working. */
export type Intervals = readonly number[];

/** Most workings that are played one by one. */
const mostEvents = 2_000;

function intervalOf(segment: Segment, size: number, event: number, round: boolean): number {
  const own = segment.k === null || segment.k === undefined ? null : sizeValue(segment.k, size);
  const second = segment.k2 ? sizeValue(segment.k2, size) : null;
  if (segment.kind === 'next' || segment.kind === 'follEach' || segment.kind === 'this') return 1;
  if (event % 2 === 1 && second !== null) return second;
  return own ?? (segment.rowSide && !round ? 2 : 1);
}

/** Rows worked since the named row was, looking back no further than the piece; null when it has not been worked. */
function since(hand: Hand, isNamed: (row: Hand['history'][number]) => boolean): number | null {
  let rows = 0;
  for (let at = hand.history.length - 1; at >= 0; at -= 1) {
    const worked = hand.history[at] as Hand['history'][number];
    if (isNamed(worked)) return rows;
    rows += worked.times;
  }
  return null;
}

/**
 * How often the schedule has the row worked in one size, and after how many rows each time.
 * @param change what one working adds to the count, for schedules that run to a count
 * @param variant 1: workings on top of the one that stood just before
 */
export function intervalsOf(
  play: Play,
  node: RepeatRows,
  size: number,
  change: number,
  isNamed: (row: Hand['history'][number]) => boolean,
  variant: number,
): Intervals {
  const hand = handOf(play, size);
  const round = hand.needles.mode === 'round';
  const before = since(hand, isNamed);
  const out: number[] = [];
  node.schedule.forEach((segment, index) => {
    const n = segment.n === null ? null : sizeValue(segment.n.values, size);
    if (segment.n !== null && n === null) return;
    let events = n ?? 1;
    const earlier = node.schedule[index - 1];
    if (
      n !== null &&
      index > 0 &&
      segment.kind === 'every' &&
      segment.more !== 'more' &&
      (earlier?.kind === 'next' || earlier?.kind === 'nth' || earlier?.kind === 'this')
    )
      events = n - 1;
    // Where it stood just before, the one that stood is the first of the four.
    const inAll = segment.kind === 'every' && segment.more === 'all' && node.verb === 'work';
    if (n !== null && index === 0 && before === 0 && (inAll || (variant === 0 && worksOnSchedule(node)))) events = n - 1;
    if (n === null && segment.until !== null) {
      const target = sizeValue(segment.until.values, size);
      if (target === null) return;
      const need = target - live(hand.needles) - change * out.length;
      if (change === 0 || need % change !== 0 || need / change < 0) {
        met(
          play,
          {
            kind: 'targetMissed',
            span: segment.until.span,
            numbers: { target, live: live(hand.needles) + change * out.length, step: change },
            words: {},
          },
          size,
          node,
          null,
        );
        return;
      }
      events = need / change;
    } else if (n === null && segment.kind === 'every' && node.times !== null) events = sizeValue(node.times.count.values, size) ?? 0;
    if (events > mostEvents) {
      met(play, { kind: 'tooLong', span: segment.span, numbers: {}, words: {} }, size, node, null);
      hand.needles.sure = false;
    }
    for (let event = 0; event < Math.min(events, mostEvents); event += 1) out.push(intervalOf(segment, size, event, round));
  });
  const [first] = out;
  // Rows worked since the named row stood belong to the first interval.
  if (first !== undefined && before !== null && node.schedule[0]?.kind === 'every') out[0] = Math.max(1, first - before);
  return out;
}

/** "Work Dec Row every RS row 4 times": four in all, or four further where the row has just been worked. */
export function worksOnSchedule(node: RepeatRows): boolean {
  const [first] = node.schedule;
  return node.verb === 'work' && first?.kind === 'every' && first.n !== null && first.more === 'plain';
}

/** Works the schedule: sizes with fewer workings begin later, so that all end together. */
export function playIntervals(play: Play, intervals: ReadonlyMap<number, Intervals>, named: (sizes: readonly number[]) => void): void {
  const most = Math.max(0, ...[...intervals.values()].map((each) => each.length));
  for (let event = 0; event < most; event += 1) {
    const sizes: number[] = [];
    for (const [size, list] of intervals) {
      const own = event - (most - list.length);
      if (own < 0) continue;
      const hand = handOf(play, size);
      const plain = (list[own] as number) - 1;
      if (plain > 0) {
        passRows(hand.needles, plain);
        hand.rows += plain;
        hand.sectionRows += plain;
      }
      sizes.push(size);
    }
    if (sizes.length > 0) named(sizes);
  }
}
