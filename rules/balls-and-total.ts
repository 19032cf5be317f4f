import { sizeValue } from '../grammar/count.ts';
import type { Measure, Yarn } from '../src/pattern/front/front-matter.ts';
import { found } from './facts/blocks.ts';
import { printed, valueAt } from './facts/units.ts';
import { figures, inSizes, listed, sentence } from './facts/wording.ts';
import type { Context, Finding, Rule } from './rule.ts';

/** Total and ball length in the same unit. */
function sameUnit(yarn: Yarn): { total: Measure; ball: Measure } | null {
  for (const total of yarn.total) {
    const ball = yarn.lengthPerBall.find((one) => one.unit === total.unit) ?? yarn.weightPerBall.find((one) => one.unit === total.unit);
    if (ball !== undefined) return { total, ball };
  }
  return null;
}

function balls(context: Context, yarn: Yarn): Finding | null {
  const both = sameUnit(yarn);
  if (both === null || yarn.balls === null) return null;
  const sizes = context.pattern.sizes.map((_, size) => size);
  const few: number[] = [];
  const needs: number[] = [];
  for (const size of sizes) {
    const total = valueAt(both.total, size, sizes.length);
    const ball = valueAt(both.ball, 0, 1);
    const have = sizeValue(yarn.balls, size);
    if (total === null || ball === null || have === null || total < ball / 4) continue;
    const need = Math.ceil(total / ball - 1e-9);
    if (need > have) {
      few.push(size);
      needs.push(need);
    }
  }
  if (few.length === 0) return null;
  const unit = both.total.unit;
  const ball = both.ball.values[0]!;
  const sums = few.map(
    (size, at) =>
      `${printed(valueAt(both.total, size, sizes.length)!, unit)} are ${needs[at]} balls of ${printed(ball, unit)}, and the draft lists ${sizeValue(yarn.balls!, size)}`,
  );
  const message = sentence(listed(sums.slice(0, 2)), `${inSizes(context.pattern.sizes, few)}.`, 'Round up, or correct the length.');
  return found(context, ballsAndTotal, yarn.span, message, {
    sizes: sizes.length > 1 ? few : [],
    stated: few.map((size) => sizeValue(yarn.balls!, size)!),
    replayed: needs,
  });
}

/** A larger size that asks for less yarn than the one before it. */
function shrinks(context: Context, yarn: Yarn): Finding | null {
  for (const values of [yarn.balls ?? [], ...yarn.total.map((one) => one.values)]) {
    if (values.length !== context.pattern.sizes.length) continue;
    const at = values.findIndex((value, size) => size > 0 && value !== null && values[size - 1] != null && value < values[size - 1]!);
    if (at < 0) continue;
    const names = context.pattern.sizes;
    return found(
      context,
      ballsAndTotal,
      yarn.span,
      `The yarn grows with the size in ${figures(values)}, except from ${names[at - 1]} to ${names[at]}. Is ${values[at]} right?`,
      { sizes: [at] },
    );
  }
  return null;
}

export const ballsAndTotal: Rule = {
  id: 'balls-and-total',
  level: 'query',
  title: 'The balls hold the yarn that is asked for',
  meaning:
    'The total length divided by the length of one ball, rounded up, is more than the number of balls; or a larger size has less yarn.',
  reason: 'The knitter runs out before the end, and the dye lot is gone.',
  needsReplay: false,
  wrong: {
    draft: `# Kelp Scarf

Yarn: Orrin Flax, 212 m per 100 g; 905 m in total; 4 balls

Cast on 48 sts.

Row 1: Knit.
`,
  },
  right: {
    draft: `# Kelp Scarf

Yarn: Orrin Flax, 212 m per 100 g; 905 m in total; 5 balls

Cast on 48 sts.

Row 1: Knit.
`,
  },
  check(context): readonly Finding[] {
    return context.pattern.front.yarns.flatMap((yarn) => {
      const one = balls(context, yarn) ?? shrinks(context, yarn);
      return one === null ? [] : [one];
    });
  },
};
