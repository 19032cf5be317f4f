/**
 * A row that works pieces put aside onto one needle: "Joining rnd: k56 sleeve sts, pm, k82 front sts, pm, …". The holders are
 * not named again, so the numbers of the row say what is taken from them.
 */
import { sizeValue } from '../../grammar/count.ts';
import { entryNamed } from '../../grammar/lexicon/index.ts';
import type { Count, Row, Step } from '../../grammar/tree.ts';
import { live } from './needles.ts';
import { handOf, type Play } from './play.ts';

const beside = new Set<Step['type']>(['marker', 'join', 'change', 'remark', 'stated', 'castOn']);

/** The number of stitches that a plain step takes; undefined where the step is no plain run over a number. */
function over(step: Step): Count | undefined {
  if (step.type === 'work' && step.n !== null && step.times === undefined && entryNamed(step.stitch)?.kind === 'plain') return step.n;
  return step.type === 'repeat' && step.form === 'run' && step.extent?.kind === 'over' && step.extent.count.all !== true
    ? step.extent.count
    : undefined;
}

/** Puts the stitches of a joining row on the left needle; false where the row is none. */
export function gatherPieces(play: Play, row: Row, sizes: readonly number[]): boolean {
  const counts = row.children.map(over).filter((count) => count !== undefined);
  if (counts.length < 2 || row.children.some((step) => over(step) === undefined && !beside.has(step.type))) return false;
  if (row.label !== null && row.label.numbers.length > 0) return false;
  if (!row.children.some((step) => step.type === 'marker' || step.type === 'join')) return false;
  if (sizes.some((size) => live(handOf(play, size).needles) > 0 || !handOf(play, size).held.some((set) => !set.used && set.n > 0)))
    return false;
  for (const size of sizes) {
    const hand = handOf(play, size);
    const sum = counts.reduce((all, count) => all + (sizeValue(count.values, size) ?? 0), 0);
    hand.needles.left = { n: sum, marks: [] };
    hand.needles.right = { n: 0, marks: [] };
    hand.needles.sure = true;
    hand.needles.lost = false;
    hand.fresh = false;
    for (const set of hand.held) set.used = true;
  }
  return true;
}
