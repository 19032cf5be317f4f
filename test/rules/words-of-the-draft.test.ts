import { describe, expect, it } from 'vitest';
import { noHouse } from '../../src/house-style/house-style.ts';
import { told } from './drafts.ts';

const jacket = (sizes: string, cautions: string, work: string): string =>
  `# Kelp Jacket\n\nSizes: ${sizes}\n\n${cautions === '' ? '' : `## Cautions\n\n${cautions}\n\n`}## Hood\n\nCast on 60 (64) sts.\n\nRow 1: Knit.\n\n## Finishing\n\n${work}\n`;

describe('cautions for children', () => {
  // EN 14682: no drawstrings or functional cords in the hood and neck area up to seven years or 134 cm; to fourteen, none with free ends.
  it.each([
    ['a cord at the hood', '2 (4) years', '', 'Thread the twisted cord through the hood.', 1],
    ['the same for adults', 'S (M)', '', 'Thread the twisted cord through the hood.', 0],
    ['the same for a boy of sixteen', '16 (18) years', '', 'Thread the twisted cord through the hood.', 0],
    ['a cord elsewhere', '2 (4) years', '', 'Sew the cord flat across the back.', 0],
    [
      'a cord with a caution',
      '2 (4) years',
      'Cords at the neck can strangle: leave them out under seven years.',
      'Thread the cord through the hood.',
      0,
    ],
    ['a ban on cords', '2 (4) years', '', 'Do not add a cord to the hood.', 0],
    [
      'free ends in spite of the caution',
      '2 (4) years',
      'EN 14682 allows no cords at the neck. This cord has tasselled ends that hang free below the hood.',
      'Sew the cord on.',
      1,
    ],
  ])('%s', (_, sizes, cautions, work, times) => {
    expect(told('child-safety', jacket(sizes, cautions, work)).filter((one) => one.startsWith('query'))).toHaveLength(times);
  });
  it('small parts are asked about', () => {
    expect(told('child-safety', jacket('3 (6) months', '', 'Sew on the buttons.'))).toEqual([expect.stringMatching(/^query Buttons/)]);
  });
});

describe('terms', () => {
  const draft = (last: string): string =>
    `# Kelp Scarf\n\nTension: 20 sts and 28 rows to 10 cm in stocking stitch\n\nCast on 40 sts.\n\nRow 1: Knit.\n\n${last}\n`;
  it('of one dialect', () => {
    expect(told('mixed-terms', draft('Cast off all sts.'))).toEqual([]);
  });
  it('of two: the rarer are named', () => {
    expect(told('mixed-terms', draft('Bind off all sts.'))).toEqual([expect.stringContaining('"bind off": American')]);
  });
  it('of the house', () => {
    expect(told('mixed-terms', draft('Cast off all sts.'), { ...noHouse, terms: 'US' })).toEqual([
      expect.stringContaining('the house writes American terms'),
    ]);
  });
  it('that mean another fabric across the ocean are a question', () => {
    const both = '# Kelp Scarf\n\nCast on 41 sts.\n\nMoss st row: K1, *p1, k1; rep from * to end.\n\nWork 4 rows in seed st.\n';
    expect(told('mixed-terms', both).filter((one) => one.startsWith('query'))).toHaveLength(1);
  });
});

describe('forms', () => {
  const rows = (third: string): string =>
    `# Kelp Band\n\nCast on 21 sts.\n\nRow 1: Knit.\n\nRow 2: Purl.\n\n${third}: Knit.\n\nRow 4: Purl.\n`;
  it('of labels', () => {
    expect(told('mixed-forms', rows('Row 3'))).toEqual([]);
    expect(told('mixed-forms', rows('3rd row'))).toEqual([expect.stringContaining('"3rd row" here, and "Row 1" in 3 other places')]);
    expect(told('mixed-forms', rows('Row 3'), { ...noHouse, labels: '1st row' })).toEqual([
      expect.stringContaining('the house writes "1st row"'),
    ]);
  });
});

describe('wording', () => {
  it.each([
    ['Row 1: Knit to the the end.', 1],
    ['Row 1: K1, k1, p1.', 0],
    ['Row 1: Knit on on the last row.', 1],
  ])('%s', (row, times) => {
    expect(told('doubled-words', `# Kelp\n\nCast on 20 sts.\n\n${row}\n`)).toHaveLength(times);
  });

  it.each([
    ['Both sleeves are knitted at once.', 1],
    ['It has no sleeves.', 0],
  ])('an introduction to a cap: %s', (words, times) => {
    expect(told('template-leftovers', `# Kelp Cap\n\n${words}\n\n## Cap\n\nCast on 96 sts.\n\nRow 1: Knit.\n`)).toHaveLength(times);
  });
});

describe('a table that repeats numbers', () => {
  const cards = (multiple: string, need: string): string =>
    `# Kelp Cards\n\n## Rib\n\nMultiple of 4 + 3.\n\nRow 1: P3, *k1, p3; rep from * to end.\n\n## To try it\n\n| Pattern | Multiple | Four repeats need |\n|---|---|---|\n| Rib | ${multiple} | ${need} |\n`;
  it.each([
    ['4 + 3', '19 sts', 0],
    ['4 + 3', '20 sts', 1],
    ['4', '16 sts', 0],
    ['any', '20 sts', 0],
  ])('multiple %s, need %s', (multiple, need, times) => {
    expect(told('table-agrees', cards(multiple, need))).toHaveLength(times);
  });
  it('of cast-on stitches', () => {
    const sock = (m: number): string =>
      `# Kelp Socks\n\n## Sizes\n\n| | S | M | L |\n|---|---|---|---|\n| Foot circumference | 18 cm | 20 cm | 23 cm |\n| Cast-on stitches | 56 | ${m} | 72 |\n\n## Cuff\n\nCast on 56 (64, 72) sts. Join in the round.\n\nRound 1: Knit.\n`;
    expect(told('table-agrees', sock(64))).toEqual([]);
    expect(told('table-agrees', sock(66))).toEqual([expect.stringContaining('casts on 66 sts in size M')]);
  });
});

describe('gauge', () => {
  it.each([
    ['22 sts and 30 rows = 10 cm in st st', 'gauge-shape', 0],
    ['22 sts and 20 rows = 10 cm in st st', 'gauge-shape', 1],
    ['18 sts and 36 rows = 10 cm in garter st', 'gauge-shape', 0],
    ['18 sts and 32 rows = 10 cm in st st, blocked', 'gauge-shape', 0],
    ['24 sts = 10 cm in st st', 'gauge-complete', 1],
    ['24 sts and 32 rows = 10 cm in st st', 'gauge-complete', 0],
    ['16 sts = 10 cm in garter st', 'gauge-complete', 0],
  ])('%s: %s', (words, rule, times) => {
    expect(told(rule, `# Kelp\n\nGauge: ${words}\n\nCast on 20 sts.\n\nRow 1: Knit.\n`)).toHaveLength(times);
  });
});

describe('yarn described', () => {
  it.each([
    ['4 x 50 g balls of Orrin Flax', 1],
    ['4 x 50 g balls of Orrin Flax (110 m per ball)', 0],
  ])('%s', (words, times) => {
    expect(told('yarn-described', `# Kelp\n\nYarn: ${words}\n\nCast on 20 sts.\n`)).toHaveLength(times);
  });
});
