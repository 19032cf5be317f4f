/**
 * Shaping told as a command: which rows carry it and what happens on them.
 *
 *     Dec 1 st at each end of next 3 rows, then on foll 2 alt rows, then on every foll 4th row until 48 sts rem
 */
import { stitchUse } from '../lexicon/use.ts';
import {
  Any,
  Colon,
  Comma,
  Count as CountToken,
  Dash,
  type KnitToken,
  Ordinal,
  Semicolon,
  Stitch,
  TimesNumber,
  W,
  Word,
} from '../tokens.ts';
import type { Count, Segment, Shape } from '../tree.ts';
import { Schedules } from './schedules.ts';

/** "neck" of "at each neck edge"; null where the edge has no name. */
export function edgeNamed(words: string): string | null {
  const name = /(\w+) (?:edge|slope)/.exec(words)?.[1] ?? null;
  return name === 'each' || name === 'both' || name === 'same' || name === 'the' || name === 'this' ? null : name;
}

/**
 * How many shapings the words name at their markers or beside the centre: "each side of the 4 markers", "before first
 * marker and after last marker", "each side of centre st"; null where they name none by number.
 */
function placesNamed(words: string): { place: Shape['place']; places: number } | null {
  if (/\b(?:each|either|both) sides? of (?:the )?(?:marked )?(?:centre|center|marked)/.test(words)) return { place: 'centre', places: 2 };
  const sided = /\b(?:each|both) sides? of (?:the |these )?(\d|two|three|four|six|eight)? ?(?:markers|ms)\b/.exec(words)?.[1];
  if (sided !== undefined) {
    const spelled: Record<string, number> = { two: 2, three: 3, four: 4, six: 6, eight: 8 };
    return { place: 'atMarkers', places: 2 * (spelled[sided] ?? Number(sided)) };
  }
  if (/\bbefore and after (?:each|every)\b/.test(words)) return null;
  if (/\b(?:before|after) (?:each|every) (?:marker|m)\b/.test(words)) return { place: 'eachMarker', places: 1 };
  const beside = words.match(/\b(?:before|after|past) (?:the )?(?:[a-z0-9]+ )?(?:marker|m)\b/g);
  return beside === null ? null : { place: 'atMarkers', places: beside.length };
}

/** Where a command of shaping puts it, by its words. */
function edgeWords(words: string): Shape['place'] {
  return /marker|each side of (each )?m\b/.test(words)
    ? /\b(?:before|after)\b/.test(words) && !/\bbefore and after\b|\bafter and before\b|\bsides?\b/.test(words)
      ? 'eachMarker'
      : 'eachSideOfMarkers'
    : /each [a-z]* ?edge|both [a-z]+ edges/.test(words) && !/each end/.test(words)
      ? 'eachEdge'
      : /each end|both ends|each side|beg(?:inning)? and (?:at )?(?:the )?end|both sides|each edge|first and (?:the )?last/.test(words)
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

export class Shaping extends Schedules {
  /** Tokens of "At each neck edge," before the command; 0 when none stand there. */
  protected placeBefore(): number {
    if (!this.at(1, W.At, W.Each) && !(this.at(1, W.From) && this.within(2, 4, W.Edge))) return 0;
    for (let ahead = 2; ahead < 8; ahead += 1) {
      if (this.at(ahead, Comma))
        return this.at(ahead - 1, W.Edge, W.End, W.Marker, Word) && this.within(1, ahead, W.Edge, W.End, W.Marker) ? ahead : 0;
      // "At armhole edge cast off 4 sts once"
      if (this.at(ahead, W.Inc, W.Dec, W.BindOff, W.CastOn) && this.at(ahead + 1, CountToken))
        return this.at(ahead - 1, W.Edge, W.End) ? ahead - 1 : 0;
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
      // "At the beginning of the next 2 rows cast off 5 sts"
      if (this.at(ahead, W.Inc, W.Dec, W.BindOff, W.CastOn) && this.at(ahead - 1, W.Row, W.Round))
        return this.at(ahead + 1, CountToken) ? ahead - 1 : 0;
      if (this.separator(ahead)) return 0;
    }
    return 0;
  }

  /** "until there are 17 sts between markers", "until 12 sleeve sts rem": a goal of a part, which the whole count does not reach. */
  private partGoal(): boolean {
    if (!this.at(1, W.Inc, W.Dec)) return false;
    const clause = (this.text.slice(this.from(), this.from() + 200).split(/[.;]/)[0] ?? '').replace(/\s+/g, ' ');
    return /\buntil (?:there are )?[\d ([\]),:–]+ ?(?:(?:sleeve|body|front|back|gusset|thumb) (?:sts|stitches)|(?:sts|stitches) (?:rem(?:ain)? )?(?:between|(?:in|on|for) (?:each|every|both|the (?:sleeves?|fronts?|backs?))))\b/i.test(
      clause,
    );
  }

  protected shapeAhead(): boolean {
    if (this.partGoal()) return false;
    const skipped = this.placeBefore() || this.scheduleBefore();
    if (skipped > 0) return this.at(skipped + 1, W.Inc, W.Dec) && this.at(skipped + 2, CountToken);
    // "Cont to dec 2 sts at the centre of every RS row"
    if (this.at(1, W.Cont))
      return (
        (this.at(2, W.To)
          ? this.at(3, W.Inc, W.Dec) && (this.at(4, CountToken) || this.atEnds(4))
          : this.at(2, W.Inc, W.Dec) && (this.at(3, CountToken) || this.atEnds(3))) && this.within(4, 12, W.Every, W.Each, W.Alt)
      );
    if (this.stitchShapes() !== 0) return true;
    if (!this.at(1, W.Inc, W.Dec)) return false;
    // "Decrease once at each end of next row"
    if (this.at(2, TimesNumber)) return this.image(2) === 'once' && this.at(3, W.At, W.Each, W.On);
    // "Inc in first and last st of every 6th row"
    if (this.firstAndLast(2) > 0) return this.segmentAhead(this.firstAndLast(2) + 1) || this.separator(this.firstAndLast(2) + 1);
    if (this.at(2, W.Every, W.Alt)) return this.segmentAhead(2) && this.within(3, 8, W.End, W.Edge, W.Marker);
    if (this.at(2, CountToken)) {
      let ahead = 3;
      if (this.at(ahead, W.St)) ahead += 1;
      if (this.endOfLastRow(ahead) || this.centreOfLastRow(ahead)) return false;
      return (
        (this.at(ahead, W.At, W.Each, W.Every, W.On, W.In, W.Alt, W.Next) &&
          !(this.at(ahead, W.In) && this.at(ahead + 1, W.Next) && this.at(ahead + 2, W.St)) &&
          !(this.at(ahead, W.On) && this.at(ahead + 1, W.Last))) ||
        this.at(ahead, W.Beg, W.End) ||
        (this.at(ahead, W.Past) && this.within(ahead + 1, 3, W.Marker)) ||
        // "before and after each marker", "either side of each marker"
        ((this.at(ahead, W.Before, W.After) || /^either$/.test(this.image(ahead))) && this.within(ahead, 6, W.Marker))
      );
    }
    return this.at(2, W.At, W.Each);
  }

  /** Tokens up to the end of "in first and last st" from `from` on; 0 when the words are others. */
  private firstAndLast(from: number): number {
    const at = this.at(from, W.In, W.Into) ? from + 1 : from;
    return at > from && this.at(at, W.First) && this.at(at + 1, W.And) && this.at(at + 2, W.Last) && this.at(at + 3, W.St) ? at + 3 : 0;
  }

  /** Stitches that "k2tog at each end of next 4 rows" gains or loses at each place; 0 when no stitch is put there by a schedule. */
  /** "at each end of", "at both ends of": one stitch, where no number is told. */
  private atEnds(ahead: number): boolean {
    return this.at(ahead, W.At) && this.at(ahead + 1, W.Each, W.End) && this.within(ahead + 1, 3, W.End);
  }

  private stitchShapes(): number {
    if (!this.at(1, Stitch)) return 0;
    const { entry, values } = this.payload(1) ?? {};
    if (entry === undefined || (values ?? [1]).length !== 1) return 0;
    if (entry.kind !== 'decrease' && entry.kind !== 'increase' && entry.kind !== 'doubleDecrease') return 0;
    let at = 2;
    if (this.at(at, TimesNumber) && this.image(at) === 'once') at += 1;
    if (!this.at(at, W.At, W.On)) return 0;
    for (at += 1; at < 9; at += 1) {
      if (this.segmentAhead(at)) break;
      if (!this.at(at, W.Each, W.End, W.Edge, W.Beg, W.And, W.Of, W.Needle, W.Centre, Word)) return 0;
    }
    if (!this.segmentAhead(at) || !this.within(2, at, W.End, W.Edge, W.Beg)) return 0;
    const use = stitchUse(entry, values?.[0] ?? 1);
    return use.makes - use.takes;
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
    this.MANY2({ GATE: () => !this.at(1, W.Inc, W.Dec) && this.stitchShapes() === 0, DEF: () => this.CONSUME3(Any) });
    const before = this.ACTION(() => this.words(start, this.from()).toLowerCase());
    const net = this.ACTION(() => this.stitchShapes());
    const head = this.CONSUME(Any) as KnitToken;
    const count = this.OPTION(() => this.SUBRULE(this.count));
    this.option(24, { GATE: () => this.at(1, TimesNumber) && this.image(1) === 'once', DEF: () => this.consume(24, Any) });
    this.OPTION1({ GATE: () => this.at(1, W.St), DEF: () => this.CONSUME1(Any) });
    const from = this.ACTION(() => this.from());
    this.option(25, {
      GATE: () => this.firstAndLast(1) > 0,
      DEF: () => this.many(25, { GATE: () => !this.at(0, W.St), DEF: () => this.consume(25, Any) }),
    });
    this.MANY({
      GATE: () =>
        (!this.segmentAhead(1) ||
          (this.at(1, W.Next, W.First, Ordinal) && this.at(2, W.Marker)) ||
          (this.at(1, W.Ending) && this.at(0, W.Each))) &&
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
          W.After,
        ) ||
          (this.at(1, CountToken) && this.at(0, W.Centre) && this.at(2, W.St)) ||
          (this.at(1, CountToken) && this.at(2, W.Marker)) ||
          (this.at(1, W.After) && this.within(2, 3, W.Marker)) ||
          (this.at(1, W.First, W.Last, Ordinal) && this.at(2, W.Marker)) ||
          (this.at(1, W.St) && (this.at(0, W.Centre) || this.at(-1, W.Centre))) ||
          (this.at(1, W.Ending) && this.at(0, W.Each)) ||
          // "dec 1 st at each end as before on every foll 4th row"
          (this.at(1, W.As) && /^(?:before|set|above)$/.test(this.image(2))) ||
          (this.at(1, W.Set) && this.at(0, W.As)) ||
          (this.at(1, W.Patt) && /^as /.test(this.image(1))) ||
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
      // "inc 1 st every 6th row at each end": the place stands behind the rows
      const told = this.words(from, to).toLowerCase();
      const placed = /\b(?:ends?|edges?|sides?|slope|beg|beginning|markers?|m|centre|center|last)\b/.test(`${before} ${told}`);
      const words = `${before} ${placed ? told : this.words(from, this.LA(0).startOffset + this.LA(0).image.length).toLowerCase()}`;
      const named = same ? null : placesNamed(words);
      const place: Shape['place'] = same ? 'edge' : (named?.place ?? edgeWords(words));
      const one: Count = { type: 'count', values: [Math.abs(net) || 1], span: this.tokenSpan(head) };
      const many = count ?? one;
      return {
        type: 'shape',
        change: head.tokenType === W.Inc || net > 0 ? 'inc' : 'dec',
        count: named === null ? many : { ...many, values: many.values.map((value) => (value === null ? null : value * named.places)) },
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
    const set = this.at(1, Semicolon, Colon, Dash) && this.at(2, W.Ending, W.End);
    const ahead = this.at(1, Comma) || set ? 2 : 1;
    const at = this.at(ahead, W.And) ? ahead + 1 : ahead;
    // "at each end on 5th row" ends nothing
    if (at === 1 && this.at(0, W.Each)) return false;
    if (this.countAhead(at)) return false;
    return (
      // "rep row 4, ending p2" says how the row ends, and no side
      (this.at(at, W.Ending) && !(this.at(at + 1, Stitch) && !this.at(at + 2, W.Row, W.Round))) ||
      (this.at(at, W.End) && this.at(at + 1, W.With, W.On, W.After) && !/^no /.test(this.image(at))) ||
      (this.at(at, W.End) &&
        this.image(at) === 'end' &&
        this.at(at + 1, W.Rs, W.Ws) &&
        (this.separator(at + 2) || this.at(at + 2, W.Row, W.Facing))) ||
      (this.at(at, Word) && /^(having|ready)$/.test(this.image(at)))
    );
  }
}
