/** Picking up stitches: every wording with the tree it must read into. Forms of the trade; numbers and words made up here. */
import { describe, expect, it } from 'vitest';
import { read } from '../outline.ts';

/** Sizes of the draft, then each text with its outline. */
const tables: readonly { readonly sizes: readonly string[]; readonly rows: readonly (readonly [string, string])[] }[] = [
  {
    sizes: ['XS', 'S', 'M', 'L'],
    rows: [
      ['pick up and k 4 sts up left back neck. 96 [100: 104: 108] sts.', 'row: pick up 4 =96 (100, 104, 108) total'],
      ['Pick up and k 24 sts up right front neck and 4 sts down right back neck.', 'row: pick up 24 pick up 4'],
      [
        'Beg at right shoulder, knit up 36 sts across back neck, 24 down left front and 24 up right front—84 sts.',
        'row: change yarn pick up 36 pick up 24 pick up 24 =84 total',
      ],
      [
        'With RS facing and 3.25 mm needles, pick up and k 22 (22: 24: 24) sts down left side of neck, k across 24 (26: 24: 26) sts from front holder, pick up and k 22 (22: 24: 24) sts up right side of neck, then k across 40 (42: 42: 44) sts from back holder. 102 (106: 108: 112) sts.',
        'row: change side pick up 22 (22, 24, 24) take up 24 (26, 24, 26) front pick up 22 (22, 24, 24) take up 40 (42, 42, 44) back =102 (106, 108, 112) total',
      ],
      [
        'With smaller needle, RS facing and beg at lower right front, pick up & knit 98 (102, 106, 110) sts to shoulder, k 40 held back sts, pick up & knit 98 (102, 106, 110) sts down left front. 232 (240, 248, 256) sts.',
        'row: change needle change side change yarn pick up 98 (102, 106, 110) take up 40 back pick up 98 (102, 106, 110) =232 (240, 248, 256) total',
      ],
      ['Pick up and k 4 sts for every 5 rows along front edge.', 'row: pick up 4 per 5 row'],
      ['Pick up 92 sts evenly around neck edge, including sts on holders.', 'row: pick up 92 including held'],
      [
        'With RS facing, beg at underarm, pick up and knit 94 (100, 106, 112) sts evenly around armhole; pm and join.',
        'row: change side change yarn pick up 94 (100, 106, 112) marker place join round',
      ],
      ['Knit up 70 (74: 76: 78) sts along armhole edge.', 'row: pick up 70 (74, 76, 78)'],
      [
        'With RS of right front facing, pick up & k 96 (102, 108, 112) sts from hem to neck.',
        'row: change side pick up 96 (102, 108, 112)',
      ],
      [
        'With RS facing, pick up and k 18 sts down left front slope, 1 st from safety pin, 16 sts up right front slope, then k 32 sts from back neck holder. 65 sts.',
        'row: change side pick up 18 take up 1 pick up 16 take up 32 back neck =65 total',
      ],
      ['With WS facing, pick up and purl 42 sts along lower edge.', 'row: change side pick up 42 purl'],
      ['Rejoin yarn, pick up 7 sts at underarm.', 'row: join rejoin pick up 7'],
      [
        'Place 54 held sts on needle; beg at centre underarm, pick up and k 3, k 52, pick up and k 3, pm and join. 60 sts.',
        'row: take up 54 unworked change yarn pick up 3 k{52} pick up 3 marker place join round =60 total',
      ],
      [
        'Pick up and k 14 sts down left front neck, k 22 sts left on holder, pick up and k 14 sts up right front neck and k 38 sts left at back neck, dec 2 sts evenly. 80 sts.',
        'row: pick up 14 take up 22 pick up 14 take up 38 back evenly dec 2 =80 total',
      ],
      ['Next row (RS): Pick up and k 52 sts along front edge, turn.', 'row next (RS): pick up 52 turn'],
      ['Pick up and k1 st in each cast-on st.', 'row: pick up 1 per 1 st'],
      [
        'Using smaller needles and with RS facing, pick up and knit 26 sts up right front neck, 32 sts across back neck and 26 sts down left front neck (80 sts).',
        'row: change side pick up 26 pick up 32 pick up 26 =80 total',
      ],
      [
        'Beg at centre of underarm, pick up and k 3 (3, 4, 4) sts, k 54 (58, 62, 66) sleeve sts, pick up and k 3 (3, 4, 4) sts, pm, join. 60 (64, 70, 74) sts.',
        'row: change yarn pick up 3 (3, 4, 4) k{54 (58, 62, 66)} pick up 3 (3, 4, 4) marker place join round =60 (64, 70, 74) total',
      ],
      ['With RS facing, knit up 72 sts evenly along left front edge.', 'row: change side pick up 72'],
      ['PU&K 90 (94: 98: 102) sts around neck.', 'row: pick up 90 (94, 98, 102)'],
      ['Pick up, but do not knit, 12 sts along cast-on edge.', 'row: pick up 12 loops'],
    ],
  },
  {
    sizes: ['XS', 'S', 'M'],
    rows: [
      [
        'With RS facing, pick up and knit 30 sts down left neck, knit 12 from holder, pick up and knit 30 sts up right neck.',
        'row: change side pick up 30 take up 12 pick up 30',
      ],
      [
        'Pick up and knit 30 sts down left front neck, 12 sts across centre front, 30 sts up right front neck and 40 sts across back neck. 112 sts.',
        'row: pick up 30 pick up 12 pick up 30 pick up 40 =112 total',
      ],
      [
        'With RS facing and using 3 mm needles, pick up and knit 30 sts down left side, knit across 12 sts on holder, pick up and knit 30 sts up right side, then knit across 40 sts on back neck holder—112 sts.',
        'row: change side pick up 30 take up 12 pick up 30 take up 40 back neck =112 total',
      ],
      [
        'Pick up and k 30 sts evenly down left side of neck, 1 st at centre, and 30 sts evenly up right side of neck.',
        'row: pick up 30 pick up 1 pick up 30',
      ],
      ['Pick up and k 60 sts evenly around armhole edge.', 'row: pick up 60'],
      ['Pick up & k 1 st in each st along cast-on edge.', 'row: pick up 1 per 1 st'],
      ['Pick up and k 2 sts for every 3 rows along front edge.', 'row: pick up 2 per 3 row'],
      ['Pick up and knit 3 out of every 4 sts along edge.', 'row: pick up 3 per 4 st'],
      ['Pick up and k approx 60 sts along edge.', 'row: pick up 60'],
      ['Pick up and k 60 (64, 68) sts, turn.', 'row: pick up 60 (64, 68) turn'],
      ['With WS facing, pick up and p 60 sts along edge.', 'row: change side pick up 60 purl'],
      [
        'With RS facing, starting at right shoulder, pick up and k 40 sts along back neck, 30 sts along left neck, 12 sts from front holder, 30 sts along right neck.',
        'row: change side change yarn pick up 40 pick up 30 take up 12 front pick up 30',
      ],
      ['K 40 sts from back neck holder, pick up and k 30 sts down left front neck.', 'row: take up 40 back neck pick up 30'],
      ['Join yarn at right shoulder seam, pick up and k 40 sts across back.', 'row: join rejoin pick up 40'],
      ['Beg at lower edge, pick up and k 100 sts to neck edge.', 'row: change yarn pick up 100'],
      ['Pick up and k 6 underarm sts, k 48 sleeve sts.', 'row: pick up 6 k{48}'],
      ['From RS, pick up and k 48 sts from cast-off edge.', 'row: pick up 48'],
      ['With larger needle, k up 48 sts along edge.', 'row: change needle pick up 48'],
      [
        'Knit across 24 sts of left front, pick up and k 8 sts from underarm, knit across 48 sts of back.',
        'row: k→over 24 pick up 8 k→over 48',
      ],
    ],
  },
];

describe('Picking up stitches', () => {
  for (const { sizes, rows } of tables) {
    it.each(rows)('%s', (text, expected) => {
      expect(read(text, { sizes })).toBe(expected);
    });
  }
});
