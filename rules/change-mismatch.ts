import { findingOf, type Root, rootsOf, telling } from './observed.ts';
import type { Context, Finding, Rule } from './rule.ts';
import { counted } from './telling.ts';

function did(context: Context, root: Root): string {
  const { n } = telling(context, root.met);
  const changes = root.met.numbers['change'] ?? [];
  if (changes.every((change) => change === 0)) return 'keeps the count';
  if (changes.every((change) => change !== null && change > 0)) return `adds ${counted(n('replayed'))}`;
  if (changes.every((change) => change !== null && change < 0)) return `takes away ${counted(n('replayed'))}`;
  return `changes the count by ${n('change')}`;
}

function say(context: Context, root: Root): Finding {
  const { met } = root;
  const { head, n } = telling(context, met);
  const word = met.words['what'] === 'increased' ? 'increased' : 'decreased';
  return findingOf(context, root, {
    rule: changeMismatch.id,
    level: 'error',
    message: `${head}${met.row ?? 'this'} ${did(context, root)} (${n('before')} before, ${n('after')} after), but says ${counted(n('stated'))} ${word}.`,
    tryEdits: true,
    evidence: met.evidence,
  });
}

export const changeMismatch: Rule = {
  id: 'change-mismatch',
  level: 'error',
  title: 'A row adds or takes away as many stitches as it says',
  meaning: 'The row carries a note such as “(2 sts dec’d)” and does something else.',
  reason: 'Such rows are repeated; one stitch too few each time is a piece that does not meet its neighbour.',
  needsReplay: true,
  wrong: { draft: '# Brim Sampler\n\nCO 30 sts.\n\nRow 1 (RS): K1, m1, k to end (2 sts inc’d).\nRow 2: Purl.\n\nBO all sts.\n' },
  right: {
    draft: '# Brim Sampler\n\nCO 30 sts.\n\nRow 1 (RS): K1, m1, k to last st, m1, k1 (2 sts inc’d).\nRow 2: Purl.\n\nBO all sts.\n',
  },
  check: (context) => rootsOf(context, 'changeDiffers').map((root) => say(context, root)),
};
