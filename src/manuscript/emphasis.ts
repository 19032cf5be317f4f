/**
 * Which stars are bold or italic type, and which belong to the words.
 *
 *     **Row 1 (RS):** K2, *yo, k2tog; rep from * to last st, k1.
 *     ╰──── type ───╯     ╰────── marks ───────╯
 *
 * The shape decides. A pair is type when it stands around a label or a phrase, and not when the same passage points
 * back to such a mark ("from **") or goes on with a number of times. In doubt the stars stay: a star left in a
 * sentence can be seen and asked about, a lost one cannot. Underscores mark nothing else, so their pairs are type.
 */

/** A pair of delimiters, as indexes into the text. */
export interface EmphasisPair {
  /** Where the opening delimiter begins. */
  readonly open: number;
  /** Where the closing delimiter begins. */
  readonly close: number;
  /** How many characters each delimiter has: 1 italic, 2 bold, 3 both. */
  readonly width: number;
}

interface Run {
  readonly mark: string;
  readonly at: number;
  readonly width: number;
  readonly opens: boolean;
  readonly closes: boolean;
}

const wordCharacter = /[\p{L}\p{N}]/u;
const blank = /\s/;
const endingPunctuation = /[.,;:!?)\]}'"]/;
const startingPunctuation = /[([{]/;
const times = /(?:\d|(?:once|twice|thrice|two|three|four|five|six|times|to|until|across|around|over|rep|repeat|x)\b|×)/iy;
const pointsOn = /\b(?:from|between|to|until|and|at)$/i;
const repeats = /\brep(?:s|eat|eats|eating)?\b/i;
const repeatsFrom = /\brep(?:eat)?\s{1,3}from\b/i;
const separator = /[,;]/;
const digit = /\d/;
const stitchLike = /[A-Za-z]\d/;
/** A count that closes a row: "62 sts", "62 (68, 74) sts remain". */
const countTold = /^\d[\d\s(),[\]:/–-]*(?:sts?|stitch(?:es)?)\b[^,;]*$/i;

/** Whether a draft points to a double star ("work as Back to **"): then whole sentences between such stars may be marked. */
export function pointsToDoubleStar(source: string): boolean {
  return /\b(?:from|to|between|until|at|and)[ \t]{1,3}\*\*(?=[\s.,;:)\]]|$)/i.test(source);
}

function runsOf(text: string, literal: ReadonlySet<number>): Run[] {
  const runs: Run[] = [];
  for (let at = 0; at < text.length; at++) {
    const mark = text[at];
    if ((mark !== '*' && mark !== '_') || literal.has(at)) continue;
    let end = at + 1;
    while (text[end] === mark && !literal.has(end)) end++;
    const before = text[at - 1] ?? ' ';
    const after = text[end] ?? ' ';
    const wordAfter = wordCharacter.test(after);
    const wordBefore = wordCharacter.test(before);
    const opens = !blank.test(after) && !endingPunctuation.test(after) && !wordBefore;
    const tightList = wordAfter && separator.test(before);
    const closes = !blank.test(before) && !startingPunctuation.test(before) && !tightList && !(mark === '_' && wordAfter);
    runs.push({ mark, at, width: end - at, opens, closes });
    at = end - 1;
  }
  return runs;
}

interface Pairing {
  readonly pairs: readonly (EmphasisPair & { readonly mark: string })[];
  /** Runs of stars that pair with nothing, by width: marks of a repeat, or words that point to one. */
  readonly lone: ReadonlyMap<number, number>;
}

function pairUp(runs: readonly Run[], literal: ReadonlySet<number>, text: string): Pairing {
  const pairs: (EmphasisPair & { mark: string })[] = [];
  const lone = new Map<number, number>();
  const count = (run: Run): void => {
    if (run.mark === '*') lone.set(run.width, (lone.get(run.width) ?? 0) + 1);
  };
  const open = new Map<string, Run>();
  for (const run of runs) {
    const key = run.mark + run.width;
    const pending = open.get(key);
    if (pending && run.closes && run.at > pending.at + pending.width) {
      pairs.push({ mark: run.mark, open: pending.at, close: run.at, width: run.width });
      open.delete(key);
    } else if (run.opens) {
      if (pending) count(pending);
      open.set(key, run);
    } else {
      count(run);
    }
  }
  for (const run of open.values()) count(run);
  for (const at of literal) if (text[at] === '*') lone.set(1, (lone.get(1) ?? 0) + 1);
  return { pairs, lone };
}

/** The character before an index, blanks of the line skipped; `\n` at the start of a line. */
function lastBefore(text: string, index: number): string {
  let at = index - 1;
  while (text[at] === ' ') at--;
  return text[at] ?? '\n';
}

function firstAfter(text: string, index: number): number {
  let at = index;
  while (text[at] === ' ') at++;
  return at;
}

function goesOnWithTimes(text: string, after: number): boolean {
  let at = firstAfter(text, after);
  if (text[at] === '(' || text[at] === '[') at = firstAfter(text, at + 1);
  times.lastIndex = at;
  return times.test(text);
}

interface Passages {
  readonly text: string;
  readonly lone: ReadonlyMap<number, number>;
  readonly draftPoints: boolean;
  readonly repeats: boolean;
  readonly repeatsFrom: boolean;
}

function isType(pair: EmphasisPair & { readonly mark: string }, passage: Passages): boolean {
  const { text } = passage;
  const inside = text.slice(pair.open + pair.width, pair.close);
  if (!wordCharacter.test(inside)) return false;
  if (pair.mark === '_') return pair.width <= 3;
  if (pair.width > 3 || pointsOn.test(inside)) return false;

  const after = pair.close + pair.width;
  const before = lastBefore(text, pair.open);
  const startsLine = before === '\n';
  const startsSentence = startsLine || before === '.' || before === '!' || before === '?';
  const following = text[firstAfter(text, after)] ?? '\n';
  const single = pair.width === 1;
  const inList = separator.test(inside);
  // A whole line between double stars that other words point to ("from ** to **") is a marked passage.
  const markedPassage = passage.draftPoints && !single && following === '\n' && /[,;:.]/.test(inside.slice(0, -1));

  if (startsSentence && (inside.endsWith(':') || text[after] === ':')) return true;
  if (markedPassage) return false;
  if (startsLine && !single && !inList && !goesOnWithTimes(text, after)) return true;
  if (startsLine && single && !inList && !digit.test(inside) && inside.endsWith('.')) return true;
  if (following === '\n' && countTold.test(inside)) return true;
  if ((passage.lone.get(pair.width) ?? 0) > 0) return false;

  if (!single) return !(inList && goesOnWithTimes(text, after));
  if (passage.repeatsFrom || goesOnWithTimes(text, after)) return false;
  if (startsLine && following === '\n') return !(inList && stitchLike.test(inside)) && !/;\s?rep/i.test(inside);
  return !passage.repeats && !inList && !digit.test(inside);
}

/**
 * The pairs that are type, in order of opening. `literal` holds the indexes of escaped characters; `draftPoints` is
 * `pointsToDoubleStar` of the whole draft.
 */
export function findEmphasis(text: string, literal: ReadonlySet<number>, draftPoints: boolean): EmphasisPair[] {
  if (!text.includes('*') && !text.includes('_')) return [];
  const { pairs, lone } = pairUp(runsOf(text, literal), literal, text);
  const passage = { text, lone, draftPoints, repeats: repeats.test(text), repeatsFrom: repeatsFrom.test(text) };
  return pairs.filter((pair) => isType(pair, passage)).sort((a, b) => a.open - b.open);
}
