import { expect, test } from 'vitest';
import { read } from './outline.ts';

test('a row is read stitch by stitch', () => {
  expect(read('Row 1 (RS): K2, *yo, k2tog; rep from * to last 2 sts, k2.')).toBe('row 1 (RS): k{2} *[yo kNtog{2}]→last 2 k{2}');
});
