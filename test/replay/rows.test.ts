import { describe, expect, test } from 'vitest';
import type { RowChoice } from '../../src/replay/work.ts';
import { firstChoice } from '../../src/replay/work.ts';
import { rowFacts } from './row-facts.ts';
import { work, workAs } from './work.ts';

const softKinds = new Set(['readingNotDefault', 'readingsDiffer', 'repeatNotWorked', 'yarnOverAtEdge', 'doubleYarnOverUnruled']);

describe('a row fits or does not', () => {
  test.each(
    rowFacts.map(
      (fact) =>
        [
          `${fact.start}${fact.markers ? ` m@${fact.markers.join(' m@')}` : ''}${fact.reading ? ` {${fact.reading}}` : ''}: ${fact.text}`,
          fact,
        ] as const,
    ),
  )('%s', (_, fact) => {
    const options = { start: fact.start, ...(fact.markers ? { markers: fact.markers } : {}) };
    if (fact.reading !== undefined) {
      const choice: RowChoice =
        fact.reading === 'more' || fact.reading === 'all'
          ? { ...firstChoice, times: fact.reading }
          : { ...firstChoice, loop: fact.reading };
      expect(workAs(`Row 1: ${fact.text}`, options, choice)).toEqual({ fits: true, end: fact.end });
      return;
    }
    const worked = work(`Row 1: ${fact.text}`, options);
    const hard = worked.observations.filter((each) => !softKinds.has(each.kind));
    if (fact.refused === undefined) {
      expect(hard).toEqual([]);
      expect(worked.needles.map((needles) => needles.sure)).toEqual([true]);
      expect(worked.end).toEqual([fact.end]);
      return;
    }
    if (fact.refused === 'starOpen') {
      // A star that nothing repeats is not understood, so the count after it is not known.
      expect(hard).toEqual([]);
      expect(worked.needles.map((needles) => needles.sure)).toEqual([false]);
      return;
    }
    expect(hard.map((each) => each.kind)).toEqual([fact.refused]);
    if (fact.left !== undefined) expect(hard[0]?.numbers['left']).toEqual([fact.left]);
  });
});
