/** Working the steps of one row in one size. Nothing here decides what a draft meant; it says what happens. */
import { type Sized, sizeValue } from '../../grammar/count.ts';
import { entryNamed } from '../../grammar/lexicon/index.ts';
import { stitchUse } from '../../grammar/lexicon/use.ts';
import type {
  Arrange,
  BindOff,
  Extent,
  Goal,
  Hold,
  IntoOne,
  Join,
  Marker,
  NeedlePart,
  Only,
  PullOver,
  Repeat,
  Span,
  Step,
  TakeUp,
  Turn,
  Work,
} from '../../grammar/tree.ts';
import type { Vocabulary } from '../../grammar/vocabulary.ts';
import { joinBelow } from './edgings.ts';
import { testsFor } from './goals.ts';
import { type Held, heldSet } from './holders.ts';
import {
  beginRow,
  borderOf,
  leave,
  leaveFirst,
  live,
  type Mark,
  type Needles,
  passTip,
  reachRound,
  setLive,
  turn,
  workPlain,
  workToken,
} from './needles.ts';
import type { ObservationKind } from './replay.ts';
import { gapsAhead, justTurned, shortOf, workShort } from './short-rows.ts';

/** What stops a knitter, or what she would ask. */
export interface Trouble {
  readonly kind: ObservationKind | 'unread';
  readonly span: Span;
  readonly numbers: Readonly<Record<string, number>>;
  readonly words: Readonly<Record<string, string>>;
}

/** How a row is to be read where the words allow several readings; by node. */
export interface RowChoice {
  /** Bind-offs inside the row: the loop left is the first of what follows (in) or stands apart (apart). */
  readonly loop: 'in' | 'apart';
  /** "rep from * N times": N more, or N in all. */
  readonly times: 'more' | 'all';
  /** A list without brackets: the last token repeats, or the whole list. */
  readonly list: 'token' | 'list';
  /** Which reading of names with several. */
  readonly names: number;
}

export const firstChoice: RowChoice = { loop: 'in', times: 'more', list: 'token', names: 0 };

export interface Hands {
  readonly needles: Needles;
  readonly size: number;
  readonly vocabulary: Vocabulary;
  readonly held: Held[];
  readonly piece: string;
  readonly choice: RowChoice;
  taken: number;
  made: number;
  /** Bound off in this row. */
  off: number;
  /** The row is a round that closes again over stitches picked up and taken up. */
  ring?: boolean;
  /** Steps of a row, not an order between rows. */
  row?: boolean;
  /** Left height below which the segment of a needle ends. */
  base: number;
  /** Stitches the last step worked, for "place these sts on a holder". */
  last: number;
  /** The row ended at a turn, so unworked stitches are meant. */
  turned: boolean;
  /** Stitches were put aside or joined in this row, so it need not be complete. */
  divided: boolean;
  /** Two statements of this row contradict each other: the count is in doubt behind it. */
  doubt?: boolean;
  /** Everything worth a question that did not stop the row. */
  readonly asides: Trouble[];
  /** A run has been told in this row, if only over no stitches. */
  ran?: boolean;
  /** The marker that the last run went up to. */
  reached?: Mark;
  /** Passes that run until every stitch is worked: the last may end short of its plain stitch or its wrap. */
  lenient?: boolean;
  /** Heights of the right needle at which a stitch was slipped, or a yarn over made, that may still be passed over. */
  slips?: number[];
  /** Looks over the shoulder; with it every pass of a repeat is worked one by one. */
  readonly watch?: Watch;
}

/** Whoever shows a row stitch by stitch. The needles stand as the call finds them: before a step, after it, before a pass. */
export interface Watch {
  begin(step: Step, hands: Hands): void;
  end(step: Step, hands: Hands): void;
  /** A pass of a repeat begins, counted from 1. */
  pass(step: Repeat, pass: number, passes: number | null, hands: Hands): void;
  /** Steps of the repeat that belong to no pass: the words between its mark and "rep from", and those it ends with. */
  between(step: Repeat, steps: readonly Step[], hands: Hands): void;
}

const stopped = (kind: Trouble['kind'], span: Span, numbers: Record<string, number> = {}, words: Record<string, string> = {}): Trouble => ({
  kind,
  span,
  numbers,
  words,
});

/** Most single steps one repeat may be unrolled to where it cannot be folded. */
const mostPasses = 20_000;

function countFor(hands: Hands, values: Sized): number | null {
  // A list that breaks off before this size: what the size works is not known.
  if (values.length > 1 && hands.size >= values.length) hands.needles.sure = false;
  return sizeValue(values, hands.size);
}

/** The two numbers of a stitch in this size; null when the size skips it. */
function useOf(
  hands: Hands,
  step: Work,
): { takes: number; makes: number; kind: string; face: string | null; moves: string; times?: number } | null {
  const reading = step.readings?.[hands.choice.names] ?? step.readings?.[0];
  const name = reading?.stitch ?? step.stitch;
  const entry = hands.vocabulary.stitches.get(name) ?? entryNamed(name);
  if (entry === undefined) return { takes: 0, makes: 0, kind: 'unknown', face: null, moves: '' };
  const count = reading === undefined ? step.n : reading.n;
  const n = count === null ? 1 : countFor(hands, count.values);
  if (n === null) return null;
  if (n === 0) return { takes: 0, makes: 0, kind: entry.kind, face: null, moves: entry.moves };
  const use = stitchUse(entry, n, step.m ?? 1);
  const often = reading?.times ?? step.times;
  const times = often ? countFor(hands, often.values) : 1;
  if (times === null) return null;
  return { takes: use.takes * times, makes: use.makes * times, kind: entry.kind, face: entry.face ?? null, moves: entry.moves, times };
}

/** What a stretch of steps takes and makes when that does not depend on the needle; null when it does. */
export function fixedUse(hands: Hands, steps: readonly Step[]): { takes: number; makes: number } | null {
  let takes = 0;
  let makes = 0;
  /** What was slipped in this very stretch and can be passed over in it: height of `makes`. */
  let slips: number[] = [];
  for (const step of steps) {
    switch (step.type) {
      case 'work': {
        const use = useOf(hands, step);
        if (use === null) break;
        if (use.kind === 'unknown' || use.kind === 'shortRow') return null;
        takes += use.takes;
        makes += use.makes;
        if (use.kind === 'slip' || use.kind === 'yarnOver')
          for (let each = Math.min(use.makes, reach) - 1; each >= 0; each -= 1) slips.push(makes - each);
        break;
      }
      case 'pullOver': {
        const over = makes;
        const waiting = slips.filter((at) => over - at <= reach && at <= over);
        const count = overOf(hands, step);
        if (waiting.length < count) return null;
        slips = waiting.slice(0, -count);
        makes -= count;
        break;
      }
      case 'intoOne': {
        const use = intoUse(hands, step);
        if (use === null) return null;
        takes += use.takes;
        makes += use.makes;
        break;
      }
      case 'repeat': {
        const extent = step.extent;
        if (extent === null) {
          const inner = fixedUse(hands, step.children);
          if (inner === null) return null;
          takes += inner.takes;
          makes += inner.makes;
          break;
        }
        if (extent.kind === 'over' && step.form === 'run') {
          const n = countFor(hands, extent.count.values);
          if (n === null || extent.count.all) return null;
          takes += n;
          makes += n;
          break;
        }
        if (extent.kind !== 'times' || step.once.length > 0 || step.ending !== null) return null;
        const passes = passesOf(hands, extent);
        const inner = fixedUse(hands, step.children);
        if (passes === null || inner === null) return null;
        takes += inner.takes * passes;
        makes += inner.makes * passes;
        break;
      }
      case 'remark':
      case 'resolve':
      case 'stated':
        break;
      default:
        return null;
    }
  }
  return { takes, makes };
}

function intoUse(hands: Hands, step: IntoOne): { takes: number; makes: number } | null {
  const inner = fixedUse(hands, step.children);
  if (inner === null) return null;
  // Said of every double yarn over met on the way: two loops worked as two stitches change nothing.
  if (step.everywhere === true) return inner.makes === 2 ? { takes: 0, makes: 0 } : null;
  const times = step.times ? (countFor(hands, step.times.values) ?? 0) : 1;
  if (step.into === 'doubleYarnOver') return { takes: 2 * times, makes: Math.max(inner.makes, 0) * times };
  const takes = step.takes ? (countFor(hands, step.takes.values) ?? 1) : 1;
  return { takes: takes * times, makes: inner.makes * times };
}

function passesOf(hands: Hands, extent: Extract<Extent, { kind: 'times' }>): number | null {
  const n = countFor(hands, extent.count.values);
  if (n === null) return 0;
  if (extent.sense === 'all') return n;
  if (extent.sense === 'more') return n + 1;
  if (extent.form === 'bracket') return n;
  return hands.choice.times === 'more' ? n + 1 : n;
}

/** Whether some node of the row can be read in more than one way, and which. */
export function rowReadings(steps: readonly Step[]): { loop: boolean; times: boolean; names: number } {
  const found = { loop: false, times: false, names: 0 };
  const visit = (list: readonly Step[]): void => {
    list.forEach((step, index) => {
      if (
        step.type === 'bindOff' &&
        step.which !== 'all' &&
        step.which !== 'remaining' &&
        list
          .slice(index + 1)
          .some((next) => next.type === 'work' || (next.type === 'repeat' && (next.extent?.kind === 'over' || next.form !== 'run')))
      )
        found.loop = true;
      if (step.type === 'repeat') {
        if (step.extent?.kind === 'times' && step.extent.sense === 'plain' && step.extent.form === 'from') found.times = true;
        visit(step.children);
        visit(step.once);
      }
      if (step.type === 'work' || step.type === 'pullOver') found.names = Math.max(found.names, step.readings?.length ?? 0);
      if (step.type === 'needlePart' || step.type === 'intoOne') visit(step.children);
    });
  };
  visit(steps);
  return found;
}

/** Works the steps in order; the first trouble stops the row. */
export function workSteps(hands: Hands, steps: readonly Step[]): Trouble | null {
  for (let index = 0; index < steps.length; index += 1) {
    const step = steps[index] as Step;
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
      const n = countFor(hands, step.count.values) ?? 0;
      const { needles } = hands;
      // At the head of a row new stitches come before those that are there; behind others they are the last worked.
      const head = hands.row === true && !needles.begun;
      if (head) beginRow(needles);
      if (step.where === 'start' || (head && needles.mode === 'flat') || (needles.right.n === 0 && hands.turned)) {
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
      const n = countFor(hands, step.count.values);
      if (n === null) return null;
      beginRow(hands.needles);
      if (hands.needles.left.n > hands.base) {
        const rest = hands.needles.left.n - hands.base;
        workPlain(hands.needles, rest);
        hands.taken += rest;
        hands.made += rest;
      }
      const change = step.change === 'to' ? n - live(hands.needles) : step.change === 'inc' ? n : -n;
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

function token(hands: Hands, takes: number, makes: number, span: Span, words: Record<string, string> = {}): Trouble | null {
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
  hands.last = makes;
  return null;
}

/** Stitches that may lie between a slipped stitch and the place where it is passed over. */
const reach = 4;

/** "psso": lifts stitches that were slipped, or a yarn over, over those worked since. */
function workPullOver(hands: Hands, step: PullOver): Trouble | null {
  const { right } = hands.needles;
  const waiting = (hands.slips ?? []).filter((at) => right.n - at <= reach && at <= right.n);
  const count = overOf(hands, step);
  if (waiting.length < count) return stopped('nothingToPass', step.span, { wanted: count, waiting: waiting.length });
  hands.slips = waiting.slice(0, -count);
  return token(hands, 0, -count, step.span);
}

/** A bare "psso" behind two slipped stitches lifts both, or one. */
function overOf(hands: Hands, step: PullOver): number {
  return step.readings?.[hands.choice.names] ?? step.count;
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

function workOne(hands: Hands, step: Work): Trouble | null {
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
    if (
      needles.left.n - hands.base < use.takes &&
      (needles.mode === 'round' || hands.ring) &&
      (hands.divided || needles.suspended) &&
      hands.base === 0
    )
      reachRound(needles, use.takes - needles.left.n);
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

/** Where a mark lies ahead on the left needle; null when there is none. */
function markAhead(hands: Hands, extent: Extract<Extent, { kind: 'place' }>): { at: number; mark: Mark | null } | null {
  const { left } = hands.needles;
  const ahead = [...left.marks].reverse();
  if (extent.place === 'marker') {
    // At the head of a round the marker of its beginning is not one to go to.
    const head = hands.needles.mode === 'round' && hands.needles.right.n === 0 ? left.n : -1;
    const markers = ahead.filter((mark) => mark.kind !== 'gap' && mark.at !== head);
    const named =
      extent.name === undefined
        ? []
        : markers.filter((mark) => mark.name !== null && (mark.name === extent.name || extent.name?.includes(mark.name)));
    if (extent.which === 'beginning') {
      const bor = markers.find((mark) => mark.kind === 'bor' || mark.name === 'BOR');
      return bor ? { at: bor.at, mark: bor } : { at: 0, mark: null };
    }
    const list = named.length > 0 ? named : markers;
    // At a marker that the last run went up to, "to m" means the next one; else it is reached with no stitch.
    const open = list.filter((mark) => mark.at < left.n || (mark.at === left.n && mark !== hands.reached));
    // "sm, m1L, k to second marker": the markers are counted from the beginning of the row; one that marks the beginning itself is not among them.
    const passed =
      extent.ordinal === undefined
        ? 0
        : hands.needles.right.marks.filter(
            (mark) => mark.kind === 'marker' && mark.at > 0 && (named.length === 0 || mark.name === (named[0] as Mark).name),
          ).length;
    const which =
      extent.ordinal !== undefined
        ? (open[extent.ordinal - 1 - passed] ?? open[extent.ordinal - 1])
        : extent.which === 'last'
          ? open.at(-1)
          : open[0];
    if (which) {
      if (extent.side === 'at') hands.reached = which;
      return { at: which.at, mark: which };
    }
    if (hands.needles.mode === 'round') return { at: 0, mark: null };
    return null;
  }
  if (extent.place === 'centre') {
    const marked = ahead.find((mark) => mark.name === 'centre') ?? ahead.find((mark) => mark.kind === 'marker');
    if (marked) return { at: marked.at, mark: marked };
    const total = live(hands.needles);
    return { at: Math.floor((total + 1) / 2), mark: null };
  }
  const gaps = gapsAhead(ahead, extent.place);
  const gap = gaps.find((mark) => mark.at < left.n) ?? gaps[0];
  return gap ? { at: gap.at, mark: gap } : null;
}

/** Height of the left needle at which a run or repeat stops. */
function targetOf(hands: Hands, extent: Extent, span: Span): number | Trouble | null {
  const { needles, base } = hands;
  switch (extent.kind) {
    case 'end':
      // Between the turns of a round the row ends at the beginning of the round, if it lies ahead.
      if (needles.suspended) return needles.left.marks.findLast((mark) => mark.kind === 'bor' && mark.at < needles.left.n)?.at ?? base;
      return base;
    case 'last': {
      const n = countFor(hands, extent.count.values);
      return n === null ? null : base + n;
    }
    case 'over': {
      const n = countFor(hands, extent.count.values);
      if (n === null) return null;
      return needles.left.n - n;
    }
    case 'onRight': {
      const n = countFor(hands, extent.count.values);
      if (n === null) return null;
      const need = extent.afterBindOff || needles.right.n >= n ? n : n - needles.right.n;
      return needles.left.n - need;
    }
    case 'place': {
      const found = markAhead(hands, extent);
      if (found === null) return stopped(extent.place === 'marker' ? 'markerNotThere' : 'noGap', span, {}, { place: extent.place });
      const n = extent.n === null ? 0 : countFor(hands, extent.n.values);
      if (n === null) return null;
      const { at } = found;
      const method = found.mark?.method;
      if (extent.place === 'marker') return extent.side === 'past' ? at - n : at + n;
      if (extent.place === 'centre') return extent.side === 'past' ? at - 1 - n : at + n;
      if (extent.place === 'double') return extent.side === 'past' ? at - n : at + 1 + n;
      if (extent.place === 'wrapped' || extent.place === 'twin') return extent.side === 'past' ? at - 1 - n : at + n;
      if (extent.place === 'gap' && method === 'double' && extent.side !== 'past') return at + n;
      return extent.side === 'past' ? at - n : at + n;
    }
    case 'these':
      return needles.left.n - Math.min(hands.last, needles.left.n);
    case 'part': {
      const part = needles.parts.find((each) => each.name.toLowerCase().includes(extent.name.toLowerCase()));
      if (part) return needles.left.n - part.n;
      // Instep and sole are the halves of a foot until the draft says otherwise.
      const total = live(needles);
      const whole = needles.right.n === 0 || needles.right.n * 2 === total;
      if (
        /^(?:the )?(?:instep|sole|heel)\b/i.test(extent.name) &&
        needles.mode === 'round' &&
        needles.parts.length !== 1 &&
        hands.base === 0 &&
        total % 2 === 0 &&
        whole
      )
        return Math.max(0, needles.left.n - total / 2);
      return stopped('unread', span);
    }
    case 'times':
      return null;
    case 'relative': {
      const worked = shortOf(needles, extent.side);
      const n = countFor(hands, extent.count.values);
      if (worked === null || n === null) return stopped('unread', span);
      return needles.left.n - (extent.sense === 'fewer' ? worked - n : worked + n) + hands.taken;
    }
    default:
      return stopped('unread', span);
  }
}

const plainVerbs = new Set(['k', 'p', 'sl', 'work']);

/** A run of knits, purls or of the fabric: every stitch makes one. "K2tog across" is a repeat. */
export function plainRun(step: Repeat): boolean {
  const [child] = step.children;
  return step.form === 'run' && !(child?.type === 'work' && !plainVerbs.has(child.stitch));
}

function workRun(hands: Hands, step: Repeat): Trouble | null {
  const { needles } = hands;
  beginRow(needles);
  const extent = step.extent ?? { kind: 'end' as const };
  if (extent.kind === 'times') {
    const passes = passesOf(hands, extent) ?? 0;
    for (let pass = 0; pass < Math.min(passes, mostPasses); pass += 1) {
      hands.watch?.pass(step, pass + 1, passes, hands);
      const trouble = workSteps(hands, step.children);
      if (trouble) return trouble;
    }
    return null;
  }
  if (extent.kind === 'over' && extent.count.all) {
    const n = countFor(hands, extent.count.values);
    const have = needles.left.n - hands.base;
    if (n !== null && n !== have)
      hands.asides.push(stopped('countDiffers', extent.count.span, { stated: n, replayed: have }, { when: 'before' }));
    return runTo(hands, hands.base, step.span);
  }
  if (extent.kind === 'over') fromHolder(hands, countFor(hands, extent.count.values));
  const target = targetOf(hands, extent, step.span);
  if (target === null) return null;
  if (typeof target !== 'number') return target;
  return runTo(hands, target, step.span);
}

/**
 * "Pick up and k 17 sts up right side, k across 31 sts of back neck": where nothing is left on the needle the stitches come from
 * the holder that has as many, or from one that has front and back together.
 */
function fromHolder(hands: Hands, n: number | null): void {
  const { needles } = hands;
  if (n === null || n < 2 || hands.row !== true || needles.left.n !== 0 || hands.base !== 0 || needles.right.n === 0) return;
  const waiting = hands.held.filter((set) => !set.used && !set.rest && set.sure !== false);
  const set = waiting.find((each) => each.n === n) ?? waiting.find((each) => each.n === 2 * n);
  if (set === undefined) return;
  if (set.n === n) set.used = true;
  else set.n -= n;
  needles.left.n = n;
}

function runTo(hands: Hands, target: number, span: Span): Trouble | null {
  const { needles } = hands;
  if (needles.mode === 'round' && needles.suspended && target < 0) {
    const need = -target;
    if (reachRound(needles, need)) return runTo(hands, 0, span);
  }
  if (target > needles.left.n)
    return stopped('tooFew', span, { left: needles.left.n - hands.base, wanted: target - hands.base }, { place: 'run' });
  if (target < Math.min(hands.base, 0) || target < 0)
    return stopped('tooFew', span, { left: needles.left.n, wanted: needles.left.n - target });
  const count = needles.left.n - target;
  hands.ran = true;
  workPlain(needles, count);
  hands.taken += count;
  hands.made += count;
  hands.last = count;
  return null;
}

/** Works `passes` whole passes of steps with fixed use, folding over stretches without markers; `of` passes in all. */
function foldPasses(hands: Hands, step: Repeat, use: { takes: number; makes: number }, passes: number, of = passes): Trouble | null {
  const { needles } = hands;
  if (hands.watch !== undefined && passes <= mostPasses) {
    for (let pass = 1; pass <= passes; pass += 1) {
      hands.watch.pass(step, pass, of, hands);
      const trouble = workSteps(hands, step.children);
      if (trouble) return trouble;
    }
    hands.last = use.makes * passes;
    return null;
  }
  let rest = passes;
  while (rest > 0) {
    const { left } = needles;
    // A marker at the tip stays there until a stitch is taken: what is made before lies in front of it.
    const ahead = left.marks.filter((mark) => mark.at <= left.n && mark.at > left.n - use.takes * rest).at(-1);
    const free = ahead === undefined ? rest : Math.min(rest, use.takes === 0 ? rest : Math.floor((left.n - ahead.at) / use.takes));
    if (free > 0) {
      const boundary = left.n - use.takes * free;
      if (use.takes > 0) passTip(needles);
      left.n = boundary;
      // The mark that ends this stretch stays at the tip and is passed with the next stitch.
      needles.right.n += use.makes * free;
      hands.taken += use.takes * free;
      hands.made += use.makes * free;
      rest -= free;
    }
    if (rest > 0) {
      const trouble = workSteps(hands, step.children);
      if (trouble) return trouble;
      rest -= 1;
    }
  }
  hands.last = use.makes * passes;
  return null;
}

function workRepeat(hands: Hands, step: Repeat): Trouble | null {
  const { needles } = hands;
  const extent = step.extent;
  if (extent === null) return workSteps(hands, step.children);
  const use = fixedUse(hands, step.children);
  if (extent.kind === 'times') {
    const passes = passesOf(hands, extent);
    if (passes === null || passes <= 0) return null;
    return repeatTimes(hands, step, use, passes);
  }
  beginRow(needles);
  if (extent.kind === 'goal') return workToGoal(hands, step, extent.goal);
  let target = targetOf(hands, extent, step.span);
  if (target === null) return null;
  if (typeof target !== 'number') return target;
  const ending = step.ending === null ? null : fixedUse(hands, step.ending.children);
  let lastTakes = 0;
  // "to last 2 sts, end k2": the ending is those two.
  if (step.ending?.kind === 'then' && ending !== null && extent.kind === 'end') target += ending.takes;
  if (step.ending?.kind === 'lastRepeat' && ending !== null && use !== null) {
    const replaced = step.children.at(-1);
    const old = replaced === undefined ? null : fixedUse(hands, [replaced]);
    lastTakes = use.takes - (old?.takes ?? 0) + ending.takes;
    target += lastTakes;
  }
  if (step.ending?.kind === 'omitting' && ending !== null && use !== null) {
    lastTakes = use.takes - ending.takes;
    target += lastTakes;
  }
  const changed = step.ending !== null && step.ending.kind !== 'then' ? 1 : 0;
  const finish = (worked: number | null): Trouble | null => {
    if (step.ending === null) return null;
    if (step.ending.kind === 'then') {
      hands.watch?.between(step, step.ending.children, hands);
      return workSteps(hands, step.ending.children);
    }
    if (worked !== null) hands.watch?.pass(step, worked + 1, worked + 1, hands);
    const children = step.children.slice(0, -1);
    return workSteps(
      hands,
      step.ending.kind === 'omitting' ? (step.children.length > 1 ? children : []) : [...children, ...step.ending.children],
    );
  };
  if (use !== null && use.takes > 0 && step.once.length === 0) {
    const room = needles.left.n - target;
    // What is left is told up to the marker or gap where one is named.
    const place = extent.kind === 'place' ? markAhead(hands, extent) : null;
    const from = place === null || place.at > target ? hands.base : place.at;
    const words: Readonly<Record<string, string>> = extent.kind === 'place' ? { place: extent.place } : {};
    if (room < 0)
      return stopped('repeatDoesNotFit', step.span, { left: needles.left.n - from, wanted: target - from, takes: use.takes }, words);
    if (room % use.takes !== 0) {
      // Nobody counts ahead: whoever watches sees the passes that fit.
      if (hands.watch !== undefined) foldPasses(hands, step, use, Math.floor(room / use.takes), Math.ceil(room / use.takes));
      return stopped(
        'repeatDoesNotFit',
        step.span,
        { left: (room % use.takes) + target - from, wanted: target - from, takes: use.takes, room, over: room % use.takes },
        words,
      );
    }
    const passes = room / use.takes;
    if (passes === 0 && step.ending === null) hands.asides.push(stopped('repeatNotWorked', step.span, {}));
    const trouble = foldPasses(hands, step, use, passes, passes + changed);
    return trouble ?? finish(passes);
  }
  if (use !== null && use.takes === 0 && step.once.length === 0 && use.makes >= 0)
    return stopped('repeatDoesNotFit', step.span, { left: needles.left.n, wanted: target, takes: 0 });
  let passes = 0;
  const goal = target;
  while (needles.left.n > goal) {
    const before = needles.left.n;
    hands.watch?.pass(step, passes + 1, null, hands);
    const trouble = workSteps(hands, step.children);
    if (trouble)
      return trouble.kind === 'tooFew'
        ? stopped('repeatDoesNotFit', step.span, { left: before - hands.base, wanted: goal - hands.base, takes: before - needles.left.n })
        : trouble;
    if (passes === 0 && step.once.length > 0) {
      hands.watch?.between(step, step.once, hands);
      const between = workSteps(hands, step.once);
      if (between) return between;
    }
    passes += 1;
    if (needles.left.n >= before || passes > mostPasses) return stopped('noProgress', step.span, { left: needles.left.n });
    if (hands.turned && step.children.some((child) => child.type === 'turn')) continue;
  }
  if (needles.left.n < goal)
    return stopped('repeatDoesNotFit', step.span, { left: needles.left.n - hands.base, wanted: goal - hands.base });
  return finish(passes);
}

/** "rep from * until all sts have been worked", with turns inside: whole passes, the last of which may end short. */
function workToGoal(hands: Hands, step: Repeat, goal: Goal): Trouble | null {
  const { needles } = hands;
  const target = goal.kind === 'count' || goal.kind === 'marks' ? countFor(hands, goal.count.values) : null;
  const tests = testsFor(goal, target, needles);
  const before = live(needles);
  const lenient = hands.lenient === true;
  if (tests === null) {
    // To a length: one pass shows that it can be worked.
    const trouble = workSteps(hands, step.children);
    if (trouble === null && live(needles) !== before) hands.doubt = true;
    return trouble;
  }
  hands.lenient = goal.kind === 'allWorked';
  for (let pass = 0; pass < mostPasses; pass += 1) {
    const [left, right] = [needles.left.n, needles.right.n];
    const trouble = workSteps(hands, step.children);
    if (trouble) return trouble;
    if (tests[0]?.(needles) === true) {
      hands.lenient = lenient;
      return null;
    }
    if (needles.left.n === left && needles.right.n === right && live(needles) === before) return stopped('noProgress', step.span, { left });
  }
  return stopped('noProgress', step.span, { left: needles.left.n });
}

function repeatTimes(hands: Hands, step: Repeat, use: { takes: number; makes: number } | null, passes: number): Trouble | null {
  const { needles } = hands;
  if (use !== null && step.once.length === 0 && step.ending === null) {
    if (use.takes > 0) {
      beginRow(needles);
      const have = needles.left.n - hands.base;
      if (have < use.takes * passes && hands.watch !== undefined) foldPasses(hands, step, use, Math.floor(have / use.takes), passes);
      if (have < use.takes * passes)
        return stopped('tooFew', step.span, { left: have, wanted: use.takes * passes, takes: use.takes, passes }, { place: 'repeat' });
    }
    return foldPasses(hands, step, use, passes);
  }
  const shares = needleShares(hands, step, passes);
  const base = hands.base;
  for (let pass = 0; pass < Math.min(passes, mostPasses); pass += 1) {
    hands.watch?.pass(step, pass + 1, passes, hands);
    const share = shares?.[pass];
    const worked = needles.right.n;
    if (share !== undefined) hands.base = needles.left.n - share;
    const trouble = workSteps(hands, step.children);
    const over = needles.left.n - hands.base;
    hands.base = base;
    if (trouble) return trouble;
    if (share !== undefined) {
      if (over !== 0) return stopped('leftOver', step.span, { left: over }, { needle: `Needle ${pass + 1}` });
      const part = needles.parts.length === passes ? needles.parts[pass] : undefined;
      if (part !== undefined) part.n = needles.right.n - worked;
    }
    if (pass === 0 && step.once.length > 0) {
      hands.watch?.between(step, step.once, hands);
      const between = workSteps(hands, step.once);
      if (between) return between;
    }
  }
  if (step.ending === null) return null;
  hands.watch?.between(step, step.ending.children, hands);
  return workSteps(hands, step.ending.children);
}

/**
 * "*K1, M1R, k to last st of needle, M1L, k1; rep from * once more": each pass is one needle of the round. What lies on them, or
 * equal shares where only their number is told; null where the steps do not speak of the needle or the round has begun.
 */
function needleShares(hands: Hands, step: Repeat, passes: number): readonly number[] | null {
  const { needles } = hands;
  const ofNeedle = step.children.some((child) => child.type === 'repeat' && child.extent?.kind === 'last' && child.extent.of === 'needle');
  if (!ofNeedle || passes < 2 || passes > 6 || step.once.length > 0) return null;
  beginRow(needles);
  if (needles.right.n > 0) return null;
  const have = needles.left.n - hands.base;
  const known = needles.parts.map((part) => part.n);
  if (known.length === passes && known.reduce((sum, n) => sum + n, 0) === have) return known;
  return have % passes === 0 ? Array.from({ length: passes }, () => have / passes) : null;
}

function workTurn(hands: Hands, step: Turn): Trouble | null {
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
  if (step.leaving !== null) {
    const n = countFor(hands, step.leaving.values);
    const have = needles.left.n;
    if (n !== null && n !== have) hands.asides.push(stopped('leftDiffers', step.leaving.span, { stated: n, replayed: have }));
  }
  if (step.holds !== null) {
    if (needles.left.n > 0) {
      const doubt =
        step.leaving !== null && countFor(hands, step.leaving.values) !== needles.left.n && countFor(hands, step.leaving.values) !== null;
      hands.held.push({ name: step.holds, piece: hands.piece, rest: true, n: needles.left.n, used: false, sure: needles.sure && !doubt });
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
    hands.asides.push(stopped('noProgress', step.span, { left: live(needles) - needles.left.n }));
  hands.turned = true;
  hands.base = borderOf(needles);
  return null;
}

function workMarker(hands: Hands, step: Marker): Trouble | null {
  const { needles } = hands;
  // A marker that hangs in the centre stitch stands before it.
  if (step.op === 'hang' && step.name === 'centre' && needles.right.n > 0 && needles.begun)
    needles.right.marks.push({ kind: 'marker', name: 'centre', at: needles.right.n - 1 });
  if (step.atRow || step.op === 'hang') return null;
  if (step.op === 'place' || step.op === 'replace') {
    if (step.name === 'BOR' && needles.right.n + needles.left.n > 0 && !needles.begun) return null;
    const marks = needles.right.marks;
    needles.lost = false;
    marks.push({ kind: 'marker', name: step.name, at: needles.right.n });
    return null;
  }
  const tip = needles.left.marks.at(-1);
  const there = tip !== undefined && tip.kind !== 'gap' && tip.at === needles.left.n;
  if (step.op === 'slip') {
    if (there) passTip(needles);
    else if (needles.right.marks.some((mark) => mark.kind !== 'gap' && mark.at === needles.right.n)) return null;
    else if (!(needles.mode === 'round' && needles.left.n === hands.base)) {
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

function workBindOff(hands: Hands, step: BindOff): Trouble | null {
  const { needles } = hands;
  beginRow(needles);
  const all = step.count.all === true;
  const n = countFor(hands, step.count.values);
  if (n === null) return null;
  if (all) {
    const have = live(needles);
    if (step.count.values.some((value) => value !== 0) && n !== have)
      hands.asides.push(stopped('countDiffers', step.count.span, { stated: n, replayed: have }, { when: 'before', what: 'bindOff' }));
    needles.left = { n: 0, marks: [] };
    needles.right = { n: 0, marks: [] };
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

function workHold(hands: Hands, step: Hold): Trouble | null {
  const { needles } = hands;
  const n = step.count === null ? (step.which === 'centre' ? 1 : null) : countFor(hands, step.count.values);
  if (step.count !== null && n === null) return null;
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
    if (needles.left.n === 0 && needles.right.n >= count && step.which === 'last') {
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

function workTakeUp(hands: Hands, step: TakeUp): Trouble | null {
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

/** One needle of a round: "end" and "last" are measured on it. Without its number only the net of its steps is known. */
function workPart(hands: Hands, step: NeedlePart): Trouble | null {
  const { needles } = hands;
  beginRow(needles);
  const part = needles.parts.find((each) => each.name.toLowerCase() === step.needle.toLowerCase());
  if (part === undefined || part.n > needles.left.n) {
    const net = netOf(hands, step.children);
    if (net === null) return stopped('unread', step.span);
    needles.right.n += net;
    hands.made += net;
    hands.divided = true;
    needles.begun = true;
    return null;
  }
  const saved = hands.base;
  const startRight = needles.right.n;
  hands.base = needles.left.n - part.n;
  const trouble = workSteps(hands, step.children);
  if (trouble === null && needles.left.n !== hands.base) {
    const over = needles.left.n - hands.base;
    hands.base = saved;
    return stopped('leftOver', step.span, { left: over }, { needle: step.needle });
  }
  hands.base = saved;
  part.n = needles.right.n - startRight;
  return trouble;
}

/** What steps add or take away, with runs counting nothing; null where a run repeats something that changes the count. */
function netOf(hands: Hands, steps: readonly Step[]): number | null {
  let net = 0;
  for (const step of steps) {
    if (step.type === 'repeat' && step.form === 'run') continue;
    // "*k3, p1; rep from * to end of needle": as many as it takes, and none gained or lost.
    const pass =
      step.type === 'repeat' && step.extent !== null && step.extent.kind !== 'times' && step.once.length === 0 && step.ending === null
        ? fixedUse(hands, step.children)
        : null;
    if (pass !== null && pass.takes === pass.makes) continue;
    const use = fixedUse(hands, [step]);
    if (use === null) return null;
    net += use.makes - use.takes;
  }
  return net;
}

function workJoin(hands: Hands, step: Join): Trouble | null {
  const { needles } = hands;
  switch (step.what) {
    case 'rejoin':
    case 'noRound':
    case 'seam': {
      if (step.what !== 'rejoin') return null;
      if (step.side !== null) needles.side = step.side;
      const rest = [...hands.held].reverse().find((set) => set.rest && !set.used && set.n > 0);
      if (live(needles) === 0 && rest !== undefined) {
        rest.used = true;
        needles.sure = rest.sure !== false;
        needles.left = { n: rest.n, marks: [] };
        needles.right = { n: 0, marks: [] };
        needles.begun = true;
        const n = step.count === null ? null : countFor(hands, step.count.values);
        if (n !== null && n !== rest.n)
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
      if (needles.left.n === 0 && needles.right.n > 0) {
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
      setLive(needles, 0);
      hands.divided = true;
      return null;
    }
  }
}

/** How the stitches lie on the needles of a round; the numbers must add up to what there is. */
function workArrange(hands: Hands, step: Arrange): Trouble | null {
  const { needles } = hands;
  const parts: { name: string; n: number }[] = [];
  for (const part of step.parts) {
    const n = countFor(hands, part.count.values);
    if (n !== null) parts.push({ name: part.name ?? `Needle ${parts.length + 1}`, n });
  }
  const each = step.perNeedle === null ? null : countFor(hands, step.perNeedle.values);
  const count = step.needles === null ? null : countFor(hands, step.needles.values);
  if (parts.length === 0 && each !== null && count !== null)
    for (let needle = 1; needle <= count; needle += 1) parts.push({ name: `Needle ${needle}`, n: each });
  const sum = parts.reduce((total, part) => total + part.n, 0);
  const have = live(needles);
  if (parts.length > 1 && have > 0 && sum !== have) {
    hands.asides.push(stopped('partDiffers', step.span, { stated: sum, replayed: have }, { what: 'needles' }));
    hands.doubt = true;
  }
  needles.parts = sum === have ? parts : [];
  return null;
}

/** Back and forth on some stitches: the others wait until they are named again. */
function workOnly(hands: Hands, step: Only): Trouble | null {
  const { needles } = hands;
  const n = step.count === null ? null : countFor(hands, step.count.values);
  const have = live(needles);
  if (needles.mode === 'round') {
    // The rows begin where the round began, on the right side.
    if (needles.left.n === 0) {
      needles.left = { n: have, marks: [] };
      needles.right = { n: 0, marks: [] };
    }
    needles.mode = 'flat';
    needles.side = 'RS';
  }
  if (n === null || n >= have) return null;
  hands.held.push({ name: 'waiting', piece: hands.piece, rest: false, n: have - n, used: false });
  setLive(needles, n);
  hands.divided = true;
  return null;
}

/** The stitches that waited while only some were worked in rows come back when the rounds go on. */
function waitingBack(hands: Hands, step: Join): void {
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

/** What the whole row leaves undone: stitches on the left needle with no turn. */
export function unfinished(hands: Hands): number {
  const { needles } = hands;
  // A pass between the turns of a round may end anywhere; the next round asks where it stands.
  if (needles.suspended) return 0;
  // "…, k82 back sts, pm for BOR and join": all were worked before they came round.
  if (!needles.begun && needles.mode === 'round' && needles.right.n === 0 && hands.made > 0 && hands.made >= needles.left.n) return 0;
  if (hands.turned || needles.parts.length > 0 || (!needles.begun && hands.made === 0)) return 0;
  return needles.left.n - borderOf(needles);
}
