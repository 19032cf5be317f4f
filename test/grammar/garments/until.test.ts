/** Rows until: every wording with the tree it must read into. Forms of the trade; numbers and words made up here. */
import { describe, expect, it } from 'vitest';
import { read } from '../outline.ts';

/** Sizes of the draft, then each text with its outline. */
const tables: readonly { readonly sizes: readonly string[]; readonly rows: readonly (readonly [string, string])[] }[] = [
  {
    sizes: ['XS', 'S', 'M', 'L'],
    rows: [
      [
        'Cont straight until Back meas 36 (37: 37: 38) cm, ending with RS facing for next row.',
        'work until back 36 (37, 37, 38) cm ending WS',
      ],
      ['Work even until armhole measures 7 (7¼, 7½, 8)", ending with a WS row.', 'work until armhole 7 (7.25, 7.5, 8) in ending WS'],
      ['Work in rib for 7 cm.', 'work rib until it 7 cm'],
      ['K every rnd until body measures 16" from underarm, or desired length.', 'k until body 16 in from underarm'],
      ['Cont as set until sleeve measures 46 cm, ending after a WS row.', 'work patt until sleeve 46 cm ending WS'],
      ['Work even until piece measures 16 (17-17½-18) ins, end on WS.', 'work until piece 16 (17, 17.5, 18) in ending WS'],
      ['Work even for 7 (7¼, 7½, 8)".', 'work until it 7 (7.25, 7.5, 8) in'],
      [
        'Cont until armhole measures 23 (24: 25: 26) cm straight up, ending with a p row.',
        'work until armhole 23 (24, 25, 26) cm ending WS',
      ],
      [
        'Cont in st st until work measures 32 cm from marker, ending having worked a WS row.',
        'work st st until work 32 cm from marker ending WS',
      ],
      [
        'Work as Back until Front is 20 (20: 22: 22) rows shorter than Back at shoulder shaping.',
        'as piece back to matches back at shoulder shaping less 20 (20, 22, 22) rows',
      ],
      [
        'Cont straight until 20 rows less than on Back to shoulder shaping have been worked.',
        'work until matches back to shoulder shaping less 20 rows',
      ],
      ['Work 22 rows less than Back.', 'work until matches back less 22 rows'],
      ['Cont until front measures same as back to start of armhole shaping.', 'work until matches back to start of armhole shaping'],
      ['Work until 98 rows have been worked from CO edge.', 'work until 98 rows'],
      ['Cont until 6 (6: 8: 8) patt reps are complete.', 'work until loose "6 (6: 8: 8) patt reps are complete"'],
      ['Knit until 18 sts rem on left needle.', 'row: k→last 18 of needle'],
      ['Work in patt until 98 rows in total have been worked from cast-on edge.', 'work patt until 98 rows'],
      ['Cont straight until work measures 32 cm, ending with Row 6 of patt.', 'work until work 32 cm ending row 6'],
      ['Work until armhole measures 20 cm, ending with WS facing for next row.', 'work until armhole 20 cm ending RS'],
      ['Work in rib until band measures 3 cm, ending on a RS row.', 'work rib until band 3 cm ending RS'],
      [
        'Cont in patt until sleeve measures 45 (46: 47: 47) cm or required length, ending with a WS row.',
        'work patt until sleeve 45 (46, 47, 47) cm ending WS',
      ],
      [
        'Work even in st st until piece measures 12" (30.5 cm) from cast-on edge, ending with a WS row.',
        'work st st until piece 12 in from cast-on edge ending WS',
      ],
      ['Keeping patt correct, cont straight until armhole measures 21 cm.', 'declare rule keeping patt correct | work until armhole 21 cm'],
      [
        'Cont straight until back measures 54 (56: 58: 60) cm, ending with RS facing for next row.',
        'work until back 54 (56, 58, 60) cm ending WS',
      ],
      ['Work in k2, p2 rib for 6 cm, ending with a WS row.', 'work rib until it 6 cm ending WS'],
      ['Work straight for 4 cm.', 'work until it 4 cm'],
      ['Cont as set until 86 rows have been worked.', 'work patt until 86 rows'],
      ['Work even until yoke measures 6½ (7, 7½, 8) in from beg.', 'work until yoke 6.5 (7, 7.5, 8) in from beg'],
      ['Knit every row until piece measures 5 cm.', 'k until piece 5 cm'],
      ['When work measures 32 cm, cast off 5 sts at beg of next 2 rows.', 'work until work 32 cm | bindOff rows 5 {next n=2}'],
    ],
  },
  {
    sizes: ['XS', 'S', 'M'],
    rows: [
      ['Work even until piece measures 10 in from beg, ending with a WS row.', 'work until piece 10 in from beg ending WS'],
      [
        'Continue in stocking stitch until work measures 36 (37, 38) cm from cast-on edge, ending with a purl row.',
        'work st st until work 36 (37, 38) cm from cast-on edge ending WS',
      ],
      ['Knit until piece measures 15 cm.', 'k until piece 15 cm'],
      ['Work in rib until piece measures 2".', 'work rib until piece 2 in'],
      ['Rib until work measures 6 cm.', 'work rib until work 6 cm'],
      [
        'Cont in st st until piece measures 12 (12½, 13)"/30.5 (32, 33) cm, ending after a WS row.',
        'work st st until piece 12 (12.5, 13) in ending WS',
      ],
      ['Work straight until armholes measure 20 (21, 22) cm, ending with RS facing.', 'work until armholes 20 (21, 22) cm ending WS'],
      ['Cont until front measures 7 cm less than back to shoulder.', 'work until front 7 cm from back to shoulder shorter'],
      ['Work until piece is same length as Back to armholes.', 'work until matches back to armholes'],
      ['Work until sleeve is 2 cm shorter than desired length.', 'work until sleeve 2 cm from desired length shorter'],
      ['Work even until sleeve measures 17" or desired length to underarm.', 'work until sleeve 17 in'],
      ['Work in st st until sleeve measures 40 cm from beginning.', 'work st st until sleeve 40 cm from beginning'],
      ['Work in patt for 12 cm.', 'work patt until it 12 cm'],
      ['Work even in pattern for 4 in, ending with RS facing for next row.', 'work patt until it 4 in ending WS'],
      ['Continue even until armhole measures 8½ (9, 9½) inches from bind-off.', 'work until armhole 8.5 (9, 9.5) in from bind-off'],
      [
        'Continue straight until work measures 22 cm from beg of armhole shaping, ending with RS facing for next row.',
        'work until work 22 cm from beg of armhole shaping ending WS',
      ],
      ['Cont in rib until neckband measures 3 cm, ending with RS facing.', 'work rib until neckband 3 cm ending WS'],
      ['Knit every round until body measures 30 cm from underarm.', 'k until body 30 cm from underarm'],
      ['Work in rnds until body measures 30 cm.', 'work until body 30 cm'],
      ['Work in st st until 60 (62, 64) rows have been worked.', 'work st st until 60 (62, 64) rows'],
      ['Work 8 cm in rib.', 'work rib until it 8 cm'],
      ['Work 2" of rib.', 'work rib until it 2 in'],
      ['Work 3 in in garter st.', 'work garter st until it 3 in'],
      ['Cont in patt until 5 patt repeats have been worked.', 'work patt until loose "5 patt repeats have been worked"'],
      ['Work even until piece measures 15 cm, ending on Row 4.', 'work until piece 15 cm ending row 4'],
      ['Work even in patt until piece measures 15 cm, ending with a 4th patt row.', 'work patt until piece 15 cm ending row 4'],
      ['Keep working in st st until piece measures 15 cm.', 'work st st until piece 15 cm'],
      ['Cont until work measures 40 cm, ending at side edge.', 'work until work 40 cm ending side edge'],
    ],
  },
];

describe('Rows until', () => {
  for (const { sizes, rows } of tables) {
    it.each(rows)('%s', (text, expected) => {
      expect(read(text, { sizes })).toBe(expected);
    });
  }
});
