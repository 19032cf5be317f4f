/**
 * A row that is shaped by a command behind its text: "Next row: Knit, dec 1 st at each end", "Next row: Dec 1 st at each end".
 */
import type { AtSameTime, Label, Plain, Segment, Shape, Span, Statement, Step } from './tree.ts';

function thisRow(span: Span): Segment {
  return { type: 'segment', kind: 'this', n: null, k: null, more: 'plain', until: null, span };
}

/** "at beg of each row", "at each end of every row": under a label each of its rows. */
const everyRow = ({ kind, k, n, until, rowSide }: Segment): boolean =>
  kind === 'every' && n === null && until === null && !rowSide && (k === null || (k.length === 1 && k[0] === 1));

/** A command with no rows of its own is worked on the row it stands in. */
export function onThisRow<T extends Statement>(command: T): T {
  if (command.type === 'shape' && command.schedule.length === 1 && command.schedule.every(everyRow))
    return { ...command, schedule: [thisRow(command.span)] };
  if (command.type === 'edgeRows' && command.parts.some((part) => part.rows.length === 1 && part.rows.every(everyRow)))
    return { ...command, parts: command.parts.map((part) => (part.rows.every(everyRow) ? { ...part, rows: [thisRow(part.span)] } : part)) };
  if (command.type === 'shape' && command.schedule.length === 0) return { ...command, schedule: [thisRow(command.span)] };
  if (command.type === 'edgeRows' && command.parts.some((part) => part.rows.length === 0))
    return { ...command, parts: command.parts.map((part) => (part.rows.length === 0 ? { ...part, rows: [thisRow(part.span)] } : part)) };
  return command;
}

/**
 * Two commands of one sentence: "bind off at neck edge 3 sts once, then dec 1 st every other row" goes on at the same
 * edge; "cast off 4 sts at beg and dec 1 st at end of next row" is one row. Null when each stands for itself.
 */
export function together(first: Statement, second: Statement): Statement[] | null {
  if (second.type !== 'shape') return null;
  if (first.type === 'edgeRows' && first.parts.length === 1 && first.parts[0]?.rows.length === 0 && second.schedule.length > 0) {
    const parts = first.parts.map((part) => ({ ...part, rows: second.schedule }));
    const track: AtSameTime = { type: 'atSameTime', when: null, ending: null, children: [second], span: second.span };
    return [{ ...first, parts }, track];
  }
  const edge = first.type === 'edgeRows' || (first.type === 'shape' && first.place === 'edge') ? first.edge : null;
  if (edge !== null && second.place === 'edge' && second.edge === null) return [first, { ...second, edge }];
  return null;
}

const fabricOfVerb: Readonly<Record<string, string>> = { k: 'knit', p: 'purl', rib: 'rib', patt: 'patt' };

/**
 * The row with the shaping inside it: rows worked plainly, with the command among them. Null when the steps before the
 * command are more than one run over the whole row, so that the two cannot be told apart.
 */
export function shapedRow(
  row: { readonly label: Label | null; readonly steps: readonly Step[]; readonly does: Statement | null },
  shape: Shape,
  span: Span,
): { readonly does: Statement; readonly steps: Step[] } | null {
  const inside = onThisRow(shape);
  const { does } = row;
  if (does !== null)
    return does.type === 'plain' || does.type === 'until'
      ? { does: { ...does, inside: [...does.inside, inside], span }, steps: [...row.steps] }
      : null;
  const worked = row.steps.filter((step) => step.type !== 'change' && step.type !== 'remark');
  const only = worked[0];
  if (worked.length !== 1 || only === undefined) return null;
  const run =
    only.type === 'repeat' && only.form === 'run' && only.extent?.kind === 'end'
      ? only.verb
      : only.type === 'work' && only.n === null && (only.stitch === 'k' || only.stitch === 'p')
        ? only.stitch
        : undefined;
  if (run === undefined) return null;
  const plain: Plain = {
    type: 'plain',
    count: { type: 'count', values: [1], span: only.span },
    unit: row.label?.unit ?? 'row',
    fabric: fabricOfVerb[run] ?? null,
    begin: null,
    beginRow: null,
    of: null,
    ending: null,
    inside: [inside],
    stated: [],
    span,
  };
  return { does: plain, steps: row.steps.filter((step) => step !== only) };
}
