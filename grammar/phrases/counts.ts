/**
 * Numbers in phrases: how many, how often, and the counts a draft states.
 *
 *     6 times · twice more · a further 5 (6, 7) times · 3 times in all · × 4
 *     —88 (92, 94) sts · [94 sts] · 80 sts rem · 4 sts dec'd · You have 76 sts · 24 sts each side
 */
import {
  Any,
  Close,
  Colon,
  Comma,
  Count as CountToken,
  Dash,
  Equals,
  FullStop,
  type KnitToken,
  Name,
  Open,
  Semicolon,
  Stitch,
  TimesNumber,
  W,
  Word,
} from '../tokens.ts';
import type { Count, Extent, Stated } from '../tree.ts';
import { Base } from './base.ts';

type TimesExtent = Extract<Extent, { kind: 'times' }>;

export class Counts extends Base {
  override count = this.RULE('count', (): Count => {
    const token = this.CONSUME(CountToken) as KnitToken;
    return this.ACTION(() => this.countOf(token));
  });

  /** Whether "N times" begins here; `bare` also takes a number alone, as after a bracket. */
  protected timesAhead(bare = false): boolean {
    if (this.at(1, TimesNumber)) return true;
    if (this.at(1, W.Times)) return this.at(2, CountToken);
    if (this.at(1, W.InAll)) return this.at(2, CountToken, TimesNumber);
    if (this.at(1, W.More)) return this.at(2, TimesNumber) || (this.at(2, CountToken) && this.at(3, W.Times));
    if (!this.at(1, CountToken)) return false;
    if (this.at(2, W.Times)) return !this.at(3, CountToken);
    if (this.at(2, W.More)) return this.at(3, W.Times) || bare;
    return bare && !this.at(2, W.St, W.Row, W.Round, W.Inch, W.Cm);
  }

  /** "6 times", "twice more", "another 5 times", "5 times in all". */
  howOften = this.RULE('howOften', (form: 'from' | 'bracket'): TimesExtent => {
    let sense: TimesExtent['sense'] = 'plain';
    const note = (): void => {
      if (this.at(0, W.More)) sense = 'more';
      if (this.at(0, W.InAll)) sense = 'all';
    };
    this.OPTION({
      GATE: () => this.at(1, W.More, W.InAll, W.Times),
      DEF: () => {
        this.CONSUME(Any);
        this.ACTION(note);
      },
    });
    const token = this.CONSUME1(Any) as KnitToken;
    this.MANY({
      GATE: () => this.at(1, W.Times, W.InAll) || this.at(1, W.More),
      DEF: () => {
        this.CONSUME2(Any);
        this.ACTION(note);
      },
    });
    return this.ACTION(() => ({ kind: 'times', count: this.countOf(token), sense, form }));
  });

  /** Whether a stated count begins here: "—88 sts", "[94 sts]", "80 sts rem", "You have 76 sts". */
  protected statedAhead(): boolean {
    if (this.at(1, Open)) return this.payload(1)?.holds === 'stated';
    if (this.labelledCount() > 0) return true;
    // "dec 4 sts evenly to 56 sts": what the change comes to
    if (this.at(1, W.To) && this.at(2, CountToken) && this.at(3, W.St)) return this.separatorAt(4) || this.at(4, W.InAll);
    let ahead = 1;
    if (this.at(ahead, Dash, Equals, Colon)) ahead += 1;
    // "[k2tog, k1] to end, leaving 14 sts"
    if (
      this.at(ahead, W.Leaving) &&
      this.at(0, Comma) &&
      this.at(-1, W.End, W.Across, W.Around) &&
      this.at(ahead + 2, W.St) &&
      this.separator(ahead + 3)
    )
      ahead += 1;
    if (this.at(ahead, W.There)) ahead += 1;
    if (this.at(ahead, Word) && /^(now|still|exactly)$/.test(this.image(ahead))) ahead += 1;
    if (this.at(ahead, W.InAll)) ahead += 1;
    // "decreased by 4 sts", "you have now decreased 12 sts"
    if (this.at(ahead, W.Inc, W.Dec) && /ed$|'d$/.test(this.image(ahead)) && (this.at(ahead + 1, W.By) || ahead > 1))
      ahead += this.at(ahead + 1, W.By) ? 2 : 1;
    if (!this.at(ahead, CountToken)) return false;
    if (ahead === 1 && this.at(2, W.Row, W.Round) && this.at(3, W.Work) && /^worked$/.test(this.image(3))) return this.separatorAt(4);
    let next = ahead + 1;
    if (this.at(next, Word, W.More, Name, Stitch) && this.at(next + 1, W.St)) next += 1;
    if (this.at(next, W.Last, W.Rem, W.Unworked) && this.at(next + 1, W.St)) next += 1;
    if (this.at(next, W.St)) return !this.doneWithThem(next + 1);
    return this.at(ahead - 1, Dash, Equals, Colon) && this.at(next, W.Row, W.Round, W.Ridge);
  }

  /** "12 sts are cast off at beg of next 2 rows", "12 sts from holder": what is done with so many, and no count of them. */
  private doneWithThem(at: number): boolean {
    if (this.at(at, W.From)) return this.at(at + 1, W.Holder) || (this.at(at + 2, W.Holder) && this.at(at + 1, Word, Name));
    if (!/^(?:are|is)$/.test(this.image(at))) return false;
    const verb = this.at(at + 1, Word) && /^(?:then|now)$/.test(this.image(at + 1)) ? at + 2 : at + 1;
    if (!this.at(verb, W.BindOff, W.CastOn, W.Inc, W.Dec)) return false;
    return this.at(verb + 1, W.At, W.On) || (this.at(verb + 1, W.Every, W.Each) && !this.at(verb + 2, W.Other));
  }

  /** "Stitch count: 80 (84, 88)", "Sts: 58", "Total: 58 sts": tokens before the number; 0 when no such words stand here. */
  private labelledCount(): number {
    const named = this.at(1, W.St) && this.at(2, Word) && /^count$/.test(this.image(2)) ? 3 : this.at(1, W.St, W.InAll) ? 2 : 0;
    if (named === 0 || !this.at(named, Colon, Equals) || !this.at(named + 1, CountToken)) return 0;
    const behind = this.at(named + 2, W.St) ? named + 3 : named + 2;
    return this.separatorAt(behind) ? named : 0;
  }

  private separatorAt(ahead: number): boolean {
    return this.at(ahead, Comma, Semicolon, FullStop, Close, Open) || Number.isNaN(this.LA(ahead).startOffset);
  }

  /** Words that may follow the number of a stated count outside a bracket. */
  private statedTail(): boolean {
    if (this.at(1, W.St, W.Rem, W.Inc, W.Dec, W.Row, W.Round, W.Ridge, W.Unworked, W.InAll, W.Each, W.Holder)) return true;
    if (this.at(1, W.More, Name, Stitch)) return this.at(2, W.St);
    if (this.at(1, Word))
      return (
        this.at(2, W.St) ||
        /^(inc|dec|now|total|altogether|held|live|marked|wide)/.test(this.image(1)) ||
        this.at(0, W.On, W.For, W.Each, W.Between, W.Of, W.Other, W.Next, W.At) ||
        (this.at(0, W.And, W.End) && this.inScope) ||
        (/^(have|has|been|were|are|is)$/.test(this.image(1)) && this.at(2, W.Inc, W.Dec, Word)) ||
        (this.at(0, Word, W.Needle) && this.inScope)
      );
    // "7 sts in each wing"
    if (this.at(1, W.In) && this.at(2, W.Each)) return this.at(0, W.St) && this.at(3, Word, Name, W.Edge);
    if (this.at(1, W.On, W.For, W.Between, W.At, W.Past))
      return (
        this.at(0, W.St, W.Rem, W.Unworked, W.Work, W.Edge, W.Marker, CountToken, W.Needle, W.Each, W.Inc, W.Dec, W.Holder) &&
        !(this.at(1, W.For) && this.at(2, CountToken))
      );
    if (
      this.at(1, W.Needle, W.Marker, W.Edge, W.Other, W.Of, W.Gap, W.Centre, W.Last, W.Next, W.Rs, W.Ws, W.These, CountToken, W.Patt, W.All)
    )
      return this.inScope;
    if (this.at(1, W.And)) return this.inScope && this.at(2, Word, W.Ws, W.Each);
    if (this.at(1, W.Work)) return true;
    // "24 sts cast off for each pocket"
    if (this.at(1, W.BindOff))
      return /^(?:cast|bound) off$/.test(this.image(1)) && this.at(0, W.St) && (this.at(2, W.For) || this.separator(2));
    return false;
  }

  private inScope = false;
  /** The count being read stands in a bracket that is still open. */
  private bracketed = false;

  override stated = this.RULE('stated', (): Stated => {
    const start = this.from();
    this.inScope = false;
    this.OPTION({ GATE: () => this.at(1, Dash, Equals, Colon), DEF: () => this.CONSUME(Any) });
    const bracket = this.OPTION1(() => this.CONSUME(Open) as KnitToken);
    this.ACTION(() => {
      if (bracket !== undefined) this.bracketed = true;
    });
    this.MANY({
      GATE: () => this.at(1, W.There, W.InAll, W.To, W.Leaving) || (this.at(1, Word) && !this.at(0, CountToken)),
      DEF: () => this.CONSUME1(Any),
    });
    let what: Stated['what'] = 'total';
    this.OPTION2({
      GATE: () => this.at(1, W.Inc, W.Dec),
      DEF: () => {
        this.CONSUME2(Any);
        this.ACTION(() => {
          what = this.at(0, W.Inc) ? 'increased' : 'decreased';
        });
      },
    });
    this.MANY3({
      GATE: () => !this.at(1, CountToken, Close),
      DEF: () => {
        this.CONSUME6(Any);
        this.ACTION(() => {
          if (this.at(0, W.Inc)) what = 'increased';
          else if (this.at(0, W.Dec)) what = 'decreased';
          else if (bracket !== undefined && this.at(-1, Open))
            what = this.at(0, W.Plus) ? 'increased' : this.at(0, Dash) ? 'decreased' : what;
        });
      },
    });
    const number = this.CONSUME(CountToken) as KnitToken;
    let scopeStart = -1;
    this.MANY1({
      GATE: () =>
        (this.statedTail() || (/^per$/.test(this.image(1)) && this.at(2, W.Needle)) || (bracket !== undefined && !this.at(1, Close))) &&
        this.partAhead() === 0,
      DEF: () => {
        const from = this.from();
        this.CONSUME4(Any);
        this.ACTION(() => {
          if (this.at(0, W.Inc)) what = 'increased';
          else if (this.at(0, W.Dec) || (this.at(0, W.BindOff) && !this.at(-1, W.After))) what = 'decreased';
          else if (
            this.at(0, W.Row, W.Round, W.Ridge) &&
            !this.inScope &&
            what === 'total' &&
            !/st/.test(this.words(number.startOffset, from))
          )
            what = 'rows';
          else if (this.at(0, W.Unworked)) what = 'left';
          else if (
            (this.at(0, W.Each, W.For, W.Between, W.On, W.At, W.Past) ||
              (this.at(0, W.In) && this.at(1, W.Each)) ||
              (/^per$/.test(this.image(0)) && this.at(1, W.Needle))) &&
            !this.inScope
          ) {
            this.inScope = true;
            scopeStart = from;
          }
        });
      },
    });
    this.OPTION5({ GATE: () => bracket !== undefined && this.at(1, Close), DEF: () => this.CONSUME5(Close) });
    return this.ACTION(() => {
      let scope: string | null =
        scopeStart < 0 ? null : this.words(scopeStart, this.LA(0).startOffset + this.LA(0).image.length).replace(/[)\]}]$/, '');
      if (scope !== null && /^on (your |the |both )?needles?\.?$/i.test(scope)) scope = null;
      if (scope !== null && what === 'total')
        what = /holder|waste yarn|held|hold/i.test(scope) ? 'held' : /^each (rep|time|row|rnd|round)/i.test(scope) ? 'each' : 'part';
      if (/\bheld\b/i.test(this.words(start, this.LA(0).startOffset + this.LA(0).image.length)) && what === 'total') what = 'held';
      if (/\bused\b/i.test(this.words(number.startOffset, number.startOffset + 40).split(/[;)\]]/)[0] ?? '') && what === 'total')
        what = 'used';
      return { type: 'stated', count: this.countOf(number), what, scope, span: this.span(start) };
    });
  });

  /** ", 52 each sleeve", "(19 for each shoulder, …": the number of a part, told after the total or another part; 0 when none follows. */
  private partAhead(): number {
    let ahead = 1;
    while (this.at(ahead, Comma, Semicolon, W.And, Colon, Dash)) ahead += 1;
    if (this.at(ahead, Open)) ahead += 1;
    if (ahead === 1 || !this.at(ahead, CountToken)) return 0;
    const next = this.at(ahead + 1, W.St) ? ahead + 2 : ahead + 1;
    // "(2 sts inc; 82 sts)"
    if (this.bracketed && ahead === 2 && this.at(ahead + 1, W.St) && this.at(0, W.Inc, W.Dec)) return ahead;
    return this.at(next, W.Each, W.For, W.On, W.Between) && !(this.at(next, W.For) && this.at(next + 1, CountToken)) ? ahead : 0;
  }

  /** A stated count with those of its parts: "240 sts: 68 sts each front and back, 52 sts each sleeve". */
  statedList = this.RULE('statedList', (): Stated[] => {
    const all: Stated[] = [];
    this.ACTION(() => {
      this.bracketed = false;
    });
    const first = this.SUBRULE(this.stated);
    this.ACTION(() => all.push(first));
    this.MANY({
      GATE: () => this.partAhead() > 0,
      DEF: () => {
        this.MANY1({ GATE: () => !this.at(1, CountToken), DEF: () => this.CONSUME(Any) });
        const part = this.SUBRULE1(this.stated);
        this.OPTION({ GATE: () => this.at(1, Close), DEF: () => this.CONSUME1(Any) });
        this.ACTION(() => all.push(part));
      },
    });
    return all;
  });
}
