/** What a named measure measures: "Actual bust" goes round a body, "Upper arm" round a sleeve, "Length to shoulder" along the back. */
import type { NamedMeasure } from '../../src/pattern/front/front-matter.ts';

export type Girth = 'body' | 'tube' | 'upperArm' | 'width' | 'hem';

const girths: readonly (readonly [Girth, RegExp])[] = [
  ['upperArm', /\b(?:upper (?:arm|sleeve)|sleeve (?:width|circumference|at (?:upper arm|widest)))\b/i],
  [
    'hem',
    /\b(?:hem|waist|hips?|cuff|wrist|neck|shoulder|back|cross|armhole|yoke|border|band|edging|hood|strap|brim|crown|opening|top|collar)\b/i,
  ],
  ['body', /\b(?:bust|chest|body (?:width|circumference))\b/i],
  ['tube', /\b(?:circumference|girth|around|round|palm|hand|foot)\b/i],
  ['width', /\b(?:width|wide|across|square)\b/i],
];

/** "The cap measures 46 cm round" states a measure; "until it measures 46 cm" is a goal. */
const isLength = /\b(?:length|long|tall|height|high|depth|deep|ease|drop|seam|from|until|(?:piece|work|it|length|armhole) measures?)\b/i;

/** What the measure goes round or across; null where it is a length or something this project cannot match to counts. */
export function girthOf(measure: NamedMeasure): Girth | null {
  if (measure.kind === 'toFit' || isLength.test(measure.name)) return null;
  return girths.find(([, words]) => words.test(measure.name))?.[0] ?? null;
}

/** "Finished size: 45 × 45 cm": width and height under one name. */
export const isSquare = (measure: NamedMeasure): boolean => {
  const one = measure.measures[0];
  const two = measure.measures[1];
  return measure.kind === 'finished' && one !== undefined && two !== undefined && one.unit === two.unit;
};
