/** Edges and columns against each other: what is asked of a row that is the same from both ends. Common practice, no source. */
import { describe, expect, test } from 'vitest';
import { told } from './drafts.ts';

const draft = (...lines: readonly string[]): string => `# Gull Strip\n\nCO 30 sts.\n\n${lines.join('\n\n')}\n\nBO all sts.\n`;

describe('edges that mirror each other', () => {
  const asked = (...rows: readonly string[]): readonly string[] => told('edge-symmetry', draft(...rows));

  test('k4 at one edge and k3 at the other, where another row has 3 at both', () => {
    expect(asked('Row 1 (RS): Knit.', 'Row 2: K3, p to last 3 sts, k3.', 'Row 3: Knit.', 'Row 4: K4, p to last 3 sts, k3.')).toEqual([
      'query “K4” stands at one edge and “k3” at the other, in a row that is otherwise the same from both ends; Row 2 has the same number on both. Is one of the two wrong?',
    ]);
  });

  test('no other row to go by: a border may be wider at one edge', () => {
    expect(asked('Row 1 (RS): Knit.', 'Row 2: K6, p to last 3 sts, k3.')).toEqual([]);
  });

  test('two rows with the same two numbers are meant', () => {
    expect(asked('Row 1 (RS): K3, p to last 6 sts, k6.', 'Row 2: K6, p to last 3 sts, k3.', 'Row 3: K3, p to last 3 sts, k3.')).toEqual([]);
  });

  test('decreases that mirror each other in flat work need no other row', () => {
    expect(asked('Row 1 (RS): K3, ssk, k to last 4 sts, k2tog, k2. 28 sts.', 'Row 2: Purl.')).toHaveLength(1);
  });

  test('in a round one stitch more on one side may be the seam', () => {
    const source =
      '# Gull Sleeve\n\nCO 60 sts. Join in the round.\n\nRnd 1: K2, k2tog, k to last 3 sts, ssk, k1. 58 sts.\n\nRnd 2: Knit.\n\nBO all sts.\n';
    expect(told('edge-symmetry', source)).toEqual([]);
  });

  test('on both sides of a marker, where another row is alike', () => {
    const rows = [
      'Row 1 (RS): K15, pm, k15.',
      'Row 2: P to m, sm, p to end.',
      'Row 3: K to 3 sts before m, ssk, k1, sm, k1, k2tog, k to end. 28 sts.',
      'Row 4: P to m, sm, p to end.',
      'Row 5: K to 3 sts before m, ssk, k1, sm, k2, k2tog, k to end. 26 sts.',
    ];
    expect(asked(...rows)).toEqual([
      'query “k1” stands on one side of the marker and “k2” on its other side, in a row that is otherwise the same from both sides; Row 3 has the same number on both. Is one of the two wrong?',
    ]);
  });
});

describe('columns of rib', () => {
  const asked = (...rows: readonly string[]): readonly string[] =>
    told('rib-columns', `# Buoy Rib\n\nCO 21 sts.\n\n${rows.join('\n\n')}\n\nBO all sts.\n`);

  test('one stitch near the edge stands the wrong way', () => {
    expect(asked('Row 1 (RS): K1, *p1, k1; rep from * to end.', 'Row 2: P3, *k1, p1; rep from * to end.')).toHaveLength(1);
  });

  test('rib as it should be', () => {
    expect(asked('Row 1 (RS): K1, *p1, k1; rep from * to end.', 'Row 2: P1, *k1, p1; rep from * to end.')).toEqual([]);
  });

  test('moss stitch has no columns', () => {
    expect(asked('Row 1 (RS): K1, *p1, k1; rep from * to end.', 'Row 2: K1, *p1, k1; rep from * to end.')).toEqual([]);
  });

  test('a garter stitch at each edge is a border', () => {
    expect(
      asked('Row 1 (RS): K1, *k1, p1; rep from * to last 2 sts, k2.', 'Row 2: K1, *p1, k1; rep from * to last 2 sts, p1, k1.'),
    ).toEqual([]);
  });
});

test('K0 in a draft of one size', () => {
  expect(told('nothing-to-work', draft('Row 1 (RS): K0, k30.', 'Row 2: Purl.'))).toEqual([
    'query “K0” works no stitch, in any size. Which number is meant?',
  ]);
});
