/** Repeats within a row: brackets and stars, so many times, up to a place, or until a goal is met. */
import type { Goal, Repeat, Step } from '../../../grammar/tree.ts';
import { testsFor } from '../goals.ts';
import { countFor, type Hands, mostPasses, stopped, type Trouble } from '../hands.ts';
import { beginRow, copyNeedles, live, type Needles, passTip, takeRound } from '../needles.ts';
import { workSteps } from '../work.ts';
import { needleShares, needlesInRound } from './needle-parts.ts';
import { markAhead, targetOf } from './places.ts';
import { openList } from './readings.ts';
import { type FixedUse, fixedUse, moreLoops, passesOf } from './use.ts';

/** Most passes tried for a goal that the needles may show in several ways. */
const mostGoalPasses = 600;

/** Works `passes` whole passes of steps with fixed use, folding over stretches without markers; `of` passes in all. */
function foldPasses(hands: Hands, step: Repeat, use: FixedUse, passes: number, of = passes): Trouble | null {
  const { needles } = hands;
  if (hands.watch !== undefined && passes <= mostPasses) {
    for (let pass = 1; pass <= passes; pass += 1) {
      hands.watch.pass(step, pass, of, hands);
      const trouble = workSteps(hands, step.children);
      if (trouble) return trouble;
    }
    hands.last = use.makes * passes;
    return null;
  }
  let rest = passes;
  while (rest > 0) {
    const { left } = needles;
    // A marker at the tip stays there until a stitch is taken: what is made before lies in front of it.
    const ahead = left.marks.filter((mark) => mark.at <= left.n && mark.at > left.n - use.takes * rest).at(-1);
    const free = ahead === undefined ? rest : Math.min(rest, use.takes === 0 ? rest : Math.floor((left.n - ahead.at) / use.takes));
    if (free > 0) {
      const boundary = left.n - use.takes * free;
      if (use.takes > 0) passTip(needles);
      left.n = boundary;
      // The mark that ends this stretch stays at the tip and is passed with the next stitch.
      needles.right.n += use.makes * free;
      hands.taken += use.takes * free;
      hands.made += use.makes * free;
      needles.loops = moreLoops(needles.loops, use.loops, free);
      rest -= free;
    }
    if (rest > 0) {
      const trouble = workSteps(hands, step.children);
      if (trouble) return trouble;
      rest -= 1;
    }
  }
  hands.last = use.makes * passes;
  // A cord knitted on ends with its stitches back on the left needle.
  if (passes > 0 && needles.right.n === 0 && step.children.at(-1)?.type === 'work' && use.makes === 0 && use.takes > 0)
    hands.divided = true;
  return null;
}

const same = (one: Step | undefined, other: Step | undefined): boolean =>
  one?.type === 'work' && other?.type === 'work' && one.stitch === other.stitch && one.n?.values.join() === other.n?.values.join();

/**
 * Steps of the last pass that "ending last rep k1" replaces: the last one; or as many as the ending has, where the pass ends
 * in the very same ("*yo, k2tog; rep from *, ending last rep yo, k2tog").
 */
function replacedBy(step: Repeat): number {
  const ending = step.ending?.children ?? [];
  const tail = step.children.slice(-ending.length);
  return ending.length > 1 && ending.every((each, at) => same(each, tail[at])) ? ending.length : 1;
}

export function workRepeat(hands: Hands, step: Repeat): Trouble | null {
  const { needles } = hands;
  const extent = step.extent;
  if (extent === null) return workSteps(hands, step.children);
  const last = step.children.at(-1);
  if (openList(step) && last !== undefined && (step.repeats === 'last') === (hands.choice.list === 'likely')) {
    // Only the last stitch repeats, with what it is made beside if it takes none ("k2tog, yo to last 3 sts"); the rest is worked once.
    let from = step.children.length - 1;
    while (from > 0 && fixedUse(hands, step.children.slice(from))?.takes === 0) from -= 1;
    return (
      workSteps(hands, step.children.slice(0, from)) ?? workRepeat(hands, { ...step, children: step.children.slice(from), repeats: 'all' })
    );
  }
  const use = fixedUse(hands, step.children);
  if (extent.kind === 'times') {
    const passes = passesOf(hands, extent);
    if (passes === null || passes <= 0) return null;
    return repeatTimes(hands, step, use, passes);
  }
  beginRow(needles);
  // "… k to last 3 sts on needle, k2tog, k1; rep from * on each needle"
  const needleByNeedle = extent.kind === 'end' ? needlesInRound(hands, step) : null;
  if (needleByNeedle !== null) return repeatTimes(hands, step, use, needleByNeedle);
  if (extent.kind === 'goal') return workToGoal(hands, step, extent.goal);
  let target = targetOf(hands, extent, step.span);
  if (target === null) return null;
  if (typeof target !== 'number') return target;
  const ending = step.ending === null ? null : fixedUse(hands, step.ending.children);
  let lastTakes = 0;
  // "to last 2 sts, end k2": the ending is those two.
  if (step.ending?.kind === 'then' && ending !== null && extent.kind === 'end') target += ending.takes;
  if (step.ending?.kind === 'lastRepeat' && ending !== null && use !== null) {
    const old = fixedUse(hands, step.children.slice(-replacedBy(step)));
    lastTakes = use.takes - (old?.takes ?? 0) + ending.takes;
    target += lastTakes;
  }
  if (step.ending?.kind === 'omitting' && ending !== null && use !== null) {
    lastTakes = use.takes - ending.takes;
    target += lastTakes;
  }
  const changed = step.ending !== null && step.ending.kind !== 'then' ? 1 : 0;
  const finish = (worked: number | null): Trouble | null => {
    if (step.ending === null) return null;
    if (step.ending.kind === 'then') {
      hands.watch?.between(step, step.ending.children, hands);
      return workSteps(hands, step.ending.children);
    }
    if (worked !== null) hands.watch?.pass(step, worked + 1, worked + 1, hands);
    const children = step.children.slice(0, step.ending.kind === 'lastRepeat' ? -replacedBy(step) : -1);
    return workSteps(
      hands,
      step.ending.kind === 'omitting' ? (step.children.length > 1 ? children : []) : [...children, ...step.ending.children],
    );
  };
  if (use !== null && use.takes > 0 && step.once.length === 0) {
    const room = needles.left.n - target;
    // What is left is told up to the marker or gap where one is named.
    const place = extent.kind === 'place' ? markAhead(hands, extent) : null;
    const from = place === null || place.at > target ? hands.base : place.at;
    const words: Readonly<Record<string, string>> = extent.kind === 'place' ? { place: extent.place } : {};
    if (room < 0)
      return stopped('repeatDoesNotFit', step.span, { left: needles.left.n - from, wanted: target - from, takes: use.takes }, words);
    if (room % use.takes !== 0) {
      // Nobody counts ahead: whoever watches sees the passes that fit.
      if (hands.watch !== undefined) foldPasses(hands, step, use, Math.floor(room / use.takes), Math.ceil(room / use.takes));
      return stopped(
        'repeatDoesNotFit',
        step.span,
        { left: (room % use.takes) + target - from, wanted: target - from, takes: use.takes, room, over: room % use.takes },
        words,
      );
    }
    const passes = room / use.takes;
    if (passes === 0 && step.ending === null) hands.asides.push(stopped('repeatNotWorked', step.span, {}));
    const trouble = foldPasses(hands, step, use, passes, passes + changed);
    return trouble ?? finish(passes);
  }
  if (use !== null && use.takes === 0 && step.once.length === 0 && use.makes >= 0)
    return stopped('repeatDoesNotFit', step.span, { left: needles.left.n, wanted: target, takes: 0 });
  let passes = 0;
  const goal = target;
  while (needles.left.n > goal) {
    const before = needles.left.n;
    hands.watch?.pass(step, passes + 1, null, hands);
    const trouble = workSteps(hands, step.children);
    if (trouble)
      return trouble.kind === 'tooFew'
        ? stopped('repeatDoesNotFit', step.span, { left: before - hands.base, wanted: goal - hands.base, takes: before - needles.left.n })
        : trouble;
    if (passes === 0 && step.once.length > 0) {
      hands.watch?.between(step, step.once, hands);
      const between = workSteps(hands, step.once);
      if (between) return between;
    }
    passes += 1;
    if (passes > mostPasses) return stopped('tooLong', step.span);
    if (needles.left.n >= before) return stopped('noProgress', step.span, { left: needles.left.n });
    if (hands.turned && step.children.some((child) => child.type === 'turn')) continue;
  }
  if (needles.left.n < goal)
    return stopped('repeatDoesNotFit', step.span, { left: needles.left.n - hands.base, wanted: goal - hands.base });
  return finish(passes);
}

/** "rep from * until all sts have been worked", with turns inside: whole passes, the last of which may end short. */
function workToGoal(hands: Hands, step: Repeat, goal: Goal): Trouble | null {
  const { needles } = hands;
  const target = goal.kind === 'count' || goal.kind === 'marks' ? countFor(hands, goal.count.values) : null;
  const tests = testsFor(goal, target, needles);
  const before = live(needles);
  const lenient = hands.lenient === true;
  if (tests === null) {
    // To a length: one pass shows that it can be worked.
    const trouble = workSteps(hands, step.children);
    if (trouble === null && live(needles) !== before) hands.doubt = true;
    return trouble;
  }
  hands.lenient = goal.kind === 'allWorked';
  const most = tests.length > 1 ? passesToGoal(hands, step, tests) : null;
  for (let pass = 0; pass < mostPasses; pass += 1) {
    const [left, right] = [needles.left.n, needles.right.n];
    const trouble = workSteps(hands, step.children);
    if (trouble) return trouble;
    if (pass + 1 === most || (most === null && tests[0]?.(needles) === true)) {
      hands.lenient = lenient;
      return null;
    }
    if (needles.left.n === left && needles.right.n === right && live(needles) === before) return stopped('noProgress', step.span, { left });
  }
  return stopped('tooLong', step.span);
}

/** Passes after which the likeliest meaning of the goal comes true, tried on other needles; null when none does. */
function passesToGoal(hands: Hands, step: Repeat, tests: readonly ((needles: Needles) => boolean)[]): number | null {
  const trial: Hands = { ...hands, needles: copyNeedles(hands.needles), held: hands.held.map((set) => ({ ...set })), asides: [] };
  const hits: (number | null)[] = tests.map(() => null);
  for (let pass = 1; pass <= mostGoalPasses; pass += 1) {
    if (workSteps(trial, step.children) !== null) break;
    tests.forEach((test, index) => {
      if (hits[index] === null && test(trial.needles)) hits[index] = pass;
    });
    if (hits[0] !== null) break;
  }
  return hits.find((hit) => hit !== null) ?? null;
}

function repeatTimes(hands: Hands, step: Repeat, use: FixedUse | null, passes: number): Trouble | null {
  const { needles } = hands;
  if (use !== null && step.once.length === 0 && step.ending === null) {
    if (use.takes > 0) {
      beginRow(needles);
      const have = needles.left.n - hands.base;
      if (have < use.takes * passes && hands.watch !== undefined) foldPasses(hands, step, use, Math.floor(have / use.takes), passes);
      if (have < use.takes * passes)
        return stopped('tooFew', step.span, { left: have, wanted: use.takes * passes, takes: use.takes, passes }, { place: 'repeat' });
    }
    return foldPasses(hands, step, use, passes);
  }
  const shares = needleShares(hands, step, passes);
  const base = hands.base;
  if (passes > mostPasses) return stopped('tooLong', step.span);
  for (let pass = 0; pass < passes; pass += 1) {
    hands.watch?.pass(step, pass + 1, passes, hands);
    const share = shares?.[pass];
    const worked = needles.right.n;
    if (share !== undefined) hands.base = needles.left.n - share;
    const trouble = pass === passes - 1 ? workLast(hands, step.children) : workSteps(hands, step.children);
    const over = needles.left.n - hands.base;
    hands.base = base;
    if (trouble) return trouble;
    if (share !== undefined) {
      if (over !== 0) return stopped('leftOver', step.span, { left: over }, { needle: `Needle ${pass + 1}` });
      const part = needles.parts.length === passes ? needles.parts[pass] : undefined;
      if (part !== undefined) part.n = needles.right.n - worked;
    }
    if (pass === 0 && step.once.length > 0) {
      hands.watch?.between(step, step.once, hands);
      const between = workSteps(hands, step.once);
      if (between) return between;
    }
  }
  if (step.ending === null) return null;
  hands.watch?.between(step, step.ending.children, hands);
  return workSteps(hands, step.ending.children);
}

/**
 * "[K to 2 sts before m, k2tog, sm, ssk] 4 times" where the fourth marker is the beginning of the round: what stands behind its "sm"
 * is worked over the first stitches of the next round, and the marker lies that far back from then on.
 */
function workLast(hands: Hands, steps: readonly Step[]): Trouble | null {
  const { needles } = hands;
  const at = steps.findLastIndex((step) => step.type === 'marker' && step.op === 'slip');
  const tail = at < 0 ? null : fixedUse(hands, steps.slice(at + 1));
  if (needles.mode !== 'round' || needles.suspended || tail === null || tail.takes === 0) return workSteps(hands, steps);
  const trouble = workSteps(hands, steps.slice(0, at + 1));
  if (trouble !== null) return trouble;
  const short = tail.takes - (needles.left.n - hands.base);
  if (short > 0 && hands.base === 0 && short < needles.right.n) {
    if (needles.left.n === 0) needles.right.marks.push({ kind: 'marker', name: 'BOR', at: needles.right.n });
    takeRound(needles, short);
  }
  return workSteps(hands, steps.slice(at + 1));
}
