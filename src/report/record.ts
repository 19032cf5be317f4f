/**
 * The record of findings an old catalogue is known to have, so that only new ones fail a run. A finding is known size by
 * size, by its rule, its place in the pattern and the words at fault, never by its line: text that moves keeps its findings,
 * and a size that is put right, or goes wrong, leaves what is known of the others alone. A record only ever grows shorter.
 */
import type { Finding } from '../../rules/rule.ts';
import type { Proof } from '../index.ts';
import { inPlaceOrder, listWords } from './place.ts';
import { valueAt } from './sum.ts';

/** One known finding. */
export interface Known {
  readonly rule: string;
  readonly section: string | null;
  readonly row: string | null;
  readonly sizes: readonly string[];
  /** The words at fault, on one line, the first 160 characters of them. */
  readonly words: string;
  /** For every size the number stated and the number replayed, where the finding has them. */
  readonly numbers?: readonly (readonly (number | null)[])[];
}

/** Known findings by draft. */
export type Record = Readonly<{ [path: string]: readonly Known[] }>;

const longestWords = 160;

export function knownOf(proof: Proof, finding: Finding): Known {
  const words = proof.manuscript.source.slice(finding.span.start, finding.span.end).replace(/\s+/g, ' ').trim();
  const numbered = finding.stated !== null || finding.replayed !== null;
  return {
    rule: finding.rule,
    section: finding.section,
    row: finding.row,
    sizes: finding.sizes.map((size) => proof.pattern.sizes[size] ?? ''),
    words: words.slice(0, longestWords),
    ...(numbered && finding.sizes.length > 0
      ? { numbers: finding.sizes.map((_, at) => [valueAt(finding.stated, at), valueAt(finding.replayed, at)]) }
      : {}),
  };
}

/** A finding or an entry of the record with the sizes of it that have no counterpart yet. */
interface Open {
  readonly known: Known;
  /** Indexes into its sizes; a finding in which sizes play no part has one nameless one. */
  readonly left: Set<number>;
}

const openOf = (known: Known): Open => ({ known, left: new Set(known.sizes.length === 0 ? [0] : known.sizes.keys()) });
const sizeOf = ({ known }: Open, at: number) => known.sizes[at] ?? null;
const numbersOf = ({ known }: Open, at: number) => known.numbers?.[at] ?? null;

/** Where the pattern's own words place it: the nearest match first, then without section and row, which may be renamed. */
const byWords: readonly ((known: Known) => string)[] = [
  (known) => JSON.stringify([known.rule, known.section, known.row, known.words]),
  (known) => JSON.stringify([known.rule, known.row, known.words]),
  (known) => JSON.stringify([known.rule, known.words]),
];
/** Where words of another size have changed, the numbers of this one say that it is the same. */
const byPlace = (known: Known) => JSON.stringify([known.rule, known.section, known.row]);

type Same = (finding: Open, at: number, known: Open, other: number) => boolean;
const sameSize: Same = (finding, at, known, other) => sizeOf(finding, at) === sizeOf(known, other);
const sameNumbers: Same = (finding, at, known, other) => {
  const numbers = numbersOf(finding, at);
  return numbers !== null && sameSize(finding, at, known, other) && JSON.stringify(numbers) === JSON.stringify(numbersOf(known, other));
};

export interface Compared {
  readonly fresh: readonly Finding[];
  readonly known: readonly Finding[];
  /** What is left of the record: findings that are no longer made are gone for good. */
  readonly left: readonly Known[];
}

/** Sets findings against what is known of the draft; each entry of the record accepts one finding. */
export function compare(proof: Proof, record: readonly Known[]): Compared {
  const entries = record.map(openOf);
  const findings = new Map(inPlaceOrder(proof.findings).map((finding) => [finding, openOf(knownOf(proof, finding))]));
  const free = new Set(entries);
  const match = (key: (known: Known) => string, same: Same, whole: boolean) => {
    const byKey = new Map<string, Open[]>();
    for (const entry of free) byKey.set(key(entry.known), [...(byKey.get(key(entry.known)) ?? []), entry]);
    for (const finding of findings.values()) {
      if (finding.left.size === 0) continue;
      const entry = byKey.get(key(finding.known))?.find((each) => free.has(each) && covers(finding, each, same, whole));
      if (entry === undefined) continue;
      take(finding, entry, same);
      free.delete(entry);
    }
  };
  for (const whole of [true, false]) for (const key of byWords) match(key, sameSize, whole);
  match(byPlace, sameNumbers, false);
  return {
    fresh: proof.findings.flatMap((finding) => part(proof, finding, findings.get(finding), true)),
    known: proof.findings.flatMap((finding) => part(proof, finding, findings.get(finding), false)),
    left: entries.flatMap((entry) => rest(entry)),
  };
}

function counterpart(finding: Open, at: number, entry: Open, same: Same): number | undefined {
  return [...entry.left].find((other) => same(finding, at, entry, other));
}

function covers(finding: Open, entry: Open, same: Same, whole: boolean): boolean {
  const met = [...finding.left].filter((at) => counterpart(finding, at, entry, same) !== undefined).length;
  return whole ? met === finding.left.size && met === entry.left.size : met > 0;
}

function take(finding: Open, entry: Open, same: Same): void {
  for (const at of [...finding.left]) {
    const other = counterpart(finding, at, entry, same);
    if (other === undefined) continue;
    finding.left.delete(at);
    entry.left.delete(other);
  }
}

/** The finding in the sizes that are new, or in those that are known. */
function part(proof: Proof, finding: Finding, open: Open | undefined, fresh: boolean): Finding[] {
  const all = finding.sizes.length === 0 ? [0] : [...finding.sizes.keys()];
  const kept = all.filter((at) => open?.left.has(at) === fresh);
  if (kept.length === 0) return [];
  if (kept.length === all.length) return [finding];
  const some = (values: Finding['stated']) =>
    values === null || typeof values === 'number' ? values : kept.flatMap((at) => (at < values.length ? [values[at] as number] : []));
  const known = all.filter((at) => !kept.includes(at)).map((at) => proof.pattern.sizes[finding.sizes[at] ?? 0] ?? '');
  return [
    {
      ...finding,
      sizes: kept.map((at) => finding.sizes[at] as number),
      stated: some(finding.stated),
      replayed: some(finding.replayed),
      ...(fresh
        ? {
            evidence: [
              ...(finding.evidence ?? []),
              `In ${known.length === 1 ? 'size' : 'sizes'} ${listWords(known)} it is known from the record.`,
            ],
          }
        : {}),
    },
  ];
}

/** What an entry still stands for: the sizes in which it was found again. */
function rest({ known, left }: Open): Known[] {
  const all = known.sizes.length === 0 ? [0] : [...known.sizes.keys()];
  const kept = all.filter((at) => !left.has(at));
  if (kept.length === 0) return [];
  if (kept.length === all.length) return [known];
  const { numbers, ...words } = known;
  return [
    {
      ...words,
      sizes: kept.map((at) => known.sizes[at] as string),
      ...(numbers === undefined ? {} : { numbers: kept.map((at) => numbers[at] ?? []) }),
    },
  ];
}

/** A record of everything that is found now. */
export function recordOf(proof: Proof): readonly Known[] {
  return inPlaceOrder(proof.findings).map((finding) => knownOf(proof, finding));
}

/** The record as a file: drafts in the order of their names, one finding a line, so that a shrinking is seen at a glance. */
export function recordText(record: Record): string {
  const paths = Object.keys(record)
    .filter((path) => (record[path] ?? []).length > 0)
    .sort((a, b) => (a < b ? -1 : a > b ? 1 : 0));
  const drafts = paths.map(
    (path) => `    ${JSON.stringify(path)}: [\n${(record[path] ?? []).map((known) => `      ${JSON.stringify(known)}`).join(',\n')}\n    ]`,
  );
  return `{\n  "version": 1,\n  "drafts": {${drafts.length === 0 ? '' : `\n${drafts.join(',\n')}\n  `}}\n}\n`;
}

/** The record of a file, or one sentence why it is none. */
export function readRecord(text: string): Record | string {
  let value: unknown;
  try {
    value = JSON.parse(text);
  } catch {
    return 'it is no record of findings: it is not JSON';
  }
  if (!isObject(value) || value['version'] !== 1 || !isObject(value['drafts']))
    return 'it is no record of findings that this version can read';
  const drafts: { [path: string]: readonly Known[] } = Object.create(null);
  for (const [path, list] of Object.entries(value['drafts'])) {
    if (!Array.isArray(list) || !list.every(isKnown)) return `its entries for ${path} cannot be read`;
    drafts[path] = list;
  }
  return drafts;
}

const isObject = (value: unknown): value is { readonly [key: string]: unknown } =>
  typeof value === 'object' && value !== null && !Array.isArray(value);
const isWord = (value: unknown) => value === null || typeof value === 'string';

function isKnown(value: unknown): value is Known {
  return (
    isObject(value) &&
    typeof value['rule'] === 'string' &&
    typeof value['words'] === 'string' &&
    isWord(value['section']) &&
    isWord(value['row']) &&
    Array.isArray(value['sizes']) &&
    value['sizes'].every((size) => typeof size === 'string') &&
    (value['numbers'] === undefined || isNumbers(value['numbers'], value['sizes'].length))
  );
}

const isNumbers = (value: unknown, sizes: number) =>
  Array.isArray(value) &&
  value.length === sizes &&
  value.every((each) => Array.isArray(each) && each.every((number) => number === null || typeof number === 'number'));
