/** The rules as a list, and one rule as a page with its wrong and its right example. */
import type { Example, Rule } from '../../rules/rule.ts';
import { padEnd, wrap } from './layout.ts';
import { levelHeading, levels } from './levels.ts';
import { plainText, type TextOptions } from './text.ts';

const byId = (rules: readonly Rule[]) => [...rules].sort((a, b) => (a.id < b.id ? -1 : a.id > b.id ? 1 : 0));

export function ruleListText(rules: readonly Rule[], { width, paint }: TextOptions = plainText): string {
  const idWidth = rules.reduce((widest, rule) => Math.max(widest, rule.id.length), 0);
  const lines: string[] = [];
  for (const level of levels) {
    const group = byId(rules).filter((rule) => rule.level === level);
    if (group.length === 0) continue;
    if (lines.length > 0) lines.push('');
    lines.push(paint.strong(levelHeading[level]));
    for (const rule of group) {
      const title = rule.offByDefault === true ? `${rule.title} (only when the house asks for it)` : rule.title;
      const hang = ' '.repeat(idWidth + 4);
      const [first = '', ...more] = wrap(title, width - hang.length);
      lines.push(`  ${padEnd(rule.id, idWidth)}  ${first}`, ...more.map((line) => hang + line));
    }
  }
  const usual =
    'Each stands under its usual level: where a draft leaves room for doubt a rule asks instead, and house-style.yaml may set another level.';
  return `${[...lines, '', ...wrap(usual, width), 'One rule with its examples: rowproof rules ID'].join('\n')}\n`;
}

export function rulePageText(rule: Rule, { width, paint }: TextOptions = plainText): string {
  const asked = rule.offByDefault === true ? ' · only when the house asks for it' : '';
  return `${[
    paint.strong(rule.id),
    ...wrap(`${levelHeading[rule.level]}${asked}`, width),
    '',
    ...wrap(rule.title, width),
    '',
    ...wrap(rule.meaning, width),
    '',
    ...wrap(rule.reason, width),
    '',
    paint.strong('A draft in which it speaks'),
    '',
    ...exampleLines(rule.wrong),
    '',
    paint.strong('The same draft put right'),
    '',
    ...exampleLines(rule.right),
  ].join('\n')}\n`;
}

function exampleLines(example: Example): readonly string[] {
  return example.draft
    .trim()
    .split('\n')
    .map((line) => `    ${line}`.trimEnd());
}

export function rulesJson(rules: readonly Rule[]): string {
  return `${JSON.stringify({ rules: byId(rules).map(ruleDocument) }, null, 2)}\n`;
}

export function ruleJson(rule: Rule): string {
  return `${JSON.stringify(ruleDocument(rule), null, 2)}\n`;
}

function ruleDocument(rule: Rule) {
  return {
    id: rule.id,
    level: rule.level,
    title: rule.title,
    meaning: rule.meaning,
    reason: rule.reason,
    offByDefault: rule.offByDefault ?? false,
    wrong: rule.wrong.draft,
    right: rule.right.draft,
  };
}
