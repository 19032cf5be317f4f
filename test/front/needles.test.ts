import { describe, expect, it } from 'vitest';
import { read, shorts } from './draft.ts';

const needles = (source: string) =>
  read(source).front.needles.map((needle) => [needle.mm, needle.us, needle.uk, needle.kind, shorts(needle.length), needle.role]);
const listed = (line: string) => needles(`# Kelp\n\n## Materials\n\n${line}\n`);

// Forms of a needle line in print: common practice, no single source.
const lines: readonly [string, ReturnType<typeof needles>][] = [
  ['Pair of 4 mm (UK 8/US 6) needles', [[4, '6', '8', 'straight', '', null]]],
  ['1 pair 3¼ mm (US 3/UK 10) needles', [[3.25, '3', '10', 'straight', '', null]]],
  ['US 7 (4.5 mm) circular needle, 40 in (100 cm) long', [[4.5, '7', null, 'circular', '40 in / 100 cm', null]]],
  ['4.5 mm (US size 7) 80 cm circular needle', [[4.5, '7', null, 'circular', '80 cm', null]]],
  ['US #7/4.5mm needles', [[4.5, '7', null, null, '', null]]],
  ['4mm [US 6, UK 8] needles', [[4, '6', '8', null, '', null]]],
  ['A set of five US 1 (2.25 mm) double-pointed needles', [[2.25, '1', null, 'doublePointed', '', null]]],
  ['US 10½ (6.5 mm) needles', [[6.5, '10.5', null, null, '', null]]],
  ['US 10 1/2 straight needles', [[null, '10.5', null, 'straight', '', null]]],
  ['9 mm (UK 00) needles', [[9, null, '00', null, '', null]]],
  ['32" US 8 (5 mm) circular', [[5, '8', null, 'circular', '32 in', null]]],
  [
    '1 pair each 3.25 mm (UK 10/US 3) and 4 mm (UK 8/US 6) needles',
    [
      [3.25, '3', '10', 'straight', '', null],
      [4, '6', '8', 'straight', '', null],
    ],
  ],
  [
    'US 8 (5 mm), 32 in (80 cm) circular and set of dpns',
    [
      [5, '8', null, 'circular', '32 in / 80 cm', null],
      [5, '8', null, 'doublePointed', '', null],
    ],
  ],
  // a needle for each length
  [
    '5 mm circular needles, 40 cm and 80 cm long',
    [
      [5, null, null, 'circular', '40 cm', null],
      [5, null, null, 'circular', '80 cm', null],
    ],
  ],
  [
    'US 8 (5 mm) circular needles in 16 in (40 cm) and 32 in (80 cm) lengths',
    [
      [5, '8', null, 'circular', '16 in / 40 cm', null],
      [5, '8', null, 'circular', '32 in / 80 cm', null],
    ],
  ],
  ['US 6 (4 mm) circular for the ribbing', [[4, '6', null, 'circular', '', 'ribbing']]],
  ['Two 4 mm (US 6) double-pointed needles for the cord', [[4, '6', null, 'doublePointed', '', 'cord']]],
  ['A spare 4.5 mm (US 7) needle for joining the hood', [[4.5, '7', null, 'spare', '', 'hood']]],
  ['spare needle', [[null, null, null, 'spare', '', null]]],
  ['Needles one size smaller than gauge needle for ribs', [[null, null, null, null, '', 'one size smaller']]],
  ['Old UK size 8 (4 mm) needles', [[4, null, '8', null, '', null]]],
  [
    'Needles 3½ and 4 mm',
    [
      [3.5, null, null, null, '', null],
      [4, null, null, null, '', null],
    ],
  ],
  ['US 7 / 4.5 mm 24" circulars', [[4.5, '7', null, 'circular', '24 in', null]]],
  ['No. 8 (4 mm) needles', [[4, null, '8', null, '', null]]],
];

describe('needles of a list', () => {
  it.each(lines)('%s', (line, want) => {
    expect(listed(line)).toEqual(want);
  });
  it.each([
    '5 buttons, 18 mm (¾ in)',
    'Tapestry needle',
    'cable needle',
    '4 mm beads',
    'Adjust needle sizes if necessary to obtain gauge.',
    '200 m DK wool',
  ])('%s is none', (line) => {
    expect(listed(line)).toEqual([]);
  });
});

describe('needles behind a label', () => {
  it('of a run-in', () => {
    expect(
      needles(
        '# K\n\n**Needles.** 3.5 mm (US 4) circular, 30 cm (12 in) long. 4 mm (US 6) circular, 30 cm (12 in) long, and 4 mm (US 6) dpns for the crown\n',
      ),
    ).toEqual([
      [3.5, '4', null, 'circular', '30 cm / 12 in', null],
      [4, '6', null, 'circular', '30 cm / 12 in', null],
      [4, '6', null, 'doublePointed', '', 'crown'],
    ]);
  });
  it('that says what they are for', () => {
    expect(needles('# K\n\n## Materials\n\n- Needles, main fabric: US 8 (5 mm)\n- Needles, edgings: US 6 (4 mm)\n')).toEqual([
      [5, '8', null, null, '', 'main fabric'],
      [4, '6', null, null, '', 'edgings'],
    ]);
  });
  it('in a line of a run-on paragraph', () => {
    expect(needles('# K\n\nYarn: 3 skeins of DK. Needles: 4 mm (US 6) circular. Gauge: 22 sts = 10 cm.\n')).toEqual([
      [4, '6', null, 'circular', '', null],
    ]);
  });
  it('in a table', () => {
    expect(needles('# K\n\n## Materials\n\n| | |\n|---|---|\n| Needles | 4 mm (US 6) circular |\n')).toEqual([
      [4, '6', null, 'circular', '', null],
    ]);
  });
  it('has an exact place', () => {
    const { front, words } = read('# K\n\nNeedles: a pair of 3¼ mm (UK 10/US 3) needles\n');
    expect(words(front.needles[0]!.span)).toBe('3¼ mm (UK 10/US 3)');
  });
});
