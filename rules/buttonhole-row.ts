import { sizeValue } from '../grammar/count.ts';
import type { Row } from '../grammar/tree.ts';
import { found, inside, stretches } from './facts/blocks.ts';
import { roots } from './observed.ts';
import type { Context, Finding, Rule } from './rule.ts';
import { counted, inSizes } from './telling.ts';
import { rowsOf, stepsOf } from './tree-walk.ts';
import { stepsUse, yarnOvers } from './use.ts';

const isButtonholeRow = (row: Row): boolean => row.label?.name !== null && /button\s?hole/i.test(row.label?.name ?? '');

/** Holes that one working of the row makes with yarn overs; null where their number hangs on the needle. */
function holesOf(context: Context, row: Row, size: number): number | null {
  const count = (steps: Row['children']): number | null => {
    let holes = 0;
    for (const step of steps) {
      if (step.type === 'bindOff' || step.type === 'castOn' || step.type === 'intoOne') return null;
      if (yarnOvers(context.pattern, step) > 0) holes += 1;
      if (step.type !== 'repeat' || step.form === 'run') continue;
      const inner = count(step.children);
      const { extent } = step;
      if (inner === 0) continue;
      if (inner === null || extent?.kind !== 'times' || (extent.form === 'from' && extent.sense === 'plain')) return null;
      const times = sizeValue(extent.count.values, size);
      if (times === null) return null;
      holes += inner * (times + (extent.sense === 'more' ? 1 : 0));
    }
    return holes;
  };
  return count(row.children);
}

/** A yarn over without its decrease, or a decrease without its yarn over. */
function unbalanced(context: Context, row: Row): Finding[] {
  const use = stepsUse(context.pattern, row.children);
  const steps = stepsOf(row.children);
  if (use === null || steps.some((step) => step.type === 'bindOff' || step.type === 'castOn') || row.stated.length > 0) return [];
  const change = use.makes - use.takes;
  if (change === 0 || roots(context).some((root) => root.met.node === row)) return [];
  return [
    found(
      context,
      buttonholeRow,
      row.span,
      `The row takes ${counted(use.takes)} and makes ${use.makes}, so the band ${change > 0 ? 'grows' : 'shrinks'} by ${counted(Math.abs(change))}. Is a ${change > 0 ? 'decrease' : 'yarn over'} missing beside a buttonhole?`,
    ),
  ];
}

/** The only buttonhole row of the draft, worked once, against the buttons listed. */
function counts(context: Context, row: Row): Finding[] {
  const buttons = context.pattern.front.notions.filter((notion) => notion.name === 'button' && notion.count !== null);
  const [listed] = buttons;
  const workings = context.replay.entries.filter((entry) => entry.textSpan.start === row.span.start);
  if (listed?.count === null || listed === undefined || buttons.length > 1 || workings.length !== 1 || workings[0]?.times !== 1) return [];
  const told = stretches(context).some(
    (part) => part.role === 'work' && /\b(?:no|without) buttonholes?\b/i.test(part.text) && !inside(row.span, part),
  );
  const off = context.pattern.sizes.flatMap((_, size) => {
    const holes = holesOf(context, row, size);
    const number = sizeValue(listed.count ?? [], size);
    return holes === null || holes < 2 || number === null || holes === number ? [] : [{ size, holes, number }];
  });
  const [first] = off;
  if (first === undefined || told) return [];
  const sizes = off.map((each) => each.size);
  return [
    found(
      context,
      buttonholeRow,
      row.span,
      `${inSizes(context, sizes)}the row makes ${counted(first.holes, 'buttonhole')}, and ${counted(first.number, 'button')} ${first.number === 1 ? 'is' : 'are'} listed. How many are there?`.replace(
        /^./,
        (letter) => letter.toUpperCase(),
      ),
      { sizes: context.pattern.sizes.length > 1 ? sizes : [], also: [listed.span] },
    ),
  ];
}

export const buttonholeRow: Rule = {
  id: 'buttonhole-row',
  level: 'query',
  title: 'A buttonhole row keeps the count and makes a hole for each button',
  meaning: 'The row named for its buttonholes gains or loses a stitch, or makes another number of holes than buttons are listed.',
  reason: 'The band changes its width at every buttonhole, or a button has no hole.',
  needsReplay: true,
  wrong: {
    draft:
      '# Locker Flap\n\nCO 6 sts.\n\nRow 1 (RS): Knit.\n\nRow 2: Knit.\n\nButtonhole row: K2, k2tog, k2.\n\nNext row: Knit.\n\nBO all sts.\n',
  },
  right: {
    draft:
      '# Locker Flap\n\nCO 6 sts.\n\nRow 1 (RS): Knit.\n\nRow 2: Knit.\n\nButtonhole row: K2, yo, k2tog, k2.\n\nNext row: Knit.\n\nBO all sts.\n',
  },
  check: (context): readonly Finding[] => {
    const rows = rowsOf(context.pattern)
      .map(({ row }) => row)
      .filter(isButtonholeRow);
    const [only] = rows;
    return [...rows.flatMap((row) => unbalanced(context, row)), ...(rows.length === 1 && only !== undefined ? counts(context, only) : [])];
  },
};
