/** The command line as a process of its own: pipes, exit status, what the real world writes. */
import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { buildSync } from 'esbuild';
import { afterAll, beforeAll, expect, test } from 'vitest';

const folder = mkdtempSync(join(tmpdir(), 'rowproof-process-'));
const program = join(folder, 'rowproof.cjs');
const here = fileURLToPath(new URL('.', import.meta.url));

beforeAll(() => {
  const entry = `
    import { runCommandLine } from '../../src/command-line/cli.ts';
    import { realWorld } from '../../src/command-line/world.ts';
    import { playLibrary } from './play-library.ts';
    runCommandLine(process.argv.slice(2), realWorld(), async () => playLibrary).then((status) => { process.exitCode = status; });`;
  buildSync({
    stdin: { contents: entry, resolveDir: here, loader: 'ts' },
    bundle: true,
    platform: 'node',
    format: 'cjs',
    outfile: program,
  });
  for (let index = 0; index < 200; index += 1)
    writeFileSync(join(folder, `${index}.md`), `# Draft ${index}\n\nRow 1 SLIP ${'knit '.repeat(200)}\n`);
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const shell = (command: string) => spawnSync('bash', ['-c', command], { cwd: folder, encoding: 'utf8' });

test('a reader that goes away is met with silence', () => {
  const { stdout, stderr } = shell(`"${process.execPath}" rowproof.cjs proof . | head -n 1; echo "status \${PIPESTATUS[0]}"`);
  expect(stderr).toBe('');
  expect(stdout).toBe('Draft 0\nstatus 1\n');
});

test('a long report arrives whole through a pipe', () => {
  const { stdout } = shell(`"${process.execPath}" rowproof.cjs proof . --format json | cat`);
  expect(JSON.parse(stdout).drafts).toHaveLength(200);
});

test('standard input is read from a pipe and from a file', () => {
  expect(shell(`printf 'Row 1 SLIP' | "${process.execPath}" rowproof.cjs proof -`).status).toBe(1);
  expect(shell(`"${process.execPath}" rowproof.cjs proof - --format json < 7.md`).stdout).toContain('Draft 7');
});

test.skipIf(process.platform !== 'linux')('a full disk is said in one sentence', () => {
  const { stderr, status } = shell(`"${process.execPath}" rowproof.cjs proof . > /dev/full`);
  expect([stderr, status]).toEqual(['The report could not be written: the disk is full.\n', 2]);
});
