/** Counts told in passing, notes that order nothing (their tree is empty), exceptions kept as rules. */
import { expect, test } from 'vitest';
import { read } from '../outline.ts';

const sizes = ['S', 'M', 'L'];

const rows: readonly (readonly [text: string, tree: string])[] = [
  ['Every heel stitch has now been worked and 20 (22, 24) stitches remain.', '=20 (22, 24) total'],
  ['All the heel sts have been worked and 17 sts remain.', '=17 total'],
  ['All gusset sts have now been used and 60 (64, 68) sts are left.', '=60 (64, 68) total'],
  ['Each side stitch has been decreased and 14 stitches remain.', '=14 total'],
  ['You have 76 (84, 92) stitches, and the round now begins at the centre of the heel.', '=76 (84, 92) total | marker place BOR'],
  ['You now have 48 sts.', '=48 total'],
  ['There are now 58 (62, 66) sts.', '=58 (62, 66) total'],
  ['There are now 3 unworked sts beyond the turning point at each side.', '=3 left (beyond the turning point)'],
  ['There should be 12 sts between markers.', '=12 part (between markers)'],
  ['There are 15 sts on each needle.', '=15 part (on each needle)'],
  ['On the last RS row you should knit 14 sts before turning.', '=14 worked (the last rs row before turning)'],
  ['On the last short row you will have worked 8 (9, 10) sts.', '=8 (9, 10) worked (the last short row)'],
  ['You should have worked 14 sts.', '=14 worked'],
  [
    'Needle 1 holds 20 (22, 24) stitches, Needle 2 holds 30 (32, 34), Needle 3 holds 20 (22, 24).',
    '=20 (22, 24) part (needle 1) | =30 (32, 34) part (needle 2) | =20 (22, 24) part (needle 3)',
  ],
  ['Needle 1 now holds 25 sts and Needle 3 holds 25 sts.', '=25 part (needle 1) | =25 part (needle 3)'],
  ['N1 has 16 sts, N2 has 32 sts, N3 has 16 sts.', '=16 part (needle 1) | =32 part (needle 2) | =16 part (needle 3)'],
  ['The first needle holds 18 sts, the second needle holds 36 sts.', '=18 part (needle 1) | =36 part (needle 2)'],
  ['These 30 sts are the heel.', '=30 part (heel)'],
  ['These 32 (34, 36) sts form the heel flap.', '=32 (34, 36) part (heel flap)'],
  ['The first 28 sts are the instep.', '=28 part (instep)'],
  ['The remaining 30 sts are the sole.', '=30 part (sole)'],
  ['The next 24 (26, 28) sts are the instep; leave them on a holder.', '=24 (26, 28) part (instep) | hold these on holder'],
  ['Do not work the remaining 18 sts.', '=18 left'],
  [
    'Repeat Rows 1 and 2 another 9 (10, 11) times: 20 (22, 24) rows worked and 30 sts on the needle.',
    'rep rows [numbers 1,2] 9 (10, 11)× more =20 (22, 24) rows =30 total',
  ],
  ['Repeat Rounds 1 and 2 another 7 times: 52 sts.', 'rep rows [numbers 1,2] 7× more =52 total'],
  ['Rep last 2 rows 12 times more (26 rows; 13 edge chains).', 'rep rows [last 2] 12× more =26 rows'],
  ['Knit 12 rows (6 ridges).', 'plain 12 rows knit'],
  ['Rnd 1: K to m (38 sts; 5 between m).', 'round 1: k→to marker =38 total =5 part (between m)'],
  ['There is no need to pick up wraps.', ''],
  ['It is not necessary to pick up the wraps in garter stitch.', ''],
  ['You do not need to hide the wraps.', ''],
  ['Do not pick up wraps.', ''],
  ['Every RS row stops 3 sts sooner than the one before it.', ''],
  ['Each wedge is 6 sts wider than the last.', ''],
  ['Turn the heel.', 'declare title turn the heel'],
  ['Turn heel as follows:', 'declare title turn heel as follows:'],
  ['Do not CO after Wedge 7.', 'declare rule do not co after wedge 7'],
  [
    'Keep Needle 2 in pattern, and knit every stitch on Needles 1 and 3 except where told to decrease.',
    'declare rule keep needle 2 in pattern, and knit every stitch on needles 1 and 3 except where told to decrease',
  ],
  ['Short rows may be worked in any method.', ''],
  ['Rnd 6: (k3, kfb) x 6 [30]', 'round 6: [k{3} kfb]→6× =30 total'],
  ['Rnd 1: knit [6]\nRnd 2: kfb x 6 [12]', 'round 1: k→end =6 total | round 2: kfb×6 =12 total'],
  ['There are 7 sts in each wing between the edge sts and the centre st.', '=7 part (in each wing)'],
  [
    '9 (10, 11) sts are wrapped at each side and 10 (12, 14) sts rem unwrapped.',
    '=9 (10, 11) part (wrapped) | =10 (12, 14) part (wrapped)',
  ],
  ['Rep Rnds 1 and 2 until there are 56 sts: 28 sts on each needle.', 'rep rows [numbers 1,2] until 56 sts =28 part (on each needle)'],
  [
    'You should have 12 sts on the first needle, 24 on the second and 12 on the third.',
    '=12 part (needle 1) | =24 part (needle 2) | =12 part (needle 3)',
  ],
  ['This leaves 24 sts for the heel.', '=24 part (heel)'],
  ['18 sts have been increased in all.', '=18 increased'],
  ['There will be 6 sts between the markers.', '=6 part (between the markers)'],
  ['The heel now has 16 sts left.', '=16 total'],
  ['Half the sts, 32, are for the heel.', '=32 part (heel)'],
  ['Each needle now has 20 sts.', '=20 part (on each needle)'],
  ['That makes 112 sts on the needle altogether.', '=112 total'],
  ['The round now counts 96 sts.', '=96 total'],
  ['Two sts remain on each side of the marker.', '=2 part (on each side of the marker)'],
  ['You will have decreased 16 sts.', '=16 decreased'],
  ['Work has 40 sts again.', '=40 total'],
  ['There are now 48 more sts than you began with.', ''],
  ['All sts have now been worked off the heel, leaving 18 live sts.', '=18 total'],
];

test.each(rows)('%s', (text, tree) => {
  expect(read(text, { sizes })).toBe(tree);
});
