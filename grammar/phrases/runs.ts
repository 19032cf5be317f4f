/**
 * Runs whose end is not a place of their own: measured against an earlier row, back over what was worked, over the
 * stitches just named, and one stitch of the lexicon all the way.
 *
 *     k 5 sts fewer than on last RS row · p 4 more sts than last row · turn, work back · k across them · k2tog around
 */
import { Any, Comma, Count as CountToken, type KnitToken, Name, Open, Ordinal, PlainStitch, Stitch, W, Word } from '../tokens.ts';
import type { AndSoOn, Count, Extent, Goal, Repeat, Side, Work } from '../tree.ts';
import { Repeats } from './repeats.ts';

/** Parts of a piece whose stitches a round or row may run over. */
const namedParts = /^(instep|sole|heel|foot|thumb|palm|cuff|gusset|flap|front|back|sleeve|body|hand|finger)$/;

export class Runs extends Repeats {
  private runVerb(ahead: number): boolean {
    return this.at(ahead, PlainStitch, W.Work, W.Patt, W.Rib) && !/ing$/.test(this.image(ahead));
  }

  /** Place of "fewer", "less" or "more" in "k 5 sts fewer than …"; 0 when the run is not measured so. */
  private comparison(): number {
    if (!this.runVerb(1)) return 0;
    let ahead = 2;
    if (this.at(1, PlainStitch) && this.payload(1)?.values !== undefined) ahead = 2;
    else if (this.at(2, CountToken)) ahead = 3;
    else return 0;
    for (let look = ahead; look < ahead + 3; look += 1) {
      if (this.at(look, W.More) || /^(fewer|less)$/.test(this.image(look)))
        return /^than$/.test(this.image(look + 1)) || /^than$/.test(this.image(look + 2)) ? look : 0;
      if (!this.at(look, W.St)) return 0;
    }
    return 0;
  }

  protected relativeAhead(): boolean {
    return this.comparison() > 0;
  }

  /** "K 5 sts fewer than on previous RS short row". */
  relativeRun = this.RULE('relativeRun', (): Repeat => {
    const start = this.from();
    const state: { sense: 'fewer' | 'more'; side: Side | null; count: Count | null } = { sense: 'more', side: null, count: null };
    const verb = this.CONSUME(Any) as KnitToken;
    this.ACTION(() => {
      state.count = this.countInside(verb);
    });
    this.MANY({
      GATE: () => !this.separator() && !this.at(1, W.Turn, W.WrapTurn, W.Then) && !(this.at(1, W.And) && this.at(2, W.Turn)),
      DEF: () => {
        const token = this.CONSUME1(Any) as KnitToken;
        this.ACTION(() => {
          if (this.at(0, CountToken)) state.count ??= this.countOf(token);
          if (/^(fewer|less)$/.test(this.image(0))) state.sense = 'fewer';
          if (this.at(0, W.Rs)) state.side = 'RS';
          if (this.at(0, W.Ws)) state.side = 'WS';
        });
      },
    });
    return this.ACTION(() =>
      this.runOf(verb, { kind: 'relative', count: state.count ?? this.countOf(verb, [1]), sense: state.sense, side: state.side }, start),
    );
  });

  protected backAhead(): boolean {
    if (!this.runVerb(1) || this.payload(1)?.values !== undefined) return false;
    if (/^back$/.test(this.image(2)) && !this.at(3, W.St))
      return (
        this.separator(3) ||
        (this.at(3, W.Patt, W.Rib) && this.separator(4)) ||
        this.extentAheadAt(2) ||
        this.at(3, W.And, W.Then, W.To, W.Across)
      );
    if (this.at(2, W.More) && /^again$/.test(this.image(2))) return this.separator(3) || this.at(3, W.With);
    // "k across them", "k them again", "k these sts"
    return this.themAhead(2) > 0 || this.namedPart() > 0 || this.loneAhead();
  }

  /** "patt", "work even" as all that is said of a needle or a round. */
  private loneAhead(): boolean {
    if (!/(?:^|[:,;.])\s*$/.test(this.text.slice(Math.max(0, this.from() - 3), this.from()))) return false;
    if (this.at(1, W.Patt, W.Rib)) return this.separator(2);
    if (!this.at(1, W.Work)) return false;
    // "work every needle without shaping"
    const ahead = this.at(2, W.Every, W.Each, W.All) && this.at(3, W.Needle, W.St, W.Round) ? 4 : 2;
    return this.at(ahead, W.Straight) && this.separator(ahead + 1);
  }

  /** "work instep", "k across heel sts", "patt instep sts": how many tokens name the part; 0 when none is named. */
  private namedPart(): number {
    let ahead = 2;
    if (this.at(ahead, W.Across)) ahead += 1;
    if (
      this.at(ahead, W.St) &&
      this.at(ahead + 1, W.Of, W.On, W.From) &&
      (/^n$/.test(this.image(ahead + 2)) || this.at(ahead + 2, W.Needle)) &&
      this.at(ahead + 3, CountToken)
    )
      return this.at(ahead + 4, W.On, W.To, W.Into)
        ? ahead + 5 + (/^n$/.test(this.image(ahead + 5)) || this.at(ahead + 5, W.Needle) ? 1 : 0)
        : ahead + 3;
    if (this.at(ahead, Ordinal, W.First, W.Other)) ahead += 1;
    if (!this.at(ahead, Word, Name) || !namedParts.test(this.image(ahead))) return 0;
    if (/^back$/.test(this.image(ahead)) && !this.at(ahead + 1, W.St) && !/across$/.test(this.image(ahead - 1))) return 0;
    ahead += 1;
    if (this.at(ahead, W.St)) ahead += 1;
    return this.separator(ahead) || this.at(ahead, W.And, W.Then, W.In, Open, W.With) ? ahead - 1 : 0;
  }

  private themAhead(from: number): number {
    let ahead = from;
    if (this.at(ahead, W.Across)) ahead += 1;
    if (/^them$/.test(this.image(ahead))) return ahead;
    return this.at(ahead, W.These) && this.at(ahead + 1, W.St) ? ahead + 1 : 0;
  }

  /** "work back", "p back"; "k across them", "k them again with main yarn". */
  backRun = this.RULE('backRun', (): Repeat => {
    const start = this.from();
    const part = { left: 0 };
    let extent: Extent = { kind: 'end' };
    this.ACTION(() => {
      part.left = this.namedPart();
    });
    const verb = this.CONSUME(Any) as KnitToken;
    this.MANY({
      GATE: () =>
        part.left > 1 ||
        /^(back|them|again)$/.test(this.image(1)) ||
        (/^back$/.test(this.image(0)) && this.at(1, W.Patt, W.Rib) && this.separator(2)) ||
        (this.at(1, W.Straight) && this.at(0, W.Work, W.Needle, W.St, W.Round)) ||
        (this.at(1, W.Every, W.Each) && this.at(0, W.Work)) ||
        (this.at(1, W.Needle, W.Round) && this.at(0, W.Every, W.Each)) ||
        this.at(1, W.Across, W.These, W.More) ||
        (this.at(1, W.St) && this.at(0, W.These)) ||
        false,
      DEF: () => {
        this.CONSUME1(Any);
        this.ACTION(() => {
          if (part.left > 1) {
            part.left -= 1;
            if (this.at(0, CountToken) && extent.kind === 'end') extent = { kind: 'part', name: `needle ${this.image(0)}` };
            else if (this.at(0, Word, Name) && extent.kind === 'end' && !/^(n|onto)$/.test(this.image(0)))
              extent = { kind: 'part', name: `${this.at(-1, Ordinal, W.First, W.Other) ? `${this.image(-1)} ` : ''}${this.image(0)}` };
          }
          if (/^(them|again)$/.test(this.image(0)) || this.at(0, W.These)) extent = { kind: 'these' };
        });
      },
    });
    // "purl back to last 3 sts"
    this.OPTION({
      GATE: () => /^back$/.test(this.image(0)) && this.extentAhead(),
      DEF: () => {
        extent = this.SUBRULE(this.extent, { ARGS: ['bracket'] });
      },
    });
    return this.ACTION(() => this.runOf(verb, extent, start));
  });

  /** "…, which are knit", "…, all of which are purled": what is left, worked plain. */
  protected whichAreAhead(): boolean {
    const which = this.at(1, W.All) ? 2 : 1;
    return (
      /^which$/.test(this.image(which)) &&
      /^(?:are|is)$/.test(this.image(which + 1)) &&
      (this.at(which + 2, PlainStitch) || /^(?:knitted|purled)$/.test(this.image(which + 2))) &&
      this.payload(which + 2)?.values === undefined
    );
  }

  whichAre = this.RULE('whichAre', (): Repeat => {
    const start = this.from();
    this.MANY({ GATE: () => !/^(?:are|is)$/.test(this.image(0)) || this.at(0, Comma), DEF: () => this.CONSUME(Any) });
    const verb = this.CONSUME1(Any) as KnitToken;
    return this.ACTION((): Repeat => {
      const run = this.runOf(verb, { kind: 'end' }, start);
      const stitch = /^p/i.test(verb.image) ? 'p' : 'k';
      return { ...run, verb: stitch, children: [{ type: 'work', stitch, n: null, manner: [], span: this.tokenSpan(verb) }] };
    });
  });

  protected aroundAhead(): boolean {
    if (this.everyAhead()) return true;
    if (!this.at(1, Stitch) || this.at(1, PlainStitch)) return false;
    const ahead = this.at(2, Word) && /^(all)$/.test(this.image(2)) ? 3 : 2;
    return (
      (this.at(ahead, W.Around, W.Across) && !this.at(ahead + 1, CountToken) && !/^gap|^the gap/.test(this.image(ahead + 1))) ||
      (this.at(ahead, W.To) && this.at(ahead + 1, W.End) && !this.at(1, PlainStitch))
    );
  }

  /** "inc in every st", "kfb in each st": once in every stitch there is. */
  private everyAhead(): boolean {
    if (!this.at(1, W.Inc) && !this.at(1, Stitch)) return false;
    // "k twice into every st": the word stands in the stitch's name
    const at = this.at(2, W.In, W.Into, W.Of) ? 3 : /\bin(?:to)?$/.test(this.image(1)) ? 2 : 0;
    if (at === 0) return false;
    if (this.at(at, W.Across)) return /^(every|all)/.test(this.image(at));
    return this.at(at, W.Every, W.Each, W.All) && this.at(at + 1, W.St) && !this.at(at + 2, CountToken);
  }

  /** "kfb around", "k2tog across", "ssk to end of rnd". */
  aroundRun = this.RULE('aroundRun', (): Repeat => {
    const start = this.from();
    let extent: Extent = { kind: 'end' };
    const state = { every: false };
    this.ACTION(() => {
      state.every = this.everyAhead();
    });
    const token = this.CONSUME(Any) as KnitToken;
    this.OR([
      {
        GATE: () => state.every,
        ALT: () =>
          this.AT_LEAST_ONE({
            GATE: () =>
              (this.at(1, W.In, W.Into, W.Of, W.Every, W.Each, W.All, W.St, W.Across, W.Around) &&
                !(this.at(0, W.Across) && !this.at(1, W.Across)) &&
                !(this.at(0, W.St) && !this.at(1, W.Across, W.Around))) ||
              (this.at(1, W.To) && this.at(2, W.End) && this.at(0, W.St, W.Across)) ||
              (this.at(1, W.End) && this.at(0, W.To)),
            DEF: () => this.CONSUME1(Any),
          }),
      },
      {
        ALT: () => {
          this.OPTION({ GATE: () => this.at(1, Word) && this.image(1) === 'all', DEF: () => this.CONSUME2(Any) });
          extent = this.SUBRULE(this.extent, { ARGS: ['bracket'] });
        },
      },
    ]);
    // "kfb in each st to last 2 sts"
    this.OPTION1({
      GATE: () => state.every && this.at(1, W.To) && this.at(2, W.End, W.Last),
      DEF: () => {
        extent = this.SUBRULE1(this.extent, { ARGS: ['bracket'] });
      },
    });
    return this.ACTION((): Repeat => {
      const stitch = token.payload?.entry?.name ?? (token.tokenType === W.Inc ? 'kfb' : token.image.toLowerCase());
      const child: Work = {
        type: 'work',
        stitch,
        n: this.countInside(token),
        manner: [],
        span: this.tokenSpan(token),
        ...(token.payload?.m === undefined ? {} : { m: token.payload.m }),
      };
      return {
        type: 'repeat',
        form: 'run',
        verb: stitch,
        children: [child],
        extent,
        once: [],
        ending: null,
        mark: null,
        markSpan: null,
        span: this.span(start),
      };
    });
  });

  /** "…", "etc.": the list goes on as it began. */
  etcStep = this.RULE('etcStep', (): AndSoOn => {
    const start = this.from();
    this.CONSUME(Any);
    let until: Goal | null = null;
    this.OPTION({
      GATE: () => this.at(1, W.Until) || (this.at(1, Comma) && this.at(2, W.Until)),
      DEF: () => {
        this.OPTION1({ GATE: () => this.at(1, Comma), DEF: () => this.CONSUME1(Any) });
        this.CONSUME2(Any);
        const goal = this.SUBRULE(this.goal);
        this.ACTION(() => {
          until = goal;
        });
      },
    });
    return this.ACTION(() => ({
      type: 'andSoOn',
      step: null,
      sense: null,
      schedule: [],
      times: null,
      until,
      ending: null,
      stated: [],
      span: this.span(start),
    }));
  });
}
