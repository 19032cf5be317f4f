/** Words that every message is made of: sizes by their names, lists, numbers and short excerpts. Names nothing that only one rule needs. */
import { printSized, type Sized } from '../../grammar/count.ts';
import type { Span } from '../../src/manuscript/manuscript.ts';

/** "S", "S and M", "S, M and L". */
export function listed(words: readonly string[], joint: 'and' | 'or' = 'and'): string {
  if (words.length < 2) return words[0] ?? '';
  return `${words.slice(0, -1).join(', ')} ${joint} ${words[words.length - 1]}`;
}

/** "1 st", "2 sts". */
export const counted = (count: number, one: string, more = `${one}s`): string => `${count} ${count === 1 ? one : more}`;

/** At most two places behind the point and no noughts at the end: `35.5`, `17`, `0.98`. */
export const figure = (value: number): string => String(Math.round((value + Number.EPSILON) * 100) / 100);

/** A list of values as the draft prints one: `5 (6, –, 8)`; one value where all are alike. */
export function figures(values: Sized): string {
  const shown = values.map((value) => (value === null ? null : Number(figure(value))));
  const first = shown[0] ?? null;
  return printSized(shown.length > 1 && shown.every((value) => value === first) ? [first] : shown);
}

/**
 * The sizes of a finding as an editor says them: "in size M", "in sizes M and L", "in every size"; nothing where the draft has one
 * size. With many sizes a run is folded: "in sizes 3 to 6".
 */
export function inSizes(names: readonly string[], sizes: readonly number[]): string {
  if (names.length < 2 || sizes.length === 0) return '';
  if (sizes.length === names.length) return 'in every size';
  const run = sizes.length > 2 && sizes.every((size, at) => at === 0 || size === (sizes[at - 1] as number) + 1);
  const said = sizes.map((size) => names[size] ?? String(size + 1));
  const words = run ? `${said[0]} to ${said[said.length - 1]}` : listed(said);
  return `in ${sizes.length === 1 ? 'size' : 'sizes'} ${words}`;
}

/** Joins the parts of a sentence that are there, with one space between. */
export const sentence = (...parts: readonly (string | null | false | undefined)[]): string =>
  parts
    .filter((part): part is string => typeof part === 'string' && part !== '')
    .join(' ')
    .replace(/ ([,.;:])/g, '$1');

/** The author's words at a place, on one line, cut at a word when long. */
export function excerpt(source: string, span: Span, longest = 60): string {
  const words = source.slice(span.start, span.end).replace(/\s+/g, ' ').trim();
  if (words.length <= longest) return words;
  const cut = words.slice(0, longest);
  return `${cut.slice(0, Math.max(cut.lastIndexOf(' '), longest - 20))} …`;
}
