/** "Three times": three in all or three more; what follows decides, or the author is asked. Common practice, no source. */
import { expect, test } from 'vitest';
import { proof } from '../../src/index.ts';

const played = (...lines: readonly string[]): { readonly after: number | null | undefined; readonly said: readonly string[] } => {
  const { replay, findings } = proof(`# Tern Cloth\n\nCO 60 sts.\n\n${lines.join('\n\n')}\n\nBO all sts.\n`);
  const rows = replay.entries.filter((entry) => entry.unit !== 'step');
  return { after: rows.at(-1)?.after[0], said: findings.map((each) => `${each.level} ${each.rule}`) };
};

const rows = ['Row 1 (RS): Knit.', 'Row 2: Purl.', 'Row 3: K1, ssk, k to last 3 sts, k2tog, k1.', 'Row 4: Purl.'];

test('the next row is 11: three more', () =>
  expect(played(...rows, 'Rep Rows 3 and 4 three times.', 'Row 11: Knit.')).toEqual({ after: 52, said: [] }));

test('the next row is 9: three in all', () =>
  expect(played(...rows, 'Rep Rows 3 and 4 three times.', 'Row 9: Knit.')).toEqual({ after: 54, said: ['style one-reading-fits'] }));

test('a count stated later fits three in all', () =>
  expect(played(...rows, 'Rep last 2 rows three times.', 'Next row: Knit. 54 sts.')).toEqual({
    after: 54,
    said: ['style one-reading-fits'],
  }));

test('a count stated later fits three more', () =>
  expect(played(...rows, 'Rep last 2 rows three times.', 'Next row: Knit. 52 sts.')).toEqual({ after: 52, said: [] }));

test('nothing decides: both are told with their counts', () => {
  const { findings } = proof(`# Tern Cloth\n\nCO 60 sts.\n\n${rows.join('\n\n')}\n\nRep last 2 rows three times.\n\nBO all sts.\n`);
  expect(findings.map((each) => each.message)).toEqual([
    '“Rep last 2 rows three times” can be worked in two ways, and both fit: if the pass just worked is not counted in, 52 sts; if the pass just worked is one of them, 54 sts. Which is meant?',
  ]);
});

test('“three more times” is no question', () => expect(played(...rows, 'Rep last 2 rows three more times.').said).toEqual([]));

test('rows that keep the count are no question', () =>
  expect(played('Row 1 (RS): Knit.', 'Row 2: Purl.', 'Rep last 2 rows three times.').said).toEqual([]));

test('next and every 4th row 5 times: the bind-off of 48 shows six decreases, that of 50 five', () => {
  const shaped = (last: number): readonly string[] =>
    proof(
      `# Tern Cloth\n\nAll decreases are k2tog.\n\nCO 60 sts.\n\nKnit 2 rows.\n\nDec 1 st at each end of next and every foll 4th row 5 times.\n\nKnit 3 rows.\n\nBO all ${last} sts.\n`,
    ).findings.map((each) => `${each.level} ${each.rule}`);
  expect(shaped(50)).toEqual([]);
  expect(shaped(48)).toEqual(['style one-reading-fits']);
  expect(shaped(46)).toEqual(['error stitches-named']);
});
