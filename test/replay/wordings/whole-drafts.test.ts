/**
 * What stands on the needles in places where whole drafts of different hands went wrong once. The sums were worked out by hand. Common
 * practice, no source.
 */
import { describe, expect, test } from 'vitest';
import { proof } from '../../../src/index.ts';

/** Counts of the sheet, "label before→after" where they change, and the errors and questions raised. */
function worked(draft: string): { sheet: readonly string[]; raised: readonly string[] } {
  const { replay, findings } = proof(`# Kelp\n\n${draft}\n`, {});
  return {
    sheet: replay.entries.map((each) => `${each.label} ${each.side ?? ''} ${each.after.join(', ')}`.replace(/\s+/g, ' ')),
    raised: findings.filter((one) => one.level !== 'style').map((one) => `${one.level} ${one.message}`),
  };
}

describe('A marker at the beginning of the round', () => {
  const gusset = (round: string): string =>
    `## Body\n\nCO 20 sts. Pm and join into a round.\n\nRnd 1: Knit.\n\nRnd 2: *Pm, m1, k1, m1, pm, k9; rep from * once more. 24 sts.\n\nRnd 3: Knit.\n\n${round}\n\nBO all sts.`;
  test('is slipped with the one that hangs beside it', () => {
    const { sheet, raised } = worked(gusset('Rnd 4: *Sl m, m1, k to m, m1, sl m, k to m; rep from * once more.'));
    expect(raised).toEqual([]);
    expect(sheet.at(-2)).toBe('Rnd 4 RS 28');
  });
  test('lies before what the round makes first', () => {
    const { sheet, raised } = worked(
      '## Square\n\nCO 20 sts. Pm and join in the round.\n\nRnd 1: Knit.\n\nRnd 2: M1, k10, pm, k10. 21 sts.\n\nRnd 3: M1, k to m, sm, k to end. 22 sts.\n\nBO all sts.',
    );
    expect(raised).toEqual([]);
    expect(sheet.at(-2)).toBe('Rnd 3 RS 22');
  });
});

describe('Stitches picked up and worked in rounds', () => {
  test('though nothing says to join', () => {
    const { sheet } = worked(
      '## Panel\n\nCO 30 sts.\n\nKnit 40 rows.\n\nBO all sts.\n\n## Edge\n\nWith RS facing, pick up and k 60 sts round the edge.\n\nRnd 1: Purl.\n\nRnd 2: Knit.\n\nBO all sts.',
    );
    expect(sheet.slice(3, 6)).toEqual(['Row RS 60', 'Rnd 1 RS 60', 'Rnd 2 RS 60']);
  });
  test('where the marker of the round closes the list', () => {
    const { sheet } = worked(
      '## Centre\n\nCO 10 sts.\n\nKnit 20 rows. Do not turn.\n\nPick up and k 10 sts down the side, pm, 10 sts along the cast-on edge, pm, 10 sts up the other side, pm, k10, pm for the beginning of the round. 40 sts.\n\nRound 1: Purl.',
    );
    expect(sheet.at(-1)).toBe('Rnd 1 RS 40');
  });
});

describe('Pieces divided from one body', () => {
  const body = (front: string): string =>
    `## Body\n\nCO 80 sts. Join in the round.\n\nKnit 20 rnds.\n\n## Back\n\nCont on the last 40 sts only, working to and fro in rows.\n\n1st row (WS): P.\n\n2nd row: K.\n\nCont in st st until the armhole measures 12 cm, ending with a WS row.\n\nCast off.\n\n## Front\n\n${front}\n\nCast off.`;
  test('the back is the pattern of the front on the stitches that waited', () => {
    const { sheet, raised } = worked(
      body(
        'With WS facing rejoin yarn to the 40 sts of the front and work as for the back until the armhole measures 8 cm, ending with a WS row.',
      ),
    );
    expect(raised).toEqual([]);
    expect(sheet.slice(-3)).toEqual(['Join 40', 'As given before 40', 'Bind off 0']);
  });
  test('the wrong number of them is an error', () => {
    const { raised } = worked(body('With WS facing rejoin yarn to the 38 sts of the front.'));
    expect(raised).toHaveLength(1);
    expect(raised[0]).toMatch(/^error 38 sts are to come from .* holds 40/);
  });
});

test('"as for Back" is the piece of that name, and not the neck of it', () => {
  const { sheet, raised } = worked(
    '## Back\n\nCO 40 sts.\n\nWork in st st until back measures 20 cm, ending with a p row.\n\n### Back neck\n\nNext row (RS): K14, turn and leave the rem 26 sts on a holder.\n\nCast off.\n\nWith RS facing leave the centre 12 sts on a holder, rejoin yarn to the rem 14 sts and k to end. Complete to match first side.\n\n## Front\n\nWork as given for Back until front measures 14 cm, ending with a p row. 40 sts\n\nNext row (RS): K to end. 40 sts\n\nCast off.',
  );
  expect(raised).toEqual([]);
  expect(sheet.at(-2)).toBe('Next row RS 40');
});

test('"Every row: …" is the first of the rows that are counted behind it', () => {
  const strip = (ridges: number): string =>
    `## Strip\n\nCast on 9 sts.\n\nEvery row: Sl 1, k to end.\n\nWork 20 rows in all (${ridges} ridges).\n\nCast off.`;
  expect(worked(strip(10)).raised).toEqual([]);
  expect(worked(strip(12)).raised).toHaveLength(1);
});

describe('An edging before the border stitches', () => {
  const shawl = (row: string): string =>
    `## Centre\n\nCO 40 sts. Join in the round.\n\nRnd 1: Knit.\n\nRnd 2: Purl.\n\n## Edging\n\nUsing the knitted cast-on, cast on 5 sts on to the left needle in front of the border.\n\nRow 1: ${row}. Turn.\n\nRow 2: Knit.\n\nRep Rows 1 and 2 another 39 times. 5 sts\n\nCast off.`;
  test('takes one border stitch with its last, told in plain words', () => {
    const { sheet, raised } = worked(shawl('K4, k last st together with next border st'));
    expect(raised).toEqual([]);
    expect(sheet.slice(3, 6)).toEqual(['Cast on 45', 'Row 1 RS 44', 'Row 2 WS 44']);
    expect(sheet.at(-2)).toBe('Row 2 WS 5');
  });
});

test('held stitches are knitted from an empty needle', () => {
  const { raised } = worked(
    '## Body\n\nCO 40 sts. Join in the round.\n\nRnd 1: Knit.\n\nNext rnd: Slip 11 sts of gusset onto a holder, k to end. 29 sts.\n\nBO all sts.\n\n## Sleeve\n\nWith RS facing, knit across the 11 sts of the gusset, pm, pick up and knit 30 sts round the armhole, pm for beginning of round. (41 sts)\n\nRnd 1: Knit.\n\nBO all sts.',
  );
  expect(raised).toEqual([]);
});

test('a marker slipped at the head of the next pass of a star is slipped', () => {
  const { raised } = worked(
    '## Body\n\nCO 20 sts. Join in the round.\n\nRnd 1: *Pm, k10; rep from * once more.\n\nRnd 2: *Sm, m1, k to m; rep from * once more. 22 sts.\n\nRnd 3: *Sm, k to m; rep from * once more.\n\nBO all sts.',
  );
  expect(raised).toEqual([]);
});
