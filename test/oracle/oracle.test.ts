import fc from 'fast-check';
import { expect, test } from 'vitest';
import { firstChoice } from '../../src/replay/work.ts';
import { rowAgrees, rowsAgree, rowsOf, shortRowsAgree } from './agree.ts';
import { boundOffRow, fittingRow, markedRow, type RandomRow, randomRow, randomShortRows, twoReadings } from './rows-as-text.ts';
import { castOn, count, DoesNotFit, workAll } from './simple.ts';

/** `ROWPROOF_NIGHTLY=1` works many more rows. */
const nightly = process.env.ROWPROOF_NIGHTLY === '1';
const runs = (few: number, many: number): number => (nightly ? many : few);
const seed = nightly ? {} : { seed: 7_421 };
const slow = nightly ? 3_600_000 : 60_000;

/** The number of stitches that a row takes, found on plenty: half of the rows are tried on it. */
function ownStart(row: RandomRow): number {
  const [read] = rowsOf(`Row 1: ${row.text}.`);
  if (read === undefined || /to (end|last|m|\d+ sts? (before|past))|ending/.test(row.text)) return row.start;
  const plenty = castOn(3_000);
  try {
    workAll(plenty, read.children, { loop: 'in', times: 'more' });
  } catch (error) {
    if (error instanceof DoesNotFit) return row.start;
    throw error;
  }
  return 3_000 - count(plenty.left);
}

test(
  'random rows fit, or not, alike, and leave the same stitches',
  () => {
    let fitted = 0;
    fc.assert(
      fc.property(randomRow, fc.boolean(), (row, own) => {
        const start = own ? ownStart(row) : row.start;
        expect(rowAgrees(row.text, start, [])).toBeNull();
        if (own) fitted += 1;
      }),
      { numRuns: runs(1_200, 12_000), ...seed },
    );
    expect(fitted).toBeGreaterThan(100);
  },
  slow,
);

test(
  'elastic rows tried on every number of stitches up to 60',
  () => {
    fc.assert(
      fc.property(randomRow, (row) => {
        for (let start = 1; start <= 60; start += 1) expect(rowAgrees(row.text, start, [])).toBeNull();
      }),
      { numRuns: runs(40, 600), ...seed },
    );
  },
  slow,
);

test(
  'markers stay in their places',
  () => {
    fc.assert(
      fc.property(markedRow, (row) => {
        expect(rowAgrees(row.text, row.start, row.markers)).toBeNull();
      }),
      { numRuns: runs(400, 4_000), ...seed },
    );
  },
  slow,
);

test(
  'markers are passed unasked, and one inside a decrease comes to lie behind it',
  () => {
    fc.assert(
      fc.property(randomRow, fc.array(fc.integer({ min: 1, max: 60 }), { maxLength: 4 }), (row, at) => {
        const markers = [...new Set(at)].filter((place) => place < row.start).sort((a, b) => a - b);
        expect(rowAgrees(row.text, row.start, markers)).toBeNull();
      }),
      { numRuns: runs(400, 4_000), ...seed },
    );
  },
  slow,
);

test(
  'bind-offs in both readings',
  () => {
    fc.assert(
      fc.property(boundOffRow, fc.constantFrom('in' as const, 'apart' as const), fc.boolean(), (row, loop, own) => {
        expect(rowAgrees(row.text, own ? ownStart(row) : row.start, [], { ...firstChoice, loop })).toBeNull();
      }),
      { numRuns: runs(300, 3_000), ...seed },
    );
  },
  slow,
);

test(
  '"rep from * N times" in both readings',
  () => {
    fc.assert(
      fc.property(twoReadings, fc.constantFrom('more' as const, 'all' as const), fc.boolean(), (row, times, own) => {
        expect(rowAgrees(row.text, own ? ownStart(row) : row.start, [], { ...firstChoice, times })).toBeNull();
      }),
      { numRuns: runs(300, 3_000), ...seed },
    );
  },
  slow,
);

test(
  'short rows leave the yarn and the gaps in the same places',
  () => {
    fc.assert(
      fc.property(randomShortRows, (rows) => {
        expect(shortRowsAgree(rows.text, rows.start)).toBeNull();
      }),
      { numRuns: runs(400, 4_000), ...seed },
    );
  },
  slow,
);

test(
  'rows follow one another flat and in the round',
  () => {
    fc.assert(
      fc.property(
        fc.array(fittingRow, { minLength: 2, maxLength: 6 }),
        fc.integer({ min: 12, max: 60 }),
        fc.boolean(),
        (texts, start, round) => {
          expect(rowsAgree(texts, start, round)).toBeNull();
        },
      ),
      { numRuns: runs(300, 4_000), ...seed },
    );
  },
  slow,
);
