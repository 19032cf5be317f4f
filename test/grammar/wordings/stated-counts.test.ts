/** Counts told after a row, as people tell them. Common practice, no source. */
import { describe, expect, it } from 'vitest';
import { read } from '../outline.ts';

const knit = (told: string) => `plain 1 rows knit ${told}`;
const total = '=84 (90, 96) total';

/** Behind a row that is knitted. */
const afterRow: readonly (readonly [string, string])[] = [
  ['. 84 (90, 96) sts on ndl.', total],
  [' = 84 (90, 96) sts.', total],
  [' (= 84 (90, 96) sts).', total],
  ['. [84: 90: 96 sts].', total],
  [' … 84 (90, 96) sts.', total],
  ['. Stitches on needle: 84 (90, 96).', total],
  ['. St count: 84 (90, 96)', total],
  ['. Total stitches 84 (90, 96).', total],
  ['. Total: 84 (90, 96) sts.', total],
  ['. You have 84 (90, 96) sts.', total],
  [', giving 84 (90, 96) sts.', total],
  [' (you should now have 84 (90, 96) sts on your needle).', total],
  [' and count your stitches: there should be 84 (90, 96).', total],
  [', making 84 (90, 96) sts in all.', total],
  ['. 84 (90, 96) stitches remain on the needle.', total],
  ['. Now there are 84 (90, 96) stitches left.', total],
  ['. 84 (90, 96) remain.', total],
  [' — 84 (90, 96) sts rem.', total],
  ['. 84, 90, 96 sts.', total],
  ['. 84-90-96 sts', total],
  ['. Sts: 84 (90, 96).', total],
  ['. 84 (90, 96) sts are now on the needle.', total],
  ['. There will be 84 (90, 96) sts at the end of this row.', total],
  ['—84 (90, 96) sts when all incs are complete.', total],
  ['. You will end up with 84 (90, 96) sts.', total],
  ['. This leaves you with 84 (90, 96) sts.', total],
  ['. Stitch count is now 84 (90, 96) stitches.', total],
  ['. 84 (90, 96) sts, including 2 edge sts.', total],
  ['. 84 (90, 96) sts at this point.', total],
  ['. 84 (90, 96) sts altogether.', total],
  ['. Check: 84 (90, 96) sts.', total],
  ['. 84 (90, 96)sts', total],
  ['. There are 84 (90, 96) sts.', total],
  ['. 22 rows worked.', '=22 rows'],
  ['. 22 rows have been worked.', '=22 rows'],
  ['. You have worked 22 rows.', '=22 rows'],
  ['. 22 rows in all.', '=22 rows'],
  ['. 40 sts rem each side of neck.', '=40 part (each side of neck)'],
  ['. 12 sts rem for shoulder.', '=12 part (for shoulder)'],
  ['. 30 (32, 34) sts each for Fronts, 62 (66, 70) sts for Back.', '=30 (32, 34) part (each for Fronts) =62 (66, 70) part (for Back)'],
  ['. 24 (26, 28) sts between each set of markers.', '=24 (26, 28) part (between each set of markers)'],
  ['. 10 sts on each of 3 needles.', '=10 part (on each of 3 needles)'],
  ['. 30 sts: 10 on each needle.', '=30 total =10 part (on each needle)'],
  ['. 84 (90, 96) body sts; 40 (42, 44) sts on each sleeve holder.', '=84 (90, 96) part (body) =40 (42, 44) held (on each sleeve holder)'],
  ['. 14 (15, 16) patt reps.', '=14 (15, 16) repeats'],
  ['. 84 (90, 96) sts for body and 40 sts for each sleeve.', '=84 (90, 96) part (for body) =40 part (for each sleeve)'],
  ['. 84 (90, 96) sts rem; 4 sts decreased.', '=84 (90, 96) total =4 decreased'],
];

/** Behind a row that changes the count. */
const changed: readonly (readonly [string, string])[] = [
  [' (+2 sts)', '=2 increased'],
  [' (-2 sts)', '=2 decreased'],
  ['. 2 st inc', '=2 increased'],
  [' – 2 sts made.', '=2 increased'],
  [' (2 st decrease).', '=2 decreased'],
  [' (2 stitches decreased).', '=2 decreased'],
  [' (two stitches decreased)', '=2 decreased'],
  ['. Two stitches decreased.', '=2 decreased'],
  ['. You have decreased 2 sts.', '=2 decreased'],
  [': 2 sts have been decreased.', '=2 decreased'],
  ['. 2 sts decreased, 1 at each end.', '=2 decreased'],
  ['. 1 st decreased at each end.', '=1 decreased (at each end)'],
  [' [2 sts dec]', '=2 decreased'],
  [' [inc 2 sts]', '=2 increased'],
  ['. An increase of 2 sts.', '=2 increased'],
  ['. 2 sts inc each time.', '=2 increased (each time)'],
  [". 2 sts dec'd; 82 (88, 94) sts rem.", '=2 decreased =82 (88, 94) total'],
  [' (dec of 2 sts)', '=2 decreased'],
  [' - decreasing 2 sts', '=2 decreased'],
  ['. 2 stitches increased each row.', '=2 increased (each row)'],
];

/** Behind a row in one size, in the words of other hands. */
const oneSize: readonly (readonly [string, string])[] = [
  ['. (84)', '=84 total'],
  [' to 84 sts.', '=84 total'],
  [': 84 sts.', '=84 total'],
  [' / 84 sts', '=84 total'],
  [', 84 sts', '=84 total'],
  ['; 84 sts rem.', '=84 total'],
  ['. <84 sts>', '=84 total'],
  ['. {84 sts}', '=84 total'],
  ['. [84 sts now on needle]', '=84 total'],
  ['. (total 84 sts)', '=84 total'],
  ['. (total: 84 stitches)', '=84 total'],
  ['. (Total of 84 sts)', '=84 total'],
  ['. (total number of sts = 84)', '=84 total'],
  ['. No. of sts: 84.', '=84 total'],
  ['. Number of sts 84', '=84 total'],
  ['. Stitch count 84.', '=84 total'],
  ['. Sts count: 84', '=84 total'],
  ['. St ct = 84', '=84 total'],
  ['. Eighty-four stitches.', '=84 total'],
  ['. You should have eighty-four sts.', '=84 total'],
  ['. 84 sts should remain.', '=84 total'],
  ['. 84 sts should now be on your needle.', '=84 total'],
  ['. We now have 84 sts.', '=84 total'],
  ['. There must be 84 sts on the needle.', '=84 total'],
  ['. You are left with 84 sts.', '=84 total'],
  ['. 84 sts are left on the needles.', '=84 total'],
  [', ending up with 84 sts.', '=84 total'],
  [', leaving you with 84 sts.', '=84 total'],
  [', bringing the total to 84 sts.', '=84 total'],
  [', so that 84 sts remain.', '=84 total'],
  [', for a total of 84 sts.', '=84 total'],
  [', resulting in 84 sts.', '=84 total'],
  ['. This brings you to 84 sts.', '=84 total'],
  ['. This gives 84 sts.', '=84 total'],
  ['. That makes 84 sts.', '=84 total'],
  ['. Your stitch count is 84.', '=84 total'],
  ['. The stitch count will be 84 sts.', '=84 total'],
  ['. (Should be 84 sts.)', '=84 total'],
  ['. (84 sts; 42 each side of marker)', '=84 total =42 part (each side of marker)'],
  ['. 84 sts: 42 sts front, 42 sts back.', '=84 total =42 part (front) =42 part (back)'],
  ['. 84 sts (42 for each of front and back).', '=84 total =42 part (for each of front and back)'],
  ['. 42 sts rem on each side of the center stitch.', '=42 part (on each side of the center stitch)'],
  ['. 21 sts on each of four needles.', '=21 part (on each of four needles)'],
  ['. 21 sts per needle', '=21 part (per needle)'],
  ['. 21 sts on N1, 42 sts on N2, 21 sts on N3.', '=21 part (on N1) =42 part (on N2) =21 part (on N3)'],
  ['. 42 sts held for front.', '=42 held (for front)'],
  ['. 42 sts on waste yarn.', '=42 held (on waste yarn)'],
  ['. 16 rows total.', '=16 rows'],
  ['. (16 rows worked)', '=16 rows'],
  ['. 16 rows completed.', '=16 rows'],
  ['. You should have completed 16 rows.', '=16 rows'],
  ['. 7 pattern repeats.', '=7 repeats'],
  ['. 7 reps of patt.', '=7 repeats'],
];

/** Behind a row that changes the count, in the words of other hands. */
const changedToo: readonly (readonly [string, string])[] = [
  [' [+2]', '=2 increased'],
  [' (+2)', '=2 increased'],
  [' [-2]', '=2 decreased'],
  [' (– 2 sts)', '=2 decreased'],
  ['. + 2 sts', '=2 increased'],
  [' (2 inc)', '=2 increased'],
  [' (2 dec’d)', '=2 decreased'],
  [". 2 sts inc'd.", '=2 increased'],
  ['. 2 sts have now been decreased.', '=2 decreased'],
  ['. 2 sts lost.', '=2 decreased'],
  ['. 2 sts gained.', '=2 increased'],
  [' – 2 sts made', '=2 increased'],
  ['. 2 extra sts made.', '=2 increased'],
  ['. 2 sts decreased on this row.', '=2 decreased'],
  ['. 2 sts fewer.', '=2 decreased'],
  ['. 2 sts more.', '=2 increased'],
  ['. (2 decs made)', '=2 decreased'],
  ['. 2 decreases made.', '=2 decreased'],
  ['. Two decreases.', '=2 decreased'],
  ['. (two increases worked)', '=2 increased'],
  ['. You have decreased by 2 sts.', '=2 decreased'],
  ['. Stitch count decreases by 2.', '=2 decreased'],
  ['. Stitch count increased by 2 sts.', '=2 increased'],
  ["—2 sts dec'd, 84 sts.", '=2 decreased =84 total'],
  ["; 84 sts rem (2 sts dec'd).", '=84 total =2 decreased'],
  [" (2 sts dec'd – 84 sts)", '=2 decreased =84 total'],
  [" [84 sts; 2 sts dec'd]", '=84 total =2 decreased'],
];

describe('Counts as people tell them', () => {
  const options = { sizes: ['S', 'M', 'L'] };
  it.each(afterRow)('K 1 row%s', (told, expected) => {
    expect(read(`K 1 row${told}`, options)).toBe(knit(expected));
  });
  it.each(changed)('Row 1: K1, M1, k to last st%s', (told, expected) => {
    expect(read(`Row 1: K1, ssk, k to end${told}`, options)).toBe(`row 1: k{1} ssk k→end ${expected}`);
  });
  it.each(oneSize)('K 1 row%s, in one size', (told, expected) => {
    expect(read(`K 1 row${told}`)).toBe(knit(expected));
  });
  it.each(changedToo)('Row 1: K1, ssk, k to end%s', (told, expected) => {
    expect(read(`Row 1: K1, ssk, k to end${told}`)).toBe(`row 1: k{1} ssk k→end ${expected}`);
  });
});
