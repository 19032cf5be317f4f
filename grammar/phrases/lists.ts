/**
 * Lists with neither bracket nor star, put together when the steps of a row are known.
 *
 *     K4, ssk around · k2, p2 to end · k2, k2tog to last 2 sts, k2 · K2, p2; rep to end · [k1, p1], …, work bracketed sts 3 times
 */
import type { Repeat, Step } from '../tree.ts';

const works = new Set(['work', 'intoOne', 'repeat', 'pullOver']);

/** A run of one counted stitch, such as "ssk around": alone it runs by itself, behind others it closes their list. */
function counted(step: Step): step is Repeat {
  if (step.type !== 'repeat' || step.form !== 'run' || step.extent === null || !['end', 'last', 'place'].includes(step.extent.kind))
    return false;
  const child = step.children[0];
  return child?.type === 'work' && step.verb === child.stitch && !['k', 'p', 'sl', 'work'].includes(child.stitch);
}

/** "kfb in every st": the words themselves say that the one stitch runs, whatever stands before it. */
const everyStitch = /\b(?:in|into|of)\s+(?:every|each|all)\b/i;

/** Gives each extent without a bracket the steps it stands for, and each "work bracketed sts 3 times" its bracket. */
export function listed(steps: readonly Step[], text: (span: Step['span']) => string): Step[] {
  const out: Step[] = [];
  steps.forEach((step, index) => {
    if (step.type === 'repeat' && step.form === 'bracket' && step.children.length === 0 && step.markSpan === null) {
      const bracket = out.findLastIndex((each) => each.type === 'repeat' && each.form === 'bracket' && each.extent === null);
      const group = out[bracket];
      if (group?.type === 'repeat' && step.extent !== null) {
        out[bracket] = { ...group, extent: step.extent };
        out.push({ type: 'remark', known: true, span: step.span });
      } else out.push({ type: 'unread', text: text(step.span), span: step.span });
      return;
    }
    const open = step.type === 'repeat' && step.form === 'list' && step.children.length === 0;
    if (!open && (!counted(step) || everyStitch.test(text(step.span)))) {
      out.push(step);
      return;
    }
    // A semicolon or a full stop ends what came before: "k1 rnd; k2tog around" is no list.
    const from = out.findLastIndex(
      (each, at) =>
        each.type === 'marker' ||
        each.type === 'turn' ||
        each.type === 'andSoOn' ||
        (step.repeats !== 'all' || !open ? /[.;](?!\s?,)/ : /\.(?!\s?,)/).test(
          text({ start: each.span.end, end: (out[at + 1] ?? step).span.start }),
        ) ||
        (each.type === 'repeat' && each.extent !== null && each.extent.kind !== 'times'),
    );
    const before = out.slice(from + 1);
    const inside = open ? before : [...before, ...step.children];
    if (!before.some((each) => works.has(each.type))) {
      out.push(open ? { type: 'unread', text: text(step.span), span: step.span } : step);
      return;
    }
    const tail = steps.slice(index + 1).find((each) => works.has(each.type) || each.type === 'marker');
    out.length = from + 1;
    out.push({
      ...step,
      form: 'list',
      children: inside,
      repeats: step.repeats ?? (tail === undefined || tail.type === 'marker' ? 'all' : 'last'),
      span: { start: inside[0]?.span.start ?? step.span.start, end: step.span.end },
    });
  });
  return out;
}
