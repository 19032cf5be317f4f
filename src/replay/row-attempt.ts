/** One working of a row on copies of the needles, under one reading of its words; nothing is kept that is not chosen. */
import type { Row, Statement, Step } from '../../grammar/tree.ts';
import { once } from '../once.ts';
import type { Pattern } from '../pattern/pattern.ts';
import { headBorder } from './edgings.ts';
import type { Hands, RowChoice, Trouble } from './hands.ts';
import type { Held } from './holders.ts';
import { beginRow, copyNeedles, type Needles, newBeginning } from './needles.ts';
import { handOf, type Play, sectionOf } from './play.ts';
import { letFall } from './steps/falling.ts';
import { unfinished, workSteps } from './work.ts';

export interface Outcome {
  readonly needles: Needles;
  readonly held: Held[];
  readonly hands: Hands;
  readonly trouble: Trouble | null;
  readonly left: number;
}

export function attempt(play: Play, size: number, row: Row, steps: readonly Step[], choice: RowChoice): Outcome {
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
  letFall(hands, steps);
  const trouble = workSteps(hands, steps);
  play.effort -= 1 + (hands.worked ?? 0) / 100;
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
  const place = placeInFlow(play, row);
  const following = place < 0 ? undefined : play.flow[place + 1]?.statement;
  // "K5. Turn, …": the row after it begins with the turn that ends this one.
  if (following?.type === 'row' && following.label === null && following.children[0]?.type === 'turn') return true;
  if (needles.mode !== 'round' || needles.suspended) return false;
  // "K6 from first needle onto third needle. Graft.": only the yarn is brought to where the grafting begins.
  if (graftsNext(play, row)) return true;
  // "Knit to last 2 sts, pm for new beg of rnd": the round begins there.
  const lastButWords = steps.findLast((step) => !['stated', 'remark'].includes(step.type));
  if (setsBeginning(lastButWords) || steps.some((step) => step.type === 'marker' && step.op === 'move') || beginsNext(play, row))
    return newBeginning(needles);
  const last = steps.findLast((step) => !['stated', 'remark', 'change'].includes(step.type));
  if (last?.type !== 'repeat' || last.form !== 'run' || last.extent === null || last.ending !== null) return false;
  const { extent } = last;
  if (extent.kind === 'place') return extent.place === 'marker' && extent.side === 'before' && extent.which === 'beginning';
  if (extent.kind !== 'last' || extent.of === 'needle') return false;
  if (/\bbefore\b|\bwithin\b|\bshort\b/i.test(play.text(last.span))) return true;
  const takesOff = (step: { readonly type: string } | undefined): boolean => step?.type === 'bindOff' || step?.type === 'hold';
  return takesOff(following) || (following?.type === 'row' && takesOff(following.children[0]));
}

/** "pm for new beg of rnd", "this is the new beginning of the round". */
function setsBeginning(step: Step | Statement | undefined): boolean {
  return step?.type === 'marker' && step.name === 'BOR' && ['place', 'replace', 'move'].includes(step.op) && step.by === undefined;
}

/** Whether the orders behind the row say that the round begins where it stopped. */
function beginsNext(play: Play, row: Row): boolean {
  const from = placeInFlow(play, row) + 1;
  if (from === 0) return false;
  for (const { statement } of play.flow.slice(from, from + 3)) {
    if (setsBeginning(statement)) return true;
    if (statement.type !== 'join' && statement.type !== 'change' && statement.type !== 'remark') return false;
  }
  return false;
}

function graftsNext(play: Play, row: Row): boolean {
  const from = placeInFlow(play, row) + 1;
  const next = play.flow.slice(from, from + 3).find(({ statement }) => !['change', 'remark', 'arrange', 'stated'].includes(statement.type));
  return next?.statement.type === 'join' && ['graft', 'threeNeedle'].includes(next.statement.what);
}

/** Whether the row before stands in the same line, under the same label. */
export function goesOn(play: Play, row: Row): boolean {
  const before = play.flow[placeInFlow(play, row) - 1]?.statement;
  return before?.type === 'row' && before.label !== null && before.label.span.start === row.label?.span.start;
}

const places = once((flow: Play['flow']): ReadonlyMap<unknown, number> => {
  const found = new Map<unknown, number>();
  flow.forEach((item, at) => {
    if (!found.has(item.statement)) found.set(item.statement, at);
  });
  return found;
});

/** Where the row stands among the statements as they are played; -1 where it is called from elsewhere. */
const placeInFlow = (play: Play, row: Row): number => places(play.flow).get(row) ?? -1;

const titles = once((pattern: Pattern): ReadonlyMap<number | null, string> => {
  const found = new Map<number | null, string>();
  for (const { kind, piece, title } of pattern.sections) if (kind === 'piece' && !found.has(piece)) found.set(piece, title);
  return found;
});

export function pieceTitle(play: Play): string {
  const section = sectionOf(play);
  return titles(play.pattern).get(section.piece) ?? section.title;
}
