/** Joining and finishing: every wording with the tree it must read into. Forms of the trade; numbers and words made up here. */
import { describe, expect, it } from 'vitest';
import { read } from '../outline.ts';

/** Sizes of the draft, then each text with its outline. */
const tables: readonly { readonly sizes: readonly string[]; readonly rows: readonly (readonly [string, string])[] }[] = [
  {
    sizes: ['XS', 'S', 'M', 'L'],
    rows: [
      [
        'Place 24 (25: 27: 28) shoulder sts on needle. With RS together, join using three-needle bind-off.',
        'take up 24 (25, 27, 28) shoulder unworked | change side | join threeNeedle',
      ],
      [
        'Work 3-needle BO across both sets of shoulder sts, leaving 40 (42: 42: 44) neck sts on hold.',
        'join threeNeedle | hold next 40 (42, 42, 44) on hold',
      ],
      ['Join shoulders: 3-needle BO.', 'join threeNeedle'],
      ['Graft 8 (10, 12, 12) underarm sts.', 'join graft 8 (10, 12, 12)'],
      ['Sew underarm sts together.', ''],
      ['Join left shoulder and neckband.', 'join seam'],
      ['Set in sleeves between markers.', ''],
      ['Mattress-stitch all seams.', ''],
      ['Join shoulder seams. Set in sleeves. Sew on buttons.', 'join seam'],
      ['CO 8 steek sts between markers; join.', 'CO 8 here | join round'],
      ['Press according to ball band.', ''],
      ['Join side and sleeve seams.', 'join seam'],
      ['Graft underarm sts using Kitchener stitch.', 'join graft'],
      ['Break yarn and draw through rem 8 sts.', 'change break | join thread 8'],
      ['Break yarn, thread through rem sts, pull tight and fasten off.', 'change break | join thread | join fastenOff'],
      ['Sew cast-off edge of sleeves to armholes.', ''],
    ],
  },
  {
    sizes: ['XS', 'S', 'M'],
    rows: [
      ['With RS tog, join shoulders using 3-needle bind off.', 'change side | join threeNeedle'],
      ['With right sides together, work three-needle bind-off across 20 (22, 24) sts.', 'change yarn | join threeNeedle 20 (22, 24)'],
      ['Join shoulder seams with three-needle bind-off.', 'join threeNeedle'],
      ['Graft the 10 underarm sts together.', 'join graft 10'],
      ['Using kitchener stitch, graft underarm sts.', 'join graft'],
      ['Sew in sleeves. Sew side and sleeve seams.', ''],
      ['Break yarn, leaving a long tail, and draw through rem 8 sts.', 'change break | change yarn | join thread 8'],
      ['Cut yarn and thread through rem 8 sts; pull tight and fasten off.', 'change break | join thread 8 | join fastenOff'],
      ['Fasten off.', 'join fastenOff'],
      ['Weave in all ends. Block to measurements.', ''],
    ],
  },
];

describe('Joining and finishing', () => {
  for (const { sizes, rows } of tables) {
    it.each(rows)('%s', (text, expected) => {
      expect(read(text, { sizes })).toBe(expected);
    });
  }
});
