/**
 * Words within an order that leave it to some sizes: "for 3rd size only k2tog", "dec 1 st at each end of next row (4th size only)".
 * What they rule becomes a block of these sizes, or a step that the others work no times.
 */
import type { Sized } from './count.ts';
import type { KnitToken } from './tokens.ts';
import type { Count, Repeat, SizeBlock, Span, Statement, Step } from './tree.ts';

/** The sizes that a token of sizes names. */
export function sizesOf(token: KnitToken): number[] {
  return indexes(token.payload?.values ?? []);
}

const indexes = (values: Sized): number[] => values.flatMap((value, size) => (value === 1 ? [size] : []));

/** Statements of some sizes. */
export function blockOf(sizes: readonly number[], children: readonly Statement[], span: Span): SizeBlock {
  return { type: 'sizeBlock', sizes, children, span };
}

/** Steps that the sizes named work once and the others not at all. */
function worked(values: Sized, children: readonly Step[], named: Span): Repeat {
  const count: Count = { type: 'count', values, span: named };
  const start = Math.min(named.start, children[0]?.span.start ?? named.start);
  return {
    type: 'repeat',
    form: 'bracket',
    children,
    extent: { kind: 'times', count, sense: 'plain', form: 'bracket' },
    once: [],
    ending: null,
    mark: null,
    markSpan: null,
    span: { start, end: Math.max(named.end, children.at(-1)?.span.end ?? named.end) },
  };
}

const said = (step: Step): boolean => step.type === 'remark' && step.sizes === undefined;
const toEnd = (step: Step | undefined): boolean => step?.type === 'repeat' && step.extent?.kind === 'end';

/** The steps of a row with those that some sizes only work told as such; `sizes` where the words rule the whole row. */
export function ruledSteps(steps: readonly Step[]): { readonly steps: Step[]; readonly sizes?: readonly number[] } {
  const out: Step[] = [];
  let sizes: readonly number[] | undefined;
  for (let at = 0; at < steps.length; at += 1) {
    const step = steps[at] as Step;
    if (step.type !== 'remark' || step.sizes === undefined) {
      out.push(step);
      continue;
    }
    const { sizes: values, span } = step;
    if (step.rules === 'rest') {
      const next = steps.findIndex((each, index) => index > at && each.type === 'remark' && each.sizes !== undefined);
      const end = next < 0 ? steps.length : next;
      if (end > at + 1) out.push(worked(values, steps.slice(at + 1, end), span));
      at = end - 1;
    } else if (step.rules === 'next') {
      const next = steps.findIndex((each, index) => index > at && !said(each));
      const ruled = steps[next];
      if (ruled === undefined || (ruled.type === 'remark' && ruled.sizes !== undefined)) continue;
      out.push(worked(values, [ruled], span));
      at = next;
    } else {
      const last = out.findLastIndex((each) => !said(each));
      const ruled = out[last];
      if (ruled === undefined) continue;
      const behind = steps.slice(at + 1).some((each) => !said(each));
      if (!behind && (toEnd(ruled) || step.rules === 'all')) sizes = indexes(values);
      else out.splice(last, 1, worked(values, [ruled], span));
    }
  }
  return { steps: out, ...(sizes === undefined ? {} : { sizes }) };
}

/** A number that only some sizes have; the others have none of it. */
function only(count: Count, values: Sized): Count {
  return {
    ...count,
    values: values.map((named, size) => (named === 1 ? (count.values[count.values.length === 1 ? 0 : size] ?? null) : 0)),
  };
}

/** The last order with the words behind it that leave it to some sizes; `apart` where a comma or a bracket sets them off. */
export function ruledStatement(statement: Statement, values: Sized, span: Span, apart: boolean): Statement {
  // "K 1 row, dec 1 st at each end for 3rd size only": the row is worked in every size
  if (!apart && (statement.type === 'plain' || statement.type === 'until')) {
    const last = statement.inside.at(-1);
    if (last?.type === 'shape' || last?.type === 'evenly')
      return { ...statement, inside: [...statement.inside.slice(0, -1), { ...last, count: only(last.count, values) }] };
  }
  return blockOf(indexes(values), [statement], { start: statement.span.start, end: Math.max(statement.span.end, span.end) });
}
