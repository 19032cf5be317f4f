/**
 * Several stitches out of one: what is worked into the next stitch, a marked one, a loop or a row below.
 *
 *     (k1, yo, k1) in next st · k1, p1, k1 all into next st · into next st work [k1, p1, k1]
 */
import { Any, Comma, Count as CountToken, type KnitToken, Open, Ordinal, PlainStitch, Stitch, W, Word } from '../tokens.ts';
import type { Count, IntoOne, Work } from '../tree.ts';
import { Charts } from './charts.ts';

export type Into = Pick<IntoOne, 'into' | 'takes' | 'dropping' | 'times' | 'everywhere'>;

export class IntoOneStitch extends Charts {
  /** A stitch by itself, with its number. */
  protected loneStitch = this.RULE('loneStitch', (): Work => {
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

  protected intoBracket(): number {
    if (this.at(1, W.Work) || /^(?:knitting|purling)$/.test(this.image(1))) return this.groupAt(2) ? 2 : 0;
    if (!this.at(1, W.In, W.Into) || !this.at(2, W.Next, W.Same, W.These, W.Each) || !this.at(3, W.St)) return 0;
    let ahead = 4;
    while (this.at(ahead, Comma, W.Work)) ahead += 1;
    return this.groupAt(ahead) ? ahead : 0;
  }

  private groupAt(ahead: number): boolean {
    return this.at(ahead, Open) && this.payload(ahead)?.holds === 'group';
  }
}
