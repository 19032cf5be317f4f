/**
 * Stitches cast on or off at the beginning of several rows.
 *
 *     Cast off 4 sts at beg of next 2 rows, then 3 sts at beg of foll 4 rows
 */
import type { Sized } from '../count.ts';
import { Any, Colon, Comma, Count as CountToken, Dash, type KnitToken, PlainStitch, rowWords, Semicolon, W, Word } from '../tokens.ts';
import type { Count, EdgeRows, Segment } from '../tree.ts';
import { edgeNamed, Shaping } from './shaping.ts';

export class ShapedEdges extends Shaping {
  protected edgeRowsAhead(): boolean {
    const skipped = this.placeBefore() || this.scheduleBefore();
    const verb = skipped + 1;
    if (skipped === 0 && this.leavingRowsAhead()) return true;
    if (!this.at(verb, W.BindOff, W.CastOn)) return false;
    if (skipped > 0) return this.at(verb + 1, CountToken) && this.at(verb + 2, W.St);
    if (this.at(2, W.Every, W.Alt, W.From))
      return this.within(2, 10, CountToken) && (this.at(2, W.From) ? this.within(2, 5, W.Edge) : true);
    for (let ahead = 2; ahead < 9; ahead += 1) {
      if (this.at(ahead, W.At) && this.at(ahead + 1, W.Beg)) return true;
      if (this.at(ahead, W.Beg)) return true;
      if (this.at(ahead, W.At) && this.at(ahead + 1, W.End) && this.at(ahead + 2, W.Of))
        return this.at(1, W.CastOn) && this.segmentAhead(ahead + 3);
      if (this.at(ahead, W.At) && this.at(ahead + 2, W.Edge)) return true;
      if (this.at(ahead, W.On) && this.segmentAhead(ahead) && this.at(ahead - 1, W.St)) return true;
      if (this.at(ahead, W.At) && this.at(ahead + 1, W.Each, W.These, W.Same)) return true;
      if (this.separator(ahead)) return false;
    }
    return false;
  }

  /** "Leave 6 sts unworked at end of next 2 rows, then 5 sts at end of foll 2 rows": short rows told by what each leaves. */
  private leavingRowsAhead(): boolean {
    if (!this.at(1, W.Leaving) || !this.at(2, CountToken) || !this.at(3, W.St) || !this.at(4, W.Unworked)) return false;
    let ahead = 5;
    while (this.at(ahead, W.At, W.End, W.Of, W.On) && ahead < 9) ahead += 1;
    return ahead > 5 && this.segmentAhead(ahead);
  }

  /** "Cast off 4 sts at beg of next 2 rows, then 3 sts at beg of foll 4 rows". */
  edgeRows = this.RULE('edgeRows', (): EdgeRows => {
    const start = this.from();
    const parts: { count: Count; rows: Segment[]; span: { start: number; end: number } }[] = [];
    let edge: string | null = null;
    const noteEdge = (): void => {
      if (this.at(0, W.Edge) && edge === null) edge = edgeNamed(`${this.image(-1)} edge`);
    };
    const ahead: Segment[] = [];
    this.OPTION6({
      GATE: () => this.scheduleBefore() > 0,
      DEF: () => {
        this.many(22, { GATE: () => this.at(1, W.At, W.Beg) || (this.at(0, W.Beg) && this.at(1, W.Of)), DEF: () => this.consume(22, Any) });
        const read = this.SUBRULE3(this.schedule);
        this.ACTION(() => ahead.push(...read));
      },
    });
    this.MANY4({
      GATE: () => !this.at(1, W.BindOff, W.CastOn, W.Leaving),
      DEF: () => {
        this.CONSUME4(Any);
        this.ACTION(() => noteEdge());
      },
    });
    const head = this.CONSUME(Any) as KnitToken;
    // "every other row: 3 sts once, 2 sts twice"
    const interval: { k: Sized } = { k: [2] };
    this.OPTION2({
      GATE: () => this.at(1, W.Every, W.Alt) && this.segmentAhead(1),
      DEF: () => {
        const every = this.SUBRULE1(this.schedule);
        this.ACTION(() => {
          interval.k = every[0]?.k ?? [2];
        });
        this.OPTION3({ GATE: () => this.at(1, Colon, Comma), DEF: () => this.CONSUME5(Any) });
      },
    });
    this.MANY({
      GATE: () => parts.length === 0 || this.edgePartAhead(),
      DEF: () => {
        const from = this.from();
        const rows: Segment[] = [];
        this.MANY1({
          GATE: () => !this.at(1, CountToken) && !(this.at(0, W.Of) && this.segmentAhead(1)),
          DEF: () => {
            this.CONSUME1(Any);
            this.ACTION(() => noteEdge());
          },
        });
        // "at beg of next 2 rows 5 sts": the rows stand before the number
        this.OPTION4({
          GATE: () => !this.at(1, CountToken) && this.segmentAhead(1),
          DEF: () => {
            const read = this.SUBRULE2(this.schedule);
            this.ACTION(() => rows.push(...read));
          },
        });
        const count = this.SUBRULE(this.count);
        this.MANY2({
          GATE: () =>
            !this.segmentAhead(1) &&
            (this.at(1, W.St, W.At, W.Beg, W.Of, W.Each, W.Edge, W.In, W.Patt, W.End, W.These, W.On, W.Same, W.Evenly, W.Rib, W.Unworked) ||
              (this.at(1, W.From) && this.at(2, W.Each)) ||
              (this.at(1, Word) && !this.at(2, CountToken))),
          DEF: () => {
            this.CONSUME2(Any);
            this.ACTION(() => noteEdge());
          },
        });
        this.OPTION({
          GATE: () => this.segmentAhead(1),
          DEF: () => {
            const read = this.SUBRULE(this.schedule);
            this.ACTION(() => rows.push(...read));
          },
        });
        // "at beg of row, k to end": the row in hand
        this.option(43, {
          GATE: () => this.at(0, W.Of) && this.at(1, ...rowWords),
          DEF: () => {
            this.consume(43, Any);
            this.ACTION(() => {
              if (ahead.length > 0) return;
              rows.push({ type: 'segment', kind: 'next', n: null, k: null, more: 'plain', until: null, span: this.span(from) });
            });
          },
        });
        // "for sleeve", "for armholes": what it is for
        this.option(44, {
          GATE: () => this.at(1, W.For) && this.at(2, Word, W.Edge, W.Each) && !this.at(2, CountToken),
          DEF: () =>
            this.many(44, { GATE: () => this.at(1, W.For, Word, W.Edge, W.Each) && !this.timesAhead(), DEF: () => this.consume(44, Any) }),
        });
        // "3 sts once, 2 sts twice"
        this.OPTION1({
          GATE: () => this.timesAhead(),
          DEF: () => {
            const often = this.SUBRULE(this.howOften, { ARGS: ['from'] });
            this.ACTION(() => {
              rows.push({
                type: 'segment',
                kind: 'follEvery',
                n: often.count,
                k: interval.k,
                more: 'plain',
                until: null,
                span: this.span(from),
              });
            });
          },
        });
        this.ACTION(() => {
          if (rows.length === 0) rows.push(...ahead.splice(0));
        });
        this.ACTION(() => parts.push({ count, rows, span: this.span(from) }));
      },
    });
    // ", taking these sts into patt"
    this.option(46, {
      GATE: () => this.takenIntoPattern(),
      DEF: () => this.many(46, { GATE: () => !this.at(0, W.Patt), DEF: () => this.consume(46, Any) }),
    });
    this.MANY3({
      GATE: () =>
        (this.at(1, Comma) && this.at(2, W.Work) && (this.at(3, Word) || this.at(3, W.To))) ||
        (this.at(0, Comma) && this.at(1, W.Work)) ||
        (this.at(0, W.Work) && this.at(1, Word, W.To)) ||
        (this.at(0, Word) && this.at(1, W.St, W.Into, W.Patt)) ||
        (this.at(0, W.St, W.To, W.Into) && this.at(1, W.Into, W.Patt, W.End)),
      DEF: () => this.CONSUME3(Any),
    });
    // ", patt to end", ", then k to end", "and work across": the rest of the same row
    this.OPTION5({
      GATE: () => this.restOfRow() > 0,
      DEF: () => this.many(45, { GATE: () => !this.at(0, W.End, W.Across), DEF: () => this.consume(45, Any) }),
    });
    return this.ACTION(
      (): EdgeRows => ({
        type: 'edgeRows',
        change: head.tokenType === W.CastOn ? 'castOn' : head.tokenType === W.Leaving ? 'leave' : 'bindOff',
        parts,
        edge,
        ...(/\bat (?:the )?end of\b/i.test(this.words(start, this.LA(0).startOffset)) ? { atEnd: true } : {}),
        ...(/\b(?:each|both) (?:[a-z]+ )?(?:edges?|sides?|ends?|armholes?|shoulders?|fronts?)\b/i.test(
          this.words(start, this.LA(0).startOffset + this.LA(0).image.length),
        )
          ? { each: true }
          : {}),
        stated: [],
        span: this.span(start),
      }),
    );
  });

  /** ", taking these sts into patt" behind the rows: how the new stitches are worked from then on. */
  private takenIntoPattern(): boolean {
    if (!this.at(1, Comma) || !/^(?:taking|working|bringing|incorporating)$/.test(this.image(2))) return false;
    let ahead = 3;
    while (ahead < 9 && this.at(ahead, W.These, W.Inc, W.St, W.Into, W.In, Word)) ahead += 1;
    return this.at(ahead - 1, W.Into, W.In) && this.at(ahead, W.Patt) && this.separator(ahead + 1);
  }

  /** Tokens of ", then work to end"; 0 when the words behind the rows are others. */
  private restOfRow(): number {
    let ahead = 1;
    while (ahead < 4 && this.at(ahead, Comma, W.And, W.Then)) ahead += 1;
    if (ahead === 1 || !this.at(ahead, W.Patt, W.Rib, W.Work, PlainStitch) || this.payload(ahead)?.values !== undefined) return 0;
    if (this.at(ahead + 1, W.Across) && this.separator(ahead + 2)) return ahead + 1;
    return this.at(ahead + 1, W.To) && this.at(ahead + 2, W.End) ? ahead + 2 : 0;
  }

  private edgePartAhead(): boolean {
    let ahead = 1;
    while (this.at(ahead, Comma, W.And, W.Then, Semicolon, W.BindOff, W.CastOn)) ahead += 1;
    if (ahead === 1 || this.at(0, Dash)) return false;
    // ", at beg of next 4 rows 3 sts"
    if (this.at(ahead, W.At) && this.at(ahead + 1, W.Beg) && this.at(ahead + 2, W.Of)) {
      for (let look = ahead + 3; look < ahead + 9; look += 1) {
        if (this.at(look, W.Row, W.Round)) return this.at(look + 1, CountToken) && this.at(look + 2, W.St);
        if (this.separator(look)) return false;
      }
      return false;
    }
    if (!this.at(ahead, CountToken)) return false;
    for (let look = ahead + 1; look < ahead + 6; look += 1) {
      if (this.at(look, W.Beg, W.At, W.Unworked) || this.timesAt(look)) return true;
      // "2 sts at neck edge on next row and 1 st on foll 3 alt rows"
      if (this.at(look, W.On) && this.at(look - 1, W.St) && this.segmentAhead(look + 1)) return true;
      if (this.separator(look)) return false;
    }
    return false;
  }

  private timesAt(ahead: number): boolean {
    return (this.at(ahead, CountToken) && this.at(ahead + 1, W.Times)) || /^(once|twice)$/.test(this.image(ahead));
  }
}
