import { findingOf, rootsOf, telling } from './observed.ts';
import type { Rule } from './rule.ts';
import { counted } from './telling.ts';

export const unworkedStitches: Rule = {
  id: 'unworked-stitches',
  level: 'error',
  title: 'A turn leaves as many stitches unworked as it says',
  meaning: '“Turn, leaving 5 sts unworked”, or “3 unworked sts remain”, and another number lies beyond the turn.',
  reason: 'Either the turn is at the wrong place or the note is wrong; the next row is measured from it.',
  needsReplay: true,
  wrong: {
    draft: '# Sand Wedge\n\nCO 30 sts.\n\nRow 1 (RS): K24, turn, leaving 5 sts unworked.\nRow 2: P24.\nRow 3: Knit.\n\nBO all sts.\n',
  },
  right: {
    draft: '# Sand Wedge\n\nCO 30 sts.\n\nRow 1 (RS): K24, turn, leaving 6 sts unworked.\nRow 2: P24.\nRow 3: Knit.\n\nBO all sts.\n',
  },
  check: (context) =>
    rootsOf(context, 'leftDiffers').map((root) => {
      const { head, n } = telling(context, root.met);
      if (root.met.words['what'] === 'worked') {
        return findingOf(context, root, {
          rule: unworkedStitches.id,
          level: 'error',
          message: `${head}the last of these rows works ${counted(n('replayed'))} before the turn, but ${n('stated')} ${n('stated') === '1' ? 'is' : 'are'} stated.`,
        });
      }
      return findingOf(context, root, {
        rule: unworkedStitches.id,
        level: 'error',
        message: `${head}${counted(n('replayed'))} ${n('replayed') === '1' ? 'lies' : 'lie'} beyond the turn, but ${n('stated')} ${n('stated') === '1' ? 'is' : 'are'} stated.`,
      });
    }),
};
