/** What steps take and make, as far as that can be told without looking at the needle. */
import { entryNamed } from '../../../grammar/lexicon/index.ts';
import { stitchUse } from '../../../grammar/lexicon/use.ts';
import type { Extent, IntoOne, PullOver, Step, Work } from '../../../grammar/tree.ts';
import { countFor, type Hands } from '../hands.ts';

/** The two numbers of a stitch in this size; null when the size skips it. */
export function useOf(
  hands: Hands,
  step: Work,
): { takes: number; makes: number; kind: string; face: string | null; moves: string; times?: number } | null {
  const reading = step.readings?.[hands.choice.names] ?? step.readings?.[0];
  const name = reading?.stitch ?? step.stitch;
  const entry = hands.vocabulary.stitches.get(name) ?? entryNamed(name);
  if (entry === undefined) return { takes: 0, makes: 0, kind: 'unknown', face: null, moves: '' };
  const count = reading === undefined ? step.n : reading.n;
  const told = count === null ? 1 : countFor(hands, count.values);
  if (told === null) return null;
  const n = step.includesLast === true ? told - hands.last : told;
  if (n === 0) return { takes: 0, makes: 0, kind: entry.kind, face: null, moves: entry.moves };
  const use = stitchUse(entry, n, step.m ?? 1);
  const often = reading?.times ?? step.times;
  const times = often ? countFor(hands, often.values) : 1;
  if (times === null) return null;
  return { takes: use.takes * times, makes: use.makes * times, kind: entry.kind, face: entry.face ?? null, moves: entry.moves, times };
}

/** Stitches that may lie between a slipped stitch and the place where it is passed over. */
export const reach = 4;

/** A bare "psso" behind two slipped stitches lifts both, or one. */
export function overOf(hands: Hands, step: PullOver): number {
  return step.readings?.[hands.choice.names] ?? step.count;
}

/** Loops that yarn overs make; those of them beside another of the same yarn over; and whether decreases pay for them. */
export interface Loops {
  readonly all: number;
  readonly spare: number;
  readonly paid: boolean;
}

export const noLoops: Loops = { all: 0, spare: 0, paid: false };

export function moreLoops(a: Loops | undefined, b: Loops | undefined, times = 1): Loops {
  return {
    all: (a?.all ?? 0) + (b?.all ?? 0) * times,
    spare: (a?.spare ?? 0) + (b?.spare ?? 0) * times,
    paid: a?.paid === true || b?.paid === true,
  };
}

/** What one stitch leaves for the next row to drop. */
export function loopsOf(use: { readonly takes: number; readonly makes: number; readonly kind: string; readonly times?: number }): Loops {
  if (use.kind === 'yarnOver') return { all: use.makes, spare: Math.max(0, use.makes - 1), paid: false };
  return use.makes < use.takes ? { ...noLoops, paid: true } : noLoops;
}

export interface FixedUse {
  readonly takes: number;
  readonly makes: number;
  readonly loops: Loops;
}

/** What a stretch of steps takes and makes when that does not depend on the needle; null when it does. */
export function fixedUse(hands: Hands, steps: readonly Step[]): FixedUse | null {
  let takes = 0;
  let makes = 0;
  let loops = noLoops;
  /** What was slipped in this very stretch and can be passed over in it: height of `makes`. */
  let slips: number[] = [];
  for (const step of steps) {
    switch (step.type) {
      case 'work': {
        const use = useOf(hands, step);
        if (use === null) break;
        if (use.kind === 'unknown' || use.kind === 'shortRow') return null;
        takes += use.takes;
        makes += use.makes;
        loops = moreLoops(loops, loopsOf(use));
        if (use.kind === 'slip' || use.kind === 'yarnOver')
          for (let each = Math.min(use.makes, reach) - 1; each >= 0; each -= 1) slips.push(makes - each);
        break;
      }
      case 'pullOver': {
        if (step.ofWorked === true) {
          if (makes <= step.count) return null;
          makes -= step.count;
          break;
        }
        const over = makes;
        const waiting = slips.filter((at) => over - at <= reach && at <= over);
        const count = overOf(hands, step);
        if (waiting.length < count) return null;
        slips = waiting.slice(0, -count);
        makes -= count;
        break;
      }
      case 'intoOne': {
        const use = intoUse(hands, step);
        if (use === null) return null;
        takes += use.takes;
        makes += use.makes;
        break;
      }
      case 'repeat': {
        const extent = step.extent;
        if (extent === null) {
          const inner = fixedUse(hands, step.children);
          if (inner === null) return null;
          takes += inner.takes;
          makes += inner.makes;
          loops = moreLoops(loops, inner.loops);
          break;
        }
        if (extent.kind === 'over' && step.form === 'run') {
          const n = countFor(hands, extent.count.values);
          if (n === null || extent.count.all) return null;
          takes += n;
          makes += n;
          break;
        }
        if (extent.kind !== 'times' || step.once.length > 0 || step.ending !== null) return null;
        const passes = passesOf(hands, extent);
        const inner = fixedUse(hands, step.children);
        if (passes === null || inner === null) return null;
        takes += inner.takes * passes;
        makes += inner.makes * passes;
        loops = moreLoops(loops, inner.loops, passes);
        break;
      }
      case 'remark':
      case 'resolve':
      case 'stated':
        break;
      default:
        return null;
    }
  }
  return { takes, makes, loops };
}

export function intoUse(hands: Hands, step: IntoOne): { takes: number; makes: number } | null {
  const inner = fixedUse(hands, step.children);
  if (inner === null) return null;
  // Said of every double yarn over met on the way: two loops worked as two stitches change nothing.
  if (step.everywhere === true) return inner.makes === 2 ? { takes: 0, makes: 0 } : null;
  const times = step.times ? (countFor(hands, step.times.values) ?? 0) : 1;
  if (step.into === 'doubleYarnOver') {
    // "(k1, p1, k1) into triple yo": as many loops as stitches are worked into them, where no number is told.
    const told = step.takes === null ? null : countFor(hands, step.takes.values);
    const loops = told ?? (step.dropping ? 2 : Math.max(2, inner.makes));
    return { takes: loops * times, makes: Math.max(inner.makes, 0) * times };
  }
  const takes = step.takes ? (countFor(hands, step.takes.values) ?? 1) : 1;
  return { takes: takes * times, makes: inner.makes * times };
}

export function passesOf(hands: Hands, extent: Extract<Extent, { kind: 'times' }>): number | null {
  const n = countFor(hands, extent.count.values);
  if (n === null) return 0;
  if (extent.sense === 'all') return n;
  if (extent.sense === 'more') return n + 1;
  if (extent.form === 'bracket') return n;
  return hands.choice.times === 'more' ? n + 1 : n;
}
