import { countFix } from './count-fix.ts';
import { findingOf, type Root, rootsOf, telling } from './observed.ts';
import type { Context, Finding, Rule } from './rule.ts';
import { counted } from './telling.ts';

/** A count that is out by more than a third in every size is rather a question of how the words are meant. */
function farOff(met: Root['met']): boolean {
  return met.sizes.every((_, at) => {
    const stated = met.numbers['stated']?.[at] ?? 0;
    const replayed = met.numbers['replayed']?.[at] ?? 0;
    return Math.abs(stated - replayed) > Math.max(8, stated / 3);
  });
}

function say(context: Context, root: Root): Finding {
  const { met } = root;
  const { head, n, one } = telling(context, met);
  const { fault } = met.words;
  const before = one('before') === 0 || met.numbers['before'] === undefined || n('before') === n('replayed') ? '' : ` from ${n('before')}`;
  const made =
    met.row === null
      ? `${before === '' ? 'there are' : 'this comes to'} ${counted(n('replayed'))}${before === '' ? ' on the needle' : before}`
      : `${met.row} makes ${counted(n('replayed'))}${before}`;
  const sum = `${head}${made}, but ${n('stated')} ${one('stated') === 1 ? 'is' : 'are'} stated.`;
  const verdict =
    fault === 'stated'
      ? ' What follows fits the count as worked, so the stated count is the likely slip.'
      : fault === 'row'
        ? ' What follows fits the stated count, so look for the slip in the instruction, or before it.'
        : ' Nothing that follows decides which of the two is right.';
  const finding = findingOf(context, root, {
    rule: countMismatch.id,
    level: farOff(met) ? 'query' : 'error',
    message: sum + verdict,
    fix: fault === 'stated' ? countFix(context, met) : null,
    tryEdits: fault !== 'stated',
    evidence: met.evidence.length > 1 ? [`${met.evidence[0] ?? ''} Likewise in the other sizes.`] : met.evidence,
  });
  return fault === 'stated' || fault === 'row' ? finding : withStated(context, met, finding);
}

/** Where nothing decides between the two, the count as worked is offered as well as what the row might read. */
function withStated(context: Context, met: Root['met'], finding: Finding): Finding {
  const edit = countFix(context, met);
  if (edit === null) return finding;
  const was = context.manuscript.source.slice(edit.span.start, edit.span.end);
  const { fix: _fix, ...rest } = finding;
  return {
    ...rest,
    fix: null,
    wouldFit: [`state ${edit.text} instead of ${was}`, ...(finding.wouldFit ?? []).slice(0, 2)],
    edits: [edit, ...(finding.edits ?? []).slice(0, 2)],
  };
}

export const countMismatch: Rule = {
  id: 'count-mismatch',
  level: 'error',
  title: 'A stated count is the count the row makes',
  meaning: 'Worked as written, the row or instruction leaves another number of stitches on the needles than the draft says.',
  reason: 'A knitter who counts stops here, and cannot tell whether she or the pattern is wrong.',
  needsReplay: true,
  wrong: {
    draft:
      '# Skerry Band\n\nCO 40 sts.\n\nRow 1 (RS): K1, m1, k to last st, m1, k1. 44 sts.\nRow 2: Purl.\nRow 3: K2, *p2, k2; rep from * to end.\nRow 4: P42.\n\nBO all sts.\n',
  },
  right: {
    draft:
      '# Skerry Band\n\nCO 40 sts.\n\nRow 1 (RS): K1, m1, k to last st, m1, k1. 42 sts.\nRow 2: Purl.\nRow 3: K2, *p2, k2; rep from * to end.\nRow 4: P42.\n\nBO all sts.\n',
  },
  check: (context) =>
    rootsOf(context, 'countDiffers')
      .filter((root) => root.met.words['when'] !== 'before')
      .map((root) => say(context, root)),
};
