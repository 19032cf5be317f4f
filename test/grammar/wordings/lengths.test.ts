/**
 * Lengths to work to, as different hands write them: with a stop behind the unit, without a verb, behind a cast-on or a picking up.
 * The tree was set down from the words. Forms of the trade from memory.
 */
import { expect, it } from 'vitest';
import { read } from '../outline.ts';

const rows: readonly (readonly [string, string])[] = [
  ['Work 2 in. in k2, p2 rib.', 'work rib until it 2 in'],
  ['Work 2 in. in ribbing, ending with a WS row.', 'work rib until it 2 in ending WS'],
  ['Work in garter st for 1 in.', 'work garter st until it 1 in'],
  ['Work 2" in k1, p1 rib.', 'work rib until it 2 in'],
  ['Work even until 15 in. from beg.', 'work until it 15 in from beg'],
  ['Work in patt until piece measures 15 in. from beg. Bind off.', 'work patt until piece 15 in from beg | BO all all:0'],
  [
    'When piece measures 12 in. from beg, bind off 6 sts at beg of next 2 rows.',
    'work until piece 12 in from beg | bindOff rows 6 {next n=2}',
  ],
  ['Cast on 40 sts. Rib 2 in. Change to larger needles.', 'CO 40 here | work rib until it 2 in | change needle'],
  ['K2, p2 in ribbing for 2 in.', 'work rib until it 2 in'],
  ['K 2, p 2 for 3 inches.', 'work rib until it 3 in'],
  ['K1, P1 for 2".', 'work rib until it 2 in'],
  ['With smaller needles, k1, p1 in ribbing for 2 in.', 'change needle | work rib until it 2 in'],
  ['Cast on 40 sts and k2, p2 for 8 rows.', 'CO 40 here | plain 8 rows rib'],
  ['Knit 3 in.', 'k until it 3 in'],
  ['Knit 3 cm.', 'k until it 3 cm'],
  ['Rib for 7 cm.', 'work rib until it 7 cm'],
  ['Inc 1 st at each end every 2 in. 4 times.', 'inc 1 bothEnds {every n=4 measure=2}'],
  ['Row 3: K 3 in next st.', 'row 3: k{3}'],
  ['Cast on 40 sts loosely and work 2 in. in k2, p2 rib.', 'CO 40 here | work rib until it 2 in'],
  ['Pick up and k 88 sts around neck and work in k1, p1 rib for 6 rounds.', 'row: pick up 88 | plain 6 rounds rib'],
  [
    'Pick up and k 70 sts around neck, work in rib for 2.5 cm, cast off in rib.',
    'row: pick up 70 | work rib until it 2.5 cm | BO all all:0',
  ],
  ['Pick up and k 60 sts and work in garter st for 8 rows.', 'row: pick up 60 | plain 8 rows garter st'],
  ['Pick up 70 sts round neck and rib until band measures 3 cm.', 'row: pick up 70 | work rib until band 3 cm'],
  ['Hood: Pick up 70 sts round neck and work 25 cm in patt.', 'declare title Hood | row: pick up 70 | work patt until it 25 cm'],
];

it.each(rows)('%s', (text, tree) => expect(read(text)).toBe(tree));
