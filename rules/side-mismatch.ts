import { findingOf, type Root, rootsOf, telling } from './observed.ts';
import { unreadBefore } from './reading.ts';
import type { Context, Finding, Rule } from './rule.ts';

function say(context: Context, root: Root): Finding {
  const { met, follows } = root;
  const { head } = telling(context, met);
  const { stated, replayed } = met.words;
  const before = context.replay.entries
    .filter(
      (entry) =>
        entry.node !== met.node &&
        entry.span.start < met.span.start &&
        entry.section === met.section &&
        entry.side !== null &&
        entry.unit === 'row',
    )
    .at(-1);
  const from = before === undefined ? '' : `: the row before it (${before.label}) was worked with the ${before.side} facing`;
  const next =
    follows.length > 0
      ? ' The labels after it fit the work, so this one is the likely slip.'
      : ' A row is missing or one too many before it, or the label is wrong.';
  return findingOf(context, root, {
    rule: sideMismatch.id,
    level: unreadBefore(context, met) ? 'query' : 'error',
    message: `${head}${met.row ?? 'the row'} is labelled ${stated}, but the ${replayed} faces${from}.${next}`,
  });
}

export const sideMismatch: Rule = {
  id: 'side-mismatch',
  level: 'error',
  title: 'RS and WS on a label are the side that faces',
  meaning: 'Counting the turns, the other side faces in this row.',
  reason: 'A pattern row worked on the wrong side shows on the back, and every row after it is out by one.',
  needsReplay: true,
  wrong: {
    draft:
      '# Ferry Strip\n\nCO 20 sts.\n\nRow 1 (RS): Knit.\nRow 2: Purl.\nRow 3: Knit.\nNext row (RS): K2, *yo, k2tog; rep from * to end.\n\nBO all sts.\n',
  },
  right: {
    draft:
      '# Ferry Strip\n\nCO 20 sts.\n\nRow 1 (RS): Knit.\nRow 2: Purl.\nNext row (RS): K2, *yo, k2tog; rep from * to end.\n\nBO all sts.\n',
  },
  check: (context) => rootsOf(context, 'sideDiffers').map((root) => say(context, root)),
};
