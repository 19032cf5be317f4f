/**
 * Passages longer, and blocks deeper, than any draft prints. What reads a passage looks back and ahead in it, so its work
 * grows faster than its length, as that of Markdown does with the depth of its blocks. What is beyond these bounds is
 * shown as not read, and no text can keep the reading busy for ever.
 */
import type { Block, Overlong, Span } from './manuscript.ts';

/** Characters of the longest line and the longest passage that are read: a row of a full page and more. */
export const longestPassage = 6_000;

/** Cells of the longest row of a table that is read. */
const mostCells = 400;

/** Quotations and lists that a line may stand in, and `:::` blocks that may be open around it. */
export const deepest = 30;

/** The marks of quotations and lists that a line begins with; no two of its parts can take the same character. */
const marks = /^(?:[ \t]*(?:>|[-+*](?=[ \t])|\d{1,9}[.)](?=[ \t])))+/;
const oneMark = />|[-+*](?=[ \t])|\d{1,9}[.)]/g;
const opensContainer = /^[ \t>]*:{3,}[ \t]*[A-Za-z]/;
const closesContainer = /^[ \t>]*:{3,}[ \t]*$/;

function lengthOf(block: Block): number {
  switch (block.kind) {
    case 'heading':
    case 'paragraph':
    case 'item':
      return block.text.length;
    case 'tableRow':
      return Math.max(0, ...block.cells.map((cell) => cell.text.length));
    case 'directive':
      return block.label?.text.length ?? 0;
    default:
      return 0;
  }
}

/** The block itself, or the mark of a passage that is too long to be read. */
export function withinBounds(block: Block): Block {
  if (lengthOf(block) <= longestPassage && !(block.kind === 'tableRow' && block.cells.length > mostCells)) return block;
  return { kind: 'overlong', why: 'long', start: block.start, end: block.end };
}

export interface Bounded {
  /** The draft with blanks in place of the lines that are not read: every other character stands where it stood. */
  readonly text: string;
  readonly overlong: readonly Overlong[];
}

/** Takes out the lines that no draft prints, before Markdown sees them. `starts` are the offsets at which lines begin. */
export function boundedLines(source: string, starts: readonly number[]): Bounded {
  const overlong: Overlong[] = [];
  const pieces: string[] = [];
  let done = 0;
  let open = 0;
  const takeOut = ({ start, end }: Span, why: Overlong['why']): void => {
    pieces.push(source.slice(done, start), ' '.repeat(end - start));
    done = end;
    overlong.push({ kind: 'overlong', why, start, end });
  };
  starts.forEach((start, index) => {
    let end = starts[index + 1] ?? source.length;
    while (end > start && (source[end - 1] === '\n' || source[end - 1] === '\r')) end -= 1;
    if (end - start > longestPassage) {
      takeOut({ start, end }, 'long');
      return;
    }
    const line = source.slice(start, end);
    if (opensContainer.test(line)) {
      open += 1;
      if (open > deepest) takeOut({ start, end }, 'deep');
    } else if (closesContainer.test(line)) {
      if (open > deepest) takeOut({ start, end }, 'deep');
      open = Math.max(0, open - 1);
    } else if (((marks.exec(line)?.[0] ?? '').match(oneMark) ?? []).length > deepest) takeOut({ start, end }, 'deep');
  });
  pieces.push(source.slice(done));
  return { text: pieces.join(''), overlong };
}
