/** Widths and heights of pattern repeats that the notes speak of, set beside the rows they speak of. */
import type { Span } from '../src/manuscript/manuscript.ts';
import type { Context } from './rule.ts';
import { repeatOf } from './stitch-row.ts';
import { rowsOf } from './tree-walk.ts';
import { stepsUse } from './use.ts';

export interface Note {
  readonly of: number | null;
  readonly rows: number | null;
  /** Words before the numbers: "the cable pattern". */
  readonly subject: string;
  readonly span: Span;
}

const wide = /\b(?:multiple of|worked over|repeat is|repeats? over|worked on|repeat of) (?:a multiple of )?(\d+) (?:sts?|stitches)\b/i;
const tall = /\b(?:and|by|over|x|×) (\d+) (?:rows?|rnds?|rounds?)\b/i;

/** Notes on pattern repeats in what stands before the instructions. */
function notesOf(context: Context): Note[] {
  const { pattern, manuscript } = context;
  const inside = (at: number): boolean => {
    const section = pattern.sections.findLast((each) => each.span.start <= at);
    return section === undefined || section.kind === 'front' || pattern.front.blocks.some((block) => at >= block.start && at < block.end);
  };
  return manuscript.blocks.flatMap((block): Note[] => {
    if ((block.kind !== 'paragraph' && block.kind !== 'item') || !inside(block.start)) return [];
    const match = wide.exec(block.text);
    if (match === null) return [];
    const rest = block.text.slice(match.index, match.index + match[0].length + 60);
    const high = tall.exec(rest.split(/[.;](?:\s|$)/)[0] ?? '');
    const from = Math.max(0, block.text.slice(0, match.index).search(/[^.]*$/));
    const end = match.index + match[0].length;
    return [
      {
        of: Number(match[1]),
        rows: high === null ? null : Number(high[1]),
        subject: block.text.slice(from, match.index),
        span: { start: block.start + match.index, end: block.start + end },
      },
    ];
  });
}

const small: ReadonlySet<string> = new Set([
  'the',
  'note',
  'pattern',
  'patt',
  'stitch',
  'repeat',
  'is',
  'a',
  'of',
  'and',
  'each',
  'this',
  'in',
  'written',
  'worked',
  'given',
  'main',
  'over',
  'all',
]);
const stems = (text: string): string[] =>
  text
    .toLowerCase()
    .split(/[^a-z]+/)
    .filter((word) => word.length > 2 && !small.has(word))
    .map((word) => word.replace(/s$/, ''));

export interface Beside {
  readonly note: Note;
  readonly section: number;
  /** Stitches one repeat takes, row by row, where a row has one. */
  readonly widths: readonly number[];
  /** Rows of the set, where they are numbered from 1 without a gap. */
  readonly height: number | null;
}

/** The set of rows of a note: the section it heads, or the one section whose title its words name. */
function sectionOf(context: Context, note: Note): number | null {
  const { pattern } = context;
  const headed = pattern.sections.findIndex((section) => section.multiple !== null && section.multiple.span.start === note.span.start);
  if (headed >= 0) return headed;
  const rows = rowsOf(pattern);
  const wanted = stems(note.subject);
  const named = pattern.sections.flatMap((section, index) =>
    section.kind !== 'front' &&
    wanted.some((stem) => stems(section.title).includes(stem)) &&
    rows.some((each) => each.section === index && repeatOf(each.row) !== null)
      ? [index]
      : [],
  );
  return named.length === 1 ? (named[0] as number) : null;
}

/** Multiples that head a section worked on real stitches; those that are only defined are proved by the replay. */
function headers(context: Context): Note[] {
  const proved = new Set(context.replay.entries.filter((entry) => entry.afterPerRepeat !== null).map((entry) => entry.section));
  return context.pattern.sections.flatMap(({ multiple }, index) =>
    multiple === null || proved.has(index) || multiple.of <= 1
      ? []
      : [{ of: multiple.of, rows: multiple.rows, subject: '', span: multiple.span }],
  );
}

/** Each note with the set of rows its words name. */
export function stated(context: Context): Beside[] {
  const { pattern } = context;
  const rows = rowsOf(pattern);
  return [...notesOf(context), ...headers(context)].flatMap((note): Beside[] => {
    const section = sectionOf(context, note);
    if (section === null) return [];
    const own = rows.filter(
      (each) => each.section === section && each.row.label !== null && each.row.label.numbers.length > 0 && each.row.label.name === null,
    );
    const widths = own.flatMap(({ row }) => {
      const found = repeatOf(row);
      const use = found === null ? null : stepsUse(pattern, found.children);
      return use === null || use.takes <= 1 ? [] : [use.takes];
    });
    const numbers = [...new Set(own.flatMap(({ row }) => row.label?.numbers ?? []))].sort((a, b) => a - b);
    const last = numbers.at(-1) ?? 0;
    const whole =
      numbers[0] === 1 && own.every(({ row }) => row.label?.andAll === null && row.label.lastBySize === null) && numbers.length === last;
    return [{ note, section, widths: widths.length >= 2 ? widths : [], height: whole && last >= 2 ? last : null }];
  });
}
