import { describe, expect, it } from 'vitest';
import { read, shorts } from './draft.ts';

const named = (source: string) => read(source).front.measures.map((one) => [one.name, one.kind, shorts(one.measures)]);
const front = (line: string) => `# Kelp\n\nSizes: S (M, L)\n\n## Measurements\n\n${line}\n`;

// Phrasings are common practice of printed patterns; no single source.
const lines: readonly [string, string, string, string][] = [
  ['To fit bust 81 [91: 102] cm', 'To fit bust', 'toFit', '81,91,102 cm'],
  ['Actual bust 89 [100: 111] cm; 35 [39¼: 43¾] in', 'Actual bust', 'finished', '89,100,111 cm / 35,39.25,43.75 in'],
  ['Finished chest: 36 (40, 44)" / 91.5 (101.5, 112) cm', 'Finished chest', 'finished', '36,40,44 in / 91.5,101.5,112 cm'],
  ['**Finished chest, buttoned:** 60 [64, 68] cm', 'Finished chest, buttoned', 'finished', '60,64,68 cm'],
  ['Length to shoulder: 55 (57, 59) cm', 'Length to shoulder', 'other', '55,57,59 cm'],
  ['Sleeve seam 43 cm (all sizes)', 'Sleeve seam', 'other', '43 cm'],
  ['Upper arm 11½ (12½, 13¾) in / 29.5 (31.5, 35) cm', 'Upper arm', 'other', '11.5,12.5,13.75 in / 29.5,31.5,35 cm'],
  ['To fit chest 76-81 (86-91: 97-102) cm', 'To fit chest', 'toFit', '76-81,86-91,97-102 cm'],
  ['Bust (cm): 81 (86, 91)', 'Bust (cm)', 'other', '81,86,91 cm'],
  ['- Yoke depth: 7¾ (8, 8½) in', 'Yoke depth', 'other', '7.75,8,8.5 in'],
  ['Hem circumference: 90 cm (98 cm, 106 cm)', 'Hem circumference', 'other', '90,98,106 cm'],
  ['Length 15 (15½-16) ins [38 (39.5-40.5) cm]', 'Length', 'other', '15,15.5,16 in / 38,39.5,40.5 cm'],
  ['Cross back: 34 (36, 38) centimetres', 'Cross back', 'other', '34,36,38 cm'],
  ['Width 20 inches', 'Width', 'other', '20 in'],
  ['Armhole depth 7 1/2 (8, 8 1/2) in.', 'Armhole depth', 'other', '7.5,8,8.5 in'],
  ['Wingspan: 72 in (183 cm)', 'Wingspan', 'other', '72 in / 183 cm'],
];

describe('named measures', () => {
  it.each(lines)('%s', (line, name, kind, values) => {
    expect(named(front(line))).toContainEqual([name, kind, values]);
  });
  it('takes its kind from the heading', () => {
    expect(named('# K\n\n## Finished Measurements\n\nBust: 90 cm\n')).toEqual([['Bust', 'finished', '90 cm']]);
  });
  it('names a measure by the words behind it', () => {
    expect(named('# K\n\n**Finished measurements:** 24 in (61 cm) circumference, 11 in (28 cm) tall\n')).toEqual([
      ['circumference', 'finished', '24 in / 61 cm'],
      ['tall', 'finished', '11 in / 28 cm'],
    ]);
  });
  it.each([
    ['75 cm around and 24 cm tall', 'around', 'tall'],
    ['75 cm around × 24 cm tall', 'around', 'tall'],
    ['75 cm round, 24 cm high', 'round', 'high'],
    ['75 cm in circumference by 24 cm in height', 'circumference', 'height'],
  ])('names both measures of “%s”', (line, first, second) => {
    expect(named(`# K\n\nFinished measurements: ${line}\n`)).toEqual([
      [first, 'finished', '75 cm'],
      [second, 'finished', '24 cm'],
    ]);
  });
  it('reads a column per size', () => {
    const source = front(
      '| | S | M | L |\n|---|---|---|---|\n| Foot circumference | 7 in (18 cm) | 8 in (20.5 cm) | 9 in (23 cm) |\n| Foot (cm) | 22 | 24 | 26 |',
    );
    expect(named(source)).toEqual([
      ['Foot circumference', 'other', '7,8,9 in / 18,20.5,23 cm'],
      ['Foot (cm)', 'other', '22,24,26 cm'],
    ]);
  });
  it('pairs two rows of one measure', () => {
    const source = front(
      '| | S | M | L |\n|---|---|---|---|\n| Bust (in) | 34 | 38 | 42 |\n| Bust (cm) | 86 | 96.5 | 106.5 |\n| Hem | 34" | 38" | 42" |\n| | 86 cm | 96.5 cm | 106.5 cm |',
    );
    expect(read(source).front.pairs.map((pair) => shorts([pair.first, pair.second]))).toEqual([
      '34,38,42 in / 86,96.5,106.5 cm',
      '34,38,42 in / 86,96.5,106.5 cm',
    ]);
  });
  it('reads a row per size', () => {
    const source =
      '# K\n\n## Sizes\n\n| Size | To fit chest | Length |\n|---|---|---|\n| S | 80 cm | 50 cm |\n| M | 90 cm | 52 cm |\n| L | 100 cm | 54 cm |\n';
    expect(named(source)).toEqual([
      ['To fit chest', 'toFit', '80,90,100 cm'],
      ['Length', 'other', '50,52,54 cm'],
    ]);
  });
  it('reads both sides of a rectangle', () => {
    expect(named('# K\n\n**Finished size:** 45 × 45 cm (17¾ × 17¾ in)\n')).toEqual([
      ['Finished size', 'finished', '45 cm / 45 cm / 17.75 in / 17.75 in'],
    ]);
  });
  it('reads lengths in the instructions', () => {
    const source =
      '# K\n\nSizes: S (M, L)\n\n## Back\n\nCast on 60 sts.\n\nWork in st st until back measures 36 [37: 38] cm, ending with a WS row.\n';
    expect(named(source)).toEqual([['Work in st st until back measures', 'other', '36,37,38 cm']]);
  });
  it.each([
    'Row 1: Knit 6 in pattern.',
    'Work 20 sts in rib.',
    'K3 in next st.',
    'Work 5 in the same way.',
    'until there are 9 in all',
    'K2, sl 1 m, k2.',
    'Work 4 g st rows',
  ])('sees no measure in %j', (line) => {
    expect(named(`# K\n\n## Back\n\nCast on 60 sts.\n\n${line}\n`)).toEqual([]);
  });
});

describe('measures in two units', () => {
  const pairs = (line: string) =>
    read(`# K\n\n## Back\n\nCast on 9 (9, 9) sts.\n\n${line}\n`).front.pairs.map(
      (pair) => `${shorts([pair.first])} = ${shorts([pair.second])}`,
    );
  it.each([
    ['Work until piece measures 24 in (61 cm).', '24 in = 61 cm'],
    ['until it measures 19½ (20) in / 42 (43) cm', '19.5,20 in = 42,43 cm'],
    ['until foot is 1½ (1¾, 2) in / 4 (4.5, 5) cm shorter', '1.5,1.75,2 in = 4,4.5,5 cm'],
    ['leaving a 12 in (30 cm) tail', '12 in = 30 cm'],
    ['until work meas 30 cm [12 in] from hem', '30 cm = 12 in'],
    ['until work meas 30 cm/12" from hem', '30 cm = 12 in'],
    ['for 10 cm or 4 inches', '10 cm = 4 in'],
    ['200 yd [183 m] are left', '200 yd = 183 m'],
    ['20 mm (¾ in) from the edge', '20 mm = 0.75 in'],
    ['about 6.5 cm (2½ in) below', '6.5 cm = 2.5 in'],
    ['81 [91: 102] cm; 32 [36: 40] in', '81,91,102 cm = 32,36,40 in'],
    ['8-in (20-cm) square', '8 in = 20 cm'],
    ['4"/10 cm', '4 in = 10 cm'],
    ['100 g (3½ oz) of it', '100 g = 3.5 oz'],
    ['13 in = 33 cm', '13 in = 33 cm'],
    ['a 7 1/2 in (19 cm) cord', '7.5 in = 19 cm'],
  ])('%s', (line, pair) => {
    expect(pairs(line)).toEqual([pair]);
  });
  it.each(['24 in, then 11 in', '5 cm from the edge and 2 in apart', '36 [37: 38] cm', '19½ (20) in', '4.5 mm 24 in circular'])(
    '%s is none',
    (line) => {
      expect(pairs(line)).toEqual([]);
    },
  );
});
