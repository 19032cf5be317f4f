/**
 * Rows worked over again.
 *
 *     Rep last 2 rows 9 times more · Work Rows 1–8 twice · Rep Dec Row every RS row 3 more times · Rep from ** until all sts are worked
 */
import {
  Any,
  Comma,
  Count as CountToken,
  Dash,
  Fabric,
  type KnitToken,
  Mark,
  Name,
  Ordinal,
  Stitch,
  TimesNumber,
  W,
  Word,
} from '../tokens.ts';
import type { Count, EndSide, Goal, RepeatRows, RowsNamed, Segment } from '../tree.ts';
import { PatternRepeats } from './pattern-repeats.ts';

const rowWords = [W.Row, W.Round];

export class RowRepeats extends PatternRepeats {
  protected repeatRowsAhead(): boolean {
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

  /** Tokens of "make a buttonhole" before its schedule: "on next row, then on every foll 14th row 5 times more"; 0 when none. */
  private buttonholes(): number {
    if (!this.at(1, W.Work)) return 0;
    for (let ahead = 2; ahead < 5; ahead += 1)
      if (this.at(ahead, Word) && /^buttonholes?$/.test(this.image(ahead))) return this.segmentAhead(ahead + 1) ? ahead : 0;
    return 0;
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

  private rowsNamedAhead(from: number): boolean {
    if (this.at(from, ...rowWords)) return this.at(from + 1, CountToken);
    if (this.at(from, W.Last, W.These, W.First))
      return this.at(from + 1, ...rowWords) || (this.at(from + 1, CountToken) && this.at(from + 2, ...rowWords));
    if (this.at(from, Ordinal)) return this.at(from + 1, ...rowWords, W.And, Dash, W.To);
    for (let ahead = from; ahead < from + 4; ahead += 1) {
      if (this.at(ahead, ...rowWords)) return ahead > from && !this.at(ahead - 1, CountToken);
      if (!this.at(ahead, Word, Name, W.Inc, W.Dec, Fabric, W.Rib, W.These, W.Patt, W.Centre, W.CastOn) || this.separator(ahead))
        return false;
    }
    return false;
  }

  /** "last 2 rows", "Rows 1–4 of Leaf pattern", "Rib rnd", "moss st row", "from ** to **". */
  private rowsNamed = this.RULE('rowsNamed', (): RowsNamed => {
    const start = this.from();
    const state: {
      kind: RowsNamed['kind'];
      count: Count | null;
      numbers: number[];
      of: string | null;
      mark: string | null;
      toMark: string | null;
      range: boolean;
      unit: boolean;
      short: boolean;
      buttonhole: boolean;
    } = {
      kind: 'name',
      count: null,
      numbers: [],
      of: null,
      mark: null,
      toMark: null,
      range: false,
      unit: false,
      short: false,
      buttonhole: false,
    };
    let nameEnd = start;
    this.OR([
      {
        GATE: () => this.buttonholeNamed(),
        ALT: () => {
          this.many(12, { GATE: () => !this.segmentAhead(1), DEF: () => this.consume(12, Any) });
          this.ACTION(() => {
            nameEnd = this.LA(0).startOffset + this.LA(0).image.length;
            state.buttonhole = true;
          });
        },
      },
      {
        GATE: () => this.at(1, W.From, Mark),
        ALT: () => {
          this.MANY({
            GATE: () =>
              this.at(1, W.From, Mark, W.To, W.Between, W.And) &&
              !(this.at(1, W.And) && !this.at(2, Mark)) &&
              !(this.at(1, W.To) && !this.at(2, Mark)),
            DEF: () => {
              const token = this.CONSUME(Any) as KnitToken;
              this.ACTION(() => {
                if (this.at(0, Mark)) {
                  if (state.mark === null) state.mark = token.image;
                  else state.toMark = token.image;
                }
              });
            },
          });
          this.ACTION(() => {
            state.kind = 'mark';
          });
        },
      },
      {
        // "Rep until …", "Rep 5 times more", "Rep every other rnd until …": the rows just given.
        GATE: () => this.at(1, W.Until) || this.timesAhead() || this.shapingJustTold(),
        ALT: () => {
          this.option(11, { GATE: () => this.at(1, W.Inc, W.Dec, W.Shaping), DEF: () => this.consume(11, Any) });
          this.ACTION(() => {
            state.kind = 'these';
          });
        },
      },
      {
        GATE: () =>
          this.at(1, W.Last, W.These, W.First) &&
          (this.at(2, ...rowWords) ||
            (this.at(2, CountToken, Word) && this.at(3, ...rowWords)) ||
            (this.at(2, CountToken) && /^short$/.test(this.image(3)) && this.at(4, ...rowWords))),
        ALT: () => {
          this.CONSUME1(Any);
          this.ACTION(() => {
            state.kind = this.at(0, W.Last) ? 'last' : this.at(0, W.These) ? 'these' : 'first';
          });
          this.OPTION(() => {
            const token = this.CONSUME(CountToken) as KnitToken;
            this.ACTION(() => {
              state.count = this.countOf(token);
            });
          });
          this.OPTION5({ GATE: () => this.at(1, Word), DEF: () => this.CONSUME(Word) });
          this.CONSUME2(Any);
        },
      },
      {
        ALT: () => {
          this.MANY1({
            GATE: () =>
              !state.unit &&
              !this.at(1, ...rowWords) &&
              !this.at(1, Ordinal) &&
              !this.at(1, W.Until) &&
              !this.timesAhead() &&
              !this.separator(),
            DEF: () => {
              this.CONSUME3(Any);
            },
          });
          this.ACTION(() => {
            nameEnd = this.LA(0).startOffset + this.LA(0).image.length;
          });
          this.OPTION1({
            GATE: () => this.at(1, ...rowWords),
            DEF: () => {
              this.CONSUME4(Any);
              this.ACTION(() => {
                state.unit = true;
                state.short = /^(srs?|short-rows?)$/.test(this.image(0));
              });
            },
          });
          this.MANY2({
            GATE: () => this.numberListAhead(state.numbers.length),
            DEF: () => {
              const token = this.CONSUME5(Any) as KnitToken;
              this.ACTION(() => {
                const value = token.payload?.values?.[0];
                if (this.at(0, CountToken, Ordinal) && typeof value === 'number') {
                  if (state.range) {
                    for (
                      let row = (state.numbers.at(-1) ?? value) + 1;
                      row <= Math.min(value, (state.numbers.at(-1) ?? 0) + 2000);
                      row += 1
                    )
                      state.numbers.push(row);
                    state.range = false;
                  } else state.numbers.push(value);
                } else if (this.at(0, Dash, W.To)) state.range = true;
              });
            },
          });
          this.OPTION2({ GATE: () => this.at(1, ...rowWords), DEF: () => this.CONSUME6(Any) });
          this.ACTION(() => {
            if (state.numbers.length > 0)
              state.kind =
                nameEnd > start &&
                this.words(start, nameEnd) !== '' &&
                !/^(rows?|rnds?|rounds?)$/i.test(this.words(start, nameEnd)) &&
                this.nameBefore(start, nameEnd)
                  ? 'name'
                  : 'numbers';
          });
        },
      },
    ]);
    this.OPTION3({
      GATE: () => this.at(1, W.Of, W.As) && !this.at(2, CountToken) && !(this.at(1, W.As) && this.at(2, W.Set)),
      DEF: () => {
        const from = this.from();
        this.CONSUME7(Any);
        this.MANY3({ GATE: () => this.ofWordsAhead(), DEF: () => this.CONSUME8(Any) });
        this.ACTION(() => {
          state.of = this.words(from, this.LA(0).startOffset + this.LA(0).image.length).replace(/^(of|as|as at|as for)\s+(the )?/i, '');
        });
      },
    });
    this.OPTION4({ GATE: () => this.at(1, W.Only), DEF: () => this.CONSUME9(Any) });
    // "Rep these 4 rows for pattern, 7 times in all"
    this.option(31, {
      GATE: () => this.at(1, W.For) && this.at(2, W.Patt),
      DEF: () => {
        this.consume(31, Any);
        this.consume(32, Any);
      },
    });
    return this.ACTION((): RowsNamed => {
      const name = this.words(start, nameEnd)
        .toLowerCase()
        .replace(/^(?:the |a )*(?:last |first )?(?=\S)/, '');
      if (state.buttonhole) return { kind: 'name', count: null, numbers: [], name: 'buttonhole', of: null, mark: null, toMark: null };
      // "Rep this row" is the row just given; "SR3" is short row 3.
      // "rep both until 28 sts": the two rows just given
      if (state.kind === 'name' && /^both(?: rows| rnds| rounds)?$/.test(name ?? ''))
        return {
          kind: 'last',
          count: { type: 'count', values: [2], span: this.span(start) },
          numbers: [],
          name: null,
          of: state.of,
          mark: null,
          toMark: null,
        };
      // "These 12 rows form the patt. Rep them 18 times more."
      if (state.kind === 'name' && /^(?:them|all|these)$/.test(name ?? ''))
        return { kind: 'these', count: null, numbers: [], name: null, of: state.of, mark: null, toMark: null };
      if (state.kind === 'name' && name === 'this')
        return { kind: 'last', count: null, numbers: [], name: null, of: state.of, mark: null, toMark: null };
      if (state.short && (name === '' || state.kind === 'numbers'))
        return { kind: 'name', count: null, numbers: state.numbers, name: 'short', of: state.of, mark: null, toMark: null };
      return {
        kind: state.kind,
        count: state.count,
        numbers: state.numbers,
        name: state.kind === 'name' ? name : null,
        of: state.of,
        mark: state.mark,
        toMark: state.toMark,
      };
    });
  });

  /** "Rep every 8th row 6 times more", "rep incs every 2 cm": the row just told; "rep this row every 6th row" names it. */
  private shapingJustTold(): boolean {
    const ahead = this.at(1, W.Inc, W.Dec, W.Shaping) ? 2 : 1;
    return this.segmentAhead(ahead) && !(this.at(ahead, Word, W.These) && this.image(ahead) === 'this') && !this.at(ahead, Ordinal);
  }

  private buttonholeNamed(): boolean {
    for (let ahead = 1; ahead < 4; ahead += 1)
      if (this.at(ahead, Word) && /^buttonholes?$/.test(this.image(ahead))) return this.segmentAhead(ahead + 1);
    return false;
  }

  private nameBefore(start: number, end: number): boolean {
    return !/^(the |a )?(last|these)$/i.test(this.words(start, end));
  }

  private ofWordsAhead(): boolean {
    if (this.at(1, W.St) && this.at(2, W.Patt)) return true;
    return (
      this.at(1, Word, Name, Fabric, W.Patt, W.At, W.Beg, W.Of, W.For, W.Given, W.CastOn, W.Rib, W.Marker, Stitch) &&
      !(this.at(1, Word) && /^(until|then)$/.test(this.image(1)))
    );
  }

  private numberListAhead(have: number): boolean {
    if (
      have > 0 &&
      this.at(1, CountToken) &&
      this.at(0, ...rowWords) &&
      (this.at(-1, W.And, Comma, Dash, W.To) || (/^short$/.test(this.image(-1)) && this.at(-2, W.And, Comma)))
    )
      return true;
    if (this.at(1, CountToken)) {
      // "Rows 1–8 twice": the number of passes is no row number.
      if (have > 0 && !this.at(0, Dash, W.To, Comma, W.And)) return false;
      // "Rows 1 and 2 another 13 times": the 2 is a row, the 13 are passes.
      if (have > 0 && this.at(2, W.More, W.InAll) && this.at(3, CountToken, TimesNumber)) return true;
      return !this.at(2, W.Times, W.More, W.InAll) || this.at(0, Dash, W.To);
    }
    if (this.at(1, Ordinal)) return true;
    // "Short Row 3 and Short Row 4"
    if (have > 0 && this.at(1, W.And, Comma) && /^short$/.test(this.image(2)) && this.at(3, ...rowWords) && this.at(4, CountToken))
      return true;
    if (have > 0 && this.at(0, W.And, Comma) && /^short$/.test(this.image(1)) && this.at(2, ...rowWords)) return true;
    if (have > 0 && this.at(1, ...rowWords) && /^short$/.test(this.image(0)) && this.at(2, CountToken)) return true;
    // "SR3 and SR4"
    if (have > 0 && this.at(1, W.And, Comma, Dash, W.To) && this.at(2, ...rowWords) && this.at(3, CountToken)) return true;
    if (have > 0 && this.at(1, ...rowWords) && this.at(0, W.And, Comma, Dash, W.To) && this.at(2, CountToken)) return true;
    if (this.at(1, Dash, W.To, Comma, W.And))
      return have > 0 && this.at(2, CountToken, Ordinal) && !(this.at(3, W.Times, W.More, W.St) && this.at(1, Comma));
    return this.at(1, ...rowWords) && have === 0 && this.at(2, CountToken);
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
            GATE: () => this.at(1, W.Until, W.To) && !this.segmentAhead(1),
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

  private repeatTailAhead(settled: boolean): boolean {
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
