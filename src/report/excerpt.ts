/** The author's line with the words at fault marked below it. */
import type { Manuscript, Span } from '../manuscript/manuscript.ts';
import { characterWidth, showCharacter } from './layout.ts';

export interface Excerpt {
  /** The line of the draft, or the stretch of it around the words at fault. */
  readonly text: string;
  /** A bar below the words at fault, beginning in the same column. */
  readonly mark: string;
}

interface Cell {
  readonly shown: string;
  readonly width: number;
  readonly marked: boolean;
}

/** How much of the line stands before the words at fault when the line is too long to print whole. */
const lead = 24;

/** No more of a line than this is looked at on either side, so that one endless line costs no more than a short one. */
const reach = 400;

/**
 * The line on which a span begins, at most `width` columns wide. A long line is cut around the span, with an ellipsis on
 * the side that was cut.
 */
export function excerpt(manuscript: Manuscript, span: Span, width: number): Excerpt {
  const { source } = manuscript;
  const nearby = lineAround(source, span.start);
  const cells: Cell[] = [];
  let offset = nearby.start;
  for (const character of source.slice(nearby.start, nearby.end)) {
    const marked = offset >= span.start && offset < Math.max(span.end, span.start + 1);
    offset += character.length;
    if (character === '\r' || character === '\ufeff') continue;
    cells.push({ shown: showCharacter(character), width: characterWidth(character), marked });
  }
  const { first, last } = cellWindow(cells, width);
  const kept = cells.slice(first, last);
  const before = first > 0 || nearby.cutBefore ? '…' : '';
  const after = last < cells.length || nearby.cutAfter ? '…' : '';
  const text = `${before}${kept.map((cell) => cell.shown).join('')}${after}`;
  const bar = kept.map((cell) => (cell.marked ? '‾' : ' ').repeat(cell.width)).join('');
  const mark = `${before === '' ? '' : ' '}${bar}`.trimEnd();
  const indent = text.length - text.trimStart().length;
  return { text: text.slice(indent).trimEnd(), mark: mark === '' ? '' : mark.slice(indent) };
}

interface Nearby extends Span {
  readonly cutBefore: boolean;
  readonly cutAfter: boolean;
}

/** The line an offset stands on, or as much of it as is within reach. */
function lineAround(source: string, offset: number): Nearby {
  let start = offset;
  while (start > 0 && start > offset - reach && source[start - 1] !== '\n') start -= 1;
  let end = offset;
  while (end < source.length && end < offset + reach && source[end] !== '\n') end += 1;
  return {
    start,
    end,
    cutBefore: start > 0 && source[start - 1] !== '\n',
    cutAfter: end < source.length && source[end] !== '\n',
  };
}

function cellWindow(cells: readonly Cell[], width: number): { first: number; last: number } {
  const total = cells.reduce((sum, cell) => sum + cell.width, 0);
  if (total <= width - 2) return { first: 0, last: cells.length };
  const fault = Math.max(
    0,
    cells.findIndex((cell) => cell.marked),
  );
  const faultEnd = cells.findLastIndex((cell) => cell.marked) + 1;
  let first = faultEnd <= width - 2 ? 0 : Math.max(0, fault - lead);
  // Begin with a whole word, so that the excerpt can be read.
  while (first > 0 && first < fault && cells[first - 1]?.shown !== ' ') first += 1;
  let used = 2;
  let last = first;
  while (last < cells.length && used + (cells[last]?.width ?? 0) <= width) {
    used += cells[last]?.width ?? 0;
    last += 1;
  }
  return { first, last };
}
