/**
 * Stitches told in words rather than by name, and the door to all that is told so.
 *
 *     inc 1 · dec 1 · inc 2 kwise · long-tail CO 24 · take out marker · 5k · dropping yos · drop both
 */
import { ambiguityOf } from '../lexicon/ambiguous.ts';
import {
  Any,
  Colon,
  Count as CountToken,
  Dash,
  endOf,
  type KnitToken,
  Mark,
  Open,
  Ordinal,
  PlainStitch,
  SlipStitch,
  Stitch,
  TimesNumber,
  W,
  Word,
} from '../tokens.ts';
import type { BindOff, CastOn, Count, Marker, Resolve, Step, Work } from '../tree.ts';
import { ToldLists } from './told-lists.ts';

/** Ways of casting on and off that stand before the verb. */
const methods =
  /^(?:long-tail|long|tail|cable|knitted|knit-on|backward|backwards|loop|bl|e-loop|half-hitch|provisional|crochet|two-needle|toe|tubular|sewn|elastic|invisible|stretchy|lace|russian|decrease|i-cord|applied|picot|thumb|twisted|icelandic|italian|suspended|alternating|channel)$/;

export class Told extends ToldLists {
  protected toldAhead(): boolean {
    return (
      this.methodWordsAhead() > 0 ||
      this.markerWordAhead() ||
      this.incDecAhead() ||
      this.liftAhead() > 0 ||
      this.toCableAhead() > 0 ||
      this.fromCableAhead() > 0 ||
      this.asTheyAppearAhead() ||
      this.turnedNumberAhead() ||
      this.dropAhead() ||
      this.looseExtentAhead() ||
      this.bracketAgainAhead()
    );
  }

  toldStep = this.RULE('toldStep', (): Step => {
    return this.OR([
      { GATE: () => this.methodWordsAhead() > 0, ALT: () => this.SUBRULE(this.withMethod) },
      { GATE: () => this.markerWordAhead(), ALT: () => this.SUBRULE(this.markerWord) },
      { GATE: () => this.incDecAhead(), ALT: () => this.SUBRULE(this.incDec) },
      { GATE: () => this.liftAhead() > 0, ALT: () => this.SUBRULE(this.liftOver) },
      { GATE: () => this.toCableAhead() > 0, ALT: () => this.SUBRULE(this.toCable) },
      { GATE: () => this.fromCableAhead() > 0, ALT: () => this.SUBRULE(this.fromCable) },
      { GATE: () => this.asTheyAppearAhead(), ALT: () => this.SUBRULE(this.asTheyAppear) },
      { GATE: () => this.turnedNumberAhead(), ALT: () => this.SUBRULE(this.turnedNumber) },
      { GATE: () => this.bracketAgainAhead(), ALT: () => this.SUBRULE(this.bracketAgain) },
      { GATE: () => this.dropAhead(), ALT: () => this.SUBRULE(this.dropLoops) },
      { ALT: () => this.SUBRULE(this.looseExtent) },
    ]) as Step;
  });

  /** Words of a method before the verb: "long-tail CO 24", "i-cord BO"; how many, 0 when none. */
  private methodWordsAhead(): number {
    for (let ahead = 1; ahead < 5; ahead += 1) {
      if (ahead > 1 && this.at(ahead, W.CastOn)) return this.at(ahead + 1, CountToken) ? ahead - 1 : 0;
      if (ahead > 1 && this.at(ahead, W.BindOff)) return ahead - 1;
      if (!methods.test(this.image(ahead)) && !(this.at(ahead, Stitch) && /ecrease/.test(this.payload(ahead)?.entry?.kind ?? ''))) return 0;
    }
    return 0;
  }

  private withMethod = this.RULE('withMethod', (): CastOn | BindOff => {
    const start = this.from();
    const left = { words: 0 };
    this.ACTION(() => {
      left.words = this.methodWordsAhead();
    });
    this.AT_LEAST_ONE({
      GATE: () => left.words > 0,
      DEF: () => {
        this.CONSUME(Any);
        this.ACTION(() => {
          left.words -= 1;
        });
      },
    });
    const method = this.ACTION(() => this.words(start, endOf(this.LA(0))).toLowerCase());
    const step = this.OR([
      { GATE: () => this.at(1, W.CastOn), ALT: () => this.SUBRULE(this.castOnStep) },
      { ALT: () => this.SUBRULE(this.bindOffStep) },
    ]) as CastOn | BindOff;
    return this.ACTION((): CastOn | BindOff =>
      step.type === 'castOn'
        ? { ...step, method, provisional: step.provisional || /provisional/.test(method), span: this.span(start) }
        : { ...step, manner: [method, ...step.manner], span: this.span(start) },
    );
  });

  /** "pl m", "insert marker", "take out marker". */
  private markerWordAhead(): boolean {
    if (/^(?:pl|insert)$/.test(this.image(1))) return this.at(2, W.Marker);
    return this.image(1) === 'take' && this.image(2) === 'out' && this.at(3, W.Marker);
  }

  private markerWord = this.RULE('markerWord', (): Marker => {
    const start = this.from();
    const head = this.CONSUME(Any) as KnitToken;
    this.MANY({ GATE: () => !this.at(0, W.Marker), DEF: () => this.CONSUME1(Any) });
    return this.ACTION(
      (): Marker => ({ type: 'marker', op: /^t/i.test(head.image) ? 'remove' : 'place', name: null, atRow: false, span: this.span(start) }),
    );
  });

  /** End of a step, `ahead` tokens on: a separator, a bracket, the next stitch, or nothing. */
  private stepEnds(ahead: number): boolean {
    return this.separator(ahead) || this.at(ahead, Open, Mark, Dash, Colon, W.And, W.Then, W.Turn);
  }

  /** "inc", "inc 1", "inc 1 st", "dec 2" as one step among stitches; not "inc 6 sts evenly" and not "inc 1 st at each end". */
  private incDecAhead(): boolean {
    if (!this.at(1, W.Inc, W.Dec) || !/^(?:inc|dec|increase|decrease)$/.test(this.image(1))) return false;
    let ahead = 2;
    if (this.at(ahead, CountToken)) {
      ahead += 1;
      if (this.at(ahead, W.St)) {
        if ((this.payload(2)?.values?.[0] ?? 1) !== 1 || (this.payload(2)?.values?.length ?? 1) > 1) return false;
        ahead += 1;
      }
    }
    if (this.at(ahead, Word) && /^(?:knitwise|purlwise|kwise|pwise)$/.test(this.image(ahead))) ahead += 1;
    if (this.at(ahead, W.In, W.Into)) {
      // "inc 1 st in next st", "inc in each of next 3 sts"
      if (this.at(ahead + 1, W.Next, W.Same, W.These) && this.at(ahead + 2, W.St)) return true;
      return (
        // "inc in each st" and "inc in every 10th st" speak of the whole row
        (this.at(ahead + 1, W.Each, W.Every) && !this.at(ahead + 2, W.St, Ordinal, W.Alt)) ||
        (this.at(ahead + 1, W.Next, W.Last, W.First) && this.at(ahead + 2, CountToken) && this.at(ahead + 3, W.St))
      );
    }
    if (ahead === 2 && this.at(1, W.Dec)) return (this.stepEnds(2) && !this.at(2, Dash, Colon)) || this.at(2, TimesNumber);
    return (
      (this.stepEnds(ahead) && !this.at(ahead, Dash, Colon)) ||
      this.at(ahead, TimesNumber) ||
      (this.at(ahead, CountToken) && this.at(ahead + 1, W.Times))
    );
  }

  private incDec = this.RULE('incDec', (): Work => {
    const start = this.from();
    const head = this.CONSUME(Any) as KnitToken;
    const number = this.OPTION(() => this.CONSUME(CountToken) as KnitToken);
    this.OPTION1({ GATE: () => this.at(1, W.St), DEF: () => this.CONSUME1(Any) });
    const manner: string[] = [];
    this.OPTION2({
      GATE: () => this.at(1, Word) && /wise$/.test(this.image(1)),
      DEF: () => {
        this.CONSUME2(Any);
        this.ACTION(() => manner.push(this.image(0)));
      },
    });
    let times: Count | undefined;
    let into = false;
    this.MANY({
      GATE: () =>
        this.at(1, W.In, W.Into, W.Next, W.Same, W.These, W.Each, W.Every, W.Of, W.St, W.Last, W.First, W.Foll) ||
        (this.at(1, CountToken) && this.at(0, W.Next, W.Last, W.First, W.Of, W.Foll)),
      DEF: () => {
        const token = this.CONSUME3(Any) as KnitToken;
        this.ACTION(() => {
          into = true;
          if (this.at(0, CountToken)) times = this.countOf(token);
        });
      },
    });
    this.OPTION3({
      GATE: () => this.timesAhead(),
      DEF: () => {
        const often = this.SUBRULE(this.howOften, { ARGS: ['bracket'] });
        this.ACTION(() => {
          times = often.count;
        });
      },
    });
    return this.ACTION((): Work => {
      const word = head.tokenType === W.Inc ? 'inc' : 'dec';
      const values = number?.payload?.values ?? [1];
      const one = values.length === 1 && values[0] === 1;
      const purlwise = /^p/.test(manner[0] ?? '');
      const span = this.span(start);
      const base = { type: 'work' as const, manner, span, ...(times === undefined ? {} : { times }) };
      // A stitch named is a stitch worked twice: "inc in next st" is not the made stitch.
      if (word === 'inc' && one && (into || manner.length > 0)) return { ...base, stitch: purlwise ? 'pfb' : 'kfb', n: null };
      const spelling = number === undefined ? word : values.length === 1 ? `${word} ${values[0]}` : `${word} {N}`;
      const count: Count | null = number === undefined ? null : this.countOf(number);
      return { ...base, stitch: `${word} (unspecified)`, n: count, ...(ambiguityOf(spelling) === undefined ? {} : { spelling }) };
    });
  });

  /** "5k": the older order of number and stitch, written close. */
  private turnedNumberAhead(): boolean {
    if (!this.at(1, CountToken) || !this.at(2, PlainStitch, SlipStitch) || this.payload(2)?.values !== undefined) return false;
    return endOf(this.LA(1)) === this.LA(2).startOffset;
  }

  private turnedNumber = this.RULE('turnedNumber', (): Work => {
    const start = this.from();
    const number = this.CONSUME(Any) as KnitToken;
    const token = this.CONSUME1(Any) as KnitToken;
    return this.ACTION(
      (): Work => ({
        type: 'work',
        stitch: token.payload?.entry?.name ?? 'k',
        n: this.countOf(number),
        manner: [],
        span: this.span(start),
      }),
    );
  });

  /** "dropping yos", "letting extra loops fall", "drop both", "drop 2 yos". */
  private dropAhead(): boolean {
    if (/^letting$/.test(this.image(1))) return true;
    if (!this.at(1, W.Drop)) return false;
    return /^dropping$/.test(this.image(1)) || this.at(2, CountToken, W.Each, W.All, W.More) || this.yarnOverAt(2);
  }

  private yarnOverAt(ahead: number): boolean {
    return this.payload(ahead)?.entry?.kind === 'yarnOver' || /^(?:yos|yarnovers|yarn-overs|overs|wraps|loops)$/.test(this.image(ahead));
  }

  private dropLoops = this.RULE('dropLoops', (): Resolve | Work => {
    const start = this.from();
    const head = this.CONSUME(Any) as KnitToken;
    const state: { n: Count | null } = { n: null };
    this.MANY({
      GATE: () =>
        !this.separator() &&
        !this.at(1, Open, Dash, Mark, W.And, W.Then) &&
        !this.at(1, PlainStitch) &&
        !(this.at(1, W.To) && this.extentAhead()),
      DEF: () => {
        const token = this.CONSUME1(Any) as KnitToken;
        this.ACTION(() => {
          if (this.at(0, CountToken)) state.n = this.countOf(token);
          else if (this.at(0, W.Each) && this.image(0) === 'both') state.n = this.countOf(token, [2]);
        });
      },
    });
    return this.ACTION((): Resolve | Work => {
      const span = this.span(start);
      const place = /^drop$/i.test(head.image) && state.n !== null;
      return place && state.n !== null
        ? { type: 'work', stitch: 'drop yo', n: null, manner: [], times: state.n, span }
        : {
            type: 'resolve',
            what: 'drops',
            ...(/\b(?:extra|second|2nd|one)\b/i.test(this.words(start, endOf(this.LA(0)))) ? { extra: true } : {}),
            span,
          };
    });
  });
}
