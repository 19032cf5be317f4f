/** Where the turns of short rows lie, set by set: the rows, and what is asked. Common practice, no source. */
import { describe, expect, test } from 'vitest';
import { told } from './drafts.ts';

const asked = (cast: string, rows: readonly string[]): readonly string[] =>
  told('turn-places', `# Sand Bank\n\n${cast}\n\n${rows.join('\n\n')}\n\nBO all sts.\n`);

describe('turns of short rows', () => {
  test('one end closes in while the other opens', () => {
    const rows = [
      'Row 1 (RS): K15, turn.',
      'Row 2: P10, turn.',
      'Row 3: K9, turn.',
      'Row 4: P12, turn.',
      'Row 5: K to end.',
      'Row 6: Purl.',
    ];
    expect(asked('CO 20 sts.', rows)).toEqual([
      'query The turns at the end of the right-side rows leave 5 and 6 sts unworked, those of the wrong-side rows 5 and 2: the rows grow longer at one end and shorter at the other. Is a number wrong?',
    ]);
  });

  test('both ends close in by the same number', () => {
    const rows = [
      'Row 1 (RS): K15, turn.',
      'Row 2: P10, turn.',
      'Row 3: K8, turn.',
      'Row 4: P6, turn.',
      'Row 5: K to end.',
      'Row 6: Purl.',
    ];
    expect(asked('CO 20 sts.', rows)).toEqual([]);
  });

  test('distances 5, 7, 9 at one end and 5, 7, 8 at the other', () => {
    const rows = [
      'Row 1 (RS): K35, w&t.',
      'Row 2: P30, w&t.',
      'Row 3: K to 2 sts before wrapped st, w&t.',
      'Row 4: P to 2 sts before wrapped st, w&t.',
      'Row 5: K to 2 sts before wrapped st, w&t.',
      'Row 6: P to 1 st before wrapped st, w&t.',
      'Row 7: K to end, picking up wraps.',
      'Row 8: P to end, picking up wraps.',
    ];
    expect(asked('CO 40 sts.', rows)).toEqual([
      expect.stringContaining('leave 5, 7 and 9 sts unworked, those of the wrong-side rows 5, 7 and 8'),
    ]);
  });

  test('a shoulder on one side: 4, 8, 13, 16, 20 breaks the series', () => {
    const rows = [4, 8, 13, 16, 20].flatMap((rest, at) => [
      `Row ${2 * at + 1}${at === 0 ? ' (RS)' : ''}: K${24 - rest}, turn.`,
      `Row ${2 * at + 2}: Purl.`,
    ]);
    expect(asked('CO 24 sts.', rows)).toEqual([expect.stringContaining('12 in place of 13 would make the steps even')]);
  });

  test('a shoulder of uneven parts is no slip: 5, 10, 15, 21', () => {
    const rows = [5, 10, 15, 21].flatMap((rest, at) => [
      `Row ${2 * at + 1}${at === 0 ? ' (RS)' : ''}: K${24 - rest}, turn.`,
      `Row ${2 * at + 2}: Purl.`,
    ]);
    expect(asked('CO 24 sts.', rows)).toEqual([]);
  });

  test('one size of four leaves the line', () => {
    const cast = '**Sizes:** S (M, L, XL)\n\nCO 44 (48, 52, 56) sts.';
    const rows = [
      'Row 1 (RS): K27 (30, 33, 36), turn.',
      'Row 2: P11 (15, 19, 23), turn.',
      'Row 3: K14 (18, 32, 26), turn.',
      'Row 4: P17 (21, 25, 29), turn.',
      'Row 5: K20 (24, 28, 32), turn.',
      'Row 6: P23 (27, 31, 35), turn.',
      'Row 7: Knit.',
      'Row 8: Purl.',
    ];
    const found = asked(cast, rows);
    expect(found).toHaveLength(1);
    expect(found[0]).toMatch(/^query In size L, /);
  });

  test('a heel of short rows that closes in and opens again', () => {
    const rows = [
      'Row 1 (RS): K19, w&t.',
      'Row 2: P18, w&t.',
      'Row 3: K17, w&t.',
      'Row 4: P16, w&t.',
      'Row 5: K15, w&t.',
      'Row 6: P14, w&t.',
      'Row 7: K15, w&t.',
      'Row 8: P16, w&t.',
      'Row 9: K17, w&t.',
      'Row 10: P18, w&t.',
      'Row 11: K19.',
      'Row 12: P20.',
    ];
    expect(asked('CO 20 sts.', rows)).toEqual([]);
  });
});
