import { found, stretches } from './facts/blocks.ts';
import { listedSizes, millimetres, needleMm, needleUses } from './facts/used-needles.ts';
import { figure, listed } from './facts/wording.ts';
import type { Context, Finding, Rule } from './rule.ts';

/** Words of a needle's role, as far as they could be met again: "for the ribbing", "edgings". */
const namedAgain = (context: Context, words: string): boolean => {
  const stem = words
    .toLowerCase()
    .replace(/[^a-z ]/g, '')
    .split(' ')
    .filter((word) => word.length > 3)[0]
    ?.slice(0, 5);
  return (
    stem !== undefined &&
    stretches(context).some((one) => one.role === 'work' && one.text.toLowerCase().includes(stem) && /\bneedles?|\bdpns?/i.test(one.text))
  );
};

/** Needles that a gauge is told on and the materials do not list. */
function gaugeNeedles(context: Context, sizes: readonly number[]): readonly Finding[] {
  const { gauges } = context.pattern.front;
  return gauges.flatMap((gauge) => {
    const line = context.manuscript.source.slice(gauge.span.start, gauge.span.end + 80).split('\n')[0]!;
    const named = millimetres(line)[0];
    if (named === undefined || sizes.includes(named.mm)) return [];
    const start = gauge.span.start + named.index;
    return [
      found(
        context,
        needleUse,
        { start, end: start + named.length },
        `The gauge is told on ${figure(named.mm)} mm needles, and the materials list ${listed(sizes.map((size) => `${figure(size)} mm`))}. Which size is meant?`,
      ),
    ];
  });
}

export const needleUse: Rule = {
  id: 'needle-use',
  level: 'query',
  title: 'Every needle size used is listed, and every one listed is used',
  meaning: 'The instructions call for a needle size that the materials do not list, or never call for one that they do.',
  reason: 'The knitter has no such needle at hand, or stays on the wrong one because the change was never told.',
  needsReplay: false,
  wrong: {
    draft: `# Kelp Band

Needles: 3 mm and 4 mm needles

With 3 mm needles cast on 20 sts.

Row 1: Knit.

Change to 4.5 mm needles.

Row 2: Knit.
`,
    finds: 2,
  },
  right: {
    draft: `# Kelp Band

Needles: 3 mm and 4 mm needles

With 3 mm needles cast on 20 sts.

Row 1: Knit.

Change to 4 mm needles.

Row 2: Knit.
`,
  },
  check(context): readonly Finding[] {
    const sizes = listedSizes(context);
    if (sizes.length === 0) return [];
    const uses = needleUses(context);
    const findings: Finding[] = [];
    const asked = new Set<number>();
    const all = listed(sizes.map((size) => `${figure(size)} mm`));
    for (const use of uses) {
      if (sizes.includes(use.mm) || asked.has(use.mm)) continue;
      asked.add(use.mm);
      findings.push(
        found(
          context,
          needleUse,
          use.span,
          `${figure(use.mm)} mm needles are used here, and the materials list ${all}. Which size is meant?`,
        ),
      );
    }
    findings.push(...gaugeNeedles(context, sizes));
    const used = new Set(uses.map((use) => use.mm));
    if (sizes.length < 2 || used.size === 0) return findings;
    for (const needle of context.pattern.front.needles) {
      const { role } = needle;
      const mm = needleMm(needle);
      if (mm === null || used.has(mm) || asked.has(-mm)) continue;
      if (role !== null && namedAgain(context, role)) continue;
      // A needle of another kind may be meant by its kind alone: "change to dpns".
      if (
        needle.kind === 'doublePointed' &&
        context.pattern.front.needles.some((other) => other.kind !== null && other.kind !== 'doublePointed') &&
        stretches(context).some((one) => one.role === 'work' && /\bdpns?\b|double[- ]pointed/i.test(one.text))
      )
        continue;
      asked.add(-mm);
      findings.push(
        found(
          context,
          needleUse,
          needle.span,
          `The materials list ${figure(mm)} mm needles, and no instruction changes to them. Where are they used?`,
        ),
      );
    }
    return findings;
  },
};
