/**
 * References between pieces and sides, as different hands word them: leaflets of all decades, magazines, modern downloads. The tree was set down from the
 * words before it was read. Forms of the trade from memory; numbers and words made up here. What the grammar does not follow stands as UNREAD.
 */
import { describe, expect, it } from 'vitest';
import { read } from '../outline.ts';

const sizes = ['S', 'M', 'L', 'XL'];

const rows: readonly (readonly [string, string])[] = [
  ['Work as for Back, but cast on 4 sts more.', 'as piece back cast on 4 more'],
  ['Work as given for Back as far as beg of armholes, casting on 6 sts fewer.', 'as piece back cast on 6 fewer to beg of armholes'],
  ['Foll instructions for Back until armhole shaping is completed.', 'as piece back to end of armhole shaping'],
  [
    'Follow the directions for the Back until work measures 38 (39: 40: 41) cm, ending after a WS row.',
    'as piece back to work 38 (39, 40, 41) cm ending WS',
  ],
  ['Work the same as the Back up to the armholes.', 'as piece back to armholes'],
  ['This is worked exactly like the Back up to and including Row 14.', 'as piece back to row 14'],
  ['Front is made exactly the same as the Back up to **.', 'as piece back to **'],
  ['Knit the Front in the same way as the Back as far as the neck.', 'as piece back to neck'],
  ['Rep from ** to ** of Back.', 'rep rows [mark of Back ** to **]'],
  ['Work from ** to ** as on Left Front.', 'as piece left front from ** to **'],
  ['Proceed as for Back from ** to ***.', 'as piece back from ** to ***'],
  ['Now work from *** to end as given for Back.', 'as piece back from ***'],
  ['Work 18 rows in rib as given for Back.', 'plain 18 rows rib of back'],
  ['Work the 14 rows of welt as on Back.', 'plain 14 rows of back'],
  ['Work in k2, p2 rib as for Back for 6 cm, ending with a WS row.', 'work rib of back until it 6 cm ending WS'],
  ['Cast on 52 (54: 56: 60) sts and work 12 rows in rib as for lower edge of Back.', 'CO 52 (54, 56, 60) here | plain 12 rows rib of back'],
  ['Shape armholes as given for Back.', 'as piece back (armholes)'],
  ['Shape raglan as for Back until 34 (36: 36: 38) sts rem.', 'as piece back (raglan) to 34 (36, 36, 38) sts'],
  ['Work armhole shaping as on Back.', 'as piece back (armhole shaping)'],
  ['Shape shoulder as for Back.', 'as piece back (shoulder)'],
  ['Shape shoulders and back neck to match Back.', 'as piece back (shoulders and back neck)'],
  [
    'Cont straight until front matches back to shoulder shaping, ending with RS facing.',
    'work until matches back to shoulder shaping ending WS',
  ],
  [
    'Work straight until armhole matches back armhole to start of shoulder shaping.',
    'work until matches back armhole to start of shoulder shaping',
  ],
  ['Cont as set until 14 rows fewer have been worked than on back to shoulder.', 'work patt until matches back to shoulder less 14 rows'],
  [
    'Work until there are 22 rows less than Back to start of shoulder shaping.',
    'work until matches back to start of shoulder shaping less 22 rows',
  ],
  ['Work as Left Front, reversing all shapings and position of buttonholes.', 'as piece left front reversing'],
  ['Work Right Front to correspond with Left Front, working the shapings at opposite ends.', 'as piece left front reversing'],
  ['As Left Front but with all shapings reversed.', 'as piece left front reversing'],
  ['Make to match Left Front, with shaping at opposite edges.', 'as piece left front reversing'],
  ['Work right front as a mirror image of left front.', 'as piece left front reversing'],
  ['Knit a second front in reverse.', 'as piece front reversing 1× more'],
  ['Work the right front like the left, but in mirror image.', 'as piece left reversing'],
  [
    'Work as given for left front, reversing shapings and noting that 1 extra row must be worked before the armhole and shoulder are shaped.',
    'as piece left front reversing',
  ],
  ['Follow instructions for Left Front, reversing the shaping by working 1 row more before neck.', 'as piece left front reversing'],
  ['Work Right Front as Left Front, working 1 row less before armhole shaping.', 'as piece left front reversing'],
  [
    'Left Front: Work as for Right Front, omitting buttonholes and reversing shapings.',
    'declare title Left Front | as piece right front reversing',
  ],
  ['Complete to match first side of neck, reversing all shapings.', 'as side first side of neck reversing'],
  ['Work other side of neck to match.', 'as side reversing'],
  ['Finish this side to correspond with the other.', 'as side other reversing'],
  ['Complete the second side as the first, reversing the shapings.', 'as side first reversing'],
  ['Work the left side in the same way, but mirrored.', 'as side reversing'],
  ['Shape right side of neck to match left side.', 'as side left side reversing'],
  ['Complete to match left shoulder.', 'as side left shoulder reversing'],
  ['Work remaining sts to match first side of neck.', 'as side first side of neck reversing'],
  ['Work 2nd side same as first side with shapings reversed.', 'as side first side reversing'],
  [
    'Rejoin wool to inner edge of second set of sts and finish to correspond with first side.',
    'join rejoin | as side first side reversing',
  ],
  ['Make the second sleeve exactly like the first.', 'as piece sleeve 1× more'],
  ['Knit another sleeve the same.', 'as piece sleeve 1× more'],
  ['Work a second one to match.', 'as piece 1× more'],
  ['Make the other pocket in the same manner.', 'as piece pocket 1× more'],
  ['Make one more piece like this.', 'as piece 1× more'],
  ['Both sleeves are worked alike.', ''],
  ['Work 2 pieces alike.', 'as piece 2× all'],
  ['Second Sleeve: Work as first sleeve, but do not break yarn.', 'declare title Second Sleeve | as piece first sleeve'],
  ['Work Rows 1-8 of Rope Cable 3 times.', 'work rows [numbers 1,2,3,4,5,6,7,8 of Rope Cable] 3×'],
  ['Work rows 3 to 10 as before.', 'work rows [numbers 3,4,5,6,7,8,9,10]'],
  ['Now work rows 1 to 6 of buttonhole band once more.', 'work rows [numbers 1,2,3,4,5,6 of buttonhole band] 1× more'],
  ['Rep Rows 5–12 of Back 2 (2: 3: 3) times.', 'rep rows [numbers 5,6,7,8,9,10,11,12 of Back] 2 (2, 3, 3)×'],
  [
    'Work Rows 1 to 20, then rep Rows 9 to 20 until piece measures 30 cm.',
    'work rows [numbers 1,2,3,4,5,6,7,8,9,10,11,12,13,14,15,16,17,18,19,20] | rep rows [numbers 9,10,11,12,13,14,15,16,17,18,19,20] until piece 30 cm',
  ],
  [
    'Rep the 8 rows of patt 4 (4: 5: 5) times in all, then work Rows 1-4 again.',
    'rep rows [name 8 of patt] 4 (4, 5, 5)× all | work rows [numbers 1,2,3,4] 1× more',
  ],
  ['Next row: As Row 3 to last 6 sts, k6.', 'row next: UNREAD "As Row 3 to last 6 sts" k{6}'],
  ['Next row: Work as given for 2nd row of rib on Back.', 'row next: as row rib on back rows 2'],
  ['Next 2 rows: as first 2 rows.', 'row next 2: as row rows 1,2'],
  [
    'Work as for Back to **, then work 10 (12: 12: 14) rows straight, ending with a WS row.',
    'as piece back to ** | plain 10 (12, 12, 14) rows ending WS',
  ],
  [
    'Next row (RS): Patt 30, turn and complete this side as for left side of Back neck.',
    'row next (RS): patt→over 30 turn | as piece left side of back neck',
  ],
  ['Make one pocket lining as for jacket front, leaving sts on a holder.', 'as piece jacket front | hold these on holder'],
  [
    'Using MC, work as given for first mitten to thumb, then reverse the thumb placement.',
    'change yarn | as piece first mitten to thumb reversing',
  ],
  [
    'Rep the last 2 rows 3 times more, then complete to match left shoulder, reversing shapings.',
    'rep rows [last 2] 3× more | as side left shoulder reversing',
  ],
];

describe('References between pieces and sides in many wordings', () => {
  it.each(rows)('%s', (text, expected) => {
    expect(read(text, { sizes })).toBe(expected);
  });
});
