/** Rows told in the order and with the words that designers choose: what stood before, what stands after. */
import { describe, expect, test } from 'vitest';
import { work } from './work.ts';

describe('rows that a label gives in passing', () => {
  test('"Row 4 … Row 6: As Row 4": the WS row between them is worked', () => {
    const worked = work(
      'Row 2 (RS): K1, yo, k to end.\n\nRow 3 and all WS rows: Purl.\n\nRow 4: K1, yo, k to end.\n\nRow 6: As Row 4 – 8 sts.',
      {
        start: 5,
      },
    );
    expect(worked.kinds).toEqual([]);
    expect(worked.end).toEqual([8]);
    expect(worked.entries.map((entry) => entry.side)).toEqual(['RS', 'WS', 'RS', 'WS', 'RS']);
  });
});

describe('two shapings at once', () => {
  const armhole = 'Dec 1 st at armhole edge on next 5 rows, then on foll 4 alt rows';

  // Rows 3, 7 and 11 of the 13 rows of the armhole: common practice, no source.
  test('the second goes on as long as the first where it names no end of its own', () => {
    const worked = work(`${armhole}, at the same time dec 1 st at front edge on the 3rd and every foll 4th row. (34 sts)`, { start: 46 });
    expect(worked.kinds).toEqual([]);
    expect(worked.end).toEqual([34]);
  });

  test('and afterwards to the count named then', () => {
    const worked = work(
      `${armhole}, at the same time dec 1 st at front edge on the 3rd and every foll 4th row. Keeping armhole edge straight, cont to dec at front edge on every 4th row as before until 27 sts rem.`,
      { start: 46 },
    );
    expect(worked.kinds).toEqual([]);
    expect(worked.end).toEqual([27]);
  });
});

test('the back of a bonnet takes in the sides until nothing is left of them', () => {
  const worked = work(
    'Row 1 (RS): K15, ssk, turn. Row 2: Sl 1, p6, p2tog, turn. Row 3: Sl 1, k6, ssk, turn. Rep Rows 2 and 3 until all side sts have been taken in, ending with a WS row. 8 sts remain.',
    { start: 24 },
  );
  expect(worked.kinds).toEqual([]);
  expect(worked.end).toEqual([8]);
});

describe('rounds told needle by needle, until one needle has so many', () => {
  const gusset = 'Rnd 1: N1: K. N2: K1, M1R, k to last st, M1L, k1.\n\nRnd 2: Knit.\n\n';

  test('"44 sts on N2" is that needle alone: 28 sts grow by 2 in each pass', () => {
    const worked = work(`Next rnd: Knit. N1: 28; N2: 28.\n\n${gusset}Repeat Rnds 1 and 2 until there are 44 sts on N2.`, {
      start: 56,
      mode: 'round',
    });
    expect(worked.kinds).toEqual([]);
    expect(worked.end).toEqual([72]);
  });

  test('where nothing says what lies on the needle, the count behind the words says how often', () => {
    const worked = work(`${gusset}Repeat Rnds 1 and 2 until there are 44 sts on N2. [72 sts]`, { start: 56, mode: 'round' });
    expect(worked.kinds).toEqual([]);
    expect(worked.end).toEqual([72]);
  });

  test('and without a count nothing is claimed', () => {
    const worked = work(`${gusset}Repeat Rnds 1 and 2 until 44 sts are on needle 2.`, { start: 56, mode: 'round' });
    expect(worked.kinds).toEqual([]);
    expect(worked.needles.map((each) => each.sure)).toEqual([false]);
  });
});

// 13 rows: 9 at the armhole, and rows 3, 7 and 11 at the front. The stop behind "foll" ends no sentence.
test('"every foll. 4th row. Keeping …": the stop behind "foll" parts no row from its number', () => {
  const worked = work(
    'Dec. 1 st. at armhole edge on the next 5 rows and then on the foll. 4 alt. rows, at the same time dec. 1 st. at front edge on the 3rd and every foll. 4th row. Keeping armhole edge straight, cont. to dec. at front edge on every 4th row as before until 27 sts. rem.',
    { start: 46 },
  );
  expect(worked.kinds).toEqual([]);
  expect(worked.end).toEqual([27]);
});

test('a block worked on some of the stitches ends without turning: the rest waits for the next one', () => {
  const rows = 'Row 1 (RS): K2, turn.\n\nRow 2 (WS): P2, turn.\n\nRow 3: Sl 1, k2, turn.\n\nRow 4: P3, turn.\n\nRow 5: Sl 1, k3.';
  const worked = work(`${rows} Do not turn.`, { start: 24 });
  expect(worked.kinds).not.toContain('leftOver');
  expect(worked.needles.map((each) => each.sure)).toEqual([false]);
  // without those words a step is missing
  expect(work(rows, { start: 24 }).kinds).toContain('leftOver');
});
