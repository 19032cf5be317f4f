import { describe, expect, it } from 'vitest';
import { read, shorts } from './draft.ts';

interface Want {
  readonly stitches?: number | null;
  readonly rows?: number | null;
  readonly unit?: 'rows' | 'rounds' | null;
  readonly over?: string;
  readonly fabric?: string | null;
  readonly needle?: string | null;
  readonly blocked?: boolean;
}

const gauges = (source: string) => read(source).front.gauges.map((gauge) => ({ ...gauge, over: shorts(gauge.over) }));

// Forms of a gauge line in print: common practice, no single source.
const lines: readonly [string, Want][] = [
  ['22 sts and 30 rows to 10 cm', { stitches: 22, rows: 30, unit: 'rows', over: '10 cm', fabric: null, blocked: false }],
  [
    '22 sts and 30 rows to 10 cm square over st st on 4 mm needles.',
    { stitches: 22, rows: 30, over: '10 cm', fabric: 'st st', needle: '4 mm needles' },
  ],
  [
    '20 sts & 28 rnds = 4"/10 cm in St st on larger needle.',
    { stitches: 20, rows: 28, unit: 'rounds', over: '4 in / 10 cm', fabric: 'St st', needle: 'larger needle' },
  ],
  ['5 sts = 1 inch', { stitches: 5, rows: null, unit: null, over: '1 in' }],
  ['5.5 sts per inch', { stitches: 5.5, over: '1 in' }],
  ['6 sts = 1 inch, 8 rows = 1 inch', { stitches: 6, rows: 8, over: '1 in' }],
  [
    '18 sts and 24 rows = 4 in (10 cm) in St st on larger needles',
    { stitches: 18, rows: 24, over: '4 in / 10 cm', fabric: 'St st', needle: 'larger needles' },
  ],
  ['18 sts and 36 rows = 4 in (10 cm) in garter st, blocked.', { stitches: 18, rows: 36, fabric: 'garter st', blocked: true }],
  [
    '32 stitches and 44 rounds = 4 in (10 cm) in stockinette stitch, after wet blocking',
    { stitches: 32, rows: 44, unit: 'rounds', blocked: true },
  ],
  ['20 sts and 28 rows = 10 cm (4 in), unblocked', { stitches: 20, rows: 28, blocked: false }],
  ['18 sts x 24 rows = 10 x 10 cm over st st', { stitches: 18, rows: 24, over: '10 cm', fabric: 'st st' }],
  [
    '24 sts/32 rnds to 10cm (4in) in cable pattern using 4mm needles',
    { stitches: 24, rows: 32, over: '10 cm / 4 in', fabric: 'cable pattern', needle: '4mm needles' },
  ],
  ['10 cm = 22 sts and 30 rows', { stitches: 22, rows: 30, over: '10 cm' }],
  ['4 in (10 cm): 20 sts', { stitches: 20, rows: null, over: '4 in / 10 cm' }],
  ['22 sts to 10 cm', { stitches: 22, rows: null, unit: null, over: '10 cm' }],
  ['Over st st: 22½ sts and 30 rows measure 10 cm', { stitches: 22.5, rows: 30, fabric: 'st st' }],
  ['26 sts and 34 rows over 4 inches in Foghorn Lace', { stitches: 26, rows: 34, over: '4 in', fabric: 'Foghorn Lace' }],
  [
    '21 sts and 28 rows to 4 in/10 cm in moss st on US 7 (4.5 mm) needles',
    { stitches: 21, fabric: 'moss st', needle: 'US 7 (4.5 mm) needles' },
  ],
];

describe('one gauge', () => {
  it.each(lines)('%s', (line, want) => {
    const found = gauges(`# Kelp\n\n## Gauge\n\n${line}\n`);
    expect(found).toHaveLength(1);
    expect(found[0]).toMatchObject(want);
  });
  it.each(['**Gauge.** ', '**Tension:** ', 'GAUGE ', 'Tension: ', '**TENSION** ', '- **Gauge** — '])('is found behind %j', (label) => {
    expect(gauges(`# Kelp\n\n${label}22 sts and 30 rows = 10 cm\n`)).toMatchObject([{ stitches: 22, rows: 30, over: '10 cm' }]);
  });
  it('is found in a table', () => {
    expect(gauges('# Kelp\n\n## Gauge\n\n| | |\n|---|---|\n| St st | 22 sts and 30 rows to 10 cm |\n')).toMatchObject([
      { stitches: 22, fabric: 'St st' },
    ]);
  });
  it('is exact in its place', () => {
    const { front, words } = read('# Kelp\n\nGauge: 22 sts and 30 rows = 4 in (10 cm) in st st\n');
    expect(words(front.gauges[0]!.span)).toBe('22 sts and 30 rows = 4 in (10 cm)');
    expect(words(front.gauges[0]!.stitchSpan!)).toBe('22 sts');
  });
  it('goes on over a broken line', () => {
    expect(gauges('# Kelp\n\nGauge: 22 sts and\n30 rows = 10 cm\nover st st\n')).toMatchObject([
      { stitches: 22, rows: 30, fabric: 'st st' },
    ]);
  });
});

describe('several gauges', () => {
  it('one for each fabric', () => {
    const found = gauges('# Kelp\n\n## Gauge\n\n22 sts and 30 rows = 10 cm in st st; 26 sts and 32 rows = 10 cm in cable pattern\n');
    expect(found.map((gauge) => [gauge.stitches, gauge.fabric])).toEqual([
      [22, 'st st'],
      [26, 'cable pattern'],
    ]);
  });
  it('the same gauge in two units', () => {
    const found = gauges('# Kelp\n\n## Gauge\n\n22 sts = 10 cm (5 sts = 1 in)\n');
    expect(found.map((gauge) => [gauge.stitches, gauge.over])).toEqual([
      [22, '10 cm'],
      [5, '1 in'],
    ]);
  });
  it('rows over another length than the stitches', () => {
    const found = gauges('# Kelp\n\n## Tension\n\n6 sts = 1 inch, 17 rows = 2 inches\n');
    expect(found.map((gauge) => [gauge.stitches, gauge.rows, gauge.over])).toEqual([
      [6, null, '1 in'],
      [null, 17, '2 in'],
    ]);
  });
});

it('a row of the pattern is no gauge', () => {
  expect(gauges('# Kelp\n\n## Back\n\nCast on 60 sts.\n\nRow 1: K20 sts, work 8 sts for 4 in.\n')).toEqual([]);
});

it('the fabric may stand before the length', () => {
  const [found] = gauges('# Kelp\n\n**Gauge** 22 sts and 30 rows in stockinette on 4 mm needles = 4 x 4" (10 x 10 cm).\n');
  expect(found).toMatchObject({ stitches: 22, rows: 30, over: '4 in / 10 cm', fabric: 'stockinette', needle: '4 mm needles' });
});

describe('a gauge behind the words of old layouts', () => {
  it.each([
    ['KNITTING TENSION: 25 sts and 33 rounds stocking st on needle 3.5 mm = 10 x 10 cm.', 25],
    ['TENSION.—6½ sts. and 8½ rows to 1 inch over stocking stitch.', 6.5],
    ['Tension 22 sts and 30 rows = 10 cm in st st', 22],
  ])('%s', (line, stitches) => {
    expect(gauges(`# Kelp\n\n${line}\n\nCast on 40 sts.\n`).map((one) => one.stitches)).toEqual([stitches]);
  });
});
