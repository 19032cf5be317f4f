import { found } from './facts/blocks.ts';
import { excerpt } from './facts/wording.ts';
import type { Finding, Rule } from './rule.ts';
import { statementsOf } from './tree-walk.ts';

/** Words that settle how increases or decreases are made, wherever they stand. */
const settled = (source: string, change: 'inc' | 'dec'): boolean =>
  change === 'inc'
    ? /\binc(?:rease)?(?:\(s\)|s|\(d\))?[\s.,]{0,3}(?:=|:|–|—|-|\bby\b)|\b(?:increas(?:e|ing|es)|inc)\b[^.;\n]{0,40}\b(?:by|using|with|work(?:ing|ed)?|m1\w?|kfb|lifted|yo)\b|\bm1[lr]?\b|\bkfb\b|\bmake (?:1|one)\b|\bfront and back\b/i.test(
        source,
      )
    : /\bdec(?:rease)?(?:\(s\)|s|\(d\))?[\s.,]{0,3}(?:=|:|–|—|-|\bby\b)|\b(?:decreas(?:e|ing|es)|dec)\b[^.;\n]{0,40}\b(?:by|using|with|work(?:ing|ed)?|k2\s?tog|ssk|skp)\b|\bk2\s?tog\b|\bssk\b|\bskp\b|\b(?:knit|work) (?:2|two) (?:sts? )?tog/i.test(
        source,
      );

export const methodLeftOpen: Rule = {
  id: 'method-left-open',
  level: 'style',
  title: 'How increases and decreases are made is said once',
  meaning: 'The draft increases or decreases along its edges, and nowhere says by which method.',
  reason: 'Two knitters make two edges, and the seams of the pieces do not match.',
  needsReplay: false,
  wrong: {
    draft:
      '# Dory Sleeve\n\nCO 40 sts.\n\nRow 1 (RS): Knit.\n\nRow 2: Purl.\n\nContinue in st st, inc 1 st at each end of next and every foll 4th row until there are 50 sts.\n\nBO all sts.\n',
  },
  right: {
    draft:
      '# Dory Sleeve\n\nIncrease by working m1 one stitch in from each edge.\n\nCO 40 sts.\n\nRow 1 (RS): Knit.\n\nRow 2: Purl.\n\nContinue in st st, inc 1 st at each end of next and every foll 4th row until there are 50 sts.\n\nBO all sts.\n',
  },
  check: (context): readonly Finding[] => {
    const { source } = context.manuscript;
    return (['inc', 'dec'] as const).flatMap((change): Finding[] => {
      if (settled(source, change)) return [];
      const first = statementsOf(context.pattern).find(
        ({ statement }) => statement.type === 'shape' && statement.change === change && statement.place !== 'centre',
      );
      if (first === undefined) return [];
      const { span } = first.statement;
      return [
        found(
          context,
          methodLeftOpen,
          span,
          `“${excerpt(source, span, 40)}” leaves open how the stitch is ${change === 'inc' ? 'made' : 'taken away'}, and no other place says so. Name the method once, and how far from the edge.`,
        ),
      ];
    });
  },
};
