/**
 * Every spelling of the lexicon, with numbers in its slots, is read inside a row as the stitch it names. What the phrases
 * of the grammar read themselves must come out as the right kind of step with the right count.
 */
import { describe, expect, test } from 'vitest';
import { readingsOf } from '../../../grammar/lexicon/ambiguous.ts';
import type { Entry } from '../../../grammar/lexicon/entry.ts';
import { entryNamed, lexicon } from '../../../grammar/lexicon/index.ts';
import { stitchUse } from '../../../grammar/lexicon/use.ts';
import { readPassage } from '../../../grammar/read.ts';
import type { Step } from '../../../grammar/tree.ts';
import { vocabularyOf } from '../../../grammar/vocabulary.ts';
import { outline } from '../outline.ts';

/** Spellings that a row cannot hold by themselves, and why. */
const notInARow: Readonly<Record<string, string>> = {
  'inc 1 each end': 'an order over the row, read where it stands as a sentence',
  'inc 1 at each end': 'an order over the row, read where it stands as a sentence',
  'inc 1 at beg and end': 'an order over the row, read where it stands as a sentence',
  'dec 1 each end': 'an order over the row, read where it stands as a sentence',
  'dec 1 at each end': 'an order over the row, read where it stands as a sentence',
  'insert RN between {N}th and next st, draw loop, k tog with first st': 'told step by step; the name of it is read',
  'I-cord: k{N}, slide': 'two steps, and read as two',
  'sl {N} sts back, k{N}': 'two steps, and read as two',
  'CO {N}, BO {M}, return': 'three steps, and read as three',
  'BO {N}, return st, CO {M}, BO {M}': 'told step by step',
  'BO {N}, next row CO {N} (buttonhole)': 'speaks of two rows',
  'buttonhole over {N} sts': 'says nothing of how',
  'buttonhole: yo, k2tog': 'two steps, and read as two',
  'two-needle toe CO {N} each': 'a start on two needles, before any row',
  'turn, cable CO {N}, turn': 'three steps, and read as three',
  'k2tog, return st, rep': 'told step by step; the name of it is read',
  'Japanese short row turn': 'the turn is read, the method is not',
  'lift strand and k tog with next st': 'told step by step; the name of it is read',
  'k yo tog with next st': 'told step by step; the name of it is read',
  'turn, yo': 'a turn and what follows it, read as two steps',
  'turn, byo': 'a turn and what follows it, read as two steps',
  'yo after turn (short row)': 'a turn and what follows it, read as two steps',
  'make yo at turn': 'a turn and what follows it, read as two steps',
  'turn and make double stitch': 'a turn and what follows it, read as two steps',
  'set aside {N} sts': 'names no holder',
  'return {N} sts to needle': 'inside a row it gives stitches back; held ones come back between rows',
  'stretchy BO (k2tog)': 'a bind-off and the way of it',
  'c.o. {N}': 'the same letters for casting on and for casting off: British',
  'CO off {N}': 'a slip of the pen between the two words',
  'break yarn and draw through': 'two steps, and read as two',
  'cut yarn and pull through last st': 'two steps, and read as two',
};

/** Steps that stand for an entry where the phrases read it themselves. */
const byKind: Partial<Record<Entry['kind'], readonly Step['type'][]>> = {
  castOn: ['castOn', 'pickUp'],
  bindOff: ['bindOff', 'join'],
  marker: ['marker'],
  shortRow: ['turn', 'resolve', 'work', 'change'],
};
const byName: Readonly<Record<string, readonly Step['type'][]>> = {
  psso: ['pullOver'],
  p2sso: ['pullOver'],
  'take from holder': ['takeUp'],
  'join in rnd': ['join'],
  graft: ['join'],
  hold: ['hold', 'turn'],
  'buttonhole (BO)': ['bindOff'],
  'inc (unspecified)': ['evenly'],
  'work sts as they appear': ['repeat'],
};

const vocabulary = vocabularyOf({});

function filled(spelling: string, entry: Entry): { text: string; n: number; m: number } {
  const n = entry.numbers?.N?.parity === 'even' ? 6 : entry.numbers?.N?.parity === 'odd' ? 5 : 4;
  const words = ['zero', 'one', 'two', 'three', 'four', 'five', 'six'];
  const text = spelling
    .replace(/\{N:times\}/g, `${n} times`)
    .replace(/\{N:word\}/g, words[n] ?? '')
    .replace(/\{N\}/g, String(n))
    .replace(/\{M\}/g, '3');
  const literal = entry.literals?.[spelling];
  return { text, n: literal?.N ?? (spelling.includes('{N') ? n : 1), m: literal?.M ?? (spelling.includes('{M') ? 3 : 1) };
}

/** Stitches a list of steps makes when it is worked once. */
function makes(steps: readonly Step[]): number {
  return steps.reduce((sum, step) => {
    if (step.type === 'repeat')
      return sum + makes(step.children) * (step.extent?.kind === 'times' ? (step.extent.count.values[0] ?? 1) : 1);
    if (step.type !== 'work') return Number.NaN;
    const entry = entryNamed(step.stitch);
    return (
      sum + (entry === undefined ? Number.NaN : stitchUse(entry, step.n?.values[0] ?? 1, step.m ?? 1).makes * (step.times?.values[0] ?? 1))
    );
  }, 0);
}

function names(step: Extract<Step, { type: 'work' }>, entry: Entry, text: string, n: number, m: number): boolean {
  const got = entryNamed(step.stitch);
  if (got === undefined) return false;
  const count = step.n?.values[0] ?? undefined;
  if (got === entry) return step.n === null || count === n || readingsOf(text).length > 0;
  if (readingsOf(text).some((reading) => reading.name === got.name) && readingsOf(text).some((reading) => reading.name === entry.name))
    return true;
  if (readingsOf(text)[0] !== undefined && step.readings?.some((reading) => reading.stitch === readingsOf(text)[0]?.name)) return true;
  const member =
    entry.memberOf?.some((family) => family.family === got.name && family.N === (count ?? 1)) ||
    got.memberOf?.some((family) => family.family === entry.name);
  if (member) return true;
  // Two families that spell one stitch alike: "4/4 LC" and "8-st LC".
  const a = stitchUse(got, count ?? 1, step.m ?? 1);
  const b = stitchUse(entry, n, m);
  return a.takes === b.takes && a.makes === b.makes && got.face === entry.face && got.lean === entry.lean;
}

function problem(spelling: string, entry: Entry): string | null {
  const { text, n, m } = filled(spelling, entry);
  const statements = readPassage(`Row 1: k2, ${text}, k2.`, 0, { vocabulary, sizes: ['one'] });
  const told = statements.map(outline).join(' | ');
  // What turns ends the row: what follows it stands in a row of its own.
  const steps = statements
    .flatMap((statement) => (statement.type === 'row' ? statement.children : [statement as Step]))
    .filter((step) => step.type !== 'remark');
  const [first, step, last] = steps;
  if (steps.length !== 3 || first === undefined || step === undefined || last === undefined) return told;
  if (outline(first) !== 'k{2}' || outline(last) !== 'k{2}') return told;
  if ((byKind[entry.kind] ?? []).includes(step.type) && step.type !== 'work') return null;
  if ((byName[entry.name] ?? []).includes(step.type)) return null;
  if (step.type === 'work') return names(step, entry, text, n, m) ? null : told;
  const { takes, makes: made } = stitchUse(entry, n, m);
  if (step.type === 'repeat') {
    if (step.extent?.kind === 'over') return takes === made && step.extent.count.values[0] === takes ? null : told;
    return step.extent === null || step.extent.kind === 'times' ? (makes([step]) === made ? null : told) : told;
  }
  if (step.type === 'intoOne') {
    if (step.into === 'doubleYarnOver') return (step.dropping ? 1 : makes(step.children)) === made ? null : told;
    return (step.takes?.values[0] ?? 1) === takes && makes(step.children) === made ? null : told;
  }
  return told;
}

describe('every spelling is read as its stitch', () => {
  for (const entry of lexicon) {
    test(entry.name, () => {
      const problems = entry.spellings
        .filter((spelling) => !(spelling in notInARow))
        .flatMap((spelling) => {
          const found = problem(spelling, entry);
          return found === null ? [] : [`${filled(spelling, entry).text} => ${found}`];
        });
      expect(problems).toEqual([]);
    });
  }

  test('what a row cannot hold is still in the lexicon, and still cannot', () => {
    const spellings = new Map(lexicon.flatMap((entry) => entry.spellings.map((spelling) => [spelling, entry] as const)));
    for (const spelling of Object.keys(notInARow)) {
      const entry = spellings.get(spelling);
      expect(entry, spelling).toBeDefined();
      if (entry !== undefined) expect(problem(spelling, entry), spelling).not.toBe(null);
    }
  });

  test('nothing between two stitches is dropped without a word', () => {
    const lost = lexicon.flatMap((entry) =>
      entry.spellings.flatMap((spelling) => {
        const { text } = filled(spelling, entry);
        const steps = readPassage(`Row 1: k2, ${text}, k2.`, 0, { vocabulary, sizes: ['one'] }).flatMap((statement) =>
          statement.type === 'row' ? [...statement.children, ...statement.stated] : [statement as Step],
        );
        return steps.filter((step) => step.type !== 'remark').length < 3 ? [text] : [];
      }),
    );
    expect(lost).toEqual([]);
  });
});
