/**
 * "k90, turn; k84, turn; k78, turn … k6, turn": the rows that the dots, "etc." or "cont in this way" stand for, each
 * moving the numbers of the rows before it by the same step.
 */
import { type Sized, sizeValue } from '../../grammar/count.ts';
import type { AndSoOn, Count, Goal, Row, Step } from '../../grammar/tree.ts';
import { testsFor } from './goals.ts';
import type { Needles } from './needles.ts';
import { handOf, met, type Play, tryOut } from './play.ts';
import { playSteps } from './rows.ts';

/** Most rows that a series is carried on for. */
const longest = 2_000;

/** The numbers of a row's stitches, in order; and its shape without them. */
function numbersOf(steps: readonly Step[], out: Count[] = []): Count[] {
  for (const step of steps) {
    if (step.type === 'work' && step.n !== null && step.readings === undefined) out.push(step.n);
    if (step.type === 'repeat') {
      if (step.extent?.kind === 'over' || step.extent?.kind === 'last') out.push(step.extent.count);
      if (step.extent?.kind === 'place' && step.extent.n !== null) out.push(step.extent.n);
      numbersOf(step.children, out);
    }
  }
  return out;
}

/** What a row does, its numbers left out and knit and purl taken for one. */
function shapeOf(steps: readonly Step[]): string {
  return steps
    .map((step) => {
      if (step.type === 'work')
        return step.n === null || step.manner.length > 0 ? step.stitch : step.stitch.length === 1 ? 'n' : `${step.stitch}n`;
      if (step.type === 'repeat') return `[${shapeOf(step.children)}>${step.extent?.kind ?? ''}]`;
      return step.type === 'remark' || step.type === 'stated' ? '' : step.type;
    })
    .filter((word) => word !== '')
    .join(' ');
}

/** Place among the numbers of a row of its first plain stretch; -1 where none of them is plain. */
function plainPlace(row: Row): number {
  const plain = numbersOf(row.children.filter((step) => step.type === 'repeat' || (step.type === 'work' && /^[kp]$/.test(step.stitch))))[0];
  return plain === undefined ? -1 : numbersOf(row.children).indexOf(plain);
}

function moved(steps: readonly Step[], take: () => Count | null): Step[] {
  return steps.map((step): Step => {
    if (step.type === 'work' && step.n !== null && step.readings === undefined) return { ...step, n: take() ?? step.n };
    if (step.type === 'repeat') {
      const { extent } = step;
      const now =
        extent?.kind === 'over' || extent?.kind === 'last'
          ? { ...extent, count: take() ?? extent.count }
          : extent?.kind === 'place' && extent.n !== null
            ? { ...extent, n: take() ?? extent.n }
            : extent;
      return { ...step, extent: now, children: moved(step.children, take) };
    }
    return step;
  });
}

const at = (count: Count, size: number): number => sizeValue(count.values as Sized, size) ?? 0;

/** Rows that stand without a break before, or behind, a place of the flow. */
function rowsAround(play: Play, from: number, way: 1 | -1): Row[] {
  const out: Row[] = [];
  for (let index = from + way; ; index += way) {
    const item = play.flow[index];
    if (item === undefined || item.section !== play.section || item.statement.type !== 'row' || item.statement.does !== null) break;
    out.push(item.statement);
  }
  return way === 1 ? out : out.reverse();
}

/** How many rows make one step of the series, and how each number of each of them moves; null when that cannot be seen. */
function stepOf(rows: readonly Row[], node: AndSoOn, size: number): { period: number; steps: number[][] } | null {
  for (const period of [1, 2]) {
    const last = rows.slice(-period);
    const before = rows.slice(-2 * period, -period);
    if (last.length < period || before.length < period) continue;
    if (!last.every((row, index) => shapeOf(row.children) === shapeOf((before[index] as Row).children))) continue;
    const steps = last.map((row, index) => {
      const earlier = numbersOf((before[index] as Row).children);
      return numbersOf(row.children).map((count, position) => at(count, size) - at(earlier[position] as Count, size));
    });
    if (steps.some((each) => each.some((step) => step !== 0))) return { period, steps };
  }
  const step = node.step === null ? null : sizeValue(node.step.values, size);
  if (step === null) return null;
  const change = node.sense === 'more' ? step : -step;
  const last = rows.at(-1);
  if (last === undefined) return null;
  // "K17, ssk, k1, turn; sl 1, p5, p2tog, p1, turn": each row to come is as the last one, and the stitches before its decrease are those that change.
  const alone = rows.length > 1 && plainPlace(last) >= 0;
  const period = alone ? 1 : Math.min(2, rows.length);
  const stepsOf = (row: Row): number[] => {
    const place = Math.max(0, plainPlace(row));
    return numbersOf(row.children).map((_, position) => (position === place ? change : 0));
  };
  return { period, steps: rows.slice(-period).map(stepsOf) };
}

/** The numbers of the rows to come in one size, up to the row that is printed next, the goal, or the last that can be worked. */
function numbersAhead(node: AndSoOn, rows: readonly Row[], next: Row | undefined, size: number): { rows: number[][]; met: boolean } | null {
  const series = stepOf(rows, node, size);
  if (series === null) return null;
  const { period, steps } = series;
  const model = rows.slice(-period);
  const now = model.map((row) => numbersOf(row.children).map((count) => at(count, size)));
  const goal =
    next === undefined ? null : { shape: shapeOf(next.children), numbers: numbersOf(next.children).map((count) => at(count, size)) };
  const times = node.times === null ? null : sizeValue(node.times.count.values, size);
  const most = node.rows === undefined ? null : sizeValue(node.rows.values, size);
  const out: number[][] = [];
  for (let index = 0; index < longest; index += 1) {
    const place = index % period;
    const before = now[place] as number[];
    const numbers = before.map((number, position) => number + (steps[place]?.[position] ?? 0));
    if (goal !== null && shapeOf((rows.slice(-period)[place] as Row).children) === goal.shape && numbers.join() === goal.numbers.join())
      return { rows: out, met: true };
    if (times !== null && index >= times * period) return { rows: out, met: true };
    if (most !== null && index >= most) return { rows: out, met: true };
    // "k1, k2tog" goes on to "k2tog" alone; a short row of no stitch is none.
    const least = model[place]?.children.some((step) => step.type === 'repeat' && step.form !== 'run') === true ? 0 : 1;
    if (numbers.some((number, position) => number < least && (steps[place]?.[position] ?? 0) < 0)) return { rows: out, met: goal === null };
    if (goal === null && times === null && node.until === null && index > 400) return { rows: out, met: false };
    now[place] = numbers;
    out.push(numbers);
  }
  return { rows: out, met: false };
}

/** Works the rows that stand unprinted between those before and the one behind. */
export function playAndSoOn(play: Play, node: AndSoOn, sizes: readonly number[]): void {
  const rows = rowsAround(play, play.at, -1);
  const next = node.until === null && node.times === null && node.rows === undefined ? rowsAround(play, play.at, 1)[0] : undefined;
  const ahead = new Map(sizes.map((size) => [size, numbersAhead(node, rows, next, size)]));
  const first = ahead.values().next().value;
  if (rows.length === 0 || first === null || first === undefined || [...ahead.values()].some((each) => each === null)) {
    for (const size of sizes) handOf(play, size).needles.sure = false;
    return;
  }
  // To a goal that the needles do not show nobody knows how many rows there are.
  if (node.until !== null && sizes.some((size) => testsFor(node.until as Goal, 0, handOf(play, size).needles) === null)) {
    for (const size of sizes) handOf(play, size).needles.sure = false;
    return;
  }
  const known = ahead as ReadonlyMap<number, { rows: number[][]; met: boolean }>;
  for (const [size, { met: reached }] of known) {
    if (reached || node.until !== null) continue;
    const target = next === undefined ? 0 : (numbersOf(next.children).map((count) => at(count, size))[0] ?? 0);
    met(play, { kind: 'targetMissed', span: node.span, numbers: { target }, words: {} }, size, node, null);
  }
  if (node.until !== null) {
    for (const size of sizes) {
      const own = known.get(size);
      const tests = testsFor(
        node.until,
        node.until.kind === 'count' || node.until.kind === 'marks' ? sizeValue(node.until.count.values, size) : null,
        handOf(play, size).needles,
      );
      if (own === undefined || tests === null) continue;
      const pass = own.rows.map((_, index) => () => workRow(play, node, rows, known, index - own.rows.length, [size]));
      const before = play.lenient;
      play.lenient = node.until.kind === 'allWorked';
      const hit = firstMet(play, size, pass, tests);
      play.lenient = before;
      if (hit.rows !== null) own.rows.length = hit.rows;
    }
  }
  const lenient = play.lenient;
  play.lenient = node.until?.kind === 'allWorked';
  const most = Math.max(0, ...[...known.values()].map((each) => each.rows.length));
  for (let left = -most; left < 0; left += 1) {
    const active = sizes.filter((size) => -left <= (known.get(size)?.rows.length ?? 0));
    workRow(play, node, rows, known, left, active);
  }
  play.lenient = lenient;
}

/** Works one row of the series, told by how many rows are still to come. */
function workRow(
  play: Play,
  node: AndSoOn,
  rows: readonly Row[],
  known: ReadonlyMap<number, { rows: number[][] }>,
  left: number,
  sizes: readonly number[],
): void {
  const [first] = sizes;
  if (first === undefined) return;
  const period = Math.max(1, stepOf(rows, node, first)?.period ?? 1);
  const length = known.get(first)?.rows.length ?? 0;
  const model = rows.slice(-period)[(length + left) % period] as Row;
  const counts = numbersOf(model.children);
  let position = 0;
  const steps = moved(model.children, () => {
    const count = counts[position];
    if (count === undefined) return null;
    const values = play.hands.map((_, size) => known.get(size)?.rows.at(left)?.[position] ?? null);
    position += 1;
    return { ...count, values };
  });
  playSteps(play, model, steps, sizes, { span: node.span, textSpan: model.span, inline: false, number: null, node });
}

/** Rows after which the likeliest of the tests comes true, or up to the one that no longer fits; null when neither comes. */
function firstMet(
  play: Play,
  size: number,
  pass: readonly (() => void)[],
  tests: readonly ((needles: Needles) => boolean)[],
): { readonly rows: number | null } {
  const hits: (number | null)[] = tests.map(() => null);
  let stopped: number | null = null;
  tryOut(play, () => {
    for (const [index, row] of pass.entries()) {
      const found = play.book.met.length;
      row();
      if (play.book.met.slice(found).some((each) => each.certain)) {
        stopped = index + 1;
        return;
      }
      tests.forEach((test, which) => {
        if (hits[which] === null && test(handOf(play, size).needles)) hits[which] = index + 1;
      });
      if (hits[0] !== null) return;
    }
  });
  return { rows: hits.find((each) => each !== null) ?? stopped };
}
