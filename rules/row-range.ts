import { findingOf, rootsOf, telling } from './observed.ts';
import type { Rule } from './rule.ts';
import { counted, times } from './telling.ts';

export const rowRange: Rule = {
  id: 'row-range',
  level: 'query',
  title: 'A label that covers several rows covers as many as its text works',
  meaning: '“Rows 5–8: Rep Rows 1 and 2 three times”: four rows in the label, six in the text.',
  reason: 'One knitter goes by the label and another by the number of times.',
  needsReplay: true,
  wrong: {
    draft:
      '# Latch Square\n\nCO 20 sts.\n\nRow 1 (RS): Knit.\nRow 2: Purl.\nRow 3: *K1, p1; rep from * to end.\nRow 4: Purl.\nRows 5–8: Rep Rows 1 and 2 three times.\n\nBO all sts.\n',
  },
  right: {
    draft:
      '# Latch Square\n\nCO 20 sts.\n\nRow 1 (RS): Knit.\nRow 2: Purl.\nRow 3: *K1, p1; rep from * to end.\nRow 4: Purl.\nRows 5–8: Rep Rows 1 and 2 twice.\n\nBO all sts.\n',
  },
  check: (context) =>
    rootsOf(context, 'rangeDiffers').map((root) => {
      const { n, one } = telling(context, root.met);
      const said = one('times');
      const text =
        said === 0 || said === null
          ? `its text works ${counted(n('named'), 'row')}, which does not go into that number`
          : `${counted(n('named'), 'row')} worked ${times(said)} ${said * (one('named') ?? 1) === 1 ? 'is' : 'are'} ${n('rows')}`;
      return findingOf(context, root, {
        rule: rowRange.id,
        level: 'query',
        message: `The label covers ${counted(n('labelRows'), 'row')}, but ${text}. Which is meant?`,
      });
    }),
};
