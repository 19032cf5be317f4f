/** What the draft instructs as a whole. This room knows no needles. */
import type { Label, Row, SizeBlock, Span, Statement, Unread } from '../../grammar/tree.ts';
import type { Vocabulary } from '../../grammar/vocabulary.ts';
import type { FrontMatter } from './front/front-matter.ts';

/** A part of the draft under one heading (or a run-in title such as "Shape armholes"). */
export interface Section {
  readonly title: string;
  readonly span: Span;
  readonly depth: number;
  /**
   * piece: starts fresh or takes up held stitches · stage: goes on with what is on the needles ·
   * stitches: defines a stitch pattern · front: sizes, materials, gauge, notes · finishing · other: prose.
   */
  readonly kind: 'piece' | 'stage' | 'stitches' | 'front' | 'finishing' | 'other';
  /** Index of the piece it belongs to, in the order of the draft. */
  readonly piece: number | null;
  readonly statements: readonly Statement[];
  /** "multiple of 8 + 3" in force for the rows of this section. */
  readonly multiple: { readonly of: number; readonly plus: number; readonly rows: number | null; readonly span: Span } | null;
  /** "(make 2)", "(both alike)". */
  readonly times: number;
}

/** Share of the instructions that was understood. */
export interface Reading {
  readonly steps: number;
  readonly read: number;
  readonly notRead: readonly Unread[];
}

export interface Pattern {
  readonly title: string;
  /** Names of the sizes in order; `['one']` when the draft has none. */
  readonly sizes: readonly string[];
  readonly sections: readonly Section[];
  readonly front: FrontMatter;
  readonly vocabulary: Vocabulary;
  readonly reading: Reading;
  /** Rows of the draft by label name, for rules that look at numbering. */
  readonly rows: readonly { readonly section: Section; readonly row: Row; readonly label: Label }[];
  readonly sizeBlocks: readonly SizeBlock[];
}
