/** Stitches taken up again from where they were put aside. */
import type { Join, TakeUp } from '../../../grammar/tree.ts';
import { countFor, type Hands, stopped, type Trouble } from '../hands.ts';
import { heldSet, namedSet } from '../holders.ts';
import { beginRow, live, setLive } from '../needles.ts';

export function workTakeUp(hands: Hands, step: TakeUp): Trouble | null {
  const { needles } = hands;
  const n = step.count === null ? null : countFor(hands, step.count.values);
  if (step.count !== null && n === null) return null;
  const set = heldSet(hands.held, step.name, n);
  const count = n ?? set?.n ?? null;
  // "Remove waste yarn" from an edge that nothing was promised to come back from: only the yarn goes.
  if (count === null && step.name === 'provisional' && !step.worked && hands.held.every((held) => held.used)) return null;
  if (count === null) return stopped('unread', step.span);
  // "Make 2": the second of a pair was put aside like the first.
  const twin = set?.n !== count && hands.held.some((each) => each.used && each.n === count);
  if (twin) {
    /* its own holder is not told of */
  } else if (set !== null && set.sure === false) needles.sure = false;
  else if (set !== null && set.n !== count)
    hands.asides.push(
      stopped('heldDiffers', (step.count ?? step).span, { stated: count, replayed: set.n }, { holder: set.name, piece: set.piece }),
    );
  if (set !== null && !twin) set.used = true;
  if (step.worked) {
    needles.begun = true;
    needles.right.n += count;
  } else needles.left.n += count;
  hands.divided = true;
  hands.last = count;
  return null;
}

/**
 * "Pick up and k 17 sts up right side, k across 31 sts of back neck": where nothing is left on the needle the stitches come from
 * the holder that has as many, or from one that has front and back together. On an empty needle only a holder with just as many is meant:
 * "knit across the 11 sts of one gusset".
 */
export function fromHolder(hands: Hands, n: number | null, of?: string): void {
  const { needles } = hands;
  if (of !== undefined && n !== null && n > 1 && hands.row === true && hands.base === 0 && ofPiece(hands, n, of)) {
    // "k across the 46 sts of one sleeve": they come in before what is on the needle.
    if (needles.right.n === 0) beginRow(needles);
    needles.left.n += n;
    return;
  }
  if (n === null || n < 2 || hands.row !== true || needles.left.n !== 0 || hands.base !== 0) return;
  const waiting = hands.held.filter((set) => !set.used && !set.rest && set.sure !== false);
  const set = waiting.find((each) => each.n === n) ?? (needles.right.n === 0 ? undefined : waiting.find((each) => each.n === 2 * n));
  if (set === undefined) return;
  if (set.n === n) set.used = true;
  else set.n -= n;
  needles.left.n = n;
}

/** Whether just so many stitches of a piece of that name wait; of a pair that was made alike each has its own, in the same row. */
function ofPiece(hands: Hands, n: number, of: string): boolean {
  const set = namedSet(hands.held, of, n);
  if (set === null) return false;
  hands.drawn ??= [];
  const { drawn } = hands;
  if (set.used && !drawn.includes(set)) return false;
  set.used = true;
  drawn.push(set);
  return true;
}

/** The stitches that waited while only some were worked in rows come back when the rounds go on. */
export function waitingBack(hands: Hands, step: Join): void {
  const { needles } = hands;
  const waiting = hands.held.find((set) => set.name === 'waiting' && !set.used);
  if (waiting === undefined) return;
  const have = live(needles);
  const n = step.count === null ? null : countFor(hands, step.count.values);
  if (n !== null && n === have) return;
  waiting.used = true;
  setLive(needles, have + waiting.n);
  hands.divided = true;
  if (n !== null && n !== have + waiting.n)
    hands.asides.push(
      stopped('countDiffers', step.count?.span ?? step.span, { stated: n, replayed: have + waiting.n }, { when: 'before', what: 'round' }),
    );
}
