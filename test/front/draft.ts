import { expect } from 'vitest';
import type { Span } from '../../src/manuscript/manuscript.ts';
import { readManuscript } from '../../src/manuscript/read.ts';
import type { FrontMatter, Measure } from '../../src/pattern/front/front-matter.ts';
import { readFrontMatter } from '../../src/pattern/front/read.ts';

export interface ReadDraft {
  readonly front: FrontMatter;
  readonly words: (span: Span) => string;
}

/** The front matter of a draft, and the author's words under a span. */
export function read(source: string): ReadDraft {
  const front = readFrontMatter(readManuscript(source));
  return { front, words: (span) => source.slice(span.start, span.end) };
}

/** A measure as short words: `36,37 cm`, `81-86,92-97 cm`. */
export function short(measure: Measure): string {
  const values = measure.values.map((value, i) => {
    const top = measure.upper?.[i];
    return top === undefined || top === value ? String(value ?? '–') : `${value}-${top}`;
  });
  return `${values.join(',')} ${measure.unit}`;
}

export const shorts = (measures: readonly Measure[]): string => measures.map(short).join(' / ');

/** Every span lies inside the draft and holds words. */
export function expectSpans(source: string, front: FrontMatter): void {
  const spans: Span[] = [
    ...front.blocks,
    ...front.measures.flatMap((one) => [one.span, ...one.measures.map((m) => m.span)]),
    ...front.pairs.flatMap((one) => [one.first.span, one.second.span]),
    ...front.gauges.flatMap((one) => [one.span, ...(one.stitchSpan === null ? [] : [one.stitchSpan]), ...one.over.map((m) => m.span)]),
    ...front.needles.map((one) => one.span),
    ...front.yarns.map((one) => one.span),
    ...front.notions.map((one) => one.span),
    ...front.abbreviations.flatMap((one) => [one.span, one.meaningSpan]),
  ];
  if (front.title !== null) spans.push(front.title.span);
  if (front.sizes !== null) spans.push(front.sizes.span);
  for (const span of spans) {
    expect(span.start).toBeGreaterThanOrEqual(0);
    expect(span.end).toBeLessThanOrEqual(source.length);
    expect(source.slice(span.start, span.end).trim()).not.toBe('');
  }
}
