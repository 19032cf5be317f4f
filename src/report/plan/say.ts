/** The plan in words: what a reader who cannot see the squares is told. */
import { plural } from '../plural.ts';
import type { ColumnRows } from './fold.ts';
import { type PlanLine, workedSquares } from './layout.ts';
import type { Run } from './trace.ts';

const names: Readonly<Record<Exclude<Run['kind'], 'plain'>, readonly [string, string]>> = {
  increase: ['increase', 'increases'],
  yarnOver: ['yarn over', 'yarn overs'],
  decrease: ['decrease', 'decreases'],
  doubleDecrease: ['double decrease', 'double decreases'],
  crossing: ['crossing', 'crossings'],
  boundOff: ['stitch bound off', 'stitches bound off'],
  held: ['stitch put on hold', 'stitches put on hold'],
  castOn: ['stitch cast on', 'stitches cast on'],
  taken: ['stitch taken up', 'stitches taken up'],
};

const leans = { left: ' to the left', right: ' to the right', centre: ' to the centre' } as const;

/** "Row 5, RS: 16 stitches worked, 40 after it; 2 decreases to the left; unworked: right 4, left 0". */
export function sayLine(line: PlanLine): string {
  const head = `${line.label}${line.side === null || line.unit === 'round' ? '' : `, ${line.side}`}`;
  if (line.kind === 'torn') return `${head}: not understood, so its stitches are not drawn`;
  if (line.kind === 'stopped') return `${head}: cannot be worked as printed, so its stitches are not drawn`;
  const parts = [line.after === null ? 'count not known' : `${plural(line.after, 'stitch', 'stitches')}`];
  const counts = new Map<string, number>();
  for (const run of line.runs) {
    if (run.kind === 'plain') continue;
    const key = `${run.kind}|${run.lean ?? ''}`;
    counts.set(key, (counts.get(key) ?? 0) + (run.kind === 'crossing' ? 1 : run.n));
  }
  for (const [key, count] of counts) {
    const [kind, lean] = key.split('|') as [Exclude<Run['kind'], 'plain'>, '' | 'left' | 'right' | 'centre'];
    const [one, many] = names[kind];
    parts.push(`${plural(count, one, many)}${lean === '' || kind === 'yarnOver' ? '' : leans[lean]}`);
  }
  if (line.waitsLeft + line.waitsRight > 0)
    parts.push(`${workedSquares(line)} worked; unworked: left ${line.waitsLeft}, right ${line.waitsRight}`);
  if (line.turned && line.waitsLeft + line.waitsRight > 0) parts.push('turn');
  if (line.markers.length > 0) parts.push(plural(line.markers.length, 'marker'));
  if (line.note !== undefined) parts.push(line.note);
  return `${head}: ${parts.join('; ')}`;
}

/** "Rows in each column, from the right edge: 2 in 4 columns, 4 in 2 columns, …" */
export function sayColumns(columns: readonly ColumnRows[]): string {
  return `Rows in each column, from the right edge: ${columns.map((column) => `${column.rows} in ${plural(column.columns, 'column')}`).join(', ')}.`;
}
