/** The measures of the finished piece that a draft prints in its front, one unit of each. */

import type { Proof } from '../index.ts';
import type { Measure } from '../pattern/front/front-matter.ts';

export interface FinishedMeasure {
  readonly name: string;
  readonly measure: Measure;
}

/** "S / M / L (hand" of "S / M / L (hand 18 / 20 / 22 cm around)" is the hand. */
function withoutOpenBracket(name: string): string {
  const at = name.lastIndexOf('(');
  return at < 0 || name.indexOf(')', at) >= 0 ? name : name.slice(at + 1).trim();
}

export function finishedMeasures(proof: Proof): readonly FinishedMeasure[] {
  const { measures, blocks } = proof.pattern.front;
  return measures.flatMap((each): FinishedMeasure[] => {
    const inFront = blocks.some((block) => block.start <= each.span.start && each.span.end <= block.end);
    const measure = each.measures.find((one) => one.unit === 'cm') ?? each.measures.find((one) => one.unit === 'in');
    const name = withoutOpenBracket(each.name.replace(/\s+/g, ' ').trim());
    if (!inFront || each.kind === 'toFit' || measure === undefined || name === '' || name.length > 60) return [];
    return /\bease\b|\buntil\b/i.test(name) ? [] : [{ name, measure }];
  });
}
