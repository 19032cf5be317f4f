/** Titles that no mark of Markdown makes one: a line in capitals, in bold, or named like a piece. */
import type { Block, Passage } from '../manuscript/manuscript.ts';
import { looksLikeTitle, titleKind } from './titles.ts';

export const isAllCapitals = (text: string): boolean => text === text.toUpperCase() && /[A-Z]{3}/.test(text);

/** Wholly in bold or italics, as a heading is printed where no mark makes it one. */
export function standsOut(passage: Passage): boolean {
  const words = passage.text.trim();
  const start = passage.start + passage.text.indexOf(words);
  return passage.emphasis.some((span) => span.start <= start && span.end >= start + words.length);
}

/** A heading set as the first line of a paragraph, in capitals or named like a piece, stands apart from what follows. */
export function withoutTitleLine(block: Block): Block[] {
  if (block.kind !== 'paragraph') return [block];
  const end = block.text.indexOf('\n');
  if (end < 0) return [block];
  const line = block.text.slice(0, end);
  const words = line.trim();
  const capitals = isAllCapitals(words);
  if (!looksLikeTitle(words) || (!capitals && titleKind(words) === 'stage' && !/^(shape|divide|join)\b/i.test(words))) return [block];
  const at = block.start + end + 1;
  const title = { ...block, end: block.start + end, text: line };
  return [title, ...withoutTitleLine({ ...block, start: at, text: block.text.slice(end + 1) })];
}
