/** Questions that the counts cannot answer: what is asked, and the right drafts that look alike and are not asked about. Common practice, no source. */
import { describe, expect, it } from 'vitest';
import { findings, told } from './drafts.ts';

const strip = (...lines: readonly string[]): string => `# Gull Strip\n\n${lines.join('\n\n')}\n`;
const asks = (rule: string, draft: string): number => told(rule, draft).length;

describe('a yarn over at a marker', () => {
  const row = (words: string): string =>
    strip('CO 21 sts.', 'Row 1 (RS): K10, pm, k11.', 'Row 2: Purl.', `Row 3: ${words}`, 'Row 4: Purl.', 'BO all sts.');
  it.each([
    ['K to m, yo, k1, yo, k to end. 23 sts.', 1],
    ['K to m, yo, sm, k1, yo, k to end. 23 sts.', 0],
    ['K to m, sm, yo, k1, yo, k to end. 23 sts.', 0],
    ['K to 1 st before m, yo, k1, sm, k1, yo, k to end. 23 sts.', 0],
    ['K to m, m1, sm, k to end. 22 sts.', 0],
  ])('%s', (words, times) => expect(asks('yarn-over-at-marker', row(words))).toBe(times));

  it('in a repeat that begins with the marker', () => {
    const rnds = strip(
      'CO 40 sts. Join in the round.',
      'Rnd 1: *Pm, k10; rep from * to end.',
      'Rnd 2: *Sm, yo, k to m, yo; rep from * to end. 48 sts.',
      'Rnd 3: Knit.',
    );
    expect(asks('yarn-over-at-marker', rnds)).toBe(0);
  });
});

describe('a knitted decrease on the wrong side', () => {
  const row = (words: string, label = 'Row 2'): string =>
    strip('CO 20 sts.', 'Row 1 (RS): K4, k2tog, yo, k8, yo, ssk, k4.', `${label}: ${words}`, 'BO all sts.');
  it.each([
    ['P3, p2tog, p10, k2tog, p3. 18 sts.', 1],
    ['P3, p2tog, p10, ssp, p3. 18 sts.', 0],
    ['K3, k2tog, k10, k2tog, k3. 18 sts.', 0],
    ['K2, p2, k2tog, p2, k2, p2, k2tog, p2, k2, p2. 18 sts.', 0],
    ['K1, p2, k2tog, p12, p2tog, k1. 18 sts.', 1],
  ])('%s', (words, times) => expect(asks('wrong-side-decrease', row(words))).toBe(times));

  it('offers the purled one', () => {
    expect(findings('wrong-side-decrease', row('P3, p2tog, p10, ssk, p3. 18 sts.'))[0]?.wouldFit).toEqual(['"ssk" to "ssp"']);
  });

  it('says nothing of rounds', () => {
    expect(
      asks('wrong-side-decrease', strip('CO 20 sts. Join in the round.', 'Rnd 1: P3, k2tog, p10, k2tog, p3. 18 sts.', 'Rnd 2: Purl.')),
    ).toBe(0);
  });
});

describe('double decreases above each other', () => {
  const lace = (...rows: readonly string[]): string =>
    strip(
      'CO 43 sts.',
      ...rows.map((row, at) => `Row ${at * 2 + 1}${at === 0 ? ' (RS)' : ''}: K1, *${row}; rep from * to last 2 sts, k2.`),
      'Row 2 and all WS rows: Purl.',
    );
  const straight = 'yo, k3, sk2p, k3, yo, k1';
  it('one row a stitch beside the line', () => {
    const [one] = findings('decrease-columns', lace(straight, 'yo, k4, sk2p, k2, yo, k1', straight, straight));
    expect(one?.message).toBe(
      '“sk2p” comes out as stitch 7 of the repeat of 10, and in Row 1, Row 5 and Row 7 the double decrease is stitch 6. Shall they stand above each other?',
    );
  });
  it.each([
    ['a line', [straight, straight, straight]],
    ['yarn overs that move in', [straight, 'k1, yo, k2, sk2p, k2, yo, k2', 'k2, yo, k1, sk2p, k1, yo, k3']],
    ['a half-drop of two motifs', [straight, straight, 'k3, yo, k1, yo, k3, sk2p', 'k3, yo, k1, yo, k3, sk2p']],
    ['a line that leans', [straight, 'yo, k4, sk2p, k2, yo, k1', 'yo, k5, sk2p, k1, yo, k1']],
    ['two rows only', [straight, 'yo, k4, sk2p, k2, yo, k1']],
  ])('%s: nothing', (_, rows) => expect(asks('decrease-columns', lace(...rows))).toBe(0));
});

describe('a note on the construction', () => {
  const pullover = (note: string, head: string): string =>
    `# Cutter\n\n${note}\n\n## ${head}\n\nCO 88 sts. Join in the round.\n\nRnd 1: *K2, p2; rep from * to end.\n\nBO all sts.\n`;
  it.each([
    ['Worked in one piece from the hem up.', 'Neckband', 1],
    ['Worked in one piece from the hem up.', 'Hem', 0],
    ['A top-down pullover with raglan lines.', 'Yoke', 0],
    ['A top-down pullover with raglan lines.', 'Hem', 1],
    ['Body from the hem up; the sleeves are knitted top-down.', 'Body', 0],
    ['The sleeves are worked from the top down.', 'Hem', 0],
    ['Toe-up socks for long evenings.', 'Cuff', 1],
    ['Toe-up socks for long evenings.', 'Toe', 0],
    ['A plain pullover.', 'Neckband', 0],
  ])('%s %s', (note, head, times) => expect(asks('construction-note', pullover(note, head))).toBe(times));
});

describe('one decrease under two names', () => {
  const cap = (last: string): string =>
    strip(
      'CO 60 sts.',
      ...[1, 3, 5].flatMap((row, at) => [`Row ${row}: K1, ssk, k to end. ${59 - at} sts.`, `Row ${row + 1}: Purl.`]),
      `Row 7: ${last}`,
      'BO all sts.',
    );
  it.each([
    ['K1, skp, k to end. 56 sts.', 1],
    ['K1, k2tog tbl, k to end. 56 sts.', 1],
    ['K1, ssk, k to end. 56 sts.', 0],
    ['K1, k2tog, k to end. 56 sts.', 0],
    ['K1, ssk, k to last 3 sts, skp, k1. 55 sts.', 0],
  ])('%s', (last, times) => expect(asks('two-names', cap(last))).toBe(times));
});

describe('methods', () => {
  const sleeve = (note: string, change = 'inc'): string =>
    strip(
      note,
      'CO 40 sts.',
      'Row 1 (RS): Knit.',
      'Row 2: Purl.',
      `${change === 'inc' ? 'Inc' : 'Dec'} 1 st at each end of next and every foll 4th row until there are ${change === 'inc' ? 50 : 30} sts.`,
      'BO all sts.',
    );
  it.each([
    ['A sleeve.', 'inc', 1],
    ['A sleeve.', 'dec', 1],
    ['Abbreviations: inc = increase by working into front and back of st.', 'inc', 0],
    ['All increases are made with m1 one st from the edge.', 'inc', 0],
    ['Abbreviations: dec, decrease by working 2 tog.', 'dec', 0],
    ['Dec one st in from each edge with k2tog.', 'dec', 0],
  ])('%s (%s)', (note, change, times) => expect(asks('method-left-open', sleeve(note, change))).toBe(times));
});

describe('right drafts that look like a slip', () => {
  const list = (...entries: readonly string[]): string =>
    `# Kelp\n\n## Abbreviations\n\n${entries.map((each) => `- ${each}`).join('\n')}\n\n## Strip\n\nCO 20 sts.\n\nRow 1 (RS): Knit.\n`;
  it.each<[string, string, string, number]>([
    [
      'abbreviation-twice',
      'the same words with a remark',
      list('k: knit', 'ssk: slip, slip, knit', 'p: purl', 'ssk: slip, slip, knit (1 st dec’d)'),
      0,
    ],
    ['abbreviation-twice', 'another meaning', list('k: knit', 'sl: slip purlwise', 'p: purl', 'sl: slip knitwise'), 1],
    [
      'bind-off-steps',
      'steps that get smaller',
      strip('CO 60 sts.', 'BO 8 sts at beg of next 2 rows, then 4 sts at beg of foll 2 rows, then 2 sts at beg of foll 2 rows.'),
      0,
    ],
    [
      'bind-off-steps',
      'one small step between two large ones',
      strip('CO 80 sts.', 'BO 12 sts at beg of next 2 rows, then 2 sts at beg of foll 2 rows, then 9 sts at beg of foll 2 rows.'),
      1,
    ],
    [
      'dash-in-row',
      'a dash in both lists',
      '# Kelp\n\nSizes: S (M, L)\n\nCO 40 (50, 60) sts.\n\nBO – (3, 4) sts at beg of next – (2, 2) rows.\n\nRow 1: Knit.\n',
      0,
    ],
    ['near-heat', 'wool', '# Kelp Pot Holder\n\nYarn: wool, 50 g\n\nCO 40 sts.\n\nRow 1: Knit.\n', 0],
    [
      'near-heat',
      'acrylic with a caution',
      '# Kelp Pot Holder\n\nYarn: 50 g of cotton. Do not use acrylic, which melts.\n\nCO 40 sts.\n\nRow 1: Knit.\n',
      0,
    ],
    ['near-heat', 'acrylic that nothing hot touches', '# Kelp Scarf\n\nYarn: acrylic, 50 g\n\nCO 40 sts.\n\nRow 1: Knit.\n', 0],
    [
      'picture-words',
      'a picture described',
      '# Kelp\n\n![Row 3: the decrease leans right above the yarn over](chart.png)\n\nCO 40 sts.\n\nRow 1: Knit.\n',
      0,
    ],
    ['picture-words', 'a picture with a number only', '# Kelp\n\n![image 4](chart.png)\n\nCO 40 sts.\n\nRow 1: Knit.\n', 1],
    ['size-lists-spaced', 'lists with spaces', '# Kelp\n\nSizes: S (M, L)\n\nCO 40 (50, 60) sts.\n\nRow 1: Knit.\n', 0],
    ['size-lists-spaced', 'colons and a space', '# Kelp\n\nSizes: S (M: L)\n\nCO 40 (50: 60) sts.\n\nRow 1: Knit.\n', 0],
    [
      'sizes-named',
      'sizes by their own names',
      '# Kelp\n\nSizes: S (M, L)\n\nCO 40 (50, 60) sts.\n\nRow 1: Knit.\n\nSize L only:\n\nRow 2: Purl.\n\nAll sizes:\n\nRow 3: Knit.\n',
      0,
    ],
    [
      'sizes-named',
      'a size that is none',
      '# Kelp\n\nSizes: 1 (2, 3)\n\nCO 40 (50, 60) sts.\n\nRow 1: Knit.\n\nFor S only: work 2 rows more.\n',
      1,
    ],
    [
      'yarn-allowance',
      'a tenth over',
      '# Kelp\n\nYarn: 455 m of fingering weight yarn\n\nThe sample took 412 m.\n\nCO 30 sts.\n\nRow 1: Knit.\n',
      0,
    ],
    [
      'ending-row-length',
      'a length the rows come to',
      strip(
        'Gauge: 20 sts and 32 rows = 10 cm in the pattern',
        'CO 40 sts.',
        'Row 1 (RS): Knit.',
        'Row 2: Purl.',
        'Row 3: Purl.',
        'Row 4: Knit.',
        'Rep Rows 1–4 until piece measures 15 cm, ending with Row 4.',
      ),
      0,
    ],
    [
      'cable-on-rope',
      'a crossing on its rope',
      strip('CO 12 sts.', 'Row 1 (RS): P3, k6, p3.', 'Row 2: K3, p6, k3.', 'Row 3: P3, C6F, p3.'),
      0,
    ],
    [
      'cable-on-rope',
      'a crossing beside it',
      strip('CO 12 sts.', 'Row 1 (RS): P3, k6, p3.', 'Row 2: K3, p6, k3.', 'Row 3: P2, C6F, p4.'),
      1,
    ],
  ])('%s: %s', (rule, _, draft, times) => expect(asks(rule, draft)).toBe(times));
});

describe('a number of stitches between markers', () => {
  const mitten = (wanted: number): string =>
    `# Kelp Mitten\n\nCO 40 sts. Join in the round.\n\nRnd 1: K20, pm, m1, pm, k to end. 41 sts.\n\nRnd 2: Knit.\n\nRnd 3: K to m, sm, m1l, k to m, m1r, sm, k to end.\n\nRep Rnds 2 and 3 until there are ${wanted} sts between the markers.\n`;
  it('that is jumped over is told as that of the part, not of the needle', () => {
    expect(told('target-missed', mitten(14))).toEqual([
      'error From 3, 2 more each time, the number between the markers comes to 13 and then 15, never to 14. Check the number to be reached, or the count before it.',
    ]);
    expect(told('target-missed', mitten(13))).toEqual([]);
  });
});
