/** Marks of short rows that no later row has worked: said where a piece ends with them on the needle. */
import { handOf, met, type Play } from './play.ts';
import { openTurns } from './short-rows.ts';

/** Says what the piece that is being left still carries, in every size, at the last row worked. */
export function leaveTurns(play: Play, only: number | null = null): void {
  play.hands.forEach((_, size) => {
    if (only !== null && size !== only) return;
    const hand = handOf(play, size);
    const last = hand.history.at(-1);
    if (last === undefined || hand.needles.left.n + hand.needles.right.n === 0) return;
    for (const [method, open] of openTurns(hand.needles)) {
      if (method === 'plain') continue;
      met(play, { kind: 'loopsOpen', span: last.textSpan, numbers: { open }, words: { method } }, size, last.row, last.label);
    }
  });
}
