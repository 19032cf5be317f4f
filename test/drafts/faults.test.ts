/** The draft with five slips put in, and its correct twin: each slip is one finding at its line, and nothing else is found. */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { proof } from '../../src/index.ts';

const found = (path: string): (string | number)[][] => {
  const { manuscript, findings } = proof(readFileSync(path, 'utf8'));
  return findings.map(({ rule, level, span }) => [manuscript.place(span.start).line, level, rule]);
};

describe('Tide Table Mitts', () => {
  it('with five slips has five findings', () => {
    expect(found('fixtures/faults/tide-table-mitts.md')).toEqual([
      [14, 'error', 'needle-sizes'],
      [53, 'query', 'unexplained-abbreviation'],
      [57, 'error', 'count-mismatch'],
      [61, 'error', 'size-list-length'],
      [69, 'error', 'count-mismatch'],
    ]);
  });

  it('as it should be has none', () => {
    expect(found('fixtures/clean/tide-table-mitts.md')).toEqual([]);
  });

  it('is the report that the README shows', () => {
    const readme = readFileSync('README.md', 'utf8');
    const shown = /```text\n([^`]+)```/.exec(readme)?.[1] ?? '';
    for (const { message } of proof(readFileSync('fixtures/faults/tide-table-mitts.md', 'utf8')).findings)
      expect(shown.replace(/\s+/g, ' ')).toContain(message.replace(/\s+/g, ' '));
  });
});
