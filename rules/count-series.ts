import type { Finding, Rule } from './rule.ts';
import { counted } from './telling.ts';

interface Told {
  readonly value: number;
  readonly start: number;
  readonly end: number;
}

/** Runs of five numbers or more with only commas, "and" or spaces between. */
function seriesIn(text: string, offset: number): Told[][] {
  const out: Told[][] = [];
  let run: Told[] = [];
  let end = -1;
  for (const match of text.matchAll(/\d+/g)) {
    const gap = end < 0 ? '' : text.slice(end, match.index);
    if (end >= 0 && gap.length <= 6 && /^(, ?|,? and |; ?)$/.test(gap))
      run.push({ value: Number(match[0]), start: offset + match.index, end: offset + match.index + match[0].length });
    else {
      if (run.length >= 5) out.push(run);
      run = [{ value: Number(match[0]), start: offset + match.index, end: offset + match.index + match[0].length }];
    }
    end = match.index + match[0].length;
  }
  if (run.length >= 5) out.push(run);
  return out;
}

/** The one number that breaks steps which are all alike otherwise. */
function breaker(run: readonly Told[]): { at: number; step: number; value: number } | null {
  const steps = run.slice(1).map((each, at) => each.value - (run[at] as Told).value);
  const usual = steps.find((step) => steps.filter((each) => each === step).length > steps.length / 2);
  if (usual === undefined || usual === 0) return null;
  const odd = steps.flatMap((step, at) => (step === usual ? [] : [at]));
  const [first, second] = odd;
  if (odd.length === 2 && first !== undefined && second === first + 1 && (steps[first] ?? 0) + (steps[second] ?? 0) === 2 * usual)
    return { at: second, step: usual, value: (run[first] as Told).value + usual };
  if (odd.length === 1 && first === 0 && steps.length >= 5) return { at: 0, step: usual, value: (run[1] as Told).value - usual };
  if (odd.length === 1 && first === steps.length - 1 && steps.length >= 5)
    return { at: run.length - 1, step: usual, value: (run.at(-2) as Told).value + usual };
  return null;
}

export const countSeries: Rule = {
  id: 'count-series',
  level: 'query',
  title: 'A series of counts goes on as it began',
  meaning: 'The draft lists the count after each repeat, every step is the same, and one number does not lie on it.',
  reason: 'The knitter checks her count against the list and looks for a slip she has not made.',
  needsReplay: false,
  wrong: {
    draft:
      '# Sheet Shawl\n\nCO 9 sts.\n\nRow 1 (RS): Knit.\n\nBO all sts.\n\n## Checking\n\nCheck the count after each repeat: 45, 69, 93, 115, 141, 165.\n',
  },
  right: {
    draft:
      '# Sheet Shawl\n\nCO 9 sts.\n\nRow 1 (RS): Knit.\n\nBO all sts.\n\n## Checking\n\nCheck the count after each repeat: 45, 69, 93, 117, 141, 165.\n',
  },
  check: ({ manuscript, pattern }): readonly Finding[] =>
    manuscript.blocks.flatMap((block) => {
      if (block.kind !== 'paragraph' && block.kind !== 'item') return [];
      return seriesIn(block.text, block.start).flatMap((run): Finding[] => {
        // A list with a value for each size may step as it likes.
        if (run.length === pattern.sizes.length || run.length + 1 === pattern.sizes.length) return [];
        const odd = breaker(run);
        if (odd === null) return [];
        const told = run[odd.at] as Told;
        return [
          {
            rule: countSeries.id,
            level: 'query',
            span: { start: told.start, end: told.end },
            section: null,
            row: null,
            sizes: [],
            message: `The numbers of this list go ${odd.step > 0 ? 'up' : 'down'} by ${counted(Math.abs(odd.step)).replace(/ sts?$/, '')} each time; ${told.value} does not, ${odd.value} would.`,
            stated: told.value,
            replayed: odd.value,
            fix: { span: { start: told.start, end: told.end }, text: String(odd.value) },
          },
        ];
      });
    }),
};
