/**
 * Stitches cast on.
 *
 *     cast on 98 [110: 122] sts · CO 20 sts onto left needle · casting on 2 sts over those cast off
 */
import { Any, Close, Colon, Count as CountToken, Dash, Equals, type KnitToken, Open, Stitch, W, Word } from '../tokens.ts';
import type { CastOn, Count } from '../tree.ts';
import { TakingUp } from './taking-up.ts';

const needleNumbers: Readonly<Record<string, number>> = { two: 2, three: 3, four: 4, '2': 2, '3': 3, '4': 4 };

export class Casting extends TakingUp {
  protected castOnAhead(): boolean {
    return this.at(1, W.CastOn) && (this.at(2, CountToken) || this.at(3, CountToken));
  }

  /** "cast on 98 sts", "CO 20 [22, 24] sts onto left needle with the cable method", "casting on 2 sts over those cast off". */
  override castOnStep = this.RULE('castOnStep', (): CastOn => {
    const start = this.from();
    this.CONSUME(W.CastOn);
    this.OPTION({ GATE: () => !this.at(1, CountToken), DEF: () => this.CONSUME(Any) });
    const count = this.SUBRULE(this.count);
    const perNeedle: { count: Count | null } = { count: null };
    const tail = this.ACTION(() => this.from());
    this.MANY({
      GATE: () =>
        !this.separator() &&
        !this.at(1, Dash) &&
        !(this.at(1, W.And) && !this.at(2, W.CastOn, CountToken, Word)) &&
        !(this.at(1, W.And) && this.at(2, Word) && /^(knit|turn|join|place|work)/.test(this.image(2))) &&
        !(this.at(1, Open) && ((this.payload(1)?.holds !== 'stated' && this.payload(1)?.holds !== 'remark') || this.totalInBracket())) &&
        !this.at(1, W.Turn, Stitch, Equals) &&
        !this.at(1, W.Work),
      DEF: () =>
        this.OR([
          {
            GATE: () => this.at(1, Open),
            ALT: () => {
              const bracket = this.SUBRULE(this.stitchesPerNeedle);
              this.ACTION(() => {
                perNeedle.count = bracket;
              });
            },
          },
          {
            ALT: () => {
              const token = this.CONSUME1(Any) as KnitToken;
              // "20 sts: 10 loops on each of two needles"
              this.ACTION(() => {
                if (this.at(0, CountToken) && this.at(-1, Colon)) perNeedle.count = this.countOf(token);
              });
            },
          },
        ]),
    });
    return this.ACTION(() => {
      const words = this.words(tail, this.LA(0).startOffset + this.LA(0).image.length).toLowerCase();
      const method =
        /(?:with|using|by)(?: the| a| an)? ([a-z\- ]*?)(?: method| cast-on| cast on)\b/.exec(words)?.[1] ??
        /\b(long-tail|cable|knitted|backward[- ]loop|provisional|tubular|thumb|stretchy)\b/.exec(words)?.[1] ??
        null;
      const each = /\b(?:on|onto|to) each\b(?! end)|\bper needle\b/.test(words);
      // "10 sts on each of two needles", "onto each needle": a cast-on over two tips unless another number is told
      const needles =
        each && perNeedle.count === null
          ? (needleNumbers[/\beach of (?:the |your )?(two|three|four|2|3|4)\b/.exec(words)?.[1] ?? 'two'] ?? 2)
          : 1;
      const total: Count =
        needles === 1 ? count : { ...count, values: count.values.map((value) => (value === null ? null : value * needles)) };
      const where = /onto left|left needle|lh needle/.test(words)
        ? 'start'
        : /\bat (the )?end\b/.test(words) ||
            /\bat (?:the )?end of (?:the )?(?:last|this|same|previous|row|rnd)[a-z ]*,?\s*$/i.test(
              this.text.slice(Math.max(0, start - 60), start),
            )
          ? 'end'
          : 'here';
      const overGaps =
        /\b(?:over|above|across) (?:the |each |each of the |those |these )*(?:gaps?|cast|bound|sts? (?:cast|bound)|\d+ (?:sts )?(?:cast|bound)|buttonholes?|one|cast-off|bound-off|space|pocket gap)/.test(
          words,
        ) ||
        /\b(?:in place of|to replace) (?:the |those |each |these )*(?:\d+ )?(?:sts? |stitches )?(?:cast|bound)|\bwhere (?:\S+ )?(?:sts? |stitches )?(?:was|were) (?:cast|bound) off|\babove (?:it|them)\b/.test(
          words,
        ) ||
        /\bover (?:those|each)\b/.test(words);
      return {
        type: 'castOn',
        count: total,
        where,
        ...(overGaps ? { overGaps: true } : {}),
        method,
        provisional: /provisional/.test(`${words} ${this.text.slice(Math.max(0, start - 60), start).toLowerCase()}`),
        perNeedle: perNeedle.count ?? (each ? count : null),
        span: this.span(start),
      };
    });
  });

  /** "(20 sts in total)": a count of all, not of one needle. */
  private totalInBracket(): boolean {
    for (let ahead = 2; ahead < 12; ahead += 1) {
      if (this.at(ahead, Close)) return false;
      if (this.at(ahead, W.InAll) || /^(total|altogether)$/.test(this.image(ahead))) return true;
    }
    return false;
  }

  private stitchesPerNeedle = this.RULE('stitchesPerNeedle', (): Count | null => {
    let count: Count | null = null;
    this.CONSUME(Open);
    this.MANY({
      GATE: () => !this.at(1, Close),
      DEF: () => {
        const token = this.CONSUME(Any) as KnitToken;
        this.ACTION(() => {
          if (this.at(0, CountToken) && count === null) count = this.countOf(token);
        });
      },
    });
    this.CONSUME(Close);
    return count;
  });
}
