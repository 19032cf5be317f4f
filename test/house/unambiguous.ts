/**
 * Whether a regular expression can run away. It can where something repeated without end may take the same text in two
 * ways: each further pass then doubles the ways to fail. A repeated group is safe when what it holds is a code in the sense
 * of Sardinas and Patterson (1953): no text is a row of its words in two ways. Where a character stands is all that counts
 * here; looks ahead and back and ends of words only narrow what matches, so leaving them out errs on the safe side.
 */

/** The characters one place may hold. */
type Place = ReadonlySet<string>;
type Word = readonly Place[];

export class NotFinite extends Error {}

const alphabet = [
  ...Array.from({ length: 95 }, (_, index) => String.fromCharCode(32 + index)),
  '\n',
  '\t',
  '’',
  '–',
  '—',
  '½',
  '×',
  'é',
  '†',
];
const placeOf = (source: string): Place => {
  const test = new RegExp(`^(?:${source})$`, 'iu');
  return new Set(alphabet.filter((letter) => test.test(letter)));
};
const mostWords = 3_000;
/** From so many passes on a bounded repeat counts as endless. */
const many = 10;

/** All the words that a pattern may take, place by place. */
export function wordsOf(source: string): Word[] {
  let at = 0;
  const alternatives = (): Word[] => {
    const words = sequence();
    while (source[at] === '|') {
      at += 1;
      words.push(...sequence());
    }
    return words;
  };
  const sequence = (): Word[] => {
    let words: Word[] = [[]];
    while (at < source.length && source[at] !== '|' && source[at] !== ')') {
      const unit = atom();
      const [from, to] = quantifier();
      if (to >= many) throw new NotFinite();
      const next: Word[] = [];
      let passes: Word[] = [[]];
      for (let pass = 0; pass <= to; pass += 1) {
        if (pass >= from) next.push(...words.flatMap((word) => passes.map((tail) => [...word, ...tail])));
        passes = passes.flatMap((word) => unit.map((tail) => [...word, ...tail]));
        if (next.length > mostWords || passes.length > mostWords) throw new NotFinite();
      }
      words = next;
    }
    return words;
  };
  const quantifier = (): [number, number] => {
    const match = /^(?:[?*+]|\{(\d+)(,?)(\d*)\})\??/.exec(source.slice(at));
    if (match === null) return [1, 1];
    at += match[0].length;
    if (match[0][0] === '?') return [0, 1];
    if (match[1] === undefined) return [0, Number.POSITIVE_INFINITY];
    return [Number(match[1]), match[2] === '' ? Number(match[1]) : match[3] === '' ? Number.POSITIVE_INFINITY : Number(match[3])];
  };
  const atom = (): Word[] => {
    const rest = source.slice(at);
    const group = /^\((\?(?::|<?[=!]|<\w+>))?/.exec(rest);
    if (group !== null) {
      at += group[0].length;
      const aside = /[=!]$/.test(group[0]);
      const before = at;
      let inside: Word[] = [[]];
      if (aside) at = closing(source, before);
      else inside = alternatives();
      at += 1;
      return inside;
    }
    const piece = /^(?:\\(?:p\{[^}]*\}|x[\da-f]{2}|u[\da-f]{4}|.)|\[(?:\\.|[^\]\\])*\]|[\s\S])/i.exec(rest)?.[0] ?? '';
    at += piece.length;
    if (/^(?:\\[bB]|\^|\$)$/.test(piece)) return [[]];
    return [[placeOf(/^[\\[.]/.test(piece) ? piece : `\\u{${piece.codePointAt(0)?.toString(16)}}`)]];
  };
  return alternatives();
}

/** The place of the bracket that closes the group whose inside begins at `from`. */
function closing(source: string, from: number): number {
  let depth = 1;
  let inClass = false;
  for (let at = from; at < source.length; at += 1) {
    const sign = source[at];
    if (sign === '\\') at += 1;
    else if (inClass) inClass = sign !== ']';
    else if (sign === '[') inClass = true;
    else if (sign === '(') depth += 1;
    else if (sign === ')') {
      depth -= 1;
      if (depth === 0) return at;
    }
  }
  return source.length;
}

const meet = (a: Place, b: Place): boolean => [...a].some((letter) => b.has(letter));
const startsWith = (word: Word, head: Word): boolean =>
  head.length <= word.length && head.every((place, index) => meet(place, word[index] as Place));
const printed = (word: Word): string => word.map((place) => [...place].join('')).join('\u0001');

/** Whether some text is a row of these words in two ways. */
export function ambiguous(words: readonly Word[]): boolean {
  if (words.some((word) => word.length === 0)) return true;
  const distinct = [...new Map(words.map((word) => [printed(word), word])).values()];
  if (distinct.length < words.length) return true;
  const seen = new Set<string>();
  let tails: Word[] = distinct.flatMap((word, index) =>
    distinct.flatMap((other, place) => (index !== place && startsWith(word, other) ? [word.slice(other.length)] : [])),
  );
  while (tails.length > 0) {
    if (tails.some((tail) => tail.length === 0)) return true;
    tails = tails.filter((tail) => !seen.has(printed(tail)));
    for (const tail of tails) seen.add(printed(tail));
    tails = tails.flatMap((tail) =>
      distinct.flatMap((word) => [
        ...(startsWith(word, tail) ? [word.slice(tail.length)] : []),
        ...(startsWith(tail, word) ? [tail.slice(word.length)] : []),
      ]),
    );
  }
  return false;
}

/** What the groups of a pattern hold that are repeated without end, or more than a few times. */
export function repeatedGroups(source: string): string[] {
  const found: string[] = [];
  const open: number[] = [];
  let inClass = false;
  for (let at = 0; at < source.length; at += 1) {
    const sign = source[at];
    if (sign === '\\') at += 1;
    else if (inClass) inClass = sign !== ']';
    else if (sign === '[') inClass = true;
    else if (sign === '(') open.push(at);
    else if (sign === ')') {
      const start = open.pop() ?? 0;
      const often = /^(?:[*+]|\{\d+,(\d*)\})/.exec(source.slice(at + 1));
      if (often !== null && (!often[1] || Number(often[1]) >= many)) found.push(source.slice(start + 1, at).replace(/^\?(?::|<\w+>)/, ''));
    }
  }
  return found;
}
