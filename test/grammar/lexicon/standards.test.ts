/**
 * The lexicon against abbreviations that stand outside this project: the master list of knitting abbreviations of the
 * Craft Yarn Council, from memory (the page was not read again), and British lists of the trade, from memory.
 */
import { describe, expect, test } from 'vitest';
import { spellingKey } from '../../../grammar/lexicon/ambiguous.ts';
import type { Entry } from '../../../grammar/lexicon/entry.ts';
import { lexicon } from '../../../grammar/lexicon/index.ts';
import { numbersFit, stitchUse } from '../../../grammar/lexicon/use.ts';

const CYC = 'Craft Yarn Council master list, from memory';
const UK = 'British abbreviation lists, from memory';

/** Abbreviation, stitches used, stitches made, lean seen from the right side where the list gives one. */
const STANDARD: readonly (readonly [string, number, number, 'left' | 'right' | 'centre' | null, string])[] = [
  ['k', 1, 1, null, CYC],
  ['k5', 5, 5, null, CYC],
  ['p', 1, 1, null, CYC],
  ['p3', 3, 3, null, CYC],
  ['k1 tbl', 1, 1, null, CYC],
  ['p1 tbl', 1, 1, null, CYC],
  ['k2tog', 2, 1, 'right', CYC],
  ['k3tog', 3, 1, 'right', CYC],
  ['k2tog tbl', 2, 1, 'left', UK],
  ['p2tog', 2, 1, 'right', CYC],
  ['p2tog tbl', 2, 1, 'left', CYC],
  ['p3tog', 3, 1, 'right', CYC],
  ['ssk', 2, 1, 'left', CYC],
  ['ssp', 2, 1, 'left', CYC],
  ['sssk', 3, 1, 'left', CYC],
  ['sssp', 3, 1, 'left', CYC],
  ['SKP', 2, 1, 'left', CYC],
  ['skpo', 2, 1, 'left', UK],
  ['sl 1, k1, psso', 2, 1, 'left', CYC],
  ['SK2P', 3, 1, 'left', CYC],
  ['S2KP', 3, 1, 'centre', CYC],
  ['S2KP2', 3, 1, 'centre', CYC],
  ['cdd', 3, 1, 'centre', CYC],
  ['psso', 0, -1, null, CYC],
  ['p2sso', 0, -2, null, CYC],
  ['kfb', 1, 2, null, CYC],
  ['k1f&b', 1, 2, null, CYC],
  ['pfb', 1, 2, null, CYC],
  ['M1', 0, 1, null, CYC],
  ['M1L', 0, 1, 'left', CYC],
  ['M1R', 0, 1, 'right', CYC],
  ['M1P', 0, 1, null, CYC],
  ['LLI', 0, 1, 'left', CYC],
  ['RLI', 0, 1, 'right', CYC],
  ['yo', 0, 1, null, CYC],
  ['yrn', 0, 1, null, UK],
  ['yon', 0, 1, null, UK],
  ['yfrn', 0, 1, null, UK],
  ['yfwd', 0, 1, null, UK],
  ['yb', 0, 0, null, CYC],
  ['wyib', 0, 0, null, CYC],
  ['wyif', 0, 0, null, CYC],
  ['sl', 1, 1, null, CYC],
  ['sl st', 1, 1, null, CYC],
  ['sl1k', 1, 1, null, CYC],
  ['sl1p', 1, 1, null, CYC],
  ['LT', 2, 2, 'left', CYC],
  ['RT', 2, 2, 'right', CYC],
  ['2/2 LC', 4, 4, 'left', CYC],
  ['2/2 RC', 4, 4, 'right', CYC],
  ['2/1 LPC', 3, 3, 'left', CYC],
  ['2/1 RPC', 3, 3, 'right', CYC],
  ['3/3 LC', 6, 6, 'left', CYC],
  ['C4F', 4, 4, 'left', UK],
  ['C4B', 4, 4, 'right', UK],
  ['C8F', 8, 8, 'left', UK],
  ['T3F', 3, 3, 'left', UK],
  ['T3B', 3, 3, 'right', UK],
  ['MB', 1, 1, null, CYC],
  ['w&t', 0, 0, null, CYC],
  ['pm', 0, 0, null, CYC],
  ['sm', 0, 0, null, CYC],
  ['rm', 0, 0, null, UK],
  ['BO 5', 5, 0, null, CYC],
  ['CO 12', 0, 12, null, CYC],
  ['cast off 5', 5, 0, null, UK],
  ['inc', 0, 1, null, CYC],
  ['dec', 2, 1, null, CYC],
  ['patt 7', 7, 7, null, CYC],
];

/** The entries a written token can be, spelled out first, then with its numbers in the slots. */
function found(token: string): { entry: Entry; N?: number | undefined; M?: number | undefined }[] {
  const key = spellingKey(token);
  const plain = lexicon
    .filter((entry) => entry.spellings.some((spelling) => spellingKey(spelling) === key))
    .map((entry) => {
      const spelling = entry.spellings.find((one) => spellingKey(one) === key) ?? '';
      return { entry, ...entry.literals?.[spelling] };
    });
  const numbers = (key.match(/\d+/g) ?? []).map(Number);
  const slots = ['{N}', '{M}'];
  let next = 0;
  const slotted = key.replace(/\d+/g, () => slots[next++] ?? '?');
  const first = key.replace(/\d+/, '{N}');
  const families = lexicon
    .filter((entry) => entry.spellings.some((spelling) => [slotted, first].includes(spellingKey(spelling))))
    .map((entry) => ({ entry, N: numbers[0], M: numbers[1] }))
    .filter(({ entry, N, M }) => numbersFit(entry, N, M));
  return [...plain, ...families];
}

describe('standard abbreviations', () => {
  test.each(STANDARD)('%s takes %i, makes %i, lean %s (%s)', (token, takes, makes, lean) => {
    const entries = found(token);
    expect(entries.length).toBeGreaterThan(0);
    const counts = entries.map(({ entry, N, M }) => {
      const use = stitchUse(entry, N, M);
      return [use.takes, use.makes];
    });
    expect(counts[0]).toEqual([takes, makes]);
    if (lean !== null) expect(entries[0]?.entry.lean).toBe(lean);
  });

  // Common practice, no source: decreases lose, increases gain, and the rest keep the count.
  test('kinds keep their promise', () => {
    for (const entry of lexicon) {
      const n = Math.max(entry.numbers?.N?.least ?? 1, 2) + (entry.numbers?.N?.parity === 'odd' ? 1 : 0);
      const { takes, makes } = stitchUse(entry, n, Math.max(entry.numbers?.M?.least ?? 1, 1));
      const net = makes - takes;
      if (entry.kind === 'decrease' || entry.kind === 'doubleDecrease') expect(net, entry.name).toBeLessThan(0);
      if (entry.kind === 'increase' || entry.kind === 'yarnOver') expect(net, entry.name).toBeGreaterThan(0);
      if (entry.kind === 'yarnOver') expect(takes, entry.name).toBe(0);
      if (entry.kind === 'plain' || entry.kind === 'slip' || entry.kind === 'marker' || entry.kind === 'twist')
        expect(net, entry.name).toBe(0);
      if (entry.kind === 'doubleDecrease') expect(net, entry.name).toBe(-2);
    }
  });
});
