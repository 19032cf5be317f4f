import { found } from './facts/blocks.ts';
import { walkPattern } from './facts/walk.ts';
import { listed } from './facts/wording.ts';
import type { Context, Finding, Rule } from './rule.ts';

/** So many rows in a run are a length, not a border. */
const manyRows = 24;

/** A length is printed for a piece whose rows are counted off: the two meet only through the row gauge. */
function lengthByRows({ pattern, replay }: Context): boolean {
  const printed = pattern.front.measures.some(
    (one) => one.kind !== 'toFit' && /\b(?:length|long|tall|height|high|deep|depth)\b/i.test(one.name) && !/\buntil\b/i.test(one.name),
  );
  const counted = replay.entries.reduce(
    (rows, entry) => rows + (entry.unit === 'step' || entry.node.type === 'until' ? 0 : entry.times),
    0,
  );
  const measured = replay.entries.some(
    (entry) =>
      (entry.node.type === 'until' && entry.node.goal.kind === 'measure') ||
      (entry.node.type === 'repeatRows' && entry.node.until?.kind === 'measure'),
  );
  return printed && !measured && counted >= manyRows;
}

/** Increases and decreases spread over rows: how long they take is told by the row gauge alone. */
function toldByRows(context: Context): boolean {
  let told = false;
  walkPattern(context.pattern, (node) => {
    if (node.type === 'shape' && node.schedule.length > 0) told = true;
    if (node.type === 'repeatRows' && node.schedule.length > 0) told = true;
  });
  return told || lengthByRows(context);
}

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

Dec 1 st at each end of next and every foll 8th row until 24 sts rem.
`,
  },
  right: {
    draft: `# Kelp Scarf

Gauge: 24 sts and 32 rows = 10 cm in st st

All decreases are k2tog.

Cast on 48 sts.

Row 1: Knit.

Dec 1 st at each end of next and every foll 8th row until 24 sts rem.
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
    // A scarf is knitted until it is long enough.
    const level = missing.length === 1 && missing[0] === 'rows' && !toldByRows(context) ? 'style' : 'query';
    const ask = missing.includes('the length they are counted over') ? 'Over how much is it counted?' : 'How many are meant?';
    return [found(context, gaugeComplete, first.span, `The gauge does not give ${listed(missing)}. ${ask}`, { level })];
  },
};
