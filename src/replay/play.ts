/** What the replay keeps while it plays: one state per size, the rows it can call again, the sheet it writes. */
import type { Label, Row, Side, Span, Statement, Step } from '../../grammar/tree.ts';
import type { Pattern, Section } from '../pattern/pattern.ts';
import { type Book, type Met, noLabel, openBook, troubleMet } from './book.ts';
import type { RowChoice, Trouble } from './hands.ts';
import type { Held } from './holders.ts';
import { copyNeedles, emptyNeedles, live, type Needles } from './needles.ts';

/** A row that was worked, as "rep last 2 rows" calls it again. */
export interface Worked {
  readonly row: Row | null;
  /** Plain rows worked in a run. */
  readonly times: number;
  readonly section: number;
  /** Words that stand for the row in the sheet. */
  readonly textSpan: Span;
  readonly label: string;
  /** Change of the count, for rows told as shaping. */
  readonly change: number;
  /** What each of its shaping rows changes, where the others change nothing. */
  readonly step?: number;
}

/** One size: its needles, what it holds, what it has worked. */
export interface Hand {
  needles: Needles;
  held: Held[];
  history: Worked[];
  /** Rows worked since the piece began, and in the section. */
  rows: number;
  sectionRows: number;
  /** Rows worked of the numbered set last called. */
  setRows: number;
  /** Nothing is on the needles and nothing has been. */
  fresh: boolean;
  joined: boolean;
  /** The last row brought every stitch there is: picked up along an edge or taken from holders. */
  broughtOn?: boolean;
}

export interface Item {
  readonly section: number;
  readonly statement: Statement;
  /** First statement of its section. */
  readonly first: boolean;
}

/** One size at the head of a row that is about to be worked and written down. */
export interface Moment {
  /** Which entry of the sheet the row becomes. */
  readonly entry: number;
  readonly size: number;
  readonly row: Row;
  readonly steps: readonly Step[];
  /** How its words were read, and the other ways in which they may be. */
  readonly choice: RowChoice;
  readonly choices: readonly RowChoice[];
  readonly needles: Needles;
  readonly held: readonly Held[];
  readonly piece: string;
  readonly number: number | null;
  /** The row stands here; what it states is said of this working. */
  readonly inline: boolean;
}

export interface Play {
  /** Told of every row that is written down, before the next is worked. */
  readonly witness?: (moment: Moment) => void;
  readonly pattern: Pattern;
  readonly sizeCount: number;
  readonly flow: readonly Item[];
  /** The author's words at a place, for the labels of the sheet. */
  readonly text: (span: Span) => string;
  hands: Hand[];
  book: Book;
  /** Rows with numbers, by section; named rows, newest last. */
  readonly sets: Map<number, Map<number, Row>>;
  readonly fillers: Map<number, Row[]>;
  readonly named: { name: string; number: number | null; row: Row; section: number }[];
  section: number;
  /** The last numbered row worked where it stands, for rows that "all WS rows" fills in. */
  inline: { section: number; number: number } | null;
  /** How deep the replay is in references, against rows that call themselves. */
  depth: number;
  /** The point of the flow being played. */
  at: number;
  /** Passes are worked until no stitch is left, so the last of them may end short of its plain stitch or its wrap. */
  lenient?: boolean | undefined;
  /** Rows of one more pass, per size, where a goal is met inside it. */
  partial?: Map<number, number> | undefined;
  /** Set while a reading is only tried: nothing is written. */
  trying: boolean;
  /** Sizes ruled by a size label that stands on its own line. */
  ruled: readonly number[] | null;
  /** What was decided where a stated count and the row differ: the count to go on with, by place and size. */
  readonly decided: Map<string, number>;
  /** Work that is still done, of trying as well as of writing: rows in one size, long ones for more. Below 0 the replay stands still. */
  effort: number;
}

/** Rows in one size that a draft may ask for, with all that is tried on the way: far more than anyone knits. */
const mostEffort = 250_000;

export const deepest = 12;

export function newHand(): Hand {
  return { needles: emptyNeedles(), held: [], history: [], rows: 0, sectionRows: 0, setRows: 0, fresh: true, joined: false };
}

export function newPlay(pattern: Pattern, flow: readonly Item[], text: (span: Span) => string, witness?: (moment: Moment) => void): Play {
  return {
    ...(witness === undefined ? {} : { witness }),
    pattern,
    flow,
    text,
    sizeCount: pattern.sizes.length,
    hands: pattern.sizes.map(newHand),
    book: openBook(),
    sets: new Map(),
    fillers: new Map(),
    named: [],
    section: 0,
    inline: null,
    depth: 0,
    at: 0,
    trying: false,
    ruled: null,
    decided: new Map(),
    effort: mostEffort,
  };
}

export function copyHand(hand: Hand): Hand {
  return { ...hand, needles: copyNeedles(hand.needles), held: hand.held.map((set) => ({ ...set })), history: hand.history.slice() };
}

/** Plays something without writing it down and puts everything back; returns what it met and the hands as they then were. */
export function tryOut(play: Play, action: () => void): { readonly met: readonly Met[]; readonly hands: readonly Hand[] } {
  const saved = {
    hands: play.hands,
    book: play.book,
    inline: play.inline,
    section: play.section,
    at: play.at,
    trying: play.trying,
    ruled: play.ruled,
    named: play.named.length,
  };
  play.hands = play.hands.map(copyHand);
  play.book = openBook();
  play.trying = true;
  action();
  const result = { met: play.book.met, hands: play.hands };
  play.named.length = saved.named;
  Object.assign(play, {
    hands: saved.hands,
    book: saved.book,
    inline: saved.inline,
    section: saved.section,
    at: saved.at,
    trying: saved.trying,
    ruled: saved.ruled,
  });
  return result;
}

export const sectionOf = (play: Play): Section => play.pattern.sections[play.section] as Section;
export const allSizes = (play: Play): number[] => play.hands.map((_, size) => size);
export const handOf = (play: Play, size: number): Hand => play.hands[size] as Hand;

/** The count as the sheet prints it: null while it is not sure. */
export function shown(hand: Hand): number | null {
  return hand.needles.sure && !hand.fresh ? live(hand.needles) : null;
}

export function met(
  play: Play,
  trouble: Trouble,
  size: number,
  node: Statement | null,
  row: string | null,
  more: Readonly<Record<string, number>> = {},
  evidence: readonly string[] = [],
  inner: Span | null = null,
): void {
  const certain = handOf(play, size).needles.sure;
  const each = troubleMet(trouble, size, { section: play.section, row, node }, certain, more);
  if (each !== null) play.book.met.push({ ...each, evidence, inner });
}

export interface EntryWords {
  readonly label: string;
  readonly span: Span;
  readonly textSpan: Span;
  readonly node: Statement;
  readonly side: Side | null;
  readonly unit: 'row' | 'round' | 'step';
  readonly times?: number;
}

/** Writes one line of the sheet from the counts before and after, for the sizes that worked it. */
export function write(
  play: Play,
  words: EntryWords,
  sizes: readonly number[],
  before: readonly (number | null)[],
  takes: readonly (number | null)[] = [],
  makes: readonly (number | null)[] = [],
): void {
  const blank = (): (number | null)[] => Array.from({ length: play.sizeCount }, () => null);
  const skips =
    sizes.length === play.sizeCount
      ? []
      : Array.from({ length: play.sizeCount }, (_, size) => size).filter((size) => !sizes.includes(size));
  const entry = {
    section: play.section,
    ...words,
    times: words.times ?? 1,
    before: blank(),
    after: blank(),
    takes: blank(),
    makes: blank(),
    ...(skips.length > 0 ? { skips } : {}),
    afterPerRepeat: null,
  };
  for (const size of sizes) {
    entry.before[size] = before[size] ?? null;
    entry.after[size] = shown(handOf(play, size));
    entry.takes[size] = takes[size] ?? null;
    entry.makes[size] = makes[size] ?? null;
  }
  play.book.entries.push(entry);
}

/** How a label reads in the sheet: "Row 5", "Next row (RS)", "Dec Rnd". */
export function labelWords(label: Label | null, number: number | null = null): string {
  if (label === null) return noLabel;
  const unit = label.unit === 'round' ? 'Rnd' : 'Row';
  const upper = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
  const name = label.name === null ? '' : upper(label.name);
  if (label.next !== null) return name === '' ? `Next ${unit.toLowerCase()}` : `Next ${name.toLowerCase()} ${unit.toLowerCase()}`;
  const which = number ?? label.numbers[0] ?? null;
  return [name, name === '' ? unit : unit.toLowerCase(), which === null ? '' : String(which)].filter((word) => word !== '').join(' ');
}
