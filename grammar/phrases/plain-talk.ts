/**
 * Steps told in whole phrases where the single words would be read as something else.
 *
 *     make a one-row buttonhole over next 3 sts · working into back of each yo · k to double yo · M1 after first m and before second m
 */
import { Any, Count as CountToken, type KnitToken, PlainStitch, Stitch, W } from '../tokens.ts';
import type { Remark, Repeat, Unread } from '../tree.ts';
import { Needles } from './needles.ts';

/** A buttonhole bound off and cast on again in one row: as many stitches as before. */
const oneRow = /^(?:work(?:ing)?|mak(?:e|ing)) (?:an? )?(?:1|one)[- ]row (?:buttonhole|button-hole)\b/i;
/** How made loops are worked, said of the whole row. */
const intoBack =
  /^(?:working|knitting|purling) (?:in(?:to)? )?(?:the )?backs? of (?:each |the |all |every |these )*(?:yos?|yarn[- ]?overs?|made loops?|loops?|m1s?)\b/i;

export class PlainTalk extends Needles {
  private clauseHere(): string {
    return (this.text.slice(this.from(), this.from() + 160).split(/[,.;:](?:\s|$)/)[0] ?? '').replace(/\s+/g, ' ');
  }

  protected oneRowAhead(): boolean {
    return (this.at(1, W.Work, Stitch) || /^making$/.test(this.image(1))) && oneRow.test(this.clauseHere());
  }

  oneRowStep = this.RULE('oneRowStep', (): Repeat | Unread => {
    const start = this.from();
    const head = this.CONSUME(Any) as KnitToken;
    const state: { number: KnitToken | null; named: boolean } = { number: null, named: false };
    this.MANY({
      GATE: () => !this.separator(),
      DEF: () => {
        const token = this.CONSUME1(Any) as KnitToken;
        this.ACTION(() => {
          if (/^buttonhole/.test(this.image(0))) state.named = true;
          else if (state.named && this.at(0, CountToken)) state.number ??= token;
        });
      },
    });
    return this.ACTION((): Repeat | Unread => {
      const span = this.span(start);
      // Over how many stitches is not told: the row cannot be followed past it.
      if (state.number === null) return { type: 'unread', text: this.words(start, this.LA(0).startOffset + this.LA(0).image.length), span };
      return {
        type: 'repeat',
        form: 'run',
        verb: 'work',
        children: [{ type: 'work', stitch: 'work', n: null, manner: [], span: this.tokenSpan(head) }],
        extent: { kind: 'over', count: this.countOf(state.number) },
        once: [],
        ending: null,
        mark: null,
        markSpan: null,
        span,
      };
    });
  });

  protected intoBackAhead(): boolean {
    return (this.at(1, W.Work, PlainStitch) || /ing$/.test(this.image(1))) && intoBack.test(this.clauseHere());
  }

  intoBackStep = this.RULE('intoBackStep', (): Remark => {
    const start = this.from();
    this.CONSUME(Any);
    this.MANY({ GATE: () => !this.separator(), DEF: () => this.CONSUME1(Any) });
    return this.ACTION(() => ({ type: 'remark', span: this.span(start) }));
  });

  /** Words whose places are not followed: a run up to a loop of the row before, one stitch told for several places. */
  protected placelessAhead(): boolean {
    if (this.at(1, PlainStitch, W.Work, W.Patt, W.Rib) && this.payload(1)?.values === undefined && this.at(2, W.To, W.Until))
      return this.payload(3)?.entry?.name === 'yo N times';
    const clause = this.clauseHere();
    // "knit across body sts to underarm": how many they are is not told
    if (this.at(1, PlainStitch) && this.payload(1)?.values === undefined && this.acrossPart())
      return !this.backAhead() && !this.takeUpAhead();
    // "make a buttonhole 3 sts from each end", "knit pocket sts together with body sts"
    if (this.at(1, W.Work, Stitch) && /^(?:make|work) (?:a |an |one )?buttonhole (?:\d|as\b|at\b|over\b)/i.test(clause)) return true;
    if (
      this.at(1, PlainStitch, W.Work) &&
      /^\S+ (?:the )?(?:pocket|lining|body|\d halves|shoulders?|two)\b[^,.;:]*\b(?:tog|together)\b/i.test(clause)
    )
      return true;
    return (
      this.at(1, Stitch) &&
      /ncrease/.test(this.payload(1)?.entry?.kind ?? '') &&
      /^\S+ ?(?:1|one)? (?:after|before) (?:the )?(?:\w+ )?(?:m|markers?)\b[^,.;]* and (?:after|before)\b/i.test(this.clauseHere())
    );
  }

  placelessStep = this.RULE('placelessStep', (): Unread => {
    const start = this.from();
    this.CONSUME(Any);
    this.MANY({ GATE: () => !this.separator(), DEF: () => this.CONSUME1(Any) });
    return this.ACTION(() => ({
      type: 'unread',
      text: this.words(start, this.LA(0).startOffset + this.LA(0).image.length),
      span: this.span(start),
    }));
  });
}
