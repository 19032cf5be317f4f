import { findingOf, rootsOf, telling } from './observed.ts';
import type { Rule } from './rule.ts';

const names: Readonly<Record<string, readonly [one: string, more: string]>> = {
  wrap: ['wrapped stitch', 'wrapped stitches'],
  double: ['double stitch', 'double stitches'],
  twin: ['twin stitch', 'twin stitches'],
  pin: ['pinned stitch', 'pinned stitches'],
  yarnOver: ['yarn over of a turn', 'yarn overs of turns'],
};

export const turnsLeftOpen: Rule = {
  id: 'turns-left-open',
  level: 'query',
  title: 'Every turn of the short rows is worked again in the end',
  meaning: 'The piece ends, or another begins, with double stitches, wraps or loops of turns that no later row has worked across.',
  reason: 'The loops are counted as stitches, or a hole stays at every turn.',
  needsReplay: true,
  wrong: {
    draft:
      '# Spit Wedge\n\nMDS: make double stitch.\n\nCO 30 sts.\n\nRow 1 (RS): K20, turn.\n\nRow 2: MDS, p9, turn.\n\nRow 3: MDS, k to end.\n',
  },
  right: {
    draft:
      '# Spit Wedge\n\nMDS: make double stitch.\n\nCO 30 sts.\n\nRow 1 (RS): K20, turn.\n\nRow 2: MDS, p to end.\n\nRow 3: Knit, working each DS as one st.\n',
  },
  check: (context) =>
    rootsOf(context, 'loopsOpen').map((root) => {
      const { head, n, one } = telling(context, root.met);
      const method = root.met.words['method'] ?? '';
      const [single, several] = names[method] ?? ['turn', 'turns'];
      const what = one('open') === 1 ? single : several;
      // In garter stitch wraps are often left as they are.
      return findingOf(context, root, {
        rule: turnsLeftOpen.id,
        level: method === 'wrap' || method === 'pin' ? 'style' : 'query',
        message: `${head}${n('open')} ${what} ${one('open') === 1 ? 'is' : 'are'} still on the needle when the last of these rows is done, and no row works across ${one('open') === 1 ? 'it' : 'them'}. Is a closing row missing?`,
      });
    }),
};
