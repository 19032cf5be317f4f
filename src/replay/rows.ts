/** One row in every size: choosing how to read it, working it, checking what the draft says of it. */
import { sizeValue } from '../../grammar/count.ts';
import type { Row, Side, Span, Stated, Statement, Step } from '../../grammar/tree.ts';
import { standsStill } from './bounds.ts';
import type { Hands, RowChoice, Trouble } from './hands.ts';
import { remember } from './memory.ts';
import { copyNeedles, endRow, live, type Needles } from './needles.ts';
import { handOf, labelWords, type Moment, met, type Play, shown, write } from './play.ts';
import { attempt, goesOn, type Outcome, pieceTitle } from './row-attempt.ts';
import { choicesFor, noteReadings } from './row-choices.ts';
import { openTurns } from './short-rows.ts';
import { backToRounds, checkSide, closesRound, nextSide, roundFromStart, sideSaid } from './sides.ts';
import { checkStated } from './stated.ts';

/** How a row came to be worked. */
export interface Call {
  /** The instruction that has it worked now. */
  readonly span: Span;
  readonly textSpan: Span;
  /** The row stands here and is worked for the first time, so what it states is checked. */
  readonly inline: boolean;
  readonly number: number | null;
  readonly node: Statement;
}

function totalStated(row: Row): Stated | null {
  return row.stated.find((stated) => stated.what === 'total') ?? null;
}

/** The reading that most sizes can be worked by, the likeliest where several serve alike. */
interface Chosen {
  readonly outcomes: readonly Outcome[];
  /** Place of the reading among all. */
  readonly chosen: number;
  /** How well each reading tried fits: two for a size that comes out, one where it comes out but not to the stated count. */
  readonly fits: readonly number[];
}

function chooseReading(
  play: Play,
  row: Row,
  steps: readonly Step[],
  sizes: readonly number[],
  choices: readonly RowChoice[],
  inline: boolean,
): Chosen {
  const stated = inline ? totalStated(row) : null;
  let best: Outcome[] = [];
  let bestFit = -1;
  let chosen = 0;
  const fits: number[] = [];
  choices.forEach((choice, index) => {
    if (bestFit === sizes.length * 2 && index > 0 && stated === null && (!inline || play.trying)) return;
    const outcomes = sizes.map((size) => attempt(play, size, row, steps, choice));
    let fit = 0;
    outcomes.forEach((outcome, position) => {
      const size = sizes[position] as number;
      if (outcome.trouble !== null || outcome.left > 0) return;
      fit += 2;
      // A turn where the work turned before shapes nothing: another reading may move it on.
      if (choices.length > 1 && outcome.hands.asides.some((aside) => aside.kind === 'noProgress')) fit -= 1;
      const want = stated === null ? null : sizeValue(stated.count.values, size);
      if (want !== null && choices.length > 1 && want !== live(outcome.needles)) fit -= 1;
    });
    fits.push(fit);
    if (fit > bestFit) {
      best = outcomes;
      bestFit = fit;
      chosen = index;
    }
  });
  return { outcomes: best, chosen, fits };
}

/** Whether the row ends with "do not turn". */
function staysFacing(steps: readonly Step[]): boolean {
  const last = steps.findLast((step) => step.type !== 'remark' && step.type !== 'stated');
  return (last?.type === 'change' && last.what === 'noTurn') || (last?.type === 'turn' && last.not === true);
}

/** What is said of a row that came out in no reading, and how its size goes on. */
function noteTrouble(play: Play, row: Row, steps: readonly Step[], size: number, outcome: Outcome, call: Call, label: string): void {
  const hand = handOf(play, size);
  const before = live(hand.needles);
  const numbers = { before, taken: outcome.hands.taken, made: outcome.hands.made };
  const trouble: Trouble = outcome.trouble ?? { kind: 'leftOver', span: row.span, numbers: { left: outcome.left }, words: {} };
  // "Row 13: Sl 1, k7. Do not turn." after turned rows: the next part begins on the stitches that wait, and what is left shows nothing.
  if (outcome.trouble === null && staysFacing(steps) && openTurns(hand.needles).size > 0) {
    recover(hand.needles, outcome, before);
    hand.needles.sure = false;
    hand.held = outcome.held;
    return;
  }
  const words: Trouble = trouble.kind === 'leftOver' ? { ...trouble, span: lastWorked(steps) ?? row.span } : trouble;
  // A row that was right where it stands and fails when it is called again: the call is at fault.
  const called = !call.inline && call.span.start !== call.textSpan.start;
  if (hand.needles.lost && usesMarkers(steps)) hand.needles.sure = false;
  met(
    play,
    called ? { ...words, span: call.span, words: { ...words.words, row: label } } : words,
    size,
    row,
    label,
    numbers,
    [],
    called ? words.span : null,
  );
  recover(hand.needles, outcome, before);
  if (trouble.kind !== 'unread') hand.held = outcome.held;
  // What the row would have put aside is asked for later; it is no second mistake that it is not there.
  for (const step of steps) {
    const n = step.type === 'hold' && step.count !== null ? sizeValue(step.count.values, size) : null;
    if (step.type === 'hold' && n !== null && !hand.held.some((set) => !set.used && set.n === n))
      hand.held.push({ name: step.name ?? step.holder, piece: pieceTitle(play), rest: false, n, used: false, sure: false });
  }
}

/** Takes over what one size came to, and says what it met on the way. */
function takeOver(
  play: Play,
  row: Row,
  steps: readonly Step[],
  size: number,
  outcome: Outcome,
  facing: Side | null,
  call: Call,
  label: string,
): void {
  const hand = handOf(play, size);
  const { sure } = hand.needles;
  const before = live(hand.needles);
  for (const aside of outcome.hands.asides) {
    const marker = aside.kind === 'markerMissing' || aside.kind === 'markerInStitch';
    if (marker && (hand.needles.lost || !call.inline)) continue;
    // A row that has shrunk by the time it is called again may run out on purpose.
    if (!call.inline && (aside.kind === 'nothingToWork' || aside.kind === 'repeatNotWorked')) continue;
    met(play, aside, size, row, label);
    // One marker gone astray unsettles those behind it.
    if (marker) outcome.needles.lost = true;
  }
  if (outcome.trouble === null && outcome.left === 0) {
    hand.needles = outcome.needles;
    hand.held = outcome.held;
    const { off, edge, holes } = outcome.hands;
    // The next row works back over this one: what it had before each hole lies behind it then, or in a round ahead of it.
    const total = live(hand.needles);
    const behind = (holes ?? []).map((before) => (hand.needles.mode === 'round' ? total - before : before));
    if (off - (edge ?? 0) > 0) hand.needles.holes = { off: off - (edge ?? 0), behind };
    else delete hand.needles.holes;
    if (outcome.hands.removing === true)
      for (const needle of [hand.needles.left, hand.needles.right]) needle.marks = needle.marks.filter((mark) => mark.kind !== 'marker');
    if (facing !== null) hand.needles.worked = { RS: null, WS: null, ...hand.needles.worked, [facing]: outcome.hands.taken };
    // "…, working the yarn overs with the stitches beside them": they are closed, wherever in the row it is said.
    if (steps.some((step) => step.type === 'resolve')) delete hand.needles.passed;
    endRow(hand.needles);
    noteSets(hand.needles, outcome.hands);
  } else {
    // A list that breaks off before this size: its number is asked for, and what follows from it is not known.
    if (!outcome.needles.sure) hand.needles.sure = false;
    noteTrouble(play, row, steps, size, outcome, call, label);
  }
  hand.needles.sure = hand.needles.sure && sure && outcome.hands.doubt !== true;
  if (live(hand.needles) > 0 || outcome.hands.off > 0) hand.fresh = false;
  if (row.label?.unit === 'round' && hand.needles.mode === 'flat' && hand.joined) {
    hand.needles.mode = 'round';
    hand.needles.side = 'RS';
  }
  hand.broughtOn = before === 0 && live(hand.needles) > 0 && steps.some((step) => step.type === 'pickUp');
  if (hand.needles.mode === 'flat' && outcome.trouble === null && closesRound(steps)) {
    hand.needles.mode = 'round';
    hand.needles.side = 'RS';
  }
  hand.rows += 1;
  hand.sectionRows += 1;
  remember(hand.history, {
    row,
    times: 1,
    section: play.section,
    textSpan: call.textSpan,
    label,
    change: live(hand.needles) - before,
  });
}

/** Keeps what lies on either side of a bind-off inside the row, for "continue on the last set of 33 sts". */
function noteSets(needles: Needles, hands: Hands): void {
  needles.opened = hands.off > 0;
  const [offAt, ...more] = hands.offAt ?? [];
  const rest = live(needles) - (offAt ?? 0);
  if (offAt !== undefined && offAt > 0 && rest > 0 && more.length === 0 && !hands.divided) needles.sets = { first: offAt, last: rest };
  else delete needles.sets;
}

/** Works the steps of one row in the given sizes and writes it down. */
export function playSteps(play: Play, row: Row, steps: readonly Step[], sizes: readonly number[], call: Call): void {
  const label = labelWords(row.label, call.number);
  if (standsStill(play, sizes, call.span, row)) return;
  const before = play.hands.map(shown);
  const counts = play.hands.map((hand) => live(hand.needles));
  const round = row.label?.unit === 'round';
  if (round) for (const size of sizes) roundFromStart(handOf(play, size));
  const said = sideSaid(steps);
  const replayed = sizes.map((size) => (said !== null && counts[size] === 0 ? said : nextSide(handOf(play, size).needles)));
  const turns = steps.some((step) => step.type === 'turn');
  // A row of short rows told in one line goes on from the turn before it.
  if (round && !goesOn(play, row)) for (const size of sizes) backToRounds(play, size, call.span, row, label, turns);
  if (call.inline && row.label !== null) checkSide(play, row.label, sizes, call, label);
  const facing = sizes.map((size, position) => replayed[position] ?? nextSide(handOf(play, size).needles));
  const choices = choicesFor(steps);
  const metBefore = play.book.met.length;
  const heads = play.trying
    ? null
    : sizes.map((size) => ({ needles: copyNeedles(handOf(play, size).needles), held: handOf(play, size).held.map((set) => ({ ...set })) }));
  const { outcomes, chosen, fits } = chooseReading(play, row, steps, sizes, choices, call.inline);
  // "K to last 5 sts, turn" again and again moves on only where the five are counted from the turn before: asked, not taken for granted.
  const again = steps.find((step) => step.type === 'turn');
  if (choices[chosen]?.from === 'turn' && again !== undefined)
    for (const size of sizes)
      met(play, { kind: 'noProgress', span: again.span, numbers: {}, words: { place: 'turn', other: 'fits' } }, size, row, label);
  else if (call.inline && choices.length > 1) noteReadings(play, row, sizes, choices, chosen, fits, call, label);
  const takes: (number | null)[] = [];
  const makes: (number | null)[] = [];
  sizes.forEach((size, position) => {
    const outcome = outcomes[position] as Outcome;
    takes[size] = outcome.hands.taken;
    makes[size] = outcome.hands.made;
    takeOver(play, row, steps, size, outcome, facing[position] ?? null, call, label);
  });
  if (call.inline) for (const each of row.stated) checkStated(play, each, sizes, { before: counts, node: row, label });
  const troubled = play.book.met.length > metBefore && play.book.heads.length < mostHeads;
  play.book.steps.set(play.book.entries.length, steps);
  if (troubled || play.witness !== undefined)
    heads?.forEach((head, position) => {
      const moment: Moment = {
        ...head,
        entry: play.book.entries.length,
        size: sizes[position] as number,
        row,
        steps,
        choice: choices[chosen] as RowChoice,
        choices,
        piece: pieceTitle(play),
        number: call.number,
        inline: call.inline,
      };
      play.witness?.(moment);
      if (troubled) play.book.heads.push(moment);
    });
  write(
    play,
    { label, span: call.span, textSpan: call.textSpan, node: call.node, side: common(facing), unit: row.label?.unit ?? 'row' },
    sizes,
    before,
    takes,
    makes,
  );
}

/** Whether a row measures from markers, so that it cannot be checked where they may hang wrong. */
function usesMarkers(steps: readonly Step[]): boolean {
  return steps.some(
    (step) =>
      step.type === 'marker' ||
      (step.type === 'repeat' && ((step.extent?.kind === 'place' && step.extent.place === 'marker') || usesMarkers(step.children))),
  );
}

function common<T>(values: readonly T[]): T | null {
  const [first] = values;
  return first !== undefined && values.every((value) => value === first) ? first : null;
}

function lastWorked(steps: readonly Step[]): Span | null {
  const worked = steps.filter((step) => step.type !== 'remark' && step.type !== 'stated');
  return worked.at(-1)?.span ?? null;
}

/** After a row that cannot be worked as written: go on as if it had been finished, unsure of the count. */
function recover(needles: Needles, outcome: Outcome, before: number): void {
  const guess = outcome.trouble === null ? before + outcome.hands.made - outcome.hands.taken : before;
  const { side, mode } = outcome.needles.begun ? outcome.needles : { side: nextSide(needles), mode: needles.mode };
  const total = Math.max(0, guess);
  const marks = [...outcome.needles.right.marks, ...outcome.needles.left.marks.map((mark) => ({ ...mark, at: total - mark.at }))].filter(
    (mark) => mark.kind === 'marker' && mark.at >= 0 && mark.at <= total,
  );
  const short =
    [...needles.left.marks, ...needles.right.marks].some((mark) => mark.kind === 'gap') ||
    outcome.trouble?.kind === 'noGap' ||
    outcome.hands.turned;
  needles.left = { n: 0, marks: [] };
  needles.right = { n: total, marks: marks.sort((a, b) => a.at - b.at) };
  needles.lost = needles.lost || marks.length > 0;
  needles.side = short ? null : side;
  needles.mode = mode;
  needles.sure = false;
  needles.begun = false;
}

/** Heads of rows kept for trying other words; a draft with more troubles needs another reader first. */
const mostHeads = 400;
