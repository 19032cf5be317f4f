/**
 * Star repeats with every extent and ending, brackets, lists with neither, runs, rows told by the look of the stitches.
 */
import { describe, expect, test } from 'vitest';
import { read } from '../outline.ts';

const sizes = ['S', 'M', 'L'];

const rows: Readonly<Record<string, readonly (readonly [string, string])[]>> = {
  'stars, their extents and endings': [
    ['Row 1: *k2, p2*; rep from * to *', 'row 1: *[k{2} p{2}]→end'],
    ['Row 1: K3, *p2, k2**, p4; rep from * to ** 3 times more.', 'row 1: k{3} *[p{2} k{2} | p{4}]→3× more'],
    ['Row 1: k1, *p2, k2; rep between *s to end.', 'row 1: k{1} *[p{2} k{2}]→end'],
    ['Row 1: K1, †p2, k2; rep from † to last 2 sts, p2.', 'row 1: k{1} †[p{2} k{2}]→last 2 p{2}'],
    ['Row 1—K 1, * p 1, k 1; repeat from *, end k 1.', 'row 1: k{1} *[p{1} k{1}]→end then:k{1}'],
    ['Row 1—K 1, * p 1, k 1, repeat from * across, ending with k 1.', 'row 1: k{1} *[p{1} k{1}]→end then:k{1}'],
    ['1st row. * K. 2, p. 2. Rep. from * to end.', 'row 1: *[k{2} p{2}]→end'],
    ['1st row: * k 2 tog, yo, k 1, rep from * ending last rep k 2.', 'row 1: *[kNtog{2} yo k{1}]→end lastRepeat:k{2}'],
    ['Row 3: K2, *yo, k2tog; rep from *, omitting yo at end of last rep.', 'row 3: k{2} *[yo kNtog{2}]→end omitting:yo'],
    ['Row 3: K2, *yo, k2tog, k1; rep from * to end, omitting the last k1.', 'row 3: k{2} *[yo kNtog{2} k{1}]→end omitting:k{1}'],
    ['Row 3: K1, *yo, k2tog; rep from * until 1 st rem, k1.', 'row 3: k{1} *[yo kNtog{2}]→last 1 k{1}'],
    ['Row 3: K1, *yo, k2tog; rep from * to within 3 sts of end, k3.', 'row 3: k{1} *[yo kNtog{2}]→last 3 k{3}'],
    ['Row 3: *k2, p2* 3 times, k1.', 'row 3: *[k{2} p{2}]→3× k{1}'],
    ['Row 3: *k2, p2* across.', 'row 3: *[k{2} p{2}]→end'],
    ['Row 7: *k1, yo twice; rep from * to last st, k1.', 'row 7: *[k{1} yo N times{2}]→last 1 k{1}'],
    ['Row 7: *k1, drop 2 yos; rep from * to end', 'row 7: *[k{1} drop yo×2]→end'],
    ['Row 5: *yo, sl 1, k2tog; rep from * to end.', 'row 5: *[yo sl{1} kNtog{2}]→end'],
    ['Row 3: K3, *k1, yo 3 times; rep from * to last 3 sts, k3.', 'row 3: k{3} *[k{1} yo N times{3}]→last 3 k{3}'],
    ['Row 3: *sl1yo, brp1; rep from * to last st, sl1.', 'row 3: *[sl1yo brp]→last 1 sl{1}'],
    [
      'Row 3: k1, *yfwd, k2tog, yfwd, sl 1, k1, psso; rep from * to last st, k1.',
      'row 3: k{1} *[yfwd(or yf (move)) kNtog{2} yfwd(or yf (move)) sl1-kN-psso{1}]→last 1 k{1}',
    ],
    ['Row 3: *K3 (4, 5), p2; rep from * 4 (4, 5) more times, k3.', 'row 3: *[k{3 (4, 5)} p{2}]→4 (4, 5)× more k{3}'],
    ['Row 3: *k2, [p1, k1] twice, p2*; rep from * to * twice more, k2.', 'row 3: *[k{2} [p{1} k{1}]→2× p{2}]→2× more k{2}'],
    ['Row 3: ‡k2, yo, k2tog; rep from ‡ across.', 'row 3: ‡[k{2} yo kNtog{2}]→end'],
    ['Row 3: *k4, yo; rep from * 5 times more, k4.', 'row 3: *[k{4} yo]→5× more k{4}'],
    ['Row 3: **k2, p1; rep from ** to end.', 'row 3: **[k{2} p{1}]→end'],
    [
      'Row 3: k2, *p2, **k1, p1; rep from ** twice more, p2; rep from * to last 2 sts, k2.',
      'row 3: k{2} *[p{2} **[k{1} p{1}]→2× more p{2}]→last 2 k{2}',
    ],
    ['Row 3: *k2, p2, rep from * until 6 sts remain, k6.', 'row 3: *[k{2} p{2}]→last 6 k{6}'],
    ['Row 3: *k2, p2; rep from * to within 2 sts of marker, k2.', 'row 3: *[k{2} p{2}]→2 before marker k{2}'],
    [
      'Row 3: *k2, p2; rep from * to 4 sts before next marker, k4, slm, k to end.',
      'row 3: *[k{2} p{2}]→4 before marker k{4} marker slip k→end',
    ],
    ['Row 3: *k2, p2; rep from * to end of rnd.', 'row 3: *[k{2} p{2}]→end'],
    ['Row 3: *k2, p2; rep from * all round.', 'row 3: *[k{2} p{2}]→end'],
    ['Row 3: *k2, p2; rep from * across all sts.', 'row 3: *[k{2} p{2}]→end'],
    ['Row 3: *k2, p2; repeat from * to last 3 sts, k2, p1.', 'row 3: *[k{2} p{2}]→last 3 k{2} p{1}'],
    ['Row 3: *K5, yo; rep from *, ending last rep k5.', 'row 3: *[k{5} yo]→end lastRepeat:k{5}'],
    ['Row 3: *K5, yo; rep from *, ending last rep with k3.', 'row 3: *[k{5} yo]→end lastRepeat:k{3}'],
    ['Row 3: *K5, yo; rep from * to end, omitting last yo.', 'row 3: *[k{5} yo]→end omitting:yo'],
    ['Row 3: *K5, yo; rep from *, end with k5.', 'row 3: *[k{5} yo]→end then:k{5}'],
    ['Row 3: *K5, yo; rep from *, ends k5.', 'row 3: *[k{5} yo]→end then:k{5}'],
    ['Row 3: *K5, yo; rep from * once more, k to end.', 'row 3: *[k{5} yo]→1× more k→end'],
    ['Row 3: Sl 1 purlwise, *k1, p1; rep from * to last st, k1.', 'row 3: sl1p{1} *[k{1} p{1}]→last 1 k{1}'],
  ],
  brackets: [
    ['Row 3: (k2, p2) 4.', 'row 3: [k{2} p{2}]→4×'],
    ['Row 3: [k2, p2] x 4, k1.', 'row 3: [k{2} p{2}]→4× k{1}'],
    ['Row 3: [k2, p2] × 4 (5, 6), k1.', 'row 3: [k{2} p{2}]→4 (5, 6)× k{1}'],
    ['Row 3: (k2, p2) 6 (8, 8) times, k2 (3, 4).', 'row 3: [k{2} p{2}]→6 (8, 8)× k{2 (3, 4)}'],
    ['Row 3: (k2, p2) 0 (1, 2) times.', 'row 3: [k{2} p{2}]→0 (1, 2)×'],
    ['Row 3: [k2, p2](3), k1', 'row 3: [k{2} p{2}]→3× k{1}'],
    ['Row 3: (k2, p2) 3 times more, k1.', 'row 3: [k{2} p{2}]→3× more k{1}'],
    ['Row 3: [k1, p1], k2, rep bet [ ] 3 times', 'row 3: [k{1} p{1}]→3× k{2}'],
    ['Row 4: Rep Row 2.', 'row 4: rep rows [numbers 2]'],
    ['Row 5: P2, [C6B, p2] to end.', 'row 5: p{2} [CNB{6} p{2}]→end'],
    ['Row 3: K1, k2tog, [yo, k2tog] to last st, k1.', 'row 3: k{1} kNtog{2} [yo kNtog{2}]→last 1 k{1}'],
    ['Row 3: [K4, k2tog] 5 (6, 7) times, k2 (0, 1).', 'row 3: [k{4} kNtog{2}]→5 (6, 7)× k{2 (0, 1)}'],
    ['Row 3: (K2, p2) x 3, k2.', 'row 3: [k{2} p{2}]→3× k{2}'],
    ['Row 3: (k1, p1) twice more, k2.', 'row 3: [k{1} p{1}]→2× more k{2}'],
    ['Row 3: [(k1, p1) twice, k2] 3 times.', 'row 3: [[k{1} p{1}]→2× k{2}]→3×'],
    ['Row 3: {k1, p1} 4 times.', 'row 3: [k{1} p{1}]→4×'],
  ],
  'lists without brackets, and runs': [
    ['Row 3: k2, p2 to end.', 'row 3: list[k{2} p{2}]→end'],
    ['Row 3: K4, ssk around.', 'row 3: list[k{4} ssk]→end'],
    ['Row 3: k2, k2tog to last 2 sts, k2.', 'row 3: list of which last[k{2} kNtog{2}]→last 2 k{2}'],
    ['Row 3: K4, ssk; rep around.', 'row 3: list[k{4} ssk]→end'],
    ['Row 3: K2, p2; rep to end.', 'row 3: list[k{2} p{2}]→end'],
    ['Row 3: knit the knits and purl the purls.', 'row 3: as they appear→end'],
    ['Row 4: work sts as they appear.', 'row 4: as they appear→end'],
    ['Row 4: Rib as set.', 'row 4: rib→end'],
    ['Row 4: Work as established.', 'row 4: patt→end'],
    ['Row 2 and all WS rows: Purl.', 'row 2 and all WS: p→end'],
    ['Row 2 and all even-numbered rows: P to end.', 'row 2 and all even: p→end'],
    ['Row 2 and every alt row: Purl.', 'row 2 and all alternate: p→end'],
    ['Row 7: Knit, dropping yos.', 'row 7: k→end resolve drops'],
    ['Row 7: K, dropping extra wraps.', 'row 7: k→end resolve drops'],
    ['Row 7: Knit to end, dropping the extra loops.', 'row 7: k→end resolve drops'],
    ['Row 5: P2, 3/3 LC, p2; rep from beg to end.', 'row 5: list[p{2} N/M LC{3}/3 p{2}]→end'],
    ['Row 5: k2, inc 1, k to last 3 sts, inc 1, k2.', 'row 5: k{2} kfb(or M1) k→last 3 kfb(or M1) k{2}'],
    ['Row 5: k2, dec 1, k to last 4 sts, dec 1, k2.', 'row 5: k{2} k2tog k→last 4 k2tog k{2}'],
    ['Row 3: Knit, letting the extra loops fall.', 'row 3: k→end resolve drops'],
    ['Row 3: K1, p1, rep to end.', 'row 3: list[k{1} p{1}]→end'],
    ['Row 3: K1, p1 across.', 'row 3: list[k{1} p{1}]→end'],
    ['Row 3: k3, p3 to last 3 sts, k3.', 'row 3: list of which last[k{3} p{3}]→last 3 k{3}'],
    ['Row 3: k2, p2 to marker, sm, k to end.', 'row 3: list[k{2} p{2}]→to marker marker slip k→end'],
    ['Row 3: knit the knits and purl the purls to last 2 sts, k2.', 'row 3: as they appear→last 2 k{2}'],
    ['Row 3: k the k sts and p the p sts.', 'row 3: as they appear→end'],
    ['Row 3: work all sts as they appear.', 'row 3: as they appear→end'],
    ['Row 3: K2, work sts as they appear to last 2 sts, k2.', 'row 3: k{2} as they appear→last 2 k{2}'],
    ['Row 3: Patt to last 3 sts, k3.', 'row 3: patt→last 3 k{3}'],
    ['Row 3: Work in pattern as established to marker, sm, k to end.', 'row 3: patt→to marker marker slip k→end'],
    ['Row 3: Rib 12, k2tog, rib to end.', 'row 3: rib→over 12 kNtog{2} rib→end'],
    ['Row 3: k to end.', 'row 3: k→end'],
    ['Row 3: Purl across.', 'row 3: p→end'],
    ['Row 3: K all sts.', 'row 3: k→end'],
    ['Row 3: k around.', 'row 3: k→end'],
    ['Row 3: purl', 'row 3: p→end'],
    ['Row 3: Sl 1, k to last st, sl 1 wyif.', 'row 3: sl{1} k→last 1 sl wyif{1}'],
  ],
};

describe('Repeats inside a row', () => {
  for (const [family, table] of Object.entries(rows)) {
    describe(family, () => {
      test.each(table)('%s', (text, expected) => {
        expect(read(text, { sizes })).toBe(expected);
      });
    });
  }
});
