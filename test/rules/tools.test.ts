import { describe, expect, it } from 'vitest';
import { findings, told } from './drafts.ts';

const draft = (notions: string, rows: string, needles = 'Needles: 4 mm needles'): string =>
  `# Kelp Band\n\n${needles}\n\nNotions: ${notions}\n\n## Band\n\nCast on 20 sts.\n\n${rows}\n`;

describe('tools', () => {
  it.each([
    ['a crossing', 'tapestry needle', 'Row 1 (RS): P7, C6B, p7.', 'needs a cable needle'],
    ['a marker', 'tapestry needle', 'Row 1 (RS): K10, pm, k10.', 'needs a stitch marker'],
    ['waste yarn', 'tapestry needle', 'Row 1 (RS): K10, place last 10 sts on waste yarn.', 'needs waste yarn'],
    ['a holder', 'tapestry needle', 'Row 1 (RS): Knit.\n\nSlip 20 sts onto a holder.', 'needs a stitch holder'],
    ['double-pointed needles', 'tapestry needle', 'Row 1 (RS): Knit.\n\nChange to dpns.', 'needs double-pointed needles'],
  ])('that are used and not listed: %s', (_, notions, rows, words) => {
    expect(told('tool-not-listed', draft(notions, rows)).join()).toContain(words);
  });

  it.each([
    ['waste yarn for a holder', 'waste yarn', 'Row 1 (RS): Knit.\n\nSlip 20 sts onto a holder.'],
    ['a pin for a marker', 'safety pin', 'Row 1 (RS): K10, pm, k10.'],
    ['markers in the plural', 'stitch markers', 'Row 1 (RS): K10, pm, k10.'],
  ])('that serve for others: %s', (_, notions, rows) => {
    expect(told('tool-not-listed', draft(notions, rows))).toEqual([]);
  });

  it('are asked for only where the draft lists any', () => {
    expect(told('tool-not-listed', '# Kelp\n\nCast on 20 sts.\n\nRow 1 (RS): P7, C6B, p7.\n')).toEqual([]);
  });

  it.each([
    ['cable needle', 'Row 1: Knit.', 1],
    ['stitch marker', 'Row 1: Knit.', 1],
    ['stitch marker', 'Row 1: K10, pm, k10.', 0],
    ['stitch holder', 'Row 1: Knit.', 1],
    ['tapestry needle', 'Row 1: Knit.', 0],
    ['3 buttons', 'Row 1: Knit.', 1],
    ['3 buttons', 'Row 1: Knit.\n\nSew the buttons on.', 0],
  ])('listed: %s; rows: %s', (notions, rows, times) => {
    expect(told('tool-not-used', draft(notions, rows))).toHaveLength(times);
  });
});

describe('numbers of tools', () => {
  it.each([
    ['7 buttons', 'Work 7 buttonholes.', 0],
    ['6 buttons', 'Work 7 buttonholes.', 1],
    ['5 buttons for the front and 2 buttons for the strap', 'Work 5 buttonholes in the band.', 0],
    ['4 buttons for the front and 2 buttons for the strap', 'Work 5 buttonholes in the band.', 1],
    ['seven buttons', 'There are 7 buttonholes in all; the first is worked here, the other 6 evenly spaced.', 0],
    ['eight ¾ in (19 mm) buttons', 'There are 8 buttonholes in all.', 0],
  ])('buttons: %s; %s', (notions, rows, times) => {
    expect(told('button-numbers', draft(notions, `Row 1: Knit.\n\n${rows}`))).toHaveLength(times);
  });

  it.each([
    ['1 stitch marker', 'Row 1: K8, pm, k4, pm, k8.', 1],
    ['2 stitch markers', 'Row 1: K8, pm, k4, pm, k8.', 0],
    ['stitch markers', 'Row 1: K8, pm, k4, pm, k8.', 0],
    ['1 stitch marker', 'Row 1: K8, pm, k12.\n\nRow 2: P12, remove marker, p8.\n\nRow 3: K10, pm, k10.', 0],
  ])('markers: %s; %s', (notions, rows, times) => {
    expect(told('marker-numbers', draft(notions, rows))).toHaveLength(times);
  });

  it.each([
    ['1 stitch holder', 1],
    ['2 stitch holders', 0],
    ['1 stitch holder; waste yarn', 0],
  ])('holders: %s', (notions, times) => {
    const piece = (name: string): string => `## ${name}\n\nCast on 20 sts.\n\nRow 1 (RS): Knit.\n\nSlip 20 sts onto a holder.\n`;
    expect(told('holder-numbers', `# Kelp Vest\n\nNotions: ${notions}\n\n${piece('Back')}\n${piece('Front')}`)).toHaveLength(times);
  });
});

describe('needles', () => {
  const vest = (front: string, needles = '3 mm and 4 mm needles'): string =>
    `# Kelp Vest\n\nNeedles: ${needles}\n\n## Back\n\nWith 3 mm needles, cast on 40 sts. Knit 4 rows.\n\nChange to 4 mm needles. Knit 40 rows. Cast off.\n\n## Front\n\n${front}\n`;

  it.each([
    ['never changed', 'With 3 mm needles, cast on 40 sts. Knit 44 rows. Cast off.', 1],
    ['changed', 'With 3 mm needles, cast on 40 sts. Knit 4 rows.\n\nChange to 4 mm needles. Knit 40 rows. Cast off.', 0],
    ['begun on the other', 'With 4 mm needles, cast on 40 sts. Knit 44 rows. Cast off.', 0],
    ['not named at all', 'Work as given for Back.', 0],
  ])('of a sister piece, %s', (_, front, times) => {
    expect(told('needle-not-changed', vest(front))).toHaveLength(times);
  });

  it('of a neckband may stay', () => {
    const draft = `${vest('Work as given for Back.')}\n## Neckband\n\nWith 3 mm needles, cast on 80 sts. Knit 6 rows. Cast off.\n`;
    expect(told('needle-not-changed', draft)).toEqual([]);
  });

  it.each([
    ['one that is not listed', '3 mm and 4.5 mm needles', 'The materials list 4.5 mm needles'],
    ['one that is never used', '3 mm, 4 mm and 5 mm needles', 'The materials list 5 mm needles'],
  ])('in the list: %s', (_, needles, words) => {
    expect(told('needle-use', vest('Work as given for Back.', needles)).join()).toContain(words);
  });

  it.each([
    [
      'larger and smaller',
      '3 mm and 4 mm needles',
      'With smaller needles, cast on 20 sts.\n\nKnit 4 rows.\n\nChange to larger needles.\n\nKnit 20 rows.',
    ],
    [
      'by the US number',
      'US 2 (2.75 mm) and US 5 (3.75 mm) needles',
      'With US 2 needles, cast on 20 sts.\n\nKnit 4 rows.\n\nChange to US 5 needles.\n\nKnit 20 rows.',
    ],
    ['buttons have a size too', '3 mm needles', 'With 3 mm needles, cast on 20 sts.\n\nSew on the 18 mm buttons.'],
  ])('named %s', (_, needles, rows) => {
    expect(told('needle-use', `# Kelp\n\nNeedles: ${needles}\n\n## Band\n\n${rows}\n`)).toEqual([]);
  });

  it.each([
    ['80 cm long', 60, 1],
    ['40 cm long', 84, 0],
    ['40 cm long', 400, 1],
  ])('circular, %s, for %i sts', (length, count, times) => {
    expect(
      told(
        'needle-length',
        `# Kelp Cuff\n\nNeedles: 4 mm circular needle, ${length}\n\nTension: 20 sts and 28 rnds to 10 cm over st st\n\n## Cuff\n\nCast on ${count} sts. Join in the round.\n\nKnit 30 rnds.\n\nCast off.\n`,
      ),
    ).toHaveLength(times);
  });
});

describe('colours', () => {
  const colours = (rows: string): string =>
    `# Kelp Band\n\n## Yarn\n\n- MC: Orrin Flax in Slate, 50 g; 1 ball\n- CC1: Orrin Flax in Chalk, 50 g; 1 ball\n\n## Band\n\nWith MC, cast on 20 sts.\n\n${rows}\n`;
  it.each([
    ['Row 1: With CC1, knit.', 0],
    ['Row 1: With CC1, knit.\n\nRow 2: With CC2, knit.', 1],
    ['Row 1: With MC, knit.', 1],
    ['Row 1: With CC1, work Chart A.', 0],
  ])('%s', (rows, times) => {
    expect(told('colours-listed', colours(rows))).toHaveLength(times);
  });
});

describe('yarn', () => {
  it.each([
    ['905 m in total', '4 balls', 1],
    ['905 m in total', '5 balls', 0],
    ['848 m in total', '4 balls', 0],
  ])('%s, %s', (total, balls, times) => {
    expect(told('balls-and-total', `# Kelp\n\nYarn: Orrin Flax, 212 m per 100 g; ${total}; ${balls}\n\nCast on 20 sts.\n`)).toHaveLength(
      times,
    );
  });
  it('grows with the sizes', () => {
    expect(
      told('balls-and-total', '# Kelp\n\nSizes: S (M, L)\n\nYarn: Orrin Flax, 212 m per 100 g; 5 (4, 6) balls\n\nCast on 20 sts.\n'),
    ).toHaveLength(1);
    expect(
      told('balls-and-total', '# Kelp\n\nSizes: S (M, L)\n\nYarn: Orrin Flax, 212 m per 100 g; 5 (5, 6) balls\n\nCast on 20 sts.\n'),
    ).toEqual([]);
  });

  // D. L. Munden: a relaxed stocking stitch row takes 3.8 to 4.2 times its width in yarn, so 280 rows of 30 cm take 319 to 353 m;
  // by the area, with rows and stitches of the gauge, 309 to 341 m.
  it.each([
    [4, 0],
    [2, 1],
    [12, 1],
  ])('%i balls of 110 m for a scarf of 16,800 sts', (balls, times) => {
    const scarf = `# Kelp Scarf\n\nYarn: Orrin Flax, 110 m per 50 g; ${balls} balls\n\nGauge: 20 sts and 28 rows = 10 cm in st st\n\n## Scarf\n\nCast on 60 sts.\n\nKnit 280 rows.\n\nBind off.\n`;
    const all = findings('yarn-estimate', scarf);
    expect(all).toHaveLength(times);
    if (times > 0) expect(all[0]?.message).toContain('16800 sts at 20 sts to 10 cm take about 310 to 340 m');
  });

  it.each([
    ['bulky', 30, 1],
    ['DK', 22, 0],
    ['DK', 26, 0],
    ['4-ply', 28, 0],
    ['aran', 30, 1],
  ])('%s at %i sts to 10 cm', (name, gauge, times) => {
    expect(
      told(
        'yarn-and-gauge',
        `# Kelp\n\nYarn: Orrin Flax ${name}, 100 m per 50 g; 2 balls\n\nGauge: ${gauge} sts and ${Math.round(gauge * 1.35)} rows = 10 cm in st st\n\nCast on 20 sts.\n`,
      ),
    ).toHaveLength(times);
  });
});

describe('a change of needles that is not told', () => {
  const pullover = (change: string, cuff = 'Change to smaller needle. '): string =>
    `# Kelp\n\nNeedles: US 5 (3.75 mm) and US 7 (4.5 mm) circular needles\n\nGauge: 20 sts and 28 rnds = 4 in on larger needle\n\n## Yoke\n\nWith smaller needle, CO 60 sts. Join in the round.\n\nKnit 4 rnds.\n\n${change}\n\nKnit 40 rnds.\n\n## Body\n\nKnit 40 rnds.\n\n${cuff}Knit 6 rnds. BO.\n\n## Sleeves\n\nWith larger needle, CO 40 sts. Join in the round. Knit 20 rnds. BO.\n`;
  it.each([
    ['', 1],
    ['Change to larger needle.', 0],
    ['Switch to larger needle.', 0],
  ])('before the words change to the one in hand: %j', (change, times) => {
    expect(told('needle-not-changed', pullover(change))).toHaveLength(times);
  });
  it('is no change of kind', () => {
    expect(told('needle-not-changed', pullover('Change to larger needle.', 'Change to larger dpns. '))).toEqual([]);
  });

  const bonnet = (change: string): string =>
    `# Kelp Bonnet\n\nNeedles: 2.5 mm and 3 mm needles\n\nGauge: 27 sts and 38 rows in st st on needle 3 mm = 10 cm\n\n## Bonnet\n\nCast on 80 sts with needle 2.5 mm. Knit 6 rows.\n\n${change}Knit 40 rows. Cast off.\n\n## Cord\n\nWith needle 3 mm cast on 3 sts. Knit 40 rows. Cast off.\n`;
  it.each([
    ['', 1],
    ['Change to needle 3 mm. ', 0],
  ])('to the needle of the gauge: %j', (change, times) => {
    expect(told('needle-not-changed', bonnet(change))).toHaveLength(times);
  });

  it('is found by the numbers of old leaflets', () => {
    const draft = (change: string) =>
      `# Kelp\n\nMATERIALS.—A pair each of No. 8 and No. 10 needles.\n\n## The Back\n\nUsing No. 10 needles, cast on 60 sts. Knit 6 rows.\n\n${change}Knit 40 rows. Cast off.\n\n## The Sleeves\n\nUsing No. 10 needles, cast on 40 sts. Knit 6 rows.\n\nChange to No. 8 needles. Knit 40 rows. Cast off.\n`;
    expect(told('needle-not-changed', draft(''))).toHaveLength(1);
    expect(told('needle-not-changed', draft('Change to No. 8 needles. '))).toEqual([]);
  });
});

describe('eyes of a toy', () => {
  const toy = (remark: string): string =>
    `# Kelp Seal\n\nNotions: toy stuffing; two 8 mm safety eyes${remark}\n\n## Body\n\nCast on 8 sts. Knit 8 rows.\n`;
  it.each([
    ['', 1],
    [' (embroider the eyes for a child under three)', 0],
  ])('with the caution %j', (remark, times) => {
    expect(told('child-safety', toy(remark))).toHaveLength(times);
  });
});

describe('the needle of the gauge', () => {
  const band = (needles: string, gauge: string): string =>
    `# Kelp Band\n\nNeedles: ${needles}\n\nGauge: ${gauge}\n\nCast on 20 sts.\n\nRow 1 (RS): Knit.\n`;
  it.each([
    ['4 mm needles', '20 sts and 28 rows = 10 cm in st st on 4 mm needles', 0],
    ['4 mm needles', '20 sts and 28 rows = 10 cm in st st on 4.5 mm needles', 1],
    ['3 mm and 4 mm needles', '20 sts and 28 rows = 10 cm in st st on larger needles', 0],
  ])('%s listed; %s', (needles, gauge, times) => {
    expect(told('needle-use', band(needles, gauge)).filter((one) => one.includes('gauge is told'))).toHaveLength(times);
  });
});

it('two sizes of double-pointed needles are two needles: the second must be changed to', () => {
  const rows = (change: string): string =>
    draft('tapestry needle', `With smaller needles work 4 rnds.\n\n${change}Rnd 1: Knit.`, 'Needles: 3.5 mm and 4 mm dpns');
  expect(told('needle-use', rows(''))).toHaveLength(1);
  expect(told('needle-use', rows('Change to larger needles.\n\n'))).toEqual([]);
});

describe('lists under other headings', () => {
  it.each(['**Also** 3 markers, darning needle', 'Also: 3 markers, darning needle', '**other bits** 3 markers, darning needle'])(
    '%s',
    (line) => {
      const rows = `# Kelp Band\n\n**Yarn** 100 m of DK\n\n${line}\n\n## Band\n\nCast on 20 sts.\n\nRow 1 (RS): P7, C6B, p7.\n`;
      expect(told('tool-not-listed', rows).join()).toContain('needs a cable needle');
    },
  );
  it('balls “of A” and “of B”', () => {
    const rows = (last: string): string =>
      `# Kelp Band\n\n**Yarn:** DK wool, 115 m per 50 g ball: 2 balls of A, 2 balls of B\n\nWith A cast on 20 sts.\n\nRow 1 (RS) with B: Knit.\n\nRow 2 with ${last}: Knit.\n`;
    expect(told('colours-listed', rows('A'))).toEqual([]);
    expect(told('colours-listed', rows('D'))).toHaveLength(1);
  });
});

describe('markers in words', () => {
  const wedge = (...rows: readonly string[]): string => `# Tern Wedge\n\nCO 40 sts. Join in the round.\n\n${rows.join('\n\n')}\n`;
  it('a repeat that begins with the marker has slipped it where the next pass begins', () => {
    const rows = wedge(
      'Rnd 1: *Pm, m1, k1, m1, pm, k19; rep from * once. (44 sts)',
      'Rnd 2: *Sl m, m1, k to m, m1, sl m, k to m; rep from * once. (48 sts)',
      'Rnd 3: *Sl m, m1, k to m, m1, sl m, k to m; rep from * once. (52 sts)',
    );
    expect(told('marker-not-slipped', rows)).toEqual([]);
  });
  it('a marked stitch need not be spoken of again', () => {
    const flat = '# Tern Square\n\nCO 41 sts. Mark the middle st.\n\nRow 1 (RS): K19, s2kp, k19. 39 sts.\n\nRow 2: Knit.\n\nBO all sts.\n';
    expect(told('stray-marker', flat)).toEqual([]);
  });
});
