/** Laws that every phrase must keep, or the parser hangs or misreads without a word. Read from the parser's own grammar. */
import { Alternation, NonTerminal, Option, Repetition, RepetitionMandatory, type Rule, Terminal } from 'chevrotain';
import { describe, expect, it } from 'vitest';
import { Series } from '../../grammar/phrases/series.ts';

type Part = Rule | Terminal | NonTerminal | Option | Repetition | RepetitionMandatory | Alternation | { definition: Part[] };

class Whole extends Series {
  constructor() {
    super();
    this.performSelfAnalysis();
  }
}

const rules = new Whole().getGAstProductions() as unknown as Record<string, Rule>;
const below = (part: Part): Part[] => ('definition' in part && !(part instanceof NonTerminal) ? (part.definition as Part[]) : []);

/** Whether a part may match no token at all. */
function empty(part: Part, seen: ReadonlySet<string> = new Set()): boolean {
  if (part instanceof Terminal) return false;
  if (part instanceof Option || part instanceof Repetition) return true;
  if (part instanceof NonTerminal) {
    if (seen.has(part.nonTerminalName)) return false;
    const inside = new Set([...seen, part.nonTerminalName]);
    return below(rules[part.nonTerminalName] as Rule).every((each) => empty(each, inside));
  }
  if (part instanceof Alternation) return below(part).some((each) => empty(each, seen));
  return below(part).every((each) => empty(each, seen));
}

const every = (part: Part): Part[] => [part, ...below(part).flatMap(every)];

describe('the grammar of the phrases', () => {
  it.each(Object.keys(rules))('%s repeats nothing that may be empty', (name) => {
    const loops = every(rules[name] as Rule).filter((part) => part instanceof Repetition || part instanceof RepetitionMandatory);
    expect(loops.filter((loop) => below(loop).every((part) => empty(part))).map((loop) => (loop as Repetition).idx)).toEqual([]);
  });

  it.each(Object.keys(rules))('%s numbers each option, repetition and choice once', (name) => {
    const marks = every(rules[name] as Rule)
      .filter((part) => part instanceof Option || part instanceof Repetition || part instanceof Alternation)
      .map((part) => `${part.constructor.name} ${(part as Option).idx}`);
    expect(marks.filter((mark, at) => marks.indexOf(mark) !== at)).toEqual([]);
  });
});
