/** The small changes of a row's words that an author may have meant: one number, one step. Nothing is worked here. */
import { entryNamed } from '../../grammar/lexicon/index.ts';
import type { Count, Extent, Repeat, Span, Step, Work } from '../../grammar/tree.ts';
import type { Vocabulary } from '../../grammar/vocabulary.ts';

/** One change of the text, and the row as it then reads. */
export interface SmallEdit {
  readonly kind: 'number' | 'add' | 'takeOut' | 'exchange' | 'moveStar';
  readonly span: Span;
  readonly text: string;
  readonly steps: readonly Step[];
  /** The step that is changed, or the step behind which another is added (null at the head of the row). */
  readonly at: Step | null;
  /** For numbers: how far it is changed. */
  readonly by: number;
  /** The list of sizes before and after, where a number is changed. */
  readonly values?: { readonly was: Count['values']; readonly now: Count['values'] };
  /** The word added, or put in the place of another. */
  readonly word?: string;
  /** A plain stitch is added, where a larger number would say the same. */
  readonly plain?: boolean;
}

/** A stitch as some row of the draft prints it, to be lent to another row. */
export interface Donor {
  readonly step: Work;
  /** It neither gains nor loses. */
  readonly plain: boolean;
  readonly word: string;
}

export interface Lending {
  readonly words: (span: Span) => string;
  /** The one size that is out, whose value in a list is then the one to change; or null. */
  readonly only: number | null;
  readonly donors: readonly Donor[];
  /** Most changes to be made up. */
  readonly most: number;
}

const farthest = 4;
const distances = Array.from({ length: farthest }, (_, at) => [at + 1, -at - 1]).flat();

/** Every small change of the row, numbers first. */
export function smallEdits(steps: readonly Step[], how: Lending): SmallEdit[] {
  const numbers: SmallEdit[] = [];
  const others: SmallEdit[] = [];
  visit(steps, (list) => list, how, numbers, others);
  return [...numbers, ...others].slice(0, how.most);
}

type Rebuild = (list: readonly Step[]) => readonly Step[];

function visit(list: readonly Step[], rebuild: Rebuild, how: Lending, numbers: SmallEdit[], others: SmallEdit[]): void {
  list.forEach((step, index) => {
    const put = (...now: Step[]): readonly Step[] => rebuild([...list.slice(0, index), ...now, ...list.slice(index + 1)]);
    for (const { count, set } of countsOf(step)) {
      for (const change of numberChanges(count, how)) {
        numbers.push({
          kind: 'number',
          at: step,
          by: change.by,
          span: change.span,
          text: change.text,
          steps: put(set(change.count)),
          values: { was: count.values, now: change.count.values },
        });
      }
    }
    if (step.type === 'work') {
      others.push(...exchanges(step, put, how));
      if (list.length > 1) others.push({ kind: 'takeOut', at: step, by: 0, span: without(list, index), text: '', steps: put() });
    }
    if (step.type === 'work' || step.type === 'repeat' || step.type === 'marker') {
      for (const { step: lent, word, plain } of how.donors) {
        const after = { start: step.span.end, end: step.span.end };
        others.push({ kind: 'add', at: step, by: 0, span: after, text: `, ${word}`, word, plain, steps: put(step, lent) });
      }
    }
    if (index === 0 && step.type === 'work') {
      for (const { step: lent, word, plain } of how.donors) {
        others.push({
          kind: 'add',
          at: null,
          by: 0,
          span: { start: step.span.start, end: step.span.start },
          text: `${word}, `,
          word,
          plain,
          steps: put(lent, step),
        });
      }
    }
    if (step.type === 'repeat' && step.form === 'star') others.push(...starMoves(step, list, index, rebuild, how));
    if (step.type === 'repeat' && step.form !== 'run') {
      visit(step.children, (children) => put({ ...step, children }), how, numbers, others);
      visit(step.once, (once) => put({ ...step, once }), how, numbers, others);
      const { ending } = step;
      if (ending !== null) visit(ending.children, (children) => put({ ...step, ending: { ...ending, children } }), how, numbers, others);
    }
    if (step.type === 'needlePart') visit(step.children, (children) => put({ ...step, children }), how, numbers, others);
  });
}

/** The star one step earlier, or one step later: where a repeat begins is as easily misplaced as a number. */
function starMoves(step: Repeat, list: readonly Step[], index: number, rebuild: Rebuild, how: Lending): SmallEdit[] {
  const { markSpan, mark, children } = step;
  const [first, second] = children;
  const before = list[index - 1];
  if (markSpan === null || mark === null || first === undefined || how.words(markSpan).trim() !== mark) return [];
  const moves: SmallEdit[] = [];
  const movable = (each: Step | undefined): each is Work => each?.type === 'work';
  const edit = { kind: 'moveStar' as const, by: 0 };
  if (movable(before) && before.span.end <= markSpan.start)
    moves.push({
      ...edit,
      at: before,
      span: { start: before.span.start, end: first.span.start },
      text: `${mark}${lower(how.words(before.span))}, `,
      steps: rebuild([...list.slice(0, index - 1), { ...step, children: [before, ...children] }, ...list.slice(index + 1)]),
    });
  if (movable(first) && second !== undefined)
    moves.push({
      ...edit,
      at: first,
      span: { start: markSpan.start, end: second.span.start },
      text: `${how.words(first.span)}, ${mark}`,
      steps: rebuild([...list.slice(0, index), first, { ...step, children: children.slice(1) }, ...list.slice(index + 1)]),
    });
  return moves;
}

/** The step with the comma that goes with it. */
function without(list: readonly Step[], index: number): Span {
  const step = list[index] as Step;
  const before = list[index - 1];
  const after = list[index + 1];
  if (before !== undefined) return { start: before.span.end, end: step.span.end };
  return { start: step.span.start, end: after?.span.start ?? step.span.end };
}

function exchanges(step: Work, put: (...now: Step[]) => readonly Step[], how: Lending): SmallEdit[] {
  return how.donors.flatMap(({ step: lent, word, plain }) =>
    lent.stitch === step.stitch || (plain && isPlain(step))
      ? []
      : [{ kind: 'exchange' as const, at: step, by: 0, span: step.span, text: word, word, steps: put({ ...lent, span: step.span }) }],
  );
}

const isPlain = (step: Work): boolean => entryNamed(step.stitch)?.kind === 'plain';

interface Counted {
  readonly count: Count;
  readonly set: (count: Count) => Step;
}

/** The numbers of one step that can be written otherwise. */
function countsOf(step: Step): Counted[] {
  switch (step.type) {
    case 'work': {
      const { n } = step;
      if (n === null) return [];
      const readings = step.readings;
      if (readings === undefined) return [{ count: n, set: (count) => ({ ...step, n: count }) }];
      return [
        {
          count: n,
          set: (count) => ({
            ...step,
            n: count,
            readings: readings.map((reading) => (reading.n === n ? { ...reading, n: count } : reading)),
          }),
        },
      ];
    }
    case 'repeat':
      return extentCount(step);
    case 'bindOff':
    case 'castOn':
    case 'evenly':
      return [{ count: step.count, set: (count) => ({ ...step, count }) }];
    case 'pickUp':
    case 'hold': {
      const { count: was } = step;
      return was === null ? [] : [{ count: was, set: (count) => ({ ...step, count }) }];
    }
    default:
      return [];
  }
}

function extentCount(step: Repeat): Counted[] {
  const { extent } = step;
  if (extent === null) return [];
  const withExtent = (now: Extent): Step => ({ ...step, extent: now });
  if (extent.kind === 'times' || extent.kind === 'last' || extent.kind === 'over')
    return [{ count: extent.count, set: (count) => withExtent({ ...extent, count }) }];
  if (extent.kind === 'place' && extent.n !== null) return [{ count: extent.n, set: (n) => withExtent({ ...extent, n }) }];
  return [];
}

interface NumberChange {
  readonly by: number;
  readonly span: Span;
  readonly text: string;
  readonly count: Count;
}

/** One value of the list, or all of them where every size is out. Numbers told in words are left alone. */
function numberChanges(count: Count, how: Lending): NumberChange[] {
  const text = how.words(count.span);
  const printed = [...text.matchAll(/\d+/g)];
  const { values } = count;
  const told = values.filter((value) => value !== null);
  if (printed.length !== told.length || printed.some((each, at) => Number(each[0]) !== told[at])) return [];
  if (values.length > 1 && how.only !== null) {
    const at = values.slice(0, how.only).filter((value) => value !== null).length;
    const value = values[how.only];
    const place = printed[at];
    if (value === null || value === undefined || place === undefined) return [];
    const start = count.span.start + place.index;
    return distances
      .filter((by) => value + by > 0)
      .map((by) => ({
        by,
        span: { start, end: start + place[0].length },
        text: String(value + by),
        count: { ...count, values: values.map((each, size) => (size === how.only && each !== null ? each + by : each)) },
      }));
  }
  return distances
    .filter((by) => told.every((value) => value + by > 0))
    .map((by) => ({
      by,
      span: count.span,
      text: text.replace(/\d+/g, (digits) => String(Number(digits) + by)),
      count: { ...count, values: values.map((each) => (each === null ? null : each + by)) },
    }));
}

/** The stitches, once each, that some rows print: those that gain or lose first, each with the one that mirrors it. */
export function donorsOf(rows: readonly (readonly Step[])[], vocabulary: Vocabulary, words: (span: Span) => string, most: number): Donor[] {
  const found = new Map<string, Donor>();
  const mirrors: Donor[] = [];
  const take = (step: Work): void => {
    const word = lower(words(step.span).replace(/\s+/g, ' ').trim());
    if (word.length === 0 || word.length > 12 || found.has(word)) return;
    const entry = vocabulary.stitches.get(step.stitch) ?? entryNamed(step.stitch);
    found.set(word, { step, word, plain: entry?.kind === 'plain' || entry?.kind === 'slip' });
    const mirror = entry?.mirror === undefined ? undefined : entryNamed(entry.mirror);
    if (mirror === undefined || step.n !== null || mirror.spellings.some((spelling) => spelling.includes('{'))) return;
    const { readings: _readings, spelling: _spelling, ...bare } = step;
    mirrors.push({ step: { ...bare, stitch: mirror.name }, word: lower(mirror.spellings[0] ?? mirror.name), plain: false });
  };
  const look = (steps: readonly Step[]): void => {
    for (const step of steps) {
      if (step.type === 'work') take(step);
      else if (step.type === 'repeat') {
        if (step.form !== 'run') look(step.children);
        look(step.once);
        if (step.ending !== null) look(step.ending.children);
      } else if (step.type === 'needlePart') look(step.children);
    }
  };
  for (const steps of rows) look(steps);
  const names = new Set([...found.values()].map(({ step }) => step.stitch));
  const shaping = [...found.values()].filter(({ plain }) => !plain);
  const plain = [...found.values()].filter((each) => each.plain);
  return [...shaping, ...mirrors.filter(({ step }) => !names.has(step.stitch))].slice(0, most - 2).concat(plain.slice(0, 2));
}

const lower = (word: string): string =>
  /^[A-Z][a-z0-9]/.test(word) ? word.charAt(0).toLowerCase() + word.slice(1) : word.length === 1 ? word.toLowerCase() : word;
