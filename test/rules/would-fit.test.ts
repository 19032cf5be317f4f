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

describe('other places than the row itself', () => {
  test('the number cast on, where the rows behind it agree', () => {
    const body = 'CO 41 sts.\n\nRow 1 (RS): *K2, p2; rep from * to end.\nRow 2: *K2, p2; rep from * to end.';
    expect(offers(body).edits).toEqual(['cast on 40 instead of 41 (line 3)']);
  });

  test('in one size of four, only its own number', () => {
    const body = '**Sizes:** S (M, L, XL)\n\nCO 40 (44, 49, 52) sts.\n\nRow 1 (RS): Knit.\nRow 2: *K2, p2; rep from * to end.';
    expect(offers(body).edits).toEqual(['cast on 48 instead of 49 (line 5)']);
  });

  test('not where the count has changed since', () => {
    const body = 'CO 40 sts.\n\nRow 1 (RS): K1, m1, k to end. 41 sts.\nRow 2: *K2, p2; rep from * to end.';
    expect(offers(body).edits.join()).not.toContain('cast on');
  });

  test('the stated count, where nothing decides between the two', () => {
    const { edits, fix } = offers('CO 40 sts.\n\nRow 1 (RS): Knit.\nRow 2: K1, m1, k to last st, m1, k1. 44 sts.');
    expect(edits[0]).toBe('state 42 instead of 44');
    expect(fix).toBeNull();
  });

  test('the star, one step on', () => {
    expect(offers('CO 43 sts.\n\nRow 1 (RS): Knit. 43 sts.\nRow 2: *K3, p2, k2, p1; rep from * to end.\nRow 3: Knit.').edits).toEqual([
      'move the star behind "K3"',
    ]);
  });

  test('the star, one step back', () => {
    expect(offers('CO 44 sts.\n\nRow 1 (RS): Knit. 44 sts.\nRow 2: K1, p1, *k3, p3; rep from * to last st, k1.').edits).toContain(
      'move the star before "p1"',
    );
  });

  test('the number picked up', () => {
    const body =
      'CO 20 sts.\n\nRow 1 (RS): Knit.\n\nBO all sts.\n\n## Band\n\nWith RS facing, pick up and k 41 sts along the edge.\n\nRow 1 (WS): *P2, k2; rep from * to end.\nRow 2: *P2, k2; rep from * to end.';
    expect(offers(body).edits).toEqual(['pick up 40 instead of 41 (line 11)']);
  });
});
