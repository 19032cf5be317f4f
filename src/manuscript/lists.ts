/** Items of a list: their markers and the numbers a reader sees. */
import type { List, ListItem } from 'mdast';
import { listRenumbered } from './hazards.ts';
import type { Hazard, Span } from './manuscript.ts';

/** The marker of an item as typed: its span without blanks, and its number. */
export interface Marker {
  readonly span: Span;
  readonly bullet: string;
  readonly typed: number | null;
}

const longestMarker = 11;

/** Reads the marker at an offset: `*`, `+`, `-`, `3.` or `3)`. */
export function readMarker(source: string, start: number): Marker {
  const match = /^(?:(\d{1,9})[.)]|[*+-])/.exec(source.slice(start, start + longestMarker));
  const bullet = match?.[0] ?? '';
  const typed = match?.[1] === undefined ? null : Number(match[1]);
  return { span: { start, end: start + bullet.length }, bullet, typed };
}

export interface Numbered {
  readonly item: ListItem;
  readonly marker: Marker;
  /** What the reader is meant to see: the typed number, or the place in a list typed `1. 1. 1.` throughout. */
  readonly number: number | null;
}

/**
 * The items of a list with their numbers, and a hazard at the first item that a page would number otherwise. A list
 * typed with one and the same number throughout leaves the counting to Markdown on purpose.
 */
export function numberItems(list: List, source: string, shift: number): { items: Numbered[]; hazards: Hazard[] } {
  const read = list.children.map((item) => ({ item, marker: readMarker(source, (item.position?.start.offset ?? 0) + shift) }));
  const first = read[0]?.marker.typed ?? null;
  if (!list.ordered || first === null) return { items: read.map((entry) => ({ ...entry, number: null })), hazards: [] };
  const countedByMarkdown = read.length > 1 && read.every(({ marker }) => marker.typed === first);
  const items = read.map((entry, index) => ({ ...entry, number: countedByMarkdown ? first + index : entry.marker.typed }));
  const odd = items.findIndex(({ number }, index) => number !== first + index);
  const wrong = items[odd];
  if (!wrong || wrong.number === null) return { items, hazards: [] };
  return { items, hazards: [listRenumbered(wrong.marker.span, wrong.number, first + odd)] };
}
