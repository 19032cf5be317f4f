/** Yarn overs beside turns in the counts of a draft: held places, counted in until their gaps are closed, or lace. */
import type { Stated } from '../../grammar/tree.ts';
import { live, type Needles, setLive } from './needles.ts';
import { copyHand, handOf, met, type Play, tryOut } from './play.ts';
import { horizon, type StatedWhere } from './stated.ts';
import { playFrom } from './statements.ts';

/**
 * A yarn over beside a turn holds its place and is no stitch, but some drafts count it in until the gap is closed; and some mean it as
 * lace, so that it stays. What follows decides between the two.
 */
export function countsLoops(play: Play, stated: Stated, size: number, value: number, where: StatedWhere): boolean {
  const { needles } = handOf(play, size);
  const marks = [...needles.left.marks, ...needles.right.marks].filter((mark) => mark.kind === 'gap' && mark.method === 'yarnOver');
  const { passed = 0 } = needles;
  const loops = passed + marks.reduce((sum, mark) => sum + (mark.loops ?? 1), 0);
  if (loops === 0 || live(needles) + loops !== value) return false;
  const place = `${stated.span.start}|${size}`;
  const against = (lace: boolean): number =>
    tryOut(play, () => {
      play.hands = play.hands.map((hand, each) => (each === size ? copyHand(hand) : hand));
      if (lace) becomeStitches(handOf(play, size).needles);
      playFrom(play, play.at + 1, Math.min(play.flow.length, play.at + 1 + horizon), [size]);
    }).met.filter((each) => each.size === size && each.certain && each.kind === 'countDiffers').length;
  const lace = passed > 0 || play.decided.has(place) || (!play.trying && against(true) < against(false));
  if (lace) {
    play.decided.set(place, value);
    becomeStitches(needles);
    if (passed > 0) setLive(needles, value);
    delete needles.passed;
  }
  if (!play.trying && !lace)
    met(
      play,
      {
        kind: 'readingNotDefault',
        span: stated.count.span,
        numbers: {},
        words: { reading: 'the yarn overs beside the turns are counted in' },
      },
      size,
      where.node,
      where.label,
    );
  return true;
}

/** The yarn overs beside the turns are stitches like any other from here on. */
function becomeStitches(needles: Needles): void {
  for (const needle of [needles.left, needles.right]) {
    let more = 0;
    for (const mark of needle.marks) {
      mark.at += more;
      if (mark.kind !== 'gap' || mark.method !== 'yarnOver') continue;
      more += mark.loops ?? 1;
      mark.at += mark.loops ?? 1;
      mark.method = 'plain';
    }
    needle.n += more;
  }
}
