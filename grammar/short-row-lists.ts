/**
 * Short rows written one after another: "k90, turn; k84, turn; k78, turn" is three rows, and "k12, turn, p12; k9, turn,
 * p9" four. A row ends where the work turns; a row that comes back ends at the semicolon before the next row out.
 */
import type { Row, Stated, Step } from './tree.ts';

/** Steps that may stand between two turns without making a row: "turn, CO 9, turn". */
const asides: ReadonlySet<string> = new Set(['castOn', 'change', 'remark', 'marker', 'join', 'hold', 'stated']);
/** Marks made by the turn itself: "k24, turn, DS" is one row. */
const madeAtTurn = (step: Step): boolean =>
  (step.type === 'work' && ['DS (make)', 'byo', 'yo'].includes(step.stitch)) || (step.type === 'change' && step.what === 'pin');

function turns(step: Step | undefined): boolean {
  return step?.type === 'turn' && step.not !== true && step.quarter !== true;
}

/** The verb of a run over all that is left: knit or purl. */
function toEnd(step: Step): string | null {
  if (step.type !== 'repeat' || step.form !== 'run' || step.extent?.kind !== 'end') return null;
  return step.verb === 'k' || step.verb === 'p' ? step.verb : null;
}

/** Whether a step turns, or holds turns: a star of short rows. */
function turnsWithin(step: Step): boolean {
  return turns(step) || (step.type === 'repeat' && step.children.some(turnsWithin));
}

/** The turns that end a row; two with nothing but casting on between them cancel each other. */
function endings(steps: readonly Step[]): ReadonlySet<Step> {
  const ends = new Set<Step>();
  let open: Step | null = null;
  let cast = false;
  for (const step of steps) {
    if (turns(step)) {
      if (open !== null && cast) {
        ends.delete(open);
        open = null;
      } else {
        ends.add(step);
        open = step;
      }
      cast = false;
    } else if (step.type === 'castOn') cast = true;
    else if (!asides.has(step.type)) open = null;
  }
  return ends;
}

/**
 * Cuts the steps of a row behind its turns.
 * @param between the author's text between two offsets, to find the semicolons
 */
export function rowsOfList(steps: readonly Step[], between: (start: number, end: number) => string): Step[][] {
  const pieces: Step[][] = [];
  let piece: Step[] = [];
  let back = false;
  const ends = endings(steps);
  const lastWorked = steps.findLastIndex((each) => !asides.has(each.type) && each.type !== 'resolve' && !madeAtTurn(each));
  const lastTurning = steps.findLastIndex(turnsWithin);
  steps.forEach((step, index) => {
    const last = steps.slice(0, index).findLast((each) => each.type !== 'resolve');
    const worked = piece.some((each) => !asides.has(each.type) && !turns(each));
    if (last !== undefined && ends.has(last) && !turns(step) && worked && index <= lastWorked) {
      pieces.push(piece);
      piece = [];
      back = true;
    } else if (
      back &&
      worked &&
      !turns(step) &&
      last !== undefined &&
      index <= lastTurning &&
      /[;\n]/.test(between(last.span.end, step.span.start))
    ) {
      pieces.push(piece);
      piece = [];
      back = false;
    }
    // "…, k to end; p to end": nothing is left for the purl stitches but the next row.
    else if (
      last !== undefined &&
      worked &&
      toEnd(last) !== null &&
      toEnd(step) !== null &&
      toEnd(last) !== toEnd(step) &&
      pieces.length > 0
    ) {
      pieces.push(piece);
      piece = [];
    }
    if (step.type === 'andSoOn' && (piece.length === 0 || (back && pieces.length > 0))) {
      if (piece.length > 0) pieces.push(piece);
      piece = [];
      pieces.push([step]);
      return;
    }
    piece.push(step);
  });
  if (piece.length > 0) pieces.push(piece);
  return pieces;
}

/** The rows of a list, each with the label of the list and the counts that stand in it. */
export function splitRow(row: Row, between: (start: number, end: number) => string): (Row | Step)[] {
  if (!row.children.some(turns)) return [row];
  const pieces = rowsOfList(row.children, between);
  if (pieces.length < 2) return [row];
  return pieces.map((children, index): Row | Step => {
    const only = children.length === 1 ? children[0] : undefined;
    if (only?.type === 'andSoOn') return only;
    const start = index === 0 ? row.span.start : (children[0]?.span.start ?? row.span.start);
    const next = pieces[index + 1]?.[0]?.span.start ?? Number.POSITIVE_INFINITY;
    const stated: Stated[] = row.stated.filter((each) => each.span.start >= start && each.span.start < next);
    const end = index === pieces.length - 1 ? row.span.end : (children.at(-1)?.span.end ?? row.span.end);
    return { ...row, children, does: index === 0 ? row.does : null, stated, span: { start, end } };
  });
}
