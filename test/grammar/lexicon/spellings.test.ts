import { describe, expect, test } from 'vitest';
import { ambiguityOf, readingsOf, spellingKey } from '../../../grammar/lexicon/ambiguous.ts';
import { ambiguousNames } from '../../../grammar/lexicon/ambiguous-names.ts';
import type { Entry } from '../../../grammar/lexicon/entry.ts';
import { entryNamed, lexicon } from '../../../grammar/lexicon/index.ts';
import { fill, numbersFit, stitchUse } from '../../../grammar/lexicon/use.ts';

const TOOLS = [
  'cable needle',
  'second cable needle',
  'stitch marker',
  'tapestry needle',
  'third needle',
  'stitch holder or waste yarn',
  'waste yarn',
  'double-pointed needles',
  'beads',
  'fine crochet hook',
];
const SLOTS = /\{[^}]*\}/g;
const KNOWN_SLOTS = new Set(['{N}', '{M}', '{N:word}', '{N:times}']);

const every = (entry: Entry) => [...entry.spellings, ...(entry.rare ?? []), ...(entry.methods ?? [])];
const sameSlots = (spelling: string) => spellingKey(spelling).replace(SLOTS, '#');

describe('each entry', () => {
  test('the trade knows many stitches, and no name stands twice', () => {
    expect(lexicon.length).toBeGreaterThanOrEqual(232);
    expect(new Set(lexicon.map((entry) => entry.name)).size).toBe(lexicon.length);
    expect(entryNamed('no such stitch')).toBeUndefined();
  });

  for (const entry of lexicon) {
    test(entry.name, () => {
      expect(entryNamed(entry.name)).toBe(entry);
      expect(every(entry).length).toBeGreaterThan(0);
      for (const spelling of every(entry)) {
        expect(spelling).toBe(spelling.trim());
        expect(spelling).not.toBe('');
        for (const slot of spelling.match(SLOTS) ?? []) expect(KNOWN_SLOTS).toContain(slot);
      }
      const keys = every(entry).map(spellingKey);
      expect(keys.filter((key, i) => keys.indexOf(key) !== i)).toEqual([]);
      expect(entry.words.length).toBeGreaterThan(10);
      expect(entry.source).not.toBe('');
      for (const [spelling, numbers] of Object.entries(entry.literals ?? {})) {
        expect(every(entry)).toContain(spelling);
        expect(numbersFit(entry, numbers.N, numbers.M)).toBe(true);
      }
    });
  }

  test('a number of the formula has a slot or a value in every spelling that is read', () => {
    const wanting = lexicon.flatMap((entry) => {
      const formula = `${entry.takes} ${entry.makes}`;
      return entry.spellings
        .filter((spelling) => !entry.bareMeansAll && entry.literals?.[spelling] === undefined)
        .filter(
          (spelling) =>
            (formula.includes('M') && !spelling.includes('{M')) ||
            (formula.includes('N') && !spelling.includes('{N') && !numbersFit(entry)),
        )
        .map((spelling) => `${entry.name}: ${spelling}`);
    });
    expect(wanting).toEqual([]);
  });
});

describe('no two stitches share a spelling unless the draft decides', () => {
  const owners = new Map<string, Set<string>>();
  for (const entry of lexicon) {
    for (const spelling of entry.spellings) {
      const key = sameSlots(spelling);
      owners.set(key, (owners.get(key) ?? new Set()).add(entry.name));
    }
  }
  test('spelled alike', () => {
    const shared = [...owners].filter(([key, names]) => names.size > 1 && ambiguityOf(key.replace('#', '{N}')) === undefined);
    expect(shared.map(([key, names]) => `${key}: ${[...names].join(', ')}`)).toEqual([]);
  });

  // "C4F" is spelled out and also fits C{N}F. Both must count alike, or the name must be one of the ambiguous ones.
  test('one spelled out, the other with a slot', () => {
    const families = lexicon.flatMap((entry) =>
      entry.spellings
        .filter((spelling) => spelling.includes('{N}') || spelling.includes('{M}'))
        .map((spelling) => {
          const source = spellingKey(spelling)
            .replace(/[.*+?^$()|[\]\\]/g, '\\$&')
            .split(/(\{[^}]*\})/)
            .map((part) => (part === '{N}' ? '(?<N>\\d+)' : part === '{M}' ? '(?<M>\\d+)' : part.startsWith('{') ? '(?!)' : part));
          const seen = new Set<string>();
          const once = source.map((part) => {
            const name = /^\(\?<([NM])>/.exec(part)?.[1];
            if (name === undefined) return part;
            if (seen.has(name)) return `\\k<${name}>`;
            seen.add(name);
            return part;
          });
          return { entry, pattern: new RegExp(`^${once.join('')}$`) };
        }),
    );
    const clashes: string[] = [];
    let met = 0;
    for (const entry of lexicon) {
      for (const spelling of entry.spellings.filter((one) => !one.includes('{'))) {
        for (const { entry: family, pattern } of families) {
          const found = pattern.exec(spellingKey(spelling));
          if (!found || family === entry) continue;
          met += 1;
          const N = found.groups?.N === undefined ? undefined : Number(found.groups.N);
          const M = found.groups?.M === undefined ? undefined : Number(found.groups.M);
          if (!numbersFit(family, N, M)) continue;
          const a = stitchUse(family, N, M);
          const b = stitchUse(entry, entry.literals?.[spelling]?.N, entry.literals?.[spelling]?.M);
          if ((a.takes !== b.takes || a.makes !== b.makes) && ambiguityOf(spelling) === undefined)
            clashes.push(`${spelling}: ${entry.name} ${b.takes} → ${b.makes}, ${family.name} ${a.takes} → ${a.makes}`);
        }
      }
    }
    expect(clashes).toEqual([]);
    expect(met).toBeGreaterThan(50);
  });

  test('common words and single letters wait for a definition', () => {
    const read = new Set(lexicon.flatMap((entry) => entry.spellings.map(spellingKey)));
    const waiting = ['n', 'o', 'B', 'Bo', 'T', 'over', 'seam', 'turn {N}', 'widen', 'narrow', 'join', 'skip', 'edge st', 'long st'];
    for (const word of waiting) expect(read.has(spellingKey(word)), word).toBe(false);
    expect([...read].filter((word) => /^[a-z]$/.test(word)).sort()).toEqual(['k', 'p']);
    expect(read.has('make one')).toBe(true);
  });
});

describe('mirrors and tools', () => {
  for (const entry of lexicon.filter((one) => one.mirror !== undefined)) {
    test(`${entry.name} mirrors ${entry.mirror}`, () => {
      const other = entryNamed(entry.mirror ?? '');
      expect(other?.mirror).toBe(entry.name);
      expect([other?.takes, other?.makes]).toEqual([entry.takes, entry.makes]);
      if (entry.lean === 'left' || entry.lean === 'right') expect(other?.lean).toBe(entry.lean === 'left' ? 'right' : 'left');
    });
  }
  test('tools have one name each', () => {
    expect(new Set(lexicon.flatMap((entry) => entry.needs ?? []))).toEqual(new Set(TOOLS));
  });
  test('what holds stitches aside needs a cable needle', () => {
    for (const entry of lexicon.filter((one) => /cn[FBS]/.test(one.moves))) expect(entry.needs, entry.name).toContain('cable needle');
  });
});

describe('names with several readings', () => {
  test('every reading is in the lexicon and its numbers are possible', () => {
    for (const { spellings, readings } of ambiguousNames) {
      expect(readings.length, spellings[0]).toBeGreaterThan(1);
      for (const reading of readings) {
        const entry = entryNamed(reading.name);
        if (entry === undefined) throw new Error(`${spellings[0]}: ${reading.name}`);
        const n = reading.n === undefined ? undefined : fill(reading.n, 2, 2);
        const m = reading.m === undefined ? undefined : fill(reading.m, 2, 2);
        expect(numbersFit(entry, n, m), `${spellings[0]}: ${reading.name}`).toBe(true);
        for (const next of reading.followedBy ?? []) expect(entryNamed(next.name), next.name).toBeDefined();
        for (const condition of reading.when ?? []) {
          if (condition.kind === 'undoneBy') expect(entryNamed(condition.entry)).toBeDefined();
        }
      }
      // Something must be left to take when no condition holds.
      expect(
        readings.some((reading) => reading.when === undefined),
        spellings[0],
      ).toBe(true);
    }
  });

  test('no spelling stands in two of them', () => {
    const keys = ambiguousNames.flatMap(({ spellings }) => spellings.map(spellingKey));
    expect(keys.filter((key, i) => keys.indexOf(key) !== i)).toEqual([]);
  });

  test('where the level is null the readings count alike', () => {
    const count = (name: string, n: number | undefined, m: number | undefined) => {
      const entry = entryNamed(name);
      return entry ? [stitchUse(entry, n, m).takes, stitchUse(entry, n, m).makes] : [];
    };
    for (const { spellings, readings, undecided } of ambiguousNames) {
      // The loops of "yo twice" are settled by the row that drops them.
      if (undecided !== null || readings.some((reading) => reading.followedBy !== undefined)) continue;
      const counts = readings.map((reading) =>
        count(
          reading.name,
          reading.n === undefined ? undefined : fill(reading.n, 4, 4),
          reading.m === undefined ? undefined : fill(reading.m, 4, 4),
        ),
      );
      expect(new Set(counts.map(String)).size, spellings[0]).toBe(1);
    }
  });

  test('the order of likelihood', () => {
    expect(readingsOf('inc 1').map((reading) => reading.name)).toEqual(['kfb', 'M1']);
    expect(readingsOf('INC 1').map((reading) => reading.name)).toEqual(['kfb', 'M1']);
    expect(readingsOf('inc 3')).toMatchObject([{ name: 'inc (unspecified)', n: 3, netOnly: true }, { name: 'kfb', times: 3 }, { n: 4 }]);
    expect(readingsOf('inc {N}')).toMatchObject([{ n: 'N' }, { times: 'N' }, { n: 'N+1' }]);
    expect(readingsOf('C3F')).toMatchObject([
      { name: 'N/M LC', n: 2, m: 1 },
      { name: 'N/M LC', n: 1, m: 2 },
    ]);
    expect(readingsOf('LLI').map((reading) => reading.name)).toEqual(['LLI', 'k1 and LLI']);
    expect(readingsOf('k2b').map((reading) => reading.name)).toEqual(['k tbl', 'k1b', 'k2tog tbl']);
    expect(readingsOf('k2tog')).toEqual([]);
    expect(readingsOf('yfwd').at(-2)?.name).toBe('yfwd');
  });
});
