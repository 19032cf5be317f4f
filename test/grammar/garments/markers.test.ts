/** Markers: every wording with the tree it must read into. Forms of the trade; numbers and words made up here. */
import { describe, expect, it } from 'vitest';
import { read } from '../outline.ts';

/** Sizes of the draft, then each text with its outline. */
const tables: readonly { readonly sizes: readonly string[]; readonly rows: readonly (readonly [string, string])[] }[] = [
  {
    sizes: ['XS', 'S', 'M', 'L'],
    rows: [
      [
        'K 30, pm, k 14, pm, k 30, pm, k 14, pm for BOR.',
        'row: k{30} marker place k{14} marker place k{30} marker place k{14} marker place BOR',
      ],
      ['Mark centre st.', 'marker hang'],
      ['Pm 22 (24: 26: 28) sts in from each edge.', 'marker place 22 (24, 26, 28) from eachEnd'],
      ['Sm, k to next marker.', 'row: marker slip k→to marker'],
      ['Remove BOR marker, k6, replace marker.', 'row: marker remove BOR k{6} marker replace'],
      ['K to 3 sts before m, k2tog, sm, ssk.', 'row: k→3 before marker kNtog{2} marker slip ssk'],
      ['[K to m, m1R, sm, k1, m1L] 5 times.', 'row: [k→to marker M1R marker slip k{1} M1L]→5×'],
      ['Rib to 4 sts past marker.', 'row: rib→4 past marker'],
      ['Cont until work meas 22 (23: 24: 25) cm from markers.', 'work until work 22 (23, 24, 25) cm from markers'],
      ['Place a coloured thread at each end of last row.', 'marker hang at row'],
      ['Place markers at each end of next row.', 'marker hang at row'],
      ['Remove marker, k to end.', 'row: marker remove k→end'],
      ['K1, sl marker, k1.', 'row: k{1} marker slip k{1}'],
      ['K40, place marker, k40.', 'row: k{40} marker place k{40}'],
      ['K40, place marker (side), k40.', 'row: k{40} marker place k{40}'],
      ['K 20, pm for raglan, k 40, pm for raglan, k 20.', 'row: k{20} marker place raglan k{40} marker place raglan k{20}'],
      ['Place a marker on first st for BOR.', 'marker place BOR'],
      ['Mark each end of last row with a coloured thread.', 'marker hang at row | change yarn'],
      ['Place contrasting marker for beg of rnd.', 'marker place BOR'],
      ['K to marker, slip marker, k1.', 'row: k→to marker marker slip k{1}'],
    ],
  },
  {
    sizes: ['XS', 'S', 'M'],
    rows: [
      ['K10, place a marker, k10.', 'row: k{10} marker place k{10}'],
      ['K10, PM, k10.', 'row: k{10} marker place k{10}'],
      ['Pm in centre of row.', 'marker place'],
      ['Place marker in 40th st.', 'marker place 40 from beginning'],
      ['Mark 20th st from each end.', 'marker hang 20 from eachEnd'],
      ['Place a marker after the 20th st.', 'marker place 20 from beginning'],
      ['K to marker, sm, k to end.', 'row: k→to marker marker slip k→end'],
      ['K to marker, remove marker, k to end.', 'row: k→to marker marker remove k→end'],
      ['K to first marker, slip it, k to second marker.', 'row: k→to first marker marker slip k→to 2 marker'],
      ['K1, sm, k to 2 sts before next marker, ssk, sm, k1.', 'row: k{1} marker slip k→2 before marker ssk marker slip k{1}'],
      ['K to 1 st before marker, m1R, k1, sm, k1, m1L, k to end.', 'row: k→1 before marker M1R k{1} marker slip k{1} M1L k→end'],
      ['Slip marker, k1, m1L.', 'row: marker slip k{1} M1L'],
      ['Remove all markers.', 'marker remove'],
      ['Place marker A, k20, place marker B.', 'row: marker place a k{20} marker place b'],
      ['Place marker for side seam.', 'marker place side seam'],
      ['Place a marker at beg and end of row.', 'marker hang at row'],
      ['Place markers at each end of row for armholes.', 'marker hang armholes at row'],
      ['Mark both ends of last row.', 'marker hang at row'],
      ['Mark beg of rnd.', 'marker hang BOR'],
      ['K6, replace marker.', 'row: k{6} marker replace'],
      ['Move marker 2 sts to the left.', 'marker move 2 left'],
      ['Place removable marker at each end of last row.', 'marker hang at row'],
      ['Work to marker, turn.', 'row: work→to marker turn'],
      ['Work to 3 sts past marker, turn.', 'row: work→3 past marker turn'],
    ],
  },
];

describe('Markers', () => {
  for (const { sizes, rows } of tables) {
    it.each(rows)('%s', (text, expected) => {
      expect(read(text, { sizes })).toBe(expected);
    });
  }
});
