import { findingOf, rootsOf, telling } from './observed.ts';
import type { Rule } from './rule.ts';
import { counted } from './telling.ts';

export const needlesSum: Rule = {
  id: 'needles-sum',
  level: 'error',
  title: 'Parts add up to the whole',
  meaning: 'Stitches are shared out over needles or parts, and the numbers do not add up to the stitches there are.',
  reason: 'Stitches are left over, or missing, when the work is divided.',
  needsReplay: true,
  wrong: { draft: '# Buoy Mitts\n\nCO 40 sts. Divide sts over 3 needles (14-14-14). Join in the round.\n\nRnd 1: Knit.\n\nBO all sts.\n' },
  right: { draft: '# Buoy Mitts\n\nCO 42 sts. Divide sts over 3 needles (14-14-14). Join in the round.\n\nRnd 1: Knit.\n\nBO all sts.\n' },
  check: (context) =>
    rootsOf(context, 'partDiffers', 'setsDiffer').map((root) => {
      const { head, n } = telling(context, root.met);
      const { what, scope, open } = root.met.words;
      if (what === 'section')
        return findingOf(context, root, {
          rule: needlesSum.id,
          level: 'query',
          message: `${head}${counted(n('stated'))} ${n('stated') === '1' ? 'is' : 'are'} stated ${scope}, but no part between two markers has as many; the nearest has ${n('replayed')}. Which is right?`,
        });
      return findingOf(context, root, {
        rule: needlesSum.id,
        level: open === 'yes' ? 'query' : 'error',
        message: `${head}the parts add up to ${counted(n('stated'))}, but ${n('replayed')} ${n('replayed') === '1' ? 'is' : 'are'} there to divide.`,
      });
    }),
};
