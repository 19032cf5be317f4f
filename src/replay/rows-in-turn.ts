/** Labels that share out their numbers: "Rows 1 and 3: … Rows 2 and 4: …" is worked 1, 2, 3, 4. */
import type { Row, Statement } from '../../grammar/tree.ts';

export interface NumberedRow {
  readonly row: Row;
  readonly number: number;
}

/** Most rows that are put in turn. */
const mostRows = 400;

function fills(row: Row, number: number): boolean {
  const all = row.label?.andAll ?? null;
  const first = row.label?.numbers[0];
  if (all === null || first === undefined || number < first) return false;
  return all === 'even' ? number % 2 === 0 : all === 'odd' ? number % 2 === 1 : (number - first) % 2 === 0;
}

/**
 * The rows of the statements from `from` on in the order of their numbers, where the first label leaves out numbers that the next
 * ones have; `next` is the index of the first statement behind them. Null where the rows stand in order or a number is nowhere.
 */
export function rowsInTurn(statements: readonly Statement[], from: number): { readonly rows: NumberedRow[]; readonly next: number } | null {
  const first = statements[from];
  if (first?.type !== 'row' || first.label === null || first.label.andAll !== null) return null;
  const { name, numbers } = first.label;
  if (numbers.length < 2 || numbers.length > mostRows) return null;
  if (numbers.every((number, at) => at === 0 || number === (numbers[at - 1] as number) + 1)) return null;
  const found = new Map<number, Row>(numbers.map((number) => [number, first]));
  if (found.size < numbers.length) return null;
  const fillers: Row[] = [];
  let most = Math.max(...numbers);
  let next = from + 1;
  for (; next < statements.length && next < from + mostRows; next += 1) {
    const statement = statements[next] as Statement;
    if (statement.type === 'remark') continue;
    if (statement.type !== 'row' || statement.label === null || statement.label.name !== name) break;
    const own = statement.label.numbers;
    if (own.length === 0 || (own[0] as number) > most || own.some((number) => found.has(number))) break;
    for (const number of own) found.set(number, statement);
    if (statement.label.andAll !== null) fillers.push(statement);
    most = Math.max(most, ...own);
  }
  const rows: NumberedRow[] = [];
  for (let number = numbers[0] as number; number <= most; number += 1) {
    const row = found.get(number) ?? fillers.find((each) => fills(each, number));
    if (row === undefined) return null;
    rows.push({ row, number });
  }
  return rows.length === found.size || fillers.length > 0 ? { rows, next } : null;
}
