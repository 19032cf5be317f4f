/**
 * The marks that turns leave, and what becomes of them: double stitches, pins, wraps written out at length.
 *
 *     bring yarn to front, sl 1, take yarn back, return st, turn · pin yarn · k DS · p DS as one st
 */
import { Any, Close, Comma, Count as CountToken, type KnitToken, Open, PlainStitch, Semicolon, Stitch, W, Word } from '../tokens.ts';
import type { Change, Count, Resolve, Turn, Work } from '../tree.ts';
import { ClosingGaps } from './closing-gaps.ts';

const doubleWords = /^(kds|pds|ksds|psds|kdst|pdst)$/;

export class Marks extends ClosingGaps {
  // Making and working double stitches

  private makesDouble(ahead: number): boolean {
    return this.at(ahead, W.Double) && /^(make|mds|gsr|german|work)/.test(this.image(ahead));
  }

  protected doubleAhead(): boolean {
    if (this.at(1, W.Double)) return true;
    if (this.at(1, Word)) return doubleWords.test(this.image(1));
    if (!this.bareVerb(1)) return false;
    let ahead = 2;
    while (this.at(ahead, W.Next, W.These, Word) && ahead < 4 && !this.at(ahead, W.Double)) ahead += 1;
    if (this.at(ahead, W.Double)) return !this.makesDouble(ahead);
    return this.bothLegs(2);
  }

  /** "work both legs tog". */
  private bothLegs(from: number): boolean {
    return this.clauseHas(from, 4, (ahead) => /^legs$/.test(this.image(ahead))) > 0;
  }

  /** "DS", "make DS" at a turn; "k DS", "p DS as one st", "kds" where one is met again. */
  doubleStep = this.RULE('doubleStep', (): Work => {
    const start = this.from();
    const opens = this.ACTION(() => this.opensRow());
    const head = this.CONSUME(Any) as KnitToken;
    this.MANY({
      GATE: () => (head.tokenType !== W.Double && this.at(1, W.Next, W.These, W.Double, W.Each)) || this.asOneWords(head),
      DEF: () => this.CONSUME1(Any),
    });
    return this.ACTION((): Work => {
      const image = head.image.toLowerCase();
      const works = head.tokenType === W.Double ? /^work/.test(image) && !opens : doubleWords.test(image) ? !opens : true;
      return { type: 'work', stitch: works ? 'DS (work)' : 'DS (make)', n: null, manner: [], span: this.span(start) };
    });
  });

  private asOneWords(head: KnitToken): boolean {
    if (this.at(1, W.Turn, W.WrapTurn)) return false;
    if (head.tokenType === W.Double && !/^work/.test(head.image.toLowerCase()))
      return this.at(1, W.As) && /^(one|1|single)$/.test(this.image(2)) && false;
    return (
      (this.at(1, W.As, W.St, CountToken, W.Each) && (this.at(0, W.Double, W.As, W.Of, CountToken, Word) || this.at(1, W.As, W.Each))) ||
      (this.at(1, Word) && /^(tog|together|single|both|legs|loops|one)$/.test(this.image(1))) ||
      (this.at(1, W.Each) && /^leg/.test(this.image(2)))
    );
  }

  // Pins

  protected pinAhead(): boolean {
    return this.at(1, W.Pin) && !/^(pinned|pin st)/.test(this.image(1));
  }

  pinStep = this.RULE('pinStep', (): Change => {
    const start = this.from();
    this.CONSUME(Any);
    return this.ACTION(() => ({
      type: 'change',
      what: 'pin',
      detail: this.words(start, this.LA(0).startOffset + this.LA(0).image.length),
      span: this.span(start),
    }));
  });

  // Wraps written out

  private yarnMove(ahead: number): boolean {
    if (this.at(ahead, Word)) return /^(bring|move|take|yarn|yf|yb|wyif|yfwd|ybk|wrap|pass)$/.test(this.image(ahead));
    const name = this.payload(ahead)?.entry?.name ?? '';
    return this.at(ahead, Stitch) && /^(yf|yb|yfwd|ybk)\b/.test(name);
  }

  private slips(ahead: number): boolean {
    return (
      (this.at(ahead, Stitch) && /^sl/.test(this.payload(ahead)?.entry?.name ?? '') && (this.payload(ahead)?.values?.[0] ?? 1) === 1) ||
      (this.at(ahead, Word) && /^slip$/.test(this.image(ahead)))
    );
  }

  /** Tokens of a wrap told at length, with its turn; 0 when none begins here. */
  protected longWrap(): number {
    if (!this.yarnMove(1) && !this.slips(1)) return 0;
    let slipped = false;
    let moved = this.yarnMove(1);
    let back = false;
    for (let ahead = 1; ahead < 40; ahead += 1) {
      if (Number.isNaN(this.LA(ahead).startOffset) || this.at(ahead, PlainStitch, Close, Open)) return 0;
      if (this.at(ahead, W.Turn)) return slipped && moved && back ? ahead : 0;
      if (
        slipped &&
        (/\bback\b|^return|^replace/.test(this.image(ahead)) ||
          this.payload(ahead)?.entry?.name === 'ret' ||
          this.at(ahead, W.Return) ||
          (/^(sl|slip)$/.test(this.image(ahead)) &&
            this.clauseHas(ahead, 8, (look) => /^back$/.test(this.image(look)) || this.at(look, W.Needle)) > 0))
      ) {
        if (
          !/^yb|^yfwd|^ybk/.test(this.image(ahead)) &&
          !(/^back$/.test(this.image(ahead)) && this.clauseHas(ahead - 2, 2, (look) => /yarn/.test(this.image(look))) > 0)
        )
          back = true;
      }
      if (this.slips(ahead)) slipped = true;
      else if (this.at(ahead, Stitch) && !this.yarnMove(ahead) && this.payload(ahead)?.entry?.name !== 'ret') return 0;
      if (this.yarnMove(ahead) || this.at(ahead, W.Yarn)) moved = true;
    }
    return 0;
  }

  longWrapStep = this.RULE('longWrapStep', (): Turn => {
    const start = this.from();
    const state = { length: 0, eaten: 1 };
    this.ACTION(() => {
      state.length = this.longWrap();
    });
    this.CONSUME(Any);
    this.MANY({
      GATE: () => state.eaten < state.length,
      DEF: () => {
        this.CONSUME1(Any);
        this.ACTION(() => {
          state.eaten += 1;
        });
      },
    });
    return this.ACTION(() => ({ type: 'turn', method: 'wrap', leaving: null, holds: null, span: this.span(start) }));
  });

  /** "sl the same st back to right needle", after a turn beside a wrapped stitch. */
  protected sameBackAhead(): boolean {
    if (!this.slips(1) && !this.at(1, W.Return)) return false;
    if (this.payload(1)?.values !== undefined) return false;
    // "slip these 20 sts back to left needle" goes back over all of them
    if (this.clauseHas(2, 5, (ahead) => this.at(ahead, CountToken) && this.at(ahead + 1, W.St)) > 0) return false;
    const same = this.clauseHas(2, 4, (ahead) => this.at(ahead, W.Same, W.These) || /^(same|wrapped)/.test(this.image(ahead)));
    return same > 0 && this.clauseHas(same, 4, (ahead) => /^back$/.test(this.image(ahead))) > 0;
  }

  sameBackStep = this.RULE('sameBackStep', (): Work => {
    const start = this.from();
    const head = this.CONSUME(Any) as KnitToken;
    this.MANY({
      GATE: () => !this.at(1, Comma, Semicolon, Close, W.And, W.Turn) && !Number.isNaN(this.LA(1).startOffset) && this.image(1) !== '.',
      DEF: () => this.CONSUME1(Any),
    });
    return this.ACTION(() => ({
      type: 'work',
      stitch: 'sl',
      n: { type: 'count', values: [1], span: this.tokenSpan(head) },
      manner: ['back'],
      span: this.span(start),
    }));
  });

  /** "sl 3 sts back to LH needle", "slip these sts back", "return 3 sts to left needle": stitches go back to be worked again. */
  protected returnAhead(): boolean {
    if (
      !(this.at(1, Stitch) && /^sl/.test(this.payload(1)?.entry?.name ?? '')) &&
      !(this.at(1, Word, W.Place) && /^sl/.test(this.image(1))) &&
      !this.at(1, W.Return)
    )
      return false;
    const back = this.at(1, W.Return) ? 1 : this.clauseHas(2, 8, (ahead) => /^back$/.test(this.image(ahead)));
    if (back === 0 || this.clauseHas(2, 12, (ahead) => /^held$/.test(this.image(ahead)) || this.at(ahead, W.Holder)) > 0) return false;
    const to = this.clauseHas(back + 1, 6, (ahead) => this.at(ahead, W.Needle) || /^(lh|left|ln)$/.test(this.image(ahead)));
    // "return 70 sts to needle": as many as that come from a holder
    if (
      this.at(1, W.Return) &&
      /^needles?$/.test(this.image(to)) &&
      this.at(2, CountToken) &&
      (this.payload(2)?.values ?? []).some((n: number | null) => (n ?? 0) > 4)
    )
      return false;
    return to > 0 ? /left|lh|\bln\b|^needle/.test(this.image(to)) : this.separator(back + 1);
  }

  returnStep = this.RULE('returnStep', (): Work => {
    const start = this.from();
    const head = this.CONSUME(Any) as KnitToken;
    const state: { count: Count | null; all: boolean } = { count: null, all: false };
    this.ACTION(() => {
      state.count = this.countInside(head);
      if (!/st\b/.test(head.image.toLowerCase())) state.all = true;
    });
    this.MANY({
      GATE: () => !this.separator() && !this.at(1, W.And, W.Then, W.Turn) && !this.at(1, Open),
      DEF: () => {
        const token = this.CONSUME1(Any) as KnitToken;
        this.ACTION(() => {
          if (this.at(0, CountToken)) state.count ??= this.countOf(token);
          if (this.at(0, W.St) && /^(st|stitch|loop)$/.test(this.image(0)) && state.count === null) state.all = false;
        });
      },
    });
    return this.ACTION(
      (): Work => ({
        type: 'work',
        stitch: 'ret',
        n: state.count ?? (state.all ? { ...this.countOf(head, [0]), all: true } : this.countOf(head, [1])),
        manner: [],
        span: this.span(start),
      }),
    );
  });

  // Clauses that rule the rest of the row

  protected resolveAhead(): boolean {
    const ahead = this.at(1, Comma) ? 2 : 1;
    const verb =
      this.at(ahead, W.Work, W.PickUp) ||
      (this.at(ahead, PlainStitch) && /ing$/.test(this.image(ahead))) ||
      /^(hiding|resolving|closing|close|knitting|purling|lift|lifting|hide|resolve|treating|treat|finishing)$/.test(this.image(ahead));
    if (!verb) return false;
    for (let look = ahead + 1; look < ahead + 8; look += 1) {
      if (this.at(look, W.Double, W.Twin, W.Wrapped, W.Gap, W.Pin)) return !(this.at(look, W.Gap) && this.at(ahead, W.Work, W.PickUp));
      if (this.at(look, W.St) && /^loops/.test(this.image(look)) && this.at(look - 1, W.Each)) return true;
      if (this.at(look, W.To, Comma, Stitch, W.Row, W.Round) || this.at(look, W.Past, W.Before)) return false;
    }
    return false;
  }

  override resolveStep = this.RULE('resolveStep', (): Resolve => {
    const start = this.from();
    let what: Resolve['what'] = 'wraps';
    this.OPTION({ GATE: () => this.at(1, Comma), DEF: () => this.CONSUME1(Any) });
    this.CONSUME2(Any);
    this.MANY({
      GATE: () =>
        !this.at(1, Comma) &&
        !this.at(1, Open) &&
        (this.at(
          1,
          Word,
          W.Double,
          W.Twin,
          W.Wrapped,
          W.Gap,
          W.Pin,
          W.Each,
          W.All,
          W.Work,
          W.PickUp,
          W.Of,
          W.As,
          W.St,
          W.And,
          W.With,
          W.Rem,
          W.These,
          W.Other,
          W.In,
          W.To,
          W.Past,
          W.Same,
          W.Every,
          W.On,
          CountToken,
          W.Evenly,
          W.By,
        ) ||
          (this.at(1, PlainStitch) && this.at(0, W.And)) ||
          (this.at(1, Word) && this.at(0, W.And)) ||
          (this.at(1, Stitch) && /^(tog|it)/.test(this.image(2)))) &&
        !(this.at(1, W.And) && !this.at(2, W.Work, Word, W.Wrapped, PlainStitch)),
      DEF: () => {
        this.CONSUME(Any);
        this.ACTION(() => {
          if (this.at(0, W.Double)) what = 'doubles';
          else if (this.at(0, W.Twin)) what = 'twins';
          else if (this.at(0, W.Gap)) what = 'gap';
          else if (this.at(0, W.Pin) || /^loops/.test(this.image(0))) what = 'loops';
        });
      },
    });
    return this.ACTION(() => ({ type: 'resolve', what, span: this.span(start) }));
  });
}
