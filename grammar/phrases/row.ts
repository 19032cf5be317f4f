/**
 * Inside a row: stitches, groups, star repeats, runs.
 *
 *     K2, *yo, k2tog; rep from * to last 2 sts, k2 · [k2tog, k5] 6 times · (k1, yo, k1) in next st · k to 3 sts before m
 */

import { ruledSteps } from '../some-sizes.ts';
import {
  Any,
  Close,
  Colon,
  Comma,
  Count as CountToken,
  Dash,
  Equals,
  Fabric,
  FullStop,
  type KnitToken,
  Mark,
  Open,
  Other,
  Semicolon,
  Sizes,
  Slash,
  Stitch,
  TimesNumber,
  W,
  Word,
} from '../tokens.ts';
import type { Remark, Repeat, Step, Unread } from '../tree.ts';
import { explained } from './explained.ts';
import { listed } from './lists.ts';
import { PlainTalk } from './plain-talk.ts';

/** Single words that may stand between the steps of a row and order nothing. */
const prose =
  /^(?:now|next|again|finally|then|first|firstly|also|too|loosely|firmly|tightly|carefully|neatly|so|thus|still|here|ready|however|etc|once|only|note|exactly|together|beginning|ending|finished|well|done|evenly|gently|snugly|both|all|above|below|optional|otherwise|meanwhile|throughout|accordingly|twice|please|remember|lastly|secondly|afterwards|before|after|steam|press|block|enjoy|overall|alternately|same|and|or|but|for|in|on|of|by|at|it|them|this|that|these|those|as|usual|rs|ws|facing|front|back|sides?|work|instead|total|approximately|approx|about|ish|otherwise|plain|simply|leftover|seaming|joined|inclusive)$/i;

/** Whether words no phrase knows look like the name of a stitch: one word, or letters and digits together. */
function nameLike(text: string): boolean {
  const word = text.trim();
  // "k 2, o, n, k 10": one letter between two commas is the name of a stitch that nothing explains.
  if (/^[A-Za-z]$/.test(word) || /^[A-Z][A-Z0-9&/]{1,5}$/.test(word)) return true;
  if (/^[A-Za-z]+-?[A-Za-z]*\d[A-Za-z0-9]*$/.test(word)) return true;
  return /^[A-Za-z]{2,12}$/.test(word) && !prose.test(word) && !/(?:ing|ly)$/.test(word);
}

export class InRow extends PlainTalk {
  override sequence = this.RULE('sequence', (): Step[] => {
    const steps: Step[] = [];
    this.MANY({
      GATE: () => !this.sequenceEnds(),
      DEF: () => {
        this.OR([
          {
            GATE: () =>
              this.at(1, Comma, Semicolon, W.And, W.Then, FullStop, Slash) ||
              (this.at(1, Colon) && this.at(2, W.Rep)) ||
              (this.at(1, Dash) && !this.statedAhead()),
            ALT: () => this.CONSUME(Any),
          },
          {
            GATE: () => this.statedAhead(),
            ALT: () => {
              const told = this.SUBRULE(this.statedList);
              this.ACTION(() => steps.push(...told));
            },
          },
          {
            GATE: () => this.acrossListAhead(),
            ALT: () => {
              const worked = this.SUBRULE(this.acrossSteps);
              this.ACTION(() => steps.push(...worked));
            },
          },
          {
            GATE: () => this.pickUpAhead(),
            ALT: () => {
              const picked = this.SUBRULE(this.pickUpSteps);
              this.ACTION(() => steps.push(...picked));
            },
          },
          {
            ALT: () => {
              const step = this.SUBRULE(this.item);
              this.ACTION(() => steps.push(step));
            },
          },
        ]);
      },
    });
    const text = (span: Step['span']): string => this.text.slice(span.start - this.base, span.end - this.base);
    return this.ACTION(() => listed(explained(ruledSteps(steps).steps, text), text));
  });

  override item = this.RULE('item', (): Step => {
    return this.OR([
      { GATE: () => this.at(1, Sizes), ALT: () => this.SUBRULE(this.someSizes) },
      { GATE: () => this.at(1, Open) && this.payload(1)?.holds === 'stated', ALT: () => this.SUBRULE(this.stated) },
      { GATE: () => this.at(1, Open) && this.payload(1)?.holds === 'group', ALT: () => this.SUBRULE(this.group) },
      { GATE: () => this.at(1, Open), ALT: () => this.SUBRULE(this.bracketRemark) },
      { GATE: () => this.at(1, Mark) && this.markOpens(1), ALT: () => this.SUBRULE(this.star) },
      { GATE: () => this.beforeGroup() > 0, ALT: () => this.SUBRULE(this.toldGroup) },
      { GATE: () => this.at(1, Mark), ALT: () => this.SUBRULE(this.looseMark) },
      { GATE: () => this.oneRowAhead(), ALT: () => this.SUBRULE(this.oneRowStep) },
      { GATE: () => this.intoBackAhead(), ALT: () => this.SUBRULE(this.intoBackStep) },
      { GATE: () => this.placelessAhead(), ALT: () => this.SUBRULE(this.placelessStep) },
      { GATE: () => this.marksPassedAhead(), ALT: () => this.SUBRULE(this.marksPassed) },
      { GATE: () => this.everyDoubleAhead(), ALT: () => this.SUBRULE(this.everyDoubleStep) },
      { GATE: () => this.placeFirstAhead(), ALT: () => this.SUBRULE(this.placeFirstStep) },
      { GATE: () => this.intoBracketAhead(), ALT: () => this.SUBRULE(this.intoBracketStep) },
      { GATE: () => this.chartAhead(), ALT: () => this.SUBRULE(this.chartStep) },
      { GATE: () => this.toldAhead(), ALT: () => this.SUBRULE(this.toldStep) },
      { GATE: () => this.needlePartAhead(), ALT: () => this.SUBRULE(this.needlePart) },
      { GATE: () => this.arrangeAhead(), ALT: () => this.SUBRULE(this.arrangeStep) },
      { GATE: () => this.slipJoinAhead(), ALT: () => this.SUBRULE(this.slipJoin) },
      { GATE: () => this.roundAgainAhead(), ALT: () => this.SUBRULE(this.roundAgain) },
      { GATE: () => this.onlyAhead(), ALT: () => this.SUBRULE(this.onlyStep) },
      { GATE: () => this.moveMarkerAhead(), ALT: () => this.SUBRULE(this.moveMarkerStep) },
      { GATE: () => this.beginsHereAhead(), ALT: () => this.SUBRULE(this.beginsHere) },
      { GATE: () => this.tieAhead(), ALT: () => this.SUBRULE(this.tiedWork) },
      { GATE: () => this.bareJoinAhead(), ALT: () => this.SUBRULE(this.bareJoin) },
      { GATE: () => this.longWrap() > 0, ALT: () => this.SUBRULE(this.longWrapStep) },
      { GATE: () => this.sameBackAhead(), ALT: () => this.SUBRULE(this.sameBackStep) },
      { GATE: () => this.returnAhead(), ALT: () => this.SUBRULE(this.returnStep) },
      { GATE: () => this.closeAhead(), ALT: () => this.SUBRULE(this.closeStep) },
      { GATE: () => this.doubleAhead(), ALT: () => this.SUBRULE(this.doubleStep) },
      { GATE: () => this.resolveAhead(), ALT: () => this.SUBRULE(this.resolveStep) },
      { GATE: () => this.at(1, W.Etc), ALT: () => this.SUBRULE(this.etcStep) },
      { GATE: () => this.pinAhead(), ALT: () => this.SUBRULE(this.pinStep) },
      { GATE: () => this.turnAhead(), ALT: () => this.SUBRULE(this.turnStep) },
      { GATE: () => this.markerAhead(), ALT: () => this.SUBRULE(this.markerStep) },
      { GATE: () => this.evenlyAhead() || this.inMiddleAhead(), ALT: () => this.SUBRULE(this.evenlyStep) },
      { GATE: () => this.holdAhead(), ALT: () => this.SUBRULE(this.holdStep) },
      { GATE: () => this.pickUpAhead(), ALT: () => this.SUBRULE(this.pickUpStep) },
      { GATE: () => this.takeUpAhead(), ALT: () => this.SUBRULE(this.takeUpStep) },
      { GATE: () => this.castOnAhead(), ALT: () => this.SUBRULE(this.castOnStep) },
      { GATE: () => this.bindOffAhead(), ALT: () => this.SUBRULE(this.bindOffStep) },
      { GATE: () => this.joinAhead(), ALT: () => this.SUBRULE(this.joinStep) },
      { GATE: () => this.changeAhead(), ALT: () => this.SUBRULE(this.changeStep) },
      { GATE: () => this.statedAhead() && !this.at(1, Open), ALT: () => this.SUBRULE1(this.stated) },
      { GATE: () => this.bareIntoAhead(), ALT: () => this.SUBRULE(this.bareIntoOne) },
      { GATE: () => this.relativeAhead(), ALT: () => this.SUBRULE(this.relativeRun) },
      { GATE: () => this.backAhead(), ALT: () => this.SUBRULE(this.backRun) },
      { GATE: () => this.bothEndsAhead(), ALT: () => this.SUBRULE(this.bothEnds) },
      { GATE: () => this.aroundAhead(), ALT: () => this.SUBRULE(this.aroundRun) },
      { GATE: () => this.whichAreAhead(), ALT: () => this.SUBRULE(this.whichAre) },
      { GATE: () => this.edgeStitchAhead(), ALT: () => this.SUBRULE(this.edgeStitch) },
      { GATE: () => this.runAhead(), ALT: () => this.SUBRULE(this.run) },
      {
        GATE: () => this.at(1, Stitch, W.Double) || (this.at(1, CountToken) && this.at(2, Word) && /^(tog|together)$/.test(this.image(2))),
        ALT: () => this.SUBRULE(this.work),
      },
      { ALT: () => this.SUBRULE(this.unknown) },
    ]);
  });

  /** "for 3rd size only" among the steps of a row. */
  private someSizes = this.RULE('someSizes', (): Remark => {
    const start = this.from();
    const opens = this.ACTION(() => this.at(0, Open));
    const apart = this.ACTION(() => this.at(0, Comma, Dash) || this.image(1).startsWith('('));
    const token = this.CONSUME(Sizes) as KnitToken;
    const colon = this.OPTION(() => this.CONSUME(Colon));
    return this.ACTION(() => {
      const behind = this.separator() || this.at(1, Dash);
      const rules = !behind ? (opens || colon !== undefined ? 'rest' : 'next') : apart ? 'all' : 'before';
      return { type: 'remark', sizes: token.payload?.values ?? [], rules, span: this.span(start) };
    });
  });

  /** "slipping markers as you come to them": said of the whole row, at no place of its own. */
  private marksPassedAhead(): boolean {
    // "remove old marker when you come to it": some time in the next round.
    if (
      /^(?:remove|removing|rm)\b[^,;.]*\b(?:(?:when|as) (?:you )?(?:come|get|reach|next)|on (?:the )?next (?:rnd|round))/i.test(
        this.text.slice(this.from(), this.from() + 70),
      )
    )
      return true;
    if (!/^(?:slip|slipping|sl|passing|moving)$/.test(this.image(1))) return false;
    let ahead = 2;
    while (this.at(ahead, W.All, W.Each, W.These, Word) && !this.at(ahead, W.Marker) && ahead < 4) ahead += 1;
    return this.at(ahead, W.Marker) && /s$/.test(this.image(ahead));
  }

  private marksPassed = this.RULE('marksPassed', (): Remark => {
    const start = this.from();
    this.CONSUME(Any);
    this.MANY({ GATE: () => !this.separator() && !this.at(1, Open, Dash), DEF: () => this.CONSUME1(Any) });
    return this.ACTION(() => ({ type: 'remark', known: true, span: this.span(start) }));
  });

  /** A bracket that is a remark: "(one in each ridge)", "(RS)". */
  private bracketRemark = this.RULE('bracketRemark', (): Remark => {
    const start = this.from();
    const open = this.CONSUME(Open) as KnitToken;
    let depth = 1;
    this.MANY({
      GATE: () => depth > 0 && open.payload?.close !== undefined,
      DEF: () => {
        this.CONSUME(Any);
        this.ACTION(() => {
          if (this.at(0, Open)) depth += 1;
          if (this.at(0, Close)) depth -= 1;
        });
      },
    });
    return this.ACTION(() => ({ type: 'remark', span: this.span(start) }));
  });

  /** A mark with no partner in the row: the beginning or end of a block of rows. */
  private looseMark = this.RULE('looseMark', (): Step => {
    const start = this.from();
    const token = this.CONSUME(Mark) as KnitToken;
    return this.ACTION((): Step => ({ type: 'unread', text: token.image, span: this.span(start) }));
  });

  /** "Edge st, *…; rep from * to last st, edge st": one stitch, worked as the edge is. */
  private edgeStitchAhead(): boolean {
    return (
      this.at(1, W.Edge) &&
      this.at(2, W.St) &&
      !/s$/.test(this.image(2)) &&
      (this.separator(3) || this.at(3, Open, Mark)) &&
      !this.at(0, Word, W.Last)
    );
  }

  private edgeStitch = this.RULE('edgeStitch', (): Repeat => {
    const start = this.from();
    const word = this.CONSUME(Any) as KnitToken;
    const stitch = this.CONSUME1(Any) as KnitToken;
    return this.ACTION(() => this.runOf(word, { kind: 'over', count: { ...this.countOf(stitch), values: [1] } }, start));
  });

  /** Words up to the next separator that no phrase knows. They are unread if they instruct, a remark if they do not. */
  private unknown = this.RULE('unknown', (): Unread | Remark => {
    const start = this.from();
    // "k half the sts", "k to middle of row": how far the stitch before it runs, and no words of their own
    const run = this.ACTION(() => /(?:^|[\s,;:([*])(?:k|p|knit|purl)\s+$/i.test(this.text.slice(Math.max(0, start - 8), start)));
    this.CONSUME(Any);
    this.MANY({
      GATE: () =>
        !this.at(1, Comma, Semicolon, FullStop, Close, Open, Mark, Sizes) &&
        !(this.at(1, Stitch) && !this.at(0, Word, W.In, W.As) && !(this.at(0, W.Beg) && this.image(-1) === 'but')) &&
        // "make buttonholes: rib 4, …"
        !(this.at(1, Colon) && this.at(2, Stitch, Mark, Open, W.Work, W.Rib, W.Patt, Fabric)) &&
        !(
          this.at(1, W.And, W.Then) &&
          this.at(2, Stitch, W.Work, W.Turn, W.Place, W.Join, W.FastenOff, W.CastOn, W.BindOff, W.PickUp, W.Graft)
        ) &&
        !this.turnAhead() &&
        !(this.statedAhead() && this.at(1, Dash, Equals)),
      DEF: () => this.CONSUME1(Any),
    });
    return this.ACTION(() => {
      const span = this.span(start);
      const text = this.text.slice(span.start - this.base, span.end - this.base);
      return this.instructs(start) ||
        (run && /^(?:half|to|until|till|up|through|about|as far|all but|third|quarter|most|some)\b/i.test(text)) ||
        // "knit one from each needle together": a join, and no single stitch
        /^from (?:each|both) needles?\b.*\btog/i.test(text) ||
        /^as many times\b|^drop (?:the )?(?:next|last|first|\d+) (?:st|stitch)|^(?:rib|patt|work|moss)\s(?:round\s|across\s)?to\b/i.test(
          text,
        ) ||
        (this.amongSteps(start) && this.at(0, TimesNumber) && /^[a-z]+\s+\S+$/i.test(text)) ||
        (this.amongSteps(start) && nameLike(text) && ((this.at(0, Word) && this.LA(0).startOffset === start) || /\d/.test(text)))
        ? { type: 'unread', text, span }
        : { type: 'remark', span };
    });
  });

  /** Whether the word just eaten stands among the steps of a list: between commas, marks or brackets. */
  private amongSteps(start: number): boolean {
    const before =
      this.text
        .slice(Math.max(0, start - 40), start)
        .trimEnd()
        .at(-1) ?? '';
    const end = this.LA(0).startOffset + this.LA(0).image.length;
    const after =
      this.text
        .slice(end, end + 40)
        .trimStart()
        .at(0) ?? '';
    return /[,;:([*\d\]]/.test(before) || (/[,;)\]]/.test(after) && /^$|[.:]/.test(before));
  }

  /** Whether the words just eaten, from `start` on, tell the knitter to do something with stitches. */
  private instructs(start: number): boolean {
    // "where sts were cast off for the armholes": tells of what has been done
    if (
      /^(?:where|which|that|who)\b[^.;]*\b(?:was|were|have been|has been|had been)\b/i.test(this.text.slice(start, this.LA(0).startOffset))
    )
      return false;
    for (let back = 0; back > -60; back -= 1) {
      const token = this.LA(back) as KnitToken;
      if (token?.startOffset === undefined || !(token.startOffset >= start)) break;
      if (this.at(back, Stitch)) return true;
      if (this.at(back, CountToken) && this.at(back + 1, W.St, W.Before, W.Past)) return true;
      // "K 56-64 sts" in three sizes
      if (this.at(back, Other) && /\d/.test(this.image(back)) && this.at(back + 1, W.St)) return true;
      // "the first 1 cm above cast-on edge": a place
      if (this.at(back, W.CastOn, W.BindOff, W.PickUp, W.Rep) && !this.at(back + 1, W.Edge) && this.image(back) !== 'repeats') return true;
      // "Slip the pad in": no stitch is slipped.
      if (
        token.startOffset === start &&
        /^slip$/.test(this.image(back)) &&
        !/\b(?:sts?|stitch(?:es)?|marker|m|needle|yarn|loops?|yo|wyi[fb]|purlwise|knitwise)\b/i.test(
          this.text.slice(start, this.LA(0).startOffset + this.LA(0).image.length),
        )
      )
        return false;
      if (
        token.startOffset === start &&
        this.at(back, W.Inc, W.Dec, W.Work, W.Turn, W.Place, W.Join, Word) &&
        (/^(inc|dec|work|turn|place|slip|join|wrap|cross|cable|twist|drop|lift|pass)/.test(this.image(back)) ||
          (/^tak(?:e|ing)$/.test(this.image(back)) && this.at(back + 1, CountToken)))
      )
        return true;
    }
    return false;
  }
}
