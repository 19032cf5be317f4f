import { found } from './facts/blocks.ts';
import { dialectOf, type Seen } from './facts/forms.ts';
import { listed } from './facts/wording.ts';
import type { Finding, Rule } from './rule.ts';

const words = (seen: readonly Seen[]): string => {
  const each = [...new Set(seen.map((one) => one.words.toLowerCase()))].slice(0, 4).map((word) => `"${word}"`);
  return listed(each);
};

export const mixedTerms: Rule = {
  id: 'mixed-terms',
  level: 'style',
  title: 'American or British terms, not both',
  meaning: 'The draft mixes words of American and British patterns, or uses words that the house does not.',
  reason: 'A reader who meets both wonders which side of the ocean the needle numbers and stitch names come from.',
  needsReplay: false,
  wrong: {
    draft: `# Kelp Scarf

Tension: 20 sts and 28 rows to 10 cm in stocking stitch

Cast on 40 sts.

Row 1: Knit.

Cast off 20 sts at beg of next row. 20 sts.

Bind off all sts.
`,
  },
  right: {
    draft: `# Kelp Scarf

Tension: 20 sts and 28 rows to 10 cm in stocking stitch

Cast on 40 sts.

Row 1: Knit.

Cast off 20 sts at beg of next row. 20 sts.

Cast off all sts.
`,
  },
  check(context): readonly Finding[] {
    const { us, uk, dangerous } = dialectOf(context);
    const findings = dangerous
      .slice(0, 1)
      .map((pair) =>
        found(
          context,
          mixedTerms,
          pair.uk.span,
          `Both "${pair.us.words}" and "${pair.uk.words}" are used. ${pair.note} Which fabric is meant?`,
          { level: 'query', also: [pair.us.span] },
        ),
      );
    const { terms } = context.house;
    const odd = terms === 'US' ? uk : terms === 'UK' ? us : us.length < uk.length ? us : uk;
    const [first] = odd;
    if (first === undefined || (terms === null && (us.length === 0 || uk.length === 0))) return findings;
    const whose = odd === us ? 'American' : 'British';
    const other = odd === us ? 'British' : 'American';
    const message =
      terms === null
        ? `${words(odd)}: ${whose}, in a draft with ${other} terms (${words(odd === us ? uk : us)}). Keep to one.`
        : `${words(odd)}: ${whose}, and the house writes ${other} terms.`;
    return [...findings, found(context, mixedTerms, first.span, message, { also: odd.slice(1).map((one) => one.span) })];
  },
};
