/** Places for markers that no operation crosses in any row of a stretch, so that nobody need count the whole row again. */
import type { PlanLine } from './layout.ts';

/** A plan for markers over a stretch of rows. */
export interface MarkerPlan {
  /** Stitches before the first marker, as the first row is worked, and between two markers then. */
  readonly first: number;
  readonly every: number;
  readonly markers: number;
  /** The rows after which the stitches between two markers are others, with their number where it is the same for all. */
  readonly changes: readonly { readonly label: string; readonly between: number | null }[];
}

/** Distances knitters use: as near ten as the pattern allows. */
const distances = [10, 12, 8, 16, 20, 6, 14, 15, 18, 9, 24, 5, 25, 30];
const leastMarkers = 2;

/**
 * Where the boundary `at` (in stitches from the right, before the row) lies after it; null where a stitch that takes
 * both its neighbours crosses it.
 */
function after(line: PlanLine, at: number): number | null {
  let below = line.waitsRight;
  let above = line.waitsRight;
  if (at <= below) return at;
  for (const run of line.runs) {
    const takes = run.takes;
    if (at < below + takes) {
      // Plain squares stand one on one; anything that takes several at once cannot be parted.
      if (run.kind === 'plain' && run.n === takes) return above + (at - below);
      const each = takes / Math.max(1, run.n);
      const offset = at - below;
      return run.kind !== 'crossing' && offset % each === 0 ? above + offset / each : null;
    }
    below += takes;
    above += run.kind === 'boundOff' || run.kind === 'held' ? 0 : run.n;
    if (at === below) return above;
  }
  return at - below + above;
}

/** Follows boundaries through every row; the places of each after every row, null for one that is crossed. */
function follow(lines: readonly PlanLine[], total: number): (readonly number[] | null)[] {
  const threads: (number[] | null)[] = [];
  for (let start = 1; start < total; start += 1) {
    const places: number[] = [start];
    let at: number | null = start;
    for (const line of lines) {
      at = after(line, at);
      if (at === null) break;
      places.push(at);
    }
    threads.push(at === null ? null : places);
  }
  return threads;
}

/** Stitches on the needle before the first row of the stretch. */
function stitchesBelow(line: PlanLine): number {
  return line.waitsRight + line.waitsLeft + line.runs.reduce((sum, run) => sum + run.takes, 0);
}

const leastStitches = 24;
const mostRows = 400;

/** A plan, or null where no regular one exists or too few stitches would need it. The rows are known stitch by stitch. */
export function markerPlan(lines: readonly PlanLine[]): MarkerPlan | null {
  const rows = lines.filter((line) => line.unit !== 'step');
  if (rows.length < 2 || rows.length > mostRows || rows.some((line) => line.kind === 'torn' || line.kind === 'stopped')) return null;
  const total = stitchesBelow(rows[0] as PlanLine);
  if (total < leastStitches) return null;
  const threads = follow(rows, total);
  let second: MarkerPlan | null = null;
  for (const every of distances) {
    for (let first = 1; first <= every; first += 1) {
      const starts: number[] = [];
      for (let start = first; start < total; start += every) starts.push(start);
      if (starts.length < leastMarkers) continue;
      const chosen = starts.map((start) => threads[start - 1] ?? null);
      if (chosen.some((places) => places === null)) continue;
      const plan = { first, every, markers: starts.length, changes: changesOf(rows, chosen as (readonly number[])[], every) };
      // Best is a distance at which all stretches keep the same number as each other.
      if (plan.changes.every((change) => change.between !== null)) return plan;
      second ??= plan;
    }
  }
  return second;
}

function changesOf(
  rows: readonly PlanLine[],
  chosen: readonly (readonly number[])[],
  every: number,
): { label: string; between: number | null }[] {
  const out: { label: string; between: number | null }[] = [];
  let last: number | null = every;
  rows.forEach((row, index) => {
    const gaps = chosen.slice(1).map((places, each) => (places[index + 1] ?? 0) - ((chosen[each] as readonly number[])[index + 1] ?? 0));
    const between = gaps.every((gap) => gap === gaps[0]) ? (gaps[0] ?? null) : null;
    if (between !== last) out.push({ label: row.label, between });
    last = between;
  });
  return out;
}
