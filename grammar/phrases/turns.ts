/**
 * Turns, and the stitches that a turn leaves.
 *
 *     turn · w&t · turn, leaving rem sts on a holder · turn using German short rows · turn and work on these 32 sts only
 */
import { Any, Close, Comma, Count as CountToken, type KnitToken, Open, PlainStitch, Semicolon, Stitch, W, Word } from '../tokens.ts';
import type { Turn } from '../tree.ts';
import { Descriptions } from './descriptions.ts';

/** The method of a short row that a word names. */
function methodNamed(word: string): Turn['method'] | null {
  if (/^german/.test(word)) return 'double';
  if (/^wrap/.test(word)) return 'wrap';
  if (/^(japanese|pinned)/.test(word)) return 'pin';
  return /^(shadow|twin)/.test(word) ? 'twin' : null;
}

export class Turns extends Descriptions {
  protected turnAhead(): boolean {
    if (this.at(1, W.WrapTurn)) return true;
    // "purl 1 rnd for turning ridge"
    if (this.at(1, W.Turn))
      return !(
        /^turning/.test(this.image(1)) &&
        (this.at(2, W.Ridge, W.Row, W.Round, W.Edge) || /^(line|chain|ch|point)s?$/.test(this.image(2)))
      );
    if (this.at(1, W.Twin)) return true;
    if (this.twinTold() > 0) return true;
    if (this.at(1, Word) && /^rotat(e|ing)$/.test(this.image(1))) return true;
    if (this.at(1, Word) && /^(jsr|j-turn)$/.test(this.image(1))) return true;
    if (this.at(1, W.Wrapped)) return this.image(1) === 'wrap' && (this.at(2, W.Next) || this.at(2, W.St));
    if (this.at(1, W.Not)) return this.at(2, W.Turn);
    // "leave rem sts on a holder" with no turn before it is a holder's phrase.
    if (this.at(1, W.Leaving))
      return (
        ((this.at(2, W.Rem) && this.at(3, CountToken, W.St)) ||
          (this.at(2, CountToken) && this.at(3, W.St) && (this.at(4, W.Unworked) || this.at(4, W.On)))) &&
        !this.holderWithinClause()
      );
    return false;
  }

  private holderWithinClause(): boolean {
    for (let ahead = 2; ahead < 12; ahead += 1) {
      if (this.holderAt(ahead)) return true;
      if (this.separator(ahead)) return false;
    }
    return false;
  }

  /** "k into st below next st, place on LH needle, turn": tokens to the turn; 0 when this is told otherwise. */
  private twinTold(): number {
    const below =
      /^[kp]1?b/.test(this.payload(1)?.entry?.name ?? '') ||
      /below/.test(this.image(1)) ||
      (this.at(1, PlainStitch) &&
        this.payload(1)?.values === undefined &&
        /^[^,;]*below/.test(`${this.image(2)} ${this.image(3)} ${this.image(4)} ${this.image(5)}`));
    if (!this.at(1, Stitch) || !below) return 0;
    let place = false;
    for (let ahead = 2; ahead < 24; ahead += 1) {
      if (this.at(ahead, W.Place, W.Return)) place = true;
      if (this.at(ahead, W.Turn)) return place ? ahead : 0;
      if (Number.isNaN(this.LA(ahead).startOffset) || (this.at(ahead, PlainStitch) && this.payload(ahead)?.values !== undefined)) return 0;
    }
    return 0;
  }

  override turnStep = this.RULE('turnStep', (): Turn => {
    const start = this.from();
    let method: Turn['method'] = 'plain';
    let not = false;
    let rotated = false;
    const state: { leaving: KnitToken | null; rem: boolean; holds: string | null; first: boolean } = {
      leaving: null,
      rem: false,
      holds: null,
      first: true,
    };
    this.OR([
      {
        GATE: () => this.at(1, W.WrapTurn),
        ALT: () => {
          this.CONSUME(Any);
          this.ACTION(() => {
            method = 'wrap';
          });
        },
      },
      {
        GATE: () => this.at(1, W.Twin),
        ALT: () => {
          this.CONSUME1(Any);
          this.ACTION(() => {
            method = 'twin';
          });
          this.OPTION({
            GATE: () => this.at(1, W.In, Comma, W.Next),
            DEF: () =>
              this.MANY({
                GATE: () => this.at(1, W.In, W.Next, W.St, Comma) && !(this.at(1, Comma) && !this.at(2, W.Turn)),
                DEF: () => this.CONSUME2(Any),
              }),
          });
          this.OPTION1({ GATE: () => this.at(1, W.Turn), DEF: () => this.CONSUME3(Any) });
        },
      },
      {
        GATE: () => this.at(1, W.Wrapped),
        ALT: () => {
          this.AT_LEAST_ONE({
            GATE: () => this.at(1, W.Wrapped, W.Next, W.St, Comma, W.And) && !this.at(1, W.Turn),
            DEF: () => this.CONSUME4(Any),
          });
          this.OPTION2({ GATE: () => this.at(1, W.Turn), DEF: () => this.CONSUME5(Any) });
          this.ACTION(() => {
            method = 'wrap';
          });
        },
      },
      {
        GATE: () => this.at(1, W.Not),
        ALT: () => {
          this.CONSUME6(Any);
          this.CONSUME7(Any);
          this.ACTION(() => {
            not = true;
          });
          this.OPTION3({
            GATE: () => this.at(1, W.After),
            DEF: () => this.MANY2({ GATE: () => this.at(1, W.After, W.Last, W.Row, W.Round, W.On), DEF: () => this.CONSUME8(Any) }),
          });
        },
      },
      {
        GATE: () => this.at(1, W.Turn),
        ALT: () => {
          this.CONSUME9(Any);
        },
      },
      {
        GATE: () => this.twinTold() > 0,
        ALT: () => {
          this.MANY6({ GATE: () => !this.at(1, W.Turn), DEF: () => this.CONSUME(Any) });
          this.CONSUME(W.Turn);
          this.ACTION(() => {
            method = 'twin';
          });
        },
      },
      {
        GATE: () => this.at(1, Word) && /^rotat/.test(this.image(1)),
        ALT: () => {
          this.AT_LEAST_ONE1({
            GATE: () => !this.at(1, Comma, Semicolon, W.And, Close) && this.image(1) !== '.' && !Number.isNaN(this.LA(1).startOffset),
            DEF: () => this.CONSUME(Any),
          });
          this.ACTION(() => {
            rotated = true;
          });
        },
      },
      {
        GATE: () => this.at(1, Word) && /^j/.test(this.image(1)),
        ALT: () => {
          this.CONSUME(Word);
          this.ACTION(() => {
            method = 'pin';
          });
        },
      },
      {
        ALT: () => {
          const left = this.SUBRULE1(this.leavingClause);
          this.ACTION(() => Object.assign(state, left, { first: false }));
        },
      },
    ]);
    // "Turn the strip a quarter turn", "turn 90°": the piece is turned on the table, not over.
    let quarter = this.ACTION(() => rotated) === true;
    this.OPTION4({
      GATE: () => this.at(0, W.Turn) && !not && this.quarterAhead(),
      DEF: () => {
        this.MANY3({ GATE: () => !this.at(1, Comma), DEF: () => this.CONSUME(Any) });
        this.ACTION(() => {
          quarter = true;
        });
      },
    });
    // ", pin yarn" or ", make DS" belong to the method.
    this.OPTION5({
      GATE: () => this.at(1, Comma, Semicolon, W.And) && this.at(2, W.Pin),
      DEF: () => {
        this.CONSUME1(Any);
        this.CONSUME2(Any);
        this.ACTION(() => {
          method = 'pin';
        });
      },
    });
    this.OPTION6({
      GATE: () => state.first && this.leavingAhead(),
      DEF: () => {
        const left = this.SUBRULE(this.leavingClause);
        this.ACTION(() => Object.assign(state, left));
      },
    });
    // "turn work inside out"
    let insideOut = false;
    this.OPTION8({
      GATE: () => this.at(0, W.Turn) && /^inside$/.test(this.image(1)),
      DEF: () => {
        this.MANY5({ GATE: () => /^(inside|out)$/.test(this.image(1)), DEF: () => this.CONSUME(Any) });
        this.ACTION(() => {
          insideOut = true;
        });
      },
    });
    // "turn using German short rows", "turn using your favourite method"
    this.OPTION7({
      GATE: () =>
        this.at(0, W.Turn) &&
        this.at(1, W.With, W.By, Word) &&
        (this.at(1, W.With) || /^(by|in)$/.test(this.image(1))) &&
        this.methodAhead(),
      DEF: () => {
        this.MANY4({
          GATE: () => !this.at(1, Comma, Close) && !/^[.;]$/.test(this.image(1)) && !Number.isNaN(this.LA(1).startOffset),
          DEF: () => {
            this.CONSUME(Any);
            this.ACTION(() => {
              method = methodNamed(this.image(0)) ?? method;
            });
          },
        });
      },
    });
    // "turn and work on these 32 sts only": the rest is put aside.
    this.OPTION9({
      GATE: () => this.at(1, W.And, Comma) && this.at(2, W.Work, W.Cont) && this.workOnAhead(2),
      DEF: () => {
        this.MANY7({
          GATE: () => this.at(1, W.And, Comma, W.Work, W.Cont, W.On, W.These, CountToken, W.St, W.Only, W.For, W.First, W.Rs, Word, W.Last),
          DEF: () => this.CONSUME8(Any),
        });
        this.ACTION(() => {
          state.holds = 'other needle';
        });
      },
    });
    return this.ACTION(() => ({
      type: 'turn',
      method: not || quarter ? 'plain' : method,
      leaving: state.leaving === null ? null : this.countOf(state.leaving),
      holds: state.holds,
      span: this.span(start),
      ...(not ? { not: true } : {}),
      ...(quarter ? { quarter: true } : {}),
      ...(insideOut ? { insideOut: true } : {}),
    }));
  });

  private methodAhead(): boolean {
    for (let ahead = 2; ahead < 10; ahead += 1) {
      if (this.at(ahead, Comma, Close) || Number.isNaN(this.LA(ahead).startOffset)) return false;
      if (/^(method|technique|short|rows?|short-rows?|wraps?|turns?)$/.test(this.image(ahead))) return true;
    }
    return false;
  }

  /** "leaving rem 8 sts unworked", "and leave rem sts on a spare needle", "and work on these sts only". */
  private leavingClause = this.RULE('leavingClause', (): { leaving: KnitToken | null; rem: boolean; holds: string | null } => {
    const state: { leaving: KnitToken | null; rem: boolean; holds: string | null } = { leaving: null, rem: false, holds: null };
    this.AT_LEAST_ONE({
      GATE: () => this.at(1, Comma, W.And, Open, Semicolon, W.Leaving, W.Place) && !this.at(0, W.Leaving),
      DEF: () => this.CONSUME(Any),
    });
    this.MANY({
      GATE: () =>
        this.at(
          1,
          W.Rem,
          W.St,
          W.Unworked,
          CountToken,
          W.On,
          W.Holder,
          W.Pin,
          W.Needle,
          W.For,
          W.Other,
          W.First,
          Word,
          W.These,
          W.Only,
          W.Last,
          W.Each,
          W.In,
          W.All,
          W.At,
          W.Rs,
          W.Ws,
          W.Next,
          Close,
        ) &&
        !(this.at(1, Word) && this.at(0, W.Holder)) &&
        !(this.at(0, W.Holder) && !this.at(1, W.For, Close)) &&
        !this.at(0, Close),
      DEF: () => {
        const token = this.CONSUME1(Any) as KnitToken;
        this.ACTION(() => {
          if (this.at(0, W.Rem)) state.rem = true;
          if (this.at(0, CountToken)) state.leaving = token;
          if (this.holderAt(0)) state.holds = token.image.toLowerCase();
          else if (this.at(0, W.For) && state.holds === null) state.holds = this.whoFor();
        });
      },
    });
    return state;
  });

  /** "leaving 32 sts for the instep": who they wait for; null for words of time, "for now". */
  private whoFor(): string | null {
    const words: string[] = [];
    for (let ahead = 1; ahead < 6 && /^[a-z]/i.test(this.image(ahead)) && !this.at(ahead, W.And, Comma, Close); ahead += 1)
      words.push(this.image(ahead));
    const who = words.join(' ').replace(/^(?:the|a|an) /, '');
    return /^(?:now|later|moment|time being|time)\b/.test(who) || who === '' ? null : who;
  }

  private quarterAhead(): boolean {
    for (let ahead = 1; ahead < 8; ahead += 1) {
      if (this.at(ahead, Comma)) return false;
      if (/^(quarter|clockwise|90|anticlockwise)/.test(this.image(ahead))) return true;
    }
    return false;
  }

  private leavingAhead(): boolean {
    let ahead = 1;
    while (this.at(ahead, Comma, W.And, Open, Semicolon)) ahead += 1;
    if (!this.at(ahead, W.Leaving, W.Place)) return this.at(1, Open) && this.at(2, W.Leaving);
    return this.at(ahead + 1, W.Rem, CountToken, W.These, W.Other, W.Last, W.All);
  }

  private workOnAhead(ahead: number): boolean {
    return this.at(ahead + 1, W.On) && this.at(ahead + 2, W.These, CountToken, W.First, W.Last);
  }
}
