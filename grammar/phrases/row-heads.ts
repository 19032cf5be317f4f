/**
 * What stands before the number of plain rows or the word "until", and what may be said inside such rows.
 *
 *     Beg with a k row, cont in st st · beg and ending with a p row · dec 2 sts
 */
import { stitchUse } from '../lexicon/use.ts';
import {
  Any,
  Comma,
  Count as CountToken,
  Dash,
  Fabric,
  FullStop,
  type KnitToken,
  Name,
  Ordinal,
  PlainStitch,
  rowWords,
  Semicolon,
  Stitch,
  TimesNumber,
  W,
  Word,
} from '../tokens.ts';
import type { EndSide, Evenly, Plain, Statement } from '../tree.ts';
import { RowRepeats } from './row-repeats.ts';

/** What stands before the number of plain rows or the word "until". */
interface Head {
  readonly begin: Plain['begin'];
  readonly beginRow: number | null;
  readonly fabric: string | null;
  readonly verb: string;
  readonly as: boolean;
  readonly ending: EndSide | null;
}

export class RowHeads extends RowRepeats {
  /** Where the words behind "Beg with a k row," begin; 1 when there is no such beginning, 0 when "beg" means something else. */
  protected afterBegin(): number {
    if (!this.at(1, W.Beg)) return 1;
    let ahead = this.beginAhead();
    if (ahead === 0) return 0;
    ahead += 1;
    if (this.at(ahead, CountToken) && this.at(ahead - 1, ...rowWords)) ahead += 1;
    while (this.at(ahead, Comma, W.And)) ahead += 1;
    if (this.at(ahead, W.Ending)) {
      while (!this.at(ahead, ...rowWords) && !this.separator(ahead)) ahead += 1;
      ahead += 1;
      while (this.at(ahead, Comma, W.And)) ahead += 1;
    }
    return ahead;
  }

  /** Tokens of "Beg with a k row," before the comma or the verb; 0 when it is no beginning of rows. */
  protected beginAhead(): number {
    if (!this.at(1, W.Beg)) return 0;
    for (let ahead = 2; ahead < 8; ahead += 1) {
      if (this.at(ahead, ...rowWords)) return ahead;
      if (this.separator(ahead)) return 0;
    }
    return 0;
  }

  /** Index of the comma behind ", beg with a k row," where the words go on after it; 0 when no such clause stands at `ahead`. */
  protected beginBehindComma(ahead: number): number {
    if (!this.at(ahead, Comma) || !this.at(ahead + 1, W.Beg)) return 0;
    for (let next = ahead + 2; next < ahead + 10; next += 1) {
      if (this.at(next, Comma)) return this.at(next + 1, W.Until, W.For) ? next : 0;
      if (this.separator(next)) return 0;
    }
    return 0;
  }

  /** Common head of plain rows and rows to a length: "Beg with a k row, cont in st st for". */
  protected head = this.RULE('head', (): Head => {
    const start = this.from();
    let begin: Plain['begin'] = null;
    let ending: EndSide | null = null;
    let beginRow: number | null = null;
    let fabric: string | null = null;
    let verb = 'work';
    let as = false;
    let both = false;
    this.OPTION({
      GATE: () => this.at(1, W.Beg),
      DEF: () => {
        this.CONSUME(Any);
        this.MANY({
          GATE: () => !this.at(1, ...rowWords),
          DEF: () => {
            const token = this.CONSUME1(Any) as KnitToken;
            this.ACTION(() => {
              if (this.at(0, PlainStitch)) begin = token.payload?.entry?.name === 'p' ? 'p' : 'k';
              if (this.at(0, W.Rs)) begin = 'RS';
              if (this.at(0, W.Ws)) begin = 'WS';
              if (this.at(0, Ordinal)) beginRow = token.payload?.values?.[0] ?? null;
              if (this.at(0, W.Ending)) both = true;
            });
          },
        });
        this.CONSUME2(Any);
        // "beg and ending with a p row"
        this.ACTION(() => {
          if (both && begin !== null)
            ending = {
              type: 'endSide',
              last: begin === 'k' || begin === 'RS' ? 'RS' : 'WS',
              row: null,
              edge: null,
              span: this.span(start),
            };
        });
        this.OPTION1({
          GATE: () => this.at(1, CountToken) && this.at(0, ...rowWords),
          DEF: () => {
            const token = this.CONSUME3(Any) as KnitToken;
            this.ACTION(() => {
              beginRow = token.payload?.values?.[0] ?? null;
            });
          },
        });
        this.MANY1({ GATE: () => this.at(1, Comma, W.And) && !this.endingSideAhead(), DEF: () => this.CONSUME4(Any) });
        // "beg and ending with a p row, work 7 rows": the side of the last row stands before the verb
        this.OPTION2({
          GATE: () => this.endingSideAhead(),
          DEF: () => {
            const side = this.SUBRULE(this.endSide);
            this.ACTION(() => {
              ending = side;
            });
          },
        });
        this.MANY3({ GATE: () => this.at(1, Comma, W.And), DEF: () => this.CONSUME6(Any) });
      },
    });
    this.MANY2({
      GATE: () =>
        !this.at(1, CountToken, W.Until, Comma, FullStop, Semicolon) &&
        !(this.at(1, W.For) && this.at(2, CountToken)) &&
        !(this.at(1, PlainStitch) && this.payload(1)?.values !== undefined) &&
        !(this.at(1, W.More) && /^(?:another|one more)$/.test(this.image(1)) && this.at(2, ...rowWords)) &&
        ((this.at(1, W.And) && this.at(2, W.Work, W.Cont)) ||
          this.at(1, W.InAll) ||
          this.at(
            1,
            W.Work,
            W.Cont,
            W.Patt,
            W.Rib,
            W.Keep,
            Fabric,
            Name,
            W.In,
            W.Next,
            W.Straight,
            W.As,
            W.Set,
            W.Given,
            W.For,
            W.Of,
            W.Then,
            W.More,
            W.On,
            W.These,
            W.Rs,
            W.Ws,
            PlainStitch,
            W.St,
            W.Every,
            W.Row,
            W.Round,
            W.Across,
            W.All,
            W.End,
            W.Foll,
          ) ||
          this.at(1, Word)),
      DEF: () => {
        const token = this.CONSUME5(Any) as KnitToken;
        this.ACTION(() => {
          if (this.at(0, Fabric)) fabric = token.payload?.fabric ?? null;
          else if (this.at(0, Name)) fabric ??= token.payload?.name ?? null;
          else if (this.at(0, W.Rib)) fabric ??= 'rib';
          else if (this.at(0, W.Patt)) fabric ??= 'patt';
          else if (this.at(0, PlainStitch)) verb = token.payload?.entry?.name ?? 'k';
          else if (this.at(0, W.As)) as = true;
        });
      },
    });
    return { begin, beginRow, fabric, verb, as, ending };
  });

  protected insideRows = this.RULE('insideRows', (): Statement => {
    return this.OR([
      { GATE: () => this.evenlyAhead(), ALT: () => this.SUBRULE(this.evenlyStep) as Statement },
      { GATE: () => this.shapeAhead(), ALT: () => this.SUBRULE(this.shape) as Statement },
      { GATE: () => this.at(1, W.CastOn, W.BindOff), ALT: () => this.SUBRULE(this.edgeRows) as Statement },
      { GATE: () => this.stitchSpread() !== 0, ALT: () => this.SUBRULE(this.spreadStitch) as Statement },
      { ALT: () => this.SUBRULE(this.looseChange) as Statement },
    ]);
  });

  /** Stitches gained or lost by "working k2tog 5 times evenly", "k2tog 5 times" among plain rows; 0 where the words are others. */
  protected stitchSpread(from = 1): number {
    const at = this.at(from, W.Work) ? from + 1 : from;
    const { entry, values } = this.payload(at) ?? {};
    if (!this.at(at, Stitch) || entry === undefined || (values ?? [1]).length !== 1) return 0;
    if (!(this.at(at + 1, CountToken) && this.at(at + 2, W.Times)) && !this.at(at + 1, TimesNumber)) return 0;
    const use = stitchUse(entry, values?.[0] ?? 1);
    return use.makes - use.takes;
  }

  /** "working k2tog 5 times evenly across": told by its stitch and spread over the row. */
  private spreadStitch = this.RULE('spreadStitch', (): Evenly => {
    const start = this.from();
    const net = this.ACTION(() => this.stitchSpread());
    this.OPTION({ GATE: () => this.at(1, W.Work), DEF: () => this.CONSUME(Any) });
    this.CONSUME1(Any);
    const often = this.SUBRULE(this.howOften, { ARGS: ['from'] });
    this.MANY({ GATE: () => this.at(1, W.Evenly, W.Across, W.Around, Word) && !this.separator(), DEF: () => this.CONSUME2(Any) });
    return this.ACTION(() => ({
      type: 'evenly',
      change: net > 0 ? 'inc' : 'dec',
      count: { ...often.count, values: often.count.values.map((value) => (value === null ? null : value * Math.abs(net))) },
      onLastRow: false,
      span: this.span(start),
    }));
  });

  /** "dec 2 sts", with no word where: spread over the row. */
  private looseChange = this.RULE('looseChange', (): Evenly => {
    const start = this.from();
    const head = this.CONSUME(Any) as KnitToken;
    const count = this.SUBRULE(this.count);
    this.OPTION({ GATE: () => this.at(1, W.St), DEF: () => this.CONSUME1(Any) });
    return this.ACTION(() => ({
      type: 'evenly',
      change: head.tokenType === W.Inc ? 'inc' : 'dec',
      count,
      onLastRow: false,
      span: this.span(start),
    }));
  });

  protected beginClause = this.RULE('beginClause', (): { begin: Plain['begin']; row: number | null; last: EndSide | null } => {
    const start = this.from();
    let begin: Plain['begin'] = null;
    let row: number | null = null;
    let both = false;
    this.AT_LEAST_ONE({
      GATE: () => !this.separator() && !this.at(1, Dash),
      DEF: () => {
        const token = this.CONSUME(Any) as KnitToken;
        this.ACTION(() => {
          if (this.at(0, PlainStitch)) begin = token.payload?.entry?.name === 'p' ? 'p' : 'k';
          if (this.at(0, W.Rs)) begin = 'RS';
          if (this.at(0, W.Ws)) begin = 'WS';
          if (this.at(0, W.Ending, W.End)) both = true;
          if ((this.at(0, CountToken) && this.at(-1, ...rowWords)) || (this.at(0, Ordinal) && this.at(1, ...rowWords)))
            row = token.payload?.values?.[0] ?? null;
        });
      },
    });
    return this.ACTION(() => ({
      begin,
      row,
      last:
        both && begin !== null
          ? { type: 'endSide', last: begin === 'k' || begin === 'RS' ? 'RS' : 'WS', row: null, edge: null, span: this.span(start) }
          : null,
    }));
  });
}
