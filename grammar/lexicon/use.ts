import type { Entry, StitchUse } from './entry.ts';

/**
 * What the stitch takes and makes with its numbers filled in. N and M are 1 where none is given, as a bare `k` is
 * one stitch. Throws a RangeError when a formula of the lexicon cannot be read, which only a wrong entry can cause.
 */
export function stitchUse(entry: Entry, n = 1, m = 1): StitchUse {
  return { entry, takes: fill(entry.takes, n, m), makes: fill(entry.makes, n, m) };
}

/** Whether the numbers are ones the name is certain for: `C6F` is, `C5F` is not. */
export function numbersFit(entry: Entry, n = 1, m = 1): boolean {
  const fits = (bounds: { least: number; parity?: 'even' | 'odd' } | undefined, value: number) =>
    Number.isInteger(value) &&
    value >= (bounds?.least ?? 1) &&
    (bounds?.parity === undefined || (value % 2 === 0) === (bounds.parity === 'even'));
  return fits(entry.numbers?.N, n) && fits(entry.numbers?.M, m);
}

/** The value of a formula such as `2*N+M`, `-N` or `N+M-1`. */
export function fill(formula: number | string, n: number, m: number): number {
  if (typeof formula === 'number') return formula;
  const terms = formula.replaceAll(' ', '').match(/[+-]?[^+-]+/g) ?? [];
  if (terms.length === 0 || terms.join('') !== formula.replaceAll(' ', '')) throw unreadable(formula);
  return terms.reduce((sum, term) => {
    const sign = term.startsWith('-') ? -1 : 1;
    const factors = term.replace(/^[+-]/, '').split('*');
    return sum + sign * factors.reduce((product, factor) => product * value(factor, n, m, formula), 1);
  }, 0);
}

function value(factor: string, n: number, m: number, formula: string): number {
  if (factor === 'N') return n;
  if (factor === 'M') return m;
  if (/^\d+$/.test(factor)) return Number(factor);
  throw unreadable(formula);
}

const unreadable = (formula: string) => new RangeError(`The lexicon holds a formula that cannot be read: ${formula}`);
