/**
 * Depth told in repeats of the stitch pattern just given.
 *
 *     Work 3 more pattern repeats · Work a further 60 patts · Work the 4-row pattern 7 times · Work 7 complete patt reps in all
 */
import { Any, Count as CountToken, Dash, type KnitToken, rowWords, TimesNumber, W, Word } from '../tokens.ts';
import type { Count, RepeatRows } from '../tree.ts';
import { References } from './references.ts';

export class PatternRepeats extends References {
  /** Tokens up to the last that belongs to the phrase; 0 when none begins here. */
  private patternRepeats(): number {
    if (!this.at(1, W.Work)) return 0;
    return this.byNumber() || this.byRows();
  }

  /** "Work [another] 3 [more] [complete] pattern repeats", "Work 3 repeats of the pattern". */
  private byNumber(): number {
    let ahead = this.at(2, W.More) ? 3 : 2;
    if (!this.at(ahead, CountToken)) return 0;
    ahead += 1;
    while (this.at(ahead, W.More, W.Complete) || (this.at(ahead, Word) && /^(full|whole|entire|vertical|further)$/.test(this.image(ahead))))
      ahead += 1;
    if (this.at(ahead, W.Patt)) {
      if (this.at(ahead + 1, W.Rep) && /s$/.test(this.image(ahead + 1))) ahead += 1;
      else if (!/^patt(?:ern)?s$/.test(this.image(ahead))) return 0;
    } else if (this.at(ahead, W.Rep) && /s$/.test(this.image(ahead)) && this.at(ahead + 1, W.Of)) {
      const pattern = /^(the|this|these)$/.test(this.image(ahead + 2)) ? ahead + 3 : ahead + 2;
      if (!this.at(pattern, W.Patt)) return 0;
      ahead = pattern;
    } else return 0;
    // "Work 4 patt reps across next row" is a row, and no depth.
    if (this.at(ahead + 1, W.Across, W.On, W.To, W.At)) return 0;
    return this.at(ahead + 1, W.More, W.InAll) ? ahead + 1 : ahead;
  }

  /** "Work the 4-row pattern 7 times", "work the 12-rnd patt repeat twice more": up to the number of times. */
  private byRows(): number {
    if (!this.at(2, CountToken)) return 0;
    const unit = this.at(3, Dash) ? 4 : 3;
    if (!this.at(unit, ...rowWords) || !this.at(unit + 1, W.Patt)) return 0;
    const end = this.at(unit + 2, W.Rep) ? unit + 2 : unit + 1;
    return this.at(end + 1, TimesNumber, W.More, W.InAll) || (this.at(end + 1, CountToken) && this.at(end + 2, W.Times, W.More)) ? end : 0;
  }

  protected patternRepeatsAhead(): boolean {
    return this.patternRepeats() > 0;
  }

  patternRepeat = this.RULE('patternRepeat', (): RepeatRows => {
    const start = this.from();
    const state: { left: number; byRows: boolean; count: Count | null; sense: 'plain' | 'more' | 'all' } = {
      left: 0,
      byRows: false,
      count: null,
      sense: 'plain',
    };
    this.ACTION(() => {
      state.byRows = this.byNumber() === 0;
      state.left = this.patternRepeats();
    });
    this.MANY({
      GATE: () => state.left > 0,
      DEF: () => {
        const token = this.CONSUME(Any) as KnitToken;
        this.ACTION(() => {
          state.left -= 1;
          if (this.at(0, CountToken) && !state.byRows) state.count = this.countOf(token);
          if (this.at(0, W.More)) state.sense = 'more';
          if (this.at(0, W.InAll)) state.sense = 'all';
        });
      },
    });
    const often = this.OPTION({ GATE: () => state.byRows, DEF: () => this.SUBRULE(this.howOften, { ARGS: ['from'] }) });
    return this.ACTION(
      (): RepeatRows => ({
        type: 'repeatRows',
        verb: 'work',
        rows: { kind: 'pattern', count: null, numbers: [], name: null, of: null, mark: null, toMark: null },
        times: often
          ? { count: often.count, sense: often.sense }
          : state.count === null
            ? null
            : { count: state.count, sense: state.sense },
        until: null,
        ending: null,
        schedule: [],
        step: null,
        inPlace: null,
        stated: [],
        span: this.span(start),
      }),
    );
  });
}
