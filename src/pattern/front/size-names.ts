/** Lists of size names: `XS (S, M, L)`, `S/M/L`, `1 (2, 3)(4, 5)`, `2-3 (4-5: 6-7) years`, `Small (Medium, Large)`. */

export interface NameList {
  readonly names: readonly string[];
  /** How many characters of the text the list takes. */
  readonly length: number;
}

const letters = new Set(
  (
    'xxxs xxs xs s m l xl xxl xxxl xxxxl 1x 2x 3x 4x 5x 6x 7x 1xl 2xl 3xl 4xl 5xl 6xl 2xs 3xs s/m m/l l/xl xs/s one petite ' +
    'small medium large x-small x-large xx-small xx-large xxx-large newborn baby toddler child youth teen adult preemie infant ' +
    // blankets
    'crib cradle cot pram stroller lap throw twin queen king ' +
    'women woman men man kids kid tween junior'
  ).split(' '),
);
const qualifiers = new Set(
  "extra extra-extra x xx child child's children's baby toddler adult adult's women's woman's men's man's youth teen ladies'".split(' '),
);
const ageWords = /^(?:years?|yrs?|months?|mths?|mos?|m|y|t|weeks?)\.?$/i;
const agedNumber = /^\d{1,2}(?:\s?[-–/]\s?\d{1,2})?\s?(?:years?|yrs?|months?|mths?|mos?|y|t|m)?\.?$/i;

/** A name that a size can have: letters, a number, a range of ages or a word such as Small. */
export function isSizeName(name: string): boolean {
  const plain = name.trim().toLowerCase().replaceAll('’', "'");
  if (plain === '' || plain.length > 24) return false;
  if (letters.has(plain)) return true;
  if (/^\d{1,3}(?:[.½¼¾])?(?:\s?[-–]\s?\d{1,3})?$/.test(plain) || agedNumber.test(plain)) return true;
  if (/^\d{1,2}(?:st|nd|rd|th)$/.test(plain)) return true;
  const words = plain.replace(/^sizes?\s+/, '').split(/\s+/);
  if (words.length === 1 && words[0] !== plain) return isSizeName(words[0]!);
  const last = words.at(-1)!;
  return words.length <= 3 && words.slice(0, -1).every((word) => qualifiers.has(word)) && (letters.has(last) || agedNumber.test(last));
}

const clean = (name: string): string =>
  name
    .trim()
    .replace(/\s+/g, ' ')
    .replace(/["'*.]+$/g, '')
    .trim();

/** One name at the index: up to a separator or bracket, `2-3 years`, `Extra Small`. */
const nameAt =
  /^\s{0,3}(?:sizes?\s)?((?:X{1,2}-|[0-9]X\b)?[A-Za-z0-9½]+(?:['’]s)?(?:\s?[-–/]\s?(?=\d)\d{1,3})?(?:-[A-Za-z]+)?(?:\s(?:years?|yrs?|months?|mths?|mos?|small|medium|large|[smlSML]|XS|XL|T)\b\.?)*)/i;

function splitInside(inside: string, first: string): readonly string[] {
  const strong = /[,:;|]/.test(inside);
  if (strong)
    return inside
      .split(/[,:;|]|\band\b|&/)
      .map(clean)
      .filter((name) => name !== '');
  if (inside.includes('/')) return inside.split('/').map(clean);
  // Dashes alone divide sizes, unless the first size is itself a range.
  if (/[-–]/.test(inside) && !/\d\s?[-–]\s?\d/.test(first) && !/[a-z]-[a-z]/i.test(inside)) return inside.split(/\s*[-–]\s*/).map(clean);
  return [clean(inside)];
}

/** `FIRST (SECOND, THIRD)[FOURTH]` at the start of the text. */
function bracketed(text: string): NameList | null {
  const first = nameAt.exec(text);
  if (first === null) return null;
  const names = [clean(first[1]!)];
  let at = first[0].length;
  for (let groups = 0; groups < 12; groups += 1) {
    const open = /^\s{0,2}(?:years?|yrs?|months?|mths?|mos?|cm|in|ins|")?\s{0,2},?\s{0,2}([([{])/i.exec(text.slice(at, at + 16));
    if (open === null) break;
    const start = at + open[0].length;
    const close = { '(': ')', '[': ']', '{': '}' }[open[1]!]!;
    const end = text.indexOf(close, start);
    if (end < 0 || end - start > 240) break;
    const inside = text.slice(start, end);
    if (/[()[\]{}]/.test(inside)) break;
    const parts = splitInside(inside, names[0]!);
    if (parts.length === 0 || !parts.every(isSizeName)) break;
    names.push(...parts);
    at = end + 1;
    // "1 (2) 3 (4) 5": sizes by turns in and out of brackets.
    const bare = parts.length === 1 ? /^\s{1,2}([A-Za-z0-9]{1,5})(?=\s{0,2}[([{]|\s*(?:[.,;\n]|$))/.exec(text.slice(at, at + 12)) : null;
    if (bare !== null && isSizeName(bare[1]!)) {
      names.push(bare[1]!);
      at += bare[0].length;
    }
  }
  return names.length > 1 && isSizeName(names[0]!) ? { names, length: at } : null;
}

/** `(S) M (L) XL`, `(0-3) 3-6 (6-12) months`: by turns, the first in a bracket. */
function bracketFirst(text: string): NameList | null {
  const names: string[] = [];
  let at = 0;
  for (let turn = 0; turn < 20; turn += 1) {
    const found = (
      turn % 2 === 0
        ? /^\s{0,2}\(\s?([A-Za-z0-9½]{1,5}(?:\s?[-–/]\s?[A-Za-z0-9½]{1,5})?)\s?\)/
        : /^\s{0,2}([A-Za-z0-9½]{1,5}(?:\s?[-–/]\s?[A-Za-z0-9½]{1,5})?)(?=\s|[.,;]|$)/
    ).exec(text.slice(at, at + 24));
    if (found === null || !isSizeName(found[1]!)) break;
    names.push(clean(found[1]!));
    at += found[0].length;
  }
  return names.length >= 3 ? { names, length: at } : null;
}

/** Names with no bracket: `S, M, L`, `S/M/L`, `XS – S – M`, `S, M and L`, `S | M | L`. */
function bare(text: string): NameList | null {
  const names: string[] = [];
  let at = 0;
  let mark: string | null = null;
  for (let i = 0; i < 40; i += 1) {
    // The first name must not swallow a dash list of names.
    const name = (mark === '/' || mark === '-' ? /^\s{0,2}([A-Za-z0-9½]+)/ : nameAt).exec(text.slice(at, at + 40));
    if (name === null) break;
    let word = name[1]!;
    if (i === 0 && /^[a-z0-9]{1,4}(?:[/–-]|\s\/\s)[a-z0-9]/i.test(text.slice(at).trimStart())) word = /^[A-Za-z0-9½]+/.exec(word)![0];
    if (!isSizeName(clean(word))) break;
    names.push(clean(word));
    at += name[0].indexOf(name[1]!) + word.length;
    const joint = /^\s{0,2}(,?\s{0,2}(?:and|&|or)\s|[,/|:;–-])/.exec(text.slice(at, at + 10));
    if (joint === null) break;
    const kind = /and|&|or/.test(joint[1]!) ? ',' : joint[1]! === '–' ? '-' : joint[1]!;
    if (mark !== null && kind !== mark && !/and|&|or/.test(joint[1]!)) break;
    // A separator with no name behind it ends the list.
    const next = /^\s{0,2}([A-Za-z0-9½]+)/.exec(text.slice(at + joint[0].length, at + joint[0].length + 20));
    if (next === null || !isSizeName(next[1]!.replace(/^(extra|child|adult)$/i, 'small'))) break;
    mark = kind;
    at += joint[0].length;
  }
  // Two numbers with one dash are a range, and "S-XL" is one too.
  if (names.length < 2 || (names.length === 2 && mark === '-')) return null;
  return { names, length: at };
}

/** "Women's S (M, L)": the wearer is said once and is no part of the name. */
function withoutWearer(list: NameList): NameList {
  const first = /^(?:(?:wo)?m[ae]n'?s|ladies'|child(?:ren)?(?:'s)?|adult(?:'s)?|kids'?|unisex)\s(\S.*)$/i.exec(
    list.names[0]!.replaceAll('’', "'"),
  );
  if (first === null || list.names.slice(1).some((name) => name.includes(' '))) return list;
  return { ...list, names: [first[1]!, ...list.names.slice(1)] };
}

/** The list of size names at the start of the text, or null. An age behind the list goes to every name. */
export function sizeNamesAt(text: string): NameList | null {
  const found = bracketFirst(text) ?? bracketed(text) ?? bare(text);
  if (found === null) return null;
  const list = withoutWearer(found);
  const own = /\s(years?|yrs?|months?|mths?|mos?)\.?$/i.exec(list.names[0]!)?.[1];
  if (own !== undefined && list.names.slice(1).every((name) => /^\d/.test(name) && !/[a-z]/i.test(name))) {
    return { ...list, names: list.names.map((name, i) => (i === 0 ? name : `${name} ${own}`)) };
  }
  const unit = /^\s{0,2}(years?|yrs?|months?|mths?|mos)\b/i.exec(text.slice(list.length, list.length + 12))?.[1];
  if (unit === undefined || list.names.some((name) => ageWords.test(name.split(' ').at(-1)!))) return list;
  const single = unit.replace(/s$/i, '');
  return {
    names: list.names.map((name) => (name === '1' ? `1 ${single}` : `${name} ${unit}`)),
    length: list.length + text.slice(list.length).indexOf(unit) + unit.length,
  };
}
