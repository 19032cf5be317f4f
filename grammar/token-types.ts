/** The kinds of token, one for each word of the trade, and what a token carries. */
import { createToken, type IToken, Lexer, type TokenType } from 'chevrotain';
import type { Sized } from './count.ts';
import type { Entry } from './lexicon/entry.ts';
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
/** "for 3rd size only" within a sentence; its values are 1 for the sizes named and 0 for the others. */
export const Sizes = createToken({ name: 'Sizes', pattern: Lexer.NA, categories: Any });

/** One token type for each word of the trade. */
export const W = Object.fromEntries(
  (Object.keys(words) as WordName[]).map((name) => [name, createToken({ name: `W${name}`, pattern: Lexer.NA, categories: Any })]),
) as Record<WordName, TokenType>;

/** The words for one working of all the stitches. */
export const rowWords = [W.Row, W.Round];

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
