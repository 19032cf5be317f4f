/**
 * Parts stated beside each other, "25 sts for each front and 46 sts for the back", "78 sts: 48 on N1, 30 on N2": against the whole and,
 * with sleeves among them, against the markers of the yoke.
 */
import { sizeValue } from '../../grammar/count.ts';
import type { Stated, Statement } from '../../grammar/tree.ts';
import { live } from './needles.ts';
import { handOf, met, type Play } from './play.ts';
import { markerSections } from './sections.ts';

interface Part {
  readonly stated: Stated;
  readonly scope: string;
  readonly value: number | null;
  /** How many parts of the piece have this number; null where the words leave it open, or name a place and no part of its own. */
  readonly often: number | null;
}

function often(scope: string): number | null {
  if (/\b(?:each|both|either)\b/.test(scope)) {
    if (/\bfront\b/.test(scope) && /\bback\b/.test(scope)) return 2;
    return /^(?:each|both|either) (?:front|sleeve|half|flap|strap)s?$/.test(scope) ? 2 : null;
  }
  return /^(?:back|front|body|bib|instep|sole|heel|(?:left|right) (?:front|sleeve|half|flap)|n(?:dl|eedle)? ?\d)$/.test(scope) ? 1 : null;
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
  const parts = list
    .filter((each) => each.what === 'part')
    .map((each): Part => {
      const scope = (each.scope ?? '').toLowerCase().replace(/^(?:on|for)\s+(?:the )?/, '');
      return { stated: each, scope, value: sizeValue(each.count.values, size), often: often(scope) };
    });
  const [first, last] = [parts[0], parts.at(-1)];
  if (first?.stated !== stated || last === undefined || parts.length < 2) return;
  if (parts.some((part) => part.value === null) || new Set(parts.map((part) => part.scope)).size < parts.length) return;
  const have = live(needles);
  const total = list.find((each) => each.what === 'total' && each.scope === null);
  const said = total === undefined ? null : sizeValue(total.count.values, size);
  const sleeves = parts.some((part) => /\bsleeves?\b/.test(part.scope));
  // A total that is wrong itself is told there.
  if (sleeves && said !== null && said !== have) return;
  const whole = said ?? have;
  const counted = parts.every((part) => part.often !== null);
  const sum = parts.reduce((all, part) => all + (part.value ?? 0) * (part.often ?? 0), 0);
  const waiting = hand.held.reduce((all, set) => all + (set.used ? 0 : set.n), 0);
  const sections = sleeves && !needles.lost ? markerSections(needles) : [];
  const found = (part: Part): boolean => sections.includes(part.value ?? 0);
  // With the sleeves named, the body must be as well, or some of the whole is not spoken of.
  const complete =
    !sleeves ||
    parts.some((part) => /\bbody\b/.test(part.scope)) ||
    ['front', 'back'].every((piece) => parts.some((part) => part.scope.includes(piece)));
  if (!complete) return;
  if (
    counted &&
    sum !== whole &&
    !(said === null && sum === have + waiting) &&
    !(sum < whole && sections.length > 3 && parts.every(found))
  ) {
    // Seam stitches between the parts of a yoke may go without a word; more than there are cannot be.
    const words = { what: 'parts', ...(sleeves && sum < whole ? { open: 'yes' } : {}) };
    const span = { start: first.stated.count.span.start, end: last.stated.count.span.end };
    met(play, { kind: 'partDiffers', span, numbers: { stated: sum, replayed: whole }, words }, size, node, label);
    return;
  }
  const odd = sections.length > 3 ? parts.find((part) => part.often !== null && !found(part)) : undefined;
  if (odd === undefined || odd.value === null) return;
  const { value } = odd;
  const nearest = sections.reduce((best, each) => (Math.abs(each - value) < Math.abs(best - value) ? each : best));
  const words = { what: 'section', scope: odd.stated.scope ?? '', open: 'yes' };
  met(play, { kind: 'partDiffers', span: odd.stated.count.span, numbers: { stated: value, replayed: nearest }, words }, size, node, label);
}
