/**
 * A bullet that is the opening mark of a repeat.
 *
 *     * K2, yo; rep from * across        Markdown sees a bullet, the knitter sees where to repeat from
 *
 * It is one when the item's own words point back to such a mark and no other mark opens in them.
 */

const pointing = /\b(?:from|between|to|until|at|and|of|rep|repeat)$/i;
const onlyPointing = /^[\s,;.:]*(?:(?:then|work|rep|repeat|as|once|more|again|from|between|to)\b[\s,;.:]*)*$/i;
const pointingWord = 12;

type Role = 'opens' | 'closes' | 'points';

function roleOf(text: string, at: number, mark: string): Role {
  const before = text[at - 1] ?? ' ';
  if (pointing.test(text.slice(Math.max(0, at - pointingWord), at).trimEnd())) return 'points';
  const next = text[at + 1] ?? ' ';
  const tight = before.trim() !== '' && !'([,;:'.includes(before) && !/[\p{L}\p{N}]/u.test(next);
  return tight && mark === '*' ? 'closes' : 'opens';
}

/** Whether the bullet before `text` (an item's passage, type already blanked) is a repeat mark of it. */
export function bulletOpensRepeat(text: string, bullet: string): boolean {
  if (bullet !== '*' && bullet !== '+') return false;
  let pointsBack = false;
  for (let at = text.indexOf(bullet); at !== -1; at = text.indexOf(bullet, at + 1)) {
    if (text[at + 1] === bullet) {
      while (text[at + 1] === bullet) at++;
      continue;
    }
    const role = roleOf(text, at, bullet);
    if (role === 'opens') return false;
    if (!pointsBack && role === 'points' && onlyPointing.test(text.slice(0, Math.min(at, 80)))) return false;
    pointsBack = true;
  }
  return pointsBack;
}
