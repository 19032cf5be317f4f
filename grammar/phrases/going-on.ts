/**
 * Rows worked to a length or a count, and standing orders.
 *
 *     Cont straight until armhole measures 19 cm, ending with a WS row · cont in patt · keeping patt correct
 */
import { makesUp, wholeSaying } from '../making-up.ts';
import {
  Any,
  Colon,
  Comma,
  Count as CountToken,
  Dash,
  Fabric,
  FullStop,
  type KnitToken,
  Name,
  PlainStitch,
  rowWords,
  Semicolon,
  SlipStitch,
  Stitch,
  W,
  Word,
} from '../tokens.ts';
import type { Declare, EndSide, Goal, Statement, Until } from '../tree.ts';
import { PlainRows, pieceNamed } from './plain-rows.ts';

export class GoingOn extends PlainRows {
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
      const length = this.at(ahead, W.For) && this.at(ahead + 1, W.More) ? ahead + 2 : ahead + 1;
      if (this.at(ahead, W.For) && this.at(length, CountToken) && this.at(length + 1, W.Cm, W.Inch, W.In, W.Mm)) return true;
      if (this.at(ahead, CountToken) && this.at(ahead + 1, ...rowWords) && this.within(ahead + 2, 2, W.Or)) return false;
      if (this.at(ahead, CountToken) && this.at(ahead + 1, ...rowWords) && this.at(ahead + 2, Comma) && this.at(ahead + 3, W.Or))
        return false;
      // "work straight to armhole", "work to same length as back"
      if (this.toLandmark(ahead) || (this.at(ahead, W.To) && this.at(ahead + 1, W.Matches))) return true;
      // "work 1 in even"
      if (this.at(ahead, CountToken) && this.at(ahead + 1, W.In) && this.at(ahead + 2, W.Straight)) return true;
      if (this.at(ahead, CountToken) && this.at(ahead + 1, W.Cm, W.Inch, W.Mm) && ahead < first + 5) return true;
      // "cont in st st, beg with a k row, until …"
      const begun = this.beginBehindComma(ahead);
      if (begun > 0) {
        ahead = begun;
        continue;
      }
      if (this.at(ahead, FullStop, Semicolon, Comma, W.Rep)) return false;
      if (this.at(ahead, ...rowWords) && this.at(ahead + 1, CountToken)) return false;
      if (Number.isNaN(this.LA(ahead).startOffset) || (this.at(ahead, W.Rep) && this.at(ahead + 1, W.From))) return false;
    }
    return false;
  }

  /** "to armhole", "to shoulder" at the end of its clause, behind words that only go on. */
  private toLandmark(ahead: number): boolean {
    return (
      this.at(ahead, W.To) &&
      this.at(ahead - 1, W.Straight, W.Patt, Fabric) &&
      /^(?:armholes?|armpits?|underarms?|shoulders?|neck|neckline|waist|wrist|elbow|thumb|heel|toe|ankle)$/.test(this.image(ahead + 1)) &&
      (this.separator(ahead + 2) || this.at(ahead + 2, W.Shaping, W.Ending))
    );
  }

  /** "Cont straight until armhole measures 19 (20: 21) cm, ending with a WS row"; "work in rib for 5 cm". */
  until = this.RULE('until', (): Until => {
    const start = this.from();
    const head = this.SUBRULE(this.head);
    const state: { ending: EndSide | null; inside: Statement[]; fabric: string | null } = { ending: null, inside: [], fabric: null };
    const begun = this.OPTION3({
      GATE: () => this.beginBehindComma(1) > 0,
      DEF: () => {
        this.CONSUME7(Any);
        return this.SUBRULE(this.beginClause);
      },
    });
    this.MANY({
      GATE: () =>
        !this.at(1, W.Until, W.For) &&
        !(this.at(1, CountToken) && this.at(2, W.Cm, W.Inch, W.Mm, W.In, ...rowWords)) &&
        !this.toLandmark(1) &&
        !(this.at(1, W.To) && this.at(2, W.Matches)),
      DEF: () => {
        const token = this.CONSUME(Any) as KnitToken;
        this.ACTION(() => {
          if (this.at(0, Fabric)) state.fabric ??= token.payload?.fabric ?? null;
        });
      },
    });
    const landmark = this.ACTION(() => this.toLandmark(1));
    this.OPTION({ GATE: () => this.at(1, W.Until, W.For, W.To), DEF: () => this.CONSUME1(Any) });
    const told = this.SUBRULE(this.goal);
    const goal: Goal = this.ACTION(() => (landmark && told.kind === 'loose' ? { kind: 'matches', name: told.text || null } : told));
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
        begin: begun?.begin ?? head.begin,
        of: pieceNamed(this.words(start, this.LA(0).startOffset + this.LA(0).image.length)),
        goal,
        ending: state.ending ?? begun?.last ?? head.ending,
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
    // "work in the same way as left mitt" tells a piece by another
    if (
      this.at(1, W.Work) &&
      this.at(2, W.In) &&
      /same$/.test(this.image(3)) &&
      /^(?:way|manner|fashion)$/.test(this.image(4)) &&
      this.at(5, W.As)
    )
      return false;
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

  protected makingUpAhead(): boolean {
    return makesUp(this.text.slice(this.from(), this.from() + 120).split(/[.;:]/)[0] ?? '');
  }

  protected standingAhead(): boolean {
    // "make 6 buttonholes to correspond with buttons": where they come is left free
    if (this.at(1, Stitch) && /^make\b/.test(this.image(1)) && /^buttonholes?$/.test(this.image(2))) return true;
    if (this.at(1, W.Work) && this.at(2, CountToken) && /^buttonholes?$/.test(this.image(3))) return !this.segmentAhead(4);
    // "working incs as set"
    if (this.at(1, W.Work) && this.at(2, W.Inc, W.Dec, W.Shaping))
      return this.within(3, 4, W.As, W.Patt, W.Set, W.Into, W.In) && !this.within(3, 8, CountToken);
    // "working all decs 2 sts in from edge"
    if (
      this.at(1, W.Work) &&
      /^work(?:ing)?\s+(?:all\s+)?(?:(?:the|these|your)\s+)?(?:inc|dec|shap)\w*\s+[^,;.]*\b(?:sts?|stitch(?:es)?)\s+(?:in\s+from|from|inside)\b/i.test(
        this.text.slice(this.from(), this.from() + 90),
      )
    )
      return true;
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
    const saying = this.ACTION(() => wholeSaying(this.text.slice(start, start + 240).split(/[.](?:\s|$)/)[0] ?? ''));
    this.CONSUME(Any);
    this.MANY({
      GATE: () =>
        (!this.separator() || (saying && this.at(1, Comma))) && !this.at(1, Dash, Colon) && !(this.at(1, W.SameTime) && !this.separator(2)),
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
