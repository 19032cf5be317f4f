/** The formats of each command. A format that is heavy to load is loaded only when it is asked for. */
import type { Level } from '../../rules/rule.ts';
import { jsonReport } from '../report/json.ts';
import { junitReport } from '../report/junit.ts';
import { plainPaint, terminalPaint } from '../report/paint.ts';
import type { Assembly, Report } from '../report/report.ts';
import { sarifReport } from '../report/sarif.ts';
import { tallyCsvReport, tallyFormulasReport } from '../report/tally-csv.ts';
import { tallyJsonReport } from '../report/tally-json.ts';
import { tallyTextReport } from '../report/tally-text.ts';
import { type TextOptions, textReport } from '../report/text.ts';

/** What is asked for, in words and numbers only: a thread that makes parts of the report is told so. */
export interface Order {
  readonly command: 'proof' | 'tally';
  readonly format: string;
  /** Columns of the page, and whether it is in colour. */
  readonly width: number;
  readonly colour: boolean;
  readonly gate: Level;
  /** Absolute path of the folder the run was started in. */
  readonly base: string;
  readonly toFile: boolean;
  /** The one size of a test knitter's sheet, as it was given. */
  readonly size: string | null;
  /** The sheet for a spreadsheet works its counts out. */
  readonly formulas?: boolean;
}

/** Of what a part is, only its own report knows. */
type AnyReport = Report<unknown>;
type Format = (order: Order) => AnyReport | Promise<AnyReport>;

const anyReport = <Part>(report: Report<Part>): AnyReport => report as AnyReport;

export const textOptionsOf = ({ width, colour }: Pick<Order, 'width' | 'colour'>): TextOptions => ({
  width,
  paint: colour ? terminalPaint : plainPaint,
});

export const proofFormats = {
  text: (order) => anyReport(textReport(textOptionsOf(order))),
  json: () => anyReport(jsonReport),
  sarif: ({ base }) => anyReport(sarifReport({ base })),
  junit: ({ gate }) => anyReport(junitReport({ gate })),
  html: async () => anyReport((await import('../report/html/proof-page.ts')).proofPage),
} as const satisfies Record<string, Format>;

export const tallyFormats = {
  text: (order) => anyReport(tallyTextReport(textOptionsOf(order))),
  json: () => anyReport(tallyJsonReport),
  csv: ({ toFile, formulas }) => {
    const sheet = formulas === true ? tallyFormulasReport : tallyCsvReport;
    return anyReport(toFile ? withByteOrderMark(sheet) : sheet);
  },
  html: async ({ size }) =>
    size === null
      ? anyReport((await import('../report/html/tally-page.ts')).tallyPage)
      : anyReport((await import('../report/html/test-sheet.ts')).testSheet(size)),
} as const satisfies Record<string, Format>;

export const namesOf = <Table extends object>(table: Table) => Object.keys(table) as (keyof Table & string)[];

export function reportOf(order: Order): AnyReport | Promise<AnyReport> {
  const formats: Readonly<Record<string, Format>> = order.command === 'proof' ? proofFormats : tallyFormats;
  const format = formats[order.format];
  if (format === undefined) throw new Error(`no format ${order.format}`);
  return format(order);
}

/** Spreadsheets take a file without a byte order mark for an old encoding; a pipe is better off without. */
function withByteOrderMark<Part>(report: Report<Part>): Report<Part> {
  return {
    ...report,
    assemble(run) {
      const made: Assembly<Part> = report.assemble(run);
      let mark = '\ufeff';
      return {
        add(part, digest) {
          const written = mark + made.add(part, digest);
          mark = '';
          return written;
        },
        end: (unreadable) => made.end(unreadable),
      };
    },
  };
}
