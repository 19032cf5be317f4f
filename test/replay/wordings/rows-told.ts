/** Rows as people word them: a text, the stitches that stood before, those that stand after. */
import { expect, it } from 'vitest';
import { type WorkOptions, work } from '../work.ts';

type Side = 'RS' | 'WS' | null;

export interface Told extends Omit<WorkOptions, 'start'> {
  /** Rows worked, per size. */
  readonly rows?: readonly number[];
  /** Side of the last row worked, per size. */
  readonly last?: readonly Side[];
  /** Stitches that wait on holders at the end, per size. */
  readonly waiting?: readonly number[];
  /** What a knitter would meet; nothing unless it is named here. */
  readonly meets?: readonly string[];
}

/** The text, stitches before and after (one number per size), and what else is known. */
export type Wording = readonly [text: string, before: readonly number[], after: readonly number[], told?: Told];

/** Met where another reading than the first fits: no trouble. */
const soft = new Set(['readingNotDefault']);

export function holdsFor(wordings: readonly Wording[]): void {
  it.each(wordings.map((wording) => [wording[0], wording] as const))('%s', (text, [, before, after, told = {}]) => {
    const { rows, last, waiting, meets = [], ...options } = told;
    const worked = work(text, { start: before, ...options });
    expect(worked.kinds.filter((kind) => !soft.has(kind))).toEqual(meets);
    expect(worked.needles.map((needles) => needles.sure)).toEqual(before.map(() => true));
    expect(worked.end).toEqual(after);
    if (rows) expect(worked.rows).toEqual(rows);
    if (last) expect(worked.last).toEqual(last);
    if (waiting) expect(worked.held.map((sets) => sets.reduce((sum, set) => sum + (set.used ? 0 : set.n), 0))).toEqual(waiting);
  });
}
