import { describe, expect, test } from 'vitest';
import type { Finding } from '../../rules/rule.ts';
import { readManuscript } from '../../src/manuscript/read.ts';
import { applyStets } from '../../src/stet.ts';
import { at, finding } from '../report/hand-made.ts';

const ids = ['count-mismatch', 'row-numbers'];

/** What is left and what is let stand in a draft, with a finding wherever "SLIP" (count-mismatch) or "GAP" (row-numbers) stands. */
function stetted(source: string) {
  const findings: Finding[] = [];
  for (const [word, rule] of [
    ['SLIP', 'count-mismatch'],
    ['GAP', 'row-numbers'],
  ] as const) {
    for (let nth = 1, start = source.indexOf(word); start >= 0; nth += 1, start = source.indexOf(word, start + 1))
      findings.push(finding(at(source, word, nth), { rule, message: `${word} ${nth}` }));
  }
  const result = applyStets(readManuscript(source), findings, ids);
  return {
    left: result.findings.map((each) => each.message),
    withheld: result.withheld.map((each) => [each.finding.message, each.reason]),
    remarks: result.remarks.map((each) => each.message),
  };
}

describe('a stet', () => {
  test('lets stand what its rule finds in the next block, and there only', () => {
    expect(stetted('::stet[the odd count is meant]{rule=count-mismatch}\n\nRow 1: SLIP GAP.\n\nRow 2: SLIP.\n')).toEqual({
      left: ['SLIP 2', 'GAP 1'],
      withheld: [['SLIP 1', 'the odd count is meant']],
      remarks: [],
    });
  });

  test('stands above one item of a list', () => {
    expect(stetted('::stet[meant]{rule=count-mismatch}\n\n- Row 1: SLIP.\n- Row 2: SLIP.\n').left).toEqual(['SLIP 2']);
  });

  test('several stand one below the other for the same text', () => {
    expect(stetted('::stet[a]{rule=count-mismatch}\n::stet[b]{rule=row-numbers}\n\nRow 1: SLIP GAP.\n')).toEqual({
      left: [],
      withheld: [
        ['SLIP 1', 'a'],
        ['GAP 1', 'b'],
      ],
      remarks: [],
    });
  });

  test('that lets nothing stand is itself a finding', () => {
    const { left, remarks } = stetted('::stet[once needed]{rule=count-mismatch}\n\nRow 1: K5.\n\nRow 2: SLIP.\n');
    expect(left).toEqual(['SLIP 1']);
    expect(remarks).toEqual(['"count-mismatch" finds nothing in the block below, so this stet lets nothing stand; take it out.']);
  });

  test.each([
    ['::stet[why]\n\nSLIP\n', 'This stet names no rule, so it lets nothing stand; write it as ::stet[reason]{rule=count-mismatch}.'],
    [
      '::stet[why]{rule=count-mismach}\n\nSLIP\n',
      'There is no rule "count-mismach", so this stet lets nothing stand; the nearest is "count-mismatch".',
    ],
    [
      '::stet{rule=count-mismatch}\n\nSLIP\n',
      'This stet gives no reason, so it lets nothing stand; say in the square brackets why "count-mismatch" may be passed over.',
    ],
    ['SLIP\n\n::stet[why]{rule=count-mismatch}\n', 'No text follows this stet, so it lets nothing stand; take it out.'],
  ])('%j says what is wrong with it and accepts nothing', (source, remark) => {
    expect(stetted(source)).toEqual({ left: ['SLIP 1'], withheld: [], remarks: [remark] });
  });

  test('points at itself', () => {
    const source = 'Row 1.\n\n::stet[x]{rule=row-numbers}\n\nRow 2.\n';
    const [remark] = applyStets(readManuscript(source), [], ids).remarks;
    expect(source.slice(remark?.span.start, remark?.span.end)).toBe('::stet[x]{rule=row-numbers}');
  });
});
