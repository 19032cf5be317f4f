import { describe, expect, test } from 'vitest';
import { inType, words } from './reading.ts';

describe('bold and italic type', () => {
  test.each([
    [
      '**Row 1 (RS):** K2, *yo, k2tog; rep from * to last 2 sts, k2.',
      ['Row 1 (RS):'],
      'Row 1 (RS): K2, *yo, k2tog; rep from * to last 2 sts, k2.',
    ],
    ['**Row 1** (RS): *K2, p2; rep from * to end.', ['Row 1'], 'Row 1 (RS): *K2, p2; rep from * to end.'],
    ['**Row 1**: K2', ['Row 1'], 'Row 1 : K2'],
    ['**Rnd 4.** *P2, k2. Rep from * to end.', ['Rnd 4.'], 'Rnd 4. *P2, k2. Rep from * to end.'],
    ['**Row 1:**K2, **yo, k2tog; rep from ** to end.', ['Row 1:'], 'Row 1: K2, **yo, k2tog; rep from ** to end.'],
    ['__Row 1:__ K2', ['Row 1:'], 'Row 1: K2'],
    ['_Row 1:_ K2, *p2; rep from * to end', ['Row 1:'], 'Row 1: K2, *p2; rep from * to end'],
    ['*Row 1:* K2, *p2; rep from * to end', ['Row 1:'], 'Row 1: K2, *p2; rep from * to end'],
    ['*Row 1*: K2, *p2; rep from * to end', ['Row 1'], 'Row 1 : K2, *p2; rep from * to end'],
    ['***Row 1:*** K2', ['Row 1:'], 'Row 1: K2'],
    ['*Orrin Light Press, Leaf No. 8*', ['Orrin Light Press, Leaf No. 8'], 'Orrin Light Press, Leaf No. 8'],
    [
      '*Repeat these rows until the piece is long enough.*',
      ['Repeat these rows until the piece is long enough.'],
      'Repeat these rows until the piece is long enough.',
    ],
    ['From the *Small Boats* sheets.', ['Small Boats'], 'From the Small Boats sheets.'],
    ['**Rows 1, 3 and 5:** Knit.', ['Rows 1, 3 and 5:'], 'Rows 1, 3 and 5: Knit.'],
    ['K2, **p2**, k2 (**80** sts)', ['p2', '80'], 'K2, p2 , k2 ( 80 sts)'],
    ['**Row 1:** K2. **Row 2:** P2.', ['Row 1:', 'Row 2:'], 'Row 1: K2. Row 2: P2.'],
    ['1. Kfb, k to end. *4 sts*', ['4 sts'], 'Kfb, k to end. 4 sts'],
    ['*K2, p2; rep from * to end. *62 (68) sts*', ['62 (68) sts'], '*K2, p2; rep from * to end. 62 (68) sts'],
    ['## **Back**', ['Back'], 'Back'],
    ['- **Yarn:** 2 skeins', ['Yarn:'], 'Yarn: 2 skeins'],
  ])('%j', (source, type, text) => {
    expect(inType(source)).toEqual(type);
    expect(words(source)).toBe(text);
  });

  test('stars of a repeat are not type, even where the shape would allow it', () => {
    expect(inType('K1, *yo, knit*, p1; rep to end')).toEqual([]);
    expect(inType('*K2, p2*; work from * to end')).toEqual([]);
    expect(inType('K1, *yo* 3 times')).toEqual([]);
  });

  test('where a draft points to a double star, sentences between such stars are marked, labels are still type', () => {
    const draft = '**Cast on 80 sts. Work 4 rows in rib.**\n\n**Next row:** Knit.\n\nWork as Back from ** to **.';
    expect(inType(draft)).toEqual(['Next row:']);
  });

  test('a bold sentence is type where nothing points to it', () => {
    expect(inType('Now **turn, and count.**\n\nRow 2: P2')).toEqual(['turn, and count.']);
  });
});
