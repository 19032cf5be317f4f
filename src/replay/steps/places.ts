/** Places in a row: the height of the left needle at which a run or a repeat stops. */
import type { Extent, Span } from '../../../grammar/tree.ts';
import { countFor, type Hands, stopped, type Trouble } from '../hands.ts';
import { live, type Mark } from '../needles.ts';
import { gapsAhead, shortOf } from '../short-rows.ts';

/** Where a mark lies ahead on the left needle; null when there is none. */
export function markAhead(hands: Hands, extent: Extract<Extent, { kind: 'place' }>): { at: number; mark: Mark | null } | null {
  const { left } = hands.needles;
  const ahead = [...left.marks].reverse();
  if (extent.place === 'marker') {
    // At the head of a round the marker of its beginning is not one to go to.
    const head = hands.needles.mode === 'round' && hands.needles.right.n === 0 ? left.n : -1;
    const markers = ahead.filter((mark) => mark.kind !== 'gap' && mark.at !== head);
    const named =
      extent.name === undefined
        ? []
        : markers.filter((mark) => mark.name !== null && (mark.name === extent.name || extent.name?.includes(mark.name)));
    if (extent.which === 'beginning') {
      // "K to 12 sts past BOR" at the head of a round: the beginning is here, not a round away.
      if (extent.side === 'past' && hands.needles.mode === 'round' && hands.needles.right.n === 0) return { at: left.n, mark: null };
      const bor = markers.find((mark) => mark.kind === 'bor' || mark.name === 'BOR');
      return bor ? { at: bor.at, mark: bor } : { at: 0, mark: null };
    }
    const list = named.length > 0 ? named : markers;
    // At a marker that the last run went up to, "to m" means the next one; else it is reached with no stitch.
    const open = list.filter((mark) => mark.at < left.n || (mark.at === left.n && mark !== hands.reached));
    // "sm, m1L, k to second marker": the markers are counted from the beginning of the row; one that marks the beginning itself is not among them.
    const passed =
      extent.ordinal === undefined
        ? 0
        : hands.needles.right.marks.filter(
            (mark) => mark.kind === 'marker' && mark.at > 0 && (named.length === 0 || mark.name === (named[0] as Mark).name),
          ).length;
    const which =
      extent.ordinal !== undefined
        ? (open[extent.ordinal - 1 - passed] ?? open[extent.ordinal - 1])
        : extent.which === 'last'
          ? open.at(-1)
          : open[0];
    if (which) {
      if (extent.side === 'at') hands.reached = which;
      return { at: which.at, mark: which };
    }
    if (hands.needles.mode === 'round') return { at: 0, mark: null };
    return null;
  }
  if (extent.place === 'centre') {
    const marked = ahead.find((mark) => mark.name === 'centre') ?? ahead.find((mark) => mark.kind === 'marker');
    if (marked) return { at: marked.at, mark: marked };
    const total = live(hands.needles);
    return { at: Math.floor((total + 1) / 2), mark: null };
  }
  const gaps = gapsAhead(ahead, extent.place);
  const gap = gaps.find((mark) => mark.at < left.n) ?? gaps[0];
  if (gap !== undefined) return { at: gap.at, mark: gap };
  // "p to gap": the hole that the last row bound off
  const hole = extent.place === 'gap' ? hands.needles.holes?.behind.filter((at) => at < left.n).sort((a, b) => b - a)[0] : undefined;
  return hole === undefined ? null : { at: hole, mark: null };
}

/** Height of the left needle at which a run or repeat stops. */
export function targetOf(hands: Hands, extent: Extent, span: Span): number | Trouble | null {
  const { needles, base } = hands;
  switch (extent.kind) {
    case 'end':
      // Between the turns of a round the row ends at the beginning of the round, if it lies ahead.
      if (needles.suspended) return needles.left.marks.findLast((mark) => mark.kind === 'bor' && mark.at < needles.left.n)?.at ?? base;
      return base;
    case 'last': {
      const n = countFor(hands, extent.count.values);
      const turned =
        hands.choice.from === 'turn' ? needles.left.marks.findLast((mark) => mark.kind === 'gap' && mark.at < needles.left.n) : undefined;
      return n === null ? null : (turned?.at ?? base) + n;
    }
    case 'over': {
      const n = countFor(hands, extent.count.values);
      if (n === null) return null;
      return needles.left.n - n;
    }
    case 'onRight': {
      const n = countFor(hands, extent.count.values);
      if (n === null) return null;
      const need = extent.afterBindOff || needles.right.n >= n ? n : n - needles.right.n;
      return needles.left.n - need;
    }
    case 'place': {
      const found = markAhead(hands, extent);
      if (found === null) return stopped(extent.place === 'marker' ? 'markerNotThere' : 'noGap', span, {}, { place: extent.place });
      const n = extent.n === null ? 0 : countFor(hands, extent.n.values);
      if (n === null) return null;
      const { at } = found;
      const method = found.mark?.method;
      if (extent.place === 'marker') return extent.side === 'past' ? at - n : at + n;
      if (extent.place === 'centre') return extent.side === 'past' ? at - 1 - n : at + n;
      if (extent.place === 'double') return extent.side === 'past' ? at - n : at + 1 + n;
      if (extent.place === 'wrapped' || extent.place === 'twin') return extent.side === 'past' ? at - 1 - n : at + n;
      if (extent.place === 'gap' && method === 'double' && extent.side !== 'past') return at + n;
      return extent.side === 'past' ? at - n : at + n;
    }
    case 'these':
      return needles.left.n - Math.min(hands.last, needles.left.n);
    case 'part': {
      const part = needles.parts.find((each) => each.name.toLowerCase().includes(extent.name.toLowerCase()));
      if (part) return needles.left.n - part.n;
      // Instep and sole are the halves of a foot until the draft says otherwise.
      const total = live(needles);
      const whole = needles.right.n === 0 || needles.right.n * 2 === total;
      if (
        /^(?:the )?(?:instep|sole|heel)\b/i.test(extent.name) &&
        needles.mode === 'round' &&
        needles.parts.length !== 1 &&
        hands.base === 0 &&
        total % 2 === 0 &&
        whole
      )
        return Math.max(0, needles.left.n - total / 2);
      // "work across back sts": the part between two markers.
      const marker = needles.left.marks.findLast((mark) => mark.kind === 'marker' && mark.at < needles.left.n);
      if (marker !== undefined) return marker.at;
      if (needles.right.marks.some((mark) => mark.kind === 'marker')) return base;
      return stopped('unread', span);
    }
    case 'times':
      return null;
    case 'relative': {
      const worked = shortOf(needles, extent.side);
      const n = countFor(hands, extent.count.values);
      if (worked === null || n === null) return stopped('unread', span);
      return needles.left.n - (extent.sense === 'fewer' ? worked - n : worked + n) + hands.taken;
    }
    default:
      return stopped('unread', span);
  }
}
