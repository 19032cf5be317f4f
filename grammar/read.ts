/** Reading a passage of a draft into statements. Nothing is lost: what instructs and is not understood becomes `unread`. */
import { pairBrackets } from './brackets.ts';
import { covered } from './cover.ts';
import { multipleIn } from './declarations.ts';
import { withHungMarkers } from './hung-markers.ts';
import { withoutIdle } from './idle-words.ts';
import { readBody } from './passages/body.ts';
import { ordersShown } from './passages/orders-shown.ts';
import { openPassage, type ReadOptions } from './passages/passage.ts';
import { readSentence } from './passages/sentence.ts';
import { closeBlock, sentencesBySize } from './passages/size-blocks.ts';
import { countSteps } from './passages/steps.ts';
import { labelAt } from './phrases/labels.ts';
import { reworded } from './reworded.ts';
import { sentencesOf } from './sentences.ts';
import { withSizeClauses } from './size-clauses.ts';
import { tokensOf } from './tokens.ts';
import type { Label, Statement } from './tree.ts';

/** Brackets within brackets that are read: each is a step within a step for whoever reads, plays or prints it. */
export const deepestBrackets = 60;

/** How deep the brackets of a text stand in each other, closed or not. */
function bracketDepth(text: string): number {
  let depth = 0;
  let most = 0;
  for (const sign of text) {
    if (sign === '(' || sign === '[' || sign === '{') depth += 1;
    else if (sign === ')' || sign === ']' || sign === '}') depth = Math.max(0, depth - 1);
    most = Math.max(most, depth);
  }
  return most;
}

/**
 * Reads the text of one block.
 * @param text masked text of the passage, as long as the author's
 * @param base offset of the passage in the author's file
 */
export function readPassage(text: string, base: number, options: ReadOptions): Statement[] {
  if (bracketDepth(text) > deepestBrackets) {
    const span = { start: base, end: base + text.trimEnd().length };
    return [{ type: 'unread', text: text.slice(0, 60).trim(), beyond: 'brackets', span }];
  }
  const all = withSizeClauses(
    tokensOf(text, options.vocabulary, options.sizeCount ?? options.sizes?.length ?? null),
    options.sizes ?? [],
    text,
  );
  const { tokens, said } = reworded(withoutIdle(all));
  pairBrackets(tokens);
  const sentences = options.label ? sentencesOf(tokens, text) : sentencesBySize(text, base, options, tokens);
  const passage = openPassage(text, base, options, tokens, sentences, readPassage);
  const { out, prose, state } = passage;
  prose.push(...said.map((span) => ({ start: base + span.start, end: base + span.end })));

  if (options.label) {
    passage.openRow(options.label, options.label.span.start);
    for (const { from, to } of sentences) readBody(passage, from, to, true);
    passage.flush();
    return ordersShown(covered(out, all, base, text, prose), all, base, text, prose);
  }

  sentences.forEach(({ from, to }, index) => {
    if ((tokens[from]?.startOffset ?? 0) >= state.skipTo) readSentence(passage, from, to, index);
  });
  passage.flush();
  closeBlock(passage);
  const whole = ordersShown(covered(out, all, base, text, prose), all, base, text, prose);
  return withHungMarkers(whole, (span) => text.slice(span.start - base, span.end - base));
}

/** A label that stands apart from its row, as in the first column of a table; null when the words are no label. */
export function readLabel(text: string, base: number, options: Pick<ReadOptions, 'vocabulary' | 'sizes'>): Label | null {
  const tokens = tokensOf(text, options.vocabulary, options.sizes?.length ?? null);
  pairBrackets(tokens);
  const match = labelAt(tokens, 0, base, text, true);
  return match !== null && match.next >= tokens.length ? match.label : null;
}

export { countSteps, multipleIn };
