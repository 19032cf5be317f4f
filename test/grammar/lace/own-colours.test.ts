/** Colours by the short words that a draft explains: "c1 = colour 1". */
import { expect, test } from 'vitest';
import { vocabularyOf } from '../../../grammar/vocabulary.ts';
import { read } from '../outline.ts';

const defined = new Map([
  ['c1', 'colour 1'],
  ['c2', 'colour 2'],
  ['c4f', 'cable 4 front'],
]);

test('a colour behind a stitch changes no count', () => {
  const vocabulary = vocabularyOf({ defined });
  expect(read('Rnd 1: [k3 c1, k1 c2, k4 c1] to end.', { vocabulary })).toBe('round 1: [k{3} k{1} k{4}]→end');
  expect(read('Rnd 2: *2 c1, 3 c2; rep from * around.', { vocabulary })).toBe('round 2: *[k{2} k{3}]→end');
});

test('a draft that explains no such colour has none', () => {
  expect(read('Rnd 1: [k3 c1, k1 c2] to end.', { vocabulary: vocabularyOf({}) })).not.toBe('round 1: [k{3} k{1}]→end');
});
