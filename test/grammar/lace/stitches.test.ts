/**
 * Stitches by name and in words; a name with several readings keeps them all.
 */
import { describe, expect, test } from 'vitest';
import { read } from '../outline.ts';

const sizes = ['S', 'M', 'L'];

const rows: Readonly<Record<string, readonly (readonly [string, string])[]>> = {
  'into one stitch, double yarn overs': [
    ['Row 1: K1, (k1, p1, k1) all into next st, k2.', 'row 1: k{1} (k{1} p{1} k{1})into stitch k{2}'],
    ['Row 1: k1, yo, k1 in next st, k2.', 'row 1: (k{1} yo k{1})into stitch k{2}'],
    ['Row 1: k4, k1, yo, k1 all into next st, k4.', 'row 1: k{4} (k{1} yo k{1})into stitch k{4}'],
    ['Row 1: k3, [k1, yo] twice, k1 into same st, k3.', 'row 1: k{3} ([k{1} yo]→2× k{1})into stitch k{3}'],
    ['Row 1: k3, (k1, p1) twice, k1 in next st, k3.', 'row 1: k{3} ([k{1} p{1}]→2× k{1})into stitch k{3}'],
    ['Row 1: into next st work (k1, p1, k1), k3.', 'row 1: (k{1} p{1} k{1})into stitch k{3}'],
    ['Row 1: k2, work (k1, yo, k1) all in next st, k2.', 'row 1: k{2} (k{1} yo k{1})into stitch k{2}'],
    ['Row 1: k2, in next st (k1, yo, k1), k2.', 'row 1: k{2} (k{1} yo k{1})into stitch k{2}'],
    ['Row 8: Purl, working (p1, k1) into each double yo.', 'row 8: p→end (p{1} k{1})into doubleYarnOver everywhere'],
    ['Row 8: Knit, working (k1, p1) into each double yo.', 'row 8: k→end (k{1} p{1})into doubleYarnOver everywhere'],
    ['Row 8: P across, working (p1, k1) into each double yo of previous row.', 'row 8: p→end (p{1} k{1})into doubleYarnOver everywhere'],
    ['Row 3: k1, yo, k1, yo, k1 in next st, k3.', 'row 3: (k{1} yo k{1} yo k{1})into stitch k{3}'],
    ['Row 3: p2, k1, p1, k1 all in next st, p2.', 'row 3: p{2} (k{1} p{1} k{1})into stitch p{2}'],
    ['Row 3: p1, k1, yo, k1 in next st, p1.', 'row 3: p{1} (k{1} yo k{1})into stitch p{1}'],
    ['Row 3: k2, (p1, yo, p1) in next st, k2.', 'row 3: k{2} (p{1} yo p{1})into stitch k{2}'],
    ['Row 3: k2, (k1, yo, k1) into the same stitch, k2.', 'row 3: k{2} (k{1} yo k{1})into stitch k{2}'],
    ['Row 3: k2, (k1, p1) into yo, k2.', 'row 3: k{2} (k{1} p{1})into doubleYarnOver k{2}'],
    ['Row 3: k2, k1 into double yo, dropping extra wrap, k2.', 'row 3: k{2} (k{1})into doubleYarnOver dropping k{2}'],
    ['Row 3: *(k1, p1) into double yo, k2tog; rep from * to end.', 'row 3: *[(k{1} p{1})into doubleYarnOver kNtog{2}]→end'],
    ['Row 3: K, working (k1, p1) into each double yo.', 'row 3: k→end (k{1} p{1})into doubleYarnOver everywhere'],
    ['Row 3: k2, (k3tog, yo, k3tog) into next 3 sts, k2.', 'row 3: k{2} (kNtog{3} yo kNtog{3})into stitch 3 k{2}'],
  ],
  'names with several readings: the likeliest first': [
    [
      'Row 5: K3, C4F, p2, c4b, 2/1 LPC, 1/1 RC, T3B, Cr3L, 2/1/2 LC, 3/3RC.',
      'row 5: k{3} CNF{4} p{2} CNB{4} N/M LPC{2}/1 N/M RC{1}/1 N/M RPC{2}/1(or N/M RPC{1}/2) N/M LPC{2}/1(or N/M LPC{1}/2) N/M RC{3}/3',
    ],
    [
      'Row 5: k3, cable 6 back, T5F, C3F, k3.',
      'row 5: k{3} CNB{6} N/M LPC{3}/2(or N/M LPC{2}/3, N/M/N LPC{2}/1) N/M LC{2}/1(or N/M LC{1}/2) k{3}',
    ],
    ['Row 5: k2, m1, k2, M1L, k1, M1R, m1p, make 1, k1.', 'row 5: k{2} M1 k{2} M1L k{1} M1R M1P M1 k{1}'],
    ['Row 5: inc in next st, k3, inc, k3, inc 1, k2.', 'row 5: kfb k{3} kfb(or M1) k{3} kfb(or M1) k{2}'],
    [
      'Row 5: k2, inc 2, k3, dec 2, k3.',
      'row 5: k{2} inc (unspecified){2}(or kfb×2, (k1, p1, k1) in st) k{3} dec (unspecified){2}(or k2tog×2, dbl dec (unspecified)) k{3}',
    ],
    ['Row 5: k2, inc 1 st in next st, k3.', 'row 5: k{2} kfb k{3}'],
    ['Row 5: k2, yfwd, k2tog, yrn, p2tog, yon, k1, yfrn, p1.', 'row 5: k{2} yfwd(or yf (move)) kNtog{2} yrn pNtog{2} yon k{1} yfrn p{1}'],
    ['Row 5: k2, yf, sl 1, yb, k2.', 'row 5: k{2} yf (move)(or yfwd) sl{1} yb k{2}'],
    ['Row 5: k2, yfwd, sl 1, k1, psso, k2.', 'row 5: k{2} yfwd(or yf (move)) sl1-kN-psso{1} k{2}'],
    [
      'Row 5: k2, k2b, p1b, k4b, k1b.',
      'row 5: k{2} k tbl{2}(or k1b{2}, k2tog tbl) p tbl{1} k tbl{4}(or k1b{4}, k1 N rows below{4}) k tbl{1}',
    ],
    ['Row 3: sl 2, k1, psso, k3.', 'row 3: sl{2} k{1} pull over 2 (or 1) k{3}'],
    [
      'Row 3: p2, Cr4L, T4B, C5F, C5B, p2.',
      'row 3: p{2} N/M LPC{2}/2(or N/M LPC{3}/1) N/M RPC{2}/2(or N/M RPC{3}/1) N/M LC{3}/2(or N/M LC{2}/3, N/M/N LC{2}/1) N/M RC{3}/2(or N/M RC{2}/3, N/M/N RC{2}/1) p{2}',
    ],
    ['Row 3: brk, sl1yo, brp, yf, brk2tog, brLsl.', 'row 3: brk sl1yo brp yfwd(or yf (move)) brk2tog brLsl dec'],
    ['Row 3: M1L, k2, m1r, k2, M1P, k2, LLI, k1, RLI.', 'row 3: M1L k{2} M1R k{2} M1P k{2} LLI(or k1 and LLI) k{1} RLI(or RLI and k1)'],
    ['Row 3: inc twice, k2, dec twice.', 'row 3: kfb×2(or M1) k{2} k2tog×2'],
    ['Row 3: inc 1 purlwise, p4.', 'row 3: pfb<purlwise> p{4}'],
    ['Row 3: k3, inc in each of next 4 sts, k3.', 'row 3: k{3} kfb×4 k{3}'],
    [
      'Row 3: k3, M3, k3, make 2, k3.',
      'row 3: k{3} MN{3}(or yo N times{3}, inc 1-to-N{3}) k{3} MN{2}(or yo N times{2}, inc 1-to-N{2}) k{3}',
    ],
    ['Row 3: k3, yf, p3.', 'row 3: k{3} yf (move)(or yfwd) p{3}'],
  ],
  'names, manners, cables told in words': [
    ['Row 3: k2, work bracketed sts 3 times', 'row 3: k{2} UNREAD "work bracketed sts 3 times"'],
    ['Row 4: As Row 2.', 'row 4: as row rows 2'],
    ['Rows 4, 6 and 8: As Row 2.', 'row 4,6,8: as row rows 2'],
    ['Row 8: p2, drop both, p2.', 'row 8: p{2} drop yo×2 p{2}'],
    ['Row 8: k3, yo 3 times, k3.', 'row 8: k{3} yo N times{3} k{3}'],
    ['Row 8: k3, yrn twice, k3.', 'row 8: k{3} yo N times{2} k{3}'],
    ['Row 8: k3, 2yo, k3.', 'row 8: k{3} yo N times{2} k{3}'],
    ['Row 8: k3, yo, yo, k3.', 'row 8: k{3} yo N times{2} k{3}'],
    ['Row 5: P4tog, p3.', 'row 5: pNtog{4} p{3}'],
    ['Row 5: sl 1, k2tog, psso, yo.', 'row 5: sk2p yo'],
    ['Row 5: sl 1 knitwise, k2tog, pass slipped stitch over, k3.', 'row 5: sl1k{1} kNtog{2} pull over 1 k{3}'],
    ['Row 5: slip 1, k2tog, pass the slipped st over, k1.', 'row 5: sl{1} kNtog{2} pull over 1 k{1}'],
    ['Row 5: sl 2 tog kwise, k1, pass 2 slipped sts over, k2.', 'row 5: sl 2 tog kwise k{1} pull over 2 k{2}'],
    ['Row 5: k3 tbl, p2 tbl, sl1 wyif, sl 1 pwise wyib, sl2 kwise.', 'row 5: k tbl{3} p tbl{2} sl wyif{1} sl wyib{1} sl1k{2}'],
    ['Row 5: k 3, p 3, k 2 tog, sl 1.', 'row 5: k{3} p{3} kNtog{2} sl{1}'],
    ['Row 5: 5k, 3p.', 'row 5: k{5} p{3}'],
    ['Row 5: k2, tog, k1.', 'row 5: kNtog{2} k{1}'],
    ['Row 5: k2 then p2 and k2, and then p3.', 'row 5: k{2} p{2} k{2} p{3}'],
    ['Row 5: k3, cable 6 front, k3.', 'row 5: k{3} CNF{6} k{3}'],
    ['Row 5: k3, sl next 3 sts to cn and hold in front, k3, k3 from cn, k3.', 'row 5: k{3} sl to cn{3}<front> k{3} work from cn{3} k{3}'],
    ['Row 5: k3, sl next 3 sts to cn, hold in back, k3, then k3 from cn, k3.', 'row 5: k{3} sl to cn{3}<back> k{3} work from cn{3} k{3}'],
    ['Row 5: yo, k2tog, yo, ssk, yo', 'row 5: yo kNtog{2} yo ssk yo'],
    ['Row 5: sl1yo, brk1, brp, brk2tog, brkyobrk.', 'row 5: sl1yo brk brp brk2tog brkyobrk'],
    ['Row 5: k3, drop next st, k3.', 'row 5: k{3} drop st k{3}'],
    ['Row 5: MB, k3, make bobble, bobble, k2.', 'row 5: MB k{3} MB MB k{2}'],
    ['Row 5: k2, florp, k2.', 'row 5: k{2} UNREAD "florp" k{2}'],
    ['Row 5: k2, 5-st nupp, k2.', 'row 5: k{2} nupp (make){5} k{2}'],
    ['Row 5: k2, zq3, k2.', 'row 5: k{2} UNREAD "zq3" k{2}'],
    ['Row 3: k2, drop the yo, k2.', 'row 3: k{2} drop yo k{2}'],
    ['Row 3: k2, k1 elongated, p1 wrapping yarn twice, k2.', 'row 3: k{2} k1 wrapping N{2} p1 wrapping N{2} k{2}'],
    ['Row 3: k2, p1 tbl, k2tog tbl twice, k2.', 'row 3: k{2} p tbl{1} kNtog tbl{2}×2 k{2}'],
    ['Row 3: P2tog tbl, ssp, p3tog, sssk, k3tog tbl, s2kp.', 'row 3: pNtog tbl{2} ssp pNtog{3} sssk kNtog tbl{3} s2kp'],
    ['Row 3: k2 tog, p 2 tog, K2TOG, Ssk, SK2P.', 'row 3: kNtog{2} pNtog{2} kNtog{2} ssk sk2p'],
    ['Row 3: knit 2 sts together, purl 2 stitches together, knit three together.', 'row 3: k2tog pNtog{2} kNtog{3}'],
    ['Row 3: k5, s2kp2, k5; skpo, k5.', 'row 3: k{5} s2kp k{5} skp k{5}'],
    ['Row 3: slip 2 sts together knitwise, k1, pass 2 slipped sts over, k4.', 'row 3: sl 2 tog kwise k{1} pull over 2 k{4}'],
    ['Row 3: sl 1 kwise, k2tog, psso, k3.', 'row 3: sl1k{1} kNtog{2} pull over 1 k{3}'],
    ['Row 3: sl1, k3, psso, k2.', 'row 3: sl1-kN-psso{3} k{2}'],
    ['Row 3: yo, k2, pass yo over, k3.', 'row 3: yo k{2} pyo k{3}'],
    ['Row 3: k2, lift 2nd st over first, k3.', 'row 3: k{2} pnso k{3}'],
    [
      'Row 3: k3, sl next 2 sts to cable needle and hold at back, k2, p2 from cable needle, k3.',
      'row 3: k{3} sl to cn{2}<back> k{2} work from cn{2}<p> k{3}',
    ],
    [
      'Row 3: k3, slip 2 sts onto cn, hold in front of work, p1, k2 from cn, k3.',
      'row 3: k{3} sl to cn{2}<front> p{1} work from cn{2} k{3}',
    ],
    [
      'Row 3: k3, place next 2 sts on cn and hold at front, k2, knit the 2 sts from cn, k3.',
      'row 3: k{3} sl to cn{2}<front> k{2} work from cn{2}<k> k{3}',
    ],
    ['Row 3: P2, C8B, p2, C8F, p2, 4/4 RC.', 'row 3: p{2} CNB{8} p{2} CNF{8} p{2} N/M RC{4}/4'],
    ['Row 3: P2, 3/1 LPC, p4, 3/1 RPC, p2, 2/1/2 RPC.', 'row 3: p{2} N/M LPC{3}/1 p{4} N/M RPC{3}/1 p{2} 2/1/2 RPC'],
    ['Row 3: RT, LT, Tw2L, 1/1 LPC, 1/1 RPC.', 'row 3: RT LT LT N/M LPC{1}/1 N/M RPC{1}/1'],
    ['Row 3: K2, MB, p2, 7-st nupp, k2.', 'row 3: k{2} MB p{2} nupp (make){7} k{2}'],
    ['Row 3: p2, p5tog, p2.', 'row 3: p{2} pNtog{5} p{2}'],
    ['Row 3: p3, yrn, p3, yon, k3.', 'row 3: p{3} yrn p{3} yon k{3}'],
    ['Row 3: k1, wyif sl 1 pwise, k1.', 'row 3: k{1} yf (move) sl1p{1} k{1}'],
    ['Row 3: k1, bring yarn to front, sl 1, take yarn to back, k1.', 'row 3: k{1} yf (move) sl{1} yb k{1}'],
    ['Row 3: k3, k 2 tog tbl, yo, sl 1-k2tog-psso, k3.', 'row 3: k{3} kNtog tbl{2} yo sk2p k{3}'],
    ['Row 3: Sl1 wyif, k2, sl 1 wyib, k2.', 'row 3: sl wyif{1} k{2} sl wyib{1} k{2}'],
  ],
};

describe('Stitches in a row', () => {
  for (const [family, table] of Object.entries(rows)) {
    describe(family, () => {
      test.each(table)('%s', (text, expected) => {
        expect(read(text, { sizes })).toBe(expected);
      });
    });
  }
});
