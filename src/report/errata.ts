/**
 * What has changed between two versions of a pattern, as a slip for those who knit from the older one: what alters the work,
 * for which sizes, from where on, and apart from it what is worded otherwise only. Both versions are replayed.
 */
import { sizeValue } from '../../grammar/count.ts';
import type { Stated } from '../../grammar/tree.ts';
import type { Proof } from '../index.ts';
import type { Entry } from '../replay/replay.ts';
import { wrap } from './layout.ts';
import { listWords, rangeOf } from './place.ts';
import { plural } from './plural.ts';
import { nameOf } from './report.ts';

export interface Erratum {
  readonly section: string;
  readonly label: string;
  /** work: it is worked otherwise · count: the printed count was wrong, the work is the same · wording: neither changes. */
  readonly kind: 'work' | 'count' | 'wording';
  readonly sizes: readonly string[];
  /** The words of both versions; null where the instruction is not in one of them. */
  readonly was: string | null;
  readonly is: string | null;
  /** Stitches after it, per size of `sizes`, in both versions. */
  readonly countsWere: readonly (number | null)[];
  readonly countsAre: readonly (number | null)[];
  /** The instruction after which the counts of both versions agree again; null where they never do, or never differed. */
  readonly agreesAfter: string | null;
  readonly line: number;
}

interface Unit {
  readonly key: string;
  readonly section: string;
  readonly label: string;
  readonly words: string;
  readonly line: number;
  readonly entries: readonly Entry[];
}

/** The instructions of a draft that are worked, in the order of the text; the same name comes with its number. */
function unitsOf(proof: Proof): Unit[] {
  const { manuscript, pattern, replay } = proof;
  const byPlace = new Map<number, Entry[]>();
  for (const entry of replay.entries) byPlace.set(entry.span.start, [...(byPlace.get(entry.span.start) ?? []), entry]);
  const seen = new Map<string, number>();
  return [...byPlace.entries()]
    .sort(([a], [b]) => a - b)
    .flatMap(([, entries]): Unit[] => {
      const [first] = entries;
      if (first === undefined) return [];
      const { span } = first.node;
      const section = pattern.sections[first.section]?.title ?? '';
      // A row is known by its label; what has none by its kind and its turn, since its words are what may have changed.
      const own = first.node.type === 'row' && first.node.label !== null;
      const name = `${section}|${own ? first.label : first.node.type}`;
      const number = (seen.get(name) ?? 0) + 1;
      seen.set(name, number);
      const words = manuscript.source.slice(span.start, span.end).replace(/\s+/g, ' ').trim();
      return [{ key: `${name}|${number}`, section, label: own ? first.label : '', words, line: rangeOf(manuscript, span).line, entries }];
    });
}

const afterOf = (unit: Unit, size: number): number | null => unit.entries.at(-1)?.after[size] ?? null;

/** What a size does here: how often, from how many to how many, taking and making. */
const workOf = (unit: Unit, size: number): string =>
  JSON.stringify(
    unit.entries.map((entry) => [entry.times, entry.side, entry.takes[size] ?? null, entry.makes[size] ?? null, entry.after[size] ?? null]),
  );

const statedOf = (unit: Unit, size: number): string => {
  const node = unit.entries[0]?.node;
  const list = node !== undefined && 'stated' in node ? (node.stated as readonly Stated[]) : [];
  return JSON.stringify(list.map((each) => sizeValue(each.count.values, size)));
};

/** What is worked, apart from how it is spelled, where it stands and which counts are printed behind it. */
const told: ReadonlySet<string> = new Set(['span', 'stated', 'spelling', 'numberSpan', 'sideSpan', 'markSpan', 'label']);
const orderOf = (unit: Unit, size: number): string =>
  JSON.stringify(unit.entries[0]?.node ?? null, (key, value: unknown) => {
    if (told.has(key)) return undefined;
    if (key === 'verb' && typeof value === 'string') return value.charAt(0).toLowerCase();
    // Of a list of sizes only the one value counts.
    return Array.isArray(value) && value.length > 1 && value.every((each) => each === null || typeof each === 'number')
      ? (value[size] ?? null)
      : value;
  });

export function errataOf(older: Proof, newer: Proof): Erratum[] {
  const [was, is] = [unitsOf(older), unitsOf(newer)];
  const before = new Map(was.map((unit) => [unit.key, unit]));
  const now = new Map(is.map((unit) => [unit.key, unit]));
  const names = newer.pattern.sizes;
  const all = names.map((_, size) => size);
  const found: Erratum[] = [];
  const say = (kind: Erratum['kind'], sizes: readonly number[], one: Unit | null, two: Unit | null): void => {
    const unit = (two ?? one) as Unit;
    found.push({
      section: unit.section,
      label: unit.label,
      kind,
      sizes: sizes.map((size) => names[size] ?? String(size + 1)),
      was: one?.words ?? null,
      is: two?.words ?? null,
      countsWere: sizes.map((size) => (one === null ? null : afterOf(one, size))),
      countsAre: sizes.map((size) => (two === null ? null : afterOf(two, size))),
      agreesAfter: kind === 'work' ? agreeing(is, before, unit, sizes) : null,
      line: unit.line,
    });
  };
  for (const unit of is) {
    const old = before.get(unit.key);
    if (old === undefined) say('work', all, null, unit);
    else if (old.words !== unit.words) {
      // The same counts by other stitches, or in another order, are other work.
      const ofRows = unit.entries.some((entry) => entry.unit !== 'step');
      const worked = all.filter(
        (size) => workOf(old, size) !== workOf(unit, size) || (ofRows && orderOf(old, size) !== orderOf(unit, size)),
      );
      const printed = all.filter((size) => statedOf(old, size) !== statedOf(unit, size));
      if (worked.length > 0) say('work', worked, old, unit);
      else if (printed.length > 0) say('count', printed, old, unit);
      else say('wording', [], old, unit);
    }
  }
  for (const unit of was) if (!now.has(unit.key)) say('work', all, unit, null);
  return found.sort((a, b) => a.line - b.line);
}

/** The first later instruction after which both versions have the same counts in those sizes. */
function agreeing(is: readonly Unit[], before: ReadonlyMap<string, Unit>, unit: Unit, sizes: readonly number[]): string | null {
  const at = is.indexOf(unit);
  if (at < 0) return null;
  const next = is.slice(at).find((each) => {
    const old = before.get(each.key);
    return old !== undefined && sizes.every((size) => afterOf(each, size) !== null && afterOf(each, size) === afterOf(old, size));
  });
  return next === undefined ? null : placeOf(next);
}

const placeOf = ({ section, label, words }: { section: string; label: string; words?: string }): string => {
  const name = label === '' ? `"${(words ?? '').slice(0, 40)}"` : label;
  return section === '' ? name : `${section}, ${name}`;
};

/** Lines of the new version outside the instructions that the older one does not have: materials, notes, headings. */
function otherLines(older: Proof, newer: Proof): number[] {
  const known = new Set(older.manuscript.source.split('\n').map((line) => line.trim()));
  const worked = unitsOf(newer).map((unit) => unit.entries[0]?.node.span);
  let start = 0;
  return newer.manuscript.source.split('\n').flatMap((line, at) => {
    const from = start;
    start += line.length + 1;
    const inside = worked.some((span) => span !== undefined && span.start < start && span.end > from);
    return line.trim() === '' || known.has(line.trim()) || inside ? [] : [at + 1];
  });
}

/** The slip as text, work first, wording folded into one line. */
export function errataText(older: Proof, newer: Proof, width = 80): string {
  const all = errataOf(older, newer);
  const serious = all.filter((each) => each.kind !== 'wording');
  const wording = all.filter((each) => each.kind === 'wording');
  const errors = newer.findings.filter((finding) => finding.level === 'error').length;
  const head = `${nameOf(newer)}: what has changed`;
  const blocks = serious.map((each) => entryText(newer, each, width));
  const rest =
    wording.length === 0
      ? []
      : wrap(
          `Changes of wording only, nothing to do: ${wording.map((each) => placeOf({ ...each, words: each.is ?? '' })).join('; ')}.`,
          width,
        );
  const lines = otherLines(older, newer);
  const elsewhere =
    lines.length === 0
      ? []
      : wrap(
          `Outside the instructions ${lines.length === 1 ? 'line' : 'lines'} ${listWords(lines.slice(0, 12).map(String))}${lines.length > 12 ? ' and others' : ''} of the new version ${lines.length === 1 ? 'differs' : 'differ'}: materials, notes and headings are not held against each other here.`,
          width,
        );
  const none = serious.length === 0 ? ['No change alters the work.'] : [];
  const checked =
    errors === 0
      ? 'The new version was worked in every size; no contradiction was found in it.'
      : `The new version was worked in every size, and ${plural(errors, 'place')} in it still ${errors === 1 ? 'stops' : 'stop'} the knitter: proof it before this goes out.`;
  return `${[
    head,
    ...none,
    ...blocks.flatMap((block) => ['', ...block]),
    ...(rest.length > 0 ? ['', ...rest] : []),
    ...(elsewhere.length > 0 ? ['', ...elsewhere] : []),
    '',
    ...wrap(checked, width),
  ].join('\n')}\n`;
}

function entryText(newer: Proof, each: Erratum, width: number): string[] {
  const many = newer.pattern.sizes.length > 1;
  const every = each.sizes.length === newer.pattern.sizes.length;
  const who = !many ? '' : every ? ', every size' : `, ${each.sizes.length === 1 ? 'size' : 'sizes'} ${listWords(each.sizes)}`;
  const words = each.is ?? each.was ?? '';
  const lines = [
    `${placeOf({ ...each, words })}${who}.`,
    ...(each.was === null ? ['New.'] : [`Was: "${each.was}"`]),
    ...(each.is === null ? ['Is left out.'] : [`Is: "${each.is}"`]),
    ...effect(each, many && !every),
  ];
  return lines.flatMap((line, at) => wrap(at === 0 ? line : `  ${line}`, width, at === 0 ? '' : '  '));
}

function effect(each: Erratum, someSizes: boolean): string[] {
  const others = someSizes ? ' Other sizes: nothing changes.' : '';
  if (each.kind === 'count') return [`The printed count was wrong, the work was right. If you followed the row, nothing changes.${others}`];
  const changed = each.countsWere.some((count, at) => count !== each.countsAre[at]);
  const counts =
    each.was === null || each.is === null
      ? ''
      : changed
        ? ` Stitches after it: ${each.countsWere.map((count) => count ?? '?').join(', ')} before, ${each.countsAre.map((count) => count ?? '?').join(', ')} now.`
        : ' The number of stitches after it is the same.';
  const again = !changed || each.agreesAfter === null ? '' : ` The counts of both versions agree again after ${each.agreesAfter}.`;
  return [`You are affected if you have passed this place${someSizes ? ' in one of these sizes' : ''}.${counts}${again}${others}`];
}

/** The same as data. */
export const errataJson = (older: Proof, newer: Proof): string =>
  `${JSON.stringify({ title: nameOf(newer), older: older.path, newer: newer.path, changes: errataOf(older, newer) }, null, 2)}\n`;
