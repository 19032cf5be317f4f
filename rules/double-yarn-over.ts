import { labelOf } from './labels.ts';
import type { Finding, Rule } from './rule.ts';
import { excerpt, sectionTitle } from './telling.ts';
import { rowsOf, stepsOf } from './tree-walk.ts';
import { yarnOvers } from './use.ts';
import { plainRow, rowAfter, saysHow } from './yarn-over-notes.ts';

export const doubleYarnOver: Rule = {
  id: 'double-yarn-over',
  level: 'query',
  title: 'It is said how the two loops of a double yarn over are worked',
  meaning:
    'A row makes a double yarn over, the next row is plain, and nothing says whether its two loops are two stitches or one is dropped.',
  reason: 'Two purl stitches in a row into one long loop do not hold; a knitter works them in one way or another, and her count differs.',
  needsReplay: false,
  wrong: {
    draft:
      '# Net Scarf\n\nCO 24 sts.\n\nRow 1 (RS): K2, *k2tog, yo twice, ssk; rep from * to last 2 sts, k2.\n\nRow 2: Purl.\n\nBO all sts.\n',
  },
  right: {
    draft:
      '# Net Scarf\n\nCO 24 sts.\n\nRow 1 (RS): K2, *k2tog, yo twice, ssk; rep from * to last 2 sts, k2.\n\nRow 2: Purl, working (p1, k1) into each double yo.\n\nBO all sts.\n',
  },
  check: (context): readonly Finding[] => {
    if (saysHow(context)) return [];
    return rowsOf(context.pattern).flatMap(({ row, section }): Finding[] => {
      const double = stepsOf(row.children).find(
        (step) => yarnOvers(context.pattern, step) >= 2 && !context.manuscript.source.slice(step.span.start, step.span.end).includes(','),
      );
      const next = double === undefined ? null : rowAfter(context, row);
      if (double === undefined || next === null || !plainRow(next)) return [];
      return [
        {
          rule: doubleYarnOver.id,
          level: 'query',
          span: double.span,
          section: sectionTitle(context, section),
          row: labelOf(row),
          sizes: [],
          message: `${excerpt(context, double.span)} makes two loops side by side, and the next row only says ${excerpt(context, next.children[0]?.span ?? next.span)}. Are both worked, one knitwise and one purlwise, or is one dropped?`,
          stated: null,
          replayed: null,
          fix: null,
        },
      ];
    });
  },
};
