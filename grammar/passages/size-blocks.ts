/** Blocks that rule for some sizes only: where they begin, what they hold, where they end. */
import { sizeBlockAt } from '../phrases/sizes.ts';
import { sentencesOf } from '../sentences.ts';
import { isA, type KnitToken, Ordinal, Semicolon, W } from '../tokens.ts';
import type { Passage, ReadOptions } from './passage.ts';

/** Sentences of a passage; a semicolon that changes the sizes ends one as well. */
export function sentencesBySize(text: string, base: number, options: ReadOptions, tokens: KnitToken[]): Passage['sentences'] {
  return sentencesOf(tokens, text).flatMap(({ from, to }) => {
    // "For sizes XS and S, work 6 rows; for sizes M and L, work 8 rows."
    const cuts: number[] = [];
    for (let at = from + 1; at + 1 < to; at += 1)
      if (
        isA(tokens[at], Semicolon) &&
        isA(tokens[at + 1], W.For, W.Size, W.All, Ordinal, W.Other) &&
        sizeBlockAt(tokens, at + 1, to, options.sizes ?? [], base, text) !== null
      )
        cuts.push(at + 1);
    return [from, ...cuts].map((begin, index) => ({ from: begin, to: cuts[index] ?? to }));
  });
}

/** Ends the block that is open, and gathers what it held. */
export function closeBlock(passage: Passage): void {
  const { out, flush, state } = passage;
  if (state.block === null) return;
  flush();
  const children = out.splice(state.block.from);
  out.push({
    type: 'sizeBlock',
    sizes: state.block.sizes,
    ...(state.block.rest ? { rest: true } : {}),
    children,
    span: { start: state.block.span.start, end: children.at(-1)?.span.end ?? state.block.span.end },
  });
  state.block = null;
}

/** Opens the block that a sentence begins; gives the index where the sentence goes on, or its end when nothing is left to read. */
export function openSizeBlock(passage: Passage, from: number, to: number): number {
  const { text, base, options, tokens, sentences, out, state, named, flush, readAlone } = passage;
  const block = sizeBlockAt(tokens, from, to, options.sizes ?? [], base, text);
  if (block === null) return from;
  flush();
  closeBlock(passage);
  const { rest } = block;
  const others = (options.sizes ?? []).map((_, each) => each).filter((each) => !named.has(each));
  const ruled = rest && named.size > 0 ? others : block.sizes;
  if (ruled === null && !rest) named.clear();
  for (const each of ruled ?? []) named.add(each);
  state.block = { sizes: ruled, rest, from: out.length, span: block.span };
  const at = block.next;
  // "Sizes L and XL only: … next 2 (3) rows": a list as long as the sizes named, which only here is a list.
  if (ruled?.length === 2 && options.sizeCount === undefined && (options.sizes ?? []).length !== 2) {
    const start = tokens[at]?.startOffset ?? text.length;
    const end = sentences.find(
      (sentence) => sentence.from >= to && sizeBlockAt(tokens, sentence.from, sentence.to, options.sizes ?? [], base, text) !== null,
    );
    const stop = end === undefined ? text.length : (tokens[end.from] as KnitToken).startOffset;
    if (/\d\s*[([]\s*\d+\s*[)\]]/.test(text.slice(start, stop))) {
      out.push(...readAlone(text.slice(start, stop), base + start, { ...options, itemNumber: null, sizeCount: 2 }));
      state.skipTo = stop;
      return to;
    }
  }
  return at;
}
