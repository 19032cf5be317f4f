/**
 * Pieces told by reference, worked in whole drafts: the stitches after the last entry of each piece, and that nothing is
 * queried of a count. Forms of the trade from memory; numbers and names made up here.
 */
import { describe, expect, test } from 'vitest';
import { proof } from '../../../src/index.ts';

const back = `# Breakwater Vest

Sizes: S (M, L)

## Back

Cast on 90 (98, 106) sts.

Beg with a k row, work 40 rows in st st.

### Shape armholes

Cast off 4 (5, 6) sts at beg of next 2 rows. 82 (88, 94) sts.

Dec 1 st at each end of next and foll 3 alt rows. 74 (80, 86) sts.

**

### Shape shoulders

Cast off 9 (10, 11) sts at beg of next 4 rows. 38 (40, 42) sts.

Leave sts on a holder.

## Front

`;

const divided = `Next row (WS): P to end.

Next row (RS): K30 (32, 34), turn and leave rem sts on a holder.

Dec 1 st at neck edge of next 6 rows. 24 (26, 28) sts.

Cast off.

With RS facing, slip centre 14 (16, 18) sts onto a holder, rejoin yarn to rem sts and k to end.

`;

/** What stands behind the Back, and the stitches after the last entry written. */
const told: readonly (readonly [string, readonly (number | null)[]])[] = [
  ['Work as for Back to armhole shaping.', [90, 98, 106]],
  ['Follow the instructions for the Back until armhole shaping is completed.', [74, 80, 86]],
  ['Front is worked exactly the same as the Back up to **.', [74, 80, 86]],
  ['Work as for Back to armhole shaping, but cast on 4 sts more.', [94, 102, 110]],
  ['Work as for Back to armhole shaping, casting on 6 sts fewer.', [84, 92, 100]],
  ['Work as for Back to armhole shaping.\n\nShape armholes as given for Back.', [74, 80, 86]],
  ['Work as for Back to armhole shaping.\n\nShape armholes as for Back until 78 (84, 90) sts rem.', [78, 84, 90]],
  ['Work as for Back to **.\n\nNext row (WS): P to end.', [74, 80, 86]],
  [`Work as for Back to **.\n\n${divided}Complete to match first side, reversing shapings.`, [0, 0, 0]],
  [
    `Work as for Back to **.\n\n### Left side of neck\n\n${divided.split('With')[0]}### Right side of neck\n\nWith${divided.split('With')[1]}Complete as for left side, reversing shapings.`,
    [0, 0, 0],
  ],
  [`Work as for Back to **.\n\n${divided}Work other side of neck to match.`, [0, 0, 0]],
];

describe('a piece told by reference', () => {
  test.each(told)('%s', (text, after) => {
    const { replay, findings } = proof(`${back}${text}\n`);
    expect(findings.filter((finding) => finding.level === 'error').map((finding) => finding.message)).toEqual([]);
    expect(replay.entries.at(-1)?.after).toEqual(after);
  });

  test('a part that the other piece does not tell leaves the count open', () => {
    const { replay } = proof(`${back}Work as for Back to **.\n\nShape neck as given for Back.\n`);
    expect(replay.entries.at(-1)?.after).toEqual([null, null, null]);
  });
});

describe('markers taken off', () => {
  const draft = (row: string): string =>
    `# Mast Sleeve\n\nCO 30 sts.\n\nRow 1 (RS): K15, pm, k15.\nRow 2: Purl.\nRow 3: ${row}\n\nBO all sts.\n`;
  const errors = (row: string): readonly string[] =>
    proof(draft(row))
      .findings.filter((finding) => finding.rule === 'marker-place')
      .map((finding) => finding.message);

  test('one that still lies some stitches ahead is noted', () => {
    expect(errors('K8, remove m, k to end.')).toHaveLength(1);
  });

  test.each([
    'K15, remove m, k15.',
    'K to m, rm, k to end.',
    'K to 1 st before marker, remove marker, k2tog, replace marker, k to end.',
    'Removing marker as you come to it, k to end.',
    'K8, bind off next 10 sts, removing m, k to end.',
  ])('%s', (row) => {
    expect(errors(row)).toEqual([]);
  });
});
