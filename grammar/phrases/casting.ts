/**
 * Stitches cast on and bound off.
 *
 *     cast on 98 [110: 122] sts · CO 20 sts onto left needle · BO 5, · cast off centre 20 sts in rib · BO all sts
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
  Name,
  Open,
  PlainStitch,
  Stitch,
  W,
  Word,
} from '../tokens.ts';
import type { BindOff, CastOn, Count } from '../tree.ts';
import { TakingUp } from './taking-up.ts';

const needleNumbers: Readonly<Record<string, number>> = { two: 2, three: 3, four: 4, '2': 2, '3': 3, '4': 4 };

export class Casting extends TakingUp {
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
        /\b(?:over|above|across) (?:the |each |each of the |those |these )*(?:gaps?|cast|bound|sts? (?:cast|bound)|\d+ (?:sts )?(?:cast|bound)|buttonholes?|one|cast-off|bound-off|space|pocket gap)/.test(
          words,
        ) ||
        /\b(?:in place of|to replace) (?:the |those |each |these )*(?:\d+ )?(?:sts? |stitches )?(?:cast|bound)|\bwhere (?:\S+ )?(?:sts? |stitches )?(?:was|were) (?:cast|bound) off|\babove (?:it|them)\b/.test(
          words,
        ) ||
        /\bover (?:those|each)\b/.test(words);
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
  /** Stitches that "until 1 st rem", "to last 2 sts" and "but 1 st" leave; 0 when nothing is said to stay. */
  private leavesOne(): number {
    const words =
      /^(?:until|till|to|but|except) (?:the )?(?:(?:only )?(1|one|2|two|3|three)|last (?:(2|two|3|three) )?)\s*(?:sts?|stitch(?:es)?)\b/i.exec(
        this.text.slice(this.from(), this.from() + 40),
      );
    if (words === null) return 0;
    const word = (words[1] ?? words[2] ?? '1').toLowerCase();
    return { one: 1, two: 2, three: 3 }[word] ?? Number(word);
  }

  override bindOffStep = this.RULE('bindOffStep', (): BindOff => {
    const start = this.from();
    this.many(41, { GATE: () => !this.at(1, W.BindOff), DEF: () => this.consume(41, Any) });
    const head = this.CONSUME(W.BindOff) as KnitToken;
    let which: BindOff['which'] = 'next';
    const state: { count: KnitToken | null } = { count: null };
    const manner: string[] = [];
    let loopCounted: boolean | null = null;
    // "BO to next marker"
    const toMarker = { told: false };
    this.option(46, {
      GATE: () => this.at(1, W.To) && this.within(2, 3, W.Marker),
      DEF: () => {
        this.consume(46, Any);
        this.many(46, { GATE: () => !this.at(0, W.Marker), DEF: () => this.consume(47, Any) });
        this.ACTION(() => {
          toMarker.told = true;
        });
      },
    });
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
    // "cast off until 1 st remains", "BO to last st", "BO all but 1 st"
    let leaves = 0;
    this.option(43, {
      GATE: () => state.count === null && this.leavesOne() > 0,
      DEF: () => {
        this.ACTION(() => {
          leaves = this.leavesOne();
        });
        this.many(43, {
          GATE: () => !this.separator() && !this.at(1, W.And, Dash, Open) && !this.at(0, W.Rem),
          DEF: () => this.consume(43, Any),
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
      const words = this.words(start, this.LA(0).startOffset + this.LA(0).image.length).toLowerCase();
      const part =
        number === null
          ? /\boff (?:all )?(?:the )?(steek|sleeve|body|pocket|border|edging|front|back) (?:sts|stitches)\b|\bbo (?:the )?(steek|sleeve|body|pocket|border|edging|front|back) (?:sts|stitches)\b/.exec(
              words,
            )
          : null;
      const partName = part?.[1] ?? part?.[2];
      return {
        type: 'bindOff',
        ...(toMarker.told ? { toMarker: true } : {}),
        ...(partName === undefined ? {} : { part: partName }),
        count: number === null ? all : { ...this.countOf(number), ...(which === 'all' || which === 'remaining' ? { all: true } : {}) },
        which: number === null && which === 'next' && !toMarker.told ? 'all' : which,
        manner,
        loopCounted,
        span: this.span(start),
        ...(recipe === undefined ? {} : { recipe }),
        ...(leaves === 0 ? {} : { leaves }),
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
  protected togetherAhead(): boolean {
    for (let ahead = 2; ahead < 10; ahead += 1) {
      if (this.separator(ahead) || this.at(ahead, W.Work, Stitch)) return false;
      if (this.at(ahead, W.ThreeNeedle)) return true;
      if (this.at(ahead, Word) && /^(tog|together)$/.test(this.image(ahead))) return !this.at(ahead - 1, CountToken);
    }
    return false;
  }

  private bindOffManner(): boolean {
    if (this.separator() || this.at(1, Dash, Open, W.And, W.Then, W.Turn, W.PickUp)) return false;
    // "BO all but 1 st"
    if (this.at(1, Word) && this.leavesOne() > 0) return false;
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
}
