/** Playing the draft statement by statement. */
import { sizeValue } from '../../grammar/count.ts';
import type { CastOn, Row, SizeBlock, Span, Statement, Step } from '../../grammar/tree.ts';
import { playRepeat } from './again/repeat.ts';
import { playRowsOfLabel } from './again/rows-of-label.ts';
import { drawBorder, edgingAhead, tiesAhead } from './edgings.ts';
import { gatherPieces } from './gathering.ts';
import { firstChoice, type Hands } from './hands.ts';
import { defineRow, fillAfter, fillsIn, playInTurn, playRow } from './labelled-rows.ts';
import { leaveOnNeedle, setAside } from './left-on-needle.ts';
import { emptyNeedles, endRow, live, toRows } from './needles.ts';
import { leaveTurns } from './open-turns.ts';
import { deepest, handOf, met, type Play, sectionOf, shown, write } from './play.ts';
import { playRefer } from './references.ts';
import { pieceTitle } from './row-attempt.ts';
import { rowsOfSentences } from './row-sentences.ts';
import { playSteps } from './rows.ts';
import { rowsInTurn } from './rows-in-turn.ts';
import { playAndSoOn } from './series.ts';
import { playEdgeRows, playShape, playTogether } from './shaped-stretches.ts';
import { checkStated } from './stated.ts';
import { playPlain, playUntil } from './stretches.ts';
import { workSteps } from './work.ts';

/** Plays the items `[from, to)` of the flow in the given sizes. */
export function playFrom(play: Play, from: number, to: number, sizes: readonly number[]): void {
  for (let at = from; at < to; at += 1) {
    const item = play.flow[at];
    if (item === undefined) return;
    play.at = at;
    if (item.section !== play.section || item.first) enterSection(play, item.section);
    const ruled = play.ruled;
    const active = ruled === null ? sizes : sizes.filter((size) => ruled.includes(size));
    // Rows that "all WS rows" fills in come before whatever is not their neighbour.
    fillAfter(play, item.statement, active);
    const next = play.flow[at + 1];
    if (next?.statement.type === 'atSameTime' && next.section === item.section && item.statement.type === 'shape') {
      playTogether(play, item.statement, next.statement, active);
      at += 1;
      continue;
    }
    const turn = item.statement.type === 'row' ? rowsInTurn(sectionFrom(play, at, to), 0) : null;
    if (turn !== null) {
      at += turn.next - 1;
      play.at = at;
      playInTurn(play, turn.rows, active);
      continue;
    }
    playStatement(play, item.statement, active);
  }
}

/** The statements of one section from an item of the flow on. */
function sectionFrom(play: Play, at: number, to: number): Statement[] {
  const section = play.flow[at]?.section;
  const all: Statement[] = [];
  for (let next = at; next < to && play.flow[next]?.section === section && (next === at || play.flow[next]?.first !== true); next += 1)
    all.push((play.flow[next] as (typeof play.flow)[number]).statement);
  return all;
}

function enterSection(play: Play, section: number): void {
  play.section = section;
  play.inline = null;
  play.ruled = null;
  for (const hand of play.hands) hand.sectionRows = 0;
  // "All WS rows:" rules the rows before it as well.
  for (const { statement } of play.flow.filter((item) => item.section === section))
    if (statement.type === 'row' && fillsIn(statement)) defineRow(play, statement, section);
}

export function playStatement(play: Play, statement: Statement, sizes: readonly number[]): void {
  if (sizes.length === 0 || play.depth > deepest) return;
  switch (statement.type) {
    case 'row':
      playRow(play, statement, sizes);
      return;
    case 'repeatRows':
      playRepeat(play, statement, sizes);
      return;
    case 'plain':
      playPlain(play, statement, sizes);
      return;
    case 'shape':
      playShape(play, statement, sizes);
      return;
    case 'edgeRows':
      playEdgeRows(play, statement, sizes);
      return;
    case 'until':
      playUntil(play, statement, sizes);
      return;
    case 'refer':
      playRefer(play, statement, sizes);
      return;
    case 'sizeBlock':
      playBlock(play, statement, sizes);
      return;
    case 'atSameTime':
      for (const child of statement.children) playStatement(play, child, sizes);
      return;
    case 'castOn':
      playCastOn(play, statement, sizes);
      return;
    case 'stated':
      checkStated(play, statement, sizes, {
        before: play.hands.map((hand) => live(hand.needles)),
        node: statement,
        label: null,
        rows: play.hands.map((hand) => hand.sectionRows),
      });
      settleEntry(play, statement.span, sizes);
      return;
    case 'andSoOn':
      playAndSoOn(play, statement, sizes);
      for (const stated of statement.stated) checkStated(play, stated, sizes, { before: [], node: statement, label: null });
      return;
    case 'declare':
    case 'remark':
      return;
    case 'unread':
      for (const size of sizes) if (!handOf(play, size).fresh) handOf(play, size).needles.sure = false;
      return;
    default:
      playOrder(play, statement, sizes);
  }
}

function playBlock(play: Play, block: SizeBlock, sizes: readonly number[]): void {
  if (block.children.length === 0) {
    play.ruled = block.sizes;
    return;
  }
  const active = block.sizes === null ? sizes : sizes.filter((size) => block.sizes?.includes(size));
  for (const child of block.children) playStatement(play, child, active);
}

function playCastOn(play: Play, statement: CastOn, sizes: readonly number[]): void {
  const before = play.hands.map(shown);
  const section = sectionOf(play);
  for (const size of sizes) {
    const n = sizeValue(statement.count.values, size);
    const hand = handOf(play, size);
    if (n === null) {
      if (statement.count.values.length > 1 && size >= statement.count.values.length) {
        hand.needles = emptyNeedles();
        hand.needles.sure = false;
        hand.fresh = false;
        hand.history = [];
      }
      continue;
    }
    const ahead = play.flow
      .slice(play.at + 1, play.at + 40)
      .filter((item) => item.section === play.section)
      .map((item) => item.statement);
    // "CO 8 sts onto left needle" beside live stitches, and rows that take one of them with their last: an edging.
    const edging = live(hand.needles) > 0 && (edgingAhead(ahead) || (statement.where === 'start' && tiesAhead(ahead)));
    const fresh =
      hand.fresh ||
      live(hand.needles) === 0 ||
      (!edging && section.kind === 'piece' && hand.sectionRows === 0 && statement.where !== 'end');
    if (fresh) {
      if (live(hand.needles) > 0) leaveTurns(play, size);
      if (!leaveOnNeedle(play, size, statement)) setAside(play, size);
      hand.needles = emptyNeedles();
      hand.needles.left.n = n;
      hand.needles.side = null;
      hand.history = [];
      hand.rows = 0;
      hand.joined = false;
      hand.fresh = false;
      if (statement.provisional) hand.held.push({ name: 'provisional cast-on', piece: pieceTitle(play), rest: false, n, used: false });
      before[size] = 0;
    } else {
      if (edging) drawBorder(hand.needles);
      if (hand.needles.left.n === 0) hand.needles.right.n += n;
      else hand.needles.left.n += n;
    }
  }
  write(
    play,
    { label: 'Cast on', span: statement.span, textSpan: statement.span, node: statement, side: null, unit: 'step' },
    sizes,
    before,
  );
}

/** "Slip the sleeves onto the needle (352 sts)": the count told behind an order whose own number is not known is the order's. */
function settleEntry(play: Play, span: Span, sizes: readonly number[]): void {
  const entry = play.book.entries.at(-1);
  if (entry === undefined || entry.node.type !== 'takeUp' || entry.span.end > span.start) return;
  for (const size of sizes) entry.after[size] ??= shown(handOf(play, size));
}

const orderLabels: Record<string, string> = {
  hold: 'Stitches on hold',
  takeUp: 'Stitches taken up',
  bindOff: 'Bind off',
  join: 'Join',
  pickUp: 'Pick up',
  only: 'Stitches worked on',
  evenly: 'Shaped evenly',
};

/** Whether the statement behind this one turns the work first. */
function turnsNext(play: Play, statement: Statement): boolean {
  const next = play.flow[play.flow.findIndex((item) => item.statement === statement) + 1]?.statement;
  return next?.type === 'row' && next.children[0]?.type === 'turn';
}

/** An order that is no row: holding, joining, taking up, binding off everything, changing needles. */
function playOrder(play: Play, step: Statement, sizes: readonly number[]): void {
  const before = play.hands.map(shown);
  const counts = play.hands.map((hand) => live(hand.needles));
  let touched = false;
  for (const size of sizes) {
    const hand = handOf(play, size);
    if (step.type === 'takeUp' && !step.worked && step.count !== null && leaveOnNeedle(play, size, step))
      [counts[size], before[size]] = [0, 0];
    const hands: Hands = {
      needles: hand.needles,
      size,
      vocabulary: play.pattern.vocabulary,
      held: hand.held,
      piece: pieceTitle(play),
      choice: firstChoice,
      taken: 0,
      made: 0,
      off: 0,
      base: 0,
      last: 0,
      turned: false,
      divided: false,
      asides: [],
    };
    const trouble = workSteps(hands, [step as Step]);
    for (const aside of hands.asides) met(play, aside, size, step, null);
    if (hands.doubt) hand.needles.sure = false;
    if (trouble !== null) {
      met(play, trouble, size, step, null, { before: counts[size] as number });
      hand.needles.sure = false;
    }
    // "With RS facing, cast on 6 sts" behind a finished row: the row to come is the RS row.
    if (
      step.type === 'change' &&
      step.what === 'side' &&
      hand.needles.mode === 'flat' &&
      hand.needles.left.n === 0 &&
      hand.needles.right.n > 0 &&
      hand.needles.side !== null
    )
      hand.needles.side = hand.needles.side === 'RS' ? 'WS' : 'RS';
    if (step.type === 'join' && step.what === 'round') hand.joined = true;
    if (step.type === 'takeUp' && hand.fresh) hand.fresh = false;
    if (step.type === 'takeUp' || (step.type === 'bindOff' && live(hand.needles) === 0)) {
      if (step.type === 'bindOff') hand.needles.sure = true;
    }
    if (step.type !== 'change' && step.type !== 'marker') {
      if (step.type === 'bindOff' || step.type === 'hold') endRow(hand.needles);
      // "Leave the 28 instep sts unworked. Turn.": from here on the rest is worked in rows.
      if (
        step.type === 'hold' &&
        hand.needles.mode === 'round' &&
        !hand.needles.suspended &&
        live(hand.needles) > 0 &&
        turnsNext(play, step)
      )
        toRows(hand.needles);
    }
    if (live(hand.needles) !== counts[size] || (trouble !== null && step.type === 'takeUp')) touched = true;
  }
  const label = orderLabels[step.type];
  if (label !== undefined && (touched || step.type === 'hold'))
    write(play, { label, span: step.span, textSpan: step.span, node: step, side: null, unit: 'step' }, sizes, before);
}

export type { Span };
