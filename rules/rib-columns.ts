import type { Row } from '../grammar/tree.ts';
import { labelOf } from './labels.ts';
import { roots } from './observed.ts';
import type { Context, Finding, Rule } from './rule.ts';
import { type Cell, cellsOf, repeatOf } from './stitch-row.ts';
import { counted, sectionTitle } from './telling.ts';
import { rowsOf, sideOf } from './tree-walk.ts';

const plain = (cells: readonly Cell[]): boolean => cells.every((cell) => cell.kind === 'plain' && cell.face !== null);
const mixed = (cells: readonly Cell[]): boolean => new Set(cells.map((cell) => cell.face)).size > 1;

export const ribColumns: Rule = {
  id: 'rib-columns',
  level: 'query',
  title: 'Knits stand above knits in rib',
  meaning: 'Two rows of a rib agree column by column but for one stitch near the edge.',
  reason: 'The count is right, and a knit stands where the row below has a purl.',
  needsReplay: true,
  wrong: {
    draft:
      '# Buoy Rib\n\nCO 21 sts.\n\nRow 1 (RS): K1, *p1, k1; rep from * to end.\n\nRow 2: P3, *k1, p1; rep from * to end.\n\nRep last 2 rows 4 more times.\n\nBO all sts.\n',
  },
  right: {
    draft:
      '# Buoy Rib\n\nCO 21 sts.\n\nRow 1 (RS): K1, *p1, k1; rep from * to end.\n\nRow 2: P1, *k1, p1; rep from * to end.\n\nRep last 2 rows 4 more times.\n\nBO all sts.\n',
  },
  check: (context): readonly Finding[] => {
    const wrong = new Set(roots(context).map((root) => root.met.node));
    let below: Ribbed | null = null;
    const out: Finding[] = [];
    for (const { row, section } of rowsOf(context.pattern)) {
      const own = ribbed(context, row, section);
      const pair = own === null || below === null || wrong.has(row) || below.section !== section ? null : aligned(below, own);
      if (own !== null && pair !== null) {
        const off = pair.above.flatMap((cell, at) => (cell.face === pair.below[at]?.face ? [] : [at]));
        const [at] = off;
        // A border of its own may stand at the very edge.
        if (off.length === 1 && at !== undefined && at > 0 && at < pair.above.length - 1)
          out.push({
            rule: ribColumns.id,
            level: 'query',
            span: (pair.above[at] as Cell).step.span,
            section: sectionTitle(context, section),
            row: labelOf(row),
            sizes: [],
            message: `In ${labelOf(row) ?? 'this row'} and ${below?.label ?? 'the row before'} knits stand above knits and purls above purls, but for ${counted(1)} near the edge. Is a number in one of the two rows wrong?`,
            stated: null,
            replayed: null,
            fix: null,
          });
      }
      below = own;
    }
    return out;
  },
};

interface Ribbed {
  readonly section: number;
  readonly label: string | null;
  readonly ws: boolean;
  readonly edges: readonly [readonly Cell[], readonly Cell[]];
  readonly repeat: readonly Cell[];
}

/** A row of knits and purls with its one repeat; null for any other row. */
function ribbed(context: Context, row: Row, section: number): Ribbed | null {
  const side = sideOf(context, row);
  const found = repeatOf(row);
  if (side === null || found === null) return null;
  const ws = side === 'WS';
  const [first, repeat, last] = [found.before, found.children, found.after].map((steps) => cellsOf(context.pattern, steps, ws));
  if (!first || !repeat || !last || repeat.length === 0) return null;
  return plain([...first, ...repeat, ...last]) && mixed(repeat) ? { section, label: labelOf(row), ws, edges: [first, last], repeat } : null;
}

/** Both rows over the same number of stitches, seen from the right side; null where no number of up to forty suits both. */
function aligned(below: Ribbed, above: Ribbed): { readonly below: readonly Cell[]; readonly above: readonly Cell[] } | null {
  const fixed = (row: Ribbed): number => row.edges[0].length + row.edges[1].length;
  const passes = (row: Ribbed, width: number): number => (width - fixed(row)) / row.repeat.length;
  const suits = (row: Ribbed, width: number): boolean => passes(row, width) >= 2 && Number.isInteger(passes(row, width));
  for (let width = 6; width <= 40; width += 1) {
    if (!suits(below, width) || !suits(above, width)) continue;
    return { below: drawn(below, passes(below, width)), above: drawn(above, passes(above, width)) };
  }
  return null;
}

function drawn(row: Ribbed, passes: number): readonly Cell[] {
  const cells = [...row.edges[0], ...Array.from({ length: passes }, () => row.repeat).flat(), ...row.edges[1]];
  return row.ws ? cells.reverse() : cells;
}
