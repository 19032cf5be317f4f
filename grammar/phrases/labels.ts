/**
 * Labels of rows and rounds, read at the head of a sentence.
 *
 *     Row 1 (RS): · 1st row (RS): · Rows 5–8: · Rnds 1 and 2. · Next row (WS): · Dec Rnd: · Row 2 and all WS rows: · Short row 3 (RS) · Inc Row 10 (RS):
 */

import type { Sized } from '../count.ts';
import {
  Colon,
  Comma,
  Count as CountToken,
  Dash,
  endOf,
  Fabric,
  FullStop,
  isA,
  type KnitToken,
  Mark,
  Name,
  Open,
  Ordinal,
  Other,
  PlainStitch,
  rowWords,
  Stitch,
  W,
  Word,
} from '../tokens.ts';
import type { Label, Side } from '../tree.ts';
import { behindColour, opensWork } from './label-ends.ts';

export interface LabelMatch {
  readonly label: Label;
  /** Index of the first token behind the label. */
  readonly next: number;
}

/** Row words that by themselves mean a short row. */
const shortRow = /^(srs?|short-rows?)$/i;
/** Most rows one label may name; a longer range is read up to here. */
const mostRows = 2000;
/** A higher number is no row's: rows are counted one by one where some are missing. */
const highestRow = 99_999;

/** Words that may name a row before the row word: "Inc", "Set-up", "Moss st", "Buttonhole". */
function namesRow(token: KnitToken | undefined): boolean {
  return (
    isA(
      token,
      Word,
      W.Inc,
      W.Dec,
      Fabric,
      Name,
      W.Ridge,
      W.Rib,
      W.Patt,
      W.Centre,
      W.Shaping,
      W.Turn,
      W.CastOn,
      W.BindOff,
      W.Join,
      W.Gap,
      W.Straight,
      W.St,
      W.Edge,
      W.Foll,
      Ordinal,
      W.Cont,
      W.Marker,
      W.Twist,
      W.PickUp,
      W.Work,
    ) ||
    (isA(token, Stitch) && !isA(token, PlainStitch))
  );
}

/** Which rows "and all WS rows", "and every alt row" mean. */
function rowsMeant(words: string): NonNullable<Label['andAll']> {
  const text = words.toLowerCase();
  return /\bws|wrong/.test(text)
    ? 'WS'
    : /\brs|right/.test(text)
      ? 'RS'
      : /even/.test(text)
        ? 'even'
        : /odd/.test(text)
          ? 'odd'
          : 'alternate';
}

/** "All WS rows:", "All even-numbered rounds:": a label of rows that no number names. */
function everyRow(tokens: readonly KnitToken[], index: number, base: number, text: string): LabelMatch | null {
  let at = index + 1;
  while (at < index + 5 && isA(tokens[at], W.Rs, W.Ws, W.Foll, W.Other, W.Straight, Word)) at += 1;
  const word = tokens[at];
  if (at === index + 1 || word === undefined || !isA(word, ...rowWords) || !isA(tokens[at + 1], Colon)) return null;
  const first = tokens[index] as KnitToken;
  const sided = tokens.slice(index, at).find((token) => isA(token, W.Rs, W.Ws));
  const meant = rowsMeant(text.slice(first.startOffset, word.startOffset));
  if (sided === undefined && meant === 'alternate') return null;
  return {
    label: {
      type: 'label',
      unit: isA(word, W.Round) ? 'round' : 'row',
      numbers: [],
      numberSpan: null,
      lastBySize: null,
      andAll: sided ? null : meant,
      next: null,
      name: 'every',
      side: sided === undefined ? null : isA(sided, W.Rs) ? 'RS' : 'WS',
      sideSpan: sided === undefined ? null : { start: base + sided.startOffset, end: base + endOf(sided) },
      span: { start: base + first.startOffset, end: base + endOf(word) },
    },
    next: at + 2,
  };
}

/**
 * Reads a label that begins at token `index`, or null. `emphasised` says that the words stand in bold or italics, which
 * makes a name a label even where no number and no colon says so.
 */
export function labelAt(tokens: readonly KnitToken[], index: number, base: number, text: string, emphasised: boolean): LabelMatch | null {
  const first = tokens[index];
  if (first === undefined) return null;
  let at = index;
  let unit: 'row' | 'round' = 'row';
  let named: string | null = null;
  let next: Label['next'] = null;
  const numbers: number[] = [];
  let lastBySize: Sized | null = null;
  let numberStart = -1;
  let numberEnd = -1;
  let strong = false;

  const take = (token: KnitToken, range: boolean): void => {
    const value = token.payload?.values?.[0];
    if (typeof value !== 'number' || !Number.isInteger(value) || value > highestRow) return;
    if (numberStart < 0) numberStart = token.startOffset;
    numberEnd = endOf(token);
    if (range) {
      const from = numbers.at(-1) ?? value;
      for (let row = from + 1; row <= Math.min(value, from + mostRows); row += 1) numbers.push(row);
      if (value <= from) numbers.push(value);
    } else numbers.push(value);
    if ((token.payload?.values?.length ?? 1) > 1) lastBySize = token.payload?.values ?? null;
  };
  /** "1, 3 and 5", "5–8", "1st to 4th" from `at` on. */
  const list = (): void => {
    while (at < tokens.length) {
      const token = tokens[at];
      if (token === undefined) return;
      if (isA(token, CountToken, Ordinal)) {
        take(token, isA(tokens[at - 1], Dash, W.To));
        at += 1;
      } else if (isA(token, Dash, W.To, Comma, W.And) && numbers.length > 0 && isA(tokens[at + 1], CountToken, Ordinal)) at += 1;
      else if (isA(token, Comma) && numbers.length > 0 && isA(tokens[at + 1], W.And) && isA(tokens[at + 2], CountToken, Ordinal)) at += 2;
      else return;
    }
  };

  let nextSide: KnitToken | null = null;
  // "RS Row 1:"
  if (isA(first, W.Rs, W.Ws) && isA(tokens[at + 1], ...rowWords) && isA(tokens[at + 2], CountToken)) {
    nextSide = first;
    at += 1;
  }
  // "R1:", "R1 (RS):"
  const short =
    isA(first, Word) &&
    /^r$/i.test(first.image) &&
    isA(tokens[at + 1], CountToken) &&
    tokens[at + 1]?.startOffset === endOf(first) &&
    (isA(tokens[at + 2], Colon) || tokens[at + 2]?.payload?.holds === 'side');
  // "All even-numbered rounds:", "All WS rows:"
  if (isA(first, W.All, W.Every)) {
    const rest = everyRow(tokens, index, base, text);
    if (rest !== null) return rest;
  }
  // "On the next row, …"
  if (isA(first, W.On) && isA(tokens[at + 1], W.Next) && isA(tokens[at + 2], ...rowWords, W.Rs, W.Ws)) {
    const rest = labelAt(tokens, index + 1, base, text, true);
    if (rest === null) return null;
    let next = rest.next;
    if (isA(tokens[next], Comma)) next += 1;
    return { label: { ...rest.label, span: { start: base + first.startOffset, end: rest.label.span.end } }, next };
  }
  // "On round 1 increase 2 sts": the row by its number
  if (
    isA(first, W.On) &&
    isA(tokens[at + 1], ...rowWords) &&
    isA(tokens[at + 2], CountToken) &&
    isA(tokens[at + 3], Comma, Colon, W.Inc, W.Dec, W.CastOn, W.BindOff, W.Work, Stitch)
  ) {
    const rest = labelAt(tokens, index + 1, base, text, true);
    if (rest !== null)
      return {
        label: { ...rest.label, span: { start: base + first.startOffset, end: rest.label.span.end } },
        next: isA(tokens[rest.next], Comma) ? rest.next + 1 : rest.next,
      };
  }
  // "Every RS row: …"
  if (
    isA(first, W.Every) &&
    ((isA(tokens[at + 1], W.Rs, W.Ws) && isA(tokens[at + 2], ...rowWords) && isA(tokens[at + 3], Colon)) ||
      (isA(tokens[at + 1], ...rowWords) && isA(tokens[at + 2], Colon)))
  ) {
    const sided = isA(tokens[at + 1], W.Rs, W.Ws);
    const word = tokens[at + (sided ? 2 : 1)] as KnitToken;
    const side: Side | null = !sided ? null : isA(tokens[at + 1], W.Rs) ? 'RS' : 'WS';
    const token = tokens[at + 1] as KnitToken;
    return {
      label: {
        type: 'label',
        unit: isA(word, W.Round) ? 'round' : 'row',
        numbers: [],
        lastBySize: null,
        andAll: null,
        next: null,
        name: 'every',
        side,
        sideSpan: side === null ? null : { start: base + token.startOffset, end: base + endOf(token) },
        numberSpan: null,
        span: { start: base + first.startOffset, end: base + endOf(word) },
      },
      next: at + (sided ? 4 : 3),
    };
  }
  if (isA(first, W.Next, W.Foll) && !isA(tokens[at + 1], W.Then)) {
    at += 1;
    let count: readonly (number | null)[] = [1];
    let span = { start: base + first.startOffset, end: base + endOf(first) };
    if (isA(tokens[at], CountToken)) {
      const token = tokens[at] as KnitToken;
      count = token.payload?.values ?? [1];
      span = { start: base + token.startOffset, end: base + endOf(token) };
      at += 1;
    }
    if (isA(tokens[at], W.Rs, W.Ws)) {
      nextSide = tokens[at] as KnitToken;
      at += 1;
    }
    let words = at;
    while (namesRow(tokens[words]) && words < at + 3) words += 1;
    if (words > at && isA(tokens[words], ...rowWords)) {
      named = text.slice((tokens[at] as KnitToken).startOffset, endOf(tokens[words - 1] as KnitToken)).toLowerCase();
      at = words;
    }
    // "Next: purl": the row word left out
    const bare = isA(tokens[at], Colon) && at === index + 1;
    if (!bare && !isA(tokens[at], ...rowWords)) return null;
    unit = isA(tokens[at], W.Round) ? 'round' : 'row';
    next = { type: 'count', values: count, span };
    if (!bare) at += 1;
  } else if (isA(first, Ordinal) && isA(tokens[at + 1], ...rowWords, W.And, Comma, Dash, W.To)) {
    list();
    // "1st and every alt row:": the row word stands behind both
    const both = isA(tokens[at], W.And) && isA(tokens[at + 1], W.All, W.Every, W.Foll, W.Alt);
    if (!both) {
      if (!isA(tokens[at], ...rowWords)) return null;
      unit = isA(tokens[at], W.Round) ? 'round' : 'row';
      at += 1;
    }
  } else if (short) {
    at += 1;
    list();
    strong = true;
  } else {
    // "Work chart Rows 1–10" orders rows and labels none.
    if (isA(first, W.Work) && /^charts?$/i.test(tokens[at + 1]?.image ?? '')) return null;
    const start = at;
    // "Last row:", "Final row (WS):"
    if (
      isA(tokens[at], W.Last) &&
      isA(tokens[at + 1], ...rowWords) &&
      (isA(tokens[at + 2], Colon) || tokens[at + 2]?.payload?.holds === 'side')
    )
      at += 1;
    while (at < start + 4 && namesRow(tokens[at]) && !isA(tokens[at], ...rowWords)) at += 1;
    if (!isA(tokens[at], ...rowWords)) return null;
    if (at > start)
      named = text
        .slice(first.startOffset, endOf(tokens[at - 1] as KnitToken))
        .toLowerCase()
        .replace(/\s+/g, ' ');
    else if (shortRow.test(tokens[at]?.image ?? '')) named = 'short';
    unit = isA(tokens[at], W.Round) ? 'round' : 'row';
    // "Row" with neither name nor number is no label.
    at += 1;
    list();
    if (
      numbers.length === 0 &&
      named === null &&
      !(at === start + 1 && isA(tokens[at], Colon) && isA(tokens[at + 1], Stitch, W.Work, Open, Mark, W.Rib, W.Patt))
    )
      return null;
    if (numbers.length > 0) strong = true;
  }

  let andAll: Label['andAll'] = null;
  if (
    isA(tokens[at], W.And) &&
    (isA(tokens[at + 1], W.All, W.Every) || (isA(tokens[at + 1], W.Foll, W.Alt) && !isA(tokens[at + 1], W.And)))
  ) {
    let look = at + 1;
    const from = tokens[look] as KnitToken;
    while (look < at + 9 && isA(tokens[look], W.All, W.Every, W.Foll, W.Alt, W.Other, W.Rs, W.Ws, W.Straight, Word, ...rowWords, W.These))
      look += 1;
    const words = text.slice(from.startOffset, endOf(tokens[look - 1] as KnitToken)).toLowerCase();
    if (/row|rnd|round/.test(words)) {
      andAll = rowsMeant(words);
      at = look;
      strong = true;
    }
  }

  // "Row 2 (and all WS rows):"
  if (isA(tokens[at], Open) && isA(tokens[at + 1], W.And) && isA(tokens[at + 2], W.All, W.Every, W.Foll) && numbers.length > 0) {
    const close = tokens[at]?.payload?.close ?? -1;
    if (close > at) {
      andAll = rowsMeant(text.slice((tokens[at + 1] as KnitToken).startOffset, endOf(tokens[close - 1] as KnitToken)));
      at = close + 1;
      strong = true;
    }
  }

  let side: Side | null = nextSide === null ? null : isA(nextSide, W.Rs) ? 'RS' : 'WS';
  let sideSpan: Label['sideSpan'] = nextSide === null ? null : { start: base + nextSide.startOffset, end: base + endOf(nextSide) };
  for (let tries = 0; tries < 2; tries += 1) {
    const token = tokens[at];
    if (isA(token, Open)) {
      const close = token?.payload?.close ?? -1;
      const inside = tokens.slice(at + 1, close);
      if (
        close < 0 ||
        inside.length > 7 ||
        inside.some((each) => isA(each, PlainStitch)) ||
        token?.payload?.holds === 'stated' ||
        token?.payload?.holds === 'group'
      )
        break;
      const which = inside.find((each) => isA(each, W.Rs, W.Ws));
      if (which) {
        side = isA(which, W.Rs) ? 'RS' : 'WS';
        sideSpan = { start: base + which.startOffset, end: base + endOf(which) };
      }
      strong = true;
      at = close + 1;
    } else if (isA(token, W.Rs, W.Ws) && isA(tokens[at + 1], Colon, Dash, FullStop, Comma)) {
      side = isA(token, W.Rs) ? 'RS' : 'WS';
      sideSpan = { start: base + (token as KnitToken).startOffset, end: base + endOf(token as KnitToken) };
      at += 1;
    } else if (isA(token, Colon, Dash, Comma) && isA(tokens[at + 1], W.Rs, W.Ws) && isA(tokens[at + 2], Dash, Colon, FullStop)) {
      const which = tokens[at + 1] as KnitToken;
      side = isA(which, W.Rs) ? 'RS' : 'WS';
      sideSpan = { start: base + which.startOffset, end: base + endOf(which) };
      at += 2;
    } else if (isA(token, Colon, FullStop) && isA(tokens[at + 1], Open) && tokens[at + 1]?.payload?.holds === 'side') at += 1;
    else break;
  }
  const labelEnd = endOf(tokens[at - 1] as KnitToken);
  if (numbers.length > 0) at = behindColour(tokens, at);
  // "Work buttonhole row." orders the row.
  if (isA(first, W.Work) && numbers.length === 0 && !isA(tokens[at], Colon)) return null;
  let ended = false;
  while (isA(tokens[at], Colon, FullStop, Dash)) {
    ended = true;
    at += 1;
  }
  if (isA(tokens[at], Other) && /[|>]/.test(tokens[at]?.image ?? '')) at += 1;
  // Without a colon or bold type a sentence such as "Row 5 is the last." is no label.
  if (!ended && !emphasised && !(strong && at < tokens.length && opensWork(tokens, at)) && !(next !== null && opensWork(tokens, at)))
    return null;
  if (next === null && numbers.length === 0 && !ended && !emphasised) return null;
  return {
    label: {
      type: 'label',
      unit,
      numbers,
      lastBySize,
      andAll,
      next,
      name: named,
      side,
      sideSpan,
      numberSpan: numberStart < 0 ? null : { start: base + numberStart, end: base + numberEnd },
      span: { start: base + first.startOffset, end: base + labelEnd },
    },
    next: at,
  };
}
