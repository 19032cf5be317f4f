/** Shaping schedules: every wording with the tree it must read into. Forms of the trade; numbers and words made up here. */
import { describe, expect, it } from 'vitest';
import { read } from '../outline.ts';

/** Sizes of the draft, then each text with its outline. */
const tables: readonly { readonly sizes: readonly string[]; readonly rows: readonly (readonly [string, string])[] }[] = [
  {
    sizes: ['XS', 'S', 'M', 'L'],
    rows: [
      ['Dec 1 st at each end of this row.', 'dec 1 bothEnds {this}'],
      ['Dec one st at each end of next and 4 foll 4th rows.', 'dec 1 bothEnds {next; follEvery n=4 k=4}'],
      [
        'Dec each end of foll 0 (0: 2: 2) alt rows, then on every foll 4th row until 33 sts rem.',
        'dec 1 bothEnds {follEvery n=0 (0, 2, 2) k=2; every k=4 until 33}',
      ],
      ['Dec 1 st at each end of next 4 rows.', 'dec 1 bothEnds {next n=4}'],
      ['Dec 1 st at both ends of 3rd row.', 'dec 1 bothEnds {nth k=3}'],
      [
        'Inc 1 st at each end of 3rd and every foll 6th row to 60 sts, then every foll 8th row to 66 sts.',
        'inc 1 bothEnds {nth k=3; every k=6 until 60; every k=8 until 66}',
      ],
      ['Dec 1 st at each end of next and foll 5 alt rows.', 'dec 1 bothEnds {next; follEvery n=5 k=2}'],
      ['Dec 1 st each end of next row and foll alt row.', 'dec 1 bothEnds {next; follEvery k=2}'],
      ['Dec 1 st at each end of next row, then every foll alt row 5 times.', 'dec 1 bothEnds {next; every n=5 k=2}'],
      ['Dec 1 st at each end of every row until 45 (49: 51: 53) sts rem.', 'dec 1 bothEnds {every k=1 until 45 (49, 51, 53)}'],
      ['Dec 1 st at each end of every row to 45 (49: 51: 53) sts.', 'dec 1 bothEnds {every k=1 until 45 (49, 51, 53)}'],
      ['Dec each end of next and every alt row until 23 (25: 25: 27) sts rem.', 'dec 1 bothEnds {next; every k=2 until 23 (25, 25, 27)}'],
      [
        'Inc 1 st at both ends of 5th and every foll 8th row to 64 (68: 70: 72) sts, then every 10th row to 68 (70: 72: 74) sts.',
        'inc 1 bothEnds {nth k=5; every k=8 until 64 (68, 70, 72); every k=10 until 68 (70, 72, 74)}',
      ],
      [
        'Inc 1 st at each end of next and every foll 6th row until there are 72 sts on needle.',
        'inc 1 bothEnds {next; every k=6 until 72}',
      ],
      ['Dec 1 st at each end of next and every foll 4th row, reducing to 42 sts.', 'dec 1 bothEnds {next; every k=4 until 42}'],
      ['Dec 2 sts at each end of next row.', 'dec 2 bothEnds {next}'],
      ['Dec 1 st at each end of next 5 rows, then on foll alt row.', 'dec 1 bothEnds {next n=5; follEvery k=2}'],
      ['Dec 1 st at each end of next 2 rows and foll 4 alt rows.', 'dec 1 bothEnds {next n=2; follEvery n=4 k=2}'],
      ['Dec 1 st at each end of foll alt rows until 32 sts rem.', 'dec 1 bothEnds {every k=2 until 32}'],
      ['Inc 1 st at beg and end of every 6th row 8 times.', 'inc 1 bothEnds {every n=8 k=6}'],
      ['Dec 1 st at each end of 1 foll 4th row.', 'dec 1 bothEnds {follEvery n=1 k=4}'],
      [
        'Decrease 1 stitch at each end of the next and every following alternate row until 50 stitches remain.',
        'dec 1 bothEnds {next; every k=2 until 50}',
      ],
      ['Rep Dec Row every RS row 4 (5, 6, 7) more times.', 'rep rows [name dec] {every n=4 (5, 6, 7) RS more}'],
      [
        'Inc Row: K3, m1R, k to last 3 sts, m1L, k3. Rep every 8th row 7 times more.',
        'row inc: k{3} M1R k→last 3 M1L k{3} | rep rows [these] {every n=7 k=8 more}',
      ],
      [
        'Rep Dec Row every other row 7 (8, 9, 9) times, then every 4 rows 3 (3, 4, 4) times.',
        'rep rows [name dec] {every n=7 (8, 9, 9) k=2; every n=3 (3, 4, 4) k=4}',
      ],
      ['Work Inc Rnd every 7 rnds 11 times.', 'work rows [name inc] {every n=11 k=7}'],
      ['Work Dec Row every RS row 7 times.', 'work rows [name dec] {every n=7 RS}'],
      ['Rep Inc Rnd every 6th rnd 8 more times.', 'rep rows [name inc] {every n=8 k=6 more}'],
      ['Rep Inc Row every following 10th row 5 times.', 'rep rows [name inc] {every n=5 k=10}'],
      ['Rep Dec Row EOR 5 times.', 'rep rows [name dec] {every n=5 k=2}'],
      ['Repeat the Dec Row on every RS row 3 times more.', 'rep rows [name dec] {every n=3 RS more}'],
      [
        'Rep Dec Rnd every 6th rnd 4 more times. 178 (194, 202, 210) sts.',
        'rep rows [name dec] {every n=4 k=6 more} =178 (194, 202, 210) total',
      ],
      ['Rep Dec Row on every foll 4th row until 62 sts rem.', 'rep rows [name dec] {every k=4 until 62}'],
      ['Work a Dec Row on next and every foll 4th row 5 times.', 'work rows [name dec] {next; every n=5 k=4}'],
      ['Rep dec row every 4 (6, 6, 8)th row 3 times.', 'rep rows [name dec] {every n=3 k=4 (6, 6, 8)}'],
      ['Rep last dec row on foll 6th row.', 'rep rows [shaping dec] {follEvery k=6}'],
      [
        'Rep inc row on every RS row 10 times, then on every other RS row 5 times.',
        'rep rows [name inc] {every n=10 RS; every n=5 k=4 RS}',
      ],
      ['Repeat this row every 6th row 3 more times.', 'rep rows [last] {every n=3 k=6 more}'],
      ['Rep this row every 4th row twice more.', 'rep rows [last] {every n=2 k=4 more}'],
      ['Dec 1 st each side every other row 5 times.', 'dec 1 bothEnds {every n=5 k=2}'],
      [
        'Inc 1 st each end every 6th row 8 (9, 10, 11) times, then every 4th row 3 (2, 2, 0) times.',
        'inc 1 bothEnds {every n=8 (9, 10, 11) k=6; every n=3 (2, 2, 0) k=4}',
      ],
      ['Increase 1 st each end of needle every 5 rows 14 times.', 'inc 1 bothEnds {every n=14 k=5}'],
      ['Dec 1 st at each side of every RS row 5 times, then every other RS row twice.', 'dec 1 bothEnds {every n=5 RS; every n=2 k=4 RS}'],
      ['Dec 1 st each end every RS row 4 times, ending with a WS row.', 'dec 1 bothEnds {every n=4 RS} ending WS'],
      ['Inc 1 st each side every 8th row 7 times more.', 'inc 1 bothEnds {every n=7 k=8 more}'],
      ['Dec 1 st at each edge every row 5 times.', 'dec 1 eachEdge {every n=5 k=1}'],
      ['Decrease one stitch at each end every 3rd row 6 times.', 'dec 1 bothEnds {every n=6 k=3}'],
      ['Work 6 rows, dec 1 st at each end of every row.', 'plain 6 rows (dec 1 bothEnds {every k=1})'],
      ['Work 5 rows. Dec 1 st at each end of next row.', 'plain 5 rows | dec 1 bothEnds {next}'],
      [
        'Work another 32 (36: 40: 42) rows, inc 1 st at each end of 5th and every foll 8th row.',
        'plain 32 (36, 40, 42) rows (inc 1 bothEnds {nth k=5; every k=8})',
      ],
      [
        'Work a further 20 (24: 26: 28) rows, dec 1 st at front edge in 5th and every foll 6th row and at same time dec 1 st at raglan edge in next and every foll alt row.',
        'plain 20 (24, 26, 28) rows (dec 1 edge front {nth k=5; every k=6}) | at the same time {dec 1 edge raglan {next; every k=2}}',
      ],
      ['Work 5 rows, dec 1 st at each end of next and foll alt row.', 'plain 5 rows (dec 1 bothEnds {next; follEvery k=2})'],
      ['Work 10 rows in st st, dec 1 st at neck edge on every row.', 'plain 10 rows st st (dec 1 edge neck {every k=1})'],
      ['Work 14 rows, decreasing 1 st at each end of 3rd and every foll 4th row.', 'plain 14 rows (dec 1 bothEnds {nth k=3; every k=4})'],
      [
        'Cont in st st, inc 1 st at each end of 7th and every foll 6th row until there are 62 sts.',
        'work st st until loose "" | inc 1 bothEnds {nth k=7; every k=6 until 62}',
      ],
      ['Cont in rib, dec 1 st at each end of every RS row 6 times.', 'work rib until loose "" | dec 1 bothEnds {every n=6 RS}'],
      [
        'Dec 1 st at neck edge of next 5 rows, then on foll 5 (5: 6: 6) alt rows.',
        'dec 1 edge neck {next n=5; follEvery n=5 (5, 6, 6) k=2}',
      ],
      ['Dec 1 st at armhole edge every row 5 times.', 'dec 1 edge armhole {every n=5 k=1}'],
      ['Dec 1 st at beg of next row and at same edge on foll 4 rows.', 'dec 1 edge beginning {next; follEach n=4}'],
      ['Dec 1 st at armhole edge on every row 6 times.', 'dec 1 edge armhole {every n=6 k=1}'],
      ['Dec 1 st at front edge every 4th row 10 times.', 'dec 1 edge front {every n=10 k=4}'],
      ['Dec 1 st at neck edge on every RS row until 22 sts rem.', 'dec 1 edge neck {every RS until 22}'],
      ['Dec 1 st at neck edge in next 3 rows.', 'dec 1 edge neck {next n=3}'],
      ['Dec 1 st at side edge of next and every foll 10th row 3 times in all.', 'dec 1 edge side {next; every n=3 k=10 all}'],
      ['Inc 1 st at front edge of next and foll 3 RS rows.', 'inc 1 edge front {next; follEach n=3 RS}'],
      ['Dec 1 st at each neck edge every row 5 times.', 'dec 1 eachEdge neck {every n=5 k=1}'],
      [
        'At each neck edge, dec 1 st every row 5 times, then every RS row 5 (5: 6: 6) times.',
        'dec 1 eachEdge neck {every n=5 k=1; every n=5 (5, 6, 6) RS}',
      ],
      ['Dec 1 st at each side of each marker every 2nd rnd 22 times.', 'dec 1 eachSideOfMarkers {every n=22 k=2}'],
      ['Inc 1 st each side of markers on every RS row 10 times.', 'inc 1 eachSideOfMarkers {every n=10 RS}'],
      ['Inc 1 st each end every ¾ in 7 times.', 'inc 1 bothEnds {every n=7 measure=0.75}'],
      ['Dec 1 st each side every 4 cm 3 (4, 4, 4) times.', 'dec 1 bothEnds {every n=3 (4, 4, 4) measure=4}'],
      [
        'Inc 1 st each side of next row; rep incs every 1 in 8 times.',
        'inc 1 bothEnds {next} | rep rows [shaping inc] {every n=8 measure=1}',
      ],
      ['Dec 1 st each end alternately every RS row and every other RS row 6 times.', 'dec 1 bothEnds {alternately n=6 k=2,4 RS}'],
      ['Inc each end every 4th and 6th row alternately to 72 sts.', 'inc 1 bothEnds {alternately k=4,6 until 72}'],
      ['Inc 1 st at each end of every 4th and 6th row alternately until there are 72 sts.', 'inc 1 bothEnds {alternately k=4,6 until 72}'],
      ['K4, ssk, k to last 6 sts, k2tog, k4.', 'row: k{4} ssk k→last 6 kNtog{2} k{4}'],
      ['P1, p2tog, p to last 4 sts, ssp, p1.', 'row: p{1} pNtog{2} p→last 4 ssp p{1}'],
      [
        "Dec rnd: *K1, k2tog, k to 3 sts before m, ssk, k1, sm; rep from * once more. 4 sts dec'd.",
        'round dec: *[k{1} kNtog{2} k→3 before marker ssk k{1} marker slip]→1× more =4 decreased',
      ],
      ['[K to 3 sts before m, k2tog, sm, ssk] twice.', 'row: [k→3 before marker kNtog{2} marker slip ssk]→2×'],
    ],
  },
  {
    sizes: ['XS', 'S', 'M'],
    rows: [
      ['Dec 1 stitch each end of every alternate row until 40 (42, 44) sts remain.', 'dec 1 bothEnds {every k=2 until 40 (42, 44)}'],
      ['Dec 1 st at each end of the next 4 rows.', 'dec 1 bothEnds {next n=4}'],
      ['Dec 1 st both ends next row.', 'dec 1 bothEnds {next}'],
      ['Dec 1 st at both ends of next and foll 3 alt rows.', 'dec 1 bothEnds {next; follEvery n=3 k=2}'],
      ['Dec 1 st at each end of next and every foll 3rd row 6 times.', 'dec 1 bothEnds {next; every n=6 k=3}'],
      ['Dec 1 st at each end of every 4th row 6 times in all.', 'dec 1 bothEnds {every n=6 k=4 all}'],
      ['Dec 1 st at each end of every row 4 times, then every RS row 5 times.', 'dec 1 bothEnds {every n=4 k=1; every n=5 RS}'],
      ['Dec one stitch at each end of needle every other row 6 times.', 'dec 1 bothEnds {every n=6 k=2}'],
      ['Inc one stitch at each side every 6th row, 7 times.', 'inc 1 bothEnds {every n=7 k=6}'],
      [
        'Inc 1 st at each end of 7th row and every following 8th row until there are 84 (88, 92) sts.',
        'inc 1 bothEnds {nth k=7; every k=8 until 84 (88, 92)}',
      ],
      ['Inc 1 st at each end of this and every foll 6th row to 74 sts.', 'inc 1 bothEnds {this; every k=6 until 74}'],
      [
        'Inc 1 st each side on next RS row, then every 6 rows 9 (10, 11) times more.',
        'inc 1 bothEnds {next RS; every n=9 (10, 11) k=6 more}',
      ],
      ['Inc 1 st each end of next row, then on every 4th row until there are 70 sts.', 'inc 1 bothEnds {next; every k=4 until 70}'],
      ['Increase 1 stitch each side of every 10th round, 8 times.', 'inc 1 bothEnds {every n=8 k=10}'],
      ['Inc 1 st at beg and end of next and every 8th row until you have 90 sts.', 'inc 1 bothEnds {next; every k=8 until 90}'],
      ['Dec 1 st at each end on 5th and foll 6th rows.', 'dec 1 bothEnds {nth k=5; follEvery k=6}'],
      ['Dec 1 st at raglan edges on every RS row until 30 sts rem.', 'dec 1 edge raglan {every RS until 30}'],
      ['Dec 1 st at armhole edge of next 4 rows, then on foll 3 alt rows.', 'dec 1 edge armhole {next n=4; follEvery n=3 k=2}'],
      [
        'Dec 1 st at front slope on next and every foll 4th row until 24 (26, 28) sts rem.',
        'dec 1 edge front {next; every k=4 until 24 (26, 28)}',
      ],
      ['Dec 1 st at neck edge on next 6 rows and 4 foll alt rows.', 'dec 1 edge neck {next n=6; follEvery n=4 k=2}'],
      ['Dec 1 st at the neck edge every RS row 5 times.', 'dec 1 edge neck {every n=5 RS}'],
      ['Dec 1 st at end of next row and at same edge on every row until 20 sts rem.', 'dec 1 edge end {next; every k=1 until 20}'],
      ['Dec 1 st at beg of every RS row 5 times.', 'dec 1 beginning {every n=5 RS}'],
      ['Dec 2 sts at each end of every RS row 4 times.', 'dec 2 bothEnds {every n=4 RS}'],
      ['Dec 1 st at each end of next RS row.', 'dec 1 bothEnds {next RS}'],
      ['Decrease 1 st at neck edge every row twice, then every other row 3 times.', 'dec 1 edge neck {every n=2 k=1; every n=3 k=2}'],
      ['Inc 1 st at end of every RS row until there are 30 sts.', 'inc 1 end {every RS until 30}'],
      ['Inc 1 st at front edge on every row 6 times and on foll alt row 3 times.', 'inc 1 edge front {every n=6 k=1; follEvery n=3 k=2}'],
      [
        'Rep Dec Row every 6th row 4 (5, 6) more times, every 4th row 3 times, then every RS row twice.',
        'rep rows [name dec] {every n=4 (5, 6) k=6 more; every n=3 k=4; every n=2 RS}',
      ],
      ['Repeat Dec Rnd every 8 rnds 5 more times.', 'rep rows [name dec] {every n=5 k=8 more}'],
      [
        'Repeat inc row every 6 (6, 4) rows 8 (9, 11) more times, ending with a WS row.',
        'rep rows [name inc] {every n=8 (9, 11) k=6 (6, 4) more} ending WS',
      ],
      ['Work Dec Row on the next 5 RS rows.', 'work rows [name dec] {next n=5 RS}'],
      ['Work Inc Row every 4th row until there are 66 sts.', 'work rows [name inc] {every k=4 until 66}'],
      ['Work Inc Rnd on every 10th rnd 6 times more—72 (76, 80) sts.', 'work rows [name inc] {every n=6 k=10 more} =72 (76, 80) total'],
      [
        'Rep Dec Row on foll 4th row, then on every foll alt row until 40 sts rem.',
        'rep rows [name dec] {follEvery k=4; every k=2 until 40}',
      ],
      ['Rep the last inc row on every foll 6th row until there are 80 sts.', 'rep rows [shaping inc] {every k=6 until 80}'],
      [
        'Working incs as set, inc 1 st at each end of every 6th row 5 times.',
        'declare rule working incs as set | inc 1 bothEnds {every n=5 k=6}',
      ],
      [
        'Cont in patt, dec 1 st at each end of next and every foll 4th row until 50 sts rem.',
        'work patt until loose "" | dec 1 bothEnds {next; every k=4 until 50}',
      ],
      ['Work 6 rows, decreasing 1 st at each end of every RS row.', 'plain 6 rows (dec 1 bothEnds {every RS})'],
      [
        'Work 20 (22, 24) rows, inc 1 st at each end of 3rd and every foll 4th row.',
        'plain 20 (22, 24) rows (inc 1 bothEnds {nth k=3; every k=4})',
      ],
      ['Work 9 rows, dec 1 st at neck edge on every row.', 'plain 9 rows (dec 1 edge neck {every k=1})'],
      ['Work 8 rows dec 1 st at armhole edge on every alt row.', 'plain 8 rows (dec 1 edge armhole {every k=2})'],
      ['Dec 1 st each side every 5 cm 4 times.', 'dec 1 bothEnds {every n=4 measure=5}'],
      ['Inc 1 st each side every 1½" 6 times.', 'inc 1 bothEnds {every n=6 measure=1.5}'],
      ['Inc 1 st at each end every 2 cm until there are 70 sts.', 'inc 1 bothEnds {every measure=2 until 70}'],
      [
        'Dec 1 st at each end of every alt row 3 times, then every row until 20 sts rem, ending with a WS row.',
        'dec 1 bothEnds {every n=3 k=2; every k=1 until 20} ending WS',
      ],
      ['Dec 1 st at each end of every row until 12 sts rem. Cast off.', 'dec 1 bothEnds {every k=1 until 12} | BO all all:0'],
      ['Shape raglans: Cast off 4 sts at beg of next 2 rows.', 'declare title Shape raglans | bindOff rows 4 {next n=2}'],
    ],
  },
];

describe('Shaping schedules', () => {
  for (const { sizes, rows } of tables) {
    it.each(rows)('%s', (text, expected) => {
      expect(read(text, { sizes })).toBe(expected);
    });
  }
});
