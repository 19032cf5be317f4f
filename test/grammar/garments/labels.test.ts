/** Labels of rows: every wording with the tree it must read into. Forms of the trade; numbers and words made up here. */
import { describe, expect, it } from 'vitest';
import { read } from '../outline.ts';

/** Sizes of the draft, then each text with its outline. */
const tables: readonly { readonly sizes: readonly string[]; readonly rows: readonly (readonly [string, string])[] }[] = [
  {
    sizes: ['XS', 'S', 'M', 'L'],
    rows: [
      ['Row 1 (RS): K.', 'row 1 (RS): k→end'],
      ['Row 1 [RS]: K.', 'row 1 (RS): k→end'],
      ['Row 1 (right side): K.', 'row 1 (RS): k→end'],
      ['Row 1 (RS) K2, p2.', 'row 1 (RS): k{2} p{2}'],
      ['1st row: K2, p2.', 'row 1: k{2} p{2}'],
      ['1st Row (RS). K2, p2.', 'row 1 (RS): k{2} p{2}'],
      ['1st row: (RS). K2, p2.', 'row 1 (RS): k{2} p{2}'],
      ['1st row (rs). K1, *p1, k1, rep from * to end.', 'row 1 (RS): k{1} *[p{1} k{1}]→end'],
      ['ROW 1—K2, p2.', 'row 1: k{2} p{2}'],
      ['Rnd 1: K.', 'round 1: k→end'],
      ['Round 1. K2, p2.', 'round 1: k{2} p{2}'],
      ['Next row (WS): P.', 'row next (WS): p→end'],
      ['Next Row: RS - K to last 3 sts, p3.', 'row next (RS): k→last 3 p{3}'],
      ['Next Row: WS - P to last 3 sts, k3.', 'row next (WS): p→last 3 k{3}'],
      ['Next row. K2, p2.', 'row next: k{2} p{2}'],
      ['Next rnd: K.', 'round next: k→end'],
      ['Next Row—Begin shaping: K1, k2tog, k to end.', 'row next: k{1} kNtog{2} k→end'],
      ['Dec Row (RS): K1, ssk, k to end.', 'row dec (RS): k{1} ssk k→end'],
      ['Inc Rnd: *K1, m1L, k to 1 st before m, m1R, k1, sm; rep from * to BOR.', 'round inc: *[k{1} M1L k→1 before marker M1R k{1} marker slip]→end'],
      ['Set-up row (WS): P14, pm, p12, pm, p28, pm, p12, pm, p14.', 'row set-up (WS): p{14} marker place p{12} marker place p{28} marker place p{12} marker place p{14}'],
      ['Set-up row (WS): P 14, pm, p 12, pm, p 28, pm, p 12, pm, p 14.', 'row set-up (WS): p{14} marker place p{12} marker place p{28} marker place p{12} marker place p{14}'],
      ['Foundation row: P4, k4.', 'row foundation: p{4} k{4}'],
      ['Raglan inc rnd: K1, m1, k to end.', 'round raglan inc: k{1} M1 k→end'],
      ['Raglan row (RS, dec): K2, skpo, k to last 4 sts, k2tog, k2.', 'row raglan (RS): k{2} skp k→last 4 kNtog{2} k{2}'],
      ['Buttonhole row (RS): K4, yo, k2tog, k to end.', 'row buttonhole (RS): k{4} yo kNtog{2} k→end'],
      ['Short row 3 (RS): K to last 6 sts, w&t.', 'row short 3 (RS): k→last 6 turn wrap'],
      ['Next row (RS dec): K2tog, k to end.', 'row next (RS): kNtog{2} k→end'],
      ['Row 4 (WS, inc): P1, m1p, p to end.', 'row 4 (WS): p{1} M1P p→end'],
      ['Next row K to end.', 'row next: k→end'],
      ['Rows 1 and 3 (RS): Knit.', 'row 1,3 (RS): k→end'],
      ['Rows 2, 4 and 6 (WS): Purl.', 'row 2,4,6 (WS): p→end'],
      ['Rows 2–10: Knit.', 'row 2,3,4,5,6,7,8,9,10: k→end'],
      ['Rows 5 to 8: Knit.', 'row 5,6,7,8: k→end'],
      ['Row 2 and all WS rows: Purl.', 'row 2 and all WS: p→end'],
      ['Row 1 and every foll RS row: K to end.', 'row 1 and all RS: k→end'],
      ['Row 2 and all even-numbered rows: Purl.', 'row 2 and all even: p→end'],
      ['Rnds 3–6: Knit.', 'round 3,4,5,6: k→end'],
      ['Row 2 and foll alt rows: P to end.', 'row 2 and all alternate: p→end'],
      ['Rnds 2–4: Work even.', 'round 2,3,4: work→end'],
      ['Rows 5 to 10: Beg with a k row, work in st st.', 'row 5,6,7,8,9,10: k work→end'],
      ['1st, 3rd and 5th rows: K2, *p2, k2; rep from * to end.', 'row 1,3,5: k{2} *[p{2} k{2}]→end'],
      ['Row 4: As Row 2.', 'row 4: as row rows 2'],
      ['4th row: Work as 2nd row.', 'row 4: as row rows 2'],
      ['Row 3: Rep Row 1.', 'row 3: rep rows [numbers 1]'],
      ['5th to 8th rows: As 1st to 4th rows.', 'row 5,6,7,8: as row rows 1,2,3,4'],
      ['Rows 5–8: Rep Rows 1–4.', 'row 5,6,7,8: rep rows [numbers 1,2,3,4]'],
      ['9th to 14th rows: As 7th and 8th rows 3 times more.', 'row 9,10,11,12,13,14: as row rows 7,8 3× more'],
      ['6th to 10th rows: Beg with a p row, work 5 rows in st st.', 'row 6,7,8,9,10: plain 5 rows st st beg p'],
      ['Knit 1 row.', 'plain 1 rows knit'],
      ['Purl 1 row.', 'plain 1 rows purl'],
      ['P 1 row.', 'plain 1 rows purl'],
      ['K 3 rnds.', 'plain 3 rounds knit'],
      ['Work 1 row.', 'plain 1 rows'],
      ['Next: purl.', 'row next: p→end'],
      ['Next: Purl to end.', 'row next: p→end'],
      ['K2, k2tog, k to last 4 sts, ssk, k2.', 'row: k{2} kNtog{2} k→last 4 ssk k{2}'],
      ['Work 1 row even. K2, k2tog, k to last 4 sts, ssk, k2.', 'plain 1 rows | row: k{2} kNtog{2} k→last 4 ssk k{2}'],
      ['Armhole shaping (RS): Bind off 6 (7, 8, 8) sts at beg of next 2 rows.', 'declare title Armhole shaping (RS) | bindOff rows 6 (7, 8, 8) {next n=2}'],
      ['Shape neck—Next row (RS): K30, turn.', 'declare title Shape neck | row next (RS): k{30} turn'],
      ['Back: With smaller needles, cast on 100 sts.', 'declare title Back | change needle | CO 100 here'],
    ],
  },
];

describe('Labels of rows', () => {
  for (const { sizes, rows } of tables) {
    it.each(rows)('%s', (text, expected) => {
      expect(read(text, { sizes })).toBe(expected);
    });
  }
});
