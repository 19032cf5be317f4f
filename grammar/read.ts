/** Reading a passage of a draft into statements. Nothing is lost: what instructs and is not understood becomes `unread`. */
import { covered } from './cover.ts';
import { multipleIn } from './declarations.ts';
import { withHungMarkers } from './hung-markers.ts';
import { readBody } from './passages/body.ts';
import { openPassage, type ReadOptions } from './passages/passage.ts';
import { readSentence } from './passages/sentence.ts';
import { closeBlock, sentencesBySize } from './passages/size-blocks.ts';
import { countSteps } from './passages/steps.ts';
import { labelAt } from './phrases/labels.ts';
import { sentencesOf } from './sentences.ts';
import { tokensOf } from './tokens.ts';
import type { Label, Statement } from './tree.ts';

/**
 * Reads the text of one block.
 * @param text masked text of the passage, as long as the author's
 * @param base offset of the passage in the author's file
 */
export function readPassage(text: string, base: number, options: ReadOptions): Statement[] {
  const tokens = tokensOf(text, options.vocabulary, options.sizeCount ?? options.sizes?.length ?? null);
  const sentences = options.label ? sentencesOf(tokens, text) : sentencesBySize(text, base, options, tokens);
  const passage = openPassage(text, base, options, tokens, sentences, readPassage);
  const { out, prose, state } = passage;

  if (options.label) {
    passage.openRow(options.label, options.label.span.start);
    for (const { from, to } of sentences) readBody(passage, from, to, true);
    passage.flush();
    return covered(out, tokens, base, text, prose);
  }

  sentences.forEach(({ from, to }, index) => {
    if ((tokens[from]?.startOffset ?? 0) >= state.skipTo) readSentence(passage, from, to, index);
  });
  passage.flush();
  closeBlock(passage);
  return withHungMarkers(covered(out, tokens, base, text, prose), (span) => text.slice(span.start - base, span.end - base));
}

/** A label that stands apart from its row, as in the first column of a table; null when the words are no label. */
export function readLabel(text: string, base: number, options: Pick<ReadOptions, 'vocabulary' | 'sizes'>): Label | null {
  const tokens = tokensOf(text, options.vocabulary, options.sizes?.length ?? null);
  const match = labelAt(tokens, 0, base, text, true);
  return match !== null && match.next >= tokens.length ? match.label : null;
}

export { countSteps, multipleIn };
