/** Markers placed, slipped and removed. */
import type { Marker } from '../../../grammar/tree.ts';
import { countFor, type Hands, stopped, type Trouble } from '../hands.ts';
import { beginRow, live, newBeginning, passTip, workPlain } from '../needles.ts';

/** "CO 40 sts, pm after 20 sts": markers hung among stitches that are still to be worked. */
function placeAt(hands: Hands, step: Marker): null {
  const { left } = hands.needles;
  const n = step.at === undefined ? null : countFor(hands, step.at.count.values);
  if (n === null || n > left.n) return null;
  const places = step.at?.from === 'eachEnd' ? [n, left.n - n] : [left.n - n];
  for (const at of places) left.marks.push({ kind: 'marker', name: step.name, at });
  left.marks.sort((a, b) => a.at - b.at);
  return null;
}

export function workMarker(hands: Hands, step: Marker): Trouble | null {
  const { needles } = hands;
  // A marker that hangs in the centre stitch stands before it.
  if (step.op === 'hang' && step.name === 'centre' && needles.right.n > 0 && needles.begun)
    needles.right.marks.push({ kind: 'marker', name: 'centre', at: needles.right.n - 1 });
  if (step.op === 'move') {
    // What is said of the way there is worked by the row; by itself the words shift the round.
    const n = step.by === undefined || hands.row === true ? null : countFor(hands, step.by.count.values);
    if (n === null || needles.mode !== 'round' || needles.suspended || step.name !== 'BOR' || n >= live(needles)) return null;
    beginRow(needles);
    workPlain(needles, step.by?.to === 'right' ? needles.left.n - n : n);
    newBeginning(needles);
    needles.begun = false;
    return null;
  }
  if (step.atRow || step.op === 'hang') return null;
  if (step.op === 'place' || step.op === 'replace') {
    if (
      step.name === 'BOR' &&
      needles.right.n + needles.left.n > 0 &&
      (!needles.begun || (needles.mode === 'round' && needles.right.n === 0))
    )
      return null;
    if (step.at !== undefined && !needles.begun && needles.right.n === 0) return placeAt(hands, step);
    const marks = needles.right.marks;
    needles.lost = false;
    // "Remove BOR marker, k5, replace marker, …": the round goes on from its new beginning over all of its stitches.
    if (hands.beginningOff === true && (step.name === null || step.name === 'BOR') && newBeginning(needles)) {
      hands.beginningOff = false;
      hands.begunAt = hands.taken;
      return null;
    }
    marks.push({ kind: 'marker', name: step.name, at: needles.right.n });
    return null;
  }
  const headOfRound = needles.mode === 'round' && !needles.suspended && (!needles.begun || needles.right.n === 0);
  if (headOfRound && step.op === 'remove' && (step.name === null || step.name === 'BOR')) {
    hands.beginningOff = true;
    return null;
  }
  const tip = needles.left.marks.at(-1);
  const there = tip !== undefined && tip.kind !== 'gap' && tip.at === needles.left.n;
  if (step.op === 'slip') {
    if (there) passTip(needles);
    else if (needles.right.marks.some((mark) => mark.kind !== 'gap' && mark.at === needles.right.n)) return null;
    else if (!headOfRound && !(needles.mode === 'round' && needles.left.n === hands.base)) {
      const ahead = needles.left.marks.findLast((mark) => mark.kind !== 'gap');
      hands.asides.push(
        stopped('markerMissing', step.span, ahead === undefined ? {} : { ahead: needles.left.n - ahead.at }, { marker: step.name ?? '' }),
      );
    }
    return null;
  }
  if (there) needles.left.marks.pop();
  else {
    needles.left.marks = needles.left.marks.filter((mark) => mark.kind === 'gap');
    needles.right.marks = needles.right.marks.filter((mark) => mark.kind === 'gap');
  }
  return null;
}
