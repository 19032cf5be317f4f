import { findingOf, rootsOf, telling } from './observed.ts';
import type { Rule } from './rule.ts';
import { counted } from './telling.ts';

export const rowsStated: Rule = {
  id: 'rows-stated',
  level: 'error',
  title: 'A stated number of rows is the number worked',
  meaning: 'The draft adds up its rows (“28 rows worked”) and the instructions make another number.',
  reason: 'Lengths, and the rows of the piece it is sewn to, follow from it.',
  needsReplay: true,
  wrong: {
    draft:
      '# Bollard Strip\n\nCO 12 sts.\n\nRow 1 (RS): Knit.\nRow 2: Purl.\nRep Rows 1 and 2 nine more times (22 rows worked).\n\nBO all sts.\n',
  },
  right: {
    draft:
      '# Bollard Strip\n\nCO 12 sts.\n\nRow 1 (RS): Knit.\nRow 2: Purl.\nRep Rows 1 and 2 nine more times (20 rows worked).\n\nBO all sts.\n',
  },
  check: (context) =>
    rootsOf(context, 'rowsDiffer').map((root) => {
      const { head, n } = telling(context, root.met);
      return findingOf(context, root, {
        rule: rowsStated.id,
        level: 'error',
        message: `${head}${counted(n('replayed'), 'row')} ${n('replayed') === '1' ? 'has' : 'have'} been worked, but ${n('stated')} are stated.`,
      });
    }),
};
