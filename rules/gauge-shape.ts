import { found } from './facts/blocks.ts';
import { figure } from './facts/wording.ts';
import type { Finding, Rule } from './rule.ts';
import { rowsPerStitch } from './tables/units.ts';

/** Stocking stitch as it comes off the needles; a shawl pinned out hard has any shape. */
const plainFabric = /\b(?:st st|stocking|stockinette)\b/i;

/** Fabrics whose stitches are long: rows of brioche are counted half, dropped and drawn loops are as high as one likes. */
const loose = /\b(?:brioche|fisherman|shaker|drop|loop|elongat|open|mesh|tuck|stretch)/i;
/** In every other fabric there are more rows than stitches, pinned out or not. From memory of printed gauges. */
const fewestRows = 0.95;

export const gaugeShape: Rule = {
  id: 'gauge-shape',
  level: 'query',
  title: 'Rows and stitches of the gauge make a stocking stitch fabric',
  meaning: 'Rows divided by stitches lie outside what stocking stitch gives, or a fabric has fewer rows than stitches.',
  reason: 'A digit of the gauge is soon misprinted, and everything told by rows follows it.',
  needsReplay: false,
  wrong: {
    draft: `# Kelp Scarf

Gauge: 22 sts and 20 rows = 10 cm in st st

Cast on 48 sts.

Row 1: Knit.
`,
  },
  right: {
    draft: `# Kelp Scarf

Gauge: 22 sts and 30 rows = 10 cm in st st

Cast on 48 sts.

Row 1: Knit.
`,
  },
  check(context): readonly Finding[] {
    return context.pattern.front.gauges.flatMap((gauge) => {
      if (gauge.stitches === null || gauge.rows === null || loose.test(gauge.fabric ?? '')) return [];
      const ratio = gauge.rows / gauge.stitches;
      const plain =
        !gauge.blocked && plainFabric.test(gauge.fabric ?? '') && !/\b(?:stranded|colou?rwork|lace|rib|garter)\b/i.test(gauge.fabric ?? '');
      if (!plain) {
        if (ratio >= fewestRows) return [];
        return [
          found(
            context,
            gaugeShape,
            gauge.span,
            `${figure(gauge.rows)} rows to ${figure(gauge.stitches)} sts: a knitted stitch is wider than it is high, so a gauge has more rows than stitches. Is one of the two misprinted, or are they exchanged?`,
          ),
        ];
      }
      if (ratio >= rowsPerStitch.low && ratio <= rowsPerStitch.high) return [];
      return [
        found(
          context,
          gaugeShape,
          gauge.span,
          `${figure(gauge.rows)} rows to ${figure(gauge.stitches)} sts are ${figure(ratio)} rows to a stitch; stocking stitch has ${rowsPerStitch.low} to ${rowsPerStitch.high}. Is one of the two misprinted?`,
        ),
      ];
    });
  },
};
