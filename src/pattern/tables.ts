/**
 * Tables that carry instructions: "work each wedge like Wedge 2, using the numbers in the table". Each row of the table
 * is the section it refers to, worked once more with the numbers of its columns.
 */
import { readLabel, readPassage } from '../../grammar/read.ts';
import type { Row, Span, Stated, Statement, Step } from '../../grammar/tree.ts';
import type { Vocabulary } from '../../grammar/vocabulary.ts';
import type { Passage, TableRow } from '../manuscript/manuscript.ts';

interface Words {
  readonly vocabulary: Vocabulary;
  readonly sizes: readonly string[];
}

interface Named {
  readonly title: string;
  readonly statements: readonly Statement[];
}

/** The section that the statements before the table refer to. */
function templateOf(current: Named, sections: readonly Named[]): Named | null {
  for (const statement of current.statements) {
    if (statement.type !== 'refer' || statement.name === null) continue;
    const rows = statement.rows.length > 0 ? ` ${statement.rows.join(' ')}` : '';
    const name = `${statement.name}${rows}`.toLowerCase();
    const found = sections.find((section) => section.title.toLowerCase() === name || section.title.toLowerCase() === statement.name);
    if (found && found !== current) return found;
  }
  return null;
}

const plainText = (passage: Passage): string => passage.text.replace(/\s+/g, ' ').trim();

/** A copy of a step without the numbers that hold for the section it comes from. */
function bare(step: Step, span: Span): Step[] {
  if (step.type === 'castOn' || step.type === 'stated') return [];
  if (step.type === 'repeat') {
    const extent = step.extent?.kind === 'over' && step.extent.count.all ? { kind: 'end' as const } : step.extent;
    return [{ ...step, extent, span }];
  }
  return [{ ...step, span }];
}

/** Statements for every row of the table; none when the table is not a set of instructions. */
export function statementsFromTable(rows: readonly TableRow[], current: Named, sections: readonly Named[], words: Words): Statement[] {
  const template = templateOf(current, sections);
  const header = rows.find((row) => row.header);
  if (template === null || header === undefined) return [];
  const out: Statement[] = [];
  const heads = header.cells.map(plainText);
  for (const row of rows) {
    if (row.header) continue;
    out.push(...oneRow(row, heads, template, words));
  }
  return out;
}

function oneRow(row: TableRow, heads: readonly string[], template: Named, words: Words): Statement[] {
  const span = { start: row.start, end: row.end };
  const texts = new Map<number, { steps: Row; span: Span }>();
  let repeat: Statement | null = null;
  let castOn: Step | null | undefined;
  let before: Stated | null = null;
  let after: Stated | null = null;
  row.cells.forEach((cell, column) => {
    const head = heads[column] ?? '';
    const text = plainText(cell);
    const cellSpan = { start: cell.start, end: cell.end };
    const number = /^\d+$/.test(text) ? Number(text) : null;
    const label = readLabel(head, 0, words);
    const stated = (): Stated | null =>
      number === null
        ? null
        : { type: 'stated', count: { type: 'count', values: [number], span: cellSpan }, what: 'total', scope: null, span: cellSpan };
    if (label !== null && label.numbers.length === 1) {
      const read = readPassage(cell.text, cell.start, { ...words, label: { ...label, span: cellSpan, numberSpan: null, sideSpan: null } });
      const first = read[0];
      if (first?.type === 'row') texts.set(label.numbers[0] as number, { steps: first, span: cellSpan });
    } else if (/^(rep|repeat|work)\b/i.test(head)) {
      const read = readPassage(`${head} ${text}.`, 0, words)[0];
      if (read?.type === 'repeatRows')
        repeat = {
          ...read,
          span: cellSpan,
          times: read.times === null ? null : { ...read.times, count: { ...read.times.count, span: cellSpan } },
        };
    } else if (/\b(co|cast on)\b/i.test(head)) {
      castOn =
        number === null
          ? null
          : {
              type: 'castOn',
              count: { type: 'count', values: [number], span: cellSpan },
              where: 'end',
              method: null,
              provisional: false,
              perNeedle: null,
              span: cellSpan,
            };
    } else if (/\b(sts|stitches)\b/i.test(head) && /start|before|beg/i.test(head)) before = stated();
    else if (/\b(sts|stitches)\b/i.test(head) && /after|end|total/i.test(head)) after = stated();
  });
  const out: Statement[] = [];
  if (before !== null) out.push(before);
  for (const statement of template.statements) {
    if (statement.type !== 'row') {
      if (statement.type === 'repeatRows' && repeat !== null) out.push(repeat);
      else if (statement.type !== 'castOn') out.push(withoutStated(statement, span));
      continue;
    }
    const number = statement.label?.numbers.length === 1 ? statement.label.numbers[0] : undefined;
    const own = number === undefined ? undefined : texts.get(number);
    if (own) out.push({ ...own.steps, label: statement.label });
    else if (statement.does?.type === 'repeatRows' && repeat !== null) out.push(repeat);
    else {
      const had = statement.children.some((step) => step.type === 'castOn');
      const children = statement.children.flatMap((step) => bare(step, span));
      if (had && castOn) children.push(castOn);
      out.push({ ...statement, children, stated: [], span });
    }
  }
  if (after !== null) out.push(after);
  return out;
}

function withoutStated(statement: Statement, span: Span): Statement {
  return 'stated' in statement && Array.isArray(statement.stated)
    ? ({ ...statement, stated: [], span } as Statement)
    : ({ ...statement, span } as Statement);
}
