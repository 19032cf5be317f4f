/**
 * How the parser chooses between phrases: by the word each may begin with, looked up in a table, and then by the phrase's own gate.
 * The tables are worked out rule by rule and kept, because the phrases call one another from many places.
 */
import {
  Alternation,
  type ILookaheadStrategy,
  type IOrAlt,
  type IProduction,
  type IToken,
  NonTerminal,
  Option,
  type OptionalProductionType,
  Repetition,
  RepetitionMandatory,
  RepetitionMandatoryWithSeparator,
  RepetitionWithSeparator,
  type Rule,
  Terminal,
  type TokenType,
} from 'chevrotain';

/** The words a phrase may begin with, by their token type's number; `empty` where it may hold no word at all. */
interface First {
  readonly words: Set<number>;
  empty: boolean;
}

/** What a look ahead needs of the parser. */
interface Reader {
  LA(ahead: number): IToken;
}

type Parts = IProduction & { readonly definition: readonly IProduction[]; readonly idx: number };

const optional = (part: IProduction): boolean =>
  part instanceof Option || part instanceof Repetition || part instanceof RepetitionWithSeparator;

export class FirstWords implements ILookaheadStrategy {
  private readonly ofRules = new Map<Rule, First>();

  validate(): [] {
    return [];
  }

  private ofSequence(parts: readonly IProduction[]): First {
    const first: First = { words: new Set(), empty: true };
    for (const part of parts) {
      const own = this.of(part);
      for (const word of own.words) first.words.add(word);
      if (!own.empty) {
        first.empty = false;
        break;
      }
    }
    return first;
  }

  private of(part: IProduction): First {
    if (part instanceof Terminal) return { words: withKin(part.terminalType), empty: false };
    if (part instanceof NonTerminal) return this.ofRule(part.referencedRule);
    if (part instanceof Alternation) {
      const first: First = { words: new Set(), empty: false };
      for (const each of part.definition) {
        const own = this.ofSequence((each as Parts).definition);
        for (const word of own.words) first.words.add(word);
        if (own.empty) first.empty = true;
      }
      return first;
    }
    const inside = this.ofSequence((part as Parts).definition);
    return optional(part) ? { words: inside.words, empty: true } : inside;
  }

  private ofRule(rule: Rule): First {
    const known = this.ofRules.get(rule);
    if (known !== undefined) return known;
    const first = this.ofSequence(rule.definition);
    this.ofRules.set(rule, first);
    return first;
  }

  buildLookaheadForAlternation(options: {
    prodOccurrence: number;
    rule: Rule;
  }): (alternatives?: IOrAlt<unknown>[] | undefined) => number | undefined {
    const or = find(options.rule.definition, options.prodOccurrence, (part) => part instanceof Alternation) as Alternation;
    const firsts = or.definition.map((each) => this.ofSequence((each as Parts).definition));
    const choose = function (this: Reader, alternatives?: IOrAlt<unknown>[]): number | undefined {
      const word = this.LA(1).tokenTypeIdx;
      for (let at = 0; at < firsts.length; at += 1) {
        const first = firsts[at] as First;
        if (!first.empty && !first.words.has(word)) continue;
        const gate = alternatives?.[at]?.GATE;
        if (gate === undefined || gate.call(this) !== false) return at;
      }
      return undefined;
    };
    return choose as unknown as (alternatives?: IOrAlt<unknown>[]) => number | undefined;
  }

  buildLookaheadForOptional(options: { prodOccurrence: number; prodType: OptionalProductionType; rule: Rule }): () => boolean {
    const kinds = {
      Option,
      Repetition,
      RepetitionMandatory,
      RepetitionMandatoryWithSeparator,
      RepetitionWithSeparator,
    };
    const kind = kinds[options.prodType];
    const part = find(options.rule.definition, options.prodOccurrence, (each) => each instanceof kind) as Parts;
    const { words, empty } = this.ofSequence(part.definition);
    const enters = function (this: Reader): boolean {
      return empty || words.has(this.LA(1).tokenTypeIdx);
    };
    return enters as unknown as () => boolean;
  }
}

/** A token type and those that belong to it: a knit stitch is a stitch. */
function withKin(type: TokenType): Set<number> {
  return new Set([type.tokenTypeIdx ?? 0, ...(type.categoryMatches ?? [])]);
}

/** The part of a rule with the number that its kind gives it. */
function find(parts: readonly IProduction[], idx: number, fits: (part: IProduction) => boolean): IProduction | null {
  for (const part of parts) {
    if (fits(part) && (part as Parts).idx === idx) return part;
    if (part instanceof NonTerminal || part instanceof Terminal) continue;
    const inside = find((part as Parts).definition, idx, fits);
    if (inside !== null) return inside;
  }
  return null;
}
