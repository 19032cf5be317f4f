/** One row in every size: choosing how to read it, working it, checking what the draft says of it. */
import { sizeValue } from '../../grammar/count.ts';
import type { Label, Row, Side, Span, Stated, Statement, Step } from '../../grammar/tree.ts';
import { headBorder } from './edgings.ts';
import { firstChoice, type Hands, type RowChoice, type Trouble } from './hands.ts';
import type { Held } from './holders.ts';
import { atBeginning, beginRow, copyNeedles, endRow, live, type Needles, resumeRound } from './needles.ts';
import { type Hand, handOf, labelWords, type Moment, met, type Play, sectionOf, shown, tryOut, type Worked, write } from './play.ts';
import { checkStated } from './stated.ts';
import { playFrom } from './statements.ts';
import { rowReadings } from './steps/readings.ts';
import { unfinished, workSteps } from './work.ts';

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

interface Outcome {
  readonly needles: Needles;
  readonly held: Held[];
  readonly hands: Hands;
  readonly trouble: Trouble | null;
  readonly left: number;
}

export function otherSide(side: Side | null): Side | null {
  return side === null ? null : side === 'RS' ? 'WS' : 'RS';
}

/** Side that will face in the next row. */
export function nextSide(needles: Needles): Side | null {
  if (needles.mode === 'round' && !needles.suspended) return 'RS';
  if (needles.begun || needles.left.n > 0 || needles.right.n === 0 || needles.stay === 'slide') return needles.side;
  return otherSide(needles.side);
}

function attempt(play: Play, size: number, row: Row, steps: readonly Step[], choice: RowChoice): Outcome {
  const hand = handOf(play, size);
  const needles = copyNeedles(hand.needles);
  const held = hand.held.map((set) => ({ ...set }));
  const hands: Hands = {
    needles,
    size,
    vocabulary: play.pattern.vocabulary,
    held,
    piece: pieceTitle(play),
    choice,
    taken: 0,
    made: 0,
    off: 0,
    last: 0,
    turned: false,
    divided: false,
    asides: [],
    base: headBorder(needles),
    lenient: play.lenient === true,
    row: true,
    ring: row.label?.unit === 'round' && hand.joined,
  };
  if (picksUpFirst(steps)) beginRow(needles);
  const trouble = workSteps(hands, steps);
  const left =
    trouble === null && !hands.divided && !leavesRest(steps, hands) && !stopsShort(play, row, steps, needles) ? unfinished(hands) : 0;
  return { needles, held, hands, trouble, left };
}

/** "Pick up 27 sts along the first side, knit the 22 sts of the flap, …": the stitches in hand are still to be worked. */
function picksUpFirst(steps: readonly Step[]): boolean {
  const first = steps.find((step) => !['change', 'remark', 'stated', 'marker', 'join'].includes(step.type));
  return first?.type === 'pickUp' && steps.some((step) => step.type === 'work' || step.type === 'repeat');
}

const castsOnly = new Set<Step['type']>(['turn', 'castOn', 'marker', 'change', 'stated', 'remark']);

/** Whether what stays on the left needle is meant to: "Turn." alone, "Turn and CO 20 sts", or the last loop of a bind-off that is then fastened off. */
function leavesRest(steps: readonly Step[], hands: Hands): boolean {
  if (steps.every((step) => castsOnly.has(step.type))) return true;
  const last = steps.findLast((step) => step.type !== 'stated' && step.type !== 'remark');
  const toOne = last?.type === 'repeat' && last.extent?.kind === 'last' && last.extent.count.values.every((value) => value === 1);
  return hands.off > 0 && toOne && last.children.some((step) => step.type === 'bindOff');
}

/**
 * "Knit to 4 sts before end of rnd": in a round the work stops there on purpose, and the next round begins at that
 * place. "Knit to last 4 sts" says so only where the next instruction takes those stitches off.
 */
function stopsShort(play: Play, row: Row, steps: readonly Step[], needles: Needles): boolean {
  if (needles.mode !== 'round' || needles.suspended) return false;
  const last = steps.findLast((step) => !['stated', 'remark', 'change'].includes(step.type));
  if (last?.type !== 'repeat' || last.form !== 'run' || last.extent === null || last.ending !== null) return false;
  const { extent } = last;
  if (extent.kind === 'place') return extent.place === 'marker' && extent.side === 'before' && extent.which === 'beginning';
  if (extent.kind !== 'last' || extent.of === 'needle') return false;
  if (/\bbefore\b|\bwithin\b|\bshort\b/i.test(play.text(last.span))) return true;
  const next = play.flow[play.flow.findIndex((item) => item.statement === row) + 1]?.statement;
  const takesOff = (step: { readonly type: string } | undefined): boolean => step?.type === 'bindOff' || step?.type === 'hold';
  return takesOff(next) || (next?.type === 'row' && takesOff(next.children[0]));
}

export function pieceTitle(play: Play): string {
  const { sections } = play.pattern;
  const { piece } = sectionOf(play);
  const head = sections.find((section) => section.kind === 'piece' && section.piece === piece);
  return head?.title ?? sectionOf(play).title;
}

/** Every way the row may be read, the likeliest first. */
function choicesFor(steps: readonly Step[]): RowChoice[] {
  const open = rowReadings(steps);
  let choices: RowChoice[] = [firstChoice];
  if (open.times) choices = choices.flatMap((choice) => [choice, { ...choice, times: 'all' as const }]);
  if (open.loop) choices = choices.flatMap((choice) => [choice, { ...choice, loop: 'apart' as const }]);
  if (open.names > 1)
    choices = choices.flatMap((choice) => Array.from({ length: Math.min(open.names, 3) }, (_, names) => ({ ...choice, names })));
  return choices.slice(0, 12);
}

function totalStated(row: Row): Stated | null {
  return row.stated.find((stated) => stated.what === 'total') ?? null;
}

/** Works the steps of one row in the given sizes and writes it down. */
export function playSteps(play: Play, row: Row, steps: readonly Step[], sizes: readonly number[], call: Call): void {
  const label = labelWords(row.label, call.number);
  const before = play.hands.map(shown);
  const counts = play.hands.map((hand) => live(hand.needles));
  if (row.label?.unit === 'round') for (const size of sizes) roundFromStart(handOf(play, size));
  const replayed = sizes.map((size) => nextSide(handOf(play, size).needles));
  if (row.label?.unit === 'round')
    for (const size of sizes)
      backToRounds(
        play,
        size,
        call.span,
        row,
        label,
        steps.some((step) => step.type === 'turn'),
      );
  if (call.inline && row.label !== null) checkSide(play, row.label, sizes, call, label);
  const facing = sizes.map((size, position) => replayed[position] ?? nextSide(handOf(play, size).needles));
  const choices = choicesFor(steps);
  const metBefore = play.book.met.length;
  const heads = play.trying
    ? null
    : sizes.map((size) => ({ needles: copyNeedles(handOf(play, size).needles), held: handOf(play, size).held.map((set) => ({ ...set })) }));
  let best: Outcome[] = [];
  let bestFit = -1;
  let chosen = 0;
  const fits: number[] = [];
  const stated = call.inline ? totalStated(row) : null;
  choices.forEach((choice, index) => {
    if (bestFit === sizes.length * 2 && index > 0 && stated === null && (!call.inline || play.trying)) return;
    const outcomes = sizes.map((size) => attempt(play, size, row, steps, choice));
    let fit = 0;
    outcomes.forEach((outcome, position) => {
      const size = sizes[position] as number;
      if (outcome.trouble !== null || outcome.left > 0) return;
      fit += 2;
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
  if (call.inline && choices.length > 1) noteReadings(play, row, sizes, choices, chosen, fits, call, label);

  const takes: (number | null)[] = [];
  const makes: (number | null)[] = [];
  sizes.forEach((size, position) => {
    const outcome = best[position] as Outcome;
    const hand = handOf(play, size);
    const sure = hand.needles.sure;
    for (const aside of outcome.hands.asides) {
      const marker = aside.kind === 'markerMissing' || aside.kind === 'markerInStitch';
      if (marker && (hand.needles.lost || !call.inline)) continue;
      met(play, aside, size, row, label);
      // One marker gone astray unsettles those behind it.
      if (marker) outcome.needles.lost = true;
    }
    takes[size] = outcome.hands.taken;
    makes[size] = outcome.hands.made;
    if (outcome.trouble === null && outcome.left === 0) {
      hand.needles = outcome.needles;
      hand.held = outcome.held;
      const side = facing[position];
      if (side !== null && side !== undefined)
        hand.needles.worked = { RS: null, WS: null, ...hand.needles.worked, [side]: outcome.hands.taken };
      endRow(hand.needles);
    } else {
      const numbers = { before: counts[size] as number, taken: outcome.hands.taken, made: outcome.hands.made };
      const trouble: Trouble = outcome.trouble ?? { kind: 'leftOver', span: row.span, numbers: { left: outcome.left }, words: {} };
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
      recover(hand.needles, outcome, counts[size] as number);
      if (trouble.kind !== 'unread') hand.held = outcome.held;
    }
    hand.needles.sure = hand.needles.sure && sure && outcome.hands.doubt !== true;
    if (live(hand.needles) > 0 || outcome.hands.off > 0) hand.fresh = false;
    if (row.label?.unit === 'round' && hand.needles.mode === 'flat' && hand.joined) {
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
      change: live(hand.needles) - (counts[size] as number),
    });
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

/** "Cast on 6 sts. Rnd 1: …": a piece whose first row is called a round is worked in the round, though nothing says to join. */
export function roundFromStart(hand: Hand): void {
  const { needles } = hand;
  if (
    hand.rows > 0 ||
    needles.mode === 'round' ||
    needles.side !== null ||
    needles.begun ||
    needles.right.n > 0 ||
    needles.left.marks.length > 0
  )
    return;
  needles.mode = 'round';
  needles.side = 'RS';
}

/** A round after turns: the work must face the right side and stand at the beginning of the round. */
export function backToRounds(play: Play, size: number, span: Span, node: Statement, label: string | null, turns: boolean): void {
  const { needles } = handOf(play, size);
  if (!needles.suspended || turns) return;
  if (nextSide(needles) === 'WS') met(play, { kind: 'turnInRound', span, numbers: {}, words: {} }, size, node, label);
  else if (!atBeginning(needles))
    met(play, { kind: 'notAtBeginning', span, numbers: { left: needles.left.n }, words: {} }, size, node, label);
  resumeRound(needles, true);
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

const longestMemory = 600;
/** Heads of rows kept for trying other words; a draft with more troubles needs another reader first. */
const mostHeads = 400;

export function remember(history: Worked[], worked: Worked): void {
  const last = history.at(-1);
  if (
    last !== undefined &&
    last.row === null &&
    worked.row === null &&
    last.change === 0 &&
    worked.change === 0 &&
    last.textSpan.start === worked.textSpan.start
  )
    history[history.length - 1] = { ...last, times: last.times + worked.times };
  else history.push(worked);
  if (history.length > longestMemory) history.splice(0, history.length - longestMemory);
}

function checkSide(play: Play, label: Label, sizes: readonly number[], call: Call, words: string): void {
  const { side } = label;
  if (side === null) {
    for (const size of sizes) {
      const { needles } = handOf(play, size);
      if (needles.side === null) settle(needles, label.numbers[0] !== undefined ? (label.numbers[0] % 2 === 1 ? 'RS' : 'WS') : null);
    }
    return;
  }
  for (const size of sizes) {
    const hand = handOf(play, size);
    const { needles } = hand;
    const facing = nextSide(needles);
    const first = hand.history.length === 0 || hand.rows === 0;
    if (needles.mode === 'round' && !needles.suspended) {
      if (side === 'WS') settle(needles, side);
      continue;
    }
    if (facing !== null && facing !== side && !first) {
      met(
        play,
        { kind: 'sideDiffers', span: label.sideSpan ?? call.span, numbers: {}, words: { stated: side, replayed: facing } },
        size,
        call.node,
        words,
      );
    }
    if (facing !== side) settle(needles, side);
  }
}

/** Makes the next row face as the draft says. */
export function settle(needles: Needles, side: Side | null): void {
  if (side === null) return;
  if (needles.begun || needles.left.n > 0 || needles.right.n === 0) needles.side = side;
  else needles.side = otherSide(side);
}

/** More than one reading: says so where they differ, and where only an unusual one fits. */
function noteReadings(
  play: Play,
  row: Row,
  sizes: readonly number[],
  choices: readonly RowChoice[],
  chosen: number,
  fits: readonly number[],
  call: Call,
  label: string,
): void {
  if (play.trying) return;
  const full = sizes.length * 2;
  // Two meanings of a stitch name that both fit are settled by custom; only how often and whose loop are questions.
  const fitting = choices.filter((choice, index) => fits[index] === full && choice.names === (choices[chosen] as RowChoice).names);
  const span = readingSpan(row.children) ?? row.span;
  if (chosen > 0 && fits[chosen] === full && fits[0] !== full) {
    for (const size of sizes)
      met(
        play,
        { kind: 'readingNotDefault', span, numbers: {}, words: { reading: choiceWords(choices[chosen] as RowChoice) } },
        size,
        call.node,
        label,
      );
    return;
  }
  if (fitting.length < 2) return;
  const ends = fitting.map((choice) => sizes.map((size) => live(attempt(play, size, row, row.children, choice).needles)));
  const differs = ends.findIndex((counts) => counts.some((count, position) => count !== ends[0]?.[position]));
  if (differs < 0) return;
  // A later line that only the first of them fits has settled it.
  const against = (choice: RowChoice): number =>
    contradictions(play, sizes, () => {
      for (const size of sizes) {
        handOf(play, size).needles = attempt(play, size, row, row.children, choice).needles;
        endRow(handOf(play, size).needles);
      }
      playFrom(play, play.at + 1, Math.min(play.flow.length, play.at + 9), sizes);
    });
  if (against(fitting[differs] as RowChoice) > against(fitting[0] as RowChoice)) return;
  sizes.forEach((size, position) => {
    met(
      play,
      {
        kind: 'readingsDiffer',
        span,
        numbers: { first: ends[0]?.[position] ?? 0, second: ends[differs]?.[position] ?? 0 },
        words: { first: choiceWords(fitting[0] as RowChoice), second: choiceWords(fitting[differs] as RowChoice) },
      },
      size,
      call.node,
      label,
    );
  });
}

export function choiceWords(choice: RowChoice): string {
  if (choice.loop === 'apart') return 'the stitch left by the bind-off is not counted in what follows';
  if (choice.times === 'all') return 'the number of times counts the first working in';
  if (choice.names > 0) return 'another meaning of the stitch name';
  return 'the number of times comes on top of the first working';
}

function readingSpan(steps: readonly Step[]): Span | null {
  for (const step of steps) {
    if (step.type === 'repeat') {
      if (step.extent?.kind === 'times' && step.extent.sense === 'plain' && step.extent.form === 'from') return step.extent.count.span;
      const inner = readingSpan([...step.children, ...step.once]);
      if (inner) return inner;
    }
    if (step.type === 'bindOff') return step.span;
    if ((step.type === 'work' || step.type === 'pullOver') && (step.readings?.length ?? 0) > 1) return step.span;
  }
  return null;
}

/** How the sizes stand after something is tried: used where a later line decides between two readings. */
export function contradictions(play: Play, sizes: readonly number[], action: () => void): number {
  const { met: found } = tryOut(play, action);
  return new Set(
    found
      .filter((each) => each.certain && sizes.includes(each.size) && each.kind !== 'readingNotDefault' && each.kind !== 'readingsDiffer')
      .map((each) => `${each.kind}|${each.span.start}|${each.size}`),
  ).size;
}
