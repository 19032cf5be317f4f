/** Runs: knit, purl or work in the fabric up to a place. */
import type { Repeat, Span } from '../../../grammar/tree.ts';
import { countFor, type Hands, mostPasses, stopped, type Trouble } from '../hands.ts';
import { beginRow, reachRound, workPlain } from '../needles.ts';
import { workSteps } from '../work.ts';
import { targetOf } from './places.ts';
import { fromHolder } from './take-ups.ts';
import { passesOf } from './use.ts';

const plainVerbs = new Set(['k', 'p', 'sl', 'work']);

/** A run of knits, purls or of the fabric: every stitch makes one. "K2tog across" is a repeat. */
export function plainRun(step: Repeat): boolean {
  const [child] = step.children;
  return step.form === 'run' && !(child?.type === 'work' && !plainVerbs.has(child.stitch));
}

export function workRun(hands: Hands, step: Repeat): Trouble | null {
  const { needles } = hands;
  beginRow(needles);
  const extent = step.extent ?? { kind: 'end' as const };
  if (extent.kind === 'times') {
    const passes = passesOf(hands, extent) ?? 0;
    if (passes > mostPasses) return stopped('tooLong', step.span);
    for (let pass = 0; pass < passes; pass += 1) {
      hands.watch?.pass(step, pass + 1, passes, hands);
      const trouble = workSteps(hands, step.children);
      if (trouble) return trouble;
    }
    return null;
  }
  if (extent.kind === 'over' && extent.count.all) {
    const n = countFor(hands, extent.count.values);
    const have = needles.left.n - hands.base;
    if (n !== null && n !== have)
      hands.asides.push(stopped('countDiffers', extent.count.span, { stated: n, replayed: have }, { when: 'before' }));
    return runTo(hands, hands.base, step.span);
  }
  if (extent.kind === 'over') fromHolder(hands, countFor(hands, extent.count.values), extent.of);
  const target = targetOf(hands, extent, step.span);
  if (target === null) return null;
  if (typeof target !== 'number') return target;
  // "K to end" where nothing is left: a stitch or a marker before it is not where the words have it.
  if (extent.kind === 'end' && target === needles.left.n && hands.taken > 0 && !needles.suspended && hands.lenient !== true)
    hands.asides.push(stopped('nothingToWork', step.span));
  return runTo(hands, target, step.span);
}

function runTo(hands: Hands, target: number, span: Span): Trouble | null {
  const { needles } = hands;
  if (needles.mode === 'round' && needles.suspended && target < 0) {
    const need = -target;
    if (reachRound(needles, need)) return runTo(hands, 0, span);
  }
  if (target > needles.left.n)
    return stopped('tooFew', span, { left: needles.left.n - hands.base, wanted: target - hands.base }, { place: 'run' });
  if (target < Math.min(hands.base, 0) || target < 0)
    return stopped('tooFew', span, { left: needles.left.n, wanted: needles.left.n - target });
  const count = needles.left.n - target;
  hands.ran = true;
  workPlain(needles, count);
  hands.taken += count;
  hands.made += count;
  hands.last = count;
  return null;
}
