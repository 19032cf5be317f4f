/** What stands before the instructions: sizes, measures, gauge, yarn, needles, notions, abbreviations, notes. */
import type { Sized } from '../../../grammar/count.ts';
import type { Span } from '../../manuscript/manuscript.ts';

/** A number per size with a unit, as printed, e.g. `89 [100: 111] cm`. */
export interface Measure {
  readonly values: Sized;
  /** Upper ends where a value is a range: `81–86 (92–97) cm`. */
  readonly upper: Sized | null;
  readonly unit: 'cm' | 'mm' | 'in' | 'm' | 'yd' | 'g' | 'oz';
  readonly span: Span;
}

/** The same measure in two units: `24 in (61 cm)`. */
export interface MeasurePair {
  readonly first: Measure;
  readonly second: Measure;
  /** "Bust, buttoned", "Length to shoulder", or the words before it. */
  readonly name: string;
}

export interface NamedMeasure {
  /** As printed: "Actual bust", "Sleeve seam". */
  readonly name: string;
  /** to fit, finished, or not said. */
  readonly kind: 'toFit' | 'finished' | 'other';
  readonly measures: readonly Measure[];
  readonly span: Span;
}

export interface Gauge {
  /** Stitches and rows over `over`; null where not given. */
  readonly stitches: number | null;
  readonly rows: number | null;
  readonly unit: 'rows' | 'rounds' | null;
  /** What the numbers are measured over: 10 cm, 4 in, 1 in; both where both are printed. */
  readonly over: readonly Measure[];
  readonly fabric: string | null;
  readonly needle: string | null;
  readonly blocked: boolean;
  readonly span: Span;
  readonly stitchSpan: Span | null;
}

export interface Needle {
  readonly mm: number | null;
  readonly us: string | null;
  readonly uk: string | null;
  readonly kind: 'straight' | 'circular' | 'doublePointed' | 'spare' | null;
  readonly length: readonly Measure[];
  /** "for the ribbing", "main fabric", "larger". */
  readonly role: string | null;
  readonly span: Span;
}

export interface Yarn {
  /** Colour letter or name the instructions use: A, MC. */
  readonly colour: string | null;
  readonly balls: Sized | null;
  /** Length and weight of one ball or skein, in every unit printed. */
  readonly lengthPerBall: readonly Measure[];
  readonly weightPerBall: readonly Measure[];
  /** Total length per size. */
  readonly total: readonly Measure[];
  readonly weightClass: string | null;
  readonly text: string;
  readonly span: Span;
}

export interface Notion {
  /** In the singular and lower case: "stitch marker", "button", "cable needle", "stitch holder". */
  readonly name: string;
  readonly count: Sized | null;
  readonly span: Span;
}

export interface Abbreviation {
  /** As printed: "k2tog", "st(s)". Every form it stands for: ["st", "sts"]. */
  readonly term: string;
  readonly forms: readonly string[];
  readonly meaning: string;
  readonly span: Span;
  readonly meaningSpan: Span;
}

export interface SizeList {
  readonly names: readonly string[];
  readonly span: Span;
  /**
   * Where the sizes were found: a directive, the YAML at the top, a sizes line or table, the note on how to read the
   * figures, a "to fit" line that gives the only names, or only the length of most lists of the draft (`lists`; the
   * names are then 1 to S, and nothing declares them).
   */
  readonly from?: 'directive' | 'yaml' | 'line' | 'table' | 'note' | 'toFit' | 'lists';
}

export interface FrontMatter {
  readonly title: { readonly text: string; readonly span: Span } | null;
  readonly sizes: SizeList | null;
  readonly measures: readonly NamedMeasure[];
  readonly pairs: readonly MeasurePair[];
  readonly gauges: readonly Gauge[];
  readonly needles: readonly Needle[];
  readonly yarns: readonly Yarn[];
  readonly notions: readonly Notion[];
  readonly abbreviations: readonly Abbreviation[];
  /** Spans of blocks that were read as front matter and need no reading as instructions. */
  readonly blocks: readonly Span[];
}
