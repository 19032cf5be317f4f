/** Rows worked again: how many passes, counted from where, stopping at which row. Common practice, no source. */
import { check } from './worked.ts';

const wedge = ['Row 1 (RS): Knit.', 'Row 2: Purl.', 'Row 3: K1, ssk, k to last 3 sts, k2tog, k1.', 'Row 4: Purl.'];
const pair = ['Row 1 (RS): K1, ssk, k to last 3 sts, k2tog, k1.', 'Row 2: Purl.'];
const off = 'BO all sts.';

check([
  {
    name: '“rep Rows 1–4” just worked: three further, and three in all fits as well',
    lines: ['CO 60 sts.', ...wedge, 'Rep Rows 1–4 3 times.', off],
    after: 52,
    said: ['query two-readings'],
    words: '52 sts',
  },
  {
    name: '“rep Rows 1–4” that were only told: three in all',
    lines: ['# Tern Cloth', '## Wedge pattern', ...wedge, '## Body', 'CO 60 sts.', 'Rep Rows 1–4 of Wedge pattern 3 times. 54 sts.', off],
    after: 54,
    said: [],
  },
  {
    name: '“work Rows 1–4” where they stand: the pass just worked is one of three',
    lines: ['CO 60 sts.', ...wedge, 'Work Rows 1–4 3 times. 54 sts.', off],
    after: 54,
    said: [],
  },
  {
    name: '“work Rows 1–4”: a count shows that three more are meant',
    lines: ['CO 60 sts.', ...wedge, 'Work Rows 1–4 3 times. 52 sts.', off],
    after: 52,
    said: ['style one-reading-fits'],
    words: 'not counted in',
  },
  {
    name: '“work Rows 1–4”: the next row is 13, so three in all',
    lines: ['CO 60 sts.', ...wedge, 'Work Rows 1–4 3 times.', 'Row 13 (RS): Knit.', off],
    after: 54,
    said: [],
  },
  {
    name: '“work Rows 1–4”: nothing decides',
    lines: ['CO 60 sts.', ...wedge, 'Work Rows 1–4 3 times.', off],
    after: 54,
    said: ['query two-readings'],
    words: 'if the pass just worked is one of them, 54 sts; if the pass just worked is not counted in, 52 sts',
  },
  {
    name: '“work last 2 rows”: further, and nothing decides',
    lines: ['CO 60 sts.', ...pair, 'Work last 2 rows 3 times.', off],
    after: 52,
    said: ['query two-readings'],
  },
  {
    name: '“work last 2 rows”: a count shows three in all',
    lines: ['CO 60 sts.', ...pair, 'Work last 2 rows 3 times. 54 sts.', off],
    after: 54,
    said: ['style one-reading-fits'],
  },
  {
    name: '“until 50 sts rem”: the pass in which the count is reached is finished',
    lines: ['CO 60 sts.', ...pair, 'Rep these 2 rows until 50 sts rem.', 'Row 11 (RS): Knit.', off],
    after: [58, 58, 56, 56, 54, 54, 52, 52, 50, 50, 50],
    said: [],
  },
  {
    name: '“until 50 sts rem, ending with Row 1”: it stops on the row that reaches it',
    lines: ['CO 60 sts.', ...pair, 'Rep these 2 rows until 50 sts rem, ending with Row 1.', 'Next row (WS): Purl.', off],
    after: [58, 58, 56, 56, 54, 54, 52, 52, 50, 50],
    said: [],
  },
  {
    name: '“until 50 sts rem”: the side of the next row shows that it stops on the row that reaches it',
    lines: ['CO 60 sts.', ...pair, 'Rep these 2 rows until 50 sts rem.', 'Next row (WS): Purl.', off],
    after: [58, 58, 56, 56, 54, 54, 52, 52, 50, 50],
    said: [],
  },
  {
    name: '“ending after a WS row” of the same rows: the pass is whole',
    lines: ['CO 60 sts.', ...pair, 'Rep these 2 rows until 50 sts rem, ending after a WS row.', 'Next row (RS): Knit.', off],
    after: [58, 58, 56, 56, 54, 54, 52, 52, 50, 50, 50],
    said: [],
  },
  {
    name: 'a count that is jumped over',
    lines: ['CO 60 sts.', ...pair, 'Rep these 2 rows until 51 sts rem.', off],
    after: null,
    said: ['error target-missed'],
  },
  {
    name: '“rep Rows 3 and 4 for patt” works no row',
    lines: [
      'CO 60 sts.',
      'Row 1 (RS): Knit.',
      'Row 2: Purl.',
      'Row 3: Purl.',
      'Row 4: Knit.',
      'Rep Rows 3 and 4 for patt.',
      'Next row (RS): Knit.',
      off,
    ],
    after: [60, 60, 60, 60, 60],
    said: [],
  },
  {
    name: '“these 4 rows form patt” works no row, eight more do',
    lines: [
      'CO 60 sts.',
      'Row 1 (RS): Knit.',
      'Row 2: Purl.',
      'Row 3: Purl.',
      'Row 4: Knit.',
      'These 4 rows form patt. Work 8 more rows in patt.',
      'Row 13 (RS): Knit.',
      off,
    ],
    after: Array.from({ length: 13 }, () => 60),
    said: [],
  },
  {
    name: '“88 sts” behind the repeat holds after all of it',
    lines: [
      'CO 80 sts.',
      'Row 1 (RS): K1, M1, k to last st, M1, k1. 82 sts.',
      'Row 2: Purl.',
      'Rep last 2 rows 3 more times — 88 sts.',
      off,
    ],
    after: [82, 82, 84, 84, 86, 86, 88, 88],
    said: [],
  },
  {
    name: '“last 2 rows” are rows: a pass of picking up is none of them',
    lines: [
      'CO 20 sts.',
      'Knit 1 row.',
      off,
      'With RS facing, pick up and k 20 sts along side edge.',
      'Row 1 (WS): Knit.',
      'Row 2: K1, M1, k to last st, M1, k1.',
      'Rep last 2 rows once more. 24 sts.',
      off,
    ],
    after: [20, 20, 20, 22, 22, 24],
    said: [],
  },
]);
