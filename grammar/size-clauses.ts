/**
 * Sizes named within a sentence: the words become one token, and numbers that differ by such words become one number.
 *
 *     Next row (3rd size only): · dec 1 st at each end of next row, for 4th size only · work 6 rows for 1st size, 8 rows for 2nd size
 *     work 4 rows (3rd size 6 rows)
 */
import type { Sized } from './count.ts';
import { sizesNamed } from './size-labels.ts';
import { sizesOf } from './some-sizes.ts';
import {
  Close,
  Colon,
  Comma,
  Count,
  Dash,
  endOf,
  FullStop,
  isA,
  type KnitToken,
  Open,
  Ordinal,
  rowWords,
  Semicolon,
  Sizes,
  Stitch,
  W,
  Word,
} from './token-types.ts';

/** Words that show that a size of needles, hooks or buttons is meant. */
const tool = /^(?:needles?|ndls?|dpns?|circulars?|circ|hooks?|mm|us|uk|buttons?|beads?|ones?)$/i;

/** Whether a size may be named at `at`: within its sentence, behind a word that leads it in or a sign that sets it off. */
function mayName(tokens: readonly KnitToken[], at: number): boolean {
  const token = tokens[at];
  const before = tokens[at - 1];
  if (before === undefined || isA(before, FullStop, Semicolon, Sizes)) return false;
  // "(3rd size only) K 1 row.": the head of an order
  if (isA(before, Open) && (tokens[at - 2] === undefined || isA(tokens[at - 2], FullStop, Semicolon))) return false;
  // "as given for 2nd size"
  if (isA(before, W.As, W.Given, W.With)) return false;
  if (isA(before, Open, Comma, Dash, Colon)) return true;
  if (isA(before, W.And) && isA(token, W.For, W.On)) return true;
  return isA(token, W.For, W.On, W.In);
}

function asToken(
  tokens: readonly KnitToken[],
  at: number,
  names: readonly string[],
  text: string,
): { token: KnitToken; next: number } | null {
  const first = tokens[at] as KnitToken;
  if (!mayName(tokens, at)) return null;
  const named = sizesNamed(text.slice(first.startOffset, first.startOffset + 160), names);
  if (named?.sizes == null) return null;
  const before = tokens[at - 1];
  const end = first.startOffset + named.length;
  let next = at + 1;
  while (next < tokens.length && (tokens[next] as KnitToken).startOffset < end) next += 1;
  const behind = tokens[next];
  if (behind !== undefined && tool.test(behind.image) && !named.only) return null;
  if (isA(behind, Open) && tokens.slice(next, next + 4).some((token) => isA(token, W.Mm) || tool.test(token.image)) && !named.only)
    return null;
  // Set off by a comma or dash alone, "only" or what follows must show that no place of the row is meant.
  const setOff =
    isA(before, Open) || named.led || named.only || isA(behind, Colon, Count, W.BindOff, W.CastOn, W.Work, W.Inc, W.Dec, Stitch);
  if (!setOff) return null;
  const sizes = named.sizes;
  const image = text.slice(first.startOffset, end);
  const values = names.map((_, size) => (sizes.includes(size) ? 1 : 0));
  return { token: { ...first, image, tokenType: Sizes, tokenTypeIdx: Sizes.tokenTypeIdx ?? 0, payload: { values } }, next };
}

/** The brackets of "(3rd size only)" say nothing beside the words. */
function bare(tokens: readonly KnitToken[], text: string): KnitToken[] {
  const out: KnitToken[] = [];
  for (let at = 0; at < tokens.length; at += 1) {
    const token = tokens[at] as KnitToken;
    if (isA(token, Open) && isA(tokens[at + 1], Sizes) && isA(tokens[at + 2], Close)) {
      const image = text.slice(token.startOffset, endOf(tokens[at + 2] as KnitToken));
      out.push({ ...(tokens[at + 1] as KnitToken), image, startOffset: token.startOffset });
      at += 2;
    } else out.push(token);
  }
  return out;
}

const units = [W.St, ...rowWords, W.Ridge, W.Cm, W.Inch, W.Mm, W.Times];
const numbered = (token: KnitToken | undefined): boolean =>
  isA(token, Count) || (isA(token, Stitch) && token?.payload?.values !== undefined);

interface Part {
  readonly values: Sized;
  readonly sizes: readonly number[];
  readonly next: number;
}

/** "8 rows for 3rd size", "3rd size 8 rows": a number and the sizes it is for. */
function partAt(tokens: readonly KnitToken[], at: number, order: 'number first' | 'either'): Part | null {
  const of = (token: KnitToken | undefined): readonly number[] => (token === undefined ? [] : sizesOf(token));
  if (numbered(tokens[at])) {
    const behind = isA(tokens[at + 1], ...units) ? at + 2 : at + 1;
    return isA(tokens[behind], Sizes) ? { values: tokens[at]?.payload?.values ?? [], sizes: of(tokens[behind]), next: behind + 1 } : null;
  }
  if (order === 'number first' || !isA(tokens[at], Sizes)) return null;
  const number = isA(tokens[at + 1], Colon, Comma) ? at + 2 : at + 1;
  if (!numbered(tokens[number])) return null;
  const next = isA(tokens[number + 1], ...units) ? number + 2 : number + 1;
  return { values: tokens[number]?.payload?.values ?? [], sizes: of(tokens[at]), next };
}

const valueFor = (values: Sized, size: number): number | null => values[values.length === 1 ? 0 : size] ?? null;

/** "6 rows for 1st size, 8 rows for 2nd size", "4 rows (3rd size 6 rows)" as one number with a value for each size. */
function merged(tokens: readonly KnitToken[], at: number, count: number): { tokens: KnitToken[]; next: number } | null {
  const first = tokens[at] as KnitToken;
  if (!numbered(first)) return null;
  const own = first.payload?.values ?? [];
  const made = (values: Sized): KnitToken => ({ ...first, payload: { ...first.payload, values } });
  const unit = isA(tokens[at + 1], ...units) ? [tokens[at + 1] as KnitToken] : [];
  // "4 rows (3rd size 6 rows)"
  const open = at + 1 + unit.length;
  if (isA(tokens[open], Open)) {
    const values = Array.from({ length: count }, (_, size) => valueFor(own, size));
    let next = open + 1;
    let parts = 0;
    for (let part = partAt(tokens, next, 'either'); part !== null; part = partAt(tokens, next, 'either')) {
      for (const size of part.sizes) values[size] = valueFor(part.values, size);
      next = part.next;
      parts += 1;
      while (isA(tokens[next], Comma, Semicolon, W.And)) next += 1;
    }
    return parts > 0 && isA(tokens[next], Close) ? { tokens: [made(values), ...unit], next: next + 1 } : null;
  }
  // "6 rows for 1st size, 8 rows for 2nd size"
  const values = Array.from({ length: count }, (): number | null => null);
  let next = at;
  let parts = 0;
  for (let part = partAt(tokens, at, 'number first'); part !== null; ) {
    for (const size of part.sizes) values[size] = valueFor(part.values, size);
    parts += 1;
    next = part.next;
    let behind = next;
    while (isA(tokens[behind], Comma, Semicolon, W.And)) behind += 1;
    part = behind > next ? partAt(tokens, behind, 'number first') : null;
  }
  return parts > 1 ? { tokens: [made(values), ...unit], next } : null;
}

/** The tokens with sizes named within a sentence as one token each. */
export function withSizeClauses(tokens: readonly KnitToken[], names: readonly string[], text: string): KnitToken[] {
  if (names.length < 2 || !tokens.some((token) => isA(token, W.Size, W.Only))) return [...tokens];
  const named: KnitToken[] = [];
  for (let at = 0; at < tokens.length; ) {
    const token = tokens[at] as KnitToken;
    const clause = isA(token, Ordinal, Count, Word, W.For, W.On, W.In, W.Size, W.First, W.Last, W.All, W.Each, Stitch, W.Marker)
      ? asToken(tokens, at, names, text)
      : null;
    named.push(clause?.token ?? token);
    at = clause?.next ?? at + 1;
  }
  const out: KnitToken[] = [];
  for (let at = 0; at < named.length; ) {
    const number = merged(named, at, names.length);
    out.push(...(number?.tokens ?? [named[at] as KnitToken]));
    at = number?.next ?? at + 1;
  }
  return bare(out, text);
}
