/** Two measures printed as one, the width by the height: `45 × 45`, `48 (52) by 60 (64)`. */
import { type NumberList, numberListAt } from './numbers.ts';

export interface Dimension {
  readonly width: NumberList;
  readonly height: NumberList;
  readonly length: number;
}

/** `45 × 45`, `10 x 12`, `48 (52) by 60 (64)`, `width` being the list at `index`; a unit may stand after the first number. */
export function dimensionAt(text: string, index: number, sizeCount: number | null, width: NumberList): Dimension | null {
  const gap = /^\s{0,2}(?:cm|mm|ins?\.?|inch(?:es)?|"|″|m)?\s{0,2}(?:[×xX✕]|by)\s{0,2}/.exec(
    text.slice(index + width.length, index + width.length + 18),
  );
  if (gap === null) return null;
  const start = index + width.length + gap[0].length;
  const height = numberListAt(text, start, sizeCount);
  return height === null ? null : { width, height, length: start + height.length - index };
}
