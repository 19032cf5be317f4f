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
    const { raised } = worked(body('With WS facing rejoin yarn to the 42 sts of the front.'));
    expect(raised).toHaveLength(1);
    expect(raised[0]).toMatch(/^error 42 sts are to come from .* holds 40/);
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

describe('Stitches that wait', () => {
  const yoke = (back: number): string =>
    `## Sleeves (make 2)\n\nCO 30 sts. Join in the round.\n\nKnit 20 rnds.\n\nPlace the next 6 sts on waste yarn. Leave the remaining 24 sts on a spare needle.\n\n## Body\n\nCO 80 sts. Join in the round.\n\nKnit 20 rnds.\n\nNext rnd: Place the next 6 sts on waste yarn, k34, place the next 6 sts on waste yarn, k34. 68 sts.\n\n## Yoke\n\nNext rnd: K across the 24 sts of one sleeve, k34 front sts, k across the 24 sts of the second sleeve, k${back} back sts. Pm for BOR. 116 sts.\n\nNext rnd: *K2, k2tog; rep from * to end. 87 sts.\n\nBO all sts. Graft the underarms.`;
  test('come in before what is on the needle, by the name of their piece', () => {
    const { sheet, raised } = worked(yoke(34));
    expect(raised).toEqual([]);
    expect(sheet.slice(-3)).toEqual(['Next rnd RS 116', 'Next rnd RS 87', 'Bind off 0']);
  });
  test('a wrong number beside them is an error', () => {
    expect(worked(yoke(36)).raised.filter((each) => each.startsWith('error'))).toHaveLength(1);
  });
  test('in three pieces, each with its own number', () => {
    const { sheet, raised } = worked(
      '## Body\n\nCO 104 sts.\n\nKnit 9 rows.\n\nDivide for armholes: K25 for right front, BO 4 sts, k until there are 46 sts on right needle after BO for back, BO 4 sts, k to end for left front. You have 25 sts for each front and 46 sts for the back.\n\n### Left front\n\nWorking on the 25 left front sts only:\n\nRow 1 (WS): P to end.\n\nRow 2 (RS): Knit.\n\nBO all sts.\n\n### Back\n\nWith WS facing, join yarn to the 46 back sts.\n\nRow 1 (WS): Purl.\n\nNext row (RS): BO 15 sts, k until there are 16 sts on right needle after BO, BO last 15 sts. Place the 16 neck sts on a holder.\n\n### Right front\n\nWith WS facing, join yarn to the 25 right front sts.\n\nRow 1 (WS): Purl.\n\nBO all sts.\n\n### Hood\n\nWith RS facing, k16 from back holder.\n\nBO all sts.',
    );
    expect(raised).toEqual([]);
    expect(sheet).toContain('Next row RS 0');
  });
});

test('two colours cast on as one are two stitches each in double knitting', () => {
  const pad = (stated: number): string =>
    `## Pad\n\nHolding A and B together, cast on 36 sts. Each is one strand of each color; from now on treat every strand as a stitch, so that you have ${stated} sts.\n\nSet-up row: *K1 with A, p1 with B; rep from * to end. 72 sts.\n\nNext row: *K2tog; rep from * to end. 36 sts.\n\nBO all sts.`;
  expect(worked(pad(72)).raised).toEqual([]);
  expect(worked(pad(70)).raised).not.toEqual([]);
});

test('a chart that is written out behind its name is worked from the words', () => {
  const { sheet, raised } = worked(
    '## Yoke\n\nCO 60 sts. Join in the round.\n\nWork the yoke chart, which is written out here.\n\nRnd 1: *K1, k2tog; rep from * to end. 40 sts.\n\nRnd 2: Knit.\n\nBO all sts.',
  );
  expect(raised).toEqual([]);
  expect(sheet.slice(1, 3)).toEqual(['Rnd 1 RS 40', 'Rnd 2 RS 40']);
});

test('a three-needle bind-off of two sets takes them all', () => {
  const { sheet } = worked(
    '## Hood\n\nCO 54 sts.\n\nKnit 20 rows.\n\nFold the hood and join the two sets of 27 sts with a three-needle bind-off.',
  );
  expect(sheet.at(-1)).toBe('Join 0');
});

describe('Parts that a row states', () => {
  const body = (parts: string): string =>
    `## Body\n\nCO 104 sts.\n\nKnit 9 rows.\n\nNext row (RS): K25, BO 4 sts, k until there are 46 sts on right needle after BO, BO 4 sts, k to end. ${parts}\n\nKnit 2 rows over all sts.`;
  const sums = (parts: string): readonly string[] => worked(body(parts)).raised.filter((each) => each.includes('add up'));
  test('make up what there is', () => expect(sums('You have 25 sts for each front and 46 sts for the back.')).toEqual([]));
  test('or are an error', () => expect(sums('You have 25 sts for each front and 48 sts for the back.')).toHaveLength(1));
  test('on needles by their numbers, beside the total', () => {
    const sock = (second: number): readonly string[] =>
      worked(
        `## Gusset\n\nCO 60 sts. Join in the round.\n\nSet-up rnd: K30, m1, k to end. 61 sts: 31 on N1, ${second} on N2.\n\nBO all sts.`,
      ).raised;
    expect(sock(30)).toEqual([]);
    expect(sock(32)).toHaveLength(1);
  });
});

test('on each needle, where the needles have been told by their stitches', () => {
  const { sheet, raised } = worked(
    "## Toe\n\nCO 60 sts. Join in the round.\n\nSet-up rnd: K to end. 60 sts: 30 on N1, 30 on N2.\n\nRnd 1: N1: K to last 3 sts, k2tog, k1. N2: K to end. N1: K1, ssk, k to end. (2 sts dec'd)\n\nRnd 2: On each needle: k1, ssk, k to last 3 sts, k2tog, k1. 54 sts.\n\nBO all sts.",
  );
  expect(raised).toEqual([]);
  expect(sheet.at(-2)).toBe('Rnd 2 RS 54');
});

test('working on one needle, told in the future', () => {
  const { sheet } = worked(
    "## Heel\n\nCO 60 sts. Join in the round.\n\nRnd 1: Knit.\n\nYou'll be working back and forth over the 30 sts of N1 only; let N2 rest.\n\nRow 1 (RS): Sl 1, k to end, turn.\n\nRow 2 (WS): Sl 1, p to end, turn.",
  );
  expect(sheet.slice(-2)).toEqual(['Row 1 RS 30', 'Row 2 WS 30']);
});

test('a list that breaks off is one finding, and the row is not blamed besides', () => {
  const { raised } = worked(
    '**Sizes:** S (M, L)\n\n## Hat\n\nCO 60 (70, 80) sts. Join in the round.\n\nRnd 1: BO 10 (10, 10) sts, k until there are 20 (30) sts on right needle, BO last 30 (30, 40) sts.\n\nCut yarn.',
  );
  expect(raised.filter((each) => each.includes('left unworked'))).toEqual([]);
  expect(raised.filter((each) => each.includes('values'))).toHaveLength(1);
});
