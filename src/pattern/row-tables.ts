/**
 * Tables whose rows are rows of knitting: a column of numbers or labels, one with the instruction, and perhaps one for the
 * side, the colour and the count after the row.
 *
 *     | Rnd | Yarn | Work | Sts |
 *     | 1   | B    | *k5, sl 1; rep from * to end | 132 |
 */
import { numberAt } from '../../grammar/numbers.ts';
import { readLabel } from '../../grammar/read.ts';
import type { Label, Stated } from '../../grammar/tree.ts';
import type { Vocabulary } from '../../grammar/vocabulary.ts';
import type { Passage, TableRow } from '../manuscript/manuscript.ts';

export interface KnittingRow {
  readonly label: Label;
  /** The cell with the instruction. */
  readonly body: Passage;
  readonly stated: Stated | null;
}

interface Words {
  readonly vocabulary: Vocabulary;
  readonly sizes: readonly string[];
}

const unitHead = /^((?:(?:dec|inc|decrease|increase|shaping|raglan|crown) )?(?:rows?|rnds?|rounds?))(?: (?:no|number|#)?\.?)?$/i;
const countHead =
  /^(?:sts?|stitches|stitch count|st count|count|total|(?:sts|stitches) (?:after|left|rem|remain|remaining|on needles?)|total sts)\.?$/i;
const sideCell = /^(RS|WS|right side|wrong side)$/i;

const words = (passage: Passage | undefined): string => (passage?.text ?? '').replace(/\s+/g, ' ').trim();

/** The label of a cell: "Row 3 (RS)" as it stands, or "3" and "5–8" under a heading that says what is numbered. */
function labelOf(cell: Passage, head: string, options: Words): Label | null {
  const label = readLabel(cell.text, cell.start, options);
  if (label !== null) return label;
  const unit = unitHead.exec(head)?.[1];
  if (unit === undefined || !/^\s*\d/.test(cell.text)) return null;
  const before = `${unit.replace(/s$/i, '')} `;
  const made = readLabel(`${before}${cell.text}`, cell.start - before.length, options);
  return made === null ? null : { ...made, span: { start: cell.start, end: made.span.end } };
}

/** The rows of a table of knitting; none when its first column labels nothing. */
export function knittingRows(rows: readonly TableRow[], options: Words): KnittingRow[] {
  const heads = rows.find((row) => row.header)?.cells.map((cell) => words(cell)) ?? [];
  const out: KnittingRow[] = [];
  for (const row of rows) {
    const [first, ...rest] = row.cells;
    if (row.header || first === undefined || rest.length === 0) continue;
    const label = labelOf(first, heads[0] ?? '', options);
    if (label === null) continue;
    let side = label.side;
    let sideSpan = label.sideSpan;
    let stated: Stated | null = null;
    const bodies: Passage[] = [];
    rest.forEach((cell, index) => {
      const text = words(cell);
      if (sideCell.test(text)) {
        side ??= /^(?:RS|right)/i.test(text) ? 'RS' : 'WS';
        sideSpan ??= { start: cell.start, end: cell.end };
        return;
      }
      const from = cell.text.length - cell.text.trimStart().length;
      const number = countHead.test(heads[index + 1] ?? '') ? numberAt(cell.text, from, options.sizes.length) : null;
      if (number === null) bodies.push(cell);
      else {
        const span = { start: cell.start + from, end: cell.start + from + number.length };
        stated = { type: 'stated', count: { type: 'count', values: number.values, span }, what: 'total', scope: null, span };
      }
    });
    const told = heads.findIndex(
      (head, index) =>
        index > 0 && /^(?:instructions?|work|pattern|what to (?:do|knit)|how|stitches to work|directions?|text)\b/i.test(head),
    );
    const named = told > 0 ? row.cells[told] : undefined;
    const body =
      named !== undefined && bodies.includes(named)
        ? named
        : bodies.reduce<Passage | null>(
            (longest, cell) => (longest === null || words(cell).length > words(longest).length ? cell : longest),
            null,
          );
    if (body !== null && words(body) !== '') out.push({ label: { ...label, side, sideSpan }, body, stated });
  }
  return out;
}
