/** The reader, the replay and the rules, loaded only by a command that needs them. */
import type { Rule } from '../../rules/rule.ts';
import type { HouseStyle } from '../house-style/house-style.ts';
import type { Proof } from '../index.ts';
import type { RowReplay } from '../report/row-replay.ts';

export interface Library {
  proof(source: string, options: { readonly path?: string; readonly house?: HouseStyle }): Proof;
  /** One row in one size; null where the draft has no row of that name. `from` is another count to begin with. */
  replayRow(proof: Proof, row: string, size: string | null, from?: number): RowReplay | null;
  readonly rules: readonly Rule[];
}

export type LoadLibrary = () => Promise<Library>;

export async function loadLibrary(): Promise<Library> {
  const [{ proof, replayRow }, { rules }] = await Promise.all([import('../index.ts'), import('../../rules/index.ts')]);
  return { proof, replayRow, rules };
}
