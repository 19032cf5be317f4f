/**
 * Increases and decreases spread over a row, told by their number or by the count they come to.
 *
 *     inc 6 sts evenly across last row · dec to 90 sts · inc 1 st at each end of last row
 */
import { Any, Count as CountToken, type KnitToken, Ordinal, PlainStitch, W, Word } from '../tokens.ts';
import type { Evenly } from '../tree.ts';
import { Holding } from './holding.ts';

export class SpreadOver extends Holding {
  /** "at each end of last row": no row of its own, so only the net of the row just worked. */
  protected endOfLastRow(from: number): boolean {
    if (!this.at(from, W.At, W.Each)) return false;
    for (let ahead = from + 1; ahead < from + 7; ahead += 1) {
      if (this.at(ahead, W.Last)) return this.at(ahead + 1, W.Row, W.Round, W.Ws, W.Rs);
      if (!this.at(ahead, W.Each, W.End, W.Edge, W.Of, W.On, W.Beg, W.And, Word)) return false;
    }
    return false;
  }

  protected evenlyAhead(): boolean {
    if (!this.at(1, W.Inc, W.Dec)) return false;
    if (this.everyNth() || this.inMiddle()) return true;
    const to = this.at(2, W.Evenly) ? 3 : 2;
    const number = this.at(to, W.To) ? to + 1 : to;
    if (!this.at(number, CountToken)) return false;
    const stitch = this.at(number + 1, W.St) ? number + 2 : number + 1;
    if (this.at(to, W.To)) return !this.at(stitch, W.At);
    // "dec 40 sts evenly on rnd 20, then on rnd 32": rounds of a count that is kept elsewhere
    if (this.at(stitch, W.Evenly) && this.at(stitch + 1, W.On) && this.at(stitch + 2, W.Round, W.Row) && this.at(stitch + 3, CountToken))
      return false;
    if (this.at(stitch, W.Evenly)) return true;
    if (this.endOfLastRow(stitch)) return true;
    // "k 30 from back holder inc 1 at centre": told of the stitches just worked
    if (this.at(stitch, W.At, W.In) && this.middleAt(stitch + 1) && this.separator(stitch + 2) && this.behindWord()) return true;
    if (this.at(stitch, W.At, W.In) && this.middleAt(stitch + 1))
      return this.at(stitch + 2, W.Of) && this.at(stitch + 3, W.Last, W.Row, W.Round, W.Next, W.These);
    if (this.at(stitch, W.On, W.Across, W.In) && this.at(stitch + 1, W.Last, W.First, W.Row, W.Round, W.Next)) return true;
    return this.at(number + 1, W.St) && this.separator(stitch);
  }

  private behindWord(): boolean {
    return /[a-z]\s+$/i.test(this.text.slice(Math.max(0, this.from() - 3), this.from()));
  }

  /** "Purl, inc once in centre st": one word, behind a row that is plain. */
  private inMiddle(): boolean {
    return this.at(1, W.Inc) && /\bin(?:to)? (?:the )?(?:centre|center|middle)\b/.test(this.image(1));
  }

  /** "k across 37 sts from holder, dec 1 st in centre, …": among the steps of a row. */
  protected inMiddleAhead(): boolean {
    if (!this.at(1, W.Inc, W.Dec) || !this.at(2, CountToken)) return false;
    const stitch = this.at(3, W.St) ? 4 : 3;
    return this.at(stitch, W.At, W.In) && this.middleAt(stitch + 1) && this.separator(stitch + 2);
  }

  private middleAt(ahead: number): boolean {
    return this.at(ahead, W.Centre) || /^middle$/.test(this.image(ahead));
  }

  /** "in centre of last row", "at the middle of the last row": the net of the row just worked. */
  protected centreOfLastRow(from: number): boolean {
    return this.at(from, W.At, W.In) && this.middleAt(from + 1) && this.at(from + 2, W.Of) && this.at(from + 3, W.Last);
  }

  /** "inc in every 10th st": as many as the row has tens of stitches. */
  private everyNth(): boolean {
    return this.at(1, W.Inc) && this.at(2, W.In, W.Into) && this.at(3, W.Every) && this.at(4, Ordinal, W.Alt) && this.at(5, W.St);
  }

  /** "inc 6 sts evenly across last row", "dec to 90 sts". */
  override evenlyStep = this.RULE('evenlyStep', (): Evenly => {
    const start = this.from();
    const nth = this.ACTION(() => (this.everyNth() ? (this.payload(4)?.values ?? [2]) : null));
    const head = this.CONSUME(Any) as KnitToken;
    this.OPTION1({ GATE: () => this.at(1, W.Evenly) && this.at(2, W.To), DEF: () => this.CONSUME3(Any) });
    const to = this.OPTION({ GATE: () => this.at(1, W.To), DEF: () => this.CONSUME1(Any) });
    const count = this.OPTION2({ GATE: () => this.at(1, CountToken), DEF: () => this.SUBRULE(this.count) }) ?? {
      type: 'count' as const,
      values: [1],
      span: this.ACTION(() => this.tokenSpan(head)),
    };
    this.many(11, {
      GATE: () => nth !== null && this.at(1, W.In, W.Into, W.Every, Ordinal, W.Alt),
      DEF: () => this.consume(11, Any),
    });
    let onLastRow = false;
    this.MANY({
      GATE: () =>
        // "evenly across the purl section"
        (this.at(1, PlainStitch) &&
          this.payload(1)?.values === undefined &&
          this.at(0, W.Evenly, W.Across, W.In, W.On) &&
          (this.at(2, W.St, W.Patt) || /^(?:section|part|panel|portion|column|rib|bit)s?$/.test(this.image(2)))) ||
        (this.at(
          1,
          W.St,
          W.Evenly,
          W.Across,
          W.Around,
          W.On,
          W.At,
          W.Centre,
          W.Each,
          W.End,
          W.Edge,
          W.Beg,
          W.Last,
          W.First,
          W.Row,
          W.Round,
          W.Of,
          W.Next,
          W.In,
          W.Rib,
          W.These,
          W.Ws,
          W.Rs,
          W.All,
          Word,
        ) &&
          !(
            this.at(1, Word) &&
            !/^(along|spaced|over|repeat|middle)/.test(this.image(1)) &&
            !this.at(2, W.Edge) &&
            !(this.at(0, PlainStitch) && /^(?:section|part|panel|portion|column|bit)s?$/.test(this.image(1)))
          )),
      DEF: () => {
        this.CONSUME2(Any);
        this.ACTION(() => {
          if (this.at(0, W.Last) && this.at(1, W.Row, W.Round, W.Ws, W.Rs)) onLastRow = true;
          if (/last (row|rnd|ws|rs)/.test(this.image(0))) onLastRow = true;
        });
      },
    });
    return this.ACTION(() => {
      if (/\bon (?:the )?last (?:row|rnd|round)\b[^.;]*$/i.test(this.text.slice(Math.max(0, start - 60), start))) onLastRow = true;
      // "1 st at each end of last row": both ends
      const twice = onLastRow && /\b(?:each|both) (?:ends?|sides?|edges?)\b|beg and end/i.test(this.words(start, this.LA(0).startOffset));
      const net = twice ? { ...count, values: count.values.map((value) => (value === null ? null : value * 2)) } : count;
      return {
        type: 'evenly',
        change: to ? 'to' : head.tokenType === W.Inc ? 'inc' : 'dec',
        count: net,
        onLastRow,
        ...(nth === null ? {} : { inEvery: nth }),
        ...(/\b(?:next|foll|following) (?:(?:rs|ws) )?(?:row|rnd|round)\b/i.test(
          this.words(start, this.LA(0).startOffset + this.LA(0).image.length),
        )
          ? { onNextRow: true }
          : {}),
        span: this.span(start),
      };
    });
  });
}
