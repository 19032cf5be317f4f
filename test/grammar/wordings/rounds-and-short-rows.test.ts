/** Rounds and short rows as people write them: what the words are read as. Common practice, no source; numbers and words made up here. */
import { expect, test } from 'vitest';
import { read } from '../outline.ts';

const sizes = ['S', 'M', 'L'];

const rows: readonly (readonly [text: string, tree: string])[] = [
  ['K to 12 sts past BOR marker, turn.', 'row: k→12 past beginning marker turn'],
  ['Rnd 5: K to 4 sts before BOR, w&t.', 'round 5: k→4 before beginning marker turn wrap'],
  ['K to BOR.', 'row: k→to beginning marker'],
  ['2nd row: P. 3rd row: (k1, inc in next st) 8 times.', 'row 2: p→end | row 3: [k{1} kfb]→8×'],
  ['2nd and every alt rnd: K. 3rd rnd: *K7, k2tog; rep from * to end.', 'round 2 and all alternate: k→end | round 3: *[k{7} kNtog{2}]→end'],
  ['Row 2: Knit. Do not turn at the end of Row 2; place marker and join in the round.', 'row 2: k→end turn not marker place join round'],
  ['CO 81 sts; slip the last stitch cast on to the left needle and knit it together with the first.', 'CO 81 here | join round loses 1'],
  ['Slip a marker on right needle to mark beg of rnds and join.', 'marker place | join round'],
  ['K12; this is the new start of round.', 'row: k{12} marker place BOR'],
  ['Sl 1, pm. Rnd now begins here.', 'row: sl{1} marker place | marker place BOR'],
  ['K across first 7 sts of the round.', 'row: k→over 7'],
  ['P2tog across to last st, p1.', 'row: pNtog→last 1 p{1}'],
  ['K2 tog all along.', 'row: kNtog→end'],
  ['Working on the 32 heel sts only: Row 1: K31, w&t.', 'only these 32 | row 1: k{31} turn wrap'],
  ['Purl 1 rnd for turning ridge.', 'plain 1 rounds purl'],
  ['Rep Rnds 1-4 five more times, then work Rnds 1 and 2 again.', 'rep rows [numbers 1,2,3,4] 5× more | work rows [numbers 1,2] 1× more'],
  ['Rep these two rows once more, then Row 1 again.', 'rep rows [these 2] 1× more | rep rows [numbers 1] 1× more'],
  ['Rep Rnd 1 for 12 rnds.', 'rep rows [numbers 1] 12×'],
  ['Next RS row: k to centre 3 sts, cdd, k to end.', 'row next (RS): k→1 before centre s2kp k→end'],
  ['K18, make twin, turn.', 'row: k{18} turn twin'],
  ['Row 3: K14, shadow wrap next st, turn.', 'row 3: k{14} turn twin'],
  ['Row 1: K18, turn, yo.', 'row 1: k{18} turn yo'],
  [
    'K18, turn; place a pin on the yarn, sl 1, p9, turn; pin, sl 1, k to gap, lift pinned loop and k it tog with next st, k to end.',
    'row: k{18} turn pin | row: sl{1} p{9} turn pin | row: sl{1} k→to gap close gap k→end',
  ],
  ['Row 3: K to gap, close gap by picking up the bar and knitting it tog with next st, k2, turn.', 'row 3: k→to gap close gap k{2} turn'],
  ['Row 3: K to 1 st before the turning gap, k2tog.', 'row 3: k→1 before gap kNtog{2}'],
  ['Row 5: k to 3 sts before newest gap, turn.', 'row 5: k→3 before gap turn'],
  ['Row 1: K to last 7 sts, wr & t.', 'row 1: k→last 7 turn wrap'],
  ['Leave the 13 gusset sts on a safety-pin.', 'hold next 13 on safety-pin'],
  ['Edging Row 1: K6, ssk joining edging to shawl, turn.', 'row edging 1: k{6} ssk joins 1 live turn'],
  ['Leave 6 sts unworked at end of next 2 rows, then 5 sts at end of foll 2 rows.', 'leave rows at end 6 {next n=2} + 5 {follEach n=2}'],
  // Not read, and said so.
  [
    'Every other round: *ssk, k to 2 sts before marker, k2tog, sm; rep from * to end.',
    'UNREAD "Every other round: *ssk, k to 2 sts before marker, k2tog, sm; rep from * to end."',
  ],
  ['Weave in 18 sts to 18 sts with Kitchener stitch.', 'UNREAD "Weave in 18 sts to 18 sts with Kitchener stitch"'],
];

test.each(rows)('%s', (text, tree) => {
  expect(read(text, { sizes })).toBe(tree);
});
