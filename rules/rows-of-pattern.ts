import type { Statement } from '../grammar/tree.ts';
import { found, sectionAt } from './facts/blocks.ts';
import { unreadBetween } from './reading.ts';
import type { Context, Finding, Rule } from './rule.ts';

const words = ['one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine', 'ten', 'eleven', 'twelve'];
const form = new RegExp(`\\b(?:these|the (?:last|above))\\s+(\\d{1,3}|${words.join('|')})\\s+(rows|rounds|rnds)\\b`, 'i');

/** The numbered rows just before a place that count on from each other, the last number and how many of them there are. */
function setBefore(statements: readonly Statement[]): { readonly first: number; readonly last: number; readonly start: number } | null {
  let first: number | null = null;
  let last: number | null = null;
  let start = 0;
  for (const statement of [...statements].reverse()) {
    if (statement.type !== 'row') {
      if (['remark', 'stated', 'change', 'marker'].includes(statement.type)) continue;
      break;
    }
    const { label } = statement;
    if (label === null || label.numbers.length === 0 || label.name !== null) break;
    const [low, high] = [label.numbers[0] as number, label.numbers.at(-1) as number];
    if (first !== null && high >= first) break;
    if (label.andAll !== null || label.lastBySize !== null) last = null;
    if (last === null && first === null) last = high;
    first = low;
    start = statement.span.start;
  }
  return first === null || last === null ? null : { first, last, start };
}

/** Rows worked from an offset on, as the sheet has them. */
function workedSince(context: Context, from: number, to: number): number {
  return context.replay.entries
    .filter((entry) => entry.unit !== 'step' && entry.span.start >= from && entry.span.start < to)
    .reduce((sum, entry) => sum + entry.times, 0);
}

export const rowsOfPattern: Rule = {
  id: 'rows-of-pattern',
  level: 'query',
  title: '“These 8 rows form the pattern” stands below eight rows',
  meaning: 'The sentence that closes a set of rows names another number of rows than the set has.',
  reason: 'One knitter looks for the rows that are missing, another repeats rows that do not belong to the pattern.',
  needsReplay: true,
  wrong: {
    draft:
      '# Oarlock Cloth\n\nCO 20 sts.\n\nRow 1 (RS): Knit.\n\nRow 2: Purl.\n\nRow 3: *K2, p2; rep from * to end.\n\nRow 4: *K2, p2; rep from * to end.\n\nRow 5: Knit.\n\nRow 6: Purl.\n\nThese 8 rows form the pattern.\n\nBO all sts.\n',
  },
  right: {
    draft:
      '# Oarlock Cloth\n\nCO 20 sts.\n\nRow 1 (RS): Knit.\n\nRow 2: Purl.\n\nRow 3: *K2, p2; rep from * to end.\n\nRow 4: *K2, p2; rep from * to end.\n\nRow 5: Knit.\n\nRow 6: Purl.\n\nThese 6 rows form the pattern.\n\nBO all sts.\n',
  },
  check: (context): readonly Finding[] => {
    const { source } = context.manuscript;
    return context.pattern.sections.flatMap((section) =>
      section.statements.flatMap((statement, at): Finding[] => {
        if (statement.type !== 'declare' || statement.what !== 'forms') return [];
        const said = form.exec(source.slice(statement.span.start, statement.span.end));
        const set = setBefore(section.statements.slice(0, at));
        if (said?.[1] === undefined || set === null || sectionAt(context.pattern, set.start) === null) return [];
        const number = /^\d/.test(said[1]) ? Number(said[1]) : words.indexOf(said[1].toLowerCase()) + 1;
        const rows = set.last - set.first + 1;
        const fits = [
          rows,
          set.last,
          workedSince(context, set.start, statement.span.start),
          workedSince(context, section.span.start, statement.span.start),
        ];
        // Fewer rows than the set has may be its last ones; a pattern of two rows is often set up by more.
        if (
          fits.includes(number) ||
          (number < rows && (number <= 2 || set.first > 1)) ||
          unreadBetween(context, section.span.start, statement.span.end)
        )
          return [];
        const unit = said[2]?.toLowerCase() === 'rows' ? 'Rows' : 'Rnds';
        const start = statement.span.start + said.index;
        return [
          found(
            context,
            rowsOfPattern,
            { start, end: start + said[0].length },
            `“${said[0]}” stands below ${unit} ${set.first}–${set.last}, which are ${rows}. Is ${rows} meant, or ${number > rows ? `${number - rows === 1 ? 'is a row' : `are ${number - rows} rows`} missing` : `do ${rows - number} of them not belong to the pattern`}?`,
            { stated: number, replayed: rows },
          ),
        ];
      }),
    );
  },
};
