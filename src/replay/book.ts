/** The count sheet as it is written while the replay goes on, and what the replay met on the way. */
import type { Side, Span, Statement, Step } from '../../grammar/tree.ts';
import type { Trouble } from './hands.ts';
import type { Moment } from './play.ts';
import type { Entry, Observation, ObservationKind } from './replay.ts';

export interface OpenEntry {
  section: number;
  label: string;
  span: Span;
  textSpan: Span;
  node: Statement;
  side: Side | null;
  unit: Entry['unit'];
  times: number;
  before: (number | null)[];
  after: (number | null)[];
  takes: (number | null)[];
  makes: (number | null)[];
  afterPerRepeat: Entry['afterPerRepeat'];
}

export interface Met {
  readonly kind: ObservationKind;
  readonly span: Span;
  readonly size: number;
  readonly section: number;
  readonly row: string | null;
  readonly node: Statement | null;
  readonly numbers: Readonly<Record<string, number>>;
  readonly words: Readonly<Record<string, string>>;
  readonly certain: boolean;
  readonly evidence: readonly string[];
  /** The words inside a row that was called again, where the call is what is reported. */
  readonly inner: Span | null;
}

export interface Book {
  entries: OpenEntry[];
  met: Met[];
  /** The needles at the head of the rows in which something was met. */
  heads: Moment[];
  /** The steps of each entry that was worked step by step. */
  steps: Map<number, readonly Step[]>;
}

export function openBook(): Book {
  return { entries: [], met: [], heads: [], steps: new Map() };
}

export function troubleMet(
  trouble: Trouble,
  size: number,
  where: { section: number; row: string | null; node: Statement | null },
  certain: boolean,
  more: Readonly<Record<string, number>> = {},
): Met | null {
  if (trouble.kind === 'unread') return null;
  return {
    kind: trouble.kind,
    span: trouble.span,
    size,
    ...where,
    numbers: { ...trouble.numbers, ...more },
    words: trouble.words,
    certain,
    evidence: [],
    inner: null,
  };
}

/** How the sheet names a row without a label; what is said of such a row names none. */
export const noLabel = 'Row';

/** The same thing met in several sizes at one place is one observation. */
const rowTroubles: ReadonlySet<ObservationKind> = new Set([
  'tooFew',
  'leftOver',
  'repeatDoesNotFit',
  'nothingToPass',
  'noGap',
  'markerNotThere',
  'noProgress',
]);

/** What only repeats another: the count of a row that cannot be worked in other sizes, a call of a row that fails already. */
function folded(met: readonly Met[]): Met[] {
  const roots = met.filter((each) => each.certain && each.inner === null && rowTroubles.has(each.kind));
  return met.filter((each) => {
    const suffers = (each.kind === 'countDiffers' && each.words['fault'] !== 'stated') || each.inner !== null;
    return !suffers || !roots.some((root) => root !== each && sameRow(root, each));
  });
}

/** Whether two things were met at one row: the same node, or the words of a row that was called again. */
function sameRow(root: Met, each: Met): boolean {
  if (root.node !== null && root.node === each.node) return true;
  if (each.inner === null || root.node === null) return false;
  return each.inner.start >= root.node.span.start && each.inner.end <= root.node.span.end;
}

export function observationsOf(all: readonly Met[]): Observation[] {
  const met = folded(all);
  const groups = new Map<string, Met[]>();
  for (const each of met) {
    const key = `${each.kind}|${each.span.start}|${each.span.end}|${each.certain}|${each.words['fault'] ?? ''}`;
    const group = groups.get(key);
    if (group === undefined) groups.set(key, [each]);
    else if (!group.some((other) => other.size === each.size)) group.push(each);
  }
  const out: Observation[] = [];
  for (const group of groups.values()) {
    const [first] = group;
    if (first === undefined) continue;
    const sorted = [...group].sort((a, b) => a.size - b.size);
    const names = [...new Set(sorted.flatMap((each) => Object.keys(each.numbers)))];
    out.push({
      kind: first.kind,
      span: first.span,
      section: first.section,
      row: first.row === noLabel ? null : first.row,
      node: first.node,
      sizes: sorted.map((each) => each.size),
      numbers: Object.fromEntries(names.map((name) => [name, sorted.map((each) => each.numbers[name] ?? null)])),
      words: first.words,
      certain: first.certain,
      evidence: [...new Set(sorted.flatMap((each) => each.evidence))],
      follows: first.inner === null ? [] : [first.inner],
    });
  }
  return out.sort((a, b) => a.span.start - b.span.start || a.span.end - b.span.end);
}
