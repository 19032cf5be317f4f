/** The finished parser: every family of phrases, and which statements may begin with which words. */
import type { IToken, ParserMethod } from 'chevrotain';
import { type KnitToken, W } from '../tokens.ts';
import type { EndSide, Goal, Stated, Statement, Step } from '../tree.ts';
import { Series } from './series.ts';

class Phrases extends Series {
  constructor() {
    super();
    this.performSelfAnalysis();
  }

  /** Statements above the row, in the order in which they are tried: a wording that says more comes first. */
  readonly statements = [
    { looks: () => this.makingUpAhead(), rule: this.standing },
    { looks: () => this.chartAhead(), rule: this.chartStep },
    { looks: () => this.edgeRowsAhead(), rule: this.edgeRows },
    { looks: () => this.shapeAhead(), rule: this.shape },
    { looks: () => this.andSoOnAhead(), rule: this.andSoOn },
    { looks: () => this.moreOfThemAhead(), rule: this.moreOfThem },
    { looks: () => this.namedShapingAhead(), rule: this.namedShape },
    { looks: () => this.patternRepeatsAhead(), rule: this.patternRepeat },
    { looks: () => this.repeatRowsAhead(), rule: this.repeatRows },
    { looks: () => this.untilAhead(), rule: this.until },
    { looks: () => this.plainAhead(), rule: this.plain },
    { looks: () => this.referAhead(), rule: this.refer },
    { looks: () => this.standingAhead(), rule: this.standing },
    { looks: () => this.contAhead(), rule: this.cont },
  ];

  /** Puts the parser at the head of some tokens. */
  start(tokens: readonly KnitToken[], base: number, text: string): void {
    this.input = tokens as unknown as IToken[];
    this.base = base;
    this.text = text;
  }

  acrossListBegins(): boolean {
    return this.acrossListAhead();
  }

  pickUpBegins(): boolean {
    return this.pickUpAhead();
  }

  triggerBegins(): boolean {
    return this.triggerAhead();
  }

  /** Whether a step begins here with a word that elsewhere describes: a needle's name, "Distribute", "Rows 1–4 twice". */
  partBegins(): boolean {
    return (
      this.roundAgainAhead() ||
      this.makingUpAhead() ||
      this.toldOfPieceAhead() ||
      this.needlePartAhead() ||
      this.arrangeAhead() ||
      this.moveMarkerAhead() ||
      this.beginsHereAhead() ||
      this.bindOffNamed() > 0 ||
      this.onlyAhead() ||
      (this.repeatRowsAhead() && !this.at(1, W.Work, W.Rep)) ||
      this.slipJoinAhead() ||
      (this.at(1, W.Form) && this.joinAhead())
    );
  }

  endingBegins(): boolean {
    return this.endingSideAhead();
  }

  statedBegins(): boolean {
    return this.statedAhead();
  }

  /** How many tokens the last rule ate. */
  eaten(): number {
    return (this as unknown as { currIdx: number }).currIdx + 1;
  }

  failed(): boolean {
    return this.errors.length > 0;
  }
}

let only: Phrases | null = null;

/** The parser at the head of some tokens. It is made when the first are read: to list the rules none is needed. */
function phrasesAt(tokens: readonly KnitToken[], base: number, text: string): Phrases {
  only ??= new Phrases();
  only.start(tokens, base, text);
  return only;
}

export interface Parsed<T> {
  readonly value: T;
  /** Number of tokens read. */
  readonly eaten: number;
}

function run<T>(
  rule: (phrases: Phrases) => ParserMethod<[], T>,
  tokens: readonly KnitToken[],
  base: number,
  text: string,
): Parsed<T> | null {
  const phrases = phrasesAt(tokens, base, text);
  // The parser makes an error of every phrase that breaks off; a stack trace of each would cost more than the reading.
  const errors = Error as { stackTraceLimit?: number };
  const limit = errors.stackTraceLimit ?? 10;
  errors.stackTraceLimit = 0;
  const value = rule(phrases).call(phrases) as T;
  errors.stackTraceLimit = limit;
  if (phrases.failed() || value === undefined) return null;
  const eaten = phrases.eaten();
  return eaten > 0 ? { value, eaten } : null;
}

/** Reads one statement above the row at the head of the tokens; null when none begins there. */
export function statementAt(tokens: readonly KnitToken[], base: number, text: string): Parsed<Statement> | null {
  const phrases = phrasesAt(tokens, base, text);
  for (const { looks, rule } of phrases.statements) {
    if (!looks()) continue;
    const parsed = run(() => rule as ParserMethod<[], Statement>, tokens, base, text);
    if (parsed) return parsed;
    phrases.start(tokens, base, text);
  }
  return null;
}

/** Reads all that a verb of picking up governs; null when none stands at the head of the tokens. */
export function pickUpsAt(tokens: readonly KnitToken[], base: number, text: string): Parsed<Step[]> | null {
  const phrases = phrasesAt(tokens, base, text);
  if (phrases.acrossListBegins()) return run(() => phrases.acrossSteps as ParserMethod<[], Step[]>, tokens, base, text);
  return phrases.pickUpBegins() ? run(() => phrases.pickUpSteps as ParserMethod<[], Step[]>, tokens, base, text) : null;
}

/** Reads one step at the head of the tokens. */
export function stepAt(tokens: readonly KnitToken[], base: number, text: string): Parsed<Step> | null {
  return run((phrases) => phrases.item, tokens, base, text);
}

/** Reads "when armhole measures 15 cm" at the head of the tokens; null when no such condition begins there. */
export function triggerAt(tokens: readonly KnitToken[], base: number, text: string): Parsed<{ when: Goal; ending: EndSide | null }> | null {
  const phrases = phrasesAt(tokens, base, text);
  return phrases.triggerBegins() ? run(() => phrases.trigger, tokens, base, text) : null;
}

/** Reads "25 cm from beg" as what ends a stretch of rows. */
export function goalAt(tokens: readonly KnitToken[], base: number, text: string): Parsed<Goal> | null {
  return run((phrases) => phrases.goal, tokens, base, text);
}

/** Reads "End with a WS row" at the head of the tokens; null where no such words begin there. */
export function endingAt(tokens: readonly KnitToken[], base: number, text: string): Parsed<EndSide> | null {
  return phrasesAt(tokens, base, text).endingBegins() ? run((phrases) => phrases.endSide, tokens, base, text) : null;
}

/** Reads a stated count with those of its parts; null when none stands at the head of the tokens. */
export function statedAt(tokens: readonly KnitToken[], base: number, text: string): Parsed<Stated[]> | null {
  const phrases = phrasesAt(tokens, base, text);
  return phrases.statedBegins() ? run(() => phrases.statedList, tokens, base, text) : null;
}

/** Whether a needle's part, an arrangement of needles or rows by number begin at the head of the tokens. */
export function partBegins(tokens: readonly KnitToken[], text: string): boolean {
  return phrasesAt(tokens, 0, text).partBegins();
}

/** Whether a stated count begins at the head of the tokens. */
export function statedBegins(tokens: readonly KnitToken[]): boolean {
  return phrasesAt(tokens, 0, '').statedBegins();
}
