/**
 * Finishing, as different hands word them: leaflets of all decades, magazines, modern downloads. The tree was set down from the
 * words before it was read. Forms of the trade from memory; numbers and words made up here. What the grammar does not follow stands as UNREAD.
 */
import { describe, expect, it } from 'vitest';
import { read } from '../outline.ts';

const sizes = ['S', 'M', 'L'];

const rows: readonly (readonly [string, string])[] = [
  ['Sew shoulder seams together.', ''],
  ['Seam sides and sleeves using mattress stitch.', ''],
  ['Using backstitch, join both shoulder seams.', 'change yarn | join seam'],
  ['Press each piece on WS with a warm iron over a damp cloth.', ''],
  ['Sew sleeve tops into armholes, matching centre of sleeve to shoulder seam.', ''],
  [
    'Fold neckband in half to WS and slip stitch loosely in place.',
    'declare rule fold neckband in half to ws and slip stitch loosely in place',
  ],
  ['Block pieces to measurements given in diagram. Do not press rib.', ''],
  ['Darn in ends, and sew on buttons to correspond with buttonholes.', ''],
  ['Cast off together both sets of 26 shoulder sts with wrong sides touching.', 'join threeNeedle 26'],
  ['3-needle BO left shoulder, BO back neck, 3-needle BO right shoulder.', 'join threeNeedle | BO all all:0 | join threeNeedle'],
  [
    'Turn work inside out. Work three-needle bind off over 22 (23, 25) sts, break yarn.',
    'row: turn inside out | join threeNeedle 22 (23, 25) | change break',
  ],
  ['Bind off the front and back shoulders together.', 'join threeNeedle'],
  ['Cast off shoulder sts tog on the right side.', 'join threeNeedle RS'],
  ['Kitchener stitch toes closed.', 'join graft'],
  ['Graft rem 16 sts together.', 'join graft 16'],
  ['Graft ends together: 12 live sts to 12 cast-on sts.', 'join graft 12'],
  ['Weave live sts to provisional cast-on.', 'join graft'],
  ['Using kitchener st weave the 8 sts of underarm.', 'row: graft join graft 8'],
  ['Weave the two sets of 12 sts at the toe together.', 'join graft 12'],
  ['Draw thread through remaining 9 sts and secure.', 'join thread 9'],
  ['Run yarn through rem sts twice, draw up and fasten off.', 'join thread | join fastenOff'],
  [
    'Cut yarn, leaving a 20 cm tail; with tapestry needle pull tail through 8 rem sts.',
    'change break | change yarn | change needle | join thread',
  ],
  ['Close top by pulling yarn through loops.', ''],
  ['Gather rem sts and fasten securely.', 'join thread'],
  ['Fasten off last st.', 'join fastenOff'],
  ['Break off wool and pull through last loop.', 'change break | join thread'],
  ['Cut yarn and pull through.', 'change break'],
  ['Fold hem to inside along purl ridge and sew.', 'declare rule fold hem to inside along purl ridge and sew'],
  ['Steam lightly from WS.', ''],
  ['Sew in zip.', ''],
  ['Wet-block, pinning out to 58 (60, 62) cm across.', ''],
  ['Soak, squeeze out water in a towel and lay flat to dry.', ''],
  ['Make a twisted cord 80 cm long and thread through eyelets.', 'declare rule make a twisted cord 80 cm long and thread through eyelets'],
  ['Make 3 pompoms and attach.', 'declare rule make 3 pompoms and attach'],
  ['Crochet 1 row of dc all round edge.', 'declare rule crochet 1 row of dc all round edge'],
  ['Work 1 row of crab stitch along front edges.', 'declare rule work 1 row of crab stitch along front edges'],
  ['With crochet hook, work a slip-stitch chain along shoulder.', 'change yarn | declare rule work a slip-stitch chain along shoulder'],
  ['Join side seams, leaving 12 cm open at lower edge for vents.', 'join seam'],
  ['Join left shoulder and neckband seam. Join side and sleeve seams, reversing seam on cuff for turn-back.', 'join seam | join seam'],
  ['Matching stripes, join side seams.', 'join seam'],
  ['Place markers 20 (21, 22) cm down from shoulders and sew sleeves between them.', 'marker hang at row'],
  ['Insert sleeves.', ''],
  ['Sew one button to each shoulder.', ''],
  ['Attach buttons opposite buttonholes.', 'declare rule attach buttons opposite buttonholes'],
  ['Sew pocket linings to WS; sew ends of pocket tops.', ''],
  ['Neaten all ends.', ''],
  ['Sew cast-off edge of neckband to picked-up row.', ''],
  ['Line jacket if desired.', ''],
  ['Sew bands together at centre back neck and attach to neck edge.', ''],
  ['Graft band ends at centre back.', 'join graft'],
  ['Wash in lukewarm water and dry flat.', ''],
  ['Sew the elastic inside the waistband.', ''],
  ['Set sleeves into armholes, easing in fullness at the top.', ''],
  ['BO loosely, leaving a long tail for seaming.', 'BO all all:0 | change yarn'],
  ['Sew up seams with a flat seam on ribbing and backstitch elsewhere.', ''],
  ['Leave 25 cm tail. Fasten off and weave in ends.', 'change yarn | join fastenOff'],
  [
    'Using MC, graft 30 shoulder sts from front to 30 shoulder sts from back, leaving 40 (42, 44) sts of back neck on holder.',
    'change yarn | join graft 30 | hold next 40 (42, 44) on holder',
  ],
  [
    'Place 24 held sts of each shoulder on separate needles and join with 3-needle bind-off.',
    'take up 24 each shoulder unworked | join threeNeedle',
  ],
  [
    'Join shoulders with 3-needle bind-off. Pick up and k 84 (88, 92) sts around neck; join; work 6 rnds rib; BO.',
    'join threeNeedle | row: pick up 84 (88, 92) join round | plain 6 rounds rib | BO all all:0',
  ],
  ['Place 24 sts of left front and left back shoulders on needles and graft, then block.', 'take up 24 front unworked | join graft'],
  ['Fasten off, leaving a 30 cm tail, thread through rem sts and pull tight.', 'join fastenOff | change yarn | join thread'],
];

describe('Finishing in many wordings', () => {
  it.each(rows)('%s', (text, expected) => {
    expect(read(text, { sizes })).toBe(expected);
  });
});
