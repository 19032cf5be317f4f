/** Crowns, wedges and closing the top. */
import { expect, test } from 'vitest';
import { read } from '../outline.ts';

const sizes = ['S', 'M', 'L'];

const rows: readonly (readonly [text: string, tree: string])[] = [
  ['Inc rnd: *K7, M1; rep from * around. (112 sts)', 'round inc: *[k{7} M1]→end =112 total'],
  ['Inc rnd: [k6 (7, 8), M1] 12 times. 84 (96, 108) sts.', 'round inc: [k{6 (7, 8)} M1]→12× =84 (96, 108) total'],
  ['Knit 1 rnd, inc 8 (10, 10) sts evenly. 96 (106, 114) sts.', 'plain 1 rounds knit (evenly inc 8 (10, 10)) =96 (106, 114) total'],
  ['Dec rnd: *k6, k2tog; rep from * around – 98 (105, 112) sts.', 'round dec: *[k{6} kNtog{2}]→end =98 (105, 112) total'],
  ['Rnd 1: *K9, k2tog; rep from * to end of rnd. 80 sts.', 'round 1: *[k{9} kNtog{2}]→end =80 total'],
  ['Rnd 2 and every alt rnd: Knit.', 'round 2 and all alternate: k→end'],
  ['Rnd 3: *K8, k2tog; rep from * around (72 sts).', 'round 3: *[k{8} kNtog{2}]→end =72 total'],
  ['Rnd 5: (k7, k2tog) 8 times [64].', 'round 5: [k{7} kNtog{2}]→8× =64 total'],
  ['Rnd 7: *k6, ssk* around (56).', 'round 7: *[k{6} ssk]→end =56 total'],
  ['Dec rnd: [k to 2 sts before m, k2tog, sm] 6 times.', 'round dec: [k→2 before marker kNtog{2} marker slip]→6×'],
  [
    'Dec rnd: *k to 3 sts before marker, k2tog, k1, sm, k1, ssk; rep from * around.',
    'round dec: *[k→3 before marker kNtog{2} k{1} marker slip k{1} ssk]→end',
  ],
  [
    'Rep Dec rnd every other rnd until 42 sts rem, then every rnd until 6 sts rem.',
    'rep rows [name dec] {every k=2 until 42; every k=1 until 6}',
  ],
  ['Decrease Round 4: K5, ssk around. 60 sts.', 'round decrease 4: list[k{5} ssk]→end =60 total'],
  ['K2tog around. 9 (10, 11) sts.', 'row: kNtog→end =9 (10, 11) total'],
  ['K2tog around; k1 rnd; k2tog around. 8 sts.', 'row: kNtog→end | plain 1 rounds knit | row: kNtog→end =8 total'],
  ['Next rnd: ssk to end of rnd.', 'round next: ssk→end'],
  ['Rnd 9: kfb around (24).', 'round 9: kfb→end =24 total'],
  ['Rnd 11: inc in every st (48 sts).', 'round 11: kfb→end =48 total'],
  [
    'CO 6, join. Rnd 1: kfb around (12). Rnd 3: *k1, kfb; rep from * (18). Rnd 5: *k2, kfb* (24).',
    'CO 6 here | join round | round 1: kfb→end =12 total | round 3: *[k{1} kfb]→end =18 total | round 5: *[k{2} kfb]→end =24 total',
  ],
  ['Rnd 21: *k5, s2kp, k5; rep from * around. 77 sts.', 'round 21: *[k{5} s2kp k{5}]→end =77 total'],
  ['[K2tog, p2tog] around – 36 sts.', 'row: [kNtog{2} pNtog{2}]→end =36 total'],
  ['Row 1 (RS): K1, *k7, k2tog; rep from * to last st, k1.', 'row 1 (RS): k{1} *[k{7} kNtog{2}]→last 1 k{1}'],
  ['K to 1 st before m, remove m, cdd, replace m.', 'row: k→1 before marker marker remove s2kp marker replace'],
  ['Cont to dec in this way, working 1 st less between decs, until 10 sts rem.', 'and so on 1 fewer until 10 sts'],
  ['Break yarn, thread through rem 9 sts, pull up and fasten off.', 'change break | join thread 9 | join fastenOff'],
  [
    'Cut yarn, leaving a 25 cm tail. Thread tail through rem 8 (9, 10) sts, pull tight and fasten off.',
    'change break | change yarn | join thread 8 (9, 10) | join fastenOff',
  ],
  ['Cut yarn and thread tail through rem 6 sts; pull tight.', 'change break | join thread 6'],
  ['Break yarn; draw through rem sts twice.', 'change break | join thread'],
  ['B&T.', 'join thread'],
  ['Draw yarn through rem 10 sts and pull up tightly.', 'join thread 10'],
  [
    'Wedge: k34, turn; k back; *k to 3 sts before last turn, turn; k back; rep from * until 4 sts rem.',
    'declare title Wedge | row: k{34} turn | row: k→end | row: *[k→3 before last gap turn k→end]→until 4 sts',
  ],
  ['Knit 2 rows over all sts.', 'plain 2 rows knit'],
  [
    'CO 11, k across 18 sts of first flap, CO 26, k across second flap, CO 11.',
    'row: CO 11 here k→over 18 CO 26 here k→second flap CO 11 here',
  ],
];

test.each(rows)('%s', (text, tree) => {
  expect(read(text, { sizes })).toBe(tree);
});
