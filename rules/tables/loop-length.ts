/**
 * How much yarn stitches take, from the geometry of plain knitting: in relaxed stocking stitch the size of the fabric depends
 * only on the length of yarn in one stitch, so the gauge gives that length back.
 *
 *     wales per cm = Kw / l     courses per cm = Kc / l     stitches per cm² = Ks / l²
 *
 * with l the yarn of one stitch in cm. The constants hold for wool; cotton and acrylic differ a little, and rib, cables and
 * lace have none of their own in print, so what comes of this is a question at most.
 */
import { type Certainty, memory, published } from './certainty.ts';

export interface KnitState {
  readonly name: 'dry relaxed' | 'wet relaxed' | 'fully relaxed';
  readonly kc: number;
  readonly kw: number;
  readonly ks: number;
  readonly certainty: Certainty;
}

export const knitStates: readonly KnitState[] = [
  // D. L. Munden, Journal of the Textile Institute 50 (1959) T448; figures from memory.
  { name: 'dry relaxed', kc: 5.0, kw: 3.8, ks: 19.0, certainty: memory },
  { name: 'wet relaxed', kc: 5.3, kw: 4.1, ks: 21.6, certainty: memory },
  // Kc and Kw printed in the GATE 2015 textile engineering paper; Ks is their product.
  {
    name: 'fully relaxed',
    kc: 5.5,
    kw: 4.2,
    ks: 23.1,
    certainty: published('GATE 2015, Textile Engineering and Fibre Science, question 54'),
  },
];

export interface Range {
  readonly low: number;
  readonly high: number;
}

/** Yarn of one stitch in cm, dry relaxed to fully relaxed. Gauges are stitches and rows to 10 cm; rows may be unknown. */
export function loopLength(gaugeSts: number, gaugeRows: number | null): Range {
  const ends = [knitStates[0]!, knitStates[2]!].map((state) =>
    gaugeRows === null ? (10 * state.kw) / gaugeSts : 10 * Math.sqrt(state.ks / (gaugeSts * gaugeRows)),
  );
  return { low: ends[0]!, high: ends[1]! };
}

/** Yarn in metres for a number of stitches at a gauge given over 10 cm. Cast-on, cast-off and ends not included. */
export function yarnForStitches(gaugeSts: number, gaugeRows: number | null, stitches: number): Range {
  const loop = loopLength(gaugeSts, gaugeRows);
  return { low: (loop.low * stitches) / 100, high: (loop.high * stitches) / 100 };
}

/** Yarn of a cast-off edge, in widths of the edge: rules of thumb run from three to six. Common practice. */
export const castOffWidths = { low: 3, high: 6, certainty: memory } as const;
/** The tail of a long-tail cast-on, in widths of the edge, without the hand's length left over. Common practice. */
export const longTailWidths = { low: 3, high: 4, certainty: memory } as const;
/** What pattern writers add to the yarn of a sample. Common practice. */
export const allowance = { low: 1.05, usual: 1.1, high: 1.15, certainty: memory } as const;
/** A stated quantity is questioned only outside this share of the middle of the estimate. A choice of this project. */
export const questionOutside = { low: 0.75, high: 1.35 } as const;
