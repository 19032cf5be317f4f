/**
 * What is worked on which needle or part of a round.
 *
 *     N1: k to last 3 sts, k2tog, k1 · On each needle: · Instep: patt · Needle 3: as Needle 1
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
  Name,
  Open,
  Ordinal,
  Semicolon,
  Stitch,
  W,
  Word,
} from '../tokens.ts';
import type { NeedlePart, Step } from '../tree.ts';
import { BothEnds } from './both-ends.ts';

export const parts = /^(front|back|instep|sole|heel|top|bottom|palm|first|second|foot)$/;

export const numbered = /^(?:n|ndl|needle)(\d)$/;

export class NeedleParts extends BothEnds {
  /** Tokens of the name of a needle before its colon: "N1", "Needle 2", "2nd needle", "On needles 1 and 3", "Instep sts"; 0 when none stands here. */
  protected needleName(from = 1): number {
    let ahead = from;
    if (this.at(ahead, W.On)) ahead += 1;
    const start = ahead;
    const needle = (at: number): boolean => this.at(at, W.Needle) && !/ing$/.test(this.image(at));
    if (this.at(ahead, Word) && (numbered.test(this.image(ahead)) || (/^n$/.test(this.image(ahead)) && this.at(ahead + 1, CountToken)))) {
      while (
        this.at(ahead, Word, CountToken, W.And, Comma, Dash) &&
        !this.at(ahead, Colon) &&
        ahead < start + 6 &&
        (this.at(ahead, CountToken) ||
          numbered.test(this.image(ahead)) ||
          /^n$/.test(this.image(ahead)) ||
          (this.at(ahead, W.And, Comma, Dash) && (numbered.test(this.image(ahead + 1)) || /^n$/.test(this.image(ahead + 1)))))
      )
        ahead += 1;
    } else if (needle(ahead) && this.at(ahead + 1, CountToken)) {
      ahead += 1;
      while (
        this.at(ahead, CountToken) ||
        (this.at(ahead, W.And, Comma, Dash) && (this.at(ahead + 1, CountToken) || (needle(ahead + 1) && this.at(ahead + 2, CountToken)))) ||
        (needle(ahead) && this.at(ahead + 1, CountToken))
      )
        ahead += 1;
      if (this.at(ahead, Open) && this.at(ahead + 1, Word, W.Holder, Name) && this.at(ahead + 2, Close)) ahead += 3;
    } else if (
      (this.at(ahead, Ordinal, W.Each, W.Every, W.First, W.Next, W.Last, W.Other) || parts.test(this.image(ahead))) &&
      needle(ahead + 1)
    )
      ahead += 2;
    else if (this.at(ahead, Ordinal) && this.at(ahead + 1, W.And) && this.at(ahead + 2, Ordinal) && needle(ahead + 3)) ahead += 4;
    else if (this.at(ahead, Word, Name) && parts.test(this.image(ahead)) && !/^(first|second)$/.test(this.image(ahead)))
      ahead += this.at(ahead + 1, W.St) ? 2 : 1;
    else if (needle(ahead) && this.at(ahead + 1, Colon)) ahead += 1;
    else return 0;
    if (ahead === start) return 0;
    if (this.at(ahead, Colon)) return ahead;
    return (this.at(from, W.On) && this.at(ahead, Comma)) || (this.at(ahead, Dash) && this.at(ahead + 1, Stitch, W.Work, W.Patt, Open))
      ? ahead
      : 0;
  }

  protected needlePartAhead(): boolean {
    // "knit the sts of Needle 1 onto the same needle: 28 heel sts"
    if (this.at(0, W.Same) || /\bsame$/.test(this.image(0))) return false;
    const name = this.needleName();
    return name > 0 && !this.arrangesAfter(name + 1);
  }

  /** A bare number with "sts" or the end of a clause: the needle holds so many, nothing is worked. */
  protected arrangesAfter(ahead: number): boolean {
    return (
      this.at(ahead, CountToken) &&
      (this.at(ahead + 1, W.St, Semicolon, Comma, FullStop, Close) || Number.isNaN(this.LA(ahead + 1).startOffset))
    );
  }

  needlePart = this.RULE('needlePart', (): NeedlePart => {
    const start = this.from();
    const state = { length: 0, eaten: 0 };
    const numbers: number[] = [];
    this.ACTION(() => {
      state.length = this.needleName() - 1;
    });
    this.MANY({
      GATE: () => state.eaten < state.length,
      DEF: () => {
        const token = this.CONSUME(Any) as KnitToken;
        this.ACTION(() => {
          state.eaten += 1;
          const value = this.at(0, CountToken, Ordinal)
            ? token.payload?.values?.[0]
            : Number(numbered.exec(token.image.toLowerCase())?.[1] ?? Number.NaN);
          if (typeof value === 'number' && Number.isInteger(value)) numbers.push(value);
          else if (this.at(0, W.First)) numbers.push(1);
        });
      },
    });
    const end = this.ACTION(() => this.LA(0).startOffset + this.LA(0).image.length);
    this.CONSUME1(Any);
    const children: Step[] = [];
    const model: { like: number | null; left: number } = { like: null, left: 0 };
    this.ACTION(() => {
      [model.like, model.left] = this.likeAhead();
    });
    this.MANY2({
      GATE: () => model.left > 0,
      DEF: () => {
        this.CONSUME3(Any);
        this.ACTION(() => {
          model.left -= 1;
        });
      },
    });
    this.MANY1({
      GATE: () =>
        !this.at(1, Close) &&
        !Number.isNaN(this.LA(1).startOffset) &&
        !this.needlePartAhead() &&
        !(this.at(1, Open) && this.payload(1)?.holds === 'stated') &&
        !(this.at(1, FullStop, Semicolon) && this.partEnds()),
      DEF: () => {
        this.OR([
          { GATE: () => this.at(1, Comma, Semicolon, FullStop, W.And, W.Then), ALT: () => this.CONSUME2(Any) },
          {
            ALT: () => {
              const step = this.SUBRULE(this.item);
              this.ACTION(() => children.push(step));
            },
          },
        ]);
      },
    });
    return this.ACTION(() => {
      const needle = this.words(start, end);
      return {
        type: 'needlePart',
        needle,
        numbers,
        each: /\b(each|every|both)\b/i.test(needle),
        ...(model.like === null ? {} : { like: model.like }),
        children: children.map(wholeNeedle),
        span: this.span(start),
      };
    });
  });

  /** "same as N1", "rep Needle 1", "as on needle 2": the needle and how many tokens name it. */
  private likeAhead(): [number | null, number] {
    if (!this.at(1, W.As, W.Rep)) return [null, 0];
    let ahead = 2;
    while (this.at(ahead, W.On, W.For, W.Given) && ahead < 5) ahead += 1;
    const short = numbered.exec(this.image(ahead))?.[1];
    if (short !== undefined) return [Number(short), ahead];
    if ((this.at(ahead, W.Needle) || /^n$/.test(this.image(ahead))) && this.at(ahead + 1, CountToken))
      return [this.payload(ahead + 1)?.values?.[0] ?? null, ahead + 1];
    if (this.at(ahead, Ordinal, W.First) && this.at(ahead + 1, W.Needle)) return [this.payload(ahead)?.values?.[0] ?? 1, ahead + 1];
    return [null, 0];
  }

  private partEnds(): boolean {
    return (
      Number.isNaN(this.LA(2).startOffset) ||
      (this.at(2, CountToken) && this.at(3, W.St)) ||
      this.at(2, W.Needle, W.Row, W.Round, W.Rep, W.Next) ||
      this.needleName(2) > 0 ||
      (this.at(2, Word) && /^(next|repeat|then)$/.test(this.image(2)))
    );
  }
}

/** "N2: knit." means every stitch of the needle, and so does "N2: patt". */
function wholeNeedle(step: Step, _: number, all: readonly Step[]): Step {
  if (
    all.length !== 1 ||
    step.type !== 'work' ||
    step.n !== null ||
    step.times !== undefined ||
    (step.stitch !== 'k' && step.stitch !== 'p')
  )
    return step;
  return {
    type: 'repeat',
    form: 'run',
    verb: step.stitch,
    children: [step],
    extent: { kind: 'end' },
    once: [],
    ending: null,
    mark: null,
    markSpan: null,
    span: step.span,
  };
}
