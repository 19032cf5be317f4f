/** Everything that could go on without end has a bound, and says so where it is reached; what lies within is worked as ever. */
import { describe, expect, test } from 'vitest';
import { type Proof, proof as prove } from '../../src/index.ts';

/** A draft that goes to the bound is dear: each is proofed once. */
const proofs = new Map<string, Proof>();
function proof(text: string): Proof {
  const known = proofs.get(text) ?? prove(text);
  proofs.set(text, known);
  return known;
}

const head = '---\ntitle: Mole Scarf\nsizes: [S, M, L]\n---\n\n# Mole Scarf\n\n## Body\n\nCO 98 [110: 122] sts.\n\n';
const notRead = (body: string): string[] =>
  proof(head + body)
    .findings.filter(({ rule }) => rule === 'not-read')
    .map(({ message }) => message);
const errors = (text: string): string[] =>
  proof(text)
    .findings.filter(({ level }) => level === 'error')
    .map(({ rule }) => rule);
/** Counts behind the last line of the sheet. */
const last = (body: string): readonly (number | null)[] => proof(head + body).replay.entries.at(-1)?.after ?? [];

test.each(['9999999999999999999999999999999999999999', '100000000'])(
  'a row numbered %s is worked without its number',
  (number) => {
    const body = `Row 1 (RS): Knit.\n\nRow 2: Purl.\n\nRow ${number}: Purl.\n\nRepeat these 3 rows.\n`;
    expect(last(body)).toEqual([98, 110, 122]);
  },
  60_000,
);

describe('passages', () => {
  const row = (stitches: number): string => `Row 1: ${'k2, '.repeat(stitches)}k to end.\n`;

  test('a row of five thousand characters is read; one of six thousand and more is not, and says so', () => {
    expect(notRead(row(1_200))).toEqual([]);
    expect(notRead(row(1_500))).toEqual([expect.stringContaining('longer than 6000 characters')]);
  }, 60_000);

  test.each([
    ['blanks', ' '],
    ['brackets', '('],
    ['closing brackets', ')'],
    ['stars', '*'],
    ['quotations', '> '],
    ['bullets', '- '],
    ['numbers', '98 [110: 122], '],
    ['cells', '| k2 '],
    ['letters', 'a'],
    ['repeats', '*k2, p2; rep from * to end, '],
  ])(
    'two million characters of %s in one line are not read and stop nothing',
    (_, piece) => {
      const line = piece.repeat(Math.ceil(2_000_000 / piece.length));
      expect(notRead(`${line}\n\nRow 1: k.\n`)).toEqual([expect.stringContaining('longer than 6000 characters')]);
    },
    60_000,
  );

  test('what stands behind a passage that was not read is not accused', () => {
    expect(errors(`${head}${row(3_000)}\nRow 2: k97 [109: 121].\n`)).toEqual([]);
  });

  test('a passage in the front that is too long is shown as well', () => {
    const text = `# Mole Scarf\n\n## Materials\n\n${'Wool. '.repeat(2_000)}\n\n## Body\n\nCO 20 sts.\n\nRow 1: k.\n`;
    expect(proof(text).findings.filter(({ rule }) => rule === 'not-read')).toHaveLength(1);
  });
});

describe('depth', () => {
  test.each([
    ['quotations', `${'> '.repeat(40)}Row 1: k.\n`],
    ['::: blocks', `${':::note\n'.repeat(31)}Row 1: k.\n`],
  ])('thirty %s are read, more are not', (_, body) => {
    expect(notRead(body).filter((message) => message.includes('more than 30'))).toHaveLength(1);
  });

  test('three thousand ::: blocks are read to their end', () => {
    expect(notRead(':::note\n'.repeat(3_000)).filter((message) => message.includes('more than 30'))).toHaveLength(2_970);
  }, 60_000);

  const nested = (depth: number): string => `Row 1: ${'['.repeat(depth)}k1${'] once'.repeat(depth)}, k to end.\n`;
  test('sixty brackets within brackets are worked, more are not read', () => {
    expect(notRead(nested(60))).toEqual([]);
    expect(last(nested(60))).toEqual([98, 110, 122]);
    expect(notRead(nested(61))).toEqual([expect.stringContaining('more than 60 brackets')]);
    expect(notRead(nested(2_000).slice(0, 5_900))).toEqual([expect.stringContaining('more than 60 brackets')]);
  });
});

describe('rows and repeats', () => {
  test('repeats within repeats that come to a million million stitches stop nothing', () => {
    const inside = `Row 1: ${'['.repeat(12)}k1, yo, k2tog${'] 9999 times'.repeat(12)}.\n`;
    expect(proof(head + inside).findings.map(({ rule }) => rule)).toContain('too-few-stitches');
  });

  test('ten thousand passes that change nothing are counted, however many rows they have', () => {
    expect(last('Row 1: k.\nRow 2: p.\nRep Rows 1 and 2 10000 times.\n')).toEqual([98, 110, 122]);
    expect(notRead('Row 1: k.\nRow 2: p.\nRep Rows 1 and 2 10000 times.\n')).toEqual([]);
  });

  test('ten thousand passes with an increase come out', () => {
    expect(last('Row 1: k1, m1, k to end.\nRow 2: p.\nRep Rows 1 and 2 9999 times more.\n')).toEqual([10_098, 10_110, 10_122]);
  }, 60_000);

  test('passes that no one will ever knit end the checking and say so', () => {
    const body = 'Row 1: k1, m1, k to end.\nRow 2: p.\nRep Rows 1 and 2 1000000000 times.\n\nRow 3: k5.\n';
    expect(notRead(body)).toEqual([expect.stringContaining('more rows or repeats than are worked')]);
    expect(errors(head + body)).toEqual([]);
    expect(last(body)).toEqual([null, null, null]);
  }, 300_000);

  test('rows that call each other end', () => {
    const body = 'Row 1: k.\nRow 2: as Row 3.\nRow 3: as Row 2.\nRow 4: Rep Rows 1–4.\nRep Rows 1–4 999 times.\n';
    expect(() => proof(head + body)).not.toThrow();
  }, 60_000);

  test('a range of a thousand million rows, a count of four hundred digits', () => {
    expect(() => proof(`${head}Rows 1–1000000000: k.\nRow 2: k${'9'.repeat(400)}.\nInc 999999999 sts evenly across row.\n`)).not.toThrow();
  });

  test('two hundred sizes', () => {
    const names = Array.from({ length: 200 }, (_, index) => `S${index + 1}`);
    const counts = names.map((_, index) => 60 + 2 * index);
    const list = (values: readonly number[]): string => `${values[0]} [${values.slice(1).join(', ')}]`;
    const text = `---\ntitle: Mole Scarf\nsizes: [${names.join(', ')}]\n---\n\n## Body\n\nCO ${list(counts)} sts.\n\nRow 1: k1, m1, k to end. ${list(counts.map((count) => count + 1))} sts.\nRow 2: p.\n`;
    const made = proof(text);
    expect(made.replay.entries.at(-1)?.after).toEqual(counts.map((count) => count + 1));
    expect(errors(text)).toEqual([]);
  }, 60_000);
});

describe('front matter', () => {
  const front = (yaml: string): string => `---\n${yaml}\n---\n\n## Body\n\nCO 20 sts.\n\nRow 1: k.\n`;
  test.each([
    ['lists within lists', `sizes: ${'['.repeat(2_000)}${']'.repeat(2_000)}`],
    ['maps within maps', `sizes: ${'{a: '.repeat(1_000)}1${'}'.repeat(1_000)}`],
    [
      'names that stand for names that stand for names',
      [
        'a: &a [x, x, x, x, x, x, x, x, x]',
        ...[...'bcdefghi'].map((name, index) => `${name}: &${name} [${Array(9).fill(`*${'abcdefgh'[index]}`).join(', ')}]`),
        'sizes: *i',
      ].join('\n'),
    ],
  ])('%s', (_, yaml) => {
    expect(() => proof(front(yaml))).not.toThrow();
  });
});
