/** Pieces that wait, two groups at once, pieces told by others. Common practice, no source. */
import { check } from './worked.ts';

check([
  {
    name: 'sleeves knitted before the body come to it by their name and number',
    lines: [
      '# Tern Yoke',
      '## Sleeves',
      'Make 2.',
      'CO 40 sts and join in the round.',
      'Knit 10 rnds.',
      'Next rnd: K36, place last 4 sts and first 4 sts on a holder for underarm. 32 sts. Set aside.',
      '## Body',
      'CO 120 sts and join in the round.',
      'Knit 10 rnds.',
      'Next rnd: K56, BO 4 sts, k56, BO 4 sts.',
      '## Yoke',
      'Next rnd: K32 sleeve sts, k56 front sts, k32 sleeve sts, k56 back sts. 176 sts.',
      'Knit 5 rnds.',
      'BO all sts.',
    ],
    after: 176,
    said: [],
  },
  {
    name: 'both shoulders are bound off: twice as many',
    lines: [
      'CO 60 sts.',
      'Knit 10 rows.',
      'Next row: K20, place next 20 sts on holder, join a second ball of yarn, k20.',
      'Working both sides at once, knit 3 rows.',
      'BO 20 sts each side.',
      'Return 20 held sts to needle and BO all 20 sts.',
    ],
    after: 40,
    said: [],
  },
  {
    name: 'both shoulders, another number than is there',
    lines: [
      'CO 60 sts.',
      'Knit 10 rows.',
      'Next row: K20, place next 20 sts on holder, join a second ball of yarn, k20.',
      'Working both sides at once, knit 3 rows.',
      'BO rem 18 sts on each side.',
      'Return 20 held sts to needle and BO all 20 sts.',
    ],
    after: 40,
    said: ['error stitches-named'],
  },
  {
    name: 'the first and last stitch together close the round and cost one',
    lines: [
      'CO 65 sts and join in the round.',
      'Knit the first and last sts together to close the gap. 64 sts.',
      'Rnd 1: Knit.',
      'BO all 64 sts.',
    ],
    after: [64],
    said: [],
  },
  {
    name: '“work across back sts” goes to the next marker',
    lines: [
      'CO 60 sts.',
      'Row 1 (RS): K20, pm, k20, pm, k20.',
      'Row 2: Work to m, sm, work across back sts, sm, work to end.',
      'BO all sts.',
    ],
    after: [60, 60],
    said: [],
  },
  {
    name: 'a piece worked in the same way as another',
    lines: [
      '# Tern Mitts',
      '## Left mitt',
      'CO 40 sts and join in the round.',
      'Rnd 1: *K2, p2; rep from * around.',
      'BO all sts.',
      '## Right mitt',
      'Work in the same way as left mitt.',
    ],
    after: [40],
    said: [],
  },
]);
