/** What befalls a draft on its way: cut short, lines lost, doubled or shuffled, brackets and numbers gone wild, foreign signs. */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';

const folder = join(import.meta.dirname, '..', '..', 'fixtures', 'clean');
const drafts = readdirSync(folder)
  .sort()
  .map((name) => readFileSync(join(folder, name), 'utf8'));

type Mangling = (text: string) => string;

/** A place in the text, told as a part of its length. */
const part = fc.double({ min: 0, max: 1, noNaN: true });
const at = (text: string, where: number): number => Math.floor(where * text.length);
const inLines = (text: string, change: (lines: string[]) => string[]): string => change(text.split('\n')).join('\n');

const signs = fc.oneof(
  fc.string({ unit: 'binary', maxLength: 12 }),
  fc.string({ unit: 'grapheme', maxLength: 12 }),
  fc.constantFrom(
    '\ud800',
    '\u0000',
    '\u202e',
    '\ufeff',
    '\u2028',
    '½¾⅞',
    '🧶',
    'e\u0301',
    '<!--',
    '-->',
    '```',
    ':::',
    '---\n',
    '|',
    '\r',
    '\t',
  ),
);
const insert = (text: string, where: number, what: string): string => text.slice(0, at(text, where)) + what + text.slice(at(text, where));

const cut = fc.tuple(part, part).map(
  ([a, b]): Mangling =>
    (text) => {
      const [from, to] = [at(text, Math.min(a, b)), at(text, Math.max(a, b))];
      return to - from < text.length / 2 ? text.slice(0, from) + text.slice(to) : text.slice(from, to);
    },
);
const lost = fc.tuple(part, fc.integer({ min: 1, max: 6 })).map(
  ([where, count]): Mangling =>
    (text) =>
      inLines(text, (lines) => lines.filter((_, index) => index < where * lines.length || index >= where * lines.length + count)),
);
const doubled = fc.tuple(part, fc.integer({ min: 1, max: 30 })).map(
  ([where, times]): Mangling =>
    (text) =>
      inLines(text, (lines) =>
        lines.flatMap((line, index) => (index === Math.floor(where * lines.length) ? Array(times).fill(line) : [line])),
      ),
);
const shuffled = fc.integer({ min: 1, max: 97 }).map(
  (step): Mangling =>
    (text) =>
      inLines(text, (lines) => lines.map((_, index) => lines[(index * step) % lines.length] ?? '')),
);
const joined = part.map(
  (where): Mangling =>
    (text) =>
      text.slice(0, at(text, where)) + text.slice(at(text, where)).replace(/\n+/g, ' '),
);
const foreign = fc.tuple(part, signs).map(
  ([where, what]): Mangling =>
    (text) =>
      insert(text, where, what),
);
const nested = fc.tuple(part, fc.integer({ min: 1, max: 60 }), fc.boolean()).map(
  ([where, depth, closes]): Mangling =>
    (text) =>
      insert(text, where, `${'['.repeat(depth)}k2, p2${closes ? '] 3 times'.repeat(depth) : ''}`),
);
const wild = fc.tuple(part, fc.constantFrom('0', '10000', '999999999', '1e9', '9'.repeat(40), '-3', '1 (2, 3', '1½')).map(
  ([where, number]): Mangling =>
    (text) => {
      const places = [...text.matchAll(/\d+/g)];
      const place = places[Math.floor(where * (places.length - 1))];
      return place === undefined ? text : text.slice(0, place.index) + number + text.slice(place.index + place[0].length);
    },
);

/** A correct draft with a few things gone wrong in it. */
export const mangledDraft: fc.Arbitrary<string> = fc
  .tuple(
    fc.constantFrom(...drafts),
    fc.array(fc.oneof(cut, lost, doubled, shuffled, joined, foreign, nested, { arbitrary: wild, weight: 3 }), {
      minLength: 1,
      maxLength: 4,
    }),
  )
  .map(([draft, manglings]) => manglings.reduce((text, mangle) => mangle(text), draft));
