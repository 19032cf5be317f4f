import { sizeValue } from '../grammar/count.ts';
import type { PickUp } from '../grammar/tree.ts';
import { found } from './facts/blocks.ts';
import type { Finding, Rule } from './rule.ts';
import { counted, inSizes, perSize } from './telling.ts';
import { rowsOf, stepsOf } from './tree-walk.ts';

/** An edge without the word that says which of the two it is. */
const edge = (along: string): string =>
  along
    .toLowerCase()
    .replace(/\b(?:first|second|other|left|right|one|opposite|up|down|along|the|of|remaining)\b/g, ' ')
    .replace(/\s+/g, ' ')
    .trim();

const twin = /\b(?:first|second|other|left|right|opposite)\b/i;

export const pickedUpAlike: Rule = {
  id: 'picked-up-alike',
  level: 'query',
  title: 'As many stitches are picked up along one side as along the other',
  meaning: 'In one row the two sides of the same edge give different numbers of stitches.',
  reason: 'Both sides have the same rows, so one of the gussets or bands sits crooked.',
  needsReplay: false,
  wrong: {
    draft:
      '# Skerry Collar\n\nCO 40 sts.\n\nKnit 60 rows.\n\nBO all sts.\n\n## Band\n\nRow 1 (RS): Pick up and knit 30 sts along right front edge, 20 sts across back neck and 31 sts along left front edge.\n\nBO all sts.\n',
  },
  right: {
    draft:
      '# Skerry Collar\n\nCO 40 sts.\n\nKnit 60 rows.\n\nBO all sts.\n\n## Band\n\nRow 1 (RS): Pick up and knit 30 sts along right front edge, 20 sts across back neck and 30 sts along left front edge.\n\nBO all sts.\n',
  },
  check: (context): readonly Finding[] =>
    rowsOf(context.pattern).flatMap(({ row }): Finding[] => {
      const picks = stepsOf(row.children).filter(
        (step): step is PickUp & { along: string; count: NonNullable<PickUp['count']> } =>
          step.type === 'pickUp' && step.along !== null && step.count !== null && twin.test(step.along),
      );
      for (const [at, one] of picks.entries()) {
        const two = picks.slice(at + 1).find((each) => edge(each.along) === edge(one.along) && each.along !== one.along);
        if (two === undefined) continue;
        const off = context.pattern.sizes
          .map((_, size) => size)
          .filter((size) => sizeValue(one.count.values, size) !== sizeValue(two.count.values, size));
        if (off.length === 0) continue;
        const numbers = (step: typeof one): string =>
          perSize(
            context,
            off,
            off.map((size) => sizeValue(step.count.values, size)),
          );
        return [
          found(
            context,
            pickedUpAlike,
            two.count.span,
            `${inSizes(context, off)}${counted(numbers(one))} are picked up ${one.along} and ${numbers(two)} ${two.along}. Are the two sides not alike?`.replace(
              /^./,
              (letter) => letter.toUpperCase(),
            ),
            { sizes: context.pattern.sizes.length > 1 ? off : [], also: [one.count.span] },
          ),
        ];
      }
      return [];
    }),
};
