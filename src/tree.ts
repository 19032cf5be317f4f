/** The instruction tree of a draft as unist nodes, for tools that walk, print or compare trees. */
import type { Node, Parent, Position } from 'unist';
import { visit } from 'unist-util-visit';
import type { Span } from './manuscript/manuscript.ts';
import { readManuscript } from './manuscript/read.ts';
import { readPattern } from './pattern/read.ts';

/** A section of the draft with its statements. */
export interface SectionNode extends Parent {
  readonly type: 'section';
  readonly title: string;
}

/** The whole draft: its sections in order. */
export interface DraftNode extends Parent {
  readonly type: 'draft';
  readonly children: SectionNode[];
}

type Open = Node & { span?: Span | undefined; position?: Position | undefined };

/**
 * Reads a draft into a unist tree: `draft` → `section` → statements → steps, as `grammar/tree.ts` describes them. Every
 * node carries its position in the text, so that `source.slice(start.offset, end.offset)` is what the author wrote.
 * Never throws, whatever the text.
 */
export function instructionTree(source: string): DraftNode {
  const manuscript = readManuscript(source);
  const pattern = readPattern(manuscript);
  const point = (offset: number): Position['start'] => ({ ...manuscript.place(offset), offset });
  const sections = pattern.sections.map(({ title, span, statements }) => ({
    type: 'section',
    title,
    span,
    children: JSON.parse(JSON.stringify(statements)) as unknown,
  }));
  const draft = { type: 'draft', span: { start: 0, end: source.length }, children: sections } as unknown as DraftNode;
  visit(draft as Node, (node: Open) => {
    if (node.span === undefined) return;
    node.position = { start: point(node.span.start), end: point(node.span.end) };
    delete node.span;
  });
  return draft;
}
