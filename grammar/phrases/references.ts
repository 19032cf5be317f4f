/**
 * Rows told by reference to others.
 *
 *     As Row 2 · Work as given for Back to ** · Complete to match first side, reversing shapings
 */

import { mirrored, mirroredPiece, oneMore, partAsIn, plainName, stageDone } from '../reference-names.ts';
import { Any, Comma, Count as CountToken, Dash, type KnitToken, Mark, Open, Ordinal, rowWords, Stitch, W, Word } from '../tokens.ts';
import type { Count, Refer } from '../tree.ts';
import { ReferenceHeads } from './reference-heads.ts';

export class References extends ReferenceHeads {
  /** How many pieces "make 2" tells. */
  private makes: Count | null = null;

  /** "As Row 2", "Work as given for back until 80 sts rem in armhole shaping", "Complete to match first side, reversing shapings". */
  refer = this.RULE('refer', (): Refer => {
    const start = this.from();
    const told: { stretch: { name: string; from: string; to: string } | null; castOn: Required<Refer>['castOn'] | null; sentence: string } =
      {
        stretch: null,
        castOn: null,
        sentence: '',
      };
    this.ACTION(() => {
      told.stretch = this.markedStretch();
      told.sentence = this.clauseWords(true);
    });
    const state: { rows: number[]; range: boolean; reversing: boolean; until: Refer['until']; times: Refer['times']; end: number } = {
      rows: [],
      range: false,
      reversing: false,
      until: null,
      times: null,
      end: start,
    };
    this.ACTION(() => {
      this.makes = this.makesMore()
        ? this.at(1, Stitch)
          ? this.countInside(this.LA(1) as KnitToken)
          : this.at(2, CountToken)
            ? this.countOf(this.LA(2) as KnitToken)
            : null
        : null;
    });
    this.CONSUME(Any);
    this.MANY({
      GATE: () =>
        !this.separator() &&
        !this.at(1, Dash, Open, W.Until) &&
        // "as right but end with a RS row"
        !(this.at(1, Word) && this.image(1) === 'but' && this.at(2, W.Ending, W.Beg)) &&
        !(told.stretch === null && this.at(1, W.To) && this.at(2, Mark)) &&
        !this.timesAhead(),
      DEF: () => {
        const token = this.CONSUME1(Any) as KnitToken;
        this.ACTION(() => {
          if (this.at(0, W.Reversing)) state.reversing = true;
          const value = token.payload?.values?.[0];
          if (
            this.at(0, CountToken, Ordinal) &&
            typeof value === 'number' &&
            !this.at(1, W.St) &&
            // "work as row 3 for 5 rows"
            !(this.at(0, CountToken) && this.at(-1, W.For)) &&
            (this.at(-1, ...rowWords, W.And, W.To, Comma, Dash) || this.at(1, ...rowWords, W.To, W.And, Dash, Comma))
          ) {
            // "1st to 4th rows"
            if (this.at(-1, W.To, Dash) && state.rows.length > 0)
              for (let row = (state.rows.at(-1) ?? value) + 1; row < Math.min(value, 2000); row += 1) state.rows.push(row);
            // "as first 2 rows"
            else if (this.at(-1, W.First) && this.at(1, ...rowWords))
              for (let row = 1; row < Math.min(value, 2000); row += 1) state.rows.push(row);
            state.rows.push(value);
          }
        });
      },
    });
    this.MANY4({
      // "As Row 4 – 21 sts": what stands behind the dash is the count.
      GATE: () => state.rows.length > 0 && this.at(1, Dash, W.And, Comma) && this.at(2, CountToken) && !this.at(3, W.St),
      DEF: () => {
        this.CONSUME2(Any);
        const token = this.CONSUME3(Any) as KnitToken;
        this.ACTION(() => {
          const value = token.payload?.values?.[0] ?? 0;
          if (this.at(-1, Dash))
            for (let row = (state.rows.at(-1) ?? value) + 1; row <= Math.min(value, 2000); row += 1) state.rows.push(row);
          else state.rows.push(value);
        });
      },
    });
    this.ACTION(() => {
      state.end = this.LA(0).startOffset + this.LA(0).image.length;
    });
    this.OPTION({
      GATE: () => this.at(1, W.To) && this.at(2, Mark),
      DEF: () => {
        this.CONSUME4(Any);
        const token = this.CONSUME5(Any) as KnitToken;
        this.ACTION(() => {
          state.until = { mark: token.image, place: null, goal: null };
        });
      },
    });
    this.OPTION1({
      GATE: () => this.timesAhead(),
      DEF: () => {
        const often = this.SUBRULE(this.howOften, { ARGS: ['from'] });
        this.ACTION(() => {
          state.times = { count: often.count, sense: often.sense };
        });
      },
    });
    this.OPTION2({
      GATE: () => this.at(1, W.Until),
      DEF: () => {
        this.CONSUME6(Any);
        const goal = this.SUBRULE(this.goal);
        const ending = this.OPTION4({ GATE: () => this.endingSideAhead(), DEF: () => this.SUBRULE(this.endSide) });
        this.ACTION(() => {
          const stage = goal?.kind === 'loose' ? stageDone(goal.text) : null;
          state.until =
            stage === null
              ? { mark: null, place: null, goal, ...(ending ? { ending } : {}) }
              : { mark: null, place: stage, goal: null, done: true, ...(ending ? { ending } : {}) };
        });
      },
    });
    this.OPTION5({
      GATE: () => this.castOnDiffers() > 0,
      DEF: () => {
        this.MANY2({ GATE: () => !this.at(1, W.CastOn), DEF: () => this.CONSUME9(Any) });
        this.CONSUME(W.CastOn);
        const count = this.SUBRULE(this.count);
        this.MANY3({
          GATE: () => this.at(1, W.St, W.More, W.InAll) || /^(?:fewer|less|only|instead)$/.test(this.image(1)),
          DEF: () => {
            this.consume(51, Any);
          },
        });
        this.ACTION(() => {
          const words = this.words(count.span.end - this.base, this.LA(0).startOffset + this.LA(0).image.length).toLowerCase();
          told.castOn = {
            count,
            sense: /\b(?:fewer|less)\b/.test(words) ? 'fewer' : /\b(?:more|extra|additional)\b/.test(words) ? 'more' : 'total',
          };
        });
      },
    });
    this.MANY5({
      GATE: () =>
        (this.at(1, Comma) &&
          (this.at(2, W.Reversing, W.With, W.Omitting, W.Work) || (this.at(2, Word) && !/^(but|except)$/.test(this.image(2)))) &&
          !this.at(2, Stitch)) ||
        this.at(1, W.Reversing) ||
        (this.at(1, W.And) && this.at(2, W.Reversing)),
      DEF: () => {
        this.OPTION3({ GATE: () => this.at(1, Comma, W.And), DEF: () => this.CONSUME7(Any) });
        this.AT_LEAST_ONE({
          GATE: () => !this.separator() && !this.at(1, Dash, Open),
          DEF: () => {
            this.CONSUME8(Any);
            this.ACTION(() => {
              if (this.at(0, W.Reversing)) state.reversing = true;
            });
          },
        });
      },
    });
    return this.ACTION((): Refer => {
      const words = this.words(start, state.end)
        .toLowerCase()
        .replace(/,? (?:but |and )?(?:reverse|reversing)\b.*$/, '');
      const reversing = state.reversing || mirrored(told.sentence);
      const differs = told.castOn === null ? {} : { castOn: told.castOn };
      const piece0 = { type: 'refer' as const, to: 'piece' as const, rows: [], times: null, stated: [], span: this.span(start) };
      if (told.stretch !== null)
        return {
          ...piece0,
          name: told.stretch.name,
          until: /end/.test(told.stretch.to) ? state.until : { mark: told.stretch.to, place: null, goal: null },
          from: { row: null, mark: told.stretch.from },
          reversing,
        };
      const shaped = partAsIn(words);
      if (shaped !== null) return { ...piece0, name: plainName(shaped.piece), part: shaped.part, until: state.until, reversing };
      const more = oneMore(told.sentence) ?? mirroredPiece(told.sentence);
      if (more !== null)
        return {
          ...piece0,
          name: more === '' ? null : more,
          until: state.until,
          reversing,
          times: { count: { type: 'count', values: [1], span: this.span(start) }, sense: 'more' },
        };
      // "as for first square from 1st row", "as Back from ** to end": the piece from a place on
      const onward =
        /\b(?:as|like)(?: (?:given|worked|set|written|instructed))?(?: (?:for|in|on|of))?(?: the)? ([a-z][a-z0-9 ]*?),? from (?:the )?(?:(\d+)(?:st|nd|rd|th)? (?:row|rnd|round)|(?:row|rnd|round) (\d+)|(\*+|†+))(?: .*)?$/.exec(
          words,
        );
      if (onward?.[1] !== undefined && !/^(?:rows?|rnds?|rounds?)\b/.test(onward[1])) {
        const row = Number(onward[2] ?? onward[3] ?? Number.NaN);
        return {
          type: 'refer',
          to: 'piece',
          rows: [],
          name: onward[1].trim(),
          until: state.until,
          from: { row: Number.isNaN(row) ? null : row, mark: onward[4] ?? null },
          reversing: state.reversing,
          times: null,
          stated: [],
          span: this.span(start),
        };
      }
      // "6th row: As 2nd", "as the 4th": an ordinal alone names a row
      const bare = /^(?:as|like|same as)(?: the)? (\d+)(?:st|nd|rd|th)$/.exec(words)?.[1];
      if (bare !== undefined && state.rows.length === 0) state.rows.push(Number(bare));
      const matching = /\b(match|other side|first side|second side|correspond)/.test(words);
      const name =
        /\b(?:as|like|same as|match(?:es|ing)?|correspond(?:s|ing)?|(?:instructions|directions|pattern)(?: given)? (?:for|of|as for))\b(?: (?:given|worked|instructed|written))?(?: (?:for|in|on|to|with))?(?: the)? ([a-z0-9 ]+?)(?: (?:up to|as far as|to) (?:and including )?(?:the )?([a-z ]+|(?:row|rnd|round) \d+))?$/.exec(
          words.replace(/\bin the same (?:way|manner) as\b/, 'as'),
        );
      const place = name?.[2] ?? null;
      // "second sleeve to match", "make another piece the same": a whole piece once more, and not mirrored
      const again = /\b(?:second|other|another|next|remaining) ([a-z]+)(?: (?:in|the|same|to|alike|as).*)?$/.exec(
        words.replace(/\bto match\b.*$/, 'to match'),
      );
      const piece =
        again?.[1] !== undefined &&
        /^(sleeve|sock|mitten|glove|piece|pocket|strap|slipper|cuff|wing|ear|leg|motif|square|one)s?$/.test(again[1])
          ? again[1]
          : null;
      if (piece !== null || this.makes) {
        const made = this.makes;
        const count: Count = made === null ? { type: 'count', values: [1], span: this.span(start) } : made;
        return {
          type: 'refer',
          to: 'piece',
          rows: [],
          name: piece === 'piece' || piece === 'one' ? null : piece,
          until: state.until,
          reversing: state.reversing,
          times: { count, sense: made === null || /\bmore\b/.test(words) ? 'more' : 'all' },
          stated: [],
          span: this.span(start),
        };
      }
      // "like Wedge 2": the number is part of the name of a section, no row.
      const section = /(?:as|like|same as) (?:the )?([a-z]+ \d+)$/.exec(words)?.[1];
      if (section !== undefined && !/^(?:rows?|rnds?|rounds?) /.test(section))
        return {
          type: 'refer',
          to: 'piece',
          rows: [],
          name: section,
          until: state.until,
          reversing: state.reversing,
          times: state.times,
          stated: [],
          span: this.span(start),
        };
      const named =
        state.rows.length > 0 && place === null
          ? (/ (?:of|on|in) (?:the )?([a-z ]+)$/.exec(words)?.[1] ?? null)
          : name?.[1] === undefined
            ? null
            : plainName(name[1]) || null;
      return {
        type: 'refer',
        to:
          state.rows.length > 0 && place === null && !/\b(wedge|section)\b/.test(words)
            ? 'row'
            : (matching && (name === null || /\b(side|neck|shoulder|slope|edge)\b/.test(words))) ||
                (named === null && /\bside\b/.test(words))
              ? 'side'
              : 'piece',
        rows: place === null ? state.rows : [],
        name: named,
        ...differs,
        until: state.until ?? (place === null ? null : { mark: null, place, goal: null }),
        reversing: reversing || matching,
        times: state.times,
        stated: [],
        span: this.span(start),
      };
    });
  });
}
