import type { Measure } from '../src/pattern/front/front-matter.ts';
import { found } from './facts/blocks.ts';
import { pairFaults } from './facts/pairs.ts';
import { printed } from './facts/units.ts';
import type { Context, Finding, Rule } from './rule.ts';

/** A measure in steps larger than this share of the bust's own growth grows like the bust. From memory of body tables: the neck takes about a tenth of it, the upper arm a third. */
const neckShare = 0.4;
const sizesToJudge = 4;

const growth = (measure: Measure): number | null => {
  const [first, last] = [measure.values[0], measure.values[measure.values.length - 1]];
  return first == null || last == null ? null : last - first;
};

/** A size that is smaller than the one before it in a list that otherwise grows. */
function dip(values: Measure['values']): number | null {
  const known = values.flatMap((value, size) => (value === null ? [] : [{ value, size }]));
  if (known.length < 3) return null;
  const down = known.slice(1).filter((one, at) => one.value < known[at]!.value);
  const up = known.slice(1).filter((one, at) => one.value > known[at]!.value);
  return down.length === 1 && up.length >= 1 ? down[0]!.size : null;
}

function neckLikeBust(context: Context): Finding | null {
  const { measures } = context.pattern.front;
  const neck = measures.find((one) => /\bneck(?:line)?\b.*\b(?:width|wide)\b|\bback neck\b/i.test(one.name));
  const bust = measures.find((one) => one.kind === 'finished' && /\b(?:bust|chest)\b/i.test(one.name));
  for (const one of neck?.measures ?? []) {
    const other = bust?.measures.find((each) => each.unit === one.unit);
    if (other === undefined || one.values.length < sizesToJudge || one.values.length !== other.values.length) continue;
    const [grown, by] = [growth(one), growth(other)];
    if (grown === null || by === null || by <= 0 || grown / by <= neckShare) return null;
    return found(
      context,
      sizesGrow,
      one.span,
      `The neck grows by ${printed(grown, one.unit)} from the first size to the last, the bust by ${printed(by, other.unit)}. Bodies differ far less at the neck: is it graded like the bust?`,
    );
  }
  return null;
}

export const sizesGrow: Rule = {
  id: 'sizes-grow',
  level: 'query',
  title: 'Measurements grow with the sizes, each as bodies do',
  meaning: 'A finished measure falls from one size to the next, or the neck grows like the bust.',
  reason: 'A value of the neighbouring size or a swap of two is easily printed, and only one size suffers.',
  needsReplay: false,
  wrong: {
    draft: `# Kelp Vest

Sizes: S (M, L, XL)

Finished bust: 90 (100, 110, 120) cm

Length: 54 (59, 57, 60) cm

Cast on 40 (44, 50, 56) sts.

Row 1: Knit.
`,
  },
  right: {
    draft: `# Kelp Vest

Sizes: S (M, L, XL)

Finished bust: 90 (100, 110, 120) cm

Length: 54 (56, 57, 60) cm

Cast on 40 (44, 50, 56) sts.

Row 1: Knit.
`,
  },
  check(context): readonly Finding[] {
    const { measures, pairs } = context.pattern.front;
    const wrong = pairFaults(pairs).flatMap((fault) => [fault.pair.first.span.start, fault.pair.second.span.start]);
    const names = context.pattern.sizes;
    const findings = measures.flatMap((one) => {
      if (one.measures.some((measure) => wrong.includes(measure.span.start))) return [];
      const measure = one.measures.find((each) => each.values.length === names.length && dip(each.values) !== null);
      if (measure === undefined) return [];
      const at = dip(measure.values)!;
      return [
        found(
          context,
          sizesGrow,
          measure.span,
          `"${one.name}" falls from ${printed(measure.values[at - 1]!, measure.unit)} in size ${names[at - 1]} to ${printed(measure.values[at]!, measure.unit)} in size ${names[at]}, and grows otherwise. Is one of the two misprinted?`,
          { sizes: [at] },
        ),
      ];
    });
    const neck = neckLikeBust(context);
    return neck === null ? findings : [...findings, neck];
  },
};
