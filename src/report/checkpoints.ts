/** Rows after which it pays to count: where the count changes for the last time in a block, and not too far apart. */
import { sizeValue } from '../../grammar/count.ts';
import type { Stated } from '../../grammar/tree.ts';
import type { Proof } from '../index.ts';
import type { Entry } from '../replay/replay.ts';

/** Rows that change the count, after which one is counted even where the change goes on. */
const farthest = 10;

/**
 * The total that is stated after a line of the sheet, in one size: only where the words stand, not where they are called
 * again, and where they bring many rows only after the last of them.
 */
export function statedTotals(proof: Proof): (index: number, size: number) => number | null {
  const { entries } = proof.replay;
  const last = new Map(entries.map((entry, index) => [entry.span.start, index]));
  return (index, size) => {
    const entry = entries[index];
    if (entry === undefined || last.get(entry.span.start) !== index) return null;
    if (entry.afterPerRepeat !== null || entry.span.start !== entry.textSpan.start || !('stated' in entry.node)) return null;
    const stated = (entry.node.stated as readonly Stated[]).find((each) => each.what === 'total' && each.scope === null);
    return stated === undefined ? null : sizeValue(stated.count.values, size);
  };
}

function changeOf(entry: Entry | undefined, sizes: readonly number[]): number {
  if (entry === undefined) return 0;
  for (const size of sizes) {
    const before = entry.before[size];
    const after = entry.after[size];
    if (before != null && after != null && before !== after) return Math.sign(after - before);
  }
  return 0;
}

/**
 * Indexes of the entries to count after, for the sizes given. With `within` no more rows than that lie between two of them
 * where the count changes at all, so that a slip is found within so many rows.
 */
export function checkpoints(proof: Proof, sizes: readonly number[], within = Number.POSITIVE_INFINITY): number[] {
  const { entries } = proof.replay;
  const shown = entries.map((_, index) => index).filter((index) => sizes.some((size) => entries[index]?.after[size] != null));
  const out: number[] = [];
  let since = 0;
  let rows = 0;
  shown.forEach((index, position) => {
    const entry = entries[index] as Entry;
    const change = changeOf(entry, sizes);
    if (entry.unit !== 'step') rows += entry.times;
    if (change === 0) return;
    since += 1;
    // The rows between two changing ones may be plain; what counts is the next change.
    const next = shown.slice(position + 1, position + 4).map((each) => entries[each] as Entry);
    const goesOn = next.some((each) => each.section === entry.section && changeOf(each, sizes) === change);
    if (goesOn && since < farthest && rows < within && entry.unit !== 'step') return;
    out.push(index);
    since = 0;
    rows = 0;
  });
  return out;
}
