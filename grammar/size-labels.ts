/**
 * The words that name sizes, wherever they stand: at the head of an order, in a label's bracket, behind an order.
 *
 *     sizes M and L only · 3rd and 4th sizes · the two largest sizes · larger 2 sizes · last 2 sizes · all sizes except XS · L only
 */

export interface SizesNamed {
  /** Indexes of the sizes, null for all. */
  readonly sizes: readonly number[] | null;
  /** "All other sizes": those that were not named before. */
  readonly rest: boolean;
  /** "only" stands behind them. */
  readonly only: boolean;
  /** "for", "on", "in", "if you are knitting" stands before them. */
  readonly led: boolean;
  /** Length of the words. */
  readonly length: number;
}

const lead = /^(?:(?:if|when)\s+(?:you(?:'re|’re|\s+are)\s+)?(?:working|knitting|making)\s+|for\s+|on\s+|in\s+)?(?:the\s+)?/i;
const sizeWord = /^\s*(?:(?:cm|ins?|inch(?:es)?|years?|yrs?|months?|mths?|chest|bust)\.?\s+)?sizes?(?![\p{L}\d])/iu;
const unit = /^\s*(?:cm|ins?|inch(?:es)?|years?|yrs?|months?|mths?)(?![\p{L}\d])\.?/iu;
const before = /^(?:sizes?|ages?)\s+/i;
const onlyBehind = /^\s*only(?![\p{L}\d])/iu;
/** What stands between two names of a list, and between the ends of a range. */
const between = /^(?:\s*,\s*(?:and|&|or)\s+|\s*[,/&+]\s*|\s+(?:and|or)\s+)/i;
const upTo = /^(?:\s*[-–—]\s*|\s+(?:to|through)\s+)/i;
const places = ['first', 'second', 'third', 'fourth', 'fifth', 'sixth', 'seventh', 'eighth', 'ninth', 'tenth'];
const numbers = ['one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine', 'ten'];
const place = /^(?:(\d{1,2})(?:st|nd|rd|th)|(first|second|third|fourth|fifth|sixth|seventh|eighth|ninth|tenth))(?![\p{L}\d])/iu;
const extreme =
  /^(?:(both|\d{1,2}|two|three|four|five|six|seven|eight)\s+)?(largest|biggest|larger|smallest|smaller|last|first|middle)(?:\s+(\d{1,2}|two|three|four|five|six|seven|eight))?(\s+sizes?)?(?![\p{L}\d])/iu;
const every = /^(?:all|every)\s+(?:the\s+)?sizes?(?![\p{L}\d])/iu;
const others = /^(?:(?:all\s+)?(?:the\s+)?(?:other|remaining|rem)\s+sizes?|all\s+others)(?![\p{L}\d])/iu;
const excepting = /^,?\s+(?:except(?:\s+for)?|but|other\s+than|apart\s+from)\s+(?:the\s+)?/i;

/** One name at the head of the words: its index, or -1 where it is none of the sizes, and its length; null where no name stands. */
function nameAt(words: string, names: readonly string[]): { readonly index: number; readonly length: number } | null {
  const ordinal = place.exec(words);
  if (ordinal)
    return {
      index: (ordinal[1] === undefined ? places.indexOf(ordinal[2]?.toLowerCase() ?? '') + 1 : Number(ordinal[1])) - 1,
      length: ordinal[0].length,
    };
  let found: { index: number; length: number } | null = null;
  names.forEach((name, index) => {
    const spelled = words.slice(0, name.length);
    if (name === '' || spelled.toLowerCase() !== name.toLowerCase() || /^[\p{L}\d]/u.test(words.slice(name.length))) return;
    if (found === null || name.length > found.length) found = { index, length: name.length };
  });
  if (found !== null) return found;
  const number = /^\d{1,3}(?![\p{L}\d.])/u.exec(words);
  if (number === null) return null;
  const started = names.findIndex((name) => name.startsWith(`${number[0]} `));
  if (started >= 0) return { index: started, length: number[0].length };
  // Sizes that are called by numbers are meant by them; others are counted.
  return { index: names.some((name) => /^\d+$/.test(name)) ? -1 : Number(number[0]) - 1, length: number[0].length };
}

/** "M and L", "1st, 3rd and 5th", "XS–M"; null where no list of names stands or one of them is no size. */
function listAt(words: string, names: readonly string[]): { readonly sizes: readonly number[]; readonly length: number } | null {
  const sizes = new Set<number>();
  let at = 0;
  for (let last = -1; ; ) {
    const name = nameAt(words.slice(at), names);
    if (name === null || name.index < 0 || name.index >= names.length) return null;
    for (let each = last < 0 ? name.index : last + 1; each <= name.index; each += 1) sizes.add(each);
    at += name.length;
    at += unit.exec(words.slice(at))?.[0].length ?? 0;
    const range = upTo.exec(words.slice(at));
    const next = range ?? between.exec(words.slice(at));
    const follows = next === null ? null : nameAt(words.slice(at + next[0].length), names);
    if (next === null || follows === null || follows.index < 0 || follows.index >= names.length) break;
    last = range === null ? -1 : name.index;
    at += next[0].length;
  }
  return { sizes: [...sizes].sort((a, b) => a - b), length: at };
}

/** "the two largest", "larger 2", "last 2", "middle": sizes by their place among the others. */
function extremeAt(
  words: string,
  count: number,
  word: 'with its word' | 'bare',
): { readonly sizes: readonly number[]; readonly length: number } | null {
  const match = extreme.exec(words);
  if (match === null || (word === 'with its word' && match[4] === undefined)) return null;
  const said = (match[1] ?? match[3])?.toLowerCase();
  const number = said === undefined ? null : said === 'both' ? 2 : /^\d/.test(said) ? Number(said) : numbers.indexOf(said) + 1;
  const which = (match[2] ?? '').toLowerCase();
  const all = Array.from({ length: count }, (_, size) => size);
  if (number !== null && number > count) return null;
  const sizes =
    which === 'middle'
      ? count % 2 === 1 && number === null
        ? [(count - 1) / 2]
        : []
      : /^(?:largest|biggest|last)$/.test(which)
        ? all.slice(-(number ?? 1))
        : which === 'larger'
          ? all.slice(number === null ? 1 : -number)
          : which === 'smaller'
            ? all.slice(0, number ?? count - 1)
            : all.slice(0, number ?? 1);
  return sizes.length === 0 ? null : { sizes, length: match[0].length };
}

/** "sizes M and L", "3rd and 4th sizes", "the two largest sizes", without what stands around them. */
function coreAt(
  words: string,
  names: readonly string[],
  led: boolean,
): { readonly sizes: readonly number[]; readonly length: number } | null {
  const placed = extremeAt(words, names.length, 'with its word');
  if (placed !== null) return placed;
  const head = before.exec(words)?.[0].length ?? 0;
  const list = listAt(words.slice(head), names);
  if (list === null) return null;
  const length = head + list.length;
  const word = head > 0 ? null : sizeWord.exec(words.slice(length));
  if (head > 0) return { sizes: list.sizes, length };
  if (word !== null) return { sizes: list.sizes, length: length + word[0].length };
  // "L only", "for M and L, …", "M, L: …": the names without the word
  if (place.test(words) || /^\d/.test(words)) return null;
  const behind = words.slice(length);
  return onlyBehind.test(behind) || (list.sizes.length > 1 && (/^\s*:/.test(behind) || (led && /^\s*,/.test(behind))))
    ? { sizes: list.sizes, length }
    : null;
}

/** The sizes named at the head of the words; null where none are. */
export function sizesNamed(text: string, names: readonly string[]): SizesNamed | null {
  const led = lead.exec(text)?.[0] ?? '';
  const words = text.slice(led.length);
  const ended = (sizes: SizesNamed['sizes'], rest: boolean, length: number): SizesNamed => {
    const only = onlyBehind.exec(words.slice(length))?.[0].length ?? 0;
    return { sizes, rest, only: only > 0, led: /\S\s/.test(led.replace(/the\s+$/i, '')), length: led.length + length + only };
  };
  const rest = others.exec(words);
  if (rest) return ended(null, true, rest[0].length);
  const all = every.exec(words);
  if (all) {
    const but = excepting.exec(words.slice(all[0].length));
    if (but === null) return ended(null, false, all[0].length);
    const behind = words.slice(all[0].length + but[0].length);
    const left = coreAt(behind, names, false) ?? extremeAt(behind, names.length, 'bare') ?? listAt(behind, names);
    if (left === null) return null;
    const sizes = names.map((_, size) => size).filter((size) => !left.sizes.includes(size));
    return ended(sizes, false, all[0].length + but[0].length + left.length);
  }
  const core = coreAt(words, names, led !== '');
  return core === null ? null : ended(core.sizes, false, core.length);
}
