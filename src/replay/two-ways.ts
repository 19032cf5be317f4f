/** "Three times": three in all or three more. Both are tried on what follows in the piece; what fits both stays a question. */
import type { Span, Statement } from '../../grammar/tree.ts';
import { live } from './needles.ts';
import { handOf, met, type Play, sectionOf, tryOut } from './play.ts';
import { contradictions } from './row-choices.ts';
import { playFrom } from './statements.ts';

export interface Ways {
  /** Plays the instruction in the usual way (0) or in the other one (1), with the counts it states itself. */
  readonly play: (way: 0 | 1) => void;
  /** How each way is told: "if 3 more are meant". */
  readonly words: readonly [string, string];
  readonly node: Statement;
  readonly span: Span;
  /** A count stated by the instruction itself has the last word. */
  readonly stated: boolean;
  /** Whether custom leaves both open, so that the author is asked where nothing decides. */
  readonly ask: boolean;
  /** The way that the number of the next row shows. */
  readonly known: 0 | 1 | null;
}

/** Statements that speak for the one way or the other. */
const near = 14;
/** Statements that must fit both before it is asked which is meant. */
const far = 60;

/** How many items behind this one still belong to the piece. */
function rest(play: Play): number {
  const { piece } = sectionOf(play);
  let at = play.at + 1;
  while (at < play.flow.length && at <= play.at + far) {
    const item = play.flow[at];
    if (item === undefined || play.pattern.sections[item.section]?.piece !== piece) break;
    at += 1;
  }
  return at;
}

/** The way to go on with. What is asked of it is written down here. */
export function chooseWay(play: Play, sizes: readonly number[], ways: Ways): 0 | 1 {
  if (play.trying) return 0;
  const way = ways.known ?? likelier(play, sizes, ways);
  if (way === 1)
    for (const size of sizes)
      met(play, { kind: 'readingNotDefault', span: ways.span, numbers: {}, words: { reading: ways.words[1] } }, size, ways.node, null);
  return way;
}

function likelier(play: Play, sizes: readonly number[], ways: Ways): 0 | 1 {
  const end = rest(play);
  const against = (way: 0 | 1, to: number): number =>
    contradictions(play, sizes, () => {
      ways.play(way);
      if (!ways.stated) playFrom(play, play.at + 1, Math.min(end, to), sizes);
    });
  const usual = against(0, play.at + near);
  if (usual > 0 && against(1, play.at + near) < usual) return 1;
  if (usual > 0 || ways.stated || !ways.ask || sizes.some((size) => !handOf(play, size).needles.sure)) return 0;
  const [first, second] = ([0, 1] as const).map((way) => countsAfter(play, () => ways.play(way))) as [readonly number[], readonly number[]];
  if (sizes.every((size) => first[size] === second[size])) return 0;
  if (against(0, end) > 0 || against(1, end) > 0) return 0;
  for (const size of sizes)
    met(
      play,
      {
        kind: 'readingsDiffer',
        span: ways.span,
        numbers: { first: first[size] ?? 0, second: second[size] ?? 0 },
        words: { first: ways.words[0], second: ways.words[1] },
      },
      size,
      ways.node,
      null,
    );
  return 0;
}

function countsAfter(play: Play, action: () => void): readonly number[] {
  return tryOut(play, action).hands.map((hand) => live(hand.needles));
}
