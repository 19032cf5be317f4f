/** One instruction as different houses print it: stops, dashes, italics, yarns in the label, clauses in another order. */
import { describe, expect, it } from 'vitest';
import { read } from '../outline.ts';

const sizes = ['S', 'M', 'L'];

// Forms of the trade; numbers and words made up here.
const rows: readonly (readonly [text: string, tree: string])[] = [
  // a count behind a dash is no row number
  ['Row 6: As Row 4 – 21 sts.', 'row 6: as row rows 4  =21 total'],
  ['Rows 3 and 4: As Rows 1 and 2 – 245 sts.', 'row 3,4: as row rows 1,2  =245 total'],
  ['Rep Rows 1–4 – 45 sts.', 'rep rows [numbers 1,2,3,4] =45 total'],
  // rows named twice over
  ['Repeat these last two rnds once more.', 'rep rows [last 2] 1× more'],
  ['Rep these last 4 rows 3 times more.', 'rep rows [last 4] 3× more'],
  // every even row
  ['Rnd 2 and every even rnd: Knit.', 'round 2 and all even: k→end'],
  ['Row 2 and all even rows: Purl.', 'row 2 and all even: p→end'],
  // the yarn in the label
  ['Row 1 (RS) with A: Kfb, k to last 2 sts, k2tog.', 'row 1 (RS): kfb k→last 2 kNtog{2}'],
  ['Row 3, with MC: K.', 'row 3: k→end'],
  ['Rnd 4 in yarn B: Purl.', 'round 4: p→end'],
  ['Rows 1 and 2 using colour 2: Knit.', 'row 1,2: k→end'],
  // labels with a name at the beginning of a line
  [
    'Increase row 1 (RS): K2, yo, k to end. [+1]\nIncrease row 2 (WS): K2, yo, k to end. [+1]',
    'row increase 1 (RS): k{2} yo k→end =1 increased | row increase 2 (WS): k{2} yo k→end =1 increased',
  ],
  // numbered needles
  ['With No. 12 needles cast on 104 [112, 120] sts.', 'change needle | CO 104 (112, 120) here'],
  ['Change to No. 10 needles and work 4 rows in st st.', 'change needle | plain 4 rows st st'],
  // stops of old leaflets
  ['Next row: P. to end.', 'row next: p→end'],
  ['Work until the armholes measure 9 [9¼, 9½] ins., ending with a p. row.', 'work until armholes 9 (9.25, 9.5) in ending WS'],
  [
    'Cast off 7 [7, 8] sts. at beg. of next 6 rows. Cast off the rem. 30 [32, 32] sts.',
    'bindOff rows 7 (7, 8) {next n=6} | BO remaining all:30 (32, 32)',
  ],
  ['Work until piece measures 3 cm, ending with a wrong-side row.', 'work until piece 3 cm ending WS'],
  ['Dec. 1 st. at the front edge on the 3rd and every foll. 4th row.', 'dec 1 edge front {nth k=3; every k=4}'],
  // the first row told behind the fabric
  [
    'Cont in st st, beg with a k row, until work measures 9 (10, 11) cm, ending with a p row.',
    'work st st beg k until work 9 (10, 11) cm ending WS',
  ],
  ['Work in st st, beg with a k row, for 12 rows.', 'plain 12 rows st st beg k'],
  ['Work in rib, beg with Row 2, for 7 rows.', 'plain 7 rows rib beg row 2'],
  // sentences that only tell what the rows are
  ['These 2 rows make garter stitch with two ridges of purl.', 'declare forms'],
  ['These 4 rows give the rib.', 'declare forms'],
  // the end of a crown
  ['Cut the yarn and pull it through the remaining sts twice.', 'change break | join thread'],
  ['Break yarn, pass tail through all sts and pull tight.', 'change break | join thread'],
  // all stitches of a side
  ['Rep the last 2 rows until all the side sts have been taken in, ending with a WS row.', 'rep rows [last 2] until all worked ending WS'],
  // a verb goes on over a list of pieces
  [
    'Joining rnd: Knit the 78 (86, 94) sts of the back, the 50 (54, 58) sts of one sleeve, the 78 (86, 94) sts of the front and the 50 (54, 58) sts of the other sleeve.',
    'round joining: k{78 (86, 94)} k{50 (54, 58)} k{78 (86, 94)} k{50 (54, 58)}',
  ],
  // stitches that come back, and stitches that go back to be worked again
  ['Return 70 (76, 84) sts to needle.', 'take up 70 (76, 84) unworked'],
  ['Return 2 sts to left needle.', 'row: ret{2}'],
  // sentences about the piece, and sewing
  ['Worked flat. Cast on 5 sts.', 'declare rule worked flat. | CO 5 here'],
  ['Worked from 61 sts, however they come to be on the needle.', 'declare panel 0+61'],
  ['10 (12, 14) sts lie between the double stitches.', '=10 (12, 14) part (wrapped)'],
  ['With black, embroider two eyes over R9. Work three whiskers on each side.', ''],
  // an order behind it is not passed over with it
  [
    'Sew the last 6 rows under, then pick up and knit 40 sts along the edge.',
    'UNREAD "Sew the last 6 rows under, then pick up and knit 40 sts along the edge."',
  ],
  // edge stitches of a stitch pattern
  ['Any multiple of 2, with an edge stitch at each side.', 'declare multiple 2+2'],
  ['Multiple of 6 sts plus 1, plus 2 edge sts at each side.', 'declare multiple 6+5'],
];

describe('one instruction in many houses', () => {
  it.each(rows)('%s', (text, tree) => {
    expect(read(text, { sizes })).toBe(tree);
  });
});
