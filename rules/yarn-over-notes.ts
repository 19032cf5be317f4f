/** What rules on yarn overs share: the row that comes next, and whether the draft says anywhere how double loops are worked. */
import type { Row } from '../grammar/tree.ts';
import type { Context } from './rule.ts';
import { rowsOf } from './tree-walk.ts';

/** The row worked after a numbered row of the same section: the one with the next number, or the one that fills in. */
export function rowAfter(context: Context, row: Row): Row | null {
  const own = rowsOf(context.pattern);
  const at = own.findIndex((each) => each.row === row);
  const here = own[at];
  if (here === undefined) return null;
  const same = own.filter((each) => each.section === here.section);
  const number = row.label?.numbers.at(-1);
  if (number !== undefined && row.label?.name === null) {
    const next = same.find((each) => each.row.label?.name === null && each.row.label.numbers.includes(number + 1));
    if (next !== undefined) return next.row;
    const filler = same.find((each) => each.row.label !== null && each.row.label.andAll !== null);
    if (filler !== undefined) return filler.row;
  }
  const next = own[at + 1];
  return next !== undefined && next.section === here.section ? next.row : null;
}

/** The row is one run over everything: "purl", "knit to end". */
export function plainRow(row: Row): boolean {
  const steps = row.children.filter((step) => step.type !== 'remark' && step.type !== 'stated');
  return steps.length > 0 && steps.every((step) => step.type === 'repeat' && step.form === 'run') && steps.length === 1;
}

/** Words anywhere in the draft that say what becomes of two loops. */
export function saysHow(context: Context): boolean {
  return /\b(double (yo|yarn[- ]?over)|yo2|both loops|each (loop|yo|wrap)|pair of loops|two loops|2 loops|second (loop|wrap)|extra (loops?|wraps?)|dropp?(ing|ed)?\b[^.]{0,40}\b(loops?|wraps?|yos?))/i.test(
    context.manuscript.source,
  );
}
