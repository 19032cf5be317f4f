/** Counts of the parts of a yoke, against each other, the whole and the markers. Common practice, no source. */
import { check } from './worked.ts';

const yoke = [
  'CO 70 sts.',
  'Row 1 (WS): P12, pm, p11, pm, p24, pm, p11, pm, p12.',
  'Row 2 (RS): *K to 1 st before m, kfb, sm, kfb; rep from * 3 more times, k to end. 78 sts.',
  'Row 3: Purl.',
];
const off = 'BO all sts.';
const after = [70, ...[78, 86, 94, 102, 110, 118, 126, 134].flatMap((count) => [count, count])];

check([
  {
    name: 'parts that are there',
    lines: [...yoke, 'Rep Rows 2 and 3 7 more times. 134 sts: 20 sts for each front, 27 sts for each sleeve, 40 sts for back.', off],
    after,
    said: [],
  },
  {
    name: 'parts that add up, and lie elsewhere',
    lines: [...yoke, 'Rep Rows 2 and 3 7 more times. 134 sts: 21 sts for each front, 26 sts for each sleeve, 40 sts for back.', off],
    after,
    said: ['query needles-sum'],
    words: 'the nearest has 20',
  },
  {
    name: 'parts that are more than the whole',
    lines: [...yoke, 'Rep Rows 2 and 3 7 more times. 134 sts: 20 sts for each front, 28 sts for each sleeve, 40 sts for back.', off],
    after,
    said: ['error needles-sum'],
    words: 'The parts add up to 136 sts, but 134 are there to divide.',
  },
  {
    name: 'seam stitches between the parts go without a word',
    lines: [
      'CO 78 sts and join in the round.',
      'Rnd 1: K24, pm, k2, pm, k11, pm, k2, pm, k24, pm, k2, pm, k11, pm, k2, pm for BOR.',
      'Rnd 2: *K1, m1, k to 1 st before m, m1, k1, sm, k2, sm; rep from * around. 86 sts.',
      'Rnd 3: Knit. You now have 86 sts: 26 each for front and back and 13 for each sleeve.',
      off,
    ],
    after: [78, 86, 86],
    said: [],
  },
  {
    name: 'the sleeves wait: what is said of them is not among the stitches in hand',
    lines: [
      'CO 70 sts.',
      'Row 1 (RS): K12, place 11 sts on holder for sleeve, k24, place 11 sts on holder for sleeve, k12. 48 body sts; 11 sts on hold for each sleeve.',
      off,
      '## Sleeves',
      'Return 11 held sts to needle and BO all 11 sts.',
      'Return rem 11 held sts to needle and BO all 11 sts.',
    ],
    after: [48],
    said: [],
  },
  {
    name: '“15 thumb sts” are those between two markers',
    lines: [
      'CO 40 sts and join in the round.',
      'Rnd 1: K20, pm, k1, pm, k19.',
      'Rnd 2: K to m, sm, m1, k to m, m1, sm, k to end. 42 sts.',
      'Rep Rnd 2 6 more times. There are now 15 thumb sts.',
      'BO all sts.',
    ],
    after: 54,
    said: [],
  },
  {
    name: 'how a stitch is taken away, in brackets beside its number',
    lines: [
      'CO 60 sts.',
      'Knit 2 rows.',
      'Dec 1 st (k2tog) at each end of next row. 58 sts.',
      'Dec 1 st at each end (k2tog) of next and foll 2 alt rows. 52 sts.',
      'BO all sts.',
    ],
    after: 52,
    said: [],
  },
  {
    name: '“until 19 sts rem on N2”, two fewer each time from 30',
    lines: [
      'CO 64 sts and join in the round. Arrange sts: N1 16, N2 32, N3 16.',
      'Rnd 1: Knit.',
      'Rnd 2: N1: k to last 3 sts, k2tog, k1; N2: k1, ssk, k to last 3 sts, k2tog, k1; N3: k1, ssk, k to end. 60 sts.',
      'Rnd 3: Knit.',
      'Rep Rnds 2 and 3 until 19 sts rem on N2.',
      off,
    ],
    after: null,
    said: ['error target-missed'],
  },
]);
