import { findingOf, rootsOf, telling } from './observed.ts';
import type { Rule } from './rule.ts';
import { excerpt } from './telling.ts';

export const markerInStitch: Rule = {
  id: 'marker-in-stitch',
  level: 'query',
  title: 'No decrease or crossing is worked across a marker',
  meaning: 'A stitch takes loops from both sides of a marker, and the row does not say what becomes of the marker.',
  reason: 'The knitter has to take the marker off and guess on which side it goes back.',
  needsReplay: true,
  wrong: {
    draft: '# Reef Shawl Tab\n\nCO 20 sts.\n\nRow 1 (RS): K10, pm, k10.\nRow 2: Purl.\nRow 3: K9, k2tog, k9. 19 sts.\n\nBO all sts.\n',
  },
  right: {
    draft: '# Reef Shawl Tab\n\nCO 20 sts.\n\nRow 1 (RS): K10, pm, k10.\nRow 2: Purl.\nRow 3: K8, k2tog, sm, k10. 19 sts.\n\nBO all sts.\n',
  },
  check: (context) =>
    rootsOf(context, 'markerInStitch').map((root) => {
      const { head } = telling(context, root.met);
      return findingOf(context, root, {
        rule: markerInStitch.id,
        level: 'query',
        message: `${head}${excerpt(context, root.met.span)} takes stitches from both sides of a marker. Should the row begin a stitch earlier or later, or is the marker to be moved?`,
      });
    }),
};
