import { found } from './facts/blocks.ts';
import { listed, listsTools, needsOf } from './facts/tools.ts';
import { excerpt } from './facts/wording.ts';
import type { Finding, Rule } from './rule.ts';

const article = (name: string): string =>
  name === 'waste yarn' ? name : name === 'double-pointed needle' || name === 'button' ? `${name}s` : `a ${name}`;

export const toolNotListed: Rule = {
  id: 'tool-not-listed',
  level: 'query',
  title: 'Every tool the instructions need is in the list of materials',
  meaning: 'A stitch or a step calls for a tool (cable needle, marker, holder) that is not among the things to have ready.',
  reason: 'The knitter stands with stitches on the needle and has to go and look for something to hold them.',
  needsReplay: false,
  wrong: {
    draft: `# Kelp Band

Notions: tapestry needle

Cast on 12 sts.

Row 1 (RS): P3, C6B, p3.

Row 2: K3, p6, k3.
`,
  },
  right: {
    draft: `# Kelp Band

Notions: cable needle, tapestry needle

Cast on 12 sts.

Row 1 (RS): P3, C6B, p3.

Row 2: K3, p6, k3.
`,
  },
  check(context): readonly Finding[] {
    if (!listsTools(context)) return [];
    return needsOf(context)
      .filter((need) => !listed(context, need.tool))
      .map((need) =>
        found(
          context,
          toolNotListed,
          need.span,
          `"${excerpt(context.manuscript.source, need.span)}" needs ${article(need.tool)}, and the materials list none. Add it to the list.`,
        ),
      );
  },
};
