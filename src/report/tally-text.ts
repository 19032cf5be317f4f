/** The count sheet for reading: one line per row worked, one column per size, in working order. */
import type { Proof } from '../index.ts';
import type { Entry } from '../replay/replay.ts';
import type { ReportInput } from './input.ts';
import { cut, padEnd, padStart, show, textWidth, wrap } from './layout.ts';
import { skips } from './not-checked.ts';
import { hasSizes, printedPath, rangeOf } from './place.ts';
import { type Report, whole } from './report.ts';
import { multipleWords, sectionTitle } from './tally-json.ts';
import { betweenDrafts, plainText, readingWords, type TextOptions } from './text.ts';

const labelWidth = 22;

export const tallyTextReport = (options: TextOptions): Report<string> => ({
  part: (proof) => draftSheet(proof, options).join('\n'),
  assemble: () => {
    let lead = '';
    return {
      add: (part) => {
        const written = lead + part;
        lead = betweenDrafts(options);
        return written;
      },
      end: () => ['\n'],
    };
  },
});

export const tallyText = (input: ReportInput, options: TextOptions = plainText): string => whole(tallyTextReport(options), input);

function draftSheet(proof: Proof, { width, paint }: TextOptions): readonly string[] {
  const title = show(proof.pattern.title);
  const head = [
    ...(title === '' ? [] : [paint.strong(title)]),
    show(printedPath(proof.path)),
    ...wrap(`Stitches on the needle before and after every row. ${readingWords(proof)}`, width),
  ];
  const { entries } = proof.replay;
  if (entries.length === 0) return [...head, '', 'No row was found to count.'];
  const sheets = sizeGroups(proof, width).flatMap((sizes) => ['', ...sheet(proof, sizes, paint.strong)]);
  const cells = entries.filter((entry) => entry.afterPerRepeat === null);
  const skipped = cells.some((entry) => (entry.skips ?? []).length > 0);
  const unknown = cells.some((entry) => entry.after.some((count, size) => count === null && !skips(entry, size)));
  const keys = [
    ...(unknown ? ['? stands where the count is not known.'] : []),
    ...(skipped ? ['– stands where the size does not work the row.'] : []),
  ];
  return [...head, ...sheets, ...(keys.length === 0 ? [] : ['', ...keys])];
}

/** "45", or "45→46" where the row changes the count. */
function countCell(entry: Entry, size: number): string {
  if (entry.afterPerRepeat !== null) return '';
  const before = entry.before[size] ?? null;
  const after = entry.after[size] ?? null;
  if (skips(entry, size)) return '–';
  if (before === after) return after === null ? '?' : String(after);
  return before === null ? `${after}` : `${before}→${after ?? '?'}`;
}

const fixedWidth = (entries: readonly Entry[]) => 6 + 2 + labelWidth + 2 + 2 + 2 + timesWidth(entries);
const timesWidth = (entries: readonly Entry[]) => Math.max(3, ...entries.map((entry) => String(entry.times).length + 1));

function columnWidth(proof: Proof, size: number): number {
  const name = hasSizes(proof) ? textWidth(show(proof.pattern.sizes[size] ?? '')) : 'count'.length;
  return proof.replay.entries.reduce((widest, entry) => Math.max(widest, countCell(entry, size).length), name);
}

/** Sizes that fit beside each other on the page; the rest follow in a sheet of their own. */
function sizeGroups(proof: Proof, width: number): readonly (readonly number[])[] {
  const groups: number[][] = [];
  let used = width;
  proof.pattern.sizes.forEach((_, size) => {
    const wanted = columnWidth(proof, size) + 2;
    if (used + wanted > width || groups.length === 0) {
      groups.push([]);
      used = fixedWidth(proof.replay.entries);
    }
    groups[groups.length - 1]?.push(size);
    used += wanted;
  });
  return groups;
}

function sheet(proof: Proof, sizes: readonly number[], strong: (text: string) => string): readonly string[] {
  const { entries } = proof.replay;
  const times = timesWidth(entries);
  const widths = sizes.map((size) => columnWidth(proof, size));
  const names = sizes.map((size) => (hasSizes(proof) ? show(proof.pattern.sizes[size] ?? '') : 'count'));
  const line = (place: string, label: string, side: string, often: string, cells: readonly string[]) =>
    [
      padStart(place, 6),
      padEnd(cut(label, labelWidth), labelWidth),
      padEnd(side, 2),
      padStart(often, times),
      ...cells.map((cell, index) => padStart(cell, widths[index] ?? 0)),
    ]
      .join('  ')
      .trimEnd();
  const lines = [line('line', 'row', '', '', names)];
  let section: number | null = null;
  for (const entry of entries) {
    if (entry.section !== section) {
      section = entry.section;
      const title = show(sectionTitle(proof, entry));
      if (title !== '') lines.push(strong(title));
    }
    const often = entry.times === 1 ? '' : `×${entry.times}`;
    const cells = entry.afterPerRepeat === null ? sizes.map((size) => countCell(entry, size)) : [multipleWords(entry.afterPerRepeat)];
    lines.push(line(String(rangeOf(proof.manuscript, entry.span).line), show(entry.label), entry.side ?? '', often, cells));
  }
  return lines;
}
