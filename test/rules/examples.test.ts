/** Every rule's own drafts: the wrong one raises it, and no other error; the right one raises nothing at all. */
import { describe, expect, it } from 'vitest';
import type { Finding } from '../../rules/rule.ts';
import { noHouse } from '../../src/house-style/house-style.ts';
import { proof, rules } from '../../src/index.ts';

/** A rule that is off by default is asked for. */
function found(rule: (typeof rules)[number], draft: string): readonly Finding[] {
  const house = rule.offByDefault === true ? { ...noHouse, rules: { [rule.id]: rule.level } } : noHouse;
  return proof(draft, { house }).findings;
}

const told = (findings: readonly Finding[]): string[] => findings.map(({ rule, level, message }) => `${level} ${rule}: ${message}`);

describe.each(rules.map((rule) => [rule.id, rule] as const))('%s', (id, rule) => {
  it('speaks of its wrong example as often as it says', () => {
    const findings = found(rule, rule.wrong.draft);
    expect(
      findings.filter((finding) => finding.rule === id),
      told(findings).join('\n'),
    ).toHaveLength(rule.wrong.finds ?? 1);
  });

  it('is the only error of its wrong example', () => {
    expect(told(found(rule, rule.wrong.draft).filter((finding) => finding.rule !== id && finding.level === 'error'))).toEqual([]);
  });

  it('says nothing of its right example, and nothing else does', () => {
    expect(told(found(rule, rule.right.draft))).toEqual([]);
  });

  it('is told in plain words', () => {
    for (const words of [rule.title, rule.meaning, rule.reason])
      expect(words).not.toMatch(/\b(token|node|parse|null|undefined|regex|array|boolean|index|entry)\b/i);
  });
});

it('names every rule once', () => {
  const ids = rules.map((rule) => rule.id);
  expect(ids).toEqual([...new Set(ids)]);
});
