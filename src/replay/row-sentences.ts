/**
 * A full stop inside a row. "Next row: K1, k3tog, k1. K3tog, fasten off.": where the first sentence works every stitch,
 * the second is the row after it.
 */
import type { Row, Step } from '../../grammar/tree.ts';
import { firstChoice } from './hands.ts';
import type { Play } from './play.ts';
import { attempt } from './row-attempt.ts';

const works = new Set<Step['type']>(['work', 'intoOne', 'repeat', 'pullOver']);

/** The row as one, or as two where it cannot be worked as one and its first sentence leaves no stitch in any size. */
export function rowsOfSentences(play: Play, row: Row, sizes: readonly number[]): readonly Row[] {
  const cut = row.children.findIndex((step, index) => {
    const before = row.children[index - 1];
    return (
      before !== undefined &&
      works.has(step.type) &&
      row.children.slice(0, index).some((each) => works.has(each.type)) &&
      /[.;]\s/.test(play.text({ start: before.span.end, end: step.span.start }))
    );
  });
  if (cut < 1 || sizes.length === 0) return [row];
  const worked = (steps: readonly Step[], size: number) => attempt(play, size, row, steps, firstChoice);
  const whole = sizes.every((size) => {
    const { trouble, left } = worked(row.children, size);
    return trouble === null && left === 0;
  });
  if (whole) return [row];
  const head = row.children.slice(0, cut);
  const complete = sizes.every((size) => {
    const { trouble, needles, hands } = worked(head, size);
    return trouble === null && !hands.turned && needles.left.n === 0 && needles.right.n > 0;
  });
  if (!complete) return [row];
  const from = (row.children[cut] as Step).span.start;
  const end = (row.children[cut - 1] as Step).span.end;
  const told = (early: boolean) => row.stated.filter((each) => each.span.start < from === early);
  return [
    { ...row, children: head, stated: told(true), span: { start: row.span.start, end } },
    { ...row, label: null, children: row.children.slice(cut), stated: told(false), span: { start: from, end: row.span.end } },
  ];
}
