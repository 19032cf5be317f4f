/**
 * Seamless yokes, raglans and underarms, as different hands word them: leaflets of all decades, magazines, modern downloads. The tree was set down from the
 * words before it was read. Forms of the trade from memory; numbers and words made up here. What the grammar does not follow stands as UNREAD.
 */
import { describe, expect, it } from 'vitest';
import { read } from '../outline.ts';

const sizes = ['S', 'M', 'L'];

const rows: readonly (readonly [string, string])[] = [
  [
    'Set-up rnd: K 38 (42, 46), pm, k 14, pm, k 38 (42, 46), pm, k 14, pm for BOR.',
    'round set-up: k{38 (42, 46)} marker place k{14} marker place k{38 (42, 46)} marker place k{14} marker place BOR',
  ],
  [
    'Place raglan markers: k12 (front), pm, k10 (sleeve), pm, k26 (back), pm, k10 (sleeve), pm, k12 (front).',
    'row: marker place k{12} marker place k{10} marker place k{26} marker place k{10} marker place k{12}',
  ],
  [
    'Raglan increase round: *k1, m1l, knit to one stitch before next marker, m1r, k1, slip marker; repeat from * three more times (8 stitches increased).',
    'round raglan increase: *[k{1} M1L k→1 before marker M1R k{1} marker slip]→3× more =8 increased',
  ],
  [
    'Inc row (RS): [K to 2 sts before m, kfb, k1, sm, kfb] four times, k to end (8 sts inc).',
    'row inc (RS): [k→2 before marker kfb k{1} marker slip kfb]→4× k→end =8 increased',
  ],
  [
    'Inc Rnd: K1, YO, *knit to 1 st before marker, YO, k1, slm, k1, YO; rep from * 3 times, k to 1 st before end, YO, k1. 8 sts increased.',
    'round inc: k{1} yo *[k→1 before marker yo k{1} marker slip k{1} yo]→3× k→last 1 yo k{1} =8 increased',
  ],
  [
    'Work Inc Rnd every other rnd 14 (16, 18) times more, then every 4th rnd twice: 216 (232, 248) sts; 68 (74, 80) sts each for front and back, 40 (42, 44) for each sleeve.',
    'work rows [name inc] {every n=14 (16, 18) k=2 more; every n=2 k=4} =216 (232, 248) total =68 (74, 80) part (each for front and back) =40 (42, 44) part (for each sleeve)',
  ],
  ['Rep last 2 rnds until there are 72 sts between markers for back.', 'rep rows [last 2] until 72 sts markers (back)'],
  ['Cont to inc as set until sleeves have 52 (54, 56) sts each.', 'work until 52 (54, 56) sts markers (sleeve)'],
  [
    'Inc on body only: *sm, m1L, k to m, m1R, sm, k to m; rep from * once more.',
    'row: UNREAD "Inc on body only" *[marker slip M1L k→to marker M1R marker slip k→to marker]→1× more',
  ],
  ['Work sleeve incs every 4th rnd and body incs every 2nd rnd.', 'UNREAD "Work sleeve incs every 4th rnd and body incs every 2nd rnd"'],
  [
    'Divide body and sleeves: K to 1st marker, sl 48 (50, 52) sts to waste yarn, CO 8, k to 3rd marker, sl 48 (50, 52) sts to waste yarn, CO 8, k to end.',
    'declare title Divide body and sleeves | row: k→to 1 marker hold next 48 (50, 52) on waste yarn CO 8 here k→to 3 marker hold next 48 (50, 52) on waste yarn CO 8 here k→end',
  ],
  [
    'Next row (RS): K30 left front sts, place next 44 sleeve sts onto scrap yarn, cast on 6 (8, 10) sts for underarm, k60 back sts, place next 44 sleeve sts onto scrap yarn, cast on 6 (8, 10), k30 right front sts. 132 (136, 140) sts.',
    'row next (RS): k{30} hold next 44 on scrap yarn CO 6 (8, 10) here k{60} hold next 44 on scrap yarn CO 6 (8, 10) here k{30} =132 (136, 140) total',
  ],
  [
    'Separate sleeves: *knit to marker, remove marker, transfer sleeve sts to holder, remove marker, cast on 4, pm for side, cast on 4; repeat from * once; knit to end of round.',
    'row: *[k→to marker marker remove hold next to marker on holder marker remove CO 4 here marker place side CO 4 here]→1× k→end',
  ],
  [
    'Removing raglan markers as you come to them, knit across front, put 50 sleeve sts on hold, knit across back, put 50 sleeve sts on hold.',
    'row: k→front hold next 50 on hold k→back hold next 50 on hold',
  ],
  [
    'Next rnd: work across back; place 46 sts for right sleeve on thread; turn, using cable method CO 9 sts, turn; work across front; place 46 sts for left sleeve on thread; turn, CO 9, turn; join.',
    'round next: work→back hold next 46 on thread turn change yarn CO 9 here turn work→front hold next 46 on thread turn CO 9 here turn join round',
  ],
  [
    'There are now 152 (160, 168) body sts on the needle and 48 sts on hold for each sleeve.',
    '=152 (160, 168) total | =48 held (on hold for each sleeve)',
  ],
  [
    'Sleeves: Starting at centre of underarm CO, pick up and knit 4 (4, 5) sts, knit around 48 held sts, pick up and knit 4 (4, 5) sts, pm for BOR. 56 (56, 58) sts.',
    'declare title Sleeves | row: change yarn pick up 4 (4, 5) take up 48 pick up 4 (4, 5) marker place BOR =56 (56, 58) total',
  ],
  [
    'Return the 48 (50, 52) sleeve sts to dpns, pick up 8 sts from body cast-on, placing BOR marker in the middle.',
    'row: take up 48 (50, 52) sleeve unworked pick up 8 marker place BOR',
  ],
  [
    'Next rnd: K1, ssk, k to last 3 sts, k2tog, k1. Rep this rnd every 7th rnd 6 more times.',
    'round next: k{1} ssk k→last 3 kNtog{2} k{1} | rep rows [last] {every n=6 k=7 more}',
  ],
  [
    'Yoke joining round: k to 5 sts before end of rnd, place next 10 sts on waste yarn, removing BOR, k 46 sleeve sts, k 70 (74, 78) front sts, place next 10 sts on waste yarn, k 46 sleeve sts, k 70 (74, 78) back sts.',
    'round yoke joining: k→last 5 hold next 10 on waste yarn marker remove BOR anywhere k{46} k{70 (74, 78)} hold next 10 on waste yarn k{46} k{70 (74, 78)}',
  ],
  [
    'With body needle, work across 34 right front sts, slip next 8 sts onto holder, work across 42 sts of right sleeve, work across 64 back sts, slip 8 sts onto holder, work across 42 sts of left sleeve, work across left front.',
    'row: change needle UNREAD "work across 34 right front sts" hold next 8 on holder work→over 42 work→over 64 hold next 8 on holder work→over 42 UNREAD "work across left front"',
  ],
  [
    'K across first sleeve to last 5 sts, slip these 5 and first 5 sts to a holder.',
    'UNREAD "K across first sleeve to last 5 sts" | hold first 5 on holder',
  ],
  [
    'Cast off 6 underarm sts at beg of next rnd, k to 6 sts before side marker, cast off 12, k to last 6 sts, cast off 6.',
    'bindOff rows 6 {next} | row: k→6 before side marker BO 12 k→last 6 BO 6',
  ],
  ['BO 5, k 62 (including st rem on needle after BO), BO 10, k 62, BO 5.', 'row: BO 5 k{62} BO 10 k{62} BO 5'],
  [
    'Join sleeves to body: *K across sleeve, pm, k across body to next underarm, pm; rep from * once more.',
    'row: join seam *[k→sleeve marker place UNREAD "k across body to next underarm" marker place]→1× more',
  ],
  ['Yoke dec rnd 1: *k3, k2tog; rep from * to end—160 (168, 176) sts.', 'round yoke dec 1: *[k{3} kNtog{2}]→end =160 (168, 176) total'],
  ['Dec rnd: (k2, k2tog) around. 120 sts.', 'round dec: [k{2} kNtog{2}]→end =120 total'],
  ['Next rnd: *K5, k2tog; rep from * to last 4 (5, 6) sts, k4 (5, 6).', 'round next: *[k{5} kNtog{2}]→last 4 (5, 6) k{4 (5, 6)}'],
  ['Dec evenly to 96 (100, 104) sts on next rnd.', 'plain 1 rows (evenly to 96 (100, 104))'],
  ['Dec 30 (32, 34) sts evenly around yoke—130 sts rem.', 'evenly dec 30 (32, 34) | =130 total'],
  ['Work chart A; when all decreases have been made, 88 (92, 96) sts rem.', 'as chart A | =88 (92, 96) total'],
  [
    'Yoke shaping: dec 40 sts evenly on rnd 20, then on rnd 32, then on rnd 42.',
    'declare title Yoke shaping | UNREAD "dec 40 sts evenly on rnd 20"',
  ],
  [
    'Raglan dec rnd: *ssk, k to 2 sts before marker, k2tog, sm; rep from * around.',
    'round raglan dec: *[ssk k→2 before marker kNtog{2} marker slip]→end',
  ],
  [
    'Dec Row (RS): *Work to 3 sts before marker, ssk, k1, slip marker, k1, k2tog; rep from * 3 times more, work to end. (8 decreases)',
    'row dec (RS): *[work→3 before marker ssk k{1} marker slip k{1} kNtog{2}]→3× more work→end =8 decreased',
  ],
  ['Dec 1 st each side of the 4 markers every other rnd 10 (12, 14) times.', 'dec 8 atMarkers {every n=10 (12, 14) k=2}'],
  ['Dec at raglans every rnd until 12 sleeve sts remain.', 'UNREAD "Dec at raglans every rnd until 12 sleeve sts remain"'],
  ['Rep last 2 rnds until 10 sts rem between sleeve markers.', 'rep rows [last 2] until 10 sts between'],
  [
    "Next row (RS): k1, k2tog tbl, [k to 3 sts before next marker, k2tog, k1, sm, k1, k2tog tbl] 4 times, k to last 3 sts, k2tog, k1—10 sts dec'd.",
    'row next (RS): k{1} kNtog tbl{2} [k→3 before marker kNtog{2} k{1} marker slip k{1} kNtog tbl{2}]→4× k→last 3 kNtog{2} k{1} =10 decreased',
  ],
  [
    'Shape raglan: dec 1 st at each end of next and every foll alt row until 24 sts rem.',
    'declare title Shape raglan | dec 1 bothEnds {next; every k=2 until 24}',
  ],
  [
    'Short row back neck: k to 3 sts past right back raglan marker, w&t.',
    'declare title Short row back neck | row: k→3 past right back raglan marker turn wrap',
  ],
  ['Graft the 10 body underarm sts to the 10 sleeve underarm sts, both sides.', 'join graft 10'],
  ['Close underarm hole with tail.', ''],
  ['Knit body even until it measures 32 cm from underarm.', 'k until it 32 cm from underarm'],
  ['K32, pm for side, k64, pm for side, k32.', 'row: k{32} marker place side k{64} marker place side k{32}'],
  ['Place side markers at centre of each underarm cast-on.', 'marker place | UNREAD "cast-on"'],
  [
    '*K1, kfb, k to 2 sts before m, kfb, k1, sm; rep from * to last section, k to end.',
    'row: *[k{1} kfb k→2 before marker kfb k{1} marker slip]→until loose "last section" k→end',
  ],
  [
    'Front neck: inc 1 st at beg and end of next 4 RS rows, then CO 3 at end of next 2 rows.',
    'declare title Front neck | inc 1 bothEnds {next n=4 RS} | castOn rows at end 3 {next n=2}',
  ],
  [
    'Next row (RS): Work raglan incs as before to end of row, using cable cast-on CO 18 (20, 22) sts, join to work in rnd.',
    'row next (RS): UNREAD "Work raglan incs as before to end of row" change yarn CO 18 (20, 22) here join round',
  ],
  ['Round 1: Knit 1 round even, moving the BOR marker to centre back.', 'round 1: plain 1 rounds knit'],
  [
    'Working back and forth, raglan increases every RS row 9 (10, 11) times total: 152 (160, 168) sts.',
    'join noRound | UNREAD "raglan increases every RS row 9 (10, 11) times total: 152 (160, 168) sts"',
  ],
  ['Steek: at centre front CO 7 sts, pm each side of these sts.', 'declare title Steek | UNREAD "at centre front CO 7 sts" | marker place'],
  ['BO steek sts.', 'BO part steek all all:0'],
  ['Bind off the 7 steek sts, k to end.', 'row: BO 7 k→end'],
  ['Cut steek along the centre st.', 'change break'],
  ['Work armhole steeks over next 8 sts (not included in counts).', 'row: work→over 8'],
  ['Place 8 underarm sts on a pin, CO 7 steek sts, k to 4 sts before next marker.', 'row: hold next 8 on pin CO 7 here k→4 before marker'],
  [
    "Circular yoke: k across body and sleeves, dec'g 2 sts at each join. 240 (256, 272) sts.",
    'row: k→body UNREAD "dec\'g 2 sts at each join" =240 (256, 272) total',
  ],
  ['Sleeves are knit in the round from held sts; make both alike.', ''],
  [
    'Next rnd: Removing markers, k 30, place next 44 sts on hold, CO 6 (8, 8), pm for side, CO 6 (8, 8), k 60, place next 44 sts on hold, CO 12 (16, 16), k 30.',
    'round next: marker remove anywhere k{30} hold next 44 on hold CO 6 (8, 8) here marker place side CO 6 (8, 8) here k{60} hold next 44 on hold CO 12 (16, 16) here k{30}',
  ],
  [
    'Place 8 sts from each underarm on pins; work in rnds on rem 160 (168, 176) sts until body measures 30 cm.',
    'hold next 8 on pins | work until body 30 cm',
  ],
  [
    'Graft underarm sts. With RS facing, pick up and k 80 sts around neck, pm, join.',
    'join graft | row: change side pick up 80 marker place join round',
  ],
];

describe('Seamless yokes, raglans and underarms in many wordings', () => {
  it.each(rows)('%s', (text, expected) => {
    expect(read(text, { sizes })).toBe(expected);
  });
});
