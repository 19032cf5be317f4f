/** Measures of one length under different names: what the front promises and what the instructions work to. */
import type { RepeatRows, Until } from '../../grammar/tree.ts';
import type { Span } from '../../src/manuscript/manuscript.ts';
import type { Measure, NamedMeasure } from '../../src/pattern/front/front-matter.ts';
import type { Context } from '../rule.ts';
import { stretches } from './blocks.ts';
import { walkPattern } from './walk.ts';

/** A length the instructions work to: "until back measures 36 [37] cm". */
export interface Worked {
  /** Part named, in lower case and singular: back, armhole, sleeve. */
  readonly part: string;
  readonly measure: Measure;
  /** "from cast-on edge", "from underarm"; null where not said. */
  readonly from: string | null;
  readonly piece: number | null;
}

const singular = (word: string): string =>
  word
    .toLowerCase()
    .trim()
    .replace(/^(?:the|your|this|each)\s/, '')
    .replace(/s$/, '')
    .replace(/^work$|^piece$|^it$|^knitting$/, '');

/** All measures of the instructions that end a stretch of rows. */
export function workedLengths(context: Context): readonly Worked[] {
  const found: Worked[] = [];
  walkPattern(context.pattern, (node, section) => {
    const goal = goalOf(node);
    if (goal === null || goal.kind !== 'measure' || goal.shorter === true) return;
    const name = goal.of === null || singular(goal.of) === '' ? section.title : goal.of;
    const measure: Measure = { values: goal.values, upper: null, unit: goal.unit, span: goal.span };
    found.push({ part: singular(name), measure, from: goal.from, piece: section.piece });
  });
  return found;
}

function goalOf(node: { readonly type: string }): Until['goal'] | null {
  if (node.type === 'until') return (node as Until).goal;
  if (node.type === 'repeatRows') return (node as RepeatRows).until;
  return node.type === 'atSameTime' ? (node as unknown as { when: Until['goal'] | null }).when : null;
}

/** Measures of the front that are lengths, with the name in lower case. */
export function statedLengths(context: Context): readonly NamedMeasure[] {
  const front = stretches(context).filter((one) => one.role === 'front' || one.role === 'list');
  const inFront = (span: Span): boolean => front.some((one) => one.start <= span.start && span.end <= one.end);
  return context.pattern.front.measures.filter(
    (measure) =>
      measure.kind !== 'toFit' &&
      inFront(measure.span) &&
      /\b(?:length|long|depth|deep|seam|from|height|tall|high|drop|armhole)\b/i.test(measure.name),
  );
}

/** The measure of a name in the given unit. */
export const inUnit = (measures: readonly Measure[], unit: Measure['unit']): Measure | null =>
  measures.find((one) => one.unit === unit) ?? null;
