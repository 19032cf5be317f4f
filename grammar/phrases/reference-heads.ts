/**
 * How a reference begins: which words tell rows, a side or a piece by what was given before.
 *
 *     as given for … · Front is worked as … · Shape armholes as for … · Work from ** to ** as on … · Make 2
 */

import { mirroredPiece, oneMore, partAsIn, pieceTold } from '../reference-names.ts';
import { Close, Comma, Count as CountToken, Dash, FullStop, Name, Ordinal, PlainStitch, rowWords, Stitch, W, Word } from '../tokens.ts';
import { Goals } from './goals.ts';

export class ReferenceHeads extends Goals {
  /** The words from here to the end of the clause or, with `far`, of the sentence. */
  protected clauseWords(far = false): string {
    return (this.text.slice(this.from(), this.from() + 200).split(far ? /[.;](?:\s|$)/ : /[,.;](?:\s|$)/)[0] ?? '').trim();
  }

  /** A reference told with the piece or its part in front: "Front is worked as Back to **", "Shape armholes as for Back". */
  protected toldOfPieceAhead(): boolean {
    const words = this.clauseWords();
    return (
      /^shape [a-z ]+? to (?:match|correspond)\b/i.test(words) ||
      pieceTold(words) ||
      partAsIn(words) !== null ||
      oneMore(words) !== null ||
      mirroredPiece(words) !== null
    );
  }

  /** "Work from ** to ** as on Left Front", "Proceed as for Back from ** to ***": a marked stretch of another piece. */
  protected markedStretch(): { name: string; from: string; to: string } | null {
    if (!this.at(1, W.Work, W.Cont, W.Complete, W.As, W.Foll)) return null;
    const words = this.clauseWords(true).toLowerCase().replace(/\s+/g, ' ');
    const marks = /\bfrom (\*\*+|†+|‡+) to (\*\*+|†+|‡+|(?:the )?end)(?=[\s,]|$)/.exec(words);
    const name = /\b(?:as|like|of)(?: (?:given|set|worked))?(?: (?:for|on|in))? (?:the )?([a-z][a-z0-9 ]*?)(?= from\b|[,(]|$)/.exec(
      words,
    )?.[1];
    if (marks?.[1] === undefined || marks[2] === undefined || name === undefined) return null;
    return { name: name.trim(), from: marks[1], to: marks[2] };
  }

  protected referAhead(): boolean {
    // "make buttonhole as before", "as Row 3 to last 6 sts": neither a piece nor the whole row
    if (/^(?:make|work) (?:a |the |one )?buttonholes?\b|^as (?:row|rnd|round) \d+ to (?:last|within|\d)/i.test(this.clauseWords()))
      return false;
    // "work to same length as back": a goal
    if (/^(?:work|cont(?:inue)?)\b[^.;]{0,40}?\bsame length as\b/i.test(this.clauseWords())) return false;
    if (this.toldOfPieceAhead() || this.markedStretch() !== null) return true;
    // "Knit as for back to **"
    if (this.at(1, PlainStitch) && this.payload(1)?.values === undefined)
      return (this.at(2, W.As) && this.at(3, Word, Name, W.For, W.First)) || (this.at(2, W.Given) && this.at(3, W.For));
    if (this.at(1, W.Given)) return this.at(2, W.For, W.On, W.In, Name, Word);
    if (this.at(1, W.As) && /^(?:soon|follows|foll|well)$/.test(this.image(2))) return false;
    if (this.at(1, W.As))
      return (
        this.at(2, ...rowWords, Ordinal, W.Given, W.For) ||
        this.within(2, 6, Name, W.First, W.Last) ||
        this.at(2, Word) ||
        this.image(2) === 'left'
      );
    if (this.at(1, W.Matches)) return /^to /.test(this.image(1)) && !this.within(2, 8, W.Until);
    if (this.at(1, W.To)) return this.at(2, W.Matches) && !this.within(3, 8, W.Until);
    if (this.at(1, W.Complete))
      return (
        this.within(2, 8, W.As, W.Given, W.For, W.Matches, W.To, W.Same) ||
        ((this.at(2, Word, Name) || this.image(2) === 'left') && / as$/.test(this.image(1)))
      );
    if (this.makesMore()) return true;
    // "Repeat for second sock", "Rep for other side"
    if (this.at(1, W.Rep) && this.at(2, W.For)) return this.at(3, Ordinal, W.Other) && this.separator(5);
    if (this.at(1, W.Work, W.Rep)) {
      let ahead = 2;
      while (
        (this.image(ahead) === 'left' ||
          this.at(ahead, Word, W.Each, W.Same, Name, W.Other, Ordinal, W.To, W.Shaping) ||
          (this.at(ahead, W.Of, W.Edge, W.Rem) && !this.at(1, W.Rep)) ||
          (this.at(ahead, W.St) && this.at(ahead - 1, W.Rem, W.Other)) ||
          /^the same$/.test(this.image(ahead))) &&
        ahead < 8 &&
        !(this.at(ahead, W.To) && !this.at(ahead + 1, W.Matches))
      )
        ahead += 1;
      if (this.at(ahead, W.Given)) return this.at(ahead + 1, W.For, W.On, W.In, Name, Word);
      if (this.at(ahead, W.As, W.Matches)) return !(this.at(ahead, W.As) && this.at(ahead + 1, W.Set)) && !this.at(ahead + 1, Dash);
      if (
        this.at(2, W.In) &&
        (this.at(3, W.Same) || (/same$/.test(this.image(3)) && /^(?:way|manner|fashion)$/.test(this.image(4)) && this.at(5, W.As)))
      )
        return true;
      if (this.at(ahead, W.In) && this.at(ahead + 1, W.Same, W.These) && /^(?:way|manner)$/.test(this.image(ahead + 2))) return ahead > 2;
    }
    return false;
  }

  /** "Make 2", "make two alike", "make second sleeve in the same way", "work another piece the same". */
  protected makesMore(): boolean {
    if (this.at(1, Stitch))
      return (
        /^make\s+\w+$/.test(this.image(1)) &&
        this.payload(1)?.values !== undefined &&
        (this.at(2, FullStop, Close) ||
          Number.isNaN(this.LA(2).startOffset) ||
          (this.at(2, Word) && (this.separator(3) || /^(alike|both|pieces|identical)$/.test(this.image(2)))) ||
          (this.at(2, W.More) && this.within(3, 5, W.Same, W.These)))
      );
    if (!this.at(1, W.Work)) return false;
    if (
      /^(?:make|work)$/.test(this.image(1)) &&
      this.at(2, CountToken) &&
      (this.image(1) === 'make' || /^(?:alike|pieces|identical)$/.test(this.image(3))) &&
      (this.separator(3) || (this.at(3, Word) && /^(alike|pieces|identical)$/.test(this.image(3))))
    )
      return !this.at(3, Comma);
    if (!this.at(2, Ordinal, W.Other, Name, Word, W.More)) return false;
    for (let ahead = 3; ahead < 9; ahead += 1) {
      if (this.separator(ahead) || this.at(ahead, Stitch, W.Row, W.Round, CountToken)) return false;
      if (this.at(ahead, W.Same, W.These) && /same/.test(this.image(ahead))) return true;
      if (/^(alike|likewise)$/.test(this.image(ahead))) return true;
    }
    return false;
  }

  /** Tokens before the verb of ", but cast on 4 sts more", ", casting on 90 sts"; 0 when none follows. */
  protected castOnDiffers(): number {
    let ahead = 1;
    while (this.at(ahead, Comma) || /^(?:but|except|and|only|that|you)$/.test(this.image(ahead))) ahead += 1;
    return ahead > 1 && this.at(ahead, W.CastOn) && this.at(ahead + 1, CountToken) && (this.at(1, Comma) || /^but$/.test(this.image(1)))
      ? ahead
      : 0;
  }
}
