import type { NamedMeasure } from '../src/pattern/front/front-matter.ts';
import { found } from './facts/blocks.ts';
import { pairFaults } from './facts/pairs.ts';
import { printed, stepOf, valueAt } from './facts/units.ts';
import { inSizes, sentence } from './facts/wording.ts';
import type { Finding, Rule } from './rule.ts';

const girth = /\b(?:bust|chest)\b/i;
const easeWord = /\bease\b/i;

export const bodyAndEase: Rule = {
  id: 'body-and-ease',
  level: 'query',
  title: 'Body and ease make the finished bust',
  meaning: 'The stated ease added to the body measure does not come to the finished measure, in one size or in all.',
  reason: 'The knitter chooses the size by the ease; in this size the garment sits otherwise than promised.',
  needsReplay: false,
  wrong: {
    draft: `# Kelp Vest

Sizes: S (M, L)

To fit bust: 82 (92, 102) cm

Finished bust: 90 (100, 112) cm

Ease: 8 cm

Cast on 40 (44, 50) sts.

Row 1: Knit.
`,
  },
  right: {
    draft: `# Kelp Vest

Sizes: S (M, L)

To fit bust: 82 (92, 102) cm

Finished bust: 90 (100, 110) cm

Ease: 8 cm

Cast on 40 (44, 50) sts.

Row 1: Knit.
`,
  },
  check(context): readonly Finding[] {
    const { measures, pairs } = context.pattern.front;
    const sizes = context.pattern.sizes;
    const wrong = pairFaults(pairs).flatMap((fault) => [fault.pair.first.span.start, fault.pair.second.span.start]);
    const whole = (one: NamedMeasure): boolean => !one.measures.some((measure) => wrong.includes(measure.span.start));
    const fit = measures.find((one) => one.kind === 'toFit' && girth.test(one.name) && whole(one));
    const finished = measures.find((one) => one.kind === 'finished' && girth.test(one.name) && whole(one));
    // "Shown with 5 cm of ease" speaks of one sample and one wearer.
    const source = context.manuscript.source;
    const ease = measures.find(
      (one) =>
        easeWord.test(one.name) &&
        !/\b(?:shown|modelled|modeled|sample|worn|about|approx)/i.test(source.slice(Math.max(0, one.span.start - 60), one.span.end)),
    );
    if (fit === undefined || finished === undefined || ease === undefined) return [];
    for (const amount of ease.measures) {
      const body = fit.measures.find((one) => one.unit === amount.unit);
      const made = finished.measures.find((one) => one.unit === amount.unit);
      if (body === undefined || made === undefined || amount.upper !== null) continue;
      const room = Math.max(stepOf(body), stepOf(made)) / 2 + 0.01;
      const off = sizes.flatMap((_, size) => {
        const [low, ease1, total] = [
          valueAt(body, size, sizes.length),
          valueAt(amount, size, sizes.length),
          valueAt(made, size, sizes.length),
        ];
        if (low === null || ease1 === null || total === null) return [];
        const high = body.upper?.[size] ?? low;
        return total < low + ease1 - room || total > high + ease1 + room ? [{ size, low, ease1, total }] : [];
      });
      const [first] = off;
      if (first === undefined) return [];
      const unit = amount.unit;
      const sum = `${printed(first.low, unit)} + ${printed(first.ease1, unit)} of ease = ${printed(first.low + first.ease1, unit)}, and the finished measure is ${printed(first.total, unit)}`;
      const named = off.map((one) => one.size);
      return [
        found(
          context,
          bodyAndEase,
          made.span,
          sentence(
            sum,
            `${inSizes(sizes, [first.size])}.`,
            off.length > 1 && `${off.length - 1} other ${off.length === 2 ? 'size differs' : 'sizes differ'} too.`,
            'Which of the three is meant?',
          ),
          { sizes: sizes.length > 1 ? named : [], also: [body.span, amount.span] },
        ),
      ];
    }
    return [];
  },
};
