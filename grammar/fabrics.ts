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

/** Knits and purls of the ribs that are named by their numbers. */
const ribs = [
  [1, 1],
  [2, 2],
  [3, 3],
  [2, 1],
  [1, 2],
  [3, 1],
  [1, 3],
  [3, 2],
  [2, 3],
  [4, 2],
  [2, 4],
  [4, 1],
  [4, 4],
  [5, 2],
  [6, 2],
] as const;

/** "k2, p2 rib", "K2/P2 ribbing", "2 x 2 rib", "rib of k2, p2". */
const countedRibs = ribs.flatMap(([knits, purls]) => {
  const names = [
    `k${knits}, p${purls}`,
    `k${knits},p${purls}`,
    `k${knits} p${purls}`,
    `k${knits}/p${purls}`,
    `k${knits}-p${purls}`,
    `k${knits}p${purls}`,
    `k${knits} and p${purls}`,
    `k ${knits}, p ${purls}`,
    `${knits}x${purls}`,
    `${knits} x ${purls}`,
    `${knits}×${purls}`,
    `${knits}/${purls}`,
    `(k${knits}, p${purls})`,
  ];
  return [...names.flatMap((name) => [`${name} rib`, `${name} ribbing`]), `rib of k${knits}, p${purls}`, `ribbing of k${knits}, p${purls}`];
});

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
    spellings: ['rib', 'ribbing', 'ribs', 'single rib', 'double rib', 'single ribbing', 'double ribbing', 'twisted rib', ...countedRibs],
    flat: null,
    round: null,
  },
  { name: 'moss st', spellings: ['moss st', 'moss stitch', 'moss'], flat: null, round: null },
  { name: 'seed st', spellings: ['seed st', 'seed stitch'], flat: null, round: null },
  { name: 'lace pattern', spellings: ['lace pattern', 'lace patt'], flat: null, round: null },
  { name: 'cable pattern', spellings: ['cable pattern', 'cable patt', 'cable panel'], flat: null, round: null },
];
