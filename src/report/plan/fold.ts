/** Folding what is alike: long plain stretches, and blocks of rows that are worked again and again. */
import { type PlanLine, widthOf } from './layout.ts';

/** A line to draw, or a stretch that stands for many. */
export type Drawn =
  | { readonly kind: 'line'; readonly line: PlanLine }
  /** Plain rows in which nothing happens. */
  | { readonly kind: 'even'; readonly line: PlanLine; readonly rows: number; readonly lines: readonly PlanLine[] }
  /** The block just drawn, worked again; `lines` are those that are drawn nowhere else. */
  | {
      readonly kind: 'again';
      readonly first: PlanLine;
      readonly block: number;
      readonly times: number;
      readonly lines: readonly PlanLine[];
    }
  /** More rows than a page can show. */
  | { readonly kind: 'more'; readonly rows: number; readonly lines: readonly PlanLine[] };

const leastEven = 4;
const longestBlock = 24;
const mostDrawn = 160;

/** Nothing but plain squares, all of them worked. */
function isEven(line: PlanLine): boolean {
  return (
    line.kind !== 'torn' &&
    line.unit !== 'step' &&
    line.waitsRight === 0 &&
    line.waitsLeft === 0 &&
    !line.turned &&
    line.runs.every((run) => run.kind === 'plain')
  );
}

/** A line without how often it is worked. */
function signature(line: PlanLine): string {
  const runs = line.runs.map((run) => `${run.kind}${run.n}${run.lean ?? ''}`).join(' ');
  return `${line.label}|${line.kind}|${line.side}|${line.right}|${line.waitsRight}|${line.waitsLeft}|${runs}`;
}

export function foldLines(lines: readonly PlanLine[]): Drawn[] {
  const out: Drawn[] = [];
  const signs = lines.map(signature);
  for (let at = 0; at < lines.length; ) {
    const line = lines[at] as PlanLine;
    const block = blockTold(lines, at);
    if (block > 0) {
      const drawn = at >= block && signs.slice(at - block, at).join('\n') === signs.slice(at, at + block).join('\n');
      const again = lines.slice(at, at + block);
      if (!drawn) for (const each of again) out.push({ kind: 'line', line: each });
      out.push({ kind: 'again', first: line, block, times: drawn ? line.rows : line.rows - 1, lines: drawn ? again : [] });
      at += block;
      continue;
    }
    if (isEven(line)) {
      let end = at + 1;
      while (
        end < lines.length &&
        isEven(lines[end] as PlanLine) &&
        lines[end]?.right === line.right &&
        widthOf(lines[end] as PlanLine) === widthOf(line)
      )
        end += 1;
      const stretch = lines.slice(at, end);
      const rows = stretch.reduce((sum, each) => sum + each.rows, 0);
      if (rows >= leastEven) {
        out.push({ kind: 'even', line, rows, lines: stretch });
        at = end;
        continue;
      }
    }
    const copies = blockAt(lines, signs, at);
    if (copies !== null) {
      for (let row = 0; row < copies.length; row += 1) out.push({ kind: 'line', line: lines[at + row] as PlanLine });
      out.push({
        kind: 'again',
        first: line,
        block: copies.length,
        times: copies.times,
        lines: lines.slice(at + copies.length, at + copies.length * (copies.times + 1)),
      });
      at += copies.length * (copies.times + 1);
      continue;
    }
    if (line.rows > 1 && line.unit !== 'step' && isEven(line)) out.push({ kind: 'even', line, rows: line.rows, lines: [line] });
    else out.push({ kind: 'line', line });
    at += 1;
  }
  if (out.length <= mostDrawn) return out;
  const rest = out.slice(mostDrawn).flatMap((each) => (each.kind === 'line' ? [each.line] : each.lines));
  return [...out.slice(0, mostDrawn), { kind: 'more', rows: rest.reduce((sum, each) => sum + each.rows, 0), lines: rest }];
}

/** Length of the block of rows from `at` on that one instruction has worked equally often, with something in it to see; 0 where there is none. */
function blockTold(lines: readonly PlanLine[], at: number): number {
  const first = lines[at] as PlanLine;
  if (first.rows < 2 || first.unit === 'step' || first.kind === 'told') return 0;
  let end = at;
  while (end < lines.length && lines[end]?.rows === first.rows && lines[end]?.call === first.call) end += 1;
  return lines.slice(at, end).some((line) => !isEven(line)) ? end - at : 0;
}

/** A block of rows from `at` on that follows itself at least once. */
function blockAt(lines: readonly PlanLine[], signs: readonly string[], at: number): { length: number; times: number } | null {
  for (let length = 2; length <= longestBlock && at + length * 2 <= signs.length; length += 1) {
    if (signs[at] !== signs[at + length] || lines.slice(at, at + length * 2).some((line) => line.rows > 1)) continue;
    let times = 0;
    while (sameBlock(signs, at, at + length * (times + 1), length)) times += 1;
    if (times > 0) return { length, times };
  }
  return null;
}

function sameBlock(signs: readonly string[], a: number, b: number, length: number): boolean {
  if (b + length > signs.length) return false;
  for (let row = 0; row < length; row += 1) if (signs[a + row] !== signs[b + row]) return false;
  return true;
}

/** Rows worked in each column, from the right edge of the paper: stretches of columns with the same number. */
export interface ColumnRows {
  readonly from: number;
  readonly columns: number;
  readonly rows: number;
}

/** The wedge that short rows make; null where no row is short. */
export function columnRows(lines: readonly PlanLine[]): ColumnRows[] | null {
  const rows = lines.filter((line) => line.unit !== 'step' && line.kind !== 'torn' && line.kind !== 'stopped');
  if (!rows.some((line) => line.waitsLeft + line.waitsRight > 0)) return null;
  const left = Math.max(...rows.map((line) => line.right + widthOf(line)));
  const right = Math.min(...rows.map((line) => line.right));
  const steps = new Map<number, number>();
  const step = (at: number, by: number) => steps.set(at, (steps.get(at) ?? 0) + by);
  for (const line of rows) {
    step(line.right + line.waitsRight, line.rows);
    step(line.right + widthOf(line) - line.waitsLeft, -line.rows);
  }
  const out: ColumnRows[] = [];
  let count = 0;
  for (let at = right; at < left; at += 1) {
    count += steps.get(at) ?? 0;
    const last = out.at(-1);
    if (last !== undefined && last.rows === count) out[out.length - 1] = { ...last, columns: last.columns + 1 };
    else out.push({ from: at, columns: 1, rows: count });
  }
  return out;
}
