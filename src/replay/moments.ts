/** Going back to the head of a row: the needles as they stood there, and the row worked again from them. */
import type { Step } from '../../grammar/tree.ts';
import type { Proof } from '../index.ts';
import type { Hands, RowChoice, Trouble, Watch } from './hands.ts';
import { beginRow, copyNeedles, endRow, type Needles } from './needles.ts';
import type { Moment } from './play.ts';
import { replayPattern } from './run.ts';
import { letFall } from './steps/falling.ts';
import { unfinished, workSteps } from './work.ts';

/** How a row ended in one size. */
export interface RowEnd {
  readonly needles: Needles;
  readonly trouble: Trouble | null;
  /** Stitches left on the left needle with no turn. */
  readonly left: number;
  readonly taken: number;
  readonly made: number;
  readonly off: number;
  readonly asides: readonly Trouble[];
}

export interface WorkAgain {
  readonly choice?: RowChoice;
  readonly watch?: Watch;
  /** Stitches on the needle at the head of the row, instead of those the draft leads to. */
  readonly from?: number;
  readonly steps?: readonly Step[];
}

/** The head of every row of the sheet that `wanted` asks for, in working order. The draft is replayed for it. */
export function momentsOf(proof: Proof, wanted: (moment: Moment) => boolean): Moment[] {
  const { source } = proof.manuscript;
  const moments: Moment[] = [];
  replayPattern(
    proof.pattern,
    (span) => source.slice(span.start, span.end),
    (moment) => {
      if (wanted(moment)) moments.push(moment);
    },
  );
  return moments;
}

/** The needles at the head of a row, ready for its first stitch. */
export function headOf(moment: Moment, from?: number): Needles {
  const needles = copyNeedles(moment.needles);
  beginRow(needles);
  if (from === undefined) return needles;
  needles.left.n = Math.max(0, from - needles.right.n);
  needles.left.marks = needles.left.marks.filter((mark) => mark.at <= needles.left.n);
  return needles;
}

/** Works the row once more from its head; the moment itself is left as it was. */
export function workMoment(proof: Pick<Proof, 'pattern'>, moment: Moment, how: WorkAgain = {}): RowEnd {
  const needles = how.from === undefined ? copyNeedles(moment.needles) : headOf(moment, how.from);
  const hands: Hands = {
    needles,
    size: moment.size,
    vocabulary: proof.pattern.vocabulary,
    held: moment.held.map((set) => ({ ...set })),
    piece: moment.piece,
    choice: how.choice ?? moment.choice,
    taken: 0,
    made: 0,
    off: 0,
    base: 0,
    last: 0,
    turned: false,
    divided: false,
    asides: [],
    ...(how.watch === undefined ? {} : { watch: how.watch }),
  };
  letFall(hands, how.steps ?? moment.steps);
  const trouble = workSteps(hands, how.steps ?? moment.steps);
  const left = trouble === null && !hands.divided ? unfinished(hands) : 0;
  if (trouble === null && left === 0) endRow(needles);
  return { needles, trouble, left, taken: hands.taken, made: hands.made, off: hands.off, asides: hands.asides };
}
