/** Rules of the row, each on the wordings that come nearest to a false alarm and to a miss. Sums worked with a pencil. */
import { describe, expect, it } from 'vitest';
import type { Finding } from '../../rules/rule.ts';
import { proof } from '../../src/index.ts';

const found = (draft: string): readonly Finding[] => proof(draft).findings.filter((finding) => finding.level !== 'style');
const told = (draft: string): string[] => found(draft).map(({ level, rule }) => `${level} ${rule}`);
const of = (draft: string, rule: string): Finding => {
  const all = found(draft);
  const finding = all.find((each) => each.rule === rule);
  if (finding === undefined)
    throw new Error(`no ${rule} among: ${all.map((each) => `${each.rule}: ${each.message}`).join(' | ') || 'nothing'}`);
  return finding;
};
const words = (draft: string, finding: Finding): string => draft.slice(finding.span.start, finding.span.end);

const band = (...rows: string[]): string => `# Skerry Band\n\nCO 40 sts.\n\n${rows.join('\n\n')}\n`;
const sized = (...rows: string[]): string =>
  `# Skerry Band\n\nSizes: S (M, L, XL)\n\nTo fit chest: 80 (90, 100, 110) cm\n\n${rows.join('\n\n')}\n`;

it('a star over several passages is closed by the repeat that stands by itself further on', () => {
  const star = ['*With WS facing, pick up and purl 8 sts along the edge of the next block; turn.', 'Row 1 (RS): K8, turn.'];
  const unclosed = (...rows: string[]) => told(band(...rows)).filter((each) => each.endsWith('repeat-unclosed'));
  expect(unclosed(...star, 'Repeat from * to end.')).toEqual([]);
  expect(unclosed(...star)).toEqual(['error repeat-unclosed']);
});

describe('a stated count', () => {
  it('is blamed where the next repeat fits the row, and is mended', () => {
    const draft = band('Row 1 (RS): K1, m1, k to last st, m1, k1. 44 sts.', 'Row 2: Purl.', 'Row 3: K2, *p2, k2; rep from * to end.');
    const finding = of(draft, 'count-mismatch');
    expect(finding).toMatchObject({ level: 'error', stated: 44, replayed: 42, fix: { text: '42' } });
    expect(finding.evidence?.[0]).toBe('Row 3 repeats over 4 sts: 42 sts fit, 44 do not.');
    expect(told(draft)).toEqual(['error count-mismatch']);
  });

  it('is believed where the next repeat fits it', () => {
    const draft = band('Row 1 (RS): K1, m1, k to end. 42 sts.', 'Row 2: Purl.', 'Row 3: K2, *p2, k2; rep from * to end.');
    const finding = of(draft, 'count-mismatch');
    expect(finding.fix).toBeNull();
    expect(finding.message).toContain('look for the slip in the instruction');
    expect(told(draft)).toEqual(['error count-mismatch']);
  });

  it('names the one size, and the value of its list alone is mended', () => {
    const draft = sized(
      'CO 40 (44, 48, 52) sts.',
      'Row 1 (RS): K1, m1, k to last st, m1, k1. 42 (46, 52, 54) sts.',
      'Row 2: Purl.',
      'Row 3: K2, *p2, k2; rep from * to end.',
    );
    const finding = of(draft, 'count-mismatch');
    expect(finding.sizes).toEqual([2]);
    expect(finding.message).toMatch(/^In size L, Row 1 makes 50 sts from 48, but 52 are stated\./);
    expect(finding.fix?.text).toBe('50');
    expect(draft.slice(finding.fix?.span.start, finding.fix?.span.end)).toBe('52');
    expect(draft.indexOf('52', draft.indexOf('42 (46'))).toBe(finding.fix?.span.start);
  });

  it('is one finding though later counts are out by the same stitch', () => {
    const draft = band(
      'Row 1 (RS): K1, m1, k to end. 42 sts.',
      'Row 2: Purl. 42 sts.',
      'Row 3: K1, m1, k to last st, m1, k1. 44 sts.',
      'Row 4: Purl. 44 sts.',
    );
    expect(told(draft)).toEqual(['error count-mismatch']);
  });
});

describe('a row', () => {
  it.each([
    ['K38, k2tog, k1.', 'too-few-stitches', 'k1'],
    ['K to last 42 sts, k42.', 'too-few-stitches', 'K to last 42 sts'],
    ['K30, p8.', 'stitches-left-over', 'p8'],
    ['*K3, p3; rep from * to end.', 'repeat-does-not-fit', '*K3, p3; rep from * to end'],
    ['[K3, p3] 7 times.', 'too-few-stitches', '[K3, p3] 7 times'],
    ['K2, [k3, p3] to last 4 sts, k4.', 'repeat-does-not-fit', '[k3, p3] to last 4 sts'],
  ])('%s does not fit 40 sts', (row, rule, at) => {
    const draft = band(`Row 1 (RS): ${row}`, 'Row 2: Purl.');
    expect(words(draft, of(draft, rule))).toBe(at);
    expect(told(draft)).toEqual([`error ${rule}`]);
  });

  it.each([
    'K38, k2tog.',
    '*K2, p2; rep from * to end.',
    '*K3, p3; rep from * to last 4 sts, k4.',
    '[K2, p3] 8 times.',
    'K to last 40 sts, k40.',
    'Knit.',
  ])('%s fits 40 sts', (row) => {
    expect(told(band(`Row 1 (RS): ${row}`, 'Row 2: Purl.'))).toEqual([]);
  });

  it('that does not fit is told with the sum and the counts on either side', () => {
    const { message } = of(band('Row 1 (RS): K2, *k5, p2; rep from * to last 2 sts, k2.', 'Row 2: Purl.'), 'repeat-does-not-fit');
    // 40 - 4 = 36 = 5 × 7 + 1; 39 and 46 are 5 and 6 times 7 with the 4 edge stitches.
    expect(message).toBe(
      'The repeat “*k5, p2; rep from * to last 2 sts” takes 7 sts each time, and 36 are there for it: 1 st left over. The row begins with 40 sts. It would fit 39 sts, or 46.',
    );
  });
});

describe('an uncertain count', () => {
  it('accuses nobody until a stated count settles it', () => {
    const draft = band('Row 1 (RS): K10, frobble the next 3 sts, k27.', 'Row 2: *K3, p3; rep from * to end.');
    expect(told(draft)).toEqual([]);
  });

  it('is settled by a stated count', () => {
    const draft = band('Row 1 (RS): K10, frobble the next 3 sts, k27. 40 sts.', 'Row 2: *K3, p3; rep from * to end.');
    expect(told(draft)).toEqual(['error repeat-does-not-fit']);
  });
});

describe('row numbers', () => {
  const rows = (...labels: string[]): string => band(...labels.map((label) => `${label}: Knit.`));
  it.each([
    [['Row 1', 'Row 2', 'Row 3', 'Row 4']],
    [['Row 1', 'Row 2', 'Rows 3–6', 'Row 7']],
    [['Row 1', 'Row 2 and all WS rows', 'Row 3', 'Row 5', 'Row 7']],
    [['Row 1', 'Row 2', 'Row 1', 'Row 2']],
    [['Inc row 1', 'Inc row 2', 'Row 1', 'Row 2']],
  ])('%j run on', (labels) => {
    expect(told(rows(...labels))).toEqual([]);
  });

  it.each([
    [['Row 1', 'Row 2', 'Row 2', 'Row 4'], 'Row 2 stands twice', '3'],
    [['Row 1', 'Row 2', 'Row 5', 'Row 4'], 'Row 5 stands between Row 2 and Row 4', '3'],
    [['Row 1', 'Row 2', 'Row 4', 'Row 5'], 'After Row 2 comes Row 4', null],
  ])('%j do not', (labels, message, fix) => {
    const finding = of(rows(...labels), 'row-numbers');
    expect(finding.message).toContain(message);
    expect(finding.fix?.text ?? null).toBe(fix);
    expect(told(rows(...labels))).toEqual(['query row-numbers']);
  });

  it('may jump after a repeat of rows', () => {
    expect(told(band('Row 1: Knit.', 'Row 2: Purl.', 'Rep Rows 1 and 2 3 more times.', 'Row 9: Knit.'))).toEqual([]);
  });
});

describe('sides', () => {
  it('of one wrong label are told once', () => {
    const draft = band('Row 1 (RS): Knit.', 'Row 2 (RS): Purl.', 'Row 3 (RS): Knit.', 'Row 4 (WS): Purl.');
    expect(words(draft, of(draft, 'side-mismatch'))).toContain('RS');
    expect(told(draft)).toEqual(['error side-mismatch']);
  });
});

describe('lists of sizes', () => {
  it.each([
    ['CO 40 (44, 48) sts.', 'One value is missing'],
    ['CO 40 (44, 48, 52, 56) sts.', '1 value too many'],
  ])('%s', (line, message) => {
    const draft = sized(line, 'Row 1 (RS): Knit.');
    expect(of(draft, 'size-list-length').message).toContain(message);
    expect(told(draft)).toEqual(['error size-list-length']);
  });

  it('show where the gap probably lies', () => {
    const draft = sized('CO 40 (44, 48, 52) sts.', 'Row 1 (RS): K10 (12, 16), k to end.');
    expect(of(draft, 'size-list-length').message).toContain('between 12 and 16');
  });

  it('may be as long as the sizes a block names', () => {
    expect(
      told(sized('CO 40 (44, 48, 52) sts.', 'Sizes L and XL only: Knit 2 (4) rows.', 'All sizes: Knit 2 rows.')).filter((each) =>
        each.includes('size-list'),
      ),
    ).toEqual([]);
  });
});

describe('sizes divided', () => {
  it.each([
    ['Sizes S and M only: Knit 2 rows.', 'Sizes L and XL only: Knit 4 rows.', []],
    ['Size S only: Knit 2 rows.', 'Size XL only: Knit 4 rows.', []],
    ['Sizes S and M only: Knit 2 rows.', 'Size XL only: Knit 4 rows.', ['query size-paths']],
  ])('%s %s', (first, second, expected) => {
    expect(told(sized('CO 40 (44, 48, 52) sts.', first, second, 'All sizes: Knit 2 rows.'))).toEqual(expected);
  });
});

describe('yarn overs', () => {
  it.each([
    ['K2, *k2tog, yo twice, ssk; rep from * to last 2 sts, k2.', 'Purl.', ['query double-yarn-over']],
    ['K2, *k2tog, yo twice, ssk; rep from * to last 2 sts, k2.', 'Purl, working (p1, k1) into each double yo.', []],
    ['K2, *k2tog, yo, k2; rep from * to last 2 sts, k2.', 'Purl.', []],
    ['*Yo, k1, sk2p, k1, yo, k3; rep from * to end.', 'Purl.', []],
    ['*Yo, k1, k2tog, ssk, k2, yo, k1; rep from * to end.', 'Purl.', []],
    ['*Yo, k2tog, ssk, yo; rep from * to end.', 'Purl.', ['query yarn-overs-together', 'query yarn-over-at-edge']],
    ['*K2tog, yo; rep from * to end.', 'Purl.', ['query yarn-over-at-edge']],
  ])('%s then %s', (one, two, expected) => {
    expect(told(band(`Row 1 (RS): ${one}`, `Row 2: ${two}`)).sort()).toEqual([...expected].sort());
  });
});

describe('a definition', () => {
  const defined = (line: string): string =>
    `# Hawser\n\n## Abbreviations\n\n- ${line}\n- k: knit\n- p: purl\n\n## Strip\n\nWith a cable needle at hand, CO 10 sts.\n\nRow 1: Knit.\n`;
  it.each([
    ['C6F: slip 3 sts to cable needle and hold in front, k3, then k3 from cable needle', []],
    ['C6F: slip 3 sts to cable needle and hold in front, k3, then k4 from cable needle', ['cable-definition']],
    ['C6F: slip 2 sts to cable needle and hold in front, k2, then k2 from cable needle', ['cable-definition']],
    ['C6F: slip 3 sts to cable needle and hold at back, k3, then k3 from cable needle', ['cable-definition']],
    ['cdd: slip 2 sts together, k1, pass 2 slipped sts over (2 sts decreased)', []],
    ['cdd: slip 2 sts together, k1, pass 2 slipped sts over (1 st decreased)', ['definition-effect']],
  ])('%s', (line, expected) => {
    expect(
      found(defined(line))
        .map((finding) => finding.rule)
        .filter((rule) => rule === 'cable-definition' || rule === 'definition-effect'),
    ).toEqual(expected);
  });
});

it('every message speaks to an editor', () => {
  const draft = sized(
    'CO 40 (44, 48) sts.',
    'Row 1 (RS): K1, m1, k to last st, m1, k1. 44 (46, 52, 54) sts.',
    'Row 2 (RS): Purl.',
    'Row 2: *K3, yo; rep from * to last st, yo.',
  );
  for (const { message } of proof(draft).findings) {
    expect(message).toMatch(/^["“A-Z0-9]/);
    expect(message).toMatch(/[.?]$/);
    expect(message).not.toMatch(/undefined|null|NaN|\bnode\b|\btoken\b|\bparse/);
  }
});

describe('the width of a repeat that happens to fit', () => {
  const lace = (width: number): string =>
    `# Swell Scarf\n\nCO 73 sts.\n\n## Lace (multiple of 8 + 1)\n\nRow 1 (RS): *Yo, ssk, k${width}, k2tog, yo, k1; rep from * to last st, k1.\n\nRow 2: Purl.\n\nRow 3: *K1, yo, ssk, k1, k2tog, yo, k2; rep from * to last st, k1.\n\nRow 4: Purl.\n\nBO all sts.\n`;

  it('is asked about where the multiple and another row say otherwise', () => {
    const draft = lace(4);
    const finding = of(draft, 'repeat-width');
    expect(finding.message).toContain('Row 1 repeats over 9 sts, and the pattern is a multiple of 8.');
    expect(told(draft)).toEqual(['query repeat-width']);
  });

  it('is let pass where it goes into the multiple', () => {
    expect(told(lace(3))).toEqual([]);
  });

  it('names the later of two rows of lace', () => {
    const draft = band(
      'Row 1 (RS): K1, *yo, k2tog, k1; rep from * to end.',
      'Row 2: Purl.',
      'Row 3: K1, *k1, yo, ssk, k10; rep from * to end.',
    );
    expect(words(draft, of(draft, 'repeat-width'))).toContain('k10');
  });
});
