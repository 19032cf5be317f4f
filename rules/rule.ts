/** What a rule is, and what it is given. A rule reads; it never parses text and never replays anything itself. */

import type { HouseStyle } from '../src/house-style/house-style.ts';
import type { Manuscript, Span } from '../src/manuscript/manuscript.ts';
import type { Pattern } from '../src/pattern/pattern.ts';
import type { Replay } from '../src/replay/replay.ts';

/** error: the replay proves that a knitter is stopped or gets the wrong fabric; query: a question to the author; style: house style. */
export type Level = 'error' | 'query' | 'style';

/** A small change that would make the place work. */
export interface Edit {
  readonly span: Span;
  readonly text: string;
}

export interface Finding {
  readonly rule: string;
  readonly level: Level;
  /** The words at fault. */
  readonly span: Span;
  /** Heading it stands under, as printed. */
  readonly section: string | null;
  /** Label as printed: "Row 5". */
  readonly row: string | null;
  /** Indexes of the sizes it holds for; empty when sizes play no part. */
  readonly sizes: readonly number[];
  /** What the knitter would run into, in an editor's words, with the numbers. */
  readonly message: string;
  /** The number the draft states and the number the replay makes, one value or one per size of `sizes`. */
  readonly stated: number | readonly number[] | null;
  readonly replayed: number | readonly number[] | null;
  /** Set only when exactly one small edit remains. */
  readonly fix: Edit | null;
  /** Evidence, one sentence each: what the neighbours support. */
  readonly evidence?: readonly string[];
  /** Edits that would fit, at most three. */
  readonly wouldFit?: readonly string[];
  /** The same edits, in the same order, as changes of the text. */
  readonly edits?: readonly Edit[];
  /** Other places that belong to the same slip. */
  readonly also?: readonly Span[];
}

/** A small draft that shows a rule at work. `finds` is how often the rule speaks (default once). */
export interface Example {
  readonly draft: string;
  readonly finds?: number;
}

export interface Context {
  readonly manuscript: Manuscript;
  readonly pattern: Pattern;
  readonly replay: Replay;
  readonly house: HouseStyle;
}

export interface Rule {
  /** Plain trade words with hyphens; the name of its file. */
  readonly id: string;
  readonly level: Level;
  /** One line: what is checked. */
  readonly title: string;
  /** What it means for the knitter. */
  readonly meaning: string;
  /** Why it matters. */
  readonly reason: string;
  readonly needsReplay: boolean;
  /** Runs only when the house style asks for it. */
  readonly offByDefault?: boolean;
  readonly wrong: Example;
  readonly right: Example;
  check(context: Context): readonly Finding[];
}
