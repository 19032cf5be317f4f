/** Sides, markers and needles of a round, and shaping on a schedule, where the words leave something open. Common practice, no source. */
import { check } from './worked.ts';

const on = 'CO 60 sts.';
const off = 'BO all sts.';
const head = [on, 'Work 2 rows in st st.'];
const dec = 'Dec row (RS): K1, ssk, k to last 3 sts, k2tog, k1.';

check([
  {
    name: 'the tube is turned inside out: its wrong side faces from there on',
    lines: ['CO 60 sts and join in the round.', 'Rnd 1: Knit.', 'Turn work inside out.', 'Rnd 2 (WS): Purl.', 'Rnd 3 (WS): Purl.', off],
    after: [60, 60, 60],
    said: [],
  },
  {
    name: '“sm” where no marker hangs',
    lines: [on, 'Row 1 (RS): K20, sm, k to end.', off],
    after: [60],
    said: ['error marker-place'],
  },
  {
    name: 'the fourth marker is the beginning of the round: the last ssk is worked over it',
    lines: [
      'CO 80 sts and join in the round, pm for beg of round.',
      'Rnd 1: *K20, pm; rep from * twice more, k20.',
      'Rnd 2: [K to 2 sts before m, k2tog, sm, ssk] 4 times. 72 sts.',
      'Rnd 3: Knit.',
      'Rnd 4: [K to 2 sts before m, k2tog, sm, ssk] 4 times. 64 sts.',
      'Rnd 5: [K to 2 sts before m, k2tog, sm, ssk] 4 times. 56 sts.',
      off,
    ],
    after: [80, 72, 72, 64, 56],
    said: [],
  },
  {
    name: 'an odd count has a centre stitch',
    lines: ['CO 61 sts.', 'Row 1 (RS): K to 2 sts before center st, k2tog, k1, ssk, k to end. 59 sts.', 'Row 2: Purl.', off],
    after: [59, 59],
    said: [],
  },
  {
    name: '“rep from * on each needle”: once for every needle of the round',
    lines: [
      'CO 112 sts and join in the round, dividing sts evenly over 4 needles.',
      'Rnd 1: Knit.',
      'Rnd 2: *K1, ssk, k to last 3 sts on needle, k2tog, k1; rep from * on each needle. 104 sts.',
      'Rnd 3: Knit.',
      'Rep last 2 rnds once more. 24 sts rem on each needle.',
      off,
    ],
    after: [112, 104, 104, 96, 96],
    said: [],
  },
  {
    name: '“24 sts rem on each needle” is four times that',
    lines: ['CO 112 sts and join in the round, dividing sts evenly over 4 needles.', 'Rnd 1: Knit. 24 sts rem on each needle.', off],
    after: [112],
    said: ['error needles-sum'],
  },
  {
    name: '“next and foll 4th row”: two',
    lines: [...head, 'Dec 1 st at each end of next and foll 4th row. 56 sts.', off],
    after: 56,
    said: [],
  },
  {
    name: '“next and foll 4 rows”: five',
    lines: [...head, 'Dec 1 st at each end of next and foll 4 rows. 50 sts.', off],
    after: 50,
    said: [],
  },
  {
    name: '“next and 3 foll 4th rows”: four',
    lines: [...head, 'Dec 1 st at each end of next and 3 foll 4th rows. 52 sts.', off],
    after: 52,
    said: [],
  },
  {
    name: '“foll alt rows” goes on to the count stated',
    lines: [...head, 'Dec 1 st at each end of next and foll alt rows. 50 sts.', off],
    after: 50,
    said: [],
  },
  {
    name: '“foll alt rows” with no count: how often?',
    lines: [...head, 'Dec 1 st at each end of next and foll alt rows.', 'Next row: Knit.', off],
    after: null,
    said: ['query shaping-open'],
  },
  {
    name: '“every other row 4 times”: four shaping rows',
    lines: [...head, 'Dec 1 st at each end every other row 4 times. 52 sts.', off],
    after: 52,
    said: [],
  },
  {
    name: '“rep Dec row every RS row 4 times”: four further',
    lines: [...head, dec, 'Rep Dec row every RS row 4 times. 50 sts.', off],
    after: [60, 60, 58, 56, 54, 52, 50],
    said: [],
  },
  {
    name: '“work Dec row every RS row 4 times” behind it: four in all, and four further fit as well',
    lines: [...head, dec, 'Work Dec row every RS row 4 times.', 'Next row (WS): Purl.', off],
    after: 52,
    said: ['query two-readings'],
    words: '50 sts',
  },
  {
    name: '“work Dec row every RS row 4 times”: the count shows four further',
    lines: [...head, dec, 'Work Dec row every RS row 4 times. 50 sts.', off],
    after: 50,
    said: ['style one-reading-fits'],
  },
  {
    name: '“work 7 rows, dec …”: the shaping lies inside them',
    lines: [...head, 'Work 7 rows, dec 1 st at each end of next and every foll alt row. 52 sts.', 'Next row (WS): Purl.', off],
    after: 52,
    said: [],
  },
  {
    name: '“work 8 rows. Dec …”: eight plain rows first',
    lines: [...head, 'Work 8 rows. Dec 1 st at each end of next and every foll alt row until 52 sts rem.', 'Next row (WS): Purl.', off],
    after: 52,
    said: [],
  },
  {
    name: '“each side of marker” is two for the marker, “each side” the two edges',
    lines: [
      'CO 60 sts, pm after 30 sts.',
      'Work 2 rows in st st.',
      'Inc 1 st each side of marker on next row. 62 sts.',
      'Inc 1 st each side of next row. 64 sts.',
      off,
    ],
    after: [60, 60, 62, 64],
    said: [],
  },
  {
    name: 'a schedule that jumps over its count',
    lines: [...head, 'Dec 1 st at each end of every 4th row until there are 51 sts.', off],
    after: null,
    said: ['error target-missed'],
  },
  {
    name: 'at the beginning of three rows: one edge gets two of them',
    lines: [...head, 'Bind off 3 sts at beg of next 3 rows. 51 sts.', off],
    after: 51,
    said: [],
  },
]);
