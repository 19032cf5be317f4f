/** Where the replay of a draft that asks for too much stands still: said once, and no count behind it is sure. */
import type { Span, Statement } from '../../grammar/tree.ts';
import { handOf, met, type Play } from './play.ts';

/** Whether the draft has asked for more rows than are worked; if so the sizes that should go on are no longer sure. */
export function standsStill(play: Play, sizes: readonly number[], span: Span, node: Statement): boolean {
  if (play.effort >= 0) return false;
  const told = play.trying || play.book.met.some((each) => each.kind === 'tooLong' && each.row === null);
  for (const size of sizes) {
    if (!told) met(play, { kind: 'tooLong', span, numbers: {}, words: {} }, size, node, null);
    handOf(play, size).needles.sure = false;
  }
  return true;
}
