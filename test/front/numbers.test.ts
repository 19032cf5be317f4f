import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { dimensionAt } from '../../src/pattern/front/dimensions.ts';
import { numberListAt, numberLists } from '../../src/pattern/front/numbers.ts';
import { printedNumberAt } from '../../src/pattern/front/printed-number.ts';

// Every form here is common practice of printed patterns; no single source.
const single: readonly [string, number, number?][] = [
  ['7', 7],
  ['7.5', 7.5],
  ['½', 0.5],
  ['7½', 7.5],
  ['7 ½', 7.5],
  ['7 1/2', 7.5],
  ['7-1/2', 7.5],
  ['21-1/2 in', 21.5, 6],
  ['1/4', 0.25],
  ['3⁄4', 0.75],
  ['19¾ in', 19.75, 3],
  ['5⅝', 5.625],
  ['⅔', 2 / 3],
  ['seven', 7],
  ['Twenty sts', 20, 6],
  ['1,150 m', 1150, 5],
  ['12,5', 12, 2],
  ['12. ', 12, 2],
  ['4/6', 4, 1],
  ['1/2/3', 1, 1],
];

describe('one printed number', () => {
  it.each(single)('%s is %d', (text, value, length = text.length) => {
    expect(printedNumberAt(text, 0)).toMatchObject({ value, length });
  });
  it.each(['seventy', 'twentyone', 'x', '', ' 7', '(7'])('%s is none', (text) => {
    expect(printedNumberAt(text, 0)).toBeNull();
  });
  it('reads a decimal comma when asked to', () => {
    expect(printedNumberAt('12,5 cm', 0, { decimalComma: true })).toMatchObject({ value: 12.5, length: 4 });
  });
});

type Row = [text: string, sizes: number | null, values: (number | null)[], upper?: (number | null)[] | null, read?: string];
const lists: readonly Row[] = [
  ['98 [110: 122: 134] sts', 4, [98, 110, 122, 134], null, '98 [110: 122: 134]'],
  ['5(6:7)', 3, [5, 6, 7]],
  ['5, (6, 7)', 3, [5, 6, 7]],
  ['5 (6; 7; 8)', 4, [5, 6, 7, 8]],
  ['5 {6, 7}', 3, [5, 6, 7]],
  ['5[6 - 7 - 8]', 4, [5, 6, 7, 8]],
  ['5 (6-7-8)', 4, [5, 6, 7, 8]],
  ['1 (2, 3)[4, 5]', 5, [1, 2, 3, 4, 5]],
  ['1 (2, 3, 4, 5) (6, 7, 8, 9)', 9, [1, 2, 3, 4, 5, 6, 7, 8, 9]],
  ['32 (35, 38)(44, 47)', 5, [32, 35, 38, 44, 47]],
  ['1 (2) (3) (4)', 4, [1, 2, 3, 4]],
  ['1 (2) 3 (4) 5 (6)', 6, [1, 2, 3, 4, 5, 6]],
  ['12 [13] (14, 15) buttons', 4, [12, 13, 14, 15], null, '12 [13] (14, 15)'],
  ['(100-104-110)(84-88-92)', 6, [100, 104, 110, 84, 88, 92]],
  ['22 (24: 26) [32: 34: 36]', 6, [22, 24, 26, 32, 34, 36]],
  ['12/14/16', 3, [12, 14, 16]],
  ['12/14', 2, [12, 14]],
  ['92-98-104', 3, [92, 98, 104]],
  ['92 – 98 – 104', 3, [92, 98, 104]],
  ['81–86 (92–97)', 2, [81, 92], [86, 97]],
  ['76-81 (86-91: 97-102) cm', 3, [76, 86, 97], [81, 91, 102], '76-81 (86-91: 97-102)'],
  ['82 (86-92) sts', 3, [82, 86, 92], null, '82 (86-92)'],
  ['36-38 (40-42) in', 2, [36, 40], [38, 42], '36-38 (40-42)'],
  ['48–51(53–56:58–61)', 3, [48, 53, 58], [51, 56, 61]],
  ['15 (15½-16) ins', 3, [15, 15.5, 16], null, '15 (15½-16)'],
  ['42-44', 4, [42], [44]],
  ['42-44', 2, [42, 44]],
  ['5 (–, 7, 8)', 4, [5, null, 7, 8]],
  ['-[0, 2, 4] times', 4, [null, 0, 2, 4], null, '-[0, 2, 4]'],
  ['_[30, _, 36]', 4, [null, 30, null, 36]],
  ['– (–: 86: 90)', 4, [null, null, 86, 90]],
  ['5 (n/a, 7, x)', 4, [5, null, 7, null]],
  ['5 (6, , 8)', 4, [5, 6, null, 8]],
  ['8th (8th: 6th) row', 3, [8, 8, 6], null, '8th (8th: 6th)'],
  ['7th, (4th, 4th) row', 3, [7, 4, 4], null, '7th, (4th, 4th)'],
  ['four(four:five) more', 3, [4, 4, 5], null, 'four(four:five)'],
  ['21¾ [22½: 23¼: 24: 24¾] in', 5, [21.75, 22.5, 23.25, 24, 24.75], null, '21¾ [22½: 23¼: 24: 24¾]'],
  ['36" (40", 44")', 3, [36, 40, 44]],
  ['950 (1,040, 1,130) yds', 3, [950, 1040, 1130], null, '950 (1,040, 1,130)'],
  ['100(110,120)', 3, [100, 110, 120]],
  ['87,5 (92,5: 100,5) cm', 3, [87.5, 92.5, 100.5], null, '87,5 (92,5: 100,5)'],
  ['12,5 cm', null, [12.5], null, '12,5'],
  // Lists with a slip in them come back as they stand.
  ['98 (106: 114) sts', 4, [98, 106, 114], null, '98 (106: 114)'],
  ['98 (106 114: 122)', 4, [98, 106, 114, 122]],
  ['32 (35. 38)', 3, [32, 35, 38]],
  ['98 (106: 114: 122 sts', 4, [98, 106, 114, 122], null, '98 (106: 114: 122'],
  ['79 (84, 90: 96)', 4, [79, 84, 90, 96]],
  // Brackets that hold something else are left alone.
  ['13 in (33 cm)', null, [13], null, '13'],
  ['24 (61 cm)', null, [24], null, '24'],
  ['20 (22 sts)', null, [20], null, '20'],
  ['2 (k2, p2) times', null, [2], null, '2'],
  ['19¾ in', null, [19.75], null, '19¾'],
  ['20 (22)', 2, [20, 22]],
];

describe('a list of numbers', () => {
  it.each(lists)('%s in %s sizes', (text, sizes, values, upper = null, read = text) => {
    const list = numberListAt(text, 0, sizes);
    expect(list?.values).toEqual(values);
    expect(list?.upper).toEqual(upper);
    expect(text.slice(0, list?.length)).toBe(read);
  });

  it('says where each value stands and whether the bracket was closed', () => {
    const text = '98 (106: 114';
    const list = numberListAt(text, 0, 3);
    expect(list?.places.map(({ start, end }) => text.slice(start, end))).toEqual(['98', '106', '114']);
    expect(list?.closed).toBe(false);
    expect(list?.bracket).toBe('(');
  });

  it.each(['(k1, p1) to end', '(RS)', '– 44 sts', '(33 cm)', '(4)', 'sts'])('%s is none', (text) => {
    expect(numberListAt(text, 0, null)).toBeNull();
  });
});

describe('the lists of a sentence', () => {
  it('finds them in order, the number inside k2tog left out', () => {
    const text = 'K17 (19, 21), k2tog, then k– (4, 6) to last 3 sts—52 (56, 60) sts.';
    const found = numberLists(text, 3).map((list) => text.slice(list.index, list.index + list.length));
    expect(found).toEqual(['17 (19, 21)', '– (4, 6)', '3', '52 (56, 60)']);
  });
  it('reads the count after a long dash as one list', () => {
    const text = 'k6— – (–, 276, 287) sts';
    const found = numberLists(text, 4).filter((list) => list.values.length > 1);
    expect(found.map((list) => list.values)).toEqual([[null, null, 276, 287]]);
  });
});

describe('width by height', () => {
  it.each([
    ['45 × 45 cm', [45], [45]],
    ['17¾ x 17¾ in', [17.75], [17.75]],
    ['48 in x 60 in', [48], [60]],
    ['10 by 12 cm', [10], [12]],
  ] as const)('%s', (text, width, height) => {
    const found = dimensionAt(text, 0, null, numberListAt(text, 0, null)!);
    expect(found?.width.values).toEqual(width);
    expect(found?.height.values).toEqual(height);
  });
  it('is not a multiplication of balls', () => {
    expect(dimensionAt('45 sts', 0, null, numberListAt('45 sts', 0, null)!)).toBeNull();
  });
});

describe('any text', () => {
  const odd = fc.string({ unit: fc.constantFrom(...'0123456789()[]{}:;,.-–—/½¼x_ nabcm"\n'), maxLength: 80 });
  it('never throws, stays inside the text, and keeps its order', () => {
    fc.assert(
      fc.property(odd, fc.constantFrom(null, 1, 2, 3, 5), (text, sizes) => {
        let last = 0;
        for (const list of numberLists(text, sizes)) {
          expect(list.index).toBeGreaterThanOrEqual(last);
          last = list.index + list.length;
          expect(last).toBeLessThanOrEqual(text.length);
          expect(list.places.length).toBe(list.values.length);
        }
      }),
    );
  });
});
