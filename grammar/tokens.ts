/**
 * The tokens: one chevrotain lexer whose vocabulary is the lexicon, the words of the trade and the draft's own words.
 * It reads the masked text of a passage, so a token's offset is a place in the author's file.
 */
import { type CustomPatternMatcherReturn, createToken, Lexer, type TokenType } from 'chevrotain';
import { type Colours, coloursIn } from './colours.ts';
import type { Sized } from './count.ts';
import { inchesIn, withoutShorteningStops } from './full-stops.ts';
import { ambiguityOf } from './lexicon/ambiguous.ts';
import { entryNamed } from './lexicon/index.ts';
import { closed, retyped, silent, withNumberedRows } from './neighbours.ts';
import { ordinalName } from './number-cells.ts';
import { looseRange, numberAt } from './numbers.ts';
import { signsOfRepeats } from './repeat-signs.ts';
import {
  Any,
  Close,
  Colon,
  Comma,
  Count,
  Dash,
  Equals,
  Fabric,
  FullStop,
  type KnitToken,
  Mark,
  Name,
  Open,
  Ordinal,
  Other,
  type Payload,
  PlainStitch,
  Semicolon,
  Sizes,
  Slash,
  SlipStitch,
  Space,
  Stitch,
  TimesNumber,
  W,
  Word,
} from './token-types.ts';
import { type ToldStitch, toldStitchesIn } from './told-stitches.ts';
import { matchAt, type Vocabulary } from './vocabulary.ts';
import type { WordName } from './words.ts';

export * from './token-types.ts';

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

// The lexer is called synchronously for one passage at a time; the settings of that call stand here.
let vocabulary: Vocabulary;
let sizes: number | null = null;
let colours: Colours = { counts: new Map(), words: new Map() };
let toldStitches: ReadonlyMap<number, ToldStitch> = new Map();
let signs: ReadonlySet<number> = new Set();
let inches: ReadonlySet<number> = new Set();

const wordPattern = /[\p{L}][\p{L}\p{M}'’]*(?:-[\p{L}]+)*/uy;
const markPattern = /\*+|†+|‡+/y;

/** Words that number what follows them, and may stand close to the number. */
const beforeNumbers: ReadonlySet<WordName> = new Set(['Row', 'Round', 'CastOn', 'BindOff', 'Needle']);

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
  // "(k1, p1)*8": so many times
  if (mark && /[)\]]$/.test(text.slice(0, offset)) && /^\*\d/.test(text.slice(offset))) return make(1, W.Times);
  if (mark) return make(mark[0].length, Mark);
  if (signs.has(offset)) return make(/^(?:star|asterisk)s?/i.exec(text.slice(offset, offset + 10))?.[0].length ?? 1, Mark);
  if (/[*†‡]/.test(text[offset - 1] ?? '') && /^['’]?s\b/i.test(text.slice(offset, offset + 3)))
    return make(/^['’]/.test(text[offset] ?? '') ? 2 : 1, W.The);
  const colourEnd = colours.words.get(offset);
  if (colourEnd !== undefined) return make(colourEnd - offset, W.The);
  const told = toldStitches.get(offset);
  if (told !== undefined) {
    const entry = told.name === null ? undefined : entryNamed(told.name);
    if (entry === undefined) return make(told.length, W.The);
    return make(told.length, Stitch, { entry, ...(told.n === null ? {} : { values: [told.n] }) });
  }
  if (inches.has(offset)) return make(2, W.Inch);
  const rib = ribOverLength(text, offset);
  if (rib !== null) return make(rib.length, Fabric, { fabric: rib.fabric });
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
  if (known === null && colours.words.size > 0) {
    // "K2A": the colour written close to its number
    for (let at = offset + 1; at < offset + 6; at += 1)
      if (colours.words.has(at)) known = matchAt(text.slice(0, at), offset, vocabulary, sizes);
  } else if (known !== null && colours.words.size > 0) {
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
  // "Knit 3 in.", "knit 3 cm": so long, and not so many
  if (known?.meaning.is === 'stitch' && known.n !== null && /^(?:k|p|knit|purl)\s/i.test(text.slice(offset, offset + 5))) {
    const behind = /^\s?(?:cms?|mm|ins|inch(?:es)?|["”])(?![a-z])/i.test(text.slice(offset + known.length, offset + known.length + 8));
    const verb = /^[a-z]+/i.exec(text.slice(offset, offset + 5))?.[0].length ?? 0;
    if (verb > 0 && (behind || inches.has(offset + known.length) || inches.has(offset + known.length + 1)))
      known = matchAt(text.slice(0, offset + verb), offset, vocabulary, sizes);
  }
  // "1. row: K. 2. row: P.": the number is the next row's.
  if (known?.meaning.is === 'stitch' && /^[kp][. ] ?\d+\.\s*(?:rows?|rnds?|rounds?)\b/i.test(text.slice(offset, offset + 20)))
    known = matchAt(text.slice(0, offset + 1), offset, vocabulary, sizes);
  wordPattern.lastIndex = offset;
  const word = wordPattern.exec(text);
  // "Row1:", "CO45": the number stands close to the word.
  if (known === null && word !== null && /^\d/.test(text.slice(offset + word[0].length))) {
    const close = matchAt(text.slice(0, offset + word[0].length), offset, vocabulary, sizes);
    if (close?.meaning.is === 'word' && beforeNumbers.has(close.meaning.word)) known = close;
  }
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
    // "(k1, p1) x6"
    if (/^x$/i.test(word[0]) && /^\d/.test(text.slice(offset + 1)) && /[)\]*\s]$/.test(text.slice(0, offset))) return make(1, W.Times);
    // "SR3": the letters of a short row stand close to its number.
    if (/^srs?$/i.test(word[0])) return make(word[0].length, W.Row);
    // "r3:", "rep r1–2", "k 60 r": rows in terse shorthand
    if (/^r$/i.test(word[0]) && (/^\d/.test(text.slice(offset + 1)) || /\d[)\]]?\s$/.test(text.slice(Math.max(0, offset - 3), offset))))
      return make(1, W.Row);
    return make(word[0].length, Word);
  }
  const range = looseRange(text, offset, sizes);
  if (range > 0) return make(range, Other);
  const type = punctuation.get(text[offset] ?? '');
  if (type) return make(1, type);
  const code = text.codePointAt(offset) ?? 0;
  return make(code > 0xffff ? 2 : 1, Other);
}

/** "K1, P1 for 2 in." at the head of a sentence: the rib of that name, over a length or so many rows. */
const overLength =
  /(k ?(\d),? ?p ?(\d))(?: in rib(?:bing)?)? for (?:about )?\d+(?:[ .-]?[\d½¼¾/]+)? ?(?:cm|mm|ins?|inch(?:es)?|["”]|rows?|rnds?|rounds?)/iy;

function ribOverLength(text: string, offset: number): { readonly length: number; readonly fabric: string } | null {
  if (
    !/k/i.test(text[offset] ?? '') ||
    !/(?:^|[.;:]\s*|\b(?:and|then|needles?,?|in)\s+)$/i.test(text.slice(Math.max(0, offset - 12), offset))
  )
    return null;
  overLength.lastIndex = offset;
  const match = overLength.exec(text);
  if (match === null) return null;
  const named = matchAt(`k${match[2]}, p${match[3]} rib`, 0, vocabulary, sizes);
  if (named?.meaning.is !== 'fabric') return null;
  const said = /^ in rib(?:bing)?/i.exec(text.slice(offset + (match[1] ?? '').length))?.[0].length ?? 0;
  return { length: (match[1] ?? '').length + said, fabric: named.meaning.fabric };
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
  Sizes,
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
  toldStitches = toldStitchesIn(bare);
  signs = signsOfRepeats(bare);
  inches = inchesIn(text);
  for (const token of lexer.tokenize(bare).tokens as KnitToken[]) {
    const type = (token.payload as (Payload & { type?: TokenType }) | undefined)?.type;
    if (type !== undefined) {
      token.tokenType = type;
      token.tokenTypeIdx = type.tokenTypeIdx ?? 0;
    }
    if (silent(token, tokens)) continue;
    closed(token, tokens);
    tokens.push(token);
  }
  retyped(tokens);
  return [...withNumberedRows(tokens)];
}
