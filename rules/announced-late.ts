import type { Statement } from '../grammar/tree.ts';
import { found } from './facts/blocks.ts';
import { figure, inSizes } from './facts/wording.ts';
import type { Finding, Rule } from './rule.ts';

/** The length a statement works to; null for any other. */
function lengthOf(
  statement: Statement,
): { readonly of: string; readonly from: string; readonly values: readonly (number | null)[]; readonly unit: string } | null {
  const goal = statement.type === 'until' ? statement.goal : statement.type === 'repeatRows' ? statement.until : null;
  if (goal?.kind !== 'measure' || goal.shorter === true) return null;
  return { of: part(goal.of), from: part(goal.from), values: goal.values, unit: goal.unit };
}

const part = (words: string | null): string =>
  (words ?? '')
    .toLowerCase()
    .replace(/\b(?:the|your|this|it|work|piece|knitting)\b/g, '')
    .trim();

const at = (values: readonly (number | null)[], size: number): number | null => (values.length === 1 ? values[0] : values[size]) ?? null;

export const announcedLate: Rule = {
  id: 'announced-late',
  level: 'query',
  title: '“At the same time” comes before the place where it begins',
  meaning: 'A second shaping begins at a length that the piece has already passed when the text speaks of it.',
  reason: 'The knitter has to rip back to a row nobody had told her of.',
  needsReplay: false,
  wrong: {
    draft:
      '# Tide Vest\n\n## Back\n\nCast on 80 sts.\n\nKnit 2 rows.\n\nWork straight until piece measures 18 cm.\n\nAT THE SAME TIME, when piece measures 12 cm, dec 1 st at each end of next row. 78 sts.\n\nCast off.\n',
  },
  right: {
    draft:
      '# Tide Vest\n\nAll decreases are k2tog.\n\n## Back\n\nCast on 80 sts.\n\nKnit 2 rows.\n\nWork straight until piece measures 12 cm.\n\nDec 1 st at each end of next row. 78 sts.\n\nCast off.\n',
  },
  check: ({ pattern, ...rest }): readonly Finding[] => {
    const context = { pattern, ...rest };
    return pattern.sections.flatMap((section) =>
      section.statements.flatMap((statement, index): Finding[] => {
        if (statement.type !== 'atSameTime' || statement.when?.kind !== 'measure') return [];
        const { when } = statement;
        const reached = section.statements
          .slice(0, index)
          .map(lengthOf)
          .findLast((each) => each !== null && each.of === part(when.of) && each.from === part(when.from) && each.unit === when.unit);
        if (reached === undefined || reached === null) return [];
        const late = pattern.sizes.flatMap((_, size) => {
          const [begins, done] = [at(when.values, size), at(reached.values, size)];
          return begins !== null && done !== null && begins < done ? [{ size, begins, done }] : [];
        });
        const [first] = late;
        if (first === undefined) return [];
        const sizes = late.map((each) => each.size);
        const who = inSizes(pattern.sizes, sizes);
        return [
          found(
            context,
            announcedLate,
            when.span,
            `This begins at ${figure(first.begins)} ${when.unit}, and the text before it has already worked to ${figure(first.done)} ${when.unit}${who === '' ? '' : ` ${who}`}. Can it be announced before?`,
            {
              sizes: pattern.sizes.length > 1 ? sizes : [],
              stated: late.map((each) => each.begins),
              replayed: late.map((each) => each.done),
            },
          ),
        ];
      }),
    );
  },
};
