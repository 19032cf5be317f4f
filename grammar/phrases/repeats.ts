/**
 * What is worked more than once inside a row, or all into one stitch: brackets, stars, runs.
 *
 *     [k2tog, k5] 6 times · *k2, p2; rep from * to last 2 sts · (k1, yo, k1) in next st · k to last 3 sts
 */
import {
  Any,
  Close,
  Colon,
  Comma,
  Count as CountToken,
  Dash,
  Fabric,
  FullStop,
  type KnitToken,
  Mark,
  Name,
  Open,
  Ordinal,
  PlainStitch,
  Semicolon,
  Slash,
  SlipStitch,
  Stitch,
  TimesNumber,
  W,
  Word,
} from '../tokens.ts';
import type { Count, Extent, IntoOne, Repeat, Step, Work } from '../tree.ts';
import { Charts } from './charts.ts';

type Into = Pick<IntoOne, 'into' | 'takes' | 'dropping' | 'times' | 'everywhere'>;

export class Repeats extends Charts {
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
            GATE: () => this.at(1, Comma) && this.at(2, Stitch) && this.intoAhead(3),
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

  /** A stitch by itself, with its number. */
  private loneStitch = this.RULE('loneStitch', (): Work => {
    const token = this.CONSUME(Any) as KnitToken;
    return this.ACTION(
      (): Work => ({
        type: 'work',
        stitch: token.payload?.entry?.name ?? token.image,
        n: this.countInside(token),
        manner: [],
        span: this.tokenSpan(token),
      }),
    );
  });

  protected intoAhead(from = 1): boolean {
    let ahead = from;
    if (this.at(ahead, Comma) && this.at(ahead + 1, W.All)) ahead += 1;
    if (this.at(ahead, W.All)) ahead += 1;
    return (
      this.at(ahead, W.In, W.Into) &&
      this.at(
        ahead + 1,
        W.Next,
        W.Same,
        W.These,
        W.Each,
        W.St,
        Word,
        CountToken,
        W.Marker,
        W.Centre,
        W.Double,
        W.Every,
        Stitch,
        W.Across,
        W.Last,
        W.First,
        W.Foll,
      )
    );
  }

  /** "all in next st", "into double yo, dropping second wrap", "in each of next 3 sts". */
  protected intoWords = this.RULE('intoWords', (): Into => {
    let into: IntoOne['into'] = 'stitch';
    let takes: Count | null = null;
    let times: Count | undefined;
    let dropping = false;
    let each = false;
    this.OPTION3({ GATE: () => this.at(1, Comma), DEF: () => this.CONSUME6(Any) });
    this.OPTION({ GATE: () => this.at(1, W.All), DEF: () => this.CONSUME(Any) });
    this.CONSUME1(Any);
    this.MANY({
      GATE: () =>
        (this.at(1, W.Row) && this.at(0, W.Last)) ||
        this.at(
          1,
          W.Next,
          W.Same,
          W.These,
          W.Each,
          W.Every,
          W.St,
          W.Of,
          CountToken,
          W.Marker,
          W.Centre,
          W.Foll,
          W.Last,
          W.First,
          W.Rem,
          W.Gap,
          W.Across,
        ) ||
        (this.at(1, Word) && /^(double|that|one|this|single|yarn|over|yarn-over|overs|st)$/.test(this.image(1))) ||
        (this.at(1, Stitch) && this.payload(1)?.entry?.kind === 'yarnOver'),
      DEF: () => {
        const token = this.CONSUME2(Any) as KnitToken;
        this.ACTION(() => {
          if (this.at(0, W.Each, W.Every)) each = true;
          if (/^(double)$/.test(this.image(0)) || token.payload?.entry?.kind === 'yarnOver' || /over/.test(this.image(0)))
            into = 'doubleYarnOver';
          if (this.at(0, CountToken)) {
            if (each) times = this.countOf(token);
            else takes = this.countOf(token);
          }
        });
      },
    });
    this.OPTION1({
      GATE: () => this.at(1, W.Drop) || (this.at(1, Comma) && this.at(2, W.Drop)),
      DEF: () => {
        this.OPTION2({ GATE: () => this.at(1, Comma), DEF: () => this.CONSUME3(Any) });
        this.CONSUME4(Any);
        this.ACTION(() => {
          dropping = true;
        });
        this.MANY1({ GATE: () => this.at(1, Word, W.More, W.Wrapped, Ordinal, W.St, W.Other, Stitch), DEF: () => this.CONSUME5(Any) });
      },
    });
    return this.ACTION(() => ({
      into: each && into === 'stitch' ? 'each' : into,
      takes,
      dropping,
      ...(times === undefined ? {} : { times }),
      ...(each && into === 'doubleYarnOver' ? { everywhere: true } : {}),
    }));
  });

  /** One knit, purl or yarn over, which may be part of "k1, yo, k1 in next st". */
  private singleAt(ahead: number): 'k' | 'p' | 'yo' | null {
    const { entry, values } = this.payload(ahead) ?? {};
    if (!this.at(ahead, Stitch) || entry === undefined || (values !== undefined && (values.length > 1 || values[0] !== 1))) return null;
    if (entry.kind === 'yarnOver' && entry.makes === 1) return 'yo';
    return this.at(ahead, PlainStitch) || /^[kp] tbl$/.test(entry.name) ? (entry.face ?? 'k') : null;
  }

  /**
   * How many stitches the bare run "k1, yo, k1 in next st" has from here on; 0 when none begins here. Of a longer list the
   * last stitches that go by turns belong to it: of "k1, p1, k1, yo, k1 in next st" the last three.
   */
  private bareRun(): number {
    const singles: ('k' | 'p' | 'yo')[] = [];
    let ahead = 1;
    for (; singles.length < 12; ahead += 2) {
      const single = this.singleAt(ahead);
      if (single === null) return 0;
      singles.push(single);
      if (!this.at(ahead + 1, Comma) || (this.at(ahead + 2, W.All) && this.at(ahead + 3, W.In, W.Into))) break;
    }
    const into = this.at(ahead + 1, Comma, W.All) ? (this.at(ahead + 2, W.All) ? ahead + 3 : ahead + 2) : ahead + 1;
    if (
      !this.at(into, W.In, W.Into) ||
      !(
        this.at(into + 1, W.Next, W.Same, W.These, W.Each) ||
        (this.at(into + 1, Word) && /^(double|that|one|triple)$/.test(this.image(into + 1))) ||
        (this.at(into + 1, CountToken) && this.at(into + 2, W.St)) ||
        (this.at(into + 1, Stitch) && this.payload(into + 1)?.entry?.kind === 'yarnOver')
      )
    )
      return 0;
    const last = singles.length - 1;
    const other = singles[last - 1];
    let from = last;
    while (
      from > 0 &&
      singles[from - 1] !== singles[from] &&
      (from >= last || singles[from - 1] === singles[from + 1]) &&
      (other !== 'yo' || singles[last] !== 'yo')
    )
      from -= 1;
    return from === 0 ? singles.length : 0;
  }

  /** "k1, yo, k1 in next st" with no bracket, or "p1 into double yo". */
  protected bareIntoAhead(): boolean {
    return this.at(1, Stitch) && this.bareRun() > 0;
  }

  protected bareIntoOne = this.RULE('bareIntoOne', (): IntoOne => {
    const start = this.from();
    const children: Work[] = [];
    const left = { stitches: 0, all: 0 };
    this.ACTION(() => {
      left.stitches = this.bareRun();
      left.all = left.stitches;
    });
    this.AT_LEAST_ONE({
      GATE: () => left.stitches > 0,
      DEF: () => {
        const child = this.SUBRULE(this.loneStitch);
        this.ACTION(() => {
          children.push(child);
          left.stitches -= 1;
        });
        this.OPTION({ GATE: () => left.stitches > 0 && this.at(1, Comma), DEF: () => this.CONSUME(Any) });
      },
    });
    const into = this.SUBRULE(this.intoWords);
    return this.ACTION(
      (): IntoOne => ({ type: 'intoOne', span: this.span(start), ...into, children, ...(left.all > 1 ? { bare: true } : {}) }),
    );
  });

  /** "into next st work (k1, p1, k1)", "work (k1, yo, k1) in next st", "working (p1, k1) into each double yo". */
  protected intoBracketAhead(): boolean {
    return this.intoBracket() > 0;
  }

  private intoBracket(): number {
    if (this.at(1, W.Work) || /^(?:knitting|purling)$/.test(this.image(1))) return this.groupAt(2) ? 2 : 0;
    if (!this.at(1, W.In, W.Into) || !this.at(2, W.Next, W.Same, W.These, W.Each) || !this.at(3, W.St)) return 0;
    let ahead = 4;
    while (this.at(ahead, Comma, W.Work)) ahead += 1;
    return this.groupAt(ahead) ? ahead : 0;
  }

  private groupAt(ahead: number): boolean {
    return this.at(ahead, Open) && this.payload(ahead)?.holds === 'group';
  }

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

  protected extentAfterComma(): boolean {
    return this.at(2, W.To) && this.at(3, W.End, W.Last);
  }

  protected endingAhead(): boolean {
    const ahead = this.at(1, Comma, Semicolon, FullStop) ? 2 : 1;
    if (this.at(ahead, W.Omitting)) return true;
    if (this.at(ahead, W.Ending, W.End))
      return (
        this.at(ahead + 1, Stitch, W.LastRep, W.With, Open, W.Work, Mark, W.Last) &&
        !(this.at(ahead + 1, W.With) && this.at(ahead + 2, W.Rs, W.Ws))
      );
    return false;
  }

  /** "ending k3", "end with k2", "ending last rep k1 instead of k3", "omitting yo at end of last rep". */
  protected repeatEnding = this.RULE('repeatEnding', (): NonNullable<Repeat['ending']> => {
    const start = this.from();
    let kind: NonNullable<Repeat['ending']>['kind'] = 'then';
    this.OPTION({ GATE: () => this.at(1, Comma, Semicolon, FullStop), DEF: () => this.CONSUME(Any) });
    this.CONSUME1(Any);
    this.ACTION(() => {
      if (this.at(0, W.Omitting)) kind = 'omitting';
    });
    this.MANY({
      GATE: () => this.at(1, W.LastRep, W.With, W.As, W.Last, W.Work, Word) && !this.at(1, Stitch),
      DEF: () => {
        this.CONSUME2(Any);
        this.ACTION(() => {
          if (this.at(0, W.LastRep)) kind = 'lastRepeat';
        });
      },
    });
    const children: Step[] = [];
    const first = this.SUBRULE(this.item);
    this.ACTION(() => children.push(first));
    this.MANY1({
      GATE: () => (this.at(1, Comma) && this.at(2, Stitch, Open, Mark)) || this.at(1, Stitch),
      DEF: () => {
        this.OPTION1({ GATE: () => this.at(1, Comma), DEF: () => this.CONSUME3(Any) });
        const next = this.SUBRULE1(this.item);
        this.ACTION(() => children.push(next));
      },
    });
    this.OPTION2({
      GATE: () => this.at(1, W.InsteadOf) || (this.at(1, W.At) && this.at(2, W.End)),
      DEF: () => {
        this.MANY2({
          GATE: () => this.at(1, W.InsteadOf, W.At, W.End, W.Of, W.LastRep, Stitch, Word, W.Last),
          DEF: () => this.CONSUME4(Any),
        });
      },
    });
    return this.ACTION(() => ({ kind, children, span: this.span(start) }));
  });

  protected runAhead(): boolean {
    if (this.at(1, PlainStitch, SlipStitch) && this.payload(1)?.values === undefined)
      return this.runExtent(2) || (this.at(2, W.Across) && this.runExtent(3));
    if (this.fabricAlone()) return true;
    if (this.at(1, W.Work) && this.image(1) === 'work across' && this.at(2, Comma, FullStop, Semicolon)) return true;
    if (this.at(1, W.Work, W.Patt, W.Rib, Fabric, W.Cont)) {
      if (this.at(1, W.Work) && this.at(2, W.Across) && this.at(3, W.These, Word) && this.image(3) !== 'all') return true;
      for (let ahead = 2; ahead < 6; ahead += 1) {
        if (this.runExtent(ahead)) return true;
        if (this.at(ahead, CountToken))
          return (
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
    if (this.at(ahead, W.Across, W.Around)) return !this.at(ahead + 1, W.To, W.Until);
    if (this.at(ahead, W.All)) return this.at(ahead + 1, CountToken, W.St, W.Rem);
    if (this.at(ahead, W.Rem) && this.at(ahead + 1, W.St)) return true;
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

  /** "k to last 3 sts", "p across", "patt to end", "rib 12", "work in patt over next 14 sts", "k all 81 sts". */
  protected run = this.RULE('run', (): Repeat => {
    const start = this.from();
    const verb = this.CONSUME(Any) as KnitToken;
    this.MANY({
      GATE: () =>
        !this.runExtent(1) &&
        !this.at(1, CountToken) &&
        this.at(1, W.Patt, W.In, W.Rib, Fabric, W.As, W.Set, Word, Name, W.Next, W.Across, W.Keep, W.Straight, W.St),
      DEF: () => this.CONSUME1(Any),
    });
    let extent: Extent = { kind: 'end' };
    this.OR([
      {
        GATE: () =>
          (this.at(1, W.Across) && this.at(2, W.All, CountToken, W.These)) ||
          this.at(1, W.All, CountToken) ||
          (this.at(1, W.Rem) && this.at(2, W.St)),
        ALT: () => {
          const state: { all: boolean; n: KnitToken | null } = { all: false, n: null };
          this.MANY1({
            GATE: () =>
              (this.at(1, W.Across, W.All, W.Rem, W.These, W.Next) && state.n === null) || (this.at(1, CountToken) && state.n === null),
            DEF: () => {
              const token = this.CONSUME2(Any) as KnitToken;
              this.ACTION(() => {
                if (this.at(0, W.All, W.Rem)) state.all = true;
                if (this.at(0, CountToken)) state.n = token;
              });
            },
          });
          this.MANY2({
            GATE: () => (this.at(1, W.St) && !this.at(0, W.St)) || (this.at(1, Word, W.Other, W.Rem) && this.at(2, W.St)),
            DEF: () => this.CONSUME3(Any),
          });
          this.OPTION({ GATE: () => this.at(1, W.For, W.Of) && this.describes(2), DEF: () => this.SUBRULE(this.description) });
          this.ACTION(() => {
            extent =
              state.n === null
                ? { kind: 'end' }
                : { kind: 'over', count: { ...this.countOf(state.n), ...(state.all ? { all: true } : {}) } };
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
      if (this.at(0, W.Bor) || /^to bor$/.test(this.image(0)))
        extent = { kind: 'place', place: 'marker', which: 'beginning', side: 'at', n: null };
      const name =
        verb.payload?.entry?.name ??
        (verb.tokenType === Fabric
          ? (verb.payload?.fabric ?? 'patt')
          : verb.tokenType === W.Rib
            ? 'rib'
            : verb.tokenType === W.Patt
              ? 'patt'
              : 'work');
      const span = this.span(start);
      const child: Work = { type: 'work', stitch: verb.payload?.entry?.name ?? 'work', n: null, manner: [], span: this.tokenSpan(verb) };
      return {
        type: 'repeat',
        form: 'run',
        verb: name,
        children: [child],
        extent,
        once: [],
        ending: null,
        mark: null,
        markSpan: null,
        span,
      };
    });
  });
}

/** Whether a group turns or slides the work inside, so that it is several rows. */
function turnsInside(steps: readonly Step[]): boolean {
  return steps.some((step) => (step.type === 'turn' && step.not !== true) || (step.type === 'change' && step.what === 'slide'));
}
