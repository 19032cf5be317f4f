/** Laying out plain text: what a terminal shows, how wide it is, where it wraps. */

/** Characters that would move the cursor, ring the bell or turn the direction of writing. */
function isUnprintable(code: number): boolean {
  return (
    code < 0x20 ||
    (code >= 0x7f && code < 0xa0) ||
    code === 0x200e ||
    code === 0x200f ||
    (code >= 0x2028 && code <= 0x202e) ||
    (code >= 0x2066 && code <= 0x2069) ||
    code === 0xfeff
  );
}

/** One character of a draft as it may safely be shown: a tab is a space, other control characters a middle dot. */
export function showCharacter(character: string): string {
  if (character === '\t') return ' ';
  const code = character.codePointAt(0) ?? 0;
  if (code >= 0xd800 && code <= 0xdfff) return '\ufffd';
  return isUnprintable(code) ? '·' : character;
}

/** Words of a draft on one line, safe to print: line ends and tabs are spaces, control characters a middle dot. */
export function show(text: string): string {
  let shown = '';
  for (const character of text) shown += character === '\n' || character === '\r' ? ' ' : showCharacter(character);
  return shown;
}

const wide: readonly (readonly [number, number])[] = [
  [0x1100, 0x115f],
  [0x2e80, 0x303e],
  [0x3041, 0xa4cf],
  [0xac00, 0xd7a3],
  [0xf900, 0xfaff],
  [0xfe30, 0xfe6f],
  [0xff00, 0xff60],
  [0xffe0, 0xffe6],
  [0x1f300, 0x1f64f],
  [0x1f680, 0x1f6ff],
  [0x1f900, 0x1f9ff],
  [0x20000, 0x3fffd],
];
const narrow: readonly (readonly [number, number])[] = [
  [0x0300, 0x036f],
  [0x200b, 0x200d],
  [0x20d0, 0x20ff],
  [0xfe00, 0xfe0f],
  [0xfe20, 0xfe2f],
];
const within = (code: number, ranges: readonly (readonly [number, number])[]) => ranges.some(([from, to]) => code >= from && code <= to);

/** Columns of one character on a terminal: 0 for combining marks, 2 for wide ones, otherwise 1. */
export function characterWidth(character: string): number {
  const code = character.codePointAt(0) ?? 0;
  if (code < 0x300) return 1;
  if (within(code, narrow)) return 0;
  return within(code, wide) ? 2 : 1;
}

/** Columns a text takes on a terminal. */
export function textWidth(text: string): number {
  let width = 0;
  for (const character of text) width += characterWidth(character);
  return width;
}

export function padEnd(text: string, width: number): string {
  return text + ' '.repeat(Math.max(0, width - textWidth(text)));
}

export function padStart(text: string, width: number): string {
  return ' '.repeat(Math.max(0, width - textWidth(text))) + text;
}

/** A text that is at most `width` columns wide, cut with an ellipsis where it is longer. */
export function cut(text: string, width: number): string {
  if (textWidth(text) <= width) return text;
  let kept = '';
  let used = 0;
  for (const character of text) {
    used += characterWidth(character);
    if (used > width - 1) break;
    kept += character;
  }
  return `${kept.trimEnd()}…`;
}

/** Breaks a text at spaces into lines of at most `width` columns; later lines begin with `hang`. A longer word keeps its own line. */
export function wrap(text: string, width: number, hang = ''): readonly string[] {
  const lines: string[] = [];
  let line = '';
  for (const word of text.split(' ')) {
    if (word === '') continue;
    const longer = line === '' ? word : line.trim() === '' ? line + word : `${line} ${word}`;
    if (line.trim() !== '' && textWidth(longer) > width) {
      lines.push(line);
      line = hang + word;
    } else line = longer;
  }
  if (line !== '' || lines.length === 0) lines.push(line);
  return lines;
}

/** Columns of a small table, numbers to the right, two spaces between. The first row is the heading. */
export function columns(rows: readonly (readonly string[])[], leftAligned: readonly number[]): readonly string[] {
  const widths: number[] = [];
  for (const row of rows)
    row.forEach((cell, index) => {
      widths[index] = Math.max(widths[index] ?? 0, textWidth(cell));
    });
  return rows.map((row) =>
    row
      .map((cell, index) => (leftAligned.includes(index) ? padEnd(cell, widths[index] ?? 0) : padStart(cell, widths[index] ?? 0)))
      .join('  ')
      .trimEnd(),
  );
}
