/**
 * The library's face: pure functions of text and options, no file access, so that the same code runs in the command
 * line, in an editor, in CI and in a browser.
 */
import { rules } from '../rules/index.ts';
import type { Context, Finding, Rule } from '../rules/rule.ts';
import { staleStet } from '../rules/stale-stet.ts';
import type { HouseStyle } from './house-style/house-style.ts';
import { noHouse } from './house-style/house-style.ts';
import type { Manuscript } from './manuscript/manuscript.ts';
import { readManuscript } from './manuscript/read.ts';
import type { Pattern } from './pattern/pattern.ts';
import { readPattern } from './pattern/read.ts';
import type { Replay } from './replay/replay.ts';
import { replayPattern } from './replay/run.ts';
import { applyStets, type Withheld } from './stet.ts';

export { replayRow } from './replay/replay-row.ts';
export { instructionTree } from './tree.ts';
export { rules };

/** Everything that is known of one draft. Reports are made from it. */
export interface Proof {
  readonly path: string;
  readonly manuscript: Manuscript;
  readonly pattern: Pattern;
  readonly replay: Replay;
  readonly findings: readonly Finding[];
  /** Findings the draft itself lets stand, each with its reason. */
  readonly withheld?: readonly Withheld[];
  /** Findings that an older record of the house knows; they are not among `findings`. */
  readonly known?: readonly Finding[];
}

export interface ProofOptions {
  /** Name of the draft in reports. */
  readonly path?: string;
  readonly house?: HouseStyle;
}

/** Reads a draft, works it in every size and says what a technical editor would query. Never throws, whatever the text. */
export function proof(source: string, options: ProofOptions = {}): Proof {
  const house = options.house ?? noHouse;
  const manuscript = readManuscript(source);
  const pattern = readPattern(manuscript);
  const replay = replayPattern(pattern, (span) => source.slice(span.start, span.end));
  const context: Context = { manuscript, pattern, replay, house };
  const findings = rules.flatMap((rule) => atLevel(rule, house, () => rule.check(context)));
  const stetted = applyStets(
    manuscript,
    findings,
    rules.map((rule) => rule.id),
  );
  const all = [...stetted.findings, ...atLevel(staleStet, house, () => stetted.remarks)];
  return { path: options.path ?? '', manuscript, pattern, replay, findings: inOrder(all), withheld: stetted.withheld };
}

/** What a rule finds, at the level the house gives it. */
function atLevel(rule: Rule, house: HouseStyle, found: () => readonly Finding[]): readonly Finding[] {
  const level = house.rules[rule.id];
  if (level === 'off' || (level === undefined && rule.offByDefault === true)) return [];
  return level === undefined ? found() : found().map((finding) => ({ ...finding, level }));
}

function inOrder(findings: readonly Finding[]): Finding[] {
  return [...findings].sort(
    (a, b) => a.span.start - b.span.start || a.span.end - b.span.end || (a.rule < b.rule ? -1 : a.rule > b.rule ? 1 : 0),
  );
}
