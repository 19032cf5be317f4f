import type { Span } from '../src/manuscript/manuscript.ts';
import { found, stretches } from './facts/blocks.ts';
import { listed } from './facts/wording.ts';
import type { Context, Finding, Rule } from './rule.ts';

/** Letters and symbols that stand for a yarn: MC, CC2, A. */
const symbol = /^(?:MC|CC\d?|MS|[A-H]|C\d)$/;
const called =
  /\b(?:[Ww]ith|[Uu]sing|[Ii]n|[Yy]arn|[Cc]olou?r|[Ss]hade|[Cc]hange to|[Jj]oin(?: in)?|[Bb]reak(?: off)?|[Cc]ut)\s(MC|CC\d?|MS|[A-H]|C\d)\b(?!['’.-]?\s?(?:row|rnd|needle|chart|size))/g;

/** Letters and MC, CC are two ways of naming; a letter in a draft of MC and CC names a chart or a marker. */
const symbolKind = (name: string): 'letter' | 'role' => (/^[A-H]$/.test(name) ? 'letter' : 'role');

interface Called {
  readonly name: string;
  readonly span: Span;
}

function calledIn(context: Context): readonly Called[] {
  return stretches(context)
    .filter((one) => one.role === 'work')
    .flatMap((one) =>
      [...one.text.matchAll(called)].map((match) => {
        const start = one.start + match.index + match[0].length - match[1]!.length;
        return { name: match[1]!, span: { start, end: start + match[1]!.length } };
      }),
    );
}

export const coloursListed: Rule = {
  id: 'colours-listed',
  level: 'query',
  title: 'Every colour used is listed, and every colour listed is used',
  meaning: 'The instructions call for a yarn by a letter that the materials do not give, or never call for one that they do.',
  reason: 'The knitter has no such ball, or buys one that is never knitted.',
  needsReplay: false,
  wrong: {
    draft: `# Kelp Band

## Materials

- MC: Orrin Flax in Slate, 100 m per 50 g; 1 ball
- CC1: Orrin Flax in Chalk, 100 m per 50 g; 1 ball

## Band

With MC, cast on 20 sts.

Row 1: With CC1, knit.

Row 2: With CC2, knit.
`,
  },
  right: {
    draft: `# Kelp Band

## Materials

- MC: Orrin Flax in Slate, 100 m per 50 g; 1 ball
- CC1: Orrin Flax in Chalk, 100 m per 50 g; 1 ball

## Band

With MC, cast on 20 sts.

Row 1: With CC1, knit.

Row 2: With MC, knit.
`,
  },
  check(context): readonly Finding[] {
    const yarns = context.pattern.front.yarns.filter((yarn) => yarn.colour !== null && symbol.test(yarn.colour));
    const known = yarns.map((yarn) => yarn.colour!);
    if (known.length < 2) return [];
    const uses = calledIn(context);
    const findings: Finding[] = [];
    for (const use of uses) {
      if (
        known.includes(use.name) ||
        findings.some((one) => one.message.startsWith(`"${use.name}"`)) ||
        symbolKind(use.name) !== symbolKind(known[0]!)
      )
        continue;
      findings.push(
        found(
          context,
          coloursListed,
          use.span,
          `"${use.name}" is used here, and the materials list ${listed(known)}. Which yarn is meant?`,
        ),
      );
    }
    const said = new Set(uses.map((use) => use.name));
    if (said.size === 0) return findings;
    for (const yarn of yarns) {
      const name = yarn.colour!;
      const elsewhere = stretches(context).some((one) => one.role === 'work' && new RegExp(`\\b${name}\\b`).test(one.text));
      if (!elsewhere)
        findings.push(
          found(context, coloursListed, yarn.span, `The materials list yarn ${name}, and no instruction uses it. Where does it come in?`),
        );
    }
    return findings;
  },
};
