/** Names with several readings: all are kept, and what stands beside them in the row puts the likeliest first. */
import { describe, expect, test } from 'vitest';
import { printSized } from '../../../grammar/count.ts';
import { readPassage } from '../../../grammar/read.ts';
import type { Step, Work } from '../../../grammar/tree.ts';
import { type OwnWord, vocabularyOf } from '../../../grammar/vocabulary.ts';

function works(steps: readonly Step[]): Work[] {
  return steps.flatMap((step): Work[] =>
    step.type === 'work' ? [step] : step.type === 'repeat' || step.type === 'intoOne' ? works(step.children) : [],
  );
}

function readings(text: string, own: readonly OwnWord[] = []): string[] {
  const statements = readPassage(text, 0, { vocabulary: vocabularyOf({ own }), sizes: ['S', 'M'] });
  return statements
    .flatMap((statement) => (statement.type === 'row' ? works(statement.children) : []))
    .flatMap((work) =>
      work.readings === undefined
        ? []
        : [
            work.readings
              .map(
                (each) =>
                  `${each.times ? `${printSized(each.times.values)}×` : ''}${each.stitch}${each.n ? ` ${printSized(each.n.values)}` : ''}${each.m === undefined ? '' : `/${each.m}`}${each.netOnly ? ' (net)' : ''}`,
              )
              .join(' · '),
          ],
    );
}

describe('what stands beside the name', () => {
  // A British yarn over lies between knits; before a purl or a bare slip the yarn only moves. Source: common practice, no source.
  test.each([
    ['Row 1: K3, yfwd, k2tog, k3.', 'yfwd · yf (move)'],
    ['Row 1: K3, yf, p3.', 'yf (move) · yfwd'],
    ['Row 1: K3, yf, sl 1, yb, k3.', 'yf (move) · yfwd'],
    ['Row 1: K3, yfwd, sl 1, k1, psso, k3.', 'yfwd · yf (move)'],
    ['Row 1: K3, yfwd, sl 1 kwise, k2tog, psso, k3.', 'yfwd · yf (move)'],
    ['Row 1: Yfwd, k2tog, k3.', 'yfwd · yf (move)'],
    ['Row 1: *Yfwd, k2tog; rep from * to end.', 'yfwd · yf (move)'],
    ['Row 1: *K2, yf, p2; rep from * to end.', 'yf (move) · yfwd'],
    ['Row 1: *P2, k2, yf; rep from * to end.', 'yf (move) · yfwd'],
    ['Row 1: K2, wool fwd, [k2tog, p1] twice.', 'yfwd · yf (move)'],
    ['Row 1: K2, yf, (p1, k1) in next st, k2.', 'yf (move) · yfwd'],
    ['Row 1 (RS): K2, dec 1, k2.', 'k2tog'],
    ['Row 2 (WS): P2, dec 1, p2.', 'p2tog · k2tog'],
    ['Row 2: P2, dec 1, p2.', 'k2tog · p2tog'],
  ])('%s', (text, expected) => {
    expect(readings(text)).toEqual([expected]);
  });
});

describe('names that only the row or the draft can decide', () => {
  test.each([
    ['Row 1: K2, inc, k2.', ['kfb · M1']],
    ['Row 1: K2, inc 1, k2.', ['kfb · M1']],
    ['Row 1: K2, inc 2, k2.', ['inc (unspecified) 2 (net) · 2×kfb · (k1, p1, k1) in st']],
    ['Row 1: K2, inc 3, k2.', ['inc (unspecified) 3 (net) · 3×kfb · inc 1-to-N 4']],
    ['Row 1: K2, inc 3 (4), k2.', ['inc (unspecified) 3 (4) (net) · 3 (4)×kfb · inc 1-to-N 4 (5)']],
    ['Row 1: K2, dec 2, k2.', ['dec (unspecified) 2 (net) · 2×k2tog · dbl dec (unspecified)']],
    ['Row 1: K2, M1, k2.', ['M1 · yo']],
    ['Row 1: K2, make 3, k2.', ['MN 3 · yo N times 3 · inc 1-to-N 3']],
    ['Row 1: K2, k2b, p1b, k2.', ['k tbl 2 · k1b 2 · k2tog tbl', 'p tbl 1 · p1b']],
    ['Row 1: K2, LLI, k1, RLI.', ['LLI · k1 and LLI', 'RLI · RLI and k1']],
    ['Row 1: P2, C3F, p2, C5B, p2.', ['N/M LC 2/1 · N/M LC 1/2', 'N/M RC 3/2 · N/M RC 2/3 · N/M/N RC 2/1']],
    ['Row 1: P2, T4F, p2.', ['N/M LPC 2/2 · N/M LPC 3/1']],
    ['Row 1: P2, C4F, p2, C6B, p2.', []],
    ['Row 1: K2, k2tog, yo, ssk, k2.', []],
  ])('%s', (text, expected) => {
    expect(readings(text)).toEqual(expected);
  });

  test('the first reading is the stitch of the node', () => {
    const [row] = readPassage('Row 1: K2, yf, p2, inc 2, C3F.', 0, { vocabulary: vocabularyOf({}), sizes: null });
    for (const work of row?.type === 'row' ? works(row.children) : []) {
      if (work.readings === undefined) continue;
      expect([work.stitch, work.n, work.m, work.times]).toEqual([
        work.readings[0]?.stitch,
        work.readings[0]?.n,
        work.readings[0]?.m,
        work.readings[0]?.times,
      ]);
    }
  });

  test("the draft's own definition leaves nothing open", () => {
    const entry = {
      name: 'C3F',
      spellings: ['C3F'],
      takes: 3,
      makes: 3,
      kind: 'cable' as const,
      moves: '',
      words: '',
      source: 'the draft',
    };
    const own: OwnWord[] = [{ spelling: 'C3F', meaning: { is: 'stitch', entry, spelling: 'C3F' } }];
    expect(readings('Row 1: P2, C3F, p2, C3B, p2.', own)).toEqual(['N/M RC 2/1 · N/M RC 1/2']);
  });
});
