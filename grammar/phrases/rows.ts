/**
 * Rows that only go on: so many rows, or rows to a length.
 *
 *     Beg with a k row, work 10 rows in st st · Cont straight until armhole measures 19 cm, ending with a WS row · keeping patt correct
 */

import { onThisRow } from '../shaped-rows.ts';
import {
  Any,
  Close,
  Comma,
  Count as CountToken,
  Dash,
  Fabric,
  FullStop,
  type KnitToken,
  Name,
  Open,
  Ordinal,
  PlainStitch,
  Semicolon,
  SlipStitch,
  Stitch,
  W,
  Word,
} from '../tokens.ts';
import type { Count, Declare, EndSide, Evenly, Goal, Plain, Statement, Until } from '../tree.ts';
import { RowRepeats } from './row-repeats.ts';

const rowWords = [W.Row, W.Round];

/** What stands before the number of plain rows or the word "until". */
interface Head {
  readonly begin: Plain['begin'];
  readonly beginRow: number | null;
  readonly fabric: string | null;
  readonly verb: string;
  readonly as: boolean;
  readonly ending: EndSide | null;
}

/** "in rib as given for back until …": the piece. */
function pieceNamed(words: string): string | null {
  const match = /\b(?:as|like) (?:(?:given|worked|written|instructed) )?(?:for|on) (?:the )?([a-z][a-z ]*)/i.exec(words);
  return (
    match?.[1]
      ?.toLowerCase()
      .replace(/ (?:until|for|to)\b.*$/, '')
      .trim() ?? null
  );
}

export class Rows extends RowRepeats {
  protected plainAhead(): boolean {
    let ahead = this.afterBegin();
    if (ahead === 0) return false;
    // "work a further 18 rows", "k 1 row", "cont in st st for 6 rows", "st st 3 rows", "6 rows st st"
    if (this.at(ahead, PlainStitch) && this.payload(ahead)?.values !== undefined)
      return this.at(ahead + 1, ...rowWords, W.Ridge) || (this.at(ahead + 1, W.More, W.Rs, W.Ws) && this.at(ahead + 2, ...rowWords));
    if (this.at(ahead, W.Work, W.Cont, W.Patt, W.Rib, PlainStitch, Fabric)) {
      ahead += 1;
      for (const far = ahead + 13; ahead < far; ahead += 1) {
        if (this.at(ahead, CountToken)) {
          let next = ahead + 1;
          while (this.at(next, W.More, W.Rs, W.Ws, Fabric, W.Straight, Word) && next < ahead + 4) next += 1;
          return (
            this.at(next, ...rowWords, W.Ridge) && !this.at(ahead - 1, ...rowWords) && !/^(less|fewer|shorter)$/.test(this.image(next + 1))
          );
        }
        if (this.at(ahead, W.Until, W.To, Comma, ...rowWords, Stitch) || this.separator(ahead)) return false;
      }
      return false;
    }
    if (this.at(ahead, CountToken))
      return (
        (this.at(ahead + 1, W.Ridge) || this.at(ahead + 1, ...rowWords)) &&
        (this.at(ahead + 2, Fabric, W.Straight, W.Rib, W.Patt, W.In) ||
          (this.at(ahead + 2, W.Of) && this.at(ahead + 3, Open) && this.payload(ahead + 3)?.holds === 'group'))
      );
    return false;
  }

  /** Where the words behind "Beg with a k row," begin; 1 when there is no such beginning, 0 when "beg" means something else. */
  private afterBegin(): number {
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
  private beginAhead(): number {
    if (!this.at(1, W.Beg)) return 0;
    for (let ahead = 2; ahead < 8; ahead += 1) {
      if (this.at(ahead, ...rowWords)) return ahead;
      if (this.separator(ahead)) return 0;
    }
    return 0;
  }

  /** Common head of plain rows and rows to a length: "Beg with a k row, cont in st st for". */
  private head = this.RULE('head', (): Head => {
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
        (this.at(
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

  plain = this.RULE('plain', (): Plain => {
    const start = this.from();
    const head = this.SUBRULE(this.head);
    const state: {
      count: Count | null;
      unit: 'row' | 'round';
      fabric: string | null;
      ridges: boolean;
      ending: EndSide | null;
      inside: Statement[];
      begin: Plain['begin'];
      beginRow: number | null;
      as: boolean;
      verb: string;
    } = {
      count: null,
      unit: 'row',
      fabric: null,
      ridges: false,
      ending: null,
      inside: [],
      begin: null,
      beginRow: null,
      as: false,
      verb: 'work',
    };
    this.OPTION({ GATE: () => this.at(1, W.For), DEF: () => this.CONSUME(Any) });
    const token = this.CONSUME1(Any) as KnitToken;
    this.ACTION(() => {
      if (token.payload?.entry !== undefined) {
        state.verb = token.payload.entry.name;
        state.count = this.countInside(token);
      } else state.count = this.countOf(token);
    });
    this.MANY({
      GATE: () => !this.at(1, ...rowWords, W.Ridge) && !this.separator(),
      DEF: () => {
        const word = this.CONSUME2(Any) as KnitToken;
        this.ACTION(() => {
          if (this.at(0, Fabric)) state.fabric = word.payload?.fabric ?? null;
        });
      },
    });
    this.CONSUME3(Any);
    this.ACTION(() => {
      if (this.at(0, W.Round)) state.unit = 'round';
      if (this.at(0, W.Ridge)) state.ridges = true;
    });
    // "15 rounds of (k1, p1)"
    this.option(41, {
      GATE: () => this.at(1, W.Of) && this.at(2, Open) && this.payload(2)?.holds === 'group',
      DEF: () => {
        this.consume(41, Any);
        this.consume(42, Any);
        this.many(41, { GATE: () => !this.at(1, Close) && !Number.isNaN(this.LA(1).startOffset), DEF: () => this.consume(43, Any) });
        this.consume(44, Close);
        this.ACTION(() => {
          state.fabric ??= 'patt';
        });
      },
    });
    this.MANY1({
      GATE: () => this.plainTailAhead(),
      DEF: () => {
        this.OR([
          {
            GATE: () => this.endingSideAhead(),
            ALT: () => {
              const side = this.SUBRULE(this.endSide);
              this.ACTION(() => {
                state.ending = side;
              });
            },
          },
          {
            GATE: () => this.resolveAhead(),
            ALT: () => {
              const marks = this.SUBRULE(this.resolveStep);
              this.ACTION(() => state.inside.push(marks));
            },
          },
          {
            GATE: () => (this.at(1, Comma, W.And) && this.at(2, W.Inc, W.Dec)) || this.at(1, W.Inc, W.Dec),
            ALT: () => {
              this.OPTION1({ GATE: () => this.at(1, Comma, W.And), DEF: () => this.CONSUME4(Any) });
              const step = this.SUBRULE(this.insideRows);
              this.ACTION(() => state.inside.push(step));
            },
          },
          {
            GATE: () => this.at(1, Comma) && this.at(2, W.Beg),
            ALT: () => {
              this.CONSUME5(Any);
              const begin = this.SUBRULE(this.beginClause);
              this.ACTION(() => {
                if (begin.last) state.ending = begin.last;
                state.begin = begin.begin;
                state.beginRow = begin.row;
              });
            },
          },
          { GATE: () => this.at(1, Comma, Open), ALT: () => this.SUBRULE(this.asideClause) },
          {
            ALT: () => {
              const word = this.CONSUME6(Any) as KnitToken;
              this.ACTION(() => {
                if (this.at(0, Fabric)) state.fabric = word.payload?.fabric ?? null;
                else if (this.at(0, Name)) state.fabric ??= word.payload?.name ?? null;
                else if (this.at(0, W.Rib)) state.fabric ??= 'rib';
                else if (this.at(0, W.Patt)) state.fabric ??= 'patt';
                else if (this.at(0, W.As)) state.as = true;
              });
            },
          },
        ]);
      },
    });
    return this.ACTION((): Plain => {
      let count = state.count ?? { type: 'count' as const, values: [1], span: this.span(start) };
      if (state.ridges) count = { ...count, values: count.values.map((value) => (value === null ? null : value * 2)) };
      const verb = head.verb !== 'work' ? head.verb : state.verb;
      const fabric = state.fabric ?? head.fabric ?? (verb === 'k' ? 'knit' : verb === 'p' ? 'purl' : null);
      return {
        type: 'plain',
        count,
        unit: state.unit,
        fabric,
        begin: state.begin ?? head.begin,
        beginRow: state.beginRow ?? head.beginRow,
        of: pieceNamed(this.words(start, this.LA(0).startOffset + this.LA(0).image.length)),
        ending: state.ending ?? head.ending,
        inside: count.values.length === 1 && count.values[0] === 1 ? state.inside.map(onThisRow) : state.inside,
        stated: [],
        span: this.span(start),
      };
    });
  });

  private insideRows = this.RULE('insideRows', (): Statement => {
    return this.OR([
      { GATE: () => this.evenlyAhead(), ALT: () => this.SUBRULE(this.evenlyStep) as Statement },
      { GATE: () => this.shapeAhead(), ALT: () => this.SUBRULE(this.shape) as Statement },
      { ALT: () => this.SUBRULE(this.looseChange) as Statement },
    ]);
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

  private beginClause = this.RULE('beginClause', (): { begin: Plain['begin']; row: number | null; last: EndSide | null } => {
    const start = this.from();
    let begin: Plain['begin'] = null;
    let row: number | null = null;
    let both = false;
    this.MANY({
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

  /** ", slipping markers", ", working last buttonhole on Row 5", "(5 ridges)": changes no count. */
  private asideClause = this.RULE('asideClause', (): void => {
    let depth = 0;
    this.CONSUME(Any);
    this.ACTION(() => {
      if (this.at(0, Open)) depth = 1;
    });
    this.MANY({
      GATE: () =>
        (depth > 0 && !Number.isNaN(this.LA(1).startOffset)) ||
        (depth === 0 && !this.at(0, Close) && !this.separator() && !this.at(1, Dash) && !this.at(1, W.Then)),
      DEF: () => {
        this.CONSUME1(Any);
        this.ACTION(() => {
          if (this.at(0, Open)) depth += 1;
          if (this.at(0, Close)) depth -= 1;
        });
      },
    });
  });

  private plainTailAhead(): boolean {
    if (this.endingSideAhead() || this.resolveAhead()) return true;
    if (this.at(1, Comma))
      return (
        this.at(2, W.Inc, W.Dec, W.Beg) ||
        (this.at(2, Word, W.Work, W.Keep) && /ing$/.test(this.image(2))) ||
        (this.at(2, Stitch) && /ing$/.test(this.image(2)))
      );
    if (this.at(1, Open))
      return this.payload(1)?.holds === 'remark' || (this.payload(1)?.holds === 'stated' && this.at(3, ...rowWords, W.Ridge));
    if (this.at(1, W.Inc, W.Dec)) return this.at(2, CountToken) || (this.at(2, W.To) && this.at(3, CountToken));
    if (this.at(1, W.For)) return this.at(0, W.Given, W.As);
    if (this.at(1, W.And)) return this.at(2, W.Inc, W.Dec) && this.at(3, CountToken, W.To);
    if (this.at(1, W.Then, W.Until)) return false;
    if (this.at(1, Dash, FullStop, Semicolon, Close) || Number.isNaN(this.LA(1).startOffset)) return false;
    return this.at(
      1,
      Fabric,
      Name,
      W.Rib,
      W.Patt,
      W.In,
      W.Straight,
      W.As,
      W.Given,
      W.Set,
      W.Of,
      Word,
      W.More,
      W.On,
      W.Round,
      W.Row,
      W.These,
      W.At,
      W.Beg,
      W.All,
      W.Across,
      W.St,
      W.For,
    );
  }

  protected untilAhead(): boolean {
    if (!this.at(1, W.Work, W.Cont, W.Patt, W.Rib, PlainStitch, Fabric, W.Keep, W.Beg)) return false;
    if (this.referAhead()) return false;
    const first = this.afterBegin();
    if (first === 0 || (this.at(first, PlainStitch) && this.payload(first)?.values !== undefined)) return false;
    for (let ahead = first + 1; ahead < first + 26; ahead += 1) {
      // "k until there are 15 sts on right needle" is part of a row
      if (this.at(ahead, W.Until) && this.at(ahead + 1, W.There) && this.at(ahead + 2, CountToken) && this.at(ahead + 3, W.St))
        return !this.at(first, PlainStitch, W.Rib, W.Patt, W.Work) || !this.at(ahead + 4, W.On, W.After);
      if (this.at(ahead, CountToken) && this.at(ahead + 1, ...rowWords) && /^(less|fewer|shorter)$/.test(this.image(ahead + 2)))
        return true;
      if (this.at(ahead, W.Until)) return !(this.at(ahead + 1, CountToken) && this.at(ahead + 2, W.St) && this.at(first, PlainStitch));
      if (this.at(ahead, CountToken) && this.at(ahead + 1, W.In) && this.at(ahead + 2, W.In, W.Of, Fabric, W.Rib, W.Patt)) return true;
      if (this.at(ahead, W.For) && this.at(ahead + 1, CountToken) && this.at(ahead + 2, W.Cm, W.Inch, W.In, W.Mm)) return true;
      if (this.at(ahead, CountToken) && this.at(ahead + 1, W.Cm, W.Inch, W.Mm) && ahead < first + 5) return true;
      if (this.at(ahead, FullStop, Semicolon, Comma, W.Rep)) return false;
      if (this.at(ahead, ...rowWords) && this.at(ahead + 1, CountToken)) return false;
      if (Number.isNaN(this.LA(ahead).startOffset) || (this.at(ahead, W.Rep) && this.at(ahead + 1, W.From))) return false;
    }
    return false;
  }

  /** "Cont straight until armhole measures 19 (20: 21) cm, ending with a WS row"; "work in rib for 5 cm". */
  until = this.RULE('until', (): Until => {
    const start = this.from();
    const head = this.SUBRULE(this.head);
    const state: { ending: EndSide | null; inside: Statement[]; fabric: string | null } = { ending: null, inside: [], fabric: null };
    this.MANY({
      GATE: () => !this.at(1, W.Until, W.For) && !(this.at(1, CountToken) && this.at(2, W.Cm, W.Inch, W.Mm, W.In, ...rowWords)),
      DEF: () => this.CONSUME(Any),
    });
    this.OPTION({ GATE: () => this.at(1, W.Until, W.For), DEF: () => this.CONSUME1(Any) });
    const goal = this.SUBRULE(this.goal);
    this.MANY1({
      GATE: () => this.endingSideAhead() || (this.at(1, Comma, W.And) && this.at(2, W.Inc, W.Dec)) || this.fabricBehind(),
      DEF: () =>
        this.OR([
          {
            GATE: () => this.endingSideAhead(),
            ALT: () => {
              const side = this.SUBRULE(this.endSide);
              this.ACTION(() => {
                state.ending = side;
              });
            },
          },
          // "work 5 cm in rib"
          {
            GATE: () => this.fabricBehind(),
            ALT: () => {
              this.OPTION2({ GATE: () => this.at(1, W.In, W.Of), DEF: () => this.CONSUME5(Any) });
              const token = this.CONSUME6(Any) as KnitToken;
              this.ACTION(() => {
                state.fabric = token.payload?.fabric ?? token.payload?.name ?? (this.at(0, W.Rib) ? 'rib' : 'patt');
              });
            },
          },
          {
            ALT: () => {
              this.CONSUME2(Any);
              const inside = this.SUBRULE(this.insideRows);
              this.ACTION(() => state.inside.push(inside));
            },
          },
        ]),
    });
    this.OPTION1({
      GATE: () => this.at(1, W.And) && this.at(2, Word) && /ing$/.test(this.image(2)),
      DEF: () => {
        this.CONSUME3(Any);
        this.MANY2({ GATE: () => !this.separator() && !this.at(1, Dash), DEF: () => this.CONSUME4(Any) });
      },
    });
    return this.ACTION(
      (): Until => ({
        type: 'until',
        verb: head.verb,
        fabric: head.fabric ?? state.fabric,
        begin: head.begin,
        of: pieceNamed(this.words(start, this.LA(0).startOffset + this.LA(0).image.length)),
        goal,
        ending: state.ending ?? head.ending,
        inside: state.inside,
        stated: [],
        span: this.span(start),
      }),
    );
  });

  protected contAhead(): boolean {
    // "Beg with a k row, cont in st st;" declares the fabric that the next clause works in.
    if (this.at(1, W.Beg)) return this.beginAhead() > 0;
    if (this.at(1, W.Patt, W.Rib)) return this.contEnds(2);
    return (
      this.at(1, W.Work, W.Cont) && (this.at(2, W.In, W.Patt, W.Rib, Fabric, W.As, Name, W.Straight, W.Keep, W.Set) || this.contEnds(2))
    );
  }

  /** "Cont in st st", "keeping patt correct": rows come with the next clause. */
  cont = this.RULE('cont', (): Until => {
    const start = this.from();
    const head = this.SUBRULE(this.head);
    // "work in st st, beg with a k row"
    const begun = this.OPTION1({
      GATE: () => this.at(1, Comma) && this.at(2, W.Beg),
      DEF: () => {
        this.CONSUME(Any);
        return this.SUBRULE(this.beginClause);
      },
    });
    const ending = this.OPTION({ GATE: () => this.endingSideAhead(), DEF: () => this.SUBRULE(this.endSide) });
    return this.ACTION(
      (): Until => ({
        type: 'until',
        verb: head.verb,
        fabric: head.fabric,
        begin: begun?.begin ?? head.begin,
        of: pieceNamed(this.words(start, this.LA(0).startOffset + this.LA(0).image.length)),
        goal: { kind: 'loose', text: '' },
        ending: ending ?? begun?.last ?? head.ending,
        inside: [],
        stated: [],
        span: this.span(start),
      }),
    );
  });

  private contEnds(ahead: number): boolean {
    return this.separator(ahead) || this.at(ahead, W.Ending) || (this.at(ahead, W.And) && this.at(ahead + 1, W.Ending));
  }

  /** "cont to shape armhole": no rows, numbers or goal before the clause ends. */
  private goesOnUnnumbered(): boolean {
    for (let ahead = 2; ahead < 18; ahead += 1) {
      if (this.separator(ahead) || this.at(ahead, W.SameTime, Dash)) return true;
      if (this.at(ahead, W.Until, CountToken, W.Row, W.Every)) return false;
    }
    return false;
  }

  protected standingAhead(): boolean {
    // "make 6 buttonholes to correspond with buttons": where they come is left free
    if (this.at(1, Stitch) && /^make\b/.test(this.image(1)) && /^buttonholes?$/.test(this.image(2))) return true;
    if (this.at(1, W.Work) && this.at(2, CountToken) && /^buttonholes?$/.test(this.image(3))) return !this.segmentAhead(4);
    // "working incs as set"
    if (this.at(1, W.Work) && this.at(2, W.Inc, W.Dec, W.Shaping))
      return this.within(3, 4, W.As, W.Patt, W.Set, W.Into, W.In) && !this.within(3, 8, CountToken);
    // "slip first st of every row"
    if (this.at(1, SlipStitch, Word) && /^(sl|slip)$/.test(this.image(1)) && this.at(2, W.First) && this.at(3, W.St))
      return this.within(4, 4, W.Every, W.Each, W.All);
    // "work each side of neck separately", "working both sides at the same time"
    if (this.at(1, W.Work) && this.at(2, W.Each) && /^sides?$/.test(this.image(3))) return true;
    // "work new sts into moss st", "work all inc'd sts in st st"
    if (this.at(1, W.Work)) {
      for (let ahead = 2; ahead < 7; ahead += 1) {
        if (this.at(ahead, W.St)) return ahead > 2 && this.at(ahead + 1, W.In, W.Into) && this.at(ahead + 2, Fabric, W.Patt, W.Rib, Name);
        if (
          !this.at(ahead, Word, W.Inc, W.All, W.More, W.These, W.Edge, W.First, W.Last, W.CastOn) ||
          /^(next|rem)/.test(this.image(ahead))
        )
          return false;
      }
    }
    // "cont armhole shaping", "cont to dec at armhole edge as set"
    if (
      this.at(1, W.Cont) &&
      (this.within(2, 6, W.Shaping) ||
        (this.at(2, W.To) && (this.at(3, W.Inc, W.Dec) || /^shape$/.test(this.image(3)))) ||
        this.at(2, W.Inc, W.Dec)) &&
      this.goesOnUnnumbered()
    )
      return true;
    if (!this.at(1, W.Keep)) return false;
    for (let ahead = 2; ahead < 24; ahead += 1) {
      if (this.separator(ahead) || this.at(ahead, W.SameTime, Dash)) return ahead > 2;
      if (this.at(ahead, W.Until, W.Holder, W.Inc, W.Dec, W.BindOff, W.CastOn, W.Turn)) return false;
    }
    return false;
  }

  /** "keeping patt correct", "keep armhole edge straight", "keeping first 6 sts in garter st throughout": how the rows go on. */
  standing = this.RULE('standing', (): Declare => {
    const start = this.from();
    this.CONSUME(Any);
    this.MANY({
      GATE: () => !this.separator() && !this.at(1, Dash) && !(this.at(1, W.SameTime) && !this.separator(2)),
      DEF: () => this.CONSUME1(Any),
    });
    return this.ACTION(
      (): Declare => ({
        type: 'declare',
        what: 'rule',
        name: this.words(start, this.LA(0).startOffset + this.LA(0).image.length).toLowerCase(),
        multiple: null,
        count: null,
        span: this.span(start),
      }),
    );
  });
}
