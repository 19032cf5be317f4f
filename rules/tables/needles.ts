/**
 * Knitting needle sizes: metric diameter, and the US and old UK numbers that charts print beside it. Charts differ in a few
 * rows; those carry the other label, and a pair that only some charts print is a question and no error.
 */
import { type Certainty, memory, published } from './certainty.ts';

export interface NeedleSize {
  /** Diameter in millimetres. */
  readonly mm: number;
  /** The usual label; null where charts give none. */
  readonly us: string | null;
  readonly uk: string | null;
  /** Labels that a minority of charts prints; `none` where some charts leave the place empty. */
  readonly usOther: readonly string[];
  readonly ukOther: readonly string[];
  readonly certainty: Certainty;
}

/** Eight to nine conversion charts (hobby, retail and reference) compared in 2026; the counts are how many agree. */
const charts = (count: number): Certainty => published(`${count} published conversion charts`);

const row = (
  mm: number,
  us: string | null,
  uk: string | null,
  certainty: Certainty,
  usOther: readonly string[] = [],
  ukOther: readonly string[] = [],
): NeedleSize => ({ mm, us, uk, usOther, ukOther, certainty });

export const needleSizes: readonly NeedleSize[] = [
  // Below 2 mm the US label slips by one zero between charts: trust the millimetres.
  row(1, '00000', '19', charts(4), ['0000']),
  row(1.25, '0000', '18', charts(4), ['000']),
  row(1.5, '000', '17', charts(4), ['00']),
  row(1.75, '00', '15', charts(4)),
  row(2, '0', '14', charts(9)),
  row(2.25, '1', '13', charts(8), ['0']),
  row(2.5, '1.5', null, charts(5), ['1']),
  row(2.75, '2', '12', charts(9)),
  row(3, '2.5', '11', charts(3), ['2']),
  row(3.25, '3', '10', charts(9)),
  row(3.5, '4', null, charts(9)),
  row(3.75, '5', '9', charts(9)),
  row(4, '6', '8', charts(9)),
  row(4.5, '7', '7', charts(9)),
  row(5, '8', '6', charts(9)),
  row(5.5, '9', '5', charts(9)),
  row(6, '10', '4', charts(9)),
  row(6.5, '10.5', '3', charts(9)),
  row(7, null, '2', charts(7), ['10.75']),
  row(7.5, null, '1', charts(7)),
  row(8, '11', '0', charts(9)),
  row(9, '13', '00', charts(9), [], ['0']),
  row(9.5, '14', null, memory),
  row(10, '15', '000', charts(9), [], ['0']),
  row(12, '17', null, charts(7)),
  row(12.75, '17', null, published('one chart, and the Craft Yarn Council range of super bulky yarn')),
  row(15, '19', null, charts(5)),
  row(16, '19', null, charts(3)),
  row(19, '35', null, charts(5)),
  row(20, '36', null, charts(4)),
  row(25, '50', null, charts(8)),
];

/** US sizes that mean one thing here and another there: alone, without millimetres, they are a question. */
export const doubtfulUsSizes: readonly string[] = ['1.5', '2.5', '17', '19', '35'];

/** `agrees`: most charts print the pair. `charts differ`: some do. `no chart`: none does; `expected` is what they print. */
export interface PairCheck {
  readonly verdict: 'agrees' | 'charts differ' | 'no chart' | 'unknown size';
  readonly expected: string | null;
  readonly certainty: Certainty;
}

/** Whether charts print this US or UK number beside these millimetres. `10½` is given as `10.5`. */
export function checkNeedlePair(mm: number, system: 'us' | 'uk', label: string): PairCheck {
  const known = needleSizes.find((size) => size.mm === mm);
  if (known === undefined) return { verdict: 'unknown size', expected: null, certainty: memory };
  const expected = known[system];
  const others = system === 'us' ? known.usOther : known.ukOther;
  if (expected === label) return { verdict: 'agrees', expected, certainty: known.certainty };
  if (others.includes(label)) return { verdict: 'charts differ', expected, certainty: known.certainty };
  // No number on most charts, or a size that makers number in their own way.
  if (expected === null) return { verdict: 'charts differ', expected, certainty: memory };
  return { verdict: 'no chart', expected, certainty: known.certainty };
}
