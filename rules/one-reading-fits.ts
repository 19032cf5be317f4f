import { findingOf, rootsOf } from './observed.ts';
import { phraseAt } from './phrase.ts';
import type { Rule } from './rule.ts';

export const oneReadingFits: Rule = {
  id: 'one-reading-fits',
  level: 'style',
  title: 'The usual reading of the words is the one that fits',
  meaning: 'Only an unusual reading of the words comes out right; the counts show it, the words do not.',
  reason: 'A knitter who does not count takes the usual reading.',
  needsReplay: true,
  wrong: { draft: '# Oar Scarf\n\nCO 20 sts.\n\nRow 1 (RS): *K2, p2; rep from * 5 times.\nRow 2: Purl.\n\nBO all sts.\n' },
  right: { draft: '# Oar Scarf\n\nCO 20 sts.\n\nRow 1 (RS): *K2, p2; rep from * 4 times more.\nRow 2: Purl.\n\nBO all sts.\n' },
  check: (context) =>
    rootsOf(context, 'readingNotDefault').map((root) =>
      findingOf(context, root, {
        rule: oneReadingFits.id,
        level: 'style',
        message: `${phraseAt(context, root.met)} comes out right only if ${root.met.words['reading']}. Say so in the words.`,
      }),
    ),
};
