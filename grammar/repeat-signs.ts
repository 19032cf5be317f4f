/**
 * Signs of repeats other than stars and daggers. A draft may use any sign it names: "#p2, k2; rep from # to last st",
 * "+k2, p2+; rep from + to +", and in plain words "repeat from star to end".
 */

const named = /\brep(?:eat|eating|s)?\b\.?\s+(?:from|between|bet\.?)\s+(?:the\s+)?([+#§¶°^~@◊•])/gi;
const told = /\b(?:from|between|to|and)\s+(?:the\s+)?((?:star|asterisk)s?)\b/gi;

/** Where such signs stand in a text that repeats from them. */
export function signsOfRepeats(text: string): ReadonlySet<number> {
  const found = new Set<number>();
  for (const [, sign] of text.matchAll(named))
    for (let at = text.indexOf(sign ?? ''); at >= 0; at = text.indexOf(sign ?? '', at + 1)) found.add(at);
  if (text.includes('*')) for (const match of text.matchAll(told)) found.add(match.index + match[0].length - (match[1] ?? '').length);
  return found;
}
