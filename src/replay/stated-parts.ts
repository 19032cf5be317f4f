/** Parts that a row states beside each other: "25 sts for each front and 46 sts for the back", "78 sts: 48 on N1, 30 on N2". */
import { sizeValue } from '../../grammar/count.ts';
import type { Row, Stated } from '../../grammar/tree.ts';
import { live } from './needles.ts';
import { handOf, met, type Play } from './play.ts';

/** How often a part is there: two fronts, one back; null where the words name a place and no part of its own. */
function often(scope: string): number | null {
  const words = scope.toLowerCase().replace(/^(?:on|for)\s+/, '');
  if (/^each (?:for )?(?:the )?(?:front and (?:the )?back|back and (?:the )?front)$/.test(words)) return 2;
  if (/^(?:each|both) (?:front|sleeve|half|flap|strap)s?$/.test(words)) return 2;
  if (/^(?:the )?(?:back|front|body|bib|instep|sole|heel|(?:left|right) (?:front|sleeve|half|flap)|n(?:dl|eedle)? ?\d)$/.test(words))
    return 1;
  return null;
}

const key = (scope: string): string => scope.toLowerCase().replace(/^(?:on|for)\s+(?:the )?/, '');

/** The parts must make up the total told with them, or what is there, with or without what waits on holders. */
export function checkPartsSum(play: Play, row: Row, sizes: readonly number[], label: string | null): void {
  const parts = row.stated.filter((each) => each.what === 'part');
  if (parts.length < 2 || new Set(parts.map((each) => key(each.scope ?? ''))).size < parts.length) return;
  // Sleeves beside the body: the parts of a yoke are held against its markers as well.
  if (parts.some((each) => /\bsleeves?\b/i.test(each.scope ?? ''))) return;
  const times = parts.map((each) => often(each.scope ?? ''));
  if (times.some((each) => each === null)) return;
  const total: Stated | undefined = row.stated.find((each) => each.what === 'total' && each.scope === null);
  for (const size of sizes) {
    const hand = handOf(play, size);
    if (!hand.needles.sure || hand.fresh) continue;
    const values = parts.map((each) => sizeValue(each.count.values, size));
    if (values.some((value) => value === null)) continue;
    const sum = values.reduce<number>((all, value, at) => all + (value as number) * (times[at] as number), 0);
    const told = total === undefined ? null : sizeValue(total.count.values, size);
    const have = told ?? live(hand.needles);
    const waiting = hand.held.reduce((all, set) => all + (set.used ? 0 : set.n), 0);
    if (sum === have || (told === null && sum === have + waiting)) continue;
    met(
      play,
      { kind: 'partDiffers', span: (parts[0] as Stated).count.span, numbers: { stated: sum, replayed: have }, words: { what: 'parts' } },
      size,
      row,
      label,
    );
  }
}
