/**
 * How sure a value of these tables is. `published`: printed by the named source, or by several charts that agree.
 * `memory`: trade knowledge that was not confirmed in print; it may raise a query and never an error, and the types here
 * keep it so: a check that wants to raise an error must ask for `Published`.
 */
export interface Published {
  readonly sure: 'published';
  /** Who prints it. */
  readonly source: string;
}

export interface FromMemory {
  readonly sure: 'memory';
  readonly source: null;
}

export type Certainty = Published | FromMemory;

export const memory: FromMemory = { sure: 'memory', source: null };

export const published = (source: string): Published => ({ sure: 'published', source });

/** The highest level a value may raise. */
export function mostOf<C extends Certainty>(certainty: C): C extends Published ? 'error' : 'query' {
  return (certainty.sure === 'published' ? 'error' : 'query') as C extends Published ? 'error' : 'query';
}
