import { describe, expect, it } from 'vitest';
import { findings, told } from './drafts.ts';

const draft = (words: string): string => `# Kelp\n\n${words}\n\nCast on 20 sts.\n\nRow 1: Knit.\n`;

describe('two units of one measure', () => {
  // 2.54 cm to the inch is exact; 2.5 is what many technical editors use, since gauge takes 4 in for 10 cm.
  it.each([
    ['exactly converted', 'Finished length: 36 in (91.5 cm)'],
    ['at 2.5', 'Finished length: 60 in (150 cm)'],
    ['whole inches and whole centimetres', 'Finished width: 22 in (56 cm)'],
    ['a small part in millimetres', 'Notions: 5 buttons, 18 mm (¾ in)'],
    ['eighths', 'Hem: 1.5 cm (⅝ in)'],
    ['a ball label', 'Yarn: Orrin Flax, 230 yd (210 m) per 1¾ oz (50 g); 2 balls'],
    ['the usual 3½ oz', 'Yarn: Orrin Flax, 200 yd (183 m) per 3½ oz (100 g); 2 balls'],
    ['the gauge square', 'Gauge: 20 sts and 28 rows = 4 in (10 cm) in st st'],
    ['a needle and its length', 'Needles: US 8 (5 mm) circular needle, 32 in (80 cm) long'],
  ])('agrees: %s', (_, words) => {
    expect(told('units-agree', draft(words))).toEqual([]);
  });

  it.each([
    ['digits swapped', 'Finished length: 22¼ in (65.5 cm)', '22¼ in is 56.5 cm and not 65.5 cm. Correct one of them.'],
    ['an inch too many', 'Finished length: 38 cm (16 in)', '38 cm is 15 in and not 16 in. Correct one of them.'],
    [
      'exchanged',
      'Yarn: Orrin Flax, 183 yd (200 m) per 100 g; 2 balls',
      '183 yd is 167 m and not 200 m. The two figures fit when they change places. Correct one of them.',
    ],
    ['ounces', 'Yarn: Orrin Flax, 200 m per 100 g (2½ oz); 2 balls', '100 g is 4 oz and not 2.5 oz. Correct one of them.'],
  ])('differs: %s', (_, words, message) => {
    const all = findings('units-agree', draft(words));
    expect(all.map((one) => one.message)).toEqual([message]);
    expect(all[0]?.level).toBe('error');
    expect(all[0]?.line).toBe(3);
  });

  it('names the size in which they differ', () => {
    const [one] = findings('units-agree', draft('Sizes: S (M, L)\n\nFinished bust: 34¼ (39½, 49½) in / 87 (100.5, 121) cm'));
    expect(one?.message).toBe('49½ in is 125.5 cm and not 121 cm in size L. Correct one of them.');
    expect(one?.sizes).toEqual([2]);
  });

  it('asks about one value out of step with whole inches', () => {
    const [one] = findings(
      'units-agree',
      draft('Sizes: 1 (2, 3, 4, 5)\n\nTo fit bust: 32 (36, 40, 44, 48) in / 81 (91, 103, 112, 122) cm'),
    );
    expect(one?.level).toBe('query');
    expect(one?.sizes).toEqual([2]);
  });

  it('asks when both rates are used', () => {
    expect(told('units-agree', draft('Finished length: 60 in (152.5 cm)\n\nFinished width: 64 in (160 cm)'))).toHaveLength(1);
  });

  it('speaks once of a square', () => {
    expect(told('units-agree', draft('Finished size: 45 × 45 cm (19¾ × 19¾ in)'))).toHaveLength(1);
  });
});

describe('needle sizes', () => {
  // Pairs as eight to nine published conversion charts print them.
  it.each([
    '2.25 mm (US 1)',
    '3¼ mm (UK 10/US 3)',
    '3.5 mm (US 4)',
    '4 mm (UK 8/US 6)',
    'US 10½ (6.5 mm)',
    '5 mm (UK 6/US 8)',
    '10 mm (US 15)',
  ])('agree: %s', (words) => {
    expect(told('needle-sizes', draft(`Needles: ${words} needles`))).toEqual([]);
  });
  it.each([
    ['US 7 (4 mm)', '4 mm is US 6, and US 7 is 4.5 mm'],
    ['3¼ mm (UK 9/US 3)', '3.25 mm is UK 10, and UK 9 is 3.75 mm'],
    ['5 mm (UK 8/US 6)', '5 mm is US 8, and US 6 is 4 mm; 5 mm is UK 6, and UK 8 is 4 mm'],
  ])('differ: %s', (words, sum) => {
    expect(told('needle-sizes', draft(`Needles: ${words} needles`))).toEqual([
      `error These sizes are not one needle: ${sum}. Which one is meant?`,
    ]);
  });
  it.each(['3 mm (US 2)', '12.75 mm (US 17)', '2.5 mm (US 1)', '7 mm (US 10.75)'])('say nothing where charts differ: %s', (words) => {
    expect(told('needle-sizes', draft(`Needles: ${words} needles`))).toEqual([]);
  });
});

describe('gauge in two units', () => {
  it.each([
    ['20 sts = 10 cm in st st; 5 sts = 1 in in st st', 0],
    ['20 sts = 10 cm in st st; 4½ sts = 1 in in st st', 1],
    ['22 sts = 10 cm in st st; 5½ sts = 1 in in st st', 0],
  ])('%s', (words, times) => {
    expect(told('gauge-in-two-units', draft(`Gauge: ${words}`))).toHaveLength(times);
  });
});
