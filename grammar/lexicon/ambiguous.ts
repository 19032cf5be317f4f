import { ambiguousNames } from './ambiguous-names.ts';
import { fill } from './use.ts';

/**
 * Names whose meaning hangs on the draft. Each holds its readings, the likeliest first. The draft's own definition
 * comes before all of them, and the fit of the row before the order given here. The names are data in `ambiguous-names.ts`.
 */

/** What stands beside a word in the row: a stitch by its face, a slip that belongs to no decrease, a turn, the end of the row. */
export type Neighbour = 'k' | 'p' | 'slip' | 'turn' | 'start' | 'end';

/** What must be so before a reading is taken first. */
export type Condition =
  | { readonly kind: 'previous'; readonly is: readonly Neighbour[] }
  | { readonly kind: 'next'; readonly is: readonly Neighbour[] }
  /** A stitch of that entry follows before the next worked stitch but one: "yf, sl 1, yb". */
  | { readonly kind: 'undoneBy'; readonly entry: string }
  /** So many slipped stitches wait to be passed over. */
  | { readonly kind: 'slipsWaiting'; readonly count: number }
  /** The next row drops wraps, yarn overs or spare loops. */
  | { readonly kind: 'nextRowDrops' }
  | { readonly kind: 'side'; readonly side: 'RS' | 'WS' };

export interface Reading {
  /** Name of a lexicon entry. */
  readonly name: string;
  /** Its N: a number, or a formula in the N of the spelling. */
  readonly n?: number | string;
  readonly m?: number | string;
  /** Worked so often: `inc 2` as two kfb is `kfb` with times `N`. */
  readonly times?: number | string;
  /** What follows it where one word stands for two stitches. */
  readonly followedBy?: readonly { readonly name: string; readonly n?: number | string }[];
  /** All of these must hold for the reading to be taken on sight; with none it stands by its place in the order. */
  readonly when?: readonly Condition[];
  /** Only the gain or loss is certain; what it takes is whatever fits. */
  readonly netOnly?: true;
}

export interface Ambiguity {
  readonly spellings: readonly string[];
  readonly readings: readonly Reading[];
  /**
   * How loud to be when the draft defines nothing and several readings fit and differ; null where they count alike.
   * A crossing without a split counts alike and is still a question: it cannot be worked.
   */
  readonly undecided: 'query' | null;
}

/** A spelling as spellings are compared: without regard to case, save that B, BO and Bo differ, and with single spaces. */
export function spellingKey(spelling: string): string {
  const text = spelling.trim().replace(/[ \t]+/g, ' ');
  return text === 'B' || text === 'BO' || text === 'Bo' ? text : text.toLowerCase().replaceAll('{n', '{N').replaceAll('{m', '{M');
}

const byKey = new Map(ambiguousNames.flatMap((ambiguity) => ambiguity.spellings.map((spelling) => [spellingKey(spelling), ambiguity])));

/**
 * The ambiguity of a spelling, or undefined where the name has one reading. Takes the words of a draft (`inc 3`) or a
 * spelling of the lexicon (`inc {N}`); a spelling written out comes before one with a slot.
 */
export function ambiguityOf(spelling: string): Ambiguity | undefined {
  const key = spellingKey(spelling);
  return byKey.get(key) ?? byKey.get(key.replace(/\d+/, '{N}'));
}

/** The readings of a spelling, the likeliest first, with the number of the words filled in; empty where it has only one. */
export function readingsOf(spelling: string): readonly Reading[] {
  const found = ambiguityOf(spelling);
  if (found === undefined) return [];
  const number = /\d+/.exec(spelling)?.[0];
  if (number === undefined || byKey.has(spellingKey(spelling))) return found.readings;
  return found.readings.map((reading) => ({
    ...reading,
    ...(reading.n === undefined ? {} : { n: fill(reading.n, Number(number), 1) }),
    ...(reading.times === undefined ? {} : { times: fill(reading.times, Number(number), 1) }),
  }));
}
