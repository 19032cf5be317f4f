/**
 * Rows called by number, by name, as the last ones or as the part between marks.
 *
 *     last 2 rows · Rows 1–8 · Dec Row · Short Rows 3 and 4 · from ** to *** · these 4 rows for patt
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
  rowWords,
  Stitch,
  TimesNumber,
  W,
  Word,
} from '../tokens.ts';
import type { Count, RowsNamed } from '../tree.ts';
import { PatternRepeats } from './pattern-repeats.ts';

export class NamedRows extends PatternRepeats {
  /** Tokens of "make a buttonhole" before its schedule: "on next row, then on every foll 14th row 5 times more"; 0 when none. */
  protected buttonholes(): number {
    if (!this.at(1, W.Work)) return 0;
    for (let ahead = 2; ahead < 5; ahead += 1)
      if (this.at(ahead, Word) && /^buttonholes?$/.test(this.image(ahead))) return this.segmentAhead(ahead + 1) ? ahead : 0;
    return 0;
  }

  /** "these last 2 rows": the last two. */
  private theseLastAhead(): boolean {
    if (!this.at(1, W.These) || !this.at(2, W.Last)) return false;
    return this.at(3, ...rowWords) || (this.at(3, CountToken) && this.at(4, ...rowWords));
  }

  protected rowsNamedAhead(from: number): boolean {
    // "Work this 12 times in all"
    if (/^this$/.test(this.image(from)))
      if (this.at(from + 1, TimesNumber) || (this.at(from + 1, CountToken) && this.at(from + 2, W.Times))) return true;
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
  protected rowsNamed = this.RULE('rowsNamed', (): RowsNamed => {
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
      shaping: string | null;
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
      shaping: null,
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
        // "Rep this inc rnd every 6th rnd", "rep the decrease on foll 4th row"
        GATE: () => this.shapingTold() > 0,
        ALT: () => {
          const word = this.ACTION(() => this.shapingWord());
          this.SUBRULE(this.countedWords, { ARGS: [() => this.shapingTold()] });
          this.ACTION(() => {
            state.kind = 'shaping';
            state.shaping = word;
          });
        },
      },
      {
        // "Rep until …", "Rep 5 times more", "Rep every other rnd until …": the rows just given.
        GATE: () => this.at(1, W.Until) || this.timesAhead() || this.shapingJustTold() || this.thisOnSchedule(),
        ALT: () => {
          this.option(11, { GATE: () => this.thisOnSchedule(), DEF: () => this.consume(11, Any) });
          this.ACTION(() => {
            state.kind = 'these';
          });
        },
      },
      {
        GATE: () =>
          this.at(1, W.Last, W.These, W.First) &&
          (this.at(2, ...rowWords) ||
            this.theseLastAhead() ||
            (this.at(2, CountToken, Word) && this.at(3, ...rowWords)) ||
            (this.at(2, CountToken) && /^short$/.test(this.image(3)) && this.at(4, ...rowWords))),
        ALT: () => {
          this.CONSUME1(Any);
          this.option(15, { GATE: () => this.at(0, W.These) && this.at(1, W.Last), DEF: () => this.consume(15, Any) });
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
        // "rep the 6-row patt 5 times"
        GATE: () => this.at(1, CountToken) && this.at(2, ...rowWords) && this.at(3, W.Patt),
        ALT: () => {
          const token = this.consume(16, CountToken) as KnitToken;
          this.consume(17, Any);
          this.consume(18, Any);
          this.ACTION(() => {
            state.kind = 'these';
            state.count = this.countOf(token);
          });
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
          state.of = this.words(from, this.LA(0).startOffset + this.LA(0).image.length)
            .replace(/^(of|as|as at|as for)\s+(the )?/i, '')
            .replace(/^(?:as )?(?:before|set|above|given|usual|established|as)$/i, '');
          if (state.of === '') state.of = null;
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
        .replace(/^(?:the |a )*(?:last |first |this |same |above )?(?=\S)/, '');
      if (state.buttonhole) return { kind: 'name', count: null, numbers: [], name: 'buttonhole', of: null, mark: null, toMark: null };
      if (state.kind === 'shaping')
        return { kind: 'shaping', count: null, numbers: [], name: state.shaping, of: null, mark: null, toMark: null };
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

  /** Tokens of "this inc rnd", "the increase", "these decs" before their schedule or how often; 0 when the words are others. */
  private shapingTold(): number {
    const named = this.at(1, W.These, W.Last, W.Same) || (this.at(1, Word) && /^(?:this|above)$/.test(this.image(1)));
    let ahead = named ? 2 : 1;
    if (!this.at(ahead, W.Inc, W.Dec, W.Shaping)) return 0;
    ahead += 1;
    // "Rep Inc rnd every 6th rnd" names a row.
    if (this.at(ahead, ...rowWords)) {
      if (!named) return 0;
      ahead += 1;
    }
    return this.segmentAhead(ahead) || this.at(ahead, CountToken, TimesNumber, W.More, W.Until) ? ahead - 1 : 0;
  }

  /** Whether the shaping told increases or decreases; null where the words leave it open. */
  private shapingWord(): string | null {
    for (let ahead = 1; ahead < 4; ahead += 1) {
      if (this.at(ahead, W.Inc)) return 'inc';
      if (this.at(ahead, W.Dec)) return 'dec';
    }
    return null;
  }

  /** "Rep every 8th row 6 times more", "rep incs every 2 cm": the row just told; "rep this row every 6th row" names it. */
  private shapingJustTold(): boolean {
    const ahead = this.at(1, W.Inc, W.Dec, W.Shaping) ? 2 : 1;
    return this.segmentAhead(ahead) && !(this.at(ahead, Word, W.These) && this.image(ahead) === 'this') && !this.at(ahead, Ordinal);
  }

  /** "Rep this every 4th row". */
  private thisOnSchedule(): boolean {
    return this.at(1, Word, W.These) && this.image(1) === 'this' && this.at(2, W.Every, W.Alt, W.On) && this.segmentAhead(2);
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
      return !this.at(2, W.Times, W.More, W.InAll) || this.at(0, Dash, W.To) || /^again$/.test(this.image(2));
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
      return have > 0 && this.at(2, CountToken, Ordinal) && !(this.at(3, W.Times, W.More) && this.at(1, Comma)) && !this.at(3, W.St);
    return this.at(1, ...rowWords) && have === 0 && this.at(2, CountToken);
  }
}
