/**
 * Markers placed, slipped, removed and hung.
 *
 *     pm · sm · remove BOR marker · pm 20 sts in from each edge · slip it
 */
import {
  Any,
  Close,
  Comma,
  Count as CountToken,
  type KnitToken,
  Open,
  Ordinal,
  PlainStitch,
  SlipStitch,
  Stitch,
  W,
  Word,
} from '../tokens.ts';
import type { Count, Marker } from '../tree.ts';
import { Turns } from './turns.ts';

const markerWords = /^(pm|sm|rm|slm|plm|rmv)$/;

export class Markers extends Turns {
  /** "join a coloured thread at each end of row": a mark of the row. */
  protected hungThread(): boolean {
    return /^(?:join|tie|attach|(?:put|place|insert)(?! (?:a |the )?markers?\b))(?: in)?(?: an?)?(?: short)?(?: length of| piece of| bit of)?(?: colou?red| contrast(?:ing)?)?(?: (?:thread|yarn|wool|marker|markers))+ (?:at|to|in|on) (?:each|both|either) (?:ends?|edges?|sides?)\b/i.test(
      this.text.slice(this.from(), this.from() + 120).replace(/\s+/g, ' '),
    );
  }

  /** Where a marker stands that is told by numbers of stitches: tokens to the end of the words; 0 when it is told otherwise. */
  private placeTold(): { at: Marker['at']; end: number } | null {
    const words = this.text.slice(this.from(), this.from() + 140);
    const head = String.raw`^(?:pm|plm|place (?:a |an )?(?:stitch |removable |locking )?(?:markers?|m)|put (?:a )?markers?|mark)`;
    const number = String.raw`(\d+(?: ?[([][\d ,:;–-]+[)\]])?)`;
    const forms: readonly [string, NonNullable<Marker['at']>['from']][] = [
      [
        `${head} (?:on |at )?(?:each|either|both) sides? of (?:the )?(?:centre |center )${number} (?:centre |center )?(?:sts|stitches)`,
        'centre',
      ],
      [`${head} (?:on |at )?(?:each|either|both) sides? of (?:the )?${number} (?:centre |center |middle )(?:sts|stitches)`, 'centre'],
      [`${head} after (?:each|every) ${number}(?:st|nd|rd|th)?(?: ?[([][^)\\]]*[)\\]])? (?:st|stitch)`, 'every'],
      [`${head} between (?:the )?${number}(?:st|nd|rd|th)? and \\d+(?:st|nd|rd|th)? (?:sts|stitches)(?! and)`, 'beginning'],
      [`${head} at (?:the )?half(?:way|-way)?(?: point| mark)? \\(${number} (?:sts|stitches)\\)`, 'beginning'],
    ];
    for (const [form, from] of forms) {
      const match = new RegExp(form, 'i').exec(words);
      if (match === null) continue;
      for (let ahead = 2; ahead < 16; ahead += 1) {
        if (this.at(ahead, CountToken, Ordinal))
          return { at: { count: this.countOf(this.LA(ahead) as KnitToken), from }, end: this.from() + match[0].length };
      }
    }
    return null;
  }

  /** "(A)" or " A" behind the marker just read: its name, a letter that may look like an article. */
  protected letterBehind(): string | null {
    const end = this.LA(0).startOffset + this.LA(0).image.length;
    return (
      /^ ?(?:\(([A-H])\)|([A-H])(?=[\s,.;:)\]]|$))/
        .exec(this.text.slice(end, end + 5))
        ?.slice(1)
        .find((letter) => letter !== undefined)
        ?.toLowerCase() ?? null
    );
  }

  protected markerAhead(): boolean {
    if (this.hungThread()) return true;
    // "pass marker from left needle to right"
    if (/^pass(?:ing)?$/.test(this.image(1))) return this.at(2, W.Marker, W.Bor);
    if (this.at(1, Stitch) && this.payload(1)?.entry?.kind === 'marker') return true;
    // "sl marker", and "slip it" behind "k to marker"
    if (this.at(1, SlipStitch)) return this.payload(1)?.values === undefined && (this.at(2, W.Marker, W.Bor) || /^it$/.test(this.image(2)));
    if (this.at(1, Stitch)) return false;
    if (this.at(1, W.Place) && (this.at(2, W.Holder) || this.at(3, W.Holder)) && /thread|yarn/.test(`${this.image(2)} ${this.image(3)}`))
      return this.at(3, W.At) || this.at(4, W.At);
    if (this.at(1, Word)) {
      if (markerWords.test(this.image(1))) return true;
      if (/^(slip|remove)$/.test(this.image(1)) && /^it$/.test(this.image(2))) return true;
      if (/^(slip|remove|removing|slipping|replace|mark|hang|remove|insert)$/.test(this.image(1)))
        return this.markerWithin(2, 4) || this.image(1) === 'mark';
    }
    if (this.at(1, Stitch, W.Return, W.Place)) return this.markerWithin(2, 4) && !this.at(2, CountToken);
    if (this.at(1, W.Place)) return this.markerWithin(2, 5);
    if (this.at(1, W.Not)) return false;
    return false;
  }

  /** "place markers 20 cm down from shoulders": beside the piece, at no stitch of the row. */
  private measuredMark(): boolean {
    return /^(?:place|put|pm) (?:a )?(?:markers?|m) \d+(?:[½¼¾.]\d*)?(?: ?[([][^)\]]*[)\]])? ?(?:cm|mm|ins?|inch(?:es)?|")/i.test(
      this.text.slice(this.from(), this.from() + 60),
    );
  }

  /** "pm 20 sts in from each edge", "after 20 sts": how far in the marker stands. */
  private markerCountAhead(): boolean {
    return this.at(2, W.St) && (this.at(0, W.After) || (this.at(3, W.In, W.From) && this.within(4, 4, W.Edge, W.End, W.Beg)));
  }

  private markerWithin(from: number, count: number): boolean {
    for (let ahead = from; ahead < from + count; ahead += 1) {
      if (this.at(ahead, W.Marker, W.Bor)) return true;
      if (this.at(ahead, Comma, W.St, PlainStitch, W.To, W.Across, W.Between)) return false;
    }
    return false;
  }

  override markerStep = this.RULE('markerStep', (): Marker => {
    const start = this.from();
    const place: { told: { at: Marker['at']; end: number } | null; hung: boolean } = { told: null, hung: false };
    this.ACTION(() => {
      place.told = this.placeTold();
      place.hung = this.hungThread() || this.measuredMark();
    });
    const token = this.CONSUME(Any) as KnitToken;
    let op: Marker['op'] = 'place';
    this.ACTION(() => {
      const image = token.image.toLowerCase();
      const name = token.payload?.entry?.name ?? image;
      op = /^(sm|slip|slm|slipping|sl|pass)/.test(name)
        ? 'slip'
        : /^r(m|emov)/.test(name)
          ? 'remove'
          : /^(replace|return)/.test(name)
            ? 'replace'
            : /^(mark|hang)$/.test(name)
              ? 'hang'
              : 'place';
    });
    // "Slip a marker on right needle to mark beg of rnds": a new one is hung on.
    this.ACTION(() => {
      const ahead = this.text.slice(start, start + 60);
      if (op === 'slip' && /^(?:slip|sl) an? (?:\w+ )?(?:marker|m)\b.*\b(?:on|onto|to mark)\b/i.test(ahead)) op = 'place';
    });
    let atRow = false;
    const state: { in: Count | null } = { in: null };
    let words = start;
    this.ACTION(() => {
      words = this.LA(0).startOffset + this.LA(0).image.length;
    });
    this.MANY1({
      GATE: () => (place.told !== null && this.LA(1).startOffset < place.told.end) || (place.hung && !this.separator()),
      DEF: () => this.CONSUME2(Any),
    });
    this.MANY({
      GATE: () =>
        place.told === null &&
        !this.at(1, Comma) &&
        (this.at(
          1,
          W.Marker,
          W.Bor,
          W.For,
          W.At,
          W.Each,
          W.End,
          W.Of,
          W.Last,
          W.Row,
          W.Round,
          W.Beg,
          W.On,
          W.Edge,
          W.In,
          W.Next,
          W.St,
          W.Centre,
          W.These,
          W.As,
          W.To,
          W.After,
          W.Before,
          W.Past,
          W.Other,
          W.First,
        ) ||
          (this.at(1, Word) && !/^(slip|remove)/.test(this.image(1))) ||
          (this.at(1, W.And) && this.at(2, W.End, W.Other)) ||
          (this.at(1, W.And) && this.at(2, CountToken) && this.at(3, W.Marker)) ||
          (this.at(0, W.And) && this.at(1, CountToken)) ||
          (this.at(1, CountToken) && (this.at(0, W.Place) || /^insert$/.test(this.image(0)) || this.markerCountAhead())) ||
          (this.at(1, Ordinal) && this.at(2, W.St)) ||
          (this.at(1, CountToken) && this.at(0, W.Centre, W.First, W.Last) && this.at(2, W.St)) ||
          (this.at(1, W.From, W.Into) && this.at(2, W.Each, W.Edge, W.End, W.Beg)) ||
          (this.at(1, W.Holder) && this.at(0, W.Place, Word))) &&
        !(this.at(1, W.As) && this.at(2, Word) && false) &&
        !(this.at(1, W.On) && this.at(2, CountToken)),
      DEF: () => {
        const word = this.CONSUME1(Any) as KnitToken;
        this.ACTION(() => {
          if (this.at(0, CountToken, Ordinal) && this.at(1, W.St) && !(this.at(0, CountToken) && this.at(-1, W.Centre, W.First, W.Last)))
            state.in = this.countOf(word);
          if (this.at(0, W.Each) && this.at(1, W.End)) atRow = true;
          if (this.at(0, W.End, W.Edge) && /ends?/.test(this.image(0))) atRow = true;
        });
      },
    });
    const letter = this.ACTION(() => (place.told === null && !place.hung ? this.letterBehind() : null));
    this.OPTION({
      GATE: () => letter !== null && this.at(1, Open),
      DEF: () => {
        this.CONSUME3(Any);
        this.MANY2({ GATE: () => !this.at(0, Close), DEF: () => this.CONSUME4(Any) });
      },
    });
    return this.ACTION((): Marker => {
      if (place.told !== null)
        return {
          type: 'marker',
          op: /^mark$/i.test(token.image) ? 'hang' : 'place',
          name: null,
          atRow: false,
          at: place.told.at as NonNullable<Marker['at']>,
          span: this.span(start),
        };
      if (place.hung) return { type: 'marker', op: 'hang', name: null, atRow: true, span: this.span(start) };
      const described = this.words(words, this.LA(0).startOffset + this.LA(0).image.length).toLowerCase();
      const name =
        /\b(?:for )?(bor|beg(?:inning)?(?:[ -]of)?(?: the)?[ -](?:rnds?|rounds?)|(?:start|begin(?:ning)?) of(?: the)? (?:rnds?|rounds?))\b/.test(
          described,
        )
          ? 'BOR'
          : (letter ??
            /(?:marker|m) ([a-d])\b/.exec(described)?.[1] ??
            /\bfor ([a-z ]+)$/.exec(described)?.[1] ??
            /^(side|raglan|centre|center) (?:marker|m)\b/.exec(described)?.[1] ??
            null);
      return {
        type: 'marker',
        op: atRow && op === 'place' ? 'hang' : /\b(in|on) (the )?(next|this|centre|center) st/.test(described) ? 'hang' : op,
        name,
        ...(op === 'remove' && (/^removing/i.test(token.image) || /\b(?:markers|ms|all|as you|when you)\b/.test(described))
          ? { anywhere: true }
          : {}),
        atRow: atRow && state.in === null,
        ...(state.in === null
          ? {}
          : { at: { count: state.in, from: /each|both/.test(described) ? ('eachEnd' as const) : ('beginning' as const) } }),
        span: this.span(start),
      };
    });
  });
}
