/**
 * Joining, as different hands word them: leaflets of all decades, magazines, modern downloads. The tree was set down from the
 * words before it was read. Forms of the trade from memory; numbers and words made up here. What the grammar does not follow stands as UNREAD.
 */
import { describe, expect, it } from 'vitest';
import { read } from '../outline.ts';

const sizes = ['S', 'M', 'L'];

const rows: readonly (readonly [string, string])[] = [
  ['Join to work in the round, being careful not to twist.', 'join round'],
  ['Taking care not to twist the sts, join and place marker for beg of rnd.', 'join round | marker place BOR'],
  ['Join into a ring by knitting the first st.', 'join round'],
  ['Join in the round, pm and knit 1 rnd.', 'join round | marker place | plain 1 rounds knit'],
  [
    'Join by knitting the first and last sts together, pm. 120 (130, 140) sts.',
    'join round loses 1 | marker place | =120 (130, 140) total',
  ],
  ['Slip last cast-on st to left needle and k2tog with first st to join.', 'join round loses 1'],
  ['Work back and forth in rows; do not join.', 'join noRound | join noRound'],
  ['Do not join; turn work.', 'row: join noRound turn'],
  ['With RS facing, join to work in the round again.', 'change side | join round'],
  ['Next row (RS): Knit to end, do not turn, pm and join for working in rnds.', 'row next (RS): k→end turn not marker place join round'],
  ['At the end of the last RS row, cast on 14 (16, 18) sts for front neck and join in the round.', 'CO 14 (16, 18) end | join round'],
  ['Cast on 12 sts and join.', 'CO 12 here | join round'],
  [
    'On the next row join body to work in the round: knit to end, CO 10, pm, join.',
    'row next: join round k→end CO 10 here marker place join round',
  ],
  ['Arrange sts on 4 dpns, join, pm.', 'arrange 4 needles | join round | marker place'],
  ['Join B and knit 2 rows.', 'change join | plain 2 rows knit'],
  ['Join in contrast and work 4 rows in garter st.', 'change join | plain 4 rows garter st'],
  ['Join new yarn at centre front neck.', 'join rejoin'],
  ['Join shoulders by grafting the 24 (25, 26) sts of front to those of back.', 'join graft 24 (25, 26)'],
  ['Join right shoulder seam, then pick up 88 (92, 96) sts round neck.', 'row: join seam pick up 88 (92, 96)'],
  [
    'Join shoulders and work collar: pick up and knit 90 sts around neck edge.',
    'join seam | UNREAD "work collar: pick up and knit 90 sts around neck edge"',
  ],
  ['Join raglan seams, leaving left back seam open.', 'join seam'],
  ['Join lower edges of front and back for 6 cm.', 'join seam'],
  [
    'Join body and sleeves: K across 38 sts of right front, 48 sts of first sleeve, 76 sts of back, 48 sts of second sleeve and 38 sts of left front. 248 sts.',
    'row: join seam k→over 38 k→over 48 k→over 76 k→over 48 k→over 38 =248 total',
  ],
  [
    'Next rnd: K 80 front sts, k 50 sleeve sts from waste yarn, k 80 back sts, k 50 sts of other sleeve, pm and join.',
    'round next: k{80} take up 50 sleeve k{80} k{50} marker place join round',
  ],
  [
    'Next rnd (joining rnd): Knit across body sts to underarm, knit across sleeve sts, knit across back.',
    'round next: UNREAD "Knit across body sts to underarm" k→sleeve k→back',
  ],
  ['Turn work with RS facing and join into a circle.', 'row: turn change side join round'],
  ['Slip first st of left needle to right needle, pass last cast-on st over it to join.', 'join round loses 1'],
  ['Join, taking care not to twist, and work 8 rnds in k1, p1 rib.', 'join round | plain 8 rounds rib'],
  ['Work flat until there are 90 sts, then join for working in the round.', 'work until 90 sts | join round'],
  ['Join in the round with no twist; rnd begins at left side seam.', 'join round'],
  ['From here, work back and forth.', 'join noRound'],
  ['Now join and begin working in the round.', 'join round'],
  ['After joining, work 5 rnds in st st.', 'plain 5 rounds st st'],
  ['Rejoin in the round and knit 3 rnds.', 'join round | plain 3 rounds knit'],
  ['Join the ends with mattress stitch.', 'join seam'],
  ['Join cast-on and cast-off edges to make a tube.', 'join seam'],
  ['Join the live sts to the cast-on edge with a three-needle bind-off.', 'join threeNeedle'],
  [
    'Join shoulder with three-needle BO over first 26 (27, 29) sts, bind off next 36 sts singly, join last 26 (27, 29) sts.',
    'join threeNeedle 26 (27, 29) | BO 36 | join threeNeedle 26 (27, 29)',
  ],
  ['Knit first st of rnd together with last st to close the gap.', 'join round loses 1'],
  ['Join to left back shoulder with RS facing.', 'join rejoin RS'],
  ['Rejoin yarn A to 15 centre sts.', 'join rejoin'],
  [
    'Rejoin yarn with RS facing to the 38 (40, 42) sts left on holder for back; bind off 5 sts, k to end.',
    'row: join rejoin 38 (40, 42) RS BO 5 k→end',
  ],
  ['Attach yarn to first st on holder.', 'join rejoin'],
  ['Join yarn with a sl st to top corner of right front.', 'join rejoin'],
  ['Join in a second ball of wool and work both sides together.', 'join rejoin | declare rule work both sides together'],
  ['Break off yarn and rejoin at opposite end.', 'change break | join rejoin'],
  ['Break yarn; slide sts to other end and join CC.', 'change break | change slide | change join'],
  ['Join MC, k1 row, p1 row.', 'change join | plain 1 rows knit | plain 1 rows purl'],
  ['With MC, join and k 1 rnd.', 'change yarn | join round | plain 1 rounds knit'],
  ['Join. Rnd 1: *K1, p1; rep from * around.', 'join round | round 1: *[k{1} p{1}]→end'],
  ['Being sure cast-on edge is not twisted, join to form a circle; mark first st.', 'join round | marker hang'],
  [
    'Place all sts on one circular needle: left front 34, sleeve 44, back 72, sleeve 44, right front 34. 228 sts.',
    'UNREAD "Place all sts on one circular needle: left front 34" | =228 total',
  ],
  [
    'With RS facing, slip sts onto one needle in this order: right front, sleeve, back, sleeve, left front.',
    'change side | UNREAD "slip sts onto one needle in this order: right front" | UNREAD "sleeve" | UNREAD "sleeve"',
  ],
  ['Join with sl st into first st.', 'join round'],
  [
    'Join right shoulder, then with RS facing and 3 mm needles knit up 84 (88, 92) sts and work 5 rows rib.',
    'row: join seam change side pick up 84 (88, 92) | plain 5 rows rib',
  ],
  [
    'Place 28 (30, 32) sts of each shoulder back on needles and join with RS together by three-needle bind-off.',
    'take up 28 (30, 32) unworked | join threeNeedle RS',
  ],
  ['Next rnd: K to end, remove marker, k4, pm for new beg of rnd.', 'round next: k→end marker remove k{4} marker place BOR'],
  [
    'Rejoin yarn at left underarm, k across 46 (48, 50) held sts, pick up and k 8, join. 54 (56, 58) sts.',
    'row: join rejoin take up 46 (48, 50) pick up 8 join round =54 (56, 58) total',
  ],
  ['Break yarn and join both sets of 30 sts at shoulder by grafting.', 'change break | join graft 30'],
  ['Join and work in rounds: rnd 1: *k2, p2; rep from * around.', 'row: join round UNREAD "work in rounds: rnd 1" *[k{2} p{2}]→end'],
  ['Graft 2 sets of 12 underarm sts tog, then fasten off.', 'join graft 12 | join fastenOff'],
];

describe('Joining in many wordings', () => {
  it.each(rows)('%s', (text, expected) => {
    expect(read(text, { sizes })).toBe(expected);
  });
});
