/**
 * The record of findings an old catalogue is known to have, so that only new ones fail a run. A finding is known by the
 * rule, the words at fault and their place in the pattern, never by its line: text that moves keeps its findings.
 * A record only ever grows shorter.
 */
import type { Finding } from '../../rules/rule.ts';
import type { Proof } from '../index.ts';
import { inPlaceOrder } from './place.ts';

/** One known finding. */
export interface Known {
  readonly rule: string;
  readonly section: string | null;
  readonly row: string | null;
  readonly sizes: readonly string[];
  /** The words at fault, on one line, the first 160 characters of them. */
  readonly words: string;
}

/** Known findings by draft. */
export type Record = Readonly<{ [path: string]: readonly Known[] }>;

const longestWords = 160;

export function knownOf(proof: Proof, finding: Finding): Known {
  const words = proof.manuscript.source.slice(finding.span.start, finding.span.end).replace(/\s+/g, ' ').trim();
  return {
    rule: finding.rule,
    section: finding.section,
    row: finding.row,
    sizes: finding.sizes.map((size) => proof.pattern.sizes[size] ?? ''),
    words: words.slice(0, longestWords),
  };
}

/** Where the pattern's own words place it: the nearest match first, then without section and row, which may be renamed. */
const keys: readonly ((known: Known) => string)[] = [
  (known) => JSON.stringify([known.rule, known.section, known.row, known.sizes, known.words]),
  (known) => JSON.stringify([known.rule, known.row, known.sizes, known.words]),
  (known) => JSON.stringify([known.rule, known.sizes, known.words]),
];

export interface Compared {
  readonly fresh: readonly Finding[];
  readonly known: readonly Finding[];
  /** What is left of the record: findings that are no longer made are gone for good. */
  readonly left: readonly Known[];
}

/** Sets findings against what is known of the draft; each entry of the record accepts one finding. */
export function compare(proof: Proof, record: readonly Known[]): Compared {
  const open = new Set(record);
  const waiting = new Map(inPlaceOrder(proof.findings).map((finding) => [finding, knownOf(proof, finding)]));
  const matched = new Map<Finding, Known>();
  for (const key of keys) {
    const byKey = new Map<string, Known[]>();
    for (const known of open) {
      const same = byKey.get(key(known));
      if (same === undefined) byKey.set(key(known), [known]);
      else same.push(known);
    }
    for (const [finding, wanted] of [...waiting]) {
      const known = byKey.get(key(wanted))?.shift();
      if (known === undefined) continue;
      matched.set(finding, known);
      open.delete(known);
      waiting.delete(finding);
    }
  }
  const used = new Set(matched.values());
  return {
    fresh: proof.findings.filter((finding) => !matched.has(finding)),
    known: proof.findings.filter((finding) => matched.has(finding)),
    left: record.filter((known) => used.has(known)),
  };
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
    value['sizes'].every((size) => typeof size === 'string')
  );
}
