/** The name of the pattern: from the YAML, the first heading, or a short first line. */
import type { Manuscript } from '../../manuscript/manuscript.ts';
import type { FrontMatter } from './front-matter.ts';
import { isInstruction } from './instruction-cue.ts';
import { topicOf } from './topics.ts';

export function readTitle(manuscript: Manuscript): FrontMatter['title'] {
  for (const block of manuscript.blocks) {
    if (block.kind !== 'frontMatter') continue;
    const match = /(?:^|\n)[ \t]{0,8}["']?title["']?[ \t]{0,8}:[ \t]{0,8}([^\n]{1,200})/i.exec(block.text);
    if (match === null) continue;
    const value = match[1]!.trim();
    const text = value.replace(/^(["'])(.*)\1$/, '$2').trim();
    if (text === '') continue;
    const start = block.start + match.index + match[0].length - match[1]!.length + match[1]!.indexOf(text);
    return { text, span: { start, end: start + text.length } };
  }
  const headings = manuscript.blocks.filter((block) => block.kind === 'heading').filter((heading) => topicOf(heading.text) === null);
  const first =
    headings.find((heading) => heading.depth === 1) ??
    (manuscript.blocks.find((block) => block.kind === 'heading') === headings[0] ? headings[0] : undefined);
  if (first !== undefined && first.text.trim() !== '') return titled(first.text, first.start);
  const opening = manuscript.blocks[0];
  if (opening?.kind === 'paragraph') {
    const line = opening.text.split('\n')[0]!;
    const words = line.trim().split(/\s+/);
    if (line.trim() !== '' && words.length <= 8 && !/[.:;]$/.test(line.trim()) && !isInstruction(line) && topicOf(line) === null)
      return titled(line, opening.start);
  }
  return null;
}

function titled(text: string, start: number): FrontMatter['title'] {
  const words = text.trim();
  const from = start + text.indexOf(words);
  return { text: words, span: { start: from, end: from + words.length } };
}
