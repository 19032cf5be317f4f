import type { TableRow } from '../src/manuscript/manuscript.ts';
import { numberLists } from '../src/pattern/front/numbers.ts';
import { found } from './facts/blocks.ts';
import type { Context, Finding, Rule } from './rule.ts';

const numberWords = ['one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine', 'ten'];

/** "Four repeats need", "Sts for 3 reps". */
function repeatsOf(header: string): number | null {
  const match = /\b(\d{1,2}|one|two|three|four|five|six|seven|eight|nine|ten)\s(?:pattern\s)?rep(?:eat)?s?\b/i.exec(header);
  if (match === null) return null;
  const word = numberWords.indexOf(match[1]!.toLowerCase());
  return word >= 0 ? word + 1 : Number(match[1]);
}

/** "8 + 3", "8 sts plus 3", "8". */
function multipleOf(cell: string): { readonly of: number; readonly plus: number } | null {
  const match = /^\s*(?:multiple of\s)?(\d{1,3})(?:\s?sts?)?(?:\s?(?:\+|plus)\s?(\d{1,3})(?:\s?sts?)?)?\s*$/i.exec(cell);
  return match === null ? null : { of: Number(match[1]), plus: Number(match[2] ?? 0) };
}

/** The table's rows, the header first. */
function tables(context: Context): readonly (readonly TableRow[])[] {
  const found = new Map<number, TableRow[]>();
  for (const block of context.manuscript.blocks)
    if (block.kind === 'tableRow') found.set(block.table, [...(found.get(block.table) ?? []), block]);
  return [...found.values()];
}

function multiples(context: Context, rows: readonly TableRow[]): readonly Finding[] {
  const header = rows.find((row) => row.header);
  if (header === undefined) return [];
  const base = header.cells.findIndex((cell) => /^\s*(?:stitch )?multiple\b/i.test(cell.text));
  if (base < 0) return [];
  return header.cells.flatMap((head, column) => {
    const repeats = column === base ? null : repeatsOf(head.text);
    if (repeats === null) return [];
    return rows.flatMap((row) => {
      const multiple = row.header ? null : multipleOf(row.cells[base]?.text ?? '');
      const cell = row.cells[column];
      const number = cell === undefined ? null : /^\s*(\d{1,4})\s*(?:sts?|stitches)?\s*$/i.exec(cell.text);
      if (multiple === null || cell === undefined || number === null) return [];
      const makes = repeats * multiple.of + multiple.plus;
      const stated = Number(number[1]);
      if (makes === stated) return [];
      return [
        found(
          context,
          tableAgrees,
          cell,
          `${repeats} × ${multiple.of} + ${multiple.plus} = ${makes} sts, and the table gives ${stated}. Correct one of the two.`,
          { level: 'error', stated, replayed: makes },
        ),
      ];
    });
  });
}

/** "Cast-on stitches | 56 | 64 | 72" against the first cast-on of the draft. */
function castOns(context: Context, rows: readonly TableRow[]): readonly Finding[] {
  const sizes = context.pattern.sizes.length;
  const first = context.replay.entries.find((entry) => entry.node.type === 'castOn');
  if (first === undefined || first.after.some((value) => value === null)) return [];
  return rows.flatMap((row) => {
    if (!/^\s*(?:cast[- ]on(?: sts?| stitches)?|co sts?|stitches (?:to )?cast[- ]on|sts? cast[- ]on)\s*$/i.test(row.cells[0]?.text ?? ''))
      return [];
    const cells = row.cells.slice(1);
    const values = cells.length === sizes ? cells.map((cell) => numberLists(cell.text, null)[0]?.values[0] ?? null) : [];
    const wrong = values.flatMap((value, size) => (value !== null && value !== first.after[size] ? [size] : []));
    const cell = cells[wrong[0] ?? -1];
    if (cell === undefined || wrong.length === sizes) return [];
    const size = wrong[0]!;
    return [
      found(
        context,
        tableAgrees,
        cell,
        `The table casts on ${values[size]} sts in size ${context.pattern.sizes[size]}, and the instructions cast on ${first.after[size]}. Which is meant?`,
        {
          sizes: wrong,
          stated: values[size]!,
          replayed: first.after[size]!,
          also: [first.span],
        },
      ),
    ];
  });
}

export const tableAgrees: Rule = {
  id: 'table-agrees',
  level: 'query',
  title: 'A table repeats what the instructions say',
  meaning: 'A cell of a table restates a number that follows from another place of the draft, and the two differ.',
  reason: 'Tables are filled in by hand and read on their own; the knitter casts on the wrong number.',
  needsReplay: true,
  wrong: {
    draft: `# Kelp Stitches

## Rib

Multiple of 4 + 3.

Row 1: P3, *k1, p3; rep from * to end.

## To try it

| Pattern | Multiple | Four repeats need |
|---|---|---|
| Rib | 4 + 3 | 20 sts |
`,
  },
  right: {
    draft: `# Kelp Stitches

## Rib

Multiple of 4 + 3.

Row 1: P3, *k1, p3; rep from * to end.

## To try it

| Pattern | Multiple | Four repeats need |
|---|---|---|
| Rib | 4 + 3 | 19 sts |
`,
  },
  check(context): readonly Finding[] {
    return tables(context).flatMap((rows) => [...multiples(context, rows), ...castOns(context, rows)]);
  },
};
