/** Cuts passages out of a draft: the author's words at their places, with what is Markdown's blanked out. */
import { liftEscapes, liftTags, plainCharacters } from './characters.ts';
import { touching } from './comments.ts';
import { findEmphasis } from './emphasis.ts';
import type { Passage, Span } from './manuscript.ts';
import { lineIndex } from './place.ts';

/** What every passage of a draft needs to know of the whole. */
export interface Sheet {
  readonly source: string;
  readonly starts: readonly number[];
  readonly comments: readonly Span[];
  /** The draft points to a double star somewhere. */
  readonly pointsToDoubleStar: boolean;
}

/** Blanks that keep line ends, so that a passage never changes its lines. */
function blankOut(characters: string[], from: number, to: number): void {
  for (let at = Math.max(0, from); at < Math.min(to, characters.length); at++) {
    if (characters[at] !== '\n' && characters[at] !== '\r') characters[at] = ' ';
  }
}

const trailingBlanks = (line: string): number => {
  let end = line.length;
  while (end > 0 && (line[end - 1] === ' ' || line[end - 1] === '\t')) end--;
  return end;
};

/** The end of a line without its `\n`, `\r\n` or `\r`. */
export function lineEnd(sheet: Sheet, index: number): number {
  const { source, starts } = sheet;
  let end = starts[index + 1] ?? source.length;
  if (end > (starts[index] ?? 0) && source[end - 1] === '\n') end--;
  if (end > (starts[index] ?? 0) && source[end - 1] === '\r') end--;
  return end;
}

/**
 * Blanks what stands before the words on the second and later lines of a passage: quotation marks of Markdown and
 * indents. `value` is the text Markdown read there; its lines are the ends of the draft's lines.
 */
function blankPrefixes(sheet: Sheet, characters: string[], start: number, end: number, value: string): void {
  const values = value.split(/\r\n|\n|\r/);
  const first = lineIndex(sheet.starts, start);
  for (let line = first + 1; line < sheet.starts.length; line++) {
    const from = sheet.starts[line] ?? 0;
    if (from >= end) return;
    const words = values[line - first] ?? '';
    const typed = sheet.source.slice(from, Math.min(lineEnd(sheet, line), end));
    const prefix = Math.max(0, trailingBlanks(typed) - trailingBlanks(words));
    blankOut(characters, from - start, from - start + prefix);
  }
}

/** What Markdown read in a block, and where the block's words begin and end. */
export interface Words extends Span {
  readonly value: string;
}

/** A passage of running words. One that opens with a comment begins behind it. */
export function cutPassage(sheet: Sheet, words: Words): Passage {
  const { start, end } = words;
  const source = sheet.source.slice(start, end);
  const characters = source.split('');
  blankPrefixes(sheet, characters, start, end, words.value);
  for (const comment of touching(sheet.comments, start, end)) blankOut(characters, comment.start - start, comment.end - start);
  liftTags(characters, source);
  plainCharacters(characters);
  const literal = liftEscapes(characters);
  const pairs = findEmphasis(characters.join(''), literal, sheet.pointsToDoubleStar);
  for (const pair of pairs) {
    blankOut(characters, pair.open, pair.open + pair.width);
    blankOut(characters, pair.close, pair.close + pair.width);
  }
  const emphasis = pairs.map((pair) => ({ start: start + pair.open + pair.width, end: start + pair.close }));
  const text = characters.join('');
  const behindComment = touching(sheet.comments, start, start + 1).length > 0 && text.trim() !== '';
  const lead = behindComment ? text.length - text.trimStart().length : 0;
  return { start: start + lead, end, text: text.slice(lead), emphasis };
}

/** A passage that is shown as typed, `keep` of it; only line ends are made plain. Code and front matter. */
export function cutVerbatim(sheet: Sheet, whole: Words, keep: Span): Passage {
  const { start, end } = whole;
  const characters = sheet.source.slice(start, end).split('');
  blankPrefixes(sheet, characters, start, end, whole.value);
  blankOut(characters, 0, keep.start - start);
  blankOut(characters, keep.end - start, characters.length);
  for (let at = 0; at < characters.length; at++) {
    if (characters[at] === '\r') characters[at] = characters[at + 1] === '\n' ? ' ' : '\n';
  }
  return { start, end, text: characters.join(''), emphasis: [] };
}
