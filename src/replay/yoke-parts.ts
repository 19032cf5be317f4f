/** Counts of the parts of a yoke, "27 sts for each sleeve, 40 sts for back": against each other, the whole, and the markers between them. */
import { sizeValue } from '../../grammar/count.ts';
import type { Stated, Statement } from '../../grammar/tree.ts';
import { live } from './needles.ts';
import { handOf, met, type Play } from './play.ts';
import { markerSections } from './sections.ts';

interface Part {
  readonly stated: Stated;
  readonly value: number;
  /** How many parts of the piece have this number; null where the words leave it open. */
  readonly often: number | null;
  readonly of: ReadonlySet<'front' | 'back' | 'sleeve' | 'body'>;
}

const pieces = ['front', 'back', 'sleeve', 'body'] as const;

/** What the words behind the number speak of; null where it is no part of a garment. */
function partOf(stated: Stated, size: number): Part | null {
  const value = sizeValue(stated.count.values, size);
  const scope = (stated.scope ?? '').toLowerCase();
  if (value === null || stated.what !== 'part' || /needle|holder|waste|pocket|band|edge|button/.test(scope)) return null;
  const of = new Set(pieces.filter((piece) => new RegExp(`\\b${piece}s?\\b`).test(scope)));
  if (of.size === 0) return null;
  const each = /\b(?:each|both|either)\b/.test(scope);
  const many = /\b(?:fronts|sleeves)\b/.test(scope);
  const named = of.has('front') && of.has('back') ? 2 : 1;
  const often = each ? 2 : many || named === 2 ? null : 1;
  return { stated, value, often, of };
}

/** All counts that stand with this one: those of the same order, or orders of their own one after the other. */
function together(play: Play, node: Statement, stated: Stated): readonly Stated[] {
  if ('stated' in node && Array.isArray(node.stated) && node.stated.includes(stated)) return node.stated;
  const around: Stated[] = [];
  let from = play.at;
  while (play.flow[from - 1]?.statement.type === 'stated') from -= 1;
  for (let at = from; play.flow[at]?.statement.type === 'stated'; at += 1) around.push(play.flow[at]?.statement as Stated);
  return around;
}

/** Asked once for all parts that stand together, at the first of them. */
export function checkParts(play: Play, stated: Stated, size: number, node: Statement, label: string | null): void {
  const hand = handOf(play, size);
  const { needles } = hand;
  if (!needles.sure || hand.fresh) return;
  const list = together(play, node, stated);
  const parts = list.flatMap((each) => partOf(each, size) ?? []);
  if (parts[0]?.stated !== stated || parts.length < 2) return;
  const have = live(needles);
  const total = list.find((each) => each.what === 'total' && each.scope === null);
  const said = total === undefined ? null : sizeValue(total.count.values, size);
  // A total that is wrong itself is told there.
  if (said !== null && said !== have) return;
  const named = new Set(parts.flatMap((part) => [...part.of]));
  const whole = named.has('sleeve') && (named.has('body') || (named.has('front') && named.has('back')));
  const counted = parts.every((part) => part.often !== null);
  const sum = parts.reduce((all, part) => all + part.value * (part.often ?? 1), 0);
  const span = { start: parts[0].stated.count.span.start, end: (parts.at(-1) as Part).stated.count.span.end };
  const sections = needles.lost ? [] : markerSections(needles);
  const alike = sections.length > 3 && parts.every((part) => sections.includes(part.value));
  if (whole && counted && (sum > have || (sum < have && !alike))) {
    // Seam stitches between the parts may go without a word; more than there are cannot be.
    const words = { what: 'parts', ...(sum < have ? { open: 'yes' } : {}) };
    met(play, { kind: 'partDiffers', span, numbers: { stated: sum, replayed: have }, words }, size, node, label);
    return;
  }
  if (!whole || sections.length < 4) return;
  for (const part of parts) {
    if (sections.includes(part.value)) continue;
    const nearest = sections.reduce((best, each) => (Math.abs(each - part.value) < Math.abs(best - part.value) ? each : best));
    met(
      play,
      {
        kind: 'partDiffers',
        span: part.stated.count.span,
        numbers: { stated: part.value, replayed: nearest },
        words: { what: 'section', scope: part.stated.scope ?? '', open: 'yes' },
      },
      size,
      node,
      label,
    );
    return;
  }
}
