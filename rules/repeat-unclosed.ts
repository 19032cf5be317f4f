import { labelOf } from './labels.ts';
import type { Context, Finding, Rule } from './rule.ts';
import { lineOf, sectionTitle } from './telling.ts';
import { rowsOf, statementsOf, stepsOf } from './tree-walk.ts';

/** Whether the brackets of the paragraph a place stands in do not pair. */
function unpaired(context: Context, at: number): boolean {
  const block = context.manuscript.blocks.find((each) => each.start <= at && at < each.end);
  const text = context.manuscript.source.slice(block?.start ?? at, block?.end ?? at);
  const open: string[] = [];
  for (const sign of text) {
    if (sign === '(' || sign === '[') open.push(sign);
    else if (sign === ')' || sign === ']') {
      if (open.pop() !== (sign === ')' ? '(' : '[')) return true;
    }
  }
  return open.length > 0;
}

/** Whether a later instruction of the section repeats from this sign. */
function closedLater(context: Context, sign: string, section: number, from: number): boolean {
  return statementsOf(context.pattern).some(
    ({ statement, section: own }) =>
      own === section && statement.type === 'repeatRows' && statement.span.start >= from && statement.rows.mark === sign,
  );
}

export const repeatUnclosed: Rule = {
  id: 'repeat-unclosed',
  level: 'error',
  title: 'Every repeat has a beginning and an end',
  meaning: '“Rep from *” has no star before it, a star is never taken up again, or a bracket is opened and not closed.',
  reason: 'The knitter cannot tell which stitches repeat.',
  needsReplay: false,
  wrong: { draft: '# Fender Strip\n\nCO 20 sts.\n\nRow 1 (RS): K2, yo, k2tog; rep from * to end.\n\nRow 2: Purl.\n\nBO all sts.\n' },
  right: { draft: '# Fender Strip\n\nCO 20 sts.\n\nRow 1 (RS): *K2, yo, k2tog; rep from * to end.\n\nRow 2: Purl.\n\nBO all sts.\n' },
  check: (context): readonly Finding[] => {
    const { source } = context.manuscript;
    return rowsOf(context.pattern).flatMap(({ row, section }): Finding[] => {
      const base = {
        rule: repeatUnclosed.id,
        level: 'error' as const,
        section: sectionTitle(context, section),
        row: labelOf(row),
        sizes: [],
        stated: null,
        replayed: null,
        fix: null,
      };
      for (const step of stepsOf(row.children)) {
        const text = source.slice(step.span.start, step.span.end).trim();
        if (step.type === 'unread') {
          if (/^rep(eat)? from\b/i.test(text))
            return [
              {
                ...base,
                span: step.span,
                message: 'This repeats from a star that is nowhere before it in the row. Where does the repeat begin?',
              },
            ];
          // A star over several rows or passages: "repeat from *" stands by itself further on.
          if (/^[*†‡]+$/.test(text) && closedLater(context, text, section, step.span.end)) continue;
          if (/^[*†‡]+$/.test(text))
            return [
              {
                ...base,
                span: step.span,
                message: `The star opens a repeat that nothing closes: no “rep from ${text}” follows in the row (line ${lineOf(context, step.span)}). Where does it end, and how often is it worked?`,
              },
            ];
        }
        if (step.type === 'remark' && /^[([]$/.test(text) && unpaired(context, step.span.start))
          return [{ ...base, span: step.span, message: 'The bracket opened here is not closed. Where does the group end?' }];
        if (step.type === 'remark' && /^[)\]]/.test(text) && unpaired(context, step.span.start))
          return [{ ...base, span: step.span, message: 'The bracket closed here is not opened before. Where does the group begin?' }];
      }
      return [];
    });
  },
};
