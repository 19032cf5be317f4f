/** Orders between rows, as different hands write them. The tree was set down from the words. Forms of the trade from memory. */
import { expect, it } from 'vitest';
import { read } from '../outline.ts';

const rows: readonly (readonly [string, string])[] = [
  ['Do not bind off.', 'change other'],
  ['Do not cast off.', 'change other'],
  ['Do not fasten off.', 'change other'],
  ['Do not break yarn.', 'change break'],
  ['Do not bind off; place sts on a holder.', 'change other | hold these on holder'],
  ['Leave sts on the needle and do not bind off.', 'declare rule leave sts on the needle and do not bind off'],
  ['Repeat for second sock.', 'as piece sock 1× more'],
  ['Repeat for other side.', 'as side reversing'],
  ['Work in the same way as left mitt.', 'as piece left mitt'],
  ['Work in the same manner as the Back.', 'as piece back'],
  ['Work the first and last 4 sts in garter st throughout.', 'declare rule work the first and last 4 sts in garter st throughout'],
  ['Work stripes as follows: 4 rows A, 2 rows B.', 'declare rule work stripes as follows: 4 rows a, 2 rows b'],
  ['Knit the first and last sts together to close the gap. 64 sts.', 'join round loses 1 | =64 total'],
  ['Row 2: Work to m, sm, work across back sts, sm, work to end.', 'row 2: work→to marker marker slip work→back marker slip work→end'],
  ['Cont to dec at each end of every row until 7 sts rem.', 'dec 1 bothEnds {every k=1 until 7}'],
  ['Cont dec at each end of every alt row until 7 sts rem.', 'dec 1 bothEnds {every k=2 until 7}'],
  ['Cont to inc at each end of every 4th row until there are 60 sts.', 'inc 1 bothEnds {every k=4 until 60}'],
  ['64 sts total; 16 sts per needle.', '=64 total | =16 part (per needle)'],
  ['Work rows 1 to 8 inclusive 4 times in all.', 'work rows [numbers 1,2,3,4,5,6,7,8] 4× all'],
  ['Rep rows 3 to 6 inclusive until work measures 20 cm.', 'rep rows [numbers 3,4,5,6] until work 20 cm'],
  ['Work the 8 rows of pattern 3 times, then rows 1-4 once.', 'plain 24 rows patt | rep rows [numbers 1,2,3,4] 1×'],
  ['Rep the 6-row patt 5 times.', 'rep rows [these 6] 5×'],
  ['Repeat the 4-row pattern 3 more times.', 'rep rows [these 4] 3× more'],
  ['Work back in pattern.', 'row: work→end'],
  [
    'Cast off 3 sts at neck edge on next row, 2 sts on foll alt row and 1 st on foll 2 alt rows.',
    'bindOff rows at neck edge 3 {next} + 2 {follEvery k=2} + 1 {follEvery n=2 k=2}',
  ],
  ['Leave body sts on needle and knit sleeves.', 'declare rule leave body sts on needle and knit sleeves'],
  ['Next rnd: K6, cast off 12, k to last 6 sts, cast off last 6 sts and first 6 sts of next rnd.', 'round next: k{6} BO 12 k→last 6 BO 12'],
  ['Pick up and knit 16 sts along side of heel flap, plus 1 st in the corner.', 'row: pick up 16 pick up 1'],
  ['Picot bind off: *CO 2 sts, BO 4 sts, sl st back to LH needle; rep from * to end.', 'BO all all:0'],
  [
    'Work decs every other rnd until 24 sts remain, then every rnd until 12 sts remain.',
    'rep rows [shaping dec] {every k=2 until 24; every k=1 until 12}',
  ],
  ['Cont in this manner, inc 4 sts every RS row, until you have 201 sts.', 'work until loose "" | inc 4 edge {every RS until 201}'],
  ['Place 16 sts on hold for neck, then work to end.', 'row: hold next 16 on hold for neck work→end'],
];

it.each(rows)('%s', (text, tree) => expect(read(text)).toBe(tree));
