import { describe, expect, test } from 'vitest';
import { vectors } from './vectors.ts';
import { work } from './work.ts';

describe('garment language leaves the stitches it should', () => {
  test.each(vectors.map((vector) => [`${vector.start.join(', ')}: ${vector.text}`, vector] as const))('%s', (_, vector) => {
    const worked = work(vector.text, {
      start: vector.start,
      ...(vector.first ? { side: vector.first } : {}),
      ...(vector.mode ? { mode: vector.mode } : {}),
      ...(vector.holders ? { held: vector.holders } : {}),
    });
    if (vector.refused !== undefined) {
      expect(worked.kinds).toContain(vector.refused);
      return;
    }
    expect(worked.observations.filter((each) => each.kind !== 'readingNotDefault')).toEqual([]);
    expect(worked.end).toEqual(vector.end);
    expect(worked.needles.every((needles) => needles.sure)).toBe(true);
    if (vector.rows) expect(worked.rows).toEqual(vector.rows);
    if (vector.rowsBetween)
      for (const rows of worked.rows)
        expect(rows).toSatisfy((n: number) => n >= (vector.rowsBetween?.[0] ?? 0) && n <= (vector.rowsBetween?.[1] ?? 0));
    if (vector.last) expect(worked.last).toEqual(vector.last);
    if (vector.held) expect(worked.held.map((sets) => sets.reduce((sum, set) => sum + (set.used ? 0 : set.n), 0))).toEqual(vector.held);
  });
});
