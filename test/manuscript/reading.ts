/** What the tests of this room ask of a draft again and again. */
import type { Block, Manuscript } from '../../src/manuscript/manuscript.ts';
import { readManuscript } from '../../src/manuscript/read.ts';

type Of<K extends Block['kind']> = Extract<Block, { kind: K }>;

export function blocksOf<K extends Block['kind']>(source: string | Manuscript, kind: K): Of<K>[] {
  const manuscript = typeof source === 'string' ? readManuscript(source) : source;
  return manuscript.blocks.filter((block): block is Of<K> => block.kind === kind);
}

/** Kind and words of every block, in short: `item: K2, p2`. Runs of blanks count as one. */
export function outline(source: string): string[] {
  return readManuscript(source).blocks.map((block) => {
    if (block.kind === 'tableRow') return `tableRow: ${block.cells.map((cell) => tidy(cell.text)).join(' | ')}`;
    if (block.kind === 'directive') return `directive: ${block.name}`;
    if (block.kind === 'break' || block.kind === 'overlong') return block.kind;
    if (block.kind === 'item' && block.number !== null) return `item ${block.number}: ${tidy(block.text)}`;
    return `${block.kind}: ${tidy(block.text)}`;
  });
}

export function tidy(text: string): string {
  return text
    .replace(/ +/g, ' ')
    .replace(/ *\n */g, '/')
    .trim();
}

/** The words of a draft of one block. */
export function words(source: string): string {
  const [block] = readManuscript(source).blocks;
  return block && 'text' in block ? tidy(block.text) : '';
}

/** The author's words that are read as bold or italic type. */
export function inType(source: string): string[] {
  return readManuscript(source).blocks.flatMap((block) =>
    'emphasis' in block ? block.emphasis.map(({ start, end }) => source.slice(start, end)) : [],
  );
}

export function hazardsOf(source: string): string[] {
  return readManuscript(source).hazards.map((hazard) => `${hazard.kind} ${source.slice(hazard.start, hazard.end)}`);
}
