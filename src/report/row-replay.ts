/** One row worked stitch by stitch in one size, for whoever must confirm a finding. */
import type { Side, Span } from '../../grammar/tree.ts';

/** One instruction of the row, or one pass of a repeat. */
export interface RowReplayLine {
  /** The words worked: "k2tog", "[yo, k2tog, k3]". */
  readonly step: string;
  readonly span: Span;
  /** Stitches on the left and the right needle once the step is worked; null where that is not known. */
  readonly leftNeedle: number | null;
  readonly rightNeedle: number | null;
  /** Stitches taken from the left needle and made on the right; null where that is not known. */
  readonly takes: number | null;
  readonly makes: number | null;
  /** Which pass of a repeat this is, counted from 1. */
  readonly pass?: number;
  /** A marker met or passed on the way. */
  readonly marker?: string;
}

export interface RowReplay {
  /** Name of the size; "one" for a draft without sizes. */
  readonly size: string;
  readonly section: string;
  /** As printed: "Row 17". */
  readonly label: string;
  readonly side: Side | null;
  readonly before: number | null;
  readonly lines: readonly RowReplayLine[];
  readonly after: number | null;
  /** What came of it, in one or two sentences: fits, runs short by 2, leaves 3 unworked. */
  readonly outcome: string;
}
