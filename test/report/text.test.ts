import { describe, expect, test } from 'vitest';
import { textWidth } from '../../src/report/layout.ts';
import { terminalPaint } from '../../src/report/paint.ts';
import { proofText } from '../../src/report/text.ts';
import { at, cap, entry, finding, handMade, inputOf } from './hand-made.ts';

const capPage = `Skerry Cap
drafts/Skerry cap.md
Sizes S, M, L. 5 of 6 steps read.

STOPS THE KNITTER (1)

 1 Crown · Rnd 7 · size L                                                 line 6

   | Rnd 7: *K6, k2tog; rep from * to end. 77 (84, 92) sts.
   |                                               ‾‾
   104 stitches are 13 repeats of 8, each leaves 7: after Rnd 7 there are 91
   stitches, the draft says 92.

      size  before  takes  makes  after  stated
      L        104    104     91     91    ≠ 92

   Nothing found here in sizes S and M.
   – The next round needs a multiple of 7: 91 is one, 92 is not.
   Change: "92" to "91"
   See also lines 7 and 8.
   count-mismatch

QUESTIONS TO THE AUTHOR (1)

 2 Crown · Rnd 8 · every size                                             line 7

   | Rnd 8: Knit.
   | ‾‾‾‾‾
   Rnd 8 is worked twice by the words after it, or once by the chart. Which is
   meant?
   Would fit: Rnds 8 and 9: Knit.
          or: Rnd 8: Knit once.
   length-not-given

HOUSE STYLE (1)

 3 Finishing                                                             line 12

   | Weave in ends, "neatly".
   |                ‾‾‾‾‾‾‾‾
   The house writes this without quotation marks.
   comma-before-times

NOT READ (1)
   line 8    Crown: "Work in the manner of the lamp room."

NOT CHECKED
   – No gauge was found, so no width and no length could be checked against the
     stitches.
   – In 1 line of the count sheet the count is not known in any size, because of
     what was not read before.

1 place stops the knitter, 1 question to the author, 1 remark on house style.
1 step was not read and not checked.
`;

const withoutColour = (text: string) => text.replace(/\p{Cc}\[\d+m/gu, '');

describe('the text report', () => {
  test('a draft with every kind of finding', () => {
    expect(proofText(inputOf(cap))).toBe(capPage);
  });

  test('other lines are named once: not the line of the finding, and not where a sentence names them', () => {
    const source = 'Rnd 1: K5, p5.\nRnd 2: K6.\nRnd 3: K7.\nRnd 4: K8.\n';
    const page = (also: string[], evidence: string[] = []) =>
      proofText(
        inputOf(handMade({ source, findings: [finding(at(source, 'K5'), { also: also.map((words) => at(source, words)), evidence })] })),
      );
    expect(page(['p5'])).not.toContain('See also');
    expect(page(['p5', 'K6', 'K8'])).toContain('See also lines 2 and 4.');
    expect(page(['K6', 'K7'], ['One later place suffers from it: line 2.'])).toContain('See also line 3.');
    expect(page(['K6', 'K7'], ['2 later places suffer from it: lines 2, 3.'])).not.toContain('See also');
  });

  test('is the same with colour, apart from the colour', () => {
    const coloured = proofText(inputOf(cap), { width: 80, paint: terminalPaint });
    expect(coloured).toContain('\u001b[31m');
    expect(withoutColour(coloured)).toBe(capPage);
  });

  test('keeps to the width of the page at any width', () => {
    for (const width of [60, 71, 80, 100]) {
      for (const line of proofText(inputOf(cap), { width, paint: terminalPaint }).split('\n')) {
        expect(textWidth(withoutColour(line))).toBeLessThanOrEqual(width);
      }
    }
  });

  test('several drafts end with the sum of all', () => {
    const page = proofText(inputOf(cap, cap));
    expect(
      page.endsWith(`${'─'.repeat(80)}

2 drafts proofed.
2 places stop the knitter, 2 questions to the author, 2 remarks on house style.
2 steps were not read and not checked.
`),
    ).toBe(true);
  });

  test('a draft without findings is not called correct', () => {
    const page = proofText(inputOf(handMade({ source: 'Row 1: Knit.', sizes: ['S', 'M'], steps: 12 })));
    expect(page).toBe('draft.md\nSizes S, M. 12 of 12 steps read.\n\nNo contradiction found in 12 steps in 2 sizes.\n');
  });

  test('an empty draft says that there is nothing to check', () => {
    for (const source of ['', '\ufeff', ' \r\n\t\n']) {
      expect(proofText(inputOf(handMade({ source })))).toBe(
        'draft.md\nThe draft is empty: there is nothing to check.\n\nNothing was checked.\n',
      );
    }
  });

  test('prose says that it instructs nothing', () => {
    expect(proofText(inputOf(handMade({ source: 'A day on the island.' })))).toContain('The draft instructs nothing');
  });

  test('draft text cannot steer the terminal', () => {
    const source = 'Row 1: \u001b[2JK5\u0007, \u202ep5. 11 sts.';
    const proof = handMade({
      path: 'a\u001b]0;x\u0007.md',
      source,
      title: 'Cap\u001b[31m',
      findings: [finding(at(source, '11'), { message: 'See \u001b[31mthis', evidence: ['\u0007'] })],
    });
    expect(proofText(inputOf(proof))).not.toMatch(/[^\P{Cc}\n]|\u202e/u);
  });

  test('the bar stands under the words at fault in a line too long for the page', () => {
    const source = `Row 1: ${'k2, p2, '.repeat(40)}k7, ${'k2, p2, '.repeat(40)}`;
    const lines = proofText(inputOf(handMade({ source, findings: [finding(at(source, 'k7'), {})] }))).split('\n');
    const mark = lines.findIndex((line) => line.includes('‾'));
    const from = lines[mark]?.indexOf('‾') ?? -1;
    expect(lines[mark - 1]?.slice(from, from + 2)).toBe('k7');
    expect(lines[mark]?.trim()).toMatch(/^\| +‾‾$/);
    expect(lines[mark - 1]).toMatch(/^ {3}\| ….*…$/);
  });

  test('wide characters move the bar by the columns they take', () => {
    const source = '編み 5 sts';
    const lines = proofText(inputOf(handMade({ source, findings: [finding(at(source, '5'), {})] }))).split('\n');
    expect(lines.find((line) => line.includes('‾'))).toBe('   |      ‾');
  });

  test('a fault over several lines says where it ends', () => {
    const source = 'Row 1: K5,\np5.\n';
    const page = proofText(inputOf(handMade({ source, findings: [finding({ start: 7, end: source.length }, {})] })));
    expect(page).toContain('   |        ‾‾‾ and on to line 2\n');
  });
});

describe('the sum below a finding', () => {
  const source = 'Row 1: K5, m1.\nRep Row 1 twice.\n';
  const row = at(source, 'Row 1: K5, m1.');
  const passes = [
    entry(row, { before: [5], after: [6], takes: [5], makes: [6] }),
    entry(at(source, 'Rep Row 1 twice.'), { textSpan: row, before: [6], after: [7], takes: [5], makes: [6] }),
  ];
  const page = (given: Parameters<typeof finding>[1], entries = passes) =>
    proofText(inputOf(handMade({ source, entries, findings: [finding(row, given)] })));

  test('comes from the pass that makes the replayed count', () => {
    expect(page({ stated: 8, replayed: 6 })).toContain('before  takes  makes  after  stated\n           5      5      6      6     ≠ 8');
  });

  test('does not set a stated change beside the count after the row', () => {
    expect(page({ stated: 2, replayed: 1 })).not.toContain('stated\n');
  });

  test('is left out where passes differ and none is meant', () => {
    const twice = [passes[0], { ...passes[1], span: row }].filter((each) => each !== undefined) as typeof passes;
    expect(page({ stated: 9, replayed: 8 }, twice)).not.toContain('before');
  });
});
