/** How many passes a goal asks for: a count, a number of rows, all stitches worked. */
import { sizeValue } from '../../../grammar/count.ts';
import type { Goal, RepeatRows, Statement } from '../../../grammar/tree.ts';
import { passesUntil, testsFor } from '../goals.ts';
import { live } from '../needles.ts';
import { type Hand, handOf, met, type Play, tryOut } from '../play.ts';
import { needlesMeant, passesBetweenMarkers } from '../sections.ts';
import { openTurns } from '../short-rows.ts';
import { nextSide } from '../sides.ts';
import type { Again } from './named-rows.ts';
import { passChange, playAgain, playPasses, signature } from './passes.ts';

/** Whole passes until the goal is met; a goal that is never met exactly is reported. */
export function playToGoal(play: Play, node: RepeatRows, goal: Goal, list: readonly Again[], sizes: readonly number[]): void {
  const passes = new Map<number, number>();
  for (const size of sizes) {
    const hand = handOf(play, size);
    const have = live(hand.needles);
    if (goal.kind === 'count') {
      const target = sizeValue(goal.count.values, size);
      if (target === null) continue;
      const whole = passesTo(play, node, goal.sense, list, size, target, have);
      const rows = goal.sense === 'total' ? rowsOfLastPass(play, node, list, size, target, whole) : null;
      passes.set(size, rows === null ? whole : whole - 1);
      if (rows !== null) play.partial = new Map([...(play.partial ?? []), [size, rows]]);
    } else if (goal.kind === 'rows') {
      const rows = sizeValue(goal.count.values, size) ?? 0;
      const length = list.reduce((sum, each) => sum + each.times, 0) || 1;
      passes.set(size, Math.max(0, Math.round((rows - hand.sectionRows) / length)));
    } else if (goal.kind === 'allWorked' || goal.kind === 'marks')
      passes.set(size, passesToTurns(play, node, goal, list, size, goal.kind === 'marks' ? sizeValue(goal.count.values, size) : null));
    else {
      // To a length: the number of passes is open; one pass shows that the rows fit.
      const change = passChange(play, list, size);
      passes.set(size, 1);
      if (change !== 0 && !(list.length === 0)) hand.needles.sure = hand.needles.sure && change === 0;
    }
  }
  const lenient = play.lenient;
  // All stitches may be worked before the last row of a pass: the rest of it is left out.
  const partial = play.partial ?? new Map<number, number>();
  play.lenient = goal.kind === 'allWorked';
  play.partial = undefined;
  playPasses(play, list, passes, node.span, node);
  // Sizes that leave out the same rows work the rest side by side.
  for (const rows of new Set(partial.values()))
    playAgain(
      play,
      list.slice(0, rows),
      [...partial].filter(([, own]) => own === rows).map(([size]) => size),
      node.span,
      node,
    );
  play.lenient = lenient;
}

/**
 * "Until 50 sts rem, ending with Row 1": rows of the last pass, where the work stops on the row that reaches the count and not at the
 * end of its pass. The ending told says so, or the side of the next row; null where the pass is worked whole.
 */
function rowsOfLastPass(play: Play, node: RepeatRows, list: readonly Again[], size: number, target: number, whole: number): number | null {
  const next = play.flow[play.at + 1]?.statement;
  const wanted = node.ending?.row === null || node.ending === null ? null : sizeValue(node.ending.row, size);
  const facing = node.ending?.last ? (node.ending.last === 'RS' ? 'WS' : 'RS') : next?.type === 'row' ? (next.label?.side ?? null) : null;
  if (whole < 1 || list.length < 2 || (wanted === null && facing === null)) return null;
  let rows: number | null = null;
  tryOut(play, () => {
    playPasses(play, list, new Map([[size, whole - 1]]), node.span, node);
    for (const [index, each] of list.entries()) {
      playAgain(play, [each], [size], node.span, node);
      const { needles } = handOf(play, size);
      if (live(needles) !== target) continue;
      const stops = wanted !== null ? each.number === wanted : needles.mode === 'flat' && nextSide(needles) === facing;
      if (rows === null && stops && index < list.length - 1) rows = index + 1;
      // The whole pass ends as told as well: it is worked whole.
      if (index === list.length - 1 && stops) rows = null;
    }
  });
  return rows;
}

function passesTo(play: Play, node: RepeatRows, sense: string, list: readonly Again[], size: number, target: number, have: number): number {
  if (sense === 'needle') return passesOnNeedle(play, node, list, size, target);
  const change = passChange(play, list, size);
  const short = openTurns(handOf(play, size).needles).size > 0;
  if (node.until !== null && (sense === 'unworked' || sense === 'between' || change === 0 || short))
    return passesToTurns(play, node, node.until, list, size, target);
  if (sense === 'markers') {
    const { hands } = tryOut(play, () => playAgain(play, list, [size], { start: 0, end: 0 }, (list[0]?.row ?? node) as Statement));
    const part = passesBetweenMarkers(handOf(play, size).needles, (hands[size] as Hand).needles, target);
    if (part === null) {
      handOf(play, size).needles.sure = false;
      return 1;
    }
    if (!part.exact) {
      met(
        play,
        {
          kind: 'targetMissed',
          span: node.until?.kind === 'count' ? node.until.count.span : node.span,
          numbers: { target, live: part.have, step: part.step },
          words: { between: 'markers' },
        },
        size,
        node,
        null,
      );
      handOf(play, size).needles.sure = false;
    }
    return part.passes;
  }
  const goal = node.until;
  const needles = sense === 'section' && goal?.kind === 'count' ? needlesMeant(handOf(play, size).needles, goal.scope, target, change) : 1;
  const need = target * needles - have;
  if (need / change < 0 || need % change !== 0) {
    const passes = Math.max(0, need / change);
    met(
      play,
      {
        kind: need / change < 0 ? 'targetPassed' : 'targetMissed',
        span: node.until?.kind === 'count' ? node.until.count.span : node.span,
        numbers: { target, live: have, step: change },
        words: {},
      },
      size,
      node,
      null,
    );
    const hand = handOf(play, size);
    hand.needles.sure = false;
    return Math.floor(passes);
  }
  return need / change;
}

/** What lies on needle `number`, where the needles told add up to what there is. */
function onNeedle(hand: Hand, number: number): number | null {
  const { parts } = hand.needles;
  if (parts.reduce((sum, part) => sum + part.n, 0) !== live(hand.needles)) return null;
  return parts.find((part) => new RegExp(`^(?:n|ndl|needle) ?${number}$`, 'i').test(part.name))?.n ?? null;
}

/**
 * "Until there are 44 sts on N2": the passes that bring this needle there. Where it is not known what lies on the needle, the count
 * stated behind the words says how many passes; without it the size is not sure.
 */
function passesOnNeedle(play: Play, node: RepeatRows, list: readonly Again[], size: number, target: number): number {
  const hand = handOf(play, size);
  const goal = node.until;
  const number = Number(/\d/.exec(goal?.kind === 'count' ? (goal.scope ?? '') : '')?.[0] ?? 0);
  const have = onNeedle(hand, number);
  const { hands } = tryOut(play, () => playAgain(play, list, [size], { start: 0, end: 0 }, (list[0]?.row ?? node) as Statement));
  const then = onNeedle(hands[size] as Hand, number);
  // "until 19 sts rem on N2" from 30, two fewer each time: never.
  if (
    have !== null &&
    then !== null &&
    then !== have &&
    hand.needles.sure &&
    ((target - have) % (then - have) !== 0 || (target - have) / (then - have) < 0)
  ) {
    const span = goal?.kind === 'count' ? goal.count.span : node.span;
    const kind = (target - have) / (then - have) < 0 ? 'targetPassed' : 'targetMissed';
    met(play, { kind, span, numbers: { target, live: have, step: then - have }, words: {} }, size, node, null);
  }
  if (have !== null && then !== null && (target - have) * (then - have) >= 0 && then !== have && (target - have) % (then - have) === 0)
    return (target - have) / (then - have);
  const total = node.stated.find((each) => each.what === 'total' && each.scope === null);
  const stated = total === undefined ? null : sizeValue(total.count.values, size);
  const step = live((hands[size] as Hand).needles) - live(hand.needles);
  const need = (stated ?? 0) - live(hand.needles);
  const sure = hand.needles.sure;
  hand.needles.sure = false;
  if (stated === null || step === 0 || need % step !== 0 || need / step < 0 || !sure) return 1;
  return need / step;
}

/** Passes among short rows: until every stitch is worked, or until a turn leaves `target` stitches. */
function passesToTurns(play: Play, node: RepeatRows, goal: Goal, list: readonly Again[], size: number, target: number | null): number {
  const { needles } = handOf(play, size);
  const tests = testsFor(goal, target, needles);
  if (tests === null) return 1;
  const lenient = play.lenient;
  play.lenient = goal.kind === 'allWorked';
  const remark: Statement = { type: 'remark', span: { start: 0, end: 0 } };
  const found = passesUntil(
    play,
    size,
    list.map((each) => () => playAgain(play, [each], [size], remark.span, remark)),
    signature,
    tests,
  );
  play.lenient = lenient;
  if (found.end === 'met') {
    if (found.rows > 0) play.partial = new Map([...(play.partial ?? []), [size, found.rows]]);
    return found.passes;
  }
  // The pass that cannot be worked is played, so that it is told where it stops.
  if (found.end === 'trouble' && goal.kind === 'allWorked') return found.passes + 1;
  const kind = found.end === 'still' ? 'noProgress' : 'targetMissed';
  const numbers: Record<string, number> = { passes: found.passes, live: live(needles) };
  if (target !== null) numbers['target'] = target;
  met(
    play,
    { kind, span: goal.kind === 'count' || goal.kind === 'marks' ? goal.count.span : node.span, numbers, words: {} },
    size,
    node,
    null,
  );
  return found.passes;
}
