/** Reads `house-style.yaml`. Nothing is guessed: an unknown key or word is a problem that names the nearest known one. */
import { isMap, isScalar, LineCounter, type Node, type Pair, parseDocument, type Scalar, type YAMLMap } from 'yaml';
import type { Level } from '../../rules/rule.ts';
import { type HouseStyle, noHouse } from './house-style.ts';
import { nearest } from './nearest.ts';
import { houseStyleSchema, type Setting } from './schema.ts';

export interface HouseStyleProblem {
  /** Line of the file, from 1. */
  readonly line: number;
  /** One sentence, without the place. */
  readonly message: string;
}

/** The settings, or every problem that keeps them from being used. */
export type HouseStyleReading =
  | { readonly house: HouseStyle; readonly problems: readonly [] }
  | { readonly house: null; readonly problems: readonly HouseStyleProblem[] };

interface Reader {
  readonly lines: LineCounter;
  readonly problems: HouseStyleProblem[];
  /** Ids of the rules there are; null where the caller does not know them. */
  readonly ruleIds: readonly string[] | null;
}

type Values = Record<string, unknown>;

/** Reads the text of a house style. With `ruleIds`, a level for a rule that does not exist is a problem too. */
export function readHouseStyle(yamlText: string, ruleIds: readonly string[] | null = null): HouseStyleReading {
  const lines = new LineCounter();
  const document = parseDocument(yamlText, { lineCounter: lines, prettyErrors: false });
  const reader: Reader = { lines, problems: [], ruleIds };
  for (const error of document.errors) report(reader, error.pos[0], yamlSentence(error.code));
  const contents = document.contents as Node | null;
  if (reader.problems.length > 0) return { house: null, problems: reader.problems };
  if (contents === null || (isScalar(contents) && contents.value === null)) return { house: noHouse, problems: [] };
  if (!isMap(contents)) {
    report(reader, contents.range?.[0] ?? 0, 'a house style is a list of settings such as "terms: UK", one a line.');
    return { house: null, problems: reader.problems };
  }
  const values = readMap(reader, contents, houseStyleSchema, '');
  return reader.problems.length > 0 ? { house: null, problems: reader.problems } : { house: houseOf(values), problems: [] };
}

function houseOf(values: Values): HouseStyle {
  return {
    rules: (values.rules as Record<string, Level | 'off'> | undefined) ?? noHouse.rules,
    terms: (values.terms as HouseStyle['terms'] | undefined) ?? null,
    tolerance: { ...noHouse.tolerance, ...(values.tolerance as Partial<HouseStyle['tolerance']> | undefined) },
    labels: (values.labels as HouseStyle['labels'] | undefined) ?? null,
    repeats: (values.repeats as HouseStyle['repeats'] | undefined) ?? null,
    counts: (values.counts as HouseStyle['counts'] | undefined) ?? null,
  };
}

function yamlSentence(code: string): string {
  if (code === 'DUPLICATE_KEY') return 'this setting is given twice; keep one.';
  if (code === 'TAB_AS_INDENT') return 'a line is set in with a tab; YAML wants spaces.';
  return 'this cannot be read as YAML; look for a missing colon, quote or space on this line and the one before.';
}

function report(reader: Reader, offset: number, message: string): void {
  reader.problems.push({ line: reader.lines.linePos(offset).line || 1, message });
}

const offsetOf = (node: unknown) => (node as { range?: readonly number[] | null } | null)?.range?.[0] ?? 0;

function keyOf(pair: Pair): string {
  return isScalar(pair.key) ? String((pair.key as Scalar).value) : '';
}

function readMap(reader: Reader, map: YAMLMap, keys: Readonly<Record<string, Setting>>, below: string): Values {
  const values: Values = {};
  for (const pair of map.items) {
    const key = keyOf(pair);
    const setting = Object.hasOwn(keys, key) ? keys[key] : undefined;
    if (setting === undefined) {
      report(reader, offsetOf(pair.key), unknownSentence(`${named(key, below)} is no setting`, key, Object.keys(keys)));
      continue;
    }
    const value = readSetting(reader, pair, setting, key, below);
    if (value !== undefined) values[key] = value;
  }
  return values;
}

/** "cm" under "tolerance": as it stands in the file. */
const named = (key: string, below: string): string => (below === '' ? `"${key}"` : `"${key}" under "${below}"`);

function unknownSentence(fault: string, word: string, known: readonly string[]): string {
  const near = nearest(word, known);
  return near === null ? `${fault}; there are ${known.join(', ')}.` : `${fault}; the nearest is "${near}".`;
}

/** The value, or undefined where none is given or a problem was reported. */
function readSetting(reader: Reader, pair: Pair, setting: Setting, key: string, below: string): unknown {
  const node = pair.value;
  const name = named(key, below);
  if (node === null || (isScalar(node) && node.value === null)) return undefined;
  switch (setting.kind) {
    case 'choice':
      return readWord(reader, node, setting.words, name);
    case 'amount':
      if (isScalar(node) && typeof node.value === 'number' && Number.isFinite(node.value) && node.value >= 0) return node.value;
      report(reader, offsetOf(node), `${name} takes a number, nought or more.`);
      return undefined;
    case 'group':
      if (isMap(node)) return readMap(reader, node, setting.keys, key);
      report(reader, offsetOf(node), `${name} takes settings of its own below it: ${Object.keys(setting.keys).join(', ')}.`);
      return undefined;
    case 'ruleLevels':
      if (isMap(node)) return readLevels(reader, node, setting.words);
      report(reader, offsetOf(node), `${name} takes a list of rules below it, each with its level, such as "count-mismatch: query".`);
      return undefined;
  }
}

function readWord(reader: Reader, node: unknown, words: readonly string[], name: string): string | undefined {
  const value = isScalar(node) ? node.value : null;
  if (typeof value === 'string' && words.includes(value)) return value;
  const said = typeof value === 'string' ? value : '';
  const near = said === '' ? null : nearest(said, words);
  const hint = near === null ? '' : ` The nearest is "${near}".`;
  report(reader, offsetOf(node), `${name} takes ${words.map((word) => `"${word}"`).join(' or ')}.${hint}`);
  return undefined;
}

function readLevels(reader: Reader, map: YAMLMap, words: readonly string[]): Values {
  const levels: Values = {};
  for (const pair of map.items) {
    const id = keyOf(pair);
    if (reader.ruleIds !== null && !reader.ruleIds.includes(id)) {
      const near = nearest(id, reader.ruleIds);
      const hint = near === null ? 'the command "rowproof rules" lists them' : `the nearest is "${near}"`;
      report(reader, offsetOf(pair.key), `there is no rule "${id}"; ${hint}.`);
      continue;
    }
    const level = readWord(reader, pair.value, words, named(id, 'rules'));
    // Set by definition, so that a key such as "__proto__" is a key like any other.
    if (level !== undefined) Object.defineProperty(levels, id, { value: level, enumerable: true, writable: true, configurable: true });
  }
  return levels;
}
