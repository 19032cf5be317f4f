/** Where a finding stands: lines and columns for programs, section, row and size for people. */
import type { Finding } from '../../rules/rule.ts';
import type { Proof } from '../index.ts';
import type { Manuscript, Span } from '../manuscript/manuscript.ts';

/** Lines and columns from 1; columns count UTF-16 units and the end is exclusive. */
export interface Range {
  readonly line: number;
  readonly column: number;
  readonly endLine: number;
  readonly endColumn: number;
}

/** The range of a span. A line end at the very end of the span is left out, so that the range stays on its last line. */
export function rangeOf(manuscript: Manuscript, span: Span): Range {
  const { source } = manuscript;
  let end = span.end;
  while (end > span.start && (source[end - 1] === '\n' || source[end - 1] === '\r')) end -= 1;
  const from = manuscript.place(span.start);
  const to = manuscript.place(end);
  return { line: from.line, column: from.column, endLine: to.line, endColumn: to.column };
}

const compareWords = (a: string, b: string) => (a < b ? -1 : a > b ? 1 : 0);

/** Findings in the order of the draft, so that an editor works from front to back. */
export function inPlaceOrder(findings: readonly Finding[]): readonly Finding[] {
  return [...findings].sort(
    (a, b) => a.span.start - b.span.start || a.span.end - b.span.end || compareWords(a.rule, b.rule) || compareWords(a.message, b.message),
  );
}

/** Names of the sizes a finding holds for, in the order of the draft. */
export function sizeNames(proof: Proof, sizes: readonly number[]): readonly string[] {
  return sizes.map((size) => proof.pattern.sizes[size]).filter((name) => name !== undefined);
}

/** A draft without sizes has one size that is never printed. */
export function hasSizes(proof: Proof): boolean {
  return proof.pattern.sizes.length > 1 || proof.pattern.sizes[0] !== 'one';
}

/** "size M", "sizes M and L", "every size"; empty where sizes play no part. */
export function sizePhrase(proof: Proof, sizes: readonly number[]): string {
  if (sizes.length === 0 || !hasSizes(proof)) return '';
  if (sizes.length > 1 && sizes.length === proof.pattern.sizes.length) return 'every size';
  const names = sizeNames(proof, sizes);
  return `${names.length === 1 ? 'size' : 'sizes'} ${listWords(names)}`;
}

/** "S", "S and M", "S, M and L". */
export function listWords(words: readonly string[]): string {
  if (words.length < 2) return words[0] ?? '';
  return `${words.slice(0, -1).join(', ')} and ${words[words.length - 1]}`;
}

/** Title of the section a place stands under; empty before the first. */
export function sectionAt(proof: Proof, offset: number): string {
  let title = '';
  for (const section of proof.pattern.sections) {
    if (section.span.start <= offset) title = section.title;
  }
  return title;
}

/** Other lines that belong to the finding: not its own, and none that its sentences name already. */
export function alsoOn(proof: Proof, finding: Finding): readonly number[] {
  const lineOf = (span: Span) => rangeOf(proof.manuscript, span).line;
  const named = [finding.message, ...(finding.evidence ?? [])]
    .flatMap((sentence) => [...sentence.matchAll(/\blines? (\d+(?:(?:,| and|, and) \d+)*)/g)])
    .flatMap((match) => (match[1] ?? '').split(/\D+/).map(Number));
  const told = new Set([lineOf(finding.span), ...named]);
  return [...new Set((finding.also ?? []).map(lineOf))].filter((line) => !told.has(line)).sort((a, b) => a - b);
}

/** The path as a person reads it; `-` is standard input. */
export function printedPath(path: string): string {
  return path === '-' || path === '' ? 'standard input' : path;
}

/** Section, row and sizes as printed in the pattern: "Crown · Rnd 5 · size L". */
export function placeWords(proof: Proof, finding: Finding): string {
  const parts = [finding.section ?? '', finding.row ?? '', sizePhrase(proof, finding.sizes)];
  return parts.filter((part) => part !== '').join(' · ');
}

/** Which size is meant by a name as a person writes it: "m" is M where there is no size m; −1 where there is none. */
export function sizeIndex(sizes: readonly string[], given: string): number {
  const exact = sizes.indexOf(given);
  return exact >= 0 ? exact : sizes.findIndex((name) => name.toLowerCase() === given.trim().toLowerCase());
}

const mostNames = 8;

/** "Harbour Socks and Gull Cap have no size M, so there is no sheet of them." */
export function withoutSizeSentence(names: readonly string[], size: string): string {
  const shown = names.length > mostNames ? [...names.slice(0, mostNames - 1), `${names.length - mostNames + 1} more`] : names;
  return `${listWords(shown)} ${names.length === 1 ? 'has' : 'have'} no size ${size}, so there is no sheet of ${names.length === 1 ? 'it' : 'them'}.`;
}
