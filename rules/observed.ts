/**
 * What the replay met, made ready for rules: only what is certain, one for all sizes that meet it at the same place, and
 * what only follows from an earlier slip folded under that slip.
 */

import type { Row, Statement } from '../grammar/tree.ts';
import type { Span } from '../src/manuscript/manuscript.ts';
import { once } from '../src/once.ts';
import type { Entry, Observation, ObservationKind, Replay } from '../src/replay/replay.ts';
import { melody } from './out-of-step.ts';
import type { Context, Finding, Level } from './rule.ts';
import { inSizes, lineOf, numbersOf, perSize, sectionTitle } from './telling.ts';
import { offered } from './would-fit.ts';

/** A slip with what suffers from it. */
export interface Root {
  readonly met: Observation;
  readonly follows: readonly Observation[];
}

/** Kinds that a wrong number earlier in the piece can bring about. */
const suffers: ReadonlySet<ObservationKind> = new Set([
  'countDiffers',
  'changeDiffers',
  'partDiffers',
  'leftDiffers',
  'tooFew',
  'leftOver',
  'repeatDoesNotFit',
  'nothingToPass',
  'markerMissing',
  'markerNotThere',
  'markerTooNear',
  'markerInStitch',
  'noGap',
  'noProgress',
  'targetMissed',
  'targetPassed',
  'heldDiffers',
  'nothingHeld',
  'setsDiffer',
]);

/** Kinds that speak of words, not of a count: they hold whatever the count is. */
const wordsOnly: ReadonlySet<ObservationKind> = new Set([
  'rowMissing',
  'referenceMissing',
  'rangeDiffers',
  'readingNotDefault',
  'readingsDiffer',
]);

/** Every slip the replay is certain of, in the order of the draft, each with what follows from it. */
export const roots = once((context: Context): readonly Root[] => fold(context, merged(context.replay.observations)));

/** The slips of some kinds. */
export function rootsOf(context: Context, ...kinds: readonly ObservationKind[]): readonly Root[] {
  return roots(context).filter((root) => kinds.includes(root.met.kind));
}

/** Several sizes that meet the same at one place are one, whatever is thought to be at fault. */
function merged(observations: readonly Observation[]): Observation[] {
  const groups = new Map<string, Observation[]>();
  for (const each of observations) {
    if (!each.certain && !wordsOnly.has(each.kind)) continue;
    const key = `${each.kind}|${each.span.start}|${each.span.end}`;
    groups.set(key, [...(groups.get(key) ?? []), each]);
  }
  return [...groups.values()].map((group) => {
    const [first] = group as [Observation, ...Observation[]];
    if (group.length === 1) return first;
    const rows = group.flatMap((each) => each.sizes.map((size, position) => ({ size, each, position })));
    const seen = new Map(rows.map((row) => [row.size, row]));
    const sizes = [...seen.keys()].sort((a, b) => a - b);
    const names = [...new Set(group.flatMap((each) => Object.keys(each.numbers)))];
    const faults = new Set(group.map((each) => each.words['fault'] ?? ''));
    return {
      ...first,
      sizes,
      numbers: Object.fromEntries(
        names.map((name) => [
          name,
          sizes.map((size) => {
            const row = seen.get(size);
            return row?.each.numbers[name]?.[row.position] ?? null;
          }),
        ]),
      ),
      words: { ...first.words, ...(faults.size > 1 ? { fault: faults.has('row') && !faults.has('stated') ? 'row' : 'tie' } : {}) },
      evidence: [...new Set(group.flatMap((each) => each.evidence))],
    };
  });
}

/** How far a size is off, where the observation says so. */
function off(met: Observation, size: number): number | null {
  const at = met.sizes.indexOf(size);
  const stated = met.numbers['stated']?.[at] ?? met.numbers['target']?.[at];
  const replayed = met.numbers['replayed']?.[at] ?? met.numbers['live']?.[at];
  return at < 0 || stated === null || stated === undefined || replayed === null || replayed === undefined
    ? null
    : Math.abs(stated - replayed);
}

function fold(context: Context, list: readonly Observation[]): Root[] {
  const found: { met: Observation; follows: Observation[] }[] = [];
  const order = [...list].sort((a, b) => a.span.start - b.span.start || a.span.end - b.span.end);
  // Where one row both does not fit and states another count, the misfit says more.
  const rank = (met: Observation): number => (met.kind === 'countDiffers' ? 2 : met.kind === 'changeDiffers' ? 1 : 0);
  for (const met of order) {
    const same = found.find(
      (root) =>
        root.met.node !== null &&
        root.met.node === met.node &&
        suffers.has(root.met.kind) &&
        suffers.has(met.kind) &&
        root.met.section === met.section,
    );
    if (same !== undefined) {
      if (rank(met) < rank(same.met)) {
        same.follows.push(same.met);
        same.met = met;
      } else same.follows.push(met);
      continue;
    }
    const root = found.find((each) => causes(context, each.met, met));
    if (root !== undefined) root.follows.push(met);
    else found.push({ met, follows: [] });
  }
  return found;
}

const pieceOf = (context: Context, met: Observation): number | null => context.pattern.sections[met.section]?.piece ?? null;

/** Whether `later` only suffers from `first`. */
function causes(context: Context, first: Observation, later: Observation): boolean {
  if (first.kind === 'sideDiffers' && later.kind === 'sideDiffers') return nextSided(context, first, later);
  if (!suffers.has(later.kind)) return false;
  if (!suffers.has(first.kind) && !(first.kind === 'rangeDiffers' || first.kind === 'rowMissing')) return false;
  const inside = later.sizes.every((size) => first.sizes.includes(size));
  if (!inside) return false;
  // A stated count that is at fault by itself harms nothing: the work goes on with the right number.
  if (first.words['fault'] === 'stated') return false;
  const offBy = later.sizes.map((size) => [off(first, size), off(later, size)] as const);
  if (offBy.every(([one, two]) => one !== null && one > 0 && one === two)) return true;
  if (later.words['reference'] !== undefined) return true;
  const samePiece = pieceOf(context, first) === pieceOf(context, later);
  if (later.kind === 'nothingHeld' || later.kind === 'heldDiffers') return samePiece;
  const open =
    first.words['fault'] === 'tie' ||
    first.kind === 'changeDiffers' ||
    first.kind === 'leftDiffers' ||
    first.kind === 'rangeDiffers' ||
    first.kind === 'partDiffers';
  return samePiece && open && !settled(context, first, later);
}

/** Whether a count that the draft states, and that is right, stands between the two. */
function settled(context: Context, first: Observation, later: Observation): boolean {
  return context.replay.entries.some(
    (entry) => entry.span.start > first.span.end && entry.span.end <= later.span.start && agrees(entry, later.sizes),
  );
}

function agrees(entry: Entry, sizes: readonly number[]): boolean {
  const total = statedIn(entry.node).find((stated) => stated.what === 'total' && stated.scope === null);
  if (total === undefined) return false;
  return sizes.every((size) => {
    const value = total.count.values.length === 1 ? total.count.values[0] : total.count.values[size];
    return value === null || value === undefined || entry.after[size] === value;
  });
}

function statedIn(node: Statement): Row['stated'] {
  return 'stated' in node && Array.isArray(node.stated) ? (node.stated as Row['stated']) : [];
}

/** A wrong side on one label makes the next label with a side seem wrong as well. */
function nextSided(context: Context, first: Observation, later: Observation): boolean {
  if (pieceOf(context, first) !== pieceOf(context, later)) return false;
  return !context.pattern.rows.some(
    ({ label }) => label.side !== null && label.span.start > first.span.end && label.span.end <= later.span.start,
  );
}

/** A sentence about some sizes: what opens it, and the numbers per size as the draft prints them. */
export interface Telling {
  readonly head: string;
  /** The number of that name, or one per size. */
  n(name: string): string;
  /** The number where it is the same in every size that meets it. */
  one(name: string): number | null;
}

export function telling(context: Context, met: Observation): Telling {
  return {
    head: inSizes(context, met.sizes),
    n: (name) => perSize(context, met.sizes, met.numbers[name] ?? []),
    one: (name) => {
      const values = met.numbers[name] ?? [];
      const [first] = values;
      return first !== undefined && first !== null && values.every((value) => value === first) ? first : null;
    },
  };
}

/** Makes a capital of the first letter of a sentence. */
export function sentence(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

export interface Said {
  readonly rule: string;
  readonly level: Level;
  readonly message: string;
  readonly evidence?: readonly string[];
  readonly fix?: Finding['fix'];
  /** Small edits of the row are tried, and those that make it work are offered. */
  readonly tryEdits?: boolean;
  readonly span?: Span;
}

/** A finding from a slip, with what follows from it folded under it. */
export function findingOf(context: Context, root: Root, said: Said): Finding {
  const { met, follows } = root;
  const places = follows
    .map((each) => each.span)
    .filter(
      (span, index, all) =>
        all.findIndex((other) => lineOf(context, other) === lineOf(context, span)) === index &&
        lineOf(context, span) !== lineOf(context, met.span),
    );
  const affected =
    places.length === 0
      ? []
      : [
          `${places.length === 1 ? 'One later place suffers' : `${places.length} later places suffer`} from it: ${places.length === 1 ? 'line' : 'lines'} ${places.map((span) => lineOf(context, span)).join(', ')}.`,
        ];
  const { many, ...small } = said.tryEdits === true ? offered(context, met) : {};
  const evidence = [...(said.evidence ?? []), ...melody(context, met), ...(many === undefined ? [] : [many]), ...affected];
  return {
    rule: said.rule,
    level: said.level,
    span: said.span ?? met.span,
    section: sectionTitle(context, met.section),
    row: met.row,
    sizes: context.pattern.sizes.length > 1 ? met.sizes : [],
    message: sentence(said.message),
    stated: numbersOf(met.numbers['stated'] ?? met.numbers['target']),
    replayed: numbersOf(met.numbers['replayed'] ?? met.numbers['live']),
    ...small,
    fix: said.fix ?? small.fix ?? null,
    ...(evidence.length > 0 ? { evidence } : {}),
    ...(places.length > 0 ? { also: places } : {}),
  };
}
