/**
 * The rows of one size laid on squared paper as the right side shows them. Places are counted in squares to the left
 * of an edge that stays where it is while the piece grows.
 *
 *     shaping in the right half of a row moves its right edge, shaping in the left half its left edge
 */
import type { Shape, Side } from '../../../grammar/tree.ts';
import type { Proof } from '../../index.ts';
import type { Moment } from '../../replay/play.ts';
import type { Entry } from '../../replay/replay.ts';
import { edgesOf } from './edge-side.ts';
import { type Line, type Run, traceRow } from './trace.ts';

export interface PlanLine {
  /** Index of the entry of the count sheet. */
  readonly entry: number;
  readonly label: string;
  readonly section: number;
  readonly side: Side | null;
  readonly unit: Entry['unit'];
  /** Where the instruction stands that has it worked. */
  readonly call: number;
  /** squares: known stitch by stitch · told: only its counts are known · torn: not understood · stopped: cannot be worked as printed. */
  readonly kind: 'squares' | 'told' | 'torn' | 'stopped';
  /** Rows the line stands for. */
  readonly rows: number;
  /** Where its first square from the right lies, unworked stitches included. */
  readonly right: number;
  /** Stitches not worked in the row, at the right and at the left as the right side shows them. */
  readonly waitsRight: number;
  readonly waitsLeft: number;
  /** From right to left as the right side shows them. */
  readonly runs: readonly Run[];
  /** Threads between squares, in squares from `right`. */
  readonly markers: readonly number[];
  readonly turned: boolean;
  /** What the drawing had to assume. */
  readonly note?: string;
  readonly before: number | null;
  readonly after: number | null;
}

/** Squares of the line that were worked in it. */
export function workedSquares(line: PlanLine): number {
  return line.runs.reduce((sum, run) => sum + run.n, 0);
}

/** Squares from the right edge of the line to its left one. */
export function widthOf(line: PlanLine): number {
  return line.waitsRight + workedSquares(line) + line.waitsLeft;
}

interface Pen {
  /** Where the right edge of the live stitches lies. */
  right: number;
  live: number;
  /** Where stitches that wait for their side lie. */
  waiting: { right: number; n: number } | null;
}

/** The lines of one size in working order. `moments` are the heads of the rows of every size. */
export function planLines(proof: Proof, size: number, moments: readonly Moment[]): PlanLine[] {
  const heads = new Map<number, Moment>();
  for (const moment of moments) if (moment.size === size) heads.set(moment.entry, moment);
  const pen: Pen = { right: 0, live: 0, waiting: null };
  const lines: PlanLine[] = [];
  proof.replay.entries.forEach((entry, index) => {
    const before = entry.before[size] ?? null;
    const after = entry.after[size] ?? null;
    const moment = heads.get(index);
    if (entry.afterPerRepeat !== null || (moment === undefined && before === null && after === null)) return;
    const shown = { entry: index, call: entry.span.start, label: entry.label, section: entry.section, unit: entry.unit, before, after };
    const traced = moment === undefined ? null : traceRow(proof, moment);
    if (traced !== null && typeof traced !== 'string') {
      for (const line of traced) lines.push(drawn(line, { ...shown, rows: entry.times }, pen));
    } else if ((moment !== undefined && traced !== 'told') || after === null) {
      lines.push({
        ...shown,
        side: entry.side,
        kind: traced === 'stopped' ? 'stopped' : 'torn',
        rows: entry.times,
        right: pen.right,
        waitsRight: 0,
        waitsLeft: 0,
        runs: [plain(after ?? before ?? pen.live)],
        markers: [],
        turned: false,
      });
    } else lines.push(told(entry, shown, proof.pattern.sections[entry.section]?.title ?? '', pen));
    if (after !== null && after !== pen.live) pen.live = after;
  });
  return lines;
}

const plain = (n: number): Run => ({ kind: 'plain', n, takes: n, lean: null });

type Shown = Pick<PlanLine, 'entry' | 'call' | 'label' | 'section' | 'unit' | 'before' | 'after'>;

/** An instruction that is no row, or rows told in one sentence. */
function told(entry: Entry, shown: Shown, title: string, pen: Pen): PlanLine {
  const before = shown.before ?? 0;
  const after = shown.after ?? 0;
  const common = {
    ...shown,
    side: entry.side,
    kind: 'told' as const,
    rows: entry.times,
    waitsRight: 0,
    waitsLeft: 0,
    markers: [],
    turned: false,
  };
  const { type } = entry.node;
  if (type === 'castOn') {
    if (before === 0) Object.assign(pen, { right: 0, waiting: null });
    const right = pen.right;
    return {
      ...common,
      right,
      runs:
        before === 0
          ? [{ kind: 'castOn', n: after, takes: 0, lean: null }]
          : [plain(before), { kind: 'castOn', n: after - before, takes: 0, lean: null }],
    };
  }
  if (entry.unit === 'step') {
    const gone = before - after;
    const kind = type === 'bindOff' || type === 'join' ? 'boundOff' : 'held';
    if (gone > 0)
      return {
        ...common,
        right: pen.right,
        runs: after > 0 ? [plain(after), { kind, n: gone, takes: gone, lean: null }] : [{ kind, n: gone, takes: gone, lean: null }],
      };
    return {
      ...common,
      right: pen.right,
      runs: [...(before > 0 ? [plain(before)] : []), ...(gone < 0 ? [{ kind: 'taken' as const, n: -gone, takes: 0, lean: null }] : [])],
    };
  }
  if (type === 'edgeRows') return edgeSteps(common, before, after, pen);
  const change = after - before;
  if (entry.node.type === 'shape' && entry.times === 1 && change !== 0) {
    const shaped = shapedRow(entry.node, common, change, after, title, pen);
    if (shaped !== null) return shaped;
  }
  // Shaping told for many rows keeps the piece in its middle.
  if (type === 'shape' || type === 'repeatRows' || type === 'plain') pen.right -= Math.trunc(change / 2);
  return { ...common, right: pen.right, runs: [plain(after)] };
}

/** One row of shaping: its signs at the edges it is worked at. */
function shapedRow(
  node: Shape,
  common: Omit<PlanLine, 'right' | 'runs'>,
  change: number,
  after: number,
  title: string,
  pen: Pen,
): PlanLine | null {
  const edges = edgesOf(node, common.side, title);
  const many = Math.abs(change);
  if (edges === 'elsewhere' || (edges === 'both' && many % 2 !== 0)) return null;
  const each = edges === 'both' ? many / 2 : many;
  if (after < each * 2) return null;
  const sign: Run = { kind: change < 0 ? 'decrease' : 'increase', n: each, takes: change < 0 ? each * 2 : 0, lean: null };
  const atRight = edges === 'right' || edges === 'both';
  const atLeft = edges !== 'right';
  const rest = after - (atRight ? each : 0) - (atLeft ? each : 0);
  if (atRight) pen.right -= Math.sign(change) * each;
  const note =
    edges === 'unknown'
      ? `drawn at the left edge: on which side the ${node.edge === null ? 'edge' : `${node.edge} edge`} lies the name of the piece does not tell`
      : null;
  return {
    ...common,
    right: pen.right,
    runs: [...(atRight ? [sign] : []), plain(rest), ...(atLeft ? [{ ...sign }] : [])],
    ...(note === null ? {} : { note }),
  };
}

/** Steps told at the beginning of several rows: an even number of rows shares them between both edges. */
function edgeSteps(common: Omit<PlanLine, 'right' | 'runs'>, before: number, after: number, pen: Pen): PlanLine {
  const change = Math.abs(after - before);
  const atRight = common.rows % 2 === 0 ? Math.floor(change / 2) : common.side === 'WS' ? 0 : change;
  const step = (n: number): Run[] =>
    n === 0 ? [] : [{ kind: after < before ? 'boundOff' : 'castOn', n, takes: after < before ? n : 0, lean: null }];
  const runs = [...step(atRight), plain(Math.min(before, after)), ...step(change - atRight)];
  const right = after < before ? pen.right : pen.right - atRight;
  pen.right = after < before ? pen.right + atRight : right;
  return { ...common, right, runs };
}

/** A row of which every stitch is known. */
function drawn(line: Line, shown: Shown & { readonly rows: number }, pen: Pen): PlanLine {
  const ws = line.side === 'WS';
  const runs = ws ? [...line.runs].reverse() : line.runs;
  const waitsRight = ws ? line.ahead : line.behind;
  const waitsLeft = ws ? line.behind : line.ahead;
  const below = waitsRight + waitsLeft + runs.reduce((sum, run) => sum + run.takes, 0);
  if (pen.waiting !== null && pen.waiting.n === below && pen.live === 0) {
    pen.right = pen.waiting.right;
    pen.waiting = null;
  } else if (pen.live === 0 && below === 0) pen.right = 0;
  let at = waitsRight;
  let gain = 0;
  for (const run of runs) {
    if (run.kind !== 'boundOff' && run.kind !== 'held' && at + run.takes / 2 < below / 2) gain += run.n - run.takes;
    at += run.takes;
  }
  // What is won here and lost there within one row moves no edge.
  const net = runs.reduce((sum, run) => sum + (run.kind === 'boundOff' || run.kind === 'held' ? 0 : run.n - run.takes), 0);
  gain = net >= 0 ? Math.min(net, Math.max(0, gain)) : Math.max(net, Math.min(0, gain));
  const right = pen.right - gain;
  let edge = right + waitsRight;
  let touching = waitsRight === 0;
  let next = right;
  let live = waitsRight + waitsLeft;
  for (const run of runs) {
    const gone = run.kind === 'boundOff' || run.kind === 'held';
    if (gone && touching) next = edge + run.n;
    if (gone && run.kind === 'held' && line.rest) pen.waiting = { right: edge, n: run.n };
    if (!gone) {
      touching = false;
      live += run.n;
    }
    edge += run.n;
  }
  pen.right = next;
  pen.live = live;
  const worked = runs.reduce((sum, run) => sum + run.n, 0);
  const markers = line.markers.map((place) => waitsRight + (ws ? worked - place : place)).sort((a, b) => a - b);
  return { ...shown, side: line.side, kind: 'squares', right, waitsRight, waitsLeft, runs, markers, turned: line.turned };
}
