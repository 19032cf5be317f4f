/**
 * The library's face: pure functions of text and options, no file access, so that the same code runs in the command
 * line, in an editor, in CI and in a browser.
 */
import type { Manuscript } from './manuscript/manuscript.ts';
import type { Pattern } from './pattern/pattern.ts';
import type { Replay } from './replay/replay.ts';
import type { Finding } from '../rules/rule.ts';

/** Everything that is known of one draft. Reports are made from it. */
export interface Proof {
  readonly path: string;
  readonly manuscript: Manuscript;
  readonly pattern: Pattern;
  readonly replay: Replay;
  readonly findings: readonly Finding[];
}
