/**
 * One stitch or one fabric worked as far as a place.
 *
 *     k to last 3 sts · rib to marker · p across · knit
 */
import {
  Any,
  Comma,
  Count as CountToken,
  Fabric,
  FullStop,
  type KnitToken,
  Name,
  Ordinal,
  PlainStitch,
  rowWords,
  Semicolon,
  SlipStitch,
  W,
  Word,
} from '../tokens.ts';
import type { Extent, Repeat, Work } from '../tree.ts';
import { IntoOneStitch } from './into-one.ts';

export class WorkedTo extends IntoOneStitch {
  /** "k across body sts to underarm": over a part whose number is not known, not to the end of the row. */
  protected acrossPart(): boolean {
    return (
      this.at(2, W.Across) &&
      this.image(2) === 'across' &&
      (this.at(3, Name, W.First, W.Other, Ordinal) ||
        this.image(3) === 'left' ||
        (this.at(3, Word) && !/^(?:the|this|whole|entire|same|evenly|loosely|again|both|from|as|row|it|them|all)$/.test(this.image(3)))) &&
      !this.at(4, CountToken)
    );
  }

  protected runAhead(): boolean {
    if (this.at(1, PlainStitch) && this.payload(1)?.values === undefined && this.acrossPart() && !(this.at(4, W.To) && this.runExtent(4)))
      return false;
    if (this.at(1, PlainStitch, SlipStitch) && this.payload(1)?.values === undefined)
      return (
        this.overNumber(2) > 0 ||
        this.runExtent(2) ||
        (this.at(2, W.Across) && (this.runExtent(3) || (this.at(3, Word) && this.runExtent(4))))
      );
    if (this.fabricAlone()) return true;
    if (this.at(1, W.Work) && this.image(1) === 'work across' && this.at(2, Comma, FullStop, Semicolon)) return true;
    // "working 1 st fewer on either side": less than before, and not so many
    if (this.at(1, W.Work) && this.at(2, CountToken) && this.at(3, W.St) && (/^(?:fewer|less)$/.test(this.image(4)) || this.at(4, W.More)))
      return false;
    if (this.at(1, W.Work, W.Patt, W.Rib, Fabric, W.Cont)) {
      if (this.at(1, W.Work) && this.at(2, W.Across) && this.at(3, W.These, Word) && this.image(3) !== 'all') return true;
      for (let ahead = 2; ahead < 6; ahead += 1) {
        if (this.runExtent(ahead) || this.overNumber(ahead) > 0) return true;
        if (this.at(ahead, CountToken))
          return (
            (this.at(ahead + 1, W.More) && this.at(ahead + 2, W.St)) ||
            !this.at(ahead + 1, W.Row, W.Round, W.Times, W.More, W.Cm, W.Inch, W.Ridge, W.InAll, Word, W.Mm) ||
            (this.at(ahead + 1, Word) && this.at(ahead + 2, W.St))
          );
        if (
          !this.at(ahead, W.Patt, W.In, W.Rib, Fabric, W.As, W.Set, Word, Name, W.Next, W.Across, W.All, W.Keep, W.Straight, W.St) ||
          (this.at(ahead, Word) && this.knownVerb(ahead))
        )
          return false;
      }
    }
    return false;
  }

  /** Place of the number in "across first 40 sts", "next 12", "the rem 33 sts"; 0 when no such words stand at `from`. */
  private overNumber(from: number): number {
    let ahead = from;
    if (this.at(ahead, W.Across) && /^(?:work )?across$/.test(this.image(ahead))) ahead += 1;
    if (!this.at(ahead, W.First, W.Last, W.Next, W.Rem)) return 0;
    if (this.at(ahead, W.Rem) && this.image(ahead) === 'left') return 0;
    ahead += 1;
    return this.at(ahead, CountToken) && (this.at(ahead + 1, W.St) || this.separator(ahead + 1)) ? ahead : 0;
  }

  /** "Rib as set", "work as established", "cont in patt" with no place to stop: over the whole row. */
  private fabricAlone(): boolean {
    if (!this.at(1, W.Work, W.Patt, W.Rib, Fabric, W.Cont)) return false;
    // "Work 60 sts in patt": the fabric of the run that has just been told.
    if (/^in /.test(this.image(1)) && this.at(0, W.St, CountToken)) return false;
    let named = this.at(1, W.Patt, W.Rib, Fabric);
    for (let ahead = 2; ahead < 8; ahead += 1) {
      if (this.at(ahead, FullStop, Semicolon) || Number.isNaN(this.LA(ahead).startOffset)) return named;
      // "Rib, casting on 2 sts over those cast off"
      if (this.at(ahead, Comma) && this.at(ahead + 1, W.CastOn, W.Inc, W.Dec)) return named;
      if (!this.at(ahead, W.Patt, W.Rib, Fabric, W.In, W.As, W.Set, W.Straight, W.Keep)) return false;
      if (this.at(ahead, W.Patt, W.Rib, Fabric, W.Set)) named = true;
    }
    return false;
  }

  protected runExtent(ahead: number): boolean {
    const shifted = ahead - 1;
    // "k across instep to next marker": the place says how far.
    if (this.at(ahead, W.Across) && this.at(ahead + 1, Word) && this.at(ahead + 2, W.To) && this.extentAheadAt(ahead + 1)) return false;
    if (this.at(ahead, W.Across, W.Around)) return !this.at(ahead + 1, W.To, W.Until);
    if (this.at(ahead, W.All)) return this.at(ahead + 1, CountToken, W.St, W.Rem);
    if (this.at(ahead, W.Rem) && this.at(ahead + 1, W.St)) return true;
    // "k last 7, join"
    if (this.at(ahead, W.Last) && this.at(ahead + 1, CountToken)) return !this.at(ahead + 2, ...rowWords);
    if (this.at(ahead, W.To, W.Until)) return this.extentAheadAt(shifted);
    return false;
  }

  /** Runs a look-ahead as if `skip` tokens were already eaten. */
  protected extentAheadAt(skip: number): boolean {
    const at = skip + 1;
    if (this.at(at, W.To, W.Until)) {
      if (this.at(at + 1, W.End, W.Across, W.Around, W.Bor, W.Last, W.Within, W.All)) return true;
      if (this.at(at + 1, W.There)) return this.at(at + 2, CountToken);
      if (this.at(at + 1, CountToken))
        return (
          this.at(at + 2, W.St) ||
          (this.at(at + 2, W.Before, W.Past) &&
            (this.at(at + 3, W.Marker, W.Bor, W.Gap) ||
              /^(?:instep|heel|sole|gusset|flap|thumb)$/.test(this.image(at + 3)) ||
              this.at(at + 4, W.Marker, W.Bor, W.Gap))) ||
          (this.at(at + 2, W.Edge, Word) && this.at(at + 3, W.St))
        );
      if (this.at(at + 1, W.St) && this.at(at + 2, W.Before)) return true;
      for (let ahead = at + 1; ahead < at + 5; ahead += 1) {
        if (
          this.at(ahead, W.Marker, W.Bor, W.Gap, W.Wrapped, W.Double, W.Twin, W.Pin, W.Centre) ||
          (this.at(ahead, W.BindOff) && this.at(ahead + 1, W.St, W.Edge)) ||
          /^(yos?|corners?)$/.test(this.image(ahead))
        )
          return true;
        if (
          !this.at(ahead, W.Next, W.Last, W.First, Word, W.Other, W.Each, W.Same, Name, W.Rs) &&
          !(this.payload(ahead)?.values !== undefined && /(st|nd|rd|th)$/.test(this.image(ahead)))
        )
          return false;
      }
    }
    return false;
  }

  /** "one sleeve", "the second sleeve": the number names one of two alike. */
  private oneOfPair(ahead: number): boolean {
    return (this.at(ahead, Ordinal) || (this.at(ahead, CountToken) && /^one$/.test(this.image(ahead)))) && this.at(ahead + 1, Word);
  }

  /** "k to last 3 sts", "p across", "patt to end", "rib 12", "work in patt over next 14 sts", "k all 81 sts". */
  protected run = this.RULE('run', (): Repeat => {
    const start = this.from();
    const verb = this.CONSUME(Any) as KnitToken;
    this.MANY({
      GATE: () =>
        !this.runExtent(1) &&
        this.overNumber(1) === 0 &&
        !this.at(1, CountToken) &&
        this.at(1, W.Patt, W.In, W.Rib, Fabric, W.As, W.Set, Word, Name, W.Next, W.Across, W.Keep, W.Straight, W.St),
      DEF: () => this.CONSUME1(Any),
    });
    let extent: Extent = { kind: 'end' };
    this.OR([
      {
        GATE: () =>
          (this.at(1, W.Across) && this.at(2, W.All, CountToken, W.These)) ||
          this.overNumber(1) > 0 ||
          this.at(1, W.All, CountToken) ||
          (this.at(1, W.Rem) && this.at(2, W.St)),
        ALT: () => {
          const state: { all: boolean; n: KnitToken | null } = { all: false, n: null };
          this.MANY1({
            GATE: () =>
              (this.at(1, W.Across, W.All, W.Rem, W.These, W.Next, W.First, W.Last) && state.n === null) ||
              (this.at(1, CountToken) && state.n === null),
            DEF: () => {
              const token = this.CONSUME2(Any) as KnitToken;
              this.ACTION(() => {
                if (this.at(0, W.All, W.Rem)) state.all = true;
                if (this.at(0, CountToken)) state.n = token;
              });
            },
          });
          this.MANY2({
            GATE: () =>
              (this.at(1, W.St) && !this.at(0, W.St)) ||
              (this.at(1, W.More) && this.at(2, W.St)) ||
              (this.at(1, Word, W.Other, W.Rem) && this.at(2, W.St)),
            DEF: () => this.CONSUME3(Any),
          });
          const owner = { from: -1 };
          this.OPTION({
            GATE: () => this.at(1, W.For, W.Of) && (this.describes(2) || this.oneOfPair(2)),
            DEF: () => {
              this.ACTION(() => {
                if (this.at(1, W.Of)) owner.from = this.LA(2).startOffset;
              });
              this.OPTION1({ GATE: () => this.oneOfPair(2), DEF: () => this.CONSUME4(Any) });
              this.SUBRULE(this.description);
            },
          });
          this.ACTION(() => {
            const of = owner.from < 0 ? '' : this.words(owner.from, this.LA(0).startOffset + this.LA(0).image.length).toLowerCase();
            extent =
              state.n === null
                ? { kind: 'end' }
                : {
                    kind: 'over',
                    count: { ...this.countOf(state.n), ...(state.all ? { all: true } : {}) },
                    ...(of === '' ? {} : { of }),
                  };
          });
        },
      },
      {
        GATE: () => this.extentAhead(),
        ALT: () => {
          extent = this.SUBRULE(this.extent, { ARGS: ['bracket'] });
        },
      },
      { ALT: () => undefined },
    ]);
    return this.ACTION(() => {
      // "p to BOR": a marker is meant, which a row that runs backwards reaches too.
      if ((this.at(0, W.Bor) || /^to bor$/.test(this.image(0))) && extent.kind !== 'place')
        extent = { kind: 'place', place: 'marker', which: 'beginning', side: 'at', n: null };
      return this.runOf(verb, extent, start);
    });
  });
}
