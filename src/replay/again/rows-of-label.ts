/** Labels that say what is worked instead of stitches: "Rows 5–8: Rep Rows 1 and 2 twice". */
import { sizeValue } from '../../../grammar/count.ts';
import type { Row, RowsNamed } from '../../../grammar/tree.ts';
import { live } from '../needles.ts';
import { playPlainRows } from '../plain-rows.ts';
import { handOf, labelWords, met, type Play } from '../play.ts';
import { checkStated } from '../stated.ts';
import { playStatement } from '../statements.ts';
import { rowsNamed } from './named-rows.ts';
import { playPasses } from './passes.ts';

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
    const rows = label === null || label.numbers.length === 0 ? null : label.numbers.length;
    const said = does.times;
    const passes = new Map<number, number>();
    for (const size of sizes) {
      const n = said === null ? null : sizeValue(said.count.values, size);
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
    const times = label === null ? 1 : Math.max(1, label.numbers.length);
    // "Next row: Knit, dec 1 st at each end": the shaping lies on this very row.
    if ((does.type === 'plain' || does.type === 'until') && does.inside.length === 0)
      playPlainRows(play, sizes, times, { span: row.span, textSpan: row.span, node: row, label: labelWords(label), change: 0 });
    else {
      const first = play.book.entries.length;
      playStatement(play, does, sizes);
      const own = play.book.entries[first];
      if (own !== undefined && play.book.entries.length === first + 1)
        play.book.entries[first] = { ...own, label: labelWords(label, label?.numbers[0] ?? null) };
    }
  }
  play.depth -= 1;
  for (const stated of row.stated) checkStated(play, stated, sizes, { before, node: row, label: labelWords(label) });
}
