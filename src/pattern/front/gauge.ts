/** Gauge (tension): stitches and rows over a length, the fabric, the needle, and whether the swatch was blocked. */
import type { Gauge, Measure } from './front-matter.ts';
import { measuresIn } from './measure-words.ts';
import { type FoundList, numberLists } from './numbers.ts';
import type { Front, Segment } from './segments.ts';

interface Count {
  readonly kind: 'stitches' | 'rows' | 'rounds';
  readonly value: number;
  readonly start: number;
  readonly end: number;
}

const counted = /^\s{0,2}(sts?\b\.?|stitch(?:es)?\b|rows?\b|rnds?\b\.?|rounds?\b|r\b)/i;

function countsIn(text: string, lists: readonly FoundList[]): readonly Count[] {
  const counts: Count[] = [];
  for (const list of lists) {
    const end = list.index + list.length;
    const word = counted.exec(text.slice(end, end + 12));
    const value = list.values[0];
    if (word === null || value == null || list.values.length > 1) continue;
    const first = word[1]![0]!.toLowerCase();
    const kind = first === 's' ? 'stitches' : /^r(nd|ound)/i.test(word[1]!) ? 'rounds' : 'rows';
    counts.push({ kind, value, start: list.index, end: end + word[0].length });
  }
  return counts;
}

interface Draft {
  stitches: Count | null;
  rows: Count | null;
  over: { measure: Measure; start: number; end: number }[];
}

const sameLength = (a: Measure, b: Measure): boolean => a.unit === b.unit && a.values[0] === b.values[0];

type Piece =
  | { readonly at: number; readonly count: Count }
  | { readonly at: number; readonly over: { measure: Measure; start: number; end: number } };

/** Counts and lengths in the order printed, gathered into gauges: `6 sts = 1 inch, 8 rows = 1 inch` is one. */
function gather(pieces: readonly Piece[]): readonly Draft[] {
  const drafts: Draft[] = [];
  let open: Draft | null = null;
  /** Lengths printed before their counts: `10 cm = 22 sts`. */
  let ahead: Draft['over'] = [];
  for (const piece of pieces) {
    if ('over' in piece) {
      if (open === null || (open.stitches === null && open.rows === null)) ahead.push(piece.over);
      else if (!open.over.some((one) => sameLength(one.measure, piece.over.measure))) open.over.push(piece.over);
      continue;
    }
    const slot: 'stitches' | 'rows' = piece.count.kind === 'stitches' ? 'stitches' : 'rows';
    if (open === null || open[slot] !== null || (slot === 'stitches' && open.over.length > 0)) {
      open = { stitches: null, rows: null, over: ahead };
      ahead = [];
      drafts.push(open);
    }
    open[slot] = piece.count;
  }
  return drafts.flatMap(apart);
}

/** "20 sts = 4 in in the round; 20 sts and 28 rows flat": a gauge with no length of its own is over the length before it. */
function shareLength(drafts: readonly Draft[]): readonly Draft[] {
  let over: Draft['over'] = [];
  return drafts.map((draft) => {
    const own = draft.over.length > 0 ? draft.over : over;
    over = own;
    return { ...draft, over: own };
  });
}

/** `6 sts = 1 in, 17 rows = 2 in`: rows over another length than the stitches are a gauge of their own. */
function apart(draft: Draft): readonly Draft[] {
  const { stitches, rows, over } = draft;
  if (stitches === null || rows === null || rows.start < stitches.end) return [draft];
  const before = over.filter((one) => one.start > stitches.end && one.end <= rows.start);
  const later = over.filter((one) => one.start >= rows.end);
  if (before.length === 0 || later.length === 0) return [draft];
  return [
    { stitches, rows: null, over: before },
    { stitches: null, rows, over: later },
  ];
}

const fabricAfter =
  /^[\s)\]]{0,4}(?:sq(?:uare|\.)?\s)?(?:,\s)?\s{0,2}(?:(?:in|over|measured over|measured in|measured across|worked in|when worked in|of)\s)+(?:the\s)?([^,.;:\n()]{2,60})/i;
const fabricBefore =
  /(?:\b(?:[Oo]ver|[Ii]n|[Ww]orked in|[Ff]or)\s)?((?:[A-Z][A-Za-z-]*|[Ss]t\.?|[Ss]tocking|[Ss]tockinette|[Gg]arter|[Mm]oss|[Rr]ib|[a-z]+ (?:st|stitch|pattern|patt))(?:\s[A-Za-z-]+){0,3})\s?[:=]\s?$/;
const needleWords =
  /\b(?:on|using|with)\s((?:[^,;\n()]|\([^)\n]{0,30}\)){0,60}?\b(?:needles?|mm|dpns?|circulars?)\b(?:\s(?:needles?|circulars?))?)/i;

const cutFabric = (words: string): string =>
  words
    .replace(/\s(?:on|using|with|after|before|when|worked|unblocked|blocked|knit|and\s\d).*$/i, '')
    .replace(/\s+/g, ' ')
    .trim();

/** "22 sts in st st on 4 mm needles = 10 cm": the words between the counts and their length. */
function between(draft: Draft, text: string): string {
  const counts = [draft.stitches, draft.rows].filter((count) => count !== null);
  const end = Math.max(...counts.map((count) => count.end));
  const over = draft.over.find((one) => one.start >= end);
  return over === undefined ? '' : text.slice(end, over.start);
}

/** The lengths printed with the counts, not those taken over from the gauge before. */
function ownLengths(draft: Draft): Draft['over'] {
  const counts = [draft.stitches, draft.rows].filter((count) => count !== null);
  const first = Math.min(...counts.map((count) => count.start));
  return draft.over.filter((one) => one.start > first || first - one.end < 12);
}

function blockedIn(text: string): boolean {
  const match = /\b(un|before\s|not\s)?(?:wet[- ]?)?block(?:ed|ing)\b/i.exec(text);
  return match !== null && match[1] === undefined;
}

function lineUp(draft: Draft, segment: Segment, from: number, to: number): Gauge {
  const { text, start } = segment;
  const parts = [draft.stitches, draft.rows, ...ownLengths(draft)].filter((part) => part !== null);
  const first = Math.min(...parts.map((part) => part.start));
  const last = Math.max(...parts.map((part) => part.end));
  const tail = text.slice(last, to);
  const head = text.slice(from, first);
  const sentence = /^(?:[^.;]|\.(?=\S)){0,300}/.exec(tail)![0];
  const middle = between(draft, text);
  const behind = fabricAfter.exec(sentence.replace(/^\s?["″]/, ''))?.[1] ?? fabricAfter.exec(middle)?.[1];
  const ahead = fabricBefore.exec(head)?.[1] ?? labelFabric(segment.label);
  const fabric = behind === undefined ? null : cutFabric(behind);
  const needle = needleWords.exec(sentence)?.[1] ?? needleWords.exec(middle)?.[1] ?? needleWords.exec(head)?.[1];
  return {
    stitches: draft.stitches?.value ?? null,
    rows: draft.rows?.value ?? null,
    unit: draft.rows === null ? null : draft.rows.kind === 'rounds' ? 'rounds' : 'rows',
    over: draft.over.map((one) => one.measure),
    fabric: fabric !== null && fabric !== '' ? fabric : (ahead?.trim() ?? null),
    needle: needle?.trim() ?? null,
    blocked: blockedIn(head + tail),
    span: { start: start + first, end: start + last + closes(text, first, last) },
    stitchSpan: draft.stitches === null ? null : { start: start + draft.stitches.start, end: start + draft.stitches.end },
  };
}

/** 1 where the words end inside a bracket that closes there: `= 4 in (10 cm)`. */
function closes(text: string, from: number, to: number): number {
  const words = text.slice(from, to);
  return words.split(/[([]/).length > words.split(/[)\]]/).length && /[)\]]/.test(text[to] ?? '') ? 1 : 0;
}

/** "Gauge in St st" names the fabric in its label; "St st" alone does too. */
function labelFabric(label: string | null): string | undefined {
  if (label === null) return undefined;
  const named = /\b(?:gauge|tension)\b\s*(?:[-,(–]|in|over|for)\s*(?:in\s|over\s)?([^)]{2,50})/i.exec(label)?.[1];
  if (named !== undefined) return named.trim();
  return /\b(?:gauge|tension)\b/i.test(label) ? undefined : label.replace(/^(?:over|in|worked in|for)\s/i, '');
}

/** A gauge outside its own section must look like one beyond doubt: "18 sts and 24 rows = 4 in". */
const shape =
  /\b\d{1,2}(?:\.\d|½|¼|¾)?\s?(?:sts?|stitches)\b[^.;\n]{0,40}?(?:=|\bto\b|\bper\b|\bover\b|\bmeasures?\b|\/)\s?(?:4|10|1|2|5|an|one)?\s?(?:in\b|inch|ins\b|"|cm\b)/i;

function readSegment(segment: Segment): readonly Gauge[] {
  const { text } = segment;
  const lists = numberLists(text, null);
  const counts = countsIn(text, lists);
  if (counts.length === 0) return [];
  const all = measuresIn(text, segment.start, null);
  const overs = all.filter(
    (item) => (item.measure.unit === 'cm' || item.measure.unit === 'in') && item.measure.values.length === 1 && item.side !== 'height',
  );
  const pieces: Piece[] = [
    ...counts.map((count) => ({ at: count.start, count })),
    ...overs.map((over) => {
      // A square `10 × 10 cm` ends behind its second side.
      const other = over.side === 'width' ? all.find((item) => item.side === 'height' && item.start >= over.start) : undefined;
      return { at: over.start, over: { measure: over.measure, start: over.start, end: other?.end ?? over.end } };
    }),
  ];
  pieces.sort((a, b) => a.at - b.at);
  const drafts = shareLength(gather(pieces)).filter((draft) => draft.over.length > 0);
  const edges = drafts.map((draft) =>
    Math.min(...[draft.stitches, draft.rows, ...ownLengths(draft)].filter((part) => part !== null).map((part) => part.start)),
  );
  return drafts.map((draft, i) => lineUp(draft, segment, i === 0 ? 0 : ends(drafts[i - 1]!), edges[i + 1] ?? text.length));
}

const ends = (draft: Draft): number =>
  Math.max(...[draft.stitches, draft.rows, ...ownLengths(draft)].filter((part) => part !== null).map((part) => part.end));

/** Every gauge of the front matter. */
export function readGauges(front: Front): readonly Gauge[] {
  const gauges: Gauge[] = [];
  for (const segment of front.segments) {
    const known = segment.topic === 'gauge' || (segment.at < front.firstInstruction && shape.test(segment.text.slice(0, 2000)));
    if (known && segment.topic !== 'abbreviations') gauges.push(...readSegment(segment));
  }
  for (const table of front.tables) {
    if (table.topic !== 'gauge') continue;
    for (const row of table.rows) {
      const [name, value] = [row.cells[0], row.cells[1]];
      if (name === undefined || value === undefined || !/\d/.test(value.text)) continue;
      gauges.push(
        ...readSegment({
          topic: 'gauge',
          label: name.text.trim() || null,
          text: value.text,
          start: value.start,
          emphasis: [],
          block: row,
          at: 0,
          heading: null,
        }),
      );
    }
  }
  return gauges;
}
