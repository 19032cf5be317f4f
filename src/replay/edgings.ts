/**
 * Edgings knitted on to live stitches: the stitches of the piece wait on the left needle below those of the edging,
 * and each joining stitch takes one of them.
 *
 *     left needle   piece piece piece | edging edging edging
 *     base ─────────────────────────── border ───────── tip
 */
import type { Statement, Step, Work } from '../../grammar/tree.ts';
import type { Hands, Trouble } from './hands.ts';
import { borderOf, live, type Mark, type Needle, type Needles } from './needles.ts';

function joins(steps: readonly Step[]): boolean {
  return steps.some(
    (step) =>
      (step.type === 'work' && step.joins?.of === 'live') ||
      (step.type === 'repeat' && (joins(step.children) || joins(step.once))) ||
      (step.type === 'needlePart' && joins(step.children)),
  );
}

/** Whether the statements that follow, up to the next cast-on, join an edging to live stitches. */
export function edgingAhead(statements: readonly Statement[]): boolean {
  for (const statement of statements) {
    if (statement.type === 'castOn') return false;
    if (statement.type === 'row' && joins(statement.children)) return true;
  }
  return false;
}

/** Decreases that may take the last stitch of an edging with the first of the piece. */
const tie = /^(?:kNtog|pNtog|ssk|skp|skpo|ssp|k2tog tbl|p2tog tbl)$/;

/** Whether rows that follow, up to the next cast-on, end with a decrease and a turn, as an edging does that takes up the stitches beside it. */
export function tiesAhead(statements: readonly Statement[]): boolean {
  for (const statement of statements) {
    if (statement.type === 'castOn') return false;
    if (statement.type !== 'row') continue;
    const steps = statement.children.filter((step) => step.type !== 'remark' && step.type !== 'stated' && step.type !== 'change');
    const [before, last] = steps.slice(-2);
    if (last?.type === 'turn' && last.not !== true && before?.type === 'work' && tie.test(before.stitch)) return true;
  }
  return false;
}

/** Marks where the live stitches of the piece end, before the edging's own are cast on. */
export function drawBorder(needles: Needles): void {
  const n = live(needles);
  if (n === 0) return;
  if (needles.mode === 'round') {
    // Cast on before the first stitch of the round: the edging begins from the side that faces.
    if (needles.left.n === 0) {
      needles.left = { n, marks: [] };
      needles.right = { n: 0, marks: [] };
    }
    needles.mode = 'flat';
    needles.suspended = false;
  }
  const needle: Needle = needles.left.n > 0 ? needles.left : needles.right;
  needle.marks.push({ kind: 'border', name: null, at: needle.n });
}

/** Height at which the edging begins on the needle that will be worked. */
export function headBorder(needles: Needles): number {
  if (needles.begun || needles.left.n > 0) return borderOf(needles);
  return needles.right.marks.find((mark) => mark.kind === 'border')?.at ?? 0;
}

/** Lets a joining stitch reach below the border; null when enough live stitches are there. */
export function joinBelow(hands: Hands, step: Work): Trouble | null {
  if (step.joins?.of !== 'live') return null;
  const { left } = hands.needles;
  const border: Mark | undefined = left.marks.find((mark) => mark.kind === 'border');
  if (border === undefined) return null;
  const count = step.joins.count;
  if (border.at < count) return { kind: 'tooFew', span: step.span, numbers: { left: border.at, wanted: count }, words: { place: 'join' } };
  border.at -= count;
  hands.base = border.at;
  left.marks = left.marks.filter((mark) => mark !== border || mark.at > 0).sort((a, b) => a.at - b.at);
  return null;
}
