import { found } from './facts/blocks.ts';
import { findingOf, type Root, roots, rootsOf } from './observed.ts';
import type { Context, Finding, Rule } from './rule.ts';
import { excerpt, inSizes } from './telling.ts';
import { rowsOf, stepsOf } from './tree-walk.ts';

/** The sizes that work the row something was met in. */
function working(context: Context, root: Root): readonly number[] {
  const { node } = root.met;
  const entry = context.replay.entries.find((each) => node !== null && each.textSpan.start === node.span.start);
  return context.pattern.sizes.map((_, size) => size).filter((size) => entry === undefined || entry.after[size] !== null);
}

function say(context: Context, root: Root): Finding {
  const { met } = root;
  const every = working(context, root).every((size) => met.sizes.includes(size));
  const head = every ? '' : inSizes(context, met.sizes);
  const what = excerpt(context, met.span);
  if (met.kind === 'nothingToWork')
    return findingOf(context, root, {
      rule: nothingToWork.id,
      level: 'query',
      message: `${head}no stitch is left for ${what}: the stitches before it are all there are. Is a number, or the place of a marker, wrong?`,
    });
  return findingOf(context, root, {
    rule: nothingToWork.id,
    level: every ? 'error' : 'query',
    message: `${head}no stitch is left for ${what}, so it is not worked at all${every ? '' : '. Is that meant in this size?'}${every ? ': the steps around it take up every stitch.' : ''}`,
  });
}

/** "K0" in a draft of one size, or in all sizes alike. */
function zeros(context: Context, wrong: ReadonlySet<unknown>): Finding[] {
  return rowsOf(context.pattern).flatMap(({ row }) =>
    stepsOf(row.children).flatMap((step): Finding[] =>
      !wrong.has(row) && step.type === 'work' && step.n !== null && step.n.values.length === 1 && step.n.values[0] === 0
        ? [found(context, nothingToWork, step.span, `${excerpt(context, step.span)} works no stitch, in any size. Which number is meant?`)]
        : [],
    ),
  );
}

export const nothingToWork: Rule = {
  id: 'nothing-to-work',
  level: 'query',
  title: 'A run or a repeat has stitches to work',
  meaning: 'The row goes on “to end”, or repeats a group, where no stitch is left for it.',
  reason: 'Nobody writes a repeat that is worked no times: a number, or the place of a marker, is not what was meant.',
  needsReplay: true,
  wrong: {
    draft:
      '# Skiff Band\n\nCO 24 sts. Join to work in the round.\n\nRnd 1: Knit.\n\nRnd 2: K12, pm, k to m, k to end.\n\nRnd 3: Knit.\n\nBO all sts.\n',
  },
  right: {
    draft:
      '# Skiff Band\n\nCO 24 sts. Join to work in the round.\n\nRnd 1: Knit.\n\nRnd 2: K12, pm, k to end.\n\nRnd 3: K to m, sm, k to end.\n\nBO all sts.\n',
  },
  check: (context): readonly Finding[] => {
    const heavier = new Set(
      roots(context).flatMap((root) => (root.met.kind === 'repeatNotWorked' || root.met.kind === 'nothingToWork' ? [] : [root.met.node])),
    );
    return [
      ...zeros(context, heavier),
      ...rootsOf(context, 'nothingToWork', 'repeatNotWorked')
        .filter((root) => root.met.certain && !heavier.has(root.met.node))
        .filter((root) => root.met.kind === 'repeatNotWorked' || working(context, root).every((size) => root.met.sizes.includes(size)))
        .map((root) => say(context, root)),
    ];
  },
};
