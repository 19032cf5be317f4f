/**
 * How far a repeat or a run goes.
 *
 *     to end · across · to last 3 sts · to within 3 sts of end · until 2 sts rem · to 2 sts before m · to 1 st before gap
 *     to 3 sts past marker · to DS · until there are 12 sts on right needle after cast-off · 6 times
 */
import { Any, Count as CountToken, type KnitToken, Name, Ordinal, TimesNumber, W, Word } from '../tokens.ts';
import type { Anchor, Count, Extent } from '../tree.ts';
import { Counts } from './counts.ts';

const anchors = (): readonly [Anchor, ...(typeof W.To)[]][] => [
  ['marker', W.Marker, W.Bor],
  ['gap', W.Gap],
  ['wrapped', W.Wrapped],
  ['double', W.Double],
  ['twin', W.Twin],
  ['pin', W.Pin],
  ['centre', W.Centre],
];

export class Extents extends Counts {
  /** "to marker A": the lexer takes the letter for an article. */
  private letterNamed(place: Anchor): { name?: string } {
    const end = this.LA(0).startOffset + this.LA(0).image.length;
    const letter = place === 'marker' ? /^ A(?=[\s,.;:)\]]|$)/.test(this.text.slice(end, end + 3)) : false;
    return letter ? { name: 'a' } : {};
  }

  private anchorAt(ahead: number): Anchor | null {
    for (const [anchor, ...types] of anchors()) if (this.at(ahead, ...types)) return anchor;
    // "to cast-off sts": the place where they were
    if (this.at(ahead, W.BindOff) && this.at(ahead + 1, W.St, W.Edge)) return 'gap';
    if (/^yos?$/.test(this.image(ahead))) return 'yarnOver';
    if (/^corners?$/.test(this.image(ahead))) return 'corner';
    if (this.at(ahead, W.Turn) && this.at(ahead - 1, W.Before, W.Past, W.Last, W.After)) return 'turn';
    return null;
  }

  /** How many words stand before the anchor: "next", "side", "first raglan"; -1 when no anchor follows. */
  private anchorAhead(from: number): number {
    if (/^clos(e|ing)$/.test(this.image(from))) return -1;
    for (let ahead = from; ahead < from + 4; ahead += 1) {
      if (this.anchorAt(ahead) !== null) return ahead - from;
      if (!this.at(ahead, W.Next, W.Last, W.First, Word, Ordinal, W.Other, W.Each, W.These, W.Same, Name, W.Rs, W.Ws)) return -1;
    }
    return -1;
  }

  protected extentAhead(bare = false): boolean {
    if (this.timesAhead(bare)) return true;
    if (this.at(1, W.Across, W.Around)) return true;
    if (this.untilWorked() > 0) return true;
    if (this.at(1, W.To, W.Until)) {
      if (this.lastPartAhead()) return true;
      if (this.at(2, W.End, W.Across, W.Around, W.Bor, W.Last, W.Within)) return true;
      if (this.at(2, W.There)) return this.at(3, CountToken);
      if (this.at(2, W.All)) return true;
      if (this.at(2, CountToken))
        return (
          this.at(3, W.St) ||
          (this.at(3, W.Before, W.Past) && (this.anchorAhead(4) >= 0 || /^(?:instep|heel|sole|gusset|flap|thumb)$/.test(this.image(4))))
        );
      if (this.at(2, W.St)) return this.at(3, W.Before) && this.anchorAhead(4) >= 0;
      return this.anchorAhead(2) >= 0;
    }
    return false;
  }

  /** "to last section", "to last group": no stitches are counted. */
  private lastPartAhead(): boolean {
    return this.at(2, W.Last) && this.at(3, Word) && /^(?:section|group|part|panel|wedge|segment)$/.test(this.image(3));
  }

  private toLastPart = this.RULE('toLastPart', (): Extent => {
    this.CONSUME(Any);
    this.CONSUME1(Any);
    this.CONSUME2(Any);
    return this.ACTION((): Extent => ({ kind: 'goal', goal: { kind: 'loose', text: `last ${this.image(0)}` } }));
  });

  override extent = this.RULE('extent', (form: 'from' | 'bracket' = 'bracket'): Extent => {
    return this.OR([
      { GATE: () => this.at(1, W.To, W.Until) && this.lastPartAhead(), ALT: () => this.SUBRULE(this.toLastPart) },
      { GATE: () => this.timesAhead(true), ALT: () => this.SUBRULE(this.howOften, { ARGS: [form] }) },
      { GATE: () => this.untilWorked() > 0, ALT: () => this.SUBRULE(this.workedSoOften) },
      { GATE: () => this.at(1, W.Across, W.Around), ALT: () => this.SUBRULE(this.across) },
      { GATE: () => this.at(2, W.End, W.Across, W.Around, W.All) || (this.at(2, W.Bor) && true), ALT: () => this.SUBRULE(this.toEnd) },
      { GATE: () => this.at(2, W.There) || this.afterBindOffAhead() || this.onRightAhead(), ALT: () => this.SUBRULE(this.onRight) },
      {
        GATE: () => this.at(2, W.Last) && this.at(3, W.St) && this.at(4, W.Before) && this.anchorAhead(5) >= 0,
        ALT: () => this.SUBRULE1(this.toPlace),
      },
      {
        GATE: () =>
          this.at(2, W.Last, W.Within) &&
          !(this.at(2, W.Last) && this.anchorAhead(3) >= 0 && !this.at(3, CountToken)) &&
          !this.withinAnchor() &&
          !this.lastBeforeAnchor(),
        ALT: () => this.SUBRULE(this.toLast),
      },
      {
        GATE: () =>
          this.at(2, CountToken) &&
          this.at(3, W.St) &&
          (this.at(4, W.Rem) || (this.at(4, W.From) && this.at(5, W.End)) || (this.at(4, W.Before) && this.at(5, W.End))),
        ALT: () => this.SUBRULE(this.untilRem),
      },
      { ALT: () => this.SUBRULE(this.toPlace) },
    ]) as Extent;
  });

  /** "until you have worked it 4 times in all", "until worked 4 times": tokens before the number; 0 when it says none. */
  private untilWorked(): number {
    if (!this.at(1, W.Until)) return 0;
    let worked = false;
    for (let ahead = 2; ahead < 9; ahead += 1) {
      if (this.at(ahead, TimesNumber) || (this.at(ahead, CountToken) && this.at(ahead + 1, W.Times))) return worked ? ahead - 1 : 0;
      if (/^(?:worked|done|repeated|made)$/.test(this.image(ahead))) worked = true;
      else if (!this.at(ahead, Word, W.There, W.These, W.InAll)) return 0;
    }
    return 0;
  }

  private workedSoOften = this.RULE('workedSoOften', (): Extent => {
    this.SUBRULE(this.countedWords, { ARGS: [() => this.untilWorked()] });
    const often = this.SUBRULE(this.howOften, { ARGS: ['from'] });
    return this.ACTION((): Extent => ({ ...often, sense: 'all' }));
  });

  /** "to last 3 sts before gap": short of the gap, not of the end. */
  private lastBeforeAnchor(): boolean {
    return this.at(2, W.Last) && this.at(3, CountToken) && this.at(4, W.St) && this.at(5, W.Before) && this.anchorAhead(6) >= 0;
  }

  /** "until 12 sts after BO", "until 12 sts on right needle after casting off". */
  private afterBindOffAhead(): boolean {
    if (!this.at(2, CountToken) || !this.at(3, W.St)) return false;
    for (let ahead = 4; ahead < 9; ahead += 1) {
      if (this.at(ahead, W.BindOff)) return this.at(ahead - 1, W.After);
      if (!this.at(ahead, W.On, W.Needle, W.After, W.Rs, Word)) return false;
    }
    return false;
  }

  /** "until 70 sts are on right needle". */
  private onRightAhead(): boolean {
    if (!this.at(2, CountToken) || !this.at(3, W.St)) return false;
    let ahead = 4;
    while (/^(?:are|is|remain|now)$/.test(this.image(ahead)) && ahead < 6) ahead += 1;
    return this.at(ahead, W.On) && this.at(ahead + 1, W.Needle) && /^(?:right|rh)/.test(this.image(ahead + 1));
  }

  private withinAnchor(): boolean {
    return this.at(2, W.Within) && this.at(5, W.Of) && this.anchorAhead(6) >= 0;
  }

  private across = this.RULE('across', (): Extent => {
    this.CONSUME(Any);
    // "across to last 3 sts": the place says more.
    let place: Extent | null = null;
    this.OPTION({
      GATE: () => this.at(1, W.To, W.Until) && this.extentAhead(),
      DEF: () => {
        place = this.SUBRULE(this.extent, { ARGS: ['bracket'] });
      },
    });
    return place ?? { kind: 'end' };
  });

  private toEnd = this.RULE('toEnd', (): Extent => {
    this.CONSUME(Any);
    this.CONSUME1(Any);
    // "to end of rnd", "until all sts are bound off"
    this.MANY({
      GATE: () =>
        (this.at(1, W.Of) && this.at(2, W.Row, W.Round, W.Needle, Word)) ||
        (this.at(0, W.Of) && this.at(1, W.Row, W.Round, W.Needle, Word)) ||
        (this.at(0, W.All) && this.at(1, W.St)) ||
        (this.at(1, Word, W.Rem) && /^(are|have|is|been|used)/.test(this.image(1))) ||
        (this.at(0, Word) && this.at(1, W.BindOff, W.Work)),
      DEF: () => this.CONSUME2(Any),
    });
    return { kind: 'end' };
  });

  /** "to last 3 sts", "to last st", "to within 3 sts of end". */
  private toLast = this.RULE('toLast', (): Extent => {
    this.CONSUME(Any);
    this.CONSUME1(Any);
    const last = this.ACTION(() => this.LA(0) as KnitToken);
    this.OPTION({ GATE: () => this.at(1, W.Last), DEF: () => this.CONSUME2(Any) });
    const token = this.OPTION1(() => this.CONSUME(CountToken) as KnitToken);
    this.OPTION2({ GATE: () => this.at(1, W.Edge, Word) && this.at(2, W.St), DEF: () => this.CONSUME3(Any) });
    this.OPTION3({ GATE: () => this.at(1, W.St), DEF: () => this.CONSUME4(Any) });
    this.MANY({
      GATE: () =>
        (this.at(1, W.Of, W.From) && this.at(2, W.End, W.Row, W.Round, W.Needle)) ||
        (this.at(0, W.Of, W.From) && this.at(1, W.End, W.Row, W.Round, W.Needle)) ||
        (this.at(1, W.On, W.Before) && this.at(2, W.Needle, W.End)) ||
        (this.at(0, W.On, W.Before) && this.at(1, W.Needle, W.End)) ||
        (this.at(1, Word) && this.at(0, W.Needle) && this.at(2, CountToken)) ||
        this.onNumbered(),
      DEF: () => this.CONSUME5(Any),
    });
    return this.ACTION(() => ({
      kind: 'last',
      count: token ? this.countOf(token) : { ...this.countOf(last), values: [1] },
      ...this.ofNeedle(),
    }));
  });

  /** Inside "on N1", "on needle 1". */
  private onNumbered(): boolean {
    const n = (at: number): boolean => /^n$/.test(this.image(at)) || this.at(at, W.Needle);
    if (this.at(1, W.On)) return n(2) && this.at(3, CountToken);
    if (this.at(0, W.On)) return n(1) && this.at(2, CountToken);
    return this.at(1, CountToken) && n(0) && this.at(-1, W.On);
  }

  /** "of needle", "before end of needle": counted on the needle in hand, not in the round. */
  private ofNeedle(): { of?: 'needle' } {
    const numbered = this.at(0, CountToken) && (/^n$/.test(this.image(-1)) || this.at(-1, W.Needle));
    return numbered || this.at(0, W.Needle) || /needle$/.test(this.image(0)) ? { of: 'needle' } : {};
  }

  /** "until 3 sts rem". */
  private untilRem = this.RULE('untilRem', (): Extent => {
    this.CONSUME(Any);
    const token = this.CONSUME(CountToken) as KnitToken;
    this.CONSUME1(Any);
    this.MANY({
      GATE: () =>
        this.at(1, W.Rem, W.From, W.End, W.Before) ||
        (this.at(1, W.On) && this.at(2, W.Needle)) ||
        (this.at(0, W.On) && this.at(1, W.Needle)),
      DEF: () => this.CONSUME2(Any),
    });
    return this.ACTION(() => ({ kind: 'last', count: this.countOf(token), ...this.ofNeedle() }));
  });

  /** "until there are 12 sts on right needle (after cast-off)". */
  private onRight = this.RULE('onRight', (): Extent => {
    this.CONSUME(Any);
    this.OPTION({ GATE: () => this.at(1, W.There), DEF: () => this.CONSUME1(Any) });
    const token = this.CONSUME(CountToken) as KnitToken;
    let afterBindOff = false;
    this.MANY({
      GATE: () =>
        /^since$/.test(this.image(1)) ||
        (this.at(1, W.Last) && /^since$/.test(this.image(0))) ||
        (this.at(1, W.St, W.On, W.Needle, W.After, W.BindOff, Word) && !(this.at(1, Word) && this.at(0, W.Needle, W.BindOff))),
      DEF: () => {
        this.CONSUME2(Any);
        this.ACTION(() => {
          if (this.at(0, W.BindOff)) afterBindOff = true;
        });
      },
    });
    return this.ACTION(() => ({ kind: 'onRight', count: this.countOf(token), afterBindOff }));
  });

  /** "to m", "to 2 sts before next marker", "to 3 sts past wrapped st", "to within 4 sts of last turn". */
  private toPlace = this.RULE('toPlace', (): Extent => {
    const token: { n: KnitToken | null } = { n: null };
    let side: 'before' | 'past' | 'at' = 'at';
    this.CONSUME(Any);
    // "to last st before marker"
    let one: Count | null = null;
    this.option(21, {
      GATE: () => this.at(1, W.Last) && this.at(2, W.St) && this.at(3, W.Before),
      DEF: () => {
        const last = this.CONSUME6(Any) as KnitToken;
        this.CONSUME7(Any);
        this.CONSUME8(Any);
        this.ACTION(() => {
          one = { ...this.countOf(last), values: [1] };
          side = 'before';
        });
      },
    });
    this.OPTION({
      GATE: () => this.at(1, W.Within) || (this.at(1, W.Last) && this.at(2, CountToken)),
      DEF: () => {
        this.CONSUME1(Any);
      },
    });
    this.OPTION1({
      GATE: () => this.at(1, CountToken),
      DEF: () => {
        const n = this.CONSUME(CountToken) as KnitToken;
        this.ACTION(() => {
          token.n = n;
          side = 'before';
        });
        this.MANY({
          GATE: () =>
            this.at(1, W.St, W.Rem, W.Before, W.Past, W.After, W.Of, W.From, W.More, Word) &&
            this.anchorAt(1) === null &&
            !(this.at(1, Word) && !this.at(2, W.St)),
          DEF: () => {
            this.CONSUME2(Any);
            this.ACTION(() => {
              if (this.at(0, W.Past, W.After)) side = 'past';
            });
          },
        });
      },
    });
    // "to the st before the last turn": one stitch short of it.
    this.OPTION3({
      GATE: () => this.at(1, W.St) && this.at(2, W.Before),
      DEF: () => {
        const one = this.CONSUME6(Any) as KnitToken;
        this.CONSUME7(Any);
        this.ACTION(() => {
          token.n = one;
          side = 'before';
        });
      },
    });
    let which: 'next' | 'last' | 'first' | 'beginning' = 'next';
    let ordinal: number | undefined;
    let name: string | undefined;
    this.MANY1({
      GATE: () => this.anchorAt(1) === null && this.anchorAhead(1) >= 0,
      DEF: () => {
        this.CONSUME3(Any);
        this.ACTION(() => {
          if (this.at(0, W.Last)) which = 'last';
          else if (this.at(0, W.First)) which = 'first';
          else if (this.at(0, Ordinal)) ordinal = this.payload(0)?.values?.[0] ?? 1;
          else if (this.at(0, Word, Name)) name = `${name === undefined ? '' : `${name} `}${this.image(0)}`;
        });
      },
    });
    this.CONSUME4(Any);
    const place = this.ACTION(() => this.anchorAt(0) ?? 'marker');
    this.option(28, { GATE: () => this.at(0, W.BindOff) && this.at(1, W.St, W.Edge), DEF: () => this.consume(28, Any) });
    this.ACTION(() => {
      if (this.at(0, W.Bor)) which = 'beginning';
      if (/^(last|the last|prev)/.test(this.image(0))) which = 'last';
    });
    // "k to centre 3 sts": one stitch before the centre stitch.
    this.option(22, {
      GATE: () => this.at(0, W.Centre) && this.at(1, CountToken) && this.at(2, W.St) && token.n === null,
      DEF: () => {
        const width = this.CONSUME1(CountToken) as KnitToken;
        this.CONSUME9(Any);
        this.ACTION(() => {
          const values = (width.payload?.values ?? [1]).map((value: number | null) =>
            value === null ? null : Math.floor((value - 1) / 2),
          );
          one = { ...this.countOf(width), values };
          side = 'before';
        });
      },
    });
    // "marker A"
    this.OPTION2({
      GATE: () => this.at(0, W.Marker) && this.at(1, Word) && /^[a-d]$/i.test(this.image(1)),
      DEF: () => {
        this.CONSUME5(Any);
        this.ACTION(() => {
          name = this.image(0);
        });
      },
    });
    return this.ACTION(() => ({
      kind: 'place',
      place,
      which,
      side,
      n: token.n === null ? one : this.countOf(token.n, token.n.payload?.values ?? [1]),
      ...(ordinal === undefined ? {} : { ordinal }),
      ...(name === undefined ? this.letterNamed(place) : { name }),
    }));
  });
}
