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
import type { Loops } from './steps/use.ts';

export type Method = 'plain' | 'wrap' | 'double' | 'twin' | 'pin' | 'yarnOver';

/** A marker between two stitches, or the gap that a turn before the end leaves. */
export interface Mark {
  /** 'border': live stitches of a piece end here, those of its edging begin above them. */
  readonly kind: 'marker' | 'gap' | 'bor' | 'border';
  readonly name: string | null;
  /** Stitches between the mark and the base of its needle. */
  at: number;
  method?: Method;
  /** Number of the last turn made here, and how many turns left a loop of their own here. */
  turn?: number;
  loops?: number;
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
  /** The round has been turned inside out: its wrong side faces the knitter. */
  inside?: boolean;
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
  /** Needles that a round is spread over, where no more is told. */
  spread?: number;
  /** Stitches that the last row bound off inside it, and how many it left behind each hole: buttonholes and pockets. */
  holes?: { off: number; behind: number[] };
  /** Yarn overs beside turns that have been worked over since and not together with a neighbour. */
  passed?: number;
  /** Turns made so far, and the number of the last one on each side. */
  turns?: number;
  lastTurn?: { RS: number; WS: number };
  /** The last turn was made at a new place. */
  moved?: boolean;
  /** Loops of the yarn overs made in the row in hand, and of those in the row below it. */
  loops?: Loops;
  below?: Loops;
  /** Stitches worked in the last row of each side, for "5 sts fewer than on last RS row". */
  worked?: { RS: number | null; WS: number | null };
  /** Stitches on either side of the one gap that the last row bound off in its middle. */
  sets?: { first: number; last: number };
  /** The last row bound stitches off, so that a round is open there. */
  opened?: boolean;
}

export function emptyNeedles(): Needles {
  return {
    left: { n: 0, marks: [] },
    right: { n: 0, marks: [] },
    side: null,
    mode: 'flat',
    suspended: false,
    stay: null,
    sure: true,
    lost: false,
    begun: false,
    parts: [],
  };
}

export function copyNeedles(from: Needles): Needles {
  const copy = (needle: Needle): Needle => ({ n: needle.n, marks: needle.marks.map((mark) => ({ ...mark })) });
  return {
    ...from,
    left: copy(from.left),
    right: copy(from.right),
    parts: from.parts.map((part) => ({ ...part })),
    ...(from.lastTurn ? { lastTurn: { ...from.lastTurn } } : {}),
    ...(from.worked ? { worked: { ...from.worked } } : {}),
  };
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
  const marks = right.marks
    .filter((mark) => mark.kind !== 'bor')
    .map((mark) => ({ ...mark, at: right.n - mark.at }))
    .sort((a, b) => a.at - b.at);
  // A marker at the beginning of the round lies behind the yarn: what the round makes first comes after it.
  const head = (mark: Mark): boolean => needles.mode === 'round' && mark.kind === 'marker' && mark.at === right.n;
  needles.left = { n: right.n, marks: marks.filter((mark) => !head(mark)) };
  needles.right = { n: 0, marks: marks.filter(head).map((mark) => ({ ...mark, at: 0 })) };
}

/** Brings the needles to the head of a row: every stitch on the left needle, unless the row before turned early. */
export function beginRow(needles: Needles): void {
  if (needles.begun) return;
  needles.begun = true;
  needles.below = needles.loops ?? { all: 0, spare: 0, paid: false };
  needles.loops = { all: 0, spare: 0, paid: false };
  if (needles.left.n === 0 && needles.right.n > 0) {
    if (needles.mode === 'round' && !needles.suspended) comeRound(needles);
    else if (needles.stay === 'slide') comeRound(needles);
    else {
      swap(needles);
      needles.side = other(needles.side);
      needles.moved = false;
    }
  }
  needles.stay = null;
}

/** The row is done; marks at the tip of an empty left needle go with the stitches. */
export function endRow(needles: Needles): void {
  if (needles.left.n === 0) passTip(needles);
  const border = borderOf(needles);
  if (border > 0 && needles.left.n === border && needles.begun) turn(needles, 'plain');
  resumeRound(needles);
  if (needles.mode === 'round' && !needles.suspended && needles.begun && needles.left.n > 0 && needles.right.n > 0) beginHere(needles);
  needles.begun = false;
}

/** A round is left for rows over what has just been worked on the right side. */
export function toRows(needles: Needles): void {
  needles.right = { n: live(needles), marks: [] };
  needles.left = { n: 0, marks: [] };
  needles.mode = 'flat';
  needles.side = 'RS';
}

/** The last of some plain rounds ends `count` stitches before the end of the round. */
export function stopShort(needles: Needles, count: number): void {
  beginRow(needles);
  workPlain(needles, needles.left.n - count);
  endRow(needles);
}

/** A round that stopped short: the next begins here, and meets the old beginning of the round on its way. */
function beginHere(needles: Needles): void {
  const { left, right } = needles;
  const turned = right.marks.filter((mark) => mark.kind !== 'bor').map((mark) => ({ ...mark, at: right.n - mark.at }));
  const bor: Mark = { kind: 'bor', name: 'BOR', at: right.n };
  needles.left = {
    n: left.n + right.n,
    marks: [...turned, bor, ...left.marks.map((mark) => ({ ...mark, at: mark.at + right.n }))].sort((a, b) => a.at - b.at),
  };
  needles.right = { n: 0, marks: [] };
}

/** The round begins here from now on, and its old beginning is forgotten; says whether there was a round to turn. */
export function newBeginning(needles: Needles): boolean {
  const { left, right } = needles;
  if (needles.mode !== 'round' || needles.suspended || left.n === 0 || right.n === 0) return false;
  beginHere(needles);
  needles.left.marks = needles.left.marks.filter((mark) => mark.kind !== 'bor' && mark.name !== 'BOR');
  return true;
}

/** Height of the left needle at which the edging's own stitches begin; 0 without an edging on it. */
export function borderOf(needles: Needles): number {
  return needles.left.marks.find((mark) => mark.kind === 'border')?.at ?? 0;
}

/** The first stitches of a round come to the left needle before the round is done. */
export function takeRound(needles: Needles, count: number): void {
  const { left, right } = needles;
  const lent = right.marks.filter((mark) => mark.at > 0 && mark.at <= count).map((mark) => ({ ...mark, at: count - mark.at }));
  left.marks = [...lent.reverse(), ...left.marks.map((mark) => ({ ...mark, at: mark.at + count }))];
  left.n += count;
  right.n -= count;
  right.marks = right.marks
    .filter((mark) => mark.at === 0 || mark.at > count)
    .map((mark) => ({ ...mark, at: Math.max(0, mark.at - count) }));
}

/** Whether a pass on the right side stands at the beginning of the round. */
export function atBeginning(needles: Needles): boolean {
  if (needles.side === 'WS') return false;
  const { left, right } = needles;
  const known = [...left.marks, ...right.marks].some((mark) => mark.kind === 'bor');
  if (!known) return left.n === 0 || right.n === 0;
  return (
    right.marks.some((mark) => mark.kind === 'bor' && mark.at === right.n) ||
    left.marks.some((mark) => mark.kind === 'bor' && mark.at === left.n)
  );
}

/** Rounds go on where a pass between turns has come back to the beginning; says whether they do. */
export function resumeRound(needles: Needles, anywhere = false): boolean {
  if (needles.mode !== 'round' || !needles.suspended) return false;
  if (!anywhere && !atBeginning(needles)) return false;
  const { left, right } = needles;
  const keep = (mark: Mark): boolean => mark.kind !== 'bor';
  // The ring from here on: what is on the left needle, then what lies at the far end of the right one.
  const marks = [
    ...right.marks.filter(keep).map((mark) => ({ ...mark, at: right.n - mark.at })),
    ...left.marks.filter(keep).map((mark) => ({ ...mark, at: mark.at + right.n })),
  ];
  needles.left = { n: left.n + right.n, marks: marks.sort((a, b) => a.at - b.at) };
  needles.right = { n: 0, marks: [] };
  needles.suspended = false;
  needles.side = 'RS';
  return true;
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
    else if (mark.method === 'yarnOver') needles.passed = (needles.passed ?? 0) + (mark.loops ?? 1);
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

/**
 * Turns the work. With stitches left on the needle a gap stays behind, and the mark of the method. Says whether the
 * last turn on this side was made at the very same place, with no row across it since.
 */
export function turn(needles: Needles, method: Method): { same: boolean } {
  const far = needles.left;
  const border = borderOf(needles);
  const open = needles.mode === 'round' && needles.suspended ? needles.right.n > 0 : far.n > 0 && needles.right.n > 0;
  let same = false;
  needles.turns = (needles.turns ?? 0) + 1;
  const side = needles.side ?? 'RS';
  if (open && !(border > 0 && far.n === border)) {
    const there = far.marks.find((mark) => mark.kind === 'gap' && mark.at === far.n);
    if (there) {
      // Where the turn at the other end has moved on, the piece grows all the same: a triangle worked out from one edge.
      same = there.turn !== undefined && there.turn === needles.lastTurn?.[side] && needles.moved !== true;
      there.turn = needles.turns;
      there.loops = (there.loops ?? 1) + 1;
    } else far.marks.push({ kind: 'gap', name: null, at: far.n, method, turn: needles.turns });
    needles.moved = there === undefined;
    needles.lastTurn = { RS: 0, WS: 0, ...needles.lastTurn, [side]: needles.turns };
  } else if (far.n === 0) passTip(needles);
  if (!open) needles.moved = false;
  swap(needles);
  needles.side = other(needles.side);
  if (needles.mode === 'round') needles.suspended = true;
  needles.stay = null;
  needles.begun = true;
  return { same };
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
  // The place where the two needles' ends meet is the beginning of the round until it has once been passed.
  const known = [...moved, ...left.marks, ...right.marks].some((mark) => mark.kind === 'bor');
  const bor: Mark[] = known ? [] : [{ kind: 'bor', name: 'BOR', at: count }];
  left.marks = [
    ...moved.map((mark) => ({ ...mark, at: count - mark.at })),
    ...bor,
    ...left.marks.map((mark) => ({ ...mark, at: mark.at + count })),
  ].sort((a, b) => a.at - b.at);
  left.n += count;
  return true;
}

/** The first `count` stitches of this round leave the needle: a bind-off at its end went on over the beginning of the next. */
export function leaveFirst(needles: Needles, count: number): void {
  needles.right.n -= count;
  needles.right.marks = needles.right.marks.filter((mark) => mark.at >= count).map((mark) => ({ ...mark, at: mark.at - count }));
}

/** Takes `count` stitches off the tip of the left needle without working them. */
export function leave(needles: Needles, count: number): void {
  const { left } = needles;
  left.n -= count;
  left.marks = left.marks.filter((mark) => mark.at <= left.n);
}

/** How many lie on each needle is not known any more; how many needles there are is. */
export function forgetParts(needles: Needles): void {
  if (needles.parts.length > 1) needles.spread ??= needles.parts.length;
  needles.parts = [];
}

/** Puts the count right when only the number is known: everything unworked, markers forgotten. */
export function setLive(needles: Needles, count: number): void {
  if (live(needles) === count) return;
  forgetParts(needles);
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
