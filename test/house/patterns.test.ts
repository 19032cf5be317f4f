/** No regular expression of the house can run away, whatever the text. Nothing is timed: the patterns themselves are looked at. */
import { readdirSync, readFileSync } from 'node:fs';
import { join, relative } from 'node:path';
import ts from 'typescript';
import { describe, expect, test } from 'vitest';
import { clauses } from '../../grammar/definition-clauses.ts';
import { knots } from '../../grammar/definition-knots.ts';
import { ambiguous, NotFinite, repeatedGroups, wordsOf } from './unambiguous.ts';

const root = join(import.meta.dirname, '..', '..');

/** Repeated groups that hold a repetition themselves, looked at one by one: each pass begins with signs that no pass goes on with. */
const lookedAt: Readonly<Record<string, string>> = {
  '[ \\t]*(?:>|[-+*](?=[ \\t])|\\d{1,9}[.)](?=[ \\t]))': 'blanks, then a mark; a mark is no blank',
  '(?:then|work|rep|repeat|as|once|more|again|from|between|to)\\b[\\s,;.:]*': 'a whole word, then blanks and stops; no stop is a letter',
  ' |×\\d+|slk?|\\)': 'digits follow their ×; nothing else begins with a digit',
  ' \\d+': 'a blank, then digits',
  '(?:,| and|, and) \\d+': 'a joint, then digits; no digit is a joint',
  '[-–/]\\d+': 'a dash, then digits',
  '-[\\p{L}]+': 'a hyphen, then letters',
  '\\s*(?:,|and|&|or)\\s*(?:[2-6]?X{0,3}[SML]|[2-6]X)': 'a joint, then a size; blanks only beside the joint',
  '[^,;\\n()]|\\([^)\\n]{0,30}\\)': 'a bracket, or a sign that is none',
  '[^()[\\]]|\\([^()]*\\) ?(?:twice|\\d)':
    'a bracket with its number, or a sign that is no bracket; a bracket without its number is no word at all',
  ' (?:both|the|these|last|next|(?:the )?(?:last |next |two |2 )?(?:\\d )?(?:knit |k )?(?:sts?|stitch(?:es)?|loops?)\\b|them|k2|2|it)':
    'the end of its pattern: where nothing follows, nothing can fail and no second way is tried',
};

function literals(): { at: string; source: string }[] {
  const found: { at: string; source: string }[] = [];
  for (const folder of ['src', 'grammar', 'rules'])
    for (const entry of readdirSync(join(root, folder), { recursive: true, withFileTypes: true })) {
      if (!entry.isFile() || !entry.name.endsWith('.ts')) continue;
      const path = join(entry.parentPath, entry.name);
      const file = ts.createSourceFile(path, readFileSync(path, 'utf8'), ts.ScriptTarget.Latest, true);
      const visit = (node: ts.Node): void => {
        if (node.kind === ts.SyntaxKind.RegularExpressionLiteral)
          found.push({ at: relative(root, path), source: node.getText().replace(/^\/([\s\S]*)\/[a-z]*$/, '$1') });
        ts.forEachChild(node, visit);
      };
      visit(file);
    }
  return found;
}

const all = [
  ...literals(),
  ...[...clauses, ...knots].map(({ pattern }) => ({ at: 'grammar/definition-clauses.ts', source: pattern.source })),
];

test('what a pattern repeats without end can be taken in one way only', () => {
  const doubtful = all.flatMap(({ at, source }) =>
    repeatedGroups(source).flatMap((body) => {
      if (body in lookedAt) return [];
      try {
        return ambiguous(wordsOf(body)) ? [`${at}: (${body})`] : [];
      } catch (error) {
        if (error instanceof NotFinite) return [`${at}: (${body}) holds a repetition itself`];
        throw error;
      }
    }),
  );
  expect([...new Set(doubtful)]).toEqual([]);
});

test('a definition with thirty brackets in it is left as quickly as it is read', () => {
  // Each "(k) 3 times" could once be taken in two ways: thirty of them in a thousand million.
  const text = `(${'(k)3 times'.repeat(36)}!`;
  for (const { pattern } of clauses) {
    pattern.lastIndex = 0;
    expect(pattern.exec(text)).toBeNull();
  }
});

describe('the looking itself', () => {
  test.each(['a|a', 'a|ab|b', 'left |left hand |hand ', 'x?y?', '[\\s,]|, ', 'the |(?:the )?last ', '\\w|\\d'])(
    '(%s)* can run away',
    (body) => {
      expect(ambiguous(wordsOf(body))).toBe(true);
    },
  );
  test.each(['the |each |each of the ', '[^.;]|\\.(?=\\S)', ' ?(?:and|&|,) ?\\d', ' (?:k2|k2tog|knit|knit ones)'])(
    '(%s)* cannot',
    (body) => {
      expect(ambiguous(wordsOf(body))).toBe(false);
    },
  );
  test('repeated groups are found, also within each other', () => {
    expect(repeatedGroups('^(?:a|b)+(c)?(?:(?:d)*e){0,3}[()*]{2,}(f){2,40}$')).toEqual(['a|b', 'd', 'f']);
  });
});
