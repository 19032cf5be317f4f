/** Small drafts for the tests of the rules of the draft, and the findings of one rule in them. */
import type { Finding } from '../../rules/rule.ts';
import { type HouseStyle, noHouse } from '../../src/house-style/house-style.ts';
import { proof } from '../../src/index.ts';

/** Findings of one rule, with the line they stand on. */
export function findings(rule: string, draft: string, house: HouseStyle = noHouse): readonly (Finding & { readonly line: number })[] {
  const all = proof(draft, { house });
  return all.findings.filter((one) => one.rule === rule).map((one) => ({ ...one, line: all.manuscript.place(one.span.start).line }));
}

/** "level message" of each finding. */
export const told = (rule: string, draft: string, house?: HouseStyle): readonly string[] =>
  findings(rule, draft, house).map((one) => `${one.level} ${one.message}`);
