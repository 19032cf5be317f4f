/**
 * The counts a draft works its pieces at, for comparing with stated measures: for every piece the counts it passes through in all
 * sizes, and how many rows are worked at each.
 */
import { once } from '../../src/once.ts';
import type { Entry } from '../../src/replay/replay.ts';
import type { Context } from '../rule.ts';

/** One count per size, held for a while. */
export interface Held {
  readonly counts: readonly number[];
  /** Rows worked at it, in the size that works most; a stretch "until it measures" counts as many. */
  readonly rows: number;
  readonly piece: number | null;
  readonly section: number;
  readonly first: Entry;
}

/** Rows that a stretch "until piece measures" stands for: more than any written band. */
const untilRows = 30;

const isMeasured = (entry: Entry): boolean =>
  (entry.node.type === 'until' && (entry.node.goal.kind === 'measure' || entry.node.goal.kind === 'matches')) ||
  (entry.node.type === 'repeatRows' && entry.node.until?.kind === 'measure');

const rowsOf = (entry: Entry): number => (isMeasured(entry) ? untilRows : entry.unit === 'step' ? 0 : entry.times);

/** Every count that all sizes hold, piece by piece, the steadiest first. A size that skips a row keeps the count it has. */
export function heldCounts({ pattern, replay }: Context): readonly Held[] {
  const sizes = pattern.sizes.length;
  const found = new Map<string, Held>();
  let current: (number | null)[] = new Array<number | null>(sizes).fill(null);
  let piece: number | null = null;
  let worked: boolean[] = [];
  for (const entry of replay.entries) {
    const here: number | null = pattern.sections[entry.section]?.piece ?? null;
    const starts = entry.node.type === 'castOn';
    if (here !== piece || starts) current = new Array<number | null>(sizes).fill(null);
    piece = here;
    worked = entry.after.map((value, size) => value !== null || entry.before[size] !== null);
    current = current.map((value, size) => entry.after[size] ?? (worked[size] === true ? null : value));
    if (entry.afterPerRepeat !== null || current.some((value) => value === null || value === 0)) continue;
    const counts = current as number[];
    const key = `${piece}|${counts.join(' ')}`;
    const known = found.get(key);
    found.set(key, {
      counts: [...counts],
      rows: (known?.rows ?? 0) + rowsOf(entry),
      piece,
      section: known?.section ?? entry.section,
      first: known?.first ?? entry,
    });
  }
  return [...found.values()].sort((a, b) => b.rows - a.rows);
}

/** Title of the piece: the heading of its first section. */
export function pieceTitle({ pattern }: Context, piece: number | null): string {
  return pattern.sections.find((section) => section.piece === piece && section.kind === 'piece')?.title ?? '';
}

/** The pieces with at least one round. */
const piecesInRounds = once(
  ({ replay, pattern }: Context): ReadonlySet<number | null> =>
    new Set(
      replay.entries
        .filter(
          (entry) =>
            entry.unit === 'round' ||
            (entry.node.type === 'row' && entry.node.label?.unit === 'round') ||
            (entry.node.type === 'plain' && entry.node.unit === 'round'),
        )
        .map((entry) => pattern.sections[entry.section]?.piece ?? null),
    ),
);

/** Whether rounds are worked at the count: the piece is joined. */
export const inRounds = (context: Context, held: Held): boolean => piecesInRounds(context).has(held.piece);
