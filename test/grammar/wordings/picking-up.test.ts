/**
 * Picking up, as different hands word them: leaflets of all decades, magazines, modern downloads. The tree was set down from the
 * words before it was read. Forms of the trade from memory; numbers and words made up here. What the grammar does not follow stands as UNREAD.
 */
import { describe, expect, it } from 'vitest';
import { read } from '../outline.ts';

const sizes = ['S', 'M', 'L'];

const rows: readonly (readonly [string, string])[] = [
  ['Pick up stitches evenly: 30 along each side and 40 across back.', 'row: pick up 60 pick up 40'],
  [
    'Pick up and knit stitches as follows: 24 (26, 26) down left side, 16 from holder, 24 (26, 26) up right side, 34 (36, 38) across back. 98 (104, 106) sts.',
    'row: pick up 24 (26, 26) take up 16 pick up 24 (26, 26) pick up 34 (36, 38) =98 (104, 106) total',
  ],
  [
    'With RS facing, pick up and k 62 (64, 66) sts along right front edge, 32 sts across back neck, and 62 (64, 66) sts along left front edge—156 (160, 164) sts.',
    'row: change side pick up 62 (64, 66) pick up 32 pick up 62 (64, 66) =156 (160, 164) total',
  ],
  [
    'Starting at the right shoulder seam with RS facing, pick up and knit 1 st for every st along the back neck and 3 sts for every 4 rows along the sides.',
    'row: change side pick up 1 per 1 st pick up 3 per 4 row',
  ],
  [
    'Knit up 17 sts down left side of neck, 15 sts from holder, 17 sts up right side and 29 sts from back neck.',
    'row: pick up 17 take up 15 pick up 17 pick up 29',
  ],
  ['Pick up 88 (92, 96) sts round the neck (44 at the front and 44 at the back).', 'row: pick up 88 (92, 96)'],
  ['Pick up and knit 80 sts (40 from each side).', 'row: pick up 80'],
  [
    'With a 3.25mm needle and right side of work facing, knit up 14 (16, 16) sts down left front neck, knit across the 13 sts at centre front, knit up 14 (16, 16) sts up right front neck, knit across the 31 sts at back neck.',
    'row: change side pick up 14 (16, 16) k→over 13 pick up 14 (16, 16) k→over 31',
  ],
  [
    'Using the set of four double-pointed needles, and starting at left shoulder seam, k up 70 (72, 76) sts evenly round neck.',
    'row: change needle change yarn pick up 70 (72, 76)',
  ],
  [
    'Beg at left shoulder, pick up 21 sts along left neck edge, k14 sts from front holder, pick up 21 sts along right neck edge, k36 sts from back holder, pm and join—92 sts.',
    'row: change yarn pick up 21 take up 14 front pick up 21 take up 36 back marker place join round =92 total',
  ],
  ['With WS facing, pick up and purl 22 loops along inner side of cast-on edge.', 'row: change side pick up 22 purl'],
  ['Pick up and knit about 84 (88, 92) sts around armhole (multiple of 4).', 'row: pick up 84 (88, 92)'],
  ['Pick up and k an odd number of sts along edge.', 'UNREAD "Pick up and k an odd number of sts along edge"'],
  ['Pick up and knit 2 sts for every 3 rows around armhole edge, adjusting to end with an even number of sts.', 'row: pick up 2 per 3 row'],
  [
    'From the RS and with smaller circular needle, pick up and knit 3 of every 4 sts along left front, pm, 1 st in corner, pm, then 1 st per bound-off st across neck.',
    'row: pick up 3 per 4 st marker place pick up 1 marker place pick up 1 per 1 st',
  ],
  [
    'Pick up and knit 16 sts along left side of gusset, pm, k30 instep sts, pm, pick up and knit 16 sts along right side.',
    'row: pick up 16 marker place k{30} marker place pick up 16',
  ],
  [
    'Slip 30 sts from holder to needle, pick up and k 2 sts at underarm gap, join for round. 32 sts.',
    'row: take up 30 unworked pick up 2 join round =32 total',
  ],
  [
    'Pick up & k5 at underarm, pm, pick up & k5, k across 50 (54, 58) held sleeve sts.',
    'row: pick up 5 marker place pick up 5 take up 50 (54, 58) sleeve',
  ],
  ['Pick up and knit one stitch in each of the 8 cast-on sts.', 'row: pick up 8'],
  ['Pick up and k1 in each of next 12 row ends.', 'row: pick up 12'],
  ['Pick up and k6 sts across 6 cast-off sts at underarm.', 'row: pick up 6'],
  ['Along edge of left front pick up and k 90 (93, 96) sts.', 'row: pick up 90 (93, 96)'],
  ['K. up 100 sts. round armhole edge.', 'row: pick up 100'],
  [
    'With crochet hook and WS facing, pull up 24 loops along edge and place them on needle.',
    'change side | UNREAD "pull up 24 loops along edge" | UNREAD "place them on needle"',
  ],
  ['Pick up (do not knit) 18 loops across the row 4 rows above the hem.', 'row: pick up 18 loops'],
  ['With spare needle, pick up 46 (48, 50) loops from cast-on edge on WS.', 'row: change needle pick up 46 (48, 50) loops'],
  ['Remove waste yarn and place 42 cast-on loops on needle.', 'take up 42 provisional unworked'],
  ['Unravel provisional cast-on and slip the resulting 42 sts to needle.', 'take up 42 provisional unworked'],
  ['Undo crochet chain and pick up 41 sts.', 'row: take up  provisional unworked pick up 41'],
  [
    'Pick up and k19 (19, 20) sts down left front slope, pm, 1 st from centre front, pm, 19 (19, 20) sts up right front slope, 37 sts from back: 76 (76, 78) sts.',
    'row: pick up 19 (19, 20) marker place pick up 1 marker place pick up 19 (19, 20) pick up 37 =76 (76, 78) total',
  ],
  ['With RS facing and larger needles, pick up and k 1 st from corner.', 'row: change side pick up 1'],
  ['Pick up and knit 10 sts along edge of thumb opening and knit 8 sts from waste yarn. 18 sts.', 'row: pick up 10 take up 8 =18 total'],
  ['PU 44 sts evenly along straight edge of pocket flap, RS facing.', 'row: pick up 44 change side'],
  [
    'Pick up and k 43 (45, 47) sts. Row 1 (WS): P1, *k1, p1; rep from * to end.',
    'row: pick up 43 (45, 47) | row 1 (WS): p{1} *[k{1} p{1}]→end',
  ],
  ['Pick up 21 sts (1 in each garter ridge).', 'row: pick up 21'],
  ['Pick up and k 1 st in each garter ridge down side of square: 20 sts.', 'row: pick up 1 per 1 row =20 total'],
  ['Pick up and knit 24 stitches (one for each slipped edge stitch).', 'row: pick up 24'],
  [
    'Slip 22 (22, 24) front neck sts onto needle; with RS facing rejoin yarn and pick up and knit 22 up right neck, 38 across back, 22 down left neck, then k front sts.',
    'row: take up 22 (22, 24) front neck unworked change side join rejoin pick up 22 pick up 38 pick up 22 k→front',
  ],
  [
    'With right sides facing and beginning at lower edge of Right Front, pick up and knit 58 (60, 62) sts to start of neck shaping, 24 to shoulder, 28 (30, 30) across the back, 24 to start of Left Front neck and 58 (60, 62) to lower edge: 192 (198, 202) sts.',
    'row: change side change yarn pick up 58 (60, 62) pick up 24 pick up 28 (30, 30) pick up 24 pick up 58 (60, 62) =192 (198, 202) total',
  ],
  ['Pick up and k 40 sts from side edge, then work across sts on holder.', 'row: pick up 40 take up'],
  ['Pick up & knit 12 sts along heel flap, pick up 1 st at the corner, k instep.', 'row: pick up 12 pick up 1 k→instep'],
  [
    'Knit across back neck sts, pick up and knit 20 sts down left side, knit front neck sts from holder, pick up 20 up right side.',
    'row: UNREAD "Knit across back neck sts" pick up 20 take up  front neck pick up 20',
  ],
  [
    'Pick up and knit 26 sts on left side of neck, 15 sts at center front and 26 sts on right side of neck; 67 sts total.',
    'row: pick up 26 pick up 15 pick up 26 =67 total',
  ],
  ['Pick up 4 sts per 5 rows.', 'row: pick up 4 per 5 row'],
  [
    'Pick up and knit into each st and every other row around the neck.',
    'UNREAD "Pick up and knit into each st and every other row around the neck"',
  ],
  ['Pick up and k 94 (98, 102) sts along front edge, turn and cast on 6 sts for flap.', 'row: pick up 94 (98, 102) turn CO 6 here'],
  ['Pick up 56 sts and knit 1 row (WS).', 'row: pick up 56 | plain 1 rows knit'],
  ['Pick up and k 76 sts, then k 5 rows.', 'row: pick up 76 | plain 5 rows knit'],
  ['Pick up & k 86 (90, 94) sts & work 3 rows in garter st. Cast off.', 'row: pick up 86 (90, 94) | plain 3 rows garter st | BO all all:0'],
  ['Pick up and knit 64 sts; do not turn; work 3-st i-cord bind-off.', 'row: pick up 64 turn not work→over 3 UNREAD "st i-cord bind-off"'],
  [
    'With RS facing, rejoin yarn to the top of right front, pick up and k 12, k across 20 sts from sleeve holder, k across 33 back sts, k across 20 sleeve sts, pick up and k 12 down left front.',
    'row: change side join rejoin pick up 12 take up 20 sleeve k→over 33 k→over 20 pick up 12',
  ],
  [
    'With 3 mm needles and RS facing, k up 9 sts from row ends of band, patt across 40, k up 9 sts from other band.',
    'row: change side pick up 9 patt→over 40 pick up 9',
  ],
  [
    'K 5 held band sts, pick up and k 78 (80, 82) sts round neck, k 5 held band sts. 88 (90, 92) sts.',
    'row: take up 5 band pick up 78 (80, 82) take up 5 band =88 (90, 92) total',
  ],
  ['Rib 7 from holder, knit up 25 sts, k 30 from back, knit up 25 sts, rib 7.', 'row: take up 7 pick up 25 k{30} pick up 25 rib→over 7'],
  [
    'Join shoulders. With RS facing, beg at right shoulder, pick up and k 34 sts across back, 22 down left front, k 14 from holder, pick up and k 22 up right front; pm, join. 92 sts.',
    'join seam | row: change side change yarn pick up 34 pick up 22 take up 14 pick up 22 marker place join round =92 total',
  ],
  [
    'With RS facing, k up 30 sts down left front, pm, k up 1 st from centre, pm, k up 30 sts up right front; work 6 rows rib, dec 1 st at each side of markers on every row.',
    'row: change side pick up 30 marker place pick up 1 marker place pick up 30 | plain 6 rows rib (dec 1 eachSideOfMarkers {every k=1})',
  ],
  ['Pick up and k 40 (44, 48) sts, turn, sl 1, p to end.', 'row: pick up 40 (44, 48) turn | row: sl{1} p→end'],
  [
    'Beg at centre back, pick up and k 36 sts to corner, pm, pick up and k 1 in corner, pm, pick up and k 60 to lower edge.',
    'row: change yarn pick up 36 marker place pick up 1 marker place pick up 60',
  ],
  [
    'Place 48 (52, 56) held sleeve sts on dpns; with RS facing, pick up and k 4 sts from underarm, pm for BOR, pick up and k 4 more.',
    'row: take up 48 (52, 56) sleeve unworked change side pick up 4 marker place BOR pick up 4',
  ],
  ['Work up 68 sts along the lower edge.', 'row: pick up 68'],
  ['With RS facing, pick up 3/4 of the rows along the front edge.', 'row: change side pick up 3 per 4 row'],
  ['Pick up one stitch in every other row along the side edge (24 sts).', 'row: pick up 1 per 2 row =24 total'],
  ['Pick up and knit 1 st in the corner, 14 sts down the side of the flap.', 'row: pick up 1 pick up 14'],
  [
    'Using the tip of right needle, lift 12 sts from the chain edge and k them.',
    'row: change needle UNREAD "lift 12 sts from the chain edge" k→these',
  ],
  ['From the WS pick up and p 10 sts across the purl bumps.', 'row: pick up 10 purl'],
  ['Knit up 15 loops along the left edge of the flap.', 'row: pick up 15'],
  ['Pick up and knit approx 92 sts round armhole, making sure the number is even.', 'row: pick up 92'],
];

describe('Picking up in many wordings', () => {
  it.each(rows)('%s', (text, expected) => {
    expect(read(text, { sizes })).toBe(expected);
  });
});
