import { findingOf, rootsOf, telling } from './observed.ts';
import { phraseAt } from './phrase.ts';
import type { Rule } from './rule.ts';

export const twoReadings: Rule = {
  id: 'two-readings',
  level: 'query',
  title: 'Words have one reading that fits',
  meaning: 'The words can be worked in two ways, both fit, and they give different counts.',
  reason: 'Half of the knitters take the reading that is not meant, and the counts do not tell them.',
  needsReplay: true,
  wrong: {
    draft: '# Thole Scarf\n\nCO 40 sts.\n\nRow 1 (RS): *K2tog, yo twice, k2; rep from * 5 times, k to end.\nRow 2: Purl.\n\nBO all sts.\n',
  },
  right: {
    draft: '# Thole Scarf\n\nCO 40 sts.\n\nRow 1 (RS): *K2tog, yo, k2; rep from * 5 times more, k to end.\nRow 2: Purl.\n\nBO all sts.\n',
  },
  check: (context) =>
    rootsOf(context, 'readingsDiffer').map((root) => {
      const { head, n } = telling(context, root.met);
      const { first, second } = root.met.words;
      const one = `if ${first}, ${n('first')} sts`;
      const two = `if ${second}, ${n('second')} sts`;
      return findingOf(context, root, {
        rule: twoReadings.id,
        level: 'query',
        message: `${head}${phraseAt(context, root.met)} can be worked in two ways, and both fit: ${one}; ${two}. Which is meant?`,
      });
    }),
};
