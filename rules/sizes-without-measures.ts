import { found } from './facts/blocks.ts';
import type { Finding, Rule } from './rule.ts';

export const sizesWithoutMeasures: Rule = {
  id: 'sizes-without-measures',
  level: 'query',
  title: 'Sizes come with measurements',
  meaning: 'The draft names sizes and gives no length for any of them.',
  reason: 'An M of one house is the L of the next; without a measure nobody can choose.',
  needsReplay: false,
  wrong: {
    draft: `# Kelp Hat

Sizes: S (M, L)

Cast on 80 (90, 100) sts.

Row 1: Knit.
`,
  },
  right: {
    draft: `# Kelp Hat

Sizes: S (M, L), to fit head 51 (55, 59) cm

Cast on 80 (90, 100) sts.

Row 1: Knit.
`,
  },
  check(context): readonly Finding[] {
    const { sizes, measures } = context.pattern.front;
    if (sizes === null || sizes.names.length < 2 || !['line', 'table', 'directive', 'yaml', 'note'].includes(sizes.from ?? '')) return [];
    // Ages, and chest sizes used as names, say something by themselves.
    if (sizes.names.some((name) => /\d\s?(?:years?|months?|cm|in\b|")|^\d{2,3}$/.test(name))) return [];
    const lengths = measures
      .flatMap((one) => one.measures)
      .filter((one) => (one.unit === 'cm' || one.unit === 'in') && one.values.length > 1);
    if (lengths.length > 0) return [];
    return [
      found(
        context,
        sizesWithoutMeasures,
        sizes.span,
        `${sizes.names.length} sizes are named here, and no measure tells them apart. Add the body or finished measurements of each.`,
      ),
    ];
  },
};
