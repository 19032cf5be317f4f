/**
 * Shaping told as a command: which rows carry it and what happens on them.
 *
 *     Dec 1 st at each end of next 3 rows, then on foll 2 alt rows, then on every foll 4th row until 48 sts rem
 *     Cast off 4 sts at beg of next 2 rows, then 3 sts at beg of foll 4 rows
 */

import type { Sized } from '../count.ts';
import {
  Any,
  Colon,
  Comma,
  Count as CountToken,
  Dash,
  Fabric,
  type KnitToken,
  Ordinal,
  PlainStitch,
  Semicolon,
  TimesNumber,
  W,
  Word,
} from '../tokens.ts';
import type { Count, EdgeRows, Segment, Shape } from '../tree.ts';
import { InRow } from './row.ts';

/** "neck" of "at each neck edge"; null where the edge has no name. */
function edgeNamed(words: string): string | null {
  const name = /(\w+) (?:edge|slope)/.exec(words)?.[1] ?? null;
  return name === 'each' || name === 'both' || name === 'same' || name === 'the' || name === 'this' ? null : name;
}

/** Where a command of shaping puts it, by its words. */
function edgeWords(words: string): Shape['place'] {
  return /marker|each side of (each )?m\b/.test(words)
    ? 'eachSideOfMarkers'
    : /each [a-z]* ?edge|both [a-z]+ edges/.test(words) && !/each end/.test(words)
      ? 'eachEdge'
      : /each end|both ends|each side|beg and end|both sides|each edge/.test(words)
        ? 'bothEnds'
        : /centre|center/.test(words)
          ? 'centre'
          : /edge/.test(words)
            ? 'edge'
            : /\bbeg/.test(words)
              ? 'beginning'
              : /\bend\b/.test(words)
                ? 'end'
                : 'edge';
}

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

type Draft = { -readonly [Key in keyof Segment]: Segment[Key] };

export class Shaping extends InRow {
  /** Whether a stretch of a schedule begins `ahead` tokens on. */
  protected segmentAhead(ahead: number): boolean {
    let at = ahead;
    while (this.at(at, W.On, W.Of, W.In)) at += 1;
    if (this.at(at, W.These) && this.image(at) === 'this') return this.at(at + 1, W.Row, W.Round);
    if (this.at(at, Word) && this.image(at) === 'this')
      return this.at(at + 1, W.Row, W.Round) || (this.at(at + 1, W.And) && this.at(at + 2, W.Every, W.Foll, Ordinal, CountToken));
    if (this.at(at, W.Next))
      return (
        this.at(at + 1, W.Row, W.Round, W.And, W.Rs, W.Ws) ||
        (this.at(at + 1, CountToken) && (this.at(at + 2, W.Row, W.Round, W.Rs, W.Ws, W.Foll, W.Alt) || this.at(at + 2, Ordinal))) ||
        (this.at(at + 1, Ordinal) && this.at(at + 2, W.Row, W.Round))
      );
    if (this.at(at, Ordinal)) return this.at(at + 1, W.Row, W.Round, W.And) || this.at(at + 1, W.Rs, W.Ws);
    if (this.at(at, W.Foll)) return this.at(at + 1, CountToken, Ordinal, W.Alt, W.Row, W.Round, W.Rs, W.Ws);
    if (this.at(at, CountToken)) return this.at(at + 1, W.Foll) || (this.at(at + 1, W.Alt) && this.at(at + 2, W.Row, W.Round));
    // "EOR": every other row
    if (this.at(at, W.Bor)) return this.image(at) === 'eor';
    if (this.at(at, W.Every)) return this.at(at + 1, W.Row, W.Round, W.Foll, Ordinal, CountToken, W.Rs, W.Ws, W.Alt, W.Other, W.Next);
    if (this.at(at, W.Alt)) return this.at(at + 1, W.Row, W.Round, W.Rs, W.Ws, W.Every) || this.image(at) === 'alternately';
    return false;
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
        (!state.unit && this.at(1, W.And) && state.every && state.ordinal !== null && this.at(2, Ordinal)),
      DEF: () => {
        const token = this.CONSUME(Any) as KnitToken;
        this.ACTION(() => {
          if (this.at(0, W.Foll)) state.foll = true;
          else if (this.at(0, W.Every)) state.every = true;
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
    this.OPTION1({
      GATE: () =>
        (this.timesAhead() && !this.at(1, W.InAll)) ||
        (this.at(1, Comma) && ((this.at(2, CountToken) && this.at(3, W.Times)) || this.at(2, TimesNumber))),
      DEF: () => {
        this.OPTION4({ GATE: () => this.at(1, Comma), DEF: () => this.CONSUME5(Any) });
        const often = this.SUBRULE(this.howOften, { ARGS: ['from'] });
        this.ACTION(() => {
          draft.n = often.count;
          draft.more = often.sense;
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

  private scheduleCountAhead(): boolean {
    const way = this.manner();
    if (way > 0) return this.at(way + 2, CountToken) && this.at(way + 3, W.St, W.Rem);
    if (this.at(1, Comma) && this.at(2, W.Until) && this.at(3, CountToken)) return this.at(4, W.St, W.Rem);
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
    return this.ACTION(() => alternating(segments));
  });

  private joinedSegment(): number {
    let ahead = 1;
    while (this.at(ahead, Comma, W.And, W.Then, Semicolon)) ahead += 1;
    if (ahead === 1) return 0;
    // ", then at each end of every row": the same place once more
    if (this.at(ahead, W.At) && this.at(ahead + 1, W.Each) && this.at(ahead + 2, W.End) && this.at(ahead + 3, W.Of)) ahead += 4;
    return this.segmentAhead(ahead) ? ahead : 0;
  }

  /** Tokens of "At each neck edge," before the command; 0 when none stand there. */
  protected placeBefore(): number {
    if (!this.at(1, W.At, W.Each)) return 0;
    for (let ahead = 2; ahead < 8; ahead += 1) {
      if (this.at(ahead, Comma))
        return this.at(ahead - 1, W.Edge, W.End, W.Marker, Word) && this.within(1, ahead, W.Edge, W.End, W.Marker) ? ahead : 0;
      if (!this.at(ahead, W.Each, W.Edge, W.End, Word, W.Of, W.Marker, W.These, W.Beg, W.Same)) return 0;
    }
    return 0;
  }

  /** Tokens of "On 5th and every foll 4th row,", "every RS row," before the command; 0 when none stand there. */
  protected scheduleBefore(): number {
    const place = this.at(1, W.At) && this.at(2, W.Beg) && this.at(3, W.Of) ? 4 : 1;
    if ((place === 1 && !this.at(1, W.On, W.Every, W.Alt, W.In)) || !this.segmentAhead(place)) return 0;
    for (let ahead = place + 1; ahead < 14; ahead += 1) {
      if (this.at(ahead, Comma)) return this.at(ahead + 1, W.Inc, W.Dec, W.BindOff, W.CastOn) ? ahead : 0;
      if (this.separator(ahead)) return 0;
    }
    return 0;
  }

  protected shapeAhead(): boolean {
    const skipped = this.placeBefore() || this.scheduleBefore();
    if (skipped > 0) return this.at(skipped + 1, W.Inc, W.Dec) && this.at(skipped + 2, CountToken);
    // "Cont to dec 2 sts at the centre of every RS row"
    if (this.at(1, W.Cont))
      return (
        (this.at(2, W.To) ? this.at(3, W.Inc, W.Dec) && this.at(4, CountToken) : this.at(2, W.Inc, W.Dec) && this.at(3, CountToken)) &&
        this.within(4, 12, W.Every, W.Each, W.Alt)
      );
    if (!this.at(1, W.Inc, W.Dec)) return false;
    if (this.at(2, CountToken)) {
      let ahead = 3;
      if (this.at(ahead, W.St)) ahead += 1;
      if (this.endOfLastRow(ahead)) return false;
      return (
        (this.at(ahead, W.At, W.Each, W.Every, W.On, W.In, W.Alt, W.Next) &&
          !(this.at(ahead, W.In) && this.at(ahead + 1, W.Next) && this.at(ahead + 2, W.St)) &&
          !(this.at(ahead, W.On) && this.at(ahead + 1, W.Last))) ||
        (this.at(ahead, W.Beg, W.End) && true)
      );
    }
    return this.at(2, W.At, W.Each) || (this.at(2, W.Work) && false);
  }

  /** "Dec 1 st at neck edge on next 4 rows, then on foll 5 alt rows". */
  shape = this.RULE('shape', (): Shape => {
    const start = this.from();
    const segments: Segment[] = [];
    this.OPTION5({
      GATE: () => this.scheduleBefore() > 0,
      DEF: () => {
        this.many(23, { GATE: () => this.at(1, W.At, W.Beg) || (this.at(0, W.Beg) && this.at(1, W.Of)), DEF: () => this.consume(23, Any) });
        const read = this.SUBRULE2(this.schedule);
        this.ACTION(() => segments.push(...read));
      },
    });
    this.MANY2({ GATE: () => !this.at(1, W.Inc, W.Dec), DEF: () => this.CONSUME3(Any) });
    const before = this.ACTION(() => this.words(start, this.from()).toLowerCase());
    const head = this.CONSUME(Any) as KnitToken;
    const count = this.OPTION(() => this.SUBRULE(this.count));
    this.OPTION1({ GATE: () => this.at(1, W.St), DEF: () => this.CONSUME1(Any) });
    const from = this.ACTION(() => this.from());
    this.MANY({
      GATE: () =>
        (!this.segmentAhead(1) || (this.at(1, W.Ending) && this.at(0, W.Each))) &&
        (this.at(
          1,
          W.At,
          W.Each,
          W.End,
          W.Beg,
          W.Edge,
          W.Of,
          W.On,
          W.Marker,
          W.And,
          W.In,
          W.Work,
          W.Needle,
          W.Same,
          W.Before,
          W.Past,
          W.Centre,
          W.These,
          W.Other,
          W.Rs,
          W.Ws,
          W.Row,
          W.Round,
        ) ||
          (this.at(1, CountToken) && this.at(0, W.Centre) && this.at(2, W.St)) ||
          (this.at(1, W.St) && (this.at(0, W.Centre) || this.at(-1, W.Centre))) ||
          (this.at(1, W.Ending) && this.at(0, W.Each)) ||
          this.at(1, Word)),
      DEF: () => this.CONSUME2(Any),
    });
    const to = this.ACTION(() => this.LA(0).startOffset + this.LA(0).image.length);
    this.OPTION2({
      GATE: () => this.segmentAhead(1),
      DEF: () => {
        const read = this.SUBRULE(this.schedule);
        this.ACTION(() => segments.push(...read));
      },
    });
    // "at beg of next row and at same edge on foll 3 rows"
    let same = false;
    this.OPTION4({
      GATE: () => this.sameEdgeAhead() > 0,
      DEF: () => {
        this.MANY1({ GATE: () => !this.segmentAhead(1), DEF: () => this.CONSUME4(Any) });
        const more = this.SUBRULE1(this.schedule);
        this.ACTION(() => {
          segments.push(...more);
          same = true;
        });
      },
    });
    const ending = this.OPTION3({ GATE: () => this.endingSideAhead(), DEF: () => this.SUBRULE(this.endSide) });
    return this.ACTION((): Shape => {
      const words = `${before} ${this.words(from, to).toLowerCase()}`;
      const place: Shape['place'] = same ? 'edge' : edgeWords(words);
      const one: Count = { type: 'count', values: [1], span: this.tokenSpan(head) };
      return {
        type: 'shape',
        change: head.tokenType === W.Inc ? 'inc' : 'dec',
        count: count ?? one,
        place,
        edge: same ? (/\bend\b/.test(words) ? 'end' : 'beginning') : edgeNamed(words),
        schedule: segments,
        fabric: null,
        ending: ending ?? null,
        stated: [],
        span: this.span(start),
      };
    });
  });

  private sameEdgeAhead(): number {
    if (!this.at(1, W.And, Comma)) return 0;
    for (let ahead = 2; ahead < 7; ahead += 1) {
      if (this.at(ahead, W.Edge)) return this.image(ahead - 1).endsWith('same') && this.segmentAhead(ahead + 1) ? ahead : 0;
      if (!this.at(ahead, W.At, W.Same, W.These, W.On, W.Then)) return 0;
    }
    return 0;
  }

  protected endingSideAhead(): boolean {
    const ahead = this.at(1, Comma) ? 2 : 1;
    const at = this.at(ahead, W.And) ? ahead + 1 : ahead;
    // "at each end on 5th row" ends nothing
    if (at === 1 && this.at(0, W.Each)) return false;
    return (
      this.at(at, W.Ending) ||
      (this.at(at, W.End) && this.at(at + 1, W.With, W.On, W.After)) ||
      (this.at(at, Word) && /^(having|ready)$/.test(this.image(at)))
    );
  }

  protected edgeRowsAhead(): boolean {
    const skipped = this.placeBefore() || this.scheduleBefore();
    const verb = skipped + 1;
    if (!this.at(verb, W.BindOff, W.CastOn)) return false;
    if (skipped > 0) return this.at(verb + 1, CountToken) && this.at(verb + 2, W.St);
    if (this.at(2, W.Every, W.Alt, W.From))
      return this.within(2, 10, CountToken) && (this.at(2, W.From) ? this.within(2, 5, W.Edge) : true);
    for (let ahead = 2; ahead < 9; ahead += 1) {
      if (this.at(ahead, W.At) && this.at(ahead + 1, W.Beg)) return true;
      if (this.at(ahead, W.Beg)) return true;
      if (this.at(ahead, W.At) && this.at(ahead + 1, W.End) && this.at(ahead + 2, W.Of))
        return this.at(1, W.CastOn) && this.segmentAhead(ahead + 3);
      if (this.at(ahead, W.At) && this.at(ahead + 2, W.Edge)) return true;
      if (this.at(ahead, W.On) && this.segmentAhead(ahead) && this.at(ahead - 1, W.St)) return true;
      if (this.at(ahead, W.At) && this.at(ahead + 1, W.Each, W.These, W.Same)) return true;
      if (this.separator(ahead)) return false;
    }
    return false;
  }

  /** "Cast off 4 sts at beg of next 2 rows, then 3 sts at beg of foll 4 rows". */
  edgeRows = this.RULE('edgeRows', (): EdgeRows => {
    const start = this.from();
    const parts: { count: Count; rows: Segment[]; span: { start: number; end: number } }[] = [];
    let edge: string | null = null;
    const noteEdge = (): void => {
      if (this.at(0, W.Edge) && edge === null) edge = edgeNamed(`${this.image(-1)} edge`);
    };
    const ahead: Segment[] = [];
    this.OPTION6({
      GATE: () => this.scheduleBefore() > 0,
      DEF: () => {
        this.many(22, { GATE: () => this.at(1, W.At, W.Beg) || (this.at(0, W.Beg) && this.at(1, W.Of)), DEF: () => this.consume(22, Any) });
        const read = this.SUBRULE3(this.schedule);
        this.ACTION(() => ahead.push(...read));
      },
    });
    this.MANY4({
      GATE: () => !this.at(1, W.BindOff, W.CastOn),
      DEF: () => {
        this.CONSUME4(Any);
        this.ACTION(() => noteEdge());
      },
    });
    const head = this.CONSUME(Any) as KnitToken;
    // "every other row: 3 sts once, 2 sts twice"
    const interval: { k: Sized } = { k: [2] };
    this.OPTION2({
      GATE: () => this.at(1, W.Every, W.Alt) && this.segmentAhead(1),
      DEF: () => {
        const every = this.SUBRULE1(this.schedule);
        this.ACTION(() => {
          interval.k = every[0]?.k ?? [2];
        });
        this.OPTION3({ GATE: () => this.at(1, Colon, Comma), DEF: () => this.CONSUME5(Any) });
      },
    });
    this.MANY({
      GATE: () => parts.length === 0 || this.edgePartAhead(),
      DEF: () => {
        const from = this.from();
        const rows: Segment[] = [];
        this.MANY1({
          GATE: () => !this.at(1, CountToken) && !(this.at(0, W.Of) && this.segmentAhead(1)),
          DEF: () => {
            this.CONSUME1(Any);
            this.ACTION(() => noteEdge());
          },
        });
        // "at beg of next 2 rows 5 sts": the rows stand before the number
        this.OPTION4({
          GATE: () => !this.at(1, CountToken) && this.segmentAhead(1),
          DEF: () => {
            const read = this.SUBRULE2(this.schedule);
            this.ACTION(() => rows.push(...read));
          },
        });
        const count = this.SUBRULE(this.count);
        this.MANY2({
          GATE: () =>
            !this.segmentAhead(1) &&
            (this.at(1, W.St, W.At, W.Beg, W.Of, W.Each, W.Edge, W.In, W.Patt, W.End, W.These, W.On, W.Same, W.Evenly, W.Rib) ||
              (this.at(1, W.From) && this.at(2, W.Each)) ||
              (this.at(1, Word) && !this.at(2, CountToken))),
          DEF: () => {
            this.CONSUME2(Any);
            this.ACTION(() => noteEdge());
          },
        });
        this.OPTION({
          GATE: () => this.segmentAhead(1),
          DEF: () => {
            const read = this.SUBRULE(this.schedule);
            this.ACTION(() => rows.push(...read));
          },
        });
        // "3 sts once, 2 sts twice"
        this.OPTION1({
          GATE: () => this.timesAhead(),
          DEF: () => {
            const often = this.SUBRULE(this.howOften, { ARGS: ['from'] });
            this.ACTION(() => {
              rows.push({
                type: 'segment',
                kind: 'follEvery',
                n: often.count,
                k: interval.k,
                more: 'plain',
                until: null,
                span: this.span(from),
              });
            });
          },
        });
        this.ACTION(() => {
          if (rows.length === 0) rows.push(...ahead.splice(0));
        });
        this.ACTION(() => parts.push({ count, rows, span: this.span(from) }));
      },
    });
    this.MANY3({
      GATE: () =>
        (this.at(1, Comma) && this.at(2, W.Work) && (this.at(3, Word) || this.at(3, W.To))) ||
        (this.at(0, Comma) && this.at(1, W.Work)) ||
        (this.at(0, W.Work) && this.at(1, Word, W.To)) ||
        (this.at(0, Word) && this.at(1, W.St, W.Into, W.Patt)) ||
        (this.at(0, W.St, W.To, W.Into) && this.at(1, W.Into, W.Patt, W.End)),
      DEF: () => this.CONSUME3(Any),
    });
    // ", patt to end": the rest of the same row
    this.OPTION5({
      GATE: () =>
        this.at(1, Comma) &&
        this.at(2, W.Patt, W.Rib, W.Work, PlainStitch) &&
        this.payload(2)?.values === undefined &&
        this.at(3, W.To) &&
        this.at(4, W.End),
      DEF: () => {
        this.CONSUME6(Any);
        this.CONSUME7(Any);
        this.CONSUME8(Any);
        this.CONSUME9(Any);
      },
    });
    return this.ACTION(
      (): EdgeRows => ({
        type: 'edgeRows',
        change: head.tokenType === W.CastOn ? 'castOn' : 'bindOff',
        parts,
        edge,
        ...(/\bat (?:the )?end of\b/i.test(this.words(start, this.LA(0).startOffset)) ? { atEnd: true } : {}),
        ...(/\b(?:each|both) [a-z]+ edges?\b/i.test(this.words(start, this.LA(0).startOffset + this.LA(0).image.length))
          ? { each: true }
          : {}),
        stated: [],
        span: this.span(start),
      }),
    );
  });

  private edgePartAhead(): boolean {
    let ahead = 1;
    while (this.at(ahead, Comma, W.And, W.Then, Semicolon, W.BindOff, W.CastOn)) ahead += 1;
    if (ahead === 1 || this.at(0, Dash)) return false;
    // ", at beg of next 4 rows 3 sts"
    if (this.at(ahead, W.At) && this.at(ahead + 1, W.Beg) && this.at(ahead + 2, W.Of)) {
      for (let look = ahead + 3; look < ahead + 9; look += 1) {
        if (this.at(look, W.Row, W.Round)) return this.at(look + 1, CountToken) && this.at(look + 2, W.St);
        if (this.separator(look)) return false;
      }
      return false;
    }
    if (!this.at(ahead, CountToken)) return false;
    for (let look = ahead + 1; look < ahead + 6; look += 1) {
      if (this.at(look, W.Beg, W.At) || this.timesAt(look)) return true;
      if (this.separator(look)) return false;
    }
    return false;
  }

  private timesAt(ahead: number): boolean {
    return (this.at(ahead, CountToken) && this.at(ahead + 1, W.Times)) || /^(once|twice)$/.test(this.image(ahead));
  }
}
