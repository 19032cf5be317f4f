// biome-ignore-all lint/suspicious/noThenProperty: a number of stitches, never a promise
/** A draft's own definitions, worked out move by move and held against the lexicon. */
import { describe, expect, test } from 'vitest';
import { readDefinition } from '../../grammar/definition.ts';
import { carryOut } from '../../grammar/hands.ts';
import { ambiguityOf } from '../../grammar/lexicon/ambiguous.ts';
import { lexicon } from '../../grammar/lexicon/index.ts';
import { numbersFit, stitchUse } from '../../grammar/lexicon/use.ts';
import { vocabularyOf } from '../../grammar/vocabulary.ts';

const vocabulary = vocabularyOf({});
const define = (term: string, meaning: string) => readDefinition(term, meaning, vocabulary);

describe('what a definition takes and makes', () => {
  test.each([
    // decreases
    ['k2tog', 'knit 2 together', 2, 1, 'decrease'],
    ['k2tog', 'knit the next two stitches together', 2, 1, 'decrease'],
    ['p2tog', 'Purl 2 stitches together (1 st decreased).', 2, 1, 'decrease'],
    ['k2tog tbl', 'knit 2 sts together through the back loops', 2, 1, 'decrease'],
    ['p3tog', 'purl three together', 3, 1, 'doubleDecrease'],
    ['k3tog', 'knit 3 stitches together as one', 3, 1, 'doubleDecrease'],
    ['skp', 'slip 1, knit 1, pass slipped stitch over', 2, 1, 'decrease'],
    ['skp', 'slip next st knitwise, k1, pass the slipped st over the knit st', 2, 1, 'decrease'],
    ['ssk', 'slip 2 sts knitwise one at a time, knit them together through the back loops', 2, 1, 'decrease'],
    [
      'ssk',
      'slip next two stitches knitwise, one at a time, insert left needle into fronts of these 2 sts and knit them together',
      2,
      1,
      'decrease',
    ],
    ['ssk', 'sl 1 kwise, sl 1 kwise, return both sts to left needle and k2tog tbl', 2, 1, 'decrease'],
    ['ssp', 'slip 2 sts knitwise one at a time, return them to left needle, p2tog tbl', 2, 1, 'decrease'],
    ['sssk', 'slip 3 sts knitwise one at a time, k these 3 sts tog tbl', 3, 1, 'doubleDecrease'],
    ['sk2p', 'sl 1 knitwise, k2tog, pass slipped st over', 3, 1, 'doubleDecrease'],
    ['s2kp', 'slip 2 sts together knitwise, k1, pass 2 slipped sts over', 3, 1, 'doubleDecrease'],
    ['cdd', 'slip 2 together as if to k2tog, k1, pass the slipped stitches over', 3, 1, 'doubleDecrease'],
    ['rdd', 'ssk, return st to left needle, pass next st over, slip st back to right needle', 3, 1, 'doubleDecrease'],
    ['dd', 'k2tog, return st to left needle, pass next st over it', 3, 1, 'doubleDecrease'],
    ['sl1k2psso', 'slip 1, k2, pass slipped st over the 2 knit sts', 3, 2, 'decrease'],
    // increases
    ['kfb', 'knit into front and back of st', 1, 2, 'increase'],
    ['kfb', 'knit into the front and then the back of the next stitch', 1, 2, 'increase'],
    ['kfb', 'knit into next st, leave it on the needle, then knit into the back of same st', 1, 2, 'increase'],
    ['pfb', 'purl into the front and back of next st', 1, 2, 'increase'],
    ['kfbf', 'knit into the front, back and front of next st', 1, 3, 'increase'],
    ['inc', 'knit twice into next st', 1, 2, 'increase'],
    ['m1', 'make 1 by lifting the strand between needles and knitting it through the back loop', 0, 1, 'increase'],
    ['m1l', 'lift the bar before the next st from front to back and knit into the back of it', 0, 1, 'increase'],
    ['m1r', 'pick up the strand between the sts from back to front, knit through the front loop', 0, 1, 'increase'],
    ['m1p', 'pick up the bar between the needles and purl it tbl', 0, 1, 'increase'],
    ['m1', 'make a backward loop on right needle', 0, 1, 'increase'],
    ['lli', 'lift left leg of st below last st on right needle onto left needle, knit it', 0, 1, 'increase'],
    ['kyok', '(k1, yo, k1) all in next st', 1, 3, 'increase'],
    ['kyok', 'k1, yo, k1 all into next st', 1, 3, 'increase'],
    ['inc4', '[k1, p1, k1, p1, k1] in next st', 1, 5, 'increase'],
    ['inc4', '(k1, yo) twice, k1 into the same st', 1, 5, 'increase'],
    ['nupp7', '(k1, yo, k1, yo, k1, yo, k1) in next st', 1, 7, 'increase'],
    // yarn overs and slips
    ['yo', 'yarn over', 0, 1, 'yarnOver'],
    ['yo', 'bring yarn to front and over right needle', 0, 1, 'yarnOver'],
    ['yfwd', 'yarn forward', 0, 1, 'yarnOver'],
    ['sl1f', 'slip 1 st purlwise with yarn in front', 1, 1, 'slip'],
    ['kb1', 'knit 1 through the back loop', 1, 1, 'plain'],
    // bobbles, knots, twists
    ['MB', '(k1, p1, k1, p1, k1) into next st, turn, p5, turn, k5, pass 2nd, 3rd, 4th and 5th sts over first', 1, 1, 'other'],
    ['MB', '(k1, yo, k1) in next st, turn, p3, turn, sl 1, k2tog, psso', 1, 1, 'other'],
    ['MB', 'Make bobble: (k1, yo, k1, yo, k1) all in next st, turn, p5, turn, k5tog', 1, 1, 'other'],
    ['RT', 'k2tog but leave sts on left needle, then k first st again, slip both sts off needle', 2, 2, 'other'],
    ['LT', 'knit into back of second st on left needle, then knit first st, slip both sts off needle together', 2, 2, 'twist'],
    ['cl', 'yo, k2, pass yo over the 2 k sts', 2, 2, 'other'],
    ['bind 3', 'sl 1, k1, yo, k1, pass slipped st over', 3, 3, 'other'],
  ] as const)('%s: %s', (term, meaning, takes, makes, kind) => {
    const found = define(term, meaning);
    expect([found?.entry.takes, found?.entry.makes, found?.entry.kind, found?.certain]).toEqual([takes, makes, kind, true]);
  });
});

describe('cables give their width and sides', () => {
  test.each([
    ['C6F', 'slip next 3 sts to cn and hold in front, k3, k3 from cn', { slipped: 3, hold: 'front', then: 3, from: 3 }, 'left'],
    ['C6B', 'slip 3 sts to cn and hold at back, k3, k3 from cn', { slipped: 3, hold: 'back', then: 3, from: 3 }, 'right'],
    [
      'C4F',
      'Slip next 2 stitches onto cable needle and hold at front of work, knit 2, then knit 2 from cable needle.',
      { slipped: 2, hold: 'front', then: 2, from: 2 },
      'left',
    ],
    ['T3B', 'sl next st to cn, hold in back, k2, p1 from cn', { slipped: 1, hold: 'back', then: 2, from: 1 }, 'right'],
    [
      'T3F',
      'slip next 2 sts onto cable needle and hold at front of work, purl next st from left-hand needle, then knit sts from cable needle',
      { slipped: 2, hold: 'front', then: 1, from: 2 },
      'left',
    ],
    ['1/1 LC', 'sl 1 st to cn and hold in front, k1 tbl, k1 tbl from cn', { slipped: 1, hold: 'front', then: 1, from: 1 }, 'left'],
    ['C3F', 'slip 2 sts to cn, hold to front, p1, k2 from cn', { slipped: 2, hold: 'front', then: 1, from: 2 }, 'left'],
    ['T2B', 'cross 2 right: sl 1 to cn at back, k1, p1 from cn', { slipped: 1, hold: 'back', then: 1, from: 1 }, 'right'],
  ] as const)('%s: %s', (term, meaning, cable, lean) => {
    const found = define(term, meaning);
    expect(found?.cable).toEqual(cable);
    expect(found?.entry.lean).toBe(lean);
    expect([found?.entry.takes, found?.entry.makes]).toEqual([cable.slipped + cable.then, cable.slipped + cable.then]);
    expect(found?.certain).toBe(true);
  });

  test('three strands cross on two cable needles', () => {
    const found = define('2/1/2 LPC', 'slip 2 to cn1, hold in front, slip 1 to cn2, hold in back, k2, p1 from cn2, k2 from cn1');
    expect([found?.entry.takes, found?.entry.makes]).toEqual([5, 5]);
  });

  test('fewer stitches off the cable needle than went on it are not certain', () => {
    expect(define('C6F', 'slip 3 to cn and hold in front, k3, k2 from cn')).toMatchObject({
      certain: false,
      cable: { slipped: 3, from: 2 },
    });
  });

  test('a side against the name is an override that a rule can see', () => {
    expect(define('C6F', 'slip next 3 sts to cn and hold at back, k3, k3 from cn')).toMatchObject({
      overrides: true,
      cable: { hold: 'back' },
    });
    expect(define('C6F', 'slip next 3 sts to cn and hold in front, k3, k3 from cn')?.overrides).toBe(false);
  });
});

describe('what the definition says of itself', () => {
  test.each([
    ['sk2p', 'sl 1 knitwise, k2tog, pass slipped st over (2 sts decreased)', -2],
    ['cdd', "sl 2 tog kwise, k1, p2sso (2 sts dec'd)", -2],
    ['ssk', 'slip 2 sts knitwise one at a time, k them tog tbl. 1 st decreased', -1],
    ['kfb', 'knit into front and back of next st (1 stitch increased)', 1],
    ['kfb', 'knit into front and back of next st - inc 1 st', 1],
    ['p2tog', 'purl 2 together', null],
  ])('%s: %s', (term, meaning, net) => {
    expect(define(term, meaning)?.declaredNet).toBe(net);
  });

  test('a stated net is not believed but kept apart', () => {
    const found = define('sk2p', 'sl 1, k2tog, psso (1 st decreased)');
    expect([found?.entry.takes, found?.entry.makes, found?.declaredNet]).toEqual([3, 1, -1]);
  });
});

describe('what is not understood gives no stitch', () => {
  test.each([
    ['RS', 'right side'],
    ['st(s)', 'stitch(es)'],
    ['rep', 'repeat'],
    ['tbl', 'through the back loop'],
    ['patt', 'pattern'],
    ['pm', 'place marker'],
    ['cont', 'continue'],
    ['wib', 'wibble the yarn'],
    ['odd', 'knit 1, do something odd, knit 1'],
    ['lost', 'slip 3 sts to cn and hold in front, k3'],
    ['psso', 'pass slipped stitch over'],
    ['over', 'k1, pass slipped st over'],
    ['C6F', ''],
    ['x', 'k'.repeat(900)],
    ['MC', 'main colour'],
    ['foll', 'following'],
    ['alt', 'alternate'],
    ['inc', 'increase'],
    ['dec', 'decrease'],
    ['kept', 'knit into the front of next st and leave it on the needle'],
  ])('%s: %s', (term, meaning) => {
    const found = define(term, meaning);
    expect(found).toBeNull();
  });
});

describe('the lexicon defines itself', () => {
  test("each entry's own moves give its own count", () => {
    const wrong = lexicon.flatMap((entry) => {
      const n = entry.numbers?.N?.parity === 'even' ? 6 : entry.numbers?.N?.parity === 'odd' ? 5 : 4;
      if (
        !numbersFit(entry, n, 3) ||
        [
          'psso',
          'p2sso',
          'pyo',
          'pnso',
          'ret',
          'work from cn',
          'sl to cn',
          'fasten off',
          'turn',
          'w&t',
          '3-needle BO',
          'k2tog BO',
          'i-cord BO',
        ].includes(entry.name)
      )
        return [];
      const hands = carryOut(entry.moves, n, 3);
      const use = stitchUse(entry, n, 3);
      return hands !== null && (hands.takes !== use.takes || hands.makes !== use.makes)
        ? [`${entry.name}: ${hands.takes} → ${hands.makes}, not ${use.takes} → ${use.makes}`]
        : [];
    });
    expect(wrong).toEqual([]);
  });

  test('a spelling given as the definition is the stitch of that spelling', () => {
    const checked: string[] = [];
    const wrong = lexicon
      .filter((entry) => entry.kind !== 'shortRow')
      .flatMap((entry) =>
        entry.spellings
          .filter((spelling) => !spelling.includes('{') && spelling.length > 5 && ambiguityOf(spelling) === undefined)
          .flatMap((spelling) => {
            const found = define('xyz', spelling);
            if (found === null) return [];
            checked.push(spelling);
            const literal = entry.literals?.[spelling];
            const use = stitchUse(entry, literal?.N ?? 1, literal?.M ?? 1);
            return found.entry.takes === use.takes && found.entry.makes === use.makes
              ? []
              : [`${spelling}: ${found.entry.takes} → ${found.entry.makes}, not ${use.takes} → ${use.makes}`];
          }),
      );
    expect(wrong).toEqual([]);
    expect(checked.length).toBeGreaterThan(150);
  });
});
