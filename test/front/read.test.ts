import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { expectSpans, read, shorts } from './draft.ts';

const title = (source: string) => read(source).front.title?.text;

describe('the title', () => {
  it.each([
    ['# Kelp Road\n\n## Sizes\n\nS (M, L)', 'Kelp Road'],
    ['# KELP ROAD\n\na scarf', 'KELP ROAD'],
    ['---\ntitle: "Kelp Road"\n---\n\n# Something else', 'Kelp Road'],
    ['---\ntitle: Kelp Road\n---\n', 'Kelp Road'],
    ['Kelp Road\n=========\n\nCast on 40 sts.', 'Kelp Road'],
    ['## Kelp Road\n\nCast on 40 sts.', 'Kelp Road'],
    ['**Kelp Road**\n\nCast on 40 sts.', 'Kelp Road'],
    ['Kelp Road\n\nCast on 40 sts.', 'Kelp Road'],
    ['A note first.\n\n# Kelp Road\n', 'Kelp Road'],
  ])('%j', (source, want) => {
    expect(title(source)).toBe(want);
  });
  it.each(['', 'Cast on 40 sts.', 'Row 1: Knit.', '## Materials\n\nwool'])('none in %j', (source) => {
    expect(title(source)).toBeUndefined();
  });
  it('has an exact place', () => {
    const { front, words } = read('---\ntitle: "Kelp Road"\n---\n');
    expect(words(front.title!.span)).toBe('Kelp Road');
  });
});

const blocks = (source: string): readonly string[] => {
  const { front, words } = read(source);
  return front.blocks.map((span) => words(span).replaceAll('*', '').trim());
};

describe('blocks of the front', () => {
  it('are the front sections, and what stands before the first section', () => {
    const source =
      '# Kelp\n\nA scarf with a wave.\n\n## Yarn\n\n3 skeins\n\n## Scarf\n\nCast on 40 sts.\n\nRow 1: Knit.\n\n## Notes\n\nThe wave is easy.\n';
    expect(blocks(source)).toEqual(['A scarf with a wave.', 'Yarn', '3 skeins', 'Notes', 'The wave is easy.']);
  });
  it('are the run-ins of a draft with no headings', () => {
    expect(blocks('# Kelp\n\n**Gauge.** 20 sts = 10 cm\n\n**Yarn:** 3 skeins\n\nCast on 40 sts.\n\nK 1 row.\n')).toEqual([
      'Gauge. 20 sts = 10 cm',
      'Yarn: 3 skeins',
    ]);
  });
  it('end where a draft in capitals begins to work', () => {
    const source = 'KELP\n\nABBREVIATIONS\n\nk = knit; p = purl\n\nBACK\n\nUsing 4 mm needles cast on 98 sts.\n\nK 4 rows.\n';
    expect(blocks(source)).toEqual(expect.arrayContaining(['ABBREVIATIONS', 'k = knit; p = purl']));
    expect(blocks(source).join()).not.toMatch(/cast on|K 4 rows/);
  });
  it('leave a row in a note to the grammar', () => {
    expect(blocks('# K\n\n## Notes\n\n1. Slip the first st.\n2. **Buttonhole row (RS):** K2, yo, k2tog, k to end.\n')).toEqual([
      'Notes',
      'Slip the first st.',
    ]);
  });
  it('end at a bold run-in that begins to work', () => {
    const source = '# K\n\n**SIZES**\n\nS (M, L)\n\n**YARN** 3 balls\n\n**BACK**\nWith 4 mm needles cast on 60 (64, 68) sts.\n';
    expect(blocks(source)).toEqual(['SIZES', 'S (M, L)', 'YARN 3 balls']);
  });
  it('leave a size section of the instructions alone', () => {
    const source =
      '# K\n\n## Yoke\n\nCast on 60 sts.\n\n### Sizes 3 and 4 only\n\nRow 1: Knit.\n\n### All sizes\n\nRow 2: Knit.\n\n### Size 6\n\nKnit 1 row.\n';
    expect(blocks(source)).toEqual([]);
  });
});

describe('the front in other clothes', () => {
  it('as one run-on paragraph', () => {
    const { front } = read(
      '# Kelp\n\nSizes: S (M, L). Yarn: 4 (5, 6) balls of DK (120 m per 50 g). Needles: 4 mm (US 6). Gauge: 22 sts and 30 rows = 10 cm in st st. Notions: 2 markers.\n\nCast on 60 (64, 68) sts.\n',
    );
    expect(front.sizes?.names).toEqual(['S', 'M', 'L']);
    expect(front.yarns[0]).toMatchObject({ balls: [4, 5, 6] });
    expect(front.needles[0]).toMatchObject({ mm: 4, us: '6' });
    expect(front.gauges[0]).toMatchObject({ stitches: 22, rows: 30, fabric: 'st st' });
    expect(front.notions).toMatchObject([{ name: 'stitch marker', count: [2] }]);
  });
  it('as lines of one paragraph', () => {
    const { front } = read(
      '# Kelp\n\n**Sizes:** S (M, L)\n**Yarn:** 4 balls of DK\n**Needles:** 4 mm\n**Gauge:** 22 sts = 10 cm\n\nCast on 60 sts.\n',
    );
    expect(front.sizes?.names).toEqual(['S', 'M', 'L']);
    expect(front.yarns).toHaveLength(1);
    expect(front.needles).toHaveLength(1);
    expect(front.gauges).toHaveLength(1);
  });
  it('as a table of two columns', () => {
    const source =
      '# Kelp\n\n| | |\n|---|---|\n| Sizes | S (M, L) |\n| Yarn | 4 balls of DK |\n| Needles | 4 mm (US 6) |\n| Gauge | 22 sts = 10 cm |\n| Notions | 2 markers |\n\nCast on 60 sts.\n';
    const { front } = read(source);
    expect(front.sizes?.names).toEqual(['S', 'M', 'L']);
    expect(front.yarns).toMatchObject([{ balls: [4] }]);
    expect(front.needles).toMatchObject([{ mm: 4, us: '6' }]);
    expect(front.gauges).toMatchObject([{ stitches: 22 }]);
    expect(front.notions).toMatchObject([{ name: 'stitch marker' }]);
  });
  it('with carriage returns and a byte order mark', () => {
    const source = '\ufeff# Kelp\r\n\r\n**Gauge:** 22 sts and 30 rows\r\n= 10 cm in st st\r\n';
    const { front, words } = read(source);
    expect(front.title?.text).toBe('Kelp');
    expect(words(front.gauges[0]!.stitchSpan!)).toBe('22 sts');
    expect(front.gauges[0]).toMatchObject({ stitches: 22, rows: 30 });
  });
  it('in smart quotes and with no-break spaces', () => {
    const { front } = read('# Kelp\n\n## Gauge\n\n22 sts = 4” in st st\n\n## Needles\n\n4\u00a0mm (US\u00a06)\n');
    expect(shorts(front.gauges[0]!.over)).toBe('4 in');
    expect(front.needles[0]).toMatchObject({ mm: 4, us: '6' });
  });
});

describe('any draft', () => {
  const pieces = fc.constantFrom(
    '# Kelp',
    '## Sizes',
    '## Materials',
    '**Gauge:** ',
    '**',
    '*',
    ': ',
    'S (M, L)',
    '22 sts',
    ' and 30 rows',
    ' = 10 cm',
    '4 mm (US 6)',
    '(',
    ')',
    '[',
    ']',
    '; ',
    '. ',
    ', ',
    '\n',
    '\n\n',
    '- ',
    '| a | b |\n|---|---|\n',
    '| k | knit |\n',
    'k = knit',
    'To fit bust 81 (86, 91) cm',
    '"',
    '½',
    '– ',
    'Row 1: ',
    'cast on 40 sts',
    '::sizes[S | M]',
    '---\n',
    'yarn',
    '3 balls',
    '\r\n',
    '5',
    'in',
    '×',
  );
  it('is read without a throw, and every place holds words', () => {
    fc.assert(
      fc.property(fc.array(pieces, { maxLength: 40 }), (parts) => {
        const source = parts.join('');
        expectSpans(source, read(source).front);
      }),
      { numRuns: 300 },
    );
  });
  it('gives the same twice', () => {
    const source = '# Kelp\n\nSizes: S (M, L)\n\nGauge: 22 sts = 10 cm\n';
    expect(read(source).front).toEqual(read(source).front);
  });
});
