/** Rows against each other: numbering, references, markers, sets left by a bind-off. Common practice, no source. */
import { describe, expect, test } from 'vitest';
import { proof } from '../../src/index.ts';
import { told } from './drafts.ts';

const draft = (...lines: readonly string[]): string => `# Gull Strip\n\n${lines.join('\n\n')}\n`;

describe('references', () => {
  test('a row that is to be worked as itself', () => {
    expect(told('row-missing', draft('CO 20 sts.', 'Row 1: Knit.', 'Row 2: As Row 2.', 'BO all sts.'))).toEqual([
      'error Row 2 is to be worked as Row 2, which is itself. Which row is meant?',
    ]);
  });

  test('a row that stands only further on', () => {
    expect(told('row-missing', draft('CO 20 sts.', 'Row 1: Knit.', 'Row 2: As Row 3.', 'Row 3: Purl.', 'BO all sts.'))).toEqual([
      'error Row 3 is called for here, and it stands only further on. Which row is meant?',
    ]);
  });
});

describe('“these rows form the pattern”', () => {
  const rows = [
    'CO 20 sts.',
    'Row 1 (RS): Knit.',
    'Row 2: Purl.',
    'Row 3: *K2, p2; rep from * to end.',
    'Row 4: *K2, p2; rep from * to end.',
  ];
  const asked = (...more: readonly string[]): readonly string[] => told('rows-of-pattern', draft(...rows, ...more, 'BO all sts.'));

  test('six are named, four stand there', () => {
    expect(asked('These 6 rows form the pattern.')).toEqual([
      'query “These 6 rows” stands below Rows 1–4, which are 4. Is 4 meant, or are 2 rows missing?',
    ]);
  });

  test('four are named', () => expect(asked('These 4 rows form the pattern.')).toEqual([]));

  test('rows worked again are counted', () => expect(asked('Rep Rows 1–4 once more.', 'These 8 rows form the pattern.')).toEqual([]));
});

describe('numbering', () => {
  test('Row 2 straight after the cast-on', () => {
    expect(told('row-numbers', draft('CO 20 sts.', 'Row 2 (WS): Purl.', 'Row 3: Knit.', 'BO all sts.'))).toEqual([
      'query The numbering begins with Row 2, straight after the cast-on. Is a row lost, or is this Row 1?',
    ]);
  });

  test('the cast-on row is said to be Row 1', () => {
    expect(told('row-numbers', draft('CO 20 sts. This counts as Row 1.', 'Row 2 (WS): Purl.', 'Row 3: Knit.', 'BO all sts.'))).toEqual([]);
  });

  test('Row 2 twice, the second with all wrong-side rows', () => {
    const rows = ['Row 2 (RS): K3, yo, k to end.', 'Row 2 and all WS rows: Purl.', 'Row 3: K3, yo, k to end.'];
    expect(told('row-numbers', draft('CO 20 sts.', ...rows, 'BO all sts.'))).toEqual([
      'query Row 2 stands twice, and there is no 1: the first is probably 1.',
    ]);
  });
});

describe('sets on both sides of a bind-off', () => {
  const neck = ['CO 86 sts.', 'Row 1 (RS): Knit.', 'Row 2: Purl.', 'Next row: K34, BO 18 sts, k to end.'];

  test('the last set has another number', () => {
    expect(told('stitches-named', draft(...neck, 'Continue on the last set of 36 sts.', 'Next row: Purl.'))).toEqual([
      'error The instruction speaks of 36 sts, but the bind-off of the row before leaves 34 on that side. One of the two is wrong.',
    ]);
  });

  test('the last set as stated', () => {
    expect(told('stitches-named', draft(...neck, 'Continue on the last set of 34 sts.', 'Next row: Purl.'))).toEqual([]);
  });

  test('each for front and back', () => {
    const rnd = (each: number): string =>
      draft(
        'CO 100 sts. Join in the round.',
        'Rnd 1: Knit.',
        `Rnd 2: BO 8 sts, k42, BO 8 sts, k to end. ${each} sts rem each for front and back.`,
      );
    expect(told('needles-sum', rnd(42))).toEqual([]);
    expect(told('needles-sum', rnd(43))).toEqual(['error The parts add up to 86 sts, but 84 are there to divide.']);
  });
});

describe('nothing left to work', () => {
  test('a repeat that no stitch is left for', () => {
    expect(told('nothing-to-work', draft('CO 8 sts.', 'Row 1 (RS): K4, *k2, p2; rep from * to last 4 sts, k4.', 'BO all sts.'))).toEqual([
      'error No stitch is left for “*k2, p2; rep from * to last 4 sts”, so it is not worked at all: the steps around it take up every stitch.',
    ]);
  });

  test('only the smallest size has none', () => {
    const rows = ['**Sizes:** S (M, L)', 'CO 8 (12, 16) sts.', 'Row 1 (RS): K4, *k2, p2; rep from * to last 4 sts, k4.', 'BO all sts.'];
    expect(told('nothing-to-work', draft(...rows))).toEqual([
      'query In size S, no stitch is left for “*k2, p2; rep from * to last 4 sts”, so it is not worked at all. Is that meant in this size?',
    ]);
  });

  test('one of two markers was never placed, so the run behind it has no stitch', () => {
    const rnds = [
      'CO 40 sts. Join in the round.',
      'Set-up rnd: K20, pm, k to end.',
      'Inc rnd: K to m, sm, m1L, k to m, m1R, sm, k to end.',
      'Next rnd: Knit.',
    ];
    expect(told('nothing-to-work', draft(...rnds))).toHaveLength(1);
  });
});

test('back and forth in rows after a round that bound off: the label says whether the work was turned first', () => {
  const rows = (side: string): string =>
    draft(
      'CO 40 sts. Join in the round.',
      'Rnd 1: BO 20 sts, k to end.',
      'Work back and forth in rows.',
      `Row 1 (${side}): Purl.`,
      'Row 2: Knit.',
      'BO all sts.',
    );
  expect(
    proof(rows('WS'))
      .replay.entries.map((entry) => entry.side)
      .slice(2, 4),
  ).toEqual(['WS', 'RS']);
  expect(told('side-mismatch', rows('WS'))).toEqual([]);
  expect(
    proof(rows('RS'))
      .replay.entries.map((entry) => entry.side)
      .slice(2, 4),
  ).toEqual(['RS', 'WS']);
  expect(told('side-mismatch', rows('RS'))).toEqual([]);
});

test('a tubular cast-on ends with a yarn over', () => {
  const rows = [
    'CO 40 sts with waste yarn. Change to main yarn.',
    'Row 1 (RS): *K1, yo; rep from * to end. 80 sts.',
    'Row 2: *K1, sl 1 wyif; rep from * to end.',
  ];
  expect(told('yarn-over-at-edge', draft(...rows))).toEqual([]);
});
