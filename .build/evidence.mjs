/**
 * What this checkout can show for itself, from this checkout alone: the tests by what they check, the slips put into the
 * correct drafts and what the proof says of them, and the costs as ratios. Takes some minutes.
 *
 *     npm run evidence
 */
import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { cpus, tmpdir } from 'node:os';
import { join, relative, sep } from 'node:path';

/** What the tests of a folder show; the first that fits counts. */
const claims = [
  ['test/grammar/lexicon', 'stitches and spellings read, their takes and makes derived a second time'],
  ['test/grammar', 'wordings read into the instruction tree'],
  ['test/replay/traditional', 'traditional stitch patterns worked row by row'],
  ['test/replay', 'rows and short rows replayed'],
  ['test/oracle', 'random rows agreed with the simple replayer and the solver'],
  ['test/rules', 'rules on their examples and near misses'],
  ['test/tables', 'published tables'],
  ['test/mangled', 'mangled drafts and texts without end, all proofed to their end'],
  ['test/drafts', 'correct drafts, every count against its truth'],
  ['test/report', 'reports against their schemas and in a browser'],
  ['test', 'everything else'],
];

const folder = mkdtempSync(join(tmpdir(), 'rowproof-evidence-'));
const report = join(folder, 'tests.json');
const run = (command, args, output = 'pipe') =>
  spawnSync(command, args, { encoding: 'utf8', stdio: ['ignore', output, output], maxBuffer: 1 << 28 });
const tests = run(process.execPath, [
  join('node_modules', 'vitest', 'vitest.mjs'),
  'run',
  '--config',
  '.vitest.config.ts',
  '--reporter=json',
  `--outputFile=${report}`,
]);
const counts = new Map(claims.map(([path]) => [path, { passed: 0, failed: 0 }]));
for (const file of JSON.parse(readFileSync(report, 'utf8')).testResults) {
  const path = relative(process.cwd(), file.name).split(sep).join('/');
  const claim = claims.find(([start]) => path.startsWith(start));
  const count = counts.get(claim?.[0] ?? 'test');
  for (const each of file.assertionResults) {
    if (each.status === 'passed') count.passed += 1;
    else if (each.status === 'failed') count.failed += 1;
  }
}
rmSync(folder, { recursive: true });

console.log(`Node ${process.version} on ${cpus().length} × ${cpus()[0]?.model.trim() ?? 'unknown'}\n`);
console.log('passed  failed  what is shown');
for (const [path, words] of claims) {
  const { passed, failed } = counts.get(path);
  console.log(`${String(passed).padStart(6)}  ${String(failed).padStart(6)}  ${words}`);
}
for (const [title, script] of [
  ['Slips put into the correct drafts', 'test/bench/slips.ts'],
  ['Costs of rows and repeats, as ratios within one run', 'test/bench/cost.bench.ts'],
  ['Costs of a whole proof, as ratios within one run', 'test/bench/whole.bench.ts'],
]) {
  console.log(`\n${title}\n`);
  const { stdout, stderr, status } = run(process.execPath, [join('.build', 'run.mjs'), script]);
  console.log((stdout + stderr).trimEnd());
  if (status !== 0) process.exitCode = 1;
}
if (tests.status !== 0) process.exitCode = 1;
