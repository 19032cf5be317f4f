/** What one shaping row changes, and what is said of a shaping that never comes to its number. */
import { sizeValue } from '../../grammar/count.ts';
import type { Shape, Stated, Statement } from '../../grammar/tree.ts';
import { type Hand, handOf, met, type Play } from './play.ts';
import type { Missed } from './schedule.ts';

/** Edges that "each neck edge" means: two, or one while the other side waits on its holder. */
export const edgesOf = (hand: Hand): number => (hand.held.some((set) => set.rest && !set.used && set.n > 0) ? 1 : 2);

/** What one shaping row changes. */
export function stepOf(play: Play, shape: Shape, size: number): number {
  const n = sizeValue(shape.count.values, size) ?? 0;
  const { needles } = handOf(play, size);
  const markers = [...needles.left.marks, ...needles.right.marks].filter((mark) => mark.kind === 'marker').length;
  const places =
    shape.place === 'bothEnds'
      ? 2
      : shape.place === 'eachEdge'
        ? edgesOf(handOf(play, size))
        : shape.place === 'eachSideOfMarkers'
          ? 2 * Math.max(1, markers)
          : shape.place === 'eachMarker'
            ? Math.max(1, markers)
            : 1;
  return (shape.change === 'dec' ? -1 : 1) * n * places;
}

export function missed(play: Play, miss: Missed, shape: Shape, size: number, node: Statement): void {
  const span = shape.schedule.find((segment) => segment.until !== null)?.until?.span ?? shape.span;
  met(
    play,
    {
      kind: miss.passed ? 'targetPassed' : 'targetMissed',
      span,
      numbers: { target: miss.target, live: miss.live, step: miss.step },
      words: {},
    },
    size,
    node,
    null,
  );
  const { needles } = handOf(play, size);
  needles.right.n = Math.max(0, needles.right.n + miss.target - miss.live);
  needles.sure = false;
}

export function statedFor(stated: readonly Stated[], size: number): number | null {
  const total = stated.find((each) => each.what === 'total' && each.scope === null);
  return total === undefined ? null : sizeValue(total.count.values, size);
}
