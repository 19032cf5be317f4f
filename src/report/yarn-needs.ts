/** Estimates of yarn for one row, a cast-on tail and a cast-off edge, from the gauge. Rules of thumb disagree, so all are ranges. */
import { castOffWidths, longTailWidths, loopLength, type Range } from '../../rules/tables/loop-length.ts';
import type { Proof } from '../index.ts';

export interface YarnNeeds {
  /** Centimetres for one stitch, one row of `stitches`, the tail of a long-tail cast-on and a cast-off edge of as many. */
  readonly stitch: Range;
  row(stitches: number): Range;
  tail(stitches: number): Range;
  castOff(stitches: number): Range;
}

/** Length left over for weaving in, in cm. Common practice. */
const hand = 15;

/** Null where the draft gives no gauge in stitches over a length. */
export function yarnNeeds(proof: Proof): YarnNeeds | null {
  for (const gauge of proof.pattern.front.gauges) {
    const over = gauge.over.find((measure) => measure.unit === 'cm') ?? gauge.over.find((measure) => measure.unit === 'in');
    const length = over?.values[0];
    if (gauge.stitches === null || over === undefined || length == null || length <= 0) continue;
    const cm = over.unit === 'cm' ? length : length * 2.54;
    const stitches = (gauge.stitches * 10) / cm;
    const rows = gauge.rows === null ? null : (gauge.rows * 10) / cm;
    const loop = loopLength(stitches, rows);
    const width = (count: number) => (count * 10) / stitches;
    return {
      stitch: loop,
      row: (count) => ({ low: loop.low * count, high: loop.high * count }),
      tail: (count) => ({ low: longTailWidths.low * width(count) + hand, high: longTailWidths.high * width(count) + hand }),
      castOff: (count) => ({ low: castOffWidths.low * width(count) + hand, high: castOffWidths.high * width(count) + hand }),
    };
  }
  return null;
}
