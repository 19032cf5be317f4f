import { findingOf, rootsOf, telling } from './observed.ts';
import { unreadBefore } from './reading.ts';
import type { Rule } from './rule.ts';

export const endingSide: Rule = {
  id: 'ending-side',
  level: 'error',
  title: 'A stretch ends on the side it says',
  meaning: '“Ending with a WS row” is told, and the number of rows given ends on the other side.',
  reason: 'The next section begins on the wrong side, for some sizes only if the number of rows differs.',
  needsReplay: true,
  wrong: {
    draft:
      '# Pier Panel\n\nCO 20 sts.\n\nRow 1 (RS): Knit.\nRow 2: Purl.\n\nWork 5 rows in st st, ending with a WS row.\n\nNext row (RS): Knit.\n\nBO all sts.\n',
  },
  right: {
    draft:
      '# Pier Panel\n\nCO 20 sts.\n\nRow 1 (RS): Knit.\nRow 2: Purl.\n\nWork 6 rows in st st, ending with a WS row.\n\nNext row (RS): Knit.\n\nBO all sts.\n',
  },
  check: (context) =>
    rootsOf(context, 'endingSide').map((root) => {
      const { head } = telling(context, root.met);
      const { stated, replayed } = root.met.words;
      return findingOf(context, root, {
        rule: endingSide.id,
        level: unreadBefore(context, root.met) ? 'query' : 'error',
        message: `${head}the rows told here end with ${replayed === 'RS' ? 'an RS' : 'a WS'} row, not ${stated === 'RS' ? 'an RS' : 'a WS'} row: an odd number of rows is meant where an even one is given, or the other way round.`,
      });
    }),
};
