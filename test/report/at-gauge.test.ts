/** Pieces at gauge, and the measures a draft prints: a schematic in words. */
import { expect, test } from 'vitest';
import { proof } from '../../src/index.ts';
import { atGauge } from '../../src/report/at-gauge.ts';
import { finishedMeasures } from '../../src/report/finished-measures.ts';
import { proofHtml } from '../../src/report/html/proof-page.ts';
import { testSheetHtml } from '../../src/report/html/test-sheet.ts';
import { inputOf } from './hand-made.ts';

const scarf = (rows: string): string =>
  `# Kelp\n\n**Sizes:** S (M)\n\nTo fit bust 80 (90) cm\n\nFinished width 20 (25) cm; length 30 cm\n\nGauge: 20 sts and 30 rows = 10 cm in st st\n\n## Scarf\n\nCast on 40 (50) sts.\n\n${rows}\n\nBind off all sts.\n`;
const counted = proof(scarf('Knit 60 rows.\n\nRow 61 (RS): K1, m1, k to last st, m1, k1. 42 (52) sts.\n\nKnit 29 rows.'));

// 40 sts at 2 to the cm are 20 cm; 90 rows at 3 to the cm are 30 cm.
test('widths from the counts, height from the rows', () => {
  expect(atGauge(counted)?.pieces).toEqual([
    { title: 'Scarf', inRounds: false, begins: [20, 25], widest: [21, 26], ends: [21, 26], height: [30, 30] },
  ]);
});

test('stitches of the whole, and the yarn they take as a range', () => {
  const yarn = atGauge(counted)?.yarn;
  expect(yarn?.stitches).toEqual([60 * 40 + 30 * 42, 60 * 50 + 30 * 52]);
  for (const { low, high } of yarn?.metres ?? []) expect(high).toBeGreaterThan(low);
});

test('a length told by a measure has no height and no yarn', () => {
  const open = atGauge(proof(scarf('Work in garter st until piece measures 30 cm.')));
  expect(open?.pieces[0]?.height).toEqual([null, null]);
  expect(open?.yarn).toBeNull();
});

test('no gauge, no measures', () => {
  expect(atGauge(proof('# Kelp\n\nCast on 40 sts.\n\nKnit 60 rows.\n'))).toBeNull();
});

test('the measures of the finished piece, not of the body', () => {
  expect(finishedMeasures(counted).map(({ name, measure }) => [name, measure.values])).toEqual([
    ['Finished width', [20, 25]],
    ['length', [30]],
  ]);
});

test('on the editor’s page and on the sheet of a test knitter', () => {
  const page = proofHtml(inputOf(counted));
  expect(page).toContain('Measures at gauge');
  expect(page).toMatch(/begins, wide<\/th><td data-s="0">20 cm<\/td><td data-s="1">25 cm/);
  const sheet = testSheetHtml(inputOf(counted), 'M');
  expect(sheet).toContain('a width in the pattern × 20 ÷ my stitches, a length told in rows × 30 ÷ my rows');
  expect(sheet).toMatch(/Finished width<\/th><td>25 cm/);
});
