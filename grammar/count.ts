/**
 * Numbers as a pattern prints them: one value for every size, or one value per size with a dash for a size that
 * skips the step. `5 (6, –, 8)` is `[5, 6, null, 8]`; a plain `5` is `[5]` and holds for all sizes.
 */
export type Sized = readonly (number | null)[];

/** The value of one size; `null` where the size skips the step. A single value holds for every size. */
export function sizeValue(values: Sized, size: number): number | null {
  if (values.length === 1) return values[0] ?? null;
  return values[size] ?? null;
}

/** How a pattern would print the values: `5 (6, –, 8)`. */
export function printSized(values: Sized): string {
  const words = values.map((value) => (value === null ? '–' : String(value)));
  return words.length === 1 ? (words[0] ?? '') : `${words[0] ?? ''} (${words.slice(1).join(', ')})`;
}

/** Two numbers in one, size by size; a size that skips either skips the sum. */
export function addSized(one: Sized, more: Sized): Sized {
  return (one.length > 1 ? one : more).map((_, size) => {
    const [first, second] = [sizeValue(one, size), sizeValue(more, size)];
    return first === null || second === null ? null : first + second;
  });
}
