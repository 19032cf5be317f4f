/** At which edge of the right side a row is shaped that is told and not written out. */
import type { Shape, Side } from '../../../grammar/tree.ts';

export type Edges = 'right' | 'left' | 'both' | 'unknown' | 'elsewhere';

/**
 * "At the beginning of a RS row" is the right edge. A neck or front edge lies toward the middle of the wearer: of a right
 * front it is the right edge, seen from the right side, of a left front the left one; an armhole or side edge is the other.
 */
export function edgesOf({ place, edge }: Pick<Shape, 'place' | 'edge'>, side: Side | null, title: string): Edges {
  switch (place) {
    case 'bothEnds':
    case 'eachEdge':
      return 'both';
    case 'beginning':
    case 'end':
      if (side === null) return 'unknown';
      return (side === 'RS') === (place === 'beginning') ? 'right' : 'left';
    case 'edge': {
      const piece = /\b(left|right)\b/i.exec(title)?.[1]?.toLowerCase();
      const inner = /neck|front|cent(?:re|er)|lapel/i.test(edge ?? '');
      const outer = /armhole|side|shoulder|sleeve/i.test(edge ?? '');
      if (piece === undefined || inner === outer) return 'unknown';
      return (piece === 'right') === inner ? 'right' : 'left';
    }
    default:
      return 'elsewhere';
  }
}
