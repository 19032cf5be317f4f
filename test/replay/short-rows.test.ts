import { describe, expect, test } from 'vitest';
import { shortRowFacts } from './short-row-facts.ts';
import { gaps, work } from './work.ts';

describe('short rows', () => {
  test.each(shortRowFacts.map((fact) => [fact.title, fact] as const))('%s', (_, fact) => {
    const worked = work(fact.text, { start: fact.start, ...(fact.mode ? { mode: fact.mode } : {}) });
    expect(worked.kinds.filter((kind) => kind !== 'readingNotDefault')).toEqual(
      fact.met ?? worked.kinds.filter((kind) => kind === 'loopsOpen' && fact.open === undefined),
    );
    expect(worked.end).toEqual([fact.end]);
    if (fact.cursors) expect(worked.cursors).toEqual(fact.cursors);
    if (fact.around) expect(worked.around).toEqual(fact.around);
    if (fact.rows !== undefined) expect(worked.rows).toEqual([fact.rows]);
    if (fact.worked !== undefined)
      expect(worked.entries.reduce((sum, entry) => sum + (entry.takes[0] ?? 0) * entry.times, 0)).toBe(fact.worked);
    if (fact.open)
      expect(
        gaps(worked.needles[0] as (typeof worked.needles)[number])
          .map((gap) => gap.at)
          .filter((at) => at > 0 && at < fact.end),
      ).toEqual(fact.open);
  });
});
