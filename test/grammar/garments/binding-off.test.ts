/** Binding off: every wording with the tree it must read into. Forms of the trade; numbers and words made up here. */
import { describe, expect, it } from 'vitest';
import { read } from '../outline.ts';

/** Sizes of the draft, then each text with its outline. */
const tables: readonly { readonly sizes: readonly string[]; readonly rows: readonly (readonly [string, string])[] }[] = [
  {
    sizes: ['XS', 'S', 'M', 'L'],
    rows: [
      ['Cast off 6 (7: 8: 9) sts at beg of next 3 rows.', 'bindOff rows 6 (7, 8, 9) {next n=3}'],
      ['BO 8 sts beg next 4 rows, then 7 (8, 9, 9) sts beg foll 2 rows.', 'bindOff rows 8 {next n=4} + 7 (8, 9, 9) {follEach n=2}'],
      ['Cast off 5 sts at beg of next row and foll alt row.', 'bindOff rows 5 {next; follEvery k=2}'],
      [
        'Bind off at the beg of the next 2 rows 5 (6, 7, 8) sts, at beg of next 4 rows 3 sts.',
        'bindOff rows 5 (6, 7, 8) {next n=2} + 3 {next n=4}',
      ],
      ['Next 3 rows: Bind off 9 sts at beg of each row.', 'row next 3: bindOff rows 9 {this}'],
      ['BO 7 sts at beg of next and foll 6 rows.', 'bindOff rows 7 {next; follEach n=6}'],
      ['BO 4 sts beg next 3 rows.', 'bindOff rows 4 {next n=3}'],
      ['Cast off 4 sts at beg of each of next 2 rows.', 'bindOff rows 4 {next n=2}'],
      [
        'Cast off 4 sts at beg of next 2 rows, 3 sts at beg of foll 2 rows and 2 sts at beg of next 4 rows.',
        'bindOff rows 4 {next n=2} + 3 {follEach n=2} + 2 {next n=4}',
      ],
      ['Bind off 5 sts at the beginning of the next two rows.', 'bindOff rows 5 {next n=2}'],
      ['Cast off 3 sts at beg of next 4 rows and 2 sts at beg of foll 4 rows.', 'bindOff rows 3 {next n=4} + 2 {follEach n=4}'],
      ['Bind off 6 (7, 8, 8) sts at beg of next RS row.', 'bindOff rows 6 (7, 8, 8) {next RS}'],
      [
        'Cast off 5 sts at beg of next row, then dec 1 st at armhole edge on next 5 rows.',
        'bindOff rows 5 {next} | dec 1 edge armhole {next n=5}',
      ],
      ['Cast off 5 sts at beg of next row, patt to end.', 'bindOff rows 5 {next}'],
      ['Cast off rem 40 (42: 42: 44) sts.', 'BO remaining all:40 (42, 42, 44)'],
      ['Cast off purlwise.', 'BO all all:0'],
      ['Fasten off.', 'join fastenOff'],
      ['Cast off.', 'BO all all:0'],
      ['Bind off all sts.', 'BO all all:0'],
      ['Cast off loosely in patt.', 'BO all all:0'],
      ['BO rem sts.', 'BO remaining all:0'],
      ['Cast off using a sewn bind-off.', 'BO all all:0'],
      ['K27, BO 23, k to end.', 'row: k{27} BO 23 k→end'],
      ['Cast off 7, k until there are 17 sts on right needle and turn.', 'row: BO 7 k→17 on right turn'],
      ['Rib 4, cast off 2, rib until there are 14 sts after cast-off.', 'row: rib→over 4 BO 2 rib→14 on right after bind-off'],
      [
        'Work 33 (36, 38, 40) sts, BO centre 22 (22, 24, 24) sts, work to end.',
        'row: work→over 33 (36, 38, 40) BO centre 22 (22, 24, 24) work→end',
      ],
      [
        'Rib 4, cast off 2 sts, rib until there are 16 sts on right needle after cast-off, turn.',
        'row: rib→over 4 BO 2 rib→16 on right after bind-off turn',
      ],
      ['K12, bind off next 8 sts, k to end.', 'row: k{12} BO 8 k→end'],
      [
        'Bind off at neck edge 4 sts once, 3 sts twice, then dec 1 st every other row 4 times.',
        'bindOff rows at neck edge 4 {follEvery n=1 k=2} + 3 {follEvery n=2 k=2} | dec 1 edge neck {every n=4 k=2}',
      ],
      [
        'Cast off every other row: 4 sts 1 time, 3 sts 3 times, 1 st 4 times.',
        'bindOff rows 4 {follEvery n=1 k=2} + 3 {follEvery n=3 k=2} + 1 {follEvery n=4 k=2}',
      ],
      ['BO from each neck edge 5 sts once, 4 sts once.', 'bindOff rows at neck edge 5 {follEvery n=1 k=2} + 4 {follEvery n=1 k=2}'],
      ['Bind off for shoulder at armhole edge 6 (7, 8, 8) sts 3 times.', 'bindOff rows at armhole edge 6 (7, 8, 8) {follEvery n=3 k=2}'],
      ['BO 3 (4, 5, 5) sts at each neck edge once.', 'bindOff rows at neck edge 3 (4, 5, 5) {follEvery n=1 k=2}'],
      [
        'At each neck edge, BO 4 sts once, 3 sts once and 2 sts twice.',
        'bindOff rows at neck edge 4 {follEvery n=1 k=2} + 3 {follEvery n=1 k=2} + 2 {follEvery n=2 k=2}',
      ],
      ['At neck edge, bind off 3 sts once, then 2 sts twice.', 'bindOff rows at neck edge 3 {follEvery n=1 k=2} + 2 {follEvery n=2 k=2}'],
      ['Cast off 3 sts at neck edge on next and foll alt row.', 'bindOff rows at neck edge 3 {next; follEvery k=2}'],
      ['Bind off 4 sts at neck edge of next row.', 'bindOff rows at neck edge 4 {next}'],
      ['Cast off in rib.', 'BO all all:0'],
      ['BO loosely purlwise.', 'BO all all:0'],
      ['Cast off knitwise on WS.', 'BO all all:0'],
      ['Cast off rem 44 sts, working 2 tog 4 times over cables.', 'BO remaining all:44'],
      ['K9, cast off next 24 sts AT SAME TIME dec 4 sts across cable, k to end.', 'row: k{9} BO 24 k→end'],
      ['Cast off 5 sts at beg and dec 1 st at end of next row.', 'bindOff rows 5 {next} | at the same time {dec 1 end {next}}'],
      ['Cast off 5 sts at beg of next row and 4 sts at beg of foll alt row.', 'bindOff rows 5 {next} + 4 {follEvery k=2}'],
      [
        'Cast off 8 sts at armhole edge on next row, then 8 sts at same edge on foll alt row.',
        'bindOff rows at armhole edge 8 {next} + 8 {follEvery k=2}',
      ],
      ['Work 1 row. Cast off rem 9 sts.', 'plain 1 rows | BO remaining all:9'],
      ['Bind off 7 sts at beg of next 2 rows—82 sts.', 'bindOff rows 7 {next n=2} =82 total'],
      ['Next row: Cast off 7 sts, k to last 9 sts, turn.', 'row next: BO 7 k→last 9 turn'],
      ['Row 1 (RS): BO 5 sts, k to end. Row 2: BO 5 sts, p to end.', 'row 1 (RS): BO 5 k→end | row 2: BO 5 p→end'],
      ['Next row (WS): Cast off 4 sts, p to last 2 sts, p2tog tbl.', 'row next (WS): BO 4 p→last 2 pNtog tbl{2}'],
    ],
  },
  {
    sizes: ['XS', 'S', 'M'],
    rows: [
      [
        'Bind off 4 stitches at the beginning of next 2 rows, then 2 sts at the beg of foll 4 rows.',
        'bindOff rows 4 {next n=2} + 2 {follEach n=4}',
      ],
      [
        'BO 4 sts at beg of next 2 rows, 2 sts at beg of next 2 rows, then dec 1 st each side every RS row 3 times.',
        'bindOff rows 4 {next n=2} + 2 {next n=2} | dec 1 bothEnds {every n=3 RS}',
      ],
      ['Bind off 6 (7, 8) sts at beg of next 4 rows. BO rem 30 sts.', 'bindOff rows 6 (7, 8) {next n=4} | BO remaining all:30'],
      ['Cast off 3 sts at the beginning of next and following 3 rows.', 'bindOff rows 3 {next; follEach n=3}'],
      ['BO 5 sts at beg of next RS row and 3 sts at beg of foll RS row.', 'bindOff rows 5 {next RS} + 3 {follEach RS}'],
      ['Bind off 5 sts at armhole edge on next RS row.', 'bindOff rows at armhole edge 5 {next RS}'],
      ['BO 3 sts at neck edge twice.', 'bindOff rows at neck edge 3 {follEvery n=2 k=2}'],
      [
        'At neck edge, BO 5 sts once, then dec 1 st every RS row 4 times.',
        'bindOff rows at neck edge 5 {follEvery n=1 k=2} | dec 1 edge neck {every n=4 RS}',
      ],
      ['At beg of next 2 rows, bind off 6 sts.', 'bindOff rows 6 {next n=2}'],
      ['On next 2 rows, cast off 6 sts at beg of row.', 'bindOff rows 6 {next n=2}'],
      ['Next row (RS): BO 5 (6, 7) sts, work in patt to end.', 'row next (RS): BO 5 (6, 7) patt→end'],
      ['Next row: BO 5 sts, k until there are 20 sts on right-hand needle, turn.', 'row next: BO 5 k→20 on right turn'],
      ['K20, bind off 10, knit to end.', 'row: k{20} BO 10 k→end'],
      ['K 20, cast off next 10 sts loosely, k to end.', 'row: k{20} BO 10 k→end'],
      ['K 20 sts, BO center 10 sts, k to end of row.', 'row: k{20} BO centre 10 k→end'],
      ['BO all sts in pattern.', 'BO all all:0'],
      ['Bind off in rib.', 'BO all all:0'],
      ['Bind off loosely in pattern.', 'BO all all:0'],
      ['BO rem 12 (14, 16) sts.', 'BO remaining all:12 (14, 16)'],
      ['Bind off remaining stitches.', 'BO remaining all:0'],
      ['Cast off all sts knitwise.', 'BO all all:0'],
      ['Cast off all sts using 3-needle bind off.', 'join threeNeedle'],
      ['BO with larger needle.', 'BO all all:0'],
      ['Cast off ribwise.', 'BO all all:0'],
      ['Cast off very loosely.', 'BO all all:0'],
      ['Bind off using stretchy method.', 'BO all all:0'],
      ['BO all sts, leaving a long tail.', 'BO all all:0 | change yarn'],
      ['Cast off 4 sts, patt to last 4 sts, cast off last 4 sts.', 'row: BO 4 patt→last 4 BO 4'],
      [
        'Cast off 8 sts, k next 12 sts, place these 13 sts on a holder, cast off 20 sts, k to end.',
        'row: BO 8 k{12} hold these 13 on holder BO 20 k→end',
      ],
      ['Fasten off last st.', 'join fastenOff'],
      ['Break yarn and fasten off.', 'change break | join fastenOff'],
    ],
  },
];

describe('Binding off', () => {
  for (const { sizes, rows } of tables) {
    it.each(rows)('%s', (text, expected) => {
      expect(read(text, { sizes })).toBe(expected);
    });
  }
});
