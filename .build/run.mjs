/** Bundles one TypeScript script of the tests and runs it: `node .build/run.mjs test/bench/slips.ts [arguments]`. */
import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { build } from 'esbuild';

const [script, ...rest] = process.argv.slice(2);
if (script === undefined) {
  console.error('Name the script to run: node .build/run.mjs test/bench/slips.ts');
  process.exit(2);
}
const folder = mkdtempSync(join(tmpdir(), 'rowproof-'));
const bundle = join(folder, 'script.cjs');
await build({ entryPoints: [script], bundle: true, platform: 'node', target: 'node20', format: 'cjs', outfile: bundle, logLevel: 'error' });
const { status } = spawnSync(process.execPath, [bundle, ...rest], { stdio: 'inherit' });
rmSync(folder, { recursive: true });
process.exit(status ?? 1);
