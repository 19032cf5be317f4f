import type { Measure } from '../src/pattern/front/front-matter.ts';
import { found } from './facts/blocks.ts';
import { densities } from './facts/gauges.ts';
import { pairFaults } from './facts/pairs.ts';
import { printed, rounded, stepOf, valueAt } from './facts/units.ts';
import { inSizes, sentence } from './facts/wording.ts';
import type { Context, Finding, Rule } from './rule.ts';

/** Ribbing and garter bands are not worked at the gauge of the main fabric; a tenth is left for them, and two rows for casting on and off. */
const room = { share: 0.1, rows: 2 } as const;

const whole = /\b(?:tall|height|high|length|long|depth|deep)\b/i;
const partial = /\b(?:sleeve|seam|from|to|body|yoke|armhole|foot|leg|hand|thumb|brim|crown|hood|strap|circumference|shoulder)\b/i;

/** Rows of the one piece of the draft, per size; null where any are told by a measure, were not understood, or are short rows. */
function rowsOfPiece(context: Context): readonly number[] | null {
  const { pattern, replay } = context;
  const pieces = new Set(replay.entries.map((entry) => pattern.sections[entry.section]?.piece ?? null));
  const casts = replay.entries.filter((entry) => entry.node.type === 'castOn').length;
  if (
    pattern.reading.notRead.length > 0 ||
    casts !== 1 ||
    (pieces.size > 1 && replay.entries.some((entry) => entry.node.type === 'pickUp'))
  )
    return null;
  const rows = new Array<number>(pattern.sizes.length).fill(0);
  for (const entry of replay.entries) {
    const { node } = entry;
    if (
      node.type === 'turn' ||
      node.type === 'refer' ||
      (node.type === 'until' && node.goal.kind === 'measure') ||
      (node.type === 'repeatRows' && node.until?.kind === 'measure')
    )
      return null;
    if (entry.unit === 'step') continue;
    for (const size of rows.keys()) if (entry.after[size] !== null || entry.before[size] !== null) rows[size]! += entry.times;
  }
  return rows;
}

export const rowsAndGauge: Rule = {
  id: 'rows-and-gauge',
  level: 'query',
  title: 'Rows divided by row gauge give the stated length',
  meaning: 'All rows of the piece are told, and at the stated row gauge they come to another length than the one at the top.',
  reason: 'The piece comes out shorter or longer than promised, and the yarn with it.',
  needsReplay: true,
  wrong: {
    draft: `# Kelp Cowl

Finished measurements: 50 cm circumference, 30 cm tall

Tension: 24 sts and 32 rnds to 10 cm over st st

Cast on 120 sts. Join in the round.

Knit 64 rnds.

Cast off.
`,
  },
  right: {
    draft: `# Kelp Cowl

Finished measurements: 50 cm circumference, 20 cm tall

Tension: 24 sts and 32 rnds to 10 cm over st st

Cast on 120 sts. Join in the round.

Knit 64 rnds.

Cast off.
`,
  },
  check(context): readonly Finding[] {
    const { gauges, measures, pairs } = context.pattern.front;
    const gauge = gauges.length === 1 ? gauges[0]! : null;
    const rows = gauge === null || gauge.rows === null ? null : rowsOfPiece(context);
    if (gauge === null || rows === null) return [];
    const wrong = pairFaults(pairs).flatMap((fault) => [fault.pair.first.span.start, fault.pair.second.span.start]);
    return measures.flatMap((name) => {
      if (
        name.kind !== 'finished' ||
        !whole.test(name.name) ||
        partial.test(name.name) ||
        name.measures.some((one) => wrong.includes(one.span.start))
      )
        return [];
      const measure: Measure | undefined = name.measures.find((one) => one.unit === 'cm') ?? name.measures.find((one) => one.unit === 'in');
      const density = measure === undefined ? undefined : densities(gauge, 'rows', measure.unit)[0];
      if (measure === undefined || density === undefined) return [];
      const sizes = context.pattern.sizes;
      const off = sizes.flatMap((_, size) => {
        const stated = valueAt(measure, size, sizes.length);
        const made = rows[size]! / density.per;
        const slack = stated === null ? 0 : Math.max(stated * room.share, room.rows / density.per, stepOf(measure));
        const near = stated !== null && made / stated > 0.6 && made / stated < 1.67;
        return near && Math.abs(made - stated) > slack ? [{ size, stated, made }] : [];
      });
      const [first] = off;
      if (first === undefined) return [];
      const counted = `${rows[first.size]!} ${(gauge.unit ?? 'rows') === 'rounds' ? 'rnds' : 'rows'}`;
      const message = sentence(
        `At ${density.words}, ${counted} are ${rounded(first.made, measure.unit)} and not ${printed(first.stated, measure.unit)}`,
        `${inSizes(sizes, [first.size])}.`,
        'Which is right: the gauge, the length or the number of rows?',
      );
      return [
        found(context, rowsAndGauge, measure.span, message, {
          sizes: sizes.length > 1 ? off.map((one) => one.size) : [],
          stated: off.map((one) => one.stated),
          replayed: off.map((one) => Math.round(one.made * 10) / 10),
        }),
      ];
    });
  },
};
