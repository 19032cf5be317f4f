/**
 * How a star repeat ends, and how often it is worked where no number says so.
 *
 *     ending k3 · end with k2 · ending last rep k1 instead of k3 · omitting yo at end of last rep · as many times as required
 */
import { Any, Comma, FullStop, Mark, Open, Semicolon, Stitch, W, Word } from '../tokens.ts';
import type { Repeat, Step } from '../tree.ts';
import { WorkedTo } from './worked-to.ts';

export class RepeatEndings extends WorkedTo {
  protected asManyAhead(): boolean {
    return this.at(1, W.As) && /^(?:many|often)$/.test(this.image(2));
  }

  /** Inside "as many times as required". */
  protected inAsMany(): boolean {
    for (let back = 0; back > -5; back -= 1) if (this.at(back, W.As) && /^(?:many|often)$/.test(this.image(back + 1))) return true;
    return false;
  }

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
      GATE: () => this.at(1, W.InsteadOf) || (this.at(1, Comma) && this.at(2, W.InsteadOf)) || (this.at(1, W.At) && this.at(2, W.End)),
      DEF: () => {
        this.option(51, { GATE: () => this.at(1, Comma), DEF: () => this.consume(51, Any) });
        this.MANY2({
          GATE: () => this.at(1, W.InsteadOf, W.At, W.End, W.Of, W.LastRep, Stitch, Word, W.Last),
          DEF: () => this.CONSUME4(Any),
        });
      },
    });
    return this.ACTION(() => ({ kind, children, span: this.span(start) }));
  });
}
