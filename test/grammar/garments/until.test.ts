/** Rows until: every wording with the tree it must read into. Forms of the trade; numbers and words made up here. */
import { describe, expect, it } from 'vitest';
import { read } from '../outline.ts';

/** Sizes of the draft, then each text with its outline. */
const tables: readonly { readonly sizes: readonly string[]; readonly rows: readonly (readonly [string, string])[] }[] = [
  {
    sizes: ['XS', 'S', 'M', 'L'],
    rows: [
      ['Cont straight until Back meas 36 (37: 37: 38) cm, ending with RS facing for next row.', 'work until back 36 (37, 37, 38) cm ending WS'],
      ['Work even until armhole measures 7 (7¼, 7½, 8)", ending with a WS row.', 'work until armhole 7 (7.25, 7.5, 8) in ending WS'],
      ['Work in rib for 5 cm.', 'work rib until it 5 cm'],
      ['K every rnd until body measures 14" from underarm, or desired length.', 'k until body 14 in from underarm'],
      ['Cont as set until sleeve measures 46 cm, ending after a WS row.', 'work patt until sleeve 46 cm ending WS'],
      ['Work even until piece measures 16 (17-17½-18) ins, end on WS.', 'work until piece 16 (17, 17.5, 18) in ending WS'],
      ['Work even for 7 (7¼, 7½, 8)".', 'work until it 7 (7.25, 7.5, 8) in'],
      ['Work even in St st for 1½ in more.', 'work st st until it 1.5 in'],
      ['Cont until armhole measures 23 (24: 25: 26) cm straight up, ending with a p row.', 'work until armhole 23 (24, 25, 26) cm ending WS'],
      ['Cont in st st until work measures 32 cm from marker, ending having worked a WS row.', 'work st st until work 32 cm from marker ending WS'],
      ['Work as Back until Front is 20 (20: 22: 22) rows shorter than Back at shoulder shaping.', 'as piece back to matches back at shoulder shaping less 20 (20, 22, 22) rows'],
      ['Cont straight until left front matches Back to beg of shoulder shaping, ending at armhole edge.', 'work until matches back to beg of shoulder shaping ending armhole edge'],
      ['Work even until same length as Back to shoulder.', 'work until matches back to shoulder'],
      ['Cont straight until 20 rows less than on Back to shoulder shaping have been worked.', 'work until matches back to shoulder shaping less 20 rows'],
      ['Work 22 rows less than Back.', 'work until matches back less 22 rows'],
      ['Cont until front measures same as back to start of armhole shaping.', 'work until matches back to start of armhole shaping'],
      ['Work until 98 rows have been worked from CO edge.', 'work until 98 rows'],
      ['Cont until 6 (6: 8: 8) patt reps are complete.', 'work until loose "6 (6: 8: 8) patt reps are complete"'],
      ['Knit until 18 sts rem on left needle.', 'row: k→last 18'],
      ['Work in patt until 98 rows in total have been worked from cast-on edge.', 'work patt until 98 rows'],
      ['Cont straight until work measures 32 cm, ending with Row 6 of patt.', 'work until work 32 cm ending row 6'],
      ['Work until armhole measures 20 cm, ending with WS facing for next row.', 'work until armhole 20 cm ending RS'],
      ['Work in rib until band measures 3 cm, ending on a RS row.', 'work rib until band 3 cm ending RS'],
      ['Cont in patt until sleeve measures 45 (46: 47: 47) cm or required length, ending with a WS row.', 'work patt until sleeve 45 (46, 47, 47) cm ending WS'],
      ['Work even in st st until piece measures 12" (30.5 cm) from cast-on edge, ending with a WS row.', 'work st st until piece 12 in from cast-on edge ending WS'],
      ['Keeping patt correct, cont straight until armhole measures 21 cm.', 'declare rule keeping patt correct | work until armhole 21 cm'],
      ['Cont straight until back measures 54 (56: 58: 60) cm, ending with RS facing for next row.', 'work until back 54 (56, 58, 60) cm ending WS'],
      ['Work in k2, p2 rib for 6 cm, ending with a WS row.', 'work rib until it 6 cm ending WS'],
      ['Work straight for 4 cm.', 'work until it 4 cm'],
      ['Cont as set until 86 rows have been worked.', 'work patt until 86 rows'],
      ['Work even until yoke measures 6½ (7, 7½, 8) in from beg.', 'work until yoke 6.5 (7, 7.5, 8) in from beg'],
      ['Knit every row until piece measures 5 cm.', 'k until piece 5 cm'],
      ['When work measures 32 cm, cast off 5 sts at beg of next 2 rows.', 'work until work 32 cm | bindOff rows 5 {next n=2}'],
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
