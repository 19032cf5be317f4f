/**
 * Stitches that wait on their own needle while other stitches are worked: "Leave them on the needle and break the yarn." No holder
 * is told of; they are in the way of nothing and come back by their number.
 */
import type { Span } from '../../grammar/tree.ts';
import { emptyNeedles, live } from './needles.ts';
import { handOf, type Play } from './play.ts';

const left =
  /\bleav(?:e|ing) (?:(?:them|these|those|the|all|rem|remaining|sts|stitches|of) ?){1,5}on (?:the |a |your |this )?(?:spare )?(?:circular )?needle\b/i;

/** Puts what is on the needle aside where the words since the last row worked say that it stays there; whether it did. */
export function leaveOnNeedle(play: Play, size: number, node: { readonly span: Span }): boolean {
  const hand = handOf(play, size);
  const n = live(hand.needles);
  const last = play.book.entries.at(-1);
  if (n === 0 || last === undefined || last.span.end >= node.span.start) return false;
  if (!left.test(play.text({ start: last.span.end, end: node.span.start }))) return false;
  const section = hand.history.at(-1)?.section ?? play.section;
  hand.held.push({
    name: 'needle',
    piece: play.pattern.sections[section]?.title ?? '',
    rest: false,
    n,
    used: false,
    idle: true,
    ...(hand.needles.sure ? {} : { sure: false }),
  });
  const { mode } = hand.needles;
  hand.needles = { ...emptyNeedles(), mode };
  return true;
}

/** Another piece is cast on and nothing was said of what is on the needle: it waits until it is named by its piece and number. */
export function setAside(play: Play, size: number): void {
  const hand = handOf(play, size);
  const n = live(hand.needles);
  const section = hand.history.at(-1)?.section;
  if (n === 0 || section === undefined || section === play.section || !hand.needles.sure) return;
  hand.held.push({ name: 'needle', piece: play.pattern.sections[section]?.title ?? '', rest: false, n, used: false, idle: true });
}
