/**
 * One stitch of a row: its name, number and manner.
 *
 *     k3 tbl · sl 1 wyif · k2tog twice · inc 1 · pass the slipped st over · sl next 3 sts to cn and hold in front
 */
import { entryNamed } from '../lexicon/index.ts';
import { Any, Comma, Count as CountToken, type KnitToken, Name, Open, PlainStitch, SlipStitch, TimesNumber, W, Word } from '../tokens.ts';
import type { Count, PullOver, Work } from '../tree.ts';
import { Joins } from './joins.ts';

/** Words that change how a stitch is worked and never how many there are. */
const manners =
  /^(tbl|tfl|wyif|wyib|kwise|pwise|knitwise|purlwise|kw|pw|yfwd|ybk|yb|loosely|firmly|tightly|individually|separately|plain)$/;

/** The stitch through its back loop, where the lexicon has it by a name of its own: `k` with "tbl" is `k tbl`. */
function twisted(name: string | undefined, manner: string[]): string | undefined {
  const at = manner.indexOf('tbl');
  if (name === undefined || at < 0 || entryNamed(`${name} tbl`) === undefined) return name;
  manner.splice(at, 1);
  return `${name} tbl`;
}

/** "sleeve sts", "of left front": the part of a garment whose stitches are meant; null for any other words. */
function partNamed(words: string): string | null {
  return /\b(?:(?:left|right|first|second) )?(?:sleeve|front|back|body|thumb|instep|heel|sole)\b/.exec(words.toLowerCase())?.[0] ?? null;
}

export class Stitches extends Joins {
  /** One stitch of the lexicon with its manner and number: "k3 tbl", "sl 1 wyif", "k2tog twice", "DS". */
  work = this.RULE('work', (): Work | PullOver => {
    const start = this.from();
    const token = this.CONSUME(Any) as KnitToken;
    const manner: string[] = [];
    let times: Count | undefined;
    let n: Count | null = null;
    this.ACTION(() => {
      n = this.countInside(token);
    });
    // "k2, tog": a decrease with a stray comma.
    let stray = false;
    this.OPTION4({
      GATE: () => this.at(0, PlainStitch) && n !== null && this.at(1, Comma) && /^(tog|together)$/.test(this.image(2)),
      DEF: () => {
        this.CONSUME6(Any);
        this.CONSUME7(Any);
        this.ACTION(() => {
          stray = true;
        });
      },
    });
    // "knit the first 9 (10, 11) heel stitches", "k next 5 sts", "k across 12 sts"
    this.OPTION({
      GATE: () => this.at(0, PlainStitch, SlipStitch) && this.payload(0)?.values === undefined && this.numberedAhead(1) > 0,
      DEF: () => {
        this.MANY({ GATE: () => !this.at(1, CountToken), DEF: () => this.CONSUME1(Any) });
        const number = this.CONSUME2(CountToken) as KnitToken;
        this.ACTION(() => {
          n = this.countOf(number);
        });
      },
    });
    // "purl 3 stitches together", "k next 2 sts tog"
    this.OPTION6({
      GATE: () =>
        this.at(0, PlainStitch, CountToken) &&
        (this.togetherAt(1) || (this.at(1, W.St) && this.togetherAt(2))) &&
        token.tokenType === PlainStitch,
      DEF: () => {
        this.MANY5({ GATE: () => this.at(1, W.St), DEF: () => this.CONSUME9(Any) });
        this.CONSUME(Word);
        this.ACTION(() => {
          stray = true;
        });
      },
    });
    this.MANY1({
      GATE: () => this.mannerAhead(),
      DEF: () => {
        this.CONSUME3(Any);
        this.ACTION(() => manner.push(this.image(0)));
      },
    });
    const part = this.OPTION1({
      GATE: () => this.stitchTailAhead(),
      DEF: () => {
        const from = this.from();
        this.MANY2({
          GATE: () => this.at(1, Word, W.St, W.Other, Name, W.Holder) && !(this.at(0, W.St) && !this.at(1, Word)) && !this.knownVerb(1),
          DEF: () => this.CONSUME4(Any),
        });
        return this.ACTION(() => partNamed(this.words(from, this.LA(0).startOffset + this.LA(0).image.length)));
      },
    });
    this.OPTION2({ GATE: () => this.at(1, W.For, W.Of) && this.describes(2), DEF: () => this.SUBRULE(this.description) });
    this.MANY3({
      GATE: () => this.mannerAhead(),
      DEF: () => {
        this.CONSUME5(Any);
        this.ACTION(() => manner.push(this.image(0)));
      },
    });
    this.OPTION3({
      GATE: () =>
        (this.at(1, TimesNumber) && !this.at(2, W.More, W.InAll)) ||
        (this.at(1, CountToken) && this.at(2, W.Times) && !this.at(3, W.More)) ||
        (this.at(1, W.Times) && this.at(2, CountToken)),
      DEF: () => {
        const often = this.SUBRULE(this.howOften, { ARGS: ['bracket'] });
        this.ACTION(() => {
          times = often.count;
        });
      },
    });
    // "kfb in each of next 3 sts", "k2tog in last st"
    this.OPTION5({
      GATE: () => this.eachStitchAhead(),
      DEF: () =>
        this.MANY4({
          GATE: () =>
            this.at(1, W.In, W.Into, W.Each, W.Every, W.Of, W.Next, W.Same, W.These, W.St, W.First, W.Last, W.Foll) ||
            (this.at(1, CountToken) && this.at(0, W.Next, W.Last, W.First, W.Of, W.Foll)),
          DEF: () => {
            const token = this.CONSUME8(Any) as KnitToken;
            this.ACTION(() => {
              if (this.at(0, CountToken)) times = this.countOf(token);
            });
          },
        }),
    });
    // A remark on the stitch: "sk2p (2 sts dec'd)" is a stated change and stays outside; "ssk (left-leaning)" is passed over.
    return this.ACTION((): Work | PullOver => {
      const name = token.payload?.entry?.name;
      if (name === 'psso' || name === 'p2sso') return { type: 'pullOver', count: name === 'psso' ? 1 : 2, span: this.span(start) };
      const spelling = token.payload?.spelling;
      return {
        type: 'work',
        stitch: twisted(stray ? `${name}Ntog` : name, manner) ?? (this.isDouble(token) ? 'DS' : token.image.toLowerCase()),
        n,
        manner,
        span: this.span(start),
        ...(token.payload?.m === undefined ? {} : { m: token.payload.m }),
        ...(times === undefined ? {} : { times }),
        ...(typeof part === 'string' ? { of: part } : {}),
        ...(spelling === undefined ? {} : { spelling }),
      };
    });
  });

  private togetherAt(ahead: number): boolean {
    return this.at(ahead, Word) && /^(?:tog|together)$/.test(this.image(ahead));
  }

  private eachStitchAhead(): boolean {
    if (!this.at(1, W.In, W.Into)) return false;
    for (let ahead = 2; ahead < 7; ahead += 1) {
      if (this.at(ahead, W.St)) return ahead > 2;
      if (!this.at(ahead, W.Each, W.Every, W.Of, W.Next, W.Same, W.These, W.First, W.Last, W.Foll, CountToken)) return false;
    }
    return false;
  }

  protected isDouble(token: KnitToken): boolean {
    return token.tokenType === W.Double;
  }

  /** A number that belongs to the bare verb just read, over words such as "across the", "next", "first", "all". */
  protected numberedAhead(from: number): number {
    for (let ahead = from; ahead < from + 4; ahead += 1) {
      if (this.at(ahead, CountToken))
        return this.at(ahead + 1, W.St) || (this.at(ahead + 1, Word, W.Other, W.Marker, W.Centre) && this.at(ahead + 2, W.St)) ? ahead : 0;
      if (
        !this.at(ahead, W.Next, W.First, W.Last, W.Across, W.These, W.Foll, W.Centre, Word) ||
        (this.at(ahead, Word) && !/^(over|my)$/.test(this.image(ahead)))
      )
        return 0;
    }
    return 0;
  }

  protected stitchTailAhead(): boolean {
    // "k half the sts": how far, and not which stitch
    if (this.at(0, PlainStitch) && this.payload(0)?.values === undefined && /^(?:half|most|some|about|third|quarter)$/.test(this.image(1)))
      return false;
    if (this.at(1, W.St)) return true;
    // "k 28 instep, pick up 15"
    if (this.at(1, Word) && /^(?:instep|heel|sole|flap|thumb|gusset|sleeve|panel)$/.test(this.image(1)) && this.separator(2)) return true;
    if (this.at(1, Word, W.Other, W.Holder) && !this.knownVerb(1)) return this.at(2, W.St) || (this.at(2, Word) && this.at(3, W.St));
    return false;
  }

  protected knownVerb(ahead: number): boolean {
    return /^(slip|slipped|wrapping|remove|removing|note)$/.test(this.image(ahead));
  }

  protected mannerAhead(): boolean {
    if (this.at(1, Word))
      return (
        manners.test(this.image(1)) ||
        (this.image(1) === 'through' && true) ||
        (/^(back|front|loop)$/.test(this.image(1)) && /^(through|back|front)$/.test(this.image(0)))
      );
    if (this.at(1, W.With))
      return (
        (this.at(2, Word) && /^(its|their)$/.test(this.image(2)) && this.at(3, W.Wrapped)) || (this.at(2, Word) && this.image(2) === 'yarn')
      );
    if (this.at(0, W.With) && this.at(1, Word)) return /^(its|their)$/.test(this.image(1));
    if (this.at(0, Word) && /^(its|their)$/.test(this.image(0))) return this.at(1, W.Wrapped);
    if (this.at(1, W.St)) return /^(loop|loops)$/.test(this.image(1)) && /^(back|front)$/.test(this.image(0));
    if (this.at(1, Open) && this.payload(1)?.holds === 'remark') return false;
    return false;
  }
}
