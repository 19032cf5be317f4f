/** Passes over a list of rows: worked one by one until nothing changes, then counted. */
import type { Label, Row, Span, Statement } from '../../../grammar/tree.ts';
import { standsStill } from '../bounds.ts';
import { live, type Needles } from '../needles.ts';
import { playPlainRows } from '../plain-rows.ts';
import { type Hand, handOf, type Play, tryOut } from '../play.ts';
import { playSteps } from '../rows.ts';
import type { Again } from './named-rows.ts';
import { playRowsOfLabel } from './rows-of-label.ts';

/** Where a hand stands, for seeing that a pass has changed nothing. */
export function signature(needles: Needles): string {
  const marks = (list: readonly { kind: string; at: number; name: string | null }[]): string =>
    list.map((mark) => `${mark.kind}${mark.name ?? ''}${mark.at}`).join(',');
  return `${needles.left.n}/${needles.right.n}/${needles.side}/${needles.begun}/${needles.sure}/${needles.mode}/${marks(needles.left.marks)}/${marks(needles.right.marks)}`;
}

/** "Rnds 4–8. As Rnd 1": each of its numbers is one row of the same words. */
function sameRows(row: Row): boolean {
  const { does, label } = row;
  return (
    label !== null &&
    label.numbers.length > 1 &&
    does?.type === 'refer' &&
    does.to === 'row' &&
    does.rows.length === 1 &&
    does.times === null
  );
}

export function playAgain(play: Play, list: readonly Again[], sizes: readonly number[], span: Span, node: Statement): void {
  for (const each of list) {
    if (each.row === null) {
      play.effort -= sizes.length;
      playPlainRows(play, sizes, each.times, { span, textSpan: each.textSpan, node, label: each.label, change: each.change });
    } else if (each.row.does !== null)
      playRowsOfLabel(
        play,
        each.number !== null && each.times === 1 && sameRows(each.row)
          ? { ...each.row, label: { ...(each.row.label as Label), numbers: [each.number] } }
          : each.row,
        sizes,
      );
    else playSteps(play, each.row, each.row.children, sizes, { span, textSpan: each.textSpan, inline: false, number: each.number, node });
  }
}

/** Works a list of rows a number of times per size; sizes with fewer passes begin later, so that all end together. */
export function playPasses(play: Play, list: readonly Again[], passes: ReadonlyMap<number, number>, span: Span, node: Statement): void {
  const most = Math.max(0, ...passes.values());
  let last: { before: string[]; first: number; sizes: number } | null = null;
  for (let pass = 0; pass < most; pass += 1) {
    const sizes = [...passes].filter(([, count]) => count >= most - pass).map(([size]) => size);
    if (sizes.length === 0) continue;
    if (standsStill(play, sizes, span, node)) return;
    const first = play.book.entries.length;
    const before = sizes.map((size) => signature(handOf(play, size).needles));
    playAgain(play, list, sizes, span, node);
    const after = sizes.map((size) => signature(handOf(play, size).needles));
    // Worked flat, an odd number of rows stands as before only after two passes.
    const period = after.every((each, index) => each === before[index])
      ? 1
      : last !== null && last.sizes === sizes.length && after.every((each, index) => each === last?.before[index])
        ? 2
        : 0;
    const begun = period === 2 ? (last?.first ?? first) : first;
    last = { before, first, sizes: sizes.length };
    if (period === 0) continue;
    // Nothing has changed: the passes up to the one where another size joins in are the same.
    const joins = [...passes.values()].map((count) => most - count).filter((start) => start > pass);
    const until = Math.min(most, ...joins);
    const fold = Math.floor((until - pass - 1) / period);
    if (fold <= 0) continue;
    for (let at = begun; at < play.book.entries.length; at += 1) {
      const entry = play.book.entries[at];
      if (entry) entry.times += fold * entry.times;
    }
    const rows = list.reduce((sum, each) => sum + each.times, 0) * fold * period;
    for (const size of sizes) {
      const hand = handOf(play, size);
      hand.rows += rows;
      hand.sectionRows += rows;
    }
    pass += fold * period;
  }
}

export function passChange(play: Play, list: readonly Again[], size: number): number {
  const before = live(handOf(play, size).needles);
  const { hands } = tryOut(play, () =>
    playAgain(
      play,
      list,
      [size],
      { start: 0, end: 0 },
      (list[0]?.row ?? ({ type: 'remark', span: { start: 0, end: 0 } } as Statement)) as Statement,
    ),
  );
  return live((hands[size] as Hand).needles) - before;
}
