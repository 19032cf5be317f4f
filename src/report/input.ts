/** What every report is made from. Reports are pure: the same input gives the same bytes. */
import type { Rule } from '../../rules/rule.ts';
import type { Proof } from '../index.ts';

/** A draft that could not be read, with one clear sentence saying why. */
export interface Unreadable {
  readonly path: string;
  readonly sentence: string;
}

export interface Tool {
  readonly name: string;
  readonly version: string;
}

export interface ReportInput {
  readonly tool: Tool;
  readonly proofs: readonly Proof[];
  readonly rules: readonly Rule[];
  readonly unreadable: readonly Unreadable[];
}
