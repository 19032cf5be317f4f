import { sizeValue } from '../grammar/count.ts';
import { found } from './facts/blocks.ts';
import type { Finding, Rule } from './rule.ts';
import { inSizes, listed } from './telling.ts';
import { statementsOf } from './tree-walk.ts';

export const bindOffSteps: Rule = {
  id: 'bind-off-steps',
  level: 'query',
  title: 'The steps of an edge get no sudden jump',
  meaning: 'Of the numbers bound off one after the other along an edge, one falls far below both of its neighbours.',
  reason: 'The edge gets a notch; two numbers have probably changed places, or one has lost a digit.',
  needsReplay: false,
  wrong: {
    draft:
      '# Gunwale Vest\n\nCO 80 sts.\n\nKnit 4 rows.\n\nBO 12 sts at beg of next 2 rows, then 2 sts at beg of foll 2 rows, then 9 sts at beg of foll 2 rows. 34 sts.\n\nBO all sts.\n',
  },
  right: {
    draft:
      '# Gunwale Vest\n\nCO 80 sts.\n\nKnit 4 rows.\n\nBO 12 sts at beg of next 2 rows, then 9 sts at beg of foll 2 rows, then 2 sts at beg of foll 2 rows. 34 sts.\n\nBO all sts.\n',
  },
  check: (context): readonly Finding[] =>
    statementsOf(context.pattern).flatMap(({ statement }): Finding[] => {
      if (statement.type !== 'edgeRows' || statement.change !== 'bindOff' || statement.parts.length < 3) return [];
      const odd = context.pattern.sizes.flatMap((_, size) => {
        const numbers = statement.parts.map((part) => sizeValue(part.count.values, size));
        const at = numbers.findIndex((number, place) => {
          const [before, after] = [numbers[place - 1] ?? null, numbers[place + 1] ?? null];
          return number !== null && before !== null && after !== null && number > 0 && number * 3 <= before && number * 3 <= after;
        });
        return at < 0 ? [] : [{ size, at, numbers }];
      });
      const [first] = odd;
      const part = first === undefined ? undefined : statement.parts[first.at];
      if (first === undefined || part === undefined) return [];
      const sizes = odd.map((each) => each.size);
      return [
        found(
          context,
          bindOffSteps,
          part.count.span,
          `${inSizes(context, sizes)}the edge goes in by ${listed(first.numbers.filter((number) => number !== null).map(String))} sts: ${first.numbers[first.at]} between two much larger steps. Have two numbers changed places?`.replace(
            /^./,
            (letter) => letter.toUpperCase(),
          ),
          { sizes: context.pattern.sizes.length > 1 ? sizes : [] },
        ),
      ];
    }),
};
