/**
 * One number as a pattern prints it: `7`, `7.5`, `7½`, `7 1/2`, `7-1/2`, `1,150`, `seven`. Pure, and linear in what it reads.
 */

export interface PrintedNumber {
  readonly value: number;
  /** How many characters of the text it takes. */
  readonly length: number;
  readonly kind: 'digits' | 'fraction' | 'word';
}

const vulgar: Readonly<Record<string, number>> = {
  '½': 1 / 2,
  '¼': 1 / 4,
  '¾': 3 / 4,
  '⅛': 1 / 8,
  '⅜': 3 / 8,
  '⅝': 5 / 8,
  '⅞': 7 / 8,
  '⅓': 1 / 3,
  '⅔': 2 / 3,
  '⅕': 1 / 5,
  '⅖': 2 / 5,
  '⅗': 3 / 5,
  '⅘': 4 / 5,
  '⅙': 1 / 6,
  '⅚': 5 / 6,
};

const words: Readonly<Record<string, number>> = {
  one: 1,
  two: 2,
  three: 3,
  four: 4,
  five: 5,
  six: 6,
  seven: 7,
  eight: 8,
  nine: 9,
  ten: 10,
  eleven: 11,
  twelve: 12,
  thirteen: 13,
  fourteen: 14,
  fifteen: 15,
  sixteen: 16,
  seventeen: 17,
  eighteen: 18,
  nineteen: 19,
  twenty: 20,
};

/** First letters of the number words. */
const beginsWord = new Set(Object.keys(words).flatMap((word) => [word.charAt(0), word.charAt(0).toUpperCase()]));

/** Parts that a ruler or a needle gauge is cut in; `4/6` is two sizes, `3/4` is a fraction. */
const denominators = new Set([2, 3, 4, 8, 16]);
/** Longer runs of digits are no number of a pattern. */
const longestRun = 9;

const isDigit = (letter: string | undefined): boolean => letter !== undefined && letter >= '0' && letter <= '9';
const beyondLatin = /\p{L}/u;
/** Any letter of any script; the English ones are told by their code, since every character of a draft is asked. */
export function isLetter(letter: string | undefined): boolean {
  if (letter === undefined || letter === '') return false;
  const code = letter.charCodeAt(0);
  return code < 128 ? (code | 32) >= 97 && (code | 32) <= 122 : beyondLatin.test(letter);
}
/** Blanks that may stand inside a printed number or list; one line end is a blank too. */
export const isBlank = (letter: string | undefined): boolean =>
  letter === ' ' ||
  letter === '\t' ||
  letter === '\n' ||
  letter === '\r' ||
  letter === '\u00a0' ||
  letter === '\u2009' ||
  letter === '\u202f' ||
  letter === '\u200a';

export function skipBlanks(text: string, index: number): number {
  let at = index;
  while (at < text.length && isBlank(text[at])) at += 1;
  return at;
}

function digitRun(text: string, index: number): number {
  let end = index;
  while (end - index <= longestRun && isDigit(text[end])) end += 1;
  return end - index > longestRun ? index : end;
}

/** `1/2`, `3⁄4` written with digits; not `12/14` and not the start of `1/2/3`. */
function slashFraction(text: string, index: number): PrintedNumber | null {
  const top = digitRun(text, index);
  if (top === index || (text[top] !== '/' && text[top] !== '⁄')) return null;
  const end = digitRun(text, top + 1);
  if (end === top + 1 || text[end] === '/' || text[index - 1] === '/') return null;
  const upper = Number(text.slice(index, top));
  const lower = Number(text.slice(top + 1, end));
  if (upper < 1 || upper >= lower || !denominators.has(lower)) return null;
  return { value: upper / lower, length: end - index, kind: 'fraction' };
}

function fractionAt(text: string, index: number): PrintedNumber | null {
  const glyph = vulgar[text[index] ?? ''];
  if (glyph !== undefined) return { value: glyph, length: 1, kind: 'fraction' };
  return slashFraction(text, index);
}

/** The fraction that belongs to a whole number ending at `index`: `½`, ` ½`, ` 1/2`, `-1/2`. */
function tailFraction(text: string, index: number): { value: number; end: number } | null {
  const direct = vulgar[text[index] ?? ''];
  if (direct !== undefined) return { value: direct, end: index + 1 };
  const joint = text[index];
  if (joint === undefined || (joint !== '-' && joint !== '‑' && joint !== '\n' && !isBlank(joint)) || joint === '\n') return null;
  const fraction = fractionAt(text, index + 1);
  if (fraction === null) return null;
  return { value: fraction.value, end: index + 1 + fraction.length };
}

/** A number word at the index, standing alone: `seven`, not the start of `seventy`. */
export function numberWordAt(text: string, index: number): PrintedNumber | null {
  if (!beginsWord.has(text[index] ?? '') || isLetter(text[index - 1])) return null;
  let end = index;
  while (end < text.length && end - index < 10 && isLetter(text[end])) end += 1;
  const value = words[text.slice(index, end).toLowerCase()];
  return value === undefined ? null : { value, length: end - index, kind: 'word' };
}

export interface NumberReading {
  /** Read `12,5` as twelve and a half. */
  readonly decimalComma?: boolean;
  /** Read `1,150` as eleven hundred and fifty. Default true. */
  readonly thousands?: boolean;
  /** Read number words. Default true. */
  readonly words?: boolean;
}

/** The number that starts at `index`, or null. */
export function printedNumberAt(text: string, index: number, reading: NumberReading = {}): PrintedNumber | null {
  const fraction = fractionAt(text, index);
  if (fraction !== null) return fraction;
  const end = digitRun(text, index);
  if (end === index) return reading.words === false ? null : numberWordAt(text, index);
  const tail = tailFraction(text, end);
  if (tail !== null) return { value: Number(text.slice(index, end)) + tail.value, length: tail.end - index, kind: 'fraction' };
  if (text[end] === '.' && isDigit(text[end + 1])) {
    const stop = digitRun(text, end + 1);
    if (stop > end + 1) return { value: Number(text.slice(index, stop)), length: stop - index, kind: 'digits' };
  }
  if (text[end] === ',' && isDigit(text[end + 1])) {
    const stop = digitRun(text, end + 1);
    const width = stop - end - 1;
    const whole = text.slice(index, end);
    const after = text.slice(end + 1, stop);
    if (width === 3 && reading.thousands !== false && whole.length <= 3 && whole[0] !== '0') {
      return { value: Number(whole + after), length: stop - index, kind: 'digits' };
    }
    if (reading.decimalComma === true && width >= 1 && width <= 2) {
      return { value: Number(`${whole}.${after}`), length: stop - index, kind: 'digits' };
    }
  }
  return { value: Number(text.slice(index, end)), length: end - index, kind: 'digits' };
}
