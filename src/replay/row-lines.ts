/** The lines of a row that is watched while it is worked: one for each step, one for each pass of a repeat. */
import type { Repeat, Span, Step } from '../../grammar/tree.ts';
import type { RowReplayLine } from '../report/row-replay.ts';
import type { Hands, Watch } from './hands.ts';
import type { Mark } from './needles.ts';

interface Head {
  readonly taken: number;
  readonly made: number;
  readonly ahead: readonly Mark[];
}

interface Open {
  readonly head: Head;
  readonly span: Span;
  readonly pass: number;
  readonly of: number | null;
}

/** Passes of one repeat are all printed up to this many; of more, the first two and the last. */
const printedPasses = 5;

export function spanOfSteps(steps: readonly Step[], otherwise: Span): Span {
  const [first] = steps;
  const last = steps.at(-1);
  return first === undefined || last === undefined ? otherwise : { start: first.span.start, end: last.span.end };
}

/** Words that are no work are not printed as a step. */
const silent = (step: Step) => step.type === 'remark' || step.type === 'stated' || step.type === 'resolve' || step.type === 'arrange';

/** A watch that writes lines; `words` gives the author's words at a place. */
export function lineWriter(words: (span: Span) => string): { watch: Watch; lines: () => RowReplayLine[] } {
  const lines: RowReplayLine[] = [];
  const stack: Step[] = [];
  let open: Open | null = null;
  let needle: string | null = null;

  const headOf = (hands: Hands): Head => ({
    taken: hands.taken,
    made: hands.made,
    ahead: hands.needles.left.marks.filter((mark) => mark.kind === 'marker'),
  });
  const close = (hands: Hands): void => {
    if (open === null) return;
    const { head, span, pass, of } = open;
    open = null;
    const left = hands.needles.left.marks.filter((mark) => mark.kind === 'marker').length;
    const passed = head.ahead.slice(left).reverse();
    const names = passed.map((mark) => (mark.name === null || mark.name === '' ? 'a marker' : `marker ${mark.name}`));
    lines.push({
      step: words(span).replace(/\s+/g, ' ').trim(),
      span,
      takes: hands.taken - head.taken,
      makes: hands.made - head.made,
      leftNeedle: hands.needles.left.n,
      rightNeedle: hands.needles.right.n,
      ...(pass > 0 ? { pass } : {}),
      ...(of === null ? {} : { of }),
      ...(needle === null ? {} : { needle }),
      ...(names.length === 0 ? {} : { marker: `past ${names.length > 2 ? `${names.length} markers` : names.join(' and ')}` }),
    });
  };
  /** Needle parts only hold steps; everything else at the top is a line of its own. */
  const isTop = () => stack.every((step) => step.type === 'needlePart');
  const begin = (step: Step, hands: Hands): void => {
    if (isTop() && step.type === 'needlePart') needle = step.needle;
    else if (isTop() && !silent(step)) open = { head: headOf(hands), span: step.span, pass: 0, of: null };
    stack.push(step);
  };
  const end = (step: Step, hands: Hands): void => {
    stack.pop();
    if (!isTop()) return;
    if (step.type === 'needlePart') needle = null;
    else close(hands);
  };
  const next = (step: Repeat, steps: readonly Step[], number: number, passes: number | null, hands: Hands): void => {
    if (stack.find((each) => each.type !== 'needlePart') !== step) return;
    // Before its first pass the repeat has worked nothing of its own.
    if (open !== null && open.pass === 0 && open.span === step.span) open = null;
    else close(hands);
    open = { head: headOf(hands), span: spanOfSteps(steps, step.span), pass: number, of: passes };
  };
  const pass = (step: Repeat, number: number, passes: number | null, hands: Hands): void =>
    next(step, step.children, number, passes, hands);
  const between = (step: Repeat, steps: readonly Step[], hands: Hands): void => next(step, steps, 0, null, hands);
  return { watch: { begin, end, pass, between }, lines: () => fold(lines) };
}

const alike = (a: RowReplayLine, b: RowReplayLine) =>
  a.span.start === b.span.start && a.span.end === b.span.end && a.takes === b.takes && a.makes === b.makes;

/** The passes of a long repeat as the first two, one line for those between, and the last. */
function fold(lines: readonly RowReplayLine[]): RowReplayLine[] {
  const out: RowReplayLine[] = [];
  for (let at = 0; at < lines.length; ) {
    const first = lines[at] as RowReplayLine;
    let end = at + 1;
    if (first.pass !== undefined)
      while (end < lines.length && lines[end]?.pass !== undefined && alike(first, lines[end] as RowReplayLine)) end += 1;
    const run = lines.slice(at, end);
    at = end;
    if (run.length <= printedPasses) {
      out.push(...run);
      continue;
    }
    const between = run.slice(2, -1);
    const last = between.at(-1) as RowReplayLine;
    const sum = (key: 'takes' | 'makes') => between.reduce((total, line) => total + (line[key] ?? 0), 0);
    const marked = between.filter((line) => line.marker !== undefined).length;
    const { marker: _marker, ...bare } = last;
    out.push(
      run[0] as RowReplayLine,
      run[1] as RowReplayLine,
      {
        ...bare,
        pass: between[0]?.pass ?? 3,
        folded: between.length,
        takes: sum('takes'),
        makes: sum('makes'),
        ...(marked === 0 ? {} : { marker: marked === 1 ? 'past a marker' : `past ${marked} markers` }),
      },
      run.at(-1) as RowReplayLine,
    );
  }
  return out;
}
