/** "Pick up 46 sts down left front, 1 st at centre of V (mark this st)": the marker hangs in the stitch and stands for it in the rows that follow. */
import type { Span, Statement, Step } from './tree.ts';

const marked =
  /^\(?(?:and )?(?:mark|place (?:a )?(?:removable )?(?:marker|m) (?:in|on)) (?:this|that|it|the (?:centre |center )?)\s?(?:st|stitch)?\b/i;

function hung(steps: readonly Step[], text: (span: Span) => string): readonly Step[] {
  return steps.map((step, index): Step => {
    const before = steps[index - 1];
    const one = before?.type === 'pickUp' && before.count?.values.every((value) => value === 1) === true;
    return one && step.type === 'remark' && marked.test(text(step.span))
      ? { type: 'marker', op: 'hang', name: 'centre', atRow: false, span: step.span }
      : step;
  });
}

/** Markers among the remarks of rows that pick up stitches. */
export function withHungMarkers(statements: readonly Statement[], text: (span: Span) => string): Statement[] {
  return statements.map((statement) =>
    statement.type === 'row' && statement.children.some((step) => step.type === 'pickUp')
      ? { ...statement, children: hung(statement.children, text) }
      : statement,
  );
}
