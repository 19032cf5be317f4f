/** Reads what stands before the instructions. Never throws; what it does not know it leaves alone. */
import type { Block, Manuscript, Span } from '../../manuscript/manuscript.ts';
import { looksLikeTitle, titleKind } from '../titles.ts';
import { readAbbreviations } from './abbreviations.ts';
import type { FrontMatter } from './front-matter.ts';
import { readGauges } from './gauge.ts';
import { holdsRow, isInstruction } from './instruction-cue.ts';
import { readMeasures } from './measures.ts';
import { readNeedles } from './needles.ts';
import { readNotions } from './notions.ts';
import { type Front, readSegments } from './segments.ts';
import { readSizes } from './sizes.ts';
import { readTitle } from './title.ts';
import { readYarns } from './yarn.ts';

/** Words that may be part of an instruction; a paragraph before the first heading with none of them is prose. */
const working = /\b(?:k|p|sl|m)\d|\b(?:co|bo)\s\d|\bcast\s(?:on|off)\s\d|\bbind\soff\s\d|\brep\b|\*|\b(?:rows?|rnds?|rounds?)\s\d/i;

const words = (block: Block): string | null =>
  block.kind === 'paragraph' || block.kind === 'item' || block.kind === 'heading' ? block.text : null;

/** "BACK" on a line of its own right before the first instruction opens the knitting. */
const opensPiece = (front: Front, text: string, at: number): boolean =>
  at > 1 && at + 1 === front.firstInstruction && looksLikeTitle(text) && titleKind(text) === 'piece';

/** Blocks that stand in front sections, or were read as front matter, and hold no row of their own. */
function frontBlocks(manuscript: Manuscript, front: Front): readonly Span[] {
  const spans: Span[] = [];
  let opening = true;
  for (const [at, block] of manuscript.blocks.entries()) {
    const topic = front.topics[at] ?? null;
    const text = words(block);
    if (block.start === block.end) continue;
    if (block.kind === 'frontMatter') spans.push({ start: block.start, end: block.end });
    else if (block.kind === 'directive' && block.name === 'sizes') spans.push({ start: block.start, end: block.end });
    else if (topic !== null) {
      if (text === null || !holdsRow(text)) spans.push({ start: block.start, end: block.end });
    } else if (
      opening &&
      block.kind === 'paragraph' &&
      at < front.firstInstruction &&
      !opensPiece(front, block.text, at) &&
      !working.test(block.text) &&
      !isInstruction(block.text)
    ) {
      spans.push({ start: block.start, end: block.end });
    }
    // The opening of a pattern is what stands before its first section: title, subtitle, a word about the design.
    if (
      block.kind === 'heading' &&
      at > 0 &&
      topic === null &&
      manuscript.blocks.slice(0, at).some((one) => one.kind !== 'heading' && one.kind !== 'break' && one.kind !== 'frontMatter')
    ) {
      opening = false;
    }
    if (block.kind === 'item' || block.kind === 'tableRow') opening = opening && topic !== null;
  }
  return spans;
}

/** What the front of the draft says. A draft with no sizes has `sizes: null`; one that says "one size" has the one name `one`. */
export function readFrontMatter(manuscript: Manuscript): FrontMatter {
  const front = readSegments(manuscript);
  const sizes = readSizes(manuscript, front);
  const { named, pairs } = readMeasures(manuscript, front, sizes?.names.length ?? null);
  return {
    title: readTitle(manuscript),
    sizes,
    measures: named,
    pairs,
    gauges: readGauges(front),
    needles: readNeedles(front),
    yarns: readYarns(front),
    notions: readNotions(front),
    abbreviations: readAbbreviations(front, manuscript.source),
    blocks: frontBlocks(manuscript, front),
  };
}
