import { found } from './facts/blocks.ts';
import type { Finding, Rule } from './rule.ts';

export const yarnDescribed: Rule = {
  id: 'yarn-described',
  level: 'style',
  title: 'The yarn can be replaced by what is said of it',
  meaning: 'The materials name balls of yarn and neither the length of a ball nor a total length.',
  reason: 'Grams alone do not tell how far a yarn goes; whoever uses another yarn cannot tell how much to buy.',
  needsReplay: false,
  wrong: {
    draft: `# Kelp Scarf

Yarn: 4 x 50 g balls of Orrin Flax

Cast on 60 sts.

Row 1: Knit.
`,
  },
  right: {
    draft: `# Kelp Scarf

Yarn: 4 x 50 g balls of Orrin Flax (110 m per ball)

Cast on 60 sts.

Row 1: Knit.
`,
  },
  check(context): readonly Finding[] {
    const bare = context.pattern.front.yarns.filter(
      (yarn) => yarn.balls !== null && yarn.lengthPerBall.length === 0 && !yarn.total.some((one) => one.unit === 'm' || one.unit === 'yd'),
    );
    const first = bare[0];
    return first === undefined
      ? []
      : [
          found(
            context,
            yarnDescribed,
            first.span,
            'The length of a ball is not given. Add metres and yards, so that another yarn can be bought by length.',
            { also: bare.slice(1).map((yarn) => yarn.span) },
          ),
        ];
  },
};
