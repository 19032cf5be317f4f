import { found, inside } from './facts/blocks.ts';
import { type PairFault, pairFaults, ratiosOf } from './facts/pairs.ts';
import { printed, rounded } from './facts/units.ts';
import { excerpt, inSizes, listed, sentence } from './facts/wording.ts';
import type { Finding, Rule } from './rule.ts';

/** "59 cm is 23¼ in, not 24¼ in". */
function sums(fault: PairFault): string {
  const { first, second } = fault.pair;
  return listed(
    fault.first.map(
      (value, at) =>
        `${printed(value, first.unit)} is ${rounded(fault.converted[at]!, second.unit)} and not ${printed(fault.second[at]!, second.unit)}`,
    ),
  );
}

export const unitsAgree: Rule = {
  id: 'units-agree',
  level: 'error',
  title: 'Inches and centimetres, yards and metres, ounces and grams agree',
  meaning: 'A measure is printed in two units, and the two are different lengths or weights even when both are rounded.',
  reason: 'Half of the readers follow one unit and half the other: one of them gets another size than the other.',
  needsReplay: false,
  wrong: {
    draft: `# Kelp Runner

Finished length: 38 cm (16 in)

Cast on 20 sts.

Row 1: K20.
`,
  },
  right: {
    draft: `# Kelp Runner

Finished length: 38 cm (15 in)

Cast on 20 sts.

Row 1: K20.
`,
  },
  check(context): readonly Finding[] {
    const { pairs, needles, gauges } = context.pattern.front;
    const source = context.manuscript.source;
    const faults = pairFaults(pairs);
    const words = (fault: PairFault): string => `${sums(fault)}|${context.manuscript.place(fault.pair.first.span.start).line}`;
    // "45 × 45 cm (19 × 19 in)" is one slip.
    const once = faults.filter((fault, at) => faults.findIndex((other) => words(other) === words(fault)) === at);
    const findings = once.map((fault) => {
      const { first, second } = fault.pair;
      const span = { start: Math.min(first.span.start, second.span.start), end: Math.max(first.span.end, second.span.end) };
      const sizes = fault.pair.first.values.length > 1 ? fault.sizes : [];
      const message = sentence(
        `${sums(fault)}${sizes.length === 0 ? '' : ` ${inSizes(context.pattern.sizes, sizes)}`}.`,
        fault.exchanged && 'The two figures fit when they change places.',
        fault.sure ? 'Correct one of them.' : 'The other sizes agree more closely: is this one meant?',
      );
      return found(context, unitsAgree, span, message, {
        level: fault.sure ? 'error' : 'query',
        sizes,
        stated: fault.second,
        replayed: fault.converted,
      });
    });
    // Lengths of needles and gauge squares follow the trade's own round figures.
    const trade = [...needles.map((one) => one.span), ...gauges.map((one) => one.span)];
    const own = pairs.filter((pair) => !trade.some((span) => inside(pair.first.span, span)));
    const { exact, trade: byTrade } = ratiosOf(own);
    const [one, two] = [exact[0], byTrade[0]];
    if (faults.length === 0 && one !== undefined && two !== undefined) {
      const quoted = (pair: typeof one): string => `"${excerpt(source, { start: pair.first.span.start, end: pair.second.span.end }, 50)}"`;
      findings.push(
        found(
          context,
          unitsAgree,
          two.first.span,
          `Two rates of conversion are used: ${quoted(one)} takes 2.54 cm to the inch, ${quoted(two)} takes 2.5. Use one of them throughout.`,
          {
            level: 'query',
            also: [one.first.span],
          },
        ),
      );
    }
    return findings;
  },
};
