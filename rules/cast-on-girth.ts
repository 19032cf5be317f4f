import { found } from './facts/blocks.ts';
import { densities } from './facts/gauges.ts';
import { inSizes } from './facts/wording.ts';
import type { Finding, Rule } from './rule.ts';
import { girths } from './tables/girths.ts';

export const castOnGirth: Rule = {
  id: 'cast-on-girth',
  level: 'query',
  title: 'The cast-on can go round what it is for',
  meaning:
    'Divided by the gauge, the stitches cast on and joined in a round are far too few, or far too many, for a head, a hand or a foot.',
  reason: 'A digit has been lost, or the count belongs to another part.',
  needsReplay: true,
  wrong: {
    draft:
      '# Kelp Cap\n\nGauge: 28 sts and 36 rnds to 10 cm in stockinette stitch\n\nCO 44 sts. Join in the round.\n\nRnd 1: Knit.\n\nBO all sts.\n',
  },
  right: {
    draft:
      '# Kelp Cap\n\nGauge: 28 sts and 36 rnds to 10 cm in stockinette stitch\n\nCO 140 sts. Join in the round.\n\nRnd 1: Knit.\n\nBO all sts.\n',
  },
  check: (context): readonly Finding[] => {
    const { pattern, replay } = context;
    const { gauges } = pattern.front;
    const kinds = girths.filter((each) => each.words.test(pattern.title));
    const [kind] = kinds;
    const [gauge] = gauges;
    const density = gauge === undefined ? undefined : densities(gauge, 'stitches', 'cm')[0];
    const index = replay.entries.findIndex((entry) => entry.node.type === 'castOn');
    const entry = replay.entries[index];
    const next = replay.entries[index + 1];
    // The first piece alone, cast on in one go and joined before its first round: crowns, toes and thumbs begin with a few stitches.
    if (kind === undefined || kinds.length > 1 || gauges.length > 1 || density === undefined || entry === undefined || next === undefined)
      return [];
    const last = replay.entries.findLast(
      (each) => each.section === entry.section && each.after.some((count) => count !== null && count > 0),
    );
    const sizes = pattern.sizes.map((_, size) => size);
    const counts = sizes.map((size) => entry.after[size] ?? null);
    const grows = sizes.some((size) => replay.entries.some((each) => (each.after[size] ?? 0) > 1.5 * (counts[size] ?? 0)));
    const rounds = next.unit === 'round' || (next.node.type === 'plain' && next.node.unit === 'round');
    if (!rounds || grows || last === undefined) return [];
    const off = sizes.filter((size) => {
      const count = counts[size];
      return count !== null && count !== undefined && (count / density.per < kind.from * 0.8 || count / density.per > kind.to * 1.25);
    });
    const [size] = off;
    if (size === undefined) return [];
    const count = counts[size] as number;
    const cm = Math.round((10 * count) / density.per) / 10;
    const who = inSizes(pattern.sizes, off.slice(0, 1));
    return [
      found(
        context,
        castOnGirth,
        entry.span,
        `At ${density.words}, ${count} sts go ${cm} cm round${who === '' ? '' : ` ${who}`}: ${cm < kind.from ? 'very small' : 'very large'} for ${kind.name}. Is the cast-on or the gauge wrong?`,
        { sizes: pattern.sizes.length > 1 ? off : [] },
      ),
    ];
  },
};
