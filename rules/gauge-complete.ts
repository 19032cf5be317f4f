import { found } from './facts/blocks.ts';
import { listed } from './facts/wording.ts';
import type { Finding, Rule } from './rule.ts';

export const gaugeComplete: Rule = {
  id: 'gauge-complete',
  level: 'query',
  title: 'The gauge says how many stitches and how many rows',
  meaning: 'The gauge lacks its stitches, its rows, or the length they are counted over.',
  reason: 'Without rows, every length told by rows is a guess; without stitches, every width is.',
  needsReplay: false,
  wrong: {
    draft: `# Kelp Scarf

Gauge: 24 sts = 10 cm in st st

Cast on 48 sts.

Row 1: Knit.
`,
  },
  right: {
    draft: `# Kelp Scarf

Gauge: 24 sts and 32 rows = 10 cm in st st

Cast on 48 sts.

Row 1: Knit.
`,
  },
  check(context): readonly Finding[] {
    const { gauges } = context.pattern.front;
    const first = gauges[0];
    if (first === undefined) return [];
    const missing: string[] = [];
    if (gauges.every((one) => one.stitches === null)) missing.push('stitches');
    // Two rows of garter stitch are as high as a stitch is wide; nobody counts them.
    if (gauges.every((one) => one.rows === null && !/\bgarter\b/i.test(one.fabric ?? ''))) missing.push('rows');
    if (gauges.every((one) => one.over.length === 0)) missing.push('the length they are counted over');
    if (missing.length === 0 || missing.length === 3) return [];
    return [
      found(
        context,
        gaugeComplete,
        first.span,
        `The gauge does not give ${listed(missing)}. How many are meant?`.replace(
          'the length they are counted over. How many are meant?',
          'the length it is counted over. Over how much is it?',
        ),
      ),
    ];
  },
};
