/** References and two tracks: every wording with the tree it must read into. Forms of the trade; numbers and words made up here. */
import { describe, expect, it } from 'vitest';
import { read } from '../outline.ts';

/** Sizes of the draft, then each text with its outline. */
const tables: readonly { readonly sizes: readonly string[]; readonly rows: readonly (readonly [string, string])[] }[] = [
  {
    sizes: ['XS', 'S', 'M', 'L'],
    rows: [
      ['As Back to armhole shaping.', 'as piece back to armhole shaping'],
      ['Left sleeve: as right sleeve.', 'declare title Left sleeve | as piece right sleeve'],
      ['Work as given for Back.', 'as piece back'],
      [
        'Work as for Back until front is 20 rows less than Back to shoulder shaping.',
        'as piece back to matches back to shoulder shaping less 20 rows',
      ],
      ['Work exactly as given for Back until 82 (88: 92: 98) sts rem.', 'as piece back to 82 (88, 92, 98) sts'],
      ['Work as given for Back to start of armhole shaping.', 'as piece back to start of armhole shaping'],
      ['Make as given for Back as far as **.', 'as piece back to **'],
      ['Front: As Back to **.', 'declare title Front | as piece back to **'],
      ['Work as Left Front, reversing shapings.', 'as piece left front reversing'],
      ['Work to correspond with left front, reversing shapings.', 'as piece left front reversing'],
      ['Complete to match first side.', 'as side first side reversing'],
      ['Work to match left side of neck, reversing shaping.', 'as side left side of neck reversing'],
      ['Finish as other side.', 'as side other side reversing'],
      ['Finish to correspond.', 'as side reversing'],
      ['Complete as for first side.', 'as side first side reversing'],
      ['Complete second side to match first side.', 'as side first side reversing'],
      ['Complete as given for left front.', 'as piece left front'],
      ['Make another piece the same.', 'as piece 1× more'],
      ['Work second sleeve in the same way.', 'as piece sleeve 1× more'],
      ['Make 3.', 'as piece 3× all'],
      ['Make 2 alike.', 'as piece 2× all'],
      ['Work other side to match, reversing shapings.', 'as side reversing'],
      ['Work as first side, reversing shaping.', 'as side first side reversing'],
      [
        'Dec 1 st at armhole edge of next 6 rows AND AT SAME TIME dec 1 st at neck edge on 3rd and every foll 4th row.',
        'dec 1 edge armhole {next n=6} | at the same time {dec 1 edge neck {nth k=3; every k=4}}',
      ],
      ['At the same time, when armhole measures 17 cm, shape neck.', 'at the same time when armhole 17 cm {}'],
      [
        'Dec 1 st at neck edge of next 6 rows and at same time cast off 7 sts at beg of 2nd row and foll alt row.',
        'dec 1 edge neck {next n=6} | at the same time {bindOff rows 7 {nth k=2; follEvery k=2}}',
      ],
      [
        'AT THE SAME TIME, dec 1 st at neck edge on every RS row until 22 sts rem.',
        'at the same time {dec 1 edge neck {every RS until 22}}',
      ],
      [
        'Dec 1 st at each end of next and every foll alt row and, at the same time, when 62 sts rem, cast off centre 14 sts.',
        'dec 1 bothEnds {next; every k=2} | at the same time when 62 sts {BO centre 14}',
      ],
      [
        'Cont to dec at armhole edge as set, at the same time dec 1 st at neck edge of next 3 rows.',
        'declare rule cont to dec at armhole edge as set | at the same time {dec 1 edge neck {next n=3}}',
      ],
      [
        'AT SAME TIME, when work measures 42 cm, ending with a WS row, shape neck as follows: dec 1 st at neck edge of next 4 rows.',
        'at the same time when work 42 cm ending WS {dec 1 edge neck {next n=4}}',
      ],
      [
        'Work as set, while at the same time inc 1 st at each end of every 8th row 5 times.',
        'work patt until loose "" | at the same time {inc 1 bothEnds {every n=5 k=8}}',
      ],
      [
        'At the same time, once armhole measures 6 (6½, 7, 7½)", begin neck shaping.',
        'at the same time when armhole 6 (6.5, 7, 7.5) in {}',
      ],
      ['At the same time, on 5th row, dec 1 st at neck edge.', 'at the same time {dec 1 edge neck {nth k=5}}'],
    ],
  },
  {
    sizes: ['XS', 'S', 'M'],
    rows: [
      ['Work back as for front to armholes.', 'as piece front to armholes'],
      ['Work as front to **.', 'as piece front to **'],
      ['Work as for back to beg of armhole shaping.', 'as piece back to beg of armhole shaping'],
      ['Work as for Back until armhole measures 12 cm.', 'as piece back to armhole 12 cm'],
      [
        'Work as given for back until work measures 42 (43, 44) cm, ending with a WS row.',
        'as piece back to work 42 (43, 44) cm ending WS',
      ],
      ['Work same as back to neck shaping.', 'as piece back to neck shaping'],
      ['Make exactly as Back.', 'as piece back'],
      ['Knit as for back to **.', 'as piece back to **'],
      ['Work as Right Front, reversing all shaping.', 'as piece right front reversing'],
      ['Work to match right front, reversing shapings.', 'as piece right front reversing'],
      ['Work as left front but reverse all shaping.', 'as piece left front reversing'],
      ['Work second side to match first, reversing shaping.', 'as side first reversing'],
      ['Work other side to correspond, reversing shapings.', 'as side reversing'],
      ['Finish second side to match first side.', 'as side first side reversing'],
      ['Complete to match left side of neck, reversing shaping.', 'as side left side of neck reversing'],
      ['Complete right side to match left, reversing shapings.', 'as side left reversing'],
      ['Complete as left front, reversing shaping.', 'as piece left front reversing'],
      ['Make a second sleeve to match.', 'as piece sleeve 1× more'],
      ['Work second pocket in same way.', 'as piece pocket 1× more'],
      ['Make two more in the same way.', 'as piece 2× more'],
      ['Make 2 sleeves.', 'as piece 2× all'],
      ['Work second sleeve as first.', 'as piece sleeve 1× more'],
      ['Work left sleeve same as right sleeve.', 'as piece right sleeve'],
      ['At the same time dec 1 st at neck edge every 4th row 8 times.', 'at the same time {dec 1 edge neck {every n=8 k=4}}'],
      [
        'AT THE SAME TIME, inc 1 st at each end of 5th and every foll 6th row until there are 80 sts.',
        'at the same time {inc 1 bothEnds {nth k=5; every k=6 until 80}}',
      ],
      [
        'Cont to shape armhole and at the same time dec 1 st at neck edge on every RS row 10 times.',
        'declare rule cont to shape armhole | at the same time {dec 1 edge neck {every n=10 RS}}',
      ],
      [
        'At same time, when piece measures 40 cm, dec 1 st at each end of next row.',
        'at the same time when piece 40 cm {dec 1 bothEnds {next}}',
      ],
      [
        'At the same time, when armhole measures 10 cm, place centre 20 sts on a holder.',
        'at the same time when armhole 10 cm {hold centre 20 on holder}',
      ],
      [
        'Dec 1 st at each end of every RS row 6 times; at the same time, when armhole measures 5 cm, shape neck.',
        'dec 1 bothEnds {every n=6 RS} | at the same time when armhole 5 cm {}',
      ],
      [
        'BO 4 sts at beg of next 2 rows, AT THE SAME TIME, dec 1 st at neck edge every RS row.',
        'bindOff rows 4 {next n=2} | at the same time {dec 1 edge neck {every RS}}',
      ],
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
