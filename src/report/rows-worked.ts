/** Rows worked since the piece was begun, as far as the draft gives their number. */
import type { Proof } from '../index.ts';

/** For every line of the count sheet, the rows worked in the size once it is done. */
export function rowsWorked(proof: Proof, size: number): number[] {
  let done = 0;
  return proof.replay.entries.map((entry) => {
    const works = entry.after[size] != null || entry.before[size] != null;
    if (entry.unit === 'step' && entry.before[size] === 0 && (entry.after[size] ?? 0) > 0) done = 0;
    if (works && entry.unit !== 'step') done += entry.times;
    return done;
  });
}
