/** Rows of text with the stitches before and after them, and definitions with a row that uses what they define. */
import { expect, test } from 'vitest';
import { proof } from '../../../src/index.ts';
import { read } from '../../grammar/outline.ts';
import { type WorkOptions, work } from '../work.ts';

/** A number of stitches, or one for each size. */
type Stitches = number | readonly number[];
/** The text, the stitches before it and after it, and what else stands on the needles. */
export type CountedRow = readonly [string, Stitches, Stitches, Omit<WorkOptions, 'start'>?];

/** What may be asked about a row that is right all the same. */
const questions = new Set(['readingNotDefault', 'repeatNotWorked', 'yarnOverAtEdge', 'doubleYarnOverUnruled']);

const list = (stitches: Stitches): readonly number[] => (typeof stitches === 'number' ? [stitches] : stitches);

export function rowsStand(rows: readonly CountedRow[]): void {
  test.each(rows.map(([text, before, after, options]) => [text, before, after, options] as const))('%s', (text, before, after, options) => {
    const worked = work(text, { start: before, ...options });
    expect(read(text, { sizes: list(before).map(String) })).not.toContain('UNREAD');
    expect(worked.observations.map((each) => each.kind).filter((kind) => !questions.has(kind))).toEqual([]);
    expect(worked.entries.length).toBeGreaterThan(0);
    expect(worked.end).toEqual(list(after));
    expect(worked.needles.every((needles) => needles.sure)).toBe(true);
  });
}
