/**
 * A second replayer, as plain as can be: the left needle and the right needle are lists of single stitches, every
 * stitch an object of its own, and nothing is folded. It shares no code with src/replay and reads the tree for itself.
 * What it does not know it refuses by throwing, so that no comparison passes by accident.
 */
import { entryNamed } from '../../grammar/lexicon/index.ts';
import type { Count, Extent, Repeat, Step, Work } from '../../grammar/tree.ts';

export interface Stitch {
  readonly kind: 'stitch';
  wrapped: boolean;
  double: boolean;
}

interface Sign {
  readonly kind: 'marker' | 'gap';
  method: string;
}

type Thing = Stitch | Sign;

export interface Simple {
  /** First in the list is worked next. */
  left: Thing[];
  /** Last in the list was worked last. */
  right: Thing[];
  side: 'RS' | 'WS';
  round: boolean;
  /** Stitches worked in this row. */
  moved: number;
  /** The marker that the last run went up to and that has not been passed. */
  reached: Thing | null;
}

export type Loop = 'in' | 'apart';
export interface Reading {
  readonly loop: Loop;
  readonly times: 'more' | 'all';
}

/** The row cannot be worked. */
export class DoesNotFit extends Error {}

const stitch = (): Stitch => ({ kind: 'stitch', wrapped: false, double: false });
const isStitch = (thing: Thing): thing is Stitch => thing.kind === 'stitch';
export const count = (things: readonly Thing[]): number => things.filter(isStitch).length;

export function castOn(n: number, markers: readonly number[] = [], round = false): Simple {
  const left: Thing[] = [];
  for (let at = 0; at < n; at += 1) {
    if (markers.includes(at)) left.push({ kind: 'marker', method: '' });
    left.push(stitch());
  }
  if (markers.includes(n)) left.push({ kind: 'marker', method: '' });
  return { left, right: [], side: 'RS', round, reached: null, moved: 0 };
}

const number = (value: Count): number => {
  const [first] = value.values;
  if (value.values.length !== 1 || typeof first !== 'number') throw new Error('one size only');
  return first;
};

/** Works out "2*N+M" by itself. */
function formula(text: number | string, n: number, m: number): number {
  if (typeof text === 'number') return text;
  let sum = 0;
  for (const term of text.replaceAll(' ', '').replaceAll('-', '+-').split('+')) {
    if (term === '') continue;
    let product = term.startsWith('-') ? -1 : 1;
    for (const factor of term.replace('-', '').split('*')) product *= factor === 'N' ? n : factor === 'M' ? m : Number(factor);
    sum += product;
  }
  return sum;
}

/** Takes the next stitch off the left needle; signs before it go over to the right one, and a gap that is passed is gone. */
function next(state: Simple): Stitch {
  passSigns(state);
  const [thing] = state.left;
  if (thing === undefined || !isStitch(thing)) throw new DoesNotFit('no stitch left');
  state.left.shift();
  return thing;
}

function moved(state: Simple): void {
  state.moved += 1;
}

export function passSigns(state: Simple): void {
  while (state.left[0] !== undefined && !isStitch(state.left[0])) {
    const sign = state.left.shift() as Sign;
    if (sign.kind === 'marker') state.right.push(sign);
  }
}

/** One knit, purl or slipped stitch. */
function plain(state: Simple): void {
  next(state);
  moved(state);
  state.right.push(stitch());
}

/** Takes a few together and makes a few; a marker among those taken comes to lie behind what is made. */
function together(state: Simple, takes: number, makes: number): void {
  moved(state);
  if (takes > 0) passSigns(state);
  const between: Sign[] = [];
  for (let taken = 0; taken < takes; taken += 1) {
    while (state.left[0] !== undefined && !isStitch(state.left[0])) {
      const sign = state.left.shift() as Sign;
      if (sign.kind === 'marker') between.push(sign);
    }
    if (state.left.length === 0) throw new DoesNotFit('no stitch left');
    state.left.shift();
  }
  if (makes < 0) {
    for (let lost = 0; lost < -makes; lost += 1) {
      let at = state.right.length - 1;
      while (at >= 0 && !isStitch(state.right[at] as Thing)) at -= 1;
      if (at < 0) throw new DoesNotFit('nothing to pass over');
      state.right.splice(at, 1);
    }
  }
  for (let made = 0; made < makes; made += 1) state.right.push(stitch());
  state.right.push(...between);
}

function use(step: Work): { takes: number; makes: number; moves: string; kind: string } {
  const entry = entryNamed(step.stitch);
  if (entry === undefined) throw new Error(`unknown stitch ${step.stitch}`);
  const n = step.n === null ? 1 : number(step.n);
  return { takes: formula(entry.takes, n, step.m ?? 1), makes: formula(entry.makes, n, step.m ?? 1), moves: entry.moves, kind: entry.kind };
}

function workOne(state: Simple, step: Work): void {
  const { takes, makes, moves, kind } = use(step);
  const often = step.times ? number(step.times) : 1;
  for (let time = 0; time < often; time += 1) {
    if (kind === 'shortRow' && moves.includes('tug')) {
      makeDouble(state);
      continue;
    }
    if (takes === makes && kind !== 'cable' && kind !== 'twist') for (let each = 0; each < takes; each += 1) plain(state);
    else together(state, takes, makes);
  }
}

/** The stitch after a turn, slipped and pulled up: its gap lies just behind it. */
function makeDouble(state: Simple): void {
  const last = state.right.findLast((thing) => thing.kind === 'gap' || isStitch(thing));
  moved(state);
  const slipped = next(state);
  slipped.double = true;
  if (last?.kind === 'gap') last.method = 'double';
  else state.right.push({ kind: 'gap', method: 'double' });
  state.right.push(slipped);
}

/** Stitches on the left needle before a place; the goal of a run or of a repeat, as stitches that must stay unworked. */
function unworked(state: Simple, extent: Extent): number {
  const all = count(state.left);
  switch (extent.kind) {
    case 'end':
      return 0;
    case 'last':
      return number(extent.count);
    case 'over':
      return all - number(extent.count);
    case 'place': {
      const n = extent.n === null ? 0 : number(extent.n);
      const signs = extent.place === 'marker' ? 'marker' : 'gap';
      const methods: Record<string, string> = { wrapped: 'wrap', double: 'double' };
      // The nearest one ahead; the one at the very tip where there is no other, and a marker there unless just reached.
      let before = 0;
      let there: number | null = null;
      for (const thing of state.left) {
        if (isStitch(thing)) {
          before += 1;
          continue;
        }
        if (thing.kind !== signs || (methods[extent.place] !== undefined && methods[extent.place] !== thing.method)) continue;
        if (signs === 'marker' && before === 0 && thing === state.reached) continue;
        there = all - before;
        if (signs === 'marker' && extent.side === 'at') state.reached = thing;
        if (before > 0 || signs === 'marker') break;
      }
      if (there !== null) {
        if (extent.place === 'double' && extent.side !== 'past') return there + 1 + n;
        if (extent.place === 'wrapped' && extent.side === 'past') return there - 1 - n;
        return extent.side === 'past' ? there - n : there + n;
      }
      // In a round the beginning of the round is the marker ahead when there is no other.
      if (state.round && signs === 'marker') return extent.side === 'past' ? -n : n;
      throw new DoesNotFit('no such place ahead');
    }
    default:
      throw new Error(`not known here: ${extent.kind}`);
  }
}

function repeatAll(state: Simple, step: Repeat, reading: Reading): void {
  const { extent } = step;
  if (extent === null) {
    workAll(state, step.children, reading);
    return;
  }
  if (extent.kind === 'times') {
    const said = number(extent.count);
    const passes =
      extent.sense === 'more' || (extent.sense === 'plain' && extent.form === 'from' && reading.times === 'more') ? said + 1 : said;
    for (let pass = 0; pass < passes; pass += 1) workAll(state, step.children, reading);
    return;
  }
  const goal = unworked(state, extent);
  if (goal < 0) throw new DoesNotFit('beyond the end');
  if (goal > count(state.left)) throw new DoesNotFit('fewer than that are left');
  if (step.form === 'run') {
    while (count(state.left) > goal) plain(state);
    return;
  }
  if (takesOf(step.children, reading) === 0) throw new DoesNotFit('a pass that takes nothing');
  const tail = step.ending === null ? null : step.ending;
  if (tail !== null && tail.kind === 'then' && extent.kind === 'end') {
    // Passes while each still leaves what the ending takes; the ending must then use up the rest.
    const need = takesOf(tail.children, reading);
    while (count(state.left) > need) onePass(state, step, reading);
    if (count(state.left) !== need) throw new DoesNotFit('the ending finds another number');
    workAll(state, tail.children, reading);
    return;
  }
  if (tail !== null && tail.kind === 'lastRepeat') {
    const last = [...step.children.slice(0, -1), ...tail.children];
    const need = takesOf(last, reading);
    while (count(state.left) > need) onePass(state, step, reading);
    if (count(state.left) !== need) throw new DoesNotFit('the last repeat finds another number');
    workAll(state, last, reading);
    return;
  }
  while (count(state.left) > goal) onePass(state, step, reading);
  if (count(state.left) !== goal) throw new DoesNotFit('the repeat runs past its goal');
  if (tail !== null) workAll(state, tail.children, reading);
}

function onePass(state: Simple, step: Repeat, reading: Reading): void {
  const before = count(state.left);
  workAll(state, step.children, reading);
  if (count(state.left) >= before) throw new DoesNotFit('a pass that takes nothing');
}

/** Stitches that steps take, found by working them on more stitches than they can want. */
function takesOf(steps: readonly Step[], reading: Reading): number {
  const plenty = castOn(2_000);
  workAll(plenty, steps, reading);
  return 2_000 - count(plenty.left);
}

/** Works steps one after another; the list of stitches changes as the needles do. */
export function workAll(state: Simple, steps: readonly Step[], reading: Reading): void {
  for (const step of steps) {
    switch (step.type) {
      case 'work':
        workOne(state, step);
        break;
      case 'intoOne': {
        const one = castOn(60);
        workAll(one, step.children, reading);
        const times = step.times ? number(step.times) : 1;
        for (let time = 0; time < times; time += 1) together(state, step.takes ? number(step.takes) : 1, count(one.right));
        break;
      }
      case 'repeat':
        repeatAll(state, step, reading);
        break;
      case 'marker':
        if (step.op === 'place') state.right.push({ kind: 'marker', method: '' });
        else if (step.op === 'slip') {
          const at = state.left.findIndex((thing) => isStitch(thing) || thing.kind === 'marker');
          if (at >= 0 && state.left[at]?.kind === 'marker')
            state.right.push(...state.left.splice(0, at + 1).filter((thing) => thing.kind === 'marker'));
        } else throw new Error(`not known here: ${step.op} marker`);
        break;
      case 'bindOff': {
        const n = number(step.count);
        for (let off = 0; off < n; off += 1) {
          if (count(state.left) === 0) throw new DoesNotFit('no stitch left');
          while (!isStitch(state.left[0] as Thing)) state.left.shift();
          state.left.shift();
        }
        if (reading.loop === 'apart' && step.loopCounted !== true && count(state.left) > 0) plain(state);
        break;
      }
      case 'turn':
        turnWork(state, step.method);
        break;
      case 'stated':
      case 'remark':
      case 'resolve':
        break;
      default:
        throw new Error(`not known here: ${step.type}`);
    }
  }
}

/** The needles change hands; with stitches on both a gap stays behind, at the far end of what was worked. */
function turnWork(state: Simple, method: string): void {
  const early = count(state.left) > 0 && count(state.right) > 0;
  if (state.moved === 0) throw new DoesNotFit('nothing worked before the turn');
  if (method === 'wrap' && count(state.left) === 0) throw new DoesNotFit('nothing to wrap');
  if (early) {
    const there = state.left[0];
    if (!(there !== undefined && there.kind === 'gap')) state.left.unshift({ kind: 'gap', method });
    const far = state.left.find(isStitch);
    if (method === 'wrap' && far !== undefined && isStitch(far)) far.wrapped = true;
  } else passSigns(state);
  const { left } = state;
  state.left = [...state.right].reverse();
  state.right = [...left].reverse();
  state.side = state.side === 'RS' ? 'WS' : 'RS';
}

/** The next row: all on the left needle again, unless the row before turned early. */
export function nextRow(state: Simple): void {
  state.moved = 0;
  state.reached = null;
  if (count(state.left) > 0) return;
  passSigns(state);
  if (state.round) state.left = state.right;
  else {
    state.left = state.right.reverse();
    state.side = state.side === 'RS' ? 'WS' : 'RS';
  }
  state.right = [];
}

/** Whether the row used up every stitch or turned. */
export function complete(state: Simple, steps: readonly Step[]): boolean {
  return count(state.left) === 0 || steps.some((step) => step.type === 'turn');
}

/** Stitches before each marker on a needle, counted from its beginning in this row. */
export function markerPlaces(things: readonly Thing[]): number[] {
  const out: number[] = [];
  let before = 0;
  for (const thing of things) {
    if (isStitch(thing)) before += 1;
    else if (thing.kind === 'marker') out.push(before);
  }
  return out;
}

/** The cursor and the gaps in fabric order: stitches that a right-side row has behind it. */
export function places(state: Simple): { cursor: number; gaps: number[] } {
  const fabric = state.side === 'RS' ? [...state.right, ...state.left] : [...state.left].reverse().concat([...state.right].reverse());
  const gaps: number[] = [];
  let before = 0;
  for (const thing of fabric) {
    if (isStitch(thing)) before += 1;
    else if (thing.kind === 'gap') gaps.push(before);
  }
  return { cursor: state.side === 'RS' ? count(state.right) : count(state.left), gaps: gaps.sort((a, b) => a - b) };
}
