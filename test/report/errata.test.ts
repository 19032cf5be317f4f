/** Errata between two versions: what alters the work, for whom, and what does not. */
import { describe, expect, test } from 'vitest';
import { proof } from '../../src/index.ts';
import { errataOf, errataText } from '../../src/report/errata.ts';
import { folderWith, rowproof } from '../command-line/play.ts';

const sleeve = (times: string, count = '80 (84, 88) sts', row = 'K1, m1, k to last st, m1, k1. (2 sts inc)'): string =>
  `# Quill Pullover\n\n**Sizes:** S (M, L)\n\n## Sleeve\n\nCO 56 (58, 60) sts.\n\nRow 1 (RS): ${row}\n\nRow 2: Purl.\n\nRep Rows 1 and 2 ${times} more times. ${count}.\n\nBO all sts.\n`;
const changes = (was: string, is: string) =>
  errataOf(proof(was), proof(is)).map(({ section, label, kind, sizes }) => ({ section, label, kind, sizes }));

describe('errata', () => {
  test('one size works on more often: named with its counts, the others are told that nothing changes', () => {
    const [was, is] = [proof(sleeve('11 (11, 13)', '80 (84, 88) sts')), proof(sleeve('11 (12, 13)', '80 (84, 88) sts'))];
    expect(errataOf(was, is).map(({ kind, sizes }) => [kind, sizes])).toEqual([['work', ['M']]]);
    const text = errataText(was, is);
    expect(text).toContain('size M.');
    expect(text.replace(/\s+/g, ' ')).toContain('Stitches after it: 82 before, 84 now.');
    expect(text.replace(/\s+/g, ' ')).toContain('Other sizes: nothing changes.');
    expect(text).toContain('no contradiction was found in it');
  });

  test('a printed count that was wrong leaves the work as it was', () => {
    expect(changes(sleeve('11 (12, 13)', '80 (83, 88) sts'), sleeve('11 (12, 13)'))).toEqual([
      { section: 'Sleeve', label: '', kind: 'count', sizes: ['M'] },
    ]);
  });

  test('other words for the same work are wording', () => {
    expect(changes(sleeve('11 (12, 13)'), sleeve('11 (12, 13)').replace('Row 2: Purl.', 'Row 2: P.')).map(({ kind }) => kind)).toEqual([
      'wording',
    ]);
    expect(
      changes(sleeve('11 (12, 13)'), sleeve('11 (12, 13)').replace('K1, m1, k to last st', 'K1,  m1, K to last st')).map(
        ({ kind }) => kind,
      ),
    ).toEqual(['wording']);
  });

  test('the same count by stitches in another order is other work', () => {
    const [one] = changes(sleeve('11 (12, 13)'), sleeve('11 (12, 13)', '80 (84, 88) sts', 'K2, m1, k to last 2 sts, m1, k2. (2 sts inc)'));
    expect(one).toEqual({ section: 'Sleeve', label: 'Row 1', kind: 'work', sizes: ['S', 'M', 'L'] });
  });

  test('another number in one size of a list concerns that size only', () => {
    const was = sleeve('11 (12, 13)').replace('BO all sts.', 'Row 3: K2 (3, 4), p2, k to end.\n\nBO all sts.');
    const [one] = changes(was, was.replace('K2 (3, 4)', 'K2 (4, 4)'));
    expect(one).toMatchObject({ kind: 'work', sizes: ['M'] });
  });

  test('a row put in and a row taken out', () => {
    const more = sleeve('11 (12, 13)').replace('\n\nBO all', '\n\nNext row: Knit.\n\nBO all');
    expect(errataOf(proof(sleeve('11 (12, 13)')), proof(more)).map(({ was, is }) => [was, is])).toEqual([[null, 'Next row: Knit']]);
    expect(errataOf(proof(more), proof(sleeve('11 (12, 13)'))).map(({ was, is }) => [was, is])).toEqual([['Next row: Knit', null]]);
  });

  test('a stretch without a label that has other numbers is one change, not two', () => {
    const was = '# Kelp\n\nCO 20 sts.\n\nKnit 10 rows.\n\nBO all sts.\n';
    expect(errataOf(proof(was), proof(was.replace('10 rows', '12 rows'))).map(({ was: old, is }) => [old, is])).toEqual([
      ['Knit 10 rows', 'Knit 12 rows'],
    ]);
  });

  test('what changed outside the instructions is named by its line, never passed over', () => {
    const was = sleeve('11 (12, 13)');
    const text = errataText(proof(was), proof(was.replace('**Sizes:**', '**Needles:** 4 mm\n\n**Sizes:**')));
    expect(text).toContain('No change alters the work.');
    expect(text.replace(/\s+/g, ' ')).toContain('Outside the instructions line 3 of the new version differs');
  });

  test('nothing has changed', () => {
    const made = proof(sleeve('11 (12, 13)'));
    expect(errataText(made, made)).toBe(
      'Quill Pullover: what has changed\nNo change alters the work.\n\nThe new version was worked in every size; no contradiction was found in it.\n',
    );
  });

  test('on the command line', async () => {
    const folder = folderWith({ 'a.md': 'Row 1: old.', 'b.md': 'Row 1: new.' });
    const { status, out } = await rowproof(['errata', 'a.md', 'b.md'], { folder });
    expect(status).toBe(0);
    expect(out).toContain('what has changed');
    expect((await rowproof(['errata', 'a.md', 'none.md'], { folder })).status).toBe(2);
  });
});
