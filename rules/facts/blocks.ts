/** The draft's blocks by what they are for: the abbreviation list, the rest of the front, headings, and instructions. */

import type { Block, Passage, Span } from '../../src/manuscript/manuscript.ts';
import { once } from '../../src/once.ts';
import type { Pattern, Section } from '../../src/pattern/pattern.ts';
import type { Context, Finding, Rule } from '../rule.ts';

export interface Stretch extends Passage {
  readonly block: Block;
  /** list: explains abbreviations · front: sizes, materials, gauge, notes · heading · work: what is knitted and made up. */
  readonly role: 'list' | 'front' | 'heading' | 'work';
}

export const inside = (span: Span, whole: Span): boolean => span.start >= whole.start && span.end <= whole.end;
const touches = (a: Span, b: Span): boolean => a.start < b.end && b.start < a.end;

/** Every passage of words in the order of the draft; the cells of a table row are passages of their own. */
export const stretches = once(({ manuscript, pattern }: Context): readonly Stretch[] => {
  const made = manuscript.blocks.flatMap((block): Stretch[] => {
    const role = roleOf(block, pattern);
    if (block.kind === 'tableRow') return block.cells.map((cell) => ({ ...cell, block, role }));
    return 'text' in block && block.kind !== 'frontMatter'
      ? [{ start: block.start, end: block.end, text: block.text, emphasis: block.emphasis, block, role }]
      : [];
  });
  return made;
});

function roleOf(block: Block, pattern: Pattern): Stretch['role'] {
  if (block.kind === 'heading') return 'heading';
  if (pattern.front.abbreviations.some((entry) => touches(entry.span, block))) return 'list';
  if (pattern.front.blocks.some((span) => inside(block, span))) return 'front';
  const section = sectionAt(pattern, block.start);
  return section?.kind === 'front' ? 'front' : 'work';
}

/** The section whose words stand at the offset. */
export function sectionAt(pattern: Pattern, offset: number): Section | null {
  let found: Section | null = null;
  for (const section of pattern.sections) if (section.span.start <= offset) found = section;
  return found;
}

/** Label of the row at the offset, as printed. */
export function rowAt({ pattern, manuscript }: Context, offset: number): string | null {
  const row = pattern.rows.find((one) => one.row.span.start <= offset && offset < one.row.span.end);
  return row === undefined ? null : manuscript.source.slice(row.label.span.start, row.label.span.end).replace(/[\s:.*(]+$/, '');
}

/** A finding with the fields that most rules leave empty. */
export function found(
  context: Context,
  rule: Pick<Rule, 'id' | 'level'>,
  span: Span,
  message: string,
  more: Partial<Omit<Finding, 'rule' | 'span' | 'message'>> = {},
): Finding {
  const title = sectionAt(context.pattern, span.start)?.title ?? '';
  return {
    rule: rule.id,
    level: rule.level,
    span,
    section: title === '' ? null : title,
    row: rowAt(context, span.start),
    sizes: [],
    message,
    stated: null,
    replayed: null,
    fix: null,
    ...more,
  };
}
