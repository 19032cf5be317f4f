/** Works one text both ways and says where they part; null where they agree. */
import { readPassage } from '../../grammar/read.ts';
import type { Row, Step } from '../../grammar/tree.ts';
import { vocabularyOf } from '../../grammar/vocabulary.ts';
import { beginRow, emptyNeedles, endRow, live, type Needles } from '../../src/replay/needles.ts';
import { firstChoice, type Hands, type RowChoice, unfinished, workSteps } from '../../src/replay/work.ts';
import { cursor, gaps } from '../replay/work.ts';
import {
  castOn,
  complete,
  count,
  DoesNotFit,
  markerPlaces,
  nextRow,
  passSigns,
  places,
  type Reading,
  type Simple,
  workAll,
} from './simple.ts';

const vocabulary = vocabularyOf({});

export function rowsOf(text: string): Row[] {
  return readPassage(text, 0, { vocabulary, sizes: ['one'] }).filter((statement) => statement.type === 'row');
}

/** Words that neither replayer is asked about. */
export function readWhole(steps: readonly Step[]): boolean {
  return steps.every((step) => step.type !== 'unread' && (!('children' in step) || readWhole(step.children as readonly Step[])));
}

function handsOn(needles: Needles, choice: RowChoice): Hands {
  return {
    needles,
    size: 0,
    vocabulary,
    held: [],
    piece: '',
    choice,
    taken: 0,
    made: 0,
    off: 0,
    base: 0,
    last: 0,
    turned: false,
    divided: false,
    asides: [],
    row: true,
  };
}

function folded(needles: Needles, steps: readonly Step[], choice: RowChoice): boolean {
  const hands = handsOn(needles, choice);
  const trouble = workSteps(hands, steps);
  return trouble === null && unfinished(hands) === 0;
}

function single(state: Simple, steps: readonly Step[], reading: Reading): boolean {
  try {
    workAll(state, steps, reading);
  } catch (error) {
    if (error instanceof DoesNotFit) return false;
    throw error;
  }
  return complete(state, steps);
}

const markersOf = (needles: Needles): number[] => needles.right.marks.filter((mark) => mark.kind === 'marker').map((mark) => mark.at);

/** One row on given stitches. */
export function rowAgrees(text: string, start: number, markers: readonly number[], choice: RowChoice = firstChoice): string | null {
  const [row] = rowsOf(`Row 1: ${text}.`);
  if (row === undefined || !readWhole(row.children)) return null;
  const needles = emptyNeedles();
  needles.left = {
    n: start,
    marks: markers.map((at) => ({ kind: 'marker' as const, name: null, at: start - at })).sort((a, b) => a.at - b.at),
  };
  needles.side = 'RS';
  const fits = folded(needles, row.children, choice);
  const state = castOn(start, markers);
  const reading = { loop: choice.loop, times: choice.times };
  const fitsToo = single(state, row.children, reading);
  if (fits !== fitsToo) return `${start}: ${text}: folded ${fits ? 'fits' : 'does not fit'}, single ${fitsToo ? 'fits' : 'does not fit'}`;
  if (!fits) return null;
  const total = count(state.left) + count(state.right);
  if (live(needles) !== total) return `${start}: ${text}: folded ${live(needles)} sts, single ${total} sts`;
  endRow(needles);
  nextRow(state);
  const places = markerPlaces(state.left)
    .map((at) => total - at)
    .sort((a, b) => a - b);
  if (markersOf(needles).join() !== places.join())
    return `${start} m@${markers.join()}: ${text}: markers folded ${markersOf(needles).join()}, single ${places.join()}`;
  return null;
}

/** Short rows one after another, up to the first that cannot be worked. */
export function shortRowsAgree(text: string, start: number): string | null {
  const needles = emptyNeedles();
  needles.left = { n: start, marks: [] };
  needles.side = 'RS';
  const state = castOn(start);
  for (const row of rowsOf(text)) {
    if (!readWhole(row.children)) return null;
    beginRow(needles);
    nextRow(state);
    const fits = folded(needles, row.children, firstChoice);
    const fitsToo = single(state, row.children, { loop: 'in', times: 'more' });
    const words = `${start}: ${text} at "${text.slice(row.span.start, row.span.end)}"`;
    if (fits !== fitsToo) return `${words}: folded ${fits ? 'fits' : 'does not fit'}, single ${fitsToo ? 'fits' : 'does not fit'}`;
    if (!fits) return null;
    endRow(needles);
    const told = places(state);
    const total = count(state.left) + count(state.right);
    if (live(needles) !== total) return `${words}: folded ${live(needles)} sts, single ${total}`;
    if (cursor(needles) !== told.cursor) return `${words}: cursor folded ${cursor(needles)}, single ${told.cursor}`;
    // A double stitch at the very edge marks no gap.
    const inside = (at: number): boolean => at > 0 && at < total;
    const open = gaps(needles)
      .map((gap) => gap.at)
      .filter(inside)
      .join();
    const openToo = told.gaps.filter(inside).join();
    if (open !== openToo) return `${words}: gaps folded ${open}, single ${openToo}`;
  }
  return null;
}

/** Ordinary rows one after another, flat or in the round, up to the first that does not fit. */
export function rowsAgree(texts: readonly string[], start: number, round: boolean): string | null {
  const needles = emptyNeedles();
  needles.left = { n: start, marks: [] };
  needles.side = 'RS';
  needles.mode = round ? 'round' : 'flat';
  const state = castOn(start, [], round);
  for (const text of texts) {
    const [row] = rowsOf(`Row 1: ${text}.`);
    if (row === undefined || !readWhole(row.children)) return null;
    nextRow(state);
    const fits = folded(needles, row.children, firstChoice);
    const fitsToo = single(state, row.children, { loop: 'in', times: 'more' });
    const words = `${start}: ${texts.join(' | ')} at "${text}"`;
    if (fits !== fitsToo) return `${words}: folded ${fits ? 'fits' : 'does not fit'}, single ${fitsToo ? 'fits' : 'does not fit'}`;
    if (!fits) return null;
    endRow(needles);
    const total = count(state.left) + count(state.right);
    if (live(needles) !== total) return `${words}: folded ${live(needles)} sts, single ${total}`;
    if (!round && needles.side !== state.side) return `${words}: folded ${needles.side}, single ${state.side}`;
    if (count(state.left) === 0) passSigns(state);
    const places = markerPlaces(state.right);
    if (markersOf(needles).join() !== places.join())
      return `${words}: markers folded ${markersOf(needles).join()}, single ${places.join()}`;
  }
  return null;
}
