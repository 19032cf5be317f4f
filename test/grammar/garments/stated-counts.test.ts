/** Stated counts: every wording with the tree it must read into. Forms of the trade; numbers and words made up here. */
import { describe, expect, it } from 'vitest';
import { read } from '../outline.ts';

/** Sizes of the draft, then each text with its outline. */
const tables: readonly { readonly sizes: readonly string[]; readonly rows: readonly (readonly [string, string])[] }[] = [
  {
    sizes: ['S', 'M', 'L', 'XL'],
    rows: [
      ['Cast off 5 (6: 7: 8) sts at beg of next 2 rows. 96 (102: 110: 116) sts.', 'bindOff rows 5 (6, 7, 8) {next n=2} =96 (102, 110, 116) total'],
      ['Rep last 2 rows 5 more times—90 (94, 96, 100) sts rem.', 'rep rows [last 2] 5× more =90 (94, 96, 100) total'],
      ['Row 5: K2, kfb, k to end. [118 (126: 134: 142) sts]', 'row 5: k{2} kfb k→end =118 (126, 134, 142) total'],
      ['Row 5: K2, kfb, k to end (94[98, 104, 110] sts).', 'row 5: k{2} kfb k→end =94 (98, 104, 110) total'],
      ['Row 5: K2, kfb, k to end. There are now 150 (162, 178, 190) sts on needle.', 'row 5: k{2} kfb k→end =150 (162, 178, 190) total'],
      ['Row 5: K2, kfb, k to end = 92-96-102-108 sts', 'row 5: k{2} kfb k→end =92 (96, 102, 108) total'],
      ['K 1 row. You should have 96 sts.', 'plain 1 rows knit =96 total'],
      ['K 1 row. You now have 96 sts on your needles.', 'plain 1 rows knit =96 total'],
      ['K 1 row: 39 sts.', 'plain 1 rows knit =39 total'],
      ['K 1 row – 41 sts.', 'plain 1 rows knit =41 total'],
      ['242 (262, 282, 302) sts: 70 (76, 82, 88) sts each front and back, 54 (58, 62, 66) each sleeve.', '=242 (262, 282, 302) total | =70 (76, 82, 88) part (each front and back) | =54 (58, 62, 66) part (each sleeve)'],
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
      ['K 1 row. 60 sts (19 for each shoulder, 20 for neck).', 'plain 1 rows knit =60 total =19 part (for each shoulder) =20 part (for neck)'],
      ['K 1 row. 2 sts decreased; 58 sts rem.', 'plain 1 rows knit =2 decreased =58 total'],
      ['K 1 row. 2 sts dec, 56 sts rem.', 'plain 1 rows knit =2 decreased =56 total'],
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
