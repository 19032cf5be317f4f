/** References and two tracks: every wording with the tree it must read into. Forms of the trade; numbers and words made up here. */
import { describe, expect, it } from 'vitest';
import { read } from '../outline.ts';

/** Sizes of the draft, then each text with its outline. */
const tables: readonly { readonly sizes: readonly string[]; readonly rows: readonly (readonly [string, string])[] }[] = [
  {
    sizes: ['XS', 'S', 'M', 'L'],
    rows: [
      ['Front: Work as given for Back to **.', 'declare title Front | as piece back to **'],
      ['As Back to armhole shaping.', 'as piece back to armhole shaping'],
      ['Work same as Back until neck.', 'as piece back to loose "neck"'],
      ['Left sleeve: as right sleeve.', 'declare title Left sleeve | as piece right sleeve'],
      ['Work as given for Back.', 'as piece back'],
      ['Work as for Back until front is 20 rows less than Back to shoulder shaping.', 'as piece back to matches back to shoulder shaping less 20 rows'],
      ['Work exactly as given for Back until 82 (88: 92: 98) sts rem.', 'as piece back to 82 (88, 92, 98) sts'],
      ['Work as given for Back to start of armhole shaping.', 'as piece back to start of armhole shaping'],
      ['Make as given for Back as far as **.', 'as piece back to **'],
      ['Front: As Back to **.', 'declare title Front | as piece back to **'],
      ['Work as Left Front, reversing shapings.', 'as piece left front reversing'],
      ['Work as given for left front, reversing all shapings.', 'as piece left front reversing'],
      ['Right front: as left front, reversing shapings and omitting buttonholes.', 'declare title Right front | as piece left front reversing'],
      ['To correspond to left side, reversing shaping.', 'as side left side reversing'],
      ['Work to correspond with left front, reversing shapings.', 'as piece left front reversing'],
      ['Complete to match first side, reversing shapings.', 'as side first side reversing'],
      ['Complete to match first side.', 'as side first side reversing'],
      ['Work to match other side of neck.', 'as side other side of neck reversing'],
      ['Work to match left side of neck, reversing shaping.', 'as side left side of neck reversing'],
      ['Finish as other side.', 'as side other side reversing'],
      ['Finish to correspond.', 'as side reversing'],
      ['Complete as for first side.', 'as side first side reversing'],
      ['Complete second side to match first side.', 'as side first side reversing'],
      ['Complete as given for left front.', 'as piece left front'],
      ['Work second sleeve to match, leaving sts on needle.', 'as piece sleeve 1× more | hold these on holder'],
      ['Make second sleeve in the same way.', 'as piece sleeve 1× more'],
      ['Make another piece the same.', 'as piece 1× more'],
      ['Second sleeve: as first, but leave sts on needle.', 'declare title Second sleeve | as piece first'],
      ['Work second sleeve in the same way.', 'as piece sleeve 1× more'],
      ['Make 2.', 'as piece 2× all'],
      ['Make 2 alike.', 'as piece 2× all'],
      ['Work other side to match, reversing shapings.', 'as side reversing'],
      ['Work as first side, reversing shaping.', 'as side first side reversing'],
      ['Dec 1 st at armhole edge of next 5 rows AND AT SAME TIME dec 1 st at neck edge on 3rd and every foll 4th row.', 'dec 1 edge armhole {next n=5} | at the same time {dec 1 edge neck {nth k=3; every k=4}}'],
      ['At the same time, when armhole measures 17 cm, shape neck.', 'at the same time when armhole 17 cm {}'],
      ['Dec 1 st at neck edge of next 5 rows and at same time cast off 6 sts at beg of 2nd row and foll alt row.', 'dec 1 edge neck {next n=5} | at the same time {bindOff rows 6 {nth k=2; follEvery k=2}}'],
      ['AT THE SAME TIME, dec 1 st at neck edge on every RS row until 22 sts rem.', 'at the same time {dec 1 edge neck {every RS until 22}}'],
      ['Dec 1 st at each end of next and every foll alt row and, at the same time, when 62 sts rem, cast off centre 14 sts.', 'dec 1 bothEnds {next; every k=2} | at the same time when 62 sts {BO centre 14}'],
      ['Cont to dec at armhole edge as set, at the same time dec 1 st at neck edge of next 3 rows.', 'declare rule cont to dec at armhole edge as set | at the same time {dec 1 edge neck {next n=3}}'],
      ['AT SAME TIME, when work measures 42 cm, ending with a WS row, shape neck as follows: dec 1 st at neck edge of next 4 rows.', 'at the same time when work 42 cm ending WS {dec 1 edge neck {next n=4}}'],
      ['Work as set, while at the same time inc 1 st at each end of every 8th row 5 times.', 'work patt until loose "" | at the same time {inc 1 bothEnds {every n=5 k=8}}'],
      ['At the same time, once armhole measures 6 (6½, 7, 7½)", begin neck shaping.', 'at the same time when armhole 6 (6.5, 7, 7.5) in {}'],
      ['At the same time, on 5th row, dec 1 st at neck edge.', 'at the same time {dec 1 edge neck {nth k=5}}'],
    ],
  },
  {
    sizes: ['one'],
    rows: [
      ['To correspond to left side, reversing shaping.', 'as side left side reversing'],
    ],
  },
];

describe('References and two tracks', () => {
  for (const { sizes, rows } of tables) {
    it.each(rows)('%s', (text, expected) => {
      expect(read(text, { sizes })).toBe(expected);
    });
  }
});
