import { describe, expect, test } from 'vitest';
import { placer } from '../../src/manuscript/place.ts';

const at = (source: string, offset: number): string => {
  const { line, column } = placer(source)(offset);
  return `${line}:${column}`;
};

describe('line and column', () => {
  test.each([
    ['ab\ncd', 0, '1:1'],
    ['ab\ncd', 2, '1:3'],
    ['ab\ncd', 3, '2:1'],
    ['ab\r\ncd', 3, '1:4'],
    ['ab\r\ncd', 4, '2:1'],
    ['ab\rcd', 3, '2:1'],
    ['a\n\r\nb', 4, '3:1'],
    ['', 0, '1:1'],
    ['ab\n', 3, '2:1'],
  ])('%j at %i is %s', (source, offset, expected) => {
    expect(at(source, offset)).toBe(expected);
  });

  test('columns count UTF-16 units, as editors do', () => {
    expect(at('🧶k2', 2)).toBe('1:3');
  });

  test('a byte order mark takes no column', () => {
    expect(at('\ufeffab\ncd', 1)).toBe('1:1');
    expect(at('\ufeffab\ncd', 4)).toBe('2:1');
    expect(at('\ufeffab', 0)).toBe('1:1');
  });

  test('an offset outside the text moves to its nearest end', () => {
    expect(at('ab\ncd', 99)).toBe('2:3');
    expect(at('ab\ncd', -5)).toBe('1:1');
  });
});
