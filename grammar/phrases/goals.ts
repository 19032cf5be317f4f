/**
 * What ends a stretch of rows, and the side of its last row.
 *
 *     until armhole measures 19 cm · until 76 sts rem · until 96 rows have been worked · ending with a WS row · when front measures 28 cm
 */

import type { Sized } from '../count.ts';
import {
  Any,
  Close,
  Colon,
  Comma,
  Count as CountToken,
  Dash,
  Equals,
  Fabric,
  FullStop,
  type KnitToken,
  Name,
  Open,
  Ordinal,
  rowWords,
  Semicolon,
  TimesNumber,
  W,
  Word,
} from '../tokens.ts';
import type { Count, EndSide, Goal } from '../tree.ts';
import { ShapedEdges } from './edge-rows.ts';

/** A goal of a part: "until sleeves have 52 sts each", "until 12 sleeve sts rem". */
const partGoal =
  /^(?:the |each )?(?:sleeves?|fronts?|backs?|body|gussets?|thumbs?) (?:has|have|is|are|consists?)\b|\d[^.]*\b(?:sleeve|body|front|back|gusset|gore|thumb) (?:sts?|stitch(?:es)?)\b/;

/** A goal of one needle of the round: "until there are 44 sts on N2", "until 28 sts rem on needle 2". */
const oneNeedle = /\b(?:on|in) (?:(?:each of|both|each) )?((?:n|ndl|needle) ?[1-5])\b/;

export class Goals extends ShapedEdges {
  /** "ending with a WS row", "ending with RS facing for next row", "ending with Row 4", "ending at side edge". */
  override endSide = this.RULE('endSide', (): EndSide => {
    const start = this.from();
    const numbers: { row: Sized | null; before: Count | null } = { row: null, before: null };
    this.MANY({ GATE: () => this.at(1, Comma, W.And, Semicolon, Colon, Dash), DEF: () => this.CONSUME(Any) });
    this.CONSUME1(Any);
    this.MANY1({
      GATE: () =>
        !this.separator() && !this.at(1, Dash, W.Then, Open) && !(this.at(1, W.And) && !this.at(2, W.Ending)) && !this.at(1, W.SameTime),
      DEF: () => {
        const token = this.CONSUME2(Any) as KnitToken;
        this.ACTION(() => {
          if (this.at(0, CountToken) && this.at(1, W.St) && this.at(2, W.Before)) numbers.before = this.countOf(token);
          else if (this.at(0, CountToken) && this.at(-1, ...rowWords) && numbers.row === null) numbers.row = token.payload?.values ?? null;
          if (this.at(0, Ordinal) && (this.at(1, ...rowWords) || (this.at(1, W.Patt) && this.at(2, ...rowWords))))
            numbers.row = token.payload?.values ?? null;
        });
      },
    });
    return this.ACTION((): EndSide => {
      const words = this.words(start, this.LA(0).startOffset + this.LA(0).image.length)
        .toLowerCase()
        .replace(/right[- ]side/g, 'rs')
        .replace(/wrong[- ]side/g, 'ws');
      const facing = /\b(rs|ws)\b[^.]*facing|facing.*\b(rs|ws)\b|ready (?:to work|for) (?:a |an )?\b(rs|ws)\b/.exec(words);
      const side = /\b(rs|ws)\b/.exec(words)?.[1];
      const stitch = /\b(k|knit|p|purl)\b\.? (?:row|rnd)/.exec(words)?.[1];
      let last: EndSide['last'] = null;
      if (facing) last = (facing[1] ?? facing[2] ?? facing[3]) === 'rs' ? 'WS' : 'RS';
      else if (side) last = side === 'rs' ? 'RS' : 'WS';
      else if (stitch) last = stitch.startsWith('k') ? 'RS' : 'WS';
      return {
        type: 'endSide',
        last,
        row: numbers.row,
        edge: /at (?:the )?(\w+) edge/.exec(words)?.[1] ?? null,
        ...(numbers.before === null ? {} : { before: numbers.before }),
        span: this.span(start),
      };
    });
  });

  /** What ends a stretch of rows, after "until": "armhole measures 19 cm", "76 sts rem", "you have worked 16 rounds". */
  override goal = this.RULE('goal', (): Goal => {
    const start = this.from();
    const state: {
      measures: boolean;
      number: KnitToken | null;
      last: KnitToken | null;
      unit: 'cm' | 'mm' | 'in' | null;
      st: boolean;
      rows: boolean;
      matches: boolean;
      end: number;
      nameEnd: number;
      less: boolean;
      fromWords: number;
    } = {
      measures: false,
      number: null,
      last: null,
      unit: null,
      st: false,
      rows: false,
      matches: false,
      end: 0,
      nameEnd: start,
      less: false,
      fromWords: -1,
    };
    this.MANY({
      GATE: () => !this.goalEnds(state.unit !== null || state.st || state.rows),
      DEF: () => {
        const token = this.CONSUME(Any) as KnitToken;
        this.ACTION(() => {
          if (this.at(0, W.Measures)) {
            state.measures = true;
            state.nameEnd = token.startOffset;
          } else if (this.at(0, CountToken)) {
            state.last = token;
            state.number ??= token;
          } else if (this.at(0, W.Cm, W.Mm, W.Inch) || (this.at(0, W.In) && this.at(-1, CountToken))) {
            if (state.unit === null) {
              state.unit = this.at(0, W.Cm) ? 'cm' : this.at(0, W.Mm) ? 'mm' : 'in';
              state.number = state.last;
            }
          } else if (this.at(0, W.St)) state.st = true;
          else if (this.at(0, W.Row, W.Round) && this.at(-1, CountToken)) state.rows = true;
          else if (this.at(0, W.Matches)) {
            state.matches = true;
            state.nameEnd = token.startOffset;
          } else if (this.at(0, W.From) && state.unit !== null) state.fromWords = token.startOffset;
        });
      },
    });
    return this.ACTION((): Goal => {
      const end = this.LA(0).startOffset + this.LA(0).image.length;
      const words = this.words(start, end).toLowerCase();
      const name =
        this.words(start, state.nameEnd)
          .toLowerCase()
          .replace(/^(the|a) /, '') || null;
      const { number } = state;
      if (number !== null && state.unit !== null) {
        const span = { start: this.base + number.startOffset, end: this.base + end };
        return {
          kind: 'measure',
          of: name,
          values: number.payload?.values ?? [1],
          unit: state.unit,
          from:
            state.fromWords < 0
              ? (/\bthan (?:the )?(.+)$/.exec(words)?.[1] ?? null)
              : this.words(state.fromWords, end).replace(/^from /i, ''),
          span,
          shorter: /shorter|less/.test(words),
        };
      }
      if (
        (/\ball .*\b(?:worked|used|taken (?:in|up)|joined|knitted (?:on|in|up))\b/.test(words) && number === null) ||
        /^all\b.*\b(?:worked|used|taken (?:in|up)|joined|on (?:one|the|a single) needle)/.test(words) ||
        /^no (?:more )?(?:sts|stitches)\b.*(?:unworked|rem)/.test(words)
      )
        return { kind: 'allWorked' };
      const marked = marksIn(words);
      if (number !== null && marked !== null)
        return { kind: 'marks', of: marked, count: this.countOf(number), eachSide: /each|both|either/.test(words) };
      // "until 5 rows before armhole shaping": up to a place that no number of rows tells
      if (state.rows && /\b(?:rows?|rnds?|rounds?) (?:before|short of|away from|from)\b/.test(words)) return { kind: 'loose', text: words };
      const less =
        state.rows && number !== null
          ? /\b(?:less|fewer|shorter)(?: (?:have|has) been worked)? (?:than|to)(?: on| for| the)*\s+(.*?)(?: (?:have|has) been worked)?$/.exec(
              words,
            )
          : null;
      if (less !== null && number !== null) return { kind: 'matches', name: less[1] || null, fewer: this.countOf(number) };
      if (state.matches)
        return { kind: 'matches', name: words.replace(/^.*(?:match\w*|same as|length as)\s*/, '').replace(/\bthe (?=\w)/g, '') || null };
      // A ridge is two rows of garter stitch.
      if (number !== null && /\bridges\b/.test(words))
        return {
          kind: 'rows',
          count: {
            ...this.countOf(number),
            values: (number.payload?.values ?? [1]).map((value: number | null) => (value === null ? null : value * 2)),
          },
        };
      if (number !== null && state.rows && !state.st) return { kind: 'rows', count: this.countOf(number) };
      if (number !== null && (state.st || /\brem/.test(words))) {
        const sense = /\b(?:before|to) (?:the )?(?:first |next |side )?(?:m|mkr|marker)\b/.test(words)
          ? 'markers'
          : /\b(?:between|from) (?:(?:the|each|these|both|two|2|gusset|side|thumb|raglan) )*(?:m|ms|mkrs?|markers?)\b/.test(words)
            ? 'markers'
            : /unwrapped|between|\bbefore (?:the )?(?:last |next )?(?:ds|double|wrap|twin|pin|gap|turn)/.test(words)
              ? 'between'
              : /unworked|\bgap\b.*\bfrom\b/.test(words)
                ? 'unworked'
                : /on each|each side|in each|each needle/.test(words) && !oneNeedle.test(words)
                  ? 'section'
                  : oneNeedle.test(words)
                    ? 'needle'
                    : partGoal.test(words)
                      ? 'markers'
                      : 'total';
        return {
          kind: 'count',
          count: this.countOf(number),
          sense,
          scope:
            oneNeedle.exec(words)?.[1] ??
            /(?:in|for|on) ((?:the )?[a-z ]+)$/.exec(words)?.[1] ??
            /\b(sleeve|body|front|back)s?\b/.exec(sense === 'markers' ? words : '')?.[1] ??
            null,
        };
      }
      if (number !== null && /buttonhole/.test(words)) return { kind: 'loose', text: words };
      return { kind: 'loose', text: words };
    });
  });

  /** "5 cm in rib": the fabric stands behind the measure. */
  protected fabricBehind(): boolean {
    const unit = this.at(0, W.More) ? -1 : 0;
    if (!this.at(unit, W.Cm, W.Inch, W.Mm, Close) && !(this.at(unit, W.In) && this.at(unit - 1, CountToken))) return false;
    if (this.at(1, Fabric, W.Patt, W.Rib)) return true;
    return this.at(1, W.In, W.Of) && this.at(2, Fabric, W.Patt, W.Rib, Name);
  }

  private goalEnds(settled: boolean): boolean {
    if (this.at(1, Semicolon, Colon, Dash) && this.endingSideAhead()) return true;
    if (Number.isNaN(this.LA(1).startOffset) || this.at(1, FullStop, Semicolon, Dash, W.SameTime)) return true;
    // "until there are 56 sts: 28 sts on each needle"
    if (this.at(1, Colon, Equals) && this.at(0, W.St, W.Rem) && this.at(2, CountToken)) return true;
    // the bracket of a second unit: 12" (30.5 cm)
    if (this.at(1, Close)) return !this.at(0, W.Cm, W.Inch, W.Mm, W.In);
    if (this.at(1, Open)) return !(this.payload(1)?.holds === 'measure' || this.payload(1)?.holds === 'remark');
    if (this.endingSideAhead()) return true;
    if (settled && this.fabricBehind()) return true;
    if (this.at(1, Comma)) return settled || this.at(2, W.Omitting, W.Ending, W.End, W.Inc, W.Dec, W.Then) || this.endingSideAhead();
    if (this.at(1, W.Then)) return true;
    if (this.at(1, W.Inc, W.Dec) && settled) return true;
    if (this.at(1, W.And) && settled)
      return (
        this.at(2, W.Ending, W.Work, W.Inc, W.Dec, W.SameTime, W.BindOff, W.Cont) ||
        (this.at(2, Word) && /^(remov|slip|work)/.test(this.image(2)))
      );
    return false;
  }

  protected triggerAhead(): boolean {
    if (this.at(1, TimesNumber) && this.image(1) === 'once') return this.within(2, 10, W.Measures, W.Matches);
    if (this.soonAhead()) return this.within(4, 12, W.Measures, W.Matches);
    return this.at(1, Word) && /^(when|once|after|before)$/.test(this.image(1)) && !this.at(2, Comma);
  }

  /** "As soon as work measures 20 cm" */
  private soonAhead(): boolean {
    return this.at(1, W.As) && this.at(2, Word) && this.image(2) === 'soon' && this.at(3, W.As);
  }

  /** "when front measures 28 cm, ending with Row 2": what sets off the second track. */
  trigger = this.RULE('trigger', (): { when: Goal; ending: EndSide | null } => {
    this.OPTION1({
      GATE: () => this.soonAhead(),
      DEF: () => {
        this.CONSUME1(Any);
        this.CONSUME2(Any);
      },
    });
    this.CONSUME(Any);
    const when = this.SUBRULE(this.goal);
    const ending = this.OPTION({ GATE: () => this.endingSideAhead(), DEF: () => this.SUBRULE(this.endSide) });
    return this.ACTION(() => ({ when, ending: ending ?? null }));
  });
}

/** The mark that a goal counts: "12 wrapped sts on each side", "9 DS at each edge"; "between wraps" counts what is not marked. */
function marksIn(words: string): Extract<Goal, { kind: 'marks' }>['of'] | null {
  if (/\bbetween\b|\bunwrapped\b|\bunworked\b|\bsingle\b|\b(?:before|past|beyond|after)\b/.test(words)) return null;
  if (/\bwrapped (?:sts?|stitch(?:es)?)\b|\bwraps\b/.test(words)) return 'wrapped';
  if (/\bds\b|\bdouble (?:sts?|stitch(?:es)?)\b/.test(words)) return 'double';
  if (/\btwins?\b/.test(words)) return 'twin';
  return /\bpins\b/.test(words) ? 'pin' : /\byos\b/.test(words) ? 'yarnOver' : null;
}
