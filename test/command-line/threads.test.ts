/** Many drafts are proofed in several threads; nobody can tell from the report. */
import { spawnSync } from 'node:child_process';
import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { buildSync } from 'esbuild';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { proof } from '../../src/index.ts';
import { proofJson } from '../../src/report/json.ts';
import { version } from '../../src/version.ts';

const root = fileURLToPath(new URL('../..', import.meta.url));
const folder = mkdtempSync(join(tmpdir(), 'rowproof-threads-'));
const clean = join(root, 'fixtures/clean');
const names = readdirSync(clean).filter((name) => name.endsWith('.md'));

beforeAll(() => {
  buildSync({
    entryPoints: [join(root, 'src/command-line/main.ts')],
    bundle: true,
    platform: 'node',
    format: 'cjs',
    outfile: join(folder, 'rowproof.cjs'),
  });
  for (const name of names) writeFileSync(join(folder, name), readFileSync(join(clean, name)));
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const run = (words: readonly string[]) =>
  spawnSync(process.execPath, ['rowproof.cjs', ...words], { cwd: folder, encoding: 'utf8', maxBuffer: 2 ** 28 });

test('the same bytes, in the same order', { timeout: 120_000 }, () => {
  const { stdout, stderr, status } = run(['proof', '.', '--format', 'json']);
  expect([stderr, status]).toEqual(['', 0]);
  const proofs = [...names].sort().map((name) => proof(readFileSync(join(folder, name), 'utf8'), { path: name }));
  expect(stdout).toBe(proofJson({ tool: { name: 'rowproof', version }, proofs, rules: [], unreadable: [] }));
});

test('a draft that cannot be read is named, and the others are proofed', { timeout: 120_000 }, () => {
  writeFileSync(join(folder, 'broken.md'), Buffer.from([0x63, 0xff, 0x0a]));
  const { stdout, stderr, status } = run(['proof', '.', '--format', 'json']);
  rmSync(join(folder, 'broken.md'));
  expect([stderr, status]).toEqual(['broken.md: it is not saved as UTF-8 (first seen on line 1); save it as UTF-8 and try again.\n', 2]);
  expect(JSON.parse(stdout).drafts).toHaveLength(names.length);
});
