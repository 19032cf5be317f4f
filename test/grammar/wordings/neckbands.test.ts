/**
 * Neckbands and collars, as different hands word them: leaflets of all decades, magazines, modern downloads. The tree was set down from the
 * words before it was read. Forms of the trade from memory; numbers and words made up here. What the grammar does not follow stands as UNREAD.
 */
import { describe, expect, it } from 'vitest';
import { read } from '../outline.ts';

const sizes = ['S', 'M', 'L'];

const rows: readonly (readonly [string, string])[] = [
  ['Work 7 rows k1, p1 rib, beginning and ending with a WS row.', 'plain 7 rows rib beg WS ending WS'],
  [
    'Join left shoulder. Using smaller needles and with RS facing, knit up 92 (96, 100) sts evenly round neck. Work 2.5 cm in rib. Cast off loosely.',
    'join seam | row: change side pick up 92 (96, 100) | work rib until it 2.5 cm | BO all all:0',
  ],
  ['Rib 6 rnds. Cast off in rib using a needle two sizes larger.', 'plain 6 rounds rib | BO all all:0'],
  ['Next rnd: Purl (turning ridge).', 'round next: p→end'],
  [
    'Work 7 more rnds in rib, then bind off loosely; fold band in half to inside and sew down.',
    'plain 7 rounds rib | BO all all:0 | declare rule fold band in half to inside and sew down',
  ],
  ['Work in rib until neckband is 12 cm deep.', 'work rib until neckband 12 cm'],
  ['Cont in rib for 18 cm more for roll neck, changing to larger needles halfway.', 'work rib until it 18 cm | change needle'],
  ['1st row: *K2, p2; rep from * to last 2 sts, k2.', 'row 1: *[k{2} p{2}]→last 2 k{2}'],
  [
    'Next round: Rib to within 2 sts of centre st, sl 1, k1, psso, k1, k2tog, rib to end.',
    'round next: rib→2 before centre sl1-kN-psso{1} k{1} kNtog{2} rib→end',
  ],
  ['Rnd 1: Rib to marked st, k marked st, rib to end.', 'round 1: rib→to centre k rib→end'],
  ['Dec rnd: *rib to 1 st before marked st, cdd, rep from * once, rib to end.', 'round dec: *[rib→1 before centre s2kp]→1× rib→end'],
  ['Next row (WS): Rib to 1 st before centre st, p3tog, rib to end.', 'row next (WS): rib→1 before centre pNtog{3} rib→end'],
  ['Dec 1 st each side of centre st on every row.', 'dec 2 centre {every k=1}'],
  ['Dec 2 sts at centre front every other rnd 4 times.', 'dec 2 centre {every n=4 k=2}'],
  ['Working decs as set, bind off in rib.', 'declare rule working decs as set | BO all all:0'],
  [
    'Bind off in pattern, working the centre decrease at the same time.',
    'BO all all:0 | UNREAD "working the centre decrease at the same time"',
  ],
  [
    'Work garter st for 6 rows, dec 4 sts evenly on last row. BO knitwise.',
    'plain 6 rows garter st (evenly dec 4 on last row) | BO all all:0',
  ],
  [
    'Next rnd: Work in rib, dec 8 (10, 12) sts evenly around: 84 (86, 88) sts.',
    'round next: rib→end evenly dec 8 (10, 12) =84 (86, 88) total',
  ],
  ['Work 5 rnds in twisted rib. Next rnd: knit. Cast off with an i-cord edge.', 'plain 5 rounds rib | round next: k→end BO all all:0'],
  ['P 1 rnd, k 1 rnd, p 1 rnd, bind off k-wise.', 'plain 1 rounds purl | plain 1 rounds knit | plain 1 rounds purl | BO all all:0'],
  ['K 5 rows. Cast off on WS.', 'plain 5 rows knit | BO all all:0'],
  ['Collar: With RS facing (this will be WS when collar is folded), cast on 92 sts.', 'declare title Collar | change side | CO 92 here'],
  ['Rib 1 rnd, then rib 1 rnd dec 4 sts evenly.', 'plain 1 rounds rib | plain 1 rounds rib (evenly dec 4)'],
  ['Change to larger needles after 8 cm and work a further 8 cm.', 'change needle | work until it 8 cm'],
  ['Next row: K1, *p1, k1; rep from *.', 'row next: k{1} *[p{1} k{1}]→end'],
  ['Rib 22 (24, 24), k2tog, rib 14, k2tog, rib to end.', 'row: rib→over 22 (24, 24) kNtog{2} rib→over 14 kNtog{2} rib→end'],
  ['Work 1 row rib across all sts, working 2 tog at each corner.', 'plain 1 rows rib | UNREAD "working 2 tog at each corner"'],
  ['Cast off ribwise.', 'BO all all:0'],
  ['B.O. all sts loosely in ribbing.', 'BO all all:0'],
  ['Bind off using Elastic Bind-Off.', 'BO all all:0'],
  ['Cast off loosely in rib, leaving last 6 sts on pin.', 'BO all all:0 | hold last 6 on pin'],
  ['Using a tubular cast off, bind off all sts.', 'change yarn | BO all all:0'],
  ['Work two rounds of double knitting, then graft closed with tubular bind-off.', 'plain 2 rounds | join graft'],
  ['On the foll row, make a buttonhole 3 sts from each end.', 'row next: UNREAD "make a buttonhole 3 sts from each end"'],
  ['Neckband is worked flat: turn. Row 1 (WS): P2, *k2, p2; rep from * to end.', 'row 1 (WS): p{2} *[k{2} p{2}]→end'],
  ['Next rnd: *P1, k1 tbl; rep from * to m.', 'round next: *[p{1} k tbl{1}]→to marker'],
  ['Work 3 rnds of st st for a rolled edge and bind off.', 'plain 3 rounds st st | BO all all:0'],
  ['Knit 6 rnds, cast off and allow to roll.', 'plain 6 rounds knit | BO all all:0'],
  ['Turn so WS is facing; work 10 cm in rib for shawl collar.', 'row: turn | work rib until it 10 cm'],
  ['Row 2: Rib to last 10 sts, turn. Row 3: sl 1, rib to last 10 sts, turn.', 'row 2: rib→last 10 turn | row 3: sl{1} rib→last 10 turn'],
  ['Next 2 rows: Rib to last 20 sts, turn.', 'row next 2: rib→last 20 turn'],
  ['Rib 4 rows across all sts. Cast off.', 'plain 4 rows rib | BO all all:0'],
  ['Rnd 2: *K1, p1*; rep between *s to 1 st before mitre marker, k1.', 'round 2: *[k{1} p{1}]→1 before mitre marker k{1}'],
  ['Then pick up 1 st at V and mark it.', 'row: pick up 1'],
  [
    'Knit the neckband in k1, p1 rib for 3 cm, decreasing 1 st at each side of the centre st every rnd.',
    'k rib until it 3 cm (dec 2 centre {every k=1})',
  ],
  ['Work in single rib on these sts for 2 in. Cast off rather loosely in rib.', 'work rib until it 2 in | BO all all:0'],
  ['Neck border (worked in one piece): work 10 rows in K1, P1 rib.', 'declare title Neck border (worked in one piece) | plain 10 rows rib'],
  [
    'Working in rib as set, dec 1 st at both sides of both markers on every 2nd rnd.',
    'work rib until loose "" | dec 1 eachSideOfMarkers {every k=2}',
  ],
  ['Bind off all neckband sts, then sew ends of band.', 'BO all all:0'],
  ['Rep Rnds 1 and 2 until band measures 1 in, ending with Rnd 1.', 'rep rows [numbers 1,2] until band 1 in ending row 1'],
  ['K next rnd, dec 6 sts evenly spaced.', 'row: k→end evenly dec 6'],
  [
    'Break yarn, leaving a tail about 3 times the neck circumference, and sew off sts using sewn bind-off.',
    'change break | change yarn | UNREAD "sew off sts using sewn bind-off"',
  ],
  ['Work as for front neckband.', 'as piece front neckband'],
  [
    'Neckband, seamed version: with one shoulder still open, work 9 rows of 1x1 rib, beg with a P row.',
    'declare title Neckband, seamed version | change yarn | plain 9 rows rib beg p',
  ],
  [
    'Join left shoulder; with RS facing, k up 80 sts, work 7 rows in k1, p1 rib, then cast off in rib and join neckband seam.',
    'row: join seam change side pick up 80 | plain 7 rows rib | BO all all:0 | join seam',
  ],
  [
    'Pm and join: work 8 rnds in rib, dec 1 st each side of centre st on every rnd, BO in rib.',
    'marker place | join round | plain 8 rounds rib (dec 2 centre {every k=1}) | BO all all:0',
  ],
  ['Rib to end, pick up 4 sts along edge of placket, turn.', 'row: rib→end pick up 4 turn'],
  [
    'Next row (WS): P2, *k1, p1; rep from * to last st, p1, working dec as before at mitre.',
    'row next (WS): p{2} *[k{1} p{1}]→last 1 p{1} UNREAD "working dec as before at mitre"',
  ],
  [
    'Slip 8 sts from right front holder, pick up and k 20 up right neck, 32 across back, 20 down left neck, k 8 from left front holder. 88 sts.',
    'row: hold next 8 on holder pick up 20 pick up 32 pick up 20 take up 8 left front =88 total',
  ],
  [
    'With RS facing and smaller needles, k across 9 sts left at right front, pick up and k 22 (24, 26) sts up right side of neck, k 30 (32, 34) from back holder inc 1 at centre, 22 (24, 26) down left side and k 9 left at left front. 93 (99, 105) sts.',
    'row: change side take up 9 front pick up 22 (24, 26) take up 30 (32, 34) back evenly inc 1 pick up 22 (24, 26) take up 9 front =93 (99, 105) total',
  ],
  ['Work 7 rows in k1, p1 rib, making a buttonhole on the 3rd row as before.', 'plain 7 rows rib'],
  [
    'Using set of four needles pick up and k 96 sts evenly around neck; work 6 rnds k2, p2 rib and cast off in rib.',
    'row: change needle pick up 96 | plain 6 rounds rib | BO all all:0',
  ],
  [
    'Cast off loosely in rib, fold band in half to inside and slip stitch in position.',
    'BO all all:0 | declare rule fold band in half to inside and slip stitch in position',
  ],
  [
    'With right side facing and beg at left shoulder, pick up 3 sts for every 4 rows down left front neck and 1 st in each cast-off st.',
    'row: change side change yarn pick up 3 per 4 row pick up 1 per 1 st',
  ],
];

describe('Neckbands and collars in many wordings', () => {
  it.each(rows)('%s', (text, expected) => {
    expect(read(text, { sizes })).toBe(expected);
  });
});
