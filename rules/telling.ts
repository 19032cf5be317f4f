/** How a count rule says what the replay met: sizes at the head of a sentence, numbers per size, plural forms, the author's own words. */
import type { Span } from '../src/manuscript/manuscript.ts';
import type { Context } from './rule.ts';

/** "1 st", "2 sts"; other things in the plural with an s. */
export function counted(n: number | string, thing = 'st'): string {
  return `${n} ${String(n) === '1' ? thing : `${thing}s`}`;
}

/** "8 sts a repeat and 3 over", "8 sts a repeat", "8 sts a repeat, less 1". */
export function aRepeat(of: number, over: number): string {
  const rest = over === 0 ? '' : over > 0 ? ` and ${over} over` : `, less ${-over}`;
  return `${counted(of)} a repeat${rest}`;
}

/** "a", "a and b", "a, b and c". */
export function listed(words: readonly string[]): string {
  if (words.length <= 1) return words[0] ?? '';
  return `${words.slice(0, -1).join(', ')} and ${words.at(-1)}`;
}

/** "size M", "sizes M and L", "every size"; empty where the draft has one size. */
export function sizeNames(context: Context, sizes: readonly number[]): string {
  const { sizes: names } = context.pattern;
  if (names.length <= 1 || sizes.length === 0) return '';
  if (sizes.length === names.length) return 'every size';
  return `${sizes.length === 1 ? 'size' : 'sizes'} ${listed(sizes.map((size) => names[size] ?? String(size + 1)))}`;
}

/** "In size M, " for the head of a sentence; empty where the draft has one size. */
export function inSizes(context: Context, sizes: readonly number[]): string {
  const names = sizeNames(context, sizes);
  return names === '' ? '' : `In ${names}, `;
}

/** One number where all sizes have the same; else one per size, printed as the draft prints them. */
export function perSize(context: Context, sizes: readonly number[], values: readonly (number | null)[]): string {
  const words = values.map((value) => (value === null ? '–' : String(value)));
  const [first] = words;
  if (first === undefined) return '–';
  if (words.every((word) => word === first)) return first;
  if (sizes.length === context.pattern.sizes.length) return `${first} (${words.slice(1).join(', ')})`;
  return listed(words);
}

/** One number, or one per size, for the data of a finding. */
export function numbersOf(values: readonly (number | null)[] | undefined): number | readonly number[] | null {
  const known = (values ?? []).filter((value) => value !== null);
  if (known.length === 0) return null;
  return known.length === 1 ? (known[0] as number) : known;
}

/** The author's words at a place, short enough for a sentence. */
export function excerpt(context: Context, span: Span, longest = 48): string {
  const text = context.manuscript.source.slice(span.start, span.end).replace(/\s+/g, ' ').trim();
  if (text.length <= longest) return `“${text}”`;
  return `“${text
    .slice(0, longest)
    .replace(/\s\S*$/, '')
    .replace(/[,;:]$/, '')} …”`;
}

/** Heading a place stands under, as printed. */
export function sectionTitle(context: Context, section: number): string | null {
  const title = context.pattern.sections[section]?.title ?? '';
  return title === '' ? null : title;
}

/** "line 12". */
export function lineOf(context: Context, span: Span): number {
  return context.manuscript.place(span.start).line;
}

/** "once", "twice", "3 times". */
export function times(n: number): string {
  return n === 1 ? 'once' : n === 2 ? 'twice' : `${n} times`;
}
