/** Stitches as lists of abbreviations explain them: what each takes and makes. Common practice, no source. */
import { describe, expect, test } from 'vitest';
import { readDefinition } from '../../../grammar/definition.ts';
import { vocabularyOf } from '../../../grammar/vocabulary.ts';

const vocabulary = vocabularyOf({});

/** The term, its meaning, the stitches taken and made. */
type Defined = readonly [string, string, number, number];

const decreases: readonly Defined[] = [
  ['k2tog', 'Insert right needle knitwise into next 2 sts and knit them as one', 2, 1],
  ['k2tog', 'K2 together', 2, 1],
  ['k2tog', 'knit two stitches together (right-leaning decrease)', 2, 1],
  ['ssk', 'Slip two sts one by one as if to knit. Insert tip of left needle into front loops of these sts and knit them together.', 2, 1],
  ['ssk', 'sl1, sl1, knit both together tbl', 2, 1],
  ['skpo', 'slip one, knit one, pass slip stitch over', 2, 1],
  ['skp', 's1, k1, psso', 2, 1],
  ['n', 'narrow (knit 2 sts together)', 2, 1],
  ['n', 'narrow, i.e. k 2 tog', 2, 1],
  ['p2togb', 'purl 2 sts together through back loops', 2, 1],
  ['p3togtbl', 'p3 sts tog tbl', 3, 1],
  ['sk2po', 'Slip 1 stitch knitwise, knit the next 2 stitches together, then pass the slipped stitch over the stitch just made', 3, 1],
  ['CDD', 'Centred double decrease: slip next 2 sts together knitwise, knit next st, pass both slipped sts over knit st', 3, 1],
  ['k3tog tbl', 'knit three stitches together through their back loops', 3, 1],
  ['dec 4', 'slip 3 sts, k2tog, pass the 3 slipped sts over one at a time', 5, 1],
  ['dec4', 'sl 3, k2tog, pass 3 slipped sts one at a time over the k2tog', 5, 1],
  ['dec4', 'sl 2 kwise, k3tog, pass 2 slipped sts over', 5, 1],
  ['k5tog', 'knit 5 stitches together', 5, 1],
  ['K2togL', 'knit 2 together, leaning left: slip 1, k1, pass sl st over', 2, 1],
];

const increases: readonly Defined[] = [
  ['kfb', 'Increase by knitting into front then back of same stitch', 1, 2],
  ['inc1', 'increase one stitch by working into front and back of it', 1, 2],
  ['M1', 'pick up loop lying before next st and k tbl', 0, 1],
  ['M1', 'Pick up the horizontal strand lying between stitch just worked and next stitch and knit into back of it', 0, 1],
  ['M1L', 'With left needle tip, lift strand between needles from front to back; knit the lifted loop through the back', 0, 1],
  ['M1R', 'From the back, lift the horizontal bar with left needle, knit through front', 0, 1],
  ['M1P', 'Purl into the back of the bar between the last st and next st', 0, 1],
  ['M3', '[k1, p1, k1] all into next st', 1, 3],
  ['inc 2', 'knit into front, back and front again of same st', 1, 3],
  ['RLI', 'Knit into the right shoulder of the stitch below the next stitch, then knit the next stitch', 1, 2],
  ['make 5', 'k1, (yo, k1) twice all in same stitch', 1, 5],
  ['krl', 'knit right loop: lift right loop of st below next st onto left needle and knit it', 0, 1],
  ['krl', 'knit into right loop of st below next st', 0, 1],
  ['kll', 'insert left needle into left loop of st 2 rows below last st on right needle and knit it', 0, 1],
  ['O', 'over (make a loop by bringing the yarn forward)', 0, 1],
  ['yrn', 'wrap yarn round needle to make a stitch', 0, 1],
  ['yo2', 'wrap yarn twice around needle', 0, 2],
  ['dyo', 'double yarn over', 0, 2],
];

const knots: readonly Defined[] = [
  [
    'MB',
    'Make bobble. K into front, back, front, back and front of next st, turn, p5, turn, k5, turn, p2tog, p1, p2tog, turn, sl 1, k2tog, psso.',
    1,
    1,
  ],
  ['mb', '(K1, yo, k1, yo, k1) into next st. Turn. P5. Turn. K5. Pass 4 sts, one at a time, over the first.', 1, 1],
  ['MB', 'knit into front and back of next st twice, then into front again (5 sts), turn, p5, turn, k5tog tbl', 1, 1],
  ['bobble', 'k1, p1, k1, p1 into next st, turn and p4, turn and k4, then lift 2nd, 3rd and 4th sts over 1st', 1, 1],
  ['Bobble', '[p1, k1] twice in next st, turn, k4, turn, p4tog', 1, 1],
  ['MB', 'Make bobble: [k1, p1, k1] in next st. Turn and purl 3. Turn and k3tog.', 1, 1],
  ['sb', 'small bobble: (k1, p1, k1) in next st, pass first 2 sts over last st', 1, 1],
  ['MK', 'make knot: (k1, p1, k1, p1) in next st, pass 2nd, 3rd and 4th sts over first', 1, 1],
  ['G3', 'gather 3: k3tog leaving sts on left needle, yo, k3tog again into same sts', 3, 3],
  ['gather', '(k3tog, yo, k3tog) in same 3 sts', 3, 3],
  ['MS', 'make star: P3tog leaving sts on left needle, yrn, p same 3 sts tog again', 3, 3],
  ['Star', 'purl 3 together but do not drop sts from needle, yarn round needle, purl same 3 sts together again', 3, 3],
  ['CL4', 'cluster 4: k4, slip these 4 sts to cn, wrap yarn twice around them, return to right needle', 4, 4],
  ['B2', 'bind 2: yo, k2, pass yo over both sts', 2, 2],
  ['MC', 'mock cable: slip 1, knit 2, pass slipped stitch over both knit sts', 3, 2],
  ['mock cable', 'slip 1, k1, yo, k1, pass slipped st over all 3 sts', 3, 3],
];

const crossings: readonly Defined[] = [
  ['mock cable', 'knit 2 together but leave on needle, knit first st again, slip both off', 2, 2],
  ['mcr', 'k third st on left needle, then first, then second, slip all three off', 3, 3],
  ['Tw2', 'twist 2: knit second st passing in front of first, then knit first st, slip both from needle tog', 2, 2],
  ['T2B', 'Purl 2nd st from behind, then knit first st, and slip both sts off', 2, 2],
  ['Cr2L', 'knit the second stitch through back loop, then knit the first through front, drop both', 2, 2],
  ['RT', 'K2tog, do not remove sts from left needle; insert right needle between these 2 sts and knit first st again; slip both off', 2, 2],
  ['C4B', 'next 2 sts on cable needle, leave at back, k2, then k2 from cable needle', 4, 4],
  ['C4F', 'place next 2 sts on cn & leave at front. K2. Then k2 from cn.', 4, 4],
  ['Cr3R', 'slip next st on to cable needle and leave at back of work, knit 2, then purl st from cable needle', 3, 3],
  ['3/1 LPC', 'Sl 3 sts to CN, hold in front; p1; k3 from CN', 4, 4],
];

const plain: readonly Defined[] = [
  ['k1b', 'knit into the stitch below next st', 1, 1],
  ['k1 below', 'insert needle into centre of st below next st on left needle, knit, and drop st above', 1, 1],
  ['sl1wyif', 'slip one stitch with the yarn at the front', 1, 1],
  ['ps1', 'slip 1 purlwise', 1, 1],
  ['kw2', 'knit wrapping yarn twice round needle', 1, 1],
];

describe('what a definition takes and makes, as people word it', () => {
  test.each([...decreases, ...increases, ...knots, ...crossings, ...plain])('%s: %s', (term, meaning, takes, makes) => {
    const found = readDefinition(term, meaning, vocabulary);
    expect([found?.entry.takes, found?.entry.makes, found?.certain]).toEqual([takes, makes, true]);
  });
});
