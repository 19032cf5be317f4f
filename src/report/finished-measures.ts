/** The measures of the finished piece that a draft prints in its front, one unit of each. */

import type { Proof } from '../index.ts';
import type { Measure } from '../pattern/front/front-matter.ts';

export interface FinishedMeasure {
  readonly name: string;
  readonly measure: Measure;
}

export function finishedMeasures(proof: Proof): readonly FinishedMeasure[] {
  const { measures, blocks } = proof.pattern.front;
  return measures.flatMap((each): FinishedMeasure[] => {
    const inFront = blocks.some((block) => block.start <= each.span.start && each.span.end <= block.end);
    const measure = each.measures.find((one) => one.unit === 'cm') ?? each.measures.find((one) => one.unit === 'in');
    const name = each.name.replace(/\s+/g, ' ').trim();
    if (!inFront || each.kind === 'toFit' || measure === undefined || name === '' || name.length > 60) return [];
    return /\bease\b|\buntil\b/i.test(name) ? [] : [{ name, measure }];
  });
}
