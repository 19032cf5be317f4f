/** Working the steps of one row in one size. Nothing here decides what a draft meant; it says what happens. */
import type { Step } from '../../grammar/tree.ts';
import { evenlyChange } from './evenly.ts';
import { countFor, type Hands, mostSteps, stopped, type Trouble } from './hands.ts';
import { beginRow, borderOf, live, passTip, workPlain } from './needles.ts';
import { workBindOff } from './steps/bind-off.ts';
import { workHold, workOnly } from './steps/hold.ts';
import { workJoin } from './steps/joins.ts';
import { workMarker } from './steps/markers.ts';
import { inNeedleOrder, workArrange, workPart } from './steps/needle-parts.ts';
import { workRepeat } from './steps/repeats.ts';
import { plainRun, workRun } from './steps/runs.ts';
import { token, workOne, workPullOver } from './steps/stitches.ts';
import { workTakeUp } from './steps/take-ups.ts';
import { workTurn } from './steps/turns.ts';
import { intoUse } from './steps/use.ts';

export { firstChoice, type Hands, type RowChoice } from './hands.ts';

/** Works the steps in order; the first trouble stops the row. */
export function workSteps(hands: Hands, told: readonly Step[]): Trouble | null {
  const steps = inNeedleOrder(told);
  for (let index = 0; index < steps.length; index += 1) {
    const step = steps[index] as Step;
    hands.worked = (hands.worked ?? 0) + 1;
    if (hands.worked > mostSteps) return stopped('tooLong', step.span);
    hands.watch?.begin(step, hands);
    const trouble = workStep(hands, step);
    hands.watch?.end(step, hands);
    if (trouble !== null) return trouble;
  }
  return null;
}

function workStep(hands: Hands, step: Step): Trouble | null {
  switch (step.type) {
    case 'work':
      return workOne(hands, step);
    case 'intoOne': {
      const use = intoUse(hands, step);
      if (use === null) return null;
      return token(hands, use.takes, use.makes, step.span);
    }
    case 'repeat':
      return plainRun(step)
        ? workRun(hands, step)
        : workRepeat(hands, step.form === 'run' ? { ...step, form: 'list', repeats: 'all' } : step);
    case 'turn':
      return workTurn(hands, step);
    case 'marker':
      return workMarker(hands, step);
    case 'castOn': {
      const each = countFor(hands, step.count.values) ?? 0;
      const { needles } = hands;
      // "casting on 2 sts over those cast off": at every hole of the row before
      const off = step.overGaps === true ? (needles.holes?.off ?? 0) : 0;
      const n = each > 0 && off > each && off % each === 0 && !passedHole(hands) ? off : each;
      // At the head of a row new stitches come before those that are there; behind others they are the last worked.
      const head = hands.row === true && !needles.begun;
      if (head) beginRow(needles);
      // "Cast on 12, k across 20 sts of first flap, …": on an empty needle they stand before what comes.
      const empty = head && live(needles) === 0 && step.where !== 'start';
      if (empty) hands.divided = true;
      if (step.where === 'start' || (head && needles.mode === 'flat' && !empty) || (needles.right.n === 0 && hands.turned)) {
        passTip(needles);
        needles.left.n += n;
      } else needles.right.n += n;
      hands.last = n;
      return null;
    }
    case 'bindOff':
      return workBindOff(hands, step);
    case 'hold':
      return workHold(hands, step);
    case 'takeUp':
      return workTakeUp(hands, step);
    case 'pickUp': {
      const n = step.count === null ? null : countFor(hands, step.count.values);
      if (n === null) {
        if (step.count === null) return stopped('unread', step.span);
        return null;
      }
      hands.needles.begun = hands.needles.begun || hands.needles.left.n === 0;
      hands.needles.right.n += n;
      hands.divided = true;
      hands.last = n;
      return null;
    }
    case 'needlePart':
      return workPart(hands, step);
    case 'evenly': {
      const change = evenlyChange(step, hands.size, live(hands.needles));
      if (change === null) return null;
      beginRow(hands.needles);
      if (hands.needles.left.n > hands.base) {
        const rest = hands.needles.left.n - hands.base;
        workPlain(hands.needles, rest);
        hands.taken += rest;
        hands.made += rest;
      }
      hands.needles.right.n += change;
      hands.made += change;
      return null;
    }
    case 'pullOver':
      return workPullOver(hands, step);
    case 'change':
      if (step.what === 'slide') hands.needles.stay = 'slide';
      if (step.what === 'side' && !hands.needles.begun) {
        const side = /\b(ws|wrong)/i.test(step.detail) ? 'WS' : /\b(rs|right)/i.test(step.detail) ? 'RS' : null;
        if (side !== null) hands.needles.side = side;
      }
      return null;
    case 'unread':
      return stopped('unread', step.span, {}, { text: step.text });
    case 'stated':
    case 'remark':
    case 'resolve':
      return null;
    case 'arrange':
      return workArrange(hands, step);
    case 'only':
      return workOnly(hands, step);
    case 'andSoOn':
      hands.needles.sure = false;
      return null;
    case 'join':
      return workJoin(hands, step);
    default:
      return stopped('unread', step.span);
  }
}

/** The row has worked up to one of the holes: the cast-on is for this one. */
function passedHole({ needles }: Hands): boolean {
  return needles.left.n > 0 && (needles.holes?.behind ?? []).includes(needles.left.n);
}

/** What the whole row leaves undone: stitches on the left needle with no turn. */
export function unfinished(hands: Hands): number {
  const { needles } = hands;
  if (hands.begunAt !== undefined && hands.begunAt === hands.taken) return 0;
  // A pass between the turns of a round may end anywhere; the next round asks where it stands.
  if (needles.suspended) return 0;
  if (hands.closed === true && needles.right.n === 0) return 0;
  // "…, k82 back sts, pm for BOR and join": all were worked before they came round.
  if (!needles.begun && needles.mode === 'round' && needles.right.n === 0 && hands.made > 0 && hands.made >= needles.left.n) return 0;
  if (hands.turned || needles.parts.length > 0 || (!needles.begun && hands.made === 0)) return 0;
  return needles.left.n - borderOf(needles);
}
