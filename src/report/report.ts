/**
 * A report is made draft by draft: each draft adds its part, and is then forgotten. A part holds text and numbers only, so
 * that it may be made in another thread, and a run over ten thousand drafts needs no more room than its report.
 */
import type { Level, Rule } from '../../rules/rule.ts';
import type { Proof } from '../index.ts';
import type { ReportInput, Tool, Unreadable } from './input.ts';
import { levels } from './levels.ts';
import { hasSizes, printedPath } from './place.ts';

/** What is known before the first draft is read. */
export interface Run {
  readonly tool: Tool;
  readonly rules: readonly Rule[];
  /** How many drafts there are, those that turn out unreadable included. */
  readonly drafts: number;
}

/** What is kept of every draft. */
export interface Digest {
  readonly path: string;
  /** The title, or the path where the draft has none. */
  readonly name: string;
  readonly sizes: readonly string[];
  readonly hasSizes: boolean;
  /** How many findings of each level are reported. */
  readonly found: Readonly<Record<Level, number>>;
  /** Findings let stand by the draft itself, and those an older record knows. */
  readonly withheld: number;
  readonly known: number;
  readonly steps: number;
  readonly notRead: number;
}

export interface Assembly<Part> {
  /** What can be written once this part is there; drafts come in order. */
  add(part: Part, digest: Digest): string;
  /** The rest, in pieces: a page may be longer than one text can be. */
  end(unreadable: readonly Unreadable[]): readonly string[];
}

export interface Report<Part> {
  /** `index` numbers the drafts of the run from 0. */
  part(proof: Proof, index: number, run: Run): Part;
  assemble(run: Run): Assembly<Part>;
}

export function digestOf(proof: Proof): Digest {
  const { reading, sizes } = proof.pattern;
  return {
    path: proof.path,
    name: nameOf(proof),
    sizes,
    hasSizes: hasSizes(proof),
    found: foundIn(proof.findings.map((finding) => finding.level)),
    withheld: proof.withheld?.length ?? 0,
    known: proof.known?.length ?? 0,
    steps: reading.steps,
    notRead: reading.notRead.length,
  };
}

export function foundIn(all: readonly Level[]): Record<Level, number> {
  return Object.fromEntries(levels.map((level) => [level, all.filter((each) => each === level).length])) as Record<Level, number>;
}

/** The title, or the path where the draft has none. */
export function nameOf(proof: Proof): string {
  return proof.pattern.title === '' ? printedPath(proof.path) : proof.pattern.title;
}

/** The whole report of drafts that are all at hand. */
export function whole<Part>(report: Report<Part>, input: ReportInput): string {
  const run = { tool: input.tool, rules: input.rules, drafts: input.proofs.length + input.unreadable.length };
  const assembly = report.assemble(run);
  const parts = input.proofs.map((proof, index) => assembly.add(report.part(proof, index, run), digestOf(proof)));
  return [...parts, ...assembly.end(input.unreadable)].join('');
}
