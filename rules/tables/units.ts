/** Units, the two ratios of inch to centimetre that the trade prints, and the tolerances within which measures agree. */
import { memory, published } from './certainty.ts';

/** Exact: the international inch, yard and ounce. */
export const cmPerInch = 2.54;
export const metresPerYard = 0.9144;
export const gramsPerOunce = 28.3495;

/**
 * Many technical editors convert lengths inside a pattern at 2.5 cm to the inch, since every length comes from a gauge given
 * as "4 in / 10 cm"; body charts and other houses use 2.54. Both are in print.
 */
export const tradeCmPerInch = 2.5;
export const inchRatios: readonly number[] = [cmPerInch, tradeCmPerInch];
export const inchRatioCertainty = published("technical editors' articles and publishers' schematics that print either ratio");

/** 4 in is 10.16 cm; gauge treats it as 10 cm. */
export const gaugeSpan = { inches: 4, cm: 10 } as const;

/** Room for a last digit that was itself rounded, in cm. */
export const roundingSlack = 0.05;

/** The step that values are rounded to: quarter inches or halves of a centimetre unless the numbers show a coarser one. */
export function rulerStep(values: readonly number[], steps: readonly number[]): number {
  const fits = (step: number): boolean => values.every((value) => Math.abs(value / step - Math.round(value / step)) < 1e-6);
  const sorted = [...steps].sort((a, b) => b - a);
  return sorted.find(fits) ?? Math.min(...steps);
}

/** How far the centimetres may stand from the converted inches when both were rounded: half a step of each. */
export function inchTolerance(inchStep: number, cmStep: number, ratio: number): number {
  return (ratio * inchStep) / 2 + cmStep / 2 + roundingSlack;
}

/** Inches and centimetres that agree at 2.54, at 2.5, or at both, within the rounding of their steps. */
export function inchesAgree(
  inches: number,
  cm: number,
  inchStep: number,
  cmStep: number,
): { readonly exact: boolean; readonly trade: boolean } {
  const near = (ratio: number): boolean => Math.abs(inches * ratio - cm) <= inchTolerance(inchStep, cmStep, ratio) + 1e-9;
  return { exact: near(cmPerInch), trade: near(tradeCmPerInch) };
}

/** Yards and metres: one metre for rounding, and one in a hundred because labels round both. */
export const yardsAgree = (yards: number, metres: number): boolean => Math.abs(metres - yards * metresPerYard) <= 1 + 0.01 * metres;

/** Ounces and grams: ball labels say 1¾ oz for 50 g and 3½ oz for 100 g, which is up to 1 % off; 3 % leaves room. */
export const ouncesAgree = (ounces: number, grams: number): boolean => Math.abs(grams - ounces * gramsPerOunce) <= 0.03 * grams;

/** Within these a stated width agrees with stitches and gauge: a quarter inch, half a centimetre or one stitch, since counts are made to fit the repeat. Common practice, no source. */
export const widthPasses = { inches: 0.25, cm: 0.5, stitches: 1 } as const;
/** Up to these it is a question; beyond both an error. Common practice, no source. */
export const widthQueries = { stitches: 2, percent: 2 } as const;
export const widthCertainty = memory;

/** Rows to stitches of stocking stitch: relaxed plain knit comes to 1.3; printed gauges run from 1.22 to 1.5. Outside this a question. */
export const rowsPerStitch = { low: 1.15, high: 1.55, certainty: published('plain-knit geometry and five printed gauges') } as const;
/** Gauge in two units: 4 in for 10 cm is 1.6 % off and accepted. */
export const gaugePercent = 2;
