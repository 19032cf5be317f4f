import { found } from './facts/blocks.ts';
import { figure } from './facts/wording.ts';
import type { Finding, Rule } from './rule.ts';
import { classesApart, yarnWeightOf } from './tables/yarn-weights.ts';

/** Of a fabric blocked out hard (a shawl) the yarn's class says nothing. */
const plainFabric = /\b(?:st st|stocking|stockinette|stockingstitch|stocking-stitch)\b/i;

export const yarnAndGauge: Rule = {
  id: 'yarn-and-gauge',
  level: 'query',
  title: 'Yarn weight and gauge belong together',
  meaning: 'The gauge lies more than one class away from what the standard yarn weight system gives for a yarn so named.',
  reason: 'Either the yarn or the gauge is misprinted, and a knitter who swaps the yarn by its class cannot get the gauge.',
  needsReplay: false,
  wrong: {
    draft: `# Kelp Scarf

Yarn: Orrin Flax, bulky, 80 m per 100 g; 2 balls

Gauge: 30 sts and 40 rows = 10 cm in st st

Cast on 48 sts.

Row 1: Knit.
`,
  },
  right: {
    draft: `# Kelp Scarf

Yarn: Orrin Flax, bulky, 80 m per 100 g; 2 balls

Gauge: 14 sts and 20 rows = 10 cm in st st

Cast on 48 sts.

Row 1: Knit.
`,
  },
  check(context): readonly Finding[] {
    const { yarns, gauges } = context.pattern.front;
    // Strands held together make another weight, and of two yarns nobody says which the gauge is for.
    const yarn = yarns.length === 1 ? yarns[0] : undefined;
    if (yarn === undefined || yarn.weightClass === null || /\b(?:held|double|doubled|together|strands?|two ends)\b/i.test(yarn.text))
      return [];
    const weight = yarnWeightOf(yarn.weightClass);
    const gauge = gauges.find((one) => one.stitches !== null && !one.blocked && one.fabric !== null && plainFabric.test(one.fabric));
    const over = gauge?.over[0];
    const length = over?.values[0];
    if (weight === null || gauge === undefined || over === undefined || length === null || length === undefined) return [];
    const per10 = over.unit === 'in' ? (gauge.stitches! / length) * 4 : over.unit === 'cm' ? (gauge.stitches! / length) * 10 : Number.NaN;
    if (!(per10 > 0) || classesApart(weight, per10) <= 1) return [];
    const [low, high] = weight.gauge;
    const range = low === null ? `up to ${high} sts` : high === null ? `${low} sts and more` : `${low} to ${high} sts`;
    return [
      found(
        context,
        yarnAndGauge,
        gauge.span,
        `${figure(per10)} sts to 10 cm (4 in) are far from "${yarn.weightClass}" yarn, which the yarn weight system puts at ${range}. Is the gauge or the yarn misprinted?`,
        { also: [yarn.span] },
      ),
    ];
  },
};
