import type { Marker, Statement } from '../grammar/tree.ts';
import { found } from './facts/blocks.ts';
import { walk } from './facts/walk.ts';
import { counted } from './facts/wording.ts';
import type { Finding, Rule } from './rule.ts';

/** Markers that one pass through the statements leaves on the needle at most. Those in repeats are left out: how many they are differs. */
function mostAtOnce(statements: readonly Statement[]): { readonly most: number; readonly last: Marker | null } {
  const repeated = new Set<unknown>();
  let on = 0;
  let most = 0;
  let last: Marker | null = null;
  walk(statements, (node) => {
    if (node.type === 'repeat' || node.type === 'atSameTime' || node.type === 'sizeBlock')
      walk([node as Statement], (inner) => repeated.add(inner));
    if (node.type !== 'marker' || repeated.has(node)) return;
    if (node.op === 'place' && !node.atRow) on += 1;
    if (node.op === 'remove' || node.op === 'replace') on = 0;
    if (on > most) {
      most = on;
      last = node;
    }
  });
  return { most, last };
}

export const markerNumbers: Rule = {
  id: 'marker-numbers',
  level: 'query',
  title: 'As many markers are listed as are on the needle at once',
  meaning: 'The instructions place more markers than the materials list.',
  reason: 'The knitter is a marker short in the middle of a row.',
  needsReplay: false,
  wrong: {
    draft: `# Kelp Shawl

Notions: 1 stitch marker, tapestry needle

Cast on 9 sts.

Row 1: K3, pm, k3, pm, k3.

Row 2: P3, sm, p3, sm, p3.
`,
  },
  right: {
    draft: `# Kelp Shawl

Notions: 2 stitch markers, tapestry needle

Cast on 9 sts.

Row 1: K3, pm, k3, pm, k3.

Row 2: P3, sm, p3, sm, p3.
`,
  },
  check(context): readonly Finding[] {
    const markers = context.pattern.front.notions.filter((notion) => notion.name === 'stitch marker');
    if (markers.length === 0 || markers.some((one) => one.count === null || one.count.length > 1)) return [];
    const listed = markers.reduce((sum, one) => sum + (one.count![0] ?? 0), 0);
    const pieces = new Set(context.pattern.sections.map((section) => section.piece).filter((piece) => piece !== null));
    for (const piece of pieces) {
      const statements = context.pattern.sections.filter((section) => section.piece === piece).flatMap((section) => section.statements);
      const { most, last } = mostAtOnce(statements);
      if (last === null || most <= listed) continue;
      return [
        found(
          context,
          markerNumbers,
          last.span,
          `This is marker ${most} on the needle, and the materials list ${counted(listed, 'marker')}. Are ${most} needed?`,
          { stated: listed, replayed: most, also: [markers[0]!.span] },
        ),
      ];
    }
    return [];
  },
};
