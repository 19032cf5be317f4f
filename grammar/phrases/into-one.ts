/**
 * Several stitches out of one: what is worked into the next stitch, a marked one, a loop or a row below.
 *
 *     (k1, yo, k1) in next st · k1, p1, k1 all into next st · into next st work [k1, p1, k1]
 */
import {
  Any,
  Close,
  Colon,
  Comma,
  Count as CountToken,
  FullStop,
  type KnitToken,
  Mark,
  Open,
  Ordinal,
  PlainStitch,
  Semicolon,
  Slash,
  Stitch,
  W,
  Word,
} from '../tokens.ts';
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
        (this.at(1, Word) &&
          /^(double|triple|quadruple|big|large|that|one|this|single|yarn|over|yarn-over|overs|yos|yarnovers|yarn-overs|st)$/.test(
            this.image(1),
          )) ||
        (this.at(1, Stitch) && this.payload(1)?.entry?.kind === 'yarnOver'),
      DEF: () => {
        const token = this.CONSUME2(Any) as KnitToken;
        this.ACTION(() => {
          if (this.at(0, W.Each, W.Every)) each = true;
          if (
            /^(?:double|triple|quadruple|yos|yarnovers)$/.test(this.image(0)) ||
            token.payload?.entry?.kind === 'yarnOver' ||
            /over/.test(this.image(0))
          )
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

  /** Tokens between two stitches of a bare run: "k1, p1", "k1 and p1", "k1/p1", "k1, p1, and k1"; 0 when another word stands there. */
  private joined(ahead: number): number {
    if (this.at(ahead, Comma) && this.at(ahead + 1, W.And)) return 2;
    return this.at(ahead, Comma, W.And, W.Then, Slash) ? 1 : 0;
  }

  /** Single stitches one after another from a place on, and the place behind them; those after a comma may belong to what follows. */
  private singles(from: number): { readonly list: ('k' | 'p' | 'yo')[]; readonly end: number; readonly tied: boolean } {
    const list: ('k' | 'p' | 'yo')[] = [];
    let ahead = from;
    let tied = false;
    while (list.length < 12) {
      const single = this.singleAt(ahead);
      if (single === null) break;
      list.push(single);
      ahead += 1;
      const between = this.joined(ahead);
      if (between === 0 || this.singleAt(ahead + between) === null) break;
      if (!this.at(ahead, Comma) || between === 2) tied = true;
      ahead += between;
    }
    return { list, end: ahead, tied };
  }

  /**
   * How many stitches the bare run "k1, yo, k1 in next st" has from here on; 0 when none begins here. Of a longer list the
   * last stitches that go by turns belong to it: of "k1, p1, k1, yo, k1 in next st" the last three.
   */
  private bareRun(start = 1): { readonly stitches: number; readonly tied: boolean } {
    const { list: singles, end, tied } = this.singles(start);
    const none = { stitches: 0, tied: false };
    if (singles.length === 0) return none;
    const all = this.at(end, W.All) || (this.at(end, Comma) && this.at(end + 1, W.All));
    const into = end + (this.at(end, Comma, W.All) ? (this.at(end + 1, W.All) ? 2 : 1) : 0);
    if (
      !this.at(into, W.In, W.Into) ||
      !(
        this.at(into + 1, W.Next, W.Same, W.These, W.Each, W.Every) ||
        (this.at(into + 1, Word) && /^(double|that|one|triple|big|large)$/.test(this.image(into + 1))) ||
        (this.at(into + 1, CountToken) && this.at(into + 2, W.St)) ||
        (this.at(into + 1, Stitch) && this.payload(into + 1)?.entry?.kind === 'yarnOver')
      )
    )
      return none;
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
    return from === 0 ? { stitches: singles.length, tied: tied || (all && singles.length > 1) } : none;
  }

  /** "k1, yo, k1 in next st" with no bracket, or "p1 into double yo". */
  protected bareIntoAhead(): boolean {
    return (this.at(1, Stitch) && this.bareRun().stitches > 0) || this.eitherInto();
  }

  protected bareIntoOne = this.RULE('bareIntoOne', (): IntoOne => {
    const start = this.from();
    const children: Work[] = [];
    const left = { stitches: 0, bare: false, other: 0 };
    this.ACTION(() => {
      const run = this.bareRun();
      left.other = this.eitherInto() ? 3 : 0;
      left.stitches = left.other > 0 ? 1 : run.stitches;
      left.bare = run.stitches > 1 && !run.tied;
    });
    this.AT_LEAST_ONE({
      GATE: () => left.stitches > 0,
      DEF: () => {
        const child = this.SUBRULE(this.loneStitch);
        this.ACTION(() => {
          children.push(child);
          left.stitches -= 1;
        });
        this.MANY({ GATE: () => left.stitches > 0 && this.at(1, Comma, W.And, W.Then, Slash), DEF: () => this.CONSUME(Any) });
      },
    });
    // "(p1)": what the other side works in its place
    this.MANY1({
      GATE: () => left.other > 0,
      DEF: () => {
        this.CONSUME1(Any);
        this.ACTION(() => {
          left.other -= 1;
        });
      },
    });
    const into = this.SUBRULE(this.intoWords);
    return this.ACTION(
      (): IntoOne => ({ type: 'intoOne', span: this.span(start), ...into, children, ...(left.bare ? { bare: true } : {}) }),
    );
  });

  /** "k1 (p1) into double yo": knitted, or purled on the other side; one stitch either way. */
  private eitherInto(): boolean {
    return (
      this.singleAt(1) !== null &&
      this.at(2, Open) &&
      this.singleAt(3) !== null &&
      this.at(4, Close) &&
      this.at(5, W.In, W.Into) &&
      (/^(?:double|triple|big)$/.test(this.image(6)) || this.payload(6)?.entry?.kind === 'yarnOver')
    );
  }

  /**
   * "into next st work k1, p1, k1; k5", "in next st: k1, yo, k1;": the place first, then a list that a semicolon or the end closes.
   * Tokens before the list; 0 when none begins here.
   */
  private placeFirst(): number {
    if (!this.at(1, W.In, W.Into) || !this.at(2, W.Next, W.Same) || !this.at(3, W.St)) return 0;
    let ahead = 4;
    while (this.at(ahead, Comma, Colon, W.Work)) ahead += 1;
    const { list, end } = this.singles(ahead);
    return list.length > 1 && (this.at(end, Semicolon, FullStop, Close) || Number.isNaN(this.LA(end).startOffset)) ? ahead - 1 : 0;
  }

  protected placeFirstAhead(): boolean {
    return this.placeFirst() > 0;
  }

  protected placeFirstStep = this.RULE('placeFirstStep', (): IntoOne => {
    const start = this.from();
    const children: Work[] = [];
    const left = { tokens: 0, stitches: 0 };
    this.ACTION(() => {
      left.tokens = this.placeFirst();
      left.stitches = this.singles(left.tokens + 1).list.length;
    });
    this.MANY({
      GATE: () => left.tokens > 0,
      DEF: () => {
        this.CONSUME(Any);
        this.ACTION(() => {
          left.tokens -= 1;
        });
      },
    });
    this.AT_LEAST_ONE({
      GATE: () => left.stitches > 0,
      DEF: () => {
        this.MANY1({ GATE: () => this.at(1, Comma, W.And, W.Then, Slash), DEF: () => this.CONSUME1(Any) });
        const child = this.SUBRULE(this.loneStitch);
        this.ACTION(() => {
          children.push(child);
          left.stitches -= 1;
        });
      },
    });
    return this.ACTION(
      (): IntoOne => ({ type: 'intoOne', children, into: 'stitch', takes: null, dropping: false, span: this.span(start) }),
    );
  });

  /**
   * What holds for every double yarn over of the row: "working k1 and p1 into each double yo", "purling into front and back of each
   * double yrn", "knitting first and purling second loop of each double yo". Tokens up to the yarn over; 0 when it is not told.
   */
  private everyDouble(): number {
    const verb = this.at(1, W.Work) || /^(?:knitting|purling|knit|purl|k|p)$/.test(this.image(1)) || this.payload(1)?.entry?.makes === 2;
    if (!verb) return 0;
    for (let ahead = 2; ahead < 14; ahead += 1) {
      if (this.separator(ahead) || this.at(ahead, Open, Mark)) return 0;
      const entry = this.payload(ahead)?.entry;
      if (entry?.kind === 'yarnOver' && this.at(ahead, Stitch)) {
        const each = this.at(ahead - 1, W.Each, W.Every) || (/^double$/.test(this.image(ahead - 1)) && this.at(ahead - 2, W.Each, W.Every));
        const double = /^double/.test(this.image(ahead)) || /^double$/.test(this.image(ahead - 1)) || entry.name === 'yo N times';
        return each && double && this.twoFaces(ahead) ? ahead : 0;
      }
    }
    return 0;
  }

  /** Whether two stitches are told before the token: a knit and a purl, or one that makes two. */
  private twoFaces(before: number): boolean {
    let knit = false;
    let purl = false;
    for (let ahead = 1; ahead < before; ahead += 1) {
      if (this.payload(ahead)?.entry?.makes === 2 && this.payload(ahead)?.entry?.takes === 1) return true;
      if (/^(?:k ?1?|knit(?:ting)?)$/.test(this.image(ahead))) knit = true;
      if (/^(?:p ?1?|purl(?:ing)?)$/.test(this.image(ahead))) purl = true;
    }
    return knit && purl;
  }

  protected everyDoubleAhead(): boolean {
    return this.everyDouble() > 0;
  }

  protected everyDoubleStep = this.RULE('everyDoubleStep', (): IntoOne => {
    const start = this.from();
    this.SUBRULE(this.countedWords, { ARGS: [() => this.everyDouble()] });
    return this.ACTION((): IntoOne => {
      const span = this.span(start);
      const one = (stitch: string): Work => ({ type: 'work', stitch, n: null, manner: [], span });
      return {
        type: 'intoOne',
        children: [one('k'), one('p')],
        into: 'doubleYarnOver',
        takes: null,
        dropping: false,
        everywhere: true,
        span,
      };
    });
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

  protected groupAt(ahead: number): boolean {
    return this.at(ahead, Open) && this.payload(ahead)?.holds === 'group';
  }
}
