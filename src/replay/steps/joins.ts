/** Joining: yarn rejoined, rounds closed, the last stitches threaded or sewn together. */
import type { Join } from '../../../grammar/tree.ts';
import { countFor, type Hands, stopped, type Trouble } from '../hands.ts';
import { live, type Needles, setLive } from '../needles.ts';
import { waitingBack } from './take-ups.ts';

export function workJoin(hands: Hands, step: Join): Trouble | null {
  const { needles } = hands;
  switch (step.what) {
    case 'rejoin':
    case 'noRound':
    case 'seam': {
      if (step.what === 'noRound') backToRows(needles);
      if (step.what !== 'rejoin') return null;
      if (step.side !== null) needles.side = step.side;
      // "Rejoin yarn to the 87 sts of the front": those that waited while the others were worked.
      const rest =
        [...hands.held].reverse().find((set) => set.rest && !set.used && set.n > 0) ??
        hands.held.find((set) => set.name === 'waiting' && !set.used && set.n > 0);
      if (live(needles) === 0 && rest !== undefined) {
        const n = step.count === null ? null : countFor(hands, step.count.values);
        // Of the stitches that wait, only those of the next piece: "join yarn to the 46 back sts".
        const some = rest.name === 'waiting' && n !== null && n < rest.n;
        rest.used = !some;
        needles.sure = rest.sure !== false;
        needles.left = { n: some ? n : rest.n, marks: [] };
        needles.right = { n: 0, marks: [] };
        needles.begun = true;
        if (some) rest.n -= n;
        else if (n !== null && n !== rest.n)
          hands.asides.push(
            stopped(
              'heldDiffers',
              step.count?.span ?? step.span,
              { stated: n, replayed: rest.n },
              { holder: rest.name, piece: rest.piece },
            ),
          );
      }
      return null;
    }
    case 'round':
    case 'resumeRound': {
      if (step.what === 'resumeRound' && needles.mode === 'flat') waitingBack(hands, step);
      // "…, k to BOR; resume working in rounds": the row is done, and the next is a round.
      if (step.what === 'resumeRound' && needles.mode === 'round') hands.divided = true;
      if (needles.left.n === 0 && needles.right.n > 0) {
        hands.closed = true;
        needles.left = {
          n: needles.right.n,
          marks: needles.right.marks.map((mark) => ({ ...mark, at: needles.right.n - mark.at })).sort((a, b) => a.at - b.at),
        };
        needles.right = { n: 0, marks: [] };
      }
      if (needles.left.n > 0 && needles.right.n > 0) {
        // Picked up beside stitches that waited: all of them make the round.
        needles.left = { n: live(needles), marks: [] };
        needles.right = { n: 0, marks: [] };
      }
      needles.left.marks = needles.left.marks.filter((mark) => mark.name !== 'BOR' && mark.at > 0);
      needles.begun = false;
      needles.mode = 'round';
      needles.side = 'RS';
      needles.suspended = false;
      if (step.loses > 0) needles.left.n -= step.loses;
      return null;
    }
    default: {
      const have = live(needles);
      const n = step.count === null ? null : countFor(hands, step.count.values);
      if (n !== null && have > 0 && n !== have && step.what === 'thread')
        hands.asides.push(
          stopped('countDiffers', step.count?.span ?? step.span, { stated: n, replayed: have }, { when: 'before', what: 'thread' }),
        );
      // "Join shoulder with three-needle bind-off over first 26 sts": the rest stays on the needle; two sets of so many are all there is.
      setLive(needles, n !== null && n < have && 2 * n !== have && step.what === 'threeNeedle' ? have - n : 0);
      hands.divided = true;
      return null;
    }
  }
}

/**
 * "Work back and forth in rows" behind a round that bound stitches off: whether the work is turned first, or one more row goes on
 * from the right side and is turned at its end, the next label says.
 */
function backToRows(needles: Needles): void {
  if (needles.opened !== true || needles.mode !== 'round' || needles.suspended || needles.left.n > 0 || needles.right.n === 0) return;
  needles.mode = 'flat';
  needles.side = null;
  needles.begun = false;
}
