import { describe, expect, test } from 'vitest';
import type { Row } from '../../grammar/tree.ts';
import type { Section } from '../../src/pattern/pattern.ts';
import { rowLinear } from '../../src/replay/multiples.ts';
import { traditional } from './traditional-patterns.ts';
import { patternOf, work } from './work.ts';

const asked = new Set(['readingNotDefault', 'readingsDiffer', 'repeatNotWorked', 'yarnOverAtEdge', 'doubleYarnOverUnruled']);
const ends = (text: string): string => (/[.!]$/.test(text) ? text : `${text}.`);

describe('traditional stitch patterns', () => {
  test.each(traditional.map((pattern) => [`${pattern.name} (${pattern.source})`, pattern] as const))('%s', (_, pattern) => {
    const text = pattern.rows.map((row, index) => `Row ${index + 1}: ${ends(row.text)}`).join(' ');
    const { multiple } = pattern;
    const repeats = multiple === null ? [1] : [0, 1, 2, 5, 11].map((more) => pattern.smallest + more);
    for (const n of repeats) {
      const start = multiple === null ? (pattern.castOn as number) : multiple.of * n + multiple.plus;
      const worked = work(text, { start });
      expect(worked.observations.filter((each) => !asked.has(each.kind))).toEqual([]);
      expect(worked.entries.map((entry) => entry.after[0])).toEqual(
        pattern.rows.map((row) => (typeof row.after === 'number' ? row.after : row.after.perRepeat * n + row.after.plus)),
      );
    }
    if (multiple === null) return;
    // The same for every number of repeats at once.
    const whole = patternOf(text, 1);
    let count = { perRepeat: multiple.of, plus: multiple.plus };
    (whole.sections[0] as Section).statements.forEach((statement, index) => {
      const { after, misfit } = rowLinear(whole, (statement as Row).children, count);
      expect(misfit).toBeNull();
      expect(after).toEqual(pattern.rows[index]?.after);
      if (after !== null) count = after;
    });
  });
});
