import { findingOf, type Root, rootsOf, telling } from './observed.ts';
import type { Context, Finding, Rule } from './rule.ts';
import { counted, excerpt } from './telling.ts';

const isAre = (n: string): string => (n === '1' ? 'is' : 'are');

function message(context: Context, root: Root): string {
  const { met } = root;
  const { head, n, one } = telling(context, met);
  const words = excerpt(context, met.span);
  const left = n('left');
  switch (met.words['place']) {
    case 'run': {
      const total = one('before');
      const wanted = one('wanted');
      const behind = total !== null && wanted !== null && (wanted > total || /before|past/.test(words));
      if (behind)
        return `${head}${words} cannot be worked: the place it speaks of lies behind the needles' tips by then, with ${counted(left)} still to work.`;
      return `${head}${words} would leave ${counted(n('wanted'))}, but only ${left} ${isAre(left)} there.`;
    }
    case 'repeat':
      return `${head}${words} needs ${counted(n('wanted'))} (${n('passes')} times ${n('takes')}), but only ${left} ${isAre(left)} left in the row.`;
    case 'wrap':
      return `${head}${words}: no stitch is left to wrap, all ${n('before')} are worked by then.`;
    case 'edge':
      return `${head}${words} takes ${counted(n('wanted'))} off in all, but only ${left} ${isAre(left)} there.`;
    case 'evenly':
      return `${head}${words}: so many decreases need ${counted(n('wanted'))} at least, and ${left} ${isAre(left)} there.`;
    default: {
      const had = met.numbers['before'] === undefined || n('before') === left ? '' : `, of ${n('before')} at the row's start`;
      return left === '0'
        ? `${head}${words} needs ${counted(n('wanted'))}, but none is left${had}.`
        : `${head}${words} needs ${counted(n('wanted'))}, but only ${left} ${isAre(left)} left${had}.`;
    }
  }
}

function say(context: Context, root: Root): Finding {
  return findingOf(context, root, {
    rule: tooFewStitches.id,
    level: 'error',
    message: `${message(context, root)} Check this number, or the count before the row.`,
    tryEdits: true,
    evidence: root.met.evidence,
  });
}

export const tooFewStitches: Rule = {
  id: 'too-few-stitches',
  level: 'error',
  title: 'No step asks for stitches that are not there',
  meaning: 'The left needle is empty, or holds fewer stitches than the step takes, before the row is done.',
  reason: 'The knitter cannot go on.',
  needsReplay: true,
  wrong: { draft: '# Keel Strap\n\nCO 12 sts.\n\nRow 1 (RS): K10, k2tog, k2.\nRow 2: Purl.\n\nBO all sts.\n' },
  right: { draft: '# Keel Strap\n\nCO 14 sts.\n\nRow 1 (RS): K10, k2tog, k2.\nRow 2: Purl.\n\nBO all sts.\n' },
  check: (context) => rootsOf(context, 'tooFew').map((root) => say(context, root)),
};
