/** Shaping on a schedule: commands of shaping, steps at an edge, two shapings on one stream of rows. */
import { sizeValue } from '../../grammar/count.ts';
import type { AtSameTime, EdgeRows, Segment, Shape, Statement } from '../../grammar/tree.ts';
import { remember } from './memory.ts';
import { beginRow, endRow, live, turn, workPlain } from './needles.ts';
import { passRows } from './plain-rows.ts';
import { handOf, met, type Play, shown, write } from './play.ts';
import { type Events, eventsOf, type Missed } from './schedule.ts';
import { edgesOf, missed, statedFor, stepOf } from './shaping-steps.ts';
import { facingOf, nextSide } from './sides.ts';
import { checkStated } from './stated.ts';
import { playStatement } from './statements.ts';
import { checkEnding, words } from './stretch-ends.ts';
import { chooseWay } from './two-ways.ts';

/** "Dec 1 st at each end of next and every foll 4th row until 48 sts rem". */
export function playShape(play: Play, node: Shape, sizes: readonly number[]): void {
  const active = sizes.filter((size) => !handOf(play, size).fresh);
  if (active.length === 0) return;
  const counts = play.hands.map((hand) => live(hand.needles));
  const before = play.hands.map(shown);
  const first = active[0] as number;
  const facing = nextSide(handOf(play, first).needles);
  const events = new Map<number, number>();
  const rows: number[] = [];
  const inAll = firstCounted(play, node, active);
  for (const size of active) {
    const hand = handOf(play, size);
    const step = stepOf(play, node, size);
    const have = live(hand.needles);
    const stated = statedFor(node.stated, size);
    let found = eventsOf(node.schedule, size, { live: have, step, window: null, stated, facing: facingOf(hand) }, inAll);
    if (!('target' in found) && stated !== null && have + found.count * step !== stated && hand.needles.sure) {
      const other = eventsOf(node.schedule, size, { live: have, step, window: null, stated, facing: facingOf(hand) }, false);
      if (!('target' in other) && have + other.count * step === stated) found = other;
    }
    if ('target' in found) {
      passRows(hand.needles, 1);
      missed(play, found, node, size, node);
      events.set(size, 1);
      continue;
    }
    apply(play, node, size, step, found, events);
    rows[size] = found.rows;
    if (!found.settled && !countedBehind(play, node)) hand.needles.sure = false;
  }
  writeEvents(play, node, active, before, counts, events, facing);
  for (const size of active) checkEnding(play, node.ending, size, node, false);
  for (const stated of node.stated) checkStated(play, stated, active, { before: counts, node, label: null, rows });
}

/** "Inc 1 st at each end. Repeat the increase every 6th row a total of 16 times": the words behind count this one in. */
function countedBehind(play: Play, node: Shape): boolean {
  if (node.schedule.length > 0 || play.flow[play.at]?.statement !== node) return false;
  const next = play.flow[play.at + 1]?.statement;
  return (
    next?.type === 'repeatRows' &&
    (next.rows.kind === 'these' || next.rows.kind === 'shaping') &&
    next.schedule.length > 0 &&
    next.times?.sense === 'all'
  );
}

/** "Dec on next and every 4th row 5 times": whether the first is one of the five, as custom has it, or the five come after it. */
function firstCounted(play: Play, node: Shape, sizes: readonly number[]): boolean {
  const open = node.schedule.some(
    (segment, at) =>
      at > 0 && segment.kind === 'every' && segment.n !== null && segment.more === 'plain' && node.schedule[at - 1]?.kind !== 'every',
  );
  if (!open || node.stated.length > 0) return true;
  const way = chooseWay(play, sizes, {
    play: (which) => {
      for (const size of sizes) {
        const hand = handOf(play, size);
        const step = stepOf(play, node, size);
        const found = eventsOf(node.schedule, size, { live: live(hand.needles), step, window: null, stated: null }, which === 0);
        if (!('target' in found)) apply(play, node, size, step, found, new Map());
      }
    },
    words: ['the first row is counted in', 'they come on top of the first row'],
    node,
    span: node.span,
    stated: false,
    ask: true,
    known: null,
  });
  return way === 0;
}

function apply(play: Play, node: Statement, size: number, step: number, found: Events, events: Map<number, number>): void {
  const hand = handOf(play, size);
  if (found.rows > 0) passRows(hand.needles, found.rows);
  else if (found.count > 0) passRows(hand.needles, 1);
  hand.needles.right.n = Math.max(0, hand.needles.right.n + step * found.count);
  hand.rows += found.rows;
  hand.sectionRows += found.rows;
  events.set(size, found.count);
  remember(hand.history, {
    row: null,
    times: Math.max(1, found.rows),
    section: play.section,
    textSpan: node.span,
    label: words(play, node),
    change: found.count === found.rows ? step : 0,
    step,
  });
}

/** One line of the sheet for each shaping row, sizes with fewer of them beginning later; long runs in one line. */
function writeEvents(
  play: Play,
  node: Statement,
  sizes: readonly number[],
  before: readonly (number | null)[],
  counts: readonly number[],
  events: ReadonlyMap<number, number>,
  side: ReturnType<typeof nextSide>,
): void {
  const most = Math.max(0, ...events.values());
  const label = words(play, node);
  const line = { label, span: node.span, textSpan: node.span, node, side, unit: 'row' as const };
  if (play.trying || most <= 1 || most > 60 || sizes.some((size) => shown(handOf(play, size)) === null)) {
    write(play, { ...line, times: Math.max(1, most) }, sizes, before);
    return;
  }
  for (let event = 0; event < most; event += 1) {
    const active = sizes.filter((size) => (events.get(size) ?? 0) >= most - event);
    write(play, line, active, []);
    const entry = play.book.entries.at(-1);
    if (entry === undefined) continue;
    for (const size of active) {
      const total = events.get(size) ?? 1;
      const done = event - (most - total);
      const step = ((shown(handOf(play, size)) ?? 0) - (counts[size] ?? 0)) / total;
      entry.before[size] = (counts[size] ?? 0) + step * done;
      entry.after[size] = (counts[size] ?? 0) + step * (done + 1);
    }
  }
}

/** "Cast off 4 sts at beg of next 2 rows, then 3 sts at beg of foll 4 rows". */
export function playEdgeRows(play: Play, node: EdgeRows, sizes: readonly number[]): void {
  const active = sizes.filter((size) => !handOf(play, size).fresh);
  if (active.length === 0) return;
  const before = play.hands.map(shown);
  const counts = play.hands.map((hand) => live(hand.needles));
  const facing = nextSide(handOf(play, active[0] as number).needles);
  const most: number[] = [];
  for (const size of active) {
    const hand = handOf(play, size);
    let rows = 0;
    for (const part of node.parts) {
      const n = sizeValue(part.count.values, size);
      if (n === null) continue;
      const events = eventsOf(
        part.rows.length > 0 ? part.rows : [next(part.span, node.each === true)],
        size,
        {
          live: live(hand.needles),
          step: node.change === 'castOn' ? n : node.change === 'leave' ? 0 : -n,
          window: null,
          stated: null,
          facing: facingOf(hand),
        },
        true,
      );
      if ('target' in events) continue;
      if (node.change === 'leave') {
        rows += events.rows;
        leaveRows(play, node, size, n, events, part.count.span);
        continue;
      }
      const change = events.count * n * (node.each === true ? edgesOf(hand) : 1);
      const have = live(hand.needles);
      if (node.change === 'bindOff' && change > have) {
        met(
          play,
          { kind: 'tooFew', span: part.count.span, numbers: { left: have, wanted: change, before: have }, words: { place: 'edge' } },
          size,
          node,
          null,
        );
        hand.needles.sure = false;
        continue;
      }
      passRows(hand.needles, Math.max(1, events.rows));
      hand.needles.right.n += node.change === 'castOn' ? change : -change;
      hand.needles.right.marks = hand.needles.right.marks.filter((mark) => mark.at <= hand.needles.right.n);
      rows += events.rows;
      for (let event = 0; event < Math.min(events.count, 60); event += 1)
        remember(hand.history, {
          row: null,
          times: 1,
          section: play.section,
          textSpan: node.span,
          label: words(play, node),
          change: node.change === 'castOn' ? n : -n,
        });
    }
    hand.rows += rows;
    hand.sectionRows += rows;
    most[size] = rows;
  }
  write(
    play,
    {
      label: words(play, node),
      span: node.span,
      textSpan: node.span,
      node,
      side: facing,
      unit: 'row',
      times: Math.max(1, ...active.map((size) => most[size] ?? 1)),
    },
    active,
    before,
  );
  for (const stated of node.stated) checkStated(play, stated, active, { before: counts, node, label: null, rows: most });
}

/** Short rows told by rule: each stops so many stitches before the last turn at its end, or before the edge. */
function leaveRows(play: Play, node: EdgeRows, size: number, n: number, events: Events, span: { start: number; end: number }): void {
  const hand = handOf(play, size);
  const { needles } = hand;
  for (let row = 0; row < Math.min(events.count, 200); row += 1) {
    // Rows between the turning rows are worked to their end.
    if (row > 0 && events.rows > events.count) passRows(needles, 1);
    beginRow(needles);
    const last = needles.left.marks.findLast((mark) => mark.kind === 'gap' && mark.at < needles.left.n)?.at ?? 0;
    if (needles.left.n < last + n || needles.left.n === last + n) {
      met(play, { kind: 'tooFew', span, numbers: { left: needles.left.n, wanted: last + n }, words: { place: 'turn' } }, size, node, null);
      needles.sure = false;
      return;
    }
    workPlain(needles, needles.left.n - last - n);
    turn(needles, 'plain');
    endRow(needles);
    remember(hand.history, { row: null, times: 1, section: play.section, textSpan: node.span, label: words(play, node), change: 0 });
  }
}

/** The next row; of both edges the second comes a row later. */
function next(span: { start: number; end: number }, both: boolean): Segment {
  return { type: 'segment', kind: both ? 'nth' : 'next', n: null, k: both ? [2] : null, more: 'plain', until: null, span };
}

/** Two shapings on one stream of rows, each with its own schedule; the sum is what is left. */
export function playTogether(play: Play, shape: Shape, other: AtSameTime, sizes: readonly number[]): void {
  const second = other.children.find((child) => child.type === 'shape');
  if (second?.type !== 'shape' || other.when !== null) {
    playShape(play, shape, sizes);
    for (const child of other.children) if (child.type !== 'remark') playStatement(play, child, sizes);
    return;
  }
  const before = play.hands.map(shown);
  const counts = play.hands.map((hand) => live(hand.needles));
  for (const size of sizes) {
    const hand = handOf(play, size);
    const stepOne = stepOf(play, shape, size);
    const stepTwo = stepOf(play, second, size);
    const one = eventsOf(
      shape.schedule,
      size,
      { live: live(hand.needles), step: stepOne, window: null, stated: null, facing: facingOf(hand) },
      true,
    );
    const changed = 'target' in one ? 0 : one.count * stepOne;
    // A count to run to speaks of both tracks together.
    const room = {
      live: live(hand.needles) + changed,
      step: stepTwo,
      window: null,
      stated: statedFor([...second.stated, ...shape.stated], size),
    };
    let two = eventsOf(second.schedule, size, room, true);
    // "at the same time dec 1 st at front edge on every 4th row": with no end of its own it goes on as long as the other.
    if (!('target' in one) && one.settled && one.rows > 0 && !('target' in two) && !two.settled)
      two = eventsOf(second.schedule, size, { ...room, window: one.rows }, true);
    if ('target' in one || 'target' in two) {
      missed(play, 'target' in one ? one : (two as Missed), 'target' in one ? shape : second, size, other);
      continue;
    }
    const rows = Math.max(one.rows, two.rows);
    passRows(hand.needles, Math.max(1, rows));
    hand.needles.right.n = Math.max(0, hand.needles.right.n + changed + two.count * stepTwo);
    hand.rows += rows;
    hand.sectionRows += rows;
    if (!one.settled || !two.settled) hand.needles.sure = false;
    remember(hand.history, {
      row: null,
      times: Math.max(1, rows),
      section: play.section,
      textSpan: shape.span,
      label: words(play, shape),
      change: stepTwo,
    });
  }
  write(
    play,
    {
      label: words(play, shape),
      span: { start: shape.span.start, end: other.span.end },
      textSpan: shape.span,
      node: shape,
      side: null,
      unit: 'row',
    },
    sizes,
    before,
  );
  for (const stated of [...shape.stated, ...second.stated]) checkStated(play, stated, sizes, { before: counts, node: shape, label: null });
}
