/**
 * Stitches bound off.
 *
 *     BO 5, · cast off centre 20 sts in rib · BO all sts · cast off 20 sts each side · bind off until 1 st remains
 */
import { addSized } from '../count.ts';
import {
  Any,
  Close,
  Colon,
  Comma,
  Count as CountToken,
  Dash,
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
import type { BindOff, Count } from '../tree.ts';
import { Casting } from './casting.ts';

/** "cast off 20 sts each side", "BO 18 sts for each shoulder": two groups of as many, worked at the same time. */
const eachSide = /\b(?:each|either) (?:side|shoulder|front|half|end)\b|\b(?:on|for) both (?:sides|shoulders|fronts)\b/;

export class BindingOff extends Casting {
  protected bindOffAhead(): boolean {
    if (this.bindOffNamed() > 0) return true;
    return this.at(1, W.BindOff) && !this.togetherAhead();
  }

  /** Tokens before the noun in "work a stretchy bind-off as follows:"; 0 when the words name no way of binding off. */
  protected bindOffNamed(): number {
    // "Picot bind off: *CO 2 sts, BO 4 sts, …; rep from * to end": its name and the way of doing it
    if (this.at(1, Word, Name) && this.at(2, W.BindOff) && this.at(3, Colon))
      return /\b(?:rep|repeat)\b/i.test(this.text.slice(this.from(), this.from() + 240)) ? 1 : 0;
    if (!this.at(1, W.Work) && !(this.at(1, Word) && /^use|using$/.test(this.image(1)))) return 0;
    for (let ahead = 2; ahead < 7; ahead += 1) {
      if (this.at(ahead, W.BindOff))
        return /^(?:bind|cast)[- ]off$/i.test(this.image(ahead)) && !this.at(ahead + 1, CountToken, W.St) ? ahead - 1 : 0;
      if (!this.at(ahead, Word, Name)) return 0;
    }
    return 0;
  }

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

  /** "cast off 5 sts", "BO all sts loosely in rib", "cast off rem 7 (9) sts", "bind off centre 20 sts", "cast off". */
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
    // "cast off last 6 sts and first 6 sts of next rnd"
    const beyond = this.option(49, {
      GATE: () =>
        this.at(1, W.And) &&
        this.at(2, W.First) &&
        this.at(3, CountToken) &&
        /^last\b/i.test(this.words(head.startOffset, this.from()).split(' ').at(-3) ?? ''),
      DEF: () => {
        this.consume(49, W.And);
        this.consume(50, W.First);
        const more = this.consume(51, CountToken) as KnitToken;
        this.many(49, { GATE: () => this.at(1, W.St, W.Of, W.Next, W.Round, W.Foll), DEF: () => this.consume(52, Any) });
        return more;
      },
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
        count:
          number === null
            ? all
            : {
                ...this.countOf(number),
                ...(beyond ? { values: addSized(this.countOf(number).values, this.countOf(beyond as KnitToken).values) } : {}),
                ...(which === 'all' || which === 'remaining' ? { all: true } : {}),
              },
        which: number === null && which === 'next' && !toMarker.told ? 'all' : which,
        manner,
        loopCounted,
        span: this.span(start),
        ...(recipe === undefined ? {} : { recipe }),
        ...(leaves === 0 ? {} : { leaves }),
        ...(eachSide.test(words) ? { each: true as const } : {}),
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
    if (/^(?:each|either|both)$/.test(this.image(1)) || /^(?:each|either|both)$/.test(this.image(0)))
      return eachSide.test(this.text.slice(Math.max(0, this.from() - 10), this.from() + 20).toLowerCase());
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
