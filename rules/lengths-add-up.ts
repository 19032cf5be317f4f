import type { Measure } from '../src/pattern/front/front-matter.ts';
import { found } from './facts/blocks.ts';
import { inUnit, statedLengths, type Worked, workedLengths } from './facts/lengths.ts';
import { pairFaults } from './facts/pairs.ts';
import { printed, valueAt } from './facts/units.ts';
import { inSizes, sentence } from './facts/wording.ts';
import type { Context, Finding, Rule } from './rule.ts';

/** Two lengths count as one within this: half the finest step of a tape measure in the unit. */
const same = (unit: Measure['unit']): number => (unit === 'in' ? 0.13 : 0.26);

/**
 * The one size whose difference stands alone while all the others agree. Where the others agree on nought, any size; where they agree
 * on a constant (a border worked afterwards), only one in the middle, since the ends of a list may well step aside.
 */
function oddSize(differences: readonly (number | null)[], unit: Measure['unit']): number | null {
  const room = same(unit);
  const known = differences.flatMap((value, size) => (value === null ? [] : [{ value, size }]));
  if (known.length < 3) return null;
  for (const odd of known) {
    const rest = known.filter((one) => one !== odd);
    const level = rest[0]!.value;
    if (!rest.every((one) => Math.abs(one.value - level) <= room / 2) || Math.abs(odd.value - level) <= room) continue;
    const end = odd === known[0] || odd === known[known.length - 1];
    if (Math.abs(level) <= room / 2 || !end) return odd.size;
  }
  return null;
}

const sizesOf = (context: Context): readonly number[] => context.pattern.sizes.map((_, size) => size);

const differences = (context: Context, whole: Measure, parts: readonly Measure[]): readonly (number | null)[] =>
  sizesOf(context).map((size) => {
    const values = [whole, ...parts].map((one) => valueAt(one, size, context.pattern.sizes.length));
    return values.some((value) => value === null) ? null : values[0]! - values.slice(1).reduce<number>((sum, value) => sum + value!, 0);
  });

/** Whether a stated length is one of this part: "Yoke depth" and "until yoke measures". */
const speaksOf = (name: string, part: string): boolean => {
  const stem = part.split(/\s+/).find((word) => word.length > 2);
  return stem !== undefined && name.toLowerCase().includes(stem);
};

interface Claim {
  readonly whole: Measure;
  readonly wholeName: string;
  readonly parts: readonly Worked[];
}

function claims(context: Context): readonly Claim[] {
  const worked = workedLengths(context);
  const found: Claim[] = [];
  for (const stated of statedLengths(context)) {
    for (const [at, one] of worked.entries()) {
      const whole = inUnit(stated.measures, one.measure.unit);
      if (whole === null) continue;
      if (speaksOf(stated.name, one.part)) found.push({ whole, wholeName: stated.name, parts: [one] });
      if (!/\blength\b/i.test(stated.name) || /\b(?:sleeve|foot|leg|arm)\b/i.test(stated.name)) continue;
      for (const other of worked.slice(at + 1)) {
        if (other.piece === one.piece && other.measure.unit === one.measure.unit && other.part !== one.part)
          found.push({ whole, wholeName: stated.name, parts: [one, other] });
      }
      if (!/sleeve|hood|cord/.test(one.part)) found.push({ whole, wholeName: stated.name, parts: [one] });
    }
  }
  // Sister pieces are worked to the same lengths.
  for (const [at, one] of worked.entries()) {
    for (const other of worked.slice(at + 1)) {
      if (other.part === one.part && other.piece !== one.piece && other.measure.unit === one.measure.unit && other.from === one.from)
        found.push({ whole: one.measure, wholeName: `the ${one.part} before`, parts: [other] });
    }
  }
  return found;
}

const opens = /^(?:beg(?:inning)?|start|cast[- ]on(?: edge)?|the cast[- ]on(?: edge)?|(?:lower|bottom) edge)\.?$/i;

/**
 * One length told in two places: "Cuff 3 in" and "until cuff measures 4 in"; "Sleeve seam 17 in" and "until sleeve measures 18 in from
 * beg", where the shaping follows at once. Any other pair may have a border or a cap between them.
 */
function toldTwice(context: Context, isWrong: (measure: Measure) => boolean): readonly Finding[] {
  const source = context.manuscript.source;
  const sizes = sizesOf(context);
  const worked = workedLengths(context);
  return context.pattern.front.measures.flatMap((stated) => {
    const name = stated.name.toLowerCase().trim();
    const seam = /^sleeve (?:seam|length)\b/.test(name);
    const mine = worked.filter((one) => (seam ? one.part === 'sleeve' && opens.test(one.from ?? '') : one.part === name));
    const [one, another] = mine;
    if (one === undefined || another !== undefined || stated.kind === 'toFit' || stated.span.start > one.measure.span.start) return [];
    const whole = inUnit(stated.measures, one.measure.unit);
    const next = source.slice(one.measure.span.end, one.measure.span.end + 140);
    if (whole === null || isWrong(whole) || isWrong(one.measure) || (seam && !/\bshape\b|\b(?:cast|bind) off\b|\bBO\b/i.test(next)))
      return [];
    const off = sizes.filter((_, size) => Math.abs(differences(context, whole, [one.measure])[size] ?? 0) > same(whole.unit));
    if (off.length === 0 || (off.length === 1 && sizes.length > 2 && statedLengths(context).includes(stated))) return [];
    const value = (measure: Measure, size: number): number => valueAt(measure, size, sizes.length)!;
    const [first] = off;
    const message = sentence(
      `${printed(value(one.measure, first!), whole.unit)} here, but "${stated.name}" is ${printed(value(whole, first!), whole.unit)}`,
      `${inSizes(context.pattern.sizes, [first!])}.`,
      'Which one is right?',
    );
    return [
      found(context, lengthsAddUp, one.measure.span, message, {
        sizes: sizes.length > 1 ? off : [],
        stated: value(whole, first!),
        replayed: value(one.measure, first!),
        also: [whole.span],
      }),
    ];
  });
}

export const lengthsAddUp: Rule = {
  id: 'lengths-add-up',
  level: 'query',
  title: 'Lengths worked to come to the lengths stated',
  meaning:
    'In all sizes but one the lengths of the instructions add up to the stated length and in that one they do not, or one length is told twice with two values.',
  reason: 'One size comes out longer or shorter than its measurements promise, or its pieces do not meet at the seams.',
  needsReplay: false,
  wrong: {
    draft: `# Kelp Vest

Sizes: S (M, L)

Length: 55 (57, 59) cm

## Back

Cast on 40 (44, 48) sts.

Work in st st until back measures 36 (37, 38) cm.

Cast off 4 sts at beg of next 2 rows. 32 (36, 40) sts.

Work straight until armhole measures 19 (20, 22) cm. Cast off.
`,
  },
  right: {
    draft: `# Kelp Vest

Sizes: S (M, L)

Length: 55 (57, 59) cm

## Back

Cast on 40 (44, 48) sts.

Work in st st until back measures 36 (37, 38) cm.

Cast off 4 sts at beg of next 2 rows. 32 (36, 40) sts.

Work straight until armhole measures 19 (20, 21) cm. Cast off.
`,
  },
  check(context): readonly Finding[] {
    const wrong = pairFaults(context.pattern.front.pairs).flatMap((fault) => [fault.pair.first.span, fault.pair.second.span]);
    const isWrong = (measure: Measure): boolean => wrong.some((span) => span.start < measure.span.end && measure.span.start < span.end);
    const twice = toldTwice(context, isWrong);
    if (context.pattern.sizes.length < 3) return twice;
    const all = claims(context).filter((claim) => !isWrong(claim.whole) && !claim.parts.some((part) => isWrong(part.measure)));
    const fits = (claim: Claim): boolean =>
      differences(
        context,
        claim.whole,
        claim.parts.map((part) => part.measure),
      ).every((value) => value === null || Math.abs(value) <= same(claim.whole.unit) / 2);
    // A length that another sum confirms in every size is right.
    const sure = new Set(
      all.filter(fits).flatMap((claim) => [claim.whole.span.start, ...claim.parts.map((part) => part.measure.span.start)]),
    );
    const findings: Finding[] = [...twice];
    const told = new Set<string>();
    for (const claim of all) {
      const measures = claim.parts.map((part) => part.measure);
      const values = differences(context, claim.whole, measures);
      const size = oddSize(values, claim.whole.unit);
      if (size === null) continue;
      const places = [claim.whole, ...measures].filter((one) => !sure.has(one.span.start));
      const last = claim.parts[claim.parts.length - 1]!.measure;
      if (places.length === 0 || told.has(`${size}`)) continue;
      told.add(`${size}`);
      const count = context.pattern.sizes.length;
      const unit = claim.whole.unit;
      const each = claim.parts.map((part) => `${part.part} ${printed(valueAt(part.measure, size, count)!, unit)}`);
      const total = measures.reduce((sum, one) => sum + valueAt(one, size, count)!, 0);
      const stated = valueAt(claim.whole, size, count)!;
      const sum = each.length > 1 ? `${each.join(' + ')} = ${printed(total, unit)}` : each[0]!;
      const message = sentence(
        `${sum}, but "${claim.wholeName}" is ${printed(stated, unit)}`,
        `${inSizes(context.pattern.sizes, [size])}.`,
        'The other sizes agree. Which one is right?',
      );
      findings.push(found(context, lengthsAddUp, last.span, message, { sizes: [size], stated, replayed: total, also: [claim.whole.span] }));
    }
    return findings;
  },
};
