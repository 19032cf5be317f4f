/** Turns within a row, and what waits behind them. */
import type { Turn } from '../../../grammar/tree.ts';
import { countFor, type Hands, stopped, type Trouble } from '../hands.ts';
import { beginRow, borderOf, leave, live, turn } from '../needles.ts';
import { justTurned } from '../short-rows.ts';

export function workTurn(hands: Hands, step: Turn): Trouble | null {
  const { needles } = hands;
  if (step.not) {
    needles.stay = needles.stay ?? 'quarter';
    return null;
  }
  if (step.quarter) {
    needles.stay = 'quarter';
    return null;
  }
  if (!needles.begun && needles.left.n === 0 && needles.right.n > 0) {
    // The turn at the end of the row before, said at the head of this one.
    turn(needles, 'plain');
    return null;
  }
  beginRow(needles);
  if (hands.row === true && hands.ran === true && hands.taken === 0 && hands.made === 0 && needles.left.n > 0)
    return stopped('tooFew', step.span, { left: 0, wanted: 1 }, { place: 'turn' });
  // The same row worked again: those it leaves wait already.
  const waiting = step.holds !== null && needles.left.n === 0 && hands.held.some((set) => set.name === step.holds && !set.used);
  if (step.leaving !== null && !waiting) {
    const n = countFor(hands, step.leaving.values);
    const have = needles.left.n;
    if (n !== null && n !== have) hands.asides.push(stopped('leftDiffers', step.leaving.span, { stated: n, replayed: have }));
  }
  const foot = needles.mode === 'round' && /\b(?:instep|sole|heel|foot)\b/.test(step.holds ?? '');
  // "K16, turn, leaving rem sts for instep": how many, and on which side of these, is told by the rows that follow.
  // "Cont on the last 87 sts only, leaving rem sts for the front": those are put aside already, and nothing has been worked.
  if (step.holds !== null && hands.divided && hands.taken === 0 && hands.made === 0) return null;
  if (step.holds !== null && !(foot && step.leaving === null)) {
    if (needles.left.n > 0) {
      const doubt =
        step.leaving !== null && countFor(hands, step.leaving.values) !== needles.left.n && countFor(hands, step.leaving.values) !== null;
      // The instep of a foot waits on its needle until its number is named again; the rest of a divided row waits for its own yarn.
      hands.held.push({
        name: step.holds,
        piece: hands.piece,
        rest: !foot,
        ...(foot ? { idle: true } : {}),
        n: needles.left.n,
        used: false,
        sure: needles.sure && !doubt,
      });
      if (doubt) needles.sure = false;
      leave(needles, needles.left.n);
    }
    hands.divided = true;
    if (needles.mode === 'round') needles.mode = 'flat';
    return null;
  }
  // The last two turns of a heel that goes out again reach the edge and have nothing to wrap.
  if (step.method === 'wrap' && needles.left.n === 0 && hands.lenient !== true && !needles.suspended)
    return stopped('tooFew', step.span, { left: 0, wanted: 1 }, { place: 'wrap' });
  if (justTurned(hands)) {
    // "w&t, turn" is one turn written twice.
    hands.asides.push(stopped('turnAgain', step.span));
    return null;
  }
  if (turn(needles, step.method).same && needles.mode === 'flat')
    hands.asides.push(stopped('noProgress', step.span, { left: live(needles) - needles.left.n }, { place: 'turn' }));
  hands.turned = true;
  hands.base = borderOf(needles);
  return null;
}
