/**
 * Stitch patterns given only by their multiple, proved for every number of repeats: the count is a·n + b with n open,
 * and a row fits when what it repeats divides what is there for all n.
 */
import type { Extent, Repeat, Row, Span, Statement, Step } from '../../grammar/tree.ts';
import type { Pattern, Section } from '../pattern/pattern.ts';
import { firstChoice, type Hands, type RowChoice } from './hands.ts';
import { defineRow, fillerFor, fillsIn } from './labelled-rows.ts';
import { emptyNeedles } from './needles.ts';
import { labelWords, type Play } from './play.ts';
import { type NumberedRow, rowsInTurn } from './rows-in-turn.ts';
import { dropsIn, fallenOf } from './steps/falling.ts';
import { plainRun } from './steps/runs.ts';
import { fixedUse, type Loops, noLoops as noneMade } from './steps/use.ts';

/** Stitches of a row for n repeats: `perRepeat`·n + `plus`. */
export interface Linear {
  readonly perRepeat: number;
  readonly plus: number;
}

export interface Misfit {
  readonly span: Span;
  /** Stitches one pass takes. */
  readonly takes: number;
  /** What is there for the repeats: perRepeat·n + plus. */
  readonly room: Linear;
  readonly kind: 'repeatDoesNotFit' | 'tooFew' | 'leftOver';
}

const minus = (a: Linear, b: Linear): Linear => ({ perRepeat: a.perRepeat - b.perRepeat, plus: a.plus - b.plus });

function handsFor(pattern: Pattern, choice: RowChoice): Hands {
  return {
    needles: emptyNeedles(),
    size: 0,
    vocabulary: pattern.vocabulary,
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
  };
}

interface Work {
  left: Linear;
  made: Linear;
  loops: LinearLoops;
}

/** Loops of the yarn overs of a row, for every number of repeats. */
export interface LinearLoops {
  readonly all: Linear;
  readonly spare: Linear;
  readonly paid: boolean;
}

const none: Linear = { perRepeat: 0, plus: 0 };
const noLoops: LinearLoops = { all: none, spare: none, paid: false };

const times = (passes: Linear, n: number): Linear => ({ perRepeat: passes.perRepeat * n, plus: passes.plus * n });
const plus = (a: Linear, b: Linear): Linear => ({ perRepeat: a.perRepeat + b.perRepeat, plus: a.plus + b.plus });

function moreLoops(work: Work, loops: Loops, passes: Linear): void {
  work.loops = {
    all: plus(work.loops.all, times(passes, loops.all)),
    spare: plus(work.loops.spare, times(passes, loops.spare)),
    paid: work.loops.paid || loops.paid,
  };
}

function lastOf(extent: Extent): number | null {
  return extent.kind === 'last' && typeof extent.count.values[0] === 'number' ? extent.count.values[0] : null;
}

/** Works steps on a·n + b stitches; returns what does not fit, or "open" when a step cannot be told for every n. */
function workLinear(hands: Hands, steps: readonly Step[], work: Work): Misfit | 'open' | null {
  for (const step of steps) {
    if (step.type === 'remark' || step.type === 'resolve' || step.type === 'change' || step.type === 'marker' || step.type === 'stated')
      continue;
    const use = fixedUse(hands, [step]);
    if (use !== null) {
      work.left = minus(work.left, { perRepeat: 0, plus: use.takes });
      work.made = { perRepeat: work.made.perRepeat, plus: work.made.plus + use.makes };
      moreLoops(work, use.loops, { perRepeat: 0, plus: 1 });
      if (work.left.perRepeat === 0 && work.left.plus < 0)
        return { span: step.span, takes: use.takes, room: { perRepeat: 0, plus: work.left.plus + use.takes }, kind: 'tooFew' };
      continue;
    }
    if (step.type !== 'repeat' || step.extent === null) return 'open';
    const misfit = repeatLinear(hands, step, work);
    if (misfit !== null) return misfit;
  }
  return null;
}

function repeatLinear(hands: Hands, step: Repeat, work: Work): Misfit | 'open' | null {
  const extent = step.extent as Extent;
  const rest = extent.kind === 'end' ? 0 : lastOf(extent);
  if (rest === null || step.once.length > 0) return 'open';
  const pass = plainRun(step) ? { takes: 1, makes: 1, loops: noneMade } : fixedUse(hands, step.children);
  if (pass === null || pass.takes <= 0) return 'open';
  const ending = step.ending === null ? null : fixedUse(hands, step.ending.children);
  if (step.ending !== null && ending === null) return 'open';
  let tail = { takes: 0, makes: 0 };
  if (step.ending?.kind === 'then' && ending !== null) tail = ending;
  if (step.ending !== null && step.ending.kind !== 'then' && ending !== null) {
    const replaced = step.ending.kind === 'omitting' ? ending : (fixedUse(hands, step.children.slice(-1)) ?? { takes: 0, makes: 0 });
    const added = step.ending.kind === 'omitting' ? { takes: 0, makes: 0 } : ending;
    tail = { takes: pass.takes - replaced.takes + added.takes, makes: pass.makes - replaced.makes + added.makes };
  }
  const room = minus(work.left, { perRepeat: 0, plus: rest + tail.takes });
  if (room.perRepeat % pass.takes !== 0 || ((room.plus % pass.takes) + pass.takes) % pass.takes !== 0)
    return { span: step.span, takes: pass.takes, room, kind: 'repeatDoesNotFit' };
  const passes = { perRepeat: room.perRepeat / pass.takes, plus: room.plus / pass.takes };
  work.left = { perRepeat: 0, plus: rest };
  moreLoops(work, pass.loops, passes);
  if (ending !== null) moreLoops(work, ending.loops, { perRepeat: 0, plus: 1 });
  work.made = {
    perRepeat: work.made.perRepeat + passes.perRepeat * pass.makes,
    plus: work.made.plus + passes.plus * pass.makes + tail.makes,
  };
  return null;
}

/**
 * One row on `before` stitches: the count after it, or why it does not fit every number of repeats. `below` are the loops that
 * the row before it made, some of which it may let fall.
 */
export function rowLinear(
  pattern: Pattern,
  steps: readonly Step[],
  before: Linear,
  below: LinearLoops = noLoops,
): { after: Linear | null; misfit: Misfit | null; loops: LinearLoops } {
  let first: Misfit | 'open' | null = null;
  const drops = dropsIn(steps);
  const there = drops === null ? before : minus(before, below[fallenOf(drops, below.paid)]);
  for (const times of ['more', 'all'] as const) {
    const work: Work = { left: there, made: { perRepeat: 0, plus: 0 }, loops: noLoops };
    const misfit = workLinear(handsFor(pattern, { ...firstChoice, times }), steps, work);
    if (misfit === null && work.left.perRepeat === 0 && work.left.plus === 0) return { after: work.made, misfit: null, loops: work.loops };
    const found = misfit ?? { span: steps.at(-1)?.span ?? { start: 0, end: 0 }, takes: 0, room: work.left, kind: 'leftOver' as const };
    first ??= found;
  }
  return { after: null, misfit: first === 'open' ? null : first, loops: noLoops };
}

/** Numbers of repeats, up to a few, for which `room` is a multiple of what one pass takes. */
export function fittingRepeats(room: Linear, takes: number): number[] {
  const fits: number[] = [];
  for (let n = 1; n <= 60 && fits.length < 3; n += 1) {
    const stitches = room.perRepeat * n + room.plus;
    if (takes > 0 && stitches >= 0 && stitches % takes === 0) fits.push(n);
  }
  return fits;
}

/** Plays the rows of a section on its multiple, from its first row on. */
export function playMultiple(play: Play, index: number): void {
  const section = play.pattern.sections[index] as Section;
  const { multiple } = section;
  if (multiple === null) return;
  play.section = index;
  const start: Linear = { perRepeat: multiple.of, plus: multiple.plus };
  let count: Linear | null = start;
  let loops = noLoops;
  let last = 0;
  const after = new Map<number, Linear | null>();
  for (const statement of section.statements) if (statement.type === 'row') defineRow(play, statement, index);
  const write = (label: string, statement: Statement, value: Linear | null, side: 'RS' | 'WS' | null): void => {
    const nothing = play.hands.map(() => null);
    play.book.entries.push({
      section: index,
      label,
      span: statement.span,
      textSpan: statement.span,
      node: statement,
      side,
      unit: 'row',
      times: 1,
      before: nothing,
      after: nothing,
      takes: nothing,
      makes: nothing,
      afterPerRepeat: value,
    });
  };
  const workRow = (row: Row, steps: readonly Step[], statement: Statement, label: string, number: number | null): void => {
    const before = count;
    if (before !== null) {
      const { after: made, misfit, loops: left } = rowLinear(play.pattern, steps, before, loops);
      loops = left;
      if (misfit !== null) {
        const fits = fittingRepeats(misfit.room, misfit.takes);
        play.book.met.push({
          kind: 'multipleDiffers',
          span: misfit.span,
          size: 0,
          section: index,
          row: label,
          node: row,
          numbers: {
            perRepeat: before.perRepeat,
            plus: before.plus,
            takes: misfit.takes,
            roomPerRepeat: misfit.room.perRepeat,
            roomPlus: misfit.room.plus,
            ...(fits[0] === undefined ? {} : { fits: fits[0] }),
            ...(fits[1] === undefined ? {} : { fitsNext: fits[1] }),
            multipleOf: multiple.of,
            multiplePlus: multiple.plus,
            multipleStart: multiple.span.start,
            multipleEnd: multiple.span.end,
          },
          words: { kind: misfit.kind },
          certain: true,
          evidence: [],
          inner: null,
        });
      }
      count = made;
    } else {
      // Go on from the multiple where the row fits it, so that one misfit does not silence the rows behind it.
      const again = rowLinear(play.pattern, steps, start);
      if (again.after !== null) count = again.after;
    }
    if (number !== null) {
      after.set(number, count);
      last = Math.max(last, number);
    }
    write(label, statement, count, row.label?.side ?? (number === null ? null : number % 2 === 1 ? 'RS' : 'WS'));
  };
  const { statements } = section;
  const told: (NumberedRow | Statement)[] = [];
  for (let at = 0; at < statements.length; ) {
    const turn = rowsInTurn(statements, at);
    told.push(...(turn?.rows ?? statements.slice(at, at + 1)));
    at = turn?.next ?? at + 1;
  }
  for (const each of told) {
    const statement = 'type' in each ? each : each.row;
    if (statement.type === 'row' && statement.label !== null) {
      const { label } = statement;
      if (label.andAll !== null || fillsIn(statement)) continue;
      for (const number of 'type' in each ? (label.numbers.length > 0 ? label.numbers : [null]) : [each.number]) {
        if (number !== null) {
          for (let filled = last + 1; filled < number; filled += 1) {
            const filler = fillerFor(play, index, filled);
            if (filler !== null) workRow(filler, filler.children, filler, labelWords(label, filled), filled);
          }
        }
        if (statement.does !== null) {
          const named = rowsOf(play, index, statement.does);
          const position = number === null ? 0 : label.numbers.indexOf(number);
          const row = named[position % Math.max(1, named.length)];
          if (row) workRow(row, row.children, statement, labelWords(label, number), number);
          else write(labelWords(label, number), statement, count, null);
        } else workRow(statement, statement.children, statement, labelWords(label, number), number);
      }
      if (statement.does?.type === 'repeatRows') checkRange(play, index, statement);
    }
    if (statement.type === 'repeatRows') {
      const filler = fillerFor(play, index, last + 1);
      if (filler !== null && (last + 1) % 2 === 0) workRow(filler, filler.children, filler, labelWords(filler.label, last + 1), last + 1);
      write('Repeat', statement, count, null);
    }
  }
  foldIntoHeader(play, index, multiple);
  const closing = count as Linear | null;
  if (
    closing !== null &&
    (closing.perRepeat !== start.perRepeat || closing.plus !== start.plus) &&
    section.statements.some((statement) => statement.type === 'repeatRows' || (statement.type === 'declare' && statement.what === 'forms'))
  ) {
    const row = [...section.statements].reverse().find((statement) => statement.type === 'row');
    if (row)
      play.book.met.push({
        kind: 'notRestored',
        span: row.span,
        size: 0,
        section: index,
        row: row.type === 'row' ? labelWords(row.label) : null,
        node: row,
        numbers: { perRepeat: closing.perRepeat, plus: closing.plus, multipleOf: start.perRepeat, multiplePlus: start.plus },
        words: {},
        certain: true,
        evidence: [],
        inner: null,
      });
  }
}

/** Where several rows fail and all of them would fit another "+ r", the header is the slip and is reported once. */
function foldIntoHeader(play: Play, index: number, multiple: NonNullable<Section['multiple']>): void {
  const failed = play.book.met.filter((each) => each.kind === 'multipleDiffers' && each.section === index);
  if (failed.length === 0) return;
  const rows = (play.pattern.sections[index] as Section).statements.filter(
    (statement) => statement.type === 'row' && statement.label !== null && statement.does === null,
  ) as Row[];
  // One repeat alone cannot outvote the header; two that agree can.
  if (rows.filter((row) => row.children.some((step) => step.type === 'repeat' && step.form !== 'run')).length < 2) return;
  const fits = (start: Linear): number => {
    let count: Linear | null = start;
    let good = 0;
    let below = noLoops;
    for (const row of rows) {
      if (count === null) break;
      const { after, loops } = rowLinear(play.pattern, row.children, count, below);
      if (after === null) break;
      count = after;
      below = loops;
      good += 1;
    }
    return good;
  };
  for (let plus = 0; plus < multiple.of; plus += 1) {
    if (plus === multiple.plus || fits({ perRepeat: multiple.of, plus }) < rows.length) continue;
    const [first] = failed;
    if (first === undefined) return;
    play.book.met = play.book.met.filter((each) => !failed.includes(each));
    play.book.met.push({
      ...first,
      span: multiple.span,
      row: null,
      numbers: { ...first.numbers, rows: failed.length, fitsOf: multiple.of, fitsPlus: plus },
      words: { kind: 'header' },
    });
    return;
  }
}

function rowsOf(play: Play, index: number, does: Statement): Row[] {
  const numbers = does.type === 'repeatRows' ? does.rows.numbers : does.type === 'refer' ? does.rows : [];
  return numbers.flatMap((number) => play.sets.get(index)?.get(number) ?? fillerFor(play, index, number) ?? []);
}

function checkRange(play: Play, index: number, row: Row): void {
  const does = row.does;
  if (does?.type !== 'repeatRows' || does.times === null || row.label === null) return;
  const named = does.rows.numbers.length;
  const times = does.times.count.values[0];
  if (named === 0 || typeof times !== 'number') return;
  const rows = row.label.numbers.length;
  if (times * named !== rows) {
    play.book.met.push({
      kind: 'rangeDiffers',
      span: does.times.count.span,
      size: 0,
      section: index,
      row: labelWords(row.label),
      node: row,
      numbers: { labelRows: rows, named, times, rows: times * named },
      words: { label: labelWords(row.label) },
      certain: true,
      evidence: [],
      inner: null,
    });
  }
}
