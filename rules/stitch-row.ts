/** One repeat of a row stitch by stitch, as it looks from the right side: for comparing rows that stand above each other. */
import type { Row, Step } from '../grammar/tree.ts';
import type { Pattern } from '../src/pattern/pattern.ts';
import { entryOf, workUse } from './use.ts';

export interface Cell {
  /** Knit or purl as seen from the right side; null where that is open. */
  readonly face: 'k' | 'p' | null;
  readonly kind: string;
  readonly lean: 'left' | 'right' | 'centre' | null;
  readonly step: Step;
  /** First cell of its stitch: a crossing of six is six cells. */
  readonly head: boolean;
}

const turned = (face: 'k' | 'p' | undefined, ws: boolean): 'k' | 'p' | null =>
  face === undefined ? null : ws ? (face === 'k' ? 'p' : 'k') : face;

/** The stitches of steps in the order in which they are worked; null where their number hangs on the needle. */
export function cellsOf(pattern: Pattern, steps: readonly Step[], ws = false): Cell[] | null {
  const out: Cell[] = [];
  for (const step of steps) {
    if (step.type === 'remark' || step.type === 'stated' || step.type === 'resolve' || step.type === 'marker' || step.type === 'change')
      continue;
    if (step.type === 'work') {
      const entry = entryOf(pattern, step);
      const use = workUse(pattern, step);
      if (entry === undefined || use === null) return null;
      const cells = entry.kind === 'plain' || entry.kind === 'cable' || entry.kind === 'twist' ? use.makes : 1;
      if (cells > 400) return null;
      for (let at = 0; at < cells; at += 1)
        out.push({
          face: entry.kind === 'plain' ? turned(entry.face, ws) : null,
          kind: entry.kind,
          lean: entry.lean ?? null,
          step,
          head: at === 0 || entry.kind === 'plain',
        });
      continue;
    }
    if (
      step.type === 'repeat' &&
      step.form !== 'run' &&
      step.extent?.kind === 'times' &&
      step.extent.count.values.length === 1 &&
      (step.extent.sense !== 'plain' || step.extent.form === 'bracket') &&
      step.once.length === 0 &&
      step.ending === null
    ) {
      const inner = cellsOf(pattern, step.children, ws);
      const times = (step.extent.count.values[0] ?? 0) + (step.extent.sense === 'more' ? 1 : 0);
      if (inner === null || inner.length * times > 400) return null;
      for (let pass = 0; pass < times; pass += 1) out.push(...inner);
      continue;
    }
    return null;
  }
  return out;
}

/** The one repeat of a row that goes to its end, with the steps before and after it; null for rows of another build. */
export function repeatOf(
  row: Row,
): { readonly before: readonly Step[]; readonly children: readonly Step[]; readonly after: readonly Step[]; readonly step: Step } | null {
  const steps = row.children.filter((step) => step.type !== 'remark' && step.type !== 'stated');
  const repeats = steps.filter((step) => step.type === 'repeat' && step.form !== 'run');
  const [only] = repeats;
  if (repeats.length !== 1 || only?.type !== 'repeat' || only.ending !== null || only.once.length > 0 || only.children.length === 0)
    return null;
  if (only.extent?.kind !== 'end' && only.extent?.kind !== 'last') return null;
  const at = steps.indexOf(only);
  return { before: steps.slice(0, at), children: only.children, after: steps.slice(at + 1), step: only };
}

/** A row as it lies seen from the right side, right to left, its repeat twice; rows of the wrong side are turned round. */
export function stripOf(pattern: Pattern, row: Row, ws: boolean): readonly Cell[] | null {
  const found = repeatOf(row);
  if (found === null) {
    const cells = cellsOf(pattern, row.children, ws);
    return cells === null || cells.length === 0 ? null : ws ? [...cells].reverse() : cells;
  }
  const before = cellsOf(pattern, found.before, ws);
  const inner = cellsOf(pattern, found.children, ws);
  const after = cellsOf(pattern, found.after, ws);
  if (before === null || inner === null || after === null) return null;
  // Two repeats with both edges show every neighbourhood there is.
  const cells = [...before, ...inner, ...inner, ...after];
  return ws ? [...cells].reverse() : cells;
}
