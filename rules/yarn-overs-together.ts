import { labelOf } from './labels.ts';
import type { Finding, Rule } from './rule.ts';
import { excerpt, sectionTitle } from './telling.ts';
import { rowsOf, stepsOf } from './tree-walk.ts';
import { yarnOvers } from './use.ts';

export const yarnOversTogether: Rule = {
  id: 'yarn-overs-together',
  level: 'query',
  title: 'Two yarn overs meet only where a double yarn over is meant',
  meaning:
    'Two single yarn overs stand side by side in a row, or the last step of a repeat and its first are both yarn overs, so that they meet where two repeats do.',
  reason: 'Two loops side by side are one big hole, and the next row has to say how they are worked.',
  needsReplay: false,
  wrong: { draft: '# Spray Scarf\n\nCO 21 sts.\n\nRow 1 (RS): *Yo, k2, sk2p, k2, yo; rep from * to end.\n\nRow 2: Purl.\n\nBO all sts.\n' },
  right: {
    draft: '# Spray Scarf\n\nCO 24 sts.\n\nRow 1 (RS): *Yo, k2, sk2p, k2, yo, k1; rep from * to end.\n\nRow 2: Purl.\n\nBO all sts.\n',
  },
  check: (context): readonly Finding[] =>
    rowsOf(context.pattern).flatMap(({ row, section }): Finding[] => {
      const found: Finding[] = [];
      const add = (span: Finding['span'], message: string): void => {
        found.push({
          rule: yarnOversTogether.id,
          level: 'query',
          span,
          section: sectionTitle(context, section),
          row: labelOf(row),
          sizes: [],
          message,
          stated: null,
          replayed: null,
          fix: null,
        });
      };
      for (const step of stepsOf(row.children)) {
        const words = context.manuscript.source.slice(step.span.start, step.span.end);
        if (yarnOvers(context.pattern, step) >= 2 && words.includes(','))
          add(
            step.span,
            `${excerpt(context, step.span)}: two single yarn overs side by side. Is a double yarn over meant, or is a stitch missing between them?`,
          );
        if (step.type !== 'repeat' || step.form === 'run' || step.ending !== null || step.once.length > 0) continue;
        const inside = step.children.filter((each) => each.type !== 'remark');
        if (inside.length < 3 || step.extent === null) continue;
        const [first] = inside;
        const last = inside.at(-1);
        if (first !== undefined && last !== undefined && yarnOvers(context.pattern, first) > 0 && yarnOvers(context.pattern, last) > 0) {
          add(
            step.span,
            `${excerpt(context, step.span)} begins and ends with a yarn over, so two meet wherever one repeat follows another. Is that meant? Then the next row must say how both are worked; else one of them belongs outside the repeat.`,
          );
        }
      }
      return found;
    }),
};
