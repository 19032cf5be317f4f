/** Repeat arithmetic against a general-purpose solver: it is asked whether some number of passes uses up the row. */
import fc from 'fast-check';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { init } from 'z3-solver';
import { firstChoice } from '../../src/replay/work.ts';
import { workAs } from '../replay/work.ts';
import { rowsOf } from './agree.ts';
import { castOn, count, workAll } from './simple.ts';

type Solving = Awaited<ReturnType<typeof init>>;
let solving: Solving;

beforeAll(async () => {
  solving = await init();
}, 120_000);
afterAll(() => {
  // The solver's threads would keep the test process alive.
  (solving.em as { PThread?: { terminateAllThreads(): void } }).PThread?.terminateAllThreads();
});

function takesOf(text: string): number {
  const [row] = rowsOf(`Row 1: ${text}.`);
  const plenty = castOn(1_000);
  workAll(plenty, row?.children ?? [], { loop: 'in', times: 'more' });
  return 1_000 - count(plenty.left);
}

const token = fc.constantFrom('k1', 'k3', 'p2', 'yo', 'k2tog', 'sk2p', 'kfb', 'C4F', 'C6B', 'm1', '[k1, p2] twice', 'k7');
const list = fc.array(token, { minLength: 1, maxLength: 4 }).map((tokens) => tokens.join(', '));

test('a repeat fits exactly where the solver finds a number of passes', async () => {
  const { Int, Solver } = solving.Context('rows');
  const runs = process.env['ROWPROOF_NIGHTLY'] === '1' ? 1_500 : 120;
  let fitted = 0;
  await fc.assert(
    fc.asyncProperty(list, list, list, fc.integer({ min: 1, max: 80 }), async (lead, body, tail, start) => {
      const [before, each, after] = [takesOf(lead), takesOf(body), takesOf(tail)];
      if (each === 0 || after === 0) return;
      const passes = Int.const('passes');
      const solver = new Solver();
      solver.add(
        passes.ge(0),
        passes
          .mul(each)
          .add(before + after)
          .eq(start),
      );
      const found = (await solver.check()) === 'sat';
      const { fits } = workAs(
        `Row 1: ${lead}, *${body}; rep from * to last ${after === 1 ? 'st' : `${after} sts`}, ${tail}.`,
        { start },
        firstChoice,
      );
      expect(`${lead} | ${body} | ${tail} on ${start}: ${fits}`).toBe(`${lead} | ${body} | ${tail} on ${start}: ${found}`);
      if (found) fitted += 1;
    }),
    { numRuns: runs, seed: 5 },
  );
  expect(fitted).toBeGreaterThan(5);
}, 600_000);
