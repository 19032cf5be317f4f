/**
 * The count sheet for a spreadsheet (RFC 4180). Of one draft every row is a line, with five columns to a size; several
 * drafts have sizes of different names, so there every size of a row is a line of its own and the sheet stays narrow.
 */
import type { Proof } from '../index.ts';
import type { Entry } from '../replay/replay.ts';
import { statedTotals } from './checkpoints.ts';
import type { ReportInput } from './input.ts';
import { rangeOf } from './place.ts';
import { type Report, whole } from './report.ts';
import { rowsWorked } from './rows-worked.ts';
import { multipleWords, sectionTitle } from './tally-json.ts';

type Cell = string | number;

const place = ['draft', 'section', 'row', 'line', 'text line', 'side', 'times'];
const counted = ['before', 'used', 'made', 'after', 'stated'];
const aside = ['stated differs', 'after per repeat'];

export const tallyCsvReport: Report<string> = {
  part: (proof, _, { drafts }) => (drafts === 1 ? wideSheet(proof) : narrowLines(proof)),
  assemble: ({ drafts }) => {
    let head = drafts === 1 ? '' : csvLine([...place, 'size', 'rows worked', ...counted, ...aside]);
    return {
      add: (part) => {
        const written = head + part;
        head = '';
        return written;
      },
      end: () => [],
    };
  },
};

export const tallyCsv = (input: ReportInput): string => whole(tallyCsvReport, input);

/** One draft: its sizes are known, so the head belongs to it. */
function wideSheet(proof: Proof): string {
  const { sizes } = proof.pattern;
  const head = [...place, ...sizes.flatMap((size) => counted.map((word) => `${size} ${word}`)), ...aside];
  const totals = statedTotals(proof);
  const rows = proof.replay.entries.map((entry, index) => {
    const stated = sizes.map((_, size) => totals(index, size));
    const differs = sizes.filter((_, size) => statedDiffers(entry, size, stated[size] ?? null)).join(' ');
    const counts = sizes.flatMap((_, size) => countCells(entry, size, stated[size] ?? null));
    return [...placeCells(proof, entry), ...counts, differs, repeatCell(entry)];
  });
  return [head, ...rows].map(csvLine).join('');
}

function narrowLines(proof: Proof): string {
  const { sizes } = proof.pattern;
  const totals = statedTotals(proof);
  const worked = sizes.map((_, size) => rowsWorked(proof, size));
  return proof.replay.entries
    .flatMap((entry, index) =>
      // A row that is given by its multiple is the same in every size.
      (entry.afterPerRepeat === null ? sizes : [sizes[0] ?? '']).map((name, size) => [
        ...placeCells(proof, entry),
        entry.afterPerRepeat === null ? name : '',
        entry.afterPerRepeat === null ? (worked[size]?.[index] ?? '') : '',
        ...countCells(entry, size, totals(index, size)),
        statedDiffers(entry, size, totals(index, size)) ? 'differs' : '',
        repeatCell(entry),
      ]),
    )
    .map(csvLine)
    .join('');
}

function placeCells(proof: Proof, entry: Entry): Cell[] {
  const line = (span: Entry['span']) => rangeOf(proof.manuscript, span).line;
  return [proof.path, sectionTitle(proof, entry), entry.label, line(entry.span), line(entry.textSpan), entry.side ?? '', entry.times];
}

function countCells(entry: Entry, size: number, stated: number | null): Cell[] {
  if (entry.afterPerRepeat !== null) return counted.map(() => '');
  const { before, takes, makes, after } = entry;
  return [before[size] ?? '', takes[size] ?? '', makes[size] ?? '', after[size] ?? '', stated ?? ''];
}

function statedDiffers(entry: Entry, size: number, stated: number | null): boolean {
  const after = entry.after[size] ?? null;
  return stated !== null && after !== null && stated !== after;
}

const repeatCell = ({ afterPerRepeat }: Entry): string => (afterPerRepeat === null ? '' : multipleWords(afterPerRepeat));

const csvLine = (cells: readonly Cell[]): string => `${cells.map(csvCell).join(',')}\r\n`;

/** Signs with which a spreadsheet would begin to calculate, the full-width ones included. */
const formulaSigns = '=+-@\t\r\n＝＋－＠';

/**
 * One cell. A text that a spreadsheet would take for a formula gets an apostrophe before it, which shows it as text;
 * quotes, commas and line ends are quoted as RFC 4180 asks.
 */
export function csvCell(value: Cell): string {
  if (typeof value === 'number') return String(value);
  const safe = value !== '' && formulaSigns.includes(value.charAt(0)) ? `'${value}` : value;
  return /[",\r\n]/.test(safe) ? `"${safe.replaceAll('"', '""')}"` : safe;
}
