/**
 * One number as it is printed: digits with their fraction or ending, or number words.
 *
 * `5` · `7½` · `7 1/2` · `five` · `eighty-four` · `one hundred and twelve` · `3rd` · `twice`
 */

const names = [
  'zero',
  'one',
  'two',
  'three',
  'four',
  'five',
  'six',
  'seven',
  'eight',
  'nine',
  'ten',
  'eleven',
  'twelve',
  'thirteen',
  'fourteen',
  'fifteen',
  'sixteen',
  'seventeen',
  'eighteen',
  'nineteen',
  'twenty',
];
const numberNames = new Map(names.map((name, value) => [name, value]));
const tens = ['twenty', 'thirty', 'forty', 'fifty', 'sixty', 'seventy', 'eighty', 'ninety'];
tens.forEach((name, index) => {
  numberNames.set(name, (index + 2) * 10);
});
numberNames.set('hundred', 100);
const timesNames = new Map([
  ['once', 1],
  ['twice', 2],
  ['thrice', 3],
]);
const ordinalNames = new Map(
  ['first', 'second', 'third', 'fourth', 'fifth', 'sixth', 'seventh', 'eighth', 'ninth', 'tenth', 'eleventh', 'twelfth'].map(
    (name, index) => [name, index + 1],
  ),
);
const fractions = new Map([
  ['½', 0.5],
  ['¼', 0.25],
  ['¾', 0.75],
  ['⅓', 1 / 3],
  ['⅔', 2 / 3],
  ['⅛', 0.125],
  ['⅜', 0.375],
  ['⅝', 0.625],
  ['⅞', 0.875],
]);

export type NumberKind = 'number' | 'times' | 'ordinal';

export interface Cell {
  readonly value: number | null;
  readonly kind: NumberKind | 'hole';
  readonly end: number;
}

const cellPattern =
  /(\d+(?:\.\d+)?)(?:\s?([½¼¾⅓⅔⅛⅜⅝⅞])|[ -](\d\/\d{1,2})(?![\d/]))?((?<=1)st(?![a-z])|nd(?![a-z])|rd(?![a-z])|th(?![a-z]))?|([½¼¾⅓⅔⅛⅜⅝⅞])|([a-z]+)/iy;
/** "one hundred and twelve": what may follow the hundreds. */
const underHundred = /(?:\s+and)?\s+([a-z]+)(?:[ -](one|two|three|four|five|six|seven|eight|nine)\b)?/iy;
export const holePattern = /(?:n\/a|[–—−_-]|x)(?=\s*[,:;)\]([/])/iy;
const spacePattern = /\s*/y;

export function skip(text: string, index: number): number {
  spacePattern.lastIndex = index;
  spacePattern.exec(text);
  return spacePattern.lastIndex;
}

/** First letters of the number words and times words. */
const wordBegins = new Set([...numberNames.keys(), ...timesNames.keys()].flatMap((name) => [name.charAt(0), name.charAt(0).toUpperCase()]));

/** Whether a number may begin with the letter: a digit, a fraction, or the first letter of a number word. */
export function mayBeginNumber(letter: string): boolean {
  return (letter >= '0' && letter <= '9') || wordBegins.has(letter) || fractions.has(letter);
}

/** One number, ordinal, number word or times word; null when none stands at `index`. */
export function cellAt(text: string, index: number): Cell | null {
  if (!mayBeginNumber(text[index] ?? '')) return null;
  cellPattern.lastIndex = index;
  const match = cellPattern.exec(text);
  if (match === null) return null;
  const end = cellPattern.lastIndex;
  const [, digits, sign, written, suffix, alone, word] = match;
  if (word !== undefined) {
    const lower = word.toLowerCase();
    const number = numberNames.get(lower);
    if (number !== undefined) {
      const hundreds = number >= 1 && number < 10 ? hundredsAt(text, number, end) : null;
      if (hundreds !== null) return hundreds;
      // "eighty-four"
      const unit = number >= 20 && number < 100 ? /[ -](one|two|three|four|five|six|seven|eight|nine)\b/iy : null;
      if (unit !== null) {
        unit.lastIndex = end;
        const more = unit.exec(text);
        if (more !== null)
          return { value: number + (numberNames.get((more[1] ?? '').toLowerCase()) ?? 0), kind: 'number', end: unit.lastIndex };
      }
      return { value: number, kind: 'number', end };
    }
    const times = timesNames.get(lower);
    if (times !== undefined) return { value: times, kind: 'times', end };
    return null;
  }
  if (alone !== undefined) return { value: fractions.get(alone) ?? 0, kind: 'number', end };
  if (digits === undefined) return null;
  let value = Number(digits);
  if (sign !== undefined) value += fractions.get(sign) ?? 0;
  if (written !== undefined) {
    const [top, bottom] = written.split('/').map(Number);
    value += (top ?? 0) / (bottom || 1);
  }
  return { value, kind: suffix === undefined ? 'number' : 'ordinal', end };
}

/** "two hundred", "one hundred and twelve": the hundreds of a number in words, whose first word ends at `index`. */
function hundredsAt(text: string, hundreds: number, index: number): Cell | null {
  const word = /\s+hundred\b/iy;
  word.lastIndex = index;
  if (!word.test(text)) return null;
  const end = word.lastIndex;
  underHundred.lastIndex = end;
  const rest = underHundred.exec(text);
  const part = numberNames.get((rest?.[1] ?? '').toLowerCase());
  if (rest === null || part === undefined || part === 0 || part > 99) return { value: hundreds * 100, kind: 'number', end };
  const units = part >= 20 ? (numberNames.get((rest[2] ?? '').toLowerCase()) ?? 0) : 0;
  const length = units > 0 || rest[2] === undefined ? rest[0].length : rest[0].length - rest[2].length - 1;
  return { value: hundreds * 100 + part + units, kind: 'number', end: end + length };
}

/** "third" and its kin; they are ordinals only before a row word, so they are asked for apart. */
export function ordinalName(word: string): number | null {
  return ordinalNames.get(word.toLowerCase()) ?? null;
}
