/**
 * Body measurements by size, in inches, after the Craft Yarn Council's tables: the body, not the garment. Most rows were not
 * confirmed in print and so are `memory`: they may raise a question about a measure that does not grow as bodies do, never
 * an error, and no pattern is wrong for leaving them.
 */
import { type Certainty, memory, published } from './certainty.ts';

export type BodyPart =
  | 'chest'
  | 'backNeckToCuff'
  | 'backWaist'
  | 'backHip'
  | 'crossBack'
  | 'armToUnderarm'
  | 'upperArm'
  | 'armholeDepth'
  | 'waist'
  | 'hips';

export interface BodyRow {
  readonly part: BodyPart;
  /** One number or a range per size, in inches. */
  readonly inches: readonly (number | readonly [number, number])[];
  readonly certainty: Certainty;
}

export interface BodyTable {
  readonly who: 'baby' | 'child' | 'woman' | 'man';
  readonly sizes: readonly string[];
  readonly rows: readonly BodyRow[];
}

/** A designer's page that starts from the Council's children's sizes prints these rows alike. */
const childPage = published("a designer's page of children's measurements that began with the Craft Yarn Council's");
/** The upper ends 30 to 62 stand in one shop's list that follows the Council; M to 1X in an independent sewing chart. */
const bustPage = published("a shop's to-fit list that follows the Craft Yarn Council, and an independent sewing chart");

const row = (part: BodyPart, inches: BodyRow['inches'], certainty: Certainty = memory): BodyRow => ({ part, inches, certainty });

export const bodyTables: readonly BodyTable[] = [
  {
    who: 'baby',
    sizes: ['3 mo', '6 mo', '12 mo', '18 mo', '24 mo'],
    rows: [
      row('chest', [16, 17, 18, 19, 20]),
      row('backNeckToCuff', [10.5, 11.5, 12.5, 14, 18]),
      row('backWaist', [6, 7, 7.5, 8, 8.5]),
      row('crossBack', [7.25, 7.75, 8.25, 8.5, 8.75]),
      row('armToUnderarm', [6, 6.5, 7.5, 8, 8.5]),
      row('upperArm', [5.5, 6, 6.5, 7, 7.5]),
      row('armholeDepth', [3.25, 3.5, 3.75, 4, 4.25]),
      row('waist', [18, 19, 20, 20.5, 21]),
      row('hips', [19, 20, 20, 21, 22]),
    ],
  },
  {
    who: 'child',
    sizes: ['2', '4', '6', '8', '10', '12', '14', '16'],
    rows: [
      row('chest', [21, 23, 25, 26.5, 28, 30, 31.5, 32.5]),
      row('backNeckToCuff', [18, 19.5, 20.5, 22, 24, 26, 27, 28]),
      row('backWaist', [8.5, 9.5, 10.5, 12.5, 14, 15, 15.5, 16], childPage),
      row('crossBack', [9.25, 9.75, 10.25, 10.75, 11.25, 12, 12.25, 13], childPage),
      row('armToUnderarm', [8.5, 10.5, 11.5, 12.5, 13.5, 15, 16, 16.5], childPage),
      row('upperArm', [7, 7.5, 8, 8.5, 8.75, 9, 9.25, 9.5], childPage),
      row('armholeDepth', [4.25, 4.75, 5, 5.5, 6, 6.5, 7, 7.5], childPage),
      row('waist', [21, 21.5, 22.5, 23.5, 24.5, 25, 26.5, 27.5]),
      row('hips', [22, 23.5, 25, 28, 29.5, 31.5, 33, 35.5]),
    ],
  },
  {
    who: 'woman',
    sizes: ['XS', 'S', 'M', 'L', '1X', '2X', '3X', '4X', '5X'],
    rows: [
      row(
        'chest',
        [
          [28, 30],
          [32, 34],
          [36, 38],
          [40, 42],
          [44, 46],
          [48, 50],
          [52, 54],
          [56, 58],
          [60, 62],
        ],
        bustPage,
      ),
      row('backNeckToCuff', [
        [27, 27.5],
        [28, 28.5],
        [29, 29.5],
        [30, 30.5],
        [31, 31.5],
        [31.5, 32],
        [32.5, 33],
        [32.5, 33],
        [33, 33.5],
      ]),
      row('backWaist', [16.5, 17, 17.25, 17.5, 17.75, 18, 18, 18.5, 18.5]),
      row('crossBack', [[14, 14.5], [14.5, 15], [16, 16.5], [17, 17.5], 17.5, 18, 18, 18.5, 18.5]),
      row('armToUnderarm', [16.5, 17, 17, 17.5, 17.5, 18, 18, 18.5, 18.5]),
      row('upperArm', [9.75, 10.25, 11, 12, 13.5, 15.5, 17, 18.5, 19.5]),
      row('armholeDepth', [
        [6, 6.5],
        [6.5, 7],
        [7, 7.5],
        [7.5, 8],
        [8, 8.5],
        [8.5, 9],
        [9, 9.5],
        [9.5, 10],
        [10, 10.5],
      ]),
      row('waist', [
        [23, 24],
        [25, 26.5],
        [28, 30],
        [32, 34],
        [36, 38],
        [40, 42],
        [44, 45],
        [46, 47],
        [49, 50],
      ]),
      row('hips', [
        [33, 34],
        [35, 36],
        [38, 40],
        [42, 44],
        [46, 48],
        [52, 53],
        [54, 55],
        [56, 57],
        [61, 62],
      ]),
    ],
  },
  {
    who: 'man',
    sizes: ['S', 'M', 'L', 'XL', '2X'],
    rows: [
      row('chest', [
        [34, 36],
        [38, 40],
        [42, 44],
        [46, 48],
        [50, 52],
      ]),
      row('backNeckToCuff', [
        [32, 32.5],
        [33, 33.5],
        [34, 34.5],
        [35, 35.5],
        [36, 36.5],
      ]),
      row('backHip', [
        [25, 25.5],
        [26.5, 26.75],
        [27, 27.25],
        [27.5, 27.75],
        [28, 28.5],
      ]),
      row('crossBack', [
        [15.5, 16],
        [16.5, 17],
        [17.5, 18],
        [18, 18.5],
        [18.5, 19],
      ]),
      row('armToUnderarm', [18, 18.5, 19.5, 20, 20.5]),
      row('upperArm', [12, 13, 15, 16, 17]),
      row('armholeDepth', [
        [8.5, 9],
        [9, 9.5],
        [9.5, 10],
        [10, 10.5],
        [10.5, 11],
      ]),
      row('waist', [
        [28, 30],
        [32, 34],
        [36, 38],
        [42, 44],
        [46, 48],
      ]),
      row('hips', [
        [35, 37],
        [39, 41],
        [43, 45],
        [47, 49],
        [51, 53],
      ]),
    ],
  },
];

/** Ease by fit, in inches: finished bust less body bust. Two to four inches for a classic fit stands in five sources. */
export interface EaseBand {
  readonly fit: string;
  readonly inches: readonly [number | null, number | null];
  readonly certainty: Certainty;
}

export const easeBands: readonly EaseBand[] = [
  { fit: 'very close', inches: [null, 0], certainty: published("a yarn company's fit guideline") },
  { fit: 'close', inches: [1, 2], certainty: published("a yarn company's fit guideline") },
  { fit: 'classic', inches: [2, 4], certainty: published("a yarn company's fit guideline and four articles on ease") },
  { fit: 'loose', inches: [4, 6], certainty: published("a yarn company's fit guideline") },
  { fit: 'oversized', inches: [6, null], certainty: published("a yarn company's fit guideline") },
];

/** Head girth in inches, widest limits over several hobby tables, which disagree by up to three inches. */
export const headInches: readonly { readonly who: string; readonly inches: readonly [number, number] }[] = [
  { who: 'preemie', inches: [9, 13] },
  { who: 'newborn', inches: [13, 14] },
  { who: 'baby', inches: [14, 17] },
  { who: 'toddler', inches: [16, 20] },
  { who: 'child', inches: [18, 20.5] },
  { who: 'teen', inches: [20, 22] },
  { who: 'woman', inches: [20, 23.5] },
  { who: 'man', inches: [22, 24.5] },
];
/** Only a hat far outside every table is worth a question. */
export const headSlack = { bigger: 2, smaller: 4, certainty: memory } as const;
