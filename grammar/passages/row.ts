/** The row being read, and what it becomes when it ends: whole rows, lists of short rows, orders behind its count. */
import { explained } from '../phrases/explained.ts';
import { listed } from '../phrases/lists.ts';
import { settled } from '../readings.ts';
import { splitRow } from '../short-row-lists.ts';
import { blockOf, ruledSteps } from '../some-sizes.ts';
import type { Label, Repeat, Row, Stated, Statement, Step } from '../tree.ts';
import type { Vocabulary } from '../vocabulary.ts';

/** A row while its words are still coming in. */
export interface OpenRow {
  label: Label | null;
  steps: Step[];
  stated: Stated[];
  does: Statement | null;
  /** "Next row (3rd size only):": the sizes that work it, where not all do. */
  sizes?: readonly number[];
  start: number;
  end: number;
}

/** Steps that only a row can hold. */
export const rowSteps = new Set(['work', 'intoOne', 'repeat', 'turn', 'needlePart', 'pullOver', 'pickUp']);

/** The statements that the words of a row make once it has ended. */
export function finish(open: OpenRow, between: (start: number, end: number) => string, vocabulary: Vocabulary): Statement[] {
  const { steps, sizes } = ruledSteps(open.steps);
  const made = statementsOf({ ...open, steps }, between, vocabulary);
  const ruled = sizes ?? open.sizes;
  return ruled === undefined ? made : [blockOf(ruled, made, { start: open.start, end: made.at(-1)?.span.end ?? open.end })];
}

function statementsOf(open: OpenRow, between: (start: number, end: number) => string, vocabulary: Vocabulary): Statement[] {
  const span = { start: open.start, end: open.end };
  if (
    open.label === null &&
    open.does === null &&
    !open.steps.some((step) => rowSteps.has(step.type) || (step.type === 'takeUp' && step.worked))
  ) {
    // "Inc 6 sts evenly across next row": the row is worked, and all it is told is what it gains.
    const shaped = open.steps.find((step) => step.type === 'evenly' && step.onNextRow === true);
    if (shaped?.type === 'evenly' && open.steps.every((step) => step === shaped || step.type === 'remark'))
      return [
        {
          type: 'plain',
          count: { type: 'count', values: [1], span: shaped.span },
          unit: 'row',
          fabric: null,
          begin: null,
          beginRow: null,
          of: null,
          ending: null,
          inside: [shaped],
          stated: open.stated,
          span,
        },
      ];
    // Orders that are no row: each stands for itself.
    const last = open.steps.at(-1);
    if (open.stated.length > 0) return [...open.steps, ...open.stated].sort((a, b) => a.span.start - b.span.start);
    return last === undefined ? [] : [...open.steps];
  }
  const change = open.label === null && open.does === null && open.stated.length === 0 ? changedFabric(open.steps, between) : null;
  if (change !== null) return change;
  const steps = settled(
    listed(
      explained(including(wholeRow(slippedAside(likeNeedles(firstThings(open.steps, between)))), between), (part) =>
        between(part.start, part.end),
      ),
      (part) => between(part.start, part.end),
    ),
    open.label?.side ?? null,
    vocabulary,
  );
  const row: Row = { type: 'row', label: open.label, children: steps, does: open.does, stated: open.stated, span };
  const [worked, orders] = behindCount(row);
  return [...splitRow(worked, between), ...orders];
}

/** "Change to larger needles and st st.": the fabric from there on, and no row yet; null for other words. */
function changedFabric(steps: readonly Step[], between: (start: number, end: number) => string): Statement[] | null {
  const [change, fabric] = steps;
  if (steps.length !== 2 || change?.type !== 'change' || change.what !== 'needle' || fabric?.type !== 'repeat') return null;
  const [only] = fabric.children;
  if (fabric.form !== 'run' || fabric.verb === 'patt' || only?.type !== 'work' || only.stitch !== 'work') return null;
  // "… and rib to end", "… and rib across": a row of it
  if (fabric.span.end !== only.span.end || /\b(?:end|across|rows?|rnds?|rounds?)\b/i.test(between(fabric.span.start, fabric.span.end)))
    return null;
  return [
    change,
    {
      type: 'until',
      verb: 'work',
      fabric: fabric.verb ?? null,
      begin: null,
      of: null,
      goal: { kind: 'loose', text: '' },
      ending: null,
      inside: [],
      stated: [],
      span: fabric.span,
    },
  ];
}

const orderSteps: ReadonlySet<Step['type']> = new Set(['hold', 'join', 'change', 'takeUp']);

/** "K to end. 62 sts. Place on hold.": the count is the row's, and what is ordered behind it is no part of the row. */
function behindCount(row: Row): [Row, Step[]] {
  const counted = row.stated.at(-1)?.span;
  if (counted === undefined) return [row, []];
  const first = row.children.findLastIndex((step) => !orderSteps.has(step.type) || step.span.start < counted.end) + 1;
  const orders = row.children.slice(first);
  if (first === 0 || !orders.some((step) => step.type === 'hold')) return [row, []];
  return [{ ...row, children: row.children.slice(0, first), span: { start: row.span.start, end: counted.end } }, orders];
}

/** "Knit, casting off the first 4 sts": told last, and done at the beginning of the row. */
function firstThings(steps: readonly Step[], text: (start: number, end: number) => string): readonly Step[] {
  const last = steps.at(-1);
  if (
    last?.type !== 'bindOff' ||
    steps.length < 2 ||
    !/^(?:casting|binding) off (?:the )?first\b/i.test(text(last.span.start, last.span.end))
  )
    return steps;
  return [last, ...steps.slice(0, -1)];
}

/** "DS, p19 (including DS)": the double stitch is the first of the nineteen. */
function including(steps: readonly Step[], text: (start: number, end: number) => string): Step[] {
  return steps.map((step, index) => {
    const before = steps[index - 1];
    const behind = steps[index + 1];
    if (step.type !== 'work' || step.n === null || before?.type !== 'work' || behind?.type !== 'remark') return step;
    if (
      before.stitch !== 'DS (make)' ||
      !/^[([]?\s*(?:incl\.?|including|counting|with)\b.*\b(?:ds|double st)/i.test(text(behind.span.start, behind.span.end))
    )
      return step;
    return { ...step, includesLast: true };
  });
}

/** "N2: same as N1": the steps of the needle named. */
function likeNeedles(steps: readonly Step[]): Step[] {
  return steps.map((step, index) => {
    if (step.type !== 'needlePart' || step.like === undefined) return step;
    const model = steps.slice(0, index).find((each) => each.type === 'needlePart' && each.numbers?.includes(step.like as number));
    return model?.type === 'needlePart' ? { ...step, children: model.children } : step;
  });
}

/** Fewest stitches that a bare "slip 52" puts aside; fewer are slipped to the right needle. */
const manySlipped = 10;

/** "K68, slip 52, cast on 6": so many are slipped to a holder, whether the words name it or not. */
function slippedAside(steps: readonly Step[]): Step[] {
  return steps.map((step, index) => {
    const next = steps[index + 1];
    const aside =
      step.type === 'work' &&
      step.stitch === 'sl' &&
      step.n !== null &&
      step.n.values.every((value) => value !== null && value >= manySlipped) &&
      step.manner.length === 0 &&
      step.times === undefined &&
      index > 0 &&
      (next === undefined || next.type === 'castOn' || next.type === 'turn' || (next.type === 'join' && next.what === 'rejoin'));
    return aside ? { type: 'hold', which: 'next', count: step.n, holder: 'holder', name: null, span: step.span } : step;
  });
}

/** "Knit." and "P." as the whole text of a row mean every stitch. */
function wholeRow(steps: readonly Step[]): Step[] {
  const worked = steps.filter(
    (step) => rowSteps.has(step.type) && !(step.type === 'intoOne' && step.everywhere) && !(step.type === 'turn' && step.not === true),
  );
  const only = worked.length === 1 ? worked[0] : undefined;
  if (only?.type !== 'work' || only.n !== null || only.times !== undefined || (only.stitch !== 'k' && only.stitch !== 'p'))
    return [...steps];
  const run: Repeat = {
    type: 'repeat',
    form: 'run',
    verb: only.stitch,
    children: [only],
    extent: { kind: 'end' },
    once: [],
    ending: null,
    mark: null,
    markSpan: null,
    span: only.span,
  };
  return steps.map((step) => (step === only ? run : step));
}
