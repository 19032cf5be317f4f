/**
 * Markers, as different hands word them: leaflets of all decades, magazines, modern downloads. The tree was set down from the
 * words before it was read. Forms of the trade from memory; numbers and words made up here. What the grammar does not follow stands as UNREAD.
 */
import { describe, expect, it } from 'vitest';
import { read } from '../outline.ts';

const sizes = ['S', 'M', 'L'];

const rows: readonly (readonly [string, string])[] = [
  ['Counting from right, pm after 20 sts.', 'marker place 20 from beginning'],
  ['Place a marker after each 24th (25th, 26th) stitch.', 'marker place 24 (25, 26) from every'],
  ['K24, pm, *k16, pm; rep from * 3 times more, k24.', 'row: k{24} marker place *[k{16} marker place]→3× more k{24}'],
  ['Pm on either side of centre 14 sts.', 'marker place 14 from centre'],
  ['Pm each side of the 20 centre sts.', 'marker place 20 from centre'],
  ['Place a marker on each side of the 3 center sts.', 'marker place 3 from centre'],
  ['Mark the 31st (33rd, 35th) st for centre front.', 'marker hang centre front 31 (33, 35) from beginning'],
  ['Mark centre 2 sts with a thread.', 'marker hang | change yarn'],
  ['Mark first and last st of row.', 'marker hang'],
  ['Place a marker at both ends of the 40th row.', 'marker hang at row'],
  ['Tie a contrast thread at each end of this row to mark top of side slits.', 'marker hang at row'],
  ['Put in a marker at the end of the row.', 'marker hang at row'],
  ['Slipping markers as you come to them, k 1 rnd.', 'plain 1 rounds knit'],
  ['Next rnd: Knit, removing all markers except BOR.', 'round next: k→end marker remove anywhere'],
  ['Remove marker, k4, replace marker for new beg of rnd.', 'row: marker remove k{4} marker replace BOR'],
  ['Remove BOR m, sl 1, replace m.', 'row: marker remove BOR sl{1} marker replace'],
  ['K to m, rm, k2tog, pm, k to end.', 'row: k→to marker marker remove kNtog{2} marker place k→end'],
  [
    'K to 1 st before marker, remove marker, sk2p, replace marker, k to end.',
    'row: k→1 before marker marker remove sk2p marker replace k→end',
  ],
  [
    'K to 3 sts before side marker, k2tog, k1, sm, k1, ssk, rep from * once.',
    'row: k→3 before side marker kNtog{2} k{1} marker slip k{1} ssk UNREAD "rep from" UNREAD "*"',
  ],
  ['Knit to 2nd marker, slip it.', 'row: k→to 2 marker marker slip'],
  ['K to the 4th m, sm, m1, k to end.', 'row: k→to 4 marker marker slip M1 k→end'],
  ['Work across to centre marker, sm, yo, k1, yo, k to end.', 'row: work→to centre marker slip yo k{1} yo k→end'],
  ['Work to 4 sts after the marker, turn.', 'row: work→4 past marker turn'],
  [
    'K until 5 sts remain before marker, k2tog, k3, sm, k3, ssk, k to end.',
    'row: k→5 before marker kNtog{2} k{3} marker slip k{3} ssk k→end',
  ],
  ['Knit up to 6 sts from the marker, C6F, knit to end.', 'row: k→6 before marker CNF{6} k→end'],
  ['Rib up to marker, sl m, patt to next m, sl m, rib to end.', 'row: rib→to marker marker slip patt→to marker marker slip rib→end'],
  ['*Sm, k1, p to 1 st before m, k1; rep from * around.', 'row: *[marker slip k{1} p→1 before marker k{1}]→end'],
  ['Pass marker from left needle to right, k2.', 'row: marker slip k{2}'],
  ['PM for beg of round at right underarm.', 'marker place BOR'],
  ['Use a different coloured marker for the start of the round.', ''],
  ['K20, pm (A), k30, pm (B), k20.', 'row: k{20} marker place a k{30} marker place b k{20}'],
  ['K to marker A, m1, sm, k to marker B, sm, m1, k to end.', 'row: k→to a marker M1 marker slip k→to b marker marker slip M1 k→end'],
  ['Between markers, work Chart A.', 'as chart A'],
  [
    'Work between markers in patt and outside markers in garter st.',
    'UNREAD "Work between markers in patt and outside markers in garter st"',
  ],
  ['Keep 5 sts at each side of markers in rib.', 'declare rule keep 5 sts at each side of markers in rib'],
  ['Inc 1 st before first marker and after last marker on every 6th row.', 'inc 2 atMarkers {every k=6}'],
  ['Inc 1 st each side of marked centre st every 4th row 5 times.', 'inc 2 centre {every n=5 k=4}'],
  [
    'Inc 1 st after first marker and before 2nd marker this and every foll 4th row until there are 17 sts between markers.',
    'UNREAD "Inc 1 st after first marker and before 2nd marker this and every foll 4th row until there are 17 sts between markers"',
  ],
  ['M1 after first m and before second m.', 'UNREAD "M1 after first m and before second m"'],
  ['Dec 1 st before each marker on next rnd.', 'dec 1 eachMarker {next}'],
  ['Dec each side of both markers every 10 (10, 12) rnds 4 times.', 'dec 1 eachSideOfMarkers {every n=4 k=10 (10, 12)}'],
  [
    'Next row: [K to m, sm, k1, m1, k to 1 st before m, m1, k1, sm] twice.',
    'row next: [k→to marker marker slip k{1} M1 k→1 before marker M1 k{1} marker slip]→2×',
  ],
  ['k12 pm k36 pm k12', 'row: k{12} marker place k{36} marker place k{12}'],
  ['K18[20,22],PM,K36[40,44],PM,K18[20,22].', 'row: k{18 (20, 22)} marker place k{36 (40, 44)} marker place k{18 (20, 22)}'],
  ['Move marker to the other side of the st just made.', ''],
  ['Shift BOR marker 1 st to the left.', 'marker move BOR 1 left'],
  [
    'At end of round, slip the marker and k1, so moving the start of the round by one st.',
    'row: marker slip k{1} UNREAD "so moving the start of the round by one st"',
  ],
  ['Cont until work measures 12 cm from marker.', 'work until work 12 cm from marker'],
  ['Work 30 rows above markers.', 'plain 30 rows'],
  ['Mark this row on RS with a bit of yarn; this is where the sleeve begins.', 'marker hang'],
  ['Join a coloured thread at each end of row for pocket position.', 'marker hang at row'],
  ['Reposition markers so that 3 sts lie on each side of the seam st.', ''],
  [
    'Place stitch markers between sts 10 and 11 and between sts 50 and 51.',
    'UNREAD "Place stitch markers between sts 10 and 11 and between sts 50 and 51"',
  ],
  ['Pm between 2nd and 3rd sts.', 'marker place 2 from beginning'],
  ['Pm at halfway point (60 sts).', 'marker place 60 from beginning'],
  ['K 45 (half the sts), pm for side.', 'row: k{45} marker place side'],
  ['Hang a marker on last st.', 'marker hang'],
  ['Remove marker when you come to it.', ''],
  ['Leave markers in place until yoke is complete.', ''],
  ['K to m, turn; remove m.', 'row: k→to marker turn marker remove'],
  [
    'Slip marker, work 3 sts, pm, work to 3 sts before next marker, pm, work 3, sm.',
    'row: marker slip work→over 3 marker place work→3 before marker marker place work→over 3 marker slip',
  ],
  ['Next rnd: k5, replace BOR marker here.', 'round next: k{5} marker replace BOR'],
  [
    'Knit to within 1 st of marker, sl next st, rm, return st to left needle, pm, k2tog.',
    'row: k→1 before marker sl marker remove ret{1} marker place kNtog{2}',
  ],
  [
    'K to 2 sts before m, k2tog, rm, place next 8 sts on waste yarn, CO 8, pm, k to end.',
    'row: k→2 before marker kNtog{2} marker remove hold next 8 on waste yarn CO 8 here marker place k→end',
  ],
  ['Pm, CO 7 steek sts, pm, join to work in the rnd.', 'marker place | CO 7 here | marker place | join round'],
];

describe('Markers in many wordings', () => {
  it.each(rows)('%s', (text, expected) => {
    expect(read(text, { sizes })).toBe(expected);
  });
});
