/** Neckbands: every wording with the tree it must read into. Forms of the trade; numbers and words made up here. */
import { describe, expect, it } from 'vitest';
import { read } from '../outline.ts';

/** Sizes of the draft, then each text with its outline. */
const tables: readonly { readonly sizes: readonly string[]; readonly rows: readonly (readonly [string, string])[] }[] = [
  {
    sizes: ['XS', 'S', 'M', 'L'],
    rows: [
      ['Join right shoulder seam.', 'join seam'],
      ['Beg with a WS row, work 8 rows in k1, p1 rib. Cast off in rib.', 'plain 8 rows rib beg WS | BO all all:0'],
      ['Pm and join. Work 9 rnds in k1, p1 rib. BO loosely in rib.', 'marker place | join round | plain 9 rounds rib | BO all all:0'],
      ['Work 16 rnds, BO; fold in half to WS and slip-stitch.', 'plain 16 rounds | BO all all:0'],
      ['Change to 4 mm needles and cont in rib until collar measures 20 cm.', 'change needle | work rib until collar 20 cm'],
      [
        'Row 1 (WS): Rib to 3 sts before centre st, p2tog tbl, p1, p2tog, rib to end.',
        'row 1 (WS): rib→3 before centre pNtog tbl{2} p{1} pNtog{2} rib→end',
      ],
      ['Rep last rnd 6 times more, then BO in rib with dec as set.', 'rep rows [last] 6× more | BO all all:0'],
      ['K2tog, rib to last 3 sts, ssk.', 'row: kNtog{2} rib→last 3 ssk'],
      ['Join; work 7 rnds in k1, p1 rib; BO in rib.', 'join round | plain 7 rounds rib | BO all all:0'],
      [
        'Armbands (both alike): Join shoulders. Pick up and k 99 (105: 111: 117) sts; beg with Row 2, work 5 rows rib; cast off.',
        'declare title Armbands (both alike) | join seam | row: pick up 99 (105, 111, 117) | plain 5 rows rib beg row 2 | BO all all:0',
      ],
      ['Work 4 rows garter st, cast off knitwise on WS.', 'plain 4 rows garter st | BO all all:0'],
      ['Work in k1, p1 rib for 2.5 cm. Cast off in rib.', 'work rib until it 2.5 cm | BO all all:0'],
      ['Work 5 rows in rib, dec 1 st at centre front on every row.', 'plain 5 rows rib (dec 1 centre {every k=1})'],
    ],
  },
  {
    sizes: ['XS', 'S', 'M'],
    rows: [
      ['Work 8 rows in k1, p1 rib. Cast off loosely in rib.', 'plain 8 rows rib | BO all all:0'],
      ['Work 5 rnds in garter st. BO purlwise.', 'plain 5 rounds garter st | BO all all:0'],
      ['Starting with a WS row, work 6 rows in k2, p2 rib. BO in rib.', 'plain 6 rows rib beg WS | BO all all:0'],
      ['Knit 1 row. Cast off knitwise.', 'plain 1 rows knit | BO all all:0'],
      ['Next rnd: *K2, p2; rep from * around.', 'round next: *[k{2} p{2}]→end'],
      ['Rnd 2: Rib to 2 sts before centre st, ssk, k1, k2tog, rib to end.', 'round 2: rib→2 before centre ssk k{1} kNtog{2} rib→end'],
      ['Work 1 rnd in rib.', 'plain 1 rounds rib'],
      ['Work in k1, p1 rib for 8 rnds. BO all sts loosely in rib.', 'plain 8 rounds rib | BO all all:0'],
      ['Purl 1 rnd. Bind off.', 'plain 1 rounds purl | BO all all:0'],
      ['Work 12 cm in rib for polo collar, then cast off loosely in rib.', 'work rib until it 12 cm | BO all all:0'],
    ],
  },
];

describe('Neckbands', () => {
  for (const { sizes, rows } of tables) {
    it.each(rows)('%s', (text, expected) => {
      expect(read(text, { sizes })).toBe(expected);
    });
  }
});
