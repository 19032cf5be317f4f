import { findingOf, type Root, rootsOf, telling } from './observed.ts';
import type { Context, Finding, Rule } from './rule.ts';
import { counted, perSize } from './telling.ts';

function message(context: Context, root: Root): string {
  const { met } = root;
  const { head, n, one } = telling(context, met);
  const step = one('step');
  // "Until there are 15 sts between the markers": the stitches of that part, not those on the needle.
  const of = met.words['between'] === undefined ? 'the count' : 'the number between the markers';
  if (step === null || step === 0)
    return `${head}${counted(n('target'))} ${one('target') === 1 ? 'is' : 'are'} never reached: ${of} is ${n('live')} and does not come to that number.`;
  const way = step > 0 ? 'more' : 'fewer';
  if (met.kind === 'targetPassed')
    return `${head}${of} is ${n('live')} and gets ${way}, so ${n('target')} ${one('target') === 1 ? 'is' : 'are'} never reached.`;
  const size = Math.abs(step);
  const near = met.sizes.map((_, at) => {
    const live = met.numbers['live']?.[at] ?? 0;
    const target = met.numbers['target']?.[at] ?? 0;
    return live + Math.floor((target - live) / step) * step;
  });
  const list = perSize(context, met.sizes, near);
  const next = perSize(
    context,
    met.sizes,
    near.map((value) => value + step),
  );
  return `${head}from ${n('live')}, ${size} ${way} each time, ${of} comes to ${list} and then ${next}, never to ${n('target')}.`;
}

function say(context: Context, root: Root): Finding {
  return findingOf(context, root, {
    rule: targetMissed.id,
    level: telling(context, root.met).one('step') === null ? 'query' : 'error',
    message: `${message(context, root)} Check the number to be reached, or the count before it.`,
    evidence: root.met.evidence,
  });
}

export const targetMissed: Rule = {
  id: 'target-missed',
  level: 'error',
  title: 'Shaping “until” a count can end on that count',
  meaning: 'Increasing or decreasing by the same number each time, the count jumps over the one that is named, or moves away from it.',
  reason: 'The knitter shapes on for ever, or stops with another number and does not meet the next piece.',
  needsReplay: true,
  wrong: {
    draft:
      '# Kite Cap\n\nCO 40 sts.\n\nRow 1 (RS): K2tog, k to last 2 sts, ssk.\nRow 2: Purl.\nRep Rows 1 and 2 until 21 sts rem.\n\nBO all sts.\n',
  },
  right: {
    draft:
      '# Kite Cap\n\nCO 40 sts.\n\nRow 1 (RS): K2tog, k to last 2 sts, ssk.\nRow 2: Purl.\nRep Rows 1 and 2 until 22 sts rem.\n\nBO all sts.\n',
  },
  check: (context) => rootsOf(context, 'targetMissed', 'targetPassed').map((root) => say(context, root)),
};
