/**
 * A draft as blocks of Markdown with exact places. This room knows Markdown and nothing of knitting.
 *
 * All offsets count UTF-16 units into the file as the author saved it, a byte order mark included, so that
 * `source.slice(start, end)` is always the author's text.
 */

/** A stretch of the author's file, end exclusive. */
export interface Span {
  readonly start: number;
  readonly end: number;
}

/**
 * Text with its place. `text` is exactly as long as `source.slice(start, end)`: what belongs to Markdown and not to
 * the sentence (quote prefixes, the pair of stars around a bold label, the backslash of an escape, comments) is
 * replaced by spaces, smart quotes by straight ones and no-break spaces by spaces, so index `i` of `text` is
 * offset `start + i` of the file. Line ends stay as `\n` (and `\r` becomes a space).
 */
export interface Passage extends Span {
  readonly text: string;
  /** Stretches that stood in bold or italics, for labels such as `**Row 1 (RS):**`. */
  readonly emphasis: readonly Span[];
}

export interface Heading extends Passage {
  readonly kind: 'heading';
  /** 1 to 6. */
  readonly depth: number;
}

export interface Paragraph extends Passage {
  readonly kind: 'paragraph';
  /** The paragraph stands in a quotation. */
  readonly quoted: boolean;
}

/** One item of a list. A bullet that is the opening mark of a repeat (`* K2, p2; rep from *`) belongs to the text. */
export interface Item extends Passage {
  readonly kind: 'item';
  /** The number a reader sees, from the author's own characters; null for bullets. */
  readonly number: number | null;
  /** Where the number or bullet stands. */
  readonly marker: Span;
  /** Which list of the draft, counted from 0, and how deep. */
  readonly list: number;
  readonly depth: number;
}

export interface TableRow extends Span {
  readonly kind: 'tableRow';
  /** Which table of the draft, counted from 0. */
  readonly table: number;
  readonly header: boolean;
  readonly cells: readonly Passage[];
}

/** `::name[label]{key=value}` on a line of its own, or the opening of a `:::name` block. */
export interface Directive extends Span {
  readonly kind: 'directive';
  readonly name: string;
  readonly label: Passage | null;
  readonly attributes: Readonly<Record<string, string>>;
}

/** YAML between `---` lines at the very top. */
export interface FrontMatter extends Passage {
  readonly kind: 'frontMatter';
}

/** A passage too long, or blocks within blocks too deep, to be read. */
export interface Overlong extends Span {
  readonly kind: 'overlong';
  readonly why: 'long' | 'deep';
}

/** Fenced code, and `---` or `***` alone on a line. */
export interface Fence extends Passage {
  readonly kind: 'fence';
  readonly language: string | null;
  /** An unclosed fence swallows the rest of the draft. */
  readonly closed: boolean;
}
export interface Break extends Span {
  readonly kind: 'break';
}

export type Block = Heading | Paragraph | Item | TableRow | Directive | FrontMatter | Fence | Break | Overlong;

/** Markdown that hides or changes instructions when the draft is shown as a page. */
export interface Hazard extends Span {
  readonly kind: 'unclosedFence' | 'unclosedContainer' | 'listNumbers' | 'preview';
  readonly message: string;
}

export interface Manuscript {
  readonly source: string;
  readonly blocks: readonly Block[];
  readonly hazards: readonly Hazard[];
  /** Line and column, from 1, of an offset. */
  place(offset: number): { readonly line: number; readonly column: number };
}
