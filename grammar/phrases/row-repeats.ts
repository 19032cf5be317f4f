/**
 * Rows worked over again.
 *
 *     Rep last 2 rows 9 times more · Work Rows 1–8 twice · Rep Dec Row every RS row 3 more times · Rep from ** until all sts are worked
 */
import { Any, Comma, Count as CountToken, Dash, type KnitToken, Mark, Open, Ordinal, rowWords, TimesNumber, W } from '../tokens.ts';
import type { Count, EndSide, Goal, RepeatRows, Segment } from '../tree.ts';
import { NamedRows } from './named-rows.ts';

export class RowRepeats extends NamedRows {
  protected repeatRowsAhead(): boolean {
    // "Repeat [k2, p2] to end" is a row.
    if (this.at(1, W.Rep) && this.at(2, Open) && this.payload(2)?.holds === 'group') return false;
    // "Repeat for second sock" is another piece.
    if (this.at(1, W.Rep) && this.at(2, W.For) && this.at(3, Ordinal, W.Other)) return false;
    if (this.at(1, W.Rep)) return !this.at(2, W.From) || this.at(3, Mark) || this.at(3, ...rowWords);
    // "then Rnd 1 only until 16 sts rem", "Rows 1–2 a total of 16 times": the verb is understood.
    if (this.at(1, ...rowWords)) return this.verbless();
    // "1st to 4th rows again"
    if (this.at(1, Ordinal) && this.at(2, W.To, Dash, W.And, ...rowWords))
      for (let ahead = 2; ahead < 7; ahead += 1)
        if (this.at(ahead, ...rowWords))
          return this.at(ahead + 1, W.More, TimesNumber) || (this.at(ahead + 1, CountToken) && this.at(ahead + 2, W.Times, W.More));
    // "cont to rep Rows 1–8 until …", "work rep of Rows 1–4"
    if (this.repeatVerb() > 1 || this.buttonholes() > 0) return true;
    if (!this.at(1, W.Work)) return false;
    // "These four rows make the patt. Work them eight times altogether."
    if (/^them$/.test(this.image(2))) return this.at(3, TimesNumber) || (this.at(3, CountToken) && this.at(4, W.Times, W.More));
    return this.rowsNamedAhead(2);
  }

  /** Tokens of the verb: 1 for "rep", 3 for "cont to rep" and "work rep of"; 0 when no verb of repeating stands here. */
  private repeatVerb(): number {
    if (this.at(1, W.Rep)) return 1;
    if (!this.at(1, W.Work, W.Cont)) return 0;
    const verb = this.at(2, W.To) ? 3 : 2;
    if (!this.at(verb, W.Rep)) return 0;
    const rows = this.at(verb + 1, W.Of) ? verb + 2 : verb + 1;
    return this.at(rows, ...rowWords, W.Last, W.These, W.First, Ordinal) ? rows - 1 : 0;
  }

  /** Inside "cont to rep" and "work rep of", behind the first word. */
  private verbGoesOn(): boolean {
    if (this.at(0, W.Rep)) return this.at(1, W.Of);
    return this.at(1, W.Rep) || (this.at(1, W.To) && this.at(2, W.Rep));
  }

  private verbless(): boolean {
    if (!this.at(2, CountToken)) return false;
    let ahead = 2;
    while (this.at(ahead, CountToken) || (this.at(ahead, Dash, W.To, W.And, Comma) && this.at(ahead + 1, CountToken))) ahead += 1;
    if (this.at(ahead, W.More)) return this.separator(ahead + 1) || this.at(ahead + 2, W.Times);
    return (
      this.at(ahead, W.Only, W.Until) ||
      (this.at(ahead, W.InAll) && this.at(ahead + 1, CountToken, TimesNumber)) ||
      this.at(ahead, TimesNumber) ||
      (this.at(ahead, W.More) && this.at(ahead + 2, W.Times))
    );
  }

  /** "Rep last 2 rows 5 times more", "Work Rows 1–8 twice", "Rep Dec Rnd every 10 rnds 6 more times". */
  repeatRows = this.RULE('repeatRows', (): RepeatRows => {
    const start = this.from();
    const head: { token: KnitToken | null } = { token: null };
    this.many(11, {
      GATE: () =>
        head.token === null
          ? this.repeatVerb() > 0 || this.at(1, W.Work, W.Rep)
          : this.at(0, W.Work, W.Cont, W.To, W.Rep) && this.verbGoesOn(),
      DEF: () => {
        const token = this.CONSUME(Any) as KnitToken;
        this.ACTION(() => {
          head.token = token;
        });
      },
    });
    const rows = this.SUBRULE(this.rowsNamed);
    const state: {
      times: RepeatRows['times'];
      until: Goal | null;
      ending: EndSide | null;
      schedule: Segment[];
      step: Count | null;
      stepSense?: 'fewer' | 'more';
      omitting?: boolean;
      inPlace: RepeatRows['inPlace'];
    } = { times: null, until: null, ending: null, schedule: [], step: null, inPlace: null };
    this.MANY({
      GATE: () => this.repeatTailAhead(state.times !== null || state.until !== null),
      DEF: () =>
        this.OR([
          {
            GATE: () => this.at(1, Comma) && this.at(2, W.Until) && state.until === null && state.times === null,
            ALT: () => {
              this.consume(22, Any);
              this.consume(23, Any);
              const goal = this.subrule(22, this.goal);
              this.ACTION(() => {
                state.until = goal;
              });
            },
          },
          { GATE: () => (this.at(1, Comma) && this.at(2, W.Or, W.Until)) || this.at(1, W.Or), ALT: () => this.SUBRULE2(this.orUntil) },
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
            GATE: () => this.omittingAhead(),
            ALT: () => {
              this.consume(20, Any);
              this.many(20, { GATE: () => !this.separator(), DEF: () => this.consume(21, Any) });
              this.ACTION(() => {
                state.omitting = true;
              });
            },
          },
          {
            GATE: () => this.inPlaceAhead(),
            ALT: () => {
              const place = this.SUBRULE(this.inPlaceOf);
              this.ACTION(() => {
                state.inPlace = place;
              });
            },
          },
          {
            GATE: () => this.at(1, Comma) && this.at(2, W.Work) && this.at(3, CountToken),
            ALT: () => {
              this.CONSUME2(Any);
              this.CONSUME3(Any);
              const step = this.SUBRULE(this.count);
              this.ACTION(() => {
                state.step = step;
              });
              this.MANY2({
                GATE: () => !this.separator(),
                DEF: () => {
                  this.CONSUME4(Any);
                  this.ACTION(() => {
                    if (this.at(0, W.More)) state.stepSense = 'more';
                    if (/^(fewer|less)$/.test(this.image(0))) state.stepSense = 'fewer';
                  });
                },
              });
            },
          },
          {
            // "Rep Rnd 1 for 12 rnds", "Rep this row for 10 cm"
            GATE: () => this.forLengthAhead(),
            ALT: () => {
              this.consume(24, Any);
              const goal = this.subrule(23, this.goal);
              this.ACTION(() => {
                if (goal.kind === 'rows' && rows.numbers.length < 2 && rows.count === null)
                  state.times = { count: goal.count, sense: 'plain' };
                else state.until = goal;
              });
            },
          },
          {
            GATE: () => this.timesAhead() || this.timesBehindComma(),
            ALT: () => {
              this.OPTION3({ GATE: () => this.at(1, Comma), DEF: () => this.CONSUME8(Any) });
              const often = this.SUBRULE(this.howOften, { ARGS: ['from'] });
              this.ACTION(() => {
                state.times = { count: often.count, sense: often.sense };
              });
            },
          },
          {
            GATE: () => this.at(1, W.Until, W.To) && !this.segmentAhead(1) && !this.forLengthAhead(),
            ALT: () => {
              this.CONSUME5(Any);
              const goal = this.SUBRULE(this.goal);
              this.ACTION(() => {
                state.until = goal;
              });
            },
          },
          {
            ALT: () => {
              this.OPTION1({ GATE: () => this.at(1, Comma), DEF: () => this.CONSUME6(Any) });
              this.OPTION2({ GATE: () => this.at(1, W.Then, W.And), DEF: () => this.CONSUME7(Any) });
              const segments = this.SUBRULE(this.schedule);
              this.ACTION(() => state.schedule.push(...segments));
            },
          },
        ]),
    });
    // "then work Rnds 1 and 2 again"
    this.option(25, {
      GATE: () =>
        state.times === null && state.until === null && state.schedule.length === 0 && this.at(1, W.More) && /^again$/.test(this.image(1)),
      DEF: () => {
        const word = this.consume(25, Any) as KnitToken;
        this.ACTION(() => {
          state.times = { count: { type: 'count', values: [1], span: this.tokenSpan(word) }, sense: 'more' };
        });
      },
    });
    return this.ACTION(
      (): RepeatRows => ({
        type: 'repeatRows',
        verb: head.token === null || head.token.tokenType === W.Rep ? 'rep' : 'work',
        rows,
        ...state,
        stated: [],
        span: this.span(start),
      }),
    );
  });

  /** "Rep Rows 5 and 6, 8 times more". */
  private timesBehindComma(): boolean {
    return (
      this.at(1, Comma) &&
      ((this.at(2, CountToken) && this.at(3, W.Times, W.More)) ||
        this.at(2, TimesNumber) ||
        (this.at(2, W.InAll, W.More) && this.at(3, CountToken, TimesNumber)))
    );
  }

  private forLengthAhead(): boolean {
    const number = this.at(2, W.More) ? 3 : 2;
    if (this.at(1, W.To)) return this.at(number, CountToken) && this.at(number + 1, W.Cm, W.Inch, W.Mm);
    return this.at(1, W.For) && this.at(number, CountToken) && this.at(number + 1, W.Cm, W.Inch, W.Mm, W.In, ...rowWords);
  }

  private repeatTailAhead(settled: boolean): boolean {
    if (!settled && this.forLengthAhead()) return true;
    if (this.timesAhead() || this.timesBehindComma()) return true;
    if (this.at(1, W.Until)) return true;
    if (this.segmentAhead(1)) return true;
    if (this.at(1, Comma, W.And, W.Then) && this.segmentAhead(2) && !this.at(2, CountToken)) return true;
    if (this.endingSideAhead()) return true;
    if (this.inPlaceAhead()) return true;
    if (this.omittingAhead()) return true;
    if (this.at(1, Comma) && this.at(2, W.Until))
      return !settled || /(?:fewer|less|more)\b[^.;,]*$/i.test(this.text.slice(Math.max(0, this.from() - 60), this.from()));
    if (this.at(1, Comma))
      return (
        (this.at(2, W.Or) && settled) ||
        (this.at(2, W.Work) && this.at(3, CountToken) && this.at(4, W.St)) ||
        (this.at(2, W.Then) && this.segmentAhead(3))
      );
    if (this.at(1, W.To)) return this.at(2, CountToken) && this.at(3, W.St);
    return this.at(1, W.Or) && settled;
  }

  /** ", omitting the final k1 and p1": the last rows have no stitch left behind the decrease. */
  private omittingAhead(): boolean {
    return this.at(1, Comma) && this.at(2, W.Omitting);
  }

  private orUntil = this.RULE('orUntil', (): void => {
    this.CONSUME(Any);
    this.MANY({ GATE: () => !this.separator() && !this.at(1, Dash), DEF: () => this.CONSUME1(Any) });
  });

  private inPlaceAhead(): boolean {
    if (!this.at(1, Comma) || !this.at(2, W.Work)) return false;
    for (let ahead = 3; ahead < 8; ahead += 1) if (this.at(ahead, W.InsteadOf)) return true;
    return false;
  }

  /** ", working the Buttonhole row in place of Row 1 on the 17th and every foll 18th row until there are 5 buttonholes". */
  private inPlaceOf = this.RULE('inPlaceOf', (): NonNullable<RepeatRows['inPlace']> => {
    this.CONSUME(Any);
    this.CONSUME1(Any);
    const start = this.from();
    this.MANY({ GATE: () => !this.at(1, W.InsteadOf), DEF: () => this.CONSUME2(Any) });
    const end = this.ACTION(() => this.LA(0).startOffset + this.LA(0).image.length);
    this.CONSUME3(Any);
    const of: number[] = [];
    this.MANY1({
      GATE: () => this.at(1, ...rowWords, CountToken, Ordinal) && !this.segmentAhead(1),
      DEF: () => {
        const token = this.CONSUME4(Any) as KnitToken;
        this.ACTION(() => {
          const value = token.payload?.values?.[0];
          if (typeof value === 'number') of.push(value);
        });
      },
    });
    const segments: Segment[] = [];
    this.OPTION({
      GATE: () => this.segmentAhead(1),
      DEF: () => {
        const read = this.SUBRULE(this.schedule);
        this.ACTION(() => segments.push(...read));
      },
    });
    return this.ACTION(() => ({
      name: this.words(start, end)
        .toLowerCase()
        .replace(/^the /, '')
        .replace(/ (row|rnd|round)s?$/, ''),
      of,
      schedule: segments,
    }));
  });
}
