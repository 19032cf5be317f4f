/** Sums played elsewhere: every wording with the tree it must read into. Forms of the trade; numbers and words made up here. */
import { describe, expect, it } from 'vitest';
import { read } from '../outline.ts';

/** Sizes of the draft, then each text with its outline. */
const tables: readonly { readonly sizes: readonly string[]; readonly rows: readonly (readonly [string, string])[] }[] = [
  {
    sizes: ['XS', 'S', 'M', 'L'],
    rows: [
      ['Cast off 6 (7: 8: 9) sts at beg of next 3 rows.', 'bindOff rows 6 (7, 8, 9) {next n=3}'],
      [
        'Dec 1 st at each end of next 4 (4: 6: 6) rows, then on foll 3 (4: 4: 5) alt rows, then on foll 4th row.',
        'dec 1 bothEnds {next n=4 (4, 6, 6); follEvery n=3 (4, 4, 5) k=2; follEvery k=4}',
      ],
      [
        'Cast off 8 (9: 9: 11) sts at beg of next 5 rows, then 9 (8: 11: 9) sts at beg of foll 3 rows.',
        'bindOff rows 8 (9, 9, 11) {next n=5} + 9 (8, 11, 9) {follEach n=3}',
      ],
      ['Cast off 5 (–: 6: –) sts at beg of next 3 (–: 5: –) rows.', 'bindOff rows 5 (–, 6, –) {next n=3 (–, 5, –)}'],
      [
        'Inc 1 st at each end of next and every foll 6th row until there are 72 (76: 82: 86) sts.',
        'inc 1 bothEnds {next; every k=6 until 72 (76, 82, 86)}',
      ],
      [
        'Dec Row (RS): K1, ssk, k to last 4 sts, k2tog, k1. Rep Dec Row every RS row 4 (5, 6, 7) more times, then every 4th row 3 times.',
        'row dec (RS): k{1} ssk k→last 4 kNtog{2} k{1} | rep rows [name dec] {every n=4 (5, 6, 7) RS more; every n=3 k=4}',
      ],
      [
        'Dec Row (RS): K1, k2tog, k to last 4 sts, ssk, k1. Rep Dec Row every 8th (8th, 6th, 6th) row 6 (7, 9, 11) more times.',
        'row dec (RS): k{1} kNtog{2} k→last 4 ssk k{1} | rep rows [name dec] {every n=6 (7, 9, 11) k=8 (8, 6, 6) more}',
      ],
      ['Row 1 (RS): K3, *p3, k3; rep from * to end.', 'row 1 (RS): k{3} *[p{3} k{3}]→end'],
      [
        'Row 1 (WS): P4 (6: 5: 7), p2tog, [p8 (8: 9: 9), p2tog] 7 (8: 8: 9) times, p4 (6: 5: 7).',
        'row 1 (WS): p{4 (6, 5, 7)} pNtog{2} [p{8 (8, 9, 9)} pNtog{2}]→7 (8, 8, 9)× p{4 (6, 5, 7)}',
      ],
      [
        'Rnd 1: K29 (32, 34, 36), pm, k13, pm, k29 (32, 34, 36), pm, k13, pm. Rnd 3: [K1, m1, k to 1 st before m, m1, k1, sm] 5 times. Rnd 4: K to end. Rep last 3 rnds 21 (23, 25, 27) times more.',
        'round 1: k{29 (32, 34, 36)} marker place k{13} marker place k{29 (32, 34, 36)} marker place k{13} marker place | round 3: [k{1} M1 k→1 before marker M1 k{1} marker slip]→5× | round 4: k→end | rep rows [last 3] 21 (23, 25, 27)× more',
      ],
      ['Row 1 (RS): K31 (33: 36: 37), turn, leaving rem sts on a holder.', 'row 1 (RS): k{31 (33, 36, 37)} turn holds holder'],
      [
        'Dec 1 st at neck edge of next 5 rows, then on foll 5 (5: 6: 6) alt rows.',
        'dec 1 edge neck {next n=5; follEvery n=5 (5, 6, 6) k=2}',
      ],
      [
        'Pick up and k 22 (22: 24: 24) sts, k 24 (26: 24: 26) sts from holder, pick up and k 22 (22: 24: 24) sts, k 40 (42: 42: 44) sts from holder.',
        'row: pick up 22 (22, 24, 24) take up 24 (26, 24, 26) pick up 22 (22, 24, 24) take up 40 (42, 42, 44)',
      ],
    ],
  },
  {
    sizes: ['one'],
    rows: [
      ['Dec 1 st at each end of next and foll 7 rows.', 'dec 1 bothEnds {next; follEach n=7}'],
      ['Work 24 rows dec 1 st at each end of next and every foll alt row.', 'plain 24 rows (dec 1 bothEnds {next; every k=2})'],
      [
        'Row 1 (RS): K1, ssk, k to last 4 sts, k2tog, k1. Row 3: P to end. Rep last 3 rows 6 times in all.',
        'row 1 (RS): k{1} ssk k→last 4 kNtog{2} k{1} | row 3: p→end | rep rows [last 3] 6× all',
      ],
      [
        'Row 1 (RS): K1, ssk, k to last 4 sts, k2tog, k1. Row 3: P to end. Rep last 3 rows until 78 sts rem.',
        'row 1 (RS): k{1} ssk k→last 4 kNtog{2} k{1} | row 3: p→end | rep rows [last 3] until 78 sts',
      ],
      ['Row 1 (RS): K4, ssk, k to last 6 sts, k2tog, k3.', 'row 1 (RS): k{4} ssk k→last 6 kNtog{2} k{3}'],
      ['Row 1 (RS): K27, BO 23 sts, k27.', 'row 1 (RS): k{27} BO 23 k{27}'],
      [
        'Rnd 1: K73, pm, k53, pm, k73, pm, k53, pm. Rnd 3: [K1, ssk, k to 4 sts before m, k2tog, k1, sm] 5 times. Rnd 4: K to end. Rep last 3 rnds 21 times more.',
        'round 1: k{73} marker place k{53} marker place k{73} marker place k{53} marker place | round 3: [k{1} ssk k→4 before marker kNtog{2} k{1} marker slip]→5× | round 4: k→end | rep rows [last 3] 21× more',
      ],
      ['Dec 1 st at each end every other row 5 times.', 'dec 1 bothEnds {every n=5 k=2}'],
      ['Cast off 7 sts at beg of next and foll 6 rows.', 'bindOff rows 7 {next; follEach n=6}'],
      ['Rnd 1: K44, s2kp, k81. Rnd 3: K to end.', 'round 1: k{44} s2kp k{81} | round 3: k→end'],
    ],
  },
  {
    sizes: ['XS', 'S'],
    rows: [
      ['Dec 1 st at each end of next and 4 foll 4th rows.', 'dec 1 bothEnds {next; follEvery n=4 k=4}'],
      [
        'Dec 1 st at each end of 4th and foll 12th row, then on 3 foll 6th rows.',
        'dec 1 bothEnds {nth k=4; follEvery k=12; follEvery n=3 k=6}',
      ],
      [
        'Inc 1 st at each end of 3rd and every foll 6th row to 60 sts, then on every foll 8th row until there are 66 (68) sts.',
        'inc 1 bothEnds {nth k=3; every k=6 until 60; every k=8 until 66 (68)}',
      ],
      ['Work 23 (25) rows dec 1 st at each end of next and every foll alt row.', 'plain 23 (25) rows (dec 1 bothEnds {next; every k=2})'],
      ['Work 32 (36) rows inc 1 st at each end of 5th and every foll 8th row.', 'plain 32 (36) rows (inc 1 bothEnds {nth k=5; every k=8})'],
      [
        'Row 1 (RS): K3, k2tog, k to end. Row 3: P to end. Rep last 3 rows 0 (3) times more.',
        'row 1 (RS): k{3} kNtog{2} k→end | row 3: p→end | rep rows [last 3] 0 (3)× more',
      ],
    ],
  },
  {
    sizes: ['XS', 'S', 'M'],
    rows: [
      [
        'Row 1 (RS): K1, ssk, k to last 4 sts, k2tog, k1. Row 3: P to end. Rep last 3 rows 6 (7, 8) times more.',
        'row 1 (RS): k{1} ssk k→last 4 kNtog{2} k{1} | row 3: p→end | rep rows [last 3] 6 (7, 8)× more',
      ],
      ['Row 1 (WS): P5, [m1, p10 (12: 13)] 9 times, p6.', 'row 1 (WS): p{5} [M1 p{10 (12, 13)}]→9× p{6}'],
      [
        'Rnd 1: *K7, k2tog; rep from * to end. Rnd 3: *K6, k2tog; rep from * to end. Rnd 4: *K5, k2tog; rep from * to end. Rnd 5: *K4, k2tog; rep from * to end.',
        'round 1: *[k{7} kNtog{2}]→end | round 3: *[k{6} kNtog{2}]→end | round 4: *[k{5} kNtog{2}]→end | round 5: *[k{4} kNtog{2}]→end',
      ],
      [
        'Row 1 (RS): K5, [BO 3 sts, k until 14 (15: 16) sts after BO] 7 times, BO 3 sts, k to end.',
        'row 1 (RS): k{5} [BO 3 k→14 (15, 16) on right after bind-off]→7× BO 3 k→end',
      ],
      [
        'Row 1 (RS): K4, [yo, k2tog, k14 (16: 17)] 7 times, yo, k2tog, k6.',
        'row 1 (RS): k{4} [yo kNtog{2} k{14 (16, 17)}]→7× yo kNtog{2} k{6}',
      ],
      ['Cast on 9 sts at beg of next 3 rows.', 'castOn rows 9 {next n=3}'],
    ],
  },
];

describe('Sums played elsewhere', () => {
  for (const { sizes, rows } of tables) {
    it.each(rows)('%s', (text, expected) => {
      expect(read(text, { sizes })).toBe(expected);
    });
  }
});
