/** Works a text on given stitches: no cast-on, no draft around it. */
import { readPassage } from '../../grammar/read.ts';
import type { Span } from '../../grammar/tree.ts';
import { vocabularyOf } from '../../grammar/vocabulary.ts';
import type { Pattern, Section } from '../../src/pattern/pattern.ts';
import { observationsOf } from '../../src/replay/book.ts';
import type { Held } from '../../src/replay/holders.ts';
import { emptyNeedles, live, type Needles } from '../../src/replay/needles.ts';
import { leaveTurns } from '../../src/replay/open-turns.ts';
import { allSizes, newPlay } from '../../src/replay/play.ts';
import type { Entry, Observation } from '../../src/replay/replay.ts';
import { playFrom } from '../../src/replay/statements.ts';
import { type Hands, type RowChoice, unfinished, workSteps } from '../../src/replay/work.ts';

export interface WorkOptions {
  /** Stitches on the left needle, one number per size. */
  readonly start: number | readonly number[];
  /** Side that faces in the first row. */
  readonly side?: 'RS' | 'WS';
  readonly mode?: 'flat' | 'round';
  /** Markers, as stitches from the beginning of the first row. */
  readonly markers?: readonly number[];
  /** Sets of stitches that wait on holders, for every size. */
  readonly held?: readonly { readonly name: string; readonly n: readonly number[] }[];
  readonly title?: string;
  readonly multiple?: { readonly of: number; readonly plus: number };
}

export interface Worked {
  readonly entries: readonly Entry[];
  readonly observations: readonly Observation[];
  readonly kinds: readonly string[];
  /** Live stitches at the end, per size. */
  readonly end: readonly number[];
  readonly rows: readonly number[];
  readonly needles: readonly Needles[];
  /** Where the yarn stood after each row of the first size, in fabric order. */
  readonly cursors: readonly number[];
  /** The same in a round: stitches past its beginning, or before it with a minus. */
  readonly around: readonly number[];
  readonly held: readonly (readonly Held[])[];
  /** Side of the last row worked, per size; null where none was worked or it cannot be told. */
  readonly last: readonly ('RS' | 'WS' | null)[];
}

/** A pattern of one section, with nothing in front of it. */
export function patternOf(text: string, sizes: number, title = 'Body', multiple: WorkOptions['multiple'] = undefined): Pattern {
  const names = sizes === 1 ? ['one'] : Array.from({ length: sizes }, (_, size) => String(size + 1));
  const vocabulary = vocabularyOf({});
  const statements = readPassage(text, 0, { vocabulary, sizes: names });
  const span = { start: 0, end: text.length };
  const section: Section = {
    title,
    span,
    depth: 2,
    kind: 'piece',
    piece: 0,
    statements,
    multiple: multiple === undefined ? null : { ...multiple, rows: null, span },
    times: 1,
  };
  return {
    title: 'Test',
    sizes: names,
    sections: [section],
    vocabulary,
    rows: [],
    sizeBlocks: [],
    reading: { steps: 0, read: 0, notRead: [] },
    front: {
      title: null,
      sizes: null,
      measures: [],
      pairs: [],
      gauges: [],
      needles: [],
      yarns: [],
      notions: [],
      abbreviations: [],
      blocks: [],
    },
  };
}

export function work(text: string, options: WorkOptions): Worked {
  const start = typeof options.start === 'number' ? [options.start] : options.start;
  const pattern = patternOf(text, start.length, options.title);
  const flow = (pattern.sections[0] as Section).statements.map((statement, position) => ({ section: 0, statement, first: position === 0 }));
  const cursors: number[] = [];
  const around: number[] = [];
  const play = newPlay(
    pattern,
    flow,
    (span: Span) => text.slice(span.start, span.end),
    (moment) => {
      if (moment.size !== 0) return;
      cursors.push(cursor(moment.needles));
      around.push(fromBeginning(moment.needles));
    },
  );
  const side = options.side ?? 'RS';
  play.hands.forEach((hand, size) => {
    const n = start[size] as number;
    hand.fresh = n === 0;
    const marks = (options.markers ?? []).map((at) => ({ kind: 'marker' as const, name: null, at: n - at })).sort((a, b) => a.at - b.at);
    hand.needles = { ...hand.needles, left: { n, marks }, right: { n: 0, marks: [] }, side, mode: options.mode ?? 'flat' };
    hand.joined = options.mode === 'round';
    for (const set of options.held ?? [])
      hand.held.push({ name: set.name, piece: 'Body', rest: false, n: set.n[size] ?? (set.n[0] as number), used: false });
  });
  playFrom(play, 0, flow.length, allSizes(play));
  leaveTurns(play);
  const observations = observationsOf(play.book.met);
  return {
    entries: play.book.entries as readonly Entry[],
    observations,
    kinds: [...new Set(observations.map((each) => each.kind))],
    end: play.hands.map((hand) => live(hand.needles)),
    rows: play.hands.map((hand) => hand.rows),
    needles: play.hands.map((hand) => hand.needles),
    around: [...around.slice(1), fromBeginning((play.hands[0] as (typeof play.hands)[number]).needles)],
    cursors: [...cursors.slice(1), cursor((play.hands[0] as (typeof play.hands)[number]).needles)],
    held: play.hands.map((hand) => hand.held),
    last: play.hands.map((hand) => {
      if (hand.rows === 0) return null;
      if (hand.needles.mode === 'round') return 'RS';
      return hand.needles.left.n === 0 && hand.needles.stay === null
        ? hand.needles.side
        : hand.needles.side === 'RS'
          ? 'WS'
          : hand.needles.side === 'WS'
            ? 'RS'
            : null;
    }),
  };
}

/** Boundary of the cursor in fabric order: stitches that a right-side row has behind it. */
export function cursor(needles: Needles): number {
  return needles.side === 'WS' ? needles.left.n : needles.right.n;
}

/** Where gaps lie, in fabric order, with how their turn was made. */
export function gaps(needles: Needles): { at: number; method: string }[] {
  const total = live(needles);
  const rightSide = needles.side !== 'WS';
  const left = needles.left.marks
    .filter((mark) => mark.kind === 'gap')
    .map((mark) => ({ at: rightSide ? total - mark.at : mark.at, method: mark.method ?? 'plain' }));
  const right = needles.right.marks
    .filter((mark) => mark.kind === 'gap')
    .map((mark) => ({ at: rightSide ? mark.at : total - mark.at, method: mark.method ?? 'plain' }));
  return [...left, ...right].sort((a, b) => a.at - b.at);
}

/** Works the first row of the text read in one certain way: whether it fits, and the stitches after it. */
export function workAs(text: string, options: WorkOptions, choice: RowChoice): { fits: boolean; end: number } {
  const start = typeof options.start === 'number' ? options.start : (options.start[0] as number);
  const pattern = patternOf(text, 1);
  const row = (pattern.sections[0] as Section).statements.find((statement) => statement.type === 'row');
  if (row?.type !== 'row') throw new Error(`no row in: ${text}`);
  const needles = emptyNeedles();
  needles.left = {
    n: start,
    marks: (options.markers ?? []).map((at) => ({ kind: 'marker' as const, name: null, at: start - at })).sort((a, b) => a.at - b.at),
  };
  needles.mode = options.mode ?? 'flat';
  needles.side = options.side ?? 'RS';
  const hands: Hands = {
    needles,
    size: 0,
    vocabulary: pattern.vocabulary,
    held: [],
    piece: '',
    choice,
    taken: 0,
    made: 0,
    off: 0,
    base: 0,
    last: 0,
    turned: false,
    divided: false,
    asides: [],
  };
  const trouble = workSteps(hands, row.children);
  return { fits: trouble === null && unfinished(hands) === 0, end: live(needles) };
}

/** Where the yarn stands in a round, as stitches past its beginning in the direction of a right-side round. */
export function fromBeginning(needles: Needles): number {
  const way = needles.side === 'WS' ? -1 : 1;
  const behind = needles.right.marks.find((mark) => mark.kind === 'bor');
  if (behind) return way * (needles.right.n - behind.at);
  const ahead = needles.left.marks.find((mark) => mark.kind === 'bor');
  if (ahead) return -way * (needles.left.n - ahead.at);
  return way === 1 ? (needles.left.n === 0 ? 0 : needles.right.n) : needles.left.n;
}
