/** Which sizes the draft has, and what they are called: from a directive, the YAML, a sizes line or table, the note, or the lists. */
import type { Block, Manuscript, Passage } from '../../manuscript/manuscript.ts';
import type { SizeList } from './front-matter.ts';
import { numberLists } from './numbers.ts';
import type { Front, Segment, TableLines } from './segments.ts';
import { isSizeName, sizeNamesAt } from './size-names.ts';

type From = NonNullable<SizeList['from']>;

const list = (names: readonly string[], start: number, end: number, from: From): SizeList => ({ names, span: { start, end }, from });

/** `::sizes[S | M | L]` */
function fromDirective(blocks: readonly Block[]): SizeList | null {
  for (const block of blocks) {
    if (block.kind !== 'directive' || block.name !== 'sizes' || block.label === null) continue;
    const text = block.label.text;
    const parts = text.includes('|') ? text.split('|') : (sizeNamesAt(text)?.names ?? text.split(/[,;]/));
    const names = parts.map((part) => part.trim()).filter((part) => part !== '');
    if (names.length > 0) return list(names, block.label.start, block.label.end, 'directive');
  }
  return null;
}

const unquoted = (word: string): string => word.trim().replace(/^["']|["']$/g, '');

/** `sizes: [S, M, L]`, `sizes: S (M, L)`, or a YAML list below `sizes:`. */
function fromYaml(blocks: readonly Block[]): SizeList | null {
  for (const block of blocks) {
    if (block.kind !== 'frontMatter') continue;
    const key = /(?:^|\n)[ \t]{0,8}["']?sizes?["']?[ \t]{0,8}:[ \t]{0,8}([^\n]{0,6000})/i.exec(block.text);
    if (key === null) return null;
    const value = key[1]!.replace(/\s#.{0,200}$/, '').trim();
    const valueAt = key.index + key[0].length - key[1]!.length;
    if (value === '') {
      const names: string[] = [];
      let at = key.index + key[0].length;
      for (;;) {
        const item = /^\r?\n[ \t]{0,8}-[ \t]{1,8}([^\n]{1,80})/.exec(block.text.slice(at, at + 100));
        if (item === null) break;
        names.push(unquoted(item[1]!));
        at += item[0].length;
      }
      return names.length > 0 ? list(names, block.start + valueAt, block.start + at, 'yaml') : null;
    }
    const inside = /^\[(.*)\]$/.exec(value)?.[1];
    const names =
      inside === undefined
        ? (sizeNamesAt(unquoted(value))?.names ?? unquoted(value).split(/[,;|]/).map(unquoted))
        : inside.split(',').map(unquoted);
    const kept = names.map((name) => name.trim()).filter((name) => name !== '');
    return kept.length > 0 ? list(kept, block.start + valueAt, block.start + valueAt + key[1]!.trimEnd().length, 'yaml') : null;
  }
  return null;
}

const oneSize = /^\s*(?:one size\b|single size\b|os\b)/i;
/** Words that may stand between the label and the names: "Sizes: to fit ages 2 (4, 6)". */
const lead =
  /^\s*(?:(?:finished|available in|shown in|comes in|in|for|to fit|fits?|ages?|sizes?|are|the|women's|men's|children's|child|adult|approx)\s*:?\s+){0,4}/i;

function namesIn(text: string, start: number, from: From): SizeList | null {
  const skip = lead.exec(text)![0].length;
  for (const at of skip === 0 ? [0] : [0, skip]) {
    const names = sizeNamesAt(text.slice(at, at + 6_000));
    if (names === null) continue;
    const blank = text.slice(at).length - text.slice(at).trimStart().length;
    return list(names.names, start + at + blank, start + at + names.length, from);
  }
  return null;
}

/** "Sizes S (M, L)" with no colon, "Size 1 (2, 3); shown in size 3". */
const opening = /^\s*sizes?\s*[:=]?\s+(?=\S)/i;

function fromSegments(segments: readonly Segment[], first: number): SizeList | null {
  const front = segments.filter((segment) => segment.at < first || segment.topic !== null);
  for (const segment of front) {
    if (segment.topic !== 'sizes') continue;
    const found = namesIn(segment.text, segment.start, 'line');
    if (found !== null) return found;
    if (oneSize.test(segment.text)) {
      const at = segment.text.search(/\S/);
      return list(['one'], segment.start + at, segment.start + at + oneSize.exec(segment.text)![0].trim().length, 'line');
    }
  }
  for (const segment of front) {
    const match = opening.exec(segment.text);
    if (match === null || /^\s*sizes?\b[^.\n]{0,40}\bonly\b/i.test(segment.text)) continue;
    const found = namesIn(segment.text.slice(match[0].length), segment.start + match[0].length, 'line');
    if (found !== null) return found;
  }
  return fromItems(front);
}

/** One item per size below "Sizes": `- Small: 81 cm`. */
function fromItems(segments: readonly Segment[]): SizeList | null {
  const items = segments.filter((segment) => segment.topic === 'sizes' && segment.block.kind === 'item');
  const names: string[] = [];
  for (const item of items) {
    const name = item.label ?? /^\s*([A-Za-z0-9 -]{1,24}?)\s*(?:[:(=–,]|\s-\s|$)/.exec(item.text)?.[1];
    if (name === undefined || !isSizeName(name)) return null;
    names.push(name.trim());
  }
  if (names.length < 2) return null;
  return list(names, items[0]!.block.start, items.at(-1)!.block.end, 'line');
}

const passageSpan = (cells: readonly Passage[]) => {
  const [a, b] = [cells[0]!, cells.at(-1)!];
  return [a.start + Math.max(0, a.text.search(/\S/)), b.start + b.text.trimEnd().length] as const;
};

function fromTable(table: TableLines): SizeList | null {
  const [header, second] = [table.rows[0], table.rows[1]];
  if (header === undefined || second === undefined || table.topic === 'abbreviations') return null;
  const rows = [header, ...table.rows.slice(1).filter((row) => /^\s*sizes?\s*:?\s*$/i.test(row.cells[0]?.text ?? ''))];
  for (const row of rows) {
    const name = row.cells[0]?.text.trim() ?? '';
    const rest = row.cells.slice(1);
    if (!/^(?:sizes?:?|measurements?|to fit|finished measurements?|)$/i.test(name) || rest.length === 0) continue;
    if (rest.length === 1) {
      const cell = rest[0]!;
      const found = /^sizes?/i.test(name) ? namesIn(cell.text, cell.start, 'table') : null;
      if (found !== null) return found;
      continue;
    }
    const named = rest.map((cell) => cell.text.trim());
    if (!named.every(isSizeName)) continue;
    // Numbers over the columns of any table are no sizes; it must stand where sizes and measures stand, or say so.
    const sized =
      /size|fit/i.test(name) ||
      table.topic === 'sizes' ||
      table.topic === 'measures' ||
      named.some((word) => /^(xs|s|m|l|small)$/i.test(word)) ||
      ((named.every((word, i) => word === String(i + 1)) || named.every((word) => !/\d/.test(word))) && measuresBodies(table));
    if (!sized) continue;
    const [start, end] = passageSpan(rest);
    return list(
      named.map((word) => word.replace(/^sizes?\s+/i, '')),
      start,
      end,
      'table',
    );
  }
  return fromColumn(table);
}

/** A row of the table measures a body or a garment. */
const measuresBodies = (table: TableLines): boolean =>
  table.rows.some((row) =>
    /\b(?:chest|bust|to fit|circumference|length|width|hip|waist|foot|head|sleeve)\b/i.test(row.cells[0]?.text ?? ''),
  );

/** One row per size: `| Size | Chest |` above `| S | 81 cm |`. */
function fromColumn(table: TableLines): SizeList | null {
  const header = table.rows[0];
  if (header === undefined || !/^\s*sizes?\s*$/i.test(header.cells[0]?.text ?? '') || header.cells.length < 2) return null;
  const cells = table.rows.slice(1).map((row) => row.cells[0]);
  const names = cells.map((cell) => cell?.text.trim() ?? '');
  if (names.length < 2 || !names.every(isSizeName)) return null;
  const [start, end] = passageSpan(cells.filter((cell) => cell !== undefined));
  return list(names, start, end, 'table');
}

/** "… the Baby size, with the Lap size in parentheses" */
const twoSizes =
  /^([A-Za-z]{1,12})(?:\ssize)?\s?[,;(]\s?(?:with\s|and\s)?(?:the\s|those for\s(?:the\s)?)?([A-Za-z]{1,12})(?:\ssize)?\s(?:is\s|are\s)?in\s(?:round\s|square\s)?(?:parenthes[ei]s|brackets?)/i;

/** "Numbers are given for Small (Medium, Large)"; "for size Small. Changes for Medium and Large are in parentheses". */
function fromNote(segments: readonly Segment[], first: number): SizeList | null {
  for (const segment of segments) {
    if (segment.at >= first && segment.topic === null) continue;
    const note =
      /\b(?:given|written|instructions? (?:are|is)|directions (?:are|is)|figures|numbers)\b[^.\n]{0,60}?\b(?:for|as|follows:?)\s+(?:the\s)?(?:sizes?\s)?(?=["']?[A-Z0-9])/i.exec(
        segment.text,
      );
    if (note === null) continue;
    const at = note.index + note[0].length;
    const names = sizeNamesAt(segment.text.slice(at, at + 300));
    if (names !== null) return list(names.names, segment.start + at, segment.start + at + names.length, 'note');
    const changes = /^([A-Za-z0-9 -]{1,20}?)\s*[.;,(]\s*(?:changes|figures|numbers)?[^.\n]{0,20}?\bfor\s+(?:sizes?\s)?/i.exec(
      segment.text.slice(at, at + 120),
    );
    const more = changes === null ? null : sizeNamesAt(segment.text.slice(at + changes[0].length, at + 300));
    if (changes !== null && more !== null && isSizeName(changes[1]!)) {
      return list([changes[1]!.trim(), ...more.names], segment.start + at, segment.start + at + changes[0].length + more.length, 'note');
    }
    const two = twoSizes.exec(segment.text.slice(at, at + 120));
    if (two !== null && isSizeName(two[1]!) && isSizeName(two[2]!))
      return list([two[1]!, two[2]!], segment.start + at, segment.start + at + two[0].length, 'note');
  }
  return null;
}

/** "To fit bust 81 [91: 102] cm": the only names the sizes have. */
function fromToFit(front: Front): SizeList | null {
  const lines: { text: string; start: number }[] = [];
  for (const segment of front.segments) {
    const label = segment.label ?? '';
    if (/\bto fit\b/i.test(label)) lines.push({ text: segment.text, start: segment.start });
    const inside = /\b(?:to fit|fits)\b[^\d\n]{0,50}/i.exec(segment.text);
    if (inside !== null && (segment.at < front.firstInstruction || segment.topic !== null)) {
      const at = inside.index + inside[0].length;
      lines.push({ text: segment.text.slice(at), start: segment.start + at });
    }
  }
  for (const table of front.tables) {
    for (const row of table.rows) {
      const cell = row.cells[1];
      if (cell !== undefined && row.cells.length === 2 && /\bto fit\b/i.test(row.cells[0]?.text ?? ''))
        lines.push({ text: cell.text, start: cell.start });
    }
  }
  for (const line of lines) {
    const found = namesIn(line.text, line.start, 'toFit');
    if (found !== null) return found;
  }
  return null;
}

/** "knit [6]", "cast on (12)": a number alone in brackets at the end of a line, behind words. */
const countAlone = /[a-z*][.:;,]?\s{0,4}([([])\s?\d{1,4}\s?[)\]]\.?$/i;

/** The bracket in which the draft prints the count of every row, where it prints counts alone in one: "(k1, kfb) x 6 [18]" is no list there. */
function bracketOfCounts(manuscript: Manuscript): string | null {
  const seen = new Map<string, number>();
  for (const block of manuscript.blocks) {
    if (block.kind !== 'paragraph' && block.kind !== 'item') continue;
    for (const line of block.text.split('\n')) {
      const bracket = countAlone.exec(line.trimEnd().slice(-24))?.[1];
      if (bracket !== undefined) seen.set(bracket, (seen.get(bracket) ?? 0) + 1);
    }
  }
  return [...seen].find(([, times]) => times >= 2)?.[0] ?? null;
}

/** The commonest length of the size lists of the whole draft, where nothing declares the sizes. */
function fromLists(manuscript: Manuscript): SizeList | null {
  const byLength = new Map<number, { count: number; start: number; end: number }>();
  let total = 0;
  const counts = bracketOfCounts(manuscript);
  for (const block of manuscript.blocks) {
    const passages: readonly Passage[] =
      block.kind === 'paragraph' || block.kind === 'item' ? [block] : block.kind === 'tableRow' ? block.cells : [];
    for (const passage of passages) {
      for (const found of numberLists(passage.text, null)) {
        if (found.values.length < (found.bracket === null ? 3 : 2)) continue;
        if (
          found.values.length === 2 &&
          found.bracket === counts &&
          /^\.?\s{0,4}(?:\n|$)/.test(passage.text.slice(found.index + found.length, found.index + found.length + 8))
        )
          continue;
        total += 1;
        const known = byLength.get(found.values.length);
        if (known !== undefined) known.count += 1;
        else
          byLength.set(found.values.length, {
            count: 1,
            start: passage.start + found.index,
            end: passage.start + found.index + found.length,
          });
      }
    }
  }
  const best = [...byLength].sort((a, b) => b[1].count - a[1].count || b[0] - a[0])[0];
  if (best === undefined || best[1].count < 3 || best[1].count * 5 < total * 3) return null;
  const [size, where] = best;
  return list(
    Array.from({ length: size }, (_, i) => String(i + 1)),
    where.start,
    where.end,
    'lists',
  );
}

/** The declared sizes of the draft, or null where it has none. */
export function readSizes(manuscript: Manuscript, front: Front): SizeList | null {
  const declared =
    fromDirective(manuscript.blocks) ??
    fromYaml(manuscript.blocks) ??
    fromSegments(front.segments, front.firstInstruction) ??
    front.tables.map(fromTable).find((found) => found !== null) ??
    fromNote(front.segments, front.firstInstruction) ??
    fromToFit(front);
  return declared ?? fromLists(manuscript);
}
