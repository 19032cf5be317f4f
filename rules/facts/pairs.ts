/** Measures printed in two units: which values do not convert into one another. */
import type { Measure, MeasurePair } from '../../src/pattern/front/front-matter.ts';
import {
  cmPerInch,
  gramsPerOunce,
  inchesAgree,
  inchTolerance,
  metresPerYard,
  ouncesAgree,
  tradeCmPerInch,
  yardsAgree,
} from '../tables/units.ts';
import { centimetres, stepOf } from './units.ts';

export interface PairFault {
  readonly pair: MeasurePair;
  readonly sizes: readonly number[];
  /** Values of the fault: as printed in the first and the second unit, and what the first comes to in the second. */
  readonly first: readonly number[];
  readonly second: readonly number[];
  readonly converted: readonly number[];
  /** Off by more than rounding can do, or only out of step with its neighbours. */
  readonly sure: boolean;
  /** The two figures fit when exchanged. */
  readonly exchanged: boolean;
}

interface Values {
  readonly size: number;
  readonly first: number;
  readonly second: number;
}

function valuesOf(first: Measure, second: Measure): readonly Values[] {
  const lists = [[first.values, second.values]];
  if (first.upper !== null && second.upper !== null) lists.push([first.upper, second.upper]);
  return lists.flatMap(([one, two]) => {
    if (one!.length !== two!.length) return [];
    return one!.flatMap((value, size) => {
      const other = two![size];
      return value === null || other === null || other === undefined ? [] : [{ size, first: value, second: other }];
    });
  });
}

/** Converts between the two units of a pair; null where they are of different kinds. */
function converter(from: Measure['unit'], to: Measure['unit']): ((value: number) => number) | null {
  const [a, b] = [centimetres(1, from), centimetres(1, to)];
  if (from === 'yd' && to === 'm') return (value) => value * metresPerYard;
  if (from === 'm' && to === 'yd') return (value) => value / metresPerYard;
  if (from === 'oz' && to === 'g') return (value) => value * gramsPerOunce;
  if (from === 'g' && to === 'oz') return (value) => value / gramsPerOunce;
  return a === null || b === null || from === 'm' || to === 'm' ? null : (value) => (value * a) / b;
}

const isInch = (unit: Measure['unit']): boolean => unit === 'in';

/** Inches and centimetres of a pair whichever stands first, in order of the sizes. */
function lengths(pair: MeasurePair): { inches: Measure; cm: Measure } | null {
  const [one, two] = [pair.first, pair.second];
  if (isInch(one.unit) && (two.unit === 'cm' || two.unit === 'mm')) return { inches: one, cm: two };
  if (isInch(two.unit) && (one.unit === 'cm' || one.unit === 'mm')) return { inches: two, cm: one };
  return null;
}

const cmOf = (value: number, unit: Measure['unit']): number => (unit === 'mm' ? value / 10 : value);

/** How far the pair is off at the nearer ratio, in cm. */
const offBy = (inches: number, cm: number): number => Math.min(Math.abs(inches * cmPerInch - cm), Math.abs(inches * tradeCmPerInch - cm));

function badLengths(pair: MeasurePair): { bad: readonly Values[]; sure: boolean } {
  const both = lengths(pair)!;
  const cmStep = both.cm.unit === 'mm' ? 0.1 : stepOf(both.cm);
  const inchStep = stepOf(both.inches);
  const read = valuesOf(both.inches, both.cm).map((one) => ({ ...one, second: cmOf(one.second, both.cm.unit) }));
  const fits = (one: Values): boolean => {
    const agree = inchesAgree(one.first, one.second, Math.min(inchStep, one.first < 2 ? 0.25 : 1), cmStep);
    return agree.exact || agree.trade;
  };
  const bad = read.filter((one) => !fits(one));
  if (bad.length > 0) return { bad, sure: true };
  // Whole inches leave room for 1.8 cm; one value of a list far from its neighbours' fit is still worth a question.
  const fine = inchTolerance(0.25, Math.max(cmStep, 0.5), cmPerInch);
  const odd = read.filter((one) => offBy(one.first, one.second) > fine);
  const rest = read.filter((one) => !odd.includes(one));
  const calm = rest.length >= 3 && rest.every((one) => offBy(one.first, one.second) <= fine * 0.6);
  return { bad: odd.length === 1 && calm ? odd : [], sure: false };
}

/** Every pair of a draft that does not convert. */
export function pairFaults(pairs: readonly MeasurePair[]): readonly PairFault[] {
  const faults: PairFault[] = [];
  for (const pair of pairs) {
    const convert = converter(pair.first.unit, pair.second.unit);
    if (convert === null) continue;
    const isLength = lengths(pair) !== null;
    let bad: readonly Values[];
    let sure = true;
    if (isLength) {
      const read = badLengths(pair);
      sure = read.sure;
      const sizes = new Set(read.bad.map((one) => one.size));
      const exact = read.bad;
      bad = valuesOf(pair.first, pair.second).filter((one) => sizes.has(one.size) && exact.some((other) => same(pair, one, other)));
    } else {
      const swap = pair.first.unit === 'm' || pair.first.unit === 'g';
      const agree = pair.first.unit === 'm' || pair.first.unit === 'yd' ? yardsAgree : ouncesAgree;
      bad = valuesOf(pair.first, pair.second).filter((one) => (swap ? !agree(one.second, one.first) : !agree(one.first, one.second)));
    }
    if (bad.length === 0) continue;
    const back = converter(pair.second.unit, pair.first.unit)!;
    faults.push({
      pair,
      sizes: bad.map((one) => one.size),
      first: bad.map((one) => one.first),
      second: bad.map((one) => one.second),
      converted: bad.map((one) => convert(one.first)),
      sure,
      exchanged: bad.every((one) => Math.abs(back(one.first) - one.second) <= one.second * 0.015),
    });
  }
  return faults;
}

function same(pair: MeasurePair, one: Values, other: Values): boolean {
  const inchesFirst = isInch(pair.first.unit);
  const cm = inchesFirst ? pair.second : pair.first;
  return inchesFirst
    ? one.first === other.first && cmOf(one.second, cm.unit) === other.second
    : one.second === other.first && cmOf(one.first, cm.unit) === other.second;
}

/** Pairs that only one of the two ratios explains: which ratio, for the whole draft. */
export function ratiosOf(pairs: readonly MeasurePair[]): {
  readonly exact: readonly MeasurePair[];
  readonly trade: readonly MeasurePair[];
} {
  const only = { exact: [] as MeasurePair[], trade: [] as MeasurePair[] };
  for (const pair of pairs) {
    const both = lengths(pair);
    if (both === null || both.cm.unit === 'mm') continue;
    const steps = [stepOf(both.inches), stepOf(both.cm)] as const;
    const agree = valuesOf(both.inches, both.cm).map((one) => inchesAgree(one.first, one.second, steps[0], steps[1]));
    if (agree.length === 0 || agree.some((one) => !one.exact && !one.trade)) continue;
    if (agree.some((one) => one.exact && !one.trade) && agree.every((one) => one.exact)) only.exact.push(pair);
    if (agree.some((one) => one.trade && !one.exact) && agree.every((one) => one.trade)) only.trade.push(pair);
  }
  return only;
}
