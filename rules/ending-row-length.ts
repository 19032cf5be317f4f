import { sizeValue } from '../grammar/count.ts';
import type { EndSide, Goal } from '../grammar/tree.ts';
import { found } from './facts/blocks.ts';
import { densities } from './facts/gauges.ts';
import { figure } from './facts/wording.ts';
import type { Finding, Rule } from './rule.ts';
import { inSizes } from './telling.ts';

/** A miss that shows on a ruler, in centimetres. */
const shows = 1;

export const endingRowLength: Rule = {
  id: 'ending-row-length',
  level: 'style',
  title: 'A length that ends on a row of the pattern can be met',
  meaning: 'The piece is to measure so much and to end on a given row of its pattern; whole patterns come to other lengths.',
  reason: 'Every knitter has to choose between the length and the row, and they choose differently.',
  needsReplay: true,
  wrong: {
    draft:
      '# Swell Scarf\n\nGauge: 22 sts and 28 rows to 10 cm\n\nCO 40 sts.\n\nRow 1 (RS): Knit.\n\nRow 2: Purl.\n\nRow 3: Purl.\n\nRow 4: Knit.\n\nRow 5: Knit.\n\nRow 6: Purl.\n\nRow 7: Knit.\n\nRow 8: Purl.\n\nRow 9: Purl.\n\nRow 10: Knit.\n\nRep Rows 1–10 until piece measures 16 cm, ending with Row 10.\n\nBO all sts.\n',
  },
  right: {
    draft:
      '# Swell Scarf\n\nGauge: 22 sts and 28 rows to 10 cm\n\nCO 40 sts.\n\nRow 1 (RS): Knit.\n\nRow 2: Purl.\n\nRow 3: Purl.\n\nRow 4: Knit.\n\nRow 5: Knit.\n\nRow 6: Purl.\n\nRow 7: Knit.\n\nRow 8: Purl.\n\nRow 9: Purl.\n\nRow 10: Knit.\n\nRep Rows 1–10 until piece measures 18 cm, ending with Row 10.\n\nBO all sts.\n',
  },
  check: (context): readonly Finding[] => {
    const { pattern, replay } = context;
    const [gauge, ...more] = pattern.front.gauges;
    if (gauge === undefined || more.length > 0) return [];
    return pattern.sections.flatMap((section, index) =>
      section.statements.flatMap((statement): Finding[] => {
        const goal: Goal | null = statement.type === 'repeatRows' ? statement.until : statement.type === 'until' ? statement.goal : null;
        const ending: EndSide | null = statement.type === 'repeatRows' || statement.type === 'until' ? statement.ending : null;
        if (goal?.kind !== 'measure' || goal.from !== null || ending?.row == null || goal.shorter === true) return [];
        const numbers = pattern.rows
          .filter((each) => each.section === section && each.label.name === null)
          .flatMap((each) => each.label.numbers);
        const length = Math.max(0, ...numbers);
        const density = densities(gauge, 'rows', goal.unit)[0];
        if (length < 4 || new Set(numbers).size !== length || density === undefined) return [];
        const before = replay.entries.filter(
          (entry) => entry.section === index && entry.span.start < statement.span.start && entry.unit !== 'step',
        );
        const cast = replay.entries.some((entry) => entry.section === index && entry.node.type === 'castOn');
        const odd = before.filter((entry) => entry.node.type !== 'row' || (entry.node.label?.numbers.length ?? 0) === 0);
        // Only a piece that begins here, with nothing but told rows below the pattern, can be reckoned.
        if (!cast || odd.some((entry) => entry.node.type !== 'plain' && entry.node.type !== 'row')) return [];
        const extra = odd.reduce((sum, entry) => sum + entry.times, 0);
        const cm = goal.unit === 'in' ? 2.54 : goal.unit === 'mm' ? 0.1 : 1;
        const off = pattern.sizes.flatMap((_, size) => {
          const [wanted, row] = [sizeValue(goal.values, size), sizeValue(ending.row ?? [], size)];
          if (wanted === null || row === null || row > length) return [];
          const rows = wanted * density.per - extra - row;
          const least = extra + row + Math.floor(rows / length) * length;
          const [under, over] = [least / density.per, (least + length) / density.per];
          const miss = Math.min(wanted - under, over - wanted) * cm;
          return miss > shows ? [{ size, wanted, row, under, over }] : [];
        });
        const [first] = off;
        if (first === undefined) return [];
        const sizes = off.map((each) => each.size);
        const round = (value: number): string => figure(Math.round(value * 10) / 10);
        return [
          found(
            context,
            endingRowLength,
            goal.span,
            `${inSizes(context, sizes.slice(0, 1))}at ${density.words} Row ${first.row} is reached at ${round(first.under)} or ${round(first.over)} ${goal.unit}, not at ${figure(first.wanted)} ${goal.unit}. Which of them is meant?`.replace(
              /^./,
              (letter) => letter.toUpperCase(),
            ),
            { sizes: pattern.sizes.length > 1 ? sizes : [] },
          ),
        ];
      }),
    );
  },
};
