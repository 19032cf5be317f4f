import type { Segment, Shape, Statement } from '../grammar/tree.ts';
import { found } from './facts/blocks.ts';
import type { Finding, Rule } from './rule.ts';

/** Rows on which to shape, with neither how often nor up to which count: "next and foll alt rows", "every 4th row". */
function open(shape: Shape): Segment | null {
  const last = shape.schedule.at(-1);
  if (last === undefined || !['follEach', 'follEvery', 'every', 'alternately'].includes(last.kind)) return null;
  const settled = shape.schedule.some((segment) => segment.until !== null) || last.n !== null || shape.ending !== null;
  return settled || shape.stated.length > 0 ? null : last;
}

/** Whether words behind the shaping say where it stops: a count, a length, a number of rows, another shaping to work beside it. */
function settledBehind(statements: readonly Statement[]): boolean {
  for (const statement of statements) {
    if (statement.type === 'bindOff' && statement.which === 'all') return !statement.count.all;
    if (statement.type === 'until' || statement.type === 'atSameTime' || statement.type === 'repeatRows' || statement.type === 'sizeBlock')
      return true;
    if ('stated' in statement && statement.stated.length > 0) return true;
    if (statement.type === 'stated' || statement.type === 'unread' || statement.type === 'hold') return true;
    if (statement.type === 'bindOff' || statement.type === 'edgeRows') return true;
  }
  return false;
}

export const shapingOpen: Rule = {
  id: 'shaping-open',
  level: 'query',
  title: 'Shaping says how often it is worked',
  meaning: 'Rows on which to increase or decrease are named, but neither how many of them nor the count to end with.',
  reason: 'One knitter shapes once, another to the end of the piece, and both have followed the words.',
  needsReplay: false,
  wrong: {
    draft:
      '# Fid Scarf\n\nDecrease by working k2tog.\n\nCO 60 sts.\n\nKnit 2 rows.\n\nDec 1 st at each end of next and foll alt rows.\n\nKnit 3 rows.\n\nBO all sts.\n',
  },
  right: {
    draft:
      '# Fid Scarf\n\nDecrease by working k2tog.\n\nCO 60 sts.\n\nKnit 2 rows.\n\nDec 1 st at each end of next and foll alt rows until 50 sts rem.\n\nKnit 3 rows.\n\nBO all sts.\n',
  },
  check: (context): readonly Finding[] =>
    context.pattern.sections.flatMap((section) =>
      section.statements.flatMap((statement, at): Finding[] => {
        if (statement.type !== 'shape' || open(statement) === null || settledBehind(section.statements.slice(at + 1))) return [];
        const words = context.manuscript.source.slice(statement.span.start, statement.span.end).replace(/\s+/g, ' ');
        return [
          found(
            context,
            shapingOpen,
            statement.span,
            `“${words}” does not say how many times, and no count behind it does. How often is it worked, or with how many stitches does it end?`,
          ),
        ];
      }),
    ),
};
