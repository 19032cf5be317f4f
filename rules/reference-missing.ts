import { findingOf, rootsOf } from './observed.ts';
import type { Rule } from './rule.ts';
import { excerpt, listed } from './telling.ts';

export const referenceMissing: Rule = {
  id: 'reference-missing',
  level: 'error',
  title: 'A reference to another part leads somewhere',
  meaning: '“As given for Yoke” or “to **” points at a part or a mark that is not in the draft before it.',
  reason: 'The knitter has nothing to follow.',
  needsReplay: true,
  wrong: { draft: '# Slip Vest\n\n## Back\n\nCO 20 sts.\n\nRow 1 (RS): Knit.\nRow 2: Purl.\nBO all sts.\n\n## Front\n\nWork as given for Yoke.\n' },
  right: { draft: '# Slip Vest\n\n## Back\n\nCO 20 sts.\n\nRow 1 (RS): Knit.\nRow 2: Purl.\nBO all sts.\n\n## Front\n\nWork as given for Back.\n' },
  check: (context) =>
    rootsOf(context, 'referenceMissing').map((root) => {
      const pieces = [...new Set(context.pattern.sections.filter((section) => section.kind === 'piece' && section.span.start < root.met.span.start).map((section) => section.title))].filter((title) => title !== '').slice(0, 6);
      const have = pieces.length > 0 ? ` The parts before it are ${listed(pieces)}.` : '';
      const { name } = root.met.words;
      return findingOf(context, root, { rule: referenceMissing.id, level: 'error', message: `${excerpt(context, root.met.span)} points at ${name ? `“${name}”` : 'a part'}, which the draft does not give before this.${have}` });
    }),
};
