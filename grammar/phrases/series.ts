/**
 * Series that go on, and more pieces of a kind.
 *
 *     Cont in this way, working 6 sts fewer each row until 6 sts rem · cont, working 2 fewer sts each time, to k2
 *     Dec every other rnd to 32 sts, then every rnd to 16 sts · Work 11 more wedges
 */
import { Any, Comma, Count as CountToken, FullStop, type KnitToken, Open, PlainStitch, Semicolon, W, Word } from '../tokens.ts';
import type { AndSoOn, Count, EndSide, Goal, RepeatRows, Segment } from '../tree.ts';
import { GoingOn } from './going-on.ts';

export class Series extends GoingOn {
  /** Tokens of "Cont in this way", "Cont as set", "cont" before its comma; 0 when the words begin something else. */
  private inThisWay(): number {
    if (!this.at(1, W.Cont, W.Work, W.Rep)) return 0;
    let ahead = 2;
    if (this.rowsInThisWay()) while (this.at(ahead, CountToken, W.More, W.Row, W.Round, Word, W.For) && ahead < 7) ahead += 1;
    if (this.at(1, W.Cont) && (this.at(ahead, W.Turn) || /^(turning|wrapping|working)$/.test(this.image(ahead)))) ahead += 1;
    if (this.at(ahead, W.To) && this.at(ahead + 1, W.Dec, W.Inc)) ahead += 2;
    else if (this.at(ahead, W.Dec, W.Inc)) ahead += 1;
    if (
      this.at(ahead, W.In) &&
      (this.at(ahead + 1, W.These, W.Same) || /^(this|like|such)$/.test(this.image(ahead + 1))) &&
      /^(way|manner|fashion|method)$/.test(this.image(ahead + 2))
    )
      return ahead + 3;
    if (this.at(ahead, W.Patt) && /^as /.test(this.image(ahead))) return ahead + 1;
    if (this.at(ahead, W.As) && this.at(ahead + 1, W.Set)) return ahead + 2;
    if (/^(thus|similarly|likewise)$/.test(this.image(ahead))) return ahead + 1;
    // "keep going like this"
    if (/^like$/.test(this.image(ahead)) && /^(?:this|that)$/.test(this.image(ahead + 1))) return ahead + 2;
    return this.at(1, W.Cont) && ahead > 1 && this.at(ahead, Comma) ? ahead : 0;
  }

  /** "working 6 sts fewer each row", "with 1 st less between decs": where the number stands; 0 when none follows. */
  private stepAhead(from: number): number {
    let ahead = from;
    if (this.at(ahead, Comma)) ahead += 1;
    if (this.at(ahead, W.And)) ahead += 1;
    if (/^(always|each|every)$/.test(this.image(ahead))) ahead += 1;
    if (
      !this.at(ahead, W.Work, W.With) &&
      !/^(knitting|having|leaving|turning|purling)$/.test(this.image(ahead)) &&
      !this.at(ahead, W.Leaving)
    )
      return 0;
    ahead += 1;
    if (!this.at(ahead, CountToken)) return 0;
    for (let look = ahead + 1; look < ahead + 5; look += 1) {
      if (this.at(look, W.More) || /^(fewer|less)$/.test(this.image(look))) return ahead;
      if (this.separator(look)) return 0;
    }
    return 0;
  }

  protected andSoOnAhead(): boolean {
    const way = this.inThisWay();
    if (way === 0) return false;
    if (this.stepAhead(way) > 0) return true;
    if (this.at(way, Comma) && this.at(way - 1, W.Cont)) return false;
    if (!this.at(way, W.Until, Comma) || (this.at(way, Comma) && !this.at(way + 1, W.Until))) return false;
    const words = this.text.slice(this.LA(way).startOffset, this.LA(way).startOffset + 120).split(/[.;]/)[0] ?? '';
    return /unwrapped|unworked|wrapped|\bds\b|double st|between (?:wraps|turns|the turns)|all (?:the )?(?:heel |side )?(?:sts|stitches)/i.test(
      words,
    );
  }

  andSoOn = this.RULE('andSoOn', (): AndSoOn => {
    const start = this.from();
    const state: {
      way: number;
      eaten: number;
      step: Count | null;
      sense: AndSoOn['sense'];
      until: Goal | null;
      ending: EndSide | null;
      times: AndSoOn['times'];
      schedule: Segment[];
      rows: Count | null;
    } = { rows: null, way: 0, eaten: 1, step: null, sense: null, until: null, ending: null, times: null, schedule: [] };
    this.ACTION(() => {
      state.way = this.inThisWay() - 1;
    });
    this.CONSUME(Any);
    this.MANY({
      GATE: () => state.eaten < state.way,
      DEF: () => {
        const token = this.CONSUME1(Any) as KnitToken;
        this.ACTION(() => {
          state.eaten += 1;
          if (this.at(0, CountToken)) state.rows = this.countOf(token);
        });
      },
    });
    this.MANY1({
      GATE: () =>
        this.stepAhead(1) > 0 ||
        this.at(1, W.Until) ||
        (this.at(1, Comma) && this.at(2, W.Until)) ||
        this.endingSideAhead() ||
        this.timesAhead() ||
        (this.at(1, Comma, W.On) && this.segmentAhead(this.at(1, Comma) ? 2 : 1)) ||
        this.toRow(),
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
          {
            GATE: () => this.stepAhead(1) > 0,
            ALT: () => {
              this.MANY2({ GATE: () => !this.at(1, CountToken), DEF: () => this.CONSUME2(Any) });
              const step = this.SUBRULE(this.count);
              this.ACTION(() => {
                state.step = step;
              });
              this.MANY3({
                GATE: () =>
                  !this.separator() && !this.at(1, W.Until, W.Then) && !(this.at(1, W.To) && this.at(2, CountToken, PlainStitch, W.End)),
                DEF: () => {
                  this.CONSUME3(Any);
                  this.ACTION(() => {
                    if (this.at(0, W.Unworked)) state.sense = state.sense === 'more' ? 'fewer' : 'more';
                    if (this.at(0, W.More) && !/^again/.test(this.image(0))) state.sense ??= 'more';
                    if (/^(fewer|less)$/.test(this.image(0))) state.sense = 'fewer';
                  });
                },
              });
            },
          },
          {
            GATE: () => this.at(1, W.Until) || (this.at(1, Comma) && this.at(2, W.Until)),
            ALT: () => {
              this.OPTION({ GATE: () => this.at(1, Comma), DEF: () => this.CONSUME4(Any) });
              this.CONSUME5(Any);
              const goal = this.SUBRULE(this.goal);
              this.ACTION(() => {
                state.until = goal;
              });
            },
          },
          {
            GATE: () => this.timesAhead(),
            ALT: () => {
              const often = this.SUBRULE(this.howOften, { ARGS: ['from'] });
              this.ACTION(() => {
                state.times = { count: often.count, sense: often.sense };
              });
            },
          },
          {
            GATE: () => this.toRow(),
            ALT: () => {
              this.AT_LEAST_ONE({ GATE: () => this.at(1, Comma, W.To, W.Until), DEF: () => this.CONSUME6(Any) });
            },
          },
          {
            ALT: () => {
              this.OPTION1({ GATE: () => this.at(1, Comma, W.On), DEF: () => this.CONSUME7(Any) });
              const segments = this.SUBRULE(this.schedule);
              this.ACTION(() => state.schedule.push(...segments));
            },
          },
        ]),
    });
    const { step, sense, until, ending, times, schedule, rows } = state;
    return this.ACTION(
      (): AndSoOn => ({
        type: 'andSoOn',
        step,
        sense,
        schedule,
        times,
        until,
        ending,
        stated: [],
        ...(rows === null ? {} : { rows }),
        span: this.span(start),
      }),
    );
  });

  /** ", to k2, turn, k2": the last row of the series is printed. */
  private toRow(): boolean {
    const ahead = this.at(1, Comma) ? 2 : 1;
    return this.at(ahead, W.To) && /^[kp]\s*\d/.test(this.image(ahead + 1));
  }

  /** Place where the schedule of "Dec (as set) every other rnd …" begins; 0 when the words say where or how many. */
  private namedShaping(): number {
    // "Cont to dec in this way every RS row 4 times more"; one that runs to a count is a goal of its own
    const goesOn =
      this.at(1, W.Cont) && !/\b(?:until|till)\b/i.test(this.text.slice(this.from(), this.from() + 140).split(/[.;]/)[0] ?? '');
    // "Work decs every other rnd until 24 sts remain, then every rnd until 12 sts remain"
    const works = this.at(1, W.Work) && /s$/.test(this.image(2));
    const head = goesOn ? (this.at(2, W.To) ? 3 : 2) : works ? 2 : 1;
    if (!this.at(head, W.Inc, W.Dec)) return 0;
    let ahead = head + 1;
    if (this.at(ahead, W.Patt) && /^as /.test(this.image(ahead))) ahead += 1;
    else if (this.at(ahead, W.As) && this.at(ahead + 1, W.Set)) ahead += 2;
    else if (
      this.at(ahead, W.In) &&
      /^(this|same|the same)$/.test(this.image(ahead + 1)) &&
      /^(way|manner|fashion)$/.test(this.image(ahead + 2))
    )
      ahead += 3;
    else if (this.at(ahead, W.As) && /^(before|above)$/.test(this.image(ahead + 1))) ahead += 2;
    else if (this.at(ahead, W.More) && this.image(ahead) === 'again') ahead += 1;
    // "in same way at each end of 4 foll alt rows"
    if (ahead > head + 1 && this.at(ahead, W.At)) {
      let place = ahead + 1;
      while (place < ahead + 5 && this.at(place, W.Each, W.End, W.Edge, W.Of, Word)) place += 1;
      if (this.segmentAhead(place)) ahead = place;
    }
    if (!this.segmentAhead(ahead)) return 0;
    const words = this.text.slice(this.from(), this.from() + 140).split(/[.;]/)[0] ?? '';
    // Increases of a part of the piece are no row that could be worked over: "inc every other rnd on body".
    return /\b(?:on|of) each\b|\beach (?:needle|side)\b|\bon (?:the )?(?:body|sleeves?|fronts?|backs?|yoke|thumb)\b/i.test(words)
      ? 0
      : ahead;
  }

  protected namedShapingAhead(): boolean {
    return this.namedShaping() > 0;
  }

  /** "Dec every alt rnd to 32 sts, then every rnd to 16 sts": the decrease row worked so far. */
  namedShape = this.RULE('namedShape', (): RepeatRows => {
    const start = this.from();
    const state = { left: 0 };
    this.ACTION(() => {
      state.left = this.namedShaping() - 2 - (this.at(1, W.Cont) ? (this.at(2, W.To) ? 2 : 1) : this.at(1, W.Work) ? 1 : 0);
    });
    this.many(11, { GATE: () => !this.at(1, W.Inc, W.Dec), DEF: () => this.consume(11, Any) });
    const head = this.CONSUME(Any) as KnitToken;
    this.MANY({
      GATE: () => state.left > 0,
      DEF: () => {
        this.CONSUME1(Any);
        this.ACTION(() => {
          state.left -= 1;
        });
      },
    });
    const schedule = this.SUBRULE(this.schedule);
    const ending = this.OPTION({ GATE: () => this.endingSideAhead(), DEF: () => this.SUBRULE(this.endSide) });
    return this.ACTION(
      (): RepeatRows => ({
        type: 'repeatRows',
        verb: 'rep',
        rows: {
          kind: 'shaping',
          count: null,
          numbers: [],
          name: head.tokenType === W.Inc ? 'inc' : 'dec',
          of: null,
          mark: null,
          toMark: null,
        },
        times: null,
        until: null,
        ending: ending ?? null,
        schedule,
        step: null,
        inPlace: null,
        stated: [],
        span: this.span(start),
      }),
    );
  });

  protected moreOfThemAhead(): boolean {
    return (
      this.at(1, W.Work) &&
      this.at(2, CountToken) &&
      this.at(3, W.More) &&
      this.at(4, Word) &&
      /^(wedges?|triangles?|squares?|sections?|strips?|rectangles?|motifs?|blocks?|petals?|points?|leaves|leaf|panels?|scallops?|gores?|tiers?|units?|segments?|toes?|fingers?|flaps?|hexagons?|pennants?|bobbles?)$/.test(
        this.image(4),
      ) &&
      (this.separator(5) || this.at(5, Open, W.As, W.In))
    );
  }

  /** "Work 11 more wedges". */
  moreOfThem = this.RULE('moreOfThem', (): RepeatRows => {
    const start = this.from();
    this.CONSUME(Any);
    const count = this.SUBRULE(this.count);
    this.CONSUME1(Any);
    const name = this.CONSUME2(Any) as KnitToken;
    this.MANY({
      GATE: () =>
        !this.at(1, Comma, Semicolon, FullStop, Open) &&
        !Number.isNaN(this.LA(1).startOffset) &&
        this.at(1, W.As, W.In, W.Same, W.These, Word),
      DEF: () => this.CONSUME3(Any),
    });
    return this.ACTION(
      (): RepeatRows => ({
        type: 'repeatRows',
        verb: 'work',
        rows: {
          kind: 'name',
          count: null,
          numbers: [],
          name: name.image.toLowerCase().replace(/(?<=[^s])s$/, ''),
          of: null,
          mark: null,
          toMark: null,
        },
        times: { count, sense: 'more' },
        until: null,
        ending: null,
        schedule: [],
        step: null,
        inPlace: null,
        stated: [],
        span: this.span(start),
      }),
    );
  });
}
