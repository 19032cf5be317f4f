/** A library that finds words instead of slips: SLIP is an error, ASK a query, TASTE a remark of style, CRASH throws. */
import type { Level } from '../../rules/rule.ts';
import type { Library } from '../../src/command-line/library.ts';
import { at, entry, finding, handMade, ruleOfCommas, ruleOfCounts } from '../report/hand-made.ts';

const words: readonly (readonly [string, Level])[] = [
  ['SLIP', 'error'],
  ['ASK', 'query'],
  ['TASTE', 'style'],
];

export const playLibrary: Library = {
  rules: [ruleOfCounts, ruleOfCommas],
  proof(source, { path, house }) {
    if (source.includes('CRASH')) throw new Error('the needle broke\n    at inside (secret.ts:1:1)');
    const title = source.startsWith('# ') ? source.slice(2).split('\n')[0] : '';
    const level = house?.rules['count-mismatch'];
    return handMade({
      path: path ?? '',
      source,
      title: title ?? '',
      sizes: source.includes('Sizes S, M') ? ['S', 'M'] : ['one'],
      steps: source.trim() === '' ? 0 : 1,
      entries: source.includes('Row 1') ? [entry(at(source, 'Row 1'), { before: [5], after: [6] })] : [],
      findings: words
        .filter(([name]) => source.includes(name))
        .map(([name, own]) =>
          finding(at(source, name), { level: level === undefined || level === 'off' ? own : level, message: `Here stands ${name}.` }),
        ),
    });
  },
  replayRow(proof, row, size, from) {
    if (row !== 'Row 1') return null;
    const before = from ?? 5;
    return {
      size: size ?? proof.pattern.sizes[0] ?? 'one',
      section: 'Body',
      label: 'Row 1',
      side: 'RS',
      before,
      lines: [
        { step: 'k2', span: { start: 0, end: 2 }, takes: 2, makes: 2, leftNeedle: before - 2, rightNeedle: 2 },
        {
          step: 'k3, m1',
          span: { start: 0, end: 2 },
          takes: 3,
          makes: 4,
          leftNeedle: before - 5,
          rightNeedle: 6,
          pass: 1,
          marker: 'marker passed',
        },
      ],
      after: before + 1,
      outcome: 'The row fits.',
    };
  },
};
