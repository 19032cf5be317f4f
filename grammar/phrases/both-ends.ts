/**
 * One decrease or increase told for the two ends of a row: "k2tog at each end of row", "p2tog at beg and end of row".
 */
import { Any, type KnitToken, Stitch, W } from '../tokens.ts';
import type { Repeat, Step, Work } from '../tree.ts';
import { Ties } from './ties.ts';

export class BothEnds extends Ties {
  /** Tokens up to the end of the words; 0 when they are not told here. */
  private twoEnds(): number {
    const kind = this.payload(1)?.entry?.kind ?? '';
    if (!this.at(1, Stitch) || !/crease/.test(kind) || !this.at(2, W.At)) return 0;
    let ahead = 0;
    if (this.at(3, W.Each) && this.at(4, W.End)) ahead = 4;
    else if (this.at(3, W.Beg) && this.at(4, W.And) && this.at(5, W.End)) ahead = 5;
    else if (this.at(3, W.Beg) && this.at(4, W.And) && this.at(5, W.At) && this.at(6, W.End)) ahead = 6;
    if (ahead === 0) return 0;
    if (this.at(ahead + 1, W.Of) && this.at(ahead + 2, W.Row, W.Round)) ahead += 2;
    return this.separator(ahead + 1) ? ahead : 0;
  }

  protected bothEndsAhead(): boolean {
    return this.twoEnds() > 0;
  }

  protected bothEnds = this.RULE('bothEnds', (): Repeat => {
    const start = this.from();
    const left = { tokens: 0 };
    this.ACTION(() => {
      left.tokens = this.twoEnds() - 1;
    });
    const token = this.CONSUME(Any) as KnitToken;
    this.MANY({
      GATE: () => left.tokens > 0,
      DEF: () => {
        this.CONSUME1(Any);
        this.ACTION(() => {
          left.tokens -= 1;
        });
      },
    });
    return this.ACTION((): Repeat => {
      const span = this.span(start);
      const entry = token.payload?.entry;
      const n = this.countInside(token);
      const shaping: Work = { type: 'work', stitch: entry?.name ?? 'k', n, manner: [], span: this.tokenSpan(token) };
      const takes = typeof entry?.takes === 'number' ? entry.takes : (n?.values[0] ?? 1);
      const verb = entry?.face ?? 'k';
      const middle: Repeat = {
        type: 'repeat',
        form: 'run',
        verb,
        children: [{ type: 'work', stitch: verb, n: null, manner: [], span }],
        extent: { kind: 'last', count: { type: 'count', values: [takes], span } },
        once: [],
        ending: null,
        mark: null,
        markSpan: null,
        span,
      };
      const children: Step[] = [shaping, middle, shaping];
      return { type: 'repeat', form: 'bracket', children, extent: null, once: [], ending: null, mark: null, markSpan: null, span };
    });
  });
}
