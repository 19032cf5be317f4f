/** Which small changes of a row make it work in every size: each is worked from the needles at the head of the row. */
import { type Sized, sizeValue } from '../../grammar/count.ts';
import type { Row, Span, Stated, Step } from '../../grammar/tree.ts';
import type { Pattern } from '../pattern/pattern.ts';
import { likeness } from './likeness.ts';
import { workMoment } from './moments.ts';
import { copyNeedles, live, type Needles } from './needles.ts';
import type { Moment } from './play.ts';
import type { Observation, Replay } from './replay.ts';
import { donorsOf, type SmallEdit, smallEdits } from './small-edits.ts';

/** Changes tried for one row, rows behind it that must work as well, and stitches lent by other rows. */
const mostTried = 240;
const rowsAhead = 8;
const mostDonors = 8;
/** Steps of the longest row that is tried: each change is a row of its own, so their cost grows with the square. */
const longestRow = 300;

export interface Fitting {
  /** The edits that speak for themselves, the likeliest first. */
  readonly edits: readonly SmallEdit[];
  /** Two of those that fit, where none speaks for itself. */
  readonly instances: readonly SmallEdit[];
  /** How many would fit in all. */
  readonly all: number;
  /** Every small edit of the row was tried; a very long row has more of them than are. */
  readonly complete: boolean;
}

interface Bench {
  readonly pattern: Pattern;
  readonly replay: Replay;
  readonly heads: readonly Moment[];
  readonly row: Row;
}

/**
 * The small edits of the row that an observation was met in which make it work in all its sizes, meet the count it states
 * and let the rows behind it work. Null where the row cannot be tried: it was called from elsewhere, or not worked step by step.
 */
export function fittingEdits(pattern: Pattern, replay: Replay, met: Observation, words: (span: Span) => string): Fitting | null {
  const heads = (replay.heads ?? []).filter((head) => head.row === met.node && head.inline && head.needles.sure);
  const [first] = heads;
  if (first === undefined || first.steps.length === 0 || first.steps.length > longestRow) return null;
  const same = heads.filter((head) => head.entry === first.entry);
  const out = same.filter((head) => met.sizes.includes(head.size));
  if (out.length === 0 || out.length !== met.sizes.length) return null;
  const bench: Bench = { pattern, replay, heads: [...out, ...same.filter((head) => !out.includes(head))], row: first.row };
  // The row as it stands must fail here as it did in the replay, or nothing is proved by a change that works.
  if (out.some((head) => works(bench, head, first.steps))) return null;
  const only = same.length > 1 && out.length === 1 ? (out[0] as Moment).size : null;
  const siblings = siblingsOf(bench, first);
  const donors = donorsOf([first.steps, ...siblings], pattern.vocabulary, words, mostDonors);
  const tried = smallEdits(first.steps, { words, only, donors, most: mostTried });
  const fit = tried.filter((edit) => bench.heads.every((head) => works(bench, head, edit.steps)));
  return { ...ranked(bench, first, siblings, distinct(fit)), complete: tried.length < mostTried };
}

/** Edits that leave the same row are one; a number is the plainest way to say it. */
function distinct(edits: readonly SmallEdit[]): SmallEdit[] {
  const seen = new Set<string>();
  return edits.filter((edit) => {
    const key = `${edit.span.start}|${edit.span.end}|${edit.text}`;
    if (seen.has(key)) return false;
    seen.add(key);
    return true;
  });
}

function siblingsOf(bench: Bench, head: Moment): (readonly Step[])[] {
  const { entries, steps } = bench.replay;
  const section = entries[head.entry]?.section;
  const found: (readonly Step[])[] = [];
  entries.forEach((entry, index) => {
    const own = steps?.get(index);
    if (entry.section === section && own !== undefined && own !== head.steps && !found.includes(own)) found.push(own);
  });
  return found.slice(0, 40);
}

const totalOf = (stated: readonly Stated[]): Stated | undefined => stated.find((each) => each.what === 'total' && each.scope === null);

const stated = (values: Sized, size: number): number | null => sizeValue(values, size);

/** Whether the row works in this size with these steps, ends with the count it states, and lets the next rows work. */
function works(bench: Bench, head: Moment, steps: readonly Step[]): boolean {
  const before = live(head.needles);
  const end = workMoment(bench, head, { steps });
  if (end.trouble !== null || end.left > 0 || end.asides.length > 0) return false;
  const after = live(end.needles);
  for (const each of bench.row.stated) {
    const value = stated(each.count.values, head.size);
    if (value === null) continue;
    if (each.what === 'total' && each.scope === null && value !== after) return false;
    if (each.what === 'increased' && value !== after - before) return false;
    if (each.what === 'decreased' && value !== before - after) return false;
  }
  if (totalOf(bench.row.stated) !== undefined) return true;
  return goesOn(bench, head, steps, end.needles);
}

/** Works the rows behind from the count the change leaves, until a stated count has been met. */
function goesOn(bench: Bench, head: Moment, steps: readonly Step[], needles: Needles): boolean {
  const { entries, steps: worked } = bench.replay;
  const section = entries[head.entry]?.section;
  let at = needles;
  for (let index = head.entry + 1; index <= head.entry + rowsAhead; index += 1) {
    const entry = entries[index];
    const own = worked?.get(index);
    if (entry === undefined || own === undefined || entry.section !== section) return true;
    const end = workMoment(bench, { ...head, needles: copyNeedles(at) }, { steps: own === head.steps ? steps : own });
    if (end.trouble !== null) return end.trouble.kind === 'unread';
    if (end.left > 0) return false;
    at = end.needles;
    const total = entry.node.type === 'row' ? totalOf(entry.node.stated) : undefined;
    const value = total === undefined ? null : stated(total.count.values, head.size);
    if (value !== null) return value === live(at);
  }
  return true;
}

/** A difference of one says that something in the draft speaks for the one edit and not for the other. */
const clear = 0.9;

function ranked(bench: Bench, head: Moment, siblings: readonly (readonly Step[])[], fit: readonly SmallEdit[]): Omit<Fitting, 'complete'> {
  const judge = likeness(bench.pattern.vocabulary, head.size, head.steps, siblings);
  const scored = fit
    .map((edit) => ({ edit, score: judge(edit) }))
    .sort((a, b) => b.score - a.score || a.edit.span.start - b.edit.span.start || (a.edit.text < b.edit.text ? -1 : 1));
  if (scored.length <= 3) return { edits: scored.map(({ edit }) => edit), instances: [], all: fit.length };
  for (const count of [3, 2, 1]) {
    const [last, next] = [scored[count - 1], scored[count]];
    if (last !== undefined && next !== undefined && last.score - next.score >= clear)
      return { edits: scored.slice(0, count).map(({ edit }) => edit), instances: [], all: fit.length };
  }
  return { edits: [], instances: scored.slice(0, 2).map(({ edit }) => edit), all: fit.length };
}
