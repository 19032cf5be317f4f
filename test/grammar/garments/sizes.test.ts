/** Sizes and size blocks: every wording with the tree it must read into. Forms of the trade; numbers and words made up here. */
import { describe, expect, it } from 'vitest';
import { read } from '../outline.ts';

/** Sizes of the draft, then each text with its outline. */
const tables: readonly { readonly sizes: readonly string[]; readonly rows: readonly (readonly [string, string])[] }[] = [
  {
    sizes: ['XS', 'S', 'M', 'L'],
    rows: [
      ['Cast on 100 (108: 116: 124) sts.', 'CO 100 (108, 116, 124) here'],
      ['CO 65[71, 77, 83] sts.', 'CO 65 (71, 77, 83) here'],
      ['With smaller needles, cast on 65, (71, 77, 83) sts.', 'change needle | CO 65 (71, 77, 83) here'],
      ['Cast on 65 (71-77-83) sts.', 'CO 65 (71, 77, 83) here'],
      ['K7, (9, 12, 15), pm, k to end.', 'row: k{7 (9, 12, 15)} marker place k→end'],
      ['K5(6: 7: 8), p2.', 'row: k{5 (6, 7, 8)} p{2}'],
      ['K5[6 - 7 - 8], p2.', 'row: k{5 (6, 7, 8)} p{2}'],
      ['K5 (6; 7; 8), p2.', 'row: k{5 (6, 7, 8)} p{2}'],
      ['Cast on 94-100-106-112 sts.', 'CO 94 (100, 106, 112) here'],
      ['Cast on 92/98/104/112 sts.', 'CO 92 (98, 104, 112) here'],
      ['Work until piece measures 21-1/2 (22, 22-1/2, 23) ins, ending with a WS row.', 'work until piece 21.5 (22, 22.5, 23) in ending WS'],
      [
        '3rd and 4th sizes only: Dec 1 st at each end of next 3 rows. – (–: 88: 92) sts.',
        'sizes 2,3 {dec 1 bothEnds {next n=3} =– (–, 88, 92) total}',
      ],
    ],
  },
  {
    sizes: ['XS', 'S', 'M', 'L', 'XL', '2XL', '3XL'],
    rows: [
      ['Cast on 34 (37, 40, 43)(46, 49, 52) sts.', 'CO 34 (37, 40, 43, 46, 49, 52) here'],
      ['Cast on 34 (37, 40, 43) [46, 49, 52] sts.', 'CO 34 (37, 40, 43, 46, 49, 52) here'],
    ],
  },
  {
    sizes: ['XS', 'S', 'M', 'L', 'XL', '2XL'],
    rows: [
      ['Cast on (102-106-112)(86-90-94) sts.', 'CO 102 (106, 112, 86, 90, 94) here'],
      ['Cast on 60 (64: 68) [86: 92: 98] sts.', 'CO 60 (64, 68, 86, 92, 98) here'],
      ['Cont until work meas 14 (16: 18) [36: 37: 38] cm.', 'work until work 14 (16, 18, 36, 37, 38) cm'],
    ],
  },
  {
    sizes: ['XS', 'S', 'M'],
    rows: [
      ['Dec 1 st at each end of foll 0 (0: 2) alt rows.', 'dec 1 bothEnds {follEvery n=0 (0, 2) k=2}'],
      ['Rep last 2 rows – (0, 1) times more.', 'rep rows [last 2] – (0, 1)× more'],
      ['Cast off 0 (4: 0) sts at beg of foll 0 (2: 0) rows.', 'bindOff rows 0 (4, 0) {follEach n=0 (2, 0)}'],
      [
        'Cast off 3 sts at beg of next 2 rows, then 0 (4: 5) sts at beg of foll 0 (2: 4) rows.',
        'bindOff rows 3 {next n=2} + 0 (4, 5) {follEach n=0 (2, 4)}',
      ],
      ['Inc 1 st at each end of every 8 (8, 6)th row 5 times.', 'inc 1 bothEnds {every n=5 k=8 (8, 6)}'],
      ['Rep Rows 1–6 twice (twice, 3 times).', 'rep rows [numbers 1,2,3,4,5,6] 2 (2, 3)×'],
      ['Rep Rows 1–6 once (twice, twice) more.', 'rep rows [numbers 1,2,3,4,5,6] 1 (2, 2)× more'],
      ['Work in patt, ending with Row 5 (12, 5).', 'work patt until loose "" ending row 5 (12, 5)'],
      ['*P4, k1; rep from * to last 1 (4: 1) sts, p1 (4: 1).', 'row: *[p{4} k{1}]→last 1 (4, 1) p{1 (4, 1)}'],
      ['[K8 (9, 11), k2tog] 9 times, k to end.', 'row: [k{8 (9, 11)} kNtog{2}]→9× k→end'],
      [
        'Dec 1 st at each end of next 4 (6: 6) rows, then on foll 0 (1: 3) alt rows.',
        'dec 1 bothEnds {next n=4 (6, 6); follEvery n=0 (1, 3) k=2}',
      ],
      ['Work Rows 1–8 (10, 12) once.', 'work rows [numbers 1,2,3,4,5,6,7,8] 1×'],
      ['Beg with Row 3 (1, 1), work 8 rows in patt.', 'plain 8 rows patt beg row 3'],
      ['K20 (22), p2.', 'row: k{20} p{2}'],
      ['BO 4 (5, 6) sts at beg of next 3 (3, 5) rows.', 'bindOff rows 4 (5, 6) {next n=3 (3, 5)}'],
      ['Dec 1 st each end of every 7th, (4th, 4th) row 3, (6, 7) times.', 'dec 1 bothEnds {every n=3 (6, 7) k=7 (4, 4)}'],
    ],
  },
  {
    sizes: ['S', 'M', 'L', 'XL'],
    rows: [
      ['Sizes M and L only: BO 3 sts at beg of next 3 rows.', 'sizes 1,2 {bindOff rows 3 {next n=3}}'],
      [
        'Sizes M and L only: BO 2 sts at beg of next 2 rows. All sizes: Purl 1 row.',
        'sizes 1,2 {bindOff rows 2 {next n=2}} | sizes all {plain 1 rows purl}',
      ],
      ['For size S only, work Rows 1–4 once more.', 'sizes 0 {work rows [numbers 1,2,3,4] 1× more}'],
      ['2nd size only: K 1 row.', 'sizes 1 {plain 1 rows knit}'],
      ['Larger sizes only: K 2 rows.', 'sizes 1,2,3 {plain 2 rows knit}'],
      ['SIZE M ONLY: K 1 row.', 'sizes 1 {plain 1 rows knit}'],
      ['For 3rd size only: Work 1 row even.', 'sizes 2 {plain 1 rows}'],
      ['Sizes S, M, XL only: Purl 1 row.', 'sizes 0,1,3 {plain 1 rows purl}'],
      ['Sizes L and XL only: Dec 1 st each end of next 3 (4) rows.', 'sizes 2,3 {dec 1 bothEnds {next n=3 (4)}}'],
      ['Remaining sizes: Work 2 rows.', 'sizes rest  {plain 2 rows}'],
      ['All other sizes: Work 2 rows.', 'sizes rest  {plain 2 rows}'],
      ['For all sizes: Knit 1 row.', 'sizes all {plain 1 rows knit}'],
      ['ALL SIZES: Knit 1 row.', 'sizes all {plain 1 rows knit}'],
      ['Size S: K 2 rows.', 'sizes 0 {plain 2 rows knit}'],
      ['For sizes M, L and XL only: Bind off 3 sts at beg of next 2 rows.', 'sizes 1,2,3 {bindOff rows 3 {next n=2}}'],
      ['1st and 2nd sizes: Work 2 rows straight.', 'sizes 0,1 {plain 2 rows}'],
      ['Smallest size only: K 1 row.', 'sizes 0 {plain 1 rows knit}'],
      ['Two largest sizes only: K 1 row.', 'sizes 2,3 {plain 1 rows knit}'],
      ['For the two smallest sizes: K 1 row.', 'sizes 0,1 {plain 1 rows knit}'],
      ['Sizes M–XL only: K 1 row.', 'sizes 1,2,3 {plain 1 rows knit}'],
      ['Sizes 2–4 only: K 1 row.', 'sizes 1,2,3 {plain 1 rows knit}'],
      ['Sizes – (2, 3, –) only: K 1 row.', 'sizes 1,2 {plain 1 rows knit}'],
      ['All sizes except S: K 1 row.', 'sizes 1,2,3 {plain 1 rows knit}'],
      [
        'Sizes L and XL only: Dec 1 st each end of next 2 (3) rows. – (–: 86: 90) sts. All sizes: Work 1 row.',
        'sizes 2,3 {dec 1 bothEnds {next n=2 (3)} =– (–, 86, 90) total} | sizes all {plain 1 rows}',
      ],
      [
        'Sizes S and M only: K2 (3) rows. Sizes L and XL: Work 4 rows. All sizes: P 1 row.',
        'sizes 0,1 {plain 2 (3) rows knit} | sizes 2,3 {plain 4 rows} | sizes all {plain 1 rows purl}',
      ],
      [
        'Sizes S and M only: Work 2 rows. Remaining sizes: Work 4 rows. All sizes: P 1 row.',
        'sizes 0,1 {plain 2 rows} | sizes rest 2,3 {plain 4 rows} | sizes all {plain 1 rows purl}',
      ],
      ['For all sizes except the smallest, work 2 rows.', 'sizes 1,2,3 {plain 2 rows}'],
    ],
  },
  {
    sizes: ['XS', 'S'],
    rows: [
      ['K20 (22), p2.', 'row: k{20 (22)} p{2}'],
      ['K20 (22 sts), p2.', 'row: k{20} p{2} =22 total'],
    ],
  },
  {
    sizes: ['XS', 'S', 'M', 'L', 'XL'],
    rows: [
      ['With 4 mm needles, cast on 74 (80, 86, 92, 98) stitches.', 'change needle | CO 74 (80, 86, 92, 98) here'],
      ['K3 (4, 5, 6, 7), p to last 3 (4, 5, 6, 7) sts, k to end.', 'row: k{3 (4, 5, 6, 7)} p→last 3 (4, 5, 6, 7) k→end'],
      ['Work 4 [4: 6: 6: 8] rows in garter stitch.', 'plain 4 (4, 6, 6, 8) rows garter st'],
      ['BO 2 (2, 3, 3, 4) stitches at the start of the next 2 rows.', 'bindOff rows 2 (2, 3, 3, 4) {next n=2}'],
      ['Rep last 4 rows 1 (1, 2, 2, 3) more time(s).', 'rep rows [last 4] 1 (1, 2, 2, 3)× more'],
      ['Work [k2tog, k3] 6 (6, 7, 7, 8) times.', 'row: [kNtog{2} k{3}]→6 (6, 7, 7, 8)×'],
      ['Cont until sleeve measures 17½ (17½, 18, 18, 18½) in from cuff.', 'work until sleeve 17.5 (17.5, 18, 18, 18.5) in from cuff'],
      ['Cont until sleeve measures 44 (44, 46, 46, 47) cm [17¼ (17¼, 18, 18, 18½) in].', 'work until sleeve 44 (44, 46, 46, 47) cm'],
      ['K 12 (13/14/15/16) sts.', 'row: k{12 (13, 14, 15, 16)}'],
      ['K10 (11 12 13 14), p2.', 'row: k{10 (11, 12, 13, 14)} p{2}'],
      ['K20 (–, 22, –, 24) sts, pm.', 'row: k{20 (–, 22, –, 24)} marker place'],
      [
        'P0 (1, 2, 3, 4), *k2, p2; rep from * to last 0 (1, 2, 3, 4) sts, p0 (1, 2, 3, 4).',
        'row: p{0 (1, 2, 3, 4)} *[k{2} p{2}]→last 0 (1, 2, 3, 4) p{0 (1, 2, 3, 4)}',
      ],
      ['Size XS only: Purl 1 row.', 'sizes 0 {plain 1 rows purl}'],
      ['Sizes XS (S, M) only: K2tog, k to end.', 'sizes 0,1,2 {row: kNtog{2} k→end}'],
      ['For sizes S, M and L only: work 2 rows without shaping.', 'sizes 1,2,3 {plain 2 rows}'],
      ['Sizes XL only: Rep Dec Row once more.', 'sizes 4 {rep rows [name dec] 1× more}'],
      ['For the first 2 sizes only, work 1 more row.', 'sizes 0,1 {plain 1 rows}'],
      ['4th and 5th sizes: BO 3 sts at beg of next 2 rows.', 'sizes 3,4 {bindOff rows 3 {next n=2}}'],
      ['On sizes L and XL only, dec 1 st at each end of next row.', 'sizes 3,4 {dec 1 bothEnds {next}}'],
      ['XS & S only: Knit 2 rows.', 'sizes 0,1 {plain 2 rows knit}'],
      ['For all other sizes: Work 2 rows.', 'sizes rest  {plain 2 rows}'],
      ['ALL SIZES RESUME: P 1 row.', 'sizes all {plain 1 rows purl}'],
      ['All sizes again: Work 2 rows.', 'sizes all {plain 2 rows}'],
      ['Sizes L (XL): K 1 row.', 'sizes 3,4 {plain 1 rows knit}'],
      ['Size M, L and XL: Work 4 rows.', 'sizes 2,3,4 {plain 4 rows}'],
      ['Sizes XS-M only: K 1 row.', 'sizes 0,1,2 {plain 1 rows knit}'],
      ['For smaller sizes only: K 1 row.', 'sizes 0,1,2,3 {plain 1 rows knit}'],
      ['Largest size only: Cast off 2 sts at beg of next 2 rows.', 'sizes 4 {bindOff rows 2 {next n=2}}'],
      ['1st (2nd, 3rd) sizes only: K 1 row.', 'sizes 0,1,2 {plain 1 rows knit}'],
      ['For sizes XS and S, work 6 rows; for sizes M, L and XL, work 8 rows.', 'sizes 0,1 {plain 6 rows} | sizes 2,3,4 {plain 8 rows}'],
      ['Every size: K 1 row.', 'sizes all {plain 1 rows knit}'],
      [
        '2nd, 4th and 5th sizes only: Inc 1 st at each end of next row. – (82, –, 94, 100) sts.',
        'sizes 1,3,4 {inc 1 bothEnds {next} =– (82, –, 94, 100) total}',
      ],
    ],
  },
  {
    sizes: ['2', '4', '6', '8'],
    rows: [
      ['Sizes 2 and 4 only: K 1 row.', 'sizes 0,1 {plain 1 rows knit}'],
      ['Size 6: K 1 row.', 'sizes 2 {plain 1 rows knit}'],
      ['Sizes 4-8 only: K 1 row.', 'sizes 1,2,3 {plain 1 rows knit}'],
    ],
  },
  {
    sizes: ['2 years', '4 years', '6 years'],
    rows: [
      ['Age 4 years only: K 1 row.', 'sizes 1 {plain 1 rows knit}'],
      ['Sizes 4 and 6 years only: K 1 row.', 'sizes 1,2 {plain 1 rows knit}'],
    ],
  },
  {
    sizes: ['34', '36', '38'],
    rows: [
      ['36 and 38 in sizes only: K 1 row.', 'sizes 1,2 {plain 1 rows knit}'],
      ['36" size only: K 1 row.', 'sizes 1 {plain 1 rows knit}'],
      ['For 34 in size only: Work 2 rows.', 'sizes 0 {plain 2 rows}'],
    ],
  },
];

describe('Sizes and size blocks', () => {
  for (const { sizes, rows } of tables) {
    it.each(rows)('%s', (text, expected) => {
      expect(read(text, { sizes })).toBe(expected);
    });
  }
});
