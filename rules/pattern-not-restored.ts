import { rootsOf } from './observed.ts';
import type { Rule } from './rule.ts';
import { aRepeat, sectionTitle } from './telling.ts';

export const patternNotRestored: Rule = {
  id: 'pattern-not-restored',
  level: 'error',
  title: 'A pattern that is repeated ends on the count it began with',
  meaning:
    'After the last row of the set there are more or fewer stitches in each repeat than before the first, and the set is to be repeated.',
  reason: 'The second time the rows do not fit any more, or the piece grows where it should be straight.',
  needsReplay: true,
  wrong: {
    draft:
      '# Stitch cards\n\n## Net stitch pattern\n\nMultiple of 4 + 2.\n\nRow 1 (RS): K1, *k2tog, yo, k2; rep from * to last st, k1.\nRow 2: P1, *p2tog, p2; rep from * to last st, p1.\nRep Rows 1 and 2.\n',
  },
  right: {
    draft:
      '# Stitch cards\n\n## Net stitch pattern\n\nMultiple of 4 + 2.\n\nRow 1 (RS): K1, *k2tog, yo, k2; rep from * to last st, k1.\nRow 2: Purl.\nRep Rows 1 and 2.\n',
  },
  check: (context) =>
    rootsOf(context, 'notRestored')
      // A row that does not fit is the nearer cause.
      .filter(({ met }) => !rootsOf(context, 'multipleDiffers').some((other) => other.met.section === met.section))
      .map(({ met }) => {
        const n = (name: string): number => met.numbers[name]?.[0] ?? 0;
        return {
          rule: patternNotRestored.id,
          level: 'error' as const,
          span: met.span,
          section: sectionTitle(context, met.section),
          row: met.row,
          sizes: [],
          message: `After the last row there are ${aRepeat(n('perRepeat'), n('plus'))}, and the set began with ${aRepeat(n('multipleOf'), n('multiplePlus'))}: each repeat ${n('perRepeat') < n('multipleOf') ? 'loses' : 'gains'} ${Math.abs(n('perRepeat') - n('multipleOf'))} and the set cannot be repeated.`,
          stated: null,
          replayed: null,
          fix: null,
        };
      }),
};
