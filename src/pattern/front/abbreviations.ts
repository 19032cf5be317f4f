/** Abbreviations and what they stand for, however the list is set. */
import type { Passage, Span, TableRow } from '../../manuscript/manuscript.ts';
import type { Abbreviation } from './front-matter.ts';
import type { Front, Segment, TableLines } from './segments.ts';

/** Every form a printed term stands for: `st(s)` is `st` and `sts`, `dec('d)` is `dec` and `dec'd`, `k2tog or K2tog` both. */
export function formsOf(term: string): readonly string[] {
  const forms = new Set<string>();
  for (const part of term.split(/\s+or\s+|\s*\/\s*(?=[A-Za-z])(?!\d)|,\s+/)) {
    const word = part.trim();
    if (word === '') continue;
    // Old leaflets print "tog." with its stop; the rows may do without.
    if (/^[A-Za-z0-9]+\.$/.test(word)) forms.add(word.slice(0, -1));
    // "R.S.", "st.st.": with and without the stops
    if (/^(?:[A-Za-z]{1,4}\.){1,2}[A-Za-z]{1,4}\.?$/.test(word)) {
      forms.add(word.replaceAll('.', ''));
      forms.add(word.replaceAll('.', ' ').trim());
    }
    const optional = /^(.*?)\(([’'a-z]{1,4})\)(.*?)\.?$/i.exec(word);
    if (optional !== null && optional[1] !== '') {
      forms.add(`${optional[1]}${optional[3]}`.trim());
      forms.add(`${optional[1]}${optional[2]}${optional[3]}`.replaceAll('’', "'").trim());
    } else forms.add(word.replace(/^\((.*)\)$/, '$1'));
  }
  return [...forms];
}

const sentenceWords = /\b(?:the|and|to|of|then|with|is|into|from|on|until|through|are|next|each)\b/i;
/** Words that begin an instruction, not a definition. */
const noTerm = /^(?:rows?|rnds?|rounds?|next|multiple|note|sizes?|set-?up|step|repeat row|rs rows?|ws rows?)\b[^a-z]*\d*/i;

/** Whether the words before a separator can be a term: short, no sentence. */
function isTerm(words: string): boolean {
  const term = words.trim();
  if (term === '' || term.length > 28 || /[=;:]/.test(term.replace(/\b\d:\d\b/g, ''))) return false;
  if (term.split(/\s+/).length > 4 || sentenceWords.test(term)) return false;
  if (/^(?:rows?|rnds?|rounds?)(?:\(s\)|s)?$/i.test(term)) return true;
  return /^[A-Za-z0-9*[\](]/.test(term) && !noTerm.test(term);
}

const longestTerm = 60;

interface Mark {
  readonly at: number;
  readonly length: number;
}

const separators: readonly RegExp[] = [/\s{0,3}=\s{0,3}/g, /:\s+|\s:\s?/g, /\s[–—-]\s|\s–|\t/g, /\s?[–—]\s?/g];

function marksOf(text: string, pattern: RegExp): readonly Mark[] {
  const marks: Mark[] = [];
  const depth: number[] = [];
  let level = 0;
  for (const letter of text) {
    depth.push(level);
    for (let i = 1; i < letter.length; i += 1) depth.push(level);
    if (letter === '(' || letter === '[') level += 1;
    else if (letter === ')' || letter === ']') level = Math.max(0, level - 1);
    else if (letter === '\n') level = 0;
  }
  const search = new RegExp(pattern.source, 'g');
  for (let match = search.exec(text); match !== null; match = search.exec(text)) {
    if (depth[match.index] === 0) marks.push({ at: match.index, length: match[0].length });
    if (match[0].length === 0) search.lastIndex += 1;
  }
  return marks;
}

/** The start of the term that ends at `end`: after the last end of an entry. */
function termStart(text: string, end: number, floor: number): number {
  let depth = 0;
  for (let at = end - 1; at >= floor; at -= 1) {
    // No term is as long as this; the words belong to the meaning before.
    if (end - at > longestTerm) return -1;
    const letter = text[at]!;
    if (letter === ')' || letter === ']') depth += 1;
    else if (letter === '(' || letter === '[') depth -= 1;
    if (depth > 0) continue;
    if (letter === '\n' || letter === ';' || letter === '•' || letter === '·' || letter === '|') return at + 1;
    if ((letter === '.' || letter === ',') && /\s/.test(text[at + 1] ?? ' ')) return at + 1;
  }
  return floor;
}

interface Entry {
  readonly from: number;
  readonly termEnd: number;
  readonly meaning: number;
}

function entriesBy(text: string, pattern: RegExp): readonly Entry[] {
  const entries: Entry[] = [];
  let floor = 0;
  for (const mark of marksOf(text, pattern)) {
    const from = termStart(text, mark.at, floor);
    const atBoundary = from >= 0 && (from > floor || floor === 0);
    if (!atBoundary || !isTerm(text.slice(from, mark.at).replace(/^[\s*•-]+/, ''))) continue;
    entries.push({ from, termEnd: mark.at, meaning: mark.at + mark.length });
    floor = mark.at + mark.length;
  }
  return entries;
}

function bestEntries(text: string): readonly Entry[] {
  let best: readonly Entry[] = [];
  for (const pattern of separators) {
    const entries = entriesBy(text, pattern);
    const better =
      entries.length > best.length || (entries.length === best.length && entries.length > 0 && entries[0]!.termEnd < best[0]!.termEnd);
    if (better) best = entries;
  }
  return best;
}

/** A stretch without the blanks and stops around it. */
function tight(text: string, from: number, to: number): { text: string; from: number; to: number } {
  let start = from;
  let end = to;
  while (start < end && /[\s*•,;]/.test(text[start]!)) start += 1;
  while (end > start && /[\s,;]/.test(text[end - 1]!)) end -= 1;
  if (text[end - 1] === '.' && !/\b(?:etc|approx)\.$/.test(text.slice(start, end))) end -= 1;
  return { text: text.slice(start, end), from: start, to: end };
}

function make(term: string, meaning: string, span: Span, meaningSpan: Span): Abbreviation | null {
  const words = term.replace(/\s+/g, ' ').trim();
  const means = meaning.replace(/\s+/g, ' ').trim();
  if (words === '' || means === '') return null;
  return { term: words, forms: formsOf(words), meaning: means, span, meaningSpan };
}

/** `BO / CO` with `bind off / cast on`: one entry each, in order. */
function pairUp(term: Placed, meaning: Placed): readonly Abbreviation[] {
  const terms = split(term);
  const meanings = split(meaning);
  const whole = { start: term.start, end: meaning.end };
  if (terms.length < 2 || terms.length !== meanings.length) {
    const one = make(term.text, meaning.text, whole, { start: meaning.start, end: meaning.end });
    return one === null ? [] : [one];
  }
  return terms.flatMap((part, i) => {
    const means = meanings[i]!;
    const one = make(part.text, means.text, { start: part.start, end: part.end }, { start: means.start, end: means.end });
    return one === null ? [] : [one];
  });
}

interface Placed {
  readonly text: string;
  readonly start: number;
  readonly end: number;
}

/** Parts around a slash with blanks; a tight slash divides words only (`RS/WS`, not `2/2 LC`). */
function split(placed: Placed): readonly Placed[] {
  const parts: Placed[] = [];
  const pattern = /\s\/\s|(?<=[A-Za-z)])\/(?=[A-Za-z])/g;
  let from = 0;
  const push = (to: number): void => {
    const piece = tight(placed.text, from, to);
    parts.push({ text: piece.text, start: placed.start + piece.from, end: placed.start + piece.to });
  };
  for (let match = pattern.exec(placed.text); match !== null; match = pattern.exec(placed.text)) {
    push(match.index);
    from = match.index + match[0].length;
  }
  push(placed.text.length);
  return parts;
}

const place = (text: string, from: number, to: number, offset: number): Placed => {
  const piece = tight(text, from, to);
  return { text: piece.text, start: offset + piece.from, end: offset + piece.to };
};

/** `k **knit**`: the meaning in bold, the term before it. */
function meaningsInBold(segment: Segment): readonly Abbreviation[] {
  const { text, start } = segment;
  let from = 0;
  return segment.emphasis.flatMap((span) => {
    const term = place(text, from, span.start - start, start);
    const meaning = place(text, span.start - start, span.end - start, start);
    from = span.end - start;
    return isTerm(term.text) ? pairUp(term, meaning) : [];
  });
}

/** `**k** knit`, or `K, knit; P, purl`: no separator of their own. */
function fallback(segment: Segment): readonly Abbreviation[] {
  const { text, start } = segment;
  const bold = segment.emphasis.filter((span) => isTerm(text.slice(span.start - start, span.end - start).replaceAll('*', '')));
  if (bold.length > 0 && text.slice(0, Math.max(0, bold[0]!.start - start)).replace(/[\s*_•-]/g, '') !== '') {
    return meaningsInBold(segment);
  }
  if (bold.length > 0) {
    return bold.flatMap((span, i) => {
      const end = bold[i + 1]?.start ?? start + text.length;
      return pairUp(place(text, span.start - start, span.end - start, start), place(text, span.end - start, end - start, start));
    });
  }
  return clauseEntries(segment);
}

/** `K, knit; P, purl`, `k knit · p purl`, `k knit, p purl`, `k (knit), p (purl)`: most terms begin like their meaning. */
function clauseEntries(segment: Segment): readonly Abbreviation[] {
  const divided = parted(segment, /[;\n·•]|(?<=\s)\/(?=\s)/, 2);
  if (divided.length >= 2) return divided;
  const bracketed = inBrackets(segment);
  return bracketed.length >= 3 ? bracketed : parted(segment, /,/, 4);
}

const clauseTerm =
  /^[\s.|—–]*([A-Za-z]\.\s\d{1,2}\s[A-Za-z]\.|(?:[A-Za-z]{1,4}\.){2,3}|[A-Za-z][A-Za-z0-9()'&]{0,9}(?:\sst)?|[A-Za-z][A-Za-z0-9]{0,6}(?:\([a-z]{1,3}\))?\.)(?:,\s?|\s)(\S[\s\S]*)$/;
const beginAlike = (term: string, meaning: string): boolean => meaning[0]!.toLowerCase() === term[0]!.toLowerCase();

/** Entries between semicolons, points or lines; between commas only what begins alike is an entry, the rest goes on with the one before. */
function parted(segment: Segment, divider: RegExp, least: number): readonly Abbreviation[] {
  const { text, start } = segment;
  const clauses = text.split(divider);
  const commas = divider.source === ',';
  const entries: { from: number; term: string; meaning: number; end: number }[] = [];
  let at = 0;
  let matching = 0;
  for (const clause of clauses) {
    const match = clauseTerm.exec(clause);
    const alike = match !== null && beginAlike(match[1]!, match[2]!);
    const end = at + clause.length;
    if (match !== null && (alike || !commas)) {
      if (alike) matching += 1;
      entries.push({ from: at + clause.indexOf(match[1]!), term: match[1]!, meaning: end - match[2]!.length, end });
    } else if (commas && entries.length > 0) entries[entries.length - 1]!.end = end;
    at = end + 1;
  }
  if (entries.length < least || matching * 5 < entries.length * 3 || (!commas && entries.length * 3 < clauses.length * 2)) return [];
  return entries.flatMap((one) =>
    pairUp(place(text, one.from, one.from + one.term.length, start), place(text, one.meaning, one.end, start)),
  );
}

/** `kfb (knit into front and back), st(s) (stitch(es))`: the meaning in brackets behind a blank. */
function inBrackets(segment: Segment): readonly Abbreviation[] {
  const { text, start } = segment;
  const found: Abbreviation[] = [];
  let from = 0;
  let depth = 0;
  let open = -1;
  for (let at = 0; at < text.length; at += 1) {
    const letter = text[at]!;
    if (letter === '(') {
      if (depth === 0 && open < 0 && /\s/.test(text[at - 1] ?? '')) open = at;
      depth += 1;
    } else if (letter === ')') {
      depth = Math.max(0, depth - 1);
      if (depth > 0 || open < 0) continue;
      const term = place(text, from, open, start);
      if (isTerm(term.text) && term.text.length <= 12) found.push(...pairUp(term, place(text, open + 1, at, start)));
      open = -1;
      from = at + 1;
    } else if (depth === 0 && (letter === ';' || letter === '\n' || letter === ',')) from = at + 1;
  }
  return found;
}

/** Lines that begin with a term in bold: "**brk** brioche knit: knit the st together with its yarn over". */
function boldLines({ text, start, emphasis }: Segment): number {
  return emphasis.filter((span) => /^[\s*_•-]*$/.test(text.slice(text.lastIndexOf('\n', span.start - start - 1) + 1, span.start - start)))
    .length;
}

function fromSegment(segment: Segment): readonly Abbreviation[] {
  // A label that is no topic was the first term of the list: "k: knit. p: purl".
  const entries = bestEntries(segment.text);
  if (entries.length === 0 || boldLines(segment) > entries.length) return fallback(segment);
  // One explanation with a colon among many without ("c. 6 f., cable thus: slip …") does not set the style of the list.
  const plain = entries.length < 3 && segment.emphasis.length === 0 ? clauseEntries(segment) : [];
  if (plain.length > entries.length * 3) return plain;
  return entries.flatMap((entry, i) => {
    const next = entries[i + 1]?.from ?? segment.text.length;
    return pairUp(place(segment.text, entry.from, entry.termEnd, segment.start), place(segment.text, entry.meaning, next, segment.start));
  });
}

const headWords =
  /^(?:abbr\w*\.?|terms?|meaning|means|(?:what )?(?:it|they|this) means?|stands for|definitions?|explanation|symbol|stitch|description|technique|instructions?|)$/i;

function fromRow(row: TableRow): readonly Abbreviation[] {
  const cells: readonly Passage[] = row.cells;
  if (row.header && cells.every((cell) => headWords.test(cell.text.trim()))) return [];
  const found: Abbreviation[] = [];
  for (let i = 0; i + 1 < cells.length; i += 2) {
    const [term, meaning] = [cells[i]!, cells[i + 1]!];
    if (!isTerm(term.text.replace(/\s\/\s/g, ' '))) continue;
    found.push(...pairUp(place(term.text, 0, term.text.length, term.start), place(meaning.text, 0, meaning.text.length, meaning.start)));
  }
  return found;
}

const isKey = (table: TableLines): boolean =>
  table.topic === 'abbreviations' || /^abbr|^abbreviation/i.test(table.rows[0]?.cells[0]?.text.trim() ?? '');

/** A definition a label swallowed: `- k2tog: knit 2 together` as an item has the label `k2tog`. */
function whole(segment: Segment, source: string): Segment {
  const from = segment.label === null ? segment.start : source.lastIndexOf(segment.label, segment.start - segment.label.length);
  if (segment.label === null || from < segment.block.start || segment.topic !== 'abbreviations') return segment;
  if (/abbr|glossary|key|special|stitch(?:es)? guide|terms|short (?:forms|words)/i.test(segment.label)) return segment;
  const block = segment.block;
  if (block.kind !== 'paragraph' && block.kind !== 'item') return segment;
  return {
    ...segment,
    label: null,
    emphasis: block.emphasis,
    text: block.text.slice(from - block.start, segment.start - block.start) + segment.text,
    start: from,
  };
}

/** Every abbreviation the draft explains. */
export function readAbbreviations(front: Front, source: string): readonly Abbreviation[] {
  const found: Abbreviation[] = [];
  for (const segment of front.segments) {
    if (segment.topic === 'abbreviations') found.push(...fromSegment(whole(segment, source)));
  }
  for (const table of front.tables) {
    if (isKey(table)) for (const row of table.rows) found.push(...fromRow(row));
  }
  return found.sort((a, b) => a.span.start - b.span.start);
}
