/**
 * Stitches that come to the needle in one pass: picked up along an edge, or taken from a holder.
 *
 *     pick up and k 22 [22: 25] sts down left front neck, 4 along row ends and 22 up right front neck · knit up 34 sts
 *     k across 16 sts on front holder · return 52 held sts to needle · 1 st from safety pin
 */
import {
  Any,
  Close,
  Comma,
  Count as CountToken,
  Dash,
  type KnitToken,
  Name,
  Open,
  PlainStitch,
  Semicolon,
  SlipStitch,
  Stitch,
  W,
  Word,
} from '../tokens.ts';
import type { Count, Evenly, PickUp, TakeUp } from '../tree.ts';
import { Marks } from './marks.ts';

const measureWords = [W.Cm, W.Mm, W.Inch];
/** Words that say where along an edge stitches are picked up. */
const along = /^(down|up|along|across|around|round|over|from|at|on|in|evenly|each|for|between|to|into)$/;

/** The place a holder is named after: "front neck" of "from front neck holder", '' of "on holder"; null when no holder is named. */
function holderNamed(words: string): string | null {
  const match =
    /\b(?:from|on|of|left on|held on)(?: the| a)? ([a-z ]*?)\s*(?:st(?:itch)? )?(?:holder|safety pin|pin|spare needle|waste yarn|thread)\b/.exec(
      words,
    );
  return match === null ? null : (match[1] ?? '').trim();
}

export class PickingUp extends Marks {
  protected pickUpAhead(): boolean {
    if (!this.at(1, W.PickUp)) return false;
    if (this.at(2, W.And) && this.at(3, PlainStitch) && this.payload(3)?.values !== undefined) return true;
    // "pick up, but do not knit, 12 sts"
    if (this.at(2, Comma, Open))
      for (let ahead = 3; ahead < 9; ahead += 1) if (this.at(ahead, Comma, Close)) return this.at(ahead + 1, CountToken);
    return (
      this.at(2, CountToken) ||
      (this.at(2, Word) && this.at(3, CountToken)) ||
      this.at(2, W.St) ||
      (this.at(2, W.Evenly) && this.at(3, CountToken)) ||
      (this.at(2, W.More) && this.at(3, CountToken))
    );
  }

  /** "pick up and k 22 [22: 25] sts down left front neck"; a second number under the same verb is another of these. */
  override pickUpStep = this.RULE('pickUpStep', (): PickUp => {
    const start = this.from();
    const head = this.CONSUME(W.PickUp) as KnitToken;
    const state: { inside: Count | null; ratio: PickUp['ratio'] | null } = { inside: null, ratio: null };
    this.MANY({
      GATE: () => (this.at(1, Word, W.Evenly, W.More) && !this.at(1, CountToken)) || this.asideBeforeCount(),
      DEF: () => this.CONSUME1(Any),
    });
    // "pick up and k1 st in each cast-on st"
    this.OPTION({
      GATE: () => this.at(1, W.And) && this.at(2, PlainStitch),
      DEF: () => {
        this.CONSUME4(Any);
        const token = this.CONSUME5(Any) as KnitToken;
        this.ACTION(() => {
          state.inside = this.countInside(token);
        });
      },
    });
    const count = this.OPTION1({ GATE: () => this.at(1, CountToken), DEF: () => this.SUBRULE(this.count) });
    this.MANY1({
      GATE: () => this.at(1, W.St, W.Evenly, W.More) || (this.at(1, Word) && this.at(2, W.St) && !/^out$/.test(this.image(1))),
      DEF: () => this.CONSUME2(Any),
    });
    const from = this.ACTION(() => this.from());
    this.OPTION2({
      GATE: () =>
        (this.at(1, W.For, W.In, W.Into) && this.at(2, W.Every, W.Each)) ||
        (/^out$/.test(this.image(1)) && this.at(2, W.Of) && this.at(3, W.Every, W.Each)),
      DEF: () => {
        this.OPTION4({ GATE: () => this.at(2, W.Of), DEF: () => this.CONSUME8(Any) });
        this.CONSUME6(Any);
        const every = this.CONSUME7(Any) as KnitToken;
        const per = this.OPTION3({ GATE: () => this.at(1, CountToken), DEF: () => this.SUBRULE1(this.count) });
        this.ACTION(() => {
          state.ratio = {
            sts: count ?? state.inside ?? this.countOf(head, [1]),
            per: per ?? this.countOf(every, [1]),
            unit: this.at(1, W.Row, W.Round, W.Ridge) ? 'row' : 'st',
          };
        });
      },
    });
    this.MANY2({ GATE: () => this.alongGoesOn(), DEF: () => this.CONSUME3(Any) });
    return this.ACTION((): PickUp => {
      const end = this.LA(0).startOffset + this.LA(0).image.length;
      const words = this.words(from, end);
      const verb: PickUp['verb'] = /\b(?:not|without) (?:knit|work)/i.test(this.words(start, end))
        ? 'loops'
        : /purl|& ?p$|and p$/i.test(head.image)
          ? 'purl'
          : 'knit';
      const { ratio } = state;
      return {
        type: 'pickUp',
        count: ratio === null ? (count ?? state.inside) : null,
        verb,
        along: words === '' ? null : words,
        includingHeld: /including/i.test(words),
        ...(ratio ? { ratio } : {}),
        span: this.span(start),
      };
    });
  });

  /** ", but do not knit," or "(do not knit)" between the verb and the number. */
  private asideBeforeCount(): boolean {
    if (this.at(1, CountToken)) return false;
    for (let back = 0; back > -8; back -= 1) {
      if (this.at(back, W.PickUp)) return this.at(back + 1, Comma, Open);
      if (this.at(back, CountToken)) return false;
    }
    return false;
  }

  /** Whether the next word still says where stitches are picked up. */
  private alongGoesOn(): boolean {
    if (this.at(1, Comma) && /^(including|includes|incl)$/.test(this.image(2))) return true;
    if (this.separator() || this.at(1, Dash, Open, W.Then, PlainStitch, W.Turn, W.PickUp)) return false;
    if (this.at(1, W.And)) {
      if (this.pickContinues() > 0 || !this.at(2, Word, W.Rs, W.Other, W.Across, W.Around, W.Edge, W.Centre, W.Beg)) return false;
      return !(this.at(2, Word) && /^(turn|join|place|knit|work|pick)/.test(this.image(2)));
    }
    if (this.at(1, Stitch)) return this.payload(1)?.entry?.kind === 'other' || this.payload(1)?.entry?.kind === 'slip';
    return !(this.at(1, CountToken) && this.at(2, W.St) && !this.at(0, W.For, W.Every, W.Each));
  }

  /** All that one verb governs: "pick up and k 34 sts across back neck, 24 down left front and 24 up right front". */
  pickUpSteps = this.RULE('pickUpSteps', (): (PickUp | TakeUp)[] => {
    const steps: (PickUp | TakeUp)[] = [];
    const first = this.SUBRULE(this.pickUpStep);
    this.ACTION(() => steps.push(first));
    this.MANY({
      GATE: () => this.pickContinues() > 0,
      DEF: () => {
        const skip = { left: 0 };
        this.ACTION(() => {
          skip.left = this.pickContinues() - 1;
        });
        this.MANY1({
          GATE: () => skip.left > 0,
          DEF: () => {
            this.CONSUME(Any);
            this.ACTION(() => {
              skip.left -= 1;
            });
          },
        });
        const next = this.SUBRULE(this.pickMore, { ARGS: [first?.verb ?? 'knit'] });
        this.ACTION(() => steps.push(next));
      },
    });
    return steps;
  });

  /** Whether a list goes on: "and 4 sts down right back neck", ", then 24 up right front", ", 16 sts from holder". */
  private pickContinues(): number {
    let ahead = 1;
    // "(1 in each garter ridge), then 3 sts from …": the bracket says how, the list goes on.
    if (this.at(1, Open) && this.payload(1)?.holds === 'remark') {
      while (ahead < 14 && !this.at(ahead, Close)) ahead += 1;
      if (!this.at(ahead, Close) || !this.at(ahead + 1, Comma, W.And, W.Then)) return 0;
      ahead += 1;
    }
    // ", one in each garter ridge, then 3 sts along …": says how, and picks up nothing more
    if (
      this.at(ahead, Comma) &&
      this.at(ahead + 1, CountToken) &&
      (this.at(ahead + 2, W.In, W.Into) || (this.at(ahead + 2, W.St) && this.at(ahead + 3, W.In, W.Into, W.For))) &&
      (this.at(ahead + 3, W.Each, W.Every) || this.at(ahead + 4, W.Each, W.Every))
    ) {
      let close = ahead + 3;
      while (close < ahead + 10 && !this.separator(close)) close += 1;
      if (!this.at(close, Comma, Semicolon) || !this.at(close + 1, W.And, W.Then, CountToken)) return 0;
      ahead = close;
    }
    const begins = ahead;
    while (this.at(ahead, Comma, W.And, W.Then, Semicolon)) ahead += 1;
    if (ahead === begins || !this.at(ahead, CountToken)) return 0;
    let next = ahead + 1;
    while (this.at(next, W.St, W.Evenly, W.More)) next += 1;
    if (this.at(next, W.Rem)) return 0;
    if (
      this.at(next, Word, W.From, W.Across, W.Around, W.At, W.On, W.In, W.For, W.Each, W.To, W.Between, W.Into) &&
      along.test(this.image(next).split(' ')[0] ?? '')
    )
      return ahead;
    return this.at(next, W.Across, W.Around) ? ahead : 0;
  }

  private pickMore = this.RULE('pickMore', (verb: PickUp['verb'] = 'knit'): PickUp | TakeUp => {
    const start = this.from();
    const count = this.SUBRULE(this.count);
    this.MANY({ GATE: () => this.at(1, W.St, W.Evenly, W.More), DEF: () => this.CONSUME(Any) });
    const from = this.ACTION(() => this.from());
    this.MANY1({ GATE: () => this.alongGoesOn(), DEF: () => this.CONSUME1(Any) });
    return this.ACTION((): PickUp | TakeUp => {
      const words = this.words(from, this.LA(0).startOffset + this.LA(0).image.length);
      const span = this.span(start);
      // The verb of the list works held stitches too.
      const holder = holderNamed(words.toLowerCase());
      if (holder !== null) return { type: 'takeUp', count, name: holder === '' ? null : holder, worked: true, net: null, span };
      return { type: 'pickUp', count, verb, along: words === '' ? null : words, includingHeld: /including/i.test(words), span };
    });
  });

  /** "Unzip provisional cast-on", "remove waste yarn from cast-on edge": the stitches of the edge come back. */
  private releaseAhead(): boolean {
    if (!this.at(1, Word) || !/^(unzip|undo|unpick|unravel|remove|release|removing|unpicking|carefully)$/.test(this.image(1))) return false;
    for (let ahead = 2; ahead < 9; ahead += 1) {
      if (this.separator(ahead)) return false;
      if (/^(provisional|crochet)$/.test(this.image(ahead)) || this.image(ahead) === 'waste yarn' || this.at(ahead, W.CastOn))
        return !/^marker/.test(this.image(2));
    }
    return false;
  }

  protected takeUpAhead(): boolean {
    if (this.releaseAhead()) return true;
    // "k 8 [9, 9, 10] sts from right front holder", "k across 26 sts on back holder", "place 44 held sts on needle"
    if (this.at(1, PlainStitch, W.Work, W.Patt, W.Rib)) {
      for (let ahead = 2; ahead < 16; ahead += 1) {
        if (this.separator(ahead) || this.at(ahead, W.To, Dash, W.Place, W.Leaving, SlipStitch) || /^(slip|put)$/.test(this.image(ahead)))
          return false;
        if (this.at(ahead, W.From, W.On, W.Of) || /^(held|left)$/.test(this.image(ahead))) {
          if (/^held$/.test(this.image(ahead)) && this.stitchesWithin(ahead + 1)) return true;
          // "k 36 sts left at back neck"
          if (this.at(ahead, W.Rem) && this.image(ahead) === 'left' && this.at(ahead - 1, W.St) && this.at(ahead + 1, W.At, W.On, W.For))
            return true;
          for (let look = ahead + 1; look < ahead + 6; look += 1) {
            if (this.at(look, W.Holder)) return true;
            if (this.separator(look) || this.at(look, CountToken, PlainStitch)) break;
            if (/^(lining|linings)$/.test(this.image(look))) return true;
          }
          if (this.at(ahead, W.Of) || this.at(ahead, W.On)) continue;
          return false;
        }
      }
      return false;
    }
    // "Return to sts on holder"
    if (this.at(1, W.Return) && this.at(2, W.To)) return this.within(3, 8, W.Holder) || this.within(3, 6, W.Rem);
    if (this.at(1, W.Return, W.Place) || (this.at(1, Stitch, Word) && /^(sl|slip)/.test(this.image(1)))) {
      let held = false;
      for (let ahead = 2; ahead < 14; ahead += 1) {
        if (
          /^held$|^back$/.test(this.image(ahead)) ||
          this.at(ahead, W.Holder) ||
          (this.at(1, W.Return) && this.at(ahead, W.St)) ||
          /^(instep|sleeves?|thumb|shoulders?|bod(?:y|ies)|pieces|fronts?)$/.test(this.image(ahead))
        )
          held = true;
        if (this.at(ahead, W.Needle)) return held;
        if (this.separator(ahead)) return false;
      }
    }
    return false;
  }

  /** "held back neck sts": the stitch word comes after a name. */
  private stitchesWithin(from: number): boolean {
    for (let ahead = from; ahead < from + 4; ahead += 1) {
      if (this.at(ahead, W.St)) return true;
      if (!this.at(ahead, Word, Name)) return false;
    }
    return false;
  }

  override takeUpStep = this.RULE('takeUpStep', (): TakeUp => {
    const start = this.from();
    const head = this.CONSUME(Any) as KnitToken;
    const released = this.ACTION(() => /^(unzip|undo|unpick|unravel|remove|release|removing|unpicking|carefully)$/i.test(head.image ?? ''));
    const state: { count: KnitToken | null; evenly: Evenly | null } = { count: null, evenly: null };
    const inside = this.ACTION(() => this.countInside(head));
    this.MANY({
      GATE: () =>
        (!this.separator() ||
          (released && state.count === null && this.at(1, Comma) && this.at(2, W.Place) && /ing$/.test(this.image(2)))) &&
        !this.at(1, Dash, W.Then) &&
        !(this.at(1, Open) && this.payload(1)?.holds === 'stated') &&
        !(this.at(1, W.And) && !this.at(2, Word) && !(released && (this.at(2, W.Place, SlipStitch) || /^slip$/.test(this.image(2))))) &&
        !(this.at(1, PlainStitch) && this.at(0, W.Holder, W.Needle)),
      DEF: () => {
        const token = this.CONSUME1(Any) as KnitToken;
        this.ACTION(() => {
          if (released && this.at(0, SlipStitch) && token.payload?.values !== undefined) state.count ??= token;
          if (this.at(0, CountToken) && state.count === null && inside === null && !this.at(1, ...measureWords) && !this.at(-1, W.Needle))
            state.count = token;
        });
      },
    });
    return this.ACTION(() => {
      const words = this.words(start, this.LA(0).startOffset + this.LA(0).image.length).toLowerCase();
      const worked = this.isVerb(head);
      const number = state.count as KnitToken | null;
      const name =
        /provisional|cast[- ]on|waste yarn|crochet chain/.test(words) && !worked
          ? 'provisional'
          : (holderNamed(words) ??
            /held (?:sts|stitches) (?:of|for)(?: the)? ([a-z ]+?)(?: on| onto|$)/.exec(words)?.[1] ??
            /(instep|sleeve|thumb|heel|back|front)\b/.exec(words)?.[1] ??
            null);
      // "k centre st from safety pin": one stitch, without a number.
      const one =
        number === null && inside === null && /\b(?:st|stitch) (?:from|on|off|at|left)\b/.test(words)
          ? { ...this.countOf(head), values: [1] }
          : null;
      return {
        type: 'takeUp',
        count: inside ?? (number === null ? one : this.countOf(number)),
        name: name === '' ? null : name,
        worked,
        net: null,
        span: this.span(start),
      };
    });
  });

  private isVerb(token: KnitToken): boolean {
    return token.tokenType === PlainStitch || token.tokenType === W.Work || token.tokenType === W.Patt || token.tokenType === W.Rib;
  }
}
