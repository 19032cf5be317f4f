/** Single stitches, worked from tip to tip, and those passed over others. */
import type { PullOver, Span, Work } from '../../../grammar/tree.ts';
import { joinBelow } from '../edgings.ts';
import { type Hands, stopped, type Trouble } from '../hands.ts';
import { beginRow, borderOf, reachRound, workPlain, workToken } from '../needles.ts';
import { workShort } from '../short-rows.ts';
import { fromHolder } from './take-ups.ts';
import { loopsOf, moreLoops, overOf, reach, useOf } from './use.ts';

export function token(hands: Hands, takes: number, makes: number, span: Span, words: Record<string, string> = {}): Trouble | null {
  const { needles } = hands;
  // A row that opens with a yarn over makes it on the needle that is empty then.
  beginRow(needles);
  if (takes > 0) {
    if (
      needles.left.n - hands.base < takes &&
      (needles.mode === 'round' || hands.ring) &&
      (hands.divided || needles.suspended) &&
      hands.base === 0
    )
      reachRound(needles, takes - needles.left.n);
    const have = needles.left.n - hands.base;
    if (have < takes) return stopped('tooFew', span, { left: have, wanted: takes }, words);
  }
  // The stitch left from binding off goes back to the left needle: it is among those still there.
  if (makes < 0 && takes < 0 && needles.right.n < -makes && hands.off > 0) return null;
  if (makes < 0 && needles.right.n < -makes) return stopped('nothingToPass', span, { wanted: -makes }, words);
  const { inside } = workToken(needles, takes, makes);
  if (inside?.name === 'centre') {
    // The centre stitch is the middle one of a decrease: what is made of it is the centre stitch again.
    for (const mark of needles.right.marks) if (mark.name === 'centre' && mark.at === needles.right.n) mark.at -= makes;
  } else if (inside !== null && inside.kind === 'marker')
    hands.asides.push(stopped('markerInStitch', span, { takes }, { marker: inside.name ?? '' }));
  hands.taken += takes;
  hands.made += makes;
  // "K3, sl 3 back": a cord goes on with the same side facing.
  if (takes < 0 && makes < 0 && needles.right.n === 0 && hands.off === 0) hands.divided = true;
  // Stitches slipped back to the left needle are those just spoken of.
  hands.last = Math.abs(makes);
  return null;
}

/** "psso": lifts stitches that were slipped, or a yarn over, over those worked since. */
export function workPullOver(hands: Hands, step: PullOver): Trouble | null {
  const { right } = hands.needles;
  if (step.ofWorked === true) return token(hands, 0, -step.count, step.span);
  const waiting = (hands.slips ?? []).filter((at) => right.n - at <= reach && at <= right.n);
  const count = overOf(hands, step);
  if (waiting.length < count) return stopped('nothingToPass', step.span, { wanted: count, waiting: waiting.length });
  hands.slips = waiting.slice(0, -count);
  return token(hands, 0, -count, step.span);
}

function noteSlips(hands: Hands, use: { makes: number; kind: string }): void {
  if (use.kind !== 'slip' && use.kind !== 'yarnOver') return;
  const from = hands.needles.right.n;
  const last = Math.min(use.makes, reach);
  hands.slips = [
    ...(hands.slips ?? []).filter((at) => from - at <= reach),
    ...Array.from({ length: last }, (_, each) => from - last + each + 1),
  ];
}

export function workOne(hands: Hands, step: Work): Trouble | null {
  const use = useOf(hands, step);
  if (use === null) return null;
  if (use.kind === 'unknown') return stopped('unread', step.span, {}, { text: step.stitch });
  // "k2tog (as before)" at the border of an edging: its second stitch is one of the piece.
  const border = borderOf(hands.needles);
  const joining =
    step.joins === undefined &&
    border > 0 &&
    hands.base === border &&
    use.takes === 2 &&
    use.makes === 1 &&
    hands.needles.left.n - border === 1;
  const unjoined = joinBelow(hands, joining ? { ...step, joins: { of: 'live', count: 1 } } : step);
  if (unjoined !== null) return unjoined;
  const short = workShort(hands, step, use);
  if (short !== 'ordinary') return short;
  if (use.takes === use.makes && use.takes > 0 && use.kind !== 'cable' && use.kind !== 'twist') {
    const { needles } = hands;
    beginRow(needles);
    if (use.kind === 'plain' && step.of !== undefined && !hands.piece.toLowerCase().includes(step.of.split(' ').at(-1) as string))
      fromHolder(hands, use.takes, step.of);
    // Those that wait on a needle of their own come before any that the round would meet again.
    const waits = hands.held.some((set) => set.idle === true && !set.used && set.n === use.takes);
    if (waits && use.kind === 'plain' && (use.times ?? 1) === 1) fromHolder(hands, use.takes);
    if (
      needles.left.n - hands.base < use.takes &&
      (needles.mode === 'round' || hands.ring) &&
      (hands.divided || needles.suspended) &&
      hands.base === 0
    )
      reachRound(needles, use.takes - needles.left.n);
    if (use.kind === 'plain' && (use.times ?? 1) === 1) fromHolder(hands, use.takes);
    const have = needles.left.n - hands.base;
    if (have < use.takes) return stopped('tooFew', step.span, { left: have, wanted: use.takes });
    workPlain(needles, use.takes);
    hands.taken += use.takes;
    hands.made += use.makes;
    hands.last = use.makes;
    noteSlips(hands, use);
    return null;
  }
  beginRow(hands.needles);
  hands.needles.loops = moreLoops(hands.needles.loops, loopsOf(use));
  const { left } = hands.needles;
  const times = use.times ?? 1;
  if (use.kind === 'plain' && times === 1) fromHolder(hands, use.takes);
  if (times > 1 && left.marks.some((mark) => mark.kind !== 'gap' && mark.at < left.n && mark.at > left.n - use.takes)) {
    // "k2tog twice" with a marker on the way: one after the other, so that it comes to lie where it should.
    for (let each = 0; each < times; each += 1) {
      const trouble = token(hands, use.takes / times, use.makes / times, step.span);
      if (trouble !== null) return trouble;
    }
    noteSlips(hands, use);
    return null;
  }
  const trouble = token(hands, use.takes, use.makes, step.span);
  noteSlips(hands, use);
  return trouble;
}
