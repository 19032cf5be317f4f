/** Stated counts: every wording with the tree it must read into. Forms of the trade; numbers and words made up here. */
import { describe, expect, it } from 'vitest';
import { read } from '../outline.ts';

/** Sizes of the draft, then each text with its outline. */
const tables: readonly { readonly sizes: readonly string[]; readonly rows: readonly (readonly [string, string])[] }[] = [
  {
    sizes: ['S', 'M', 'L', 'XL'],
    rows: [
      [
        'Cast off 5 (6: 7: 8) sts at beg of next 2 rows. 96 (102: 110: 116) sts.',
        'bindOff rows 5 (6, 7, 8) {next n=2} =96 (102, 110, 116) total',
      ],
      ['Rep last 2 rows 5 more times—90 (94, 96, 100) sts rem.', 'rep rows [last 2] 5× more =90 (94, 96, 100) total'],
      ['Row 5: K2, kfb, k to end. [118 (126: 134: 142) sts]', 'row 5: k{2} kfb k→end =118 (126, 134, 142) total'],
      ['Row 5: K2, kfb, k to end (94[98, 104, 110] sts).', 'row 5: k{2} kfb k→end =94 (98, 104, 110) total'],
      ['Row 5: K2, kfb, k to end. There are now 150 (162, 178, 190) sts on needle.', 'row 5: k{2} kfb k→end =150 (162, 178, 190) total'],
      ['Row 5: K2, kfb, k to end = 92-96-102-108 sts', 'row 5: k{2} kfb k→end =92 (96, 102, 108) total'],
      ['K 1 row. You should have 96 sts.', 'plain 1 rows knit =96 total'],
      ['K 1 row. You now have 96 sts on your needles.', 'plain 1 rows knit =96 total'],
      ['K 1 row: 39 sts.', 'plain 1 rows knit =39 total'],
      ['K 1 row – 41 sts.', 'plain 1 rows knit =41 total'],
      [
        '242 (262, 282, 302) sts: 70 (76, 82, 88) sts each front and back, 54 (58, 62, 66) each sleeve.',
        '=242 (262, 282, 302) total | =70 (76, 82, 88) part (each front and back) | =54 (58, 62, 66) part (each sleeve)',
      ],
      ['K to end. 32 (33: 36: 37) sts rem each side.', 'row: k→end =32 (33, 36, 37) part (each side)'],
      ['K to end. 24 sts each shoulder; 40 sts on holder for neck.', 'row: k→end =24 part (each shoulder) =40 held (on holder for neck)'],
      ['K to end. 28 sts between markers.', 'row: k→end =28 part (between markers)'],
      ['K to end (15 sts for each front, 30 for back).', 'row: k→end =15 part (for each front) =30 part (for back)'],
      ["Row 1: K1, ssk, k to end, k1. 2 sts dec'd.", 'row 1: k{1} ssk k→end k{1} =2 decreased'],
      ["Row 1: K1, ssk, k to end. 1 st dec'd at neck edge.", 'row 1: k{1} ssk k→end =1 decreased (at neck edge)'],
      ['Rnd 1: [K1, m1, k to m, m1, sm] 4 times. 8 sts increased.', 'round 1: [k{1} M1 k→to marker M1 marker slip]→4× =8 increased'],
      ["Rnd 1: [K1, m1, k to m, m1, sm] 4 times (8 sts inc'd).", 'round 1: [k{1} M1 k→to marker M1 marker slip]→4× =8 increased'],
      ["Total of 6 (8, 8, 8) sts inc'd at each front edge.", '=6 (8, 8, 8) increased (at each front edge)'],
      ['A total of 14 sts have been increased at each front edge.', '=14 increased (at each front edge)'],
      ['Row 1: K1, ssk, k to end. 4 sts decreased each rnd.', 'row 1: k{1} ssk k→end =4 decreased (each rnd)'],
      ['Row 1: K1, ssk, k to end: 20 sts left.', 'row 1: k{1} ssk k→end =20 total'],
      ['K 1 row. 60 sts remain.', 'plain 1 rows knit =60 total'],
      ['K 1 row. 60 sts in total.', 'plain 1 rows knit =60 total'],
      ['K 1 row. (58 sts)', 'plain 1 rows knit =58 total'],
      ['K 1 row (58 sts total).', 'plain 1 rows knit =58 total'],
      ['K 1 row. 58 stitches remaining on needle.', 'plain 1 rows knit =58 total'],
      ['K 1 row; 60 sts.', 'plain 1 rows knit =60 total'],
      ['K 1 row. Now 60 sts.', 'plain 1 rows knit =60 total'],
      ['K 1 row. You will have 32 sts on the needle and 14 sts on the holder.', 'plain 1 rows knit =32 total =14 held (on the holder)'],
      [
        'K 1 row. 60 sts (19 for each shoulder, 20 for neck).',
        'plain 1 rows knit =60 total =19 part (for each shoulder) =20 part (for neck)',
      ],
      ['K 1 row. 2 sts decreased; 58 sts rem.', 'plain 1 rows knit =2 decreased =58 total'],
      ['K 1 row. 2 sts dec, 56 sts rem.', 'plain 1 rows knit =2 decreased =56 total'],
    ],
  },
  {
    sizes: ['XS', 'S', 'M'],
    rows: [
      ['K 1 rnd: 96 (104, 112) sts.', 'plain 1 rounds knit =96 (104, 112) total'],
      ['Purl 1 row - 48 (52, 56) sts.', 'plain 1 rows purl =48 (52, 56) total'],
      ['Work 2 rows—you should have 48 (52, 56) sts on the needle.', 'plain 2 rows =48 (52, 56) total'],
      ['BO 4 sts, k to end—44 (48, 52) sts remaining.', 'row: BO 4 k→end =44 (48, 52) total'],
      [
        'Next row: K2, *k2tog, k4; rep from * to end—40 (44, 48) sts now on needle.',
        'row next: k{2} *[kNtog{2} k{4}]→end =40 (44, 48) total',
      ],
      ['K to end; 80 sts total.', 'row: k→end =80 total'],
      ['K to end. (80 (84, 88) sts in total)', 'row: k→end =80 (84, 88) total'],
      ['K to end. [– (84, 88) sts]', 'row: k→end =– (84, 88) total'],
      ['K to end. You will have 80 (84, 88) stitches.', 'row: k→end =80 (84, 88) total'],
      ['K to end. There should be 80 (84, 88) sts.', 'row: k→end =80 (84, 88) total'],
      ['K to end. There will be 20 (22, 24) sts on each needle.', 'row: k→end =20 (22, 24) part (on each needle)'],
      ['K to end. 20 (22, 24) sts each side of marker.', 'row: k→end =20 (22, 24) part (each side of marker)'],
      [
        'K to end. 18 (20, 22) sts on each shoulder, 30 sts for back neck.',
        'row: k→end =18 (20, 22) part (on each shoulder) =30 part (for back neck)',
      ],
      [
        'K to end. 18 (20, 22) sts for each front and 40 (44, 48) sts for back.',
        'row: k→end =18 (20, 22) part (for each front) =40 (44, 48) part (for back)',
      ],
      ['K to end. 36 sts for sleeve.', 'row: k→end =36 part (for sleeve)'],
      ['K to end. 36 sts on holder.', 'row: k→end =36 held (on holder)'],
      ['K to end. 4 sts decreased, 76 (80, 84) sts remain.', 'row: k→end =4 decreased =76 (80, 84) total'],
      ['K to end. (2 sts inc; 82 sts.)', 'row: k→end =2 increased =82 total'],
      ['K to end (+2 sts).', 'row: k→end =2 increased'],
      ['K to end. 2 stitches increased.', 'row: k→end =2 increased'],
      ["K to end. 8 sts inc'd per round.", 'row: k→end =8 increased'],
      ['K to end. Decreased by 4 sts.', 'row: k→end =4 decreased'],
      ['K to end. Stitch count: 80 (84, 88).', 'row: k→end =80 (84, 88) total'],
      ['K to end. Total 80 (84, 88) sts.', 'row: k→end =80 (84, 88) total'],
      ['K to end: total of 80 (84, 88) sts.', 'row: k→end =80 (84, 88) total'],
      ['K to end. 80 sts on needle, 24 sts on holder.', 'row: k→end =80 total =24 held (on holder)'],
      ['K to end. 24 rows worked.', 'row: k→end =24 rows'],
      [
        'K to end. 80 (84, 88) sts (40 (42, 44) each for front and back).',
        'row: k→end =80 (84, 88) total =40 (42, 44) part (each for front and back)',
      ],
      ['K to end—27 sts at each side of neck.', 'row: k→end =27 part (at each side of neck)'],
      ['Work until 80 sts rem.', 'work until 80 sts'],
      ['K to end. 1 (1, 2) st(s) rem.', 'row: k→end =1 (1, 2) total'],
      ['K to end. You have now decreased 12 sts.', 'row: k→end =12 decreased'],
      [
        'K to end. 160 (168, 176) sts: 80 (84, 88) each for front and back.',
        'row: k→end =160 (168, 176) total =80 (84, 88) part (each for front and back)',
      ],
    ],
  },
];

describe('Stated counts', () => {
  for (const { sizes, rows } of tables) {
    it.each(rows)('%s', (text, expected) => {
      expect(read(text, { sizes })).toBe(expected);
    });
  }
});
