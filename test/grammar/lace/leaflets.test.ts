/**
 * Rows as old leaflets and hurried knitters print them: full stops behind abbreviations, "repeat between", no name for the star.
 */
import { describe, expect, test } from 'vitest';
import { read } from '../outline.ts';

const sizes = ['S', 'M', 'L'];

const rows: Readonly<Record<string, readonly (readonly [string, string])[]>> = {
  rows: [
    [
      '1st row.—K. 2, * wl. fwd., k. 2 tog., k. 1; rep. from * to last st., k. 1.',
      'row 1: k{2} *[yfwd(or yf (move)) kNtog{2} k{1}]→last 1 k{1}',
    ],
    ['1st Row: * K2, P2 *. Repeat from * to * to end of row.', 'row 1: *[k{2} p{2}]→end'],
    ['Row 2—P across.', 'row 2: p→end'],
    ['Row 3: Sl 1, * yo, k 2 tog. Rep from * across, end k 1.', 'row 3: sl{1} *[yo kNtog{2}]→end then:k{1}'],
    ['Row 3: Sl. 1, k. 2, p. 3.', 'row 3: sl{1} k{2} p{3}'],
    ['Row 5: K1; *yo; k2tog; rep from * to end;', 'row 5: k{1} *[yo kNtog{2}]→end'],
    ['Row 5: [K2tog, yo] to last st, k1.', 'row 5: [kNtog{2} yo]→last 1 k{1}'],
    ['Row 5: k1 (yo, k2tog) to end', 'row 5: k{1} [yo kNtog{2}]→end'],
    ["Row 7: K3, *yo, sl1, k2tog, psso, yo, k3*, rep between *'s 4 times, k2.", 'row 7: k{3} *[yo sk2p yo k{3}]→4× k{2}'],
    ['Row 7: K3, *yo, sl1, k2tog, psso, yo, k3**, rep from * to ** 4 times, k2.', 'row 7: k{3} *[yo sk2p yo k{3}]→4× k{2}'],
    ['Row 9: *K1, yo, (k1, p1) twice, yo; rep from * 5 (6, 7) more times, k1.', 'row 9: *[k{1} yo [k{1} p{1}]→2× yo]→5 (6, 7)× more k{1}'],
    ['Row 9: *K1, p1; rep from * a total of 5 times, k1.', 'row 9: *[k{1} p{1}]→5× all k{1}'],
    ['Row 9: *K1, p1; rep from * another 5 times, k1.', 'row 9: *[k{1} p{1}]→5× more k{1}'],
    ['Row 9: *K1, p1, rep from * to 1 st before marker, k1, sm.', 'row 9: *[k{1} p{1}]→1 before marker k{1} marker slip'],
    ['Row 9: *K1, p1, rep from * to marker, sl m, k2, rm, p1.', 'row 9: *[k{1} p{1}]→to marker marker slip k{2} marker remove p{1}'],
    ['Row 9: K1, *k2, p2; rep from * to last 3 sts, k2, k1 tbl.', 'row 9: k{1} *[k{2} p{2}]→last 3 k{2} k tbl{1}'],
    ['Row 9: P1, p2tog tbl, *yo, p2tog; rep from * across to last st, p1.', 'row 9: p{1} pNtog tbl{2} *[yo pNtog{2}]→last 1 p{1}'],
    ['Row 9: k1, ssk, knit to last 3 sts, k2tog, k1. (12 sts)', 'row 9: k{1} ssk k→last 3 kNtog{2} k{1} =12 total'],
    ['Row 9: k1, ssk, knit to last 3 sts, k2tog, k1—12 sts.', 'row 9: k{1} ssk k→last 3 kNtog{2} k{1} =12 total'],
    ['Row 9: k1, *[yo, k2tog] twice, k1; rep from * to end.', 'row 9: k{1} *[[yo kNtog{2}]→2× k{1}]→end'],
    ['Row 9: k2 (3, 4), p2, k2 (3, 4).', 'row 9: k{2 (3, 4)} p{2} k{2 (3, 4)}'],
    ['Row 9: k2, p2, k – (1, 2), p2.', 'row 9: k{2} p{2} k{– (1, 2)} p{2}'],
    ['Row 9: *k2, yo, k2tog; repeat from * across row to last 4 sts; k4.', 'row 9: *[k{2} yo kNtog{2}]→last 4 k{4}'],
    ['Row 9: *P2tog, yo: rep from * to last 2 sts: p2.', 'row 9: *[pNtog{2} yo]→last 2 p{2}'],
    ['Row 9: *K1, k1 tbl*. Rep from * to end.', 'row 9: *[k{1} k tbl{1}]→end'],
    ['Row 9: K1. *Yo, k2tog. Rep from * to end.', 'row 9: k{1} *[yo kNtog{2}]→end'],
    ['Row 9: knit 1, purl 1, knit 2 together, yarn over, slip 1 purlwise, make one.', 'row 9: k{1} p{1} kNtog{2} yo sl1p{1} M1'],
    [
      'Row 9: Knit one, * bring wool forward, knit two together; repeat from * to the end.',
      'row 9: k{1} *[yfwd(or yf (move)) kNtog{2}]→end',
    ],
    ['Row 9: slip 1 knitwise, knit 1, pass slipped stitch over, knit to end', 'row 9: sl1k{1} k{1} pull over 1 k→end'],
    ['Row 9: purl 2 together through back loops, purl to last 2 stitches, purl 2 together.', 'row 9: pNtog tbl{2} p→last 2 pNtog{2}'],
    ['Row 9: k to last 2 sts, sl 1, k1, psso.', 'row 9: k→last 2 sl1-kN-psso{1}'],
    ['Row 9: K2, (k2tog, yo twice, ssk) 3 times, k2.', 'row 9: k{2} [kNtog{2} yo N times{2} ssk]→3× k{2}'],
    ['Row 9: K2, *MB, k5; rep from *, ending last rep k2 instead of k5.', 'row 9: k{2} *[MB k{5}]→end lastRepeat:k{2}'],
    ['Row 9: K2, *MB, k5; rep from * ending with k2.', 'row 9: k{2} *[MB k{5}]→end then:k{2}'],
    ['Row 9: K2, *MB, k5; rep from * to last 3 sts, ending k3.', 'row 9: k{2} *[MB k{5}]→last 3 then:k{3}'],
    ['Row 9: *k4, p4; rep from * ending with k4.', 'row 9: *[k{4} p{4}]→end then:k{4}'],
    ['Row 9: K2, *yo, k1; rep from * to last 2 sts, yo, k2 – 17 sts.', 'row 9: k{2} *[yo k{1}]→last 2 yo k{2} =17 total'],
    ['Row 9: with yarn in front sl 1, k to end.', 'row 9: yf (move) sl{1} k→end'],
    ['Row 9: sl 1 wyif, *k1, sl 1 wyib; rep from * to last 2 sts, k1, sl 1.', 'row 9: sl wyif{1} *[k{1} sl wyib{1}]→last 2 k{1} sl{1}'],
    ['Row 9: k3, wyif sl 1, wyib k3.', 'row 9: k{3} yf (move) sl{1} yb k{3}'],
    ['Row 9: (RS) K2, *C4F, k4, C4B; rep from * to last 2 sts, k2.', 'row 9 (RS): k{2} *[CNF{4} k{4} CNB{4}]→last 2 k{2}'],
    ['Row 9: P3, (k1, yo, k1) in next st, p3; repeat from beginning to end.', 'row 9: list[p{3} (k{1} yo k{1})into stitch p{3}]→end'],
    [
      'Row 9: k1, (k1, yo, k1, yo, k1) into same st, turn, p5, turn, k5tog, k to end.',
      'row 9: k{1} (k{1} yo k{1} yo k{1})into stitch turn | row 9: p{5} turn | row 9: kNtog{5} k→end',
    ],
    ['Row 9: k1, [(k1, p1, k1) in next st] 3 times, k1.', 'row 9: k{1} [(k{1} p{1} k{1})into stitch]→3× k{1}'],
    ['Row 9: k1, (k1, p1, k1) in each of next 3 sts, k1.', 'row 9: k{1} (k{1} p{1} k{1})into each ×3 k{1}'],
    ['Row 9: k1, kfb twice, k1.', 'row 9: k{1} kfb×2 k{1}'],
    ['Row 9: k1, kfb in each of next 3 sts, k1.', 'row 9: k{1} kfb×3 k{1}'],
    ['Row 9: k1, kfb 3 times, k1.', 'row 9: k{1} kfb×3 k{1}'],
    ['Row 9: k1, *p1, k1* rep to end.', 'row 9: k{1} *[p{1} k{1}]→end'],
    ['Row 9: *k1, p1; rep to last st, k1.', 'row 9: *[k{1} p{1}]→last 1 k{1}'],
    ['Row 9: * k1, p1, rep from *.', 'row 9: *[k{1} p{1}]→end'],
    ['Row 9: (k1, p1) across, ending k1.', 'row 9: [k{1} p{1}]→end k{1}'],
    ['Row 9: rep Row 3, *k1; rep from * to end.', 'row 9: rep rows [numbers 3] *[k{1}]→end'],
    ['Row 9: *k2tog; rep from * around.', 'row 9: *[kNtog{2}]→end'],
    ['Row 9: *K8, k2tog. Rep from * around.', 'row 9: *[k{8} kNtog{2}]→end'],
    ['Row 9: k2tog all around.', 'row 9: kNtog→end'],
    ['Row 9: [k2tog] around.', 'row 9: [kNtog{2}]→end'],
    ['Row 9: k2tog across.', 'row 9: kNtog→end'],
    ['Row 9: [k2tog] to end.', 'row 9: [kNtog{2}]→end'],
  ],
};

describe('Old leaflets and loose wording', () => {
  for (const [family, table] of Object.entries(rows)) {
    describe(family, () => {
      test.each(table)('%s', (text, expected) => {
        expect(read(text, { sizes })).toBe(expected);
      });
    });
  }
});
