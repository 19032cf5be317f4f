/**
 * The front of a pattern cut into segments: the words after one label ("Gauge", "Yarn:"), with their topic and their exact
 * place, whether the author set them as headings, as bold run-ins, as lines of one paragraph, as a list or as a table.
 */
import type { Block, Manuscript, Passage, Span, TableRow } from '../../manuscript/manuscript.ts';
import { isInstruction } from './instruction-cue.ts';
import { sizeNamesAt } from './size-names.ts';
import { type Topic, topicOf, topicOfLabel } from './topics.ts';

export interface Segment {
  readonly topic: Topic | null;
  /** The run-in label as printed, without its colon or full stop. */
  readonly label: string | null;
  /** The words after the label; `text[i]` is offset `start + i` of the source. */
  readonly text: string;
  readonly start: number;
  /** Stretches in bold or italics, as offsets of the source. */
  readonly emphasis: readonly Span[];
  readonly block: Block;
  /** Index of the block in the manuscript. */
  readonly at: number;
  /** The heading or pseudo-heading it stands under. */
  readonly heading: string | null;
}

export interface TableLines {
  readonly topic: Topic | null;
  readonly heading: string | null;
  readonly rows: readonly TableRow[];
}

export interface Front {
  readonly segments: readonly Segment[];
  readonly tables: readonly TableLines[];
  /** Topic of each block, by its index. */
  readonly topics: readonly (Topic | null)[];
  /** Index of the first block that instructs outside the front sections. */
  readonly firstInstruction: number;
}

/** What decides the topic of the blocks that follow. */
interface Section {
  readonly topic: Topic | null;
  readonly heading: string | null;
  readonly depth: number;
  /** A real heading holds until the next; a paragraph used as one gives way to the first instruction. */
  readonly firm: boolean;
}

const none: Section = { topic: null, heading: null, depth: 0, firm: false };

/** The stretches that touch a range. They come in order and do not overlap, so the first is found by halving. */
function within(spans: readonly Span[], start: number, end: number): readonly Span[] {
  let [low, high] = [0, spans.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if (spans[middle]!.end <= start) low = middle + 1;
    else high = middle;
  }
  const found: Span[] = [];
  for (let i = low; i < spans.length && spans[i]!.start < end; i += 1) found.push(spans[i]!);
  return found;
}

/** A paragraph that is only a title: wholly emphasised or in capitals, few words, nothing after it on the line. */
function isTitle(passage: Passage): boolean {
  const text = passage.text.trim();
  if (text === '' || text.length > 60 || text.includes('\n') || /[.;,]$/.test(text)) return false;
  const lead = passage.start + passage.text.indexOf(text);
  const whole = passage.emphasis.some((span) => span.start <= lead && span.end >= lead + text.length);
  const capitals = /^[A-Z][A-Z’'&/(): -]+$/.test(text.replace(/\([^)]*\)/g, '').trim());
  return (whole || capitals || topicOf(text.replace(/:$/, '')) !== null) && sizeNamesAt(text) === null;
}

interface Label {
  readonly topic: Topic | null;
  readonly text: string;
  /** Where the label starts and the words after it start, in the text. */
  readonly from: number;
  readonly to: number;
}

/** A label in bold at the start of a line: `**Gauge.** 18 sts`, `**SIZES** S(M:L)`. */
function boldLabel(passage: Passage, line: number, end: number): Label | null {
  const text = passage.text;
  let from = line;
  while (from < end && (text[from] === ' ' || text[from] === '\t')) from += 1;
  const span = within(passage.emphasis, passage.start + line, passage.start + Math.min(end, line + 100)).find(
    (s) => s.start - passage.start <= from && s.end - passage.start > from && s.start - passage.start >= line - 4,
  );
  if (span === undefined) return null;
  const stop = Math.min(span.end - passage.start, end);
  const words = text
    .slice(from, stop)
    .trim()
    .replace(/[:.]+$/, '')
    .trim();
  if (words === '' || words.length > 60) return null;
  let to = stop;
  while (to < end && /[\s:.*_–—-]/.test(text[to] ?? '')) {
    // A dash may stand for a size that skips; a label is followed by a blank.
    if (/[–—-]/.test(text[to] ?? '') && !/\s/.test(text[to + 1] ?? ' ')) break;
    to += 1;
  }
  return { topic: topicOfLabel(words), text: words, from, to };
}

/** A label in plain letters with a colon, or in capitals: `Gauge: 18 sts`, `TENSION 22 sts`. Only known topics count. */
function plainLabel(text: string, from: number, end: number): Label | null {
  const line = text.slice(from, Math.min(end, from + 70));
  const capitals = /^\s*([A-Z][A-Z&/ ]{2,40}[A-Z)])\s+/.exec(line);
  const shouted = capitals === null ? null : topicOf(capitals[1]!);
  if (capitals !== null && shouted !== null) {
    return { topic: shouted, text: capitals[1]!.trim(), from: from + line.indexOf(capitals[1]!), to: from + capitals[0].length };
  }
  const colon = /^\s*([A-Za-z][A-Za-z’'&/,() \t0-9-]{1,50}?)\s*(?::|\s[–—-]\s|\.\s(?=\S)|\.\s?[—–]\s?)\s*/.exec(line);
  if (colon === null) return bareLabel(line, from);
  const words = colon[1]!;
  // The colon of a size list, `2-3 (4-5: 6-7)`, ends no label.
  if (words.split('(').length !== words.split(')').length) return null;
  const label = { text: words.trim(), from: from + line.indexOf(words), to: from + colon[0].length };
  const topic = topicOfLabel(words);
  if (topic !== null) return { ...label, topic };
  const short = words.trim().split(/\s+/).length <= 6;
  return short && line.slice(0, colon[0].length).includes(':') ? { ...label, topic: null } : null;
}

/** A topic word without a colon before what it announces: `Tension 22 sts`, `Extras stitch holder`, `Abbreviations alt alternate`. */
function bareLabel(line: string, from: number): Label | null {
  const match =
    /^\s*(?:(Yarn|Needles|Tension|Gauge)\s+(?=\d)|(Extras|Notions)\s+(?=[a-z]|\d)|(Abbreviations)\s+(?=[A-Za-z][A-Za-z0-9()]{0,6}\s[a-z=]))/.exec(
      line,
    );
  if (match === null) return null;
  const words = match[1] ?? match[2] ?? match[3]!;
  return { topic: topicOf(words), text: words, from: from + line.indexOf(words), to: from + match[0].length };
}

/** A topic label in the middle of a line, after the end of a sentence: `Yarn: …. Needles: …`. */
function innerLabels(passage: Passage, from: number, end: number): readonly Label[] {
  const text = passage.text;
  const found: Label[] = [];
  for (const span of within(passage.emphasis, passage.start + from, passage.start + end)) {
    const at = span.start - passage.start;
    if (at <= from || span.end - passage.start > end) continue;
    const label = boldLabel(passage, at, end);
    if (label !== null && label.topic !== null && /[.;|·)\n]\s*$/.test(text.slice(Math.max(0, at - 4), at).replace(/[*_]/g, '')))
      found.push(label);
  }
  const pattern = /[.;|·]\s+([A-Z][A-Za-z&/() ]{2,30}):\s/g;
  const bold = new Set(found.map((label) => label.from));
  for (const match of text.slice(from, end).matchAll(pattern)) {
    const topic = topicOfLabel(match[1]!);
    const at = from + match.index + match[0].indexOf(match[1]!);
    if (topic !== null && !bold.has(at)) found.push({ topic, text: match[1]!, from: at, to: from + match.index + match[0].length });
  }
  return found.sort((a, b) => a.from - b.from);
}

/** Labels of a passage, line by line; a line with no topic label of its own goes on with the one above. */
function labelsOf(passage: Passage): readonly Label[] {
  const labels: Label[] = [];
  const text = passage.text;
  let line = 0;
  while (line <= text.length) {
    const stop = text.indexOf('\n', line);
    const end = stop < 0 ? text.length : stop;
    const own = boldLabel(passage, line, end) ?? plainLabel(text, line, end);
    // A label that names no topic counts where the passage begins: it may name a measure or a colour.
    if (own !== null && (own.topic !== null || line === 0)) labels.push(own);
    labels.push(...innerLabels(passage, own === null ? line : own.to, end));
    if (stop < 0) break;
    line = stop + 1;
  }
  return labels;
}

/** Headings over everything that stands before the work. */
const gathers = /\b(?:start|begin|cast(?:ing)? on|information|info|overview|details|about)\b/i;

function segmentsOf(passage: Passage, block: Block, at: number, section: Section): readonly Segment[] {
  const labels = labelsOf(passage);
  const make = (topic: Topic | null, label: string | null, from: number, to: number): Segment => ({
    topic,
    label,
    text: passage.text.slice(from, to),
    start: passage.start + from,
    emphasis: within(passage.emphasis, passage.start + from, passage.start + to),
    block,
    at,
    heading: section.heading,
  });
  const found: Segment[] = [];
  const first = labels[0]?.from ?? passage.text.length;
  if (passage.text.slice(0, first).trim() !== '') found.push(make(section.topic, null, 0, first));
  for (const [i, label] of labels.entries()) {
    const end = labels[i + 1]?.from ?? passage.text.length;
    // Under a heading such as "Cautions" a label like "Buttons" lists nothing; "Before you start" gathers all there is to know.
    const remarks = section.firm && section.topic === 'notes' && !gathers.test(section.heading ?? '');
    const topic = remarks && label.topic !== 'abbreviations' ? 'notes' : label.topic;
    found.push(make(topic ?? section.topic, label.text, label.to, end));
  }
  return found;
}

const passageOf = (block: Block): Passage | null => (block.kind === 'paragraph' || block.kind === 'item' ? block : null);

/** Cuts the draft into labelled segments and tables. Instruction blocks get the topic null. */
export function readSegments(manuscript: Manuscript): Front {
  const segments: Segment[] = [];
  const tables = new Map<number, { topic: Topic | null; heading: string | null; rows: TableRow[] }>();
  const topics: (Topic | null)[] = [];
  let section = none;
  /** A run-in label with nothing after it speaks for the list or the table below it. */
  let runIn: Topic | null = null;
  let firstInstruction = manuscript.blocks.length;
  for (const [at, block] of manuscript.blocks.entries()) {
    topics.push(null);
    if (block.kind === 'heading') {
      runIn = null;
      const named = topicOf(block.text);
      // "Start" over a cast-on begins the knitting.
      const topic = named === 'notes' && beginsToKnit(manuscript.blocks, at + 1) ? null : named;
      const inherits = topic === null && section.firm && section.topic !== null && section.topic !== 'notes' && block.depth > section.depth;
      section =
        inherits && !instructs(manuscript.blocks, at + 1)
          ? { ...section, heading: block.text.trim() }
          : { topic, heading: block.text.trim(), depth: block.depth, firm: true };
      topics[at] = section.topic;
      continue;
    }
    if (block.kind === 'tableRow') {
      const known = tables.get(block.table);
      const topic = known?.topic ?? runIn ?? section.topic;
      const line = topic === 'abbreviations' ? null : lineOfTable(block, at, section.heading);
      if (line !== null) {
        segments.push(line);
        topics[at] = line.topic;
        continue;
      }
      if (known === undefined) tables.set(block.table, { topic, heading: section.heading, rows: [block] });
      else known.rows.push(block);
      topics[at] = topic;
      continue;
    }
    const passage = passageOf(block);
    if (passage === null) continue;
    if (block.kind === 'paragraph' && isTitle(passage)) {
      const topic = topicOf(passage.text);
      if (topic !== null || !section.firm || section.topic !== null) {
        section = { topic, heading: passage.text.trim(), depth: section.depth, firm: false };
        runIn = null;
        topics[at] = topic;
        continue;
      }
    }
    const inherited: Topic | null = block.kind === 'item' ? (runIn ?? section.topic) : section.topic;
    const own = segmentsOf(passage, block, at, { ...section, topic: inherited });
    const labelled = own.some((segment) => segment.label !== null && topicOfLabel(segment.label) !== null);
    if (
      !labelled &&
      (passage.text.split('\n').some((line) => isInstruction(line, inherited === 'abbreviations')) || runsIntoWork(own)) &&
      !(section.firm && section.topic !== null)
    ) {
      section = { ...section, topic: null };
      runIn = null;
      firstInstruction = Math.min(firstInstruction, at);
      continue;
    }
    if (block.kind === 'paragraph') runIn = null;
    // A paragraph used as a heading speaks until a label says something else.
    if (block.kind === 'paragraph' && labelled && !section.firm) section = { ...section, topic: null };
    const last = own.at(-1);
    if (last !== undefined && last.label !== null && last.text.trim().length < 3) runIn = last.topic;
    segments.push(...own);
    topics[at] = own.find((segment) => segment.topic !== null)?.topic ?? null;
  }
  return { segments, tables: [...tables.values()], topics, firstInstruction };
}

const ofMaterials: ReadonlySet<Topic | null> = new Set<Topic | null>(['yarn', 'needles', 'notions', 'gauge']);

/** A row of two cells whose first names its topic, `| Needles | 4 mm |`, is a labelled line like any other. */
function lineOfTable(row: TableRow, at: number, heading: string | null): Segment | null {
  const [name, cell] = row.cells;
  if (name === undefined || cell === undefined || row.cells.length !== 2 || cell.text.trim() === '') return null;
  const label = name.text.trim().replace(/:$/, '');
  const topic = topicOfLabel(label);
  const sizes = topic === 'sizes' && (sizeNamesAt(cell.text) !== null || /^\s*one size\b/i.test(cell.text));
  if (!sizes && !ofMaterials.has(topic)) return null;
  return { topic, label, text: cell.text, start: cell.start, emphasis: cell.emphasis, block: row, at, heading };
}

/** "**Cuff** CO 56 sts": words in bold that announce no topic, and an instruction behind them. */
function runsIntoWork(own: readonly Segment[]): boolean {
  const [first] = own;
  return first !== undefined && first.label !== null && first.topic === null && isInstruction(first.text);
}

/** Whether the first words below a heading cast on or work a row. */
function beginsToKnit(blocks: readonly Block[], index: number): boolean {
  const first = blocks[index];
  const passage = first === undefined ? null : passageOf(first);
  return passage !== null && first?.kind === 'paragraph' && isInstruction(passage.text);
}

/** Whether the blocks from `index` to the next heading hold an instruction. */
function instructs(blocks: readonly Block[], index: number): boolean {
  for (let i = index; i < blocks.length; i += 1) {
    const block = blocks[i]!;
    if (block.kind === 'heading') return false;
    const passage = passageOf(block);
    if (passage !== null && isInstruction(passage.text)) return true;
  }
  return false;
}
