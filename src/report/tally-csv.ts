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
import { type RowFacts, rowFacts } from './row-facts.ts';
import { rowsWorked } from './rows-worked.ts';
import { multipleWords, sectionTitle } from './tally-json.ts';

/** A cell that a spreadsheet works out. */
interface Formula {
  readonly formula: string;
}
type Cell = string | number | Formula;

const place = ['draft', 'section', 'row', 'line', 'text line', 'side', 'times'];
const counted = ['before', 'used', 'made', 'after', 'stated'];
const aside = ['stated differs', 'after per repeat'];
const beside = ['rows since cast-on', 'rows in section', 'height in cm', 'markers after', 'held'];

export const tallyCsvReport: Report<string> = {
  part: (proof, _, { drafts }) => (drafts === 1 ? wideSheet(proof, false) : narrowLines(proof)),
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

/** The same with formulas, for whoever wants to change one number and see the rest move; of several drafts it has none. */
export const tallyFormulasReport: Report<string> = {
  ...tallyCsvReport,
  part: (proof, index, run) => (run.drafts === 1 ? wideSheet(proof, true) : tallyCsvReport.part(proof, index, run)),
};

export const tallyFormulas = (input: ReportInput): string => whole(tallyFormulasReport, input);

export const tallyCsv = (input: ReportInput): string => whole(tallyCsvReport, input);

/** One draft: its sizes are known, so the head belongs to it. */
function wideSheet(proof: Proof, formulas: boolean): string {
  const { sizes } = proof.pattern;
  const head = [
    ...place,
    ...sizes.flatMap((size) => counted.map((word) => `${size} ${word}`)),
    ...aside,
    ...sizes.flatMap((size) => beside.map((word) => `${size} ${word}`)),
  ];
  const totals = statedTotals(proof);
  const facts = rowFacts(proof);
  const rows = proof.replay.entries.map((entry, index) => {
    const stated = sizes.map((_, size) => totals(index, size));
    const differs = sizes.filter((_, size) => statedDiffers(entry, size, stated[size] ?? null)).join(' ');
    const counts = sizes.flatMap((_, size) => {
      const cells = countCells(entry, size, stated[size] ?? null);
      return formulas ? withFormulas(proof, index, size, cells) : cells;
    });
    const more = sizes.flatMap((_, size) => besideCells(entry, size, facts(index, size)));
    return [...placeCells(proof, entry), ...counts, formulas ? differsFormula(sizes, index) : differs, repeatCell(entry), ...more];
  });
  return [head, ...rows].map(csvLine).join('');
}

function besideCells(entry: Entry, size: number, facts: RowFacts): Cell[] {
  if (entry.afterPerRepeat !== null || (entry.before[size] == null && entry.after[size] == null)) return beside.map(() => '');
  return [facts.rows, facts.rowsInSection, facts.height ?? '', facts.markers.join('; '), facts.held.join('; ')];
}

/** Name of a column, from 0: A, B … Z, AA. */
export function columnName(at: number): string {
  const last = String.fromCharCode(65 + (at % 26));
  return at < 26 ? last : columnName(Math.floor(at / 26) - 1) + last;
}

/** The head is the first line of the sheet. */
const lineOfSheet = (index: number) => index + 2;
const cellName = (index: number, size: number, word: string) =>
  `${columnName(place.length + size * counted.length + counted.indexOf(word))}${lineOfSheet(index)}`;

/** The count before is the one left by the line above, and the count after is worked out, wherever that gives the numbers there are. */
function withFormulas(proof: Proof, index: number, size: number, cells: readonly Cell[]): Cell[] {
  const { entries } = proof.replay;
  const entry = entries[index] as Entry;
  const [before, takes, makes, after] = [entry.before, entry.takes, entry.makes, entry.after].map((list) => list[size] ?? null);
  const from = entries.slice(0, index).findLastIndex((each) => each.after[size] != null);
  const above = entries[from];
  const out = [...cells];
  if (above !== undefined && before !== null && above.after[size] === before && entry.before[size] !== 0)
    out[0] = { formula: cellName(from, size, 'after') };
  const worked = `${cellName(index, size, 'before')}-${cellName(index, size, 'used')}+${cellName(index, size, 'made')}`;
  const times = `${columnName(place.indexOf('times'))}${lineOfSheet(index)}`;
  if (before == null || takes == null || makes == null || after == null) return out;
  if (before - takes + makes === after) out[3] = { formula: worked };
  else if (before + entry.times * (makes - takes) === after)
    out[3] = {
      formula: `${cellName(index, size, 'before')}+${times}*(${cellName(index, size, 'made')}-${cellName(index, size, 'used')})`,
    };
  return out;
}

/** "differs" as soon as one stated count is not the count after. */
function differsFormula(sizes: readonly string[], index: number): Cell {
  const parts = sizes.map((_, size) => {
    const stated = cellName(index, size, 'stated');
    return `AND(${stated}<>"",${stated}<>${cellName(index, size, 'after')})`;
  });
  return { formula: `IF(OR(${parts.join(',')}),"differs","")` };
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
  if (typeof value === 'object') return `"=${value.formula.replaceAll('"', '""')}"`;
  if (typeof value === 'number') return String(value);
  const safe = value !== '' && formulaSigns.includes(value.charAt(0)) ? `'${value}` : value;
  return /[",\r\n]/.test(safe) ? `"${safe.replaceAll('"', '""')}"` : safe;
}
