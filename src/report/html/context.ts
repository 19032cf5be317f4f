/** What the parts of one page share: the draft, its number on the page, where everything on it is found. */
import type { Finding } from '../../../rules/rule.ts';
import type { Proof } from '../../index.ts';
import { momentsOf } from '../../replay/moments.ts';
import type { Moment } from '../../replay/play.ts';
import { byLevel } from '../levels.ts';
import { inPlaceOrder, rangeOf } from '../place.ts';

export interface DraftContext {
  readonly proof: Proof;
  /** Begins every id of this draft: "d0". */
  readonly id: string;
  /** As they are numbered; a finding is known by its number in this list, from 1. */
  readonly findings: readonly Finding[];
  /** Heads of all rows; none where there are too many to keep. */
  readonly moments: readonly Moment[];
}

/** More heads than this are not kept: a page with so many rows would help nobody. */
const mostMoments = 30_000;

export function contextOf(proof: Proof, index: number): DraftContext {
  let kept = 0;
  const moments = momentsOf(proof, () => {
    kept += 1;
    return kept <= mostMoments;
  });
  return { proof, id: `d${index}`, findings: byLevel(inPlaceOrder(proof.findings)), moments };
}

/** Number of a finding on the page, from 1. */
export const numberOf = (context: DraftContext, finding: Finding) => context.findings.indexOf(finding) + 1;
export const findingId = (context: DraftContext, finding: Finding) => `${context.id}-f${numberOf(context, finding)}`;
export const lineId = (context: DraftContext, line: number) => `${context.id}-L${line}`;
export const planId = (context: DraftContext, size: number) => `${context.id}-p${size}`;
export const findingLine = (context: DraftContext, finding: Finding) => rangeOf(context.proof.manuscript, finding.span).line;
