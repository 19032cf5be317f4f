/**
 * Stitches taken up again from where they were put aside.
 *
 *     k across 16 sts on front holder · return 52 held sts to needle · k 24 lining sts · unpick the waste yarn, placing 42 sts on needle
 */
import {
  Any,
  Comma,
  Count as CountToken,
  Dash,
  Fabric,
  type KnitToken,
  Name,
  Open,
  PlainStitch,
  SlipStitch,
  Stitch,
  W,
  Word,
} from '../tokens.ts';
import type { Count, Evenly, TakeUp } from '../tree.ts';
import { holderNamed, liningNamed, ownerNamed } from './holder-names.ts';
import { PickingUp } from './picking-up.ts';

const measureWords = [W.Cm, W.Mm, W.Inch];

/** Two numbers as one, size by size. */
const added = (a: Count, b: Count): Count => ({
  ...a,
  values: Array.from({ length: Math.max(a.values.length, b.values.length) }, (_, size) => {
    const [left, right] = [a, b].map((count) => (count.values.length === 1 ? count.values[0] : count.values[size]));
    return left == null || right == null ? null : left + right;
  }),
});

export class TakingUp extends PickingUp {
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
    if (this.at(1, PlainStitch, W.Work, W.Patt, W.Rib, Fabric)) {
      if (this.liningAhead()) return true;
      for (let ahead = 2; ahead < 16; ahead += 1) {
        // "rib 15 (including the st left on the needle)": the bracket says how the stitches are counted.
        if (/^(?:including|incl|counting)$/.test(this.image(ahead))) return false;
        if (this.separator(ahead) || this.at(ahead, W.To, Dash, W.Place, W.Leaving, SlipStitch) || /^(slip|put)$/.test(this.image(ahead)))
          return false;
        if (this.at(ahead, W.From, W.On, W.Of) || /^(held|left)$/.test(this.image(ahead))) {
          if (/^held$/.test(this.image(ahead)) && this.stitchesWithin(ahead + 1)) return true;
          // "k 36 sts left at back neck"
          if (
            this.at(ahead, W.Rem) &&
            this.image(ahead) === 'left' &&
            this.at(ahead - 1, W.St, PlainStitch) &&
            this.at(ahead + 1, W.At, W.On, W.For)
          )
            return true;
          for (let look = ahead + 1; look < ahead + 6; look += 1) {
            if (this.holderAt(look)) return true;
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
          this.holderAt(ahead) ||
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

  /** "k 24 lining sts", "p across sts of pocket back": they wait apart from the row; "k to pocket sts" only goes up to a place. */
  private liningAhead(): boolean {
    const clause = (this.text.slice(this.from(), this.from() + 120).split(/[,;.:]|\band\b(?! )/)[0] ?? '')
      .toLowerCase()
      .replace(/\s+/g, ' ');
    return liningNamed(clause) && !/\b(?:to|until|tog|together|edges?|tops?|flaps?|eyelets?)\b/.test(clause);
  }

  /** "placing 6 sts from below and 6 sts from above": both edges of the row of waste yarn. */
  private otherEdge(): boolean {
    if (!this.at(2, CountToken)) return false;
    for (let ahead = 3; ahead < 7; ahead += 1) {
      if (/^(?:above|below|upper|lower|top|bottom|over|under)$/.test(this.image(ahead))) return true;
      if (this.separator(ahead)) return false;
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
    const state: { count: KnitToken | null; evenly: Evenly | null; other: KnitToken | null } = { count: null, evenly: null, other: null };
    const inside = this.ACTION(() => this.countInside(head));
    this.MANY({
      GATE: () =>
        (!this.separator() ||
          (released && state.count === null && this.at(1, Comma) && this.at(2, W.Place) && /ing$/.test(this.image(2)))) &&
        !this.at(1, Dash, W.Then) &&
        // "k 30 from back holder inc 1 at centre"
        !(this.at(1, W.Inc, W.Dec) && this.at(2, CountToken)) &&
        !(this.at(1, Open) && this.payload(1)?.holds === 'stated') &&
        !(
          this.at(1, W.And) &&
          !this.at(2, Word) &&
          !(released && (this.at(2, W.Place, SlipStitch) || /^slip$/.test(this.image(2)) || this.otherEdge()))
        ) &&
        !(this.at(1, PlainStitch) && this.at(0, W.Holder, W.Needle)),
      DEF: () => {
        const token = this.CONSUME1(Any) as KnitToken;
        this.ACTION(() => {
          if (released && this.at(0, SlipStitch) && token.payload?.values !== undefined) state.count ??= token;
          if (released && state.count !== null && this.at(0, CountToken) && this.at(-1, W.And)) state.other = token;
          if (
            this.at(0, CountToken) &&
            state.count === null &&
            inside === null &&
            !this.at(-1, W.Of) &&
            !this.at(1, ...measureWords) &&
            // "put the shoulder sts on two needles"
            !this.at(1, W.Needle) &&
            !this.at(-1, W.Needle)
          )
            state.count = token;
        });
      },
    });
    return this.ACTION(() => {
      const words = this.words(start, this.LA(0).startOffset + this.LA(0).image.length).toLowerCase();
      const worked = this.isVerb(head);
      const number = state.count as KnitToken | null;
      const other = state.other === null ? null : this.countOf(state.other);
      const name =
        /provisional|cast[- ]on|crochet chain/.test(words + (released ? words.replace(/waste yarn/, 'provisional') : '')) && !worked
          ? 'provisional'
          : ((holderNamed(words) ||
              (liningNamed(words) ? 'pocket lining' : null) ||
              /held (?:sts|stitches) (?:of|for)(?: the)? ([a-z ]+?)(?: back)?(?: on| onto| to|$)/.exec(words)?.[1] ||
              ownerNamed(words) ||
              /(instep|sleeve|thumb|heel|back(?! on\b| onto\b| to\b)|front)\b/.exec(words)?.[1]) ??
            null);
      // "k centre st from safety pin": one stitch, without a number.
      const one =
        number === null && inside === null && /\b(?:st|stitch) (?:from|on|off|at|left)\b/.test(words)
          ? { ...this.countOf(head), values: [1] }
          : null;
      return {
        type: 'takeUp',
        count: inside ?? (number === null ? one : other === null ? this.countOf(number) : added(this.countOf(number), other)),
        name: name === '' ? null : name,
        worked,
        net: null,
        span: this.span(start),
      };
    });
  });

  private isVerb(token: KnitToken): boolean {
    return [PlainStitch, W.Work, W.Patt, W.Rib, Fabric].includes(token.tokenType);
  }
}
