/** Walks an instruction tree: every node once, parents before children, in the order of the text. */
import type { Statement, TreeNode } from '../../grammar/tree.ts';
import { once } from '../../src/once.ts';
import type { Pattern, Section } from '../../src/pattern/pattern.ts';

type Node = TreeNode & { readonly type: string };

const isNode = (value: unknown): value is Node =>
  typeof value === 'object' && value !== null && typeof (value as { type?: unknown }).type === 'string' && 'span' in value;

/** Nodes lie in many fields (children, once, ending, does, inside, parts…), so every field is looked into. */
function visitValue(value: unknown, visit: (node: Node) => void): void {
  if (Array.isArray(value)) {
    for (const each of value) visitValue(each, visit);
  } else if (typeof value === 'object' && value !== null) {
    if (isNode(value)) visit(value);
    for (const field of Object.values(value)) if (typeof field === 'object' && field !== null) visitValue(field, visit);
  }
}

/** A dozen rules ask for the same nodes. */
const nodesOf = once((statements: readonly Statement[]): readonly Node[] => {
  const nodes: Node[] = [];
  visitValue(statements, (node) => nodes.push(node));
  return nodes;
});

export function walk(statements: readonly Statement[], visit: (node: Node) => void): void {
  for (const node of nodesOf(statements)) visit(node);
}

/** All nodes of the draft with the section they stand in. */
export function walkPattern(pattern: Pattern, visit: (node: Node, section: Section, index: number) => void): void {
  for (const [index, section] of pattern.sections.entries()) walk(section.statements, (node) => visit(node, section, index));
}
