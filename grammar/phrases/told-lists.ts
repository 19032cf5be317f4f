import {
  Any,
  Close,
  Comma,
  Count as CountToken,
  FullStop,
  type KnitToken,
  Mark,
  Open,
  PlainStitch,
  Semicolon,
  Stitch,
  W,
  Word,
} from '../tokens.ts';
import type { Extent, Repeat, Work } from '../tree.ts';
import { ToldCables } from './told-cables.ts';

export class ToldLists extends ToldCables {
  /** "knit the knits and purl the purls", "k the k sts and p the p sts". */
  protected asTheyAppearAhead(): boolean {
    if (this.at(1, Stitch) && this.payload(1)?.entry?.name === 'work sts as they appear') return true;
    if (!this.at(1, PlainStitch) || this.payload(1)?.values !== undefined) return false;
    const first = this.at(2, W.All) ? 3 : 2;
    const knits =
      this.at(first, W.Face) || (this.at(first, PlainStitch) && this.payload(first)?.values === undefined && this.at(first + 1, W.St));
    if (!knits) return false;
    let ahead = first + (this.at(first, W.Face) ? 1 : 2);
    while (this.at(ahead, W.And, Comma)) ahead += 1;
    return this.at(ahead, PlainStitch);
  }

  protected asTheyAppear = this.RULE('asTheyAppear', (): Repeat => {
    const start = this.from();
    const verbs = { seen: 0, named: 0 };
    const head = this.CONSUME(Any) as KnitToken;
    const told = this.ACTION(() => head.tokenType !== PlainStitch);
    this.MANY({
      GATE: () =>
        !told && verbs.named < 2 && this.at(1, PlainStitch, W.Face, W.And, Comma, W.All, W.St) && !(this.at(1, Comma) && verbs.named === 0),
      DEF: () => {
        this.CONSUME1(Any);
        this.ACTION(() => {
          if (this.at(0, W.Face) || (this.at(0, W.St) && this.at(-1, PlainStitch))) verbs.named += 1;
        });
      },
    });
    this.MANY1({
      GATE: () => (this.at(1, W.As) && this.at(2, W.Set, Word)) || (this.at(0, W.As) && this.at(1, W.Set)),
      DEF: () => this.CONSUME2(Any),
    });
    const words = this.ACTION(() => this.span(start));
    let extent: Extent = { kind: 'end' };
    this.OPTION({
      GATE: () => this.extentAhead(),
      DEF: () => {
        extent = this.SUBRULE(this.extent, { ARGS: ['bracket'] });
      },
    });
    return this.ACTION((): Repeat => {
      const child: Work = { type: 'work', stitch: 'work sts as they appear', n: null, manner: [], span: words };
      return {
        type: 'repeat',
        form: 'run',
        verb: 'as they appear',
        children: [child],
        extent,
        once: [],
        ending: null,
        mark: null,
        markSpan: null,
        span: this.span(start),
      };
    });
  });

  /** "to end", "around", "rep to end" behind a list that has neither bracket nor star. */
  protected looseExtentAhead(): boolean {
    // "k2, p2 and so on to last 2 sts"
    if (this.at(1, W.Alt) && this.at(2, W.To, W.Across, W.Around)) return this.at(2, W.Across, W.Around) || this.at(3, W.End, W.Last);
    if (this.at(1, W.Etc)) return this.at(2, W.To, W.Across, W.Around) && this.at(3, W.End, W.Last);
    if (this.at(1, W.Rep)) {
      if (this.at(2, W.From) && this.at(3, W.Beg)) return true;
      return this.at(2, W.Across, W.Around) || (this.at(2, W.To) && this.at(3, W.End, W.Last, W.Marker, W.Bor));
    }
    if (!this.at(1, W.To, W.Across, W.Around, W.Until)) return false;
    if (this.at(1, W.Until) && !(this.at(2, W.Last) || (this.at(2, CountToken) && this.at(3, W.St) && this.at(4, W.Rem)))) return false;
    if (this.at(1, W.Across, W.Around)) return this.separator(2) || Number.isNaN(this.LA(2).startOffset);
    return this.extentAhead();
  }

  protected looseExtent = this.RULE('looseExtent', (): Repeat => {
    const start = this.from();
    let rep = false;
    let extent: Extent = { kind: 'end' };
    this.OR([
      {
        GATE: () => this.at(1, W.Rep, W.Etc, W.Alt),
        ALT: () => {
          this.CONSUME(Any);
          this.ACTION(() => {
            rep = true;
          });
          this.MANY({
            GATE: () =>
              this.at(1, W.From, W.Beg) ||
              (this.at(1, W.Of) && this.at(2, W.Row, W.Round)) ||
              (this.at(0, W.Of) && this.at(1, W.Row, W.Round)),
            DEF: () => this.CONSUME1(Any),
          });
          this.OPTION1({
            GATE: () => this.extentAhead(),
            DEF: () => {
              extent = this.SUBRULE(this.extent, { ARGS: ['from'] });
            },
          });
        },
      },
      {
        ALT: () => {
          extent = this.SUBRULE1(this.extent, { ARGS: ['from'] });
        },
      },
    ]);
    return this.ACTION(
      (): Repeat => ({
        type: 'repeat',
        form: 'list',
        ...(rep ? { repeats: 'all' as const, said: true } : {}),
        children: [],
        extent,
        once: [],
        ending: null,
        mark: null,
        markSpan: null,
        span: this.span(start),
      }),
    );
  });

  /** "work bracketed sts 3 times", "rep bet [ ] 3 times", "rep instructions in brackets twice". */
  protected bracketAgainAhead(): boolean {
    if (!this.at(1, W.Work, W.Rep)) return false;
    for (let ahead = 2; ahead < 9; ahead += 1) {
      if (
        /^(?:bracketed|brackets?|parentheses|parenthesis)$/.test(this.image(ahead)) ||
        (this.at(ahead, Open) && this.at(ahead + 1, Close))
      )
        return true;
      if (this.separator(ahead) || this.at(ahead, Stitch, Mark) || (this.at(ahead, Open) && !this.at(ahead + 1, Close))) return false;
    }
    return false;
  }

  protected bracketAgain = this.RULE('bracketAgain', (): Repeat => {
    const start = this.from();
    this.CONSUME(Any);
    this.MANY({
      GATE: () => !this.extentAhead() && !this.at(1, Comma, Semicolon, FullStop, Stitch) && !Number.isNaN(this.LA(1).startOffset),
      DEF: () => this.CONSUME1(Any),
    });
    let extent: Extent | null = null;
    this.OPTION({
      GATE: () => this.extentAhead(),
      DEF: () => {
        extent = this.SUBRULE(this.extent, { ARGS: ['bracket'] });
      },
    });
    return this.ACTION(
      (): Repeat => ({
        type: 'repeat',
        form: 'bracket',
        children: [],
        extent,
        once: [],
        ending: null,
        mark: null,
        markSpan: null,
        span: this.span(start),
      }),
    );
  });
}
