/**
 * Stitches put aside on holders, waste yarn and spare needles.
 *
 *     place next 44 sts on waste yarn for left sleeve · slip these sts onto a holder · leave rem sts on a spare needle
 */
import { Any, Count as CountToken, Dash, type KnitToken, Name, Open, PlainStitch, SlipStitch, Stitch, W, Word } from '../tokens.ts';
import type { Hold } from '../tree.ts';
import { BindingOff } from './binding-off.ts';

export class Holding extends BindingOff {
  protected holdAhead(): boolean {
    if (this.at(1, W.Leaving)) return this.leftOnHolder() || this.holderWithin(2, 14);
    if (this.threadedThrough()) return true;
    if (this.at(1, W.Place) || (this.at(1, W.Return) && !this.at(2, W.To))) return this.holderWithin(2, 14);
    if (this.at(1, SlipStitch, Stitch) && /^(sl|slip)/.test(this.image(1))) return this.holderWithin(2, 12);
    if (this.at(1, W.Keep)) return this.holderWithin(2, 12);
    if (this.at(1, Word) && /^(slip|slipping|keep|hold|pass|passing|move)$/.test(this.image(1))) return this.holderWithin(2, 12);
    return false;
  }

  /** "leave on a spare needle", "leave pocket on holder": all there are. */
  private leftOnHolder(): boolean {
    const on = this.at(2, Word, Name) ? (this.at(3, Word, Name) ? 4 : 3) : 2;
    return this.at(on, W.On) && this.holderAt(on + 1);
  }

  /** "run a thread through these sts and leave": they wait on it; drawn up, they would be closed. */
  private threadedThrough(): boolean {
    if (!this.at(1, W.Thread, W.Holder) && !(this.at(1, Word) && /^(?:thread|pass)$/.test(this.image(1)))) return false;
    const words = this.text.slice(this.from(), this.from() + 160).split(/[.;]/)[0] ?? '';
    return (
      /^(?:run|thread|draw|pass) (?:a |the )?(?:length |piece |strand )?(?:of )?(?:contrast(?:ing)? |waste |scrap |spare )?(?:thread|yarn|wool|cotton) through\b/i.test(
        words.replace(/\s+/g, ' '),
      ) && /\b(?:leave|leaving|hold|waiting|remove (?:the )?needle|slip (?:them |sts |stitches )?off)\b/i.test(words)
    );
  }

  private holderWithin(from: number, count: number): boolean {
    // "Place on hold.": all that are there.
    if (this.at(1, W.Place) && this.at(2, W.On) && this.holderAt(3)) return true;
    let stitches = this.at(1, SlipStitch) && this.payload(1)?.values !== undefined;
    for (let ahead = from; ahead < from + count; ahead += 1) {
      // stitches that come from a holder go to no holder
      if (this.at(ahead, W.From) && (this.at(ahead + 1, W.Holder) || (this.at(ahead + 2, W.Holder) && !this.at(ahead + 1, W.Needle))))
        return false;
      if (
        this.at(ahead, W.St, W.Rem, W.Centre, W.Across) ||
        /^(them|those)$/.test(this.image(ahead)) ||
        (this.at(ahead, CountToken, W.These) && this.at(ahead + 1, W.On, W.To))
      )
        stitches = true;
      if (this.holderAt(ahead) && this.backOnNeedle(ahead + 1)) return false;
      if (this.holderAt(ahead)) return stitches && !(this.at(ahead, W.Holder) && this.image(ahead) === 'hold' && !this.at(ahead - 1, W.On));
      // "Leave the sts on the needle": they stay where they are
      if (
        this.at(1, W.Leaving) &&
        this.image(1) === 'leave' &&
        this.at(ahead, W.On) &&
        this.at(ahead + 1, W.Needle) &&
        /^(?:the )?needles?$/.test(this.image(ahead + 1)) &&
        !this.at(ahead - 1, W.Rem) &&
        (ahead === from + 1 || this.at(ahead - 2, W.These, W.All))
      )
        return false;
      if (stitches && this.at(ahead, W.On, W.To) && this.at(ahead + 1, W.Needle) && this.at(1, W.Leaving)) return true;
      // "Leave the 28 sts of Needle 2 unworked for the instep"
      if (stitches && this.at(ahead, W.Unworked) && this.at(1, W.Leaving) && this.at(from, CountToken)) return true;
      if (this.separator(ahead) || this.at(ahead, PlainStitch)) return false;
    }
    return false;
  }

  /** "slip 24 sts left on holder onto needle": they come back. */
  private backOnNeedle(from: number): boolean {
    const on = /^back$/.test(this.image(from)) ? from + 1 : from;
    if (!this.at(on, W.On, W.To)) return false;
    for (let ahead = on + 1; ahead < on + 7; ahead += 1) {
      if (this.at(ahead, W.Needle)) return true;
      if (this.separator(ahead) || this.holderAt(ahead)) return false;
    }
    return false;
  }

  /** "place next 44 sts on waste yarn for left sleeve", "slip these sts onto a holder", "leave rem sts on a spare needle". */
  override holdStep = this.RULE('holdStep', (): Hold => {
    const start = this.from();
    const head = this.CONSUME(Any) as KnitToken;
    let which: Hold['which'] = 'next';
    const state: { count: KnitToken | null; holder: string; but: boolean; threaded: boolean } = {
      count: null,
      holder: 'holder',
      but: false,
      threaded: false,
    };
    // "leave sts on holder": all there are
    this.ACTION(() => {
      if (head.payload?.values !== undefined) state.count = head;
      if ((head.tokenType === W.Leaving || head.tokenType === W.Place) && this.at(1, W.St) && this.at(2, W.On, W.Holder, W.And))
        which = 'these';
      if ((head.tokenType === W.Place || head.tokenType === W.Leaving) && this.at(1, W.On)) which = 'these';
      if (head.tokenType === W.Leaving && this.at(1, Word, Name) && this.at(2, W.On, Word, Name)) which = 'these';
      state.threaded = /^(?:run|thread|draw|pass)\b[^.;]*\bthrough\b/i.test(this.text.slice(start, start + 60));
      if (state.threaded) which = 'these';
    });
    this.MANY({
      GATE: () =>
        !this.separator() &&
        (state.threaded ? !(this.at(1, W.And) && this.at(0, W.St)) : !this.holderAt(1) && !(this.holderAt(0) && !this.at(0, SlipStitch))),
      DEF: () => {
        const token = this.CONSUME1(Any) as KnitToken;
        this.ACTION(() => {
          if (this.at(0, CountToken) && state.count === null) state.count = token;
          else if (/^(but|except)$/.test(this.image(0))) state.but = true;
          else if (this.at(0, W.Rem)) {
            // "52 left sleeve sts": which sleeve, not what is left
            if (this.image(0) !== 'left' || !this.at(1, Word, Name)) which = 'remaining';
          } else if (this.at(0, W.Centre)) which = 'centre';
          else if (this.at(0, W.Other)) which = 'other';
          else if (this.at(0, W.These, W.Across, W.All) || /^(them|just)$/.test(this.image(0))) which = 'these';
          else if (this.at(0, W.Each) && this.image(0) === 'each' && /^sides?$/.test(this.image(1))) which = 'firstAndLast';
          else if (this.at(0, W.First)) which = which === 'last' ? 'firstAndLast' : 'first';
          else if (this.at(0, W.Last)) which = which === 'first' ? 'firstAndLast' : 'last';
        });
      },
    });
    this.OPTION({
      GATE: () => this.holderAt(1),
      DEF: () => {
        this.CONSUME2(Any);
        this.ACTION(() => {
          state.holder = this.image(0);
        });
      },
    });
    const tail = this.ACTION(() => this.from());
    this.MANY1({
      GATE: () =>
        !this.separator() && !this.at(1, Dash, Open, W.Then, PlainStitch, W.Turn) && !(this.at(1, W.And) && !this.at(2, W.Leaving, Word)),
      DEF: () => this.CONSUME3(Any),
    });
    return this.ACTION(() => {
      const words = this.words(tail, this.LA(0).startOffset + this.LA(0).image.length).toLowerCase();
      const number = state.count as KnitToken | null;
      const centre = number === null && which === 'centre' ? { ...this.countOf(head), values: [1] } : null;
      const told = this.words(start, tail);
      if (/\b(?:sts|stitches) (?:just )?(?:worked|knit(?:ted)?|purled)\b/i.test(told)) which = 'these';
      // "transfer sleeve sts to holder": a part without a number goes as far as the next marker
      if (
        number === null &&
        which === 'next' &&
        /^(?:\S+|set aside) (?:the |all )?(?:sts|stitches) (?!to (?:the )?(?:next |first |second )?m|bet)/i.test(told)
      )
        which = 'these';
      const part = number === null && which === 'next' && /^\S+ (?:the )?(?:[a-z]+ ){1,2}(?:sleeve|sts|stitches)\b/i.test(told);
      const toMarker =
        /\bto (?:the )?(?:next |first |second )?(?:marker|m)\b/i.test(told) ||
        /\b(?:between|bet|betw) (?:the )?(?:markers|ms?)\b/i.test(told) ||
        part;
      if (/\b(?:between|bet|betw) (?:the )?(?:markers|ms?)\b/i.test(told)) which = 'next';
      if (state.but && number !== null)
        return {
          type: 'hold',
          which: 'next',
          count: null,
          but: this.countOf(number),
          holder: state.holder,
          name: null,
          span: this.span(start),
        };
      return {
        type: 'hold',
        which,
        ...(toMarker && number === null ? { toMarker: true } : {}),
        count: number === null ? centre : number === head ? this.countInside(head) : this.countOf(number),
        holder: state.holder,
        name: /^for (?:the )?([a-z ]+?)(?: and .*)?$/.exec(words)?.[1] ?? null,
        span: this.span(start),
      };
    });
  });
}
