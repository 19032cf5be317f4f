/**
 * Wordings that say a known thing in an order of words of their own: their words are put as the phrases know them before these
 * are read.
 *
 *     k with A to m · p to end with B · k until you are 2 sts from marker · knit the rest · inc in last st
 *     work up 68 sts · knit, taking 2 tog at each end · purl, inc once in centre st
 */
import { entryNamed } from './lexicon/index.ts';
import { Close, Comma, Count, FullStop, isA, type KnitToken, Mark, Open, PlainStitch, Semicolon, Stitch, W, Word } from './tokens.ts';

const lower = (token: KnitToken | undefined): string => token?.image.toLowerCase() ?? '';
const bare = (token: KnitToken | undefined): boolean => isA(token, PlainStitch) && token?.payload?.values === undefined;
const ends = (token: KnitToken | undefined): boolean =>
  token === undefined || isA(token, Comma, FullStop, Semicolon, Close, Mark, W.Turn, W.And);

/** The same word read as another of the trade's words. */
const as = (token: KnitToken | undefined, type: (typeof W)[keyof typeof W]): KnitToken => ({
  ...(token as KnitToken),
  tokenType: type,
  tokenTypeIdx: type.tokenTypeIdx ?? 0,
});

interface Rewording {
  /** Words that stand for those eaten. */
  readonly words: readonly KnitToken[];
  readonly eaten: number;
}

/** "k with A to m": the colour of a run stands before its end. */
function colouredRun(tokens: readonly KnitToken[], at: number): Rewording | null {
  if (!bare(tokens[at]) || !isA(tokens[at + 1], W.With, W.In)) return null;
  let next = at + 2;
  while (next < at + 4 && isA(tokens[next], Word, W.Yarn)) next += 1;
  return isA(tokens[next], W.To, W.Until, W.Across, W.Around) ? { words: [tokens[at] as KnitToken], eaten: next - at } : null;
}

/** "p to end with B": the colour stands behind the end, which looks as if an ending of the row followed. */
function endInColour(tokens: readonly KnitToken[], at: number): Rewording | null {
  if (!isA(tokens[at], W.To) || !isA(tokens[at + 1], W.Ending) || !/^end (?:with|in|on)$/.test(lower(tokens[at + 1]))) return null;
  let next = at + 2;
  while (next < at + 4 && isA(tokens[next], Word, W.Yarn)) next += 1;
  return ends(tokens[next]) ? { words: [tokens[at] as KnitToken, as(tokens[at + 1], W.End)], eaten: next - at } : null;
}

/** "until you are 2 sts from marker", "until you reach the marker". */
function youAre(tokens: readonly KnitToken[], at: number): Rewording | null {
  if (!isA(tokens[at], W.Until) || lower(tokens[at + 1]) !== 'you') return null;
  if (isA(tokens[at + 2], W.Measures) && isA(tokens[at + 3], Count) && isA(tokens[at + 4], W.St) && isA(tokens[at + 5], W.From, W.Before))
    return { words: [as(tokens[at], W.To), ...tokens.slice(at + 3, at + 5), as(tokens[at + 5], W.Before)], eaten: 6 };
  return /^(?:reach|reaches|get to|come to)$/.test(lower(tokens[at + 2])) || isA(tokens[at + 2], W.Measures)
    ? { words: [as(tokens[at], W.To)], eaten: 3 }
    : null;
}

/** "k to beg of rnd": the place whose marker has a word of its own. */
function toBeginning(tokens: readonly KnitToken[], at: number): Rewording | null {
  if (!isA(tokens[at], W.To) || !isA(tokens[at + 1], W.Beg) || !isA(tokens[at + 2], W.Of) || !isA(tokens[at + 3], W.Round)) return null;
  return ends(tokens[at + 4]) ? { words: [tokens[at] as KnitToken, as(tokens[at + 1], W.Bor)], eaten: 4 } : null;
}

/** "knit the rest", "k the remainder of the row", "purl the others". */
function theRest(tokens: readonly KnitToken[], at: number): Rewording | null {
  if (!bare(tokens[at]) || !/^(?:rest|remainder)$/.test(lower(tokens[at + 1]))) return null;
  let next = at + 2;
  if (isA(tokens[next], W.Of) && isA(tokens[next + 1], W.Row, W.Round, W.St)) next += 2;
  return ends(tokens[next]) ? { words: [tokens[at] as KnitToken, as(tokens[at + 1], W.Across)], eaten: next - at } : null;
}

/** "k to last st, inc in last st", "inc 1 in the last stitch": into one stitch, as "inc in next st" is. */
function incInLast(tokens: readonly KnitToken[], at: number): Rewording | null {
  const kfb = entryNamed('kfb');
  // Behind "k to last st": elsewhere the last stitch has been worked already, and only gains one.
  if (!isA(tokens[at - 1], Comma, W.And) || !isA(tokens[at - 2], W.St) || !isA(tokens[at - 3], W.Last)) return null;
  if (!isA(tokens[at], W.Inc) || kfb === undefined) return null;
  let next = at + 1;
  if (isA(tokens[next], Count) && tokens[next]?.payload?.values?.every((value: number | null) => value === 1)) next += 1;
  if (isA(tokens[next], W.St)) next += 1;
  if (!isA(tokens[next], W.In, W.Into) || !isA(tokens[next + 1], W.Last, W.First) || !isA(tokens[next + 2], W.St)) return null;
  const word = tokens[at] as KnitToken;
  return { words: [{ ...word, tokenType: Stitch, tokenTypeIdx: Stitch.tokenTypeIdx ?? 0, payload: { entry: kfb } }], eaten: next + 3 - at };
}

/** "Purl, inc once in centre st": where the increase of a plain row lies. */
function incInMiddle(tokens: readonly KnitToken[], at: number): Rewording | null {
  if (!bare(tokens[at]) || !isA(tokens[at + 1], Comma) || !isA(tokens[at + 2], Stitch)) return null;
  if (
    !/^inc(?:rease|reasing)? (?:once |1 |one |1 st |one st |one stitch )?in(?:to)? (?:the )?(?:centre|center|middle) st/.test(
      lower(tokens[at + 2]),
    )
  )
    return null;
  return { words: [...tokens.slice(at, at + 2), as(tokens[at + 2], W.Inc)], eaten: 3 };
}

/** "taking 2 tog at each end" is a decrease there; "work up 68 sts along" picks them up. */
function oldVerbs(tokens: readonly KnitToken[], at: number): Rewording | null {
  if (
    /^(?:tak(?:e|ing)|working|work)$/.test(lower(tokens[at])) &&
    isA(tokens[at + 1], Count) &&
    tokens[at + 1]?.payload?.values?.every((value: number | null) => value === 2) &&
    /^tog(?:ether)?$/.test(lower(tokens[at + 2])) &&
    isA(tokens[at + 3], W.At) &&
    (isA(tokens[at + 4], W.Beg, W.End) || (isA(tokens[at + 4], W.Each) && isA(tokens[at + 5], W.End)))
  ) {
    const one = { ...(tokens[at + 1] as KnitToken), payload: { ...tokens[at + 1]?.payload, values: [1] } };
    return { words: [as(tokens[at], W.Dec), one, as(tokens[at + 2], W.St)], eaten: 3 };
  }
  if (
    isA(tokens[at], W.Work) &&
    lower(tokens[at]) === 'work' &&
    lower(tokens[at + 1]) === 'up' &&
    isA(tokens[at + 2], Count) &&
    isA(tokens[at + 3], W.St)
  )
    return { words: [as(tokens[at], W.PickUp)], eaten: 2 };
  return null;
}

/** The words with those wordings put in order. */
export function reworded(tokens: readonly KnitToken[]): KnitToken[] {
  const out: KnitToken[] = [];
  for (let at = 0; at < tokens.length; ) {
    const found =
      colouredRun(tokens, at) ??
      endInColour(tokens, at) ??
      youAre(tokens, at) ??
      theRest(tokens, at) ??
      toBeginning(tokens, at) ??
      incInLast(tokens, at) ??
      incInMiddle(tokens, at) ??
      oldVerbs(tokens, at);
    if (found === null) out.push(tokens[at] as KnitToken);
    else out.push(...found.words);
    at += found === null ? 1 : Math.max(1, found.eaten);
  }
  return out;
}
