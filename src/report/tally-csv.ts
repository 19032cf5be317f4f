/** The count sheet for a spreadsheet: RFC 4180, one line per row worked, two columns per size. */
import type { Proof } from '../index.ts';
import type { Entry } from '../replay/replay.ts';
import type { ReportInput } from './input.ts';
import { rangeOf } from './place.ts';
import { multipleWords, sectionTitle } from './tally-json.ts';

const fixed = ['draft', 'section', 'row', 'line', 'text line', 'side', 'times'];

/** Several drafts share one sheet: a size that a draft does not have stays empty there. */
export function tallyCsv(input: ReportInput): string {
  const sizes = [...new Set(input.proofs.flatMap((proof) => proof.pattern.sizes))];
  const head = [...fixed, ...sizes.flatMap((size) => [`${size} before`, `${size} after`]), 'after per repeat'];
  const rows = input.proofs.flatMap((proof) => proof.replay.entries.map((entry) => rowCells(proof, entry, sizes)));
  return [head, ...rows].map((cells) => `${cells.map(csvCell).join(',')}\r\n`).join('');
}

function rowCells(proof: Proof, entry: Entry, sizes: readonly string[]): readonly (string | number)[] {
  const counts = sizes.flatMap((name) => {
    const size = proof.pattern.sizes.indexOf(name);
    return [entry.before[size] ?? '', entry.after[size] ?? ''];
  });
  return [
    proof.path,
    sectionTitle(proof, entry),
    entry.label,
    rangeOf(proof.manuscript, entry.span).line,
    rangeOf(proof.manuscript, entry.textSpan).line,
    entry.side ?? '',
    entry.times,
    ...(entry.afterPerRepeat === null ? counts : counts.map(() => '')),
    entry.afterPerRepeat === null ? '' : multipleWords(entry.afterPerRepeat),
  ];
}

/** Signs with which a spreadsheet would begin to calculate, the full-width ones included. */
const formulaSigns = '=+-@\t\r\n＝＋－＠';

/**
 * One cell. A text that a spreadsheet would take for a formula gets an apostrophe before it, which shows it as text;
 * quotes, commas and line ends are quoted as RFC 4180 asks.
 */
export function csvCell(value: string | number): string {
  if (typeof value === 'number') return String(value);
  const safe = value !== '' && formulaSigns.includes(value.charAt(0)) ? `'${value}` : value;
  return /[",\r\n]/.test(safe) ? `"${safe.replaceAll('"', '""')}"` : safe;
}
