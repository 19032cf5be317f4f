/**
 * What a row costs against its stitches, and a repeat against its passes. Printed as ratios to the first of each line:
 * the cost follows the words, so they stay near 1.
 */
import { performance } from 'node:perf_hooks';
import { work } from '../replay/work.ts';

interface Line {
  readonly name: string;
  readonly sizes: readonly number[];
  readonly run: (size: number) => void;
}

const rounds = 60;

/** Least time of one run, the sizes taking turns: what the work costs when the machine does nothing else. */
function leastTimes(line: Line): number[] {
  const times: number[][] = line.sizes.map(() => []);
  for (let warm = 0; warm < 8; warm += 1) for (const size of line.sizes) line.run(size);
  for (let round = 0; round < rounds; round += 1) {
    line.sizes.forEach((size, index) => {
      const start = performance.now();
      for (let again = 0; again < 5; again += 1) line.run(size);
      times[index]?.push(performance.now() - start);
    });
  }
  return times.map((each) => Math.min(...each));
}

const stitches = [30, 300, 3_000, 30_000];
const passes = [1, 10, 100, 1_000, 10_000];

const lines: readonly Line[] = [
  { name: 'plain row, stitches', sizes: stitches, run: (n) => void work('Row 1: K3, k to last 3 sts, k3.', { start: n }) },
  {
    name: 'repeat in the row, stitches',
    sizes: stitches,
    run: (n) => void work('Row 1: K1, *yo, ssk, k2; rep from * to last st, k1.', { start: Math.floor((n - 2) / 4) * 4 + 2 }),
  },
  {
    name: 'nested repeat, stitches',
    sizes: stitches,
    run: (n) => void work('Row 1: *[K1, p1] twice, k2tog, yo; rep from * to end.', { start: n - (n % 6) }),
  },
  {
    name: 'row repeated, passes',
    sizes: passes,
    run: (n) => void work(`Row 1: *K2, p2; rep from * to end. Rep last row ${n} times more.`, { start: 40 }),
  },
  {
    name: 'two rows repeated, passes',
    sizes: passes,
    run: (n) => void work(`Row 1: Knit. Row 2: Purl. Rep last 2 rows ${n} times more.`, { start: 40 }),
  },
  {
    name: 'eight rows repeated, passes',
    sizes: passes,
    run: (n) =>
      void work(
        `Row 1: K1, *yo, ssk; rep from * to last st, k1. Row 2: Purl. Row 3: Knit. Row 4: Purl. Row 5: K1, *k2tog, yo; rep from * to last st, k1. Row 6: Purl. Row 7: Knit. Row 8: Purl. Rep Rows 1–8 ${n} times.`,
        { start: 40 },
      ),
  },
  {
    name: 'round repeated, passes',
    sizes: passes,
    run: (n) => void work(`Rnd 1: *K2, p2; rep from * around. Rep last rnd ${n} times more.`, { start: 40, mode: 'round' }),
  },
  { name: 'plain rows, passes', sizes: passes, run: (n) => void work(`Work ${n} rows in st st.`, { start: 40 }) },
];

let worst = 0;
for (const line of lines) {
  const times = leastTimes(line);
  const ratios = times.map((time) => time / (times[0] as number));
  worst = Math.max(worst, ...ratios);
  console.log(
    `${line.name.padEnd(30)} ${line.sizes.map((size, index) => `${size}: ${(ratios[index] as number).toFixed(2)}`.padEnd(13)).join(' ')} (${((times[0] as number) / 5).toFixed(3)} ms)`,
  );
}
console.log(`\nHighest ratio ${worst.toFixed(2)}; ${worst <= 1.5 ? 'flat' : 'NOT flat'} within 1.5.`);
if (worst > 1.5) process.exitCode = 1;
