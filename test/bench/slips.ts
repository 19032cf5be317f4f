/**
 * The slips designers make, put one at a time into the correct fixtures with a fixed seed, and what the proof says of each.
 *
 *     npm run slips                    2,000 slips in the rows
 *     npm run slips -- 500             fewer
 *     npm run slips -- words           slips in the words around them: gauge, needles, notions, yarn, abbreviations, units, references
 *     npm run slips -- words --list    and those that nothing was said of
 *
 * Prints per kind: caught (a new error or query anywhere the slip can be noticed), at the right place (on the line of the
 * slip), the right statement blamed (the finding covers the words changed), and how often the true repair is among the
 * edits offered.
 */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Edit } from '../../rules/rule.ts';
import { type Proof, proof } from '../../src/index.ts';
import { slipsInRows } from './slips/slips-in-rows.ts';
import { slipsInWords } from './slips/slips-in-words.ts';

/** A small generator with a fixed seed (mulberry32), so that every run makes the same slips. */
function generator(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let t = Math.imul(state ^ (state >>> 15), 1 | state);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
}

const lineOf = (text: string, at: number): number => text.slice(0, at).split('\n').length;
/** A draft without its spaces and capitals: an edit is the true repair where it leaves the draft as it was before the slip. */
const plain = (text: string): string => text.replace(/\s+/g, '').toLowerCase();
const serious = (
  result: Proof,
): { key: string; line: number; end: number; span: { start: number; end: number }; repair: readonly Edit[] }[] =>
  result.findings
    .filter((finding) => finding.level !== 'style')
    .map((finding) => ({
      key: `${finding.rule}|${finding.message}`,
      line: result.manuscript.place(finding.span.start).line,
      end: result.manuscript.place(Math.max(finding.span.start, finding.span.end - 1)).line,
      span: finding.span,
      repair: [...(finding.fix ? [finding.fix] : []), ...(finding.edits ?? [])],
    }));

const folder = 'fixtures/clean';
const words = process.argv.includes('words');
const only = process.argv.find((word) => word.startsWith('--only='))?.slice(7);
const wanted = Number(process.argv.find((word) => /^\d+$/.test(word)) ?? 2000);
const drafts = readdirSync(folder)
  .filter((file) => file.endsWith('.md'))
  .sort()
  .map((file) => ({ file, source: readFileSync(join(folder, file), 'utf8') }));
const random = generator(20261125);
const pool = drafts.flatMap(({ file, source }) =>
  (words ? slipsInWords(source) : slipsInRows(source))
    .filter((slip) => only === undefined || slip.kind.startsWith(only))
    .map((slip) => ({ file, source, slip })),
);
for (let at = pool.length - 1; at > 0; at -= 1) {
  const other = Math.floor(random() * (at + 1));
  [pool[at], pool[other]] = [pool[other] as (typeof pool)[0], pool[at] as (typeof pool)[0]];
}

const clean = new Map(drafts.map(({ file, source }) => [file, new Set(serious(proof(source)).map((each) => each.key))]));
const kinds = new Map<string, { made: number; caught: number; placed: number; blamed: number; repaired: number; further: number }>();
const missed: string[] = [];
for (const { file, source, slip } of pool.slice(0, wanted)) {
  const text = source.slice(0, slip.at) + slip.now + source.slice(slip.at + slip.was.length);
  const found = serious(proof(text)).filter((each) => !clean.get(file)?.has(each.key));
  const line = lineOf(text, slip.at);
  const tally = kinds.get(slip.kind) ?? { made: 0, caught: 0, placed: 0, blamed: 0, repaired: 0, further: 0 };
  tally.made += 1;
  if (found.length > 0) {
    tally.caught += 1;
    tally.further += found.length - 1;
    if (found.some((each) => each.line <= line && line <= each.end)) tally.placed += 1;
    if (found.some((each) => each.span.start <= slip.at + slip.now.length && slip.at <= each.span.end)) tally.blamed += 1;
    if (
      found.some((each) =>
        each.repair.some((edit) => plain(text.slice(0, edit.span.start) + edit.text + text.slice(edit.span.end)) === plain(source)),
      )
    )
      tally.repaired += 1;
  } else missed.push(`${file}:${line} ${slip.kind}: "${slip.was}" -> "${slip.now}"`);
  kinds.set(slip.kind, tally);
}

const percent = (part: number, all: number): string => `${((100 * part) / Math.max(1, all)).toFixed(0).padStart(4)} %`;
console.log(`${pool.length} places, ${Math.min(wanted, pool.length)} slips in ${drafts.length} drafts`);
console.log(`${'kind'.padEnd(30)} made caught  place  blame repair further`);
const total = { made: 0, caught: 0, placed: 0, blamed: 0, repaired: 0, further: 0 };
for (const [kind, tally] of [...kinds].sort(([a], [b]) => (a < b ? -1 : 1))) {
  for (const key of Object.keys(total) as (keyof typeof total)[]) total[key] += tally[key];
  console.log(
    `${kind.padEnd(30)} ${String(tally.made).padStart(4)} ${percent(tally.caught, tally.made)} ${percent(tally.placed, tally.made)} ${percent(tally.blamed, tally.made)} ${percent(tally.repaired, tally.made)} ${(tally.further / Math.max(1, tally.caught)).toFixed(2).padStart(6)}`,
  );
}
console.log(
  `${'together'.padEnd(30)} ${String(total.made).padStart(4)} ${percent(total.caught, total.made)} ${percent(total.placed, total.made)} ${percent(total.blamed, total.made)} ${percent(total.repaired, total.made)} ${(total.further / Math.max(1, total.caught)).toFixed(2).padStart(6)}`,
);
if (process.argv.includes('--list')) for (const line of missed) console.log(line);
