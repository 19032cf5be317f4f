/**
 * Stitches whose meaning depends on a turn: the double stitch that opens the row after it, the yarn over that marks
 * it, the wrapped stitch that goes back, and the stitches that close its gap.
 */
import type { Anchor, Side, Span, Work } from '../../grammar/tree.ts';
import type { Hands, Trouble } from './hands.ts';
import { beginRow, type Mark, type Method, type Needles, turn, workPlain, workToken } from './needles.ts';

interface Use {
  readonly takes: number;
  readonly makes: number;
  readonly kind: string;
  readonly moves: string;
}

/** The gap of a turn that has just been made, with nothing worked since. */
function freshGap(needles: Needles): Mark | null {
  const mark = needles.right.marks.findLast((each) => each.kind === 'gap');
  return mark !== undefined && mark.at === needles.right.n && (needles.begun || needles.left.n > 0) ? mark : null;
}

/** A turn has been made in this row and nothing worked since. */
export function justTurned(hands: Hands): boolean {
  return hands.turned && freshGap(hands.needles) !== null;
}

const tooFew = (span: Span, left: number, wanted: number): Trouble => ({ kind: 'tooFew', span, numbers: { left, wanted }, words: {} });

/** Works a stitch that belongs to a turn; 'ordinary' when it is a stitch like any other. */
export function workShort(hands: Hands, step: Work, use: Use): Trouble | null | 'ordinary' {
  const { needles } = hands;
  if (use.kind === 'shortRow' && use.moves.includes('tug')) return makeDouble(hands, step);
  const fresh = freshGap(needles);
  if (fresh !== null && use.kind === 'yarnOver') {
    // A yarn over just after a turn holds its place and is no stitch.
    fresh.method = 'yarnOver';
    return null;
  }
  if (fresh !== null && use.kind === 'slip' && step.manner.includes('back') && use.takes === 1 && needles.left.n > hands.base) {
    // A wrap written out: the slipped stitch goes back, so the turn lies before it.
    workPlain(needles, 1);
    hands.taken += 1;
    hands.made += 1;
    fresh.at = needles.right.n;
    fresh.method = 'wrap';
    return null;
  }
  const tip = needles.left.marks.findLast((mark) => mark.kind === 'gap');
  if (
    tip !== undefined &&
    tip.at === needles.left.n &&
    tip.method === 'yarnOver' &&
    (use.kind === 'decrease' || use.kind === 'doubleDecrease')
  ) {
    const loops = Math.min(tip.loops ?? 1, use.takes - 1);
    const takes = use.takes - loops;
    const have = needles.left.n - hands.base;
    if (have < takes) return tooFew(step.span, have, takes);
    workToken(needles, takes, use.makes);
    hands.taken += takes;
    hands.made += use.makes;
    hands.last = use.makes;
    return null;
  }
  // "until all sts are worked": where nothing is left behind the decrease its plain stitch falls away.
  if (hands.lenient === true && use.kind === 'plain' && use.takes === 1 && needles.left.n === hands.base && hands.taken > 0) return null;
  return 'ordinary';
}

/** The first stitch after a turn, slipped and pulled up. Written at the end of a row it brings the turn with it. */
function makeDouble(hands: Hands, step: Work): Trouble | null {
  const { needles } = hands;
  const fresh = freshGap(needles);
  if (
    fresh === null &&
    hands.taken === 0 &&
    needles.right.marks.some(
      (mark) => mark.kind === 'gap' && mark.method === 'double' && mark.at === needles.right.n - 1 && mark.turn === needles.turns,
    )
  ) {
    // The row before ended with it.
    hands.asides.push({ kind: 'turnAgain', span: step.span, numbers: {}, words: {} });
    return null;
  }
  beginRow(needles);
  if (fresh === null && needles.right.n > 0 && hands.taken > 0) {
    turn(needles, 'double');
    hands.turned = true;
  }
  if (needles.left.n - hands.base < 1) return tooFew(step.span, needles.left.n - hands.base, 1);
  const gap = freshGap(needles);
  if (gap !== null) gap.method = 'double';
  else needles.right.marks.push({ kind: 'gap', name: null, at: needles.right.n, method: 'double', turn: needles.turns ?? 0 });
  workPlain(needles, 1);
  hands.taken += 1;
  hands.made += 1;
  hands.last = 1;
  return null;
}

/** How the turn was made whose mark the words name. */
export const methodOf: Partial<Record<Anchor, Method>> = {
  wrapped: 'wrap',
  double: 'double',
  twin: 'twin',
  pin: 'pin',
  yarnOver: 'yarnOver',
};

/** Gaps that the words may mean: those of the method they name, and any where there is none of it. */
export function gapsAhead(ahead: readonly Mark[], place: Anchor): readonly Mark[] {
  const gaps = ahead.filter((mark) => mark.kind === 'gap');
  const method = methodOf[place];
  const own = method === undefined ? gaps : gaps.filter((mark) => mark.method === method);
  return own.length > 0 ? own : gaps;
}

/** Stitches worked in the last row of a side, or in the last row of the side that faces now. */
export function shortOf(needles: Needles, side: Side | null): number | null {
  const facing = side ?? needles.side;
  return facing === null ? null : (needles.worked?.[facing] ?? null);
}

/** Turns whose gap no row has crossed since, by method; a mark at the very edge of flat work leaves no gap. */
export function openTurns(needles: Needles): ReadonlyMap<Method, number> {
  const open = new Map<Method, number>();
  for (const mark of [...needles.left.marks, ...needles.right.marks]) {
    if (mark.kind === 'gap' && (mark.at > 0 || needles.mode === 'round'))
      open.set(mark.method ?? 'plain', (open.get(mark.method ?? 'plain') ?? 0) + 1);
  }
  return open;
}

/** Numbers of stitches that "until 6 sts rem" may speak of among short rows, the likeliest first. */
export function remaining(needles: Needles, sense: string): readonly number[] {
  const [ahead, behind] = needles.left.n === 0 ? [needles.right, needles.left] : [needles.left, needles.right];
  const gap = ahead.marks.findLast((mark) => mark.kind === 'gap');
  const double = gap?.method === 'double';
  // Between double stitches the two at the ends are not counted; the one of the last turn is still to be made.
  const ends = behind.n === 0 ? 1 : 2;
  const between = gap === undefined ? ahead.n : ahead.n - gap.at - (double ? ends : 0);
  const beyond = behind.n > 0 ? behind.n : (gap?.at ?? 0);
  return sense === 'unworked' ? [beyond, gap?.at ?? beyond, between] : [between, beyond, gap?.at ?? beyond];
}
