/**
 * Two needles, each a stack of stitches counted from its far end.
 *
 *     left needle                right needle
 *     base ──────── tip → ← tip ──────── base
 *
 * Working a stitch takes it from the left tip and makes it at the right tip. A place on a needle is the number of
 * stitches between it and the base, so it keeps its number while stitches come and go at the tip. A turn swaps the
 * needles and moves nothing.
 */
import type { Side } from '../../grammar/tree.ts';

export type Method = 'plain' | 'wrap' | 'double' | 'twin' | 'pin' | 'yarnOver';

/** A marker between two stitches, or the gap that a turn before the end leaves. */
export interface Mark {
  readonly kind: 'marker' | 'gap' | 'bor';
  readonly name: string | null;
  /** Stitches between the mark and the base of its needle. */
  at: number;
  method?: Method;
}

export interface Needle {
  n: number;
  marks: Mark[];
}

export interface Needles {
  left: Needle;
  right: Needle;
  side: Side | null;
  mode: 'flat' | 'round';
  /** The round is left for rows: between a turn and the turn back. */
  suspended: boolean;
  /** The last row ended without turning: an i-cord, or a quarter turn. */
  stay: 'slide' | 'quarter' | null;
  /** False after words that were not understood, until a stated count settles it. */
  sure: boolean;
  /** The count was put right without knowing where: markers may hang at the wrong place until they are placed anew. */
  lost: boolean;
  /** A row is being worked: the right needle holds its stitches. */
  begun: boolean;
  /** Stitches known of each needle of a round, in order: "Needle 1" 24. */
  parts: { name: string; n: number }[];
}

export function emptyNeedles(): Needles {
  return { left: { n: 0, marks: [] }, right: { n: 0, marks: [] }, side: null, mode: 'flat', suspended: false, stay: null, sure: true, lost: false, begun: false, parts: [] };
}

export function copyNeedles(from: Needles): Needles {
  const copy = (needle: Needle): Needle => ({ n: needle.n, marks: needle.marks.map((mark) => ({ ...mark })) });
  return { ...from, left: copy(from.left), right: copy(from.right), parts: from.parts.map((part) => ({ ...part })) };
}

/** Live stitches: worked and unworked, not held, not bound off. */
export function live(needles: Needles): number {
  return needles.left.n + needles.right.n;
}

const other = (side: Side | null): Side | null => (side === null ? null : side === 'RS' ? 'WS' : 'RS');

function swap(needles: Needles): void {
  const { left } = needles;
  needles.left = needles.right;
  needles.right = left;
}

/** The right needle's stitches come round to the left one in the same order: the next round, or a cord slid back. */
function comeRound(needles: Needles): void {
  const { right } = needles;
  const marks = right.marks.filter((mark) => mark.kind !== 'bor').map((mark) => ({ ...mark, at: right.n - mark.at })).sort((a, b) => a.at - b.at);
  needles.left = { n: right.n, marks };
  needles.right = { n: 0, marks: [] };
}

/** Brings the needles to the head of a row: every stitch on the left needle, unless the row before turned early. */
export function beginRow(needles: Needles): void {
  if (needles.begun) return;
  needles.begun = true;
  if (needles.left.n === 0 && needles.right.n > 0) {
    if (needles.mode === 'round' && !needles.suspended) comeRound(needles);
    else if (needles.stay === 'slide') comeRound(needles);
    else {
      swap(needles);
      needles.side = other(needles.side);
    }
  }
  needles.stay = null;
}

/** The row is done; marks at the tip of an empty left needle go with the stitches. */
export function endRow(needles: Needles): void {
  passTip(needles);
  needles.begun = false;
}

/** Marks at the very tip of the left needle come to the tip of the right one; crossing a gap closes it. */
export function passTip(needles: Needles): void {
  const { left, right } = needles;
  for (;;) {
    const mark = left.marks.at(-1);
    if (mark === undefined || mark.at < left.n) return;
    left.marks.pop();
    if (mark.kind !== 'gap') right.marks.push({ ...mark, at: right.n });
  }
}

/**
 * Works stitches one by one: `count` from left to right, each making one. Marks on the way are passed at their place.
 * The caller has seen to it that enough stitches are there.
 */
export function workPlain(needles: Needles, count: number): void {
  if (count <= 0) return;
  const { left, right } = needles;
  const to = left.n - count;
  for (;;) {
    const mark = left.marks.at(-1);
    if (mark === undefined || mark.at <= to) break;
    left.marks.pop();
    if (mark.kind !== 'gap') right.marks.push({ ...mark, at: right.n + (left.n - mark.at) });
  }
  left.n = to;
  right.n += count;
}

/** Works one token that takes `takes` and makes `makes`; says whether a marker lay inside what it took. */
export function workToken(needles: Needles, takes: number, makes: number): { inside: Mark | null } {
  const { left, right } = needles;
  if (takes > 0) passTip(needles);
  const to = left.n - takes;
  let inside: Mark | null = null;
  const passed: Mark[] = [];
  for (;;) {
    const mark = left.marks.at(-1);
    if (mark === undefined || mark.at <= to) break;
    left.marks.pop();
    if (mark.kind === 'gap') continue;
    if (mark.at < left.n) inside = mark;
    passed.push(mark);
  }
  left.n = to;
  right.n += makes;
  for (const mark of passed) right.marks.push({ ...mark, at: right.n });
  while (right.marks.length > 0 && (right.marks.at(-1) as Mark).at > right.n) (right.marks.at(-1) as Mark).at = right.n;
  return { inside };
}

/** Turns the work. With stitches on both needles a gap stays behind. */
export function turn(needles: Needles, method: Method): void {
  const early = needles.left.n > 0 && needles.right.n > 0;
  passNothing(needles);
  if (early) {
    const far = needles.left;
    if (!far.marks.some((mark) => mark.kind === 'gap' && mark.at === far.n)) far.marks.push({ kind: 'gap', name: null, at: far.n, method });
  } else if (needles.left.n === 0) passTip(needles);
  swap(needles);
  needles.side = other(needles.side);
  if (needles.mode === 'round' && early) needles.suspended = needles.side === 'WS' || needles.suspended;
  needles.stay = null;
  needles.begun = true;
}

function passNothing(_needles: Needles): void {
  // A marker at the tip stays where it is: the turn is made before it.
}

/**
 * In a round the row may run past the beginning-of-round marker: stitches from the base of the right needle come to
 * the base of the left one.
 */
export function reachRound(needles: Needles, count: number): boolean {
  const { left, right } = needles;
  if (right.n < count || count <= 0) return false;
  const moved = right.marks.filter((mark) => mark.at <= count);
  right.marks = right.marks.filter((mark) => mark.at > count).map((mark) => ({ ...mark, at: mark.at - count }));
  right.n -= count;
  left.marks = [...moved.map((mark) => ({ ...mark, at: count - mark.at })), { kind: 'bor' as const, name: 'BOR', at: count }, ...left.marks.map((mark) => ({ ...mark, at: mark.at + count }))].sort((a, b) => a.at - b.at);
  left.n += count;
  return true;
}

/** Takes `count` stitches off the tip of the left needle without working them. */
export function leave(needles: Needles, count: number): void {
  const { left } = needles;
  left.n -= count;
  left.marks = left.marks.filter((mark) => mark.at <= left.n);
}

/** Puts the count right when only the number is known: everything unworked, markers forgotten. */
export function setLive(needles: Needles, count: number): void {
  if (live(needles) === count) return;
  needles.lost = needles.lost || needles.left.marks.length + needles.right.marks.length > 0;
  if (needles.begun || needles.left.n === 0) {
    const worked = count - needles.left.n;
    if (worked >= 0 && needles.left.n > 0 && needles.right.n > 0) {
      needles.right = { n: worked, marks: needles.right.marks.filter((mark) => mark.at <= worked) };
      return;
    }
  }
  const keep = needles.left.n === 0 ? 'right' : 'left';
  const marks = needles[keep].marks.filter((mark) => mark.at <= count && mark.kind !== 'gap');
  needles.left = { n: keep === 'left' ? count : 0, marks: keep === 'left' ? marks : [] };
  needles.right = { n: keep === 'right' ? count : 0, marks: keep === 'right' ? marks : [] };
}
