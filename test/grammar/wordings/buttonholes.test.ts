/**
 * Buttonholes and bands, as different hands word them: leaflets of all decades, magazines, modern downloads. The tree was set down from the
 * words before it was read. Forms of the trade from memory; numbers and words made up here. What the grammar does not follow stands as UNREAD.
 */
import { describe, expect, it } from 'vitest';
import { read } from '../outline.ts';

const sizes = ['S', 'M', 'L'];

const rows: readonly (readonly [string, string])[] = [
  ['Buttonhole row (RS): K3, cast off 2, k to end.', 'row buttonhole (RS): k{3} BO 2 k→end'],
  ['Next row: P to last 3 sts, cast on 2, p3.', 'row next: p→last 3 CO 2 here p{3}'],
  [
    'Next row (RS): Rib 4, yrn, p2tog, *rib 14 (15, 16), yrn, p2tog; rep from * 5 times more, rib 4.',
    'row next (RS): rib→over 4 yrn pNtog{2} *[rib→over 14 (15, 16) yrn pNtog{2}]→5× more rib→over 4',
  ],
  ['Row 5: K4, *yo, k2tog, k12; repeat from * ending last repeat k4.', 'row 5: k{4} *[yo kNtog{2} k{12}]→end lastRepeat:k{4}'],
  [
    'Make buttonhole: k2, bind off 3 sts, k to end; on next row cast on 3 sts over those bound off.',
    'declare title Make buttonhole | row: k{2} BO 3 k→end UNREAD "on next row cast on 3 sts over those bound off"',
  ],
  ['Work a one-row buttonhole over next 3 sts.', 'row: work→over 3'],
  ['K2, k2tog, (yo) twice, ssk, k to end.', 'row: k{2} kNtog{2} [yo]→2× ssk k→end'],
  ['On next row, drop extra loop of yo2 and work (k1, p1) into it.', 'row next: resolve drops (k{1} p{1})into stitch'],
  [
    '4th row: Rib 3, cast off 3, (rib 11 including st on needle, cast off 3) 5 times, rib to end.',
    'row 4: rib→over 3 BO 3 [rib→over 11 BO 3]→5× rib→end',
  ],
  ['5th row: Rib to end, casting on 3 sts in place of those cast off.', 'row 5: rib→end CO 3 here over gaps'],
  ['Next row: In rib, cast on 2 sts where 2 were cast off on row before.', 'row next: rib→end CO 2 here over gaps'],
  ['Next row: Work in rib and cast on 2 sts over each buttonhole.', 'row next: CO 2 here over gaps'],
  [
    'Buttonhole Row 2 (WS): *Work to bound-off sts, cast on 3; rep from * to last group, work to end.',
    'row buttonhole 2 (WS): *[work→to gap CO 3 here]→until loose "last group" work→end',
  ],
  ['Work 3 (3, 4) more buttonholes evenly spaced 18 rows apart.', 'UNREAD "Work 3 (3, 4) more buttonholes evenly spaced 18 rows apart"'],
  [
    'Work the first buttonhole 4 rows from lower edge, the last 2 rows from top edge and the rest evenly between.',
    'declare rule work the first buttonhole 4 rows from lower edge, the last 2 rows from top edge and the rest evenly between',
  ],
  [
    'AT THE SAME TIME work buttonholes on rows 5 and 6 and every 17th and 18th rows thereafter.',
    'at the same time {UNREAD "work buttonholes on rows 5 and 6 and every 17th and 18th rows thereafter"}',
  ],
  ['Rep buttonhole rows 1 and 2 every 8 cm, 5 times.', 'rep rows [name buttonhole 1,2] {every n=5 measure=8}'],
  [
    'Work Buttonhole Row on next row, then every 12th row 4 (4, 5) times more.',
    'work rows [name buttonhole] {next; every n=4 (4, 5) k=12 more}',
  ],
  ['Mark position of 6 buttons on left band, the first to come 1 cm up from lower edge, the last 1 cm from top.', 'marker hang'],
  [
    'Make buttonholes to match markers as follows: rib 3, k2tog, yo, rib 3.',
    'declare rule make buttonholes to match markers as follows | row: rib→over 3 kNtog{2} yo rib→over 3',
  ],
  [
    'Work to correspond with buttonband, making buttonholes to match position of buttons thus: (RS) k3, yf, k2tog, k3.',
    'as piece buttonband reversing | row: k{3} yfwd(or yf (move)) kNtog{2} k{3}',
  ],
  ['Buttonhole: on RS, k3, yo, k2tog, patt to end.', 'declare title Buttonhole | row: k{3} yo kNtog{2} patt→end'],
  ['(Buttonhole row) K1, p1, k1, cast off 2 sts, rib to end.', 'row: k{1} p{1} k{1} BO 2 rib→end'],
  [
    'Next row: (K1, p1) twice, yo, k2tog, *(k1, p1) 7 times, yo, k2tog, rep from * to last 4 sts, (k1, p1) twice.',
    'row next: [k{1} p{1}]→2× yo kNtog{2} *[[k{1} p{1}]→7× yo kNtog{2}]→last 4 [k{1} p{1}]→2×',
  ],
  [
    'Button band: cast on 8 sts and work in garter st until band, slightly stretched, fits up front edge.',
    'declare title Button band | CO 8 here | work garter st until loose "band, slightly stretched, fits up front edge"',
  ],
  ['Buttonhole band: as button band, making 7 buttonholes.', 'declare title Buttonhole band | as piece button band'],
  ['Work as button band, but with the addition of 5 buttonholes.', 'as piece button band'],
  ['Rep the last row until 6 buttonholes have been worked.', 'rep rows [last] until loose "6 buttonholes have been worked"'],
  ['Next row: rib to end, working into back of each yo.', 'row next: rib→end'],
  ['Next row: k to double yo, (k1, k1 tbl) into it, k to end.', 'row next: UNREAD "k to double yo" (k{1} k tbl{1})into stitch k→end'],
  ['Row 3 (buttonhole row for girls only): k3, yo, k2tog, k to end.', 'row 3: k{3} yo kNtog{2} k→end'],
  [
    'Next row (RS): *work to marked buttonhole position, bind off 2 sts; rep from * across, work to end.',
    'row next (RS): *[UNREAD "work to marked buttonhole position" BO 2]→end work→end',
  ],
  ['Seed 4, bind off next 2 sts, seed to end.', 'row: rib→over 4 BO 2 rib→end'],
  ['Moss 3, cast off 3, moss 8 (9, 10), cast off 3, moss to end.', 'row: rib→over 3 BO 3 rib→over 8 (9, 10) BO 3 rib→end'],
  ['Row 2: moss to end, casting on 3 over the 3 cast off.', 'row 2: rib→end CO 3 here over gaps'],
  ['1st buttonhole: K3, yf, k2 tog, k to end.', 'declare title 1st buttonhole | row: k{3} yfwd(or yf (move)) kNtog{2} k→end'],
  ['K 2, wrap yarn twice round needle, k2tog, knit to end.', 'row: k{2} yo N times{2} kNtog{2} k→end'],
  [
    'Work 2 rows, then on the next row make the first of 5 buttonholes: k to last 5 sts, yo, k2tog, k3.',
    'plain 2 rows | row: k→last 5 yo kNtog{2} k{3}',
  ],
  [
    'Next row (RS): Work 5 sts, BO 2, work until 10 sts on RH needle after BO, BO 2, work to end.',
    'row next (RS): work→over 5 BO 2 work→10 on right after bind-off BO 2 work→end',
  ],
  [
    'Rib 3, *BO 2, rib 8 (9, 10) more sts; rep from * 4 times, BO 2, rib to end.',
    'row: rib→over 3 *[BO 2 rib→over 8 (9, 10)]→4× BO 2 rib→end',
  ],
  ['Work in rib for 4 rows, making buttonholes on second row.', 'plain 4 rows rib'],
  [
    'Rib 2 rows, work the buttonhole row, rib 3 rows. Cast off in rib.',
    'plain 2 rows rib | work rows [name buttonhole] | plain 3 rows rib | BO all all:0',
  ],
  [
    "Place buttonholes on right band for a woman's jacket and on the left for a man's.",
    "declare rule place buttonholes on right band for a woman's jacket and on the left for a man's",
  ],
  ['Work 9 rows in rib, working 5 buttonholes evenly spaced on 5th row.', 'plain 9 rows rib'],
  ['Keep the first 6 sts in garter st for buttonband.', 'declare rule keep the first 6 sts in garter st for buttonband'],
  ['The 5 sts at front edge are kept in moss st throughout.', 'declare rule 5 sts at front edge are kept in moss st throughout'],
  ['Slip the 8 band sts onto a pin and leave until needed.', 'hold next 8 on pin'],
  [
    'Rejoin yarn to 7 sts of band on safety pin and cont in garter st until strip is long enough to reach centre back neck.',
    'join rejoin 7 | work garter st until loose "strip is long enough to reach centre back neck"',
  ],
  ['Next row: K4, make 1-row buttonhole over 3 sts, k to end.', 'row next: k{4} work→over 3 k→end'],
  ['Buttonhole loop: cast on 8 sts, cast off 8 sts.', 'declare title Buttonhole loop | CO 8 here | BO 8'],
  [
    'Eyelet buttonhole row (RS): work 3 sts, YO, work 2 tog, work to last 5 sts, work 2 tog, YO, work 3.',
    'row eyelet buttonhole (RS): work→over 3 yo k2tog work→last 5 k2tog yo work→over 3',
  ],
  [
    'On row 5 of band work as follows: k3 (4, 2), *yo, k2tog, k9; rep from * ending k3 (4, 2) instead of k9.',
    'row: k{3 (4, 2)} *[yo kNtog{2} k{9}]→end then:k{3 (4, 2)}',
  ],
  [
    'Next row: K12 (13, 14), * cast off next 2 sts, k until there are 16 sts on right needle since last cast-off, rep from * 3 times more, cast off 2, k to end.',
    'row next: k{12 (13, 14)} *[BO 2 k→16 on right after bind-off]→3× more BO 2 k→end',
  ],
  ['Next row (WS): K across, CO 2 over each BO.', 'row next (WS): k→end CO 2 here over gaps'],
  [
    '1st row (WS, buttonhole row): p4, (yrn, p2tog, p8 (9, 10)) 4 times, yrn, p2tog, p to end.',
    'row 1 (WS): p{4} [yrn pNtog{2} p{8 (9, 10)}]→4× yrn pNtog{2} p→end',
  ],
  ['Work 13 rows more. Next row: make buttonhole as before.', 'plain 13 rows | row next: UNREAD "make buttonhole as before"'],
  [
    'Pick up and k 78 (82, 86) sts, work 2 rows rib, then make buttonholes: rib 4, *yo, k2tog, rib 12; rep from * to last 4 sts, rib 4.',
    'row: pick up 78 (82, 86) | plain 2 rows rib | row: rib→over 4 *[yo kNtog{2} rib→over 12]→last 4 rib→over 4',
  ],
  [
    'Row 3 (RS): K to marker, sm, k2, BO 3, k to end; Row 4: K to gap, CO 3, k2, sm, k to end.',
    'row 3 (RS): k→to marker marker slip k{2} BO 3 k→end | row 4: k→to gap CO 3 here k{2} marker slip k→end',
  ],
  [
    'Rib 4 sts from holder, inc 1 in next st, rib to end, working 1st buttonhole on 3rd row.',
    'row: take up 4 kfb rib→end UNREAD "working 1st buttonhole on 3rd row"',
  ],
  [
    'Place 6 band sts on a pin, k to last 6 sts, turn and place last 6 sts on another pin.',
    'row: hold next 6 on pin k→last 6 turn leaving 6',
  ],
  ['K3, yo, k2tog, k3, slip these 8 sts onto a safety pin.', 'row: k{3} yo kNtog{2} k{3} hold these 8 on safety pin'],
];

describe('Buttonholes and bands in many wordings', () => {
  it.each(rows)('%s', (text, expected) => {
    expect(read(text, { sizes })).toBe(expected);
  });
});
