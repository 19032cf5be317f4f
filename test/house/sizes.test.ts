/** No file does so much that nobody can hold it in mind. */
import { readdirSync, readFileSync } from 'node:fs';
import { join, relative } from 'node:path';
import { expect, test } from 'vitest';

const root = join(import.meta.dirname, '..', '..');
const most = 400;

/** Files that may be longer, each with its reason. */
const longer: Readonly<Record<string, string>> = {
  'grammar/tree.ts': 'types alone: what a draft can say, in one place to be read from top to bottom',
  'grammar/words.ts': 'data alone: the words of the trade, one line each',
  'test/replay/traditional-patterns.ts': 'data alone: traditional stitch patterns with their counts',
};

const files = ['src', 'grammar', 'rules', 'test', '.build'].flatMap((folder) =>
  readdirSync(join(root, folder), { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile() && /\.(ts|mjs)$/.test(entry.name))
    .map((entry) => join(entry.parentPath, entry.name)),
);
const lines = (path: string): number => readFileSync(path, 'utf8').trimEnd().split('\n').length;

test('no file is longer than 400 lines without a reason', () => {
  const long = files.filter((path) => lines(path) > most).map((path) => relative(root, path));
  expect(long.filter((path) => !(path in longer))).toEqual([]);
  // A file that is short again needs no reason.
  expect(Object.keys(longer).filter((path) => !long.includes(path))).toEqual([]);
});
