/** Loops that a row lets fall: "Knit, dropping yos", "Purl, dropping the second loop of each double yo". */
import type { Resolve, Step } from '../../../grammar/tree.ts';
import type { Hands } from '../hands.ts';
import { beginRow } from '../needles.ts';

/** The words of a row that let loops fall, wherever in it they stand. */
export function dropsIn(steps: readonly Step[]): Resolve | null {
  for (const step of steps) {
    if (step.type === 'resolve' && step.what === 'drops') return step;
    const inside = step.type === 'repeat' || step.type === 'needlePart' ? dropsIn(step.children) : null;
    if (inside !== null) return inside;
  }
  return null;
}

/**
 * How many loops fall: every yarn over of the row below, or where only the extra ones are named, those beside another.
 * In "k1, yo twice" with no decrease to pay for it the yarn overs are all extra: they only make the stitch long.
 */
export function fallenOf(drops: Resolve, paid: boolean): 'all' | 'spare' {
  return drops.extra === true && paid ? 'spare' : 'all';
}

/** Takes the loops off before the row is worked, so that what is left is what the words of the row count. */
export function letFall(hands: Hands, steps: readonly Step[]): void {
  const drops = dropsIn(steps);
  if (drops === null) return;
  const { needles } = hands;
  beginRow(needles);
  const below = needles.below;
  const fallen = below === undefined ? 0 : below[fallenOf(drops, below.paid)];
  if (fallen === 0 || fallen > needles.left.n) return;
  // Where they fall among the markers is not known.
  if (needles.left.marks.length > 0) needles.lost = true;
  needles.left.n -= fallen;
  needles.left.marks = needles.left.marks.filter((mark) => mark.at <= needles.left.n);
}
