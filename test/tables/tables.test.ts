import { describe, expect, it } from 'vitest';
import { standardAbbreviation, standardAbbreviations, statedChange } from '../../rules/tables/abbreviations.ts';
import { bodyTables, easeBands, headInches, headSlack } from '../../rules/tables/body-sizes.ts';
import { memory, mostOf, published } from '../../rules/tables/certainty.ts';
import { chartSymbols, readingCertainty } from '../../rules/tables/chart-symbols.ts';
import { needleNumbersDiffer, wordPairs } from '../../rules/tables/dialect.ts';
import {
  allowance,
  castOffWidths,
  knitStates,
  longTailWidths,
  loopLength,
  questionOutside,
  yarnForStitches,
} from '../../rules/tables/loop-length.ts';
import { checkNeedlePair, doubtfulUsSizes, needleSizes } from '../../rules/tables/needles.ts';
import { circularCrowding, circularStretch, serves, shortestCircularCm, toolsCertainty } from '../../rules/tables/tools.ts';
import {
  cmPerInch,
  gaugePercent,
  gaugeSpan,
  gramsPerOunce,
  inchesAgree,
  inchRatioCertainty,
  inchRatios,
  inchTolerance,
  metresPerYard,
  ouncesAgree,
  rowsPerStitch,
  rulerStep,
  widthCertainty,
  widthPasses,
  widthQueries,
  yardsAgree,
} from '../../rules/tables/units.ts';
import { classesApart, yarnWeightOf, yarnWeights } from '../../rules/tables/yarn-weights.ts';

describe('how sure a value is', () => {
  it('lets a value from memory raise a query at most', () => {
    const most: 'query' = mostOf(memory);
    expect(most).toBe('query');
    expect(mostOf(published('a chart'))).toBe('error');
  });
});

describe('needles', () => {
  // Pairs printed alike by eight or nine published conversion charts.
  it.each([
    [2, '0', '14'],
    [2.75, '2', '12'],
    [3.25, '3', '10'],
    [3.75, '5', '9'],
    [4, '6', '8'],
    [4.5, '7', '7'],
    [5, '8', '6'],
    [5.5, '9', '5'],
    [6, '10', '4'],
    [6.5, '10.5', '3'],
    [8, '11', '0'],
    [10, '15', '000'],
  ])('%d mm is US %s and UK %s', (mm, us, uk) => {
    expect(checkNeedlePair(mm, 'us', us).verdict).toBe('agrees');
    expect(checkNeedlePair(mm, 'uk', uk).verdict).toBe('agrees');
  });
  it('knows where charts differ', () => {
    expect(checkNeedlePair(2.25, 'us', '0').verdict).toBe('charts differ');
    expect(checkNeedlePair(7, 'us', '10.75').verdict).toBe('charts differ');
    expect(checkNeedlePair(3.5, 'uk', '9').verdict).toBe('charts differ');
  });
  it('knows a pair that no chart prints', () => {
    expect(checkNeedlePair(4.5, 'us', '6')).toMatchObject({ verdict: 'no chart', expected: '7' });
    expect(checkNeedlePair(5, 'us', '9')).toMatchObject({ verdict: 'no chart', expected: '8' });
    expect(checkNeedlePair(4.3, 'us', '6').verdict).toBe('unknown size');
  });
  it('grows from row to row, US up and UK down', () => {
    const uk = needleSizes.filter((size) => size.uk !== null && !/^0/.test(size.uk)).map((size) => Number(size.uk));
    expect(uk).toEqual([...uk].sort((a, b) => b - a));
    const us = needleSizes.filter((size) => size.us !== null && !/^0./.test(size.us)).map((size) => Number(size.us));
    expect(us).toEqual([...us].sort((a, b) => a - b));
    const mm = needleSizes.map((size) => size.mm);
    expect(mm).toEqual([...new Set(mm)].sort((a, b) => a - b));
    expect(doubtfulUsSizes).toContain('17');
  });
});

describe('units', () => {
  // International yard and pound agreement of 1959.
  it('has the exact relations', () => {
    expect(cmPerInch).toBe(2.54);
    expect(metresPerYard).toBe(0.9144);
    expect(gramsPerOunce).toBeCloseTo(28.3495, 4);
    expect(gaugeSpan).toEqual({ inches: 4, cm: 10 });
  });
  // Pairs printed in pattern schematics and shop listings, at one ratio or the other.
  it.each([
    [36, 91.5, true, false],
    [34, 85, false, true],
    [14, 35, true, true],
    [40, 101.5, true, false],
    [60, 150, false, true],
    [24, 61, true, false],
    [22.25, 56.5, true, false],
  ])('%d in is %d cm', (inches, cm, exact, trade) => {
    const found = inchesAgree(inches, cm, 0.25, 0.5);
    expect(found.exact || found.trade).toBe(true);
    if (inches >= 34) expect(found).toEqual({ exact, trade });
  });
  it.each([
    [36, 96.5],
    [16, 38],
    [8, 30],
  ])('%d in is not %d cm', (inches, cm) => {
    expect(inchesAgree(inches, cm, 0.25, 0.5)).toEqual({ exact: false, trade: false });
  });
  it('sees the step of a ruler', () => {
    expect(rulerStep([35, 39.25, 43.75], [0.25, 0.5, 1])).toBe(0.25);
    expect(rulerStep([89, 100, 111], [0.5, 1])).toBe(1);
    expect(inchTolerance(0.25, 0.5, 2.54)).toBeCloseTo(0.62, 2);
  });
  // As ball labels print them.
  it('agrees with ball labels', () => {
    expect(yardsAgree(131, 120)).toBe(true);
    expect(yardsAgree(93, 85)).toBe(true);
    expect(yardsAgree(437, 400)).toBe(true);
    expect(yardsAgree(183, 200)).toBe(false);
    expect(ouncesAgree(3.5, 100)).toBe(true);
    expect(ouncesAgree(1.75, 50)).toBe(true);
    expect(ouncesAgree(2, 50)).toBe(false);
  });
  it('has tolerances with a reason', () => {
    expect(widthPasses.stitches).toBeLessThan(widthQueries.stitches);
    expect(widthCertainty.sure).toBe('memory');
    expect(inchRatios).toEqual([2.54, 2.5]);
    expect(inchRatioCertainty.sure).toBe('published');
    expect(gaugePercent).toBeGreaterThan(1.6);
    // Five printed gauges: 16x22, 18x24, 23x28, 20x30, 22x28.
    for (const [sts, rows] of [
      [16, 22],
      [18, 24],
      [23, 28],
      [20, 30],
      [22, 28],
    ] as const) {
      expect(rows / sts).toBeGreaterThan(rowsPerStitch.low);
      expect(rows / sts).toBeLessThan(rowsPerStitch.high);
    }
  });
});

describe('yarn of a stitch', () => {
  // Worked figures: Ks of Munden's plain-knit geometry, l = 10·√(Ks / (sts·rows)), worked by hand.
  it.each([
    [32, 44, 1.16, 1.28],
    [28, 38, 1.34, 1.47],
    [22, 30, 1.7, 1.87],
    [18, 24, 2.1, 2.31],
    [10, 14, 3.68, 4.06],
  ])('%d sts and %d rows: %d to %d cm', (sts, rows, low, high) => {
    expect(loopLength(sts, rows).low).toBeCloseTo(low, 2);
    expect(loopLength(sts, rows).high).toBeCloseTo(high, 2);
  });
  it('720 stitches at 22 and 30 take up to 13.5 m', () => {
    expect(yarnForStitches(22, 30, 720).high).toBeCloseTo(13.5, 1);
  });
  it('works without rows, by width alone', () => {
    // l = Kw / w: 20 sts to 10 cm are 1.9 to 2.1 cm.
    expect(loopLength(20, null)).toEqual({ low: 1.9, high: 2.1 });
  });
  it('gives an adult pullover of 1,300 square inches about a thousand yards', () => {
    // 20 x 28 to 10 cm (a knitter's reckoning at 35 stitches to the square inch).
    const stitches = 1300 * 6.4516 * ((20 * 28) / 100);
    const yards = yarnForStitches(20, 28, stitches).low / metresPerYard;
    expect(yards).toBeGreaterThan(900);
    expect(yards).toBeLessThan(1100);
  });
  it('has constants that agree with each other', () => {
    for (const state of knitStates) expect(state.kc * state.kw).toBeCloseTo(state.ks, 0);
    // Kc/Kw is the shape of the stitch, 1.3.
    for (const state of knitStates) expect(state.kc / state.kw).toBeCloseTo(1.3, 1);
    // GATE 2015: 4.2 · 5.5 / 0.5² = 92 stitches to the square cm.
    const full = knitStates.find((state) => state.certainty.sure === 'published')!;
    expect((full.kc * full.kw) / 0.5 ** 2).toBeCloseTo(92.4, 1);
    expect(longTailWidths.high).toBeLessThan(castOffWidths.high);
    expect(allowance.usual).toBe(1.1);
    expect(questionOutside.low).toBeLessThan(1);
  });
});

describe('yarn weights', () => {
  // Craft Yarn Council categories as reprinted.
  it.each([
    ['DK', 3],
    ['double knitting', 3],
    ['8-ply', 3],
    ['worsted', 4],
    ['aran', 4],
    ['Fingering-weight', 1],
    ['4 ply', 1],
    ['sport', 2],
    ['chunky', 5],
    ['super-bulky', 6],
    ['lace', 0],
  ])('%s is category %d', (name, number) => {
    expect(yarnWeightOf(name)?.number).toBe(number);
  });
  it('counts classes between gauge and weight', () => {
    expect(classesApart(yarnWeightOf('DK')!, 22)).toBe(0);
    expect(classesApart(yarnWeightOf('DK')!, 20)).toBe(1);
    expect(classesApart(yarnWeightOf('bulky')!, 30)).toBe(4);
    expect(yarnWeightOf('kelp')).toBeNull();
  });
  it('runs from fine to thick without a gap', () => {
    for (const [i, one] of yarnWeights.entries()) {
      expect(one.number).toBe(i);
      const next = yarnWeights[i + 1];
      if (next !== undefined) {
        expect(next.needles[0]).toBe(one.needles[1]);
        expect(one.gauge[0]!).toBeGreaterThanOrEqual((next.gauge[1] ?? 0) - 1);
      }
    }
  });
});

describe('body sizes', () => {
  it('has one value per size, and grows', () => {
    for (const table of bodyTables) {
      for (const row of table.rows) {
        expect(row.inches).toHaveLength(table.sizes.length);
        const tops = row.inches.map((value) => (typeof value === 'number' ? value : value[1]));
        expect(tops).toEqual([...tops].sort((a, b) => a - b));
      }
    }
  });
  it('has the published bust: upper ends 30 to 62 by fours', () => {
    const bust = bodyTables.find((table) => table.who === 'woman')!.rows.find((row) => row.part === 'chest')!;
    expect(bust.inches.map((value) => (typeof value === 'number' ? value : value[1]))).toEqual([30, 34, 38, 42, 46, 50, 54, 58, 62]);
    expect(bust.certainty.sure).toBe('published');
  });
  it('has ease and heads', () => {
    expect(easeBands.find((band) => band.fit === 'classic')?.inches).toEqual([2, 4]);
    for (const head of headInches) expect(head.inches[0]).toBeLessThan(head.inches[1]);
    expect(headSlack.certainty.sure).toBe('memory');
  });
});

describe('abbreviations', () => {
  it('has no term twice', () => {
    const terms = standardAbbreviations.map((one) => one.term.toLowerCase());
    expect(new Set(terms).size).toBe(terms.length);
  });
  it('finds a term in any case, with what it does to the count', () => {
    // Common practice, printed by seven and more of ten lists.
    expect(standardAbbreviation('K2TOG')?.change).toBe(-1);
    expect(standardAbbreviation('sk2p')?.change).toBe(-2);
    expect(standardAbbreviation('yo')?.change).toBe(1);
    expect(standardAbbreviation('RS')?.change).toBeNull();
    expect(standardAbbreviation('k1b')?.ambiguous).toBe(true);
    expect(standardAbbreviation('zzz')).toBeNull();
  });
  it.each([
    ['slip 1, k2tog, pass over (2 sts decreased)', -2],
    ['slip 1, k2tog, pass over; 2 stitches decreased', -2],
    ['knit front and back (1 st inc’d)'.replace('’', "'"), 1],
    ['one stitch increased', 1],
    ['decreases 2 sts', -2],
    ['knit 2 together', null],
  ])('%s changes the count by %s', (meaning, change) => {
    expect(statedChange(meaning)).toBe(change);
  });
});

describe('chart symbols, words and tools', () => {
  it('agrees with the abbreviations on what a stitch uses and makes', () => {
    for (const symbol of chartSymbols) {
      const known = standardAbbreviation(symbol.stitch);
      if (known?.change != null) expect([symbol.stitch, symbol.makes - symbol.uses]).toEqual([symbol.stitch, known.change]);
    }
    expect(chartSymbols.find((one) => one.stitch === 'no-stitch')).toMatchObject({ uses: 0, makes: 0 });
    expect(readingCertainty.sure).toBe('published');
  });
  it('keeps the words of one side from the other', () => {
    for (const pair of wordPairs) expect(pair.us.filter((word) => pair.uk.includes(word))).toEqual([]);
    expect(wordPairs.filter((pair) => pair.dangerous).map((pair) => pair.us[0])).toEqual(['seed stitch', 'worsted']);
    for (const pair of wordPairs.filter((one) => one.dangerous)) expect(pair.note).not.toBeNull();
    expect(checkNeedlePair(4.5, 'us', needleNumbersDiffer.exception).verdict).toBe('agrees');
    expect(checkNeedlePair(4.5, 'uk', needleNumbersDiffer.exception).verdict).toBe('agrees');
  });
  it('lets one tool serve for another', () => {
    // Common practice, no source.
    expect(serves('spare needle', 'stitch holder')).toBe(true);
    expect(serves('wool needle', 'tapestry needle')).toBe(true);
    expect(serves('tapestry needle', 'wool needle')).toBe(true);
    expect(serves('stitch holder', 'cable needle')).toBe(false);
    expect(toolsCertainty.sure).toBe('memory');
    expect([circularStretch > 1, circularCrowding > 1, shortestCircularCm > 20]).toEqual([true, true, true]);
  });
});
