/** One row worked stitch by stitch in one size, for whoever must confirm a finding. */
import type { Side, Span } from '../../grammar/tree.ts';

/** One instruction of the row, or one pass of a repeat. */
export interface RowReplayLine {
  /** The words worked: "k2tog", "yo, k2tog, k3". */
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
  /** How many passes there are, where that is known. */
  readonly of?: number;
  /** The line stands for this many passes from `pass` on, all of them alike; the numbers are those after the last. */
  readonly folded?: number;
  /** The needle of a round on which the step is worked: "Needle 2". */
  readonly needle?: string;
  /** A marker met or passed on the way. */
  readonly marker?: string;
}

/** fits: nothing is wrong · differs: it fits, the count printed after it is another · stops: it cannot be worked as printed · unknown: something before or in it was not understood. */
export type RowVerdict = 'fits' | 'differs' | 'stops' | 'unknown';

export interface RowReplay {
  /** Name of the size; "one" for a draft without sizes. */
  readonly size: string;
  readonly section: string;
  /** As printed: "Row 17". */
  readonly label: string;
  readonly side: Side | null;
  /** The row as it is printed. */
  readonly text?: string;
  readonly before: number | null;
  /** Stitches on the left and the right needle before the first step. */
  readonly start?: { readonly leftNeedle: number; readonly rightNeedle: number };
  readonly lines: readonly RowReplayLine[];
  readonly after: number | null;
  /** What came of it, in one or two sentences: fits, runs short by 2, leaves 3 unworked. */
  readonly outcome: string;
  readonly verdict?: RowVerdict;
  /** Names of the sizes in which the row does not work as printed, in which it does, and in which that cannot be told. */
  readonly sizes?: { readonly confirmed: readonly string[]; readonly notConfirmed: readonly string[]; readonly unknown: readonly string[] };
  /** The same in one sentence, for the designer. */
  readonly designer?: string;
  /** Where the words allow another reading that ends elsewhere: one sentence each. */
  readonly readings?: readonly string[];
  /** The count the draft leads to, when the row was begun with another; and the single slips that would lead from one to the other. */
  readonly expected?: number | null;
  readonly slips?: readonly string[];
  /** What is taken for granted where the row was begun with another count and markers lie on the needle. */
  readonly assumed?: string;
  /** Where a count that is one off would lead, when the row was begun with the count of the draft. */
  readonly oneOff?: readonly string[];
}
