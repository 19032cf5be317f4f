/** What all families of phrases share: spans, looking ahead, and the rules that families call before they are drawn. */
import { EmbeddedActionsParser, EOF, type ParserMethod, type TokenType } from 'chevrotain';
import type { Sized } from '../count.ts';
import { countClauseAt } from '../count-clauses.ts';
import {
  Any,
  Close,
  Comma,
  endOf,
  Fabric,
  FullStop,
  type KnitToken,
  Mark,
  Ordinal,
  PlainStitch,
  Semicolon,
  Sizes,
  SlipStitch,
  Stitch,
  tokenTypes,
  W,
} from '../tokens.ts';
import type {
  BindOff,
  CastOn,
  Change,
  Count,
  EndSide,
  Evenly,
  Extent,
  Goal,
  Hold,
  Join,
  Marker,
  PickUp,
  Repeat,
  Resolve,
  Segment,
  Span,
  Stated,
  Step,
  TakeUp,
  Turn,
  Work,
} from '../tree.ts';
import { FirstWords } from './first-words.ts';

/** Words that carry on a description and instruct nothing: "along the side of the flap", "for left front". */
export class Base extends EmbeddedActionsParser {
  /** Offset of the passage in the author's file. */
  base = 0;
  /** Masked text of the passage. */
  text = '';

  declare sequence: ParserMethod<[], Step[]>;
  declare item: ParserMethod<[], Step>;
  declare count: ParserMethod<[], Count>;
  declare extent: ParserMethod<[], Extent>;
  declare stated: ParserMethod<[], Stated>;
  declare turnStep: ParserMethod<[], Turn>;
  declare markerStep: ParserMethod<[], Marker>;
  declare resolveStep: ParserMethod<[], Resolve>;
  declare castOnStep: ParserMethod<[], CastOn>;
  declare bindOffStep: ParserMethod<[], BindOff>;
  declare pickUpStep: ParserMethod<[], PickUp>;
  declare holdStep: ParserMethod<[], Hold>;
  declare takeUpStep: ParserMethod<[], TakeUp>;
  declare joinStep: ParserMethod<[], Join>;
  declare changeStep: ParserMethod<[], Change>;
  declare evenlyStep: ParserMethod<[], Evenly>;
  declare goal: ParserMethod<[], Goal>;
  declare endSide: ParserMethod<[], EndSide>;
  declare schedule: ParserMethod<[], Segment[]>;

  constructor() {
    super(tokenTypes, {
      maxLookahead: 1,
      skipValidations: true,
      recoveryEnabled: false,
      nodeLocationTracking: 'none',
      lookaheadStrategy: new FirstWords(),
    });
  }

  /** A phrase ends where it ends: what follows is the next one's, and no error. Takes back the marks the parser sets behind the text. */
  onAfterParse(): void {
    const tokens = this.input;
    while (tokens.at(-1)?.tokenType === EOF) tokens.pop();
  }

  /** Where the next token begins, in the passage. */
  protected from(): number {
    return this.LA(1).startOffset;
  }

  /** From a place in the passage to the end of the last token eaten. */
  protected span(start: number): Span {
    return { start: this.base + start, end: this.base + endOf(this.LA(0)) };
  }

  protected tokenSpan(token: KnitToken): Span {
    return { start: this.base + token.startOffset, end: this.base + endOf(token) };
  }

  /** Whether the token `ahead` places on is one of the types. */
  protected at(ahead: number, ...types: TokenType[]): boolean {
    // As `isA`, without handing the types on: no question is asked more often.
    const own = this.LA(ahead).tokenType;
    for (let at = 0; at < types.length; at += 1) {
      if (own === types[at] || (types[at] === Stitch && (own === PlainStitch || own === SlipStitch))) return true;
    }
    return false;
  }

  protected separator(ahead = 1): boolean {
    return this.at(ahead, Comma, Semicolon, FullStop, Close, Sizes) || Number.isNaN(this.LA(ahead).startOffset);
  }

  /** A clause that tells a count in words: "giving 84 sts", "ending up with 84 sts". */
  protected countAhead(ahead: number): boolean {
    const at = (this as unknown as { currIdx: number }).currIdx + ahead;
    const tokens = this.input as KnitToken[];
    return countClauseAt(tokens, at, tokens.length, this.base, false) !== null;
  }

  protected within(from: number, count: number, ...types: Parameters<typeof this.at>[1][]): boolean {
    for (let ahead = from; ahead < from + count; ahead += 1) {
      if (this.at(ahead, ...types)) return true;
      if (this.separator(ahead)) return false;
    }
    return false;
  }

  /** A holder, or the pin that a few stitches wait on ("on a pin", "on second pin"). */
  protected holderAt(ahead: number): boolean {
    if (this.at(ahead, W.Holder)) return true;
    return /^pins?$/.test(this.image(ahead)) && (this.at(ahead - 1, W.On, W.From, Ordinal, W.Other) || this.at(ahead - 2, W.On, W.From));
  }

  protected image(ahead: number): string {
    const image = (this.LA(ahead).image ?? '').toLowerCase();
    // "repeat from star": the sign by its name
    return /^(?:star|asterisk)/.test(image) && this.at(ahead, Mark) ? '*' : image;
  }

  protected payload(ahead: number): KnitToken['payload'] {
    return (this.LA(ahead) as KnitToken).payload;
  }

  /** The author's words between two places of the passage, in one line. */
  protected words(start: number, end: number): string {
    return this.text.slice(start, end).replace(/\s+/g, ' ').trim();
  }

  protected countOf(token: KnitToken, values?: Sized): Count {
    return { type: 'count', values: values ?? token.payload?.values ?? [1], span: this.tokenSpan(token) };
  }

  /** The number inside a stitch's name: the `5 (6, 7)` of `k5 (6, 7)`. */
  protected countInside(token: KnitToken): Count | null {
    const { payload } = token;
    if (payload?.values === undefined) return null;
    const start = this.base + (payload.nOffset ?? token.startOffset);
    return { type: 'count', values: payload.values, span: { start, end: start + (payload.nLength ?? endOf(token) - token.startOffset) } };
  }

  /** One verb over a stretch of the row: "k to end", "rib 14", "St st to last 3 sts". */
  protected runOf(verb: KnitToken, extent: Extent, start: number): Repeat {
    const fabric = verb.tokenType === Fabric ? (verb.payload?.fabric ?? 'patt') : null;
    const name = verb.payload?.entry?.name ?? fabric ?? (verb.tokenType === W.Rib ? 'rib' : verb.tokenType === W.Patt ? 'patt' : 'work');
    const child: Work = { type: 'work', stitch: verb.payload?.entry?.name ?? 'work', n: null, manner: [], span: this.tokenSpan(verb) };
    return {
      type: 'repeat',
      form: 'run',
      verb: name,
      children: [child],
      extent,
      once: [],
      ending: null,
      mark: null,
      markSpan: null,
      span: this.span(start),
    };
  }

  /** Words that a look ahead has counted, taken as they stand. */
  protected countedWords = this.RULE('countedWords', (count?: () => number): void => {
    const left = { words: 0 };
    this.ACTION(() => {
      left.words = count?.() ?? 0;
    });
    this.AT_LEAST_ONE({
      GATE: () => left.words > 0,
      DEF: () => {
        this.CONSUME(Any);
        this.ACTION(() => {
          left.words -= 1;
        });
      },
    });
  });
}
