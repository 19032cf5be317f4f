import { findingOf, type Root, rootsOf, telling } from './observed.ts';
import type { Context, Finding, Rule } from './rule.ts';
import { counted } from './telling.ts';

function say(context: Context, root: Root): Finding {
  const { met } = root;
  const { head, n } = telling(context, met);
  const where = met.words['needle'] ? `on ${met.words['needle']}` : 'at the end of the row';
  const sum = met.numbers['before'] === undefined ? '' : `: ${n('before')} on the needle, ${n('taken')} worked`;
  return findingOf(context, root, {
    rule: stitchesLeftOver.id,
    level: 'error',
    message: `${head}${counted(n('left'))} ${n('left') === '1' ? 'is' : 'are'} left unworked ${where}${sum}. A step is missing, or a number in the row is too small.`,
    tryEdits: true,
    evidence: met.evidence,
  });
}

export const stitchesLeftOver: Rule = {
  id: 'stitches-left-over',
  level: 'error',
  title: 'A row works every stitch there is',
  meaning: 'The words of the row end while stitches are still on the left needle, and no turn is told.',
  reason: 'The knitter does not know what to do with them.',
  needsReplay: true,
  wrong: { draft: '# Tide Belt\n\nCO 20 sts.\n\nRow 1 (RS): K5, p8, k5.\nRow 2: Knit.\n\nBO all sts.\n' },
  right: { draft: '# Tide Belt\n\nCO 20 sts.\n\nRow 1 (RS): K5, p10, k5.\nRow 2: Knit.\n\nBO all sts.\n' },
  check: (context) => rootsOf(context, 'leftOver').map((root) => say(context, root)),
};
