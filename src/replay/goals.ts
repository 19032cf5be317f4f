/** Rows repeated until something is true of the needles: all stitches worked, so many left between the turns. */
import type { Goal } from '../../grammar/tree.ts';
import { live, type Needles } from './needles.ts';
import { copyHand, handOf, type Play, tryOut } from './play.ts';
import { methodOf, openTurns, remaining } from './short-rows.ts';

export interface Passes {
  readonly passes: number;
  /** Rows of one more pass after which the goal was met, where the whole pass cannot be worked. */
  readonly rows: number;
  /** How it ended: the goal was met, a pass could not be worked, a pass changed nothing, or too many passes. */
  readonly end: 'met' | 'trouble' | 'still' | 'endless';
}

const mostPasses = 600;

/**
 * Plays passes without writing them down and counts those until one of the tests is true, the first test being the
 * likeliest; a later test counts only where the first never comes true.
 */
export function passesUntil(
  play: Play,
  size: number,
  pass: readonly (() => void)[],
  where: (needles: Needles) => string,
  tests: readonly ((needles: Needles) => boolean)[],
): Passes {
  const hits: (number | null)[] = tests.map(() => null);
  let passes = 0;
  let end: Passes['end'] = 'endless';
  let rows = 0;
  tryOut(play, () => {
    for (; passes < mostPasses; ) {
      const saved = copyHand(handOf(play, size));
      const found = play.book.met.length;
      const trouble = (): boolean =>
        play.book.met
          .slice(found)
          .some(
            (each) =>
              each.certain &&
              each.kind !== 'noProgress' &&
              each.kind !== 'turnAgain' &&
              each.kind !== 'repeatNotWorked' &&
              each.kind !== 'nothingToWork',
          );
      let reached = 0;
      for (const [index, row] of pass.entries()) {
        row();
        if (trouble()) {
          play.hands[size] = saved;
          rows = reached;
          end = rows > 0 ? 'met' : 'trouble';
          return;
        }
        if (reached === 0 && tests[0]?.(handOf(play, size).needles) === true) reached = index + 1;
      }
      const { needles } = handOf(play, size);
      passes += 1;
      tests.forEach((test, index) => {
        if (hits[index] === null && test(needles)) hits[index] = passes;
      });
      if (hits[0] !== null) return;
      if (where(needles) === where(saved.needles)) {
        end = 'still';
        return;
      }
    }
  });
  if (rows > 0) return { passes, rows, end };
  const hit = hits.find((each) => each !== null);
  return hit === undefined || hit === null ? { passes, rows, end } : { passes: hit, rows: 0, end: 'met' };
}

const bordered = (needles: Needles): boolean => [...needles.left.marks, ...needles.right.marks].some((mark) => mark.kind === 'border');

/** What must be true for the goal, the likeliest meaning first; null for goals that the needles do not show. */
export function testsFor(goal: Goal, target: number | null, start: Needles): readonly ((needles: Needles) => boolean)[] | null {
  if (goal.kind === 'allWorked') return bordered(start) ? [(needles) => !bordered(needles)] : [(needles) => openTurns(needles).size === 0];
  if (goal.kind === 'marks' && target !== null) {
    const own = (needles: Needles, which: 'left' | 'right'): number =>
      needles[which].marks.filter((mark) => mark.kind === 'gap' && (mark.method === methodOf[goal.of] || mark.method === 'plain')).length;
    return [
      (needles) => own(needles, 'left') === target && own(needles, 'right') === target,
      (needles) => own(needles, 'left') + own(needles, 'right') === target * (goal.eachSide ? 2 : 1),
    ];
  }
  if (goal.kind === 'count' && target !== null) {
    const total = (needles: Needles): boolean => live(needles) === target;
    const among = [0, 1, 2].map((index) => (needles: Needles) => remaining(needles, goal.sense)[index] === target);
    return goal.sense === 'total' ? [total, ...among] : [...among, total];
  }
  return null;
}
