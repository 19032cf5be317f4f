/** The hands that work one row in one size: what they hold, how they read the row, and what stops them. */
import { type Sized, sizeValue } from '../../grammar/count.ts';
import type { Repeat, Span, Step } from '../../grammar/tree.ts';
import type { Vocabulary } from '../../grammar/vocabulary.ts';
import type { Held } from './holders.ts';
import type { Mark, Needles } from './needles.ts';
import type { ObservationKind } from './replay.ts';

/** What stops a knitter, or what she would ask. */
export interface Trouble {
  readonly kind: ObservationKind | 'unread';
  readonly span: Span;
  readonly numbers: Readonly<Record<string, number>>;
  readonly words: Readonly<Record<string, string>>;
}

/** How a row is to be read where the words allow several readings; by node. */
export interface RowChoice {
  /** Bind-offs inside the row: the loop left is the first of what follows (in) or stands apart (apart). */
  readonly loop: 'in' | 'apart';
  /** "rep from * N times": N more, or N in all. */
  readonly times: 'more' | 'all';
  /** A list without brackets, "k2, k2tog to end": what repeats is what its place makes likelier, the whole list or its last stitch, or the other. */
  readonly list: 'likely' | 'other';
  /** "K to last 5 sts, turn": from the end of the row, or from the turn that lies ahead. */
  readonly from: 'end' | 'turn';
  /** Which reading of names with several. */
  readonly names: number;
}

export const firstChoice: RowChoice = { loop: 'in', times: 'more', list: 'likely', from: 'end', names: 0 };

export interface Hands {
  readonly needles: Needles;
  readonly size: number;
  readonly vocabulary: Vocabulary;
  readonly held: Held[];
  readonly piece: string;
  readonly choice: RowChoice;
  taken: number;
  made: number;
  /** Bound off in this row. */
  off: number;
  /** Stitches worked when a bind-off inside the row began, one number for each. */
  offAt?: number[];
  /** The row is a round that closes again over stitches picked up and taken up. */
  ring?: boolean;
  /** Every stitch had been worked when the round was joined in this row. */
  closed?: boolean;
  /** Bound off at an edge of the row, and stitches worked before each bind-off inside it. */
  edge?: number;
  holes?: number[];
  /** Steps of a row, not an order between rows. */
  row?: boolean;
  /** Left height below which the segment of a needle ends. */
  base: number;
  /** Stitches the last step worked, for "place these sts on a holder". */
  last: number;
  /** The row ended at a turn, so unworked stitches are meant. */
  turned: boolean;
  /** Sets that this row has taken up by the name of their piece. */
  drawn?: Held[];
  /** Stitches were put aside or joined in this row, so it need not be complete. */
  divided: boolean;
  /** Two statements of this row contradict each other: the count is in doubt behind it. */
  doubt?: boolean;
  /** Everything worth a question that did not stop the row. */
  readonly asides: Trouble[];
  /** "Removing markers as you come to them" at the head of the row: they go when it is done. */
  removing?: boolean;
  /** A run has been told in this row, if only over no stitches. */
  ran?: boolean;
  /** The marker of the beginning of the round has been taken off at the head of this row. */
  beginningOff?: boolean;
  /** The round was given a new beginning when so many stitches had been taken; nothing need be worked after that. */
  begunAt?: number;
  /** The marker that the last run went up to. */
  reached?: Mark;
  /** Passes that run until every stitch is worked: the last may end short of its plain stitch or its wrap. */
  lenient?: boolean;
  /** Heights of the right needle at which a stitch was slipped, or a yarn over made, that may still be passed over. */
  slips?: number[];
  /** Single steps worked so far in this row. */
  worked?: number;
  /** Looks over the shoulder; with it every pass of a repeat is worked one by one. */
  readonly watch?: Watch;
}

/** Whoever shows a row stitch by stitch. The needles stand as the call finds them: before a step, after it, before a pass. */
export interface Watch {
  begin(step: Step, hands: Hands): void;
  end(step: Step, hands: Hands): void;
  /** A pass of a repeat begins, counted from 1. */
  pass(step: Repeat, pass: number, passes: number | null, hands: Hands): void;
  /** Steps of the repeat that belong to no pass: the words between its mark and "rep from", and those it ends with. */
  between(step: Repeat, steps: readonly Step[], hands: Hands): void;
}

export const stopped = (
  kind: Trouble['kind'],
  span: Span,
  numbers: Record<string, number> = {},
  words: Record<string, string> = {},
): Trouble => ({
  kind,
  span,
  numbers,
  words,
});

/** Most single steps one repeat may be unrolled to where it cannot be folded. */
export const mostPasses = 20_000;
/** Most single steps of one row that are worked: repeats within repeats multiply. */
export const mostSteps = 100_000;

export function countFor(hands: Hands, values: Sized): number | null {
  // A list that breaks off before this size: what the size works is not known.
  if (values.length > 1 && hands.size >= values.length) hands.needles.sure = false;
  return sizeValue(values, hands.size);
}
