import { found } from './facts/blocks.ts';
import { idleTools } from './facts/tools.ts';
import type { Finding, Rule } from './rule.ts';

export const toolNotUsed: Rule = {
  id: 'tool-not-used',
  level: 'query',
  title: 'Everything in the list of materials is used',
  meaning: 'The materials list a tool that no step of the draft calls for.',
  reason: 'The knitter buys what is not needed, or a step that needs it has been lost.',
  needsReplay: false,
  wrong: {
    draft: `# Kelp Band

Notions: cable needle, tapestry needle

Cast on 12 sts.

Row 1 (RS): P3, k6, p3.

Row 2: K3, p6, k3.
`,
  },
  right: {
    draft: `# Kelp Band

Notions: tapestry needle

Cast on 12 sts.

Row 1 (RS): P3, k6, p3.

Row 2: K3, p6, k3.
`,
  },
  check(context): readonly Finding[] {
    return idleTools(context).map((idle) =>
      found(
        context,
        toolNotUsed,
        idle.span,
        `The materials list "${idle.tool}", and nothing in the draft uses one. Take it out, or has a step been lost?`,
      ),
    );
  },
};
