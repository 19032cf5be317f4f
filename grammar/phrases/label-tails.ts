/**
 * What stands between the name or number of a row and its colon: "and all WS rows", its side, the sizes that work it, a count,
 * what it does, a note.
 *
 *     Row 2 and all WS rows: · Row 1 (RS; inc): · Row 7 (WS; 2 sts dec'd): · Next row, size L only: · Next row, dec as foll:
 */

import { endOf } from '../token-types.ts';
import {
  Close,
  Colon,
  Comma,
  Count as CountToken,
  Dash,
  FullStop,
  isA,
  type KnitToken,
  Open,
  PlainStitch,
  rowWords,
  Sizes,
  W,
  Word,
} from '../tokens.ts';
import type { Label } from '../tree.ts';
import { behindColour, opensWork } from './label-ends.ts';
import { rowsMeant, toldInLabel } from './label-words.ts';

export interface Behind {
  at: number;
  /** Index behind the last token of the label itself, without the yarn. */
  labelEnd: number;
  andAll: Label['andAll'];
  side: KnitToken | null;
  sizes: KnitToken | null;
  told: { readonly from: number; readonly to: number } | null;
  /** The row word of "1st and every alt round". */
  unit: Label['unit'] | null;
  strong: boolean;
}

/** Most words in the bracket of a label; more only where its colon follows. */
const longestNote = 7;
const longestToldNote = 16;

/** Index behind "and all WS rows", "(and every alt row)", "– and all even rows –"; -1 where no such words stand. */
function andAllAt(tokens: readonly KnitToken[], behind: Behind, text: string, numbered: boolean): number {
  const { at } = behind;
  // "Row 2 (and all WS rows):"
  if (isA(tokens[at], Open) && numbered && isA(tokens[at + 1], W.And) && isA(tokens[at + 2], W.All, W.Every, W.Foll)) {
    const close = tokens[at]?.payload?.close ?? -1;
    if (close <= at) return -1;
    behind.andAll = rowsMeant(text.slice((tokens[at + 1] as KnitToken).startOffset, endOf(tokens[close - 1] as KnitToken)));
    return close + 1;
  }
  const and = isA(tokens[at], Dash, Comma) && numbered ? at + 1 : at;
  if (!isA(tokens[and], W.And) || !isA(tokens[and + 1], W.All, W.Every, W.Foll, W.Alt)) return -1;
  let look = and + 1;
  const from = tokens[look] as KnitToken;
  while (look < and + 9 && isA(tokens[look], W.All, W.Every, W.Foll, W.Alt, W.Other, W.Rs, W.Ws, W.Straight, Word, ...rowWords, W.These))
    look += 1;
  const last = tokens[look - 1] as KnitToken;
  const words = text.slice(from.startOffset, endOf(last)).toLowerCase();
  if (!/row|rnd|round/.test(words)) return -1;
  behind.andAll = rowsMeant(words);
  if (/rnd|round/.test(words)) behind.unit = 'round';
  return look;
}

/** Index behind a bracket of the label, with what it says taken; -1 where the bracket belongs to the row. */
function bracketAt(tokens: readonly KnitToken[], behind: Behind, known: boolean): number {
  const { at } = behind;
  const open = tokens[at];
  const close = open?.payload?.close ?? -1;
  if (close < 0) return -1;
  const inside = tokens.slice(at + 1, close);
  const holds = open?.payload?.holds;
  const colon = isA(tokens[close + 1], Colon);
  if (inside.length > (colon ? longestToldNote : longestNote)) return -1;
  const count = inside.findIndex((token, index) => isA(token, CountToken) && isA(inside[index + 1], W.St));
  if (holds === 'group' || inside.some((token) => isA(token, PlainStitch))) {
    // "Row 1 (RS) (K2, P2 rib):"
    if (!colon || !known) return -1;
  } else if (holds === 'stated') {
    if (!known || !(colon || isA(tokens[close + 1], Dash, Open) || opensWork(tokens, close + 1))) return -1;
    if (count >= 0) {
      const changed = isA(inside[count - 1], W.Inc, W.Dec, W.Dec) ? 1 : 0;
      const end = inside.findIndex((token, index) => index > count && isA(token, Comma, Dash));
      behind.told = { from: at + 1 + count - changed, to: end < 0 ? close : at + 1 + end };
    }
  }
  const side = inside.find((token) => isA(token, W.Rs, W.Ws));
  if (side !== undefined) behind.side = side;
  behind.sizes = inside.find((token) => isA(token, Sizes)) ?? behind.sizes;
  behind.strong = true;
  return close + 1;
}

/** Index behind ", size L only", "– 1st size only –"; -1 where no sizes stand. */
function sizesAt(tokens: readonly KnitToken[], behind: Behind): number {
  const { at } = behind;
  const named = isA(tokens[at], Sizes) ? at : isA(tokens[at], Comma, Dash) && isA(tokens[at + 1], Sizes) ? at + 1 : -1;
  if (named < 0) return -1;
  const next = tokens[named + 1];
  if (!isA(next, Colon, Dash, FullStop, Comma, Close) && !(named === at && opensWork(tokens, named + 1))) return -1;
  behind.sizes = tokens[named] as KnitToken;
  behind.strong = true;
  return isA(next, Comma) ? named + 2 : named + 1;
}

/** Index behind the side without brackets: "RS:", ", RS –", "RS facing, k2". */
function sideAt(tokens: readonly KnitToken[], behind: Behind): number {
  const { at } = behind;
  const take = (side: number): void => {
    behind.side = tokens[side] as KnitToken;
  };
  if (isA(tokens[at], W.Rs, W.Ws)) {
    if (isA(tokens[at + 1], Colon, Dash, FullStop, Comma)) {
      take(at);
      return at + 1;
    }
    // "Row 1 RS K2, …"
    if (behind.strong && opensWork(tokens, at + 1)) {
      take(at);
      return at + 1;
    }
  }
  if (isA(tokens[at], Colon, Dash, Comma) && isA(tokens[at + 1], W.Rs, W.Ws) && isA(tokens[at + 2], Dash, Colon, FullStop)) {
    take(at + 1);
    return at + 2;
  }
  return -1;
}

/** Takes all that stands between the row's name or number and the end of its label. */
export function behindLabel(tokens: readonly KnitToken[], from: number, text: string, numbered: boolean, known: boolean): Behind {
  const behind: Behind = { at: from, labelEnd: from, andAll: null, side: null, sizes: null, told: null, unit: null, strong: numbered };
  const all = andAllAt(tokens, behind, text, numbered);
  if (all > 0) {
    behind.at = all;
    behind.strong = true;
  }
  for (let tries = 0; tries < 4; tries += 1) {
    const sized = sizesAt(tokens, behind);
    const next = sized > 0 ? sized : isA(tokens[behind.at], Open) ? bracketAt(tokens, behind, known) : sideAt(tokens, behind);
    if (next > 0) behind.at = next;
    else if (
      isA(tokens[behind.at], Colon, FullStop) &&
      isA(tokens[behind.at + 1], Open) &&
      tokens[behind.at + 1]?.payload?.holds === 'side'
    )
      behind.at += 1;
    else break;
  }
  behind.labelEnd = behind.at;
  if (numbered) behind.at = behindColour(tokens, behind.at);
  const told = known ? toldInLabel(tokens, behind.at) : -1;
  if (told > 0) behind.at = told;
  return behind;
}
