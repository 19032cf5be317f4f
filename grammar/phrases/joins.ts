/**
 * Joining, grafting and fastening off; changes of needle, yarn and side.
 *
 *     join in the rnd · rejoin yarn to rem sts · graft toe · fasten off · change to 4 mm needles · with RS facing
 */
import {
  Any,
  Colon,
  Comma,
  Count as CountToken,
  Dash,
  Fabric,
  type KnitToken,
  Mark,
  Open,
  PlainStitch,
  Stitch,
  W,
  Word,
} from '../tokens.ts';
import type { Change, Join } from '../tree.ts';
import { SpreadOver } from './evenly.ts';

/** "Knit the first and last sts together": the round is closed at the cost of a stitch. */
const endsTogether =
  /^(?:k|knit|p|purl|work) (?:the )?(?:first and last|last and first) (?:2 )?(?:sts?|stitch(?:es)?) (?:of (?:the )?(?:rnd|round|cast[- ]on) )?tog(?:ether)?\b/i;

export class Joins extends SpreadOver {
  protected joinAhead(): boolean {
    if (this.at(1, W.FastenOff, W.Graft, W.ThreeNeedle)) return true;
    if (this.at(1, W.Thread) && /^b/.test(this.image(1))) return true;
    if (this.at(1, W.Thread)) return this.within(2, 6, W.Yarn, W.St) || /^(tail|through)/.test(this.image(2));
    if (this.at(1, W.Holder) && this.image(1) === 'thread') return true;
    if (this.pulledThrough()) return true;
    // "weave the two sets of sts together"; ends are woven in as well
    if (/^weav(?:e|ing)$/.test(this.image(1))) return !this.at(2, W.In) && this.within(2, 8, W.St);
    if (this.at(1, W.Not)) return this.at(2, W.Join);
    if (endsTogether.test(this.text.slice(this.from(), this.from() + 60))) return true;
    if (this.at(1, W.Join)) return !this.joinsColour() && !this.hungThread();
    if (this.at(1, W.Form)) return /^(ring|round|circle)$/.test(this.image(2)) && this.separator(3);
    if (this.at(1, W.Work) && (this.at(2, W.ThreeNeedle) || this.at(3, W.ThreeNeedle))) return true;
    if (this.at(1, W.Work, W.Cont)) return this.backAndForth(2);
    if (this.at(1, W.BindOff)) return this.togetherAhead();
    if (this.at(1, W.With)) return this.at(2, W.Graft) || (this.at(3, W.Graft) && !this.at(2, Comma));
    if (this.at(1, Word) && /^(resume)/.test(this.image(1))) return this.within(2, 5, W.InRound);
    return false;
  }

  /** "pull it through rem sts", "pass tail through all sts twice". */
  private pulledThrough(): boolean {
    if (!this.at(1, Word) || !/^(pull|pass)$/.test(this.image(1))) return false;
    for (let ahead = 2; ahead < 6; ahead += 1) {
      if (/^through$/.test(this.image(ahead))) return this.within(ahead + 1, 5, W.St, W.Across);
      if (!this.at(ahead, Word, W.Yarn)) return false;
    }
    return false;
  }

  /** A bare "join", "join to form a circle", "join with a sl st", "join body": what closes the round names no edges to be sewn. */
  private joinsRound(words: string): boolean {
    if (/\b(?:shoulders?|sides?|sleeves?|collar|pieces|neckband|bands?|edges?|ends|seams?|tops?|halves|hems?)\b/.test(words)) return false;
    return (
      !/^attach/.test(words) &&
      !/\b\d+ (?:\([^)]*\) )?(?:sts|stitches)\b|^join(?:ing)? (?:to|at|the (?:two|2))\b (?!form|work|the (?:left|beg))/.test(words)
    );
  }

  /** "join in B", "join MC": a colour, not stitches. */
  private joinsColour(): boolean {
    if (this.image(1) === 'join in') return !this.within(2, 5, W.InRound, W.St, W.Yarn);
    const colour = this.at(2, W.Yarn) && this.at(3, Word) ? 3 : 2;
    return (
      this.at(colour, Word, W.Marker) &&
      /^(?:[a-z]|[mc]c\d?|colour|color|contrast|main)$/.test(this.image(colour)) &&
      (this.separator(colour + 1) || this.at(colour + 1, W.And, W.For, Dash))
    );
  }

  /** "work back and forth in rows", "cont in rows": the piece is flat from here on. */
  private backAndForth(ahead: number): boolean {
    if (/^(?:back|backwards?|forwards?)$/.test(this.image(ahead)) && this.at(ahead + 1, W.And)) return true;
    // "to and fro"
    if (this.at(ahead, W.To) && this.at(ahead + 1, W.And) && /^fro$/.test(this.image(ahead + 2))) return true;
    return this.at(ahead, W.In) && this.at(ahead + 1, W.Row) && !this.at(ahead + 2, CountToken);
  }

  /** "join for working in the rnd", "rejoin yarn to rem sts", "graft …", "fasten off", "thread tail through rem 8 sts". */
  override joinStep = this.RULE('joinStep', (): Join => {
    const start = this.from();
    const head = this.CONSUME(Any) as KnitToken;
    const state: { count: KnitToken | null } = { count: null };
    let side: Join['side'] = null;
    let round = false;
    this.MANY({
      GATE: () =>
        !this.separator() &&
        !this.at(1, Dash, W.Then) &&
        !(this.at(1, Colon) && this.at(2, Stitch, Mark, Open, W.Work)) &&
        !(
          this.at(1, W.And) &&
          !(this.at(2, W.BindOff, W.CastOn) && this.at(3, W.Edge)) &&
          (this.at(
            2,
            Stitch,
            W.Work,
            W.As,
            W.Patt,
            W.Rib,
            W.Place,
            W.BindOff,
            W.CastOn,
            W.PickUp,
            W.Leaving,
            W.Cont,
            W.Complete,
            W.Inc,
            W.Dec,
            W.Beg,
            W.Rep,
            Fabric,
          ) ||
            /^(?:slip|purl|knit)$/.test(this.image(2)))
        ) &&
        !(this.at(1, Open) && this.payload(1)?.holds !== 'remark' && this.payload(1)?.holds !== 'measure'),
      DEF: () => {
        const token = this.CONSUME1(Any) as KnitToken;
        this.ACTION(() => {
          if (this.at(0, CountToken) && state.count === null && this.at(1, W.St, Word)) state.count = token;
          if (this.at(0, W.Rs)) side = 'RS';
          if (this.at(0, W.Ws)) side = 'WS';
          if (this.at(0, W.InRound)) round = true;
        });
      },
    });
    // ", being careful not to twist": a clause of the same join.
    this.OPTION({
      GATE: () =>
        this.at(1, Comma) &&
        (/^(being|taking|careful|take|making|without)/.test(this.image(2)) || (head.tokenType === W.With && this.at(2, W.Join, W.Graft))),
      DEF: () => {
        this.CONSUME2(Any);
        this.MANY1({ GATE: () => !this.separator(), DEF: () => this.CONSUME3(Any) });
      },
    });
    return this.ACTION((): Join => {
      const words = this.words(start, this.LA(0).startOffset + this.LA(0).image.length).toLowerCase();
      const number = state.count as KnitToken | null;
      if (/\b(?:in|into) (?:the |a )?(?:rnds?|rounds?|ring)\b/.test(words) || endsTogether.test(words)) round = true;
      const what: Join['what'] =
        head.tokenType === W.FastenOff
          ? 'fastenOff'
          : head.tokenType === W.Graft || head.tokenType === W.With || /^weav/i.test(head.image)
            ? 'graft'
            : head.tokenType === W.ThreeNeedle || head.tokenType === W.BindOff
              ? 'threeNeedle'
              : head.tokenType === W.Thread || head.tokenType === W.Holder || /^(?:pull|pass)$/i.test(head.image)
                ? 'thread'
                : head.tokenType === W.Not || (head.tokenType === W.Work && !/needle/.test(words)) || head.tokenType === W.Cont
                  ? 'noRound'
                  : /^resume/.test(words)
                    ? 'resumeRound'
                    : round
                      ? 'round'
                      : /(?:three|3)[- ]needle/.test(words)
                        ? 'threeNeedle'
                        : /\bgraft/.test(words)
                          ? 'graft'
                          : /seam|shoulder seams|side seams/.test(words) && !/yarn/.test(words)
                            ? 'seam'
                            : /yarn|ball|^re-?join|^reattach|^attach/.test(words)
                              ? 'rejoin'
                              : this.joinsRound(words)
                                ? 'round'
                                : number !== null && /\b(?:three|3)[- ]needle\b[^.]*$/i.test(this.text.slice(0, start))
                                  ? 'threeNeedle'
                                  : /^join(?:ing)? (?:to|at)\b/.test(words)
                                    ? 'rejoin'
                                    : 'seam';
      return {
        type: 'join',
        what,
        count: number === null ? null : this.countOf(number),
        side,
        loses: /first and last|last and first|k2tog|over the first/.test(words) ? 1 : 0,
        span: this.span(start),
      };
    });
  });

  protected changeAhead(): boolean {
    if (this.at(1, W.Change, W.Break)) return true;
    if (this.at(1, W.Join)) return this.joinsColour();
    if (this.at(1, W.With)) return !this.at(2, Stitch) || this.at(2, W.Rs, W.Ws);
    if (this.at(1, W.Rs, W.Ws)) return this.at(2, W.Facing, Comma) || /facing/.test(this.image(1));
    // "Do not cast off": the stitches stay for what comes
    if (this.at(1, W.Not))
      return (
        this.at(2, W.Break, W.FastenOff) ||
        (this.at(2, W.BindOff) && (this.separator(3) || this.at(3, W.And, W.Or, W.St) || /^(?:yet|them|any)$/.test(this.image(3))))
      );
    if (this.at(1, W.Beg)) return this.at(2, W.At) || this.at(2, W.In);
    if (this.at(1, Word) && /^(slide|push|distribute|divide|arrange|rearrange|leaving)$/.test(this.image(1))) return true;
    if (this.at(1, W.Place)) return this.image(1) === 'slide';
    if (this.at(1, W.Leaving)) return this.within(2, 8, W.Yarn) || /tail/.test(this.text.slice(this.from(), this.from() + 30));
    return false;
  }

  /** "change to larger needles", "with RS facing", "using B", "cut yarn, leaving a long tail": takes and makes nothing. */
  override changeStep = this.RULE('changeStep', (): Change => {
    const start = this.from();
    const head = this.CONSUME(Any) as KnitToken;
    this.MANY({
      GATE: () =>
        !this.separator() &&
        !this.at(1, Dash, W.Then, Colon) &&
        // "with white (k2, p1) 3 times"
        !(this.at(1, Open) && this.payload(1)?.holds === 'group') &&
        !(this.at(1, W.And) && this.at(2, W.Leaving)) &&
        !(this.at(1, W.And) && this.at(2, W.Not) && this.at(3, W.Turn)) &&
        !this.at(1, W.PickUp, W.Graft) &&
        // "using a tubular cast off, bind off all sts": the first names the way of doing it
        !(this.at(1, W.BindOff) && !this.at(0, W.Not) && !(this.at(2, Comma) && head.tokenType === W.With)) &&
        !(this.at(1, W.CastOn) && !this.at(2, Comma, Word)) &&
        !(this.at(1, PlainStitch, Stitch) && this.at(0, W.Needle, W.Facing, W.Rs, W.Ws, W.Yarn, W.Holder, Word)) &&
        !(this.at(1, W.And) && /^(thread|pull|draw|slip|leave|weave)$/.test(this.image(2))) &&
        !(this.at(1, Word) && /^(?:slip|pull)$/.test(this.image(1)) && this.at(0, W.Needle, W.Facing, W.Rs, W.Ws)) &&
        !(this.at(1, W.Place, W.Return, W.Leaving) && this.at(0, W.Facing, W.Rs, W.Ws)) &&
        !(
          this.at(1, W.And) &&
          this.at(
            2,
            Stitch,
            W.PickUp,
            W.Join,
            W.CastOn,
            W.Work,
            W.As,
            W.Cont,
            W.Place,
            W.Beg,
            W.Thread,
            W.BindOff,
            W.FastenOff,
            W.Rib,
            W.Patt,
            Fabric,
            W.Rep,
            W.Inc,
            W.Dec,
          )
        ) &&
        !(this.at(1, W.Work, W.Cont, W.Rib, W.Beg) && this.at(0, W.Needle)) &&
        !(this.at(1, W.Join) && this.at(0, W.Facing, W.Rs, W.Ws)),
      DEF: () => this.CONSUME1(Any),
    });
    return this.ACTION((): Change => {
      const detail = this.words(start, this.LA(0).startOffset + this.LA(0).image.length);
      const words = detail.toLowerCase();
      const what: Change['what'] =
        head.tokenType === W.Join
          ? 'join'
          : /\b(rs|ws|right side|wrong side)\b|facing/.test(words)
            ? 'side'
            : /^slide|^push/.test(words)
              ? 'slide'
              : /^(?:divide|distribute|arrange|rearrange|(?:do not|don't|without) (?:cast|bind|bo|fasten)\b)/.test(words)
                ? 'other'
                : head.tokenType === W.Break || head.tokenType === W.Not
                  ? 'break'
                  : /needle|dpn|circular|\bmm\b/.test(words)
                    ? 'needle'
                    : 'yarn';
      return { type: 'change', what, detail, span: this.span(start) };
    });
  });
}
