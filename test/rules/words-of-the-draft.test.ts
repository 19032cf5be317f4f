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
  it.each([
    'Sew the buttons on firmly.',
    'Sew on the buttons with doubled thread and tug each hard.',
    'Sew on the buttons; for a child under three use snaps instead of buttons.',
  ])('%s: the caution settles it', (work) => {
    expect(told('child-safety', jacket('3 (6) months', '', work))).toEqual([]);
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
    // Fewer rows than stitches, in any fabric, pinned out or not: from memory of printed gauges.
    ['22 sts and 14 rnds = 10 cm in cable pattern', 'gauge-shape', 1],
    ['28 sts and 22 rows = 10 cm in st st, blocked', 'gauge-shape', 1],
    ['18 sts and 28 rows = 10 cm in lace pattern, blocked', 'gauge-shape', 0],
    ['14 sts and 13 rows = 10 cm in brioche', 'gauge-shape', 0],
    ['24 sts = 10 cm in the drop stitch pattern', 'gauge-shape', 0],
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

describe('a gauge without rows', () => {
  const scarf = (length: string, rows: string): string =>
    `# Kelp\n\nFinished ${length}\n\nGauge: 24 sts = 10 cm in st st\n\nCast on 48 sts.\n\nRow 1 (RS): Knit.\n\nRow 2: Purl.\n\n${rows}\n\nBind off.\n`;
  it.each([
    ['length: 40 cm', 'Rep Rows 1 and 2 60 times more.', 'query'],
    ['length: 40 cm', 'Rep Rows 1 and 2 until piece measures 40 cm.', 'style'],
    ['width: 20 cm', 'Rep Rows 1 and 2 60 times more.', 'style'],
  ])('%s, “%s”: %s', (length, rows, level) => {
    expect(told('gauge-complete', scarf(length, rows)).map((one) => one.split(' ')[0])).toEqual([level]);
  });
});

describe('a definition beside its remark', () => {
  const list = (meaning: string): string =>
    `# Kelp\n\n## Abbreviations\n\n- k: knit\n- ${meaning}\n- p: purl\n- RS: right side\n- st(s): stitch(es)\n\n## Strip\n\nCast on 20 sts.\n\nRow 1 (RS): K1, m1L, k to end.\n`;
  it.each([
    ['m1L: make one, leaning left (1 st increased)', 0],
    ['m1L: make one, leaning left (2 sts increased)', 1],
    ['k2tog: knit two together (1 stitch decreased, leans right)', 0],
    ['k2tog: knit two together (2 stitches decreased, leans right)', 1],
    ['m1L: make one, leaning left', 0],
  ])('%s', (meaning, times) => {
    expect(told('definition-effect', list(meaning))).toHaveLength(times);
  });
});

describe('abbreviations in their places', () => {
  const rows = (list: string, row: string): string => `# Kelp\n\n${list}\n\nCast on 20 sts.\n\n${row}\n`;
  const five = 'Abbreviations: k, knit; p, purl; RS, right side; st(s), stitch(es); sl, slip';
  it.each([
    ['a bracket that tells how it is worked', five, 'Row 1 (RS): K2, ssk (slip, slip, knit), k to end.', 0],
    ['a bracket that tells which stitches', five, 'Row 1 (RS): K2, ssk (last edging st with the next panel st), k to end.', 1],
    [
      'letters with stops between',
      `${five}; wl.fwd., wool forward; tog., together; rep, repeat`,
      'Row 1 (RS): K.1, * wl.fwd., k.2 tog.; rep from * to last st, k.1.',
      0,
    ],
  ])('%s', (_, list, row, times) => {
    expect(told('unexplained-abbreviation', rows(list, row))).toHaveLength(times);
  });
});
