/**
 * Knit chart symbols: what a square usually looks like, and how many stitches it uses and makes. Symbols are not universal:
 * a chart's own key decides always, and this table only helps to question a key that is missing or says something else.
 */
import { type Certainty, memory, published } from './certainty.ts';

export interface ChartSymbol {
  readonly stitch: string;
  /** The drawing in words. */
  readonly look: string;
  readonly uses: number;
  readonly makes: number;
  /** How sure the drawing is, and how sure the meaning. */
  readonly lookCertainty: Certainty;
  readonly meaningCertainty: Certainty;
}

const keys = (count: number): Certainty => published(`${count} published chart ${count === 1 ? 'key' : 'keys'}`);
const symbol = (
  stitch: string,
  look: string,
  uses: number,
  makes: number,
  lookCertainty: Certainty,
  meaningCertainty: Certainty,
): ChartSymbol => ({
  stitch,
  look,
  uses,
  makes,
  lookCertainty,
  meaningCertainty,
});

export const chartSymbols: readonly ChartSymbol[] = [
  symbol('k', 'an empty square, or one upright bar', 1, 1, keys(2), keys(4)),
  symbol('p', 'a dot in the middle, or a short dash', 1, 1, keys(2), keys(4)),
  symbol('k-tbl', 'a loop with crossed feet', 1, 1, memory, keys(2)),
  symbol('p-tbl', 'a loop with crossed feet over a dot or bar', 1, 1, memory, keys(2)),
  symbol('yo', 'an open circle', 0, 1, keys(1), keys(3)),
  symbol('m1', 'a capital M, or a raised tick', 0, 1, memory, keys(1)),
  symbol('m1l', 'an M with a foot to the left', 0, 1, memory, keys(1)),
  symbol('m1r', 'an M with a foot to the right', 0, 1, memory, keys(1)),
  symbol('kfb', 'a fork like a Y', 1, 2, memory, keys(1)),
  symbol('k-yo-k', 'a V with a mark in the middle, often a 3', 1, 3, memory, keys(1)),
  symbol('k2tog', 'a stroke leaning right', 2, 1, keys(2), keys(1)),
  symbol('ssk', 'a stroke leaning left', 2, 1, keys(1), keys(2)),
  symbol('skp', 'a stroke leaning left, sometimes with a tail', 2, 1, memory, keys(2)),
  symbol('p2tog', 'a stroke leaning right with a dot or bar', 2, 1, memory, keys(2)),
  symbol('p2tog-tbl', 'a stroke leaning left with a dot or bar', 2, 1, memory, keys(1)),
  symbol('k3tog', 'a stroke leaning right with one more across', 3, 1, memory, keys(2)),
  symbol('p3tog', 'the same with a dot', 3, 1, memory, keys(1)),
  symbol('sssk', 'a stroke leaning left with one more across', 3, 1, memory, memory),
  symbol('sk2p', 'a left-leaning stroke with a roof', 3, 1, memory, memory),
  symbol('s2kp', 'a small tent with a post in the middle', 3, 1, memory, memory),
  symbol('sl-wyib', 'a V', 1, 1, memory, keys(3)),
  symbol('sl-wyif', 'a V with a bar across', 1, 1, memory, keys(2)),
  symbol('sl-kwise', 'a V with a tick', 1, 1, memory, keys(2)),
  symbol('bobble', 'a filled circle', 1, 1, memory, keys(1)),
  symbol('no-stitch', 'a grey or black square', 0, 0, memory, memory),
  symbol('bind-off', 'a flat bar or an arc', 1, 0, memory, memory),
  symbol('cast-on', 'a U or a plus sign', 0, 1, memory, keys(1)),
];

/** How charts are read: flat work right to left on right-side rows and back again, rounds always right to left. Published in two keys. */
export const readingCertainty = keys(2);
