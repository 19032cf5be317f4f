/** Dividing, holding, rejoining: every wording with the tree it must read into. Forms of the trade; numbers and words made up here. */
import { describe, expect, it } from 'vitest';
import { read } from '../outline.ts';

/** Sizes of the draft, then each text with its outline. */
const tables: readonly { readonly sizes: readonly string[]; readonly rows: readonly (readonly [string, string])[] }[] = [
  {
    sizes: ['XS', 'S', 'M', 'L'],
    rows: [
      ['K 32 (33: 36: 37) and turn, leaving rem sts on a holder.', 'row: k{32 (33, 36, 37)} turn holds holder'],
      ['Next row: Patt 43, turn and work on these sts only.', 'row next: patt→over 43 turn holds other needle'],
      ['Next row (RS): Rib 32, turn; leave rem sts on spare needle.', 'row next (RS): rib→over 32 turn holds spare needle'],
      [
        'K until there are 17 sts on right needle and turn. Work each side of neck separately.',
        'row: k→17 on right turn | declare rule work each side of neck separately',
      ],
      ['Next row (RS): K30, turn, leaving rem 54 sts on a spare needle.', 'row next (RS): k{30} turn leaving 54 holds spare needle'],
      ['K41, turn and cont on these 43 sts only.', 'row: k{41} turn holds other needle'],
      ['Next row: K32 and turn. Leave rem sts on a holder.', 'row next: k{32} turn hold remaining on holder'],
      ['Slip centre 24 (26: 24: 26) sts onto a holder.', 'hold centre 24 (26, 24, 26) on holder'],
      ['Place next 54 sts on waste yarn.', 'hold next 54 on waste yarn'],
      ['Leave rem 32 sts on a spare needle.', 'hold remaining 32 on spare needle'],
      ['Place 54 left sleeve sts on waste yarn.', 'hold next 54 on waste yarn'],
      ['Place sts on waste yarn.', 'hold these on waste yarn'],
      ['Next rnd: K32, bind off next 8 sts, removing m. 56 sts rem.', 'round next: k{32} BO 8 marker remove anywhere =56 total'],
      ['K 24 and place these sts on a holder.', 'row: k{24} hold these on holder'],
      ['K26 and place these 28 sts on holder.', 'row: k{26} hold these 28 on holder'],
      ['K20 and slip these sts to a holder, k to end.', 'row: k{20} hold these on holder k→end'],
      ['Slip first 8 sts onto a safety pin.', 'hold first 8 on safety pin'],
      ['Place last 6 sts on a holder.', 'hold last 6 on holder'],
      ['Put rem sts on hold.', 'hold remaining on hold'],
      ['Place these sts on hold for second side.', 'hold these on hold for second side'],
      ['Leave these sts on a holder.', 'hold these on holder'],
      ['Break yarn and leave sts on holder.', 'change break | hold these on holder'],
      ['With RS facing, rejoin yarn to rem sts, cast off centre 24 sts, k to end.', 'row: change side join rejoin BO centre 24 k→end'],
      ['Return 54 held sts to needle and join yarn at neck edge.', 'take up 54 unworked | join rejoin'],
      [
        'With RS facing, rejoin yarn to rem 54 (57: 58: 61) sts, cast off centre 24 (26: 24: 26) sts, k to end.',
        'row: change side join rejoin 54 (57, 58, 61) BO centre 24 (26, 24, 26) k→end',
      ],
      ['With WS facing, rejoin yarn at neck edge, p to end.', 'row: change side join rejoin p→end'],
      ['Slip 43 sts from holder onto needle, join yarn at neck edge, k to end.', 'row: take up 43 unworked join rejoin k→end'],
      [
        'Return to sts on holder; with RS facing, slip centre 20 sts onto a holder, join yarn to rem sts and patt to end.',
        'row: take up  unworked change side hold centre 20 on holder join rejoin patt→end',
      ],
      ['Slip next 16 sts onto a holder, rejoin yarn to rem sts and k to end.', 'row: hold next 16 on holder join rejoin k→end'],
      [
        'With RS facing, slip centre 23 sts onto a stitch holder, rejoin yarn to rem sts, patt to end.',
        'row: change side hold centre 23 on stitch holder join rejoin patt→end',
      ],
      ['K 32, join second ball, bind off centre 24, k to end.', 'row: k{32} join rejoin BO centre 24 k→end'],
      [
        'K 32 (33: 36: 37), join a second ball of yarn and bind off centre 24 (26: 24: 26) sts, k to end. Working both sides at once, dec 1 st at each neck edge every row 4 times.',
        'row: k{32 (33, 36, 37)} join rejoin BO centre 24 (26, 24, 26) k→end | declare rule working both sides at once | dec 1 eachEdge neck {every n=4 k=1}',
      ],
      ['Work both sides at the same time.', 'declare rule work both sides at the same time'],
      [
        'Next rnd: BO 8 (10, 12, 12) sts, k to side marker, turn, place rem sts on holder.',
        'round next: BO 8 (10, 12, 12) k→to side marker turn holds holder',
      ],
      ['Divide for back and front: place next 82 sts on waste yarn.', 'change other | hold next 82 on waste yarn'],
      [
        'Next rnd: removing markers, K 82, place these sts on hold for front.',
        'round next: marker remove anywhere k{82} hold these on hold for front',
      ],
      [
        'Next row (RS): K 41 (43: 45: 47), k2tog, turn. Slip centre st onto safety pin.',
        'row next (RS): k{41 (43, 45, 47)} kNtog{2} turn hold centre 1 on safety pin',
      ],
      ['Divide for neck: K 43, join second ball, k to end.', 'row: change other k{43} join rejoin k→end'],
      ['Next row (RS): K39, k2tog, turn, leaving rem sts on holder.', 'row next (RS): k{39} kNtog{2} turn holds holder'],
      ['Cont on these sts for left side of neck.', 'only these'],
      ['Working on these 32 sts only, dec 1 st at neck edge of next 4 rows.', 'only these 32 | dec 1 edge neck {next n=4}'],
    ],
  },
  {
    sizes: ['XS', 'S', 'M'],
    rows: [
      ['Next row (RS): K24 (26, 28), turn and leave rem sts on a holder.', 'row next (RS): k{24 (26, 28)} turn holds holder'],
      ['Next row: K24, turn, leave remaining sts on a spare needle.', 'row next: k{24} turn holds spare needle'],
      ['Next row (RS): Patt 24, turn, leaving rem 48 sts on a holder.', 'row next (RS): patt→over 24 turn leaving 48 holds holder'],
      ['K24, slip next 20 sts onto a holder, join a second ball of yarn, k to end.', 'row: k{24} hold next 20 on holder join rejoin k→end'],
      ['K24, place next 20 sts on holder, join new yarn, k to end.', 'row: k{24} hold next 20 on holder join rejoin k→end'],
      [
        'Next row (RS): K24, join new ball of yarn, BO next 20 sts, k to end. Work both sides at once.',
        'row next (RS): k{24} join rejoin BO 20 k→end | declare rule work both sides at once',
      ],
      ['K24 sts, place remaining sts on hold.', 'row: k{24} hold remaining on hold'],
      ['Place first 20 sts on waste yarn.', 'hold first 20 on waste yarn'],
      ['Place next 20 sts on a stitch holder for neck.', 'hold next 20 on stitch holder for neck'],
      ['Put next 48 sts on scrap yarn for sleeve.', 'hold next 48 on scrap yarn for sleeve'],
      ['Slip last 24 sts onto holder.', 'hold last 24 on holder'],
      ['Slip 24 sts just worked onto a holder.', 'hold these 24 on holder'],
      ['Place all sts on holder.', 'hold these on holder'],
      ['Leave these 24 sts on a spare needle.', 'hold these 24 on spare needle'],
      ['Sl centre 18 (20, 22) sts on a holder.', 'hold centre 18 (20, 22) on holder'],
      ['Transfer next 40 sts to waste yarn.', 'hold next 40 on waste yarn'],
      ['Working on these 24 sts only, work 6 rows.', 'only these 24 | plain 6 rows'],
      ['Work on first 24 sts only.', 'only first 24'],
      ['Turn and work on these 24 sts only.', 'row: turn holds other needle'],
      ['Turn, cont on these sts.', 'row: turn holds other needle'],
      ['With RS facing, rejoin yarn to rem 24 sts and k to end.', 'row: change side join rejoin 24 k→end'],
      ['With RS facing, rejoin yarn to rem sts, bind off next 20 sts, patt to end.', 'row: change side join rejoin BO 20 patt→end'],
      ['With right side facing, join yarn at neck edge and knit to end.', 'row: change side join rejoin k→end'],
      ['Join yarn to remaining sts and work to end.', 'row: join rejoin work→end'],
      ['Rejoin yarn to rem sts with RS facing, k to end.', 'row: join rejoin RS k→end'],
      ['Attach yarn at neck edge, BO 20 sts, k to end.', 'row: join rejoin BO 20 k→end'],
      ['Place 24 held sts back on needle.', 'take up 24 unworked'],
      ['Return sts from holder to needle.', 'take up  unworked'],
      ['Return held 24 sts to needle with WS facing.', 'take up 24 unworked'],
      ['Put sts from holder back onto needle, rejoin yarn, k to end.', 'row: take up  unworked join rejoin k→end'],
      ['Divide for neck: Next row (RS): K24, turn.', 'declare title Divide for neck | row next (RS): k{24} turn'],
      [
        'Next row (RS): K30, BO 12, k to end. Turn and work on last 30 sts only.',
        'row next (RS): k{30} BO 12 k→end turn holds other needle',
      ],
      ['Break yarn. Rejoin yarn to sts on holder.', 'change break | join rejoin'],
      ['Left side of neck: Dec 1 st at neck edge of next 4 rows.', 'declare title Left side of neck | dec 1 edge neck {next n=4}'],
    ],
  },
];

describe('Dividing, holding, rejoining', () => {
  for (const { sizes, rows } of tables) {
    it.each(rows)('%s', (text, expected) => {
      expect(read(text, { sizes })).toBe(expected);
    });
  }
});
