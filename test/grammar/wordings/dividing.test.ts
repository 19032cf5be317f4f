/**
 * Dividing, holding and rejoining, as different hands word them: leaflets of all decades, magazines, modern downloads. The tree was set down from the
 * words before it was read. Forms of the trade from memory; numbers and words made up here. What the grammar does not follow stands as UNREAD.
 */
import { describe, expect, it } from 'vitest';
import { read } from '../outline.ts';

const sizes = ['S', 'M', 'L', 'XL'];

const rows: readonly (readonly [string, string])[] = [
  ['K28 (30: 31: 33), slip 52.', 'row: k{28 (30, 31, 33)} hold next 52 on holder'],
  [
    'Knit 34, slip the next 26 sts to a holder, join a 2nd ball and knit to the end.',
    'row: k{34} hold next 26 on holder join rejoin k→end',
  ],
  [
    'Patt 31 (33: 34: 36), turn and leave rem sts on spare needle; work on this first set of sts only.',
    'row: patt→over 31 (33, 34, 36) turn holds spare needle | row: only first',
  ],
  ['Next row (RS): K26, slip 18 onto a thread, k to end.', 'row next (RS): k{26} hold next 18 on a thread k→end'],
  [
    'Work across 33 sts; place centre 21 (23: 23: 25) sts on a holder; join second ball of yarn and work rem 33 sts.',
    'row: work→over 33 hold centre 21 (23, 23, 25) on holder join rejoin work→over all:33',
  ],
  [
    'Working both sides with separate balls of yarn, bind off 3 sts at each neck edge twice.',
    'declare rule working both sides with separate balls of yarn | bindOff rows at neck edge 3 {follEvery n=2 k=2}',
  ],
  ['Turn, and working on these 29 sts only, proceed as follows.', 'row: turn only these 29 | work until loose ""'],
  ['Turn, leaving remaining 46 (48: 50: 52) sts on a length of yarn.', 'row: turn leaving 46 (48, 50, 52) holds a length of yarn'],
  ['Put the first 30 sts on a st holder, and work on the last 30 sts only.', 'hold first 30 on st holder | only last 30'],
  ['Slip first and last 7 sts on safety pins.', 'hold firstAndLast 7 on safety pins'],
  ['Leave the centre 15 sts on a holder and join a new ball of yarn to the remaining sts.', 'hold centre 15 on holder | join rejoin'],
  ['Sl 12 (12: 14: 14) sts at centre front onto a st holder and leave for neckband.', 'hold centre 12 (12, 14, 14) on st holder'],
  ['Break off wool and slip these sts on to a spare needle.', 'change break | hold these on spare needle'],
  ['Do not bind off; leave rem 38 sts on a spare length of yarn.', 'change other | hold remaining 38 on length of yarn'],
  [
    'Cut yarn. Leave these 24 (25: 27: 28) sts on a holder for three-needle bind-off later.',
    'change break | hold these 24 (25, 27, 28) on holder',
  ],
  [
    'Knit across first 40 sts and put them on a stitch holder, bind off 12, knit to end.',
    'row: k→over 40 hold these on stitch holder BO 12 k→end',
  ],
  ['With WS facing, rejoin yarn to armhole edge of held sts and p to end.', 'row: change side join rejoin p→end'],
  [
    'Rejoin yarn at neck edge to sts left on spare needle, cast off 14 (14: 16: 16) sts, patt to end.',
    'row: join rejoin BO 14 (14, 16, 16) patt→end',
  ],
  ['With right side of work facing, join yarn to next st, k to end of row.', 'row: change side join rejoin k→end'],
  [
    'With RS facing, leave centre 20 (22: 22: 24) sts on a holder, rejoin yarn to sts for second side and work to end.',
    'row: change side hold centre 20 (22, 22, 24) on holder join rejoin work→end',
  ],
  [
    'Slip the centre 9 sts on to a stitch-holder and, on to the remaining 30 sts, join in wool at neck edge and knit to end.',
    'row: hold centre 9 on stitch-holder UNREAD "on to the remaining 30 sts" change join k→end',
  ],
  ['Transfer 56 held sts of right half back to needle, ready to work a WS row.', 'take up 56 right half unworked'],
  ['Place the 46 sts from waste yarn back onto the working needle.', 'take up 46 unworked'],
  ['Return the held 30 Left Front sts to needle and attach yarn ready for a RS row.', 'take up 30 left front unworked | join rejoin RS'],
  ['Now slip the sts left on spare needle onto working needle.', 'take up  unworked'],
  ['Slip next 30 sts from holder back on to needle, rejoin yarn with right side facing.', 'take up 30 unworked | join rejoin RS'],
  ['k82 front sts from holder', 'row: take up 82 front'],
  ['K 28, k across 20 sts from holder, k 28.', 'row: k{28} take up 20 k{28}'],
  ['Next row: Knit 35, turn; knit 35 (the remaining sts wait on the needle).', 'row next: k{35} turn | row next: k{35}'],
  ['Next row: K 46 and turn, cast on 46 sts, turn, k to end.', 'row next: k{46} turn CO 46 here turn k→end'],
  [
    'Divide for front opening as follows: Next row (RS): K 48 (50: 52: 56), turn and leave rem sts on a spare needle.',
    'declare title Divide for front opening as follows | row next (RS): k{48 (50, 52, 56)} turn holds spare needle',
  ],
  [
    'Divide for neck: patt 36 (38: 40: 42) sts, turn, leave rem sts on holder.',
    'row: change other patt→over 36 (38, 40, 42) turn holds holder',
  ],
  ['Divide the work: k 40, bind off the centre 10 sts, k 40 (including the st left on needle).', 'row: arrange BO centre 10 k{40}'],
  ['Divide the stitches in half, slipping the last 42 on to a spare needle.', 'change other | hold last 42 on spare needle'],
  ['Working each side separately, continue on the 38 sts of the left front.', 'declare rule working each side separately | only these 38'],
  [
    'Working on first set of 38 sts only, cont straight until opening measures 12 cm, ending with a WS row.',
    'only first 38 | work until opening 12 cm ending WS',
  ],
  ['Cont on last set of sts only.', 'only last'],
  ['Work left side first.', 'UNREAD "Work left side first"'],
  ['Now finish each side of neck separately.', ''],
  ['Keeping patt correct, work on these 25 sts for right shoulder.', 'declare rule keeping patt correct | only these 25'],
  ['Leave rem unworked sts on a spare needle and cont on the 30 sts just worked.', 'hold remaining on spare needle | only these 30'],
  ['Next row (WS): P 27 (28: 30: 31), BO 32 sts for back neck, p to end.', 'row next (WS): p{27 (28, 30, 31)} BO 32 p→end'],
  [
    'K 30, cast off 22, knit until there are 30 sts on needle after cast off, then work on this last set of 30 sts only.',
    'row: k{30} BO 22 k→30 on right after bind-off only last 30',
  ],
  [
    'Knit 22 (23: 25: 26), place the next 40 sts on a holder, place the last 22 (23: 25: 26) sts on another holder.',
    'row: k{22 (23, 25, 26)} hold next 40 on holder hold last 22 (23, 25, 26) on holder',
  ],
  [
    'Next rnd: BO 5 sts, k until 70 sts are on right needle, turn. Place the rem 75 sts on waste yarn for back.',
    'round next: BO 5 k→70 on right turn hold remaining 75 on waste yarn for back',
  ],
  ['Front and back are now worked separately, back and forth in rows.', ''],
  ['From here on work back and forth in rows on the front sts only, leaving the back on hold.', 'only these | hold these on hold'],
  ['Sl 80 back sts to a spare circular needle.', 'hold next 80 on spare circular needle'],
  [
    'Next round: knit to side marker, slip all sts between markers to a holder for Front, turn.',
    'round next: k→to side marker hold next to marker on holder for front turn',
  ],
  ['Thread a length of contrast yarn through the 44 sts for the front and remove the needle.', 'hold these 44 on holder'],
  ['Run a thread through these sts and leave for the time being.', 'hold these on holder'],
  ['Leave sts on needle; do not break yarn.', 'change break'],
  ['Slip the last 12 sts worked onto a holder, then bind off the next 6 sts, k to end.', 'row: hold these 12 on holder BO 6 k→end'],
  ['Leaving the 6 border sts on a safety pin, rejoin yarn to rem sts, k to end.', 'row: hold next 6 on safety pin join rejoin k→end'],
  [
    'Next row: Work 6 and slip them onto a safety pin for buttonhole band, work to end.',
    'row next: work→over 6 hold these on safety pin for buttonhole band work→end',
  ],
  [
    'Next row (WS): Purl to last 7 sts, turn and put these 7 sts on a safety pin.',
    'row next (WS): p→last 7 turn leaving 7 holds safety pin',
  ],
  [
    'With RS facing, work across sts of left front, bind off 8 underarm sts, work across back.',
    'row: change side UNREAD "work across sts of left front" BO 8 work→back',
  ],
  ['P 40 sts, turn; place rem 40 sts on hold.', 'row: p{40} turn leaving 40 holds hold'],
  ['Leave 21 sts each side on hold and work the centre 40 sts only.', 'hold firstAndLast 21 on hold | only centre 40'],
  [
    'Turn. Work on these 30 sts only for the first side, as follows: bind off 4 sts, p to end.',
    'row: turn | row: only these 30 UNREAD "as follows: bind off 4 sts" p→end',
  ],
  ['Next row: K 32 sts, pass rem 50 sts onto a holder.', 'row next: k{32} hold remaining 50 on holder'],
  ['K36, M1, turn; keep remaining 41 sts on a separate needle.', 'row: k{36} M1 turn hold remaining 41 on separate needle'],
  [
    'Next row (RS): Bind off 4, k until 26 sts on right needle, turn; place the remaining 34 sts on a holder and work left front first.',
    'row next (RS): BO 4 k→26 on right turn leaving 34 holds holder | row next (RS): UNREAD "work left front first"',
  ],
  [
    'K to 4 sts before side marker, turn, slip the next 8 sts onto waste yarn for underarm.',
    'row: k→4 before side marker turn hold next 8 on waste yarn for underarm',
  ],
  [
    'With RS facing, rejoin yarn at armhole edge of right front sts, bind off 4 sts, work to end: 38 (40: 42: 44) sts.',
    'row: change side join rejoin BO 4 work→end =38 (40, 42, 44) total',
  ],
];

describe('Dividing, holding and rejoining in many wordings', () => {
  it.each(rows)('%s', (text, expected) => {
    expect(read(text, { sizes })).toBe(expected);
  });
});
