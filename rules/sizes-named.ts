import { found, stretches } from './facts/blocks.ts';
import type { Finding, Rule } from './rule.ts';

const label =
  /\b(?:[Ff]or\s+)?[Ss]izes?\s+((?:[2-6]?X{0,3}[SML]|[2-6]X)(?:\s*(?:,|and|&|or)\s*(?:[2-6]?X{0,3}[SML]|[2-6]X))*)\s+only\b|\b[Ff]or\s+((?:[2-6]?X{0,3}[SML]|[2-6]X))\s+only\b/;

export const sizesNamed: Rule = {
  id: 'sizes-named',
  level: 'query',
  title: 'Sizes keep their names',
  meaning: 'An instruction is for “size S only”, and the draft names its sizes otherwise.',
  reason: 'The knitter of size 1 does not know whether she is meant.',
  needsReplay: false,
  wrong: {
    draft:
      '# Tide Cap\n\n**Sizes:** 1 (2, 3)\n\n**Finished circumference:** 48 (52, 56) cm\n\nCO 96 (104, 112) sts.\n\nRow 1: Knit.\n\nFor S only, knit 2 more rows.\n',
  },
  right: {
    draft:
      '# Tide Cap\n\n**Sizes:** 1 (2, 3)\n\n**Finished circumference:** 48 (52, 56) cm\n\nCO 96 (104, 112) sts.\n\nRow 1: Knit.\n\nSize 1 only: Knit 2 more rows.\n',
  },
  check: (context): readonly Finding[] => {
    const { sizes } = context.pattern;
    if (sizes.length < 2) return [];
    const names = new Set(sizes.map((name) => name.toUpperCase().trim()));
    const front = stretches(context)
      .filter((one) => one.role !== 'work')
      .map((one) => one.text)
      .join('\n');
    for (const stretch of stretches(context)) {
      const match = stretch.role === 'work' ? label.exec(stretch.text) : null;
      const words = match?.[1] ?? match?.[2];
      if (match === null || words === undefined) continue;
      const unknown = words.split(/\s*(?:,|and|&|or)\s*/).filter((name) => !names.has(name) && !new RegExp(`\\b${name}\\b`).test(front));
      const [name] = unknown;
      if (name === undefined || sizes.some((each) => each.toUpperCase().startsWith(name))) continue;
      const start = stretch.start + match.index;
      return [
        found(
          context,
          sizesNamed,
          { start, end: start + match[0].length },
          `“${match[0].trim()}”: the sizes of this draft are ${sizes.join(', ')}. Which of them is ${name}?`,
        ),
      ];
    }
    return [];
  },
};
