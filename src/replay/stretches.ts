/** Stretches of rows told in one sentence: plain rows, rows to a length, shaping on a schedule, steps at an edge. */
import { sizeValue } from '../../grammar/count.ts';
import type { AtSameTime, EdgeRows, EndSide, Evenly, Plain, Segment, Shape, Stated, Statement, Until } from '../../grammar/tree.ts';
import { live, setLive, stopShort } from './needles.ts';
import { passRows } from './plain-rows.ts';
import { type Hand, handOf, met, type Play, shown, write } from './play.ts';
import { nextSide, remember, roundFromStart, settle } from './rows.ts';
import { type Events, eventsOf, type Missed } from './schedule.ts';
import { playAndSoOn } from './series.ts';
import { openTurns } from './short-rows.ts';
import { checkStated } from './stated.ts';
import { playStatement } from './statements.ts';

function clip(text: string): string {
  const words = text.replace(/\s+/g, ' ').trim();
  return words.length > 48 ? `${words.slice(0, 46).replace(/\s\S*$/, '')} …` : words;
}

function words(play: Play, node: Statement): string {
  return clip(play.text(node.span));
}

/** After a stretch the draft may say on which side it ends. */
function checkEnding(play: Play, ending: EndSide | null, size: number, node: Statement, known: boolean): void {
  if (ending === null) return;
  const { needles } = handOf(play, size);
  if (needles.mode === 'round') {
    const short = ending.before ? sizeValue(ending.before.values, size) : null;
    if (short !== null && short < live(needles)) stopShort(needles, short);
    return;
  }
  if (ending.last === null) return;
  const last = nextSide(needles) === 'RS' ? 'WS' : nextSide(needles) === 'WS' ? 'RS' : null;
  if (known && last !== null && last !== ending.last)
    met(play, { kind: 'endingSide', span: ending.span, numbers: {}, words: { stated: ending.last, replayed: last } }, size, node, null);
  settle(needles, ending.last === 'RS' ? 'WS' : 'RS');
}

function beginSide(play: Play, begin: Plain['begin'], size: number): void {
  const hand = handOf(play, size);
  const { needles } = hand;
  if (begin === null || needles.mode === 'round') return;
  const side = begin === 'RS' || begin === 'k' ? 'RS' : 'WS';
  if (nextSide(needles) === null) settle(needles, side);
}

export function playPlain(play: Play, node: Plain, sizes: readonly number[]): void {
  const active = sizes.filter((size) => !handOf(play, size).fresh);
  if (active.length === 0) return;
  const before = play.hands.map(shown);
  const counts = play.hands.map((hand) => live(hand.needles));
  const first = active[0] as number;
  if (node.unit === 'round') for (const size of active) roundFromStart(handOf(play, size));
  for (const size of active) beginSide(play, node.begin, size);
  const facing = nextSide(handOf(play, first).needles);
  const rows: number[] = [];
  let most = 0;
  const working: number[] = [];
  for (const size of active) {
    const n = sizeValue(node.count.values, size);
    if (n === null) continue;
    working.push(size);
    rows[size] = n;
    most = Math.max(most, n);
    const hand = handOf(play, size);
    if (n > 0) passRows(hand.needles, n);
    hand.rows += n;
    hand.sectionRows += n;
    for (const inside of node.inside) insideStretch(play, inside, size, n, node);
    remember(hand.history, {
      row: null,
      times: Math.max(n, 0),
      section: play.section,
      textSpan: node.span,
      label: words(play, node),
      change: 0,
    });
    checkEnding(play, node.ending, size, node, true);
  }
  if (working.length === 0) return;
  write(
    play,
    { label: words(play, node), span: node.span, textSpan: node.span, node, side: facing, unit: node.unit, times: Math.max(1, most) },
    working,
    before,
  );
  for (const stated of node.stated) checkStated(play, stated, working, { before: counts, node, label: null, rows });
}

/** Increases and decreases inside a stretch of rows: spread over one row, or on a schedule within the window. */
function insideStretch(play: Play, inside: Statement, size: number, window: number, node: Statement): void {
  const hand = handOf(play, size);
  if (inside.type === 'evenly') {
    applyEvenly(play, inside, size, node);
    return;
  }
  if (inside.type === 'shape') {
    const step = stepOf(play, inside, size);
    const events = eventsOf(inside.schedule, size, { live: live(hand.needles), step, window, stated: null }, true);
    if ('target' in events) missed(play, events, inside, size, node);
    else hand.needles.right.n += events.count * step;
  }
}

function applyEvenly(play: Play, step: Evenly, size: number, node: Statement): void {
  const hand = handOf(play, size);
  const n = sizeValue(step.count.values, size);
  if (n === null) return;
  const have = live(hand.needles);
  const change = step.change === 'to' ? n - have : step.change === 'inc' ? n : -n;
  if (change < 0 && -change > have / 2)
    met(
      play,
      { kind: 'tooFew', span: step.count.span, numbers: { left: have, wanted: -change * 2 }, words: { place: 'evenly' } },
      size,
      node,
      null,
    );
  hand.needles.right.n += change;
}

/** Edges that "each neck edge" means: two, or one while the other side waits on its holder. */
const edgesOf = (hand: Hand): number => (hand.held.some((set) => set.rest && !set.used && set.n > 0) ? 1 : 2);

/** What one shaping row changes. */
function stepOf(play: Play, shape: Shape, size: number): number {
  const n = sizeValue(shape.count.values, size) ?? 0;
  const { needles } = handOf(play, size);
  const markers = [...needles.left.marks, ...needles.right.marks].filter((mark) => mark.kind === 'marker').length;
  const places =
    shape.place === 'bothEnds'
      ? 2
      : shape.place === 'eachEdge'
        ? edgesOf(handOf(play, size))
        : shape.place === 'eachSideOfMarkers'
          ? 2 * Math.max(1, markers)
          : 1;
  return (shape.change === 'dec' ? -1 : 1) * n * places;
}

function missed(play: Play, miss: Missed, shape: Shape, size: number, node: Statement): void {
  const span = shape.schedule.find((segment) => segment.until !== null)?.until?.span ?? shape.span;
  met(
    play,
    {
      kind: miss.passed ? 'targetPassed' : 'targetMissed',
      span,
      numbers: { target: miss.target, live: miss.live, step: miss.step },
      words: {},
    },
    size,
    node,
    null,
  );
  const { needles } = handOf(play, size);
  needles.right.n = Math.max(0, needles.right.n + miss.target - miss.live);
  needles.sure = false;
}

function statedFor(stated: readonly Stated[], size: number): number | null {
  const total = stated.find((each) => each.what === 'total' && each.scope === null);
  return total === undefined ? null : sizeValue(total.count.values, size);
}

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
  for (const size of active) {
    const hand = handOf(play, size);
    const step = stepOf(play, node, size);
    const have = live(hand.needles);
    const stated = statedFor(node.stated, size);
    let found = eventsOf(node.schedule, size, { live: have, step, window: null, stated }, true);
    if (!('target' in found) && stated !== null && have + found.count * step !== stated && hand.needles.sure) {
      const other = eventsOf(node.schedule, size, { live: have, step, window: null, stated }, false);
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
    if (!found.settled) hand.needles.sure = false;
  }
  writeEvents(play, node, active, before, counts, events, facing);
  for (const size of active) checkEnding(play, node.ending, size, node, false);
  for (const stated of node.stated) checkStated(play, stated, active, { before: counts, node, label: null, rows });
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
        part.rows.length > 0 ? part.rows : [next(part.span)],
        size,
        { live: live(hand.needles), step: node.change === 'castOn' ? n : -n, window: null, stated: null },
        true,
      );
      if ('target' in events) continue;
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

function next(span: { start: number; end: number }): Segment {
  return { type: 'segment', kind: 'next', n: null, k: null, more: 'plain', until: null, span };
}

/** "Cont straight until armhole measures 19 (20: 21) cm, ending with a WS row". */
export function playUntil(play: Play, node: Until, sizes: readonly number[]): void {
  const active = sizes.filter((size) => !handOf(play, size).fresh);
  if (active.length === 0) return;
  if (node.goal.kind === 'loose' && node.goal.text === '') {
    for (const size of active) beginSide(play, node.begin, size);
    return;
  }
  if (node.goal.kind === 'count' && active.every((size) => openTurns(handOf(play, size).needles).size > 0)) {
    // "Cont in this way until 6 sts rem" among short rows: their series goes on.
    playAndSoOn(
      play,
      {
        type: 'andSoOn',
        step: null,
        sense: null,
        schedule: [],
        times: null,
        until: node.goal,
        ending: node.ending,
        stated: [],
        span: node.span,
      },
      active,
    );
    for (const stated of node.stated) checkStated(play, stated, active, { before: [], node, label: null });
    return;
  }
  const before = play.hands.map(shown);
  const counts = play.hands.map((hand) => live(hand.needles));
  const facing = nextSide(handOf(play, active[0] as number).needles);
  for (const size of active) {
    const hand = handOf(play, size);
    beginSide(play, node.begin, size);
    const { needles } = hand;
    passRows(needles, 1);
    remember(hand.history, { row: null, times: 1, section: play.section, textSpan: node.span, label: words(play, node), change: 0 });
    for (const inside of node.inside) insideStretch(play, inside, size, 0, node);
    if (node.goal.kind === 'count' && node.goal.sense === 'total') reachCount(play, node, size, sizeValue(node.goal.count.values, size));
    if (needles.mode === 'flat') needles.side = null;
    checkEnding(play, node.ending, size, node, false);
    if (node.ending?.row && needles.mode === 'flat' && node.ending.last === null) {
      const row = sizeValue(node.ending.row, size);
      if (row !== null) settle(needles, row % 2 === 0 ? 'RS' : 'WS');
    }
  }
  write(play, { label: words(play, node), span: node.span, textSpan: node.span, node, side: facing, unit: 'row' }, active, before);
  for (const stated of node.stated) checkStated(play, stated, active, { before: counts, node, label: null });
}

/** "Cont to dec in this way until 16 sts rem": the shaping worked last goes on to that number, if it can come to it. */
function reachCount(play: Play, node: Until, size: number, target: number | null): void {
  const { needles, history } = handOf(play, size);
  const have = live(needles);
  if (target === null || target === have) return;
  const step = history.findLast((worked) => worked.change !== 0)?.change ?? 0;
  const fits = step !== 0 && (target - have) / step > 0 && (target - have) % step === 0;
  if (step !== 0 && !fits && node.goal.kind === 'count')
    met(play, { kind: 'targetMissed', span: node.goal.count.span, numbers: { target, live: have, step }, words: {} }, size, node, null);
  setLive(needles, target);
  if (step === 0) needles.sure = false;
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
    const one = eventsOf(shape.schedule, size, { live: live(hand.needles), step: stepOne, window: null, stated: null }, true);
    const changed = 'target' in one ? 0 : one.count * stepOne;
    // A count to run to speaks of both tracks together.
    const two = eventsOf(
      second.schedule,
      size,
      { live: live(hand.needles) + changed, step: stepTwo, window: null, stated: statedFor([...second.stated, ...shape.stated], size) },
      true,
    );
    if ('target' in one || 'target' in two) {
      missed(play, 'target' in one ? one : (two as Missed), 'target' in one ? shape : second, size, other);
      continue;
    }
    const rows = Math.max(one.rows, two.rows);
    passRows(hand.needles, Math.max(1, rows));
    hand.needles.right.n = Math.max(0, hand.needles.right.n + changed + two.count * stepTwo);
    hand.rows += rows;
    hand.sectionRows += rows;
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
