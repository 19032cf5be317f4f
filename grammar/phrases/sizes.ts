/**
 * Size blocks: which sizes a stretch of text rules.
 *
 *     Sizes M and L only: · 3rd and 4th sizes only: · For size XS only, · All sizes: · Larger sizes only · SIZE M ONLY
 */

import { sizesNamed } from '../size-labels.ts';
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
  Name,
  Open,
  Ordinal,
  PlainStitch,
  Slash,
  Stitch,
  W,
  Word,
} from '../tokens.ts';
import type { Span } from '../tree.ts';

export interface SizeBlockMatch {
  /** Indexes of the sizes, null for all. */
  readonly sizes: readonly number[] | null;
  /** "All other sizes": those that no block before it named. */
  readonly rest: boolean;
  readonly span: Span;
  readonly next: number;
}

/** Reads a size label at the head of `tokens[from, to)`, or null. */
export function sizeBlockAt(
  tokens: readonly KnitToken[],
  from: number,
  to: number,
  names: readonly string[],
  base: number,
  text: string,
): SizeBlockMatch | null {
  const plain = namedAt(tokens, from, to, names, base, text);
  if (plain !== null) return plain;
  let sizeWord = -1;
  let end = -1;
  for (let at = from; at < Math.min(to, from + 24); at += 1) {
    const token = tokens[at];
    if ((isA(token, W.Size) || (isA(token, Word) && /^ages?$/i.test(token?.image ?? ''))) && sizeWord < 0) sizeWord = at;
    if (isA(token, Colon, FullStop)) {
      end = at;
      break;
    }
    if (
      isA(token, PlainStitch, Stitch, W.Work, W.CastOn, W.BindOff, W.Dec, W.Inc, W.Row, W.Round, W.Rep) &&
      !(token?.image.length === 1 || names.some((name) => name.toLowerCase() === token?.image.toLowerCase()))
    ) {
      if (sizeWord < 0) return null;
      end = isA(tokens[at - 1], Comma, W.Only) ? at - 1 : -1;
      break;
    }
    if (
      !isA(
        token,
        W.Size,
        W.For,
        W.All,
        W.Only,
        W.Other,
        W.And,
        W.Rem,
        W.First,
        W.Last,
        CountToken,
        Ordinal,
        Comma,
        Dash,
        Word,
        W.To,
        Open,
        Close,
        W.These,
        W.Next,
        W.St,
        Slash,
        Name,
        W.Not,
        PlainStitch,
        Stitch,
        W.Marker,
        W.Inch,
        W.Cm,
        W.Plus,
        W.In,
        W.On,
        W.Each,
        W.Every,
        W.More,
        W.Times,
        W.InAll,
      )
    )
      return null;
  }
  // "M and L only:" names sizes with no size word
  if (sizeWord < 0 && onlyNames(tokens, from, end, names)) sizeWord = from;
  if (sizeWord < 0 || sizeWord > from + 16) return null;
  if (end < 0) end = to;
  const words = tokens.slice(from, end);
  const only = words.some((token) => isA(token, W.Only));
  const all = words.some((token) => isA(token, W.All, W.Every)) && !words.some((token) => isA(token, W.Other));
  const span = { start: base + (tokens[from] as KnitToken).startOffset, end: base + endOf(tokens[end - 1] as KnitToken) };
  if (!only && !all && !isA(tokens[end], Colon) && !isA(tokens[from], W.For) && end < to) return null;
  if (words.length > 22) return null;
  let next = end;
  while (next < to && isA(tokens[next], Colon, FullStop, Comma)) next += 1;
  const but = words.findIndex((token) => /^(except|but)$/i.test(token.image));
  if (but >= 0) {
    const left = namedSizes(words.slice(but + 1), names);
    return left.length === 0
      ? null
      : { sizes: names.map((_, index) => index).filter((index) => !left.includes(index)), rest: false, span, next };
  }
  if (all) return { sizes: null, rest: false, span, next };
  const sizes = namedSizes(words, names);
  // "All other sizes", "Remaining sizes": those that the blocks before it did not name
  if (sizes.length === 0) return words.some((token) => isA(token, W.Other, W.Rem)) ? { sizes: null, rest: true, span, next } : null;
  return { sizes, rest: false, span, next };
}

/** Sizes named in plain words at the head of an order, in a bracket or not: "For 3rd size only dec 1 st …", "(2nd size only) K 1 row". */
function namedAt(
  tokens: readonly KnitToken[],
  from: number,
  to: number,
  names: readonly string[],
  base: number,
  text: string,
): SizeBlockMatch | null {
  const bracketed = isA(tokens[from], Open);
  const first = tokens[bracketed ? from + 1 : from];
  if (first === undefined || names.length < 2) return null;
  const named = sizesNamed(text.slice(first.startOffset, first.startOffset + 160), names);
  if (named === null) return null;
  const end = first.startOffset + named.length;
  let next = bracketed ? from + 1 : from;
  while (next < to && (tokens[next] as KnitToken).startOffset < end) next += 1;
  if (bracketed && !isA(tokens[next], Close, Colon)) return null;
  const set = isA(tokens[next], Colon, Dash, Close) || tokens[next]?.image === '~' || next >= to;
  // "All sizes again: …"
  if (named.sizes === null && isA(tokens[next], Word, W.More)) return null;
  // "On size 2 needles cast on …", "Size 2 was knitted for …"
  if (isA(tokens[next], W.Needle, W.Mm) || !(named.only || set || named.led || (named.sizes === null && !isA(tokens[next], W.St))))
    return null;
  while (next < to && (isA(tokens[next], Colon, FullStop, Comma, Dash, Close) || tokens[next]?.image === '~')) next += 1;
  return { sizes: named.sizes, rest: named.rest, span: { start: base + first.startOffset, end: base + end }, next };
}

/** Whether the words up to "only" are names of sizes and nothing else. */
function onlyNames(tokens: readonly KnitToken[], from: number, end: number, names: readonly string[]): boolean {
  const words = tokens.slice(from, end);
  const only = words.findIndex((token) => isA(token, W.Only));
  if (only < 1 || only !== words.length - 1) return false;
  const lower = names.map((name) => name.toLowerCase());
  return words
    .slice(0, only)
    .every(
      (token) => isA(token, W.And, Comma, W.For) || lower.includes(token.image.toLowerCase()) || /^[a-z\d]+-[a-z\d]+$/i.test(token.image),
    );
}

function namedSizes(words: readonly KnitToken[], names: readonly string[]): number[] {
  const lower = names.map((name) => name.toLowerCase());
  const has = (test: RegExp): boolean => words.some((token) => test.test(token.image.toLowerCase()));
  const found = new Set<number>();
  const add = (index: number): void => {
    if (index >= 0 && index < Math.max(names.length, 1)) found.add(index);
  };
  const every = names.map((_, index) => index);
  const extreme = words.findIndex((token) => /^(largest|biggest|smallest)$/.test(token.image.toLowerCase()));
  if (extreme >= 0) {
    // "two largest sizes": the number stands before the word
    const number = isA(words[extreme - 1], CountToken) ? (words[extreme - 1]?.payload?.values?.[0] ?? 1) : 1;
    return /^smallest$/i.test(words[extreme]?.image ?? '') ? every.slice(0, number) : every.slice(-number);
  }
  if (has(/^larger$/)) return every.slice(1);
  if (has(/^smaller$/)) return every.slice(0, -1);
  let range = false;
  words.forEach((token, at) => {
    const text = token.image.toLowerCase();
    const list = token.payload?.values;
    if (isA(token, Dash, W.To)) {
      range = found.size > 0;
      return;
    }
    let index = -1;
    if (isA(token, Ordinal) && list)
      for (const value of list) {
        index = (value ?? 0) - 1;
        if (range) for (let each = Math.max(...found) + 1; each < index; each += 1) add(each);
        add(index);
      }
    else if (isA(token, W.First)) add(0);
    else if (isA(token, W.Last) && !/previous/.test(text)) add(names.length - 1);
    else if (list && isA(token, CountToken)) {
      // "– (2, 3, –)" names the sizes that are not dashes; "3, 4" names sizes called 3 and 4, or counted so.
      if (list.length === names.length && list.length > 1)
        list.forEach((value: number | null, size: number) => {
          if (value !== null) add(size);
        });
      else
        for (const value of list) {
          index = lower.indexOf(String(value));
          if (index < 0) index = lower.findIndex((name) => name.startsWith(`${value} `) || name === `${value} years`);
          if (index < 0 && lower.every((name) => !/^\d+$/.test(name))) index = (value ?? 0) - 1;
          if (range && index >= 0 && found.size > 0) for (let each = Math.max(...found) + 1; each < index; each += 1) add(each);
          add(index);
        }
    } else {
      // "XS-M" in one word
      const ends = text.split('-').map((part) => lower.indexOf(part));
      if (ends.length === 2 && ends.every((each) => each >= 0)) {
        for (let each = ends[0] ?? 0; each <= (ends[1] ?? -1); each += 1) add(each);
        return;
      }
      const pair = `${text}${words[at + 1]?.image.toLowerCase() ?? ''}`;
      index = lower.indexOf(text);
      if (index < 0) index = lower.indexOf(pair);
      if (index < 0) index = lower.indexOf(`${text} ${words[at + 1]?.image.toLowerCase() ?? ''}`);
      if (range && index >= 0 && found.size > 0) for (let each = Math.max(...found) + 1; each < index; each += 1) add(each);
      add(index);
    }
    range = false;
  });
  return [...found].sort((a, b) => a - b);
}
