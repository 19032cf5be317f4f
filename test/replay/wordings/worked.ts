/** Rows as people write them, with the stitches before and after: each must be read whole, worked surely, and end as said. */
import { expect } from 'vitest';
import { read } from '../../grammar/outline.ts';
import { type WorkOptions, work } from '../work.ts';

export interface Told extends Omit<WorkOptions, 'start'> {
  /** Where the yarn stands after each row: stitches that a right-side row has behind it. */
  readonly cursors?: readonly number[];
  /** In a round: stitches past its beginning, or before it with a minus. */
  readonly around?: readonly number[];
  /** Rows worked in the first size. */
  readonly rows?: number;
  /** Stitches worked in all the rows of the first size. */
  readonly worked?: number;
  /** What a knitter would meet; nothing when not given. */
  readonly met?: readonly string[];
}

/** The words, stitches before, stitches after; per size where there are sizes. */
export type Wording = readonly [text: string, before: number | readonly number[], after: number | readonly number[], told?: Told];

/** Remarks on the wording that change no count. */
const soft = new Set([
  'readingNotDefault',
  'readingsDiffer',
  'repeatNotWorked',
  'yarnOverAtEdge',
  'doubleYarnOverUnruled',
  'turnAgain',
  'leftDiffersNot',
]);

export function holds([text, before, after, told = {}]: Wording, all: Partial<WorkOptions> = {}): void {
  const start = typeof before === 'number' && typeof after !== 'number' ? after.map(() => before) : before;
  const sizes = typeof start === 'number' ? 1 : start.length;
  const tree = read(text, { sizes: sizes === 1 ? ['one'] : Array.isArray(start) ? start.map((_, size) => String(size + 1)) : [] });
  expect(tree).not.toContain('UNREAD');
  const worked = work(text, { ...all, ...told, start });
  const met = worked.observations.map((each) => each.kind).filter((kind) => !soft.has(kind));
  const seen = {
    tree,
    met: told.met === undefined ? met.filter((kind) => kind !== 'loopsOpen') : met,
    sure: worked.needles.every((needles) => needles.sure),
    end: worked.end,
    ...(told.cursors ? { cursors: worked.cursors } : {}),
    ...(told.around ? { around: worked.around } : {}),
    ...(told.rows === undefined ? {} : { rows: worked.rows[0] }),
    ...(told.worked === undefined ? {} : { worked: worked.entries.reduce((sum, each) => sum + (each.takes[0] ?? 0) * each.times, 0) }),
  };
  expect(seen).toEqual({
    tree,
    met: told.met ?? [],
    sure: true,
    end: typeof after === 'number' ? [after] : after,
    ...(told.cursors ? { cursors: told.cursors } : {}),
    ...(told.around ? { around: told.around } : {}),
    ...(told.rows === undefined ? {} : { rows: told.rows }),
    ...(told.worked === undefined ? {} : { worked: told.worked }),
  });
}
