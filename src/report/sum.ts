/** The sum behind a finding: what stood on the needle before the row, what the row takes and makes, what stands after. */
import type { Finding } from '../../rules/rule.ts';
import type { Proof } from '../index.ts';
import type { Span } from '../manuscript/manuscript.ts';
import type { Entry } from '../replay/replay.ts';

export interface SumLine {
  readonly size: string;
  readonly before: number | null;
  readonly takes: number | null;
  readonly makes: number | null;
  readonly after: number | null;
  readonly stated: number | null;
}

/** One value, or one per size of the finding. */
export function valueAt(values: Finding['stated'], index: number): number | null {
  if (values === null) return null;
  return typeof values === 'number' ? values : (values[index] ?? null);
}

const holds = (outer: Span, inner: Span) => outer.start <= inner.start && inner.start < Math.max(outer.end, outer.start + 1);

/** The same numbers in every size the finding holds for. */
function sameSum(a: Entry, b: Entry, sizes: readonly number[]): boolean {
  return sizes.every((size) => a.before[size] === b.before[size] && a.after[size] === b.after[size] && a.takes[size] === b.takes[size]);
}

/**
 * The entry of the count sheet a finding speaks of; null where the draft works the row more than once with different
 * counts and the finding does not say which, because a sum of another pass would mislead.
 */
export function entryOf(proof: Proof, finding: Finding): Entry | null {
  const { entries } = proof.replay;
  const bySpan = entries.filter((entry) => holds(entry.span, finding.span));
  const candidates = bySpan.length > 0 ? bySpan : entries.filter((entry) => holds(entry.textSpan, finding.span));
  const sizes = sizesOf(proof, finding);
  const first = candidates[0];
  if (first === undefined) return null;
  if (finding.replayed !== null) {
    const exact = candidates.find((entry) => sizes.every((size, index) => entry.after[size] === valueAt(finding.replayed, index)));
    if (exact !== undefined) return exact;
  }
  return candidates.every((entry) => sameSum(entry, first, sizes)) ? first : null;
}

function sizesOf(proof: Proof, finding: Finding): readonly number[] {
  return finding.sizes.length > 0 ? finding.sizes : proof.pattern.sizes.length === 1 ? [0] : [];
}

export interface Sum {
  /** How often the row is worked in one run. */
  readonly times: number;
  readonly lines: readonly SumLine[];
}

/** One line per size the finding holds for; null where the sum is not known or says nothing. */
export function sumOf(proof: Proof, finding: Finding): Sum | null {
  const entry = entryOf(proof, finding);
  if (entry === null) return null;
  const lines = sizesOf(proof, finding)
    .map((size, index) => {
      const stated = valueAt(finding.stated, index);
      const worked = valueAt(finding.replayed, index);
      // Where the draft's count is believed, the sheet goes on from it; the sum shows what the row makes.
      const believed = entry.after[size] ?? null;
      const after = believed !== null && believed === stated && worked !== null ? worked : believed;
      // A stated number that is not the count after the row (a change, a part, stitches left) has no place in this sum.
      const speaksOfAfter = after !== null && after === worked;
      const before = entry.before[size] ?? null;
      const takes = entry.takes[size] ?? null;
      const makes = entry.makes[size] ?? null;
      // A row that stops half way has taken and made less than leads to the count after it.
      const whole = before !== null && takes !== null && makes !== null && before - takes + makes === after;
      return {
        size: proof.pattern.sizes[size] ?? '',
        before,
        takes: whole ? takes : null,
        makes: whole ? makes : null,
        after,
        stated: speaksOfAfter ? stated : null,
      };
    })
    .filter((line) => line.before !== null && line.after !== null);
  return lines.length === 0 ? null : { times: entry.times, lines };
}
