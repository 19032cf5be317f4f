/** What stood on the needles. This room does not know where the text came from and knows no rules. */
import type { Side, Span, Statement, Step } from '../../grammar/tree.ts';
import type { Moment } from './play.ts';

/** One entry of the count sheet: a row, or an instruction that sets the count. */
export interface Entry {
  readonly section: number;
  readonly label: string;
  /** The instruction that has the row worked now. */
  readonly span: Span;
  /** The row's own words. */
  readonly textSpan: Span;
  readonly node: Statement;
  readonly side: Side | null;
  readonly unit: 'row' | 'round' | 'step';
  /** How often it is worked in this run. */
  readonly times: number;
  /** Live stitches of the piece, per size; null where it is not known or the size does not work the row. */
  readonly before: readonly (number | null)[];
  readonly after: readonly (number | null)[];
  /** Stitches taken from the left needle and made on the right, per size. */
  readonly takes: readonly (number | null)[];
  readonly makes: readonly (number | null)[];
  /** Indexes of the sizes that do not work it; only where there are some. */
  readonly skips?: readonly number[];
  readonly afterPerRepeat: { readonly perRepeat: number; readonly plus: number } | null;
}

/**
 * Something the replay met that a knitter would meet. Kinds are trade facts, not rules; several sizes that meet the
 * same thing at the same place are one observation.
 */
export interface Observation {
  readonly kind: ObservationKind;
  readonly span: Span;
  readonly section: number;
  readonly row: string | null;
  readonly node: Statement | null;
  readonly sizes: readonly number[];
  /** Numbers per size of `sizes`, by name: before, taken, made, after, stated, left, wanted, needs, passes… */
  readonly numbers: Readonly<Record<string, readonly (number | null)[]>>;
  /** Names and words: marker, piece, stitch, method. */
  readonly words: Readonly<Record<string, string>>;
  /** False where an unread step before it makes the count unsure; a rule may then raise no error. */
  readonly certain: boolean;
  /** What the rows around support: one plain sentence each. */
  readonly evidence: readonly string[];
  /** Places that only suffer from it. */
  readonly follows: readonly Span[];
}

export type ObservationKind =
  | 'countDiffers'
  | 'changeDiffers'
  | 'partDiffers'
  | 'leftDiffers'
  | 'rowsDiffer'
  | 'tooFew'
  | 'leftOver'
  | 'repeatDoesNotFit'
  | 'repeatNotWorked'
  | 'nothingToWork'
  | 'nothingToPass'
  | 'markerMissing'
  | 'markerNotThere'
  | 'markerTooNear'
  | 'markerInStitch'
  | 'noGap'
  | 'noProgress'
  | 'turnInRound'
  | 'turnAgain'
  | 'loopsOpen'
  | 'notAtBeginning'
  | 'sideDiffers'
  | 'rowMissing'
  | 'rowLabel'
  | 'endingSide'
  | 'targetMissed'
  | 'targetPassed'
  | 'shapingOdd'
  | 'heldDiffers'
  | 'nothingHeld'
  | 'setsDiffer'
  | 'leftOpen'
  | 'notOnNeedle'
  | 'multipleDiffers'
  | 'notRestored'
  | 'referenceMissing'
  | 'rangeDiffers'
  | 'readingsDiffer'
  | 'readingNotDefault'
  | 'doubleYarnOverUnruled'
  | 'yarnOverAtEdge'
  | 'placeholderMixed'
  | 'sizesOutOfStep'
  | 'tooLong';

/** How one stretch of rows grew, per size: rows worked in each section, for lengths and gauges. */
export interface SectionRows {
  readonly section: number;
  readonly rows: readonly (number | null)[];
}

export interface Replay {
  readonly entries: readonly Entry[];
  readonly observations: readonly Observation[];
  readonly sectionRows: readonly SectionRows[];
  /** The heads of the rows in which something was met, size by size, so that they can be tried with other words. */
  readonly heads?: readonly Moment[];
  /** The steps of the entries that were worked step by step. */
  readonly steps?: ReadonlyMap<number, readonly Step[]>;
}
