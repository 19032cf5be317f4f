/** Rows that keep the count: worked without looking at their stitches. */
import type { Span, Statement } from '../../grammar/tree.ts';
import { remember } from './memory.ts';
import { beginRow, live, type Needles } from './needles.ts';
import { handOf, type Play, shown, write } from './play.ts';
import { nextSide, otherSide } from './sides.ts';

/** Works `count` whole rows in which no stitch is gained or lost. */
export function passRows(needles: Needles, count: number): void {
  if (count <= 0) return;
  beginRow(needles);
  const total = live(needles);
  const marks = [
    ...needles.right.marks.filter((mark) => mark.kind === 'marker'),
    ...needles.left.marks.filter((mark) => mark.kind === 'marker').map((mark) => ({ ...mark, at: total - mark.at })),
  ].sort((a, b) => a.at - b.at);
  const mirrored = needles.mode === 'flat' && (count - 1) % 2 === 1;
  needles.right = {
    n: total,
    marks: mirrored ? marks.map((mark) => ({ ...mark, at: total - mark.at })).sort((a, b) => a.at - b.at) : marks,
  };
  needles.left = { n: 0, marks: [] };
  if (mirrored) needles.side = otherSide(needles.side);
  needles.begun = false;
  needles.suspended = false;
}

export function playPlainRows(
  play: Play,
  sizes: readonly number[],
  count: number,
  words: { span: Span; textSpan: Span; node: Statement; label: string; change: number },
): void {
  const before = play.hands.map(shown);
  const first = sizes[0];
  const side = first === undefined ? null : nextSide(handOf(play, first).needles);
  for (const size of sizes) {
    const hand = handOf(play, size);
    passRows(hand.needles, count);
    hand.needles.right.n += words.change * count;
    hand.rows += count;
    hand.sectionRows += count;
    remember(hand.history, {
      row: null,
      times: count,
      section: play.section,
      textSpan: words.textSpan,
      label: words.label,
      change: words.change,
    });
  }
  const unit = first !== undefined && handOf(play, first).needles.mode === 'round' ? 'round' : 'row';
  write(
    play,
    { label: words.label, span: words.span, textSpan: words.textSpan, node: words.node, side, unit, times: count },
    sizes,
    before,
  );
}
