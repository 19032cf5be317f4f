import type { Proof } from '../index.ts';
import type { RowReplay } from '../report/row-replay.ts';

/** One row, stitch by stitch, for whoever must confirm a finding; null when the draft has no such row. */
export function replayRow(_proof: Proof, _row: string, _size: string | null, _from?: number): RowReplay | null {
  return null;
}
