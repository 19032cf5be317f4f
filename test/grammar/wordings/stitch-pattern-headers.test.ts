/** What a stitch pattern says of its stitches before its first row. Wordings made up here; forms of the trade. */
import { expect, test } from 'vitest';
import { read } from '../outline.ts';

const sizes = ['one'];

/** The text, and the tree in one line. */
const rows: readonly (readonly [string, string])[] = [
  ['Lace (multiple of 8 sts + 3)', 'declare multiple Lace 8+3'],
  ['Lace Pattern (mult of 8 + 3 sts)', 'declare multiple Lace Pattern 8+3'],
  ['Anchor Cable (panel of 10 sts)', 'declare panel Anchor Cable 0+10'],
  ['Anchor Cable (worked over 10 sts and 8 rows)', 'declare panel Anchor Cable 0+10'],
  ['10-stitch panel on rev st st.', 'declare panel 0+10'],
  ['Multiple of 6 stitches, plus 5.', 'declare multiple 6+5'],
  ['Multiple of 6, plus 5 stitches.', 'declare multiple 6+5'],
  ['A multiple of 6 + 5', 'declare multiple 6+5'],
  ['Mult 6 + 5.', 'declare multiple 6+5'],
  ['Multiple of 6 sts plus 5 sts', 'declare multiple 6+5'],
  ['Multiple of 6 plus 3 plus 2 selvedge sts.', 'declare multiple 6+5'],
  ['Multiple of 6 sts + 3 sts + 2 edge sts; 12-row repeat.', 'declare multiple 6+5'],
  ['Number of stitches divisible by 6 plus 5', 'declare multiple 6+5'],
  ['Cast on a number of stitches divisible by 6, plus 5.', 'declare multiple 6+5'],
  ['Number of sts must be divisible by 6 plus 5.', 'declare multiple 6+5'],
  ['Stitch count: multiple of 6 + 5.', 'declare multiple 6+5'],
  ['Pattern repeat: 6 sts x 8 rows', 'declare multiple repeat 6+0'],
  ['Pattern repeat is 6 sts and 8 rows.', 'declare multiple repeat 6+0'],
  ['Over a multiple of 6 sts + 5', 'declare multiple 6+5'],
  ['Worked over multiples of 6 sts plus 5 sts.', 'declare multiple 6+5'],
  ['(mult. 6 sts. + 5)', 'declare multiple 6+5'],
  ['Odd number of stitches', 'declare multiple 2+1'],
  ['On an odd number of sts', 'declare multiple 2+1'],
  ['Over an odd no. of sts:', 'declare multiple 2+1'],
  ['Rib (even number of sts)', 'declare multiple Rib 2+0'],
  ['Seed Stitch (odd number of sts)', 'declare multiple Seed Stitch 2+1'],
  ['Seed st (over an odd number of sts):', 'declare multiple Seed st 2+1'],
  ['Seed Stitch (any number of sts)', 'declare multiple Seed Stitch 1+0'],
  ['Lace Edging (over 9 sts, varying to 12)', 'declare panel Lace Edging 0+9'],
  ['Multiple of 8 sts + 3 (sts inc to multiple of 10 + 3 on Row 3).', 'declare multiple 8+3'],
  ['Multiple of 8 sts + 3, stitch count varies.', 'declare multiple 8+3'],
  ['Multiple of 18 sts + 2 (knit edge sts included).', 'declare multiple 18+2'],
  ['Multiple of 18 sts, worked in the round', 'declare multiple 18+0'],
  ['Number of sts: multiple of 4 + 1 + 2 edge sts', 'declare multiple 4+3'],
  ['Mosaic Band (multiple of 10 sts + 1; 12 rows)', 'declare multiple Mosaic Band 10+1'],
  ['Mosaic Band (multiple of 10 sts + 1 and 12 rows)', 'declare multiple Mosaic Band 10+1'],
  ['Mosaic Band (multiple of 10 sts + 1, 12 row rep)', 'declare multiple Mosaic Band 10+1'],
];

test.each(rows)('%s', (text, tree) => {
  expect(read(text, { sizes })).toBe(tree);
});
