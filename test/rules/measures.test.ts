import { describe, expect, it } from 'vitest';
import { noHouse } from '../../src/house-style/house-style.ts';
import { findings, told } from './drafts.ts';

const cowl = (gauge: string, measure: string, count = 120): string =>
  `# Kelp Cowl\n\nFinished measurements: ${measure}\n\nGauge: ${gauge} in st st\n\n## Cowl\n\nCast on ${count} sts. Join in the round.\n\nKnit 64 rnds.\n\nBind off.\n`;

describe('width from stitches and gauge', () => {
  it.each([
    ['exact', cowl('24 sts and 32 rnds = 10 cm', '50 cm circumference')],
    ['within half a centimetre', cowl('24 sts and 32 rnds = 10 cm', '50.5 cm circumference')],
    ['in inches', cowl('20 sts and 28 rnds = 4 in', '24 in circumference')],
    ['at a gauge given in the other unit', cowl('24 sts and 32 rnds = 10 cm', '20 in circumference')],
    ['no gauge', '# Kelp\n\nFinished measurements: 40 cm circumference\n\nCast on 120 sts. Join in the round.\n\nKnit 64 rnds.\n'],
  ])('agrees: %s', (_, draft) => {
    expect(told('width-and-gauge', draft)).toEqual([]);
  });

  it('tells the count, the gauge and what they make', () => {
    const [one] = findings('width-and-gauge', cowl('20 sts and 28 rnds = 10 cm', '50 cm circumference'));
    expect(one?.message).toBe('At 20 sts to 10 cm, 120 sts are 60 cm and not 50 cm. Which is right: the gauge, the measure or the count?');
    expect(one?.line).toBe(3);
  });

  it('keeps quiet where it may have misread: twice the measure', () => {
    expect(told('width-and-gauge', cowl('24 sts and 32 rnds = 10 cm', '25 cm circumference'))).toEqual([]);
  });

  it('follows the tolerance of the house', () => {
    const draft = cowl('24 sts and 32 rnds = 10 cm', '51 cm circumference');
    expect(told('width-and-gauge', draft)).toHaveLength(1);
    expect(told('width-and-gauge', draft, { ...noHouse, tolerance: { ...noHouse.tolerance, cm: 2 } })).toEqual([]);
  });

  const vest = (bust: string, front = '50 (55, 60, 65)'): string =>
    `# Kelp Vest\n\nSizes: S (M, L, XL)\n\nFinished bust: ${bust} cm\n\nTension: 20 sts and 28 rows to 10 cm in stocking stitch\n\n## Back\n\nCast on 50 (55, 60, 65) sts.\n\nKnit 40 rows.\n\nCast off.\n\n## Front\n\nCast on ${front} sts.\n\nKnit 40 rows.\n\nCast off.\n`;

  it.each([
    ['back and front', '50 (55, 60, 65)'],
    ['less a seam stitch at each edge', '48 (53, 58, 63)'],
  ])('of a garment: %s', (_, bust) => {
    expect(told('width-and-gauge', vest(bust))).toEqual([]);
  });

  it('of a garment in the one size that differs', () => {
    const [one] = findings('width-and-gauge', vest('50 (55, 64, 65)'));
    expect(one?.sizes).toEqual([2]);
    expect(one?.message).toContain('120 sts are 60 cm and not 64 cm in size L');
  });
});

describe('length from rows and gauge', () => {
  it.each([
    ['20 cm tall', 0],
    ['21.5 cm tall', 0],
    ['28 cm tall', 1],
    ['sleeve length 28 cm', 0],
  ])('50 cm circumference, %s', (tall, times) => {
    expect(told('rows-and-gauge', cowl('24 sts and 32 rnds = 10 cm', `50 cm circumference, ${tall}`))).toHaveLength(times);
  });
});

describe('lengths that add up', () => {
  const draft = (length: string, body: string, armhole: string): string =>
    `# Kelp Vest\n\nSizes: S (M, L, XL)\n\nLength: ${length} cm\n\n## Back\n\nCast on 40 sts.\n\nWork in st st until back measures ${body} cm.\n\nCast off 4 sts at beg of next 2 rows. 32 sts.\n\nWork straight until armhole measures ${armhole} cm. Cast off.\n`;

  it('says nothing when every size does', () => {
    expect(told('lengths-add-up', draft('55 (57, 59, 61)', '36 (37, 38, 39)', '19 (20, 21, 22)'))).toEqual([]);
  });
  it('says nothing when the difference changes with the sizes', () => {
    expect(told('lengths-add-up', draft('56 (58, 61, 63)', '36 (37, 38, 39)', '19 (20, 21, 22)'))).toEqual([]);
  });
  it('says nothing of a constant difference: a border or a slope', () => {
    expect(told('lengths-add-up', draft('58 (60, 62, 64)', '36 (37, 38, 39)', '19 (20, 21, 22)'))).toEqual([]);
  });
  it('shows the sum of the one size that does not', () => {
    const [one] = findings('lengths-add-up', draft('55 (57, 59, 61)', '36 (37, 38, 39)', '19 (20, 22, 22)'));
    expect(one?.message).toBe(
      'back 38 cm + armhole 22 cm = 60 cm, but "Length" is 59 cm in size L. The other sizes agree. Which one is right?',
    );
    expect(one?.line).toBe(15);
  });
});

describe('other measures', () => {
  it.each([
    ['the same at the end', 'pin the top edge to 76 cm', 0],
    ['another at the end', 'pin the top edge to 84 cm', 1],
    ['something else', 'turn under a hem of 2 cm', 0],
  ])('blocked to: %s', (_, words, times) => {
    expect(
      told(
        'blocking-measures',
        `# Kelp Shawl\n\nFinished width: 76 cm\n\nCast on 9 sts.\n\nRow 1: Knit.\n\n## Finishing\n\nSoak, then ${words}.\n`,
      ),
    ).toHaveLength(times);
  });

  const sized = (lines: string): string =>
    `# Kelp Vest\n\nSizes: S (M, L, XL)\n\n${lines}\n\nCast on 40 (44, 48, 52) sts.\n\nRow 1: Knit.\n`;
  it.each([
    ['grow', 'Length: 54 (56, 57, 60) cm', 0],
    ['stay', 'Sleeve seam: 44 (45, 45, 46) cm', 0],
    ['fall in the middle', 'Length: 54 (59, 57, 60) cm', 1],
    ['fall throughout, as a drop may', 'Drop: 12 (11, 10, 9) cm', 0],
    ['neck like bust', 'Finished bust: 90 (100, 110, 120) cm\n\nNeck width: 18 (24, 30, 36) cm', 1],
    ['neck as necks do', 'Finished bust: 90 (100, 110, 120) cm\n\nNeck width: 18 (19, 20, 21) cm', 0],
  ])('that %s', (_, lines, times) => {
    expect(told('sizes-grow', sized(lines))).toHaveLength(times);
  });

  it.each([
    ['agree', '90 (100, 110, 120)', 0],
    ['agree not in one size', '90 (100, 112, 120)', 1],
  ])('body and ease that %s', (_, bust, times) => {
    expect(told('body-and-ease', sized(`To fit bust: 82 (92, 102, 112) cm\n\nFinished bust: ${bust} cm\n\nEase: 8 cm`))).toHaveLength(
      times,
    );
  });
  it('the ease of a sample is no sum', () => {
    expect(
      told('body-and-ease', sized('To fit bust: 82 (92, 102, 112) cm\n\nFinished bust: 90 (100, 112, 120) cm\n\nShown with 5 cm of ease')),
    ).toEqual([]);
  });
  it('sizes with nothing but letters', () => {
    expect(told('sizes-without-measures', '# Kelp\n\nSizes: S (M, L)\n\nCast on 40 (44, 48) sts.\n\nRow 1: Knit.\n')).toHaveLength(1);
    expect(told('sizes-without-measures', '# Kelp\n\nSizes: 2 (4, 6) years\n\nCast on 40 (44, 48) sts.\n\nRow 1: Knit.\n')).toEqual([]);
  });
});

describe('one length told twice', () => {
  const sleeve = (front: string, from = ' from beg', then = 'Shape top: Cast off 4 sts at beg of next 2 rows.'): string =>
    `# Kelp\n\nMeasurements: ${front}\n\n## Sleeves\n\nCast on 40 sts.\n\nWork in st st until sleeve measures 17 in${from}.\n\n${then}\n`;
  it.each([
    ['another seam', sleeve('Sleeve seam, 18 in'), 1],
    ['the same seam', sleeve('Sleeve seam, 17 in'), 0],
    ['from the underarm: a cuff follows', sleeve('Sleeve seam, 18 in', ' from underarm'), 0],
    [
      'a border follows',
      sleeve(
        'Sleeve length, 18 in',
        ' from beg',
        'Knit 8 rows.\n\nKnit 4 rows more, and so on for an inch, as told above for the back of the garment, before the words to end.',
      ),
      0,
    ],
    ['to fit', sleeve('To fit sleeve 18 in'), 0],
  ])('%s', (_, draft, times) => {
    expect(told('lengths-add-up', draft)).toHaveLength(times);
  });
});
