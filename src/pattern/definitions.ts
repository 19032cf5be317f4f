/** The draft's own definitions of stitches, carried out, beside what the trade commonly means by the name. */
import { type Definition, readDefinition } from '../../grammar/definition.ts';
import type { Entry } from '../../grammar/lexicon/entry.ts';
import { numbersFit, stitchUse } from '../../grammar/lexicon/use.ts';
import { matchAt, vocabularyOf } from '../../grammar/vocabulary.ts';
import { once } from '../once.ts';
import type { Abbreviation } from './front/front-matter.ts';
import type { Pattern } from './pattern.ts';

export interface Defined {
  readonly abbreviation: Abbreviation;
  /** Null where the words are no stitch, or not understood. */
  readonly definition: Definition | null;
  /** What the name means without the draft's words; null for a name of the draft's own. */
  readonly common: { readonly entry: Entry; readonly takes: number; readonly makes: number; readonly certain: boolean } | null;
}

/** One for each entry of the list of abbreviations, in its order. */
export const definitionsOf = once((pattern: Pattern): readonly Defined[] => {
  const base = vocabularyOf({});
  const found = pattern.front.abbreviations.map((abbreviation): Defined => {
    const name = abbreviation.forms[0] ?? abbreviation.term;
    const match = matchAt(name.trim(), 0, base, null);
    const definition = readDefinition(name, abbreviation.meaning, pattern.vocabulary);
    if (match === null || match.length !== name.trim().length || match.meaning.is !== 'stitch')
      return { abbreviation, definition, common: null };
    const { entry, spelling } = match.meaning;
    const n = match.n?.[0] ?? entry.literals?.[spelling]?.N ?? 1;
    const m = match.m ?? entry.literals?.[spelling]?.M ?? 1;
    return { abbreviation, definition, common: { entry, ...takesAndMakes(entry, n, m), certain: numbersFit(entry, n, m) } };
  });
  return found;
});

function takesAndMakes(entry: Entry, n: number, m: number): { takes: number; makes: number } {
  const { takes, makes } = stitchUse(entry, n, m);
  return { takes, makes };
}
