import type { Span } from '../src/manuscript/manuscript.ts';
import { found } from './facts/blocks.ts';
import { holderTool } from './facts/tools.ts';
import { walkPattern } from './facts/walk.ts';
import { counted } from './facts/wording.ts';
import type { Finding, Rule } from './rule.ts';

export const holderNumbers: Rule = {
  id: 'holder-numbers',
  level: 'query',
  title: 'As many holders are listed as are in use at once',
  meaning: 'More sets of stitches wait on holders at the same time than the materials list holders.',
  reason: 'The knitter looks for something to hold live stitches in the middle of a row.',
  needsReplay: false,
  wrong: {
    draft: `# Kelp Vest

Notions: 1 stitch holder, tapestry needle

## Back

Cast on 40 sts.

Row 1 (RS): Knit.

Slip 40 sts onto a holder.

## Front

Cast on 40 sts.

Row 1 (RS): Knit.

Slip 40 sts onto a holder.

## Finishing

Graft the held sts together.
`,
  },
  right: {
    draft: `# Kelp Vest

Notions: 2 stitch holders, tapestry needle

## Back

Cast on 40 sts.

Row 1 (RS): Knit.

Slip 40 sts onto a holder.

## Front

Cast on 40 sts.

Row 1 (RS): Knit.

Slip 40 sts onto a holder.

## Finishing

Graft the held sts together.
`,
  },
  check(context): readonly Finding[] {
    const { notions } = context.pattern.front;
    const holders = notions.filter((notion) => notion.name === 'stitch holder');
    // Waste yarn and pins hold as many sets as the knitter likes.
    if (
      holders.length === 0 ||
      holders.some((one) => one.count === null || one.count.length > 1) ||
      notions.some((one) => one.name === 'waste yarn' || one.name === 'safety pin')
    )
      return [];
    const listed = holders.reduce((sum, one) => sum + (one.count![0] ?? 0), 0);
    const source = context.manuscript.source;
    let full = 0;
    let most = 0;
    let last: Span | null = null;
    walkPattern(context.pattern, (node) => {
      if (node.type === 'takeUp') full = Math.max(0, full - 1);
      if (node.type !== 'hold' || holderTool(`${node.holder} ${source.slice(node.span.start, node.span.end)}`) !== 'stitch holder') return;
      full += 1;
      if (full <= most) return;
      most = full;
      last = node.span;
    });
    if (last === null || most <= listed) return [];
    return [
      found(
        context,
        holderNumbers,
        last,
        `This is the ${most === 2 ? 'second' : most === 3 ? 'third' : `${most}th`} set of stitches on a holder at once, and the materials list ${counted(listed, 'holder')}. Are ${most} needed?`,
        { stated: listed, replayed: most, also: [holders[0]!.span] },
      ),
    ];
  },
};
