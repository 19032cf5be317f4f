/**
 * A row that is shaped by a command behind its text: "Next row: Knit, dec 1 st at each end", "Next row: Dec 1 st at each end".
 */
import type { Label, Plain, Segment, Shape, Span, Statement, Step } from './tree.ts';

/** The row that carries the shaping is the one being worked. */
export function onThisRow(shape: Shape): Shape {
  if (shape.schedule.length > 0) return shape;
  const segment: Segment = { type: 'segment', kind: 'this', n: null, k: null, more: 'plain', until: null, span: shape.span };
  return { ...shape, schedule: [segment] };
}

const fabricOfVerb: Readonly<Record<string, string>> = { k: 'knit', p: 'purl', rib: 'rib', patt: 'patt' };

/**
 * The row with the shaping inside it: rows worked plainly, with the command among them. Null when the steps before the
 * command are more than one run over the whole row, so that the two cannot be told apart.
 */
export function shapedRow(row: { readonly label: Label | null; readonly steps: readonly Step[]; readonly does: Statement | null }, shape: Shape, span: Span): { readonly does: Statement; readonly steps: Step[] } | null {
  const inside = onThisRow(shape);
  const { does } = row;
  if (does !== null) return does.type === 'plain' || does.type === 'until' ? { does: { ...does, inside: [...does.inside, inside], span }, steps: [...row.steps] } : null;
  const worked = row.steps.filter((step) => step.type !== 'change' && step.type !== 'remark');
  const only = worked[0];
  if (worked.length !== 1 || only === undefined) return null;
  const run = only.type === 'repeat' && only.form === 'run' && only.extent?.kind === 'end' ? only.verb : only.type === 'work' && only.n === null && (only.stitch === 'k' || only.stitch === 'p') ? only.stitch : undefined;
  if (run === undefined) return null;
  const plain: Plain = {
    type: 'plain', count: { type: 'count', values: [1], span: only.span }, unit: row.label?.unit ?? 'row', fabric: fabricOfVerb[run] ?? null, begin: null, beginRow: null, of: null, ending: null, inside: [inside], stated: [], span,
  };
  return { does: plain, steps: row.steps.filter((step) => step !== only) };
}
