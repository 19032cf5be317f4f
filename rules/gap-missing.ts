import { findingOf, rootsOf, telling } from './observed.ts';
import type { Rule } from './rule.ts';
import { excerpt } from './telling.ts';

const names: Readonly<Record<string, string>> = {
  gap: 'gap',
  wrapped: 'wrapped stitch',
  double: 'double stitch',
  twin: 'twin stitch',
  pin: 'pin',
  yarnOver: 'yarn over of a turn',
  turn: 'turn',
};

export const gapMissing: Rule = {
  id: 'gap-missing',
  level: 'error',
  title: 'A short row that works to an earlier turn finds one',
  meaning: 'The row works “to the gap” or “to 2 sts before the wrapped st”, and no turn is left open on this side.',
  reason: 'The short rows are worked once too often, or the turn it speaks of was never made.',
  needsReplay: true,
  wrong: { draft: '# Dune Heel\n\nCO 30 sts.\n\nRow 1 (RS): Knit.\nRow 2: P to 2 sts before gap, turn.\nRow 3: Knit.\n\nBO all sts.\n' },
  right: {
    draft:
      '# Dune Heel\n\nCO 30 sts.\n\nRow 1 (RS): K25, turn.\nRow 2: P20, turn.\nRow 3: K to 2 sts before gap, turn.\nRow 4: Purl.\nRow 5: Knit.\n\nBO all sts.\n',
  },
  check: (context) =>
    rootsOf(context, 'noGap').map((root) => {
      const { head } = telling(context, root.met);
      const what = names[root.met.words['place'] ?? ''] ?? 'turn';
      return findingOf(context, root, {
        rule: gapMissing.id,
        level: 'error',
        message: `${head}${excerpt(context, root.met.span)}: no ${what} lies ahead in this row. The rows are worked too often, or the turn was not made.`,
      });
    }),
};
