/**
 * So many rows that only go on.
 *
 *     Beg with a k row, work 10 rows in st st · k 1 row · work a further 18 rows · 15 rounds of (k1, p1)
 */
import { stitchUse } from '../lexicon/use.ts';
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
  PlainStitch,
  rowWords,
  Semicolon,
  Stitch,
  W,
  Word,
} from '../tokens.ts';
import type { Count, EndSide, Plain, Statement } from '../tree.ts';
import { RowHeads } from './row-heads.ts';

/** "in rib as given for back until …": the piece. */
export function pieceNamed(words: string): string | null {
  const match = /\b(?:as|like) (?:(?:given|worked|written|instructed) )?(?:for|on) (?:the )?([a-z][a-z ]*)/i.exec(words);
  return (
    match?.[1]
      ?.toLowerCase()
      .replace(/^.*\bedge of (?:the )?/, '')
      .replace(/ (?:until|for|to)\b.*$/, '')
      .trim() ?? null
  );
}

export class PlainRows extends RowHeads {
  /** "Work 6 more rows in this way, working 5 sts fewer on each row": these rows are not plain. */
  protected rowsInThisWay(): boolean {
    return /^(?:work|cont(?:inue)?)\b[^.;,]*\b\d+ (?:more |further )?(?:short )?(?:rows|rnds|rounds) in (?:this|the same) (?:way|manner)\b.*\b(?:fewer|less|more)\b/i.test(
      (this.text.slice(this.from(), this.from() + 140).split(/[.;]/)[0] ?? '').replace(/\s+/g, ' '),
    );
  }

  protected plainAhead(): boolean {
    let ahead = this.afterBegin();
    if (ahead === 0 || this.rowsInThisWay()) return false;
    // "work a further 18 rows", "k 1 row", "cont in st st for 6 rows", "st st 3 rows", "6 rows st st"
    if (this.at(ahead, PlainStitch) && this.payload(ahead)?.values !== undefined)
      return this.at(ahead + 1, ...rowWords, W.Ridge) || (this.at(ahead + 1, W.More, W.Rs, W.Ws) && this.at(ahead + 2, ...rowWords));
    if (this.at(ahead, W.Work, W.Cont, W.Patt, W.Rib, PlainStitch, Fabric)) {
      ahead += 1;
      // "work another row"
      if (this.at(ahead, W.More) && this.image(ahead) === 'another' && this.at(ahead + 1, ...rowWords)) return true;
      for (const far = ahead + 13; ahead < far; ahead += 1) {
        if (this.at(ahead, CountToken)) {
          let next = ahead + 1;
          while (this.at(next, W.More, W.Rs, W.Ws, Fabric, W.Straight, Word) && next < ahead + 4) next += 1;
          return (
            this.at(next, ...rowWords, W.Ridge) && !this.at(ahead - 1, ...rowWords) && !/^(less|fewer|shorter)$/.test(this.image(next + 1))
          );
        }
        // "work in st st, beg with a k row, for 12 rows"
        const begun = this.beginBehindComma(ahead);
        if (begun > 0 && this.at(begun + 1, W.For)) {
          ahead = begun;
          continue;
        }
        // "knit every row for 6 rows"
        if (
          this.at(ahead, W.Every, W.Each) &&
          this.at(ahead + 1, ...rowWords) &&
          (this.at(ahead + 2, W.For) || this.at(ahead + 2, CountToken))
        )
          ahead += 2;
        if (this.at(ahead, W.And) && this.at(ahead + 1, W.Work)) ahead += 2;
        if (this.at(ahead, CountToken)) ahead -= 1;
        else if (this.at(ahead, W.Until, W.To, W.And, Comma, ...rowWords, Stitch) || this.separator(ahead)) return false;
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
    const begun = this.option(42, {
      GATE: () => this.beginBehindComma(1) > 0,
      DEF: () => {
        this.consume(45, Any);
        const clause = this.subrule(42, this.beginClause);
        this.consume(46, Any);
        return clause;
      },
    });
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
            GATE: () => this.insideAhead(),
            ALT: () => {
              this.OPTION1({ GATE: () => this.at(1, Comma, W.And), DEF: () => this.CONSUME4(Any) });
              const step = this.SUBRULE(this.insideRows);
              this.ACTION(() => state.inside.push(step));
            },
          },
          {
            GATE: () => (this.at(1, Comma) && this.at(2, W.Beg)) || this.beginClauseAhead(),
            ALT: () => {
              this.OPTION2({ GATE: () => this.at(1, Comma), DEF: () => this.CONSUME5(Any) });
              const begin = this.SUBRULE(this.beginClause);
              this.ACTION(() => {
                if (begin.last) state.ending = begin.last;
                state.begin = begin.begin;
                state.beginRow = begin.row;
              });
            },
          },
          { GATE: () => this.at(1, Comma, Open, W.Or), ALT: () => this.SUBRULE(this.asideClause) },
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
    // "work the 8 rows of patt 3 times"
    const often = this.option(47, {
      GATE: () => state.fabric === 'patt' && this.timesAhead(),
      DEF: () => this.SUBRULE5(this.howOften, { ARGS: ['bracket'] }),
    });
    return this.ACTION((): Plain => {
      let count = state.count ?? { type: 'count' as const, values: [1], span: this.span(start) };
      if (state.ridges) count = { ...count, values: count.values.map((value) => (value === null ? null : value * 2)) };
      const passes = often?.count.values ?? [1];
      if (passes.length === 1 || count.values.length === 1)
        count = {
          ...count,
          values: (passes.length > 1 ? passes : count.values).map((_, size) => {
            const rows = count.values[count.values.length === 1 ? 0 : size] ?? null;
            const pass = passes[passes.length === 1 ? 0 : size] ?? null;
            return rows === null || pass === null ? null : rows * pass;
          }),
        };
      const verb = head.verb !== 'work' ? head.verb : state.verb;
      const fabric = state.fabric ?? head.fabric ?? (verb === 'k' ? 'knit' : verb === 'p' ? 'purl' : null);
      return {
        type: 'plain',
        count,
        unit: state.unit,
        fabric,
        begin: state.begin ?? begun?.begin ?? head.begin,
        beginRow: state.beginRow ?? begun?.row ?? head.beginRow,
        of: pieceNamed(this.words(start, this.LA(0).startOffset + this.LA(0).image.length)),
        ending: state.ending ?? head.ending,
        inside: count.values.length === 1 && count.values[0] === 1 ? state.inside.map(onThisRow) : state.inside,
        stated: [],
        span: this.span(start),
      };
    });
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

  /** ", working 2 tog at each corner": changes the count, and says not by how many. */
  private decreasesAside(): boolean {
    return (
      this.at(2, W.Work) &&
      /^working$/.test(this.image(2)) &&
      this.at(3, CountToken, Stitch) &&
      /^(?:.*tog|tog.*|together)$/.test(`${this.image(3)}${this.image(4)}`)
    );
  }

  /** "work 10 rows in st st beg with a k row": no comma before the beginning. */
  private beginClauseAhead(): boolean {
    return this.at(1, W.Beg) && (/with$/.test(this.image(1)) || this.at(2, W.With)) && this.within(2, 5, ...rowWords);
  }

  /** ", inc 6 sts on last row", "dec 1 st at each end", ", casting on 5 sts at beg of each row", ", working k2tog 5 times". */
  private insideAhead(): boolean {
    if (this.at(1, W.Inc, W.Dec)) return true;
    if (!this.at(1, Comma, W.And)) return false;
    return (
      this.at(2, W.Inc, W.Dec) ||
      (this.at(2, W.CastOn, W.BindOff) && /ing /.test(this.image(2)) && this.within(3, 6, W.Beg)) ||
      this.stitchSpread(2) !== 0
    );
  }

  /** Whether an aside from `from` on makes or loses stitches, so that it is none. */
  private asideChanges(from: number): boolean {
    for (let ahead = from; ahead < from + 12; ahead += 1) {
      const { entry, values } = this.payload(ahead) ?? {};
      if (this.at(ahead, Stitch) && entry !== undefined && !this.at(ahead, PlainStitch)) {
        const use = stitchUse(entry, values?.[0] ?? 1);
        if (use.makes !== use.takes) return true;
      }
      if (this.at(ahead, Comma) && ahead > from) return false;
      if (this.at(ahead, FullStop, Semicolon, Close) || Number.isNaN(this.LA(ahead).startOffset)) return false;
    }
    return false;
  }

  private orElse(): boolean {
    const or = this.at(1, Comma) ? 2 : 1;
    return this.at(or, W.Or) && this.at(or + 1, W.Until, W.To);
  }

  private plainTailAhead(): boolean {
    // "or until piece measures 10 cm", ", or to desired length": the rows are the number
    if (this.orElse()) return true;
    if (this.endingSideAhead() || this.resolveAhead() || this.insideAhead() || this.beginClauseAhead()) return true;
    if (this.at(1, Comma))
      return (
        !this.countAhead(2) &&
        !this.decreasesAside() &&
        (this.at(2, W.Inc, W.Dec, W.Beg) ||
          (this.at(2, Word, W.Work, W.Keep) && /ing$/.test(this.image(2)) && !this.asideChanges(2)) ||
          (this.at(2, Stitch) && /ing$/.test(this.image(2))))
      );
    if (this.at(1, Open))
      return this.payload(1)?.holds === 'remark' || (this.payload(1)?.holds === 'stated' && this.at(3, ...rowWords, W.Ridge));
    if (this.at(1, W.Inc, W.Dec)) return this.at(2, CountToken) || (this.at(2, W.To) && this.at(3, CountToken));
    if (this.at(1, W.For)) return this.at(0, W.Given, W.As);
    if (this.at(1, W.And)) return this.at(2, W.Inc, W.Dec) && this.at(3, CountToken, W.To);
    if (this.at(1, W.Then, W.Until)) return false;
    // "rib 3 rows on these 20 sts"
    if (this.at(1, CountToken))
      return this.at(2, W.St) && this.at(0, W.These, W.On, W.Across, W.First, W.Last, W.Next) && !this.at(3, W.Rem);
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
      W.Edge,
    );
  }
}
