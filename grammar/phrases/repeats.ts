/**
 * What is worked more than once inside a row: brackets and stars.
 *
 *     [k2tog, k5] 6 times · *k2, p2; rep from * to last 2 sts · (k1, yo, k1) in next st
 */
import {
  Any,
  Close,
  Colon,
  Comma,
  Count as CountToken,
  Dash,
  FullStop,
  type KnitToken,
  Mark,
  Open,
  Semicolon,
  Stitch,
  TimesNumber,
  W,
  Word,
} from '../tokens.ts';
import type { Extent, Repeat, Step } from '../tree.ts';
import type { Into } from './into-one.ts';
import { RepeatEndings } from './repeat-endings.ts';

export class Repeats extends RepeatEndings {
  /** Marks that close the star repeat being read, innermost last. */
  protected readonly openMarks: string[] = [];

  protected sequenceEnds(): boolean {
    if (this.at(1, Close)) return true;
    const mark = this.openMarks.at(-1);
    if (mark !== undefined) {
      if (this.at(1, W.Rep) && this.repFromAhead()) return true;
      if (this.at(1, Mark)) return this.image(1) === mark || !this.markOpens(1);
    }
    return false;
  }

  /** "rep from *", "rep between * and **", "rep * to **", and "repeat" alone before a place in an old leaflet. */
  protected repFromAhead(): boolean {
    if (this.at(2, W.From, W.Between, Mark)) return true;
    return this.at(2, W.To, W.Across, W.Around, TimesNumber) || (this.at(2, CountToken) && this.at(3, W.Times));
  }

  /** Whether the mark `ahead` places on opens a repeat: it is named again later or has a twin with an extent behind it. */
  protected markOpens(ahead: number): boolean {
    const image = this.image(ahead);
    if (this.at(ahead - 1, W.From, W.Between, W.To) || (this.at(ahead - 1, W.And) && this.at(ahead - 2, Mark))) return false;
    for (let look = ahead + 1; look < ahead + 400; look += 1) {
      const token = this.LA(look) as KnitToken;
      if (Number.isNaN(token.startOffset)) return false;
      if (this.at(look, Mark) && this.image(look) === image) {
        // "*A**, B; rep from * to **": a mark that is only named as the far end closes and does not open.
        return !(this.at(look - 1, W.To) || (this.at(look - 1, W.And, Dash) && this.at(look - 2, Mark)));
      }
      // "*k1, p1; rep to last st": the only star of the row needs no name.
      if (this.at(look, W.Rep) && this.at(look + 1, W.To, W.Across, W.Around)) return true;
      if (this.at(look, W.Rep) && this.at(look + 1, W.From, W.Between)) {
        if (this.at(look + 2, Mark) && this.image(look + 2) === image) return true;
      }
    }
    return false;
  }

  /**
   * Words before a bracket that say how often it is worked: "6 times (k1, p1)", "repeat [k2, p2] to end", "work the instructions in
   * brackets 5 times: [k2, p2]". How many tokens; 0 when none stand here.
   */
  protected beforeGroup(): number {
    if (this.at(1, TimesNumber) && this.groupAt(2)) return 1;
    if (this.at(1, CountToken) && this.at(2, W.Times)) return this.groupAt(3) ? 2 : 0;
    if (this.at(1, W.Rep) && this.groupAt(2)) return 1;
    if (!this.at(1, W.Work, W.Rep)) return 0;
    let named = false;
    for (let ahead = 2; ahead < 12; ahead += 1) {
      if (/^(?:bracketed|brackets?|parentheses|parenthesis)$/.test(this.image(ahead))) named = true;
      if (this.at(ahead, Colon)) return named && this.groupAt(ahead + 1) ? ahead : 0;
      if (this.separator(ahead) || this.at(ahead, Stitch, Mark, Open)) return 0;
    }
    return 0;
  }

  protected toldGroup = this.RULE('toldGroup', (): Step => {
    const start = this.from();
    const before = { tokens: 0, often: null as KnitToken | null };
    this.ACTION(() => {
      before.tokens = this.beforeGroup();
    });
    this.AT_LEAST_ONE({
      GATE: () => before.tokens > 0,
      DEF: () => {
        const token = this.CONSUME(Any) as KnitToken;
        this.ACTION(() => {
          before.tokens -= 1;
          if (this.at(0, CountToken, TimesNumber)) before.often = token;
        });
      },
    });
    const step = this.SUBRULE(this.group) as Step;
    return this.ACTION((): Step => {
      const span = this.span(start);
      if (step.type !== 'repeat' || step.extent !== null) return { ...step, span };
      const { often } = before;
      return often === null
        ? { ...step, extent: { kind: 'end' }, span }
        : { ...step, extent: { kind: 'times', count: this.countOf(often), sense: 'plain', form: 'bracket' }, span };
    });
  });

  /** "(k1, yo, k1) in next st", "[k2tog, k5] 6 times", "(k2, p2) to last 2 sts". */
  group = this.RULE('group', (): Step => {
    const start = this.from();
    const open = this.CONSUME(Open) as KnitToken;
    const saved = this.ACTION(() => this.openMarks.splice(0));
    const children = this.SUBRULE(this.sequence);
    this.ACTION(() => this.openMarks.push(...saved));
    this.CONSUME(Close);
    const more: Step[] = [];
    let into: Into | null = null;
    let whole = this.ACTION(() => this.span(start));
    let extent: Extent | null = null;
    this.OR([
      {
        GATE: () => this.intoAhead(),
        ALT: () => {
          into = this.SUBRULE(this.intoWords);
        },
      },
      {
        GATE: () => this.extentAhead(true),
        ALT: () => {
          extent = this.SUBRULE(this.extent, { ARGS: ['bracket'] });
          this.ACTION(() => {
            whole = this.span(start);
          });
          // "(k1, p1) twice, k1 in next st", "(k1, p1) twice into yo 4 times"
          this.OPTION1({
            GATE: () => this.at(1, Comma, W.And) && this.at(2, Stitch) && this.intoAhead(3),
            DEF: () => {
              this.CONSUME3(Any);
              const last = this.SUBRULE(this.loneStitch);
              this.ACTION(() => more.push(last));
            },
          });
          this.OPTION2({
            GATE: () => (more.length > 0 || this.at(0, W.Times, TimesNumber, CountToken)) && this.intoAhead(),
            DEF: () => {
              into = this.SUBRULE1(this.intoWords);
            },
          });
        },
      },
      {
        GATE: () => this.at(1, W.Rep) && this.at(2, W.To, W.Across, W.Around, TimesNumber, CountToken) && !this.at(3, W.Row),
        ALT: () => {
          this.CONSUME(Any);
          extent = this.SUBRULE1(this.extent, { ARGS: ['from'] });
        },
      },
      {
        GATE: () => this.at(1, Open) && this.at(2, CountToken) && this.at(3, Close),
        ALT: () => {
          this.CONSUME1(Open);
          const n = this.CONSUME(CountToken) as KnitToken;
          this.CONSUME1(Close);
          this.OPTION({ GATE: () => this.at(1, W.Times), DEF: () => this.CONSUME2(Any) });
          this.ACTION(() => {
            extent = { kind: 'times', count: this.countOf(n), sense: 'plain', form: 'bracket' };
          });
        },
      },
      { ALT: () => undefined },
    ]);
    return this.ACTION((): Step => {
      const span = this.span(start);
      const inside =
        extent === null
          ? children
          : [
              {
                type: 'repeat' as const,
                form: 'bracket' as const,
                children,
                extent,
                once: [],
                ending: null,
                mark: null,
                markSpan: this.tokenSpan(open),
                span: whole,
              },
            ];
      if (into !== null) return { type: 'intoOne', children: [...inside, ...more], span, ...(into as Into) };
      return {
        type: 'repeat',
        form: 'bracket',
        children,
        extent,
        once: [],
        ending: null,
        mark: null,
        markSpan: this.tokenSpan(open),
        span,
      };
    });
  });

  intoBracketStep = this.RULE('intoBracketStep', (): Step => {
    const start = this.from();
    const before = { tokens: 0, into: false };
    this.ACTION(() => {
      before.tokens = this.intoBracket() - 1;
      before.into = this.at(1, W.In, W.Into);
    });
    this.MANY({
      GATE: () => before.tokens > 0,
      DEF: () => {
        this.CONSUME(Any);
        this.ACTION(() => {
          before.tokens -= 1;
        });
      },
    });
    const step = this.SUBRULE(this.group) as Step;
    return this.ACTION((): Step => {
      const span = this.span(start);
      if (before.into && step.type === 'repeat')
        return {
          type: 'intoOne',
          children: step.extent === null ? step.children : [step],
          into: 'stitch',
          takes: null,
          dropping: false,
          span,
        };
      return { ...step, span };
    });
  });

  /** "*k2, p2; rep from * to last 2 sts", "*k2, p2* 3 times", "*A**, B; rep from * to ** twice". */
  star = this.RULE('star', (): Repeat => {
    const start = this.from();
    const opening = this.CONSUME(Mark) as KnitToken;
    this.ACTION(() => this.openMarks.push(opening.image));
    const children = this.SUBRULE(this.sequence);
    this.ACTION(() => this.openMarks.pop());
    const once: Step[] = [];
    let extent: Extent | null = null;
    let ending: Repeat['ending'] = null;
    this.OPTION({
      GATE: () => this.at(1, Mark),
      DEF: () => {
        this.CONSUME1(Mark);
        this.OR([
          {
            GATE: () => this.extentAhead(true),
            ALT: () => {
              extent = this.SUBRULE(this.extent, { ARGS: ['bracket'] });
            },
          },
          // "*k2, kfb* (32)": nothing said behind the closing star means as often as the row holds it.
          {
            GATE: () =>
              (this.at(1, FullStop) && !this.at(2, W.Rep)) ||
              Number.isNaN(this.LA(1).startOffset) ||
              (this.at(1, Open) && this.payload(1)?.holds === 'stated'),
            ALT: () => {
              this.ACTION(() => {
                extent = { kind: 'end' };
              });
            },
          },
          {
            ALT: () => {
              this.ACTION(() => this.openMarks.push('\u0000'));
              const between = this.SUBRULE1(this.sequence);
              this.ACTION(() => {
                this.openMarks.pop();
                once.push(...between);
              });
            },
          },
        ]);
      },
    });
    this.OPTION1({
      GATE: () => this.at(1, W.Rep),
      DEF: () => {
        this.CONSUME(W.Rep);
        this.OPTION2({ GATE: () => this.at(1, W.From, W.Between), DEF: () => this.CONSUME(Any) });
        this.OPTION3({ GATE: () => this.at(1, Mark), DEF: () => this.CONSUME2(Mark) });
        this.OPTION4({
          GATE: () => this.at(1, W.To, W.And, Dash) && this.at(2, Mark),
          DEF: () => {
            this.CONSUME1(Any);
            this.CONSUME3(Mark);
          },
        });
        // "as many times as required", "as often as needed"
        this.many(41, {
          GATE: () => this.asManyAhead() || (this.inAsMany() && !this.separator()),
          DEF: () => this.consume(41, Any),
        });
        this.OPTION5({ GATE: () => this.at(1, Comma) && this.extentAfterComma(), DEF: () => this.CONSUME4(Any) });
        this.OPTION8({
          GATE: () => this.at(1, W.Until) && (turnsInside(children) || !this.extentAhead(true)),
          DEF: () => {
            this.CONSUME5(Any);
            const goal = this.SUBRULE(this.goal);
            this.ACTION(() => {
              extent = { kind: 'goal', goal };
            });
          },
        });
        this.OPTION6({
          GATE: () => extent === null && this.extentAhead(true),
          DEF: () => {
            extent = this.SUBRULE1(this.extent, { ARGS: ['from'] });
          },
        });
        this.ACTION(() => {
          extent ??= { kind: 'end' };
        });
      },
    });
    this.OPTION7({
      GATE: () => this.endingAhead(),
      DEF: () => {
        ending = this.SUBRULE(this.repeatEnding);
      },
    });
    return this.ACTION(() => ({
      type: 'repeat',
      form: 'star',
      children,
      extent,
      once,
      ending,
      mark: opening.image,
      markSpan: this.tokenSpan(opening),
      span: this.span(start),
    }));
  });
}

/** Whether a group turns or slides the work inside, so that it is several rows. */
function turnsInside(steps: readonly Step[]): boolean {
  return steps.some((step) => (step.type === 'turn' && step.not !== true) || (step.type === 'change' && step.what === 'slide'));
}
