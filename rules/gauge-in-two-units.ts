import type { Gauge } from '../src/pattern/front/front-matter.ts';
import { found } from './facts/blocks.ts';
import { densities } from './facts/gauges.ts';
import { figure } from './facts/wording.ts';
import type { Finding, Rule } from './rule.ts';
import { gaugePercent } from './tables/units.ts';

/** A gauge told per inch is printed in halves at best, so it may be a quarter of a stitch off. */
const perInchRoom = 0.25;

const sameCloth = (one: Gauge, other: Gauge): boolean =>
  (one.fabric === null || other.fabric === null || one.fabric.toLowerCase() === other.fabric.toLowerCase()) &&
  (one.needle === null || other.needle === null || one.needle === other.needle);

export const gaugeInTwoUnits: Rule = {
  id: 'gauge-in-two-units',
  level: 'query',
  title: 'Gauge over inches and over centimetres is the same gauge',
  meaning: 'The stitches to the inch and the stitches to ten centimetres differ by more than two in a hundred.',
  reason: 'Swatching to one of them gives another size than swatching to the other.',
  needsReplay: false,
  wrong: {
    draft: `# Kelp Scarf

Gauge: 20 sts and 28 rows = 10 cm in st st; 4½ sts and 7 rows = 1 in in st st

Cast on 48 sts.

Row 1: Knit.
`,
  },
  right: {
    draft: `# Kelp Scarf

Gauge: 20 sts and 28 rows = 10 cm in st st; 5 sts and 7 rows = 1 in in st st

Cast on 48 sts.

Row 1: Knit.
`,
  },
  check(context): readonly Finding[] {
    const { gauges } = context.pattern.front;
    const findings: Finding[] = [];
    for (const [at, one] of gauges.entries()) {
      for (const other of gauges.slice(at + 1)) {
        if (one.stitches === null || other.stitches === null || !sameCloth(one, other)) continue;
        if (one.over.length !== 1 || other.over.length !== 1 || one.over[0]!.unit === other.over[0]!.unit) continue;
        const [inches, metric] = one.over[0]!.unit === 'in' ? [one, other] : [other, one];
        const own = densities(inches, 'stitches', 'in')[0];
        const converted = densities(metric, 'stitches', 'in');
        if (own === undefined || converted.length === 0) continue;
        const room = Math.max((own.per * gaugePercent) / 100, perInchRoom / (inches.over[0]!.values[0] ?? 1));
        if (converted.some((each) => Math.abs(each.per - own.per) <= room + 1e-9)) continue;
        const second = other.span;
        findings.push(
          found(
            context,
            gaugeInTwoUnits,
            second,
            `${converted[0]!.words} come to ${figure(converted[0]!.per)} sts to the inch, and ${own.words} to ${figure(own.per)}. Which gauge is meant?`,
            { also: [one.span] },
          ),
        );
      }
    }
    return findings;
  },
};
