/** The formats of each command. A format that is heavy to load is loaded only when it is asked for. */
import type { Level } from '../../rules/rule.ts';
import type { ReportInput } from '../report/input.ts';
import { proofJson } from '../report/json.ts';
import { proofJunit } from '../report/junit.ts';
import { proofSarif } from '../report/sarif.ts';
import { tallyCsv } from '../report/tally-csv.ts';
import { tallyJson } from '../report/tally-json.ts';
import { tallyText } from '../report/tally-text.ts';
import { proofText, type TextOptions } from '../report/text.ts';

export interface FormatOptions {
  readonly text: TextOptions;
  readonly gate: Level;
  /** Absolute path of the folder the run was started in. */
  readonly base: string;
  readonly toFile: boolean;
  /** The one size of a test knitter's sheet. */
  readonly size?: string;
}

type Format = (input: ReportInput, options: FormatOptions) => string | Promise<string>;

/** Spreadsheets take a file without a byte order mark for an old encoding; a pipe is better off without. */
const byteOrderMark = '\ufeff';

export const proofFormats = {
  text: (input, options) => proofText(input, options.text),
  json: (input) => proofJson(input),
  sarif: (input, options) => proofSarif(input, { base: options.base }),
  junit: (input, options) => proofJunit(input, { gate: options.gate }),
  html: async (input) => (await import('../report/html/proof-page.ts')).proofHtml(input),
} as const satisfies Record<string, Format>;

export const tallyFormats = {
  text: (input, options) => tallyText(input, options.text),
  json: (input) => tallyJson(input),
  csv: (input, options) => `${options.toFile ? byteOrderMark : ''}${tallyCsv(input)}`,
  html: async (input, { size }) =>
    size === undefined
      ? (await import('../report/html/tally-page.ts')).tallyHtml(input)
      : (await import('../report/html/test-sheet.ts')).testSheetHtml(input, size),
} as const satisfies Record<string, Format>;

export const namesOf = <Table extends object>(table: Table) => Object.keys(table) as (keyof Table & string)[];
