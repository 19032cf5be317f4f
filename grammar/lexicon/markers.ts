import type { Entry } from './entry.ts';

/** Markers lie between stitches and count nothing. */
export const markers: readonly Entry[] = [
  {
    name: 'pm',
    spellings: ['pm', 'place marker', 'place m', 'pm for beg of rnd', 'place stitch marker', 'pl m', 'insert marker'],
    takes: 0,
    makes: 0,
    kind: 'marker',
    needs: ['stitch marker'],
    moves: '-',
    words: 'Hang a marker on the needle.',
    source: 'trade abbreviation lists agree; Craft Yarn Council list from memory',
  },
  {
    name: 'sm',
    spellings: ['sm', 'slip marker', 'sl m', 'slm', 'slip m', 'sl marker', 'slip the marker'],
    takes: 0,
    makes: 0,
    kind: 'marker',
    needs: ['stitch marker'],
    moves: '-',
    words: 'Pass a marker to the right needle.',
    source: 'trade abbreviation lists agree; Craft Yarn Council list from memory',
  },
  {
    name: 'rm',
    spellings: ['rm', 'remove marker', 'remove m', 'rmv m', 'take out marker'],
    takes: 0,
    makes: 0,
    kind: 'marker',
    needs: ['stitch marker'],
    moves: '-',
    words: 'Take a marker off the needle.',
    source: 'trade abbreviation lists agree; Craft Yarn Council list from memory',
  },
  {
    name: 'pm-in-st',
    spellings: ['place locking marker', 'mark this st', 'pm in st', 'hang marker on row', 'place removable marker'],
    takes: 0,
    makes: 0,
    kind: 'marker',
    needs: ['stitch marker'],
    moves: '-',
    words: 'Hang a marker in the fabric; it divides no stitches.',
    source: 'trade abbreviation lists agree',
  },
];
