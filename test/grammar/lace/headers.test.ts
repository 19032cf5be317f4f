/**
 * What a stitch pattern needs: a multiple and what stands over, odd or even, a panel.
 */
import { describe, expect, test } from 'vitest';
import { read } from '../outline.ts';

const sizes = ['S', 'M', 'L'];

const rows: Readonly<Record<string, readonly (readonly [string, string])[]>> = {
  'multiples, parities, panels': [
    ['Multiple of 8 + 3 sts', 'declare multiple 8+3'],
    ['Multiple of 8 sts + 3.', 'declare multiple 8+3'],
    ['mult of 8 sts plus 3', 'declare multiple 8+3'],
    ['(multiple of 8 sts + 3)', 'declare multiple 8+3'],
    ['Worked over a multiple of 8 sts + 3 + 2 edge sts.', 'declare multiple 8+5'],
    ['Multiple of 8 sts + 3, plus 2 edge sts', 'declare multiple 8+5'],
    ['number of sts divisible by 8, plus 3', 'declare multiple 8+3'],
    ['Any odd number of sts.', 'declare multiple 2+1'],
    ['Worked over an odd number of sts', 'declare multiple 2+1'],
    ['even number of sts', 'declare multiple 2+0'],
    ['An even number of stitches.', 'declare multiple 2+0'],
    ['any number of sts', 'declare multiple 1+0'],
    ['Panel of 13 sts', 'declare panel 0+13'],
    ['Panel of 13 sts and 24 rows.', 'declare panel 0+13'],
    ['worked over 13 sts and 24 rows', 'declare panel 0+13'],
    ['13-st panel', 'declare panel 0+13'],
    ["Over 13 sts, inc'd to 15", 'declare panel 0+13'],
    ['(patt rep = 12 sts and 16 rows)', 'declare multiple repeat 12+0'],
    ['Patt rep = 12 sts and 16 rows', 'declare multiple repeat 12+0'],
    ['a rep of 6 sts', 'declare multiple repeat 6+0'],
    ['A repeat of 6 sts and 8 rows.', 'declare multiple repeat 6+0'],
    ['Cast on a multiple of 6 sts + 1.', 'declare multiple 6+1'],
    ['Stitch count is a multiple of 6 plus 1.', 'declare multiple 6+1'],
    ['Requires a multiple of 10 sts plus 1.', 'declare multiple 10+1'],
    ['Pattern is a multiple of 10 sts + 1 and 8 rows.', 'declare multiple 10+1'],
    ['Any number of sts divisible by 4.', 'declare multiple 4+0'],
    ['Worked in the round over a multiple of 6 sts.', 'declare multiple 6+0'],
    ['Cable panel (over 12 sts)', 'declare panel Cable panel 0+12'],
    ['(panel of 12 sts; 8 rows)', 'declare panel 0+12'],
    ['Multiple of 12.', 'declare multiple 12+0'],
    ['Worked over a multiple of 6 sts plus 5.', 'declare multiple 6+5'],
    ['This pattern is worked over a multiple of 4 sts + 2.', 'declare multiple 4+2'],
    ['Mult. of 10 sts + 1.', 'declare multiple 10+1'],
    ['Multiple of 9 sts and 12 rows.', 'declare multiple 9+0'],
    ['Multiple of 5 + 2, plus 2 edge sts.', 'declare multiple 5+4'],
    ['Lace pattern (multiple of 12 + 1)', 'declare multiple Lace pattern 12+1'],
    ['Trellis (mult of 6 sts + 2; 8 rows)', 'declare multiple Trellis 6+2'],
    ['Number of sts must be a multiple of 3.', 'declare multiple 3+0'],
    ['Over an even number of sts', 'declare multiple 2+0'],
    ['Worked flat over an odd number of stitches.', 'declare multiple 2+1'],
    ['Cast on an odd number of sts.', 'declare multiple 2+1'],
    ['CO a multiple of 8 sts plus 1.', 'declare multiple 8+1'],
    ['Any multiple of 4 sts.', 'declare multiple 4+0'],
    ['Panel of 21 sts.', 'declare panel 0+21'],
    ['Worked over a panel of 9 sts.', 'declare panel 0+9'],
    ['15-stitch panel', 'declare panel 0+15'],
    ['12 st panel', 'declare panel 0+12'],
    ['Cable panel over 16 sts', 'declare panel 0+16'],
    ['Pattern repeat: 14 sts and 20 rows.', 'declare multiple repeat 14+0'],
    ['Rep of 10 sts and 8 rows.', 'declare multiple repeat 10+0'],
    ['10-st rep, 12 rows', 'declare multiple repeat 10+0'],
  ],
};

describe('Headers of stitch patterns', () => {
  for (const [family, table] of Object.entries(rows)) {
    describe(family, () => {
      test.each(table)('%s', (text, expected) => {
        expect(read(text, { sizes })).toBe(expected);
      });
    });
  }
});
