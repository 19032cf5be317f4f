/**
 * Labels of rows and rounds, read at the head of a sentence.
 *
 *     Row 1 (RS): · 1st row (RS): · Rows 5–8: · Rnds 1 and 2. · Next row (WS): · Dec Rnd: · Row 2 and all WS rows: · Short row 3 (RS) · Inc Row 10 (RS):
 */

import {
  Close,
  Colon,
  Comma,
  Count as CountToken,
  Dash,
  endOf,
  FullStop,
  isA,
  type KnitToken,
  Mark,
  Open,
  Ordinal,
  Other,
  rowWords,
  Stitch,
  W,
  Word,
} from '../tokens.ts';
import type { Label } from '../tree.ts';
import { opensWork } from './label-ends.ts';
import { type LabelNumbers, labelNumbers, rowsBehind } from './label-numbers.ts';
import { type Behind, behindLabel } from './label-tails.ts';
import { everyLabel, namesRow } from './label-words.ts';

export interface LabelMatch {
  readonly label: Label;
  /** Index of the first token behind the label. */
  readonly next: number;
  /** "Next row (3rd size only):": the sizes that work the row. */
  readonly sizes?: KnitToken;
  /** "Row 7 (WS; 2 sts dec'd):": the words of the count, as indexes of tokens. */
  readonly told?: { readonly from: number; readonly to: number };
}

/** Row words that by themselves mean a short row. */
const shortRow = /^(srs?|short-rows?)$/i;

/** The row that a label names, before its side and whatever else stands behind it. */
interface Head {
  /** Index of the first token behind it. */
  readonly at: number;
  readonly unit: 'row' | 'round';
  readonly name: string | null;
  readonly next: Label['next'];
  readonly numbers: LabelNumbers | null;
  readonly side: KnitToken | null;
  /** It can be nothing but a label. */
  readonly strong: boolean;
}

const unitOf = (token: KnitToken | undefined): Head['unit'] => (isA(token, W.Round) ? 'round' : 'row');

/** "On the next row, …", "In next row, …", "On round 1 increase 2 sts": the label behind a word of place. */
function placed(tokens: readonly KnitToken[], index: number, base: number, text: string): LabelMatch | null | undefined {
  const first = tokens[index] as KnitToken;
  if (!isA(first, W.On, W.In)) return undefined;
  const next = isA(tokens[index + 1], W.Next) && isA(tokens[index + 2], ...rowWords, W.Rs, W.Ws);
  const numbered =
    isA(first, W.On) &&
    isA(tokens[index + 1], ...rowWords) &&
    isA(tokens[index + 2], CountToken) &&
    isA(tokens[index + 3], Comma, Colon, W.Inc, W.Dec, W.CastOn, W.BindOff, W.Work, Stitch);
  if (!next && !numbered) return undefined;
  const rest = labelAt(tokens, index + 1, base, text, true);
  if (rest === null) return next ? null : undefined;
  return {
    ...rest,
    label: { ...rest.label, span: { start: base + first.startOffset, end: rest.label.span.end } },
    next: isA(tokens[rest.next], Comma) ? rest.next + 1 : rest.next,
  };
}

/** "Next row", "Next 3 rows", "Foll RS row", "Next dec rnd", "Next (inc) row", "Next:". */
function nextRow(tokens: readonly KnitToken[], index: number, base: number, text: string): Head | null {
  const first = tokens[index] as KnitToken;
  let at = index + 1;
  let counted = first;
  if (isA(tokens[at], CountToken)) {
    counted = tokens[at] as KnitToken;
    at += 1;
  }
  let side: KnitToken | null = null;
  if (isA(tokens[at], W.Rs, W.Ws)) {
    side = tokens[at] as KnitToken;
    at += 1;
  }
  let name: string | null = null;
  // "Next (dec) rnd", "Next (WS) row"
  const close = isA(tokens[at], Open) ? (tokens[at]?.payload?.close ?? -1) : -1;
  if (close > at && close < at + 5 && isA(tokens[close + 1], ...rowWords)) {
    const inside = tokens.slice(at + 1, close);
    side = inside.find((token) => isA(token, W.Rs, W.Ws)) ?? side;
    if (side === null) name = nameOf(text, inside[0] as KnitToken, inside.at(-1) as KnitToken);
    at = close + 1;
  }
  let words = at;
  while (namesRow(tokens[words]) && words < at + 3) words += 1;
  if (words > at && isA(tokens[words], ...rowWords)) {
    name = nameOf(text, tokens[at] as KnitToken, tokens[words - 1] as KnitToken);
    at = words;
  }
  // "Next: purl": the row word left out
  const bare = isA(tokens[at], Colon) && at === index + 1;
  if (!bare && !isA(tokens[at], ...rowWords)) return null;
  const next: Label['next'] = {
    type: 'count',
    values: counted === first ? [1] : (counted.payload?.values ?? [1]),
    span: { start: base + counted.startOffset, end: base + endOf(counted) },
  };
  return { at: bare ? at : at + 1, unit: unitOf(tokens[at]), name, next, numbers: null, side, strong: false };
}

const nameOf = (text: string, first: KnitToken, last: KnitToken): string =>
  text
    .slice(first.startOffset, endOf(last))
    .toLowerCase()
    .replace(/\s+/g, ' ')
    .replace(/^set up$/, 'set-up');

/** "1st row", "3rd and 5th rows", "1st and every alt row". */
function ordinalRow(tokens: readonly KnitToken[], index: number): Head | null {
  const numbers = labelNumbers(tokens, index);
  rowsBehind(tokens, numbers);
  let { at } = numbers;
  let unit: Head['unit'] = 'row';
  // "1st and every alt row:": the row word stands behind both
  const both = isA(tokens[at], W.And) && isA(tokens[at + 1], W.All, W.Every, W.Foll, W.Alt);
  if (!both) {
    if (!isA(tokens[at], ...rowWords)) return null;
    unit = unitOf(tokens[at]);
    at += 1;
  }
  return { at, unit, name: null, next: null, numbers, side: null, strong: false };
}

/** "R1:", "r 1:", "R1 (RS):". */
function shortLabel(tokens: readonly KnitToken[], index: number): boolean {
  const first = tokens[index] as KnitToken;
  if (!isA(first, Word) || !/^r$/i.test(first.image) || !isA(tokens[index + 1], CountToken)) return false;
  const close = tokens[index + 1]?.startOffset === endOf(first);
  return isA(tokens[index + 2], Colon) || (close && tokens[index + 2]?.payload?.holds === 'side');
}

/** "Row 5", "Dec row", "Set-up rnd", "Moss st row 3", "Last row"; a row word alone only before the words of its row. */
function namedRow(tokens: readonly KnitToken[], index: number, text: string): Head | null {
  const first = tokens[index] as KnitToken;
  // "Work chart Rows 1–10" orders rows and labels none.
  if (isA(first, W.Work) && /^charts?$/i.test(tokens[index + 1]?.image ?? '')) return null;
  let at = index;
  // "Last row:", "Final row (WS):"
  if (isA(first, W.Last) && isA(tokens[at + 1], ...rowWords) && (isA(tokens[at + 2], Colon) || tokens[at + 2]?.payload?.holds === 'side'))
    at += 1;
  // "Set up rnd"
  else if (/^set$/i.test(first.image) && /^up$/i.test(tokens[at + 1]?.image ?? '')) at += 2;
  while (at < index + 4 && namesRow(tokens[at]) && !isA(tokens[at], ...rowWords)) at += 1;
  const word = tokens[at];
  if (!isA(word, ...rowWords)) return null;
  const name = at > index ? nameOf(text, first, tokens[at - 1] as KnitToken) : shortRow.test(word?.image ?? '') ? 'short' : null;
  const numbers = labelNumbers(tokens, at + 1);
  if (rowsBehind(tokens, numbers)) numbers.at += 1;
  if (
    numbers.numbers.length === 0 &&
    name === null &&
    !(isA(tokens[at + 1], Colon) && isA(tokens[at + 2], Stitch, W.Work, Open, Mark, W.Rib, W.Patt))
  )
    return null;
  return { at: numbers.at, unit: unitOf(word), name, next: null, numbers, side: null, strong: numbers.numbers.length > 0 };
}

/** "RS:", "WS row:": a row by its side alone. */
function sideRow(tokens: readonly KnitToken[], index: number): Head | null {
  const first = tokens[index] as KnitToken;
  const row = isA(tokens[index + 1], ...rowWords);
  const at = row ? index + 2 : index + 1;
  if (!isA(tokens[at], Colon) || !isA(tokens[at + 1], Stitch, W.Work, Open, Mark, W.Rib, W.Patt, W.BindOff, W.CastOn)) return null;
  return { at, unit: unitOf(row ? tokens[index + 1] : undefined), name: null, next: null, numbers: null, side: first, strong: false };
}

function headAt(tokens: readonly KnitToken[], index: number, base: number, text: string): Head | null {
  const first = tokens[index] as KnitToken;
  if (isA(first, W.Rs, W.Ws)) {
    // "RS Row 1:"
    if (isA(tokens[index + 1], ...rowWords) && isA(tokens[index + 2], CountToken)) {
      const head = namedRow(tokens, index + 1, text);
      return head === null ? null : { ...head, side: first };
    }
    return sideRow(tokens, index);
  }
  if (isA(first, W.Next, W.Foll) && !isA(tokens[index + 1], W.Then)) return nextRow(tokens, index, base, text);
  if (isA(first, Ordinal) && isA(tokens[index + 1], ...rowWords, W.And, Comma, Dash, W.To)) return ordinalRow(tokens, index);
  if (shortLabel(tokens, index)) {
    const numbers = labelNumbers(tokens, index + 1);
    return { at: numbers.at, unit: 'row', name: null, next: null, numbers, side: null, strong: true };
  }
  return namedRow(tokens, index, text);
}

/** Index behind the colon, stop or dash of the label; `at` where none stands there. */
function endedAt(tokens: readonly KnitToken[], index: number, at: number, numbered: boolean): number {
  let end = at;
  // "Row 1) K2, …"
  const open = tokens.slice(0, at).some((token) => isA(token, Open) && token.payload?.close === at);
  if (numbered && isA(tokens[at], Close) && at > index && !open) end += 1;
  while (isA(tokens[end], Colon, FullStop, Dash)) end += 1;
  return end;
}

/**
 * Reads a label that begins at token `index`, or null. `emphasised` says that the words stand in bold or italics, which
 * makes a name a label even where no number and no colon says so.
 */
export function labelAt(tokens: readonly KnitToken[], index: number, base: number, text: string, emphasised: boolean): LabelMatch | null {
  const first = tokens[index];
  if (first === undefined) return null;
  const every = everyLabel(tokens, index, base, text);
  if (every !== null) return every;
  const behindPlace = placed(tokens, index, base, text);
  if (behindPlace !== undefined) return behindPlace;
  const head = headAt(tokens, index, base, text);
  if (head === null) return null;
  const { next, name } = head;
  const numbers = head.numbers?.numbers ?? [];
  const behind: Behind = behindLabel(tokens, head.at, text, numbers.length > 0, next !== null || numbers.length > 0 || name !== null);
  const { at } = behind;
  // "Work buttonhole row." orders the row.
  if (isA(first, W.Work) && numbers.length === 0 && !isA(tokens[at], Colon)) return null;
  let end = endedAt(tokens, index, at, numbers.length > 0);
  const ended = end > at;
  if (isA(tokens[end], Other) && /[|>]/.test(tokens[end]?.image ?? '')) end += 1;
  // Without a colon or bold type a sentence such as "Row 5 is the last." is no label.
  const strong = head.strong || behind.strong;
  if (!ended && !emphasised && !(strong && end < tokens.length && opensWork(tokens, end)) && !(next !== null && opensWork(tokens, end)))
    return null;
  if (next === null && numbers.length === 0 && !ended && !emphasised && behind.side === null) return null;
  const side = behind.side ?? head.numbers?.side ?? head.side;
  return {
    label: {
      type: 'label',
      unit: head.unit === 'round' || isA(tokens[head.at - 1], W.Round) ? 'round' : (behind.unit ?? head.unit),
      numbers,
      lastBySize: head.numbers?.lastBySize ?? null,
      andAll: behind.andAll,
      next,
      name,
      side: side === null ? null : isA(side, W.Rs) ? 'RS' : 'WS',
      sideSpan: side === null ? null : { start: base + side.startOffset, end: base + endOf(side) },
      numberSpan:
        head.numbers === null || head.numbers.start < 0 ? null : { start: base + head.numbers.start, end: base + head.numbers.end },
      span: { start: base + first.startOffset, end: base + endOf(tokens[behind.labelEnd - 1] as KnitToken) },
    },
    next: end,
    ...(behind.sizes === null ? {} : { sizes: behind.sizes }),
    ...(behind.told === null ? {} : { told: behind.told }),
  };
}
