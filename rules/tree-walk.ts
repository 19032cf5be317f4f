/** Walking the instruction tree: statements with the block of sizes they stand in, numbers, steps. */
import type { Sized } from '../grammar/count.ts';
import type { Row, Span, Statement, Step } from '../grammar/tree.ts';
import { once } from '../src/once.ts';
import type { Pattern } from '../src/pattern/pattern.ts';
import { workingsOf } from './facts/workings.ts';
import type { Context } from './rule.ts';

export interface Standing {
  readonly statement: Statement;
  readonly section: number;
  /** Sizes of the block it stands in; null outside of any. */
  readonly block: readonly number[] | null;
}

/** Every statement at the level of rows, in the order of the draft; what stands in a block of sizes or on a second track comes after it. */
export const statementsOf = once((pattern: Pattern): readonly Standing[] => {
  const out: Standing[] = [];
  pattern.sections.forEach((section, index) => {
    let ruled: readonly number[] | null = null;
    const visit = (statement: Statement, block: readonly number[] | null): void => {
      out.push({ statement, section: index, block });
      if (statement.type === 'sizeBlock' || statement.type === 'atSameTime') {
        const inner = statement.type === 'sizeBlock' ? statement.sizes : block;
        for (const child of statement.children) visit(child, inner);
      }
    };
    for (const statement of section.statements) {
      if (statement.type === 'sizeBlock' && statement.children.length === 0) ruled = statement.sizes;
      visit(statement, ruled);
    }
  });
  return out;
});

export interface Numbers {
  readonly values: Sized;
  readonly span: Span;
  readonly section: number;
  readonly block: readonly number[] | null;
}

const sizedKeys: ReadonlySet<string> = new Set(['values', 'lastBySize', 'row', 'k', 'k2', 'measure']);
const isSized = (value: unknown): value is Sized =>
  Array.isArray(value) && value.length > 0 && value.every((each) => each === null || typeof each === 'number');
const isSpan = (value: unknown): value is Span =>
  typeof value === 'object' &&
  value !== null &&
  typeof (value as { start?: unknown }).start === 'number' &&
  typeof (value as { end?: unknown }).end === 'number';

/** Every number of the tree that may differ by size, with its place. */
export const numbersOfTree = once((pattern: Pattern): readonly Numbers[] => {
  const out: Numbers[] = [];
  for (const { statement, section, block } of statementsOf(pattern)) {
    const visit = (value: unknown, span: Span): void => {
      if (typeof value !== 'object' || value === null) return;
      if (Array.isArray(value)) {
        for (const each of value) visit(each, span);
        return;
      }
      const own = isSpan((value as { span?: unknown }).span) ? (value as { span: Span }).span : span;
      for (const [key, inner] of Object.entries(value)) {
        if (sizedKeys.has(key) && isSized(inner)) out.push({ values: inner, span: own, section, block });
        // Statements inside blocks come by themselves.
        else if (!(key === 'children' && statement === value && (statement.type === 'sizeBlock' || statement.type === 'atSameTime')))
          visit(inner, own);
      }
    };
    visit(statement, statement.span);
  }
  return out;
});

/** Every row of the draft, with its section. */
export function rowsOf(pattern: Pattern): { readonly row: Row; readonly section: number; readonly block: readonly number[] | null }[] {
  return statementsOf(pattern).flatMap(({ statement, section, block }) =>
    statement.type === 'row' ? [{ row: statement, section, block }] : [],
  );
}

/** Every step of a list, those inside repeats, needles and increases after the one that holds them. */
export function stepsOf(steps: readonly Step[]): Step[] {
  const out: Step[] = [];
  const visit = (step: Step): void => {
    out.push(step);
    if (step.type === 'repeat') {
      step.children.forEach(visit);
      step.once.forEach(visit);
      step.ending?.children.forEach(visit);
    }
    if (step.type === 'intoOne' || step.type === 'needlePart') step.children.forEach(visit);
  };
  steps.forEach(visit);
  return out;
}

/** The side a row was worked on, where it was always the same. */
export function sideOf(context: Context, row: Row): 'RS' | 'WS' | null {
  const sides = new Set(workingsOf(context.replay, row.span.start).map((entry) => (entry.unit === 'round' ? 'RS' : entry.side)));
  const [side] = sides;
  return sides.size === 1 && side !== undefined ? side : (row.label?.side ?? null);
}
