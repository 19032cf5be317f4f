import { findingOf, rootsOf, telling } from './observed.ts';
import type { Rule } from './rule.ts';
import { counted, excerpt } from './telling.ts';

export const heldStitches: Rule = {
  id: 'held-stitches',
  level: 'error',
  title: 'What was put aside is what is taken up',
  meaning: 'A number of stitches is returned from a holder that does not hold that number, or from a holder nothing was put on.',
  reason: 'The knitter finds more or fewer stitches than she is told to work.',
  needsReplay: true,
  wrong: {
    draft:
      '# Hatch Pocket\n\nCO 30 sts.\n\nRow 1 (RS): Knit.\nRow 2: P10, place next 10 sts on a holder, p10.\n\nBO all sts.\n\n## Lining\n\nReturn 12 held sts to needle.\nRow 1 (RS): Knit.\n\nBO all sts.\n',
  },
  right: {
    draft:
      '# Hatch Pocket\n\nCO 30 sts.\n\nRow 1 (RS): Knit.\nRow 2: P10, place next 10 sts on a holder, p10.\n\nBO all sts.\n\n## Lining\n\nReturn 10 held sts to needle.\nRow 1 (RS): Knit.\n\nBO all sts.\n',
  },
  check: (context) =>
    rootsOf(context, 'heldDiffers', 'nothingHeld').map((root) => {
      const { head, n } = telling(context, root.met);
      const { holder, piece } = root.met.words;
      const of = piece ? ` (${piece})` : '';
      const message =
        root.met.kind === 'nothingHeld'
          ? `${head}${excerpt(context, root.met.span)}: nothing has been put aside, or everything has been taken up already.`
          : `${head}${counted(n('stated'))} ${n('stated') === '1' ? 'is' : 'are'} to come from the ${holder || 'holder'}${of}, which holds ${n('replayed')}.`;
      return findingOf(context, root, { rule: heldStitches.id, level: 'error', message });
    }),
};
