/**
 * The correct drafts of `fixtures/clean` against their counts, worked out apart from the tool: stitch by stitch with a pencil
 * and a small sum for each row. `after` is the count once the words of a line have been worked for the last time; null where a size
 * leaves the line out; `also` holds another count that the line allows, where the trade counts in two ways.
 */
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, test } from 'vitest';
import { proof } from '../../src/index.ts';

type Count = readonly (number | null)[] | { readonly per_repeat: number; readonly plus: number };

interface TruthRow {
  readonly line: number;
  readonly label: string;
  readonly after: Count;
  readonly also?: readonly Count[];
}

interface Truth {
  readonly draft: string;
  readonly rows: readonly TruthRow[];
}

interface Worked {
  readonly line: number;
  readonly textLine: number;
  readonly after: readonly (number | null)[];
  readonly perRepeat: { readonly perRepeat: number; readonly plus: number } | null;
}

const clean = fileURLToPath(new URL('../../fixtures/clean/', import.meta.url));
const here = fileURLToPath(new URL('./', import.meta.url));

/** Most questions a correct draft may raise. */
const mostQueries = 1;

function same(truth: Count, worked: Worked): boolean {
  if ('per_repeat' in truth) return truth.per_repeat === worked.perRepeat?.perRepeat && truth.plus === worked.perRepeat.plus;
  return truth.length === worked.after.length && truth.every((count, size) => count === null || count === worked.after[size]);
}

/** The row in the sheet that a line of the truth speaks of: as it stands, where it was called again last, or by its own repeats. */
function workings(row: TruthRow, truth: Truth, tally: readonly Worked[]): readonly Worked[] {
  const shared = truth.rows.filter((each) => each.line === row.line).length > 1;
  return [
    tally.findLast((each) => each.line === row.line),
    tally.findLast((each) => each.textLine === row.line),
    tally.findLast((each) => each.line === row.line && each.textLine === row.line),
    ...(shared ? tally.filter((each) => each.line === row.line) : []),
  ].filter((each) => each !== undefined);
}

const names = readdirSync(clean)
  .filter((file) => file.endsWith('.md'))
  .map((file) => file.slice(0, -'.md'.length))
  .sort();

describe.each(names)('%s', (name) => {
  const source = readFileSync(`${clean}${name}.md`, 'utf8');
  const result = proof(source, { path: `${name}.md` });
  const line = (offset: number): number => result.manuscript.place(offset).line;

  test('every step is read', () => {
    expect(result.pattern.reading.notRead.map((gap) => `${line(gap.span.start)}: ${gap.text}`)).toEqual([]);
  });

  test('nothing is called a mistake, and hardly anything is asked', () => {
    const told = (level: string): string[] =>
      result.findings
        .filter((finding) => finding.level === level)
        .map((finding) => `${line(finding.span.start)} ${finding.rule}: ${finding.message}`);
    expect(told('error')).toEqual([]);
    expect(told('query').slice(mostQueries)).toEqual([]);
  });

  const path = `${here}${name}.truth.json`;
  if (!existsSync(path)) return;
  const truth = JSON.parse(readFileSync(path, 'utf8')) as Truth;
  const tally: Worked[] = result.replay.entries.map((entry) => ({
    line: line(entry.span.start),
    textLine: line(entry.textSpan.start),
    after: entry.after,
    perRepeat: entry.afterPerRepeat,
  }));
  test.each(truth.rows.map((row) => [`${row.line} ${row.label}`, row] as const))('line %s', (_, row) => {
    const worked = workings(row, truth, tally);
    const readings = [row.after, ...(row.also ?? [])];
    const agrees = worked.some((each) => readings.some((reading) => same(reading, each)));
    expect(agrees ? readings[0] : worked.map((each) => each.perRepeat ?? each.after)).toEqual(readings[0]);
  });
});
