import { unbalancedBefore } from './lace-balance.ts';
import { findingOf, type Root, rootsOf, telling } from './observed.ts';
import type { Context, Finding, Rule } from './rule.ts';
import { counted, excerpt, perSize } from './telling.ts';

/** The counts on either side of the one there is that the row would fit. */
function nearest(context: Context, root: Root): string {
  const { met } = root;
  const { before, over, takes } = met.numbers;
  if (before === undefined || over === undefined || takes === undefined) return '';
  const below = met.sizes.map((_, at) => minus(before[at], over[at]));
  const above = below.map((value, at) => (value === null ? null : value + (takes[at] ?? 0)));
  if (below.includes(null)) return '';
  return ` It would fit ${perSize(context, met.sizes, below)} sts, or ${perSize(context, met.sizes, above)}.`;
}

const minus = (a: number | null | undefined, b: number | null | undefined): number | null =>
  a === null || a === undefined || b === null || b === undefined ? null : a - b;

function message(context: Context, root: Root): string {
  const { met } = root;
  const { head, n, one } = telling(context, met);
  const words = excerpt(context, met.span);
  if (met.kind === 'noProgress' && met.words['place'] === 'turn')
    return met.words['other'] === 'fits'
      ? `${head}the work turns here at the place where it turned before, unless the last stitches are counted from that turn. Is “before the last turn” meant?`
      : `${head}the work turns here at the place where it turned before, so these rows shape nothing. Check the number of stitches before the turn.`;
  if (met.kind === 'noProgress' || one('takes') === 0) return `${head}${words} never comes to an end: one repeat uses up no stitch.`;
  if (met.numbers['over'] === undefined || met.numbers['room'] === undefined) {
    const each = met.numbers['takes'] === undefined ? '' : ` of ${counted(n('takes'))}`;
    return `${head}the repeat ${words}${each} does not come out: ${counted(n('left'))} ${n('left') === '1' ? 'is' : 'are'} left where ${n('wanted')} should be.`;
  }
  return `${head}the repeat ${words} takes ${counted(n('takes'))} each time, and ${n('room')} ${n('room') === '1' ? 'is' : 'are'} there for it: ${counted(n('over'))} left over. The row begins with ${counted(n('before'))}.${nearest(context, root)}`;
}

function say(context: Context, root: Root): Finding {
  const odd = unbalancedBefore(context, root.met.section, root.met.span.start);
  const cause =
    odd === null
      ? []
      : [
          `${odd.label} ${odd.net < 0 ? 'loses' : 'gains'} ${counted(Math.abs(odd.net))} in each repeat, which no other row of the set does: look there first.`,
        ];
  return findingOf(context, root, {
    rule: repeatDoesNotFit.id,
    level: root.met.words['other'] === 'fits' ? 'query' : 'error',
    message: message(context, root),
    tryEdits: true,
    evidence: [...cause, ...root.met.evidence],
  });
}

export const repeatDoesNotFit: Rule = {
  id: 'repeat-does-not-fit',
  level: 'error',
  title: 'A repeat goes into the stitches there are',
  meaning: 'Repeated until the place it should stop at, the repeat is cut short: the stitches there are no multiple of what it takes.',
  reason: 'The last repeat cannot be finished, and the pattern no longer lines up.',
  needsReplay: true,
  wrong: { draft: '# Rope Coaster\n\nCO 30 sts.\n\nRow 1 (RS): *K2, p2; rep from * to end.\nRow 2: Knit.\n\nBO all sts.\n' },
  right: { draft: '# Rope Coaster\n\nCO 32 sts.\n\nRow 1 (RS): *K2, p2; rep from * to end.\nRow 2: Knit.\n\nBO all sts.\n' },
  check: (context) => rootsOf(context, 'repeatDoesNotFit', 'noProgress').map((root) => say(context, root)),
};
