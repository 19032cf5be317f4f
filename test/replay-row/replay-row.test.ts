import { describe, expect, test } from 'vitest';
import { proof, replayRow } from '../../src/index.ts';
import type { RowReplay } from '../../src/report/row-replay.ts';
import { rowReplayJson, rowReplayText } from '../../src/report/row-replay-report.ts';

const draft = `# Skerry Wrap

Sizes: S (M)

## Body

Cast on 37 (44) stitches.

Row 1 (RS): K3, *yo, k2tog, k3; rep from * to last 4 sts, yo, k2tog, k2.

Row 2: Purl.

Row 3: K2, (k1, m1) 3 times, k to end. 40 (47) sts.

Row 4: P to last 2 sts, pm, p2.

Row 5: K2, sm, k to last 4 sts, k2tog, k2.

Next row: Purl.

## Yoke

Row 1: *K5, k2tog; rep from * to last 4 sts, k4. 34 (40) sts.

Dec Row: K1, k2tog, k to end.
`;

const wrap = proof(draft, { path: 'wrap.md' });

function row(name: string, size: string | null = 'S', from?: number): RowReplay {
  const found = replayRow(wrap, name, size, from);
  if (found === null) throw new Error(`no ${name}`);
  return found;
}

/** Needle counts as a knitter would tick them off: step, left, right. */
const steps = (replay: RowReplay) => replay.lines.map((line) => [line.step, line.leftNeedle, line.rightNeedle]);

describe('a row step by step', () => {
  // 37 stitches worked by hand on paper: 3, six times 5, 4.
  test('says after every step what is on both needles; the passes between the second and the last are folded', () => {
    const replay = row('Row 1', 'S');
    expect(replay.before).toBe(37);
    expect(steps(replay)).toEqual([
      ['K3', 34, 3],
      ['yo, k2tog, k3', 29, 8],
      ['yo, k2tog, k3', 24, 13],
      ['yo, k2tog, k3', 9, 28],
      ['yo, k2tog, k3', 4, 33],
      ['yo', 4, 34],
      ['k2tog', 2, 35],
      ['k2', 0, 37],
    ]);
    expect(replay.lines.map((line) => [line.pass, line.of, line.folded])).toEqual([
      [undefined, undefined, undefined],
      [1, 6, undefined],
      [2, 6, undefined],
      [3, 6, 3],
      [6, 6, undefined],
      [undefined, undefined, undefined],
      [undefined, undefined, undefined],
      [undefined, undefined, undefined],
    ]);
    expect(replay.after).toBe(37);
    expect(replay.verdict).toBe('fits');
  });

  test('left and right needle together are the count before plus what was made less what was taken, after every step', () => {
    for (const size of ['S', 'M']) {
      for (const name of ['Body Row 1', 'Body Row 3', 'Row 5', 'Dec row']) {
        const replay = row(name, size);
        let count = (replay.start?.leftNeedle ?? 0) + (replay.start?.rightNeedle ?? 0);
        expect(count).toBeGreaterThan(30);
        for (const line of replay.lines) {
          count += (line.makes ?? 0) - (line.takes ?? 0);
          expect((line.leftNeedle ?? 0) + (line.rightNeedle ?? 0)).toBe(count);
        }
        expect(replay.after === null || replay.after === count).toBe(true);
      }
    }
  });

  test('agrees with the count sheet', () => {
    wrap.replay.entries.forEach((entry) => {
      if (entry.node.type !== 'row' || entry.after[0] === null) return;
      const section = wrap.pattern.sections[entry.section]?.title ?? '';
      expect([entry.label, row(`${section} ${entry.label}`).after ?? entry.after[0]]).toEqual([entry.label, entry.after[0]]);
    });
  });

  test('says where a marker is passed', () => {
    expect(
      row('Row 5')
        .lines.filter((line) => line.marker !== undefined)
        .map((line) => [line.step, line.marker]),
    ).toEqual([['sm', 'past a marker']]);
  });
});

describe('the row asked for', () => {
  test.each([
    ['Body 3', 'Body', 'Row 3'],
    ['row 3', 'Body', 'Row 3'],
    ['ROW 3', 'Body', 'Row 3'],
    ['Yoke: Dec Rnd', 'Yoke', 'Dec row'],
    ['Yoke 1', 'Yoke', 'Row 1'],
    ['Row 1', 'Body', 'Row 1'],
    ['dec', 'Yoke', 'Dec row'],
    ['Next row', 'Body', 'Next row'],
    ['cast on', 'Body', 'Cast on'],
  ])('%s', (asked, section, label) => {
    const { section: foundSection, label: foundLabel } = row(asked);
    expect([foundSection, foundLabel]).toEqual([section, label]);
  });

  // What stands at the head of a finding can be typed.
  test.each([
    ['Body · Row 1 · size M', 'Body', 'Row 1'],
    ['Yoke · sizes S and M', 'Yoke', 'Row 1'],
    ['Body', 'Body', 'Row 1'],
    ['line 15', 'Body', 'Row 4'],
    ['Line 25', 'Yoke', 'Dec row'],
  ])('the heading of a finding: %s', (asked, section, label) => {
    const { section: foundSection, label: foundLabel } = row(asked);
    expect([foundSection, foundLabel]).toEqual([section, label]);
  });

  test('a heading alone leads to the row that a finding under it speaks of', () => {
    const mitt = proof('# Mitt\n\n## Thumb\n\nCast on 12 sts.\n\nRow 1: Knit.\n\nRow 2: K10.\n');
    expect(replayRow(mitt, 'Thumb', null)?.label).toBe('Row 2');
    expect(replayRow(proof('# Mitt\n\n## Thumb\n\nCast on 12 sts.\n\nRow 1: Knit.\n'), 'Thumb', null)?.label).toBe('Row 1');
  });

  test.each(['Row 9', 'Sleeve 1', '', 'Yo'])('there is none called "%s"', (asked) => {
    expect(replayRow(wrap, asked, 'S')).toBeNull();
  });
});

describe('what came of it', () => {
  test('fits', () => {
    expect(row('Row 1', 'S').outcome).toBe('The row fits and ends with 37 stitches.');
  });

  // 44 less 3 and 4 are 37: seven fives and two over.
  test('a repeat that does not come out is worked as far as it goes', () => {
    const replay = row('Row 1', 'M');
    expect(replay.outcome).toBe(
      'The repeat does not come out: it takes 5 stitches and has 37. 7 whole repeats take 35; 2 over, or 3 too few for one more.',
    );
    expect(replay.lines.at(-1)).toMatchObject({ pass: 7, leftNeedle: 6, rightNeedle: 38 });
    expect(replay.verdict).toBe('stops');
    expect(replay.after).toBeNull();
  });

  test('confirmed in one size and not in the other', () => {
    expect(row('Row 1', 'M').designer).toBe('Confirmed in size M; not confirmed in size S, where the row works as printed.');
    expect(row('Row 5', 'S').designer).toBe('The row works as printed in every size that works it.');
  });

  test('where nothing was found there is nothing to confirm', () => {
    const scarf = proof('# Scarf\n\n## Body\n\nCast on 10 sts.\n\nRow 1: Knit.\n\nRow 2: Frobble the first 3 sts, p7.\n\nRow 3: Knit.\n');
    expect(replayRow(scarf, 'Row 1', null)?.designer).toBe('The row works as printed.');
    expect(replayRow(scarf, 'Row 3', null)?.designer).toBe(
      'Whether the row works as printed cannot be told, because something before it or in it was not understood.',
    );
  });

  test('runs short, and leaves stitches', () => {
    const small = proof('# Tam\n\n## Body\n\nCast on 10 sts.\n\nRow 1: K8, k3tog.\n\nRow 2: P5.\n');
    expect(replayRow(small, 'Row 1', null)?.outcome).toBe(
      'The row runs short by 1: "k3tog" takes 3 stitches, and 2 are on the left needle.',
    );
    const left = proof('# Tam\n\n## Body\n\nCast on 10 sts.\n\nRow 1: K7.\n');
    expect(replayRow(left, 'Row 1', null)?.outcome).toBe('The row does not come out: it leaves 3 stitches unworked.');
  });

  test('the count the draft states is held against it', () => {
    const wrong = proof('# Tam\n\n## Body\n\nCast on 10 sts.\n\nRow 1: K1, k2tog, k to end. 8 sts.\n');
    expect(replayRow(wrong, 'Row 1', null)).toMatchObject({
      verdict: 'differs',
      outcome: 'The row fits and ends with 9 stitches; the draft says 8.',
      designer: 'Confirmed: the row does not work as printed.',
    });
  });

  // "K2 3 times" on from a star: four in all or three in all; 8 or 6 stitches.
  test('depends on the reading', () => {
    const two = proof('# Tam\n\n## Body\n\nCast on 20 sts.\n\nRow 1: *K2, m1; rep from * 3 times, k to end.\n');
    const replay = replayRow(two, 'Row 1', null);
    expect(replay?.after).toBe(24);
    expect(replay?.readings).toEqual(['If the number of times counts the first working in: The row fits and ends with 23 stitches.']);
  });

  test('a count that is one off is told where it leads', () => {
    expect(row('Row 1', 'S').oneOff).toEqual([
      'If you came into it with 36: The repeat does not come out: it takes 5 stitches and has 29. 5 whole repeats take 25; 4 over, or 1 too few for one more.',
      'If you came into it with 38: The repeat does not come out: it takes 5 stitches and has 31. 6 whole repeats take 30; 1 over, or 4 too few for one more.',
    ]);
  });
});

describe('begun with another count', () => {
  test('ends where the knitter ends', () => {
    const replay = row('Row 5', 'S', 41);
    expect([replay.before, replay.expected, replay.after]).toEqual([41, 40, 40]);
    expect(replay).toMatchObject({
      verdict: 'differs',
      outcome: 'The row can be worked and ends with 40 stitches; by the draft it ends with 39.',
    });
  });

  test('the markers on the needle are said to be assumed', () => {
    expect(row('Row 5', 'S', 39).assumed).toBe(
      'Where your markers lie was not said: the missing stitch is taken to be at the beginning of the row, before the first marker.',
    );
    expect(row('Row 4', 'S', 39).assumed).toBeUndefined();
    expect(row('Row 5', 'S').assumed).toBeUndefined();
  });

  test('a count with no room for a marker says so', () => {
    const few = proof('# Tam\n\n## Body\n\nCast on 10 sts.\n\nRow 1: K2, pm, k8.\n\nRow 2: P8, sm, p2.\n');
    expect(replayRow(few, 'Row 2', null, 1)?.assumed).toMatch(/no stitches for any marker to stand between\.$/);
  });

  test('one too few: an increase missed, a repeat too few, or a dropped stitch', () => {
    expect(row('Row 4', 'S', 39).slips).toEqual([
      'an increase ("m1") missed in Row 3',
      'one repeat too few of "k1, m1" in Row 3',
      'a yarn over missed in Row 1',
      'a stitch dropped or knitted together with its neighbour',
    ]);
  });

  test('three too few: the row of increases left out', () => {
    expect(row('Row 4', 'S', 37).slips).toEqual(['Row 3 left out']);
  });

  test('three too many: it was worked twice', () => {
    expect(row('Row 4', 'S', 43).slips).toEqual(['Row 3 worked twice']);
  });

  test('the count of the draft itself is no other count', () => {
    expect(row('Row 4', 'S', 40)).toEqual(row('Row 4', 'S'));
  });

  // The slip said to lead there is made in the draft: the replay of the changed draft must agree.
  test('a slip named is a slip that leads there', () => {
    const bare = draft.replaceAll(/ \d+ \(\d+\) sts\.$/gm, '');
    const missed = proof(bare.replace('K3, *yo, k2tog, k3; rep from *', 'K3, k2tog, k3, *yo, k2tog, k3; rep from *'), { path: 'x' });
    expect(replayRow(missed, 'Row 4', 'S')?.before).toBe(39);
    const twice = proof(bare.replace('Row 4:', 'Next row: K2, (k1, m1) 3 times, k to end.\n\nRow 4:'), { path: 'x' });
    expect(replayRow(twice, 'Row 4', 'S')?.before).toBe(43);
  });
});

describe('a stitch pattern that has only a multiple', () => {
  const card = proof(
    '# Card\n\n## Shell pattern\n\nMultiple of 6 sts + 1.\n\nRow 1 (RS): K1, *yo, k1, sk2p, k1, yo, k1; rep from * to end.\n\nRow 2: Purl.\n\nRep Rows 1 and 2.\n',
  );
  test('is shown on three repeats, or on the count asked for', () => {
    expect(replayRow(card, 'Row 1', null)).toMatchObject({ before: 19, after: 19, verdict: 'fits' });
    expect(replayRow(card, 'Row 1', null, 31)).toMatchObject({ before: 31, after: 31, verdict: 'fits' });
    expect(replayRow(card, 'Row 1', null, 30)).toMatchObject({ verdict: 'stops' });
  });
});

describe('as text and as data', () => {
  test('text', () => {
    expect(rowReplayText(wrap, row('Body 1', 'S'))).toBe(`Body · Row 1 (RS) · size S
wrap.md
Row 1 (RS): K3, *yo, k2tog, k3; rep from * to last 4 sts, yo, k2tog, k2
Before it, 37 stitches stand on the needle.

you work                      takes  makes  left needle  right needle
(start)                                              37             0
K3                                3      3           34             3
repeat 1 of 6: yo, k2tog, k3      5      5           29             8
repeat 2: yo, k2tog, k3           5      5           24            13
… repeats 3 to 5, the same       15     15            9            28
repeat 6: yo, k2tog, k3           5      5            4            33
yo                                0      1            4            34
k2tog                             2      1            2            35
k2                                2      2            0            37

The row fits and ends with 37 stitches.
If you came into it with 36: The repeat does not come out: it takes 5 stitches
  and has 29. 5 whole repeats take 25; 4 over, or 1 too few for one more.
If you came into it with 38: The repeat does not come out: it takes 5 stitches
  and has 31. 6 whole repeats take 30; 1 over, or 4 too few for one more.
Confirmed in size M; not confirmed in size S, where the row works as printed.
`);
  });

  test('data', () => {
    const data = JSON.parse(rowReplayJson(wrap, row('Row 4', 'S', 39)));
    expect(data).toMatchObject({
      before: 39,
      expected: 40,
      after: 39,
      verdict: 'differs',
      sizes: { confirmed: [], notConfirmed: ['S', 'M'], unknown: [] },
    });
    expect(data.slips).toHaveLength(4);
  });
});

test('watching a row changes nothing: every row ends as it does unwatched', () => {
  for (const size of wrap.pattern.sizes) {
    for (const entry of wrap.replay.entries) {
      const replay = replayRow(wrap, `${wrap.pattern.sections[entry.section]?.title} ${entry.label}`, size);
      const after = entry.after[wrap.pattern.sizes.indexOf(size)];
      if (replay?.verdict === 'fits' && after !== null) expect(replay.after).toBe(after);
    }
  }
});
