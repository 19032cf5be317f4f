/** The house is built as drawn: who may know what. Each room is looked at by its imports and its words. */
import { readdirSync, readFileSync } from 'node:fs';
import { join, relative } from 'node:path';
import { describe, expect, test } from 'vitest';
import { lexicon } from '../../grammar/lexicon/index.ts';

const root = join(import.meta.dirname, '..', '..');

const withoutComments = (text: string): string => text.replace(/\/\*[\s\S]*?\*\/|(?<=^|\s)\/\/.*$/gm, '');

function sources(folder: string): { path: string; text: string }[] {
  return readdirSync(join(root, folder), { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile() && entry.name.endsWith('.ts'))
    .map((entry) => join(entry.parentPath, entry.name))
    .sort()
    .map((path) => ({ path: relative(root, path), text: withoutComments(readFileSync(path, 'utf8')) }));
}

const all = [...sources('src'), ...sources('grammar'), ...sources('rules')];
const imports = (text: string): string[] => [...text.matchAll(/(?:from|import)\s*\(?\s*'([^']+)'/g)].map((match) => match[1] as string);
const offenders = (files: readonly { path: string; text: string }[], forbidden: (name: string) => boolean): string[] =>
  files.flatMap(({ path, text }) =>
    imports(text)
      .filter(forbidden)
      .map((name) => `${path} imports ${name}`),
  );

describe('rooms', () => {
  test('only the manuscript knows Markdown', () => {
    const markdown = /^(unified|remark|micromark|mdast)/;
    expect(
      offenders(
        all.filter(({ path }) => !path.startsWith('src/manuscript/')),
        (name) => markdown.test(name),
      ),
    ).toEqual([]);
  });

  test('only the grammar knows chevrotain', () => {
    expect(
      offenders(
        all.filter(({ path }) => !path.startsWith('grammar/')),
        (name) => name.startsWith('chevrotain'),
      ),
    ).toEqual([]);
  });

  test('only the command line knows files, terminals and exit statuses', () => {
    const library = all.filter(({ path }) => !path.startsWith('src/command-line/'));
    expect(offenders(library, (name) => name.startsWith('node:') || name === 'commander')).toEqual([]);
    expect(library.filter(({ text }) => /\bprocess\.|\bglobalThis\.process\b/.test(text)).map(({ path }) => path)).toEqual([]);
  });

  test('same input, same output: no clock, no chance, no locale', () => {
    const library = all.filter(({ path }) => !path.startsWith('src/command-line/'));
    const pattern = /\bDate\b\s*[.(]|new Date|Math\.random|toLocale|localeCompare|Intl\./;
    expect(library.filter(({ text }) => pattern.test(text)).map(({ path }) => path)).toEqual([]);
  });

  test('the manuscript knows nothing of the rooms behind it, the grammar nothing of the pattern, the replay no rules', () => {
    const behind: [string, RegExp][] = [
      ['src/manuscript/', /\/(grammar|pattern|replay|rules|report|command-line)\//],
      ['grammar/', /\/(manuscript|pattern|replay|rules|report|command-line)\//],
      ['src/pattern/', /\/(replay|rules|report|command-line)\//],
      ['src/replay/', /\/(rules|command-line|manuscript)\//],
      ['rules/', /\/(report|command-line)\//],
    ];
    for (const [room, forbidden] of behind) {
      expect(
        offenders(
          all.filter(({ path }) => path.startsWith(room)),
          (name) => forbidden.test(name),
        ).filter((line) => !/rules\/tables/.test(line)),
      ).toEqual([]);
    }
  });

  test('no stitch name stands outside the grammar', () => {
    // Names long enough not to be ordinary words or single letters.
    const names = lexicon
      .map((entry) => entry.name)
      .filter((name) => /^[a-z0-9]{3,}$/i.test(name) && /\d|^(ssk|skp|kfb|pfb|psso|cdd|sssk)$/.test(name));
    const quoted = new RegExp(`['"\`](${names.join('|')})['"\`]`);
    const known = /^rules\/tables\//;
    expect(
      [...sources('src'), ...sources('rules')].filter(({ path, text }) => !known.test(path) && quoted.test(text)).map(({ path }) => path),
    ).toEqual([]);
  });

  test('no any in the core', () => {
    expect(all.filter(({ text }) => /(?<!\?):\s*any\b|\bas any\b|<any>/.test(text)).map(({ path }) => path)).toEqual([]);
  });
});
