import { describe, expect, it } from 'vitest';
import { read, shorts } from './draft.ts';

const yarns = (source: string) =>
  read(source).front.yarns.map((yarn) => ({
    colour: yarn.colour,
    balls: yarn.balls,
    length: shorts(yarn.lengthPerBall),
    weight: shorts(yarn.weightPerBall),
    total: shorts(yarn.total),
    class: yarn.weightClass,
  }));
const one = (line: string) => yarns(`# Kelp\n\nSizes: S (M, L)\n\n## Materials\n\n${line}\n`);

// Forms of a yarn line in print: common practice, no single source. Names are invented.
const lines: readonly [string, object][] = [
  [
    '9 [10: 11] × 50 g balls of Orrin Island DK (100% wool; approx 120 m/131 yd per ball) in Breakwater',
    { balls: [9, 10, 11], length: '120 m / 131 yd', weight: '50 g', class: 'DK' },
  ],
  ['2 skeins Orrin Sport (100% wool; 180 yd/165 m per 50 g).', { balls: [2], length: '180 yd / 165 m', weight: '50 g', class: 'Sport' }],
  [
    'Orrin "Tallow" worsted (80% wool; 200 yd [183 m] per 3½ oz [100 g]): 1 skein in Slate',
    { balls: [1], length: '200 yd / 183 m', weight: '3.5 oz / 100 g', class: 'worsted' },
  ],
  ['Orrin Ferry aran, 50 g = 80 m (87 yd): 6 [7, 8] balls', { balls: [6, 7, 8], length: '80 m / 87 yd', weight: '50 g', class: 'aran' }],
  [
    'Fingering-weight wool, 437 yd (400 m) per 3.5 oz (100 g): 2 skeins.',
    { balls: [2], length: '437 yd / 400 m', weight: '3.5 oz / 100 g', class: 'Fingering' },
  ],
  [
    '1 (1, 1) skein of sock yarn: 75% wool, 25% nylon; 420 yd (384 m) per 100 g (3½ oz)',
    { balls: [1, 1, 1], length: '420 yd / 384 m', weight: '100 g / 3.5 oz', class: 'sock' },
  ],
  ['Three balls of chunky wool (100 m/100 g)', { balls: [3], length: '100 m', weight: '100 g', class: 'chunky' }],
  ['4 x 100g hanks of super bulky yarn, each 80 m', { balls: [4], length: '80 m', weight: '100 g', class: 'super bulky' }],
  ['Approx 1150 (1260, 1370) m of 4-ply, held double throughout', { balls: null, total: '1150,1260,1370 m', class: '4-ply' }],
  [
    '900 (980, 1060) yds / 825 (895, 970) m of worsted weight yarn',
    { balls: null, total: '900,980,1060 yd / 825,895,970 m', class: 'worsted' },
  ],
  ['800 yards of lace weight yarn', { total: '800 yd', class: 'lace' }],
  ['10 (11, 12) 50g balls of double knitting', { balls: [10, 11, 12], weight: '50 g', class: 'double knitting' }],
  ['1,250 m in total of DK: 5 balls (250 m per 100 g)', { balls: [5], length: '250 m', weight: '100 g', total: '1250 m' }],
  ['5 (6, 7) skeins (50g/115m) of 8-ply', { balls: [5, 6, 7], length: '115 m', weight: '50 g', class: '8-ply' }],
  [
    'Orrin Gallery, 210 yd (192 m) per 3.5 oz (100 g) skein; 4 (4, 5) skeins',
    { balls: [4, 4, 5], length: '210 yd / 192 m', weight: '3.5 oz / 100 g' },
  ],
];

describe('one yarn', () => {
  it.each(lines)('%s', (line, want) => {
    const found = one(line);
    expect(found).toHaveLength(1);
    expect(found[0]).toMatchObject(want);
  });
  it.each([
    'Tapestry needle and waste yarn',
    '5 buttons, 18 mm',
    'US 7 (4.5 mm) circular needle, 40 in long',
    'Darning needle; wool needle',
  ])('%s is none', (line) => {
    expect(one(line)).toEqual([]);
  });
  it('behind a label', () => {
    expect(yarns('# K\n\n**Yarn.** Orrin Tallow, 3 skeins (200 m per 100 g)\n')).toMatchObject([{ balls: [3], length: '200 m' }]);
    expect(yarns('# K\n\nYARN Orrin Fisher DK, 225 m (246 yd) per 100 g: 1(1:1) skein\n')).toMatchObject([{ balls: [1, 1, 1] }]);
  });
  it('in a table', () => {
    expect(yarns('# K\n\n## Materials\n\n| | |\n|---|---|\n| Yarn | 4 balls of DK, 120 m per 50 g |\n')).toMatchObject([
      { balls: [4], length: '120 m', class: 'DK' },
    ]);
  });
  it('with its exact words', () => {
    const { front, words } = read('# K\n\nYarn: 3 skeins of Orrin Tallow\n');
    expect(words(front.yarns[0]!.span)).toBe('3 skeins of Orrin Tallow');
  });
});

describe('several colours', () => {
  it.each([
    [
      'MC: 5 (6, 7) balls\nCC: 2 balls',
      [
        ['MC', [5, 6, 7]],
        ['CC', [2]],
      ],
    ],
    [
      '10 (11: 12) × 50 g balls of DK in Shade 1 (M) and 1 ball in Shade 2 (C)',
      [
        ['M', [10, 11, 12]],
        ['C', [1]],
      ],
    ],
    [
      'A: 3 skeins in Slate\nB: 1 skein in Foam\nC: 1 skein in Rust',
      [
        ['A', [3]],
        ['B', [1]],
        ['C', [1]],
      ],
    ],
    [
      '5 (6, 6) x 50g balls of DK in Kelp (A), plus 1 ball each in Foam (B) and Rust (C)',
      [
        ['A', [5, 6, 6]],
        ['B', [1]],
        ['C', [1]],
      ],
    ],
    [
      'Worsted weight, MC 800 (900, 1000) yards; CC 200 yards',
      [
        ['MC', null],
        ['CC', null],
      ],
    ],
    [
      'Orrin Aran: A, 3 balls; B and C, 2 balls each',
      [
        ['A', [3]],
        ['B', [2]],
        ['C', [2]],
      ],
    ],
    [
      'Main colour (MC): 4 balls\nContrast colour (CC1): 1 ball',
      [
        ['MC', [4]],
        ['CC1', [1]],
      ],
    ],
  ])('%s', (line, want) => {
    expect(yarns(`# Kelp\n\n## Yarn\n\n${line}\n`).map((yarn) => [yarn.colour, yarn.balls])).toEqual(want);
  });
  it('as a list', () => {
    expect(yarns('# K\n\n## Yarn\n\n- MC: 3 balls, Slate\n- CC: 1 ball, Foam\n').map((yarn) => [yarn.colour, yarn.balls])).toEqual([
      ['MC', [3]],
      ['CC', [1]],
    ]);
  });
});
