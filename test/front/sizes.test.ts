import { describe, expect, it } from 'vitest';
import { read } from './draft.ts';

const [s3, s4] = [
  ['S', 'M', 'L'],
  ['XS', 'S', 'M', 'L'],
];
const body = '\n\n## Back\n\nCast on 60 (64, 68) sts.\n';

// Phrasings are common practice of printed patterns; no single source.
const declared: readonly [string, readonly string[], string?][] = [
  ['## Sizes\n\nXS (S, M, L)', s4],
  ['**Sizes:** XS (S, M, L, 1X)', ['XS', 'S', 'M', 'L', '1X']],
  ['**SIZES** S(M:L), to fit head 48(52:56) cm', s3],
  ['Sizes S (M, L)', s3],
  ['Size 1 (2, 3)(4, 5, 6); shown in size 3', ['1', '2', '3', '4', '5', '6']],
  ['Sizes: S, M, L', s3],
  ['Sizes: S/M/L', s3],
  ['Sizes: S, M and L.', s3],
  ['SIZES: 8 (10: 12: 14)', ['8', '10', '12', '14']],
  ['**Size.** Small (Medium, Large)', ['Small', 'Medium', 'Large']],
  ['Sizes: S [M, L] {XL, 2XL}', ['S', 'M', 'L', 'XL', '2XL']],
  ['To fit age 2-3 (4-5: 6-7) years', ['2-3 years', '4-5 years', '6-7 years']],
  ['**To fit age:** 1 [2, 3] years', ['1 year', '2 years', '3 years']],
  ['Sizes: 0-3 mths [3-6: 6-12]', ['0-3 mths', '3-6 mths', '6-12 mths']],
  ['Sizes: Newborn (3 months, 6 months)', ['Newborn', '3 months', '6 months']],
  ['To fit bust 81 [91: 102] cm', ['81', '91', '102']],
  ['To fit chest 76-81 (86-91: 97-102) cm', ['76-81', '86-91', '97-102']],
  ['## Sizes\n\n- Small: 81 cm\n- Medium: 91 cm\n- Large: 101 cm', ['Small', 'Medium', 'Large']],
  ['## Measurements\n\n| | S | M | L |\n|---|---|---|---|\n| Bust | 80 | 90 | 100 |', s3],
  ['## Sizing\n\n| Size | S | M | L |\n|---|---|---|---|\n| Bust, cm | 80 | 90 | 100 |', s3],
  ['## Sizes\n\n| Size | Chest |\n|---|---|\n| S | 80 cm |\n| M | 90 cm |\n| L | 100 cm |', s3],
  ['## Info\n\n| | 1 | 2 | 3 |\n|---|---|---|---|\n| Chest, cm | 92 | 102 | 112 |', ['1', '2', '3']],
  ["Sizes: Women's S (M, L)", s3],
  ['## Before you start\n\n**Sizes:** Small (Medium, Large)\n\n**To fit head:** 50 (54, 58) cm', ['Small', 'Medium', 'Large']],
  ['| | Kid | Teen | Adult |\n|---|---|---|---|\n| Hand circumference | 6 in | 7 in | 8 in |', ['Kid', 'Teen', 'Adult']],
  ['|  | Baby | Lap |\n|---|---|---|\n| Width | 26 in | 39 in |\n| Cast on | 105 sts | 157 sts |', ['Baby', 'Lap']],
  ['Numbers are for the Cot size, with the Lap size in parentheses.', ['Cot', 'Lap']],
  ['## Details\n\n| Sizes | S (M, L) |\n|---|---|\n| Yarn | DK |', s3],
  ['The numbers are given for size S (M, L) throughout.', s3],
  ['Instructions are for size Small. Changes for Medium and Large are in parentheses.', ['Small', 'Medium', 'Large']],
  ['::sizes[S | M | L]\n\nSizes: 1 (2, 3, 4)', s3],
  ['---\ntitle: Kelp\nsizes: [S, M, L]\n---\n', s3],
  ['---\nsizes: S (M, L)\n---\n', s3],
  ['---\nsizes:\n  - S\n  - M\n  - L\n---\n', s3],
  ['## Sizes\n\nOne size.', ['one']],
];

describe('declared sizes', () => {
  it.each(declared)('%s', (front, names) => {
    expect(read(`# Kelp Road\n\n${front}${body}`.replace(/^# Kelp Road\n\n---/, '---')).front.sizes?.names).toEqual(names);
  });

  it('says where the names stand', () => {
    const { front, words } = read('# Kelp Road\n\n**Sizes:** XS (S, M, L)\n');
    expect(words(front.sizes!.span)).toBe('XS (S, M, L)');
    expect(front.sizes?.from).toBe('line');
  });
});

describe('sizes that nobody declares', () => {
  it('takes the commonest length of the lists', () => {
    const { front } = read(
      '# Cap\n\nCast on 80 (90, 100) sts.\n\nRow 1: K2 (3, 4), p to end.\n\nRow 2: K8 (9, 10), p2 (3).\n\nRow 3: K1 (2, 3).\n',
    );
    expect(front.sizes).toMatchObject({ names: ['1', '2', '3'], from: 'lists' });
  });
  it.each([
    '# Cap\n\nCast on 80 sts.\n\nRow 1: *K2, p2; rep from * to end.\n',
    '# Cap\n\n24 in (61 cm) round\n\nRow 1: (K2, p2) 20 times.\n\nRow 2: K20 (22 sts).\n',
    '# Cap\n\nCast on 80 (90) sts.\n\nRow 1: K2 (3, 4).\n\nRow 2: K8 (9, 10, 12).\n',
    '# Cap\n\nFinished size: 24 in.\n\nCast on 80 sts.\n',
    '# Cap\n\nCast on 80 sts.\n\nSizes M and L only: work 1 row.\n',
  ])('has none in %j', (source) => {
    expect(read(source).front.sizes).toBeNull();
  });
});
