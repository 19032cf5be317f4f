/** Buttonholes and bands: every wording with the tree it must read into. Forms of the trade; numbers and words made up here. */
import { describe, expect, it } from 'vitest';
import { read } from '../outline.ts';

/** Sizes of the draft, then each text with its outline. */
const tables: readonly { readonly sizes: readonly string[]; readonly rows: readonly (readonly [string, string])[] }[] = [
  {
    sizes: ['XS', 'S', 'M', 'L'],
    rows: [
      [
        '1st buttonhole row (RS): Rib 4, [cast off 2 sts, rib until there are 14 (15: 16: 17) sts on right needle after cast-off] 6 times, cast off 2 sts, rib to end.',
        'row 1st buttonhole (RS): rib→over 4 [BO 2 rib→14 (15, 16, 17) on right after bind-off]→6× BO 2 rib→end',
      ],
      ['2nd row: Rib, casting on 3 sts over those cast off.', 'row 2: rib→end CO 3 here over gaps'],
      [
        'Buttonhole row: Patt 4, BO 3, patt to end. Next row: Patt, CO 3 over gap.',
        'row buttonhole: patt→over 4 BO 3 patt→end | row next: patt→end CO 3 here over gaps',
      ],
      ['*Bind off 4 sts, rib 17; rep from * 5 more times, rib to end.', 'row: *[BO 4 rib→over 17]→5× more rib→end'],
      ['Next row: Work across, casting on 3 sts above each gap.', 'row next: work→end CO 3 here over gaps'],
      [
        'Rib 3, [yo, k2tog, rib 15 (16: 17: 18)] 6 times, yo, k2tog, rib 5.',
        'row: rib→over 3 [yo kNtog{2} rib→over 15 (16, 17, 18)]→6× yo kNtog{2} rib→over 5',
      ],
      ['K 3, k2tog, yfwd, k to end.', 'row: k{3} kNtog{2} yfwd(or yf (move)) k→end'],
      ['Next row (RS): Moss 3, p2tog, yrn, moss 3, patt to end.', 'row next (RS): rib→over 3 pNtog{2} yrn rib→over 3 patt→end'],
      ['Patt 5, yo, work 2 tog, patt to end.', 'row: patt→over 5 yo k2tog patt→end'],
      [
        'Make a buttonhole on next row, then on every foll 14th (16th: 16th: 18th) row 5 times more.',
        'work rows [name buttonhole] {next; every n=5 k=14 (16, 16, 18) more}',
      ],
      ['Work Buttonhole Row every 20 rows 6 (6, 7, 7) times.', 'work rows [name buttonhole] {every n=6 (6, 7, 7) k=20}'],
      ['Make 7 buttonholes to correspond with buttons.', 'declare rule make 7 buttonholes to correspond with buttons'],
      ['Next row: Rib to end, casting on 2 sts over each 2 cast off on previous row.', 'row next: rib→end CO 2 here over gaps'],
      ['Work 1 buttonhole on next row.', 'work rows [name buttonhole] {next}'],
      [
        'Row 4 (buttonhole row): Rib 5, *yo, k2tog, rib 10; rep from * to last 7 sts, yo, k2tog, rib 5.',
        'row 4: rib→over 5 *[yo kNtog{2} rib→over 10]→last 7 yo kNtog{2} rib→over 5',
      ],
      [
        'Next row: Rib 3, cast off 2 sts, rib to last 5 sts, cast off 2 sts, rib to end.',
        'row next: rib→over 3 BO 2 rib→last 5 BO 2 rib→end',
      ],
      ['Next row: Rib to end, casting on 2 sts over cast-off sts.', 'row next: rib→end CO 2 here over gaps'],
      ['Make buttonhole on 5th and every foll 20th row.', 'work rows [name buttonhole] {nth k=5; every k=20}'],
      [
        'With RS of left front facing, pick up & k 96 (102, 108, 112) sts; work 7 rows rib, beg Row 2.',
        'row: change side pick up 96 (102, 108, 112) | plain 7 rows rib beg row 2',
      ],
      ['Cast on 11 sts; Row 1 (RS): K3, [p1, k1] 4 times, k1.', 'CO 11 here | row 1 (RS): k{3} [p{1} k{1}]→4× k{1}'],
      ['Keep 7 sts at front edge in garter st throughout.', 'declare rule keep 7 sts at front edge in garter st throughout'],
      [
        'Cont in rib until band fits up front edge when slightly stretched.',
        'work rib until loose "band fits up front edge when slightly stretched"',
      ],
      [
        'Work in rib until band, when slightly stretched, fits up front edge to neck.',
        'work rib until loose "band, when slightly stretched, fits up front edge to neck"',
      ],
    ],
  },
  {
    sizes: ['XS', 'S', 'M'],
    rows: [
      [
        'Buttonhole row (RS): Rib 4, *yo, k2tog, rib 12 (13, 14); rep from * 4 times more, yo, k2tog, rib 3.',
        'row buttonhole (RS): rib→over 4 *[yo kNtog{2} rib→over 12 (13, 14)]→4× more yo kNtog{2} rib→over 3',
      ],
      ['Buttonhole row 1: Rib 4, BO 2, rib to last 6 sts, BO 2, rib to end.', 'row buttonhole 1: rib→over 4 BO 2 rib→last 6 BO 2 rib→end'],
      ['Buttonhole row 2: Rib to end, casting on 2 sts over each gap.', 'row buttonhole 2: rib→end CO 2 here over gaps'],
      ['Next row: Rib, casting on 3 sts over those cast off on previous row.', 'row next: rib→end CO 3 here over gaps'],
      ['1st buttonhole row: K3, cast off 2 sts, k to end.', 'row 1st buttonhole: k{3} BO 2 k→end'],
      [
        '2nd buttonhole row: K to end, casting on 2 sts over cast off sts of previous row.',
        'row 2nd buttonhole: k→end CO 2 here over gaps',
      ],
      ['Next row (RS): K2, yo, k2tog, k to end.', 'row next (RS): k{2} yo kNtog{2} k→end'],
      ['Next row (buttonhole): K2, yfwd, k2tog, k to end.', 'row next: k{2} yfwd(or yf (move)) kNtog{2} k→end'],
      ['Rep buttonhole row every 16th row 5 times more.', 'rep rows [name buttonhole] {every n=5 k=16 more}'],
      ['Work buttonhole row on 5th and every foll 20th row.', 'work rows [name buttonhole] {nth k=5; every k=20}'],
      ['Keep 5 sts at front edge in garter st.', 'declare rule keep 5 sts at front edge in garter st'],
      [
        'Work 3 rows in rib. Work buttonhole row. Work 3 rows in rib. Cast off in rib.',
        'plain 3 rows rib | work rows [name buttonhole] | plain 3 rows rib | BO all all:0',
      ],
      ['Work 5 rows in garter st, working buttonholes on Row 3.', 'plain 5 rows garter st'],
    ],
  },
];

describe('Buttonholes and bands', () => {
  for (const { sizes, rows } of tables) {
    it.each(rows)('%s', (text, expected) => {
      expect(read(text, { sizes })).toBe(expected);
    });
  }
});
