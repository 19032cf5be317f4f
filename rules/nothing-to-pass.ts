import { findingOf, rootsOf, telling } from './observed.ts';
import type { Rule } from './rule.ts';
import { counted, excerpt } from './telling.ts';

export const nothingToPass: Rule = {
  id: 'nothing-to-pass',
  level: 'error',
  title: 'A stitch that is passed over has been slipped before',
  meaning: 'The row says to pass a slipped stitch over, and none has been slipped.',
  reason: 'The step cannot be done.',
  needsReplay: true,
  wrong: { draft: '# Cleat Cord\n\nCO 9 sts.\n\nRow 1 (RS): Psso, k9.\nRow 2: Purl.\n\nBO all sts.\n' },
  right: { draft: '# Cleat Cord\n\nCO 9 sts.\n\nRow 1 (RS): Sl 1, k1, psso, k7.\nRow 2: Purl.\n\nBO all sts.\n' },
  check: (context) =>
    rootsOf(context, 'nothingToPass').map((root) => {
      const { head, n } = telling(context, root.met);
      return findingOf(context, root, {
        rule: nothingToPass.id,
        level: 'error',
        message: `${head}${excerpt(context, root.met.span)} passes ${counted(n('wanted'))} over, and no slipped stitch is on the right needle.`,
      });
    }),
};
