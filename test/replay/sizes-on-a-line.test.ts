/** A label of sizes on a line of its own, with no marks of a heading: what stands below it is worked in those sizes only. Common practice, no source. */
import { describe, expect, test } from 'vitest';
import { proof } from '../../src/index.ts';

describe('sizes named on a line of their own', () => {
  test.each([
    'Sizes M and L only:',
    'Sizes M and L only',
    '**Sizes M and L only:**',
    '*Sizes M and L only*',
    'For sizes M and L only:',
    '### Sizes M and L only',
    'Sizes M & L only:',
  ])('%s', (label) => {
    const { entries } = proof(
      `# Tern Cap\n\n**Sizes:** S (M, L)\n\n## Crown\n\nCO 40 (50, 60) sts.\n\nRow 1: Knit.\n\n${label}\n\nRow 2: K1, m1, k to end.\n\nAll sizes:\n\nRow 3: Purl.\n`,
    ).replay;
    expect(entries.map((entry) => [entry.label, entry.after])).toEqual([
      ['Cast on', [40, 50, 60]],
      ['Row 1', [40, 50, 60]],
      ['Row 2', [null, 51, 61]],
      ['Row 3', [40, 51, 61]],
    ]);
  });
});
