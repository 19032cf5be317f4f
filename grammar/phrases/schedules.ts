/**
 * Which rows carry a shaping.
 *
 *     next and every foll 4th row until 48 sts rem · on foll 2 alt rows · every RS row 5 times, then every other RS row
 */
import type { Sized } from '../count.ts';
import {
  Any,
  Comma,
  Count as CountToken,
  FullStop,
  type KnitToken,
  Ordinal,
  PlainStitch,
  Semicolon,
  TimesNumber,
  W,
  Word,
} from '../tokens.ts';
import type { Segment } from '../tree.ts';
import { InRow } from './row.ts';

/** "alternately every RS row and every other RS row 5 times": two segments that are one. */
function alternating(segments: Segment[]): Segment[] {
  const [first, second] = segments;
  if (first?.kind !== 'alternately' || first.k2 || second?.kind !== 'every' || first.n !== null) return segments;
  const joined: Segment = {
    ...second,
    kind: 'alternately',
    k: first.k ?? [2],
    k2: second.k ?? [2],
    span: { start: first.span.start, end: second.span.end },
  };
  return [joined, ...segments.slice(2)];
}

/** "3rd, 6th and 9th rows" are counted from one beginning: each from the one before it is what the schedule keeps. */
function listedRows(segments: Segment[], text: string, base: number): Segment[] {
  return segments.map((segment, index) => {
    const before = segments[index - 1];
    if (segment.kind !== 'nth' || before?.kind !== 'nth' || segment.k === null || before.k === null) return segment;
    const joint = text.slice(before.span.end - base, segment.span.start - base);
    const steps = segment.k.map((row, size) => {
      const earlier = before.k?.[before.k.length === 1 ? 0 : size] ?? null;
      return row === null || earlier === null ? null : row - earlier;
    });
    const listed = /^\s*(?:,|and|&|, and)?\s*$/i.test(joint) && steps.every((step) => step === null || step > 0);
    return listed ? { ...segment, k: steps } : segment;
  });
}

type Draft = { -readonly [Key in keyof Segment]: Segment[Key] };

export class Schedules extends InRow {
  /** Whether a stretch of a schedule begins `ahead` tokens on. */
  protected segmentAhead(ahead: number): boolean {
    let at = ahead;
    while (this.at(at, W.On, W.Of, W.In) || (this.at(at, W.Each) && this.at(at + 1, W.Of) && this.at(at + 2, W.Next, W.Foll))) at += 1;
    // "each row"
    if (this.at(at, W.Each)) return this.image(at) === 'each' && this.at(at + 1, W.Row, W.Round, W.Rs, W.Ws);
    if (this.at(at, W.These) && this.image(at) === 'this') return this.at(at + 1, W.Row, W.Round);
    if (this.at(at, Word) && this.image(at) === 'this')
      return this.at(at + 1, W.Row, W.Round) || (this.at(at + 1, W.And) && this.at(at + 2, W.Every, W.Foll, Ordinal, CountToken));
    if (this.at(at, W.Next))
      return (
        this.at(at + 1, W.Row, W.Round, W.And, W.Rs, W.Ws) ||
        (this.at(at + 1, CountToken) && (this.at(at + 2, W.Row, W.Round, W.Rs, W.Ws, W.Foll, W.Alt) || this.at(at + 2, Ordinal))) ||
        (this.at(at + 1, Ordinal) && this.at(at + 2, W.Row, W.Round))
      );
    // "3rd, 6th and 9th rows"
    if (this.at(at, Ordinal) && this.at(at + 1, Comma) && this.at(at + 2, Ordinal)) return true;
    if (this.at(at, Ordinal)) return this.at(at + 1, W.Row, W.Round, W.And) || this.at(at + 1, W.Rs, W.Ws);
    if (this.at(at, W.Foll)) return this.at(at + 1, CountToken, Ordinal, W.Alt, W.Row, W.Round, W.Rs, W.Ws);
    if (this.at(at, CountToken)) return this.at(at + 1, W.Foll) || (this.at(at + 1, W.Alt) && this.at(at + 2, W.Row, W.Round));
    // "EOR": every other row
    if (this.at(at, W.Bor)) return this.image(at) === 'eor';
    // "in every 10th st" names stitches, not rows
    if (this.at(at, W.Every) && this.at(at + 1, Ordinal, W.Alt) && this.at(at + 2, W.St)) return false;
    // "every knit row"
    if (this.at(at, W.Every) && this.sideByStitch(at + 1) !== null) return true;
    if (this.at(at, W.Every)) return this.at(at + 1, W.Row, W.Round, W.Foll, Ordinal, CountToken, W.Rs, W.Ws, W.Alt, W.Other, W.Next);
    if (this.at(at, W.Alt)) return this.at(at + 1, W.Row, W.Round, W.Rs, W.Ws, W.Every) || this.image(at) === 'alternately';
    return false;
  }

  /** The side of "knit row", "purl rows" told so; null for other words. */
  private sideByStitch(ahead: number): 'RS' | 'WS' | null {
    if (!this.at(ahead, PlainStitch) || this.payload(ahead)?.values !== undefined || !this.at(ahead + 1, W.Row)) return null;
    return this.payload(ahead)?.entry?.name === 'p' ? 'WS' : 'RS';
  }

  /** Tokens of "thereafter", "after that", "from then on" behind a row; 0 when none stand here. */
  private thereafter(): number {
    if (/^(?:thereafter|afterwards)$/.test(this.image(1))) return 1;
    if (this.at(1, W.After) && /^(?:that|this)$/.test(this.image(2))) return 2;
    return this.at(1, W.From) && /^(?:then|here|now)$/.test(this.image(2)) && this.at(3, W.On) ? 3 : 0;
  }

  /** Tokens of "at each end", "at neck edge" behind the rows they belong to, with a number of times or a goal behind them; 0 when none. */
  private placeBehind(): number {
    if (!this.at(1, W.At, W.On)) return 0;
    let ahead = 2;
    while (ahead < 7 && this.at(ahead, W.Each, W.End, W.Edge, Word, W.And, W.Beg, W.Same, W.Of, W.Needle)) ahead += 1;
    if (!this.at(ahead - 1, W.End, W.Edge, W.Needle) || !this.within(2, ahead, W.End, W.Edge)) return 0;
    return (this.at(ahead, CountToken) && this.at(ahead + 1, W.Times)) ||
      this.at(ahead, TimesNumber, W.Until, W.To, Comma, Semicolon) ||
      this.separator(ahead)
      ? ahead - 1
      : 0;
  }

  /** "next row", "foll 4th row", "every foll 8th row", "3 foll alt rows", "every 10 (10, 8) rnds 6 (7, 9) more times". */
  private segment = this.RULE('segment', (): Segment => {
    const start = this.from();
    const draft: Draft = { type: 'segment', kind: 'next', n: null, k: null, more: 'plain', until: null, span: { start: 0, end: 0 } };
    const state: {
      foll: boolean;
      every: boolean;
      numbers: KnitToken[];
      ordinal: KnitToken | null;
      alt: boolean;
      next: boolean;
      unit: boolean;
      plural: boolean;
    } = { foll: false, every: false, numbers: [], ordinal: null, alt: false, next: false, unit: false, plural: false };
    this.AT_LEAST_ONE({
      GATE: () =>
        (!state.unit &&
          !(this.at(1, W.In) && this.at(0, CountToken) && state.every) &&
          this.at(
            1,
            W.On,
            W.Of,
            W.In,
            W.Bor,
            W.Next,
            W.Foll,
            W.Every,
            W.Alt,
            W.Other,
            Ordinal,
            CountToken,
            W.Rs,
            W.Ws,
            W.Row,
            W.Round,
            W.These,
            W.Each,
            W.All,
            W.Last,
            W.Same,
            W.At,
          )) ||
        (!state.unit && this.at(1, Word) && this.image(1) === 'this') ||
        (state.every && this.sideByStitch(1) !== null) ||
        (!state.unit && this.at(1, W.And) && state.every && state.ordinal !== null && this.at(2, Ordinal)),
      DEF: () => {
        const token = this.CONSUME(Any) as KnitToken;
        this.ACTION(() => {
          if (this.at(0, W.Foll)) state.foll = true;
          else if (this.at(0, W.Every) || (this.at(0, W.Each) && this.at(1, W.Row, W.Round, W.Rs, W.Ws))) state.every = true;
          else if (this.at(0, W.Alt)) {
            state.alt = true;
            if (/every/.test(this.image(0))) state.every = true;
            if (this.image(0) === 'alternately') draft.kind = 'alternately';
          } else if (this.at(0, W.Other)) state.alt = true;
          else if (this.at(0, W.Next)) state.next = true;
          else if (this.at(0, Ordinal)) {
            if (state.ordinal !== null) draft.k2 = token.payload?.values ?? [1];
            else state.ordinal = token;
          } else if (this.at(0, CountToken)) state.numbers.push(token);
          else if (this.at(0, PlainStitch)) draft.rowSide = token.payload?.entry?.name === 'p' ? 'WS' : 'RS';
          else if (this.at(0, W.Rs)) draft.rowSide = 'RS';
          else if (this.at(0, W.Ws)) draft.rowSide = 'WS';
          else if (this.at(0, W.Bor)) {
            state.alt = true;
            state.every = true;
            state.unit = true;
          } else if (this.at(0, W.Row, W.Round)) {
            state.unit = true;
            state.plural = /s$/.test(this.image(0));
          }
        });
      },
    });
    // "every 2 cm 5 times"
    this.OPTION({
      GATE: () => state.every && (this.at(1, W.Cm, W.Inch) || (this.at(1, W.In) && this.at(0, CountToken))),
      DEF: () => {
        this.CONSUME1(Any);
        this.ACTION(() => {
          draft.measure = state.numbers.at(-1)?.payload?.values ?? [1];
        });
      },
    });
    // "every 4th and 6th row alternately"
    this.OPTION3({
      GATE: () => this.at(1, W.Alt) && this.image(1) === 'alternately',
      DEF: () => {
        this.CONSUME4(Any);
        this.ACTION(() => {
          draft.kind = 'alternately';
        });
      },
    });
    let after = false;
    this.option(51, {
      GATE: () => this.thereafter() > 0,
      DEF: () => {
        const end = this.ACTION(() => this.from() + this.thereafter());
        this.many(51, {
          GATE: () => this.thereafter() > 0 || /^(?:that|this|then|here|now|on)$/.test(this.image(1)),
          DEF: () => this.consume(51, Any),
        });
        this.ACTION(() => {
          after = end > 0;
        });
      },
    });
    this.option(52, {
      GATE: () => this.placeBehind() > 0,
      DEF: () =>
        this.many(52, {
          GATE: () => this.at(1, W.At, W.On, W.Each, W.End, W.Edge, Word, W.And, W.Beg, W.Same, W.Of, W.Needle),
          DEF: () => this.consume(52, Any),
        }),
    });
    this.OPTION1({
      GATE: () =>
        (this.timesAhead() && !this.at(1, W.InAll)) ||
        (this.at(1, Comma) && ((this.at(2, CountToken) && this.at(3, W.Times)) || this.at(2, TimesNumber))),
      DEF: () => {
        this.OPTION4({ GATE: () => this.at(1, Comma), DEF: () => this.CONSUME5(Any) });
        const often = this.SUBRULE(this.howOften, { ARGS: ['from'] });
        this.ACTION(() => {
          draft.n = often.count;
          draft.more = after && often.sense === 'plain' ? 'more' : often.sense;
        });
      },
    });
    this.OPTION2({
      GATE: () => this.scheduleCountAhead(),
      DEF: () => {
        this.MANY1({ GATE: () => !this.at(1, CountToken), DEF: () => this.CONSUME2(Any) });
        const count = this.SUBRULE(this.count);
        this.ACTION(() => {
          draft.until = count;
        });
        this.MANY2({
          GATE: () =>
            this.at(1, W.St, W.Rem, W.In, W.InAll, W.On, W.Needle, W.All) ||
            (this.at(1, Word) && /^(buttonholes|have|are|sts|been)/.test(this.image(1))) ||
            (this.at(1, W.Work) && this.at(0, Word)),
          DEF: () => this.CONSUME3(Any),
        });
      },
    });
    return this.ACTION((): Segment => {
      const number = state.numbers[0];
      const count = number === undefined ? null : this.countOf(number);
      const k: Sized | null = state.ordinal?.payload?.values ?? (state.alt ? [2] : null);
      if (draft.kind === 'alternately') {
        /* k and k2 are set */ draft.k = state.ordinal?.payload?.values ?? [2];
      } else if (state.every || (state.foll && draft.n !== null && k !== null && count === null && false)) {
        draft.kind = 'every';
        if (draft.rowSide !== undefined && draft.rowSide !== null && k === null && count === null) draft.k = null;
        else if (draft.rowSide !== undefined && state.alt) draft.k = [4];
        else draft.k = k ?? (draft.measure ? null : (count?.values ?? [1]));
      } else if (state.foll && k !== null) {
        draft.kind = 'follEvery';
        draft.k = k;
        draft.n ??= count;
        // "foll alt rows" with no number goes on until a count is reached
        if (draft.n === null && state.alt && (state.plural || draft.until !== null)) draft.kind = 'every';
      } else if (state.foll) {
        draft.kind = 'follEach';
        draft.n ??= count;
      } else if (state.alt) {
        draft.kind = 'follEvery';
        draft.k = [2];
        draft.n ??= count;
      } else if (state.ordinal !== null && !state.next) {
        draft.kind = 'nth';
        draft.k = state.ordinal.payload?.values ?? [1];
      } else {
        draft.kind = state.next || number ? 'next' : 'this';
        if (state.ordinal !== null) {
          draft.kind = 'nth';
          draft.k = state.ordinal.payload?.values ?? [1];
        }
        draft.n ??= count;
      }
      return { ...draft, span: this.span(start) };
    });
  });

  /** Tokens of "in this way," before "until"; 0 when none stand here. */
  private manner(): number {
    let ahead = 1;
    while (
      ahead < 7 &&
      (this.at(ahead, W.In, W.These, W.Same, W.As, W.Set, W.Before) || /^(?:this|way|manner|fashion)$/.test(this.image(ahead)))
    )
      ahead += 1;
    if (ahead > 1 && this.at(ahead, Comma)) ahead += 1;
    return ahead > 1 && this.at(ahead, W.Until) ? ahead - 1 : 0;
  }

  /** Tokens of ", taking extra sts into patt," before "until"; 0 when none stand here. */
  private takingIn(): number {
    if (!this.at(1, Comma) || !/^(?:taking|working|bringing|keeping)$/.test(this.image(2))) return 0;
    for (let ahead = 3; ahead < 14; ahead += 1) {
      if (this.at(ahead, Comma)) return this.at(ahead + 1, W.Until) ? ahead : 0;
      if (this.at(ahead, FullStop, Semicolon, CountToken, W.Until)) return 0;
    }
    return 0;
  }

  private scheduleCountAhead(): boolean {
    const aside = this.takingIn();
    if (aside > 0) return this.at(aside + 1, W.Until) && (this.at(aside + 2, CountToken) || this.at(aside + 2, W.There));
    const way = this.manner();
    if (way > 0) return this.at(way + 2, CountToken) && this.at(way + 3, W.St, W.Rem);
    if (this.at(1, Comma) && this.at(2, W.Until)) {
      const count = this.at(3, W.There) ? 4 : 3;
      return this.at(count, CountToken) && this.at(count + 1, W.St, W.Rem);
    }
    if (this.at(1, W.Until))
      return this.at(2, CountToken)
        ? this.at(3, W.St, W.Rem) || (this.at(3, Word) && this.at(4, W.St))
        : this.at(2, W.There) && this.at(3, CountToken);
    if (this.at(1, W.To)) return this.at(2, CountToken) && (this.at(3, W.St, Comma, Semicolon) || this.separator(3));
    // ", reducing to 40 sts"
    return this.at(1, Comma) && this.at(2, W.Inc, W.Dec) && this.at(3, W.To) && this.at(4, CountToken) && this.at(5, W.St);
  }

  override schedule = this.RULE('schedule', (): Segment[] => {
    const segments: Segment[] = [];
    const first = this.SUBRULE(this.segment);
    this.ACTION(() => segments.push(first));
    this.MANY({
      GATE: () => this.joinedSegment() > 0,
      DEF: () => {
        this.MANY1({
          GATE: () => this.at(1, Comma, W.And, W.Then, Semicolon, W.On, W.Of, W.At, W.Each, W.End),
          DEF: () => this.CONSUME(Any),
        });
        const next = this.SUBRULE1(this.segment);
        this.ACTION(() => segments.push(next));
      },
    });
    return this.ACTION(() => alternating(listedRows(segments, this.text, this.base)));
  });

  private joinedSegment(): number {
    let ahead = 1;
    while (this.at(ahead, Comma, W.And, W.Then, Semicolon)) ahead += 1;
    if (ahead === 1) return 0;
    // ", then at each end of every row": the same place once more
    if (this.at(ahead, W.At) && this.at(ahead + 1, W.Each) && this.at(ahead + 2, W.End) && this.at(ahead + 3, W.Of)) ahead += 4;
    return this.segmentAhead(ahead) ? ahead : 0;
  }
}
