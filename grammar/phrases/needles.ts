/**
 * Needles and parts of a round: how the stitches lie, what is worked on which needle, which stitches alone are worked.
 *
 *     N1: k to last 3 sts, k2tog, k1 · On each needle: · Instep: patt · Divide sts over 3 dpns (15-30-15)
 *     Work back and forth on these 32 sts only · Move BOR 2 sts to the left
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
  PlainStitch,
  Semicolon,
  Stitch,
  W,
  Word,
} from '../tokens.ts';
import type { Arrange, Count, Join, Marker, NeedlePart, Only, Step } from '../tree.ts';
import { Runs } from './runs.ts';

const parts = /^(front|back|instep|sole|heel|top|bottom|palm|first|second|foot)$/;
/** Parts that are worked flat on some of the stitches. */
const segments = /^(heel|flap|thumb|toe|front|back|instep|tab|tip|earflap|tongue|panel)$/;
const spread = /^(divide|distribute|arrange|rearrange|redistribute|spread|split|dividing|distributing|arranging|slide)$/;
const numbered = /^(?:n|ndl|needle)(\d)$/;

export class Needles extends Runs {
  /** Tokens of the name of a needle before its colon: "N1", "Needle 2", "2nd needle", "On needles 1 and 3", "Instep sts"; 0 when none stands here. */
  private needleName(from = 1): number {
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
  private arrangesAfter(ahead: number): boolean {
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

  /** "Divide sts evenly over 4 dpns (16 sts per needle)", "Arrange sts on 3 needles (15-30-15)", "N1: 16; N2: 32; N3: 16". */
  protected arrangeAhead(): boolean {
    const name = this.needleName();
    if (name > 0) return this.arrangesAfter(name + 1);
    if (this.at(1, W.Place) && !this.ontoTwoAhead()) return !/^(slide|set aside)/.test(this.image(1)) && this.onNeedle();
    if (this.ontoTwoAhead()) return true;
    if (!this.at(1, Word, W.Place) || !spread.test(this.image(1))) return false;
    for (let ahead = 2; ahead < 20; ahead += 1) {
      if (Number.isNaN(this.LA(ahead).startOffset) || this.at(ahead, FullStop, Semicolon)) return false;
      if (this.at(ahead, W.Needle) || numbered.test(this.image(ahead)) || (/^n$/.test(this.image(ahead)) && this.at(ahead + 1, CountToken)))
        return !this.at(1, W.Place) || this.at(ahead - 1, W.Each, Word);
    }
    return false;
  }

  /** "slip first 8 sts to one needle and the other 8 sts to a second needle". */
  private ontoTwoAhead(): boolean {
    if (!this.at(1, Word, W.Place, Stitch)) return false;
    return /^(?:slip|sl|place|put|transfer|arrange)\s+(?:the\s+)?(?:first\s+|next\s+)?[\d ([\]),:/–-]+\s*(?:sts|stitches)\s+(?:on|onto|to)\s+(?:one|a|another|the first|first)\s+(?:dpn|needle)s?,?\s+and\s+(?:the\s+)?(?:other|next|remaining|rem|last|second)\b[^.;]*\bneedle/i.test(
      this.text.slice(this.from(), this.from() + 160),
    );
  }

  /** "place first 30 sts on needle 1". */
  private onNeedle(): boolean {
    for (let ahead = 2; ahead < 9; ahead += 1) {
      if (this.separator(ahead) || this.at(ahead, W.Holder)) return false;
      if (
        this.at(ahead, W.On) &&
        (numbered.test(this.image(ahead + 1)) ||
          (this.at(ahead + 1, W.Needle) && this.at(ahead + 2, CountToken)) ||
          (this.at(ahead + 1, W.Each) && this.at(ahead + 2, W.Of) && this.at(ahead + 3, CountToken)))
      )
        return true;
    }
    return false;
  }

  arrangeStep = this.RULE('arrangeStep', (): Arrange => {
    const start = this.from();
    const found: { name: string | null; count: Count }[] = [];
    const state: { needles: Count | null; perNeedle: Count | null; name: string | null; depth: number; pending: Count | null } = {
      needles: null,
      perNeedle: null,
      name: null,
      depth: 0,
      pending: null,
    };
    const two = { both: false };
    this.ACTION(() => {
      two.both = this.ontoTwoAhead();
    });
    this.CONSUME(Any);
    this.ACTION(() => {
      if (numbered.test(this.image(0))) state.name = `needle ${numbered.exec(this.image(0))?.[1]}`;
    });
    this.MANY({
      GATE: () =>
        !Number.isNaN(this.LA(1).startOffset) &&
        !this.at(1, FullStop) &&
        !(this.at(1, Semicolon) && !this.arrangeGoesOn(2)) &&
        !(this.at(1, Comma, W.And) && state.depth === 0 && !this.arrangeGoesOn(2)) &&
        !(this.at(1, Close) && state.depth === 0) &&
        !(this.at(1, Open) && this.payload(1)?.holds === 'group'),
      DEF: () => {
        const token = this.CONSUME1(Any) as KnitToken;
        this.ACTION(() => {
          if (this.at(0, Open)) state.depth += 1;
          else if (this.at(0, Close)) state.depth -= 1;
          else if (numbered.test(this.image(0))) {
            state.name = `needle ${numbered.exec(this.image(0))?.[1]}`;
            if (state.pending !== null) {
              found.push({ name: state.name, count: state.pending });
              state.pending = null;
              state.name = null;
            }
          } else if (
            this.at(0, CountToken) &&
            ((this.at(-1, W.Needle) && token.payload?.values?.length === 1) || /^n$/.test(this.image(-1)))
          ) {
            state.name = `needle ${token.payload?.values?.[0] ?? ''}`;
            if (!/\bon(?:to)?(?: needle| n)?$/i.test(this.words(start, token.startOffset))) state.pending = null;
            if (state.pending !== null) {
              found.push({ name: state.name, count: state.pending });
              state.pending = null;
              state.name = null;
            }
          } else if (this.at(0, CountToken) && (this.at(1, W.Needle) || /^(circulars?|tips?)$/.test(this.image(1))))
            state.needles = this.countOf(token);
          else if (this.at(0, CountToken)) {
            const count = this.countOf(token);
            const each = /^(?:\s*(?:sts?|stitches|loops))?\s*(?:per|on each|each|to each|on every)\b/i.test(
              this.text.slice(token.startOffset + token.image.length),
            );
            if (two.both) found.push({ name: null, count });
            else if (each) state.perNeedle = count;
            else if (state.name !== null) {
              found.push({ name: state.name, count });
              state.name = null;
            } else if (state.depth > 0 || this.at(1, Dash) || /^[([]?\d+(?:[-–/]\d+)+/.test(token.image)) found.push({ name: null, count });
            else state.pending = count;
          }
        });
      },
    });
    return this.ACTION((): Arrange => {
      const listed = this.dashed(start, found);
      return { type: 'arrange', parts: listed, needles: state.needles, perNeedle: state.perNeedle, span: this.span(start) };
    });
  });

  /** "(15-30-15)" may stand as one list of numbers, read as sizes. */
  private dashed(start: number, found: { name: string | null; count: Count }[]): { name: string | null; count: Count }[] {
    const only = found.length === 1 ? found[0] : undefined;
    if (only === undefined || only.name !== null || only.count.values.length < 2) return found;
    const words = this.text.slice(only.count.span.start - this.base, only.count.span.end - this.base);
    if (start < 0 || !/^[([]?\d+(?:[-–/]\d+)+[)\]]?$/.test(words)) return found;
    return only.count.values.map((value) => ({ name: null, count: { ...only.count, values: [value] } }));
  }

  private arrangeGoesOn(ahead: number): boolean {
    if (this.at(ahead, W.Next, W.Rem, W.Other, W.And)) return this.at(ahead + 1, CountToken, W.St, W.On);
    if (this.at(ahead, CountToken))
      return (
        this.at(ahead + 1, W.On, W.St, Close, Comma, Semicolon, FullStop, Dash) ||
        numbered.test(this.image(ahead + 1)) ||
        Number.isNaN(this.LA(ahead + 1).startOffset)
      );
    if (numbered.test(this.image(ahead))) return this.at(ahead + 1, CountToken) || this.arrangesAfter(ahead + 2);
    if (/^n$/.test(this.image(ahead)))
      return this.at(ahead + 1, CountToken) && (this.at(ahead + 2, CountToken) || this.arrangesAfter(ahead + 3));
    return this.at(ahead, W.Needle) && this.at(ahead + 1, CountToken) && (this.at(ahead + 2, CountToken) || this.arrangesAfter(ahead + 3));
  }

  /** "Working back and forth on these 30 sts only", "work first 30 sts of rnd back and forth in rows". */
  protected onlyAhead(): boolean {
    // "Heel is worked over next 30 sts", "Heel flap is worked back and forth on 30 sts"
    if (
      this.at(1, Word, Name) &&
      segments.test(this.image(1)) &&
      /^(?:the )?\w+(?: flap| turn)? (?:is|are) (?:now |then )?worked (?:flat |back and forth |in rows )*(?:over|on|across)\b/i.test(
        this.text.slice(this.from(), this.from() + 80).replace(/\s+/g, ' '),
      )
    )
      return this.countBefore(4) || this.countBefore(8);
    if (!this.at(1, W.Work, W.Cont, W.Patt)) return false;
    let these = 0;
    let told = false;
    for (let ahead = 2; ahead < 16; ahead += 1) {
      if (this.separator(ahead)) break;
      if (this.at(ahead, Stitch, W.Until, W.To)) break;
      if (this.at(ahead, W.St)) these = ahead;
      if (this.at(ahead, W.Only) || /^(back|forth)$/.test(this.image(ahead)) || (this.at(ahead, W.In) && this.at(ahead + 1, W.Row)))
        told = true;
    }
    // "Continue on the last set of 33 sts"
    if (
      these > 0 &&
      this.at(1, W.Work, W.Cont) &&
      this.at(2, W.On) &&
      this.at(3, W.Last, W.First, W.These) &&
      /^(set|group|lot)$/.test(this.image(4))
    )
      return true;
    // "cont on these sts for left side of neck"
    return (
      these > 0 &&
      (told ||
        (this.at(1, W.Work, W.Cont) && this.at(2, W.On) && this.at(3, W.These, W.First, CountToken) && these <= 5 && !this.at(1, W.Patt)))
    );
  }

  onlyStep = this.RULE('onlyStep', (): Only => {
    const start = this.from();
    const state: { which: Only['which']; count: Count | null } = { which: 'these', count: null };
    this.CONSUME(Any);
    this.MANY({
      GATE: () =>
        !this.separator() &&
        !this.at(1, W.Then) &&
        !(this.at(1, W.And) && !/^(forth)$/.test(this.image(2))) &&
        !(this.at(1, W.As) && this.at(0, W.Row, W.Only)),
      DEF: () => {
        const token = this.CONSUME1(Any) as KnitToken;
        this.ACTION(() => {
          // "over N1 only": the number of a needle
          if (this.at(0, CountToken) && (this.at(-1, W.Needle) || /^n$/.test(this.image(-1)))) return;
          if (this.at(0, CountToken) && state.count === null) state.count = this.countOf(token);
          else if (this.at(0, W.Next)) state.which = 'next';
          else if (this.at(0, W.First)) state.which = 'first';
          else if (this.at(0, W.Last)) state.which = 'last';
          else if (this.at(0, W.Centre)) state.which = 'centre';
        });
      },
    });
    return this.ACTION(() => ({ type: 'only', which: state.which, count: state.count, span: this.span(start) }));
  });

  /** "Back to working in the rnd over all 56 sts", "Continue in the round over all sts", "Begin working in the round again". */
  protected roundAgainAhead(): boolean {
    if (!this.at(1, Word, W.Work, W.Cont, W.Beg, W.Return)) return false;
    const words = (this.text.slice(this.from(), this.from() + 120).split(/[.;:]/)[0] ?? '').replace(/\s+/g, ' ');
    const begins =
      /^(?:now |then )?(?:(?:go(?:ing)? |and )?back to|return(?:ing)? to|resum\w+|begin(?:ning)?|start(?:ing)?|cont(?:inue|inuing)?|work(?:ing)?|work now continues|knitting continues) ?(?:to )?(?:now )?(?:continues? )?(?:work(?:ing)? |knit(?:ting)? )?(?:again )?(?:in (?:the )?(?:rounds?|rnds?))\b/i.test(
        words,
      );
    if (!begins || /\b(?:until|for \d|k\d|p\d|as follows|rib|patt|st st|stitch pattern)\b/i.test(words)) return false;
    return /\b(?:over|on|across) (?:all|both)\b|\bagain\b|^(?:go(?:ing)? |and )?back|^return|^resum/i.test(words);
  }

  roundAgain = this.RULE('roundAgain', (): Join => {
    const start = this.from();
    const state: { count: Count | null } = { count: null };
    this.CONSUME(Any);
    this.MANY({
      GATE: () => !this.separator() && !this.at(1, Colon, Dash),
      DEF: () => {
        const token = this.CONSUME1(Any) as KnitToken;
        this.ACTION(() => {
          if (this.at(0, CountToken) && this.at(1, W.St)) state.count ??= this.countOf(token);
        });
      },
    });
    return this.ACTION(
      (): Join => ({ type: 'join', what: 'resumeRound', count: state.count, side: null, loses: 0, span: this.span(start) }),
    );
  });

  /** "Shift BOR 1 st to the left", "move the BOR marker 2 sts to the right". */
  protected moveMarkerAhead(): boolean {
    if (!this.at(1, Word) || !/^(shift|move|shifting|moving)$/.test(this.image(1))) return false;
    for (let ahead = 2; ahead < 7; ahead += 1) {
      if (this.separator(ahead)) return false;
      if (this.at(ahead, W.Bor, W.Marker) || (this.at(ahead, W.Beg) && this.at(ahead + 1, W.Of))) return this.countBefore(ahead + 1);
    }
    return false;
  }

  private countBefore(from: number): boolean {
    for (let ahead = from; ahead < from + 7; ahead += 1) {
      if (this.at(ahead, CountToken)) return true;
      if (this.separator(ahead)) return false;
    }
    return false;
  }

  /** "Slip last CO st to LH needle, k2tog with first st": joins the round and uses up the stitch cast on over. */
  protected slipJoinAhead(): boolean {
    if (!(this.at(1, Word) && /^slip$/.test(this.image(1))) && !/^sl/.test(this.payload(1)?.entry?.name ?? '')) return false;
    return /^(?:sl|slip)(?: the)? (?:last|first)(?: [\w-]+){0,3} (?:st|stitch)\b[^.;]*?(?:,| and) (?:k2tog|knit it tog|k it tog|ssk|pass)[^.;,]*\b(?:first|last|over)\b/i.test(
      this.text.slice(this.from(), this.from() + 120),
    );
  }

  slipJoin = this.RULE('slipJoin', (): Join => {
    const start = this.from();
    const state = { end: 0 };
    this.ACTION(() => {
      const words = this.text.slice(start, start + 160);
      const over = /\b(?:k2tog|knit it tog|k it tog|ssk|pass)\b[^.;,]*/i.exec(words);
      state.end = start + (over === null ? 0 : over.index + over[0].length);
    });
    this.CONSUME(Any);
    this.MANY({ GATE: () => this.LA(1).startOffset < state.end, DEF: () => this.CONSUME1(Any) });
    return this.ACTION((): Join => ({ type: 'join', what: 'round', count: null, side: null, loses: 1, span: this.span(start) }));
  });

  moveMarkerStep = this.RULE('moveMarkerStep', (): Marker => {
    const start = this.from();
    const state: { count: Count | null } = { count: null };
    this.CONSUME(Any);
    this.MANY({
      GATE: () => !this.separator() && !this.at(1, PlainStitch, Open),
      DEF: () => {
        const token = this.CONSUME1(Any) as KnitToken;
        this.ACTION(() => {
          if (this.at(0, CountToken)) state.count ??= this.countOf(token);
        });
      },
    });
    return this.ACTION((): Marker => {
      const words = this.words(start, this.LA(0).startOffset + this.LA(0).image.length).toLowerCase();
      return {
        type: 'marker',
        op: 'move',
        name: /\bbor\b|beg/.test(words) ? 'BOR' : null,
        atRow: false,
        span: this.span(start),
        ...(state.count === null ? {} : { by: { count: state.count, to: /\bright\b/.test(words) ? 'right' : 'left' } }),
      };
    });
  });
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
