/** Which side of the work faces, and where a round begins: what the needles show and what a label says. */
import type { Label, Side, Span, Statement, Step } from '../../grammar/tree.ts';
import { atBeginning, type Needles, resumeRound } from './needles.ts';
import { type Hand, handOf, met, type Play } from './play.ts';
import type { Call } from './rows.ts';
import type { Facing } from './schedule.ts';

export function otherSide(side: Side | null): Side | null {
  return side === null ? null : side === 'RS' ? 'WS' : 'RS';
}

/** Side that will face in the next row. */
export function nextSide(needles: Needles): Side | null {
  if (needles.mode === 'round' && !needles.suspended) return needles.inside === true ? 'WS' : 'RS';
  if (needles.begun || needles.left.n > 0 || needles.right.n === 0 || needles.stay === 'slide') return needles.side;
  return otherSide(needles.side);
}

/** "With RS facing, pick up …": the side that the words before the first stitch name, when the needle is empty. */
export function sideSaid(steps: readonly Step[]): Side | null {
  for (const step of steps) {
    if (step.type === 'change' && step.what === 'side')
      return /\b(ws|wrong)/i.test(step.detail) ? 'WS' : /\b(rs|right)/i.test(step.detail) ? 'RS' : null;
    if (step.type !== 'change' && step.type !== 'remark') return null;
  }
  return null;
}

/** The row picks up along an edge and ends by marking where the rounds begin. */
export function closesRound(steps: readonly Step[]): boolean {
  const last = steps.findLast((step) => step.type !== 'stated' && step.type !== 'remark');
  return last?.type === 'marker' && last.op === 'place' && last.name === 'BOR' && steps.some((step) => step.type === 'pickUp');
}

/** The same for a schedule that names sides: in a round every row is an RS row. */
export const facingOf = ({ needles }: Hand): Facing => (needles.mode === 'round' ? 'round' : nextSide(needles));

/**
 * "Cast on 6 sts. Rnd 1: …", "Pick up and k 60 sts round the armhole. Rnd 1: …": a piece whose first row is called a round is worked in the
 * round, though nothing says to join.
 */
export function roundFromStart(hand: Hand): void {
  const { needles } = hand;
  if (hand.broughtOn === true && needles.mode === 'flat' && !needles.begun && needles.left.n === 0) {
    needles.mode = 'round';
    needles.side = 'RS';
    return;
  }
  if (
    hand.rows > 0 ||
    needles.mode === 'round' ||
    needles.side !== null ||
    needles.begun ||
    needles.right.n > 0 ||
    needles.left.marks.length > 0
  )
    return;
  needles.mode = 'round';
  needles.side = 'RS';
}

/** A round after turns: the work must face the right side and stand at the beginning of the round. */
export function backToRounds(play: Play, size: number, span: Span, node: Statement, label: string | null, turns: boolean): void {
  const { needles } = handOf(play, size);
  if (!needles.suspended || turns) return;
  if (nextSide(needles) === 'WS') met(play, { kind: 'turnInRound', span, numbers: {}, words: {} }, size, node, label);
  else if (!atBeginning(needles))
    met(play, { kind: 'notAtBeginning', span, numbers: { left: needles.left.n }, words: {} }, size, node, label);
  resumeRound(needles, true);
}

export function checkSide(play: Play, label: Label, sizes: readonly number[], call: Call, words: string): void {
  const number = call.number ?? label.numbers[0];
  // "Rows 1–4 (RS)", "Rows 1 (RS) and 2 (WS)": the side printed is the first row's.
  const side = number !== undefined && label.numbers[0] !== undefined && (number - label.numbers[0]) % 2 !== 0 ? null : label.side;
  if (side === null) {
    for (const size of sizes) {
      const { needles } = handOf(play, size);
      if (needles.side === null) settle(needles, number !== undefined ? (number % 2 === 1 ? 'RS' : 'WS') : null);
    }
    return;
  }
  for (const size of sizes) {
    const hand = handOf(play, size);
    const { needles } = hand;
    const facing = nextSide(needles);
    const first = hand.history.length === 0 || hand.rows === 0;
    if (needles.mode === 'round' && !needles.suspended) {
      if (side === 'WS') settle(needles, side);
      continue;
    }
    if (facing !== null && facing !== side && !first) {
      met(
        play,
        { kind: 'sideDiffers', span: label.sideSpan ?? call.span, numbers: {}, words: { stated: side, replayed: facing } },
        size,
        call.node,
        words,
      );
    }
    if (facing !== side) settle(needles, side);
  }
}

/** Makes the next row face as the draft says. */
export function settle(needles: Needles, side: Side | null): void {
  if (side === null) return;
  if (needles.begun || needles.left.n > 0 || needles.right.n === 0) needles.side = side;
  else needles.side = otherSide(side);
}
