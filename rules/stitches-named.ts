import { findingOf, type Root, rootsOf, telling } from './observed.ts';
import type { Context, Finding, Rule } from './rule.ts';
import { counted } from './telling.ts';

const acts: Readonly<Record<string, string>> = { bindOff: 'to be bound off', hold: 'to be put on hold', thread: 'to be drawn together' };

function say(context: Context, root: Root): Finding {
  const { met } = root;
  const { head, n, one } = telling(context, met);
  if (met.words['what'] === 'set')
    return findingOf(context, root, {
      rule: stitchesNamed.id,
      level: 'error',
      message: `${head}the instruction speaks of ${counted(n('stated'))}, but the bind-off of the row before leaves ${n('replayed')} on that side. One of the two is wrong.`,
      evidence: met.evidence,
    });
  const act = acts[met.words['what'] ?? ''] ?? 'to be worked';
  return findingOf(context, root, {
    rule: stitchesNamed.id,
    level: 'error',
    message: `${head}${counted(n('stated'))} ${one('stated') === 1 ? 'is' : 'are'} said ${act} here, but ${n('replayed')} ${one('replayed') === 1 ? 'is' : 'are'} on the needle. One of the two is wrong, or a row before it is.`,
    evidence: met.evidence,
  });
}

export const stitchesNamed: Rule = {
  id: 'stitches-named',
  level: 'error',
  title: 'The stitches an instruction speaks of are the stitches there are',
  meaning: '“Knit across all 62 sts” or “bind off rem 20 sts” names a number that is not on the needle.',
  reason: 'The knitter looks for stitches she has lost, or wonders what to do with those left over.',
  needsReplay: true,
  wrong: { draft: '# Wick Mat\n\nCO 20 sts.\n\nRow 1 (RS): Knit.\nRow 2: Purl.\n\nBO all 22 sts.\n' },
  right: { draft: '# Wick Mat\n\nCO 20 sts.\n\nRow 1 (RS): Knit.\nRow 2: Purl.\n\nBO all 20 sts.\n' },
  check: (context) =>
    rootsOf(context, 'countDiffers')
      .filter((root) => root.met.words['when'] === 'before')
      .map((root) => say(context, root)),
};
