/** Measures in one unit, and printed as an author prints them. */
import type { Measure } from '../../src/pattern/front/front-matter.ts';
import { cmPerInch, rulerStep } from '../tables/units.ts';
import { figure } from './wording.ts';

const quarters = ['', '¼', '½', '¾'];

/** `23¼`, `⅝`, `12.1`: inches in quarters, smaller ones in eighths. */
export function inchFigure(value: number): string {
  const eighths = Math.round(value * 8);
  if (value < 1 && eighths % 2 === 1) return ['', '⅛', '', '⅜', '', '⅝', '', '⅞'][eighths] ?? figure(value);
  const all = Math.round(value * 4);
  const whole = Math.floor(all / 4);
  const rest = quarters[all % 4] ?? '';
  return whole === 0 && rest !== '' ? rest : `${whole}${rest}`;
}

/** "23¼ in", "59 cm". */
export const printed = (value: number, unit: Measure['unit']): string =>
  `${unit === 'in' && Math.abs(value * 8 - Math.round(value * 8)) < 0.01 ? inchFigure(value) : figure(value)} ${unit}`;

/** A length in centimetres to the precision the unit is usually given in: quarter inches, half centimetres. */
export const rounded = (value: number, unit: Measure['unit']): string => {
  const step = unit === 'in' ? (value < 2 ? 0.125 : 0.25) : unit === 'cm' ? (value < 4 ? 0.1 : 0.5) : 1;
  return printed(Math.round(value / step) * step, unit);
};

const inCm: Readonly<Partial<Record<Measure['unit'], number>>> = { cm: 1, mm: 0.1, in: cmPerInch, m: 100 };

/** Centimetres of one length; null for weights. */
export const centimetres = (value: number, unit: Measure['unit']): number | null => {
  const factor = inCm[unit];
  return factor === undefined ? null : value * factor;
};

/** The step a list of values is printed in, in its own unit. */
export function stepOf(measure: Measure): number {
  const values = [...measure.values, ...(measure.upper ?? [])].filter((value): value is number => value !== null);
  const steps = measure.unit === 'in' ? [1, 0.5, 0.25, 0.125] : measure.unit === 'cm' ? [1, 0.5, 0.1] : [1];
  return rulerStep(values, steps);
}

/** The measure as the size reads it; null where the size has none. */
export const valueAt = (measure: Measure, size: number, count: number): number | null =>
  measure.values.length === 1 ? (measure.values[0] ?? null) : measure.values.length === count ? (measure.values[size] ?? null) : null;
