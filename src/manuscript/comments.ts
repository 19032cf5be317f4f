/** Comments: words for the author's eyes, which no knitter sees. They may run over several blocks. */
import type { Span } from './manuscript.ts';

const opening = '<!--';
const closing = '-->';

export interface Comments {
  /** From `<!--` to `-->`, in order. */
  readonly spans: readonly Span[];
  /** Where a comment opens that is never closed. */
  readonly unclosed: number | null;
}

/** Finds the comments of a draft. `fences` are in order; what stands in a fence is shown as typed and opens no comment. */
export function findComments(source: string, fences: readonly Span[]): Comments {
  const spans: Span[] = [];
  let fence = 0;
  let at = source.indexOf(opening);
  while (at !== -1) {
    while (fence < fences.length && (fences[fence]?.end ?? 0) <= at) fence++;
    const around = fences[fence];
    if (around && around.start <= at) {
      at = source.indexOf(opening, around.end);
      continue;
    }
    const close = source.indexOf(closing, at + 2);
    if (close === -1) return { spans, unclosed: at };
    const end = close + closing.length;
    spans.push({ start: at, end });
    at = source.indexOf(opening, end);
  }
  return { spans, unclosed: null };
}

/** The spans that touch a stretch. `spans` are in order and apart. */
export function touching(spans: readonly Span[], start: number, end: number): readonly Span[] {
  let low = 0;
  let high = spans.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((spans[middle]?.end ?? 0) <= start) low = middle + 1;
    else high = middle;
  }
  let last = low;
  while (last < spans.length && (spans[last]?.start ?? 0) < end) last++;
  return spans.slice(low, last);
}
