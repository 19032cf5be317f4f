/**
 * What a whole proof costs, against parsing the same Markdown alone, and against the length of the text. Ratios within one
 * run; the draft is the longest of the correct fixtures, and longer texts are made of it, piece after piece.
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
const draft = readdirSync(folder)
  .map((file) => readFileSync(join(folder, file), 'utf8'))
  .reduce((longest, each) => (each.length > longest.length ? each : longest));

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
const parse = least(() => void reference.parse(draft), 30);
console.log(`Draft of ${draft.length} characters; parsing its Markdown takes ${parse.toFixed(1)} ms.`);
for (const [name, run] of [
  ['manuscript', () => void readManuscript(draft)],
  ['grammar and pattern', () => void readPattern(manuscript)],
  ['whole proof', () => void proof(draft)],
] as const) {
  console.log(`${name.padEnd(22)} ${(least(run, 30) / parse).toFixed(1)} × parsing the Markdown`);
}
const once = least(() => void readPattern(manuscript), 10);
for (const times of [2, 4, 8]) {
  const long = readManuscript(Array.from({ length: times }, () => draft).join('\n\n'));
  console.log(`${times} × the text        ${(least(() => void readPattern(long), 4) / once).toFixed(1)} × the reading`);
}
