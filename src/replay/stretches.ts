/** Stretches of rows that go on: so many plain rows, or rows to a length or a count. */
import { sizeValue } from '../../grammar/count.ts';
import type { Count, Evenly, Plain, Statement, Until } from '../../grammar/tree.ts';
import { evenlyChange } from './evenly.ts';
import { remember } from './memory.ts';
import { live, setLive } from './needles.ts';
import { passRows } from './plain-rows.ts';
import { handOf, met, type Play, shown, write } from './play.ts';
import { eventsOf } from './schedule.ts';
import { playAndSoOn } from './series.ts';
import { missed, stepOf } from './shaping-steps.ts';
import { openTurns } from './short-rows.ts';
import { facingOf, nextSide, roundFromStart, settle } from './sides.ts';
import { checkStated } from './stated.ts';
import { beginSide, checkEnding, words } from './stretch-ends.ts';

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
  const begun = oneOfThem(play, node) ? 1 : 0;
  for (const size of active) {
    const all = sizeValue(node.count.values, size);
    if (all === null) continue;
    const n = Math.max(0, all - begun);
    working.push(size);
    rows[size] = all;
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

/** "Every row: Sl 1, k to end. Work 180 rows.": the row that was told is the first of them. */
function oneOfThem(play: Play, node: Plain): boolean {
  const [before, own] = [play.flow[play.at - 1], play.flow[play.at]];
  if (own?.statement !== node || before?.section !== own.section || before.statement.type !== 'row') return false;
  const { label } = before.statement;
  return label?.name === 'every' && label.numbers.length === 0 && !/\bmore\b|\bfurther\b|\banother\b/i.test(play.text(node.span));
}

/** Increases and decreases inside a stretch of rows: spread over one row, or on a schedule within the window. */
function insideStretch(play: Play, inside: Statement, size: number, window: number, node: Statement): void {
  const hand = handOf(play, size);
  if (inside.type === 'evenly') {
    applyEvenly(play, inside, size, node);
    return;
  }
  if (inside.type === 'edgeRows') {
    // "work 4 rows, casting on 5 sts at beg of each row"
    for (const part of inside.parts) {
      const many = sizeValue(part.count.values, size) ?? 0;
      const step = inside.change === 'castOn' ? many : -many;
      const events = eventsOf(part.rows, size, { live: live(hand.needles), step, window, stated: null, facing: facingOf(hand) }, true);
      if ('target' in events) hand.needles.sure = false;
      else hand.needles.right.n = Math.max(0, hand.needles.right.n + events.count * step);
    }
    return;
  }
  if (inside.type === 'shape') {
    const step = stepOf(play, inside, size);
    const events = eventsOf(inside.schedule, size, { live: live(hand.needles), step, window, stated: null, facing: facingOf(hand) }, true);
    if ('target' in events) missed(play, events, inside, size, node);
    else hand.needles.right.n += events.count * step;
  }
}

function applyEvenly(play: Play, step: Evenly, size: number, node: Statement): void {
  const hand = handOf(play, size);
  const have = live(hand.needles);
  const change = evenlyChange(step, size, have);
  if (change === null) return;
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
  if (node.goal.kind === 'rows' && node.inside.length === 0) {
    playToRows(play, node, node.goal.count, active);
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
    // A part that comes to its number: what the whole has then is not told.
    if (node.goal.kind === 'count' && node.goal.sense === 'markers') needles.sure = false;
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

/** "Until 12 rows have been worked": twelve in all since the section began; as many more where it has more already. */
function playToRows(play: Play, node: Until, goal: Count, sizes: readonly number[]): void {
  const had = new Map(sizes.map((size) => [size, handOf(play, size).sectionRows]));
  const values = play.hands.map((hand, size) => {
    const rows = sizeValue(goal.values, size);
    return rows === null || rows <= hand.sectionRows ? rows : rows - hand.sectionRows;
  });
  playPlain(
    play,
    {
      type: 'plain',
      count: { ...goal, values },
      unit: 'row',
      fabric: node.fabric,
      begin: node.begin,
      beginRow: null,
      of: node.of,
      ending: null,
      inside: [],
      stated: node.stated,
      span: node.span,
    },
    sizes,
  );
  for (const size of sizes) {
    const { needles } = handOf(play, size);
    // Counted from here it may be another number of rows, which would end on the other side.
    if ((had.get(size) ?? 0) % 2 === 1 && needles.mode === 'flat') needles.side = null;
    checkEnding(play, node.ending, size, node, false);
  }
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
