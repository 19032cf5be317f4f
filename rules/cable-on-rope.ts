import type { Row } from '../grammar/tree.ts';
import type { Pattern } from '../src/pattern/pattern.ts';
import { labelOf } from './labels.ts';
import type { Finding, Rule } from './rule.ts';
import { type Cell, stripOf } from './stitch-row.ts';
import { excerpt, sectionTitle } from './telling.ts';
import { rowsOf, sideOf } from './tree-walk.ts';

interface Strip {
  readonly row: Row;
  readonly cells: readonly Cell[];
}

/** One repeat of a row as it lies seen from the right side; null where its stitches cannot be told one by one. */
function strip(pattern: Pattern, row: Row, ws: boolean): Strip | null {
  const cells = stripOf(pattern, row, ws);
  return cells === null ? null : { row, cells };
}

export const cableOnRope: Rule = {
  id: 'cable-on-rope',
  level: 'query',
  title: 'A crossing lies on its rope',
  meaning:
    'The stitches that are crossed were purl stitches, or a mixture, in the row before, while the same crossing lies on knit stitches elsewhere or a rope of its width stands beside it.',
  reason: 'The counts are right, so nobody notices until the cable jumps aside.',
  needsReplay: true,
  wrong: {
    draft:
      '# Hawse Strip\n\nCO 24 sts.\n\nRow 1 (RS): *P3, k6, p3; rep from * to end.\n\nRow 2: *K3, p6, k3; rep from * to end.\n\nRow 3: *P2, C6F, p4; rep from * to end.\n\nRow 4: *K3, p6, k3; rep from * to end.\n\nBO all sts.\n',
  },
  right: {
    draft:
      '# Hawse Strip\n\nCO 24 sts.\n\nRow 1 (RS): *P3, k6, p3; rep from * to end.\n\nRow 2: *K3, p6, k3; rep from * to end.\n\nRow 3: *P3, C6F, p3; rep from * to end.\n\nRow 4: *K3, p6, k3; rep from * to end.\n\nBO all sts.\n',
  },
  check: (context): readonly Finding[] => {
    const out: Finding[] = [];
    let below: (Strip & { readonly section: number }) | null = null;
    for (const { row, section } of rowsOf(context.pattern)) {
      const side = sideOf(context, row);
      const own = side === null ? null : strip(context.pattern, row, side === 'WS');
      if (own !== null && below !== null && below.section === section && own.cells.length === below.cells.length && side === 'RS') {
        const slip = offRope(own.cells, below.cells);
        if (slip !== null) {
          out.push({
            rule: cableOnRope.id,
            level: 'query',
            span: slip.step.span,
            section: sectionTitle(context, section),
            row: labelOf(row),
            sizes: [],
            message: `${excerpt(context, slip.step.span)} crosses ${slip.width} stitches, of which ${slip.purl} ${slip.purl === 1 ? 'is a purl stitch' : 'are purl stitches'} in ${labelOf(below.row) ?? 'the row before'}; the rope of ${slip.width} knit stitches begins ${Math.abs(slip.shift)} ${Math.abs(slip.shift) === 1 ? 'stitch' : 'stitches'} ${slip.shift > 0 ? 'later' : 'earlier'}. Are the stitches before it miscounted?`,
            stated: null,
            replayed: null,
            fix: null,
          });
        }
      }
      // A row whose faces are open ("knit the knits") keeps what stood below it.
      if (own?.cells.some((cell) => cell.face !== null)) below = { ...own, section };
      else if (below !== null && below.section !== section) below = null;
    }
    return out;
  },
};

/** The first crossing over purl stitches, where a rope of just its width lies close by. */
function offRope(
  cells: readonly Cell[],
  below: readonly Cell[],
): { step: Cell['step']; width: number; purl: number; shift: number } | null {
  for (let at = 0; at < cells.length; at += 1) {
    const cell = cells[at] as Cell;
    if (cell.kind !== 'cable' || !cell.head) continue;
    let width = 1;
    while (cells[at + width]?.step === cell.step && cells[at + width]?.head === false) width += 1;
    const under = below.slice(at, at + width);
    const purl = under.filter((each) => each.face === 'p').length;
    if (purl === 0 || under.some((each) => each.face === null)) continue;
    for (const shift of [1, -1, 2, -2]) {
      const rope = below.slice(at + shift, at + shift + width);
      const edges = [below[at + shift - 1], below[at + shift + width]];
      if (at + shift >= 0 && rope.length === width && rope.every((each) => each.face === 'k') && edges.every((each) => each?.face !== 'k'))
        return { step: cell.step, width, purl, shift };
    }
  }
  return null;
}
