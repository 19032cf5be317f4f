/**
 * What a whole proof costs, against parsing the same Markdown alone, and against the length of the text. Ratios within one
 * run. The draft of about 20 KB is made of different correct fixtures, so that nothing in it is read twice; longer
 * texts repeat it. `--long` goes on to 5 MB, which takes minutes.
 */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { performance } from 'node:perf_hooks';
import { gfmTableFromMarkdown } from 'mdast-util-gfm-table';
import { gfmTable } from 'micromark-extension-gfm-table';
import remarkDirective from 'remark-directive';
import remarkFrontmatter from 'remark-frontmatter';
import remarkParse from 'remark-parse';
import { type Processor, unified } from 'unified';
import { proof } from '../../src/index.ts';
import { readManuscript } from '../../src/manuscript/read.ts';
import { readPattern } from '../../src/pattern/read.ts';

function tables(this: Processor): void {
  const data = this.data() as { micromarkExtensions?: unknown[]; fromMarkdownExtensions?: unknown[] };
  data.micromarkExtensions = [...(data.micromarkExtensions ?? []), gfmTable()];
  data.fromMarkdownExtensions = [...(data.fromMarkdownExtensions ?? []), gfmTableFromMarkdown()];
}

const reference = unified().use(remarkParse).use(remarkFrontmatter).use(remarkDirective).use(tables).freeze();
const folder = 'fixtures/clean';
const drafts = readdirSync(folder)
  .filter((file) => file.endsWith('.md'))
  .map((file) => readFileSync(join(folder, file), 'utf8'))
  .sort((a, b) => b.length - a.length);

const wanted = 20_000;
let draft = '';
for (const each of drafts) if (draft.length < wanted) draft += `${each}\n\n`;

/** Least time of some runs. */
function least(run: () => void, runs: number): number {
  let best = Number.POSITIVE_INFINITY;
  for (let at = 0; at < runs; at += 1) {
    const start = performance.now();
    run();
    best = Math.min(best, performance.now() - start);
  }
  return best;
}

const manuscript = readManuscript(draft);
const parse = least(() => void reference.parse(draft), 20);
console.log(`Draft of ${draft.length} characters; parsing its Markdown takes ${parse.toFixed(1)} ms.`);
for (const [name, run] of [
  ['manuscript', () => void readManuscript(draft)],
  ['grammar and pattern', () => void readPattern(manuscript)],
  ['whole proof', () => void proof(draft)],
] as const) {
  console.log(`${name.padEnd(22)} ${(least(run, 20) / parse).toFixed(1)} × parsing the Markdown`);
}

const lengths = process.argv.includes('--long') ? [10, 100, 250] : [4, 10];
let before = { times: 1, cost: least(() => void proof(draft), 10) };
for (const times of lengths) {
  const long = Array.from({ length: times }, () => draft).join('\n\n');
  const cost = least(() => void proof(long), times > 10 ? 1 : 3);
  console.log(
    `${(long.length / 1e6).toFixed(2)} MB: ${(times / before.times).toFixed(1)} × the text, ${(cost / before.cost).toFixed(1)} × the time`,
  );
  before = { times, cost };
}
