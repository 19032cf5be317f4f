/**
 * Which stitches alone are worked, when the round goes on, and where it begins.
 *
 *     Work back and forth on these 32 sts only · back to working in the rnd over all sts · Move BOR 2 sts to the left
 */
import { Any, Colon, Comma, Count as CountToken, Dash, type KnitToken, Name, Open, PlainStitch, Stitch, W, Word } from '../tokens.ts';
import type { Count, Join, Marker, Only } from '../tree.ts';
import { Arranging } from './arranging.ts';

/** Parts that are worked flat on some of the stitches. */
const segments = /^(heel|flap|thumb|toe|front|back|instep|tab|tip|earflap|tongue|panel)$/;

export class Needles extends Arranging {
  /** "Working back and forth on these 30 sts only", "work first 30 sts of rnd back and forth in rows". */
  protected onlyAhead(): boolean {
    // "Heel is worked over next 30 sts", "Heel flap is worked back and forth on 30 sts"
    if (
      this.at(1, Word, Name) &&
      segments.test(this.image(1)) &&
      /^(?:the )?\w+(?: flap| turn)? (?:is|are) (?:now |then )?worked (?:flat |back and forth |in rows )*(?:over|on|across)\b/i.test(
        this.text.slice(this.from(), this.from() + 80).replace(/\s+/g, ' '),
      )
    )
      return this.countBefore(4) || this.countBefore(8);
    if (!this.at(1, W.Work, W.Cont, W.Patt)) return false;
    let these = 0;
    let told = false;
    for (let ahead = 2; ahead < 16; ahead += 1) {
      if (this.separator(ahead)) break;
      if (this.at(ahead, Stitch, W.Until) || (this.at(ahead, W.To) && !this.at(ahead + 1, W.And))) break;
      if (this.at(ahead, W.St)) these = ahead;
      if (
        this.at(ahead, W.Only) ||
        (/^(?:back|backwards?)$/.test(this.image(ahead)) && this.at(ahead + 1, W.And)) ||
        /^(?:forth|fro|forwards?)$/.test(this.image(ahead)) ||
        (this.at(ahead, W.In) && this.at(ahead + 1, W.Row))
      )
        told = true;
    }
    // "Continue on the last set of 33 sts"
    if (
      these > 0 &&
      this.at(1, W.Work, W.Cont) &&
      this.at(2, W.On) &&
      this.at(3, W.Last, W.First, W.These) &&
      /^(set|group|lot)$/.test(this.image(4))
    )
      return true;
    // "cont on these sts for left side of neck"
    return (
      these > 0 &&
      (told ||
        (this.at(1, W.Work, W.Cont) && this.at(2, W.On) && this.at(3, W.These, W.First, CountToken) && these <= 5 && !this.at(1, W.Patt)))
    );
  }

  onlyStep = this.RULE('onlyStep', (): Only => {
    const start = this.from();
    const state: { which: Only['which']; count: Count | null } = { which: 'these', count: null };
    this.CONSUME(Any);
    this.MANY({
      GATE: () =>
        !this.separator() &&
        !this.at(1, W.Then, Colon) &&
        !(this.at(1, W.And) && !/^(?:forth|fro|forwards?)$/.test(this.image(2))) &&
        !(this.at(1, W.As) && this.at(0, W.Row, W.Only)),
      DEF: () => {
        const token = this.CONSUME1(Any) as KnitToken;
        this.ACTION(() => {
          // "over N1 only": the number of a needle
          if (this.at(0, CountToken) && (this.at(-1, W.Needle) || /^n$/.test(this.image(-1)))) return;
          if (this.at(0, CountToken) && state.count === null) state.count = this.countOf(token);
          else if (this.at(0, W.Next)) state.which = 'next';
          else if (this.at(0, W.First) && !/^(?:side|half)$/.test(this.image(1))) state.which = 'first';
          else if (this.at(0, W.Last) && !/^(?:side|half)$/.test(this.image(1))) state.which = 'last';
          else if (this.at(0, W.Centre)) state.which = 'centre';
        });
      },
    });
    // ", leaving the rem sts on the needle for the front": they wait, as "only" says already.
    this.OPTION({
      GATE: () => this.at(1, Comma) && this.at(2, W.Leaving) && this.restStays(),
      DEF: () => {
        this.CONSUME(Comma);
        this.MANY1({ GATE: () => !this.separator(), DEF: () => this.CONSUME2(Any) });
      },
    });
    return this.ACTION(() => ({ type: 'only', which: state.which, count: state.count, span: this.span(start) }));
  });

  private restStays(): boolean {
    const words = (this.text.slice(this.LA(2).startOffset, this.LA(2).startOffset + 120).split(/[.;]|, /)[0] ?? '').replace(/\s+/g, ' ');
    return (
      /^leav(?:e|ing) (?:the )?(?:rem|remaining|other|rest|front|back|instep|sole)\b[^,]*\b(?:needle|needles|wire|cable|circular|unworked|waiting|idle|where they are)\b/i.test(
        words,
      ) && !/\b(?:holder|spare|waste|thread|pin)\b/i.test(words)
    );
  }

  /** "Back to working in the rnd over all 56 sts", "Continue in the round over all sts", "Begin working in the round again". */
  protected roundAgainAhead(): boolean {
    if (!this.at(1, Word, W.Work, W.Cont, W.Beg, W.Return)) return false;
    const words = (this.text.slice(this.from(), this.from() + 120).split(/[.;:]/)[0] ?? '').replace(/\s+/g, ' ');
    const begins =
      /^(?:now |then )?(?:(?:go(?:ing)? |and )?back to|return(?:ing)? to|resum\w+|begin(?:ning)?|start(?:ing)?|cont(?:inue|inuing)?|work(?:ing)?|work now continues|knitting continues) ?(?:to )?(?:now )?(?:continues? )?(?:work(?:ing)? |knit(?:ting)? )?(?:again )?(?:in (?:the )?(?:rounds?|rnds?))\b/i.test(
        words,
      );
    if (!begins || /\b(?:until|for \d|k\d|p\d|as follows|rib|patt|st st|stitch pattern)\b/i.test(words)) return false;
    return /\b(?:over|on|across) (?:all|both)\b|\bagain\b|\bfrom (?:now|here|this point)\b|^(?:go(?:ing)? |and )?back|^return|^resum/i.test(
      words,
    );
  }

  roundAgain = this.RULE('roundAgain', (): Join => {
    const start = this.from();
    const state: { count: Count | null } = { count: null };
    this.CONSUME(Any);
    this.MANY({
      GATE: () => !this.separator() && !this.at(1, Colon, Dash),
      DEF: () => {
        const token = this.CONSUME1(Any) as KnitToken;
        this.ACTION(() => {
          if (this.at(0, CountToken) && this.at(1, W.St)) state.count ??= this.countOf(token);
        });
      },
    });
    return this.ACTION(
      (): Join => ({ type: 'join', what: 'resumeRound', count: state.count, side: null, loses: 0, span: this.span(start) }),
    );
  });

  /** "Shift BOR 1 st to the left", "move the BOR marker 2 sts to the right". */
  protected moveMarkerAhead(): boolean {
    if (!this.at(1, Word) || !/^(shift|move|shifting|moving)$/.test(this.image(1))) return false;
    for (let ahead = 2; ahead < 7; ahead += 1) {
      if (this.separator(ahead)) return false;
      if (this.at(ahead, W.Bor, W.Marker) || (this.at(ahead, W.Beg) && this.at(ahead + 1, W.Of))) return this.countBefore(ahead + 1);
    }
    return false;
  }

  /** "this is the new beginning of the round", "rnd now begins here": where the row before has stopped. */
  protected beginsHereAhead(): boolean {
    if (!this.at(1, W.These, W.Round, Word, W.Same, W.Beg, W.Bor)) return false;
    return /^(?:(?:this|here|it) (?:is|will be|becomes) (?:now )?(?:the |your )?(?:new )?(?:bor\b|(?:beginning|beg|start)\.? (?:of|point of) (?:the |each )?(?:rnds?|rounds?)\b)|(?:the )?(?:rnds?|rounds?) (?:will )?now (?:begins?|starts?)\b|(?:the )?(?:new )?(?:beginning|beg|start)\.? of (?:the )?(?:rnd|round) is (?:now )?here\b)/i.test(
      this.text.slice(this.from(), this.from() + 90).replace(/\s+/g, ' '),
    );
  }

  beginsHere = this.RULE('beginsHere', (): Marker => {
    const start = this.from();
    this.CONSUME(Any);
    this.MANY({ GATE: () => !this.separator(), DEF: () => this.CONSUME1(Any) });
    return this.ACTION((): Marker => ({ type: 'marker', op: 'place', name: 'BOR', atRow: false, span: this.span(start) }));
  });

  private countBefore(from: number): boolean {
    for (let ahead = from; ahead < from + 7; ahead += 1) {
      if (this.at(ahead, CountToken)) return true;
      if (this.separator(ahead)) return false;
    }
    return false;
  }

  /** "Slip last CO st to LH needle, k2tog with first st": joins the round and uses up the stitch cast on over. */
  protected slipJoinAhead(): boolean {
    if (this.endsTogether()) return true;
    if (!(this.at(1, Word) && /^slip$/.test(this.image(1))) && !/^sl/.test(this.payload(1)?.entry?.name ?? '')) return false;
    return /^(?:sl|slip)(?: the)? (?:last|first)(?: [\w-]+){0,3} (?:st|stitch)\b[^.;]*?(?:,| and) (?:k2tog|knit it tog(?:ether)?|k it tog(?:ether)?|ssk|pass)\b[^.;,]*\b(?:first|last|over)\b/i.test(
      this.text.slice(this.from(), this.from() + 120),
    );
  }

  /** "Knit first st of rnd together with last st". */
  private endsTogether(): boolean {
    return (
      this.at(1, PlainStitch) &&
      /^(?:k|knit)(?: the)? (?:first|last) (?:st|stitch)\b[^.;,]*\b(?:tog|together) with (?:the )?(?:first|last)(?: cast-on| CO)? (?:st|stitch)\b/i.test(
        this.text.slice(this.from(), this.from() + 120),
      )
    );
  }

  slipJoin = this.RULE('slipJoin', (): Join => {
    const start = this.from();
    const state = { end: 0 };
    this.ACTION(() => {
      const words = this.text.slice(start, start + 160);
      const over = /\b(?:k2tog|knit it tog(?:ether)?|k it tog(?:ether)?|ssk|pass|(?:tog|together) with)\b[^.;,]*/i.exec(words);
      state.end = start + (over === null ? 0 : over.index + over[0].length);
    });
    this.CONSUME(Any);
    this.MANY({ GATE: () => this.LA(1).startOffset < state.end, DEF: () => this.CONSUME1(Any) });
    return this.ACTION((): Join => ({ type: 'join', what: 'round', count: null, side: null, loses: 1, span: this.span(start) }));
  });

  moveMarkerStep = this.RULE('moveMarkerStep', (): Marker => {
    const start = this.from();
    const state: { count: Count | null } = { count: null };
    this.CONSUME(Any);
    this.MANY({
      GATE: () => !this.separator() && !this.at(1, PlainStitch, Open),
      DEF: () => {
        const token = this.CONSUME1(Any) as KnitToken;
        this.ACTION(() => {
          if (this.at(0, CountToken)) state.count ??= this.countOf(token);
        });
      },
    });
    return this.ACTION((): Marker => {
      const words = this.words(start, this.LA(0).startOffset + this.LA(0).image.length).toLowerCase();
      return {
        type: 'marker',
        op: 'move',
        name: /\bbor\b|beg/.test(words) ? 'BOR' : null,
        atRow: false,
        span: this.span(start),
        ...(state.count === null ? {} : { by: { count: state.count, to: /\bright\b/.test(words) ? 'right' : 'left' } }),
      };
    });
  });
}
