/** Short rows where the words leave something open: what counts as a stitch, where the turn lies. Common practice, no source. */
import { expect, test } from 'vitest';
import { check, work } from './worked.ts';

const on = 'CO 40 sts.';
const off = 'BO all sts.';
const all = (rows: number): readonly number[] => Array.from({ length: rows }, () => 40);

check([
  {
    name: 'a flap on half the stitches of a round: rows over them and no others',
    lines: [
      'CO 64 sts and join in the round.',
      'Rnd 1: Knit.',
      'K16, turn.',
      'Row 1 (WS): Sl 1, p31, turn. Work back and forth on these 32 sts for the heel flap.',
      'Row 2 (RS): *Sl 1, k1; rep from * to end.',
      'Row 3: Sl 1, p to end.',
      'Next row (RS): Knit across all 32 sts.',
    ],
    after: 32,
    said: [],
  },
  {
    name: 'turns in a round that come back to its beginning',
    lines: [
      'CO 64 sts and join in the round. Place marker for beg of round.',
      'Rnd 1: Knit.',
      'Short row 1 (RS): K16, w&t.',
      'Short row 2 (WS): P32, w&t.',
      'Short row 3: K to BOR.',
      'Rnd 2: Knit all sts, picking up wraps. 64 sts.',
      off,
    ],
    after: [64, 64, 64, 64, 64],
    said: [],
  },
  {
    name: 'a double stitch is one stitch',
    lines: [
      on,
      'Row 1 (RS): K30, turn.',
      'Row 2: DS, p19, turn, leaving 10 sts unworked.',
      'Row 3: DS, k to end, working DS as one.',
      'Row 4: Purl, working DS as one. 40 sts.',
      off,
    ],
    after: all(4),
    said: [],
  },
  {
    name: '“p19 (including DS)”: nineteen with it, so eleven are left',
    lines: [
      on,
      'Row 1 (RS): K30, turn.',
      'Row 2: DS, p19 (including DS), turn, leaving 11 sts unworked.',
      'Row 3: DS, k to end, working DS as one.',
      'Row 4: Purl, working DS as one. 40 sts.',
      off,
    ],
    after: all(4),
    said: [],
  },
  {
    name: 'the draft counts the yarn overs beside its turns until they are closed',
    lines: [
      on,
      'Row 1 (RS): K30, turn.',
      'Row 2: Yo, p20, turn. 41 sts.',
      'Row 3: Yo, k to yo, k2tog (yo and next st), k to end.',
      'Row 4: P to yo, ssp, p to end. 40 sts.',
      off,
    ],
    after: all(4),
    said: ['style one-reading-fits'],
    words: 'the yarn overs beside the turns are counted in',
  },
  {
    name: 'yarn overs after the turns that stay: lace, as the counts show',
    lines: [on, 'Row 1 (RS): K30, turn.', 'Row 2: Yo, p20, turn.', 'Row 3: Yo, k to end. 42 sts.', 'Row 4: Purl. 42 sts.', off],
    after: [40, 40, 42, 42],
    said: [],
  },
  {
    name: 'yarn overs that are worked together with their neighbours and counted all the same: the count is wrong',
    lines: [
      on,
      'Row 1 (RS): K30, turn.',
      'Row 2: Yo, p20, turn.',
      'Row 3: Yo, k to yo, k2tog, k to end.',
      'Row 4: P to yo, ssp, p to end. 42 sts.',
      off,
    ],
    after: 40,
    said: ['error count-mismatch'],
  },
  {
    name: 'a wrap written out by moving the yarn: “yf” before a turn makes no stitch',
    lines: [
      on,
      'Row 1 (RS): K29, yf, sl 1, yb, turn.',
      'Row 2: Sl 1, p18, yb, sl 1, yf, turn.',
      'Row 3: Sl 1, k to end, picking up wraps.',
      'Row 4: Purl to end, picking up wraps. 40 sts.',
      off,
    ],
    after: all(4),
    said: [],
  },
  {
    name: '“w&t, turn” turns once',
    lines: [
      on,
      'Row 1 (RS): K30, w&t, turn.',
      'Row 2: P20, w&t, turn.',
      'Row 3: K to end, picking up wraps.',
      'Row 4: Purl to end, picking up wraps. 40 sts.',
      off,
    ],
    after: all(4),
    said: [],
  },
  {
    name: '“to last 5 sts” with growing numbers: from the end of the row',
    lines: [
      on,
      'Row 1 (RS): K to last 5 sts, turn.',
      'Row 2: P to last 5 sts, turn.',
      'Row 3: K to last 10 sts, turn.',
      'Row 4: P to last 10 sts, turn.',
      'Row 5: Knit to end.',
      'Row 6: Purl to end.',
      off,
    ],
    after: all(6),
    said: [],
  },
  {
    name: '“to last 5 sts” again and again: from the turn before it, or the work would not move; the author is asked',
    lines: [
      on,
      'Row 1 (RS): K to last 5 sts, turn.',
      'Row 2: P to last 5 sts, turn.',
      'Row 3: K to last 5 sts, turn.',
      'Row 4: P to last 5 sts, turn.',
      'Row 5: Knit to end.',
      'Row 6: Purl to end.',
      off,
    ],
    after: all(6),
    said: ['query repeat-does-not-fit'],
    words: 'Is “before the last turn” meant?',
  },
  {
    name: '“close gap” gives the gap up and costs no stitch',
    lines: [
      on,
      'Row 1 (RS): K30, turn.',
      'Row 2: P20, turn.',
      'Row 3: K20, close gap, k to end.',
      'Row 4: P30, close gap, p to end. 40 sts.',
      off,
    ],
    after: all(4),
    said: [],
  },
  {
    name: 'two stitches named across the gap are a decrease',
    lines: [
      on,
      'Row 1 (RS): K30, turn.',
      'Row 2: P20, turn.',
      'Row 3: K to 1 st before gap, k2tog to close gap, k to end.',
      'Row 4: P to 1 st before gap, p2tog to close gap, p to end. 38 sts.',
      off,
    ],
    after: [40, 40, 39, 38],
    said: [],
  },
  {
    name: '“until 12 sts rem unwrapped” counts those between the two innermost wraps',
    lines: [
      on,
      'Row 1 (RS): K to last st, w&t.',
      'Row 2: P to last st, w&t.',
      'Row 3: K to 1 st before wrapped st, w&t.',
      'Row 4: P to 1 st before wrapped st, w&t.',
      'Rep last 2 rows until 12 sts rem unwrapped.',
      'Next row (RS): K12, picking up wraps k to end.',
      'Next row: P to end, picking up wraps. 40 sts.',
      off,
    ],
    after: all(30),
    said: [],
  },
  {
    name: 'three before the wrapped stitch, five times',
    lines: [
      on,
      'Row 1 (RS): K35, w&t.',
      'Row 2: P30, w&t.',
      'Row 3: K to 3 sts before wrapped st, w&t.',
      'Row 4: P to 3 sts before wrapped st, w&t.',
      'Row 5: K18, w&t.',
      'Row 6: P12, w&t.',
      'Row 7: K12, knit across rem sts, picking up wraps.',
      'Row 8: Purl, picking up rem wraps. 40 sts.',
      off,
    ],
    after: all(8),
    said: [],
  },
]);

test('a turn at the place of the turn before it is told as that', () => {
  const { said, words } = work([
    on,
    'Row 1 (RS): K35, turn.',
    'Row 2: P30, turn.',
    'Row 3: K30, turn.',
    'Row 4: P30, turn.',
    'Row 5: Knit to end.',
    'Row 6: Purl to end.',
    off,
  ]);
  expect(said).toContain('error repeat-does-not-fit');
  expect(words).toContain('work turns here at the place where it turned before');
});
