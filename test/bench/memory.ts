/**
 * How much room a run over many drafts needs: the same folder with few and with many drafts, each run a process of its own.
 *
 *     npm run memory              1,000 and 10,000 drafts
 *     npm run memory -- 500       500 and 5,000
 *
 * The drafts are the correct fixtures over and over, each with its number in the title. The room is the largest resident set
 * that the system saw of the process (Linux: VmHWM of /proc/self/status, read when the run ends).
 */
import { spawnSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';

const few = Number(process.argv[2] ?? 1000);
const folder = 'fixtures/clean';
const sources = readdirSync(folder)
  .filter((file) => file.endsWith('.md'))
  .map((file) => readFileSync(join(folder, file), 'utf8'))
  .sort((a, b) => a.length - b.length)
  .slice(0, 12);
const program = resolve('dist/rowproof.cjs');
const top = mkdtempSync(join(tmpdir(), 'rowproof-memory-'));
// Asked inside the process, when it ends: no other way sees the peak without a tool of the system.
const watch = `process.on('exit',()=>{const s=require('node:fs').readFileSync('/proc/self/status','utf8');process.stderr.write('PEAK '+/VmHWM:\\s*(\\d+)/.exec(s)[1]+'\\n')})`;

try {
  const watcher = join(top, 'watch.cjs');
  writeFileSync(watcher, watch);
  console.log('drafts  text of drafts  report  largest resident set  a draft');
  let before: { readonly drafts: number; readonly peak: number } | null = null;
  for (const drafts of [few, few * 10]) {
    const here = join(top, String(drafts));
    mkdirSync(here);
    let bytes = 0;
    for (let at = 0; at < drafts; at += 1) {
      const text = (sources[at % sources.length] ?? '').replace(/^# (.*)$/m, `# $1 ${at + 1}`);
      bytes += text.length;
      writeFileSync(join(here, `${at + 1}.md`), text);
    }
    const output = join(top, `${drafts}.json`);
    const run = spawnSync(process.execPath, ['--require', watcher, program, 'proof', here, '--format', 'json', '--output', output], {
      encoding: 'utf8',
    });
    const peak = Number(/PEAK (\d+)/.exec(run.stderr)?.[1] ?? Number.NaN) / 1024;
    const each: string = before === null ? '' : `${((1024 * (peak - before.peak)) / (drafts - before.drafts)).toFixed(1)} KB more`;
    console.log(
      `${String(drafts).padStart(6)}  ${(bytes / 1e6).toFixed(1).padStart(11)} MB  ${(statSync(output).size / 1e6).toFixed(1)} MB  ${peak.toFixed(0).padStart(16)} MB  ${each}`,
    );
    if (run.status !== 0 && run.status !== 1) throw new Error(run.stderr);
    before = { drafts, peak };
  }
} finally {
  rmSync(top, { recursive: true, force: true });
}
