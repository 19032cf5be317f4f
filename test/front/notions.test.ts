import { describe, expect, it } from 'vitest';
import { read } from './draft.ts';

const notions = (source: string) => read(source).front.notions.map((notion) => [notion.name, notion.count]);
const listed = (line: string) => notions(`# Kelp\n\nSizes: S (M, L)\n\n## Notions\n\n${line}\n`);

// Forms of a notions line in print: common practice, no single source.
const lines: readonly [string, ReturnType<typeof notions>][] = [
  [
    '1 stitch marker, tapestry needle',
    [
      ['stitch marker', [1]],
      ['tapestry needle', null],
    ],
  ],
  [
    '2 stitch holders; spare needle; wool needle',
    [
      ['stitch holder', [2]],
      ['wool needle', null],
    ],
  ],
  ['2 stitch holders and a third for the back neck', [['stitch holder', [3]]]],
  ['4 stitch markers (1 different for BOR)', [['stitch marker', [4]]]],
  [
    'Cable needle. Stitch marker. Tapestry needle',
    [
      ['cable needle', null],
      ['stitch marker', null],
      ['tapestry needle', null],
    ],
  ],
  ['eight ¾ in (19 mm) buttons', [['button', [8]]]],
  ['5 buttons, 18 mm (¾ in), for the front', [['button', [5]]]],
  ['6 (6: 7) buttons', [['button', [6, 6, 7]]]],
  ['7 small flat backing buttons', [['backing button', [7]]]],
  ['a piece of waste yarn', [['waste yarn', [1]]]],
  ['2 markers for the spine', [['stitch marker', [2]]]],
  ['Stitch marker(s)', [['stitch marker', null]]],
  [
    'Five 15 mm buttons and a crochet hook',
    [
      ['button', [5]],
      ['crochet hook', [1]],
    ],
  ],
  [
    'Sewing needle, thread and pins',
    [
      ['sewing needle', null],
      ['sewing thread', null],
      ['pin', null],
    ],
  ],
  ['One 40 cm zip', [['zip', [1]]]],
  [
    'Stitch holders or waste yarn',
    [
      ['stitch holder', null],
      ['waste yarn', null],
    ],
  ],
  [
    'three removable markers, darning needle',
    [
      ['stitch marker', [3]],
      ['darning needle', null],
    ],
  ],
  ['A cushion pad, 45 × 45 cm (17¾ × 17¾ in)', [['cushion pad', [1]]]],
  [
    'st holders (2); st markers (4)',
    [
      ['stitch holder', [2]],
      ['stitch marker', [4]],
    ],
  ],
  ['3 wooden hoops', [['wooden hoop', [3]]]],
];

describe('notions', () => {
  it.each(lines)('%s', (line, want) => {
    expect(listed(line)).toEqual(want);
  });
  it('of a materials list with yarn and needles in it', () => {
    expect(notions('# K\n\n## Materials\n\n- 3 balls of DK\n- 4 mm needles\n- 2 holders, tapestry needle\n')).toEqual([
      ['stitch holder', [2]],
      ['tapestry needle', null],
    ]);
  });
  it('a sentence that none is needed lists none', () => {
    expect(notions('# K\n\n**Materials.** 2 skeins of wool. Blocking pins. No markers are needed.\n')).toEqual([['blocking pin', null]]);
  });
  it('a caution about buttons lists none', () => {
    expect(notions('# K\n\n## Cautions\n\n**Buttons.** Sew each one on with doubled thread and a backing button.\n')).toEqual([]);
  });
  it('has an exact place', () => {
    const { front, words } = read('# K\n\nNotions: 2 stitch holders and a third for the neck\n');
    expect(words(front.notions[0]!.span)).toBe('2 stitch holders and a third');
  });
});
