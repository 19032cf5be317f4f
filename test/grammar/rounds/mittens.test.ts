/** Thumb gussets, stitches on hold, fingers. */
import { expect, test } from 'vitest';
import { read } from '../outline.ts';

const sizes = ['S', 'M', 'L'];

const rows: readonly (readonly [text: string, tree: string])[] = [
  ['Set-up rnd: K1, pm, M1R, k1, M1L, pm, k to end.', 'round set-up: k{1} marker place M1R k{1} M1L marker place k→end'],
  ['Rnd 1: K15, pm, M1L, k1, M1R, pm, k16. 34 sts.', 'round 1: k{15} marker place M1L k{1} M1R marker place k{16} =34 total'],
  [
    "Inc rnd: K to m, sm, M1L, k to m, M1R, sm, k to end (2 sts inc'd).",
    'round inc: k→to marker marker slip M1L k→to marker M1R marker slip k→end =2 increased',
  ],
  ['M1L, k to m, M1R, sm, knit to end.', 'row: M1L k→to marker M1R marker slip k→end'],
  [
    'Rep Inc rnd every 3rd rnd 5 (6, 6) times more. 13 (15, 15) thumb sts.',
    'rep rows [name inc] {every n=5 (6, 6) k=3 more} =13 (15, 15) part (thumb)',
  ],
  ['Rep Inc rnd on every foll 3rd rnd until there are 15 sts between markers.', 'rep rows [name inc] {every k=3 until 15}'],
  ['Inc as set on every foll 4th rnd 4 (5, 5) times more.', 'rep rows [shaping inc] {every n=4 (5, 5) k=4 more}'],
  [
    'Next rnd: K to m, remove m, place next 15 sts on waste yarn, remove m, CO 1 st over gap, k to end. 38 sts.',
    'round next: k→to marker marker remove hold next 15 on waste yarn marker remove CO 1 here over gaps k→end =38 total',
  ],
  [
    'Next rnd: k to m, sl 13 (15, 17) thumb sts to holder, using backward loop cast-on CO 3, k to end.',
    'round next: k→to marker hold next 13 (15, 17) on holder change yarn CO 3 here k→end',
  ],
  ['Place next 17 sts on a stitch holder for thumb.', 'hold next 17 on stitch holder for thumb'],
  ['K8 with waste yarn, sl back, k again.', 'row: k{8} change yarn ret{all:0} k→these'],
  [
    'Knit next 7 sts with waste yarn, slip them back to left needle and knit them again with main yarn.',
    'row: k{7} change yarn ret{all:0} k→these change yarn',
  ],
  ['Thumb: K15 held sts, pick up and k 3 sts over gap (18 sts).', 'declare title Thumb | row: take up 15 pick up 3 =18 total'],
  [
    'Place held 15 (15, 17) sts on needles; rejoin yarn; k across; pick up and k 3 sts along CO edge.',
    'row: take up 15 (15, 17) unworked join rejoin k→end pick up 3',
  ],
  ['Return 13 held sts to needles.', 'take up 13 unworked'],
  ['Pick up 1 st in each corner (18 sts).', 'row: pick up 1 per 1 st =18 total'],
  ['*K1, k2tog; rep from * around (12).', 'row: *[k{1} kNtog{2}]→end =12 total'],
  ['K2tog around. 6 sts.', 'row: kNtog→end =6 total'],
  ['Rnd 1: [K1, ssk, k to 3 sts before side marker, k2tog, k1] twice.', 'round 1: [k{1} ssk k→3 before side marker kNtog{2} k{1}]→2×'],
  [
    'Rep Rnd 1 every other rnd until 24 sts rem, then every rnd until 8 sts rem.',
    'rep rows [numbers 1] {every k=2 until 24; every k=1 until 8}',
  ],
  ['Left mitten: Work as right to thumb gusset.', 'declare title Left mitten | as piece right to thumb gusset'],
  [
    'Finger 1: K6, CO 2, place next 34 sts on holder, k6, join.',
    'declare title Finger 1 | row: k{6} CO 2 here hold next 34 on holder k{6} join round',
  ],
  ['Complete to match right mitten, reversing shaping.', 'as piece right mitten reversing'],
  ['Cut yarn, thread through rem 8 sts, pull up and fasten off.', 'change break | join thread 8 | join fastenOff'],
  ['BO 13 thumb sts, k to end.', 'row: BO 13 k→end'],
  ['CO 15 over BO sts.', 'CO 15 here'],
];

test.each(rows)('%s', (text, tree) => {
  expect(read(text, { sizes })).toBe(tree);
});
