/** Rows over a part of a round: what waits, and what a count behind them speaks of. Common practice, no source. */
import { check } from './worked.ts';

const round = ['CO 64 sts and join in the round.', 'Rnd 1: Knit.'];

check([
  {
    name: '“leaving 32 sts for instep”: they wait, and come back where their number is named',
    lines: [
      ...round,
      'Row 1 (RS): *Sl 1, k1; rep from * 15 more times, turn, leaving rem 32 sts for instep.',
      'Row 2 (WS): Sl 1, p31. 32 sts.',
      'Rep last 2 rows twice more.',
      'Rnd 1: K32, pick up and k 16 sts along heel flap, pm, k32 instep sts, pm, pick up and k 16 sts along heel flap. 96 sts.',
      'BO all sts.',
    ],
    after: [64, 32, 32, 32, 32, 32, 32, 96],
    said: [],
  },
  {
    name: 'another number than waits beyond the turn',
    lines: [...round, 'Row 1 (RS): K32, turn, leaving rem 30 sts for instep.', 'Row 2 (WS): Sl 1, p31.'],
    after: [64, null, null],
    said: ['query stitches-left-open', 'error unworked-stitches'],
  },
  {
    name: '“leaving rem sts for instep” with the heel on both sides of the beginning: “32 heel sts” are those between the turns',
    lines: [
      ...round,
      'Next row: K16, turn, leaving rem sts for instep.',
      'Next row (WS): Sl 1, p31, turn. 32 heel sts.',
      'Next row: *Sl 1, k1; rep from * 15 times more, turn.',
    ],
    after: [64, 64, 64, 64],
    said: [],
  },
  {
    name: 'Rnd 1 and Row 1 are not the same row twice',
    lines: [
      ...round,
      'Row 1 (RS): K32, turn.',
      'Row 2 (WS): Sl 1, p31, turn.',
      'Row 3 (RS): Sl 1, k to end of rnd. 64 sts.',
      'BO all sts.',
    ],
    after: [64, 64, 64, 64],
    said: [],
  },
]);
