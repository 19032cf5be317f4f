/**
 * Wordings that say a known thing in an order of words of their own: their words are put as the phrases know them before these
 * are read.
 *
 *     k with A to m · p to end with B · k until you are 2 sts from marker · knit the rest · inc in last st
 *     work up 68 sts · knit, taking 2 tog at each end · purl, inc once in centre st
 */
import { entryNamed } from './lexicon/index.ts';
import {
  Close,
  Colon,
  Comma,
  Count,
  Dash,
  endOf,
  Fabric,
  FullStop,
  isA,
  type KnitToken,
  Mark,
  Name,
  Open,
  PlainStitch,
  Semicolon,
  Slash,
  Stitch,
  W,
  Word,
} from './tokens.ts';
import type { Span } from './tree.ts';

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
  // "until you are down to 14 sts": a number, and no place of the row
  if (isA(tokens[at + 2], W.Measures) && (/^down$/.test(lower(tokens[at + 3])) || isA(tokens[at + 3], W.At))) return null;
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

/** "k to last st, working the last stitch through the back loop": what becomes of the stitch that was left. */
function lastThroughBack(tokens: readonly KnitToken[], at: number): Rewording | null {
  const twisted = entryNamed('k tbl');
  if (!/^(?:work|knit)ing$/.test(lower(tokens[at])) || twisted === undefined || !isA(tokens[at - 1], Comma) || !isA(tokens[at - 2], W.St))
    return null;
  if (!isA(tokens[at - 3], W.Last) || !/^(?:the )?last$/.test(lower(tokens[at + 1])) || !isA(tokens[at + 2], W.St)) return null;
  const words = tokens
    .slice(at + 3, at + 6)
    .map(lower)
    .join(' ');
  const eaten = /^tbl\b/.test(words) ? 4 : /^through (?:the )?back loop/.test(words) ? 6 : 0;
  const word = tokens[at] as KnitToken;
  return eaten === 0
    ? null
    : { words: [{ ...word, tokenType: Stitch, tokenTypeIdx: Stitch.tokenTypeIdx ?? 0, payload: { entry: twisted } }], eaten };
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

/** "k the next 2 sts together": a decrease told by what it takes. */
function takenTogether(tokens: readonly KnitToken[], at: number): Rewording | null {
  const entry = entryNamed(/^p/.test(lower(tokens[at])) ? 'pNtog' : 'kNtog');
  const number = tokens[at + 2];
  if (!bare(tokens[at]) || !isA(tokens[at + 1], W.Next) || !isA(number, Count) || !isA(tokens[at + 3], W.St) || entry === undefined)
    return null;
  if (!/^tog(?:ether)?$/.test(lower(tokens[at + 4]))) return null;
  const word = number as KnitToken;
  const payload = { ...word.payload, entry, nOffset: word.startOffset, nLength: word.image.length };
  return { words: [{ ...(tokens[at] as KnitToken), tokenType: Stitch, tokenTypeIdx: Stitch.tokenTypeIdx ?? 0, payload }], eaten: 5 };
}

/** "Cast off 3 sts, 1 st on needle, k6": the loop that is left, which no one counts; "knit round to 1 st before m": the way it goes. */
function saidBeside(tokens: readonly KnitToken[], at: number): Rewording | null {
  if ((bare(tokens[at]) || isA(tokens[at], Fabric, W.Rib, W.Patt, W.Work)) && isA(tokens[at + 1], W.Round) && isA(tokens[at + 2], W.To))
    return { words: [tokens[at] as KnitToken], eaten: 2 };
  if (!isA(tokens[at], Comma) || !isA(tokens[at + 1], Count) || !isA(tokens[at + 2], W.St) || !isA(tokens[at + 3], W.On)) return null;
  const one = tokens[at + 1]?.payload?.values?.every((value: number | null) => value === 1) === true;
  const needle = isA(tokens[at + 4], W.Needle) ? at + 5 : 0;
  const bindsOff = [at - 3, at - 4].some((before) => isA(tokens[before], W.BindOff));
  return one && needle > 0 && bindsOff && isA(tokens[needle], Comma) ? { words: [], eaten: needle - at } : null;
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

/** "Finish off with 2 more rows in rib", "then 8 rnds of k2, p2 rib", "change to k1, p1 rib for 8 rnds": rows to be worked. */
function rowsToWork(tokens: readonly KnitToken[], at: number): Rewording | null {
  const token = tokens[at];
  if (isA(token, W.Change) && isA(tokens[at + 1], W.To) && isA(tokens[at + 2], Fabric, W.Rib)) {
    const rows = isA(tokens[at + 3], W.For) && isA(tokens[at + 4], Count) && isA(tokens[at + 5], W.Row, W.Round, W.Cm, W.Inch);
    return rows ? { words: [as(token, W.Work), as(tokens[at + 1], W.In)], eaten: 2 } : null;
  }
  const counted = (from: number): boolean =>
    isA(tokens[from], Count) && isA(tokens[isA(tokens[from + 1], W.More) ? from + 2 : from + 1], W.Row, W.Round, W.Ridge);
  if ((isA(token, W.Complete, W.Ending) || /^(?:follow|finish|end|top)$/.test(lower(token))) && !/ing\b/.test(lower(token))) {
    const number = isA(tokens[at + 1], W.With) ? at + 2 : at + 1;
    if (!isA(tokens[number - 1], W.With) && !/ with$/.test(lower(token))) return null;
    return (at === 0 || isA(tokens[at - 1], FullStop, Semicolon)) && counted(number)
      ? { words: [as(token, W.Work)], eaten: number - at }
      : null;
  }
  if (isA(token, W.Then) && isA(tokens[at - 1], Comma) && counted(at + 1) && !isA(tokens[at + 2], W.More)) {
    const behind = tokens[at + 3];
    return isA(behind, W.Of, W.In) && isA(tokens[at + 4], Fabric, W.Rib, W.Patt) ? { words: [as(token, W.Work)], eaten: 1 } : null;
  }
  return null;
}

/** "With the backward loop cast on add 10 sts": the way of casting on before the verb. */
function castOnAdds(tokens: readonly KnitToken[], at: number): Rewording | null {
  if (!isA(tokens[at], W.With)) return null;
  let next = at + 1;
  while (next < at + 6 && isA(tokens[next], Word, W.St)) next += 1;
  if (!isA(tokens[next], W.CastOn)) return null;
  const verb = isA(tokens[next + 1], Comma) ? next + 2 : next + 1;
  return /^(?:add|make)$/.test(lower(tokens[verb])) && isA(tokens[verb + 1], Count) && isA(tokens[verb + 2], W.St)
    ? { words: [as(tokens[next], W.CastOn)], eaten: verb + 1 - at }
    : null;
}

/**
 * "Pick up and k 22 up right side, k 30 from back holder, 22 down left side": behind held stitches that are knitted, the list of those
 * picked up goes on.
 */
function picksOn(tokens: readonly KnitToken[], at: number): Rewording | null {
  if (!isA(tokens[at], Comma, W.And) || !isA(tokens[at + 1], Count)) return null;
  const place = isA(tokens[at + 2], W.St) ? at + 3 : at + 2;
  if (!/^(?:down|up|along|around|round)$/.test(lower(tokens[place])) && !isA(tokens[place], W.Around)) return null;
  let verb = at - 1;
  while (verb > 0 && !isA(tokens[verb], Comma, W.And, FullStop, Semicolon)) verb -= 1;
  const first = tokens[verb + 1];
  if (!isA(first, PlainStitch) || !tokens.slice(verb + 1, at).some((token) => isA(token, W.Holder, W.From, W.Rem))) return null;
  for (let before = verb; before >= 0 && !isA(tokens[before], FullStop); before -= 1)
    if (isA(tokens[before], W.PickUp)) return { words: [tokens[at] as KnitToken, as(tokens[at], W.PickUp)], eaten: 1 };
  return null;
}

/** "joining in colours as required" behind an order: nothing to be worked. */
function coloursAsRequired(tokens: readonly KnitToken[], at: number): Rewording | null {
  if (!isA(tokens[at], W.Join) || !isA(tokens[at - 1], Comma, W.And)) return null;
  let next = at + 1;
  while (next < at + 9 && !ends(tokens[next])) next += 1;
  const words = tokens
    .slice(at + 1, next)
    .map(lower)
    .join(' ');
  return /^(?:in )?(?:new |other |the )?(?:colou?rs|yarns|shades|and breaking|balls)\b.*\b(?:required|needed|necessary|indicated|shown)$/.test(
    words,
  )
    ? { words: [], eaten: next - at }
    : null;
}

/** "Place chart as follows: k4, …", "Set chart patt: k2, …": the row behind the colon is all there is to work. */
function chartPlaced(tokens: readonly KnitToken[], at: number): Rewording | null {
  if (at > 0 && !isA(tokens[at - 1], FullStop, Colon)) return null;
  if (!isA(tokens[at], W.Place, W.Set) && !/^(?:set|position|establish)$/.test(lower(tokens[at]))) return null;
  let next = at + 1;
  while (next < at + 7 && isA(tokens[next], Word, Name, W.Patt, W.As, W.Foll, W.And)) next += 1;
  // "Set chart:" is a heading.
  if (next < at + 3 || !isA(tokens[next], Colon) || !tokens.slice(at, next).some((token) => /^charts?$/.test(lower(token)))) return null;
  return isA(tokens[next + 1], Stitch, PlainStitch, Mark, Open, W.Work) ? { words: [], eaten: next + 1 - at } : null;
}

/** "Reading odd-numbered rows from right to left, work Rows 1 to 20 of chart": how a chart is read, before the order. */
function chartRead(tokens: readonly KnitToken[], at: number): Rewording | null {
  if (lower(tokens[at]) !== 'reading') return null;
  for (let next = at + 1; next < at + 24; next += 1) {
    if (tokens[next] === undefined || isA(tokens[next], FullStop)) return null;
    if (isA(tokens[next], Comma) && isA(tokens[next + 1], W.Work, W.Beg, W.Foll, W.Cont, W.Rep)) return { words: [], eaten: next + 1 - at };
  }
  return null;
}

/** "Dec 1 st (k2tog) at each end of next row": how it is done, in brackets between the number and the place. */
function methodBeside(tokens: readonly KnitToken[], at: number): Rewording | null {
  if (!isA(tokens[at], Open) || !isA(tokens[at - 1], W.St, W.End, W.Edge)) return null;
  let close = at + 1;
  while (close < at + 8 && isA(tokens[close], Stitch, Comma, W.And, W.Or, Slash, Dash)) close += 1;
  if (close === at + 1 || !isA(tokens[close], Close) || !isA(tokens[close + 1], W.At, W.On, W.Each, W.Of, W.Every)) return null;
  const told = tokens.slice(Math.max(0, at - 8), at).some((token) => isA(token, W.Inc, W.Dec));
  return told ? { words: [], eaten: close + 1 - at } : null;
}

const forms: readonly ((tokens: readonly KnitToken[], at: number) => Rewording | null)[] = [
  colouredRun,
  endInColour,
  youAre,
  toBeginning,
  theRest,
  incInLast,
  lastThroughBack,
  incInMiddle,
  takenTogether,
  saidBeside,
  oldVerbs,
  rowsToWork,
  castOnAdds,
  picksOn,
  coloursAsRequired,
  chartPlaced,
  chartRead,
  methodBeside,
];

/** The words with those wordings put in order, and the stretches of the text that were put so: nothing in them is missing. */
export function reworded(tokens: readonly KnitToken[]): { readonly tokens: KnitToken[]; readonly said: readonly Span[] } {
  const out: KnitToken[] = [];
  const said: Span[] = [];
  for (let at = 0; at < tokens.length; ) {
    const found = forms.map((form) => form(tokens, at)).find((each) => each !== null) ?? null;
    const first = tokens[at];
    const last = tokens[at + (found?.eaten ?? 1) - 1];
    if (found === null || first === undefined || last === undefined) {
      out.push(tokens[at] as KnitToken);
      at += 1;
      continue;
    }
    out.push(...found.words);
    said.push({ start: first.startOffset, end: endOf(last) });
    at += found.eaten;
  }
  return { tokens: out, said };
}
