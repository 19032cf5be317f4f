/** Yarn weights: the Craft Yarn Council's categories with gauge and needles, the names labels use, and metres to 100 g. */
import { type Certainty, memory, published } from './certainty.ts';

export interface YarnWeight {
  /** The Council's number. */
  readonly number: number;
  readonly name: string;
  /** Names on labels, in lower case. */
  readonly names: readonly string[];
  /** Stitches of stocking stitch to 4 in (10 cm); null where the range is open. */
  readonly gauge: readonly [number | null, number | null];
  /** Needles in mm. */
  readonly needles: readonly [number | null, number | null];
  /** The usual band of metres to 100 g; fibre moves it a good deal. */
  readonly metresPer100g: readonly [number | null, number | null];
  readonly certainty: Certainty;
  /** The names and the metres come from retailers' tables that differ among themselves. */
  readonly metresCertainty: Certainty;
}

const council = (pages: number): Certainty => published(`Craft Yarn Council standard yarn weight system, as reprinted by ${pages} pages`);

const weight = (
  number: number,
  name: string,
  names: readonly string[],
  gauge: YarnWeight['gauge'],
  needles: YarnWeight['needles'],
  metresPer100g: YarnWeight['metresPer100g'],
  certainty: Certainty,
): YarnWeight => ({ number, name, names, gauge, needles, metresPer100g, certainty, metresCertainty: memory });

export const yarnWeights: readonly YarnWeight[] = [
  weight(
    0,
    'Lace',
    ['lace', 'laceweight', 'cobweb', 'light fingering', '2 ply', '2-ply', '1 ply'],
    [33, 40],
    [1.5, 2.25],
    [500, 800],
    council(4),
  ),
  weight(
    1,
    'Super Fine',
    ['super fine', 'sock', 'fingering', 'baby', '3 ply', '4 ply', '3-ply', '4-ply', 'four ply'],
    [27, 32],
    [2.25, 3.25],
    [350, 460],
    council(5),
  ),
  weight(2, 'Fine', ['fine', 'sport', 'light dk', '5 ply', '5-ply'], [23, 26], [3.25, 3.75], [270, 350], council(5)),
  weight(3, 'Light', ['light', 'dk', 'double knitting', 'light worsted', '8 ply', '8-ply'], [21, 24], [3.75, 4.5], [200, 260], council(4)),
  weight(
    4,
    'Medium',
    ['medium', 'worsted', 'aran', 'afghan', 'heavy worsted', '10 ply', '10-ply'],
    [16, 20],
    [4.5, 5.5],
    [150, 220],
    council(4),
  ),
  weight(5, 'Bulky', ['bulky', 'chunky', 'craft', 'rug', '12 ply', '12-ply'], [12, 15], [5.5, 8], [90, 135], council(4)),
  weight(6, 'Super Bulky', ['super bulky', 'super chunky', 'roving', '14 ply', '14-ply'], [7, 11], [8, 12.75], [45, 100], council(2)),
  weight(7, 'Jumbo', ['jumbo'], [null, 6], [12.75, null], [null, 45], council(1)),
];

/** The weight a label name belongs to: "DK", "double knitting", "8-ply", "fingering-weight". */
export function yarnWeightOf(name: string): YarnWeight | null {
  const plain = name
    .toLowerCase()
    .replace(/[- ]weight$/, '')
    .replace(/^super-/, 'super ')
    .replace(/\s+/g, ' ')
    .trim();
  const words = plain.replaceAll('-', ' ');
  return yarnWeights.find((one) => one.names.includes(plain) || one.names.includes(words) || String(one.number) === plain) ?? null;
}

/** How many categories a gauge lies outside the weight's own range: 0 inside, 1 in the neighbour's. The ranges are guidelines. */
export function classesApart(weight: YarnWeight, stitchesPer10cm: number): number {
  const inside = (one: YarnWeight): boolean => stitchesPer10cm >= (one.gauge[0] ?? 0) && stitchesPer10cm <= (one.gauge[1] ?? Infinity);
  const distances = yarnWeights.filter(inside).map((one) => Math.abs(one.number - weight.number));
  if (distances.length > 0) return Math.min(...distances);
  // Between two ranges (22.5) or beyond them all: the nearest range counts.
  const gap = (one: YarnWeight): number => Math.max((one.gauge[0] ?? 0) - stitchesPer10cm, stitchesPer10cm - (one.gauge[1] ?? Infinity));
  const nearest = [...yarnWeights].sort((a, b) => gap(a) - gap(b))[0]!;
  return Math.abs(nearest.number - weight.number);
}
