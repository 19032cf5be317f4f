/** Numbers and orders for several sizes as people write them. Common practice, no source. */
import { describe, expect, it } from 'vitest';
import { read } from '../outline.ts';

const tables: readonly { readonly sizes: readonly string[]; readonly rows: readonly (readonly [string, string])[] }[] = [
  {
    sizes: ['XS', 'S', 'M', 'L'],
    rows: [
      ['K5(6,7,8), p2.', 'row: k{5 (6, 7, 8)} p{2}'],
      ['K 5 (6-7-8), p 2.', 'row: k{5 (6, 7, 8)} p{2}'],
      ['Cast on 80 [84:88:92] stitches.', 'CO 80 (84, 88, 92) here'],
      ['CO 80 {84, 88, 92} sts.', 'CO 80 (84, 88, 92) here'],
      ['CO 80/84/88/92 sts.', 'CO 80 (84, 88, 92) here'],
      ['CO 80, 84, 88, 92 sts.', 'CO 80 (84, 88, 92) here'],
      ['CO 80-84-88-92 sts.', 'CO 80 (84, 88, 92) here'],
      ['CO 80 – 84 – 88 – 92 sts.', 'CO 80 (84, 88, 92) here'],
      ['CO 80 (84) 88 (92) sts.', 'CO 80 (84, 88, 92) here'],
      ['CO 80 (84; 88; 92) sts.', 'CO 80 (84, 88, 92) here'],
      ['CO 80 (84, 88) (92) sts.', 'CO 80 (84, 88, 92) here'],
      ['CO (80-84-88-92) sts.', 'CO 80 (84, 88, 92) here'],
      ['CO 80 (84) (88) (92) sts.', 'CO 80 (84, 88, 92) here'],
      ['CO 80, (84, 88, 92) sts.', 'CO 80 (84, 88, 92) here'],
      ['CO 80 ( 84 : 88 : 92 ) sts.', 'CO 80 (84, 88, 92) here'],
      ['K4 (5/6/7), p2.', 'row: k{4 (5, 6, 7)} p{2}'],
      ['CO 60 sts (all sizes).', 'CO 60 here'],
      ['BO 3 (3, 4, 5) sts at beg of next 2 (2, 4, 4) rows.', 'bindOff rows 3 (3, 4, 5) {next n=2 (2, 4, 4)}'],
      ['BO – (–, 3, 4) sts at beg of next – (–, 2, 2) rows.', 'bindOff rows – (–, 3, 4) {next n=– (–, 2, 2)}'],
      ['Work 0 (2, 4, 6) rows even.', 'plain 0 (2, 4, 6) rows'],
      ['Work 1(3:5:7) rows in st st.', 'plain 1 (3, 5, 7) rows st st'],
      ['Rep last 2 rows 3 (4, 5, –) times.', 'rep rows [last 2] 3 (4, 5, –)×'],
      ['Rep last 2 rows once (twice, twice, 3 times) more.', 'rep rows [last 2] 1 (2, 2, 3)× more'],
      ['*K2, p2; rep from * 4 (5, 6, 7) times more, k3 (0, 2, 1).', 'row: *[k{2} p{2}]→4 (5, 6, 7)× more k{3 (0, 2, 1)}'],
      ['[K2tog, k4 (5, 6, 7)] 6 (6, 7, 7) times.', 'row: [kNtog{2} k{4 (5, 6, 7)}]→6 (6, 7, 7)×'],
      [
        'P1 (3, 0, 2), [k2, p2] to last 3 (5, 2, 4) sts, k2, p1 (3, 0, 2).',
        'row: p{1 (3, 0, 2)} [k{2} p{2}]→last 3 (5, 2, 4) k{2} p{1 (3, 0, 2)}',
      ],
      ['K10 (12, 14, 16) sts, pm, k20 (20, 22, 22) sts.', 'row: k{10 (12, 14, 16)} marker place k{20 (20, 22, 22)}'],
      ['Inc 1 st at each end of every 6th (6th, 4th, 4th) row 5 (6, 8, 9) times.', 'inc 1 bothEnds {every n=5 (6, 8, 9) k=6 (6, 4, 4)}'],
      ['Dec 1 st each end every 8 (8, 6, 6) rows 3 times.', 'dec 1 bothEnds {every n=3 k=8 (8, 6, 6)}'],
      ['Work 4 (4, 6, 6) cm in rib.', 'work rib until it 4 (4, 6, 6) cm'],
      ['Work to last 8 (9:9:10) sts, turn.', 'row: work→last 8 (9, 9, 10) turn'],
      ['For 3rd size only: Dec 1 st at each end of next row.', 'sizes 2 {dec 1 bothEnds {next}}'],
      ['For 3rd size only dec 1 st at each end of next row.', 'sizes 2 {dec 1 bothEnds {next}}'],
      ['L only: K 2 rows.', 'sizes 3 {plain 2 rows knit}'],
      ['Sizes M (L) only: k 2 rows.', 'sizes 2,3 {plain 2 rows knit}'],
      ['M, L: BO 2 sts at beg of next 2 rows.', 'sizes 2,3 {bindOff rows 2 {next n=2}}'],
      [
        'Size XS: Purl 1 row. Size S: Purl 3 rows. Sizes M & L: Purl 5 rows.',
        'sizes 0 {plain 1 rows purl} | sizes 1 {plain 3 rows purl} | sizes 2,3 {plain 5 rows purl}',
      ],
      ['Larger 2 sizes only: Work 2 rows straight.', 'sizes 2,3 {plain 2 rows}'],
      ['Two largest sizes only: K 2 rows.', 'sizes 2,3 {plain 2 rows knit}'],
      ['Smallest size only: k 1 row.', 'sizes 0 {plain 1 rows knit}'],
      ['First 2 sizes: K 1 row. Last 2 sizes: K 3 rows.', 'sizes 0,1 {plain 1 rows knit} | sizes 2,3 {plain 3 rows knit}'],
      ['Sizes XS–M: K 2 rows.', 'sizes 0,1,2 {plain 2 rows knit}'],
      ['Sizes XS to M only—K 2 rows.', 'sizes 0,1,2 {plain 2 rows knit}'],
      [
        '1st and 2nd sizes: Cast off 4 sts at beg of next 2 rows. 3rd and 4th sizes: Cast off 5 sts at beg of next 2 rows. All sizes: Purl 1 row.',
        'sizes 0,1 {bindOff rows 4 {next n=2}} | sizes 2,3 {bindOff rows 5 {next n=2}} | sizes all {plain 1 rows purl}',
      ],
      ['(2nd and 4th sizes only) K 1 row.', 'sizes 1,3 {plain 1 rows knit}'],
      ['On sizes M and L only, inc 1 st at each end of next row.', 'sizes 2,3 {inc 1 bothEnds {next}}'],
      ['All sizes except XS: K 2 rows.', 'sizes 1,2,3 {plain 2 rows knit}'],
      [
        'For size L, cast off 3 sts at beg of next 2 rows; for all sizes, purl 1 row.',
        'sizes 3 {bindOff rows 3 {next n=2}} | sizes all {plain 1 rows purl}',
      ],
      ['SIZES M AND L ONLY', 'sizes 2,3 {}'],
      ['Sizes – (–, M, L) only: k 2 rows.', 'sizes 2,3 {plain 2 rows knit}'],
      ['For the three larger sizes only, work 2 rows.', 'sizes 1,2,3 {plain 2 rows}'],
      ['Size 3 only: K 2 rows.', 'sizes 2 {plain 2 rows knit}'],
      ['For M and L only: K 2 rows.', 'sizes 2,3 {plain 2 rows knit}'],
      ['Size XS only, k 1 row; all other sizes, k 3 rows.', 'sizes 0 {plain 1 rows knit} | sizes rest 1,2,3 {plain 3 rows knit}'],
      ['Next row (RS), size L only: K2tog, k to end.', 'sizes 3 {row next (RS): kNtog{2} k→end}'],
      ['Next row (size L only): K2tog, k to end.', 'sizes 3 {row next: kNtog{2} k→end}'],
      ['If you are making size L, work 2 more rows.', 'sizes 3 {plain 2 rows}'],
      [
        'Rep rows 1-4 twice (twice: 3 times: 3 times), then rows 1 and 2 again.',
        'rep rows [numbers 1,2,3,4] 2 (2, 3, 3)× | rep rows [numbers 1,2] 1× more',
      ],
      ['K5 (5: –: –), [k2, p2] 3 (4: 5: 6) times.', 'row: k{5 (5, –, –)} [k{2} p{2}]→3 (4, 5, 6)×'],
      ['Cont until work measures 10½ (11, 11½, 12)".', 'work until work 10.5 (11, 11.5, 12) in'],
      ['Cont until work meas 26.5 (28-29-30.5) cm.', 'work until work 26.5 (28, 29, 30.5) cm'],
      ['Work 6 rows for 1st and 2nd sizes, 8 rows for 3rd and 4th sizes.', 'plain 6 (6, 8, 8) rows'],
      ['Dec 1 st at each end of next row, for 4th size only.', 'sizes 3 {dec 1 bothEnds {next}}'],
      ['BO 4 sts at beg of next 2 rows (size L only).', 'sizes 3 {bindOff rows 4 {next n=2}}'],
    ],
  },
  {
    sizes: ['1', '2', '3', '4', '5', '6'],
    rows: [
      ['CO 80 (84, 88, 92) [96, 100] sts.', 'CO 80 (84, 88, 92, 96, 100) here'],
      ['CO 80 (84, 88)(92, 96, 100) sts.', 'CO 80 (84, 88, 92, 96, 100) here'],
      ['Sizes 1, 3, and 5 only: Purl 1 row.', 'sizes 0,2,4 {plain 1 rows purl}'],
      ['Sizes 2 – 4: Purl 1 row.', 'sizes 1,2,3 {plain 1 rows purl}'],
      ['Sizes – (2, –, 4) (–, 6) only: Purl 1 row.', 'sizes 1,3,5 {plain 1 rows purl}'],
      ['For sizes 5 & 6: dec 1 st at each end of next row.', 'sizes 4,5 {dec 1 bothEnds {next}}'],
      ['CO 80 (84: 88) [92: 96: 100] sts.', 'CO 80 (84, 88, 92, 96, 100) here'],
    ],
  },
  {
    sizes: ['81', '86', '91', '97'],
    rows: [
      ['For 91 and 97 cm sizes only: K 2 rows.', 'sizes 2,3 {plain 2 rows knit}'],
      ['97 cm size only: K 2 rows.', 'sizes 3 {plain 2 rows knit}'],
      ['Sizes 81 and 86 only: K 2 rows.', 'sizes 0,1 {plain 2 rows knit}'],
    ],
  },
  {
    sizes: ['2', '4', '6', '8'],
    rows: [
      ['Ages 6 and 8 only: k 2 rows.', 'sizes 2,3 {plain 2 rows knit}'],
      ['Size 2 only: K 2 rows.', 'sizes 0 {plain 2 rows knit}'],
      ['Sizes 6 and 8 years only: k 2 rows.', 'sizes 2,3 {plain 2 rows knit}'],
    ],
  },
  {
    sizes: ['S', 'L'],
    rows: [
      ['CO 56/64 sts.', 'CO 56 (64) here'],
      ['CO 56-64 sts.', 'CO 56 (64) here'],
      ['K20 (22), p2.', 'row: k{20 (22)} p{2}'],
      ['CO 56[64]sts.', 'CO 56 (64) here'],
      ['CO 56 (56) sts.', 'CO 56 (56) here'],
      ['Larger size only: K 2 rows.', 'sizes 1 {plain 2 rows knit}'],
      ['Smaller size: k 2 rows. Larger size: k 4 rows.', 'sizes 0 {plain 2 rows knit} | sizes 1 {plain 4 rows knit}'],
    ],
  },
];

describe('Several sizes as people write them', () => {
  for (const { sizes, rows } of tables)
    it.each(rows)(`${sizes.join(' ')}: %s`, (text, expected) => {
      expect(read(text, { sizes })).toBe(expected);
    });
});
