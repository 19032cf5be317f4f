/** Labels that say what is worked instead of stitches: "Rows 5–8: Rep Rows 1 and 2 twice". */
import { sizeValue } from '../../../grammar/count.ts';
import type { Count, Label, Row, RowsNamed, Segment, Statement } from '../../../grammar/tree.ts';
import { live } from '../needles.ts';
import { playPlainRows } from '../plain-rows.ts';
import { handOf, labelWords, met, type Play } from '../play.ts';
import { checkStated } from '../stated.ts';
import { playStatement } from '../statements.ts';
import { rowsNamed } from './named-rows.ts';
import { playPasses } from './passes.ts';

/** Most rows of one label that are shaped one by one. */
const mostRows = 400;

/** How many rows the label stands for: "Rows 5–8", "Next 3 (5) rows". */
function rowsLabelled(label: Label | null): Count {
  const one: Count = { type: 'count', values: [1], span: label?.span ?? { start: 0, end: 0 } };
  if (label === null) return one;
  const { lastBySize, numbers } = label;
  if (label.next === null && lastBySize !== null && numbers.length > 1)
    return { ...one, values: lastBySize.map((last) => numbers.filter((number) => number <= (last ?? 0)).length) };
  return label.next ?? { ...one, values: [Math.max(1, label.numbers.length)] };
}

/** The command worked on each of so many rows; null where it names rows of its own or speaks of none. */
function onEveryRow(does: Statement, count: Count): Statement | null {
  const isThis = (segments: readonly Segment[]): boolean => segments.length === 1 && segments[0]?.kind === 'this';
  const rows = (segments: readonly Segment[]): readonly Segment[] => segments.map((segment) => ({ ...segment, kind: 'next', n: count }));
  if (does.type === 'shape' && isThis(does.schedule)) return { ...does, schedule: rows(does.schedule) };
  if (does.type === 'edgeRows' && does.parts.length === 1 && does.parts.every((part) => isThis(part.rows)))
    return { ...does, parts: does.parts.map((part) => ({ ...part, rows: rows(part.rows) })) };
  return null;
}

/** Plays a statement as the row of a label: where one row is worked, it goes by the label's number. */
function playLabelled(play: Play, statement: Statement, sizes: readonly number[], label: Label | null, number: number | null): void {
  const first = play.book.entries.length;
  playStatement(play, statement, sizes);
  const own = play.book.entries[first];
  if (own !== undefined && play.book.entries.length === first + 1) play.book.entries[first] = { ...own, label: labelWords(label, number) };
}

/** "Rows 5–8: Rep Rows 1 and 2 twice", "Row 4: As Row 2": the label's own length says how many rows are worked. */
export function playRowsOfLabel(play: Play, row: Row, sizes: readonly number[]): void {
  const { does, label } = row;
  if (does === null) return;
  if (play.depth > 8) return;
  play.depth += 1;
  const before = play.hands.map((hand) => live(hand.needles));
  // "Rnds 1–5: As Head": the rounds of those numbers.
  const ofPiece =
    does.type === 'refer' &&
    does.to === 'piece' &&
    does.name !== null &&
    does.rows.length === 0 &&
    does.until === null &&
    does.from === undefined &&
    label !== null &&
    label.name === null &&
    label.numbers.length > 0;
  if (does.type === 'repeatRows' || (does.type === 'refer' && (does.to === 'row' || ofPiece))) {
    const named: RowsNamed =
      does.type === 'repeatRows'
        ? does.rows
        : ofPiece
          ? { kind: 'numbers', count: null, numbers: label.numbers, name: null, of: does.name, mark: null, toMark: null }
          : { kind: 'numbers', count: null, numbers: does.rows, name: null, of: does.name, mark: null, toMark: null };
    // "Row 12: As Row 12": the row is to be worked like itself.
    const own =
      named.of === null && label?.name === null && !ofPiece ? named.numbers.find((number) => label.numbers.includes(number)) : undefined;
    if (own !== undefined) {
      for (const size of sizes) {
        met(play, { kind: 'rowMissing', span: does.span, numbers: { row: own }, words: { itself: 'yes' } }, size, row, labelWords(label));
        handOf(play, size).needles.sure = false;
      }
      play.depth -= 1;
      return;
    }
    const found = rowsNamed(play, named, handOf(play, sizes[0] as number), sizes[0] as number);
    if (found === null || found.missing !== null || found.list.length === 0) {
      for (const size of sizes) {
        met(
          play,
          { kind: 'rowMissing', span: does.span, numbers: found?.missing ? { row: found.missing } : {}, words: { name: named.name ?? '' } },
          size,
          row,
          labelWords(label),
        );
        handOf(play, size).needles.sure = false;
      }
      play.depth -= 1;
      return;
    }
    const { list } = found;
    const length = list.reduce((sum, each) => sum + each.times, 0);
    const labelled = rowsLabelled(label);
    const said = does.times;
    const passes = new Map<number, number>();
    for (const size of sizes) {
      const n = said === null ? null : sizeValue(said.count.values, size);
      const rows = label === null || label.numbers.length === 0 ? null : sizeValue(labelled.values, size);
      const byLabel = rows === null ? null : rows / length;
      if (n !== null && byLabel !== null && n !== byLabel) {
        met(
          play,
          {
            kind: 'rangeDiffers',
            span: said?.count.span ?? does.span,
            numbers: { labelRows: rows ?? 0, named: length, times: n, rows: n * length },
            words: { label: labelWords(label) },
          },
          size,
          row,
          labelWords(label),
        );
      } else if (byLabel !== null && n === null && !Number.isInteger(byLabel)) {
        met(
          play,
          {
            kind: 'rangeDiffers',
            span: does.span,
            numbers: { labelRows: rows ?? 0, named: length, times: 0, rows: length },
            words: { label: labelWords(label) },
          },
          size,
          row,
          labelWords(label),
        );
      }
      passes.set(size, Math.max(1, Math.floor(byLabel ?? n ?? 1)));
    }
    const worked = list.map((each) => ({ ...each, textSpan: row.span, label: labelWords(label, label?.numbers[0] ?? null) }));
    playPasses(play, worked, passes, row.span, row);
  } else {
    const count = rowsLabelled(label);
    const times = Math.max(1, ...sizes.map((size) => sizeValue(count.values, size) ?? 0));
    // "Next 3 rows: Dec 1 st at each end", "Rows 5 and 6: BO 3 sts at beg of each row": on every row of the label
    const onEach = onEveryRow(does, count);
    // "Next row: Knit, dec 1 st at each end": the shaping lies on this very row.
    const shaped = (does.type === 'plain' || does.type === 'until') && does.inside.length > 0;
    const single = does.type === 'plain' && does.count.values.every((value) => value === 1);
    if (onEach !== null) playLabelled(play, onEach, sizes, label, label?.numbers[0] ?? null);
    else if (shaped)
      for (let at = 0; at < (single ? Math.min(times, mostRows) : 1); at += 1) {
        const working = single ? sizes.filter((size) => (sizeValue(count.values, size) ?? 0) > at) : sizes;
        playLabelled(play, does, working, label, label?.numbers[at] ?? null);
      }
    else if (does.type === 'plain' || does.type === 'until')
      playPlainRows(play, sizes, times, { span: row.span, textSpan: row.span, node: row, label: labelWords(label), change: 0 });
    else playLabelled(play, does, sizes, label, label?.numbers[0] ?? null);
  }
  play.depth -= 1;
  for (const stated of row.stated) checkStated(play, stated, sizes, { before, node: row, label: labelWords(label) });
}
