/**
 * Stitches that come and go: casting on, binding off, picking up, holders, joining; needles and yarn.
 *
 *     cast on 98 [110: 122] sts · BO 5, · cast off centre 20 sts · pick up and k 22 sts down left front neck
 *     k across 16 sts on front holder · place next 44 sts on waste yarn · join in the rnd · change to 4 mm needles
 */
import {
  Any,
  Close,
  Colon,
  Comma,
  Count as CountToken,
  Dash,
  Equals,
  Fabric,
  FullStop,
  type KnitToken,
  Mark,
  Name,
  Open,
  PlainStitch,
  Semicolon,
  SlipStitch,
  Stitch,
  TimesNumber,
  W,
  Word,
} from '../tokens.ts';
import type { BindOff, CastOn, Change, Count, Evenly, Hold, Join } from '../tree.ts';
import { PickingUp } from './picking-up.ts';

const needleNumbers: Readonly<Record<string, number>> = { two: 2, three: 3, four: 4, '2': 2, '3': 3, '4': 4 };

export class Places extends PickingUp {
  protected castOnAhead(): boolean {
    return this.at(1, W.CastOn) && (this.at(2, CountToken) || this.at(3, CountToken));
  }

  /** "cast on 98 sts", "CO 20 [22, 24] sts onto left needle with the cable method", "casting on 2 sts over those cast off". */
  override castOnStep = this.RULE('castOnStep', (): CastOn => {
    const start = this.from();
    this.CONSUME(W.CastOn);
    this.OPTION({ GATE: () => !this.at(1, CountToken), DEF: () => this.CONSUME(Any) });
    const count = this.SUBRULE(this.count);
    const perNeedle: { count: Count | null } = { count: null };
    const tail = this.ACTION(() => this.from());
    this.MANY({
      GATE: () =>
        !this.separator() &&
        !this.at(1, Dash) &&
        !(this.at(1, W.And) && !this.at(2, W.CastOn, CountToken, Word)) &&
        !(this.at(1, W.And) && this.at(2, Word) && /^(knit|turn|join|place|work)/.test(this.image(2))) &&
        !(this.at(1, Open) && ((this.payload(1)?.holds !== 'stated' && this.payload(1)?.holds !== 'remark') || this.totalInBracket())) &&
        !this.at(1, W.Turn, Stitch, Equals) &&
        !this.at(1, W.Work),
      DEF: () =>
        this.OR([
          {
            GATE: () => this.at(1, Open),
            ALT: () => {
              const bracket = this.SUBRULE(this.stitchesPerNeedle);
              this.ACTION(() => {
                perNeedle.count = bracket;
              });
            },
          },
          {
            ALT: () => {
              const token = this.CONSUME1(Any) as KnitToken;
              // "20 sts: 10 loops on each of two needles"
              this.ACTION(() => {
                if (this.at(0, CountToken) && this.at(-1, Colon)) perNeedle.count = this.countOf(token);
              });
            },
          },
        ]),
    });
    return this.ACTION(() => {
      const words = this.words(tail, this.LA(0).startOffset + this.LA(0).image.length).toLowerCase();
      const method =
        /(?:with|using|by)(?: the| a| an)? ([a-z\- ]*?)(?: method| cast-on| cast on)\b/.exec(words)?.[1] ??
        /\b(long-tail|cable|knitted|backward[- ]loop|provisional|tubular|thumb|stretchy)\b/.exec(words)?.[1] ??
        null;
      const each = /\b(?:on|onto|to) each\b(?! end)|\bper needle\b/.test(words);
      // "10 sts on each of two needles", "onto each needle": a cast-on over two tips unless another number is told
      const needles =
        each && perNeedle.count === null
          ? (needleNumbers[/\beach of (?:the |your )?(two|three|four|2|3|4)\b/.exec(words)?.[1] ?? 'two'] ?? 2)
          : 1;
      const total: Count =
        needles === 1 ? count : { ...count, values: count.values.map((value) => (value === null ? null : value * needles)) };
      const where = /onto left|left needle|lh needle/.test(words)
        ? 'start'
        : /\bat (the )?end\b/.test(words) ||
            /\bat (?:the )?end of (?:the )?(?:last|this|same|previous|row|rnd)[a-z ]*,?\s*$/i.test(
              this.text.slice(Math.max(0, start - 60), start),
            )
          ? 'end'
          : 'here';
      const overGaps =
        /\b(?:over|above|across) (?:the |each |each of the |those |these )*(?:gaps?|cast|bound|sts? (?:cast|bound)|\d+ (?:sts )?(?:cast|bound)|buttonholes?|one|cast-off|bound-off|space)/.test(
          words,
        ) || /\bover (?:those|each)\b/.test(words);
      return {
        type: 'castOn',
        count: total,
        where,
        ...(overGaps ? { overGaps: true } : {}),
        method,
        provisional: /provisional/.test(`${words} ${this.text.slice(Math.max(0, start - 60), start).toLowerCase()}`),
        perNeedle: perNeedle.count ?? (each ? count : null),
        span: this.span(start),
      };
    });
  });

  /** "(20 sts in total)": a count of all, not of one needle. */
  private totalInBracket(): boolean {
    for (let ahead = 2; ahead < 12; ahead += 1) {
      if (this.at(ahead, Close)) return false;
      if (this.at(ahead, W.InAll) || /^(total|altogether)$/.test(this.image(ahead))) return true;
    }
    return false;
  }

  private stitchesPerNeedle = this.RULE('stitchesPerNeedle', (): Count | null => {
    let count: Count | null = null;
    this.CONSUME(Open);
    this.MANY({
      GATE: () => !this.at(1, Close),
      DEF: () => {
        const token = this.CONSUME(Any) as KnitToken;
        this.ACTION(() => {
          if (this.at(0, CountToken) && count === null) count = this.countOf(token);
        });
      },
    });
    this.CONSUME(Close);
    return count;
  });

  protected bindOffAhead(): boolean {
    if (this.bindOffNamed() > 0) return true;
    return this.at(1, W.BindOff) && !this.togetherAhead();
  }

  /** Tokens before the noun in "work a stretchy bind-off as follows:"; 0 when the words name no way of binding off. */
  private bindOffNamed(): number {
    if (!this.at(1, W.Work) && !(this.at(1, Word) && /^use|using$/.test(this.image(1)))) return 0;
    for (let ahead = 2; ahead < 7; ahead += 1) {
      if (this.at(ahead, W.BindOff))
        return /^(?:bind|cast)[- ]off$/i.test(this.image(ahead)) && !this.at(ahead + 1, CountToken, W.St) ? ahead - 1 : 0;
      if (!this.at(ahead, Word, Name)) return 0;
    }
    return 0;
  }

  /** "cast off 5 sts", "BO all sts loosely in rib", "cast off rem 7 (9) sts", "bind off centre 20 sts", "cast off". */
  override bindOffStep = this.RULE('bindOffStep', (): BindOff => {
    const start = this.from();
    this.many(41, { GATE: () => !this.at(1, W.BindOff), DEF: () => this.consume(41, Any) });
    const head = this.CONSUME(W.BindOff) as KnitToken;
    let which: BindOff['which'] = 'next';
    const state: { count: KnitToken | null } = { count: null };
    const manner: string[] = [];
    let loopCounted: boolean | null = null;
    this.MANY({
      GATE: () =>
        state.count === null &&
        (this.at(1, W.Next, W.Centre, W.All, W.Rem, W.Foll, W.First, W.Across, W.These, CountToken, W.Last, W.Only) ||
          (this.at(1, Word) && /^(loosely|purlwise|knitwise|very|thumb|off|firmly|underarm)$/.test(this.image(1)))),
      DEF: () => {
        const token = this.CONSUME(Any) as KnitToken;
        this.ACTION(() => {
          if (this.at(0, CountToken)) state.count = token;
          else if (this.at(0, W.Centre)) which = 'centre';
          else if (this.at(0, W.Rem)) which = 'remaining';
          else if (this.at(0, W.All, W.Across)) which = 'all';
          else if (this.at(0, Word)) manner.push(token.image.toLowerCase());
        });
      },
    });
    this.MANY1({
      GATE: () => (this.at(1, Word, W.Rem, W.Centre, W.Other) && this.at(2, W.St)) || (this.at(1, W.St) && !this.at(0, W.St)),
      DEF: () => this.CONSUME1(Any),
    });
    // "with knit over knit and purl over purl": in rib, told at length
    this.MANY6({
      GATE: () =>
        state.count === null &&
        (this.at(1, W.With) ||
          this.at(0, W.With) ||
          this.at(0, W.And, PlainStitch) ||
          /^over$/.test(this.image(0)) ||
          /^over$/.test(this.image(1)) ||
          this.at(1, W.And)) &&
        this.overItself(),
      DEF: () => this.CONSUME6(Any),
    });
    this.MANY2({
      GATE: () => this.bindOffManner(),
      DEF: () => {
        const token = this.CONSUME2(Any) as KnitToken;
        this.ACTION(() => manner.push(token.image.toLowerCase()));
      },
    });
    this.OPTION({
      GATE: () =>
        this.at(1, Open) &&
        this.payload(1)?.holds !== 'group' &&
        /incl|counts/.test(this.text.slice(this.LA(1).startOffset, this.LA(1).startOffset + 14).toLowerCase()),
      DEF: () => {
        this.CONSUME(Open);
        this.MANY3({ GATE: () => !this.at(1, Close), DEF: () => this.CONSUME3(Any) });
        this.CONSUME(Close);
        this.ACTION(() => {
          loopCounted = true;
        });
      },
    });
    this.OPTION8({
      GATE: () => this.whileBindingOff() > 0,
      DEF: () => {
        this.many(21, { GATE: () => this.at(1, Comma, W.And, W.SameTime) && !this.at(0, Word, W.Across), DEF: () => this.CONSUME4(Any) });
        this.MANY5({ GATE: () => !this.separator() && !this.at(1, Dash), DEF: () => this.CONSUME5(Any) });
        this.ACTION(() => {
          manner.push('decreasing');
        });
      },
    });
    // "Bind off loosely: k1, *k1, slip both sts back …; rep from * until all sts are bound off": the way of doing it.
    this.option(42, {
      GATE: () => this.image(0) === 'as' && (this.at(1, W.Foll) || /^follows$/.test(this.image(1))) && this.at(2, Colon),
      DEF: () => this.consume(42, Any),
    });
    let recipe: string | undefined;
    this.OPTION1({
      GATE: () =>
        state.count === null &&
        this.at(1, Colon) &&
        /\b(?:rep|repeat|until|slip|pass|return)\b/i.test(this.text.slice(this.LA(1).startOffset, this.LA(1).startOffset + 240)),
      DEF: () => {
        this.CONSUME1(Colon);
        const from = this.from();
        this.MANY4({ GATE: () => !Number.isNaN(this.LA(1).startOffset) && !this.at(1, FullStop), DEF: () => this.CONSUME4(Any) });
        this.ACTION(() => {
          recipe = this.words(from, this.LA(0).startOffset + this.LA(0).image.length);
        });
      },
    });
    return this.ACTION(() => {
      const all: Count = { type: 'count', values: [0], all: true, span: this.tokenSpan(head) };
      const number = state.count as KnitToken | null;
      return {
        type: 'bindOff',
        count: number === null ? all : { ...this.countOf(number), ...(which === 'all' || which === 'remaining' ? { all: true } : {}) },
        which: number === null && which === 'next' ? 'all' : which,
        manner,
        loopCounted,
        span: this.span(start),
        ...(recipe === undefined ? {} : { recipe }),
      };
    });
  });

  /** Whether the next word stands in "with knit over knit and purl over purl". */
  private overItself(): boolean {
    const around = this.text.slice(Math.max(0, this.from() - 30), this.from() + 24);
    return /\b(k(?:nit)?) over \1\b|\b(p(?:url)?) over \2\b/i.test(around) && this.at(1, W.With, W.And, PlainStitch, Word);
  }

  /** ", working 2 tog 4 times over cables", "at same time dec 4 sts across cable": the edge is shorter, the stitches are as many. */
  private whileBindingOff(): number {
    let ahead = 1;
    while (this.at(ahead, Comma, W.And, W.SameTime)) ahead += 1;
    if (ahead === 1) return 0;
    if (this.at(ahead, W.Dec) && this.at(ahead + 1, CountToken) && this.at(ahead + 2, W.St))
      return this.at(ahead + 3, W.Across, W.Evenly) || (this.at(ahead + 3, Word) && /^over$/.test(this.image(ahead + 3))) ? ahead : 0;
    return this.at(ahead, W.Work) && /^working$/.test(this.image(ahead)) && this.at(ahead + 1, Stitch, CountToken) ? ahead : 0;
  }

  /** "Cast off shoulder sts together": two sets at once, a three-needle bind-off. */
  private togetherAhead(): boolean {
    for (let ahead = 2; ahead < 10; ahead += 1) {
      if (this.separator(ahead) || this.at(ahead, W.Work, Stitch)) return false;
      if (this.at(ahead, W.ThreeNeedle)) return true;
      if (this.at(ahead, Word) && /^(tog|together)$/.test(this.image(ahead))) return !this.at(ahead - 1, CountToken);
    }
    return false;
  }

  private bindOffManner(): boolean {
    if (this.separator() || this.at(1, Dash, Open, W.And, W.Then, W.Turn, W.PickUp)) return false;
    // "using a sewn bind-off"
    if (this.at(1, W.BindOff, W.ThreeNeedle)) return this.at(0, Word);
    // "with dec as set"
    if (this.at(1, W.Dec, W.Inc)) return this.at(0, W.With);
    if (this.at(1, Stitch)) return /^(knitwise|purlwise|kwise|pwise)$/.test(this.image(1)) || this.at(0, W.In, W.Work);
    if (this.at(1, Word)) return true;
    if (this.at(1, W.At)) return this.at(2, W.Same, W.These);
    if (this.at(1, CountToken)) return this.at(0, W.Work, W.Needle);
    return this.at(
      1,
      W.In,
      W.Rib,
      W.Patt,
      W.On,
      W.Ws,
      W.Rs,
      W.With,
      W.Needle,
      W.As,
      W.Set,
      Fabric,
      W.St,
      W.For,
      W.Rem,
      W.Evenly,
      W.Work,
      W.Row,
      W.Round,
      W.Next,
      W.All,
      W.Across,
      Name,
      W.Edge,
      W.Centre,
      W.First,
      W.Last,
      W.Given,
      W.These,
    );
  }

  protected holdAhead(): boolean {
    if (this.at(1, W.Leaving)) return this.holderWithin(2, 14);
    if (this.at(1, W.Place) || (this.at(1, W.Return) && !this.at(2, W.To))) return this.holderWithin(2, 14);
    if (this.at(1, SlipStitch, Stitch) && /^(sl|slip)/.test(this.image(1))) return this.holderWithin(2, 12);
    if (this.at(1, Word) && /^(slip|keep|hold)$/.test(this.image(1))) return this.holderWithin(2, 12);
    return false;
  }

  private holderWithin(from: number, count: number): boolean {
    // "Place on hold.": all that are there.
    if (this.at(1, W.Place) && this.at(2, W.On) && this.at(3, W.Holder)) return true;
    let stitches = this.at(1, SlipStitch) && this.payload(1)?.values !== undefined;
    for (let ahead = from; ahead < from + count; ahead += 1) {
      // stitches that come from a holder go to no holder
      if (this.at(ahead, W.From) && (this.at(ahead + 1, W.Holder) || (this.at(ahead + 2, W.Holder) && !this.at(ahead + 1, W.Needle))))
        return false;
      if (
        this.at(ahead, W.St, W.Rem, W.Centre, W.Across) ||
        /^(them|those)$/.test(this.image(ahead)) ||
        (this.at(ahead, CountToken) && this.at(ahead + 1, W.On, W.To))
      )
        stitches = true;
      if (this.at(ahead, W.Holder))
        return stitches && !(this.at(ahead, W.Holder) && this.image(ahead) === 'hold' && !this.at(ahead - 1, W.On));
      // "Leave the sts on the needle": they stay where they are
      if (
        this.at(1, W.Leaving) &&
        this.image(1) === 'leave' &&
        this.at(ahead, W.On) &&
        this.at(ahead + 1, W.Needle) &&
        /^(?:the )?needles?$/.test(this.image(ahead + 1)) &&
        !this.at(ahead - 1, W.Rem) &&
        (ahead === from + 1 || this.at(ahead - 2, W.These, W.All))
      )
        return false;
      if (stitches && this.at(ahead, W.On, W.To) && this.at(ahead + 1, W.Needle) && this.at(1, W.Leaving)) return true;
      // "Leave the 28 sts of Needle 2 unworked for the instep"
      if (stitches && this.at(ahead, W.Unworked) && this.at(1, W.Leaving) && this.at(from, CountToken)) return true;
      if (this.separator(ahead) || this.at(ahead, PlainStitch)) return false;
    }
    return false;
  }

  /** "place next 44 sts on waste yarn for left sleeve", "slip these sts onto a holder", "leave rem sts on a spare needle". */
  override holdStep = this.RULE('holdStep', (): Hold => {
    const start = this.from();
    const head = this.CONSUME(Any) as KnitToken;
    let which: Hold['which'] = 'next';
    const state: { count: KnitToken | null; holder: string } = { count: null, holder: 'holder' };
    // "leave sts on holder": all there are
    this.ACTION(() => {
      if (head.payload?.values !== undefined) state.count = head;
      if ((head.tokenType === W.Leaving || head.tokenType === W.Place) && this.at(1, W.St) && this.at(2, W.On, W.Holder, W.And))
        which = 'these';
      if (head.tokenType === W.Place && this.at(1, W.On)) which = 'these';
    });
    this.MANY({
      GATE: () => !this.at(1, W.Holder) && !this.at(0, W.Holder) && !this.separator(),
      DEF: () => {
        const token = this.CONSUME1(Any) as KnitToken;
        this.ACTION(() => {
          if (this.at(0, CountToken) && state.count === null) state.count = token;
          else if (this.at(0, W.Rem)) {
            // "52 left sleeve sts": which sleeve, not what is left
            if (this.image(0) !== 'left' || !this.at(1, Word, Name)) which = 'remaining';
          } else if (this.at(0, W.Centre)) which = 'centre';
          else if (this.at(0, W.Other)) which = 'other';
          else if (this.at(0, W.These, W.Across, W.All) || /^(them|just)$/.test(this.image(0))) which = 'these';
          else if (this.at(0, W.First)) which = which === 'last' ? 'firstAndLast' : 'first';
          else if (this.at(0, W.Last)) which = which === 'first' ? 'firstAndLast' : 'last';
        });
      },
    });
    this.OPTION({
      GATE: () => this.at(1, W.Holder),
      DEF: () => {
        this.CONSUME2(Any);
        this.ACTION(() => {
          state.holder = this.image(0);
        });
      },
    });
    const tail = this.ACTION(() => this.from());
    this.MANY1({
      GATE: () =>
        !this.separator() && !this.at(1, Dash, Open, W.Then, PlainStitch, W.Turn) && !(this.at(1, W.And) && !this.at(2, W.Leaving, Word)),
      DEF: () => this.CONSUME3(Any),
    });
    return this.ACTION(() => {
      const words = this.words(tail, this.LA(0).startOffset + this.LA(0).image.length).toLowerCase();
      const number = state.count as KnitToken | null;
      const centre = number === null && which === 'centre' ? { ...this.countOf(head), values: [1] } : null;
      const toMarker = /\bto (?:the )?(?:next |first |second )?(?:marker|m)\b/i.test(this.words(start, tail));
      return {
        type: 'hold',
        which,
        ...(toMarker && number === null ? { toMarker: true } : {}),
        count: number === null ? centre : number === head ? this.countInside(head) : this.countOf(number),
        holder: state.holder,
        name: /^for (?:the )?([a-z ]+?)(?: and .*)?$/.exec(words)?.[1] ?? null,
        span: this.span(start),
      };
    });
  });

  /** "at each end of last row": no row of its own, so only the net of the row just worked. */
  protected endOfLastRow(from: number): boolean {
    if (!this.at(from, W.At, W.Each)) return false;
    for (let ahead = from + 1; ahead < from + 7; ahead += 1) {
      if (this.at(ahead, W.Last)) return this.at(ahead + 1, W.Row, W.Round, W.Ws, W.Rs);
      if (!this.at(ahead, W.Each, W.End, W.Edge, W.Of, W.On, W.Beg, W.And, Word)) return false;
    }
    return false;
  }

  protected evenlyAhead(): boolean {
    if (!this.at(1, W.Inc, W.Dec)) return false;
    const number = this.at(2, W.To) ? 3 : 2;
    if (!this.at(number, CountToken)) return false;
    const stitch = this.at(number + 1, W.St) ? number + 2 : number + 1;
    if (this.at(2, W.To)) return !this.at(stitch, W.At);
    if (this.at(stitch, W.Evenly)) return true;
    if (this.endOfLastRow(stitch)) return true;
    if (this.at(stitch, W.At, W.In) && this.at(stitch + 1, W.Centre) && this.at(stitch + 2, W.Of))
      return this.at(stitch + 3, W.Last, W.Row, W.Round, W.Next, W.These);
    if (this.at(stitch, W.On, W.Across, W.In) && this.at(stitch + 1, W.Last, W.First, W.Row, W.Round, W.Next)) return true;
    return this.at(number + 1, W.St) && this.separator(stitch);
  }

  /** "inc 6 sts evenly across last row", "dec to 90 sts". */
  override evenlyStep = this.RULE('evenlyStep', (): Evenly => {
    const start = this.from();
    const head = this.CONSUME(Any) as KnitToken;
    const to = this.OPTION({ GATE: () => this.at(1, W.To), DEF: () => this.CONSUME1(Any) });
    const count = this.SUBRULE(this.count);
    let onLastRow = false;
    this.MANY({
      GATE: () =>
        this.at(
          1,
          W.St,
          W.Evenly,
          W.Across,
          W.Around,
          W.On,
          W.At,
          W.Centre,
          W.Each,
          W.End,
          W.Edge,
          W.Beg,
          W.Last,
          W.First,
          W.Row,
          W.Round,
          W.Of,
          W.Next,
          W.In,
          W.Rib,
          W.These,
          W.Ws,
          W.Rs,
          W.All,
          Word,
        ) && !(this.at(1, Word) && !/^(along|spaced|over|repeat)/.test(this.image(1)) && !this.at(2, W.Edge)),
      DEF: () => {
        this.CONSUME2(Any);
        this.ACTION(() => {
          if (this.at(0, W.Last) && this.at(1, W.Row, W.Round, W.Ws, W.Rs)) onLastRow = true;
          if (/last (row|rnd|ws|rs)/.test(this.image(0))) onLastRow = true;
        });
      },
    });
    return this.ACTION(() => {
      if (/\bon (?:the )?last (?:row|rnd|round)\b[^.;]*$/i.test(this.text.slice(Math.max(0, start - 60), start))) onLastRow = true;
      // "1 st at each end of last row": both ends
      const twice = onLastRow && /\b(?:each|both) (?:ends?|sides?|edges?)\b|beg and end/i.test(this.words(start, this.LA(0).startOffset));
      const net = twice ? { ...count, values: count.values.map((value) => (value === null ? null : value * 2)) } : count;
      return {
        type: 'evenly',
        change: to ? 'to' : head.tokenType === W.Inc ? 'inc' : 'dec',
        count: net,
        onLastRow,
        span: this.span(start),
      };
    });
  });

  protected joinAhead(): boolean {
    if (this.at(1, W.FastenOff, W.Graft, W.ThreeNeedle)) return true;
    if (this.at(1, W.Thread) && /^b/.test(this.image(1))) return true;
    if (this.at(1, W.Thread)) return this.within(2, 6, W.Yarn, W.St) || /^(tail|through)/.test(this.image(2));
    if (this.at(1, W.Holder) && this.image(1) === 'thread') return true;
    if (this.at(1, W.Not)) return this.at(2, W.Join);
    if (this.at(1, W.Join)) return !this.joinsColour();
    if (this.at(1, W.Form)) return /^(ring|round|circle)$/.test(this.image(2)) && this.separator(3);
    if (this.at(1, W.Work) && (this.at(2, W.ThreeNeedle) || this.at(3, W.ThreeNeedle))) return true;
    if (this.at(1, W.Work, W.Cont)) return this.backAndForth(2);
    if (this.at(1, W.BindOff)) return this.togetherAhead();
    if (this.at(1, W.With)) return this.at(2, W.Graft) || (this.at(3, W.Graft) && !this.at(2, Comma));
    if (this.at(1, Word) && /^(resume)/.test(this.image(1))) return this.within(2, 5, W.InRound);
    return false;
  }

  /** "join in B", "join MC": a colour, not stitches. */
  private joinsColour(): boolean {
    if (this.image(1) === 'join in') return !this.within(2, 5, W.InRound, W.St, W.Yarn);
    const colour = this.at(2, W.Yarn) && this.at(3, Word) ? 3 : 2;
    return (
      this.at(colour, Word, W.Marker) &&
      /^(?:[a-z]|[mc]c\d?|colour|color|contrast|main)$/.test(this.image(colour)) &&
      (this.separator(colour + 1) || this.at(colour + 1, W.And, W.For, Dash))
    );
  }

  /** "work back and forth in rows", "cont in rows": the piece is flat from here on. */
  private backAndForth(ahead: number): boolean {
    if (this.image(ahead) === 'back' && this.at(ahead + 1, W.And)) return true;
    return this.at(ahead, W.In) && this.at(ahead + 1, W.Row) && !this.at(ahead + 2, CountToken);
  }

  /** "join for working in the rnd", "rejoin yarn to rem sts", "graft …", "fasten off", "thread tail through rem 8 sts". */
  override joinStep = this.RULE('joinStep', (): Join => {
    const start = this.from();
    const head = this.CONSUME(Any) as KnitToken;
    const state: { count: KnitToken | null } = { count: null };
    let side: Join['side'] = null;
    let round = false;
    this.MANY({
      GATE: () =>
        !this.separator() &&
        !this.at(1, Dash, W.Then) &&
        !(this.at(1, Colon) && this.at(2, Stitch, Mark, Open, W.Work)) &&
        !(this.at(1, W.And) && this.at(2, Stitch, W.Work, W.Patt, W.Rib, W.Place, W.BindOff, W.CastOn, W.PickUp, W.Leaving)) &&
        !(this.at(1, Open) && this.payload(1)?.holds !== 'remark' && this.payload(1)?.holds !== 'measure'),
      DEF: () => {
        const token = this.CONSUME1(Any) as KnitToken;
        this.ACTION(() => {
          if (this.at(0, CountToken) && state.count === null && this.at(1, W.St, Word)) state.count = token;
          if (this.at(0, W.Rs)) side = 'RS';
          if (this.at(0, W.Ws)) side = 'WS';
          if (this.at(0, W.InRound)) round = true;
        });
      },
    });
    // ", being careful not to twist": a clause of the same join.
    this.OPTION({
      GATE: () =>
        this.at(1, Comma) &&
        (/^(being|taking|careful|take|making|without)/.test(this.image(2)) || (head.tokenType === W.With && this.at(2, W.Join, W.Graft))),
      DEF: () => {
        this.CONSUME2(Any);
        this.MANY1({ GATE: () => !this.separator(), DEF: () => this.CONSUME3(Any) });
      },
    });
    return this.ACTION((): Join => {
      const words = this.words(start, this.LA(0).startOffset + this.LA(0).image.length).toLowerCase();
      const number = state.count as KnitToken | null;
      if (/\b(?:in|into) (?:the |a )?(?:rnds?|rounds?|ring)\b/.test(words)) round = true;
      const what: Join['what'] =
        head.tokenType === W.FastenOff
          ? 'fastenOff'
          : head.tokenType === W.Graft || head.tokenType === W.With
            ? 'graft'
            : head.tokenType === W.ThreeNeedle || head.tokenType === W.BindOff
              ? 'threeNeedle'
              : head.tokenType === W.Thread || head.tokenType === W.Holder
                ? 'thread'
                : head.tokenType === W.Not || (head.tokenType === W.Work && !/needle/.test(words)) || head.tokenType === W.Cont
                  ? 'noRound'
                  : /^resume/.test(words)
                    ? 'resumeRound'
                    : round
                      ? 'round'
                      : /three-needle|3-needle|three needle/.test(words)
                        ? 'threeNeedle'
                        : /seam|shoulder seams|side seams/.test(words) && !/yarn/.test(words)
                          ? 'seam'
                          : /yarn|ball|^re-?join|^reattach|^attach/.test(words)
                            ? 'rejoin'
                            : /\b(shoulders?|sides?|sleeves?|collar|pieces|neckband|edges|seams?)\b/.test(words)
                              ? 'seam'
                              : 'round';
      return {
        type: 'join',
        what,
        count: number === null ? null : this.countOf(number),
        side,
        loses: /first and last|last and first|k2tog|over the first/.test(words) ? 1 : 0,
        span: this.span(start),
      };
    });
  });

  protected changeAhead(): boolean {
    if (this.at(1, W.Change, W.Break)) return true;
    if (this.at(1, W.Join)) return this.joinsColour();
    if (this.at(1, W.With)) return !this.at(2, Stitch) || this.at(2, W.Rs, W.Ws);
    if (this.at(1, W.Rs, W.Ws)) return this.at(2, W.Facing, Comma) || /facing/.test(this.image(1));
    if (this.at(1, W.Not)) return this.at(2, W.Break);
    if (this.at(1, W.Beg)) return this.at(2, W.At) || this.at(2, W.In);
    if (this.at(1, Word) && /^(slide|push|distribute|divide|arrange|rearrange|leaving)$/.test(this.image(1))) return true;
    if (this.at(1, W.Place)) return this.image(1) === 'slide';
    if (this.at(1, W.Leaving)) return this.within(2, 8, W.Yarn) || /tail/.test(this.text.slice(this.from(), this.from() + 30));
    return false;
  }

  /** "change to larger needles", "with RS facing", "using B", "cut yarn, leaving a long tail": takes and makes nothing. */
  override changeStep = this.RULE('changeStep', (): Change => {
    const start = this.from();
    const head = this.CONSUME(Any) as KnitToken;
    this.MANY({
      GATE: () =>
        !this.separator() &&
        !this.at(1, Dash, W.Then, Colon) &&
        !(this.at(1, W.And) && this.at(2, W.Leaving)) &&
        !this.at(1, W.PickUp, W.BindOff, W.Graft) &&
        !(this.at(1, W.CastOn) && !this.at(2, Comma, Word)) &&
        !(this.at(1, PlainStitch, Stitch) && this.at(0, W.Needle, W.Facing, W.Rs, W.Ws, W.Yarn, W.Holder, Word)) &&
        !(this.at(1, W.And) && /^(thread|pull|draw)$/.test(this.image(2))) &&
        !(
          this.at(1, W.And) &&
          this.at(2, Stitch, W.PickUp, W.Join, W.CastOn, W.Work, W.Cont, W.Place, W.Beg, W.Thread, W.BindOff, W.FastenOff)
        ) &&
        !(this.at(1, W.Work, W.Cont, W.Rib, W.Beg) && this.at(0, W.Needle)) &&
        !(this.at(1, W.Join) && this.at(0, W.Facing, W.Rs, W.Ws)),
      DEF: () => this.CONSUME1(Any),
    });
    return this.ACTION((): Change => {
      const detail = this.words(start, this.LA(0).startOffset + this.LA(0).image.length);
      const words = detail.toLowerCase();
      const what: Change['what'] =
        head.tokenType === W.Join
          ? 'join'
          : /\b(rs|ws|right side|wrong side)\b|facing/.test(words)
            ? 'side'
            : /^slide|^push/.test(words)
              ? 'slide'
              : /^(divide|distribute|arrange|rearrange)/.test(words)
                ? 'other'
                : head.tokenType === W.Break || head.tokenType === W.Not
                  ? 'break'
                  : /needle|dpn|circular|\bmm\b/.test(words)
                    ? 'needle'
                    : 'yarn';
      return { type: 'change', what, detail, span: this.span(start) };
    });
  });
}
