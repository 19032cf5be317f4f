/**
 * From an offset to the line and column an editor shows.
 *
 * A line ends at `\n`, at `\r\n` or at a lone `\r`. Columns count UTF-16 units from 1; a byte order mark takes no
 * column, as in editors. An offset outside the text is moved to its nearest end.
 */

export interface Place {
  readonly line: number;
  readonly column: number;
}

const byteOrderMark = 0xfeff;
const lineFeed = 10;
const carriageReturn = 13;

/** 1 when the text begins with a byte order mark, else 0. */
export function markLength(source: string): number {
  return source.charCodeAt(0) === byteOrderMark ? 1 : 0;
}

/** The offsets at which the lines of a text begin; the first is 0, or 1 after a byte order mark. */
export function lineStarts(source: string): number[] {
  const starts = [markLength(source)];
  for (let at = 0; at < source.length; at++) {
    const unit = source.charCodeAt(at);
    if (unit === lineFeed || (unit === carriageReturn && source.charCodeAt(at + 1) !== lineFeed)) starts.push(at + 1);
  }
  return starts;
}

/** The index of the line that holds an offset, from 0. */
export function lineIndex(starts: readonly number[], offset: number): number {
  let low = 0;
  let high = starts.length - 1;
  while (low < high) {
    const middle = (low + high + 1) >> 1;
    if ((starts[middle] ?? 0) <= offset) low = middle;
    else high = middle - 1;
  }
  return low;
}

/** A function that places any offset of `source`; the lines are counted once. */
export function placer(source: string, starts: readonly number[] = lineStarts(source)): (offset: number) => Place {
  return (offset) => {
    const inside = Math.max(0, Math.min(offset, source.length));
    const index = lineIndex(starts, inside);
    return { line: index + 1, column: Math.max(1, inside - (starts[index] ?? 0) + 1) };
  };
}
