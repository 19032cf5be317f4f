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
