/** Reads a draft: Markdown text in, blocks with exact places out. Never throws, whatever the text. */
import type { Code, List, Nodes, Paragraph as ParagraphNode, PhrasingContent, RootContent, Table, Yaml } from 'mdast';
import { findComments, touching } from './comments.ts';
import { pointsToDoubleStar } from './emphasis.ts';
import { countsShownAsLinks, repeatMarkAsBullet, unclosedComment, unclosedContainer, unclosedFence } from './hazards.ts';
import type { Numbered } from './lists.ts';
import { numberItems } from './lists.ts';
import type { Block, Hazard, Item, Manuscript, Passage, Span } from './manuscript.ts';
import { boundedLines, withinBounds } from './overlong.ts';
import type { Sheet, Words } from './passage.ts';
import { cutPassage, cutVerbatim, lineEnd } from './passage.ts';
import { lineIndex, lineStarts, markLength, placer } from './place.ts';
import { bulletOpensRepeat } from './repeat-mark.ts';
import { parseBlocks } from './verbatim.ts';

type ContainerDirective = Extract<RootContent, { type: 'containerDirective' }>;
type LeafDirective = Extract<RootContent, { type: 'leafDirective' }>;

/** What is known on the way down to a block. */
interface Around {
  readonly quoted: boolean;
  /** How many lists stand around. */
  readonly depth: number;
}

/** What is gathered on the way through. */
interface Desk {
  readonly sheet: Sheet;
  /** Added to every offset Markdown reports: the length of a byte order mark. */
  readonly shift: number;
  readonly blocks: Block[];
  readonly hazards: Hazard[];
  lists: number;
  tables: number;
  /** What is still to be read, the next last. A list, not calls within calls: a thousand `>` in a row must not end the reading. */
  readonly pending: (() => void)[];
}

/** The blocks of a draft in reading order, with their places, and what a page would show differently. */
export function readManuscript(source: string): Manuscript {
  const shift = markLength(source);
  const starts = lineStarts(source);
  const bounded = boundedLines(source, starts);
  const root = parseBlocks(bounded.text);
  const comments = findComments(source, fencesOf(root.children, shift));
  const sheet: Sheet = { source, starts, comments: comments.spans, pointsToDoubleStar: pointsToDoubleStar(source) };
  const desk: Desk = { sheet, shift, blocks: [], hazards: [], lists: 0, tables: 0, pending: [] };
  readAll(desk, root.children, { quoted: false, depth: 0 });
  for (let next = desk.pending.pop(); next; next = desk.pending.pop()) next();
  if (comments.unclosed !== null && beginsLine(sheet, comments.unclosed)) {
    desk.hazards.push(unclosedComment({ start: comments.unclosed, end: comments.unclosed + 4 }));
  }
  desk.hazards.sort((a, b) => a.start - b.start || a.end - b.end);
  const blocks = [...desk.blocks.map(withinBounds), ...bounded.overlong];
  if (bounded.overlong.length > 0) blocks.sort((a, b) => a.start - b.start);
  return { source, blocks, hazards: desk.hazards, place: placer(source, starts) };
}

function spanOf(node: Nodes, shift: number): Span {
  return { start: (node.position?.start.offset ?? 0) + shift, end: (node.position?.end.offset ?? 0) + shift };
}

/** Where code and front matter stand, in order. */
function fencesOf(nodes: readonly Nodes[], shift: number): Span[] {
  const found: Span[] = [];
  const pending = [...nodes];
  for (let node = pending.pop(); node; node = pending.pop()) {
    if (node.type === 'code' || node.type === 'yaml') found.push(spanOf(node, shift));
    else if ('children' in node && node.type !== 'paragraph') for (const child of node.children) pending.push(child);
  }
  return found.reverse();
}

function beginsLine(sheet: Sheet, offset: number): boolean {
  const from = sheet.starts[lineIndex(sheet.starts, offset)] ?? 0;
  return offset - from < 4 && sheet.source.slice(from, offset).trim() === '';
}

/** What Markdown read of running words. With its inline half off there are only texts and hard line ends. */
function wordsIn(desk: Desk, nodes: readonly PhrasingContent[], empty: number): Words {
  const first = nodes[0];
  const last = nodes[nodes.length - 1];
  if (!first || !last) return { start: empty, end: empty, value: '' };
  const value = nodes.map((node) => ('value' in node ? node.value : '\n')).join('');
  return { start: spanOf(first, desk.shift).start, end: spanOf(last, desk.shift).end, value };
}

function passageOf(desk: Desk, nodes: readonly PhrasingContent[], empty: number): Passage {
  return cutPassage(desk.sheet, wordsIn(desk, nodes, empty));
}

/** A passage that holds nothing but a comment says nothing to a knitter. */
function isOnlyComment(desk: Desk, span: Span, text: string): boolean {
  return text.trim() === '' && touching(desk.sheet.comments, span.start, Math.max(span.end, span.start + 1)).length > 0;
}

function startsInComment(desk: Desk, span: Span): boolean {
  return touching(desk.sheet.comments, span.start, span.start + 1).length > 0;
}

function readAll(desk: Desk, nodes: readonly Nodes[], around: Around): void {
  readNext(
    desk,
    nodes.map((node) => () => readBlock(desk, node, around)),
  );
}

function readNext(desk: Desk, steps: readonly (() => void)[]): void {
  for (let at = steps.length - 1; at >= 0; at--) {
    const step = steps[at];
    if (step) desk.pending.push(step);
  }
}

function readBlock(desk: Desk, node: Nodes, around: Around): void {
  const span = spanOf(node, desk.shift);
  switch (node.type) {
    case 'heading': {
      const passage = passageOf(desk, node.children, span.end);
      if (!isOnlyComment(desk, span, passage.text)) desk.blocks.push({ kind: 'heading', depth: node.depth, ...passage });
      return;
    }
    case 'paragraph':
      readParagraph(desk, node, around);
      return;
    case 'blockquote':
      readAll(desk, node.children, { ...around, quoted: true });
      return;
    case 'list':
      readList(desk, node, around);
      return;
    case 'table':
      readTable(desk, node);
      return;
    case 'code':
      if (!startsInComment(desk, span)) readFence(desk, node, span);
      return;
    case 'thematicBreak':
      if (!startsInComment(desk, span)) desk.blocks.push({ kind: 'break', ...span });
      return;
    case 'yaml':
      readFrontMatter(desk, node, span);
      return;
    case 'leafDirective':
      if (!startsInComment(desk, span)) readDirective(desk, node, span, node.children);
      return;
    case 'containerDirective':
      readContainer(desk, node, span, around);
      return;
    default:
      if ('children' in node) readAll(desk, node.children, around);
  }
}

function readParagraph(desk: Desk, node: ParagraphNode, around: Around): void {
  const passage = passageOf(desk, node.children, spanOf(node, desk.shift).end);
  if (isOnlyComment(desk, passage, passage.text)) return;
  desk.blocks.push({ kind: 'paragraph', quoted: around.quoted, ...passage });
  desk.hazards.push(...countsShownAsLinks(passage.text, passage.start));
}

function readList(desk: Desk, list: List, around: Around): void {
  const index = desk.lists++;
  const { items, hazards } = numberItems(list, desk.sheet.source, desk.shift);
  desk.hazards.push(...hazards);
  readNext(
    desk,
    items.map((entry) => () => readItem(desk, entry, index, around)),
  );
}

function readItem(desk: Desk, { item, marker, number }: Numbered, list: number, around: Around): void {
  const [first, ...rest] = item.children;
  const words = first?.type === 'paragraph' ? first.children : [];
  const passage = passageOf(desk, words, marker.span.end);
  if (!isOnlyComment(desk, { start: marker.span.start, end: passage.end }, passage.text)) {
    const read: Item = { kind: 'item', number, marker: marker.span, list, depth: around.depth, ...passage };
    desk.blocks.push(withRepeatMark(desk, read, marker.bullet));
    desk.hazards.push(...countsShownAsLinks(passage.text, passage.start));
  }
  readAll(desk, first?.type === 'paragraph' ? rest : item.children, { ...around, depth: around.depth + 1 });
}

/** Gives a bullet back to the words when it opens their repeat. */
function withRepeatMark(desk: Desk, item: Item, bullet: string): Item {
  if (!bulletOpensRepeat(item.text, bullet)) return item;
  desk.hazards.push(repeatMarkAsBullet(item.marker, bullet));
  const { start } = item.marker;
  return { ...item, start, text: bullet.padEnd(item.start - start, ' ') + item.text };
}

function readTable(desk: Desk, table: Table): void {
  const index = desk.tables++;
  for (const [row, node] of table.children.entries()) {
    const span = spanOf(node, desk.shift);
    const cells = node.children.map((cell) => {
      const outer = spanOf(cell, desk.shift);
      return passageOf(desk, cell.children, Math.min(outer.start + 1, outer.end));
    });
    const text = cells.map((cell) => cell.text).join('');
    if (isOnlyComment(desk, span, text)) continue;
    desk.blocks.push({ kind: 'tableRow', table: index, header: row === 0, cells, ...span });
    for (const cell of cells) desk.hazards.push(...countsShownAsLinks(cell.text, cell.start));
  }
}

function readFence(desk: Desk, node: Code, span: Span): void {
  const { source, starts } = desk.sheet;
  const firstLine = lineIndex(starts, span.start);
  const lastLine = lineIndex(starts, Math.max(span.start, span.end - 1));
  const opening = lineEnd(desk.sheet, firstLine);
  const fence = /^(?:`{3,}|~{3,})/.exec(source.slice(span.start, opening))?.[0] ?? '```';
  const lastStart = starts[lastLine] ?? span.start;
  const lastText = source.slice(lastStart, span.end).replace(/^[ \t>]+/, '');
  const closed = lastLine > firstLine && lastText.startsWith(fence);
  const end = closed ? lastStart : span.end;
  const passage = cutVerbatim(desk.sheet, { ...span, value: `\n${node.value}` }, { start: Math.min(opening, end), end });
  desk.blocks.push({ kind: 'fence', language: node.lang ?? null, closed, ...passage });
  if (!closed) desk.hazards.push(unclosedFence({ start: span.start, end: span.start + fence.length }, fence));
}

/** The YAML itself, without the lines of dashes. It is kept as typed: quotes mean something in YAML. */
function readFrontMatter(desk: Desk, node: Yaml, span: Span): void {
  const { starts } = desk.sheet;
  const start = Math.min(starts[lineIndex(starts, span.start) + 1] ?? span.end, span.end);
  const end = Math.max(start, Math.min(start + node.value.length, span.end));
  desk.blocks.push({ kind: 'frontMatter', ...cutVerbatim(desk.sheet, { start, end, value: node.value }, { start, end }) });
}

function readDirective(desk: Desk, node: LeafDirective | ContainerDirective, span: Span, words: readonly PhrasingContent[]): void {
  const label = words.length > 0 ? passageOf(desk, words, span.end) : null;
  const attributes = Object.fromEntries(Object.entries(node.attributes ?? {}).map(([key, value]) => [key, value ?? '']));
  desk.blocks.push({ kind: 'directive', name: node.name, label, attributes, ...span });
}

function readContainer(desk: Desk, node: ContainerDirective, span: Span, around: Around): void {
  const [head] = node.children;
  const labelled = head?.type === 'paragraph' && head.data !== undefined && 'directiveLabel' in head.data;
  const opening = { start: span.start, end: Math.min(lineEnd(desk.sheet, lineIndex(desk.sheet.starts, span.start)), span.end) };
  const content = labelled ? node.children.slice(1) : node.children;
  const last = content[content.length - 1];
  const contentEnd = last ? spanOf(last, desk.shift).end : opening.end;
  if (!startsInComment(desk, span)) {
    readDirective(desk, node, opening, labelled ? head.children : []);
    if (!desk.sheet.source.slice(contentEnd, span.end).includes(':::')) desk.hazards.push(unclosedContainer(opening, node.name));
  }
  readAll(desk, content, around);
}
