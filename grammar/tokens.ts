/**
 * The tokens: one chevrotain lexer whose vocabulary is the lexicon, the words of the trade and the draft's own words.
 * It reads the masked text of a passage, so a token's offset is a place in the author's file.
 */
import { type CustomPatternMatcherReturn, createToken, type IToken, Lexer, type TokenType } from 'chevrotain';
import { type Colours, coloursIn } from './colours.ts';
import type { Sized } from './count.ts';
import { withoutShorteningStops } from './full-stops.ts';
import { ambiguityOf } from './lexicon/ambiguous.ts';
import type { Entry } from './lexicon/entry.ts';
import { numberAt, ordinalName } from './numbers.ts';
import { matchAt, type Vocabulary } from './vocabulary.ts';
import { type WordName, words } from './words.ts';

/** What a token carries beside its image. */
export interface Payload {
  /** Values of a number, or of the number inside a stitch's name. */
  readonly values?: Sized;
  readonly entry?: Entry;
  /** The name as the lexicon spells it with its number, where it has several readings. */
  readonly spelling?: string;
  /** Place of the number inside the token, in the passage. */
  readonly nOffset?: number;
  readonly nLength?: number;
  readonly m?: number;
  readonly fabric?: string;
  readonly name?: string;
  /** For an opening bracket: index of its partner and what it holds. */
  close?: number;
  holds?: Holds;
}

/** What a bracket holds, decided by the words inside it. */
export type Holds = 'group' | 'stated' | 'side' | 'remark' | 'measure';

export type KnitToken = IToken & { payload?: Payload };

export const Space = createToken({ name: 'Space', pattern: /\s+/, group: Lexer.SKIPPED });
/** Any token at all: for places where a rule has already looked at the word it is about to take. */
export const Any = createToken({ name: 'Any', pattern: Lexer.NA });
export const Stitch = createToken({ name: 'Stitch', pattern: Lexer.NA, categories: Any });
/** A bare knit or purl, with or without a number; the verb of runs and plain rows. */
export const PlainStitch = createToken({ name: 'PlainStitch', pattern: Lexer.NA, categories: Stitch });
export const SlipStitch = createToken({ name: 'SlipStitch', pattern: Lexer.NA, categories: Stitch });
export const Count = createToken({ name: 'Count', pattern: Lexer.NA, categories: Any });
export const TimesNumber = createToken({ name: 'TimesNumber', pattern: Lexer.NA, categories: Any });
export const Ordinal = createToken({ name: 'Ordinal', pattern: Lexer.NA, categories: Any });
export const Fabric = createToken({ name: 'Fabric', pattern: Lexer.NA, categories: Any });
/** A piece, stitch pattern or row that the draft itself names. */
export const Name = createToken({ name: 'Name', pattern: Lexer.NA, categories: Any });
export const Mark = createToken({ name: 'Mark', pattern: Lexer.NA, categories: Any });
export const Word = createToken({ name: 'Word', pattern: Lexer.NA, categories: Any });
export const Open = createToken({ name: 'Open', pattern: Lexer.NA, categories: Any });
export const Close = createToken({ name: 'Close', pattern: Lexer.NA, categories: Any });
export const Comma = createToken({ name: 'Comma', pattern: Lexer.NA, categories: Any });
export const Semicolon = createToken({ name: 'Semicolon', pattern: Lexer.NA, categories: Any });
export const Colon = createToken({ name: 'Colon', pattern: Lexer.NA, categories: Any });
export const FullStop = createToken({ name: 'FullStop', pattern: Lexer.NA, categories: Any });
export const Dash = createToken({ name: 'Dash', pattern: Lexer.NA, categories: Any });
export const Equals = createToken({ name: 'Equals', pattern: Lexer.NA, categories: Any });
export const Slash = createToken({ name: 'Slash', pattern: Lexer.NA, categories: Any });
export const Other = createToken({ name: 'Other', pattern: Lexer.NA, categories: Any });

/** One token type for each word of the trade. */
export const W = Object.fromEntries(
  (Object.keys(words) as WordName[]).map((name) => [name, createToken({ name: `W${name}`, pattern: Lexer.NA, categories: Any })]),
) as Record<WordName, TokenType>;

/** The words for one working of all the stitches. */
export const rowWords = [W.Row, W.Round];

const punctuation = new Map<string, TokenType>([
  ['(', Open],
  ['[', Open],
  ['{', Open],
  [')', Close],
  [']', Close],
  ['}', Close],
  [',', Comma],
  [';', Semicolon],
  [':', Colon],
  ['.', FullStop],
  ['–', Dash],
  ['—', Dash],
  ['-', Dash],
  ['−', Dash],
  ['=', Equals],
  ['/', Slash],
  ['&', W.And],
  ['+', W.Plus],
]);

// The lexer is called synchronously for one passage at a time; the two settings of that call stand here.
let vocabulary: Vocabulary;
let sizes: number | null = null;
let colours: Colours = { counts: new Map(), words: new Map() };

const wordPattern = /[\p{L}][\p{L}\p{M}'’]*(?:-[\p{L}]+)*/uy;
const markPattern = /\*+|†+|‡+/y;

interface PieceMatch extends CustomPatternMatcherReturn {
  payload: Payload & { type: TokenType };
}

function pieceAt(text: string, offset: number): PieceMatch | null {
  const make = (length: number, type: TokenType, payload: Payload = {}): PieceMatch => {
    const match = [text.slice(offset, offset + length)] as unknown as PieceMatch;
    match.payload = { ...payload, type };
    return match;
  };
  markPattern.lastIndex = offset;
  const mark = markPattern.exec(text);
  if (mark) return make(mark[0].length, Mark);
  if (/[*†‡]/.test(text[offset - 1] ?? '') && /^['’]?s\b/i.test(text.slice(offset, offset + 3)))
    return make(/^['’]/.test(text[offset] ?? '') ? 2 : 1, W.The);
  const colourEnd = colours.words.get(offset);
  if (colourEnd !== undefined) return make(colourEnd - offset, W.The);
  const number = numberAt(text, offset, sizes);
  const coloured = colours.counts.get(offset);
  if (coloured !== undefined && number !== null) {
    const verb = matchAt(coloured.verb ?? 'k', 0, vocabulary, sizes);
    if (verb?.meaning.is === 'stitch')
      return make(number.length, PlainStitch, {
        entry: verb.meaning.entry,
        values: number.values,
        nOffset: offset,
        nLength: number.length,
      });
  }
  let known = matchAt(text, offset, vocabulary, sizes);
  if (known !== null && colours.words.size > 0) {
    // "k2 B, k1 A" in two colours is no "k2b": the name ends before the colour.
    const end = offset + known.length;
    for (let at = offset + 1; at < end; at += 1) if (colours.words.has(at)) known = matchAt(text.slice(0, at), offset, vocabulary, sizes);
  }
  if (
    known?.meaning.is === 'stitch' &&
    text.slice(offset, offset + 3) === 'm. ' &&
    ((known.n?.[0] ?? 0) > 2 || /^\s?sts?\b/.test(text.slice(offset + known.length, offset + known.length + 4)))
  ) {
    // "removing m. 56 sts": the sentence ends behind the marker; nobody makes 56.
    known = matchAt(text.slice(0, offset + 1), offset, vocabulary, sizes);
  }
  wordPattern.lastIndex = offset;
  const word = wordPattern.exec(text);
  const hyphened = word?.[0].includes('-') ? word[0].length : 0;
  // "bind off k-wise": how, and no knit stitch
  if (word !== null && /^(?:k|p|knit|purl)-wise$/i.test(word[0])) return make(word[0].length, Word);
  if (
    known &&
    known.length >= (number?.length ?? 0) &&
    known.length >= Math.min(hyphened, known.length + (hyphened > known.length && known.meaning.is !== 'stitch' ? 1 : 0))
  ) {
    const { meaning } = known;
    // "k up to 3 sts before m" is a knit stitch and a distance, not "k up 3 sts".
    const up = /^(k|p|knit|purl)\s+up$/i.exec(text.slice(offset, offset + known.length));
    const plain =
      up !== null && /^\s+to\b/i.test(text.slice(offset + known.length, offset + known.length + 4))
        ? matchAt(up[1] ?? '', 0, vocabulary, sizes)
        : null;
    if (plain?.meaning.is === 'stitch') return make(up?.[1]?.length ?? 1, PlainStitch, { entry: plain.meaning.entry });
    if (meaning.is === 'word') return make(known.length, W[meaning.word]);
    if (meaning.is === 'fabric') return make(known.length, Fabric, { fabric: meaning.fabric });
    if (meaning.is === 'name') return make(known.length, Name, { name: meaning.name });
    const { entry } = meaning;
    const literal = entry.literals?.[meaning.spelling];
    const several = known.own ? undefined : severalReadings(meaning.spelling, known.n);
    const payload: Payload = {
      entry,
      ...(several === undefined ? {} : { spelling: several }),
      ...(known.n
        ? { values: known.n, nOffset: known.nOffset, nLength: known.nLength }
        : literal?.N === undefined
          ? {}
          : { values: [literal.N] }),
      ...(known.m !== null ? { m: known.m } : literal?.M === undefined ? {} : { m: literal.M }),
    };
    const type = entry.name === 'k' || entry.name === 'p' ? PlainStitch : entry.name === 'sl' ? SlipStitch : Stitch;
    return make(known.length, type, payload);
  }
  if (number)
    return make(number.length, number.kind === 'times' ? TimesNumber : number.kind === 'ordinal' ? Ordinal : Count, {
      values: number.values,
    });
  if (word) {
    const place = ordinalName(word[0]);
    if (place !== null) return make(word[0].length, Ordinal, { values: [place] });
    // "SR3": the letters of a short row stand close to its number.
    if (/^srs?$/i.test(word[0])) return make(word[0].length, W.Row);
    // "r3:", "rep r1–2", "k 60 r": rows in terse shorthand
    if (/^r$/i.test(word[0]) && (/^\d/.test(text.slice(offset + 1)) || /\d[)\]]?\s$/.test(text.slice(Math.max(0, offset - 3), offset))))
      return make(1, W.Row);
    return make(word[0].length, Word);
  }
  const type = punctuation.get(text[offset] ?? '');
  if (type) return make(1, type);
  const code = text.codePointAt(offset) ?? 0;
  return make(code > 0xffff ? 2 : 1, Other);
}

/** The spelling by which a name is found among those with several readings; undefined where it has one. */
function severalReadings(spelling: string, n: Sized | null): string | undefined {
  const one = n?.length === 1 ? spelling.replace(/\{N[^}]*\}/i, String(n[0])) : spelling;
  const close = one.replace(/([a-z]) (\d)/i, '$1$2');
  return ambiguityOf(one) !== undefined
    ? one
    : ambiguityOf(close) !== undefined
      ? close
      : ambiguityOf(spelling) !== undefined
        ? spelling
        : undefined;
}

const Piece = createToken({ name: 'Piece', pattern: pieceAt, line_breaks: true });

const lexer = new Lexer([Space, Piece], { positionTracking: 'onlyOffset', skipValidations: true, ensureOptimizations: false });

/** All token types, for the parser. */
export const tokenTypes: TokenType[] = [
  Space,
  Piece,
  Any,
  Stitch,
  PlainStitch,
  SlipStitch,
  Count,
  TimesNumber,
  Ordinal,
  Fabric,
  Name,
  Mark,
  Word,
  Open,
  Close,
  Comma,
  Semicolon,
  Colon,
  FullStop,
  Dash,
  Equals,
  Slash,
  Other,
  ...Object.values(W),
];

/**
 * Cuts a passage into tokens. Articles are left out, brackets know their partners and what they hold.
 * @param text masked text of a passage
 * @param own the draft's vocabulary
 * @param sizeCount number of sizes of the draft, null while unknown
 */
export function tokensOf(text: string, own: Vocabulary, sizeCount: number | null): KnitToken[] {
  vocabulary = own;
  sizes = sizeCount;
  const tokens: KnitToken[] = [];
  const bare = withoutShorteningStops(text);
  colours = coloursIn(bare, sizeCount, own.defined);
  for (const token of lexer.tokenize(bare).tokens as KnitToken[]) {
    const type = (token.payload as (Payload & { type?: TokenType }) | undefined)?.type;
    if (type !== undefined) {
      token.tokenType = type;
      token.tokenTypeIdx = type.tokenTypeIdx ?? 0;
    }
    // "rep. from *", "*k2, p2*, rep between *'s": neither the full stop nor the ending says anything.
    if (isA(token, W.From, W.Between) && isA(tokens.at(-1), FullStop) && isA(tokens.at(-2), W.Rep)) tokens.pop();
    if (token.tokenType !== W.The) tokens.push(token);
  }
  retyped(tokens);
  pairBrackets(tokens);
  return tokens;
}

function retype(token: KnitToken, type: TokenType): void {
  token.tokenType = type;
  token.tokenTypeIdx = type.tokenTypeIdx ?? 0;
}

/** Words whose sense shows in their neighbours: "Rows 2 through 5" is a range; in "knit rib", "knit moss st" to knit is to work. */
function retyped(tokens: readonly KnitToken[]): void {
  tokens.forEach((token, index) => {
    const next = tokens[index + 1];
    if (isA(token, Word) && /^(through|thru)$/i.test(token.image) && isA(tokens[index - 1], Count, Ordinal) && isA(next, Count, Ordinal))
      retype(token, W.To);
    else if (
      isA(token, PlainStitch) &&
      /^knit(ting)?$/i.test(token.image) &&
      (isA(next, Fabric, W.Patt, W.Rib) ||
        (isA(next, W.In) && isA(tokens[index + 2], Fabric, W.Patt) && !isA(tokens[index - 1], PlainStitch)))
    )
      retype(token, W.Work);
  });
}

/** Offset of the first character behind a token. */
export function endOf(token: IToken): number {
  return token.startOffset + token.image.length;
}

export function isA(token: KnitToken | undefined, ...types: TokenType[]): boolean {
  if (token === undefined) return false;
  const own = token.tokenType;
  // Asked more often than anything else.
  for (let at = 0; at < types.length; at += 1) {
    if (own === types[at] || (types[at] === Stitch && (own === PlainStitch || own === SlipStitch))) return true;
  }
  return false;
}

const verbs = [W.Work, W.Patt, W.CastOn, W.BindOff, W.PickUp, W.Turn, W.WrapTurn, W.Rib];

function pairBrackets(tokens: KnitToken[]): void {
  const open: number[] = [];
  tokens.forEach((token, index) => {
    if (isA(token, Open)) open.push(index);
    else if (isA(token, Close)) {
      const start = open.pop();
      if (start === undefined) return;
      const opening = tokens[start];
      if (opening)
        opening.payload = {
          ...opening.payload,
          close: index,
          holds: bareTotal(tokens, start, index) ? 'stated' : holding(tokens.slice(start + 1, index)),
        };
    }
  });
}

/** "kfb around (16).", "rep from * (24)", "6 times [18]": a number alone behind the end of a round is its count. */
function bareTotal(tokens: readonly KnitToken[], open: number, close: number): boolean {
  if (lineTotal(tokens, open, close)) return true;
  if (close !== open + 2 || !isA(tokens[open + 1], Count) || !isA(tokens[open - 1], W.Around, W.Across, W.End, W.Times, TimesNumber, Mark))
    return false;
  if (isA(tokens[open - 1], W.Times) && !isA(tokens[open - 2], Count)) return false;
  return close + 1 >= tokens.length || isA(tokens[close + 1], FullStop, Semicolon, Comma);
}

/** "Rnd 6: (k3, kfb) x 6 [30]", "Rnd 5: knit [24]": a number alone in brackets behind the last stitch of a labelled row, with the next label or nothing behind it. */
function lineTotal(tokens: readonly KnitToken[], open: number, close: number): boolean {
  const behind = tokens[close + 1];
  if (close !== open + 2 || !isA(tokens[open + 1], Count)) return false;
  if (
    behind !== undefined &&
    !isA(behind, FullStop) &&
    !(isA(behind, W.Row, W.Round, Ordinal) && isA(tokens[close + 2], Count, W.Row, W.Round))
  )
    return false;
  const before = tokens[open - 1];
  // "k5 (6)" may be a list of sizes that breaks off.
  const square = tokens[open]?.image === '[';
  if (!square && (isA(before, Count) ? !/^[x×]$/i.test(tokens[open - 2]?.image ?? '') : /\d$/.test(before?.image ?? ''))) return false;
  if (!isA(before, Stitch, Close, Count, W.Patt, Name, Word, Fabric)) return false;
  for (let at = open - 1; at > 0 && at > open - 60; at -= 1) {
    if (isA(tokens[at], FullStop, Semicolon)) return false;
    if (isA(tokens[at], Colon)) return tokens.slice(Math.max(0, at - 8), at).some((token) => isA(token, W.Row, W.Round));
  }
  return false;
}

function holding(inside: readonly KnitToken[]): Holds {
  const has = (...types: TokenType[]): boolean => inside.some((token) => isA(token, ...types) && token.image.toLowerCase() !== 'worked');
  const first = inside[0];
  if (isA(first, W.Rs, W.Ws) && inside.length <= 4) return 'side';
  // What a decrease takes, how marks lie, what comes "per row": told about the stitches, not a count of them.
  if (
    !has(Stitch) &&
    (has(W.Gap) ||
      (isA(first, Count) &&
        isA(inside[1], W.In, W.For) &&
        isA(inside[2], W.Each) &&
        inside.length <= 7 &&
        first?.payload?.values?.[0] === 1) ||
      (isA(first, Count) && isA(inside[1], W.In) && isA(inside[2], W.Each)) ||
      (isA(first, Count) && isA(inside[1], W.St) && isA(inside[2], W.In) && isA(inside[3], W.Each)) ||
      (has(W.Wrapped) && !has(W.Each)) ||
      inside.some(
        (token, at) =>
          /^per$/i.test(token.image) &&
          isA(inside[at + 1], Count, W.Row, W.Round, W.Ridge, Word, Fabric) &&
          !isA(inside[at + 1], W.Needle) &&
          !/^(rep|repeat|side)$/i.test(inside[at + 1]?.image ?? '') &&
          !inside.some((each) => /^used$/i.test(each.image)),
      ))
  )
    return 'remark';
  const statedWord = has(W.St) || has(W.Row, W.Round, W.Ridge);
  if (has(Stitch) && !(statedWord && inside.every((token) => !isA(token, Stitch) || token.payload?.entry?.kind === 'marker'))) {
    return 'group';
  }
  if (has(Count, TimesNumber) && statedWord && !has(...verbs)) return 'stated';
  if (has(W.Cm, W.Mm, W.Inch) && has(Count)) return 'measure';
  if (has(...verbs) && (has(Count) || has(Mark))) return 'group';
  return 'remark';
}
