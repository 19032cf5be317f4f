import { sizeValue } from '../grammar/count.ts';
import type { Yarn } from '../src/pattern/front/front-matter.ts';
import { found } from './facts/blocks.ts';
import { densities } from './facts/gauges.ts';
import { inSizes, sentence } from './facts/wording.ts';
import type { Context, Finding, Rule } from './rule.ts';
import { questionOutside, yarnForStitches } from './tables/loop-length.ts';
import { metresPerYard } from './tables/units.ts';

/** Ribs and an allowance take up to half as much again; beyond this the ball length or the number of balls is in doubt. */
const farBeyond = 1.8;
/** The constants are those of plain fabric as it comes off the needles; lace and what is pinned out wide follow none. */
const plainFabric = /\b(?:st st|stocking|stockinette)\b/i;
/** The last ball is hardly ever used up, so a small project is not judged by it. */
const leastMetres = 150;

/** Less is a swatch or a fragment. */
const leastStitches = 2000;
/** A second sock is not in the rows; how often each piece is made cannot be told for sure. */
const madeTwice =
  /\b(?:second (?:sock|mitt|mitten|glove|slipper|cuff|piece|one)|both [a-z]+ (?:are|is)? ?(?:alike|the same)|make (?:2|two|another|a second)|pair of (?:socks|mitts|mittens|gloves|slippers))\b/i;

/** Stitches of the whole draft per size; null where lengths are told by measures, or anything was not understood. */
function stitchesOf(context: Context): readonly number[] | null {
  const { pattern, replay } = context;
  if (madeTwice.test(context.manuscript.source) || pattern.reading.notRead.length > 0 || replay.observations.some((one) => !one.certain))
    return null;
  const totals = new Array<number>(pattern.sizes.length).fill(0);
  for (const entry of replay.entries) {
    const { node } = entry;
    const open =
      (node.type === 'until' && node.goal.kind !== 'count' && node.goal.kind !== 'rows') ||
      (node.type === 'repeatRows' && node.until !== null && node.until.kind !== 'count' && node.until.kind !== 'rows') ||
      node.type === 'refer';
    const times = pattern.sections[entry.section]?.times ?? 1;
    if (open || entry.afterPerRepeat !== null) return null;
    if (entry.unit === 'step') continue;
    for (const size of totals.keys()) totals[size]! += (entry.after[size] ?? 0) * entry.times * times;
  }
  return totals;
}

/** Metres asked for in a size: the total if it is printed, else balls times their length. */
function metres(yarn: Yarn, size: number): number | null {
  const inMetres = (value: number | null | undefined, unit: string): number | null =>
    value === null || value === undefined ? null : unit === 'm' ? value : unit === 'yd' ? value * metresPerYard : null;
  for (const total of yarn.total) {
    const value = inMetres(sizeValue(total.values, size), total.unit);
    if (value !== null) return value;
  }
  const ball = yarn.lengthPerBall.map((one) => inMetres(one.values[0], one.unit)).find((value) => value !== null);
  const count = yarn.balls === null ? null : sizeValue(yarn.balls, size);
  return ball === undefined || count === null ? null : ball * count;
}

export const yarnEstimate: Rule = {
  id: 'yarn-estimate',
  level: 'query',
  title: 'The yarn suits the number of stitches',
  meaning: 'The yarn asked for is far from what so many stitches take at this gauge, by the length of yarn in one loop.',
  reason: 'Ball lengths are easily doubled or halved; the knitter buys twice too much or runs out half-way.',
  needsReplay: true,
  wrong: {
    draft: `# Kelp Scarf

Yarn: Orrin Flax, 110 m per 50 g; 12 balls

Gauge: 20 sts and 28 rows = 10 cm in st st

Cast on 60 sts.

Knit 280 rows.

Bind off.
`,
  },
  right: {
    draft: `# Kelp Scarf

Yarn: Orrin Flax, 110 m per 50 g; 4 balls

Gauge: 20 sts and 28 rows = 10 cm in st st

Cast on 60 sts.

Knit 280 rows.

Bind off.
`,
  },
  check(context): readonly Finding[] {
    const { yarns, gauges } = context.pattern.front;
    const yarn = yarns.length === 1 ? yarns[0]! : null;
    const gauge = gauges.length === 1 ? gauges[0]! : null;
    const sts = gauge === null ? undefined : densities(gauge, 'stitches', 'cm')[0];
    const rows = gauge === null ? undefined : densities(gauge, 'rows', 'cm')[0];
    if (
      yarn === null ||
      gauge === null ||
      sts === undefined ||
      gauge.blocked ||
      gauge.fabric === null ||
      !plainFabric.test(gauge.fabric) ||
      /\b(?:double|held together|two strands)\b/i.test(yarn.text)
    )
      return [];
    const stitches = stitchesOf(context);
    if (stitches === null) return [];
    const off = context.pattern.sizes.flatMap((_, size) => {
      const stated = metres(yarn, size);
      if (stated === null || stitches[size]! < leastStitches) return [];
      const range = yarnForStitches(sts.per * 10, rows === undefined ? null : rows.per * 10, stitches[size]!);
      const middle = (range.low + range.high) / 2;
      const ball = stated / Math.max(1, (yarn.balls === null ? 1 : sizeValue(yarn.balls, size)) ?? 1);
      const little = stated < middle * questionOutside.low;
      const much = stated - ball > middle * farBeyond && stated > leastMetres;
      return little || much ? [{ size, stated, range }] : [];
    });
    const [first] = off;
    if (first === undefined) return [];
    const tens = (value: number): number => Math.round(value / 10) * 10;
    const message = sentence(
      `${stitches[first.size]!} sts at ${sts.words} take about ${tens(first.range.low)} to ${tens(first.range.high)} m by the length of their loops; ${Math.round(first.stated)} m are asked for`,
      `${inSizes(context.pattern.sizes, [first.size])}.`,
      'Is the ball length right?',
    );
    return [
      found(context, yarnEstimate, yarn.span, message, {
        sizes: context.pattern.sizes.length > 1 ? off.map((one) => one.size) : [],
        stated: Math.round(first.stated),
      }),
    ];
  },
};
