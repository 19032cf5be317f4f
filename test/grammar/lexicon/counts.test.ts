import { describe, expect, test } from 'vitest';
import { entryNamed, lexicon } from '../../../grammar/lexicon/index.ts';
import { fill, numbersFit, stitchUse } from '../../../grammar/lexicon/use.ts';
import { carryOut } from './moves.ts';

/** Entries that begin with stitches already on the cable needle: so many as N says. */
const BEGINS_ON_CABLE_NEEDLE = new Set(['work from cn']);
/** Entries that leave stitches on the cable needle for the next words to work. */
const ENDS_ON_CABLE_NEEDLE = new Set(['sl to cn']);

/**
 * Moves that stand for more than the hands do, and why the count is right all the same. They are carried out like all
 * others; what cannot be shown on two needles is said here.
 */
const STANDS_FOR: Readonly<Record<string, string>> = {
  'patt N': 'the moves are those of the pattern set before; knits stand for stitches that keep their count',
  'work sts as they appear': 'knit or purl by the face seen; a knit stands for either',
  'dec (unspecified)': 'the way is open; k2tog stands for it',
  'dbl dec (unspecified)': 'the way is open; k3tog stands for it',
  'inc (unspecified)': 'the way is open; a loop of yarn stands for it',
  'yo short row': 'the loop is owed to its neighbour and counts nothing',
  'shadow wrap': 'the twin is a second leg, not a stitch',
  BO: 'the loop left over is given back, since it is counted with what follows',
  'buttonhole (BO)': 'two rows in one: what is bound off in the first is cast on in the second',
  '3-needle BO': 'the second needle is as long as the first and is not counted',
};

describe('takes and makes agree with the moves of the hands', () => {
  for (const entry of lexicon) {
    test(entry.name, () => {
      let tried = 0;
      for (let n = 1; n <= 6; n += 1) {
        for (let m = 1; m <= 6; m += 1) {
          if (!numbersFit(entry, n, m) || (entry.name === 'picot CO' && m >= n)) continue;
          tried += 1;
          const waiting = BEGINS_ON_CABLE_NEEDLE.has(entry.name) ? n : 0;
          const done = carryOut(entry.moves, n, m, waiting);
          const said = stitchUse(entry, n, m);
          expect({ n, m, takes: done.takes, makes: done.makes }).toEqual({ n, m, takes: said.takes, makes: said.makes });
          expect(done.onCableNeedle).toBe(ENDS_ON_CABLE_NEEDLE.has(entry.name) ? n : 0);
        }
      }
      expect(tried).toBeGreaterThan(0);
    });
  }

  test('what stands for more than the hands do is in the lexicon', () => {
    for (const name of Object.keys(STANDS_FOR)) expect(entryNamed(name), name).toBeDefined();
  });

  test('numbers outside the bounds of a family cannot be worked: the bounds are needed', () => {
    const outside = (name: string, n: number, m = 1) => carryOut(entryNamed(name)?.moves ?? '?', n, m);
    expect(() => outside('CNF', 5)).toThrow();
    expect(() => outside('CNF dec', 2)).toThrow();
    expect(() => outside('nupp (make)', 4)).toThrow();
    expect(() => outside('N/M LC dec', 2, 1)).toThrow();
    expect(() => outside('k2tog BO', 0)).toThrow();
  });
});

describe('the machine itself can be wrong', () => {
  test('a stitch kept and never let go', () => expect(() => carryOut('k+ yo', 1, 1)).toThrow('never let go'));
  test('a stitch let fall that was not worked', () => expect(() => carryOut('off(1)', 1, 1)).toThrow('not worked'));
  test('an unknown move', () => expect(() => carryOut('zz', 1, 1)).toThrow('no such move'));
  test('kfb as two stitches would be found out', () => expect(carryOut('k+ kb', 1, 1)).toMatchObject({ takes: 1, makes: 2 }));
});

describe('families and their members', () => {
  for (const entry of lexicon.filter((one) => one.memberOf)) {
    test(entry.name, () => {
      for (const { family, N, M } of entry.memberOf ?? []) {
        const parent = entryNamed(family);
        if (parent === undefined) throw new Error(`no family ${family}`);
        const { takes, makes } = stitchUse(parent, N, M);
        expect({ family, takes, makes }).toEqual({ family, ...(({ takes, makes }) => ({ takes, makes }))(stitchUse(entry)) });
        if (parent.kind === 'cable' && entry.lean) expect(parent.lean).toBe(entry.lean);
      }
    });
  }
});

// Which way a crossing goes can be seen from who lies on top: held in front, the held strand leans left over the rest.
describe('the lean of a crossing follows the needle it is held on', () => {
  const crossings = lexicon.filter(
    (entry) => (entry.kind === 'cable' || entry.kind === 'twist') && entry.lean && /cn[FB]/.test(entry.moves),
  );
  test('there are many', () => expect(crossings.length).toBeGreaterThan(40));
  for (const entry of crossings) {
    test(entry.name, () => {
      const held = /cn([FB])/.exec(entry.moves)?.[1];
      expect(entry.lean).toBe(held === 'F' ? 'left' : 'right');
      const n = entry.numbers?.N?.least ?? 2;
      const m = entry.numbers?.M?.least ?? 2;
      const places = carryOut(entry.moves, n, m).order.filter((place) => place !== null);
      expect([...places].sort((a, b) => a - b)).not.toEqual(places);
    });
  }
});

describe('formulas', () => {
  test('sums, products, signs', () => {
    expect(fill('2*N+M', 3, 4)).toBe(10);
    expect(fill('N+M-1', 3, 4)).toBe(6);
    expect(fill('-N', 3, 4)).toBe(-3);
    expect(fill(7, 3, 4)).toBe(7);
  });
  test.each(['', 'N+', 'N**2', 'K', '2N', 'N/2'])('%s cannot be read', (formula) => {
    expect(() => fill(formula, 2, 2)).toThrow(RangeError);
  });
  test('a bare name means one', () => {
    const k = entryNamed('k');
    if (k === undefined) throw new Error('no k');
    expect(stitchUse(k)).toMatchObject({ takes: 1, makes: 1 });
  });
});
