/**
 * Gaps closed: the stitch before a turn worked together with its wrap, its strand or the stitch beyond.
 *
 *     k it tog with its wrap · pick up wrap and k it with st · lift the bar and k it tog with next st · k2tog (yo and next st)
 */
import { Any, Close, Comma, type KnitToken, Open, PlainStitch, Semicolon, SlipStitch, Stitch, W, Word } from '../tokens.ts';
import type { Work } from '../tree.ts';
import { Markers } from './markers.ts';

const strands = /^(strand|strands|bar|thread|loop|loops|bump|bumps|pinned|yarn|threads)$/;

export class ClosingGaps extends Markers {
  /** Whether the words before the next token end a row or a turn, so that a new row of short rows begins here. */
  protected opensRow(): boolean {
    return /(?:^|[:.)]|\bturn(?:ing)?\W*(?:and|then)?)\s*$/i.test(this.text.slice(Math.max(0, this.from() - 24), this.from()));
  }

  protected bareVerb(ahead: number): boolean {
    return (
      (this.at(ahead, PlainStitch) && this.payload(ahead)?.values === undefined && !/ing$/.test(this.image(ahead))) ||
      (this.at(ahead, W.Work) && !/ing$/.test(this.image(ahead)))
    );
  }

  /** First place of one of the types before the next comma, at most `far` tokens on; 0 when there is none. */
  protected clauseHas(from: number, far: number, test: (ahead: number) => boolean): number {
    for (let ahead = from; ahead < from + far; ahead += 1) {
      if (this.at(ahead, Comma, Semicolon, Close) || Number.isNaN(this.LA(ahead).startOffset)) return 0;
      if (test(ahead)) return ahead;
    }
    return 0;
  }

  // Wraps and other marks worked with their stitch

  /** "k it tog with its wrap", "k wrap tog with st", "pick up wrap and k it with st"; the participle ("picking up wraps") rules the whole row. */
  protected wrapWorkAhead(): boolean {
    if (this.at(1, Word) && /^puw$/.test(this.image(1))) return true;
    const lifts = (this.at(1, W.PickUp) && !/ing/.test(this.image(1))) || (this.at(1, Word) && /^(lift|hide)$/.test(this.image(1)));
    if (!lifts && !this.bareVerb(1)) return false;
    const wrap = this.clauseHas(2, 9, (ahead) => this.at(ahead, W.Wrapped, W.To, W.Until, W.Across));
    if (wrap === 0 || !this.at(wrap, W.Wrapped)) return false;
    if (
      this.clauseHas(2, 14, (ahead) => /^(all|each|rem|remaining|come)$/.test(this.image(ahead)) && !this.at(ahead, W.Each)) > 0 &&
      /wraps/.test(this.image(wrap))
    )
      return false;
    return this.clauseHas(2, 14, (ahead) => this.at(ahead, W.With) || /^(tog|together)$/.test(this.image(ahead))) > 0;
  }

  /** "lift the bar between sts and k it tog with next st", "pull pin, place loop on LH needle, k2tog (loop with next st)". */
  protected strandAhead(): boolean {
    return this.strandEnd() > 0;
  }

  /** The stitch that closes the gap, in tokens from here; 0 when this is no lifting of a strand. */
  private strandEnd(): number {
    const lifts =
      (this.at(1, W.PickUp) && !/and (k|p|knit|purl)|ing/.test(this.image(1))) ||
      this.at(1, W.Place) ||
      (this.at(1, Word) && /^(lift|pull|raise|insert)$/.test(this.image(1))) ||
      (this.at(1, SlipStitch) && this.at(2, Comma) && this.at(3, W.Place)) ||
      (this.at(1, SlipStitch) && this.at(2, W.Next) && this.at(3, W.St) && this.at(4, Comma) && this.at(5, W.Place));
    if (!lifts) return 0;
    let strand = false;
    for (let ahead = 2; ahead < 26; ahead += 1) {
      if (Number.isNaN(this.LA(ahead).startOffset) || this.at(ahead, W.Holder, W.CastOn, W.BindOff) || this.at(ahead, W.Marker)) return 0;
      if (strands.test(this.image(ahead)) || this.at(ahead, W.Pin) || (this.at(ahead, W.St) && /^(below)$/.test(this.image(ahead + 1))))
        strand = true;
      if (!strand) {
        if (this.at(ahead, Comma, Semicolon) && !this.at(ahead + 1, W.Place)) return 0;
        continue;
      }
      // "pin, sl 1, k to gap, lift pinned loop": stitches worked in between are no part of the lifting.
      if (this.at(ahead, W.To, W.Until) || (this.at(ahead, PlainStitch, SlipStitch) && this.payload(ahead)?.values !== undefined)) return 0;
      const verb =
        this.bareVerb(ahead) &&
        /^(it|them|this)$/.test(this.image(ahead + 1)) &&
        this.clauseHas(ahead, 6, (look) => /^(tog|together)$/.test(this.image(look)) || this.at(look, W.With)) > 0;
      if (verb) return ahead;
      if (this.at(ahead, Stitch) && /tog|^ss/.test(this.payload(ahead)?.entry?.name ?? '')) return ahead;
    }
    return 0;
  }

  protected closeAhead(): boolean {
    if (this.sidesOfGap()) return true;
    if (this.at(1, Word) && /^close$/.test(this.image(1)))
      return this.at(2, W.Gap) && (this.at(3, Comma, Semicolon, W.And, Close, W.By) || Number.isNaN(this.LA(3).startOffset));
    if (this.bareVerb(1)) {
      if (this.wrapWorkAhead()) return true;
      const twin = this.at(2, W.Twin) || (this.at(2, W.Next) && this.at(3, W.Twin));
      if (twin) return !(this.at(1, W.Work) && /^(sts|twins)/.test(this.image(3)));
      // "work both loops as 1 st"
      return this.at(2, W.Each) && this.at(3, W.St) && /^loops$/.test(this.image(3));
    }
    return this.wrapWorkAhead() || this.strandAhead();
  }

  /** "work tog the 2 sts on either side of the gap": a decrease across it. */
  private sidesOfGap(): boolean {
    return (
      this.bareVerb(1) &&
      /^(?:work|k|p|knit|purl)(?: together| tog)? (?:the )?(?:2|two)? ?(?:sts|stitches)? ?(?:together |tog )?(?:on|at) (?:either|each|both) sides? of (?:the )?gap/i.test(
        this.text.slice(this.from(), this.from() + 80).replace(/\s+/g, ' '),
      )
    );
  }

  /** One stitch worked together with the mark beside it: takes one stitch and makes one. */
  closeStep = this.RULE('closeStep', (): Work => {
    const start = this.from();
    const state: { wrap: boolean; strand: number; eaten: number; decrease: boolean } = {
      wrap: false,
      strand: 0,
      eaten: 1,
      decrease: false,
    };
    this.ACTION(() => {
      state.decrease = this.sidesOfGap();
      state.wrap = this.wrapWorkAhead();
      state.strand = state.wrap ? 0 : this.strandEnd();
    });
    const head = this.CONSUME(Any) as KnitToken;
    this.MANY({
      GATE: () =>
        state.eaten < state.strand ||
        (!this.at(1, Comma, Semicolon, Close, Open, W.Turn, W.WrapTurn) &&
          !this.at(1, W.Then) &&
          !Number.isNaN(this.LA(1).startOffset) &&
          !this.at(0, Close) &&
          !/^\.$/.test(this.image(1)) &&
          !(this.at(1, W.And) && this.at(2, W.Turn))),
      DEF: () => {
        this.CONSUME1(Any);
        this.ACTION(() => {
          state.eaten += 1;
        });
      },
    });
    this.OPTION({
      GATE: () => state.strand > 0 && this.at(1, Open) && this.tieKind(1) === 'mark',
      DEF: () => {
        this.CONSUME2(Any);
        this.MANY1({ GATE: () => !this.at(1, Close), DEF: () => this.CONSUME3(Any) });
        this.CONSUME4(Any);
      },
    });
    return this.ACTION(
      (): Work =>
        state.decrease
          ? {
              type: 'work',
              stitch: head.payload?.entry?.name === 'p' ? 'pNtog' : 'kNtog',
              n: { type: 'count', values: [2], span: this.span(start) },
              manner: [],
              span: this.span(start),
            }
          : { type: 'work', stitch: state.wrap ? 'pick up wrap' : 'close gap', n: null, manner: [], span: this.span(start) },
    );
  });

  // Brackets that say what a decrease takes

  /**
   * What a bracket behind a decrease says it takes: the mark of a turn, a live stitch or an edge loop of the piece that
   * an edging is joined to; null for any other bracket.
   */
  protected tieKind(ahead: number): 'mark' | 'live' | 'edge' | null {
    if (!this.at(ahead, Open)) return null;
    const words = this.text.slice(this.LA(ahead).startOffset + 1, this.LA(ahead).startOffset + 90);
    const close = words.search(/[)\]]/);
    return close < 0 ? null : this.tieWords(words.slice(0, close).toLowerCase());
  }

  protected tieWords(words: string): 'mark' | 'live' | 'edge' | null {
    if (/\bgap\b|side of/.test(words)) return null;
    if (/\b(edging|border|cord|edge|trim|panel)\b.*\b(with|and|\+|tog)\b|\bnext\b|\blive\b/.test(words)) {
      if (/\byos?\b|\byarn ?overs?\b|\bpinned\b|\bstrand\b|\bwrap\b|^loop\b/.test(words)) return 'mark';
      if (
        /\bedge loop|\bpicked[- ]up|\bridge|\bchain|\bslipped edge|\bedge st(?:itch)?\b(?!.*(?:with|and|\+))|finished edge|cast-on edge|bound-off edge/.test(
          words,
        )
      )
        return 'edge';
      if (/\b(shawl|live|body|main|border|blanket|neck|held|edging|cord|piece|needle|centre|center|panel|hood|next)\b/.test(words))
        return 'live';
    }
    return /\byos?\b.*\bst|\bloop with\b|\bpinned\b/.test(words) ? 'mark' : null;
  }
}
