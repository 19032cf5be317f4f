/**
 * Steps told in whole phrases where the single words would be read as something else.
 *
 *     make a one-row buttonhole over next 3 sts · working into back of each yo · k to double yo · M1 after first m and before second m
 */
import { Any, Colon, Comma, Count as CountToken, Dash, type KnitToken, Name, Open, PlainStitch, Stitch, W, Word } from '../tokens.ts';
import type { Count, Remark, Repeat, TakeUp, Unread, Work } from '../tree.ts';
import { holderNamed } from './holder-names.ts';
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
    return this.ACTION(() => ({ type: 'remark', known: true, span: this.span(start) }));
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

  /** "k across 38 sts of right front, 48 sts of first sleeve and 76 sts of back": the verb works them all. */
  protected acrossListAhead(): boolean {
    return (
      this.at(1, PlainStitch, W.Work, W.Patt, W.Rib) &&
      /^(?:k|knit|p|purl|work|patt|rib)(?: across)? ?(?:the )?\d+(?: ?[([][^)\]]*[)\]])? (?:sts|stitches) (?:of|from) [a-z' -]+?,? (?:(?:and|then|across) )*\d+(?: ?[([][^)\]]*[)\]])? (?:sts|stitches) (?:of|from)\b/i.test(
        this.text.slice(this.from(), this.from() + 160).replace(/\s+/g, ' '),
      )
    );
  }

  /** Place of the next number of such a list, behind its comma; 0 when the list ends. */
  private acrossGoesOn(): number {
    let ahead = 1;
    while (this.at(ahead, Comma, W.And, W.Then, W.Across)) ahead += 1;
    return ahead > 1 && this.at(ahead, CountToken) && this.at(ahead + 1, W.St) && this.at(ahead + 2, W.Of, W.From) ? ahead : 0;
  }

  acrossSteps = this.RULE('acrossSteps', (): (Repeat | TakeUp)[] => {
    const steps: (Repeat | TakeUp)[] = [];
    const head = this.CONSUME(Any) as KnitToken;
    const state: { count: Count | null; start: number } = { count: null, start: 0 };
    this.ACTION(() => {
      state.count = this.countInside(head);
      state.start = head.startOffset;
    });
    const close = (): void => {
      if (state.count === null) return;
      const words = this.words(state.start, this.LA(0).startOffset + this.LA(0).image.length).toLowerCase();
      const span = this.span(state.start);
      const holder = holderNamed(words);
      const child: Work = { type: 'work', stitch: head.payload?.entry?.name ?? 'work', n: null, manner: [], span: this.tokenSpan(head) };
      steps.push(
        holder === null
          ? {
              type: 'repeat',
              form: 'run',
              verb: head.payload?.entry?.name ?? 'work',
              children: [child],
              extent: { kind: 'over', count: state.count },
              once: [],
              ending: null,
              mark: null,
              markSpan: null,
              span,
            }
          : { type: 'takeUp', count: state.count, name: holder === '' ? null : holder, worked: true, net: null, span },
      );
      state.count = null;
    };
    this.MANY({
      GATE: () =>
        this.acrossGoesOn() > 0 ||
        (!this.separator() && !this.at(1, Dash, Colon, Open, W.Then) && !(this.at(1, W.And) && !this.at(2, Word, Name))),
      DEF: () => {
        const goesOn = this.ACTION(() => this.acrossGoesOn() > 0 && this.at(1, Comma, W.And));
        this.ACTION(() => {
          if (goesOn) close();
        });
        const token = this.CONSUME1(Any) as KnitToken;
        this.ACTION(() => {
          if (this.at(0, CountToken) && state.count === null) {
            if (steps.length > 0) state.start = token.startOffset;
            state.count = this.countOf(token);
          }
        });
      },
    });
    this.ACTION(close);
    return steps;
  });

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
