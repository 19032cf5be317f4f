import { found, stretches } from './facts/blocks.ts';
import { denies, sentencesOf } from './facts/child.ts';
import type { Finding, Rule } from './rule.ts';

/** Parts that are made for themselves or picked up: whoever has them in the draft names them there too. */
const parts = ['sleeve', 'hood', 'collar', 'heel'];

export const templateLeftovers: Rule = {
  id: 'template-leftovers',
  level: 'style',
  title: 'The introduction speaks of this pattern',
  meaning: 'The introduction or the notes name a part that the instructions never make.',
  reason: 'A sentence taken over from another pattern makes the knitter look for a missing page.',
  needsReplay: false,
  wrong: {
    draft: `# Kelp Cap

A cap in the round. Both sleeves are worked on the same needles.

Cast on 96 sts.

Row 1: Knit.
`,
  },
  right: {
    draft: `# Kelp Cap

A cap in the round.

Cast on 96 sts.

Row 1: Knit.
`,
  },
  check(context): readonly Finding[] {
    if (context.replay.entries.length === 0) return [];
    const made = stretches(context)
      .filter((one) => one.role === 'work' || one.role === 'heading')
      .map((one) => one.text.toLowerCase())
      .join('\n');
    const told = sentencesOf(context).filter((one) => one.role === 'front' && !denies(one.text));
    return parts.flatMap((part) => {
      if (made.includes(part)) return [];
      const word = new RegExp(`\\b${part}s?\\b`);
      const one = told.find((each) => word.test(each.text));
      const at = one === undefined ? null : word.exec(one.text);
      if (one === undefined || at === null) return [];
      const start = one.span.start + at.index;
      return [
        found(
          context,
          templateLeftovers,
          { start, end: start + at[0].length },
          `"${at[0]}" is named here, and the instructions make none. Has the sentence stayed from another pattern?`,
        ),
      ];
    });
  },
};
