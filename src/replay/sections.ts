/** Parts of the stitches: those between two markers, those on each needle; and the goals that count them. */
import { live, type Needles } from './needles.ts';

/** Numbers of stitches between neighbouring markers, from the beginning of the row on; in a round the first and last part also together. */
export function markerSections(needles: Needles): number[] {
  const { left, right } = needles;
  const places = [
    ...right.marks.filter((mark) => mark.kind !== 'gap').map((mark) => mark.at),
    ...left.marks.filter((mark) => mark.kind !== 'gap').map((mark) => right.n + left.n - mark.at),
  ].sort((a, b) => a - b);
  const total = live(needles);
  const parts: number[] = [];
  let from = 0;
  for (const place of [...places, total]) {
    parts.push(place - from);
    from = place;
  }
  if (needles.mode === 'round' && parts.length > 1) parts.push((parts[0] as number) + (parts.at(-1) as number));
  return parts;
}

export interface PartGoal {
  readonly passes: number;
  /** Stitches in the part now, and what one pass adds; for the words of a goal that is missed. */
  readonly have: number;
  readonly step: number;
  readonly exact: boolean;
}

/**
 * Passes until `target` stitches stand between two markers: the part that reaches it, or else the part that comes nearest
 * among those that change. Null where no part changes.
 */
export function passesBetweenMarkers(before: Needles, after: Needles, target: number): PartGoal | null {
  const now = markerSections(before);
  const then = markerSections(after);
  if (now.length !== then.length) return null;
  const changing = now.map((have, index) => ({ have, step: (then[index] as number) - have })).filter(({ step }) => step !== 0);
  const goals = changing.map(({ have, step }): PartGoal => {
    const passes = (target - have) / step;
    return { passes: Math.max(0, Math.floor(passes)), have, step, exact: passes >= 0 && Number.isInteger(passes) };
  });
  return goals.find((goal) => goal.exact && goal.passes > 0) ?? goals.find((goal) => goal.exact) ?? goals[0] ?? null;
}

/** How many needles "16 sts on each needle" speaks of: those that are known, those the words number, or as many as fit. */
export function needlesMeant(needles: Needles, scope: string | null, target: number, change: number): number {
  if (needles.parts.length > 1) return needles.parts.length;
  const word = /\b(two|both|three|four|[2-4])\b/i.exec(scope ?? '')?.[1]?.toLowerCase();
  if (word !== undefined) return ({ two: 2, both: 2, three: 3, four: 4 } as Record<string, number>)[word] ?? Number(word);
  const have = live(needles);
  return [2, 4, 3].find((count) => (count * target - have) / change >= 0 && (count * target - have) % change === 0) ?? 2;
}
