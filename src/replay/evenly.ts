/** Stitches gained or lost over a whole row. */
import { sizeValue } from '../../grammar/count.ts';
import type { Evenly } from '../../grammar/tree.ts';

/** What the words change of `have` stitches, with its sign; null where the size skips them. */
export function evenlyChange(step: Evenly, size: number, have: number): number | null {
  const n = sizeValue(step.count.values, size);
  if (n === null) return null;
  if (step.change === 'to') return n - have;
  const per = step.inEvery === undefined ? null : sizeValue(step.inEvery, size);
  // "in every 10th st": once for each whole ten
  const places = per === null || per < 1 ? 1 : Math.floor(have / per);
  return (step.change === 'inc' ? n : -n) * places;
}
