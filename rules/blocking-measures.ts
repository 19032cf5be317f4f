import type { Measure } from '../src/pattern/front/front-matter.ts';
import { found, stretches } from './facts/blocks.ts';
import { printed } from './facts/units.ts';
import type { Finding, Rule } from './rule.ts';

const blocked =
  /\b(?:pin|pinned|pinning|block|blocked|blocking|pull|pulled|pulling|stretch|stretched|stretching|press|pressed|pressing)\b/i;
/** Further away than this the measure is of something else: a hem, a tail, the distance of a seam. */
const nearby = 0.35;

export const blockingMeasures: Rule = {
  id: 'blocking-measures',
  level: 'query',
  title: 'The piece is blocked to the measures given at the top',
  meaning: 'The finishing says to pin or pull the piece to a length that the finished measurements do not give.',
  reason: 'The knitter pulls the fabric out of its gauge, or wonders which of the two sizes is meant.',
  needsReplay: false,
  wrong: {
    draft: `# Kelp Shawl

Finished width: 76 cm

Cast on 9 sts.

Row 1: Knit.

## Finishing

Soak and pin the top edge to 84 cm.
`,
  },
  right: {
    draft: `# Kelp Shawl

Finished width: 76 cm

Cast on 9 sts.

Row 1: Knit.

## Finishing

Soak and pin the top edge to 76 cm.
`,
  },
  check(context): readonly Finding[] {
    const parts = stretches(context);
    const inWork = (measure: Measure): boolean =>
      parts.some((one) => one.role === 'work' && one.start <= measure.span.start && measure.span.end <= one.end);
    const { measures } = context.pattern.front;
    if (!measures.some((one) => blocked.test(one.name))) return [];
    const promised = measures.flatMap((one) => one.measures).filter((one) => !inWork(one));
    return measures.flatMap((one) => {
      const [first] = one.measures;
      if (
        first === undefined ||
        !inWork(first) ||
        !blocked.test(one.name) ||
        !/\bto\s+$/.test(context.manuscript.source.slice(Math.max(0, first.span.start - 8), first.span.start))
      )
        return [];
      const same = promised.filter((other) => other.unit === first.unit);
      const values = same.flatMap((other) => other.values).filter((value) => value !== null);
      const asked = first.values.filter((value) => value !== null);
      const miss = asked.filter((value) => !values.includes(value));
      const [value] = miss;
      if (value === undefined || values.length === 0) return [];
      const nearest = values.reduce((best, other) => (Math.abs(other - value) < Math.abs(best - value) ? other : best));
      if (Math.abs(nearest - value) > nearest * nearby) return [];
      return [
        found(
          context,
          blockingMeasures,
          first.span,
          `The piece is brought to ${printed(value, first.unit)} here; the measurements above give ${printed(nearest, first.unit)}. Which one is meant?`,
          {
            stated: value,
            replayed: nearest,
            also: same
              .filter((other) => other.values.includes(nearest))
              .slice(0, 1)
              .map((other) => other.span),
          },
        ),
      ];
    });
  },
};
