/**
 * The names with several readings, as data. Source: common practice of the trade; British and older names from memory.
 */
import type { Ambiguity, Reading } from './ambiguous.ts';

const cross = (left: boolean, purl: boolean, n: number, m: number): Reading => ({
  name: `N/M ${left ? 'L' : 'R'}${purl ? 'P' : ''}C`,
  n,
  m,
});

/** An odd width has no half: the wide strand in front, or the narrow one; or one stitch standing between. */
function oddCross(width: number, left: boolean): Ambiguity {
  const wide = (width + 1) / 2;
  const narrow = width - wide;
  const between: Reading[] = width === 3 ? [] : [{ name: `N/M/N ${left ? 'LC' : 'RC'}`, n: narrow, m: 1 }];
  const letters = left ? ['F', 'L'] : ['B', 'R'];
  const words = left ? ['front', 'left'] : ['back', 'right'];
  return {
    spellings: [...letters.map((letter) => `C${width}${letter}`), ...words.map((word) => `cable ${width} ${word}`)],
    readings: [cross(left, false, wide, narrow), cross(left, false, narrow, wide), ...between],
    undecided: 'query',
  };
}

/** A travelling cross names its width only. */
function travelling(width: number, left: boolean, splits: readonly (readonly [number, number])[]): Ambiguity {
  const letters = left ? ['F', 'L'] : ['B', 'R'];
  const between: Reading[] = width === 5 ? [{ name: `N/M/N ${left ? 'LPC' : 'RPC'}`, n: 2, m: 1 }] : [];
  return {
    spellings: ['T', 'Cr'].flatMap((start) => letters.map((letter) => `${start}${width}${letter}`)),
    readings: [...splits.map(([n, m]) => cross(left, true, n, m)), ...between],
    undecided: 'query',
  };
}

/** Every name with more than one reading. */
export const ambiguousNames: readonly Ambiguity[] = [
  {
    // A British yarn over between knits, also before a slip that opens a decrease; otherwise the yarn only moves.
    spellings: [
      'yfwd',
      'yf',
      'y fwd',
      'yarn forward',
      'yarn fwd',
      'wfwd',
      'wool fwd',
      'wl. fwd.',
      'wl fwd',
      'w fwd',
      'wool forward',
      'yft',
      'bring yarn forward',
      'bring the yarn forward',
      'bring wool forward',
      'bring the wool forward',
    ],
    readings: [
      { name: 'yf (move)', when: [{ kind: 'undoneBy', entry: 'yb' }] },
      { name: 'yf (move)', when: [{ kind: 'next', is: ['p', 'slip', 'turn'] }] },
      {
        name: 'yfwd',
        when: [
          { kind: 'previous', is: ['k', 'start'] },
          { kind: 'next', is: ['k'] },
        ],
      },
      { name: 'yfwd' },
      { name: 'yf (move)' },
    ],
    undecided: 'query',
  },
  { spellings: ['inc', 'inc 1', 'inc 1 st', 'increase 1'], readings: [{ name: 'kfb' }, { name: 'M1' }], undecided: 'query' },
  {
    spellings: ['inc 2'],
    readings: [{ name: 'inc (unspecified)', n: 2, netOnly: true }, { name: 'kfb', times: 2 }, { name: '(k1, p1, k1) in st' }],
    undecided: 'query',
  },
  {
    spellings: ['inc 4'],
    readings: [{ name: 'inc (unspecified)', n: 4, netOnly: true }, { name: 'kfb', times: 4 }, { name: '(k1, p1) twice, k1 in st' }],
    undecided: 'query',
  },
  {
    spellings: ['inc {N}', 'increase {N} sts'],
    readings: [
      { name: 'inc (unspecified)', n: 'N', netOnly: true },
      { name: 'kfb', times: 'N' },
      { name: 'inc 1-to-N', n: 'N+1' },
    ],
    undecided: 'query',
  },
  {
    spellings: ['dec', 'dec 1', 'dec 1 st', 'decrease 1', 'work 2 tog'],
    readings: [
      { name: 'k2tog', when: [{ kind: 'side', side: 'RS' }] },
      { name: 'p2tog', when: [{ kind: 'side', side: 'WS' }] },
      { name: 'k2tog' },
    ],
    undecided: null,
  },
  ...[
    { width: 2, entry: 'dbl dec (unspecified)' },
    { width: 3, entry: '4-to-1 dec' },
    { width: 4, entry: '5-to-1 dec' },
  ].map(
    ({ width, entry }): Ambiguity => ({
      spellings: [`dec ${width}`],
      readings: [{ name: 'dec (unspecified)', n: width, netOnly: true }, { name: 'k2tog', times: width }, { name: entry }],
      undecided: 'query',
    }),
  ),
  {
    spellings: ['dec {N}'],
    readings: [
      { name: 'dec (unspecified)', n: 'N', netOnly: true },
      { name: 'k2tog', times: 'N' },
      { name: 'kNtog', n: 'N+1' },
    ],
    undecided: 'query',
  },
  { spellings: ['M1', 'make 1', 'make one'], readings: [{ name: 'M1' }, { name: 'yo' }], undecided: null },
  {
    spellings: ['M{N}', 'make {N}'],
    readings: [
      { name: 'MN', n: 'N' },
      { name: 'yo N times', n: 'N' },
      { name: 'inc 1-to-N', n: 'N' },
    ],
    undecided: 'query',
  },
  {
    spellings: ['k1b', 'kb'],
    readings: [
      { name: 'k tbl', n: 1 },
      { name: 'k1b', n: 1 },
    ],
    undecided: null,
  },
  {
    spellings: ['k2b'],
    readings: [{ name: 'k tbl', n: 2 }, { name: 'k1b', n: 2 }, { name: 'k2tog tbl' }],
    undecided: 'query',
  },
  {
    spellings: ['k4b'],
    readings: [
      { name: 'k tbl', n: 4 },
      { name: 'k1b', n: 4 },
      { name: 'k1 N rows below', n: 4 },
    ],
    undecided: 'query',
  },
  {
    spellings: ['k5b'],
    readings: [
      { name: 'k tbl', n: 5 },
      { name: 'k1b', n: 5 },
      { name: 'k1 N rows below', n: 5 },
    ],
    undecided: 'query',
  },
  {
    spellings: ['k{N}b'],
    readings: [
      { name: 'k tbl', n: 'N' },
      { name: 'k1b', n: 'N' },
    ],
    undecided: null,
  },
  { spellings: ['p1b'], readings: [{ name: 'p tbl', n: 1 }, { name: 'p1b' }], undecided: null },
  { spellings: ['LLI', 'inc1L'], readings: [{ name: 'LLI' }, { name: 'k1 and LLI' }], undecided: 'query' },
  { spellings: ['RLI', 'inc1R'], readings: [{ name: 'RLI' }, { name: 'RLI and k1' }], undecided: 'query' },
  {
    // After "sl 2 …" a bare psso may lift one stitch or both.
    spellings: ['psso', 'pass sl st over', 'pass slip st over', 'pass slipped stitch over'],
    readings: [
      { name: 'psso', when: [{ kind: 'slipsWaiting', count: 1 }] },
      { name: 'p2sso', when: [{ kind: 'slipsWaiting', count: 2 }] },
      { name: 'psso' },
    ],
    undecided: 'query',
  },
  {
    spellings: ['k1, yo twice'],
    readings: [
      { name: 'k1 wrapping N', n: 2, when: [{ kind: 'nextRowDrops' }] },
      { name: 'k', n: 1, followedBy: [{ name: 'yo N times', n: 2 }] },
      { name: 'k1 wrapping N', n: 2 },
    ],
    undecided: null,
  },
  { spellings: ['turn, yo'], readings: [{ name: 'yo short row' }, { name: 'turn', followedBy: [{ name: 'yo' }] }], undecided: 'query' },
  ...[3, 5, 7, 9].flatMap((width) => [oddCross(width, true), oddCross(width, false)]),
  ...[true, false].flatMap((left) => [
    travelling(3, left, [
      [2, 1],
      [1, 2],
    ]),
    travelling(4, left, [
      [2, 2],
      [3, 1],
    ]),
    travelling(5, left, [
      [3, 2],
      [2, 3],
    ]),
  ]),
  {
    spellings: ['twist {N} front'],
    readings: [
      { name: 'TNF', n: 'N' },
      { name: 'CNF', n: 'N' },
    ],
    undecided: null,
  },
  {
    spellings: ['twist {N} back'],
    readings: [
      { name: 'TNB', n: 'N' },
      { name: 'CNB', n: 'N' },
    ],
    undecided: null,
  },
];
