/** The author's words without what belongs to Markdown. */
import type { Manuscript, Span } from '../manuscript/manuscript.ts';

/** The words at a place on one line: the stars around a bold label and the signs of a list are left out. */
export function plainWords(manuscript: Manuscript, span: Span): string {
  const passages = manuscript.blocks.flatMap((block) => (block.kind === 'tableRow' ? block.cells : 'text' in block ? [block] : []));
  const passage = passages.find((each) => each.start <= span.start && span.end <= each.end);
  const text =
    passage === undefined
      ? manuscript.source.slice(span.start, span.end)
      : passage.text.slice(span.start - passage.start, span.end - passage.start);
  return text.replace(/\s+/g, ' ').trim();
}
