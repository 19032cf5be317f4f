/**
 * Pockets, as different hands word them: leaflets of all decades, magazines, modern downloads. The tree was set down from the
 * words before it was read. Forms of the trade from memory; numbers and words made up here. What the grammar does not follow stands as UNREAD.
 */
import { describe, expect, it } from 'vitest';
import { read } from '../outline.ts';

const sizes = ['S', 'M', 'L'];

const rows: readonly (readonly [string, string])[] = [
  [
    'Pocket Lining (make 2): Cast on 24 (26, 26) sts. Work 10 cm in st st, ending with a k row. Leave sts on a holder.',
    'declare title Pocket Lining (make 2) | CO 24 (26, 26) here | work st st until it 10 cm ending RS | hold these on holder',
  ],
  [
    'Next row (RS): K 9 (10, 11), slip next 24 (26, 26) sts onto a holder, and in their place k across the sts of one pocket lining, k to end.',
    'row next (RS): k{9 (10, 11)} hold next 24 (26, 26) on holder take up  pocket lining k→end',
  ],
  ['Work 8 (9, 10), cast off 24 sts for pocket, work to end.', 'row: work→over 8 (9, 10) BO 24 work→end'],
  ['Next row: P to cast-off sts, p across 24 sts of pocket back, p to end.', 'row next: p→to gap take up 24 pocket lining p→end'],
  [
    'Next row: Purl to bound-off stitches, purl across pocket lining stitches, purl to end.',
    'row next: p→to gap take up  pocket lining p→end',
  ],
  [
    'K12, sl next 22 sts on a holder for pocket top, k22 lining sts, k12.',
    'row: k{12} hold next 22 on holder for pocket top take up 22 pocket lining k{12}',
  ],
  ['K to marker, BO to next marker, k to end.', 'row: k→to marker BO to marker k→end'],
  [
    'Row 41: k10, place 20 sts on stitch holder, with RS facing k20 of pocket lining, k10.',
    'row 41: k{10} hold next 20 on stitch holder change side take up 20 pocket lining k{10}',
  ],
  [
    'Pocket opening: K 8, with waste yarn k 20, slip these 20 sts back to left needle and k them again with main yarn, k to end.',
    'declare title Pocket opening | row: k{8} change yarn k{20} ret{20} k→these change yarn k→end',
  ],
  [
    'K11, knit next 20 sts with a length of contrast yarn, sl these 20 sts back onto left needle, k to end.',
    'row: k{11} k{20} change yarn ret{20} k→end',
  ],
  [
    'With RS facing slip the 24 pocket sts to smaller needle, join yarn and work 6 rows in k1, p1 rib. Bind off in rib.',
    'change side | UNREAD "slip the 24 pocket sts to smaller needle" | join rejoin | plain 6 rows rib | BO all all:0',
  ],
  [
    'Pocket Tops: Slip sts from holder onto a 3 mm needle, inc 1 st at each end of first row, work 5 rows rib; cast off.',
    'declare title Pocket Tops | take up  unworked | inc 1 bothEnds {} | plain 5 rows rib | BO all all:0',
  ],
  [
    'Place pocket: Next row (RS): Patt 14 (15, 16), patt across 26 lining sts, slip next 26 sts of front onto a thread, patt to end.',
    'declare title Place pocket | row next (RS): patt→over 14 (15, 16) take up 26 pocket lining hold next 26 on a thread patt→end',
  ],
  ['Next row: K10, rib 22, k10.', 'row next: k{10} rib→over 22 k{10}'],
  ['Next row: K 10, cast off 22 in rib, k to end.', 'row next: k{10} BO 22 k→end'],
  ['Knit across 9 sts, bind off next 22 sts purlwise, knit to end.', 'row: k→over 9 BO 22 k→end'],
  ['P9, purl the 22 sts of the lining from the holder, purl to end.', 'row: p{9} take up 22 lining from the p→end'],
  [
    'Next row (WS): P 9, with WS of lining facing p across 22 lining sts, p 9.',
    'row next (WS): p{9} change side take up 22 pocket lining p{9}',
  ],
  ['Sew pocket linings in place on wrong side.', ''],
  [
    'Set pocket: k 16, sl foll 24 sts to holder, k 24 pocket sts, k 16 (18, 20).',
    'declare title Set pocket | row: k{16} hold next 24 on holder take up 24 pocket lining k{16 (18, 20)}',
  ],
  [
    'Slip 24 sts left on holder onto needle. Work 4 rows moss st. Cast off in moss.',
    'take up 24 unworked | plain 4 rows moss st | BO all all:0',
  ],
  ['Pick up and k 24 sts along top of pocket and work 3 rows garter st.', 'row: pick up 24 | plain 3 rows garter st'],
  ['Patch pocket: CO 21, work 20 rows seed st, BO.', 'declare title Patch pocket | CO 21 here | plain 20 rows seed st | BO all all:0'],
  ['With RS facing, pick up 20 sts at marked row for patch pocket.', 'row: change side pick up 20'],
  [
    'Kangaroo pocket: with RS facing pick up 40 sts across front in the row above rib.',
    'declare title Kangaroo pocket | row: change side pick up 40',
  ],
  [
    'Dec 1 st at each end of every 4th row until 28 sts rem, leave on holder.',
    'dec 1 bothEnds {every k=4 until 28} | hold these on holder',
  ],
  ['Knit pocket sts together with body sts.', 'UNREAD "Knit pocket sts together with body sts"'],
  [
    'Inner pocket: K across 22 sts from holder 1, k 5, k across 22 sts from holder 2.',
    'declare title Inner pocket | row: take up 22 k{5} take up 22',
  ],
  [
    'Next row (RS): K6, place next 20 sts on hold, k20 lining sts from needle 2, k to last 26 sts, place next 20 sts on hold, k20 second lining sts, k6.',
    'row next (RS): k{6} hold next 20 on hold take up 20 pocket lining k→last 26 hold next 20 on hold take up 20 pocket lining k{6}',
  ],
  ['Rejoin yarn to rem sts and work 8 cm in same way.', 'join rejoin | work until it 8 cm'],
  ['Next row: K across both sets of sts to close pocket opening.', 'row next: k→end'],
  [
    'Next row (RS): Cast off 24 sts knitwise, k to end. Following row: P to end, cast on 24 sts for pocket bag.',
    'row next (RS): BO 24 k→end | row next: p→end CO 24 here',
  ],
  ['CO 24 over pocket gap.', 'CO 24 here over gaps'],
  ['Next row: Purl, casting on 24 sts over those left on holder.', 'row next: p→end CO 24 here over gaps'],
  [
    'Work pocket flap: dec 1 st each end every RS row until 2 sts rem, k2tog.',
    'declare title Work pocket flap | dec 1 bothEnds {every RS until 2} | row: kNtog{2}',
  ],
  [
    'When work measures 15 cm, place pockets as follows: k7, sl 20 sts on holder, k 20 from lining, k to end.',
    'work until work 15 cm | row: UNREAD "place pockets as follows" k{7} hold next 20 on holder take up 20 pocket lining k→end',
  ],
  ['Next row: [P 8, p across 20 sts from lining] twice, p to end.', 'row next: [p{8} take up 20 pocket lining]→2× p→end'],
  ['Pocket edging: on 20 held sts work rows 1 to 5 of border.', 'declare title Pocket edging | work rows [numbers 1,2,3,4,5 of border]'],
  ['Row 7: K5, (yo, k2tog) 8 times, k5 for pocket eyelets.', 'row 7: k{5} [yo kNtog{2}]→8× k{5}'],
  ['Change to smaller needles and rib 3 rows on these 20 sts. BO loosely.', 'change needle | plain 3 rows rib | BO all all:0'],
  ['Leave pocket on spare needle; make a second to match.', 'hold these on spare needle | as piece 1× more'],
  [
    'Pocket linings, both alike: with larger needles CO 19 (21, 23) sts.',
    'declare title Pocket linings, both alike | change needle | CO 19 (21, 23) here',
  ],
  [
    'Inc 1 st at both ends of last row of lining: 26 sts. Place sts on holder.',
    'evenly inc 2 on last row | UNREAD "lining: 26 sts" | hold these on holder',
  ],
  [
    'Next row (RS): knit 11 (12, 13), knit pocket lining sts, holding front sts in front slip the next 21 sts to a holder, knit to end.',
    'row next (RS): k{11 (12, 13)} take up  pocket lining UNREAD "holding front sts in front slip the next 21 sts to a holder" k→end',
  ],
  ['Next row: P 30, k 24 (pocket top), p to end.', 'row next: p{30} k{24} p→end'],
  ['Next row: P 30, cast off 24 kwise on WS, p to end, 24 sts cast off for each pocket.', 'row next: p{30} BO 24 p→end =24 decreased'],
  ['Pocket row: * k 12, work 20 in rib, k 12; rep from * once more.', 'row pocket: *[k{12} work→over 20 k{12}]→1× more'],
  ['Return 20 sts from holder to LH needle; rib 6 rows; BO.', 'take up 20 unworked | plain 6 rows rib | BO all all:0'],
  [
    'Knit first 10 sts, place these on a pin, k next 24, leave rem 10 on a second pin.',
    'row: k→over 10 hold these on pin k→over 24 hold remaining 10 on pin',
  ],
  [
    'With smaller needles and RS facing, work in rib across 21 sts on holder, inc 1 in last st.',
    'row: change side take up 21 | inc 1 edge {}',
  ],
  ['Slip-stitch pocket edges in position.', ''],
  ['Work as first pocket lining but do not break yarn.', 'as piece first pocket lining'],
  ['On foll row, work to held sts, CO 20, work to end.', 'row: UNREAD "work to held sts" CO 20 here work→end'],
  [
    'K8, [slip next 18 sts to holder, k18 from lining], k to end.',
    'row: k{8} [hold next 18 on holder take up 18 pocket lining]→never k→end',
  ],
  [
    'Next row (RS): K to first marker, rm, slip next 22 sts onto a holder, k 22 lining sts, rm, k to end.',
    'row next (RS): k→to first marker marker remove hold next 22 on holder take up 22 pocket lining marker remove k→end',
  ],
  [
    'K 11, BO 20 sts in rib, k until there are 11 sts on right needle after BO, turn; p11, p 20 lining sts, p to end.',
    'row: k{11} BO 20 k→11 on right after bind-off turn | row: p{11} take up 20 pocket lining p→end',
  ],
  ['Pick up and k 22 sts across pocket top sts, k 1 row, then BO purlwise.', 'row: pick up 22 | plain 1 rows knit | BO all all:0'],
  [
    'Slip 20 sts from holder onto needle, join yarn, work 4 rows garter st, dec 1 st each end of last row, BO.',
    'take up 20 unworked | join rejoin | plain 4 rows garter st (evenly dec 2 on last row) | BO all all:0',
  ],
  [
    'Cast on 20, work 24 rows st st, do not BO; slip sts to a spare needle, make another the same.',
    'CO 20 here | plain 24 rows st st | change other | hold these on spare needle | as piece 1× more',
  ],
  [
    'Next row: K12, place next 20 sts on a holder and in their place k across 20 sts of pocket lining, k to end.',
    'row next: k{12} hold next 20 on holder take up 20 pocket lining k→end',
  ],
  [
    'Next row (place pocket): K10, cast off 18, k until 10 sts on needle after cast-off, k across sts of lining, k to end.',
    'row next: k{10} BO 18 k→10 on right after bind-off take up  pocket lining k→end',
  ],
  [
    'Pocket top: slip 20 sts from holder to needle, work 6 rows rib, cast off in rib.',
    'declare title Pocket top | take up 20 unworked | plain 6 rows rib | BO all all:0',
  ],
  [
    'K8, slip next 22 sts to a thread, work across the 22 lining sts from spare needle, k8.',
    'row: k{8} hold next 22 on a thread take up 22 pocket lining k{8}',
  ],
  [
    'Cast on 22 sts for each pocket lining and work 28 rows in st st, leaving sts on a spare needle.',
    'CO 22 here | plain 28 rows st st | hold these on spare needle',
  ],
  [
    'On the next RS row knit 9 sts, put 21 sts on waste yarn, cast on 21 sts in their place, k9.',
    'row next (RS): k{9} hold next 21 on waste yarn CO 21 here k{9}',
  ],
];

describe('Pockets in many wordings', () => {
  it.each(rows)('%s', (text, expected) => {
    expect(read(text, { sizes })).toBe(expected);
  });
});
