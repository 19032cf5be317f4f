import type { Rule } from './rule.ts';

/** Spoken of the stets of a draft once every other rule has spoken; so it is not checked beside them. */
export const staleStet: Rule = {
  id: 'stale-stet',
  level: 'query',
  title: 'Every “let it stand” lets something stand',
  meaning: 'A stet names a rule that finds nothing in the block below it, or names no rule there is, or gives no reason.',
  reason: 'An exception that outlives its cause hides the next slip in the same place.',
  needsReplay: false,
  wrong: {
    draft:
      '# Gale Swatch\n\nCO 20 sts.\n\n::stet[the odd count is meant]{rule=count-mismatch}\n\nRow 1: K5, p10, k5—20 sts.\nRow 2: Purl.\n\nBO all sts.\n',
  },
  right: { draft: '# Gale Swatch\n\nCO 20 sts.\n\nRow 1: K5, p10, k5—20 sts.\nRow 2: Purl.\n\nBO all sts.\n' },
  check: () => [],
};
