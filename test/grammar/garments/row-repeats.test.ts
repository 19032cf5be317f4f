/** Repeats of rows: every wording with the tree it must read into. Forms of the trade; numbers and words made up here. */
import { describe, expect, it } from 'vitest';
import { read } from '../outline.ts';

/** Sizes of the draft, then each text with its outline. */
const tables: readonly { readonly sizes: readonly string[]; readonly rows: readonly (readonly [string, string])[] }[] = [
  {
    sizes: ['XS', 'S', 'M', 'L'],
    rows: [
      ['Rep last 2 rows 5 times more.', 'rep rows [last 2] 5× more'],
      ['Rep last 2 rows 5 more times.', 'rep rows [last 2] 5× more'],
      ['Rep the last 2 rows another 5 times.', 'rep rows [last 2] 5× more'],
      ['Rep these 2 rows a further 5 times.', 'rep rows [these 2] 5× more'],
      ['Rep last 2 rows once more.', 'rep rows [last 2] 1× more'],
      ['Rep last 2 rows twice more.', 'rep rows [last 2] 2× more'],
      ['Rep last 2 rows 5 times in all.', 'rep rows [last 2] 5× all'],
      ['Work last 2 rows a total of 5 times.', 'work rows [last 2] 5× all'],
      ['Rep last 4 rows for a total of 5 times.', 'rep rows [last 4] 5× all'],
      ['Rep these 4 rows twice.', 'rep rows [these 4] 2×'],
      ['Work these 2 rows 5 times in all.', 'work rows [these 2] 5× all'],
      ['Rep last row every 4th row 5 times.', 'rep rows [last] {every n=5 k=4}'],
      ['Rep Row 2 once more.', 'rep rows [numbers 2] 1× more'],
      ['Rep last 2 rows 3 more times, then work Row 1 once.', 'rep rows [last 2] 3× more | work rows [numbers 1] 1×'],
      ['Rep last row 3 times.', 'rep rows [last] 3×'],
      ['Rep these 2 rows until 78 sts rem, ending with a p row.', 'rep rows [these 2] until 78 sts ending WS'],
      ['Rep last 2 rows until armhole measures 20 cm.', 'rep rows [last 2] until armhole 20 cm'],
      ['Rep from ** until all sts are worked.', 'rep rows [mark **] until all worked'],
      ['Rep Rows 1–4 6 (7, 8, 8) times, then work Rows 1 and 2 once more.', 'rep rows [numbers 1,2,3,4] 6 (7, 8, 8)× | work rows [numbers 1,2] 1× more'],
      ['Work Rows 1–8 twice.', 'work rows [numbers 1,2,3,4,5,6,7,8] 2×'],
      ['Work Rows 1–10 of patt 3 (3, 4, 4) times, then Rows 1–6 again.', 'work rows [numbers 1,2,3,4,5,6,7,8,9,10 of patt] 3 (3, 4, 4)× | rep rows [numbers 1,2,3,4,5,6]'],
      ['Rep Rows 3 and 4 for patt.', 'declare forms'],
      ['Work rows 1 to 8 0 (1, 2, 2) times more.', 'work rows [numbers 1,2,3,4,5,6,7,8] 0 (1, 2, 2)× more'],
      ['Work Rows 1–8 2 (3, 3, 3) times, then Rows 1–4 once more.', 'work rows [numbers 1,2,3,4,5,6,7,8] 2 (3, 3, 3)× | rep rows [numbers 1,2,3,4] 1× more'],
      ['Rep Rows 1 and 2 until rib measures 5 cm.', 'rep rows [numbers 1,2] until rib 5 cm'],
      ['Work Rows 1–16 once, then Rows 1–6 again.', 'work rows [numbers 1,2,3,4,5,6,7,8,9,10,11,12,13,14,15,16] 1× | rep rows [numbers 1,2,3,4,5,6]'],
      ['Rep Rows 3–6 for patt.', 'declare forms'],
      ['*Work 9 rows even. Dec row. Rep from * 3 times more.', 'declare blockMark * | plain 9 rows | work rows [name dec] 1× | rep rows [mark *] 3× more'],
      ['Rep from ** to ** once.', 'rep rows [mark ** to **] 1×'],
      ['Rep from * to * 4 times.', 'rep rows [mark * to *] 4×'],
      ['Rep from ** to *** 3 times more.', 'rep rows [mark ** to ***] 3× more'],
      ['These 2 rows form rib.', 'declare forms rib'],
      ['These 4 rows set patt.', 'declare forms patt'],
      ['Last 2 rows set patt.', 'declare forms patt'],
      ['Rep these 2 rows for patt.', 'declare forms'],
      ['From 1st to 14th row forms patt.', 'declare forms patt'],
      ['This row sets position of patt; cont as set.', 'declare forms position of patt'],
      ['These 2 rows are rib patt and are repeated throughout.', 'declare forms'],
      ['Last 4 rows form patt. Rep last 4 rows 5 times more.', 'declare forms patt | rep rows [last 4] 5× more'],
      ['These 2 rows form rib. Work a further 16 rows.', 'declare forms rib | plain 16 rows'],
      ['Rep 1st and 2nd rows 4 times more.', 'rep rows [numbers 1,2] 4× more'],
      ['Rep 1st to 8th rows twice.', 'rep rows [numbers 1,2,3,4,5,6,7,8] 2×'],
      ['Work 1st to 8th rows once, then 1st to 4th rows again.', 'work rows [numbers 1,2,3,4,5,6,7,8] 1× | rep rows [numbers 1,2,3,4]'],
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
      ['From 1st to 14th row forms patt.', 'declare forms patt'],
      ['This row sets position of patt; cont as set.', 'declare forms position of patt'],
      ['Rows 1–4 form patt.', 'declare forms patt'],
      ['These 2 rows are rib patt and are repeated throughout.', 'declare forms'],
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
