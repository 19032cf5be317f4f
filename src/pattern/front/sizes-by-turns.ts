/** Sizes in and out of brackets by turns, the first in a bracket: `(10) 11 (12)`. */
import type { NumberList } from './numbers.ts';

const turnValue = String.raw`(\d{1,5}(?:[.,]\d{1,2})?)(?:\s?[-–]\s?(\d{1,5}(?:[.,]\d{1,2})?))?`;
const turnInside = new RegExp(String.raw`\s{0,2}\(\s?${turnValue}\s?\)`, 'y');
const turnOutside = new RegExp(String.raw`\s{0,2}${turnValue}(?![\w.,]\d)`, 'y');

/** `(10) 11 (12)`, `(36-38) 40-42 (44-46)`: sizes by turns, the first in a bracket; as many as there are sizes. */
export function turnsAt(text: string, index: number, sizeCount: number): NumberList | null {
  const values: number[] = [];
  const upper: number[] = [];
  const places: { start: number; end: number }[] = [];
  let at = index;
  while (values.length < sizeCount) {
    const pattern = values.length % 2 === 0 ? turnInside : turnOutside;
    pattern.lastIndex = at;
    const match = pattern.exec(text);
    if (match === null) return null;
    const low = Number(match[1]!.replace(',', '.'));
    const start = at + match[0].indexOf(match[1]!);
    values.push(low);
    upper.push(match[2] === undefined ? low : Number(match[2].replace(',', '.')));
    at = pattern.lastIndex;
    places.push({ start, end: values.length % 2 === 1 ? at - 1 : at });
  }
  return {
    values,
    upper: values.some((value, i) => value !== upper[i]) ? upper : null,
    length: at - index,
    places,
    bracket: '(',
    closed: true,
  };
}
