/** Sums played elsewhere: every wording with the tree it must read into. Forms of the trade; numbers and words made up here. */
import { describe, expect, it } from 'vitest';
import { read } from '../outline.ts';

/** Sizes of the draft, then each text with its outline. */
const tables: readonly { readonly sizes: readonly string[]; readonly rows: readonly (readonly [string, string])[] }[] = [
  {
    sizes: ['XS', 'S', 'M', 'L'],
    rows: [
      ['Cast off 5 (6: 7: 8) sts at beg of next 2 rows.', 'bindOff rows 5 (6, 7, 8) {next n=2}'],
      ['Dec 1 st at each end of next 3 (3: 5: 5) rows, then on foll 2 (3: 3: 4) alt rows, then on foll 4th row.', 'dec 1 bothEnds {next n=3 (3, 5, 5); follEvery n=2 (3, 3, 4) k=2; follEvery k=4}'],
      ['Cast off 7 (8: 8: 9) sts at beg of next 4 rows, then 8 (7: 9: 8) sts at beg of foll 2 rows.', 'bindOff rows 7 (8, 8, 9) {next n=4} + 8 (7, 9, 8) {follEach n=2}'],
      ['Cast off 4 (–: 5: –) sts at beg of next 2 (–: 4: –) rows.', 'bindOff rows 4 (–, 5, –) {next n=2 (–, 4, –)}'],
      ['Inc 1 st at each end of next and every foll 6th row until there are 70 (74: 80: 84) sts.', 'inc 1 bothEnds {next; every k=6 until 70 (74, 80, 84)}'],
      ['Dec Row (RS): K1, ssk, k to last 3 sts, k2tog, k1. Rep Dec Row every RS row 3 (4, 5, 6) more times, then every 4th row 2 times.', 'row dec (RS): k{1} ssk k→last 3 kNtog{2} k{1} | rep rows [name dec] {every n=3 (4, 5, 6) RS more; every n=2 k=4}'],
      ['Dec Row (RS): K1, k2tog, k to last 3 sts, ssk, k1. Rep Dec Row every 8th (8th, 6th, 6th) row 5 (6, 8, 9) more times.', 'row dec (RS): k{1} kNtog{2} k→last 3 ssk k{1} | rep rows [name dec] {every n=5 (6, 8, 9) k=8 (8, 6, 6) more}'],
      ['Row 1 (RS): K2, *p2, k2; rep from * to end.', 'row 1 (RS): k{2} *[p{2} k{2}]→end'],
      ['Row 1 (WS): P3 (5: 4: 6), p2tog, [p7 (7: 8: 8), p2tog] 6 (7: 7: 8) times, p3 (5: 4: 6).', 'row 1 (WS): p{3 (5, 4, 6)} pNtog{2} [p{7 (7, 8, 8)} pNtog{2}]→6 (7, 7, 8)× p{3 (5, 4, 6)}'],
      ['Rnd 1: K28 (30, 32, 34), pm, k12, pm, k28 (30, 32, 34), pm, k12, pm. Rnd 2: [K1, m1, k to 1 st before m, m1, k1, sm] 4 times. Rnd 3: K to end. Rep last 2 rnds 19 (21, 23, 25) times more.', 'round 1: k{28 (30, 32, 34)} marker place k{12} marker place k{28 (30, 32, 34)} marker place k{12} marker place | round 2: [k{1} M1 k→1 before marker M1 k{1} marker slip]→4× | round 3: k→end | rep rows [last 2] 19 (21, 23, 25)× more'],
      ['Row 1 (RS): K30 (31: 34: 35), turn, leaving rem sts on a holder.', 'row 1 (RS): k{30 (31, 34, 35)} turn holds holder'],
      ['Dec 1 st at neck edge of next 4 rows, then on foll 4 (4: 5: 5) alt rows.', 'dec 1 edge neck {next n=4; follEvery n=4 (4, 5, 5) k=2}'],
      ['Pick up and k 20 (20: 22: 22) sts, k 22 (24: 22: 24) sts from holder, pick up and k 20 (20: 22: 22) sts, k 38 (40: 40: 42) sts from holder.', 'row: pick up 20 (20, 22, 22) take up 22 (24, 22, 24) pick up 20 (20, 22, 22) take up 38 (40, 40, 42)'],
    ],
  },
  {
    sizes: ['one'],
    rows: [
      ['Dec 1 st at each end of next and foll 6 rows.', 'dec 1 bothEnds {next; follEach n=6}'],
      ['Dec 1 st at each end of next and foll 6th row.', 'dec 1 bothEnds {next; follEvery k=6}'],
      ['Work 22 rows dec 1 st at each end of next and every foll alt row.', 'plain 22 rows (dec 1 bothEnds {next; every k=2})'],
      ['Row 1 (RS): K1, ssk, k to last 3 sts, k2tog, k1. Row 2: P to end. Rep last 2 rows 5 times in all.', 'row 1 (RS): k{1} ssk k→last 3 kNtog{2} k{1} | row 2: p→end | rep rows [last 2] 5× all'],
      ['Row 1 (RS): K1, ssk, k to last 3 sts, k2tog, k1. Row 2: P to end. Rep last 2 rows until 76 sts rem.', 'row 1 (RS): k{1} ssk k→last 3 kNtog{2} k{1} | row 2: p→end | rep rows [last 2] until 76 sts'],
      ['Row 1 (RS): K3, ssk, k to last 5 sts, k2tog, k2.', 'row 1 (RS): k{3} ssk k→last 5 kNtog{2} k{2}'],
      ['Row 1 (RS): K26, BO 21 sts, k26.', 'row 1 (RS): k{26} BO 21 k{26}'],
      ['Rnd 1: K72, pm, k52, pm, k72, pm, k52, pm. Rnd 2: [K1, ssk, k to 3 sts before m, k2tog, k1, sm] 4 times. Rnd 3: K to end. Rep last 2 rnds 19 times more.', 'round 1: k{72} marker place k{52} marker place k{72} marker place k{52} marker place | round 2: [k{1} ssk k→3 before marker kNtog{2} k{1} marker slip]→4× | round 3: k→end | rep rows [last 2] 19× more'],
      ['Dec 1 st at each end every other row 4 times.', 'dec 1 bothEnds {every n=4 k=2}'],
      ['Cast off 6 sts at beg of next and foll 5 rows.', 'bindOff rows 6 {next; follEach n=5}'],
      ['Rnd 1: K43, s2kp, k80. Rnd 2: K to end.', 'round 1: k{43} s2kp k{80} | round 2: k→end'],
    ],
  },
  {
    sizes: ['XS', 'S'],
    rows: [
      ['Dec 1 st at each end of next and 3 foll 4th rows.', 'dec 1 bothEnds {next; follEvery n=3 k=4}'],
      ['Dec 1 st at each end of 4th and foll 12th row, then on 2 foll 6th rows.', 'dec 1 bothEnds {nth k=4; follEvery k=12; follEvery n=2 k=6}'],
      ['Inc 1 st at each end of 3rd and every foll 6th row to 58 sts, then on every foll 8th row until there are 64 (66) sts.', 'inc 1 bothEnds {nth k=3; every k=6 until 58; every k=8 until 64 (66)}'],
      ['Work 21 (23) rows dec 1 st at each end of next and every foll alt row.', 'plain 21 (23) rows (dec 1 bothEnds {next; every k=2})'],
      ['Work 30 (34) rows inc 1 st at each end of 5th and every foll 8th row.', 'plain 30 (34) rows (inc 1 bothEnds {nth k=5; every k=8})'],
      ['Row 1 (RS): K2, k2tog, k to end. Row 2: P to end. Rep last 2 rows 0 (2) times more.', 'row 1 (RS): k{2} kNtog{2} k→end | row 2: p→end | rep rows [last 2] 0 (2)× more'],
    ],
  },
  {
    sizes: ['XS', 'S', 'M'],
    rows: [
      ['Row 1 (RS): K1, ssk, k to last 3 sts, k2tog, k1. Row 2: P to end. Rep last 2 rows 5 (6, 7) times more.', 'row 1 (RS): k{1} ssk k→last 3 kNtog{2} k{1} | row 2: p→end | rep rows [last 2] 5 (6, 7)× more'],
      ['Row 1 (WS): P4, [m1, p9 (10: 11)] 8 times, p5.', 'row 1 (WS): p{4} [M1 p{9 (10, 11)}]→8× p{5}'],
      ['Rnd 1: *K6, k2tog; rep from * to end. Rnd 2: *K5, k2tog; rep from * to end. Rnd 3: *K4, k2tog; rep from * to end. Rnd 4: *K3, k2tog; rep from * to end.', 'round 1: *[k{6} kNtog{2}]→end | round 2: *[k{5} kNtog{2}]→end | round 3: *[k{4} kNtog{2}]→end | round 4: *[k{3} kNtog{2}]→end'],
      ['Row 1 (RS): K4, [BO 2 sts, k until 12 (13: 14) sts after BO] 6 times, BO 2 sts, k to end.', 'row 1 (RS): k{4} [BO 2 k→12 (13, 14) on right after bind-off]→6× BO 2 k→end'],
      ['Row 1 (RS): K3, [yo, k2tog, k13 (14: 15)] 6 times, yo, k2tog, k5.', 'row 1 (RS): k{3} [yo kNtog{2} k{13 (14, 15)}]→6× yo kNtog{2} k{5}'],
      ['Cast on 8 sts at beg of next 2 rows.', 'castOn rows 8 {next n=2}'],
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
