import { found, stretches } from './facts/blocks.ts';
import type { Finding, Rule } from './rule.ts';

/** Words that never stand twice in a row; "1 in in st st", "k1 k1" and "that that" may be meant. */
const never = new Set([
  'the',
  'and',
  'of',
  'a',
  'an',
  'for',
  'with',
  'from',
  'is',
  'are',
  'at',
  'as',
  'on',
  'or',
  'sts',
  'row',
  'rows',
  'rnd',
  'round',
  'next',
  'last',
  'every',
]);

export const doubledWords: Rule = {
  id: 'doubled-words',
  level: 'style',
  title: 'No word is printed twice in a row',
  meaning: 'A small word stands twice where once is meant.',
  reason: 'It is a slip of the hand, and where a word was to be replaced the old one may have stayed.',
  needsReplay: false,
  wrong: {
    draft: `# Kelp Scarf

Cast on 60 sts.

Row 1: Knit to the the end.
`,
  },
  right: {
    draft: `# Kelp Scarf

Cast on 60 sts.

Row 1: Knit to the end.
`,
  },
  check(context): readonly Finding[] {
    return stretches(context).flatMap((stretch) =>
      [...stretch.text.matchAll(/\b([A-Za-z]{1,6})(\s+)\1\b/gi)]
        .filter((match) => never.has(match[1]!.toLowerCase()))
        .map((match) => {
          const start = stretch.start + match.index;
          const first = match[1]!.length;
          return found(context, doubledWords, { start, end: start + match[0].length }, `"${match[1]}" stands twice.`, {
            fix: { span: { start: start + first, end: start + match[0].length }, text: '' },
          });
        }),
    );
  },
};
