/** Repeats of rows: every wording with the tree it must read into. Forms of the trade; numbers and words made up here. */
import { describe, expect, it } from 'vitest';
import { read } from '../outline.ts';

/** Sizes of the draft, then each text with its outline. */
const tables: readonly { readonly sizes: readonly string[]; readonly rows: readonly (readonly [string, string])[] }[] = [
  {
    sizes: ['XS', 'S', 'M', 'L'],
    rows: [
      ['Rep last 3 rows 6 times more.', 'rep rows [last 3] 6× more'],
      ['Rep last 3 rows 6 more times.', 'rep rows [last 3] 6× more'],
      ['Rep the last 2 rows another 5 times.', 'rep rows [last 2] 5× more'],
      ['Rep these 2 rows a further 5 times.', 'rep rows [these 2] 5× more'],
      ['Rep last 3 rows once more.', 'rep rows [last 3] 1× more'],
      ['Rep last 2 rows twice more.', 'rep rows [last 2] 2× more'],
      ['Rep last 3 rows 6 times in all.', 'rep rows [last 3] 6× all'],
      ['Work last 2 rows a total of 5 times.', 'work rows [last 2] 5× all'],
      ['Rep last 4 rows for a total of 5 times.', 'rep rows [last 4] 5× all'],
      ['Rep these 5 rows twice.', 'rep rows [these 5] 2×'],
      ['Work these 3 rows 6 times in all.', 'work rows [these 3] 6× all'],
      ['Rep last row every 4th row 6 times.', 'rep rows [last] {every n=6 k=4}'],
      ['Rep Row 3 once more.', 'rep rows [numbers 3] 1× more'],
      ['Rep last 3 rows 4 more times, then work Row 1 once.', 'rep rows [last 3] 4× more | work rows [numbers 1] 1×'],
      ['Rep last row 3 times.', 'rep rows [last] 3×'],
      ['Rep these 2 rows until 78 sts rem, ending with a p row.', 'rep rows [these 2] until 78 sts ending WS'],
      ['Rep last 2 rows until armhole measures 20 cm.', 'rep rows [last 2] until armhole 20 cm'],
      [
        'Rep Rows 1–4 6 (7, 8, 8) times, then work Rows 1 and 2 once more.',
        'rep rows [numbers 1,2,3,4] 6 (7, 8, 8)× | work rows [numbers 1,2] 1× more',
      ],
      ['Work Rows 1–9 twice.', 'work rows [numbers 1,2,3,4,5,6,7,8,9] 2×'],
      [
        'Work Rows 1–10 of patt 3 (3, 4, 4) times, then Rows 1–6 again.',
        'work rows [numbers 1,2,3,4,5,6,7,8,9,10 of patt] 3 (3, 4, 4)× | rep rows [numbers 1,2,3,4,5,6] 1× more',
      ],
      ['Rep Rows 4 and 5 for patt.', 'declare forms'],
      ['Work rows 1 to 8 0 (1, 2, 2) times more.', 'work rows [numbers 1,2,3,4,5,6,7,8] 0 (1, 2, 2)× more'],
      [
        'Work Rows 1–8 2 (3, 3, 3) times, then Rows 1–4 once more.',
        'work rows [numbers 1,2,3,4,5,6,7,8] 2 (3, 3, 3)× | rep rows [numbers 1,2,3,4] 1× more',
      ],
      ['Rep Rows 1 and 3 until rib measures 6 cm.', 'rep rows [numbers 1,3] until rib 6 cm'],
      [
        'Work Rows 1–18 once, then Rows 1–7 again.',
        'work rows [numbers 1,2,3,4,5,6,7,8,9,10,11,12,13,14,15,16,17,18] 1× | rep rows [numbers 1,2,3,4,5,6,7] 1× more',
      ],
      ['Rep Rows 4–7 for patt.', 'declare forms'],
      [
        '*Work 11 rows even. Dec row. Rep from * 4 times more.',
        'declare blockMark * | plain 11 rows | work rows [name dec] 1× | rep rows [mark *] 4× more',
      ],
      ['Rep from * to * 5 times.', 'rep rows [mark * to *] 5×'],
      ['Rep from ** to *** 3 times more.', 'rep rows [mark ** to ***] 3× more'],
      ['These 3 rows form rib.', 'declare forms rib'],
      ['These 5 rows set patt.', 'declare forms patt'],
      ['Last 3 rows set patt.', 'declare forms patt'],
      ['Rep these 3 rows for patt.', 'declare forms'],
      ['These 3 rows are rib patt and are repeated throughout.', 'declare forms'],
      ['Last 4 rows form patt. Rep last 4 rows 5 times more.', 'declare forms patt | rep rows [last 4] 5× more'],
      ['These 2 rows form rib. Work a further 16 rows.', 'declare forms rib | plain 16 rows'],
      ['Rep 1st and 2nd rows 4 times more.', 'rep rows [numbers 1,2] 4× more'],
      ['Rep 1st to 8th rows twice.', 'rep rows [numbers 1,2,3,4,5,6,7,8] 2×'],
      [
        'Work 1st to 8th rows once, then 1st to 4th rows again.',
        'work rows [numbers 1,2,3,4,5,6,7,8] 1× | rep rows [numbers 1,2,3,4] 1× more',
      ],
      ['Rep last 6 rows – (0, 1, 3) times more.', 'rep rows [last 6] – (0, 1, 3)× more'],
      ['Rep the last 2 rows until there are 22 sts.', 'rep rows [last 2] until 22 sts'],
      ['Repeat these two rows seven more times.', 'rep rows [these 2] 7× more'],
      ['Rep Rows 5 and 6, 8 times more.', 'rep rows [numbers 5,6] 8× more'],
      ['Work Rows 1-4 a total of 6 times.', 'work rows [numbers 1,2,3,4] 6× all'],
      ['Rep last 2 rnds 19 times more. 242 sts.', 'rep rows [last 2] 19× more =242 total'],
      ['Work rep of Rows 1–4 until piece measures 32 cm, ending with Row 4.', 'work rows [numbers 1,2,3,4] until piece 32 cm ending row 4'],
      ['Cont to rep Rows 1–8 until sleeve measures 42 cm.', 'rep rows [numbers 1,2,3,4,5,6,7,8] until sleeve 42 cm'],
    ],
  },
  {
    sizes: ['one'],
    rows: [
      ['Rows 1–4 form patt.', 'declare forms patt'],
      ['These 3 rows are rib patt and are repeated throughout.', 'declare forms'],
    ],
  },
  {
    sizes: ['XS', 'S', 'M'],
    rows: [
      ['Repeat last two rows four times more.', 'rep rows [last 2] 4× more'],
      ['Repeat the last 2 rows 4 (5, 6) times.', 'rep rows [last 2] 4 (5, 6)×'],
      ['Repeat last row once.', 'rep rows [last] 1×'],
      ['Rep last 4 rows until piece measures 12 cm, ending with Row 2.', 'rep rows [last 4] until piece 12 cm ending row 2'],
      ['Rep last 2 rounds 6 more times, then knit 1 round.', 'rep rows [last 2] 6× more | plain 1 rounds knit'],
      ['Rep these 2 rnds 5 times more.', 'rep rows [these 2] 5× more'],
      ['Work last 2 rows 4 more times.', 'work rows [last 2] 4× more'],
      ['Work these 4 rows 3 times in total.', 'work rows [these 4] 3× all'],
      ['Work the last 6 rows once more.', 'work rows [last 6] 1× more'],
      ['Rep Rows 1-4 until 60 rows have been worked.', 'rep rows [numbers 1,2,3,4] until 60 rows'],
      ['Rep Rows 1–4 three more times, ending with Row 3.', 'rep rows [numbers 1,2,3,4] 3× more ending row 3'],
      ['Work Rows 1–4 until piece measures 10 cm.', 'work rows [numbers 1,2,3,4] until piece 10 cm'],
      ['Work Rows 1-8 once, then Rows 1-4 once.', 'work rows [numbers 1,2,3,4,5,6,7,8] 1× | rep rows [numbers 1,2,3,4] 1×'],
      ['Work Rows 1–12 of lace patt 4 times.', 'work rows [numbers 1,2,3,4,5,6,7,8,9,10,11,12 of lace patt] 4×'],
      ['Repeat Rows 1 through 4 twice.', 'rep rows [numbers 1,2,3,4] 2×'],
      ['Rep rows 1 and 2 another 5 times.', 'rep rows [numbers 1,2] 5× more'],
      ['Rep 3rd and 4th rows until work measures 20 cm.', 'rep rows [numbers 3,4] until work 20 cm'],
      ['Rep the last 4 rows 0 (1, 1) more times.', 'rep rows [last 4] 0 (1, 1)× more'],
      ['Rep Rows 1–4 once more, then Rows 1 and 2 once.', 'rep rows [numbers 1,2,3,4] 1× more | rep rows [numbers 1,2] 1×'],
      ['Rep from ** 3 times.', 'rep rows [mark **] 3×'],
      ['Repeat from * to ** once more.', 'rep rows [mark * to **] 1× more'],
      ['Rep these 2 rows until all sts are worked.', 'rep rows [these 2] until all worked'],
      ['Rep last 2 rows until 3 sts rem.', 'rep rows [last 2] until 3 sts'],
      ['Rep the last row until 5 sts rem on needle.', 'rep rows [last] until 5 sts (needle)'],
      ['Work Rows 1 to 6 of patt twice more.', 'work rows [numbers 1,2,3,4,5,6 of patt] 2× more'],
      ['Cont repeating Rows 1–4 until piece measures 20 cm.', 'rep rows [numbers 1,2,3,4] until piece 20 cm'],
      ['Rep last 8 rows for patt.', 'declare forms'],
      ['These 8 rows form the pattern.', 'declare forms pattern'],
      ['These 12 rows form patt and are repeated.', 'declare forms patt and are repeated'],
      ['The last 2 rows form st st.', 'declare forms st st'],
      ['Rows 1–4 form the cable pattern.', 'declare forms cable pattern'],
      ['Rep Rows 1–8 throughout.', 'declare forms'],
      ['Repeat these 2 rows for rib.', 'declare forms'],
      ['Rep last 2 rows 3 times more, dec 1 st at end of last row.', 'rep rows [last 2] 3× more | evenly dec 1 on last row'],
    ],
  },
];

describe('Repeats of rows', () => {
  for (const { sizes, rows } of tables) {
    it.each(rows)('%s', (text, expected) => {
      expect(read(text, { sizes })).toBe(expected);
    });
  }
});
