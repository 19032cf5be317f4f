import type { Needle } from '../src/pattern/front/front-matter.ts';
import { found } from './facts/blocks.ts';
import { type Held, heldCounts, inRounds } from './facts/counts.ts';
import { densities } from './facts/gauges.ts';
import { centimetres, rounded } from './facts/units.ts';
import { counted } from './facts/wording.ts';
import type { Context, Finding, Rule } from './rule.ts';
import { circularCrowding, circularStretch } from './tables/tools.ts';

const lengthOf = (needle: Needle): number | null => {
  const [first] = needle.length;
  const value = first?.values[0];
  return first === undefined || value === null || value === undefined ? null : centimetres(value, first.unit);
};

/** Fewest stitches that are worked in rounds before other needles are named, and the most that lie on the needle at all. */
function extremes(context: Context): {
  readonly start: Held | null;
  readonly most: { readonly held: Held; readonly count: number } | null;
} {
  const held = heldCounts(context);
  const first = held.filter((one) => inRounds(context, one)).sort((one, other) => one.first.span.start - other.first.span.start)[0] ?? null;
  const most = held.map((one) => ({ held: one, count: Math.max(...one.counts) })).sort((one, other) => other.count - one.count)[0] ?? null;
  return { start: first, most };
}

export const needleLength: Rule = {
  id: 'needle-length',
  level: 'query',
  title: 'The circular needle can carry the stitches',
  meaning: 'The stitches joined in the round do not reach round the circular needle, or far more stitches are worked than it can hold.',
  reason: 'A round that is shorter than its needle cannot be knitted; a needle too short drops its stitches.',
  needsReplay: true,
  wrong: {
    draft: `# Kelp Cuff

Needles: 4 mm circular needle, 80 cm long

Tension: 20 sts and 28 rnds to 10 cm over st st

Cast on 60 sts. Join in the round.

Knit 30 rnds.

Cast off.
`,
  },
  right: {
    draft: `# Kelp Cuff

Needles: 4 mm circular needle, 30 cm long

Tension: 20 sts and 28 rnds to 10 cm over st st

Cast on 64 sts. Join in the round.

Knit 30 rnds.

Cast off.
`,
  },
  check(context): readonly Finding[] {
    const { needles, gauges } = context.pattern.front;
    const circulars = needles.filter((needle) => needle.kind === 'circular');
    const lengths = circulars.map(lengthOf);
    const gauge = gauges.length === 1 ? gauges[0]! : null;
    const density = gauge === null ? undefined : densities(gauge, 'stitches', 'cm')[0];
    // With double-pointed needles at hand, or a long cable for the loop method, any number can be worked.
    const others =
      needles.some((needle) => needle.kind === 'doublePointed' || needle.kind === 'spare') ||
      /magic loop|small[- ]circumference|loop method|two circulars?/i.test(context.manuscript.source);
    if (circulars.length === 0 || density === undefined || lengths.some((length) => length === null)) return [];
    const { start, most } = extremes(context);
    const [shortest, longest] = [Math.min(...(lengths as number[])), Math.max(...(lengths as number[]))];
    const place = circulars[0]!.span;
    if (start !== null && !others) {
      const round = Math.max(...start.counts) / density.per;
      if (round * circularStretch < shortest) {
        return [
          found(
            context,
            needleLength,
            place,
            `${counted(Math.max(...start.counts), 'st')} are ${rounded(round, 'cm')} round at ${density.words}, and the shortest circular needle listed is ${rounded(shortest, 'cm')}. Is a shorter one, or a set of double-pointed needles, meant?`,
          ),
        ];
      }
    }
    if (most !== null && most.count / density.per > longest * circularCrowding) {
      return [
        found(
          context,
          needleLength,
          place,
          `${counted(most.count, 'st')} are ${rounded(most.count / density.per, 'cm')} wide at ${density.words}: more than ${circularCrowding} times the longest needle listed, ${rounded(longest, 'cm')}. Is a longer one needed?`,
        ),
      ];
    }
    return [];
  },
};
