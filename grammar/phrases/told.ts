/**
 * Stitches told in words rather than by name.
 *
 *     inc 1 · dec 1 · inc 2 kwise · pass the slipped st over · sl next 3 sts to cn and hold in front · k3 from cn
 *     knit the knits and purl the purls · 5k · into next st work (k1, p1, k1) · dropping yos · K4, ssk; rep to end
 */
import { ambiguityOf } from '../lexicon/ambiguous.ts';
import { Any, Close, Colon, Comma, Count as CountToken, Dash, endOf, FullStop, type KnitToken, Mark, Open, PlainStitch, Semicolon, SlipStitch, Stitch, TimesNumber, W, Word } from '../tokens.ts';
import type { BindOff, CastOn, Count, Extent, Marker, PullOver, Repeat, Resolve, Step, Work } from '../tree.ts';
import { Stitches } from './stitches.ts';

const cableNeedle = /^(?:cn\d?|cable|cable-needle)$/;
/** Ways of casting on and off that stand before the verb. */
const methods = /^(?:long-tail|long|tail|cable|knitted|knit-on|backward|backwards|loop|bl|e-loop|half-hitch|provisional|crochet|two-needle|toe|tubular|sewn|elastic|invisible|stretchy|lace|russian|decrease|i-cord|applied|picot|thumb|twisted|icelandic|italian|suspended|alternating|channel)$/;
const lifts = /^(?:pass|passing|lift|lifting|pull|draw)$/;

export class Told extends Stitches {
  protected toldAhead(): boolean {
    return this.methodWordsAhead() > 0 || this.markerWordAhead() || this.incDecAhead() || this.liftAhead() > 0 || this.toCableAhead() > 0 || this.fromCableAhead() > 0 || this.asTheyAppearAhead() || this.turnedNumberAhead() || this.dropAhead() || this.looseExtentAhead() || this.bracketAgainAhead();
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
    this.ACTION(() => { left.words = this.methodWordsAhead(); });
    this.AT_LEAST_ONE({ GATE: () => left.words > 0, DEF: () => { this.CONSUME(Any); this.ACTION(() => { left.words -= 1; }); } });
    const method = this.ACTION(() => this.words(start, endOf(this.LA(0))).toLowerCase());
    const step = this.OR([
      { GATE: () => this.at(1, W.CastOn), ALT: () => this.SUBRULE(this.castOnStep) },
      { ALT: () => this.SUBRULE(this.bindOffStep) },
    ]) as CastOn | BindOff;
    return this.ACTION((): CastOn | BindOff => (step.type === 'castOn' ? { ...step, method, provisional: step.provisional || /provisional/.test(method), span: this.span(start) } : { ...step, manner: [method, ...step.manner], span: this.span(start) }));
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
    return this.ACTION((): Marker => ({ type: 'marker', op: /^t/i.test(head.image) ? 'remove' : 'place', name: null, atRow: false, span: this.span(start) }));
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
      return this.at(ahead + 1, W.Each, W.Every) || (this.at(ahead + 1, W.Next, W.Last, W.First) && this.at(ahead + 2, CountToken) && this.at(ahead + 3, W.St));
    }
    if (ahead === 2 && this.at(1, W.Dec)) return (this.stepEnds(2) && !this.at(2, Dash, Colon)) || this.at(2, TimesNumber);
    return (this.stepEnds(ahead) && !this.at(ahead, Dash, Colon)) || this.at(ahead, TimesNumber) || (this.at(ahead, CountToken) && this.at(ahead + 1, W.Times));
  }

  private incDec = this.RULE('incDec', (): Work => {
    const start = this.from();
    const head = this.CONSUME(Any) as KnitToken;
    const number = this.OPTION(() => this.CONSUME(CountToken) as KnitToken);
    this.OPTION1({ GATE: () => this.at(1, W.St), DEF: () => this.CONSUME1(Any) });
    const manner: string[] = [];
    this.OPTION2({ GATE: () => this.at(1, Word) && /wise$/.test(this.image(1)), DEF: () => { this.CONSUME2(Any); this.ACTION(() => manner.push(this.image(0))); } });
    let times: Count | undefined;
    let into = false;
    this.MANY({
      GATE: () => this.at(1, W.In, W.Into, W.Next, W.Same, W.These, W.Each, W.Every, W.Of, W.St, W.Last, W.First, W.Foll) || (this.at(1, CountToken) && this.at(0, W.Next, W.Last, W.First, W.Of, W.Foll)),
      DEF: () => { const token = this.CONSUME3(Any) as KnitToken; this.ACTION(() => { into = true; if (this.at(0, CountToken)) times = this.countOf(token); }); },
    });
    this.OPTION3({ GATE: () => this.timesAhead(), DEF: () => { const often = this.SUBRULE(this.howOften, { ARGS: ['bracket'] }); this.ACTION(() => { times = often.count; }); } });
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

  /** "pass the slipped st over", "lift the 2nd st over the first": how many tokens up to "over"; 0 when it is none. */
  private liftAhead(): number {
    if (!lifts.test(this.image(1)) && !(this.at(1, W.Thread) && this.image(1) === 'draw')) return 0;
    for (let ahead = 2; ahead < 12; ahead += 1) {
      if (this.image(ahead) === 'over') return ahead;
      if (this.separator(ahead) || this.at(ahead, W.Needle, W.Yarn, PlainStitch)) return 0;
    }
    return 0;
  }

  private liftOver = this.RULE('liftOver', (): PullOver | Work => {
    const start = this.from();
    const state = { count: 0, both: false, many: false, yarn: false, next: false };
    const left = { tokens: 0 };
    this.ACTION(() => { left.tokens = this.liftAhead() - 1; });
    this.CONSUME2(Any);
    this.MANY({
      GATE: () => left.tokens > 0,
      DEF: () => {
        const token = this.CONSUME(Any) as KnitToken;
        this.ACTION(() => {
          left.tokens -= 1;
          if (this.at(0, CountToken)) state.count = token.payload?.values?.[0] ?? 1;
          else if (this.at(0, W.Each) && this.image(0) === 'both') state.both = true;
          else if (this.at(0, W.Next) || /^(?:second|2nd|third|3rd)$/.test(this.image(0))) state.next = true;
          else if (token.payload?.entry?.kind === 'yarnOver') state.yarn = true;
          else if (this.at(0, W.St)) state.many = /^(?:sts|stitches|loops)$/.test(this.image(0));
        });
      },
    });
    this.MANY1({ GATE: () => !this.separator() && !this.at(1, Open, Dash, Mark) && !(this.at(1, W.And, W.Then) && !/^(?:off)$/.test(this.image(2))) && !(this.at(1, PlainStitch) && !this.at(0, W.Last, W.Each, W.Next) && this.image(0) !== 'over'), DEF: () => this.CONSUME1(Any) });
    return this.ACTION((): PullOver | Work => {
      const span = this.span(start);
      if (state.yarn) return { type: 'work', stitch: 'pyo', n: null, manner: [], span };
      if (state.next) return { type: 'work', stitch: 'pnso', n: null, manner: [], span };
      return { type: 'pullOver', count: state.count > 0 ? state.count : state.both || state.many ? 2 : 1, span };
    });
  });

  /** "sl next 3 sts to cn": how many tokens up to the cable needle; 0 when none is named. */
  private toCableAhead(): number {
    if (!(this.at(1, SlipStitch, Stitch) && /^(?:sl|slip)/.test(this.image(1))) && !this.at(1, W.Place) && !/^(?:slip|place|put)$/.test(this.image(1))) return 0;
    for (let ahead = 2; ahead < 12; ahead += 1) {
      if (this.separator(ahead) || this.at(ahead, PlainStitch)) return 0;
      if (cableNeedle.test(this.image(ahead)) && this.at(ahead - 1, W.To, W.On, W.Each, W.First, Word)) return ahead;
    }
    return 0;
  }

  private toCable = this.RULE('toCable', (): Work => {
    const start = this.from();
    const left = { tokens: 0 };
    this.ACTION(() => { left.tokens = this.toCableAhead() - 1; });
    const head = this.CONSUME(Any) as KnitToken;
    const state: { n: Count | null; hold: string | null } = { n: null, hold: null };
    this.ACTION(() => { state.n = this.countInside(head); });
    this.MANY({ GATE: () => left.tokens > 0, DEF: () => { const token = this.CONSUME1(Any) as KnitToken; this.ACTION(() => { left.tokens -= 1; if (this.at(0, CountToken)) state.n = this.countOf(token); }); } });
    this.OPTION({ GATE: () => this.at(1, W.Needle), DEF: () => this.CONSUME2(Any) });
    this.OPTION1({ GATE: () => this.at(1, CountToken) && this.at(2, Comma, W.And), DEF: () => this.CONSUME3(Any) });
    // ", hold in front of work", "and leave at back"
    this.MANY1({
      GATE: () => state.hold === null && this.holdWordsAhead(),
      DEF: () => { this.CONSUME4(Any); this.ACTION(() => { if (/^(?:front|back)$/.test(this.image(0))) state.hold = this.image(0); }); },
    });
    this.MANY2({ GATE: () => state.hold !== null && ((this.at(1, W.Of) && this.at(2, W.Work, Word, W.Needle)) || (this.at(0, W.Of) && this.at(1, W.Work, Word, W.Needle))), DEF: () => this.CONSUME5(Any) });
    return this.ACTION((): Work => ({ type: 'work', stitch: 'sl to cn', n: state.n, manner: state.hold === null ? [] : [state.hold], span: this.span(start) }));
  });

  private holdWordsAhead(): boolean {
    for (let ahead = 1; ahead < 8; ahead += 1) {
      if (/^(?:front|back)$/.test(this.image(ahead))) return true;
      if (!this.at(ahead, Comma, W.And, W.In, W.At, W.To, W.Holder, W.Leaving, W.Place) && !/^(?:hold|held|holding|keep|them|it)$/.test(this.image(ahead))) return false;
    }
    return false;
  }

  /** "k3 from cn", "then purl the 2 sts from cable needle", "k them from cn": tokens up to the cable needle. */
  private fromCableAhead(): number {
    if (!this.at(1, PlainStitch)) return 0;
    for (let ahead = 2; ahead < 10; ahead += 1) {
      if (this.separator(ahead)) return 0;
      if (cableNeedle.test(this.image(ahead)) && (this.at(ahead - 1, W.From, W.First, W.On, Word) || /^(?:off|second)$/.test(this.image(ahead - 1)))) return ahead;
    }
    return 0;
  }

  private fromCable = this.RULE('fromCable', (): Work => {
    const start = this.from();
    const left = { tokens: 0 };
    this.ACTION(() => { left.tokens = this.fromCableAhead() - 1; });
    const head = this.CONSUME(Any) as KnitToken;
    const state: { n: Count | null } = { n: null };
    this.ACTION(() => { state.n = this.countInside(head); });
    const manner: string[] = [];
    this.MANY({ GATE: () => left.tokens > 0, DEF: () => { const token = this.CONSUME1(Any) as KnitToken; this.ACTION(() => { left.tokens -= 1; if (this.at(0, CountToken)) state.n = this.countOf(token); if (this.image(0) === 'tbl') manner.push('tbl'); }); } });
    this.OPTION({ GATE: () => this.at(1, W.Needle), DEF: () => this.CONSUME2(Any) });
    this.OPTION1({ GATE: () => this.at(1, Word) && this.image(1) === 'tbl', DEF: () => { this.CONSUME3(Any); this.ACTION(() => manner.push('tbl')); } });
    return this.ACTION((): Work => ({ type: 'work', stitch: 'work from cn', n: state.n, manner: [head.payload?.entry?.name ?? 'k', ...manner], span: this.span(start) }));
  });

  /** "knit the knits and purl the purls", "k the k sts and p the p sts". */
  private asTheyAppearAhead(): boolean {
    if (this.at(1, Stitch) && this.payload(1)?.entry?.name === 'work sts as they appear') return true;
    if (!this.at(1, PlainStitch) || this.payload(1)?.values !== undefined) return false;
    const first = this.at(2, W.All) ? 3 : 2;
    const knits = this.at(first, W.Face) || (this.at(first, PlainStitch) && this.payload(first)?.values === undefined && this.at(first + 1, W.St));
    if (!knits) return false;
    let ahead = first + (this.at(first, W.Face) ? 1 : 2);
    while (this.at(ahead, W.And, Comma)) ahead += 1;
    return this.at(ahead, PlainStitch);
  }

  private asTheyAppear = this.RULE('asTheyAppear', (): Repeat => {
    const start = this.from();
    const verbs = { seen: 0, named: 0 };
    const head = this.CONSUME(Any) as KnitToken;
    const told = this.ACTION(() => head.tokenType !== PlainStitch);
    this.MANY({
      GATE: () => !told && verbs.named < 2 && this.at(1, PlainStitch, W.Face, W.And, Comma, W.All, W.St) && !(this.at(1, Comma) && verbs.named === 0),
      DEF: () => { this.CONSUME1(Any); this.ACTION(() => { if (this.at(0, W.Face) || (this.at(0, W.St) && this.at(-1, PlainStitch))) verbs.named += 1; }); },
    });
    this.MANY1({ GATE: () => (this.at(1, W.As) && this.at(2, W.Set, Word)) || (this.at(0, W.As) && this.at(1, W.Set)), DEF: () => this.CONSUME2(Any) });
    const words = this.ACTION(() => this.span(start));
    let extent: Extent = { kind: 'end' };
    this.OPTION({ GATE: () => this.extentAhead(), DEF: () => { extent = this.SUBRULE(this.extent, { ARGS: ['bracket'] }); } });
    return this.ACTION((): Repeat => {
      const child: Work = { type: 'work', stitch: 'work sts as they appear', n: null, manner: [], span: words };
      return { type: 'repeat', form: 'run', verb: 'as they appear', children: [child], extent, once: [], ending: null, mark: null, markSpan: null, span: this.span(start) };
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
    return this.ACTION((): Work => ({ type: 'work', stitch: token.payload?.entry?.name ?? 'k', n: this.countOf(number), manner: [], span: this.span(start) }));
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
      GATE: () => !this.separator() && !this.at(1, Open, Dash, Mark, W.And, W.Then) && !(this.at(1, PlainStitch)) && !(this.at(1, W.To) && this.extentAhead()),
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
      return place && state.n !== null ? { type: 'work', stitch: 'drop yo', n: null, manner: [], times: state.n, span } : { type: 'resolve', what: 'drops', span };
    });
  });

  /** "to end", "around", "rep to end" behind a list that has neither bracket nor star. */
  private looseExtentAhead(): boolean {
    if (this.at(1, W.Rep)) {
      if (this.at(2, W.From) && this.at(3, W.Beg)) return true;
      return this.at(2, W.Across, W.Around) || (this.at(2, W.To) && this.at(3, W.End, W.Last, W.Marker, W.Bor));
    }
    if (!this.at(1, W.To, W.Across, W.Around, W.Until)) return false;
    if (this.at(1, W.Until) && !(this.at(2, W.Last) || (this.at(2, CountToken) && this.at(3, W.St) && this.at(4, W.Rem)))) return false;
    if (this.at(1, W.Across, W.Around)) return this.separator(2) || Number.isNaN(this.LA(2).startOffset);
    return this.extentAhead();
  }

  private looseExtent = this.RULE('looseExtent', (): Repeat => {
    const start = this.from();
    let rep = false;
    let extent: Extent = { kind: 'end' };
    this.OR([
      {
        GATE: () => this.at(1, W.Rep),
        ALT: () => {
    this.CONSUME(Any);
    this.ACTION(() => { rep = true; });
    this.MANY({ GATE: () => this.at(1, W.From, W.Beg) || (this.at(1, W.Of) && this.at(2, W.Row, W.Round)) || (this.at(0, W.Of) && this.at(1, W.Row, W.Round)), DEF: () => this.CONSUME1(Any) });
    this.OPTION1({ GATE: () => this.extentAhead(), DEF: () => { extent = this.SUBRULE(this.extent, { ARGS: ['from'] }); } });
        },
      },
      { ALT: () => { extent = this.SUBRULE1(this.extent, { ARGS: ['from'] }); } },
    ]);
    return this.ACTION((): Repeat => ({ type: 'repeat', form: 'list', ...(rep ? { repeats: 'all' as const } : {}), children: [], extent, once: [], ending: null, mark: null, markSpan: null, span: this.span(start) }));
  });

  /** "work bracketed sts 3 times", "rep bet [ ] 3 times", "rep instructions in brackets twice". */
  private bracketAgainAhead(): boolean {
    if (!this.at(1, W.Work, W.Rep)) return false;
    for (let ahead = 2; ahead < 9; ahead += 1) {
      if (/^(?:bracketed|brackets?|parentheses|parenthesis)$/.test(this.image(ahead)) || (this.at(ahead, Open) && this.at(ahead + 1, Close))) return true;
      if (this.separator(ahead) || this.at(ahead, Stitch, Mark) || (this.at(ahead, Open) && !this.at(ahead + 1, Close))) return false;
    }
    return false;
  }

  private bracketAgain = this.RULE('bracketAgain', (): Repeat => {
    const start = this.from();
    this.CONSUME(Any);
    this.MANY({ GATE: () => !this.timesAhead() && !this.at(1, Comma, Semicolon, FullStop, Stitch) && !Number.isNaN(this.LA(1).startOffset), DEF: () => this.CONSUME1(Any) });
    let extent: Extent | null = null;
    this.OPTION({ GATE: () => this.timesAhead(), DEF: () => { extent = this.SUBRULE(this.howOften, { ARGS: ['bracket'] }); } });
    return this.ACTION((): Repeat => ({ type: 'repeat', form: 'bracket', children: [], extent, once: [], ending: null, mark: null, markSpan: null, span: this.span(start) }));
  });
}
