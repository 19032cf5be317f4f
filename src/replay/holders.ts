/** Stitches put aside: who they are for, how many, in one size. */
export interface Held {
  readonly name: string;
  /** Title of the piece they were left in. */
  readonly piece: string;
  /** The rest of a divided row waits for its second side. */
  readonly rest: boolean;
  n: number;
  /** Taken up again. */
  used: boolean;
  /** They wait on their own needle, put on no holder: only their number brings them back. */
  idle?: boolean;
  /** False where its number is in doubt. */
  sure?: boolean;
}

const small = /^(the|a|an|of|for|from|on|sts?|stitch(es)?|holder|holders|held|one|each|first|second|both)$/;

function wordsOf(text: string): string[] {
  return text
    .toLowerCase()
    .split(/[^a-z0-9]+/)
    .filter((word) => word !== '' && !small.test(word))
    .map((word) => word.replace(/s$/, ''));
}

/** The held set that a name means: by its words first, then by its number; newest first among equals. */
export function heldSet(held: readonly Held[], name: string | null, count: number | null): Held | null {
  const waiting = held.filter((set) => !set.used && set.n > 0 && (set.idle !== true || set.n === count));
  const wanted = name === null ? [] : wordsOf(name);
  let best: Held | null = null;
  let bestScore = 0;
  for (const set of waiting) {
    const have = [...wordsOf(set.name), ...wordsOf(set.piece)];
    const common = wanted.filter((word) => have.includes(word)).length;
    const score = common * 4 + (count !== null && set.n === count ? 3 : 0) + (wanted.length > 0 && common === wanted.length ? 2 : 0);
    if (score >= bestScore && score > 0) {
      best = set;
      bestScore = score;
    }
  }
  return best ?? (wanted.length === 0 || waiting.length === 1 ? (waiting.at(-1) ?? null) : null);
}

/** The set of just so many stitches that the words name in full; one that waits before one that has been taken up. */
export function namedSet(held: readonly Held[], words: string, n: number): Held | null {
  const wanted = wordsOf(words);
  const names = (set: Held): boolean => {
    const have = [...wordsOf(set.name), ...wordsOf(set.piece)];
    return wanted.length > 0 && wanted.every((word) => have.includes(word));
  };
  const named = held.filter((set) => set.n === n && set.sure !== false && names(set));
  return named.find((set) => !set.used) ?? named.at(-1) ?? null;
}
