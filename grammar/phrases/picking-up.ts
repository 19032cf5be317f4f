/**
 * Stitches that come to the needle in one pass: picked up along an edge, or taken from a holder.
 *
 *     pick up and k 22 [22: 25] sts down left front neck, 4 along row ends and 22 up right front neck · knit up 34 sts
 *     k across 16 sts on front holder · return 52 held sts to needle · 1 st from safety pin
 */
import {
  Any,
  Close,
  Colon,
  Comma,
  Count as CountToken,
  Dash,
  type KnitToken,
  Name,
  Open,
  PlainStitch,
  Semicolon,
  SlipStitch,
  Stitch,
  W,
  Word,
} from '../tokens.ts';
import type { Count, Marker, PickUp, TakeUp } from '../tree.ts';
import { holderNamed } from './holder-names.ts';
import { Marks } from './marks.ts';

const measureWords = [W.Cm, W.Mm, W.Inch];
/** Words that say where along an edge stitches are picked up. */
const along = /^(down|up|along|across|around|round|over|from|at|on|in|evenly|each|for|between|to|into)$/;

/** "including the 12 sts on the holder" holds stitches that are there; "including the side edge of the neckband" is one more edge. */
const includesHeld = (words: string): boolean =>
  /\bincl(?:uding|udes|\.)?\s[^,;]*\b(?:sts?|stitch(?:es)?|holders?|held|pins?)\b/i.test(words);

/** "30 along each side" in a list of what makes up one band: both sides are picked up in the one pass. */
function bothSides(step: PickUp | TakeUp | Marker): PickUp | TakeUp | Marker {
  if (
    step.type !== 'pickUp' ||
    step.count === null ||
    !/\b(?:each|both|either) (?:sides?|edges?|ends?|fronts?|slopes?)\b/i.test(step.along ?? '')
  )
    return step;
  return { ...step, count: { ...step.count, values: step.count.values.map((value) => (value === null ? null : value * 2)) } };
}

/** "in every other row", "in every 3rd row": of how many rows one is taken, from two on. */
const everyNth = [/^(?:other|alt(?:ernate)?|second|2nd)\b/i, /^(?:third|3rd)\b/i, /^(?:fourth|4th)\b/i];

export class PickingUp extends Marks {
  protected pickUpAhead(): boolean {
    if (!this.at(1, W.PickUp)) return false;
    if (this.at(2, W.And) && this.at(3, PlainStitch) && this.payload(3)?.values !== undefined) return true;
    // "pick up, but do not knit, 12 sts"
    if (this.at(2, Comma, Open))
      for (let ahead = 3; ahead < 9; ahead += 1) if (this.at(ahead, Comma, Close)) return this.at(ahead + 1, CountToken);
    return (
      this.at(2, CountToken) ||
      (this.at(2, Word) && this.at(3, CountToken)) ||
      this.at(2, W.St) ||
      (this.at(2, W.Evenly) && this.at(3, CountToken)) ||
      this.listHead() > 0 ||
      (this.at(2, W.More) && this.at(3, CountToken))
    );
  }

  /** "pick up and k 22 [22: 25] sts down left front neck"; a second number under the same verb is another of these. */
  override pickUpStep = this.RULE('pickUpStep', (): PickUp => {
    const start = this.from();
    const head = this.CONSUME(W.PickUp) as KnitToken;
    const state: { inside: Count | null; per: KnitToken | null } = { inside: null, per: null };
    this.MANY({
      GATE: () => (this.at(1, Word, W.Evenly, W.More) && !this.at(1, CountToken)) || this.asideBeforeCount(),
      DEF: () => this.CONSUME1(Any),
    });
    // "pick up and k1 st in each cast-on st"
    this.OPTION({
      GATE: () => this.at(1, W.And) && this.at(2, PlainStitch),
      DEF: () => {
        this.CONSUME4(Any);
        const token = this.CONSUME5(Any) as KnitToken;
        this.ACTION(() => {
          state.inside = this.countInside(token);
        });
      },
    });
    const count = this.OPTION1({ GATE: () => this.at(1, CountToken), DEF: () => this.SUBRULE(this.count) });
    this.MANY1({
      GATE: () => this.at(1, W.St, W.Evenly, W.More) || (this.at(1, Word) && this.at(2, W.St) && !/^out$/.test(this.image(1))),
      DEF: () => this.CONSUME2(Any),
    });
    const from = this.ACTION(() => this.from());
    this.MANY2({
      GATE: () => this.alongGoesOn(),
      DEF: () => {
        const token = this.CONSUME3(Any) as KnitToken;
        this.ACTION(() => {
          if (this.at(0, CountToken)) state.per ??= token;
        });
      },
    });
    return this.ACTION((): PickUp => {
      const end = this.LA(0).startOffset + this.LA(0).image.length;
      const words = this.words(from, end);
      const told = this.words(start, end);
      const verb: PickUp['verb'] = /\b(?:not|without) (?:knit|work)|^pick(?:ing)? up (?:\S+ )?(?:\([^)]*\) )?loops?\b/i.test(told)
        ? 'loops'
        : /purl|& ?p$|and p$/i.test(head.image)
          ? 'purl'
          : 'knit';
      return {
        type: 'pickUp',
        ...this.perEdge(count ?? state.inside, words, state.per, head),
        verb,
        along: words === '' ? null : words,
        includingHeld: includesHeld(words),
        span: this.span(start),
      };
    });
  });

  /**
   * What the words behind the number say of it: "for every 4 rows", "in each st", "per bound-off st" make it a ratio;
   * "in each of the 8 cast-on sts" tells how many there are.
   */
  private perEdge(count: Count | null, words: string, per: KnitToken | null, head: KnitToken): Pick<PickUp, 'count' | 'ratio'> {
    // "3/4 of the rows": three for every four
    const part = /^\/ ?\d+ of (?:the |all )?(row|rnd|st|ridge)/i.exec(words)?.[1];
    if (part !== undefined && per !== null && count !== null)
      return { count: null, ratio: { sts: count, per: this.countOf(per), unit: /^st/i.test(part) ? 'st' : 'row' } };
    const each = /^(?:(?:out of|of|for|in|into) (?:every|each)|per)\b(.*)$/i.exec(words)?.[1];
    if (each === undefined) return { count };
    const sts = count ?? this.countOf(head, [1]);
    if (/^ of (?:the |next |first |these )*\d/i.test(each) && per !== null) {
      const number = this.countOf(per);
      const [one] = sts.values;
      return { count: { ...number, values: number.values.map((value) => (value === null ? null : value * (one ?? 1))) } };
    }
    const unit = /\b(sts?|stitch(?:es)?|rows?|rnds?|rounds?|ridges?|ends?|loops?|edge)\b/i.exec(each)?.[1] ?? 'st';
    const skips = everyNth.findIndex((nth) => nth.test(each.trim()));
    const beside = /^ ?(?:the )?\d/.test(each) && per !== null ? this.countOf(per) : { ...sts, values: [skips < 0 ? 1 : skips + 2] };
    return { count: null, ratio: { sts, per: beside, unit: /^(?:row|rnd|round|ridge)/i.test(unit) ? 'row' : 'st' } };
  }

  /** ", but do not knit," or "(do not knit)" between the verb and the number. */
  private asideBeforeCount(): boolean {
    if (this.at(1, CountToken)) return false;
    for (let back = 0; back > -8; back -= 1) {
      if (this.at(back, W.PickUp)) return this.at(back + 1, Comma, Open);
      if (this.at(back, CountToken)) return false;
    }
    return false;
  }

  /** Whether the next word still says where stitches are picked up. */
  private alongGoesOn(): boolean {
    if (this.at(1, Comma) && /^(including|includes|incl\.?)$/.test(this.image(2))) return true;
    // ", one from each slipped st": says how, and picks up nothing more
    if (this.at(1, Comma)) return this.perStitch(2);
    // "across the purl bumps"
    if (this.at(1, PlainStitch) && this.at(2, Word) && /^(?:bumps?|ridges?|side)$/.test(this.image(2))) return true;
    if (this.separator() || this.at(1, Dash, Colon, Open, W.Then, PlainStitch, W.Turn, W.PickUp)) return false;
    if (this.at(1, CountToken) && this.at(0, Comma)) return true;
    if (this.at(1, W.And)) {
      if (this.pickContinues() > 0 || !this.at(2, Word, W.Rs, W.Other, W.Across, W.Around, W.Edge, W.Centre, W.Beg)) return false;
      return !(this.at(2, Word) && /^(turn|join|place|knit|work|pick)/.test(this.image(2)));
    }
    if (this.at(1, Stitch)) return this.payload(1)?.entry?.kind === 'other' || this.payload(1)?.entry?.kind === 'slip';
    return !(this.at(1, CountToken) && this.at(2, W.St) && !this.at(0, W.For, W.Every, W.Each) && !this.includingBehind());
  }

  /** "including the 8 sts on holder": the number is part of the one told before. */
  private includingBehind(): boolean {
    for (let back = 0; back > -4; back -= 1) {
      if (/^(?:including|includes|incl)$/.test(this.image(back))) return true;
      if (!this.at(back, Word, W.The, W.These)) return false;
    }
    return false;
  }

  /** "one in each ridge", "1 st for every 2 rows". */
  private perStitch(from: number): boolean {
    const way = this.at(from + 1, W.St) ? from + 2 : from + 1;
    return this.at(from, CountToken) && this.at(way, W.In, W.Into, W.From, W.For) && this.at(way + 1, W.Each, W.Every);
  }

  /** Tokens of "pick up stitches evenly:", "pick up and knit sts as follows:" before the first number; 0 when no list is opened so. */
  private listHead(): number {
    for (let ahead = 2; ahead < 8; ahead += 1) {
      if (this.at(ahead, Colon)) return this.at(ahead + 1, CountToken) && ahead > 2 ? ahead : 0;
      if (!this.at(ahead, W.St, W.Evenly, W.As, W.Foll, Word)) return 0;
    }
    return 0;
  }

  /** Whether a marker stands between two numbers of a list: "19 sts down left front, pm, 1 st from centre front, pm, …". */
  private markerBetween(): boolean {
    if (!this.at(1, Comma, W.And)) return false;
    const marker =
      (this.at(2, Stitch) && this.payload(2)?.entry?.kind === 'marker') || /^(?:pm|plm)$/.test(this.image(2))
        ? 3
        : this.at(2, W.Place) && this.at(3, W.Marker)
          ? 4
          : 0;
    if (marker === 0 || !this.at(marker, Comma, W.And, W.Then)) return false;
    let ahead = marker;
    while (this.at(ahead, Comma, W.And, W.Then)) ahead += 1;
    return this.at(ahead, CountToken) && this.alongAfter(ahead + 1);
  }

  /** All that one verb governs: "pick up and k 34 sts across back neck, 24 down left front and 24 up right front". */
  pickUpSteps = this.RULE('pickUpSteps', (): (PickUp | TakeUp | Marker)[] => {
    const steps: (PickUp | TakeUp | Marker)[] = [];
    const list = { head: 0 };
    const begins = this.from();
    this.ACTION(() => {
      list.head = this.listHead();
    });
    const first = this.OR([
      {
        GATE: () => list.head > 0,
        ALT: () => {
          const verb = this.CONSUME2(Any) as KnitToken;
          this.MANY2({ GATE: () => !this.at(0, Colon), DEF: () => this.CONSUME3(Any) });
          return this.SUBRULE1(this.pickMore, { ARGS: [/purl|& ?p$|and p$/i.test(verb.image) ? 'purl' : 'knit'] });
        },
      },
      { ALT: () => this.SUBRULE(this.pickUpStep) },
    ]) as PickUp | TakeUp;
    this.ACTION(() => steps.push({ ...first, span: { start: this.base + begins, end: first.span.end } }));
    this.MANY({
      GATE: () => this.pickContinues() > 0 || this.markerBetween(),
      DEF: () => {
        this.OPTION({
          GATE: () => this.markerBetween(),
          DEF: () => {
            this.CONSUME1(Any);
            const marker = this.SUBRULE(this.markerStep);
            this.ACTION(() => steps.push(marker));
          },
        });
        const skip = { left: 0 };
        this.ACTION(() => {
          skip.left = this.pickContinues() - 1;
        });
        this.MANY1({
          GATE: () => skip.left > 0,
          DEF: () => {
            this.CONSUME(Any);
            this.ACTION(() => {
              skip.left -= 1;
            });
          },
        });
        const next = this.SUBRULE(this.pickMore, { ARGS: [first?.type === 'pickUp' ? first.verb : 'knit'] });
        this.ACTION(() => steps.push(next));
      },
    });
    return this.ACTION(() => (steps.length > 1 ? steps.map(bothSides) : steps));
  });

  /** Whether a list goes on: "and 4 sts down right back neck", ", then 24 up right front", ", 16 sts from holder". */
  private pickContinues(): number {
    let ahead = 1;
    // "(1 in each garter ridge), then 3 sts from …": the bracket says how, the list goes on.
    if (this.at(1, Open) && this.payload(1)?.holds === 'remark') {
      while (ahead < 14 && !this.at(ahead, Close)) ahead += 1;
      if (!this.at(ahead, Close) || !this.at(ahead + 1, Comma, W.And, W.Then)) return 0;
      ahead += 1;
    }
    const begins = ahead;
    while (this.at(ahead, Comma, W.And, W.Then, Semicolon, W.Plus)) ahead += 1;
    if (ahead === begins || !this.at(ahead, CountToken)) return 0;
    let next = ahead + 1;
    while (this.at(next, W.St, W.Evenly, W.More)) next += 1;
    if (this.at(next, W.Rem)) return 0;
    return this.alongAfter(next) ? ahead : 0;
  }

  /** Whether words that say where stitches are picked up stand `from` tokens on, behind the number. */
  private alongAfter(from: number): boolean {
    let next = from;
    while (this.at(next, W.St, W.Evenly, W.More)) next += 1;
    if (/^per$/.test(this.image(next))) return true;
    if (
      this.at(next, Word, W.From, W.Across, W.Around, W.At, W.On, W.In, W.For, W.Each, W.To, W.Between, W.Into) &&
      along.test(this.image(next).split(' ')[0] ?? '')
    )
      return true;
    return this.at(next, W.Across, W.Around);
  }

  private pickMore = this.RULE('pickMore', (verb: PickUp['verb'] = 'knit'): PickUp | TakeUp => {
    const start = this.from();
    const count = this.SUBRULE(this.count);
    this.MANY({ GATE: () => this.at(1, W.St, W.Evenly, W.More), DEF: () => this.CONSUME(Any) });
    const from = this.ACTION(() => this.from());
    const state: { per: KnitToken | null } = { per: null };
    this.MANY1({
      GATE: () => this.alongGoesOn(),
      DEF: () => {
        const token = this.CONSUME1(Any) as KnitToken;
        this.ACTION(() => {
          if (this.at(0, CountToken)) state.per ??= token;
        });
      },
    });
    return this.ACTION((): PickUp | TakeUp => {
      const words = this.words(from, this.LA(0).startOffset + this.LA(0).image.length);
      const span = this.span(start);
      // The verb of the list works held stitches too.
      const holder = holderNamed(words.toLowerCase());
      if (holder !== null) return { type: 'takeUp', count, name: holder === '' ? null : holder, worked: true, net: null, span };
      const told = this.perEdge(count, words, state.per, this.LA(0) as KnitToken);
      return { type: 'pickUp', ...told, verb, along: words === '' ? null : words, includingHeld: includesHeld(words), span };
    });
  });
}
