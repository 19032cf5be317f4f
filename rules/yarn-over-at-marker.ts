import type { Step } from '../grammar/tree.ts';
import { labelOf } from './labels.ts';
import type { Finding, Rule } from './rule.ts';
import { excerpt, sectionTitle } from './telling.ts';
import { rowsOf } from './tree-walk.ts';
import { yarnOvers } from './use.ts';

const toMarker = (step: Step | undefined): boolean =>
  step?.type === 'repeat' &&
  step.form === 'run' &&
  step.extent?.kind === 'place' &&
  step.extent.place === 'marker' &&
  step.extent.side !== 'past' &&
  step.extent.n === null;

/** Lists of steps that are worked one behind the other: the row, and the inside of every repeat. */
function lists(steps: readonly Step[]): (readonly Step[])[] {
  const plain = steps.filter((step) => step.type !== 'remark' && step.type !== 'stated' && step.type !== 'resolve');
  return [plain, ...plain.flatMap((step) => (step.type === 'repeat' && step.form !== 'run' ? lists(step.children) : []))];
}

export const yarnOverAtMarker: Rule = {
  id: 'yarn-over-at-marker',
  level: 'query',
  title: 'A yarn over at a marker says on which side of it',
  meaning:
    'The row works to a marker, then makes a yarn over and goes on; the words do not say whether the marker is slipped before or after it.',
  reason:
    'The loop lies between the marker and its neighbour and slips from one side to the other; one knitter in two counts it into the wrong part.',
  needsReplay: false,
  wrong: {
    draft:
      '# Skua Wedge\n\nCO 21 sts.\n\nRow 1 (RS): K10, pm, k11.\n\nRow 2: Purl.\n\nRow 3: K to m, yo, k1, yo, k to end. 23 sts.\n\nRow 4: Purl.\n\nBO all sts.\n',
  },
  right: {
    draft:
      '# Skua Wedge\n\nCO 21 sts.\n\nRow 1 (RS): K10, pm, k11.\n\nRow 2: Purl.\n\nRow 3: K to m, yo, sm, k1, yo, k to end. 23 sts.\n\nRow 4: Purl.\n\nBO all sts.\n',
  },
  check: ({ pattern, ...context }): readonly Finding[] =>
    rowsOf(pattern).flatMap(({ row, section }) =>
      lists(row.children).flatMap((list) =>
        list.flatMap((step, at): Finding[] => {
          const [loop, next] = [list[at + 1], list[at + 2]];
          if (!toMarker(step) || loop === undefined || yarnOvers(pattern, loop) === 0) return [];
          // Told by the next word; at the end of a repeat the next pass begins with it.
          if (next?.type === 'marker' || (next === undefined && list[0]?.type === 'marker')) return [];
          return [
            {
              rule: yarnOverAtMarker.id,
              level: 'query',
              span: loop.span,
              section: sectionTitle({ pattern, ...context }, section),
              row: labelOf(row),
              sizes: [],
              message: `After ${excerpt({ pattern, ...context }, step.span)} comes a yarn over, and the row goes on past the marker without a word. On which side of the marker does the loop lie: “yo, sm” or “sm, yo”?`,
              stated: null,
              replayed: null,
              fix: null,
            },
          ];
        }),
      ),
    ),
};
