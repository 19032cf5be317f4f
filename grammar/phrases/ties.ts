/**
 * Stitches that tie an edging to its piece: the last of the edging with the next of the piece.
 *
 *     ssk last st with next edge loop · k last edging st together with next border st · join
 */
import { Any, Comma, Count as CountToken, type KnitToken, PlainStitch, Stitch, W, Word } from '../tokens.ts';
import type { Work } from '../tree.ts';
import { Runs } from './runs.ts';

export class Ties extends Runs {
  /** "ssk last st with next edge loop", "k2tog last edging st with next live st": a decrease told by what it takes. */
  protected tieAhead(): boolean {
    if (this.plainTie()) return true;
    if (!this.at(1, Stitch) || !/ecrease/.test(this.payload(1)?.entry?.kind ?? '')) return false;
    if (this.tieKind(2) !== null) return true;
    return this.looseTie() !== null;
  }

  /** "k last edging st together with next border st", "knit together the last st and the next st of the shawl": a decrease in plain words. */
  private plainTie(): boolean {
    if (!this.at(1, PlainStitch, Stitch)) return false;
    const words = (this.text.slice(this.from(), this.from() + 120).split(/[,.;:*()]/)[0] ?? '').replace(/\s+/g, ' ');
    const last = String.raw`(?:the )?last (?:edging |border |lace |trim )?(?:st|stitch)(?: of (?:the )?(?:edging|border|lace|trim|row))?`;
    const next = String.raw`(?:(?:the )?next|(?:one|1|a) (?:[a-z]+ )?(?:st|stitch)(?: (?:of|from))?)\b`;
    return new RegExp(
      String.raw`^(?:(?:k|knit|p|purl) ${last} tog(?:ether)? with ${next}|(?:k|knit|p|purl) tog(?:ether)? ${last} (?:with|and) ${next})`,
      'i',
    ).test(words);
  }

  private looseTie(): 'mark' | 'live' | 'edge' | null {
    let end = this.LA(1).startOffset + this.LA(1).image.length;
    let count = 0;
    for (let ahead = 2; ahead < 18; ahead += 1) {
      if (this.separator(ahead) || this.at(ahead, W.Turn, CountToken)) break;
      end = this.LA(ahead).startOffset + this.LA(ahead).image.length;
      count += 1;
    }
    if (count < 3) return null;
    const words = this.text.slice(this.LA(2).startOffset, end).toLowerCase();
    if (/^joining (?:the )?(?:edging|border|trim|cord)\b.*\bto\b/.test(words)) return 'live';
    return /\b(with|and|tog)\b/.test(words) ? this.tieWords(words) : null;
  }

  tiedWork = this.RULE('tiedWork', (): Work => {
    const start = this.from();
    const token = this.CONSUME(Any) as KnitToken;
    const state: { kind: 'mark' | 'live' | 'edge' | null; bracket: boolean; words: number; plain: boolean } = {
      kind: null,
      bracket: false,
      words: 0,
      plain: false,
    };
    this.ACTION(() => {
      state.words = this.from();
      state.kind = this.tieKind(1);
      state.bracket = state.kind !== null;
      state.plain = !/tog|ssk|skp/.test(token.payload?.entry?.name ?? 'tog');
    });
    this.MANY({
      GATE: () => (state.bracket ? !/^[)\]]$/.test(this.image(0)) : !this.separator() && !this.at(1, W.Turn)),
      DEF: () => this.CONSUME1(Any),
    });
    return this.ACTION((): Work => {
      const words = this.words(state.words, this.LA(0).startOffset + this.LA(0).image.length).toLowerCase();
      const kind = state.kind ?? (/^joining /.test(words) ? 'live' : this.tieWords(words));
      if (kind === 'mark') return { type: 'work', stitch: 'close yo gap', n: null, manner: [], span: this.span(start) };
      if (state.plain)
        return {
          type: 'work',
          stitch: /^p/i.test(token.image) ? 'pNtog' : 'kNtog',
          n: { ...this.countOf(token), values: [2] },
          manner: [],
          span: this.span(start),
          joins: { of: kind === 'edge' ? 'edge' : 'live', count: 1 },
        };
      const count = Number(
        /\bnext (\d)|\b(\d) (?:live|shawl|body|blanket|main|border|held|next)/
          .exec(words)
          ?.slice(1)
          .find((digit) => digit !== undefined) ?? (/\b(two)\b/.test(words) ? 2 : 1),
      );
      return {
        type: 'work',
        stitch: token.payload?.entry?.name ?? token.image.toLowerCase(),
        n: this.countInside(token),
        manner: [],
        span: this.span(start),
        ...(token.payload?.m === undefined ? {} : { m: token.payload.m }),
        ...(kind === null ? {} : { joins: { of: kind, count } }),
      };
    });
  });

  /** "join" or "JS" at the end of an edging row: the last stitch of the edging with the next stitch of the piece. */
  protected bareJoinAhead(): boolean {
    const word = (this.at(1, W.Join) && /^join$/.test(this.image(1))) || (this.at(1, Word) && /^js$/.test(this.image(1)));
    if (!word) return false;
    // A finger or a flap ends "join" too, and joins itself: no edging casts on or holds in its row.
    const before =
      this.text
        .slice(Math.max(0, this.from() - 160), this.from())
        .split(/\.\s|\n\s*\n/)
        .at(-1) ?? '';
    if (
      /\b(?:co|cast on|holder|waste yarn|rnd|round|finger)\b/i.test(before) ||
      !/^\s*(?:row|r\d|sr|\d+(?:st|nd|rd|th) row|\*|next row|rows)/i.test(before)
    )
      return false;
    const ended = this.separator(2) || /^[([]$/.test(this.image(2));
    return (
      (ended &&
        /(?:[kp]\d+|tog|ssk|yo|st|kfb)\s*,\s*$/i.test(this.text.slice(Math.max(0, this.from() - 12), this.from())) &&
        !this.at(2, Comma)) ||
      /^js$/.test(this.image(1))
    );
  }

  bareJoin = this.RULE('bareJoin', (): Work => {
    const token = this.CONSUME(Any) as KnitToken;
    return this.ACTION(() => ({
      type: 'work',
      stitch: 'kNtog',
      n: { type: 'count', values: [2], span: this.tokenSpan(token) },
      manner: [],
      joins: { of: 'live', count: 1 },
      span: this.tokenSpan(token),
    }));
  });
}
