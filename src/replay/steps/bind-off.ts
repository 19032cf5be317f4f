/** Stitches bound off within a row or all at once. */
import type { BindOff } from '../../../grammar/tree.ts';
import { countFor, type Hands, stopped, type Trouble } from '../hands.ts';
import { beginRow, leave, leaveFirst, live, workPlain } from '../needles.ts';

export function workBindOff(hands: Hands, step: BindOff): Trouble | null {
  const { needles } = hands;
  beginRow(needles);
  // A part by its name: how many it has is not followed.
  if (step.part !== undefined && live(needles) > 0) return stopped('unread', step.span);
  if (step.each === true && hands.row !== true && step.count.values.some((value) => value !== 0)) return bothSides(hands, step);
  const all = step.count.all === true && step.toMarker !== true;
  const n = step.toMarker === true ? beforeMarker(hands) : countFor(hands, step.count.values);
  if (n === null && step.toMarker === true) return stopped('markerNotThere', step.span, {}, { place: 'marker' });
  if (n === null) return null;
  // "BO remaining 20 sts" behind stitches worked in this row: those still on the left needle.
  if (all && step.which === 'remaining' && n > 0 && n === needles.left.n - hands.base && hands.row === true && needles.right.n > 0) {
    leave(needles, n);
    hands.off += n;
    hands.taken += n;
    return null;
  }
  if (all) {
    // "BO 5 sts, k to last 5 sts, BO rem 5 sts": of the row, not of the needle
    const rest = needles.left.n - hands.base;
    if (n !== 0 && step.which === 'remaining' && needles.right.n > 0 && rest === n) {
      leave(needles, n);
      hands.off += n;
      hands.taken += n;
      return null;
    }
    const have = live(needles) - (step.leaves ?? 0);
    if (step.count.values.some((value) => value !== 0) && n !== have)
      hands.asides.push(stopped('countDiffers', step.count.span, { stated: n, replayed: have }, { when: 'before', what: 'bindOff' }));
    needles.left = { n: 0, marks: [] };
    needles.right = { n: step.leaves ?? 0, marks: [] };
    hands.off += have;
    hands.divided = true;
    return null;
  }
  const apart = step.loopCounted === true ? false : hands.choice.loop === 'apart';
  const takes = apart ? n + 1 : n;
  const have = needles.left.n - hands.base;
  // "K to 4 sts before end of rnd, BO 8 sts": the bind-off goes on over as many first stitches of the next round.
  const beyond = hands.ran === true && needles.mode === 'round' && !needles.suspended && hands.base === 0 && have > 0 ? n - have : 0;
  if (have < n && (Math.abs(beyond - have) > 1 || beyond > needles.right.n || beyond === 0))
    return stopped('tooFew', step.span, { left: have, wanted: n });
  if (beyond > 0) leaveFirst(needles, beyond);
  hands.offAt = [...(hands.offAt ?? []), needles.right.n];
  if (needles.right.n === 0 || have - n <= 0) hands.edge = (hands.edge ?? 0) + n;
  else hands.holes = [...(hands.holes ?? []), needles.right.n];
  leave(needles, Math.min(n, have));
  hands.off += n;
  hands.taken += Math.min(n, have);
  if (takes > n && needles.left.n > hands.base) {
    workPlain(needles, 1);
    hands.taken += 1;
    hands.made += 1;
  }
  return null;
}

/** Stitches before the next marker of the row, past one that the row has just come to. */
function beforeMarker({ needles }: Hands): number | null {
  const next = needles.left.marks.findLast((mark) => mark.kind !== 'gap' && mark.at < needles.left.n);
  if (next !== undefined) return needles.left.n - next.at;
  return needles.mode === 'round' && needles.left.n > 0 ? needles.left.n : null;
}

/** "BO 20 sts each side": two groups of as many, or the one of them that is on the needle. */
function bothSides(hands: Hands, step: BindOff): Trouble | null {
  const { needles } = hands;
  const n = countFor(hands, step.count.values);
  if (n === null) return null;
  const have = live(needles);
  const off = have === n ? n : 2 * n;
  if (off > have) return stopped('tooFew', step.span, { left: have, wanted: off });
  if (step.count.all === true && off !== have)
    hands.asides.push(stopped('countDiffers', step.count.span, { stated: off, replayed: have }, { when: 'before', what: 'bindOff' }));
  needles.left = { n: 0, marks: [] };
  needles.right = { n: have - off, marks: [] };
  hands.off += off;
  hands.divided = true;
  return null;
}
