/**
 * Words that carry on a description and instruct nothing.
 *
 *     for left front · along the side of the flap · of the round
 */
import { Any, Count as CountToken, W, Word } from '../tokens.ts';
import { Extents } from './extents.ts';

export class Descriptions extends Extents {
  /** Words that describe and do not instruct follow: "for left front", "of the flap". */
  protected describes(ahead: number): boolean {
    return this.at(
      ahead,
      Word,
      W.Each,
      W.Rs,
      W.Ws,
      W.Other,
      W.First,
      W.Same,
      W.Centre,
      W.Needle,
      W.Yarn,
      W.Holder,
      W.Patt,
      W.Row,
      W.Round,
      W.Last,
      W.Next,
      W.Edge,
      W.Beg,
      W.End,
      W.Every,
      W.Marker,
      W.Bor,
      W.Gap,
      W.CastOn,
      W.BindOff,
      W.Rem,
      W.These,
      W.All,
    );
  }

  /** "for left front", "along the side of the flap", "of the round": up to the next separator or step. */
  description = this.RULE('description', (): string => {
    const start = this.from();
    this.CONSUME(Any);
    this.MANY({
      GATE: () =>
        (this.describes(1) || this.at(1, W.Of, W.In, W.On, W.At, W.To, W.And, W.For, W.From, W.With, W.Double, W.St, W.Work)) &&
        !(this.at(1, W.And) && !this.describes(2)) &&
        !(this.at(1, W.And) && this.at(2, Word) && /^(turn|slip|place|join)/.test(this.image(2))) &&
        !(this.at(1, W.Work) && this.at(2, CountToken, W.Each, W.Across)),
      DEF: () => this.CONSUME1(Any),
    });
    return this.ACTION(() => this.words(start, this.LA(0).startOffset + this.LA(0).image.length));
  });
}
