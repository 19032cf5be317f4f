import type { Sized } from '../grammar/count.ts';
import type { Segment } from '../grammar/tree.ts';
import { found } from './facts/blocks.ts';
import { roots } from './observed.ts';
import type { Finding, Rule } from './rule.ts';
import { inSizes } from './telling.ts';
import { statementsOf } from './tree-walk.ts';

const dash = (values: Sized, size: number): boolean => values.length > 1 && values[size] === null;
const number = (values: Sized, size: number): boolean => values.length > 1 && typeof values[size] === 'number' && values[size] !== 0;
const often = (segments: readonly Segment[]): Sized[] => segments.flatMap((segment) => (segment.n === null ? [] : [segment.n.values]));

export const dashInRow: Rule = {
  id: 'dash-in-row',
  level: 'query',
  title: 'A dash stands in every list of its sentence',
  meaning: 'A size has a dash in one list of an instruction and a number in another, or works a row whose count has a dash for it.',
  reason: 'The knitter of that size cannot tell whether the line is for her.',
  needsReplay: true,
  wrong: {
    draft:
      '# Bight Strip\n\n**Sizes:** S (M, L)\n\n**Finished width:** 30 (32, 34) cm\n\nCO 60 (64, 68) sts.\n\nKnit 2 rows.\n\nBO – (2, 3) sts at beg of next 2 (2, 2) rows. 60 (60, 62) sts.\n\nBO all sts.\n',
  },
  right: {
    draft:
      '# Bight Strip\n\n**Sizes:** S (M, L)\n\n**Finished width:** 30 (32, 34) cm\n\nCO 60 (64, 68) sts.\n\nKnit 2 rows.\n\nBO – (2, 3) sts at beg of next – (2, 2) rows. 60 (60, 62) sts.\n\nBO all sts.\n',
  },
  check: (context): readonly Finding[] => {
    const { pattern, replay } = context;
    const wrong = new Set(roots(context).map((root) => root.met.node));
    const sizes = pattern.sizes.map((_, size) => size);
    return statementsOf(pattern).flatMap(({ statement, block }): Finding[] => {
      if (wrong.has(statement) || block !== null) return [];
      const say = (span: Finding['span'], off: readonly number[], words: string): Finding[] =>
        off.length === 0
          ? []
          : [
              found(
                context,
                dashInRow,
                span,
                `${inSizes(context, off)}${words}`.replace(/^./, (letter) => letter.toUpperCase()),
                { sizes: off },
              ),
            ];
      if (statement.type === 'edgeRows') {
        return statement.parts.flatMap((part) => {
          const lists = [part.count.values, ...often(part.rows)];
          return say(
            part.span,
            sizes.filter((size) => lists.some((list) => dash(list, size)) && lists.some((list) => number(list, size))),
            'one list of this instruction has a dash and another a number. Is it worked or not?',
          );
        });
      }
      if (statement.type === 'shape') {
        const lists = [statement.count.values, ...often(statement.schedule)];
        // A schedule in several parts may leave one of them out in a size.
        if (lists.length !== 2) return [];
        return say(
          statement.span,
          sizes.filter((size) => lists.some((list) => dash(list, size)) && lists.some((list) => number(list, size))),
          'one list of this instruction has a dash and another a number. Is it worked or not?',
        );
      }
      if (statement.type !== 'row') return [];
      const total = statement.stated.find((each) => each.what === 'total' && each.scope === null);
      if (total === undefined || !sizes.some((size) => dash(total.count.values, size))) return [];
      const entry = replay.entries.find((each) => each.textSpan.start === statement.span.start);
      return say(
        total.count.span,
        sizes.filter((size) => dash(total.count.values, size) && entry !== undefined && (entry.takes[size] ?? 0) > 0),
        'the row is worked, and the count has a dash. Which is right?',
      );
    });
  },
};
