/**
 * Several rows: plain rows, rows worked over, rows worked to a length, rows told by reference.
 *
 *     Beg with a k row, work 10 rows in st st · Rep last 2 rows 9 times more · Rep Rows 3 and 4 until hood measures 18 cm
 *     Cont straight until armhole measures 19 cm, ending with a WS row · As Row 2 · Work as given for Back to **
 */
import { Any, Close, Comma, Count as CountToken, Dash, Fabric, FullStop, type KnitToken, Mark, Name, Open, Ordinal, PlainStitch, Semicolon, Stitch, TimesNumber, W, Word } from '../tokens.ts';
import type { Sized } from '../count.ts';
import type { Count, Declare, EndSide, Evenly, Goal, Plain, Refer, RepeatRows, RowsNamed, Segment, Statement, Until } from '../tree.ts';
import { Shaping } from './shaping.ts';

const rowWords = [W.Row, W.Round];

/** What stands before the number of plain rows or the word "until". */
interface Head {
  readonly begin: Plain['begin'];
  readonly beginRow: number | null;
  readonly fabric: string | null;
  readonly verb: string;
  readonly as: boolean;
  readonly ending: EndSide | null;
}

/** "in rib as given for back until …": the piece. */
function pieceNamed(words: string): string | null {
  const match = /\b(?:as|like) (?:(?:given|worked|written|instructed) )?(?:for|on) (?:the )?([a-z][a-z ]*)/i.exec(words);
  return match?.[1]?.toLowerCase().replace(/ (?:until|for|to)\b.*$/, '').trim() ?? null;
}

export class Rows extends Shaping {
  /** "ending with a WS row", "ending with RS facing for next row", "ending with Row 4", "ending at side edge". */
  override endSide = this.RULE('endSide', (): EndSide => {
    const start = this.from();
    const numbers: { row: Sized | null } = { row: null };
    this.MANY({ GATE: () => this.at(1, Comma, W.And), DEF: () => this.CONSUME(Any) });
    this.CONSUME1(Any);
    this.MANY1({
      GATE: () => !this.separator() && !this.at(1, Dash, W.Then, Open) && !(this.at(1, W.And) && !this.at(2, W.Ending)) && !this.at(1, W.SameTime),
      DEF: () => {
        const token = this.CONSUME2(Any) as KnitToken;
        this.ACTION(() => { if (this.at(0, CountToken) && this.at(-1, ...rowWords) && numbers.row === null) numbers.row = token.payload?.values ?? null; if (this.at(0, Ordinal) && this.at(1, ...rowWords)) numbers.row = token.payload?.values ?? null; });
      },
    });
    return this.ACTION((): EndSide => {
      const words = this.words(start, this.LA(0).startOffset + this.LA(0).image.length).toLowerCase().replace(/right side/g, 'rs').replace(/wrong side/g, 'ws');
      const facing = /\b(rs|ws)\b[^.]*facing|facing.*\b(rs|ws)\b|ready (?:to work|for) (?:a |an )?\b(rs|ws)\b/.exec(words);
      const side = /\b(rs|ws)\b/.exec(words)?.[1];
      const stitch = /\b(k|knit|p|purl)\b (?:row|rnd)/.exec(words)?.[1];
      let last: EndSide['last'] = null;
      if (facing) last = (facing[1] ?? facing[2] ?? facing[3]) === 'rs' ? 'WS' : 'RS';
      else if (side) last = side === 'rs' ? 'RS' : 'WS';
      else if (stitch) last = stitch.startsWith('k') ? 'RS' : 'WS';
      return { type: 'endSide', last, row: numbers.row, edge: /at (?:the )?(\w+) edge/.exec(words)?.[1] ?? null, span: this.span(start) };
    });
  });

  /** What ends a stretch of rows, after "until": "armhole measures 19 cm", "76 sts rem", "you have worked 16 rounds". */
  override goal = this.RULE('goal', (): Goal => {
    const start = this.from();
    const state: { measures: boolean; number: KnitToken | null; last: KnitToken | null; unit: 'cm' | 'mm' | 'in' | null; st: boolean; rows: boolean; matches: boolean; end: number; nameEnd: number; less: boolean; fromWords: number } = { measures: false, number: null, last: null, unit: null, st: false, rows: false, matches: false, end: 0, nameEnd: start, less: false, fromWords: -1 };
    this.MANY({
      GATE: () => !this.goalEnds(state.unit !== null || state.st),
      DEF: () => {
        const token = this.CONSUME(Any) as KnitToken;
        this.ACTION(() => {
          if (this.at(0, W.Measures)) { state.measures = true; state.nameEnd = token.startOffset; }
          else if (this.at(0, CountToken)) { state.last = token; state.number ??= token; }
          else if (this.at(0, W.Cm, W.Mm, W.Inch) || (this.at(0, W.In) && this.at(-1, CountToken))) { if (state.unit === null) { state.unit = this.at(0, W.Cm) ? 'cm' : this.at(0, W.Mm) ? 'mm' : 'in'; state.number = state.last; } }
          else if (this.at(0, W.St)) state.st = true;
          else if (this.at(0, W.Row, W.Round) && this.at(-1, CountToken)) state.rows = true;
          else if (this.at(0, W.Matches)) { state.matches = true; state.nameEnd = token.startOffset; }
          else if (this.at(0, W.From) && state.unit !== null) state.fromWords = token.startOffset;
        });
      },
    });
    return this.ACTION((): Goal => {
      const end = this.LA(0).startOffset + this.LA(0).image.length;
      const words = this.words(start, end).toLowerCase();
      const name = this.words(start, state.nameEnd).toLowerCase().replace(/^(the|a) /, '') || null;
      const { number } = state;
      if (number !== null && state.unit !== null) {
        const span = { start: this.base + number.startOffset, end: this.base + end };
        return { kind: 'measure', of: name, values: number.payload?.values ?? [1], unit: state.unit, from: state.fromWords < 0 ? null : this.words(state.fromWords, end).replace(/^from /i, ''), span, shorter: /shorter|less/.test(words) };
      }
      if (/all .*(worked|used)/.test(words) && number === null) return { kind: 'allWorked' };
      if (state.matches) return { kind: 'matches', name: words.replace(/^.*(?:match\w*|same as|length as)\s*/, '') || null };
      if (number !== null && state.rows && !state.st) return { kind: 'rows', count: this.countOf(number) };
      if (number !== null && (state.st || /\brem/.test(words))) {
        const sense = /unwrapped|between/.test(words) ? 'between' : /unworked/.test(words) ? 'unworked' : /on each|each side|in each|each needle/.test(words) ? 'section' : 'total';
        return { kind: 'count', count: this.countOf(number), sense, scope: /(?:in|for|on) ((?:the )?[a-z ]+)$/.exec(words)?.[1] ?? null };
      }
      if (number !== null && /buttonhole/.test(words)) return { kind: 'loose', text: words };
      return { kind: 'loose', text: words };
    });
  });

  private goalEnds(settled: boolean): boolean {
    if (Number.isNaN(this.LA(1).startOffset) || this.at(1, FullStop, Semicolon, Dash, W.SameTime, Close)) return true;
    if (this.at(1, Open)) return !(this.payload(1)?.holds === 'measure' || this.payload(1)?.holds === 'remark');
    if (this.endingSideAhead()) return true;
    if (this.at(1, Comma)) return settled || this.at(2, W.Ending, W.End, W.Inc, W.Dec, W.Then) || this.endingSideAhead();
    if (this.at(1, W.Then)) return true;
    if (this.at(1, W.Inc, W.Dec) && settled) return true;
    if (this.at(1, W.And) && settled) return this.at(2, W.Ending, W.Work, W.Inc, W.Dec, W.SameTime, W.BindOff, W.Cont) || (this.at(2, Word) && /^(remov|slip|work)/.test(this.image(2)));
    return false;
  }

  protected repeatRowsAhead(): boolean {
    if (this.at(1, W.Rep)) return !this.at(2, W.From) || this.at(3, Mark) || this.at(3, ...rowWords);
    if (!this.at(1, W.Work)) return false;
    return this.rowsNamedAhead(2);
  }

  private rowsNamedAhead(from: number): boolean {
    if (this.at(from, ...rowWords)) return this.at(from + 1, CountToken);
    if (this.at(from, W.Last, W.These, W.First)) return this.at(from + 1, ...rowWords) || (this.at(from + 1, CountToken) && this.at(from + 2, ...rowWords));
    if (this.at(from, Ordinal)) return this.at(from + 1, ...rowWords, W.And, Dash, W.To);
    for (let ahead = from; ahead < from + 4; ahead += 1) {
      if (this.at(ahead, ...rowWords)) return ahead > from && !this.at(ahead - 1, CountToken);
      if (!this.at(ahead, Word, Name, W.Inc, W.Dec, Fabric, W.Rib, W.These, W.Patt, W.Centre, W.CastOn) || this.separator(ahead)) return false;
    }
    return false;
  }

  /** "last 2 rows", "Rows 1–4 of Leaf pattern", "Rib rnd", "moss st row", "from ** to **". */
  private rowsNamed = this.RULE('rowsNamed', (): RowsNamed => {
    const start = this.from();
    const state: { kind: RowsNamed['kind']; count: Count | null; numbers: number[]; of: string | null; mark: string | null; toMark: string | null; range: boolean; unit: boolean } = { kind: 'name', count: null, numbers: [], of: null, mark: null, toMark: null, range: false, unit: false };
    let nameEnd = start;
    this.OR([
      {
        GATE: () => this.at(1, W.From, Mark),
        ALT: () => {
          this.MANY({ GATE: () => this.at(1, W.From, Mark, W.To, W.Between, W.And) && !(this.at(1, W.And) && !this.at(2, Mark)) && !(this.at(1, W.To) && !this.at(2, Mark)), DEF: () => { const token = this.CONSUME(Any) as KnitToken; this.ACTION(() => { if (this.at(0, Mark)) { if (state.mark === null) state.mark = token.image; else state.toMark = token.image; } }); } });
          this.ACTION(() => { state.kind = 'mark'; });
        },
      },
      {
        GATE: () => this.at(1, W.Last, W.These, W.First) && (this.at(2, ...rowWords) || (this.at(2, CountToken) && this.at(3, ...rowWords))),
        ALT: () => {
          this.CONSUME1(Any);
          this.ACTION(() => { state.kind = this.at(0, W.Last) ? 'last' : this.at(0, W.These) ? 'these' : 'first'; });
          this.OPTION(() => { const token = this.CONSUME(CountToken) as KnitToken; this.ACTION(() => { state.count = this.countOf(token); }); });
          this.CONSUME2(Any);
        },
      },
      {
        ALT: () => {
          this.MANY1({ GATE: () => !state.unit && !this.at(1, ...rowWords) && !this.at(1, Ordinal) && !this.separator(), DEF: () => { this.CONSUME3(Any); } });
          this.ACTION(() => { nameEnd = this.LA(0).startOffset + this.LA(0).image.length; });
          this.OPTION1({ GATE: () => this.at(1, ...rowWords), DEF: () => { this.CONSUME4(Any); this.ACTION(() => { state.unit = true; }); } });
          this.MANY2({
            GATE: () => this.numberListAhead(state.numbers.length),
            DEF: () => {
              const token = this.CONSUME5(Any) as KnitToken;
              this.ACTION(() => {
                const value = token.payload?.values?.[0];
                if (this.at(0, CountToken, Ordinal) && typeof value === 'number') {
                  if (state.range) { for (let row = (state.numbers.at(-1) ?? value) + 1; row <= Math.min(value, (state.numbers.at(-1) ?? 0) + 2000); row += 1) state.numbers.push(row); state.range = false; }
                  else state.numbers.push(value);
                } else if (this.at(0, Dash, W.To)) state.range = true;
              });
            },
          });
          this.OPTION2({ GATE: () => this.at(1, ...rowWords), DEF: () => this.CONSUME6(Any) });
          this.ACTION(() => { if (state.numbers.length > 0) state.kind = nameEnd > start && this.words(start, nameEnd) !== '' && !/^(rows?|rnds?|rounds?)$/i.test(this.words(start, nameEnd)) && this.nameBefore(start, nameEnd) ? 'name' : 'numbers'; });
        },
      },
    ]);
    this.OPTION3({ GATE: () => this.at(1, W.Of, W.As) && !this.at(2, CountToken) && !(this.at(1, W.As) && this.at(2, W.Set)), DEF: () => { const from = this.from(); this.CONSUME7(Any); this.MANY3({ GATE: () => this.ofWordsAhead(), DEF: () => this.CONSUME8(Any) }); this.ACTION(() => { state.of = this.words(from, this.LA(0).startOffset + this.LA(0).image.length).replace(/^(of|as|as at|as for)\s+(the )?/i, ''); }); } });
    this.OPTION4({ GATE: () => this.at(1, W.Only), DEF: () => this.CONSUME9(Any) });
    return this.ACTION((): RowsNamed => ({ kind: state.kind, count: state.count, numbers: state.numbers, name: state.kind === 'name' ? this.words(start, nameEnd).toLowerCase().replace(/^(the|a) /, '') : null, of: state.of, mark: state.mark, toMark: state.toMark }));
  });

  private nameBefore(start: number, end: number): boolean {
    return !/^(the |a )?(last|these)$/i.test(this.words(start, end));
  }

  private ofWordsAhead(): boolean {
    return this.at(1, Word, Name, Fabric, W.Patt, W.At, W.Beg, W.Of, W.For, W.Given, W.CastOn, W.Rib, W.Marker, Stitch) && !(this.at(1, Word) && /^(until|then)$/.test(this.image(1)));
  }

  private numberListAhead(have: number): boolean {
    if (this.at(1, CountToken)) {
      // "Rows 1–8 twice": the number of passes is no row number.
      if (have > 0 && !this.at(0, Dash, W.To, Comma, W.And)) return false;
      return !this.at(2, W.Times, W.More, W.InAll) || this.at(0, Dash, W.To);
    }
    if (this.at(1, Ordinal)) return true;
    if (this.at(1, Dash, W.To, Comma, W.And)) return have > 0 && this.at(2, CountToken, Ordinal) && !(this.at(3, W.Times, W.More, W.St) && this.at(1, Comma));
    return this.at(1, ...rowWords) && have === 0 && this.at(2, CountToken);
  }

  /** "Rep last 2 rows 5 times more", "Work Rows 1–8 twice", "Rep Dec Rnd every 10 rnds 6 more times". */
  repeatRows = this.RULE('repeatRows', (): RepeatRows => {
    const start = this.from();
    const head = this.CONSUME(Any) as KnitToken;
    const rows = this.SUBRULE(this.rowsNamed);
    const state: { times: RepeatRows['times']; until: Goal | null; ending: EndSide | null; schedule: Segment[]; step: Count | null; inPlace: RepeatRows['inPlace'] } = { times: null, until: null, ending: null, schedule: [], step: null, inPlace: null };
    this.MANY({
      GATE: () => this.repeatTailAhead(state.times !== null || state.until !== null),
      DEF: () => this.OR([
        { GATE: () => this.at(1, Comma) && this.at(2, W.Or, W.Until) || this.at(1, W.Or), ALT: () => this.SUBRULE2(this.orUntil) },
        { GATE: () => this.endingSideAhead(), ALT: () => { const side = this.SUBRULE(this.endSide); this.ACTION(() => { state.ending = side; }); } },
        { GATE: () => this.inPlaceAhead(), ALT: () => { const place = this.SUBRULE(this.inPlaceOf); this.ACTION(() => { state.inPlace = place; }); } },
        { GATE: () => this.at(1, Comma) && this.at(2, W.Work) && this.at(3, CountToken), ALT: () => { this.CONSUME2(Any); this.CONSUME3(Any); const step = this.SUBRULE(this.count); this.ACTION(() => { state.step = step; }); this.MANY2({ GATE: () => !this.separator(), DEF: () => this.CONSUME4(Any) }); } },
        { GATE: () => this.timesAhead(), ALT: () => { const often = this.SUBRULE(this.howOften, { ARGS: ['from'] }); this.ACTION(() => { state.times = { count: often.count, sense: often.sense }; }); } },
        { GATE: () => this.at(1, W.Until, W.To) && !this.segmentAhead(1), ALT: () => { this.CONSUME5(Any); const goal = this.SUBRULE(this.goal); this.ACTION(() => { state.until = goal; }); } },
        { ALT: () => { this.OPTION1({ GATE: () => this.at(1, Comma), DEF: () => this.CONSUME6(Any) }); this.OPTION2({ GATE: () => this.at(1, W.Then, W.And), DEF: () => this.CONSUME7(Any) }); const segments = this.SUBRULE(this.schedule); this.ACTION(() => state.schedule.push(...segments)); } },
      ]),
    });
    return this.ACTION((): RepeatRows => ({ type: 'repeatRows', verb: head.tokenType === W.Rep ? 'rep' : 'work', rows, ...state, stated: [], span: this.span(start) }));
  });

  private repeatTailAhead(settled: boolean): boolean {
    if (this.timesAhead()) return true;
    if (this.at(1, W.Until)) return true;
    if (this.segmentAhead(1)) return true;
    if (this.at(1, Comma, W.And, W.Then) && this.segmentAhead(2) && !this.at(2, CountToken)) return true;
    if (this.endingSideAhead()) return true;
    if (this.inPlaceAhead()) return true;
    if (this.at(1, Comma)) return (this.at(2, W.Or) && settled) || (this.at(2, W.Work) && this.at(3, CountToken) && this.at(4, W.St)) || (this.at(2, W.Then) && this.segmentAhead(3));
    if (this.at(1, W.To)) return this.at(2, CountToken) && this.at(3, W.St);
    return this.at(1, W.Or) && settled;
  }

  private orUntil = this.RULE('orUntil', (): void => {
    this.CONSUME(Any);
    this.MANY({ GATE: () => !this.separator() && !this.at(1, Dash), DEF: () => this.CONSUME1(Any) });
  });

  private inPlaceAhead(): boolean {
    if (!this.at(1, Comma) || !this.at(2, W.Work)) return false;
    for (let ahead = 3; ahead < 8; ahead += 1) if (this.at(ahead, W.InsteadOf)) return true;
    return false;
  }

  /** ", working the Buttonhole row in place of Row 1 on the 17th and every foll 18th row until there are 5 buttonholes". */
  private inPlaceOf = this.RULE('inPlaceOf', (): NonNullable<RepeatRows['inPlace']> => {
    this.CONSUME(Any);
    this.CONSUME1(Any);
    const start = this.from();
    this.MANY({ GATE: () => !this.at(1, W.InsteadOf), DEF: () => this.CONSUME2(Any) });
    const end = this.ACTION(() => this.LA(0).startOffset + this.LA(0).image.length);
    this.CONSUME3(Any);
    const of: number[] = [];
    this.MANY1({ GATE: () => this.at(1, ...rowWords, CountToken, Ordinal) && !this.segmentAhead(1), DEF: () => { const token = this.CONSUME4(Any) as KnitToken; this.ACTION(() => { const value = token.payload?.values?.[0]; if (typeof value === 'number') of.push(value); }); } });
    const segments: Segment[] = [];
    this.OPTION({ GATE: () => this.segmentAhead(1), DEF: () => { const read = this.SUBRULE(this.schedule); this.ACTION(() => segments.push(...read)); } });
    return this.ACTION(() => ({ name: this.words(start, end).toLowerCase().replace(/^the /, '').replace(/ (row|rnd|round)s?$/, ''), of, schedule: segments }));
  });

  protected plainAhead(): boolean {
    let ahead = this.afterBegin();
    if (ahead === 0) return false;
    // "work a further 18 rows", "k 1 row", "cont in st st for 6 rows", "st st 3 rows", "6 rows st st"
    if (this.at(ahead, PlainStitch) && this.payload(ahead)?.values !== undefined) return this.at(ahead + 1, ...rowWords, W.Ridge) || (this.at(ahead + 1, W.More, W.Rs, W.Ws) && this.at(ahead + 2, ...rowWords));
    if (this.at(ahead, W.Work, W.Cont, W.Patt, W.Rib, PlainStitch, Fabric)) {
      ahead += 1;
      for (const far = ahead + 13; ahead < far; ahead += 1) {
        if (this.at(ahead, CountToken)) {
          let next = ahead + 1;
          while (this.at(next, W.More, W.Rs, W.Ws, Fabric, W.Straight, Word) && next < ahead + 4) next += 1;
          return this.at(next, ...rowWords, W.Ridge) && !this.at(ahead - 1, ...rowWords);
        }
        if (this.at(ahead, W.Until, W.To, Comma, ...rowWords, Stitch) || this.separator(ahead)) return false;
      }
      return false;
    }
    if (this.at(ahead, CountToken)) return (this.at(ahead + 1, W.Ridge) || this.at(ahead + 1, ...rowWords)) && this.at(ahead + 2, Fabric, W.Straight, W.Rib, W.Patt, W.In);
    return false;
  }

  /** Where the words behind "Beg with a k row," begin; 1 when there is no such beginning, 0 when "beg" means something else. */
  private afterBegin(): number {
    if (!this.at(1, W.Beg)) return 1;
    let ahead = this.beginAhead();
    if (ahead === 0) return 0;
    ahead += 1;
    if (this.at(ahead, CountToken) && this.at(ahead - 1, ...rowWords)) ahead += 1;
    while (this.at(ahead, Comma, W.And)) ahead += 1;
    if (this.at(ahead, W.Ending)) {
      while (!this.at(ahead, ...rowWords) && !this.separator(ahead)) ahead += 1;
      ahead += 1;
      while (this.at(ahead, Comma, W.And)) ahead += 1;
    }
    return ahead;
  }

  /** Tokens of "Beg with a k row," before the comma or the verb; 0 when it is no beginning of rows. */
  private beginAhead(): number {
    if (!this.at(1, W.Beg)) return 0;
    for (let ahead = 2; ahead < 8; ahead += 1) {
      if (this.at(ahead, ...rowWords)) return ahead;
      if (this.separator(ahead)) return 0;
    }
    return 0;
  }

  /** Common head of plain rows and rows to a length: "Beg with a k row, cont in st st for". */
  private head = this.RULE('head', (): Head => {
    let begin: Plain['begin'] = null;
    let ending: EndSide | null = null;
    let beginRow: number | null = null;
    let fabric: string | null = null;
    let verb = 'work';
    let as = false;
    this.OPTION({
      GATE: () => this.at(1, W.Beg),
      DEF: () => {
        this.CONSUME(Any);
        this.MANY({
          GATE: () => !this.at(1, ...rowWords),
          DEF: () => {
            const token = this.CONSUME1(Any) as KnitToken;
            this.ACTION(() => {
              if (this.at(0, PlainStitch)) begin = token.payload?.entry?.name === 'p' ? 'p' : 'k';
              if (this.at(0, W.Rs)) begin = 'RS';
              if (this.at(0, W.Ws)) begin = 'WS';
              if (this.at(0, Ordinal)) beginRow = token.payload?.values?.[0] ?? null;
            });
          },
        });
        this.CONSUME2(Any);
        this.OPTION1({ GATE: () => this.at(1, CountToken) && this.at(0, ...rowWords), DEF: () => { const token = this.CONSUME3(Any) as KnitToken; this.ACTION(() => { beginRow = token.payload?.values?.[0] ?? null; }); } });
        this.MANY1({ GATE: () => this.at(1, Comma, W.And) && !this.endingSideAhead(), DEF: () => this.CONSUME4(Any) });
        // "beg and ending with a p row, work 7 rows": the side of the last row stands before the verb
        this.OPTION2({ GATE: () => this.endingSideAhead(), DEF: () => { const side = this.SUBRULE(this.endSide); this.ACTION(() => { ending = side; }); } });
        this.MANY3({ GATE: () => this.at(1, Comma, W.And), DEF: () => this.CONSUME6(Any) });
      },
    });
    this.MANY2({
      GATE: () => !this.at(1, CountToken, W.Until, Comma, FullStop, Semicolon) && !(this.at(1, W.For) && this.at(2, CountToken)) && !(this.at(1, PlainStitch) && this.payload(1)?.values !== undefined) && (this.at(1, W.Work, W.Cont, W.Patt, W.Rib, W.Keep, Fabric, Name, W.In, W.Straight, W.As, W.Set, W.Given, W.For, W.Of, W.Then, W.More, W.On, W.These, W.Rs, W.Ws, PlainStitch, W.St, W.Every, W.Row, W.Round, W.Across, W.All, W.End, W.Foll) || this.at(1, Word)),
      DEF: () => {
        const token = this.CONSUME5(Any) as KnitToken;
        this.ACTION(() => {
          if (this.at(0, Fabric)) fabric = token.payload?.fabric ?? null;
          else if (this.at(0, Name)) fabric ??= token.payload?.name ?? null;
          else if (this.at(0, W.Rib)) fabric ??= 'rib';
          else if (this.at(0, W.Patt)) fabric ??= 'patt';
          else if (this.at(0, PlainStitch)) verb = token.payload?.entry?.name ?? 'k';
          else if (this.at(0, W.As)) as = true;
        });
      },
    });
    return { begin, beginRow, fabric, verb, as, ending };
  });

  plain = this.RULE('plain', (): Plain => {
    const start = this.from();
    const head = this.SUBRULE(this.head);
    const state: { count: Count | null; unit: 'row' | 'round'; fabric: string | null; ridges: boolean; ending: EndSide | null; inside: Statement[]; begin: Plain['begin']; as: boolean; verb: string } = { count: null, unit: 'row', fabric: null, ridges: false, ending: null, inside: [], begin: null, as: false, verb: 'work' };
    this.OPTION({ GATE: () => this.at(1, W.For), DEF: () => this.CONSUME(Any) });
    const token = this.CONSUME1(Any) as KnitToken;
    this.ACTION(() => {
      if (token.payload?.entry !== undefined) {
        state.verb = token.payload.entry.name;
        state.count = this.countInside(token);
      } else state.count = this.countOf(token);
    });
    this.MANY({ GATE: () => !this.at(1, ...rowWords, W.Ridge) && !this.separator(), DEF: () => { const word = this.CONSUME2(Any) as KnitToken; this.ACTION(() => { if (this.at(0, Fabric)) state.fabric = word.payload?.fabric ?? null; }); } });
    this.CONSUME3(Any);
    this.ACTION(() => { if (this.at(0, W.Round)) state.unit = 'round'; if (this.at(0, W.Ridge)) state.ridges = true; });
    this.MANY1({
      GATE: () => this.plainTailAhead(),
      DEF: () => {
        this.OR([
          { GATE: () => this.endingSideAhead(), ALT: () => { const side = this.SUBRULE(this.endSide); this.ACTION(() => { state.ending = side; }); } },
          { GATE: () => this.at(1, Comma) && this.at(2, W.Inc, W.Dec) || this.at(1, W.Inc, W.Dec), ALT: () => { this.OPTION1({ GATE: () => this.at(1, Comma), DEF: () => this.CONSUME4(Any) }); const step = this.SUBRULE(this.insideRows); this.ACTION(() => state.inside.push(step)); } },
          { GATE: () => this.at(1, Comma) && this.at(2, W.Beg), ALT: () => { this.CONSUME5(Any); const begin = this.SUBRULE(this.beginClause); this.ACTION(() => { if (begin.last) state.ending = begin.last; state.begin = begin.begin; }); } },
          { GATE: () => this.at(1, Comma, Open) , ALT: () => this.SUBRULE(this.asideClause) },
          {
            ALT: () => {
              const word = this.CONSUME6(Any) as KnitToken;
              this.ACTION(() => {
                if (this.at(0, Fabric)) state.fabric = word.payload?.fabric ?? null;
                else if (this.at(0, Name)) state.fabric ??= word.payload?.name ?? null;
                else if (this.at(0, W.Rib)) state.fabric ??= 'rib';
                else if (this.at(0, W.Patt)) state.fabric ??= 'patt';
                else if (this.at(0, W.As)) state.as = true;
              });
            },
          },
        ]);
      },
    });
    return this.ACTION((): Plain => {
      let count = state.count ?? { type: 'count' as const, values: [1], span: this.span(start) };
      if (state.ridges) count = { ...count, values: count.values.map((value) => (value === null ? null : value * 2)) };
      const verb = head.verb !== 'work' ? head.verb : state.verb;
      const fabric = state.fabric ?? head.fabric ?? (verb === 'k' ? 'knit' : verb === 'p' ? 'purl' : null);
      return { type: 'plain', count, unit: state.unit, fabric, begin: state.begin ?? head.begin, beginRow: head.beginRow, of: pieceNamed(this.words(start, this.LA(0).startOffset + this.LA(0).image.length)), ending: state.ending ?? head.ending, inside: state.inside, stated: [], span: this.span(start) };
    });
  });

  private insideRows = this.RULE('insideRows', (): Statement => {
    return this.OR([
      { GATE: () => this.shapeAhead(), ALT: () => this.SUBRULE(this.shape) as Statement },
      { GATE: () => this.evenlyAhead(), ALT: () => this.SUBRULE(this.evenlyStep) as Statement },
      { ALT: () => this.SUBRULE(this.looseChange) as Statement },
    ]);
  });

  /** "dec 2 sts", with no word where: spread over the row. */
  private looseChange = this.RULE('looseChange', (): Evenly => {
    const start = this.from();
    const head = this.CONSUME(Any) as KnitToken;
    const count = this.SUBRULE(this.count);
    this.OPTION({ GATE: () => this.at(1, W.St), DEF: () => this.CONSUME1(Any) });
    return this.ACTION(() => ({ type: 'evenly', change: head.tokenType === W.Inc ? 'inc' : 'dec', count, onLastRow: false, span: this.span(start) }));
  });

  private beginClause = this.RULE('beginClause', (): { begin: Plain['begin']; last: EndSide | null } => {
    const start = this.from();
    let begin: Plain['begin'] = null;
    let both = false;
    this.MANY({
      GATE: () => !this.separator() && !this.at(1, Dash),
      DEF: () => {
        const token = this.CONSUME(Any) as KnitToken;
        this.ACTION(() => { if (this.at(0, PlainStitch)) begin = token.payload?.entry?.name === 'p' ? 'p' : 'k'; if (this.at(0, W.Rs)) begin = 'RS'; if (this.at(0, W.Ws)) begin = 'WS'; if (this.at(0, W.Ending, W.End)) both = true; });
      },
    });
    return this.ACTION(() => ({ begin, last: both && begin !== null ? { type: 'endSide', last: begin === 'k' || begin === 'RS' ? 'RS' : 'WS', row: null, edge: null, span: this.span(start) } : null }));
  });

  /** ", slipping markers", ", working last buttonhole on Row 5", "(5 ridges)": changes no count. */
  private asideClause = this.RULE('asideClause', (): void => {
    let depth = 0;
    this.CONSUME(Any);
    this.ACTION(() => { if (this.at(0, Open)) depth = 1; });
    this.MANY({ GATE: () => (depth > 0 && !Number.isNaN(this.LA(1).startOffset)) || (depth === 0 && !this.at(0, Close) && !this.separator() && !this.at(1, Dash) && !this.at(1, W.Then)), DEF: () => { this.CONSUME1(Any); this.ACTION(() => { if (this.at(0, Open)) depth += 1; if (this.at(0, Close)) depth -= 1; }); } });
  });

  private plainTailAhead(): boolean {
    if (this.endingSideAhead()) return true;
    if (this.at(1, Comma)) return this.at(2, W.Inc, W.Dec, W.Beg) || (this.at(2, Word, W.Work, W.Keep) && /ing$/.test(this.image(2))) || (this.at(2, Stitch) && /ing$/.test(this.image(2)));
    if (this.at(1, Open)) return this.payload(1)?.holds === 'remark' || (this.payload(1)?.holds === 'stated' && (this.at(3, ...rowWords, W.Ridge)));
    if (this.at(1, W.Inc, W.Dec)) return this.at(2, CountToken);
    if (this.at(1, W.For)) return this.at(0, W.Given, W.As);
    if (this.at(1, W.And, W.Then, W.Until)) return false;
    if (this.at(1, Dash, FullStop, Semicolon, Close) || Number.isNaN(this.LA(1).startOffset)) return false;
    return this.at(1, Fabric, Name, W.Rib, W.Patt, W.In, W.Straight, W.As, W.Given, W.Set, W.Of, Word, W.More, W.On, W.Round, W.Row, W.These, W.At, W.Beg, W.All, W.Across, W.St, W.For);
  }

  protected untilAhead(): boolean {
    if (!this.at(1, W.Work, W.Cont, W.Patt, W.Rib, PlainStitch, Fabric, W.Keep, W.Beg)) return false;
    if (this.referAhead()) return false;
    const first = this.afterBegin();
    if (first === 0 || (this.at(first, PlainStitch) && this.payload(first)?.values !== undefined)) return false;
    for (let ahead = first + 1; ahead < first + 26; ahead += 1) {
      if (this.at(ahead, W.Until)) return !(this.at(ahead + 1, CountToken) && this.at(ahead + 2, W.St) && this.at(first, PlainStitch));
      if (this.at(ahead, W.For) && this.at(ahead + 1, CountToken) && this.at(ahead + 2, W.Cm, W.Inch, W.In, W.Mm)) return true;
      if (this.at(ahead, CountToken) && this.at(ahead + 1, W.Cm, W.Inch, W.Mm) && ahead < first + 5) return true;
      if (this.at(ahead, FullStop, Semicolon) || this.at(ahead, Comma)) return false;
      if (Number.isNaN(this.LA(ahead).startOffset) || (this.at(ahead, W.Rep) && this.at(ahead + 1, W.From))) return false;
    }
    return false;
  }

  /** "Cont straight until armhole measures 19 (20: 21) cm, ending with a WS row"; "work in rib for 5 cm". */
  until = this.RULE('until', (): Until => {
    const start = this.from();
    const head = this.SUBRULE(this.head);
    const state: { goal: Goal | null; ending: EndSide | null; inside: Statement[] } = { goal: null, ending: null, inside: [] };
    this.MANY({ GATE: () => !this.at(1, W.Until, W.For, CountToken), DEF: () => this.CONSUME(Any) });
    this.OPTION({ GATE: () => this.at(1, W.Until, W.For), DEF: () => this.CONSUME1(Any) });
    const goal = this.SUBRULE(this.goal);
    this.MANY1({
      GATE: () => this.endingSideAhead() || (this.at(1, Comma) && this.at(2, W.Inc, W.Dec)),
      DEF: () => this.OR([
        { GATE: () => this.endingSideAhead(), ALT: () => { const side = this.SUBRULE(this.endSide); this.ACTION(() => { state.ending = side; }); } },
        { ALT: () => { this.CONSUME2(Any); const inside = this.SUBRULE(this.insideRows); this.ACTION(() => state.inside.push(inside)); } },
      ]),
    });
    this.OPTION1({ GATE: () => this.at(1, W.And) && this.at(2, Word) && /ing$/.test(this.image(2)), DEF: () => { this.CONSUME3(Any); this.MANY2({ GATE: () => !this.separator() && !this.at(1, Dash), DEF: () => this.CONSUME4(Any) }); } });
    return this.ACTION((): Until => ({ type: 'until', verb: head.verb, fabric: head.fabric, begin: head.begin, of: pieceNamed(this.words(start, this.LA(0).startOffset + this.LA(0).image.length)), goal, ending: state.ending ?? head.ending, inside: state.inside, stated: [], span: this.span(start) }));
  });

  protected triggerAhead(): boolean {
    return this.at(1, Word) && /^(when|once|after|before)$/.test(this.image(1)) && !this.at(2, Comma);
  }

  /** "when front measures 28 cm, ending with Row 2": what sets off the second track. */
  trigger = this.RULE('trigger', (): { when: Goal; ending: EndSide | null } => {
    this.CONSUME(Any);
    const when = this.SUBRULE(this.goal);
    const ending = this.OPTION({ GATE: () => this.endingSideAhead(), DEF: () => this.SUBRULE(this.endSide) });
    return this.ACTION(() => ({ when, ending: ending ?? null }));
  });

  protected contAhead(): boolean {
    // "Beg with a k row, cont in st st;" declares the fabric that the next clause works in.
    if (this.at(1, W.Beg)) return this.beginAhead() > 0;
    if (this.at(1, W.Patt, W.Rib)) return this.contEnds(2);
    return this.at(1, W.Work, W.Cont) && (this.at(2, W.In, W.Patt, W.Rib, Fabric, W.As, Name, W.Straight, W.Keep, W.Set) || this.contEnds(2));
  }

  /** "Cont in st st", "keeping patt correct": rows come with the next clause. */
  cont = this.RULE('cont', (): Until => {
    const start = this.from();
    const head = this.SUBRULE(this.head);
    const ending = this.OPTION({ GATE: () => this.endingSideAhead(), DEF: () => this.SUBRULE(this.endSide) });
    return this.ACTION((): Until => ({ type: 'until', verb: head.verb, fabric: head.fabric, begin: head.begin, of: pieceNamed(this.words(start, this.LA(0).startOffset + this.LA(0).image.length)), goal: { kind: 'loose', text: '' }, ending: ending ?? head.ending, inside: [], stated: [], span: this.span(start) }));
  });

  private contEnds(ahead: number): boolean {
    return this.separator(ahead) || this.at(ahead, W.Ending) || (this.at(ahead, W.And) && this.at(ahead + 1, W.Ending));
  }

  protected standingAhead(): boolean {
    if (!this.at(1, W.Keep)) return false;
    for (let ahead = 2; ahead < 24; ahead += 1) {
      if (this.separator(ahead) || this.at(ahead, W.SameTime, Dash)) return ahead > 2;
      if (this.at(ahead, W.Until, W.Holder, W.Inc, W.Dec, W.BindOff, W.CastOn, W.Turn)) return false;
    }
    return false;
  }

  /** "keeping patt correct", "keep armhole edge straight", "keeping first 6 sts in garter st throughout": how the rows go on. */
  standing = this.RULE('standing', (): Declare => {
    const start = this.from();
    this.CONSUME(Any);
    this.MANY({ GATE: () => !this.separator() && !this.at(1, W.SameTime, Dash), DEF: () => this.CONSUME1(Any) });
    return this.ACTION((): Declare => ({ type: 'declare', what: 'rule', name: this.words(start, this.LA(0).startOffset + this.LA(0).image.length).toLowerCase(), multiple: null, count: null, span: this.span(start) }));
  });

  protected referAhead(): boolean {
    if (this.at(1, W.Given)) return this.at(2, W.For, W.On, W.In, Name, Word);
    if (this.at(1, W.As)) return this.at(2, ...rowWords, Ordinal, W.Given, W.For) || this.within(2, 6, Name, W.First, W.Last) || this.at(2, Word);
    if (this.at(1, W.Complete)) return this.within(2, 8, W.As, W.Matches, W.To, W.Same);
    if (this.at(1, W.Work, W.Rep)) {
      let ahead = 2;
      while (this.at(ahead, Word, W.Each, W.Same, Name, W.Other, Ordinal, W.To) && ahead < 6 && !(this.at(ahead, W.To) && !this.at(ahead + 1, W.Matches))) ahead += 1;
      if (this.at(ahead, W.Given)) return this.at(ahead + 1, W.For, W.On, W.In, Name, Word);
      if (this.at(ahead, W.As, W.Matches)) return !(this.at(ahead, W.As) && this.at(ahead + 1, W.Set)) && !this.at(ahead + 1, Dash);
      if (this.at(2, W.In) && this.at(3, W.Same)) return true;
    }
    return false;
  }

  /** "As Row 2", "Work as given for back until 80 sts rem in armhole shaping", "Complete to match first side, reversing shapings". */
  refer = this.RULE('refer', (): Refer => {
    const start = this.from();
    const state: { rows: number[]; range: boolean; reversing: boolean; until: Refer['until']; times: Refer['times']; end: number } = { rows: [], range: false, reversing: false, until: null, times: null, end: start };
    this.CONSUME(Any);
    this.MANY({
      GATE: () => !this.separator() && !this.at(1, Dash, Open, W.Until) && !(this.at(1, W.To) && this.at(2, Mark)) && !this.timesAhead(),
      DEF: () => {
        const token = this.CONSUME1(Any) as KnitToken;
        this.ACTION(() => {
          const value = token.payload?.values?.[0];
          if (this.at(0, CountToken, Ordinal) && typeof value === 'number' && (this.at(-1, ...rowWords, W.And, W.To, Comma, Dash) || this.at(1, ...rowWords, W.To, W.And, Dash, Comma))) {
            // "1st to 4th rows"
            if (this.at(-1, W.To, Dash) && state.rows.length > 0) for (let row = (state.rows.at(-1) ?? value) + 1; row < Math.min(value, 2000); row += 1) state.rows.push(row);
            state.rows.push(value);
          }
        });
      },
    });
    this.MANY4({ GATE: () => state.rows.length > 0 && this.at(1, Dash, W.And, Comma) && this.at(2, CountToken), DEF: () => { this.CONSUME2(Any); const token = this.CONSUME3(Any) as KnitToken; this.ACTION(() => { const value = token.payload?.values?.[0] ?? 0; if (this.at(-1, Dash)) for (let row = (state.rows.at(-1) ?? value) + 1; row <= Math.min(value, 2000); row += 1) state.rows.push(row); else state.rows.push(value); }); } });
    this.ACTION(() => { state.end = this.LA(0).startOffset + this.LA(0).image.length; });
    this.OPTION({ GATE: () => this.at(1, W.To) && this.at(2, Mark), DEF: () => { this.CONSUME4(Any); const token = this.CONSUME5(Any) as KnitToken; this.ACTION(() => { state.until = { mark: token.image, place: null, goal: null }; }); } });
    this.OPTION1({ GATE: () => this.timesAhead(), DEF: () => { const often = this.SUBRULE(this.howOften, { ARGS: ['from'] }); this.ACTION(() => { state.times = { count: often.count, sense: often.sense }; }); } });
    this.OPTION2({ GATE: () => this.at(1, W.Until), DEF: () => { this.CONSUME6(Any); const goal = this.SUBRULE(this.goal); this.ACTION(() => { state.until = { mark: null, place: null, goal }; }); } });
    this.MANY5({
      GATE: () => this.at(1, Comma) && (this.at(2, W.Reversing, W.With, Word) && !this.at(2, Stitch)) || (this.at(1, W.Reversing)) || (this.at(1, W.And) && this.at(2, W.Reversing)),
      DEF: () => { this.OPTION3({ GATE: () => this.at(1, Comma, W.And), DEF: () => this.CONSUME7(Any) }); this.AT_LEAST_ONE({ GATE: () => !this.separator() && !this.at(1, Dash, Open), DEF: () => { this.CONSUME8(Any); this.ACTION(() => { if (this.at(0, W.Reversing)) state.reversing = true; }); } }); },
    });
    return this.ACTION((): Refer => {
      const words = this.words(start, state.end).toLowerCase();
      const matching = /\b(match|other side|first side|correspond)/.test(words);
      const name = /(?:as|like|same as)(?: (?:given|worked|instructed))?(?: (?:for|in))?(?: the)? ([a-z0-9 ]+?)(?: to ([a-z ]+))?$/.exec(words);
      const place = name?.[2] ?? null;
      return {
        type: 'refer', to: state.rows.length > 0 && !/\b(wedge|section)\b/.test(words) ? 'row' : matching ? 'side' : 'piece', rows: state.rows, name: state.rows.length > 0 ? (/ of (?:the )?([a-z ]+)$/.exec(words)?.[1] ?? null) : (name?.[1]?.trim() ?? null),
        until: state.until ?? (place === null ? null : { mark: null, place, goal: null }), reversing: state.reversing || matching, times: state.times, stated: [], span: this.span(start),
      };
    });
  });
}

