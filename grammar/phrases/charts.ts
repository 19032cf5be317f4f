/**
 * Rows worked from a chart: where it lies and which of its rows. What the chart holds is not known here.
 *
 *     work Row 1 of Chart A over next 17 sts · work Rows 1–8 of Chart A 3 times · work Chart B to m · rep chart around
 *     cont in chart as set until Row 24 is complete · work centre 43 (49) sts from chart, working 6-st rep 6 (7) times
 */
import {
  Any,
  Close,
  Comma,
  Count as CountToken,
  Dash,
  endOf,
  Fabric,
  FullStop,
  type KnitToken,
  Mark,
  Name,
  Open,
  Ordinal,
  PlainStitch,
  Semicolon,
  W,
  Word,
} from '../tokens.ts';
import type { Count, EndSide, Extent, Goal, Refer } from '../tree.ts';
import { ChartHeads, chartWord } from './chart-heads.ts';

export class Charts extends ChartHeads {
  chartStep = this.RULE('chartStep', (): Refer => {
    const start = this.from();
    const state: Written = {
      rows: [],
      range: false,
      name: null,
      over: null,
      times: null,
      repeats: null,
      until: null,
      ending: null,
      named: false,
    };
    this.ACTION(() => {
      // "Hawser over 12 sts": named without the word chart
      if (this.verblessAhead() && !chartWord.test(this.image(1))) {
        state.named = true;
        state.name = this.image(1);
      } else if (chartWord.test(this.image(1))) this.noteName(this.LA(1) as KnitToken, state, 1);
    });
    this.CONSUME(Any);
    this.MANY({ GATE: () => this.chartPartAhead(state.named), DEF: () => this.SUBRULE(this.chartPart, { ARGS: [state] }) });
    const then: Refer[] = [];
    this.MANY1({
      GATE: () => this.moreRowsAhead(),
      DEF: () => {
        this.AT_LEAST_ONE({ GATE: () => this.at(1, Comma, W.And, W.Then, Semicolon, W.Work, W.Rep), DEF: () => this.CONSUME1(Any) });
        const next = this.SUBRULE(this.moreRows, { ARGS: [state.name] });
        this.ACTION(() => then.push(next));
      },
    });
    return this.ACTION(
      (): Refer => ({
        type: 'refer',
        to: 'chart',
        rows: state.rows,
        name: state.name,
        until:
          state.until === null && state.ending === null
            ? null
            : { mark: null, place: null, goal: state.until, ...(state.ending === null ? {} : { ending: state.ending }) },
        reversing: false,
        times: state.times,
        over: state.over,
        ...(state.repeats === null ? {} : { repeats: state.repeats }),
        ...(then.length === 0 ? {} : { then }),
        stated: [],
        span: this.span(start),
      }),
    );
  });

  private moreRows = this.RULE('moreRows', (name: string | null): Refer => {
    const start = this.from();
    const state: Written = { rows: [], range: false, name, over: null, times: null, repeats: null, until: null, ending: null, named: true };
    this.CONSUME(Any);
    this.MANY({
      GATE: () =>
        this.at(1, CountToken, Dash, W.To, W.And, Comma) && !this.timesAhead() && !(this.at(1, Comma, W.And) && !this.at(2, CountToken)),
      DEF: () => {
        const token = this.CONSUME1(Any) as KnitToken;
        this.ACTION(() => this.noteRow(token, state));
      },
    });
    this.OPTION({
      GATE: () => this.timesAhead(),
      DEF: () => {
        const often = this.SUBRULE(this.howOften, { ARGS: ['from'] });
        this.ACTION(() => {
          state.times = { count: often.count, sense: often.sense };
        });
      },
    });
    return this.ACTION(
      (): Refer => ({
        type: 'refer',
        to: 'chart',
        rows: state.rows,
        name: state.name,
        until: null,
        reversing: false,
        times: state.times,
        stated: [],
        span: this.span(start),
      }),
    );
  });

  /** Row numbers of "Rows 1–8", "Rows 1, 3 and 5". */
  private noteRow(token: KnitToken, state: Written): void {
    if (this.at(0, Dash, W.To)) state.range = state.rows.length > 0;
    const value = token.payload?.values?.[0];
    if (!this.at(0, CountToken) || typeof value !== 'number') return;
    const last = state.rows.at(-1);
    if (state.range && last !== undefined) for (let row = last + 1; row <= Math.min(value, last + 2000); row += 1) state.rows.push(row);
    else state.rows.push(value);
    state.range = false;
  }

  /** The name of a chart: the letter, word or number behind the word, else the word before it. `place` is where the word stands. */
  private noteName(token: KnitToken, state: Written, place: 0 | 1): void {
    state.named = true;
    const next = place + 1;
    // "Chart A": the letter may be an article to the rest of the grammar.
    const begins = this.LA(next).startOffset;
    const behind = this.text.slice(endOf(token), Number.isNaN(begins) ? endOf(token) + 4 : Math.max(endOf(token), begins)).trim();
    const before = place === 0 ? this.image(-1) : '';
    if (/^[a-z]$/i.test(behind)) state.name = behind.toUpperCase();
    else if (this.at(next, Word) && /^[a-z]\d?$/i.test(this.image(next))) state.name = (this.LA(next).image ?? '').toUpperCase();
    else if (this.at(next, CountToken) && !this.at(next + 1, W.St, W.Times, W.More)) state.name = this.LA(next).image ?? null;
    else if (
      place === 0 &&
      this.at(-1, Word) &&
      !/^(?:the|this|each|same|your|given|appropriate|row|work|from|following|follow)$/.test(before)
    )
      state.name ??= before;
  }

  private chartPartAhead(named: boolean): boolean {
    if (this.at(1, FullStop, Semicolon, Close, Mark) || Number.isNaN(this.LA(1).startOffset)) return false;
    if (this.at(1, Open)) return this.payload(1)?.holds !== 'group';
    if (this.at(1, Dash)) return this.at(0, CountToken) && this.at(2, CountToken);
    if (this.at(1, Comma)) return this.repeatsAhead(2) || (named && this.sideAfterChart()) || !named;
    if (this.at(1, W.And, W.Then))
      return this.at(1, W.And) && ((this.at(0, CountToken) && this.at(2, CountToken)) || (!named && !this.at(2, PlainStitch)));
    return !(this.at(1, PlainStitch) && this.payload(1)?.values !== undefined) && !this.at(1, W.Turn);
  }

  /** "working 6-st rep 6 (7) times", "repeating the 8-st rep twice". */
  private repeatsAhead(from: number): boolean {
    if (this.at(from, CountToken) && this.at(from + 1, Dash) && this.at(from + 2, W.St) && this.at(from + 3, W.Rep)) return true;
    if (!this.at(from, W.Work, W.Rep)) return false;
    for (let ahead = from + 1; ahead < from + 8; ahead += 1) {
      if (this.at(ahead, W.Rep) || /^(?:outlined|boxed)$/.test(this.image(ahead))) return true;
      if (this.separator(ahead)) return false;
    }
    return false;
  }

  /** "4 patt reps of Chart A": the number of passes stands before the word. */
  private countedReps(from: number): boolean {
    if (!this.at(from, CountToken) || this.at(from + 1, W.St)) return false;
    const ahead = this.at(from + 1, W.Patt, Word) && this.at(from + 2, W.Rep) ? from + 2 : from + 1;
    return this.at(ahead, W.Rep) && /^rep(?:eat)?s$/.test(this.image(ahead));
  }

  /** "beg with st 4 and end with st 15": which stitches of the chart the row takes. */
  private fromStitch(from: number): boolean {
    return this.at(from, W.Beg, W.Ending) && this.at(from + 1, W.St, W.At, W.On, W.With) && this.within(from + 1, from + 4, CountToken);
  }

  private chartPart = this.RULE('chartPart', (state: Written): void => {
    this.OR([
      { GATE: () => this.at(1, Open), ALT: () => this.SUBRULE(this.chartBracket, { ARGS: [state] }) },
      { GATE: () => this.at(1, Comma) && this.repeatsAhead(2), ALT: () => this.SUBRULE(this.chartRepeats, { ARGS: [state] }) },
      {
        // "work the 10-st rep of Row 1 of Chart A 4 times": the times are its repeats
        GATE: () => this.at(1, CountToken) && this.at(2, Dash) && this.at(3, W.St) && this.at(4, W.Rep),
        ALT: () => {
          this.consume(33, Any);
          this.consume(34, Any);
          this.consume(35, Any);
          this.consume(36, Any);
          this.ACTION(() => {
            state.ofRepeat = true;
          });
        },
      },
      {
        GATE: () => this.countedReps(1),
        ALT: () => {
          const reps = this.subrule(31, this.count);
          this.many(31, {
            GATE: () => this.at(1, W.Patt, Word, W.Rep, W.Of) && !chartWord.test(this.image(1)),
            DEF: () => this.consume(31, Any),
          });
          this.ACTION(() => {
            state.repeats = reps;
          });
        },
      },
      {
        GATE: () => this.sideAfterChart(),
        ALT: () => {
          const ending = this.subrule(32, this.endSide);
          this.ACTION(() => {
            state.ending = ending;
          });
        },
      },
      {
        GATE: () => this.at(1, W.Until) && !this.extentAhead(),
        ALT: () => {
          this.CONSUME(Any);
          const goal = this.SUBRULE(this.goal);
          this.ACTION(() => {
            state.until = goal;
          });
        },
      },
      {
        GATE: () => this.at(1, W.To) && this.at(2, W.End) && (this.at(3, CountToken) || (this.at(3, W.Of) && this.at(4, W.Row, W.Round))),
        ALT: () => {
          this.AT_LEAST_ONE({ GATE: () => this.at(1, W.To, W.End, W.Of, W.Row, W.Round), DEF: () => this.CONSUME1(Any) });
          const row = this.SUBRULE(this.count);
          this.ACTION(() => {
            state.until = { kind: 'loose', text: `row ${row.values[0] ?? ''}` };
          });
        },
      },
      {
        GATE: () => this.at(1, W.For) && this.at(2, CountToken) && this.at(3, W.Row, W.Round),
        ALT: () => {
          this.CONSUME3(Any);
          const count = this.SUBRULE1(this.count);
          this.CONSUME4(Any);
          this.ACTION(() => {
            state.until = { kind: 'rows', count };
          });
        },
      },
      {
        GATE: () => this.at(1, CountToken) && this.at(2, W.Row, W.Round),
        ALT: () => {
          const count = this.SUBRULE2(this.count);
          this.CONSUME5(Any);
          this.ACTION(() => {
            state.until = { kind: 'rows', count };
          });
        },
      },
      {
        GATE: () => state.named && this.timesAhead(),
        ALT: () => {
          const often = this.SUBRULE(this.howOften, { ARGS: ['from'] });
          this.ACTION(() => {
            if (state.ofRepeat) state.repeats = often.count;
            else state.times = { count: often.count, sense: often.sense };
          });
        },
      },
      { GATE: () => this.overAhead() > 0, ALT: () => this.SUBRULE(this.chartOver, { ARGS: [state] }) },
      {
        GATE: () => state.named && this.extentAhead(),
        ALT: () => {
          const extent = this.SUBRULE(this.extent, { ARGS: ['bracket'] });
          this.ACTION(() => {
            state.over = extent;
          });
        },
      },
      {
        ALT: () => {
          const token = this.CONSUME2(Any) as KnitToken;
          this.ACTION(() => {
            if (chartWord.test(token.image.toLowerCase())) this.noteName(token, state, 0);
            // "work 1st row of Chart B"
            else if (this.at(0, Ordinal, W.First) && this.at(1, W.Row, W.Round) && !/s$/.test(this.image(1)))
              state.rows.push(token.payload?.values?.[0] ?? 1);
            else if (this.at(0, CountToken, Dash, W.To)) {
              if (this.at(-1, W.Row, W.Round) || state.rows.length > 0) this.noteRow(token, state);
            } else if (!state.named && this.at(0, Word) && state.rows.length > 0 && /^over$/.test(this.image(1))) {
              // "row 1 of Fender over 12 sts": the name itself, without "chart"
              state.name ??= this.image(0);
              state.named = true;
            }
          });
        },
      },
    ]);
  });

  /** Tokens of "over next 17 sts", "across centre 43 sts", "on these 12 sts"; 0 when none begins here. */
  private overAhead(): number {
    const begins =
      this.at(1, W.Across, W.On, W.All) || /^over$/.test(this.image(1)) || this.at(1, W.Centre, W.Next, W.First, W.Last, W.Rem, CountToken);
    if (!begins) return 0;
    for (let ahead = 1; ahead < 7; ahead += 1) {
      if (this.at(ahead, CountToken)) return this.at(ahead + 1, W.St) ? ahead + 1 : 0;
      if (this.at(ahead, W.Rem, W.All) && this.at(ahead + 1, W.St)) return ahead + 1;
      if (/^all sts|^all stitches/.test(this.image(ahead))) return ahead;
      if (!this.at(ahead, W.Across, W.On, W.Next, W.First, W.Last, W.Centre, W.All, W.These, W.Rem) && !/^over$/.test(this.image(ahead)))
        return 0;
    }
    return 0;
  }

  private chartOver = this.RULE('chartOver', (state: Written): void => {
    const left = { tokens: 0, all: false };
    const found: { n: KnitToken | null } = { n: null };
    this.ACTION(() => {
      left.tokens = this.overAhead();
    });
    this.AT_LEAST_ONE({
      GATE: () => left.tokens > 0,
      DEF: () => {
        const token = this.CONSUME(Any) as KnitToken;
        this.ACTION(() => {
          left.tokens -= 1;
          if (this.at(0, CountToken)) found.n = token;
        });
      },
    });
    this.ACTION(() => {
      state.over = found.n === null ? { kind: 'end' } : { kind: 'over', count: this.countOf(found.n) };
    });
  });

  /** "(2 reps)", "(Row 2)". */
  private chartBracket = this.RULE('chartBracket', (state: Written): void => {
    this.CONSUME(Open);
    this.MANY({
      GATE: () => !this.at(1, Close),
      DEF: () => {
        const token = this.CONSUME(Any) as KnitToken;
        this.ACTION(() => {
          if (this.at(0, CountToken) && this.at(1, W.Rep)) state.repeats = this.countOf(token);
          else if (this.at(0, CountToken) && this.at(-1, W.Row, W.Round)) this.noteRow(token, state);
        });
      },
    });
    this.CONSUME(Close);
  });

  private chartRepeats = this.RULE('chartRepeats', (state: Written): void => {
    this.CONSUME(Any);
    this.MANY({ GATE: () => !this.timesAhead() && !this.separator(), DEF: () => this.CONSUME1(Any) });
    this.OPTION({
      GATE: () => this.timesAhead(),
      DEF: () => {
        const often = this.SUBRULE(this.howOften, { ARGS: ['bracket'] });
        this.ACTION(() => {
          state.repeats = often.count;
        });
      },
    });
  });
}

/** A chart phrase while it is being read. */
interface Written {
  readonly rows: number[];
  range: boolean;
  name: string | null;
  over: Extent | null;
  times: Refer['times'];
  repeats: Count | null;
  until: Goal | null;
  ending: EndSide | null;
  named: boolean;
  /** "12-st rep": the times told next are passes of it. */
  ofRepeat?: boolean;
}
