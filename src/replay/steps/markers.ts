/** Markers placed, slipped and removed. */
import type { Marker } from '../../../grammar/tree.ts';
import { countFor, type Hands, stopped, type Trouble } from '../hands.ts';
import { beginRow, live, type Mark, type Needles, newBeginning, passTip, workPlain } from '../needles.ts';

/** Most stitches that may still lie before a marker that the next stitch takes off with it. */
const within = 3;

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
  if (step.op === 'place' || step.op === 'replace') return place(hands, step);
  // "*Sl m, m1, k to m": the marker that hangs at the head of the row is slipped before anything is worked.
  if (step.op === 'slip' && hands.row === true && live(needles) > 0) beginRow(needles);
  const headOfRound = needles.mode === 'round' && !needles.suspended && (!needles.begun || needles.right.n === 0);
  if (headOfRound && step.op === 'remove' && step.anywhere !== true && (step.name === null || step.name === 'BOR')) {
    hands.beginningOff = true;
    return null;
  }
  const tip = needles.left.marks.at(-1);
  const there = tip !== undefined && tip.kind !== 'gap' && tip.at === needles.left.n;
  if (step.op === 'slip') {
    if (there) passTip(needles);
    else if (needles.right.marks.some((mark) => mark.kind !== 'gap' && mark.at === needles.right.n)) return null;
    else if (!headOfRound && !(needles.mode === 'round' && needles.left.n === hands.base)) {
      const ahead = nextMarker(needles);
      hands.asides.push(
        stopped('markerMissing', step.span, ahead === undefined ? {} : { ahead: needles.left.n - ahead.at }, { marker: step.name ?? '' }),
      );
    }
    return null;
  }
  if (there) needles.left.marks.pop();
  else takeOff(hands, step);
  return null;
}

const nextMarker = (needles: Needles): Mark | undefined => needles.left.marks.findLast((mark) => mark.kind !== 'gap');

function place(hands: Hands, step: Marker): null {
  const { needles } = hands;
  if (step.at !== undefined) {
    placeByNumber(hands, step.at, step.name);
    return null;
  }
  if (
    step.name === 'BOR' &&
    needles.right.n + needles.left.n > 0 &&
    (!needles.begun || (needles.mode === 'round' && needles.right.n === 0))
  )
    return null;
  needles.lost = false;
  // "Remove BOR marker, k5, replace marker, …": the round goes on from its new beginning over all of its stitches.
  if (hands.beginningOff === true && (step.name === null || step.name === 'BOR') && newBeginning(needles)) {
    hands.beginningOff = false;
    hands.begunAt = hands.taken;
    return null;
  }
  needles.right.marks.push({ kind: 'marker', name: step.name, at: needles.right.n });
  return null;
}

/** "Pm 20 sts in from each edge", "pm after 20 sts": counted from where the right-side rows begin. */
function placeByNumber(hands: Hands, at: NonNullable<Marker['at']>, name: string | null): void {
  const { needles } = hands;
  const total = live(needles);
  const n = countFor(hands, at.count.values);
  if (n === null || n <= 0 || n > total) return;
  const places =
    at.from === 'beginning'
      ? [n]
      : at.from === 'eachEnd'
        ? [n, total - n]
        : at.from === 'centre'
          ? [(total - n) / 2, (total + n) / 2]
          : Array.from({ length: Math.ceil(total / n) - 1 }, (_, index) => (index + 1) * n);
  if (places.some((place) => !Number.isInteger(place)) || (needles.left.n > 0 && needles.right.n > 0)) {
    // In the middle of a row, or with no even halves beside the centre: where they hang is not known.
    needles.lost = true;
    return;
  }
  const onRight = needles.left.n === 0;
  const needle = onRight ? needles.right : needles.left;
  // The base of the needle is where the last row began, or where the next one ends.
  const fromBase = onRight ? needles.side !== 'WS' || needles.mode === 'round' : needles.side === 'WS';
  for (const place of places) needle.marks.push({ kind: 'marker', name, at: fromBase ? place : total - place });
  needle.marks.sort((a, b) => a.at - b.at);
}

/** A marker taken off that is not at the tip: the one just passed, the one that the next stitch meets, or, said of all, every one. */
function takeOff(hands: Hands, step: Marker): void {
  const { needles } = hands;
  const ahead = nextMarker(needles);
  if (step.anywhere === true && hands.row === true && !needles.begun) {
    hands.removing = true;
    return;
  }
  if (step.anywhere !== true) {
    const behind = needles.right.marks.findLastIndex((mark) => mark.kind !== 'gap' && mark.at === needles.right.n);
    if (behind >= 0) {
      needles.right.marks.splice(behind, 1);
      return;
    }
    if (ahead !== undefined) {
      const far = needles.left.n - ahead.at;
      const wraps = needles.mode === 'round' && (step.name === 'BOR' || needles.left.n === hands.base);
      if (far <= within) needles.left.marks.splice(needles.left.marks.indexOf(ahead), 1);
      else if (hands.row === true && !wraps)
        hands.asides.push(stopped('markerMissing', step.span, { ahead: far }, { marker: step.name ?? '' }));
      return;
    }
  }
  needles.left.marks = needles.left.marks.filter((mark) => mark.kind === 'gap');
  needles.right.marks = needles.right.marks.filter((mark) => mark.kind === 'gap');
}
