/** Small edits offered for a row that does not work: the row, what stood before, what is offered. Common practice, no source. */
import { describe, expect, test } from 'vitest';
import { proof } from '../../src/index.ts';

const offers = (body: string): { edits: readonly string[]; fix: string | null; evidence: string } => {
  const found = proof(`# Tern Cloth\n\n${body}\n\nBO all sts.\n`).findings.filter((finding) => finding.level === 'error');
  const [first] = found;
  return { edits: first?.wouldFit ?? [], fix: first?.fix?.text ?? null, evidence: (first?.evidence ?? []).join(' ') };
};

describe('edits offered for a row that does not work', () => {
  test('a rib of 3 stitches on an even number: the longer half is one too many', () => {
    expect(offers('CO 34 sts.\n\nRow 1 (RS): *K1, p2; rep from * to end.\nRow 2: *K1, p1; rep from * to end.').edits).toContain(
      '"p2" to "p1"',
    );
  });

  test('one of two increases is missing: its mirror is asked for at the mirrored place', () => {
    const row = 'CO 40 sts.\n\nRow 1 (RS): K1, m1l, k to last st, k1 (2 sts inc’d).\nRow 2: Purl.';
    expect(offers(row).edits).toEqual(['add "m1R" after "k to last st"']);
  });

  test('binding off at both ends: the number that is out of balance is mended', () => {
    const row = 'CO 80 sts. Join to work in the round.\n\nRnd 1: Knit. 80 sts.\nRnd 2: BO 6 sts, k29, BO 10 sts, k29, BO 5 sts.';
    expect(offers(row).edits[0]).toBe('"BO 5 sts" to "BO 6 sts"');
  });

  test('an edit is never offered that leaves the stated count unmet or stitches unworked', () => {
    const body = 'CO 44 sts.\n\nRow 1 (RS): K1, k2tog, k to last 3 sts, k1, k2. 42 sts.\nRow 2: Purl.\nRow 3: *K2, p1; rep from * to end.';
    const source = `# Tern Cloth\n\n${body}\n\nBO all sts.\n`;
    const edits = proof(source).findings.flatMap((finding) => finding.edits ?? []);
    expect(edits.length).toBeGreaterThan(0);
    for (const { span, text } of edits) {
      const mended = source.slice(0, span.start) + text + source.slice(span.end);
      expect(
        proof(mended).findings.filter((finding) => finding.level === 'error'),
        text,
      ).toEqual([]);
    }
  });

  test('where many places would do, it says how many and names none', () => {
    const { edits, fix, evidence } = offers('CO 45 sts.\n\nRow 1 (RS): K1, m1, k3, p4, k to end. 47 sts.\nRow 2: P47.');
    expect(edits).toEqual([]);
    expect(fix).toBeNull();
    expect(evidence).toMatch(/\d+ small edits of the row would fit/);
  });

  test('one size of four is out: only its own number in the list is changed', () => {
    const body =
      '**Sizes:** S (M, L, XL)\n\nCO 40 (44, 48, 52) sts.\n\nRow 1 (RS): K10, p20 (24, 30, 32), k10.\nRow 2: Purl. 40 (44, 48, 52) sts.';
    expect(offers(body).edits[0]).toBe('"p20 (24, 30, 32)" to "p20 (24, 28, 32)"');
  });
});
