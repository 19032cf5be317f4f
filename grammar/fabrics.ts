/**
 * Fabrics that a pattern may name without defining them, with what they do to a row: 'RS' and 'WS' give the stitch of
 * a row worked flat on that side, 'round' of rounds. Names as printed; the first of each list is the name in the tree.
 */
export interface Fabric {
  readonly name: string;
  readonly spellings: readonly string[];
  /** Stitch of RS rows, of WS rows, and of the two rounds of a pair. null: it depends on the draft. */
  readonly flat: readonly ['k' | 'p', 'k' | 'p'] | null;
  readonly round: readonly ['k' | 'p', 'k' | 'p'] | null;
}

export const fabrics: readonly Fabric[] = [
  {
    name: 'st st',
    spellings: [
      'st st',
      'st. st',
      'st.st',
      'stst',
      'stocking stitch',
      'stocking st',
      'stockinette',
      'stockinette stitch',
      'stockinette st',
      'ss',
      'stocking-stitch',
    ],
    flat: ['k', 'p'],
    round: ['k', 'k'],
  },
  {
    name: 'rev st st',
    spellings: [
      'rev st st',
      'reverse st st',
      'reverse stocking stitch',
      'reverse stockinette',
      'reverse stockinette stitch',
      'rev stocking st',
      'reversed st st',
      'rev stocking stitch',
      'rev stockinette st',
    ],
    flat: ['p', 'k'],
    round: ['p', 'p'],
  },
  {
    name: 'garter st',
    spellings: ['garter st', 'garter stitch', 'g st', 'g-st', 'garter', 'gst'],
    flat: ['k', 'k'],
    round: ['k', 'p'],
  },
  {
    name: 'rib',
    spellings: [
      'rib',
      'ribbing',
      'ribs',
      'k1, p1 rib',
      'k1 p1 rib',
      'k1/p1 rib',
      '1x1 rib',
      '1 x 1 rib',
      'k2, p2 rib',
      'k2 p2 rib',
      'k2/p2 rib',
      '2x2 rib',
      '2 x 2 rib',
      'single rib',
      'double rib',
      'k3, p3 rib',
      '1/1 rib',
      '2/2 rib',
      'twisted rib',
      '(k1, p1) rib',
      '(k2, p2) rib',
    ],
    flat: null,
    round: null,
  },
  { name: 'moss st', spellings: ['moss st', 'moss stitch', 'moss'], flat: null, round: null },
  { name: 'seed st', spellings: ['seed st', 'seed stitch'], flat: null, round: null },
  { name: 'lace pattern', spellings: ['lace pattern', 'lace patt'], flat: null, round: null },
  { name: 'cable pattern', spellings: ['cable pattern', 'cable patt', 'cable panel'], flat: null, round: null },
];
