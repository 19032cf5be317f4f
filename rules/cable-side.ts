import { workingsOf } from './facts/workings.ts';
import { labelOf } from './labels.ts';
import type { Finding, Rule } from './rule.ts';
import { sectionTitle } from './telling.ts';
import { rowsOf, stepsOf } from './tree-walk.ts';
import { entryOf } from './use.ts';

export const cableSide: Rule = {
  id: 'cable-side',
  level: 'query',
  title: 'Crossings come on the same side',
  meaning: 'All cables of the piece are crossed with the right side facing, except this one.',
  reason: 'Mostly a row has been left out or put in before it; crossed on the wrong side, front and back change places.',
  needsReplay: true,
  wrong: {
    draft:
      '# Bight Strip\n\nCO 8 sts.\n\nRow 1 (RS): P2, C4F, p2.\n\nRow 2: K2, p4, k2.\n\nRow 3: P2, C4F, p2.\n\nRow 4: K2, p4, k2.\n\nRow 5: P2, k4, p2.\n\nRow 6: K2, C4F, k2.\n\nRow 7: P2, k4, p2.\n\nBO all sts.\n',
  },
  right: {
    draft:
      '# Bight Strip\n\nCO 8 sts.\n\nRow 1 (RS): P2, C4F, p2.\n\nRow 2: K2, p4, k2.\n\nRow 3: P2, C4F, p2.\n\nRow 4: K2, p4, k2.\n\nRow 5: P2, C4F, p2.\n\nRow 6: K2, p4, k2.\n\nBO all sts.\n',
  },
  check: (context): readonly Finding[] => {
    const { pattern, replay } = context;
    const crossing = rowsOf(pattern).flatMap(({ row, section }) => {
      const cable = stepsOf(row.children).find((step) => step.type === 'work' && entryOf(pattern, step)?.kind === 'cable');
      if (cable === undefined) return [];
      const sides = new Set(
        workingsOf(replay, row.span.start)
          .filter((entry) => entry.side !== null && entry.unit === 'row')
          .map((entry) => entry.side),
      );
      return sides.size !== 1 ? [] : [{ row, section, cable, side: [...sides][0] }];
    });
    const wrong = crossing.filter((each) => each.side === 'WS');
    if (wrong.length === 0 || crossing.length - wrong.length < 2 * wrong.length) return [];
    return wrong.map(({ row, section, cable }) => ({
      rule: cableSide.id,
      level: 'query',
      span: cable.span,
      section: sectionTitle(context, section),
      row: labelOf(row),
      sizes: [],
      message: `This crossing comes with the wrong side facing; the other ${crossing.length - wrong.length} rows with crossings are right-side rows. Is a row missing before it, or one too many?`,
      stated: null,
      replayed: null,
      fix: null,
    }));
  },
};
