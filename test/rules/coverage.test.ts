/** Every item of the checklist has its rules, which exist, or a reason; every rule is there for an item or says why it is not. */
import { expect, it } from 'vitest';
import { coverage } from '../../rules/coverage.ts';
import { rules } from '../../rules/index.ts';

/** Items per group of the checklist. */
const groups: Readonly<Record<string, number>> = {
  STR: 10,
  MAT: 7,
  GAU: 9,
  SIZ: 11,
  VOC: 9,
  ROW: 12,
  REP: 10,
  SHP: 10,
  SRT: 8,
  LAC: 7,
  CAB: 6,
  CHT: 9,
  SID: 8,
  MRK: 6,
  PCS: 7,
  FIN: 5,
  SCH: 5,
  YRN: 5,
  UNI: 5,
  TYP: 9,
  ACC: 9,
  SAF: 4,
  LEG: 5,
};

it('names every item of the checklist', () => {
  const items = Object.entries(groups).flatMap(([group, count]) => Array.from({ length: count }, (_, index) => `${group}-${index + 1}`));
  expect(Object.keys(coverage).sort()).toEqual(items.sort());
});

it('gives each item rules that exist, or a reason in a sentence', () => {
  const ids = new Set(rules.map((rule) => rule.id));
  for (const [item, cover] of Object.entries(coverage)) {
    if (typeof cover === 'string') expect(cover, item).toMatch(/^[A-Z].{20,}\.$/);
    else {
      expect(cover.length, item).toBeGreaterThan(0);
      expect(
        cover.filter((id) => !ids.has(id)),
        item,
      ).toEqual([]);
    }
  }
});

it('leaves no rule without an item', () => {
  const used = new Set(Object.values(coverage).flatMap((cover) => (typeof cover === 'string' ? [] : cover)));
  // These serve no single item: what could not be checked, two tables of one draft held together, exceptions out of date.
  const alone = ['not-read', 'table-agrees', 'stale-stet'];
  expect(rules.map((rule) => rule.id).filter((id) => !used.has(id) && !alone.includes(id))).toEqual([]);
});
