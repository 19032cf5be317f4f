/** Stitches put aside: on holders, on waste yarn, or waiting while only some are worked. */
import type { Hold, Only } from '../../../grammar/tree.ts';
import { countFor, type Hands, stopped, type Trouble } from '../hands.ts';
import { beginRow, leave, leaveFirst, live, setLive } from '../needles.ts';

export function workHold(hands: Hands, step: Hold): Trouble | null {
  const { needles } = hands;
  const stay = step.but === undefined ? null : countFor(hands, step.but.values);
  if (stay !== null && hands.row === true) beginRow(needles);
  const told =
    stay !== null
      ? Math.max(0, (needles.begun ? needles.left.n : live(needles)) - stay)
      : step.count === null
        ? step.which === 'centre'
          ? 1
          : null
        : countFor(hands, step.count.values);
  if (step.count !== null && told === null) return null;
  const n = told ?? (step.toMarker === true ? toMarker(hands) : null);
  // "place sts to next marker on waste yarn" with no marker known ahead: how many is not known
  if (step.toMarker === true && n === null && live(needles) > 0) return stopped('unread', step.span);
  const put = (count: number): void => {
    hands.held.push({
      name: step.name ?? (step.which === 'centre' ? `centre ${step.holder}` : step.holder),
      piece: hands.piece,
      rest: false,
      n: count,
      used: false,
    });
    hands.divided = true;
  };
  const total = live(needles);
  const waiting = hands.held.find((set) => set.name === 'waiting' && !set.used);
  if (waiting !== undefined && (step.which === 'other' || step.which === 'remaining') && (n === null || n === waiting.n)) {
    // "Work on the first 28 sts only. Slip the other 28 onto waste yarn": they have been counted out already.
    waiting.used = true;
    put(waiting.n);
    return null;
  }
  if (total === 0) {
    // The stitches that wait for the second side: a centre set of them goes on a holder of its own.
    const rest = [...hands.held].reverse().find((set) => set.rest && !set.used && set.n > 0);
    if (rest === undefined) return stopped('nothingHeld', step.span, {});
    const count = n ?? rest.n;
    if (count > rest.n) return stopped('tooFew', step.span, { left: rest.n, wanted: count });
    rest.n -= count;
    put(count);
    return null;
  }
  if (step.which === 'next' && hands.row === true) beginRow(needles);
  if (step.which === 'these' && needles.begun) {
    const count = n ?? hands.last;
    if (count > needles.right.n) return stopped('tooFew', step.span, { left: needles.right.n, wanted: count });
    needles.right.n -= count;
    needles.right.marks = needles.right.marks.filter((mark) => mark.at <= needles.right.n);
    put(count);
    return null;
  }
  if (step.which === 'firstAndLast' && n !== null) return holdEnds(hands, step, n, put);
  // "K36, turn; leave rem 41 sts on a spare needle": those behind the turn
  if (step.which === 'remaining' && hands.turned && needles.right.n > 0 && (n === null || n === needles.right.n)) {
    hands.held.push({
      name: step.name ?? step.holder,
      piece: hands.piece,
      rest: true,
      n: needles.right.n,
      used: false,
      sure: needles.sure,
    });
    needles.right = { n: 0, marks: [] };
    needles.left.marks = needles.left.marks.filter((mark) => mark.kind !== 'gap');
    hands.divided = true;
    return null;
  }
  if (step.which === 'remaining' || step.which === 'these') {
    const count = needles.begun && needles.left.n > 0 ? needles.left.n : total;
    if (n !== null && n !== count)
      hands.asides.push(
        stopped('countDiffers', (step.count ?? step).span, { stated: n, replayed: count }, { when: 'before', what: 'hold' }),
      );
    if (needles.begun && needles.left.n > 0) leave(needles, needles.left.n);
    else setLive(needles, 0);
    put(count);
    return null;
  }
  const count = n ?? 0;
  if (needles.begun) {
    // "…, BO last 15 sts. Place the 16 neck sts on a holder.": all that the row has left
    if (needles.left.n === 0 && (needles.right.n === count || (needles.right.n >= count && step.which === 'last'))) {
      needles.right.n -= count;
      put(count);
      return null;
    }
    if (needles.left.n < count) return stopped('tooFew', step.span, { left: needles.left.n, wanted: count });
    leave(needles, count);
    put(count);
    // The row goes on over what is left.
    hands.divided = false;
    return null;
  }
  if (count > total) return stopped('tooFew', step.span, { left: total, wanted: count });
  const restored = total - count;
  setLive(needles, restored);
  if (needles.mode === 'round' && (step.which === 'other' || step.which === 'first' || step.which === 'last')) {
    needles.mode = 'flat';
    if (needles.left.n === 0) {
      needles.left = needles.right;
      needles.right = { n: 0, marks: [] };
    }
    needles.side = 'RS';
  }
  put(count);
  return null;
}

/** "Place first and last 4 sts on waste yarn": as many at either end, in a round side by side on one holder. */
function holdEnds(hands: Hands, step: Hold, n: number, put: (count: number) => void): Trouble | null {
  const { needles } = hands;
  const total = live(needles);
  if (total < 2 * n) return stopped('tooFew', step.span, { left: total, wanted: 2 * n });
  if (needles.begun && needles.left.n === n && needles.right.n >= n) {
    leave(needles, n);
    leaveFirst(needles, n);
  } else setLive(needles, total - 2 * n);
  if (needles.mode === 'round') put(2 * n);
  else {
    put(n);
    put(n);
  }
  return null;
}

/** Stitches before the next marker of the row; one that the row has just come to is not meant. */
function toMarker(hands: Hands): number | null {
  const { needles } = hands;
  if (needles.lost) return null;
  const next = needles.left.marks.findLast((mark) => mark.kind !== 'gap' && mark.at < needles.left.n);
  if (next !== undefined) return needles.left.n - next.at;
  // In a round the last part goes up to its beginning.
  return needles.mode === 'round' && needles.begun && needles.left.n > 0 ? needles.left.n : null;
}

/** Back and forth on some stitches: the others wait until they are named again. */
export function workOnly(hands: Hands, step: Only): Trouble | null {
  const { needles } = hands;
  const n = step.count === null ? null : countFor(hands, step.count.values);
  const have = live(needles);
  if (needles.mode === 'round') {
    // The rows begin where the round began, on the right side; on its last stitches the yarn is at the end, and the work may turn back first.
    if (needles.left.n === 0) {
      needles.left = { n: have, marks: [] };
      needles.right = { n: 0, marks: [] };
    }
    needles.mode = 'flat';
    // With all the stitches the work may go on or turn back first: what is said next tells which side faces.
    needles.side = n === null || step.which === 'last' ? null : 'RS';
  }
  if (n !== null) checkSet(hands, step, n);
  if (n === null || n >= have) return null;
  hands.held.push({ name: 'waiting', piece: hands.piece, rest: false, n: have - n, used: false });
  setLive(needles, n);
  hands.divided = true;
  return null;
}

/** "Continue on the last set of 33 sts": one of the two that the bind-off of the row before has left. */
function checkSet(hands: Hands, step: Only, n: number): void {
  const { sets } = hands.needles;
  if (sets === undefined || step.count === null || step.which === 'centre' || n === live(hands.needles)) return;
  const meant = step.which === 'last' ? [sets.last] : step.which === 'first' ? [sets.first] : [sets.last, sets.first];
  const [likely] = meant;
  if (likely === undefined || meant.includes(n)) return;
  hands.asides.push(stopped('countDiffers', step.count.span, { stated: n, replayed: likely }, { when: 'before', what: 'set' }));
  hands.doubt = true;
}
