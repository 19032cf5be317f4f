import {
  Any,
  Comma,
  Count as CountToken,
  Dash,
  type KnitToken,
  Mark,
  Open,
  Ordinal,
  PlainStitch,
  SlipStitch,
  Stitch,
  W,
  Word,
} from '../tokens.ts';
import type { Count, PullOver, Work } from '../tree.ts';
import { Stitches } from './stitches.ts';

const cableNeedle = /^(?:cn\d?|cable|cable-needle|d\.p\. needle|dp needle|d\.p\.n\.?)$/;
const lifts = /^(?:pass|passing|lift|lifting|pull|draw)$/;

export class ToldCables extends Stitches {
  /** "pass the slipped st over", "lift the 2nd st over the first": how many tokens up to "over"; 0 when it is none. */
  protected liftAhead(): number {
    if (!lifts.test(this.image(1)) && !(this.at(1, W.Thread) && this.image(1) === 'draw')) return 0;
    for (let ahead = 2; ahead < 16; ahead += 1) {
      if (this.image(ahead) === 'over') return ahead;
      // "pass 2nd, 3rd, 4th and 5th sts over first"
      if (this.at(ahead, Comma) && this.at(ahead - 1, Ordinal) && this.at(ahead + 1, Ordinal, W.And)) continue;
      if (this.separator(ahead) || this.at(ahead, W.Needle, W.Yarn, PlainStitch)) return 0;
    }
    return 0;
  }

  protected liftOver = this.RULE('liftOver', (): PullOver | Work => {
    const start = this.from();
    const state = { count: 0, ordinals: 0, both: false, many: false, yarn: false, next: false };
    const left = { tokens: 0 };
    this.ACTION(() => {
      left.tokens = this.liftAhead() - 1;
    });
    this.CONSUME2(Any);
    this.MANY({
      GATE: () => left.tokens > 0,
      DEF: () => {
        const token = this.CONSUME(Any) as KnitToken;
        this.ACTION(() => {
          left.tokens -= 1;
          if (this.at(0, Ordinal)) state.ordinals += 1;
          if (this.at(0, CountToken)) state.count = token.payload?.values?.[0] ?? 1;
          else if (this.at(0, W.Each) && this.image(0) === 'both') state.both = true;
          else if (this.at(0, W.Next) || /^(?:second|2nd|third|3rd)$/.test(this.image(0))) state.next = true;
          else if (token.payload?.entry?.kind === 'yarnOver') state.yarn = true;
          else if (this.at(0, W.St)) state.many = /^(?:sts|stitches|loops)$/.test(this.image(0));
        });
      },
    });
    this.MANY1({
      GATE: () =>
        !this.separator() &&
        !this.at(1, Open, Dash, Mark) &&
        !(this.at(1, W.And, W.Then) && !/^(?:off)$/.test(this.image(2))) &&
        !(this.at(1, PlainStitch) && !this.at(0, W.Last, W.Each, W.Next) && this.image(0) !== 'over'),
      DEF: () => this.CONSUME1(Any),
    });
    return this.ACTION((): PullOver | Work => {
      const span = this.span(start);
      // Over the first stitch of a bobble: loops just worked, none of them slipped.
      const worked = /\bover (?:the )?(?:first|1st)\b/i.test(this.words(start, this.LA(0).startOffset + this.LA(0).image.length));
      const several = state.ordinals > 1 ? state.ordinals : state.count;
      if (worked && several > 1) return { type: 'pullOver', count: several, ofWorked: true, span };
      if (state.yarn) return { type: 'work', stitch: 'pyo', n: null, manner: [], span };
      if (state.next) return { type: 'work', stitch: 'pnso', n: null, manner: [], span };
      return { type: 'pullOver', count: state.count > 0 ? state.count : state.both || state.many ? 2 : 1, span };
    });
  });

  /** "sl next 3 sts to cn": how many tokens up to the cable needle; 0 when none is named. */
  protected toCableAhead(): number {
    if (
      !(this.at(1, SlipStitch, Stitch) && /^(?:sl|slip)/.test(this.image(1))) &&
      !this.at(1, W.Place, W.Leaving) &&
      !/^(?:slip|place|put|hold|keep)$/.test(this.image(1))
    )
      return 0;
    for (let ahead = 2; ahead < 14; ahead += 1) {
      if (this.separator(ahead) || this.at(ahead, PlainStitch)) return 0;
      if (cableNeedle.test(this.image(ahead)) && this.at(ahead - 1, W.To, W.On, W.Each, W.First, Word)) return ahead;
    }
    return 0;
  }

  protected toCable = this.RULE('toCable', (): Work => {
    const start = this.from();
    const left = { tokens: 0 };
    this.ACTION(() => {
      left.tokens = this.toCableAhead() - 1;
    });
    const head = this.CONSUME(Any) as KnitToken;
    const state: { n: Count | null; hold: string | null } = { n: null, hold: null };
    this.ACTION(() => {
      state.n = this.countInside(head);
    });
    this.MANY({
      GATE: () => left.tokens > 0,
      DEF: () => {
        const token = this.CONSUME1(Any) as KnitToken;
        this.ACTION(() => {
          left.tokens -= 1;
          if (this.at(0, CountToken)) state.n = this.countOf(token);
          // "leave 3 sts at front on cable needle"
          if (/^(?:front|back)$/.test(this.image(0))) state.hold = this.image(0);
        });
      },
    });
    this.OPTION({ GATE: () => this.at(1, W.Needle), DEF: () => this.CONSUME2(Any) });
    this.OPTION1({ GATE: () => this.at(1, CountToken) && this.at(2, Comma, W.And), DEF: () => this.CONSUME3(Any) });
    // ", hold in front of work", "and leave at back"
    this.MANY1({
      GATE: () => state.hold === null && this.holdWordsAhead(),
      DEF: () => {
        this.CONSUME4(Any);
        this.ACTION(() => {
          if (/^(?:front|back)$/.test(this.image(0))) state.hold = this.image(0);
        });
      },
    });
    this.MANY2({
      GATE: () =>
        state.hold !== null &&
        ((this.at(1, W.Of) && this.at(2, W.Work, Word, W.Needle)) || (this.at(0, W.Of) && this.at(1, W.Work, Word, W.Needle))),
      DEF: () => this.CONSUME5(Any),
    });
    return this.ACTION(
      (): Work => ({
        type: 'work',
        stitch: 'sl to cn',
        n: state.n,
        manner: state.hold === null ? [] : [state.hold],
        span: this.span(start),
      }),
    );
  });

  protected holdWordsAhead(): boolean {
    for (let ahead = 1; ahead < 8; ahead += 1) {
      if (/^(?:front|back)$/.test(this.image(ahead))) return true;
      if (
        !this.at(ahead, Comma, W.And, W.In, W.At, W.To, W.Holder, W.Leaving, W.Place) &&
        !/^(?:hold|held|holding|keep|them|it)$/.test(this.image(ahead))
      )
        return false;
    }
    return false;
  }

  /** "k3 from cn", "then purl the 2 sts from cable needle", "k them from cn": tokens up to the cable needle. */
  protected fromCableAhead(): number {
    if (!this.at(1, PlainStitch)) return 0;
    for (let ahead = 2; ahead < 10; ahead += 1) {
      if (this.separator(ahead)) return 0;
      if (
        cableNeedle.test(this.image(ahead)) &&
        (this.at(ahead - 1, W.From, W.First, W.On, Word) || /^(?:off|second)$/.test(this.image(ahead - 1)))
      )
        return ahead;
    }
    return 0;
  }

  protected fromCable = this.RULE('fromCable', (): Work => {
    const start = this.from();
    const left = { tokens: 0 };
    this.ACTION(() => {
      left.tokens = this.fromCableAhead() - 1;
    });
    const head = this.CONSUME(Any) as KnitToken;
    const state: { n: Count | null } = { n: null };
    this.ACTION(() => {
      state.n = this.countInside(head);
    });
    const manner: string[] = [];
    this.MANY({
      GATE: () => left.tokens > 0,
      DEF: () => {
        const token = this.CONSUME1(Any) as KnitToken;
        this.ACTION(() => {
          left.tokens -= 1;
          if (this.at(0, CountToken)) state.n = this.countOf(token);
          if (this.image(0) === 'tbl') manner.push('tbl');
        });
      },
    });
    this.OPTION({ GATE: () => this.at(1, W.Needle), DEF: () => this.CONSUME2(Any) });
    this.OPTION1({
      GATE: () => this.at(1, Word) && this.image(1) === 'tbl',
      DEF: () => {
        this.CONSUME3(Any);
        this.ACTION(() => manner.push('tbl'));
      },
    });
    return this.ACTION(
      (): Work => ({
        type: 'work',
        stitch: 'work from cn',
        n: state.n,
        manner: [head.payload?.entry?.name ?? 'k', ...manner],
        span: this.span(start),
      }),
    );
  });
}
