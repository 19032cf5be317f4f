/**
 * Makes `dist/`: the command line as CommonJS (it starts fastest that way), the library as one ES module,
 * the library's types, and the JSON Schemas of the reports. Fails if any of them fails.
 *
 * The command line is two files: a small door that answers `--version`, and the program behind it. What the program reaches only
 * through `import()` is not run until it is asked for, so that `--help` need not load the reader or the grammar.
 */
import { spawnSync } from 'node:child_process';
import { chmodSync, cpSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';

const root = fileURLToPath(new URL('..', import.meta.url));
const { version } = JSON.parse(readFileSync(new URL('../package.json', import.meta.url), 'utf8'));
const stated = /version = '([^']+)'/.exec(readFileSync(new URL('../src/version.ts', import.meta.url), 'utf8'))?.[1];
if (stated !== version) {
  console.error(`src/version.ts says ${stated}, package.json says ${version}: make them agree.`);
  process.exit(1);
}

const shared = {
  absWorkingDir: root,
  bundle: true,
  target: 'es2022',
  legalComments: 'eof',
  logLevel: 'warning',
};

rmSync(new URL('../dist', import.meta.url), { recursive: true, force: true });

const commandLine = { ...shared, platform: 'node', format: 'cjs', minify: true };
const programApart = {
  name: 'program-apart',
  setup: (door) => door.onResolve({ filter: /^\.\/program\.ts$/ }, () => ({ path: './program.cjs', external: true })),
};

await Promise.all([
  build({
    ...commandLine,
    entryPoints: ['src/command-line/main.ts'],
    outfile: 'dist/rowproof.cjs',
    banner: { js: '#!/usr/bin/env node' },
    plugins: [programApart],
  }),
  build({ ...commandLine, entryPoints: ['src/command-line/program.ts'], outfile: 'dist/program.cjs' }),
  // platform "neutral" refuses Node's own modules: the library must run in a browser.
  build({
    ...shared,
    entryPoints: ['src/index.ts'],
    outfile: 'dist/index.js',
    platform: 'neutral',
    mainFields: ['module', 'main'],
    format: 'esm',
  }),
]);
chmodSync(new URL('../dist/rowproof.cjs', import.meta.url), 0o755);
// What the JSON reports promise, for whoever reads them: rowproof/schema/proof.schema.json.
cpSync(new URL('../src/report/schema', import.meta.url), new URL('../dist/schema', import.meta.url), { recursive: true });

// And of house-style.yaml, for editors that help while it is written; it is made from the settings themselves.
const settings = await build({ ...shared, entryPoints: ['src/house-style/schema.ts'], write: false, format: 'esm', platform: 'neutral' });
const { houseStyleJsonSchema } = await import(`data:text/javascript,${encodeURIComponent(settings.outputFiles[0].text)}`);
writeFileSync(new URL('../dist/schema/house-style.schema.json', import.meta.url), `${JSON.stringify(houseStyleJsonSchema(), null, 2)}\n`);

const tsc = fileURLToPath(new URL('../node_modules/typescript/bin/tsc', import.meta.url));
const types = spawnSync(process.execPath, [tsc, '-p', '.build/tsconfig.json'], { cwd: root, stdio: 'inherit' });
process.exit(types.status ?? 1);
