/** Seamless construction: every wording with the tree it must read into. Forms of the trade; numbers and words made up here. */
import { describe, expect, it } from 'vitest';
import { read } from '../outline.ts';

/** Sizes of the draft, then each text with its outline. */
const tables: readonly { readonly sizes: readonly string[]; readonly rows: readonly (readonly [string, string])[] }[] = [
  {
    sizes: ['XS', 'S', 'M', 'L'],
    rows: [
      [
        "Raglan Inc Rnd: *K1, m1L, k to 1 st before m, m1R, k1, sm; rep from * 4 more times. 9 sts inc'd.",
        'round raglan inc: *[k{1} M1L k→1 before marker M1R k{1} marker slip]→4× more =9 increased',
      ],
      ['[K to 1 st before m, kfb, sm, kfb] 5 times, k to end.', 'row: [k→1 before marker kfb marker slip kfb]→5× k→end'],
      ['Rep Raglan Inc Rnd every 2nd rnd 21 (23, 25, 27) more times.', 'rep rows [name raglan inc] {every n=21 (23, 25, 27) k=2 more}'],
      ['*K to 2 sts before m, kfb, k1, sm, kfb; rep from * to end.', 'row: *[k→2 before marker kfb k{1} marker slip kfb]→end'],
      ['Rep last 2 rnds 12 more times.', 'rep rows [last 2] 12× more'],
      [
        "[K to 4 sts before m, k2tog, k1, sm, k1, ssk] 5 times, k to end. 9 sts dec'd.",
        'row: [k→4 before marker kNtog{2} k{1} marker slip k{1} ssk]→5× k→end =9 decreased',
      ],
      ['Dec 1 st at each side of each marker every 2nd rnd 22 times.', 'dec 1 eachSideOfMarkers {every n=22 k=2}'],
      [
        'Set-up row (WS): P 16 (right front), pm, p 14 (sleeve), pm, p 30 (back), pm, p 14, pm, p 16 (left front).',
        'row set-up (WS): p{16} marker place p{14} marker place p{30} marker place p{14} marker place p{16}',
      ],
      [
        'Row 1 (RS): *K to 1 st before m, kfb, sm, kfb; rep from * 4 more times, k to end.',
        'row 1 (RS): *[k→1 before marker kfb marker slip kfb]→4× more k→end',
      ],
      ['Inc 1 st at each neck edge on every RS row, 5 times.', 'inc 1 eachEdge neck {every n=5 RS}'],
      [
        'Dec Rnd 1: *K6, k2tog; rep from * around. 219 (233, 247, 261) sts.',
        'round dec 1: *[k{6} kNtog{2}]→end =219 (233, 247, 261) total',
      ],
      ['Work 7 rnds even.', 'plain 7 rounds'],
      ['Inc rnd: *K5, m1; rep from * around.', 'round inc: *[k{5} M1]→end'],
      [
        'Next rnd: *K to m, place next 54 (58, 62, 66) sts on waste yarn, CO 6 (6, 8, 8) sts; rep from * once, k to end. 150 (162, 178, 190) sts.',
        'round next: *[k→to marker hold next 54 (58, 62, 66) on waste yarn CO 6 (6, 8, 8) here]→1× k→end =150 (162, 178, 190) total',
      ],
      [
        'Next rnd: K to m, remove m, place next 54 (58, 62, 66) sts to next marker on waste yarn for sleeve, using backward loop method CO 6 sts, placing side marker after 3 sts, k to next m.',
        'round next: k→to marker marker remove hold next 54 (58, 62, 66) on waste yarn for sleeve change yarn CO 6 here marker place side 3 from beginning k→to marker',
      ],
      [
        'Next rnd: K to 4 sts before side marker, place next 8 sts on waste yarn, k across 54 sleeve sts, pm, k to end.',
        'round next: k→4 before side marker hold next 8 on waste yarn k→over 54 marker place k→end',
      ],
      [
        'Join: K 74 (80, 86, 92) back sts, pm, k 54 (56, 58, 60) left sleeve sts, pm, k 74 (80, 86, 92) front sts, pm, k 54 (56, 58, 60) right sleeve sts, pm for BOR.',
        'declare title Join | row: k{74 (80, 86, 92)} marker place k{54 (56, 58, 60)} marker place k{74 (80, 86, 92)} marker place k{54 (56, 58, 60)} marker place BOR',
      ],
      ['Place first and last 4 (5, 6, 6) sts on waste yarn.', 'hold firstAndLast 4 (5, 6, 6) on waste yarn'],
      ['Leave 8 (10, 12, 12) underarm sts on hold.', 'hold next 8 (10, 12, 12) on hold'],
      [
        'Place 54 held sts on needle; beg at centre underarm, pick up and k 3, k 52, pick up and k 3, pm and join. 60 sts.',
        'row: take up 54 unworked change yarn pick up 3 k{52} pick up 3 marker place join round =60 total',
      ],
      ['Rejoin yarn, pick up 7 sts at underarm.', 'row: join rejoin pick up 7'],
      ['Dec rnd: K1, k2tog, k to last 4 sts, ssk, k1.', 'round dec: k{1} kNtog{2} k→last 4 ssk k{1}'],
    ],
  },
  {
    sizes: ['XS', 'S', 'M'],
    rows: [
      [
        'Next rnd: K72, place next 48 sts on waste yarn, CO 8 sts, k72, place next 48 sts on waste yarn, CO 8 sts.',
        'round next: k{72} hold next 48 on waste yarn CO 8 here k{72} hold next 48 on waste yarn CO 8 here',
      ],
      [
        'Next row (RS): K to marker, place sts to next marker on waste yarn, CO 8 sts, k to next marker.',
        'row next (RS): k→to marker hold next to marker on waste yarn CO 8 here k→to marker',
      ],
      [
        'Inc rnd: K1, M1L, *k to 1 st before marker, M1R, k1, sm, k1, M1L; rep from * 2 more times, k to last st, M1R, k1.',
        'round inc: k{1} M1L *[k→1 before marker M1R k{1} marker slip k{1} M1L]→2× more k→last 1 M1R k{1}',
      ],
      ['Work Inc Rnd every other rnd 20 (22, 24) times.', 'work rows [name inc] {every n=20 (22, 24) k=2}'],
      ['Work 2 rnds even, then work Inc Rnd.', 'plain 2 rounds | work rows [name inc]'],
      [
        "Dec rnd: [K to 3 sts before marker, k2tog, k1, sm, k1, ssk] 4 times, k to end—8 sts dec'd.",
        'round dec: [k→3 before marker kNtog{2} k{1} marker slip k{1} ssk]→4× k→end =8 decreased',
      ],
      ['K across 60 sleeve sts, pm, k across 72 front sts, pm.', 'row: k→over 60 marker place k→over 72 marker place'],
      ['Place last 5 and first 5 sts of rnd on waste yarn.', 'hold firstAndLast 5 on waste yarn'],
      ['Next rnd: *K6, k2tog; rep from * around—168 (175, 182) sts.', 'round next: *[k{6} kNtog{2}]→end =168 (175, 182) total'],
      ['Knit 4 rnds. Next rnd: *K5, k2tog; rep from * around.', 'plain 4 rounds knit | round next: *[k{5} kNtog{2}]→end'],
    ],
  },
];

describe('Seamless construction', () => {
  for (const { sizes, rows } of tables) {
    it.each(rows)('%s', (text, expected) => {
      expect(read(text, { sizes })).toBe(expected);
    });
  }
});
