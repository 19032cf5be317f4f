import type { Gauge, Measure, NamedMeasure } from '../src/pattern/front/front-matter.ts';
import { found } from './facts/blocks.ts';
import { type Held, heldCounts, inRounds, pieceTitle } from './facts/counts.ts';
import { type Density, densities } from './facts/gauges.ts';
import { pairFaults } from './facts/pairs.ts';
import { type Girth, girthOf, isSquare } from './facts/parts.ts';
import { printed, rounded, stepOf, valueAt } from './facts/units.ts';
import { inSizes, listed, sentence } from './facts/wording.ts';
import type { Context, Finding, Rule } from './rule.ts';

/** A way to come from counts to the measure: these stitches, less so many for seams or a band that overlaps. */
interface Way {
  readonly counts: readonly number[];
  readonly less: number;
  readonly rows: number;
  /** Pieces side by side: each may be a stitch off, because its count was made to fit the repeat. */
  readonly pieces: number;
}

/** More counts than one garment is worked at. */
const mostCounts = 400;

const upTo = (most: number): readonly number[] => Array.from({ length: most + 1 }, (_, at) => at);
/** Seams take one stitch from every edge of two pieces or of one; an overlapping band takes its own width. */
const seams = [0, 2, 4] as const;
const widestBand = 12;

function sum(lists: readonly (readonly number[])[]): readonly number[] {
  return (lists[0] ?? []).map((_, size) => lists.reduce((total, counts) => total + counts[size]!, 0));
}

/** The counts of all pieces whose titles hold the word, steadiest first. */
const ofPiece = (context: Context, held: readonly Held[], word: RegExp): readonly Held[] =>
  held.filter((one) => word.test(pieceTitle(context, one.piece)));

/** All ways in which the draft's counts may make the girth. Trying many makes the rule ask less, never more. */
function waysFor(context: Context, girth: Girth, held: readonly Held[], buttoned: boolean): readonly Way[] {
  // Pieces worked at one count many times give one way, with the longest stretch of rows.
  const ways = new Map<string, Way>();
  const add = (counts: readonly number[], rows: number, pieces: number, lesses: readonly number[]): void => {
    for (const less of lesses) {
      const key = `${counts.join()} ${less} ${pieces}`;
      if (rows > (ways.get(key)?.rows ?? -1)) ways.set(key, { counts, less, rows, pieces });
    }
  };
  const lesses = buttoned ? upTo(widestBand) : seams;
  if (girth === 'body') {
    const backs = ofPiece(context, held, /\bback\b/i);
    const fronts = ofPiece(context, held, /\bfronts?\b/i);
    const left = ofPiece(context, held, /\bleft front\b/i);
    const right = ofPiece(context, held, /\bright front\b/i);
    for (const back of backs.slice(0, 12)) {
      add(sum([back.counts, back.counts]), back.rows, 2, lesses);
      for (const front of fronts.slice(0, 12)) {
        add(sum([back.counts, front.counts]), Math.min(back.rows, front.rows), 2, lesses);
        add(sum([back.counts, front.counts, front.counts]), Math.min(back.rows, front.rows), 3, lesses);
      }
    }
    for (const one of left.slice(0, 6))
      for (const two of right.slice(0, 6))
        for (const back of backs.slice(0, 6)) add(sum([back.counts, one.counts, two.counts]), back.rows, 3, lesses);
  }
  const anyRound = held.some((one) => inRounds(context, one));
  for (const one of held) {
    const round = inRounds(context, one);
    add(one.counts, one.rows, 1, girth === 'body' ? lesses : round ? [0] : [0, 1, 2]);
    // A piece worked flat goes round twice: folded in half, or made twice and sewn.
    if (girth !== 'width' && !round && !(girth === 'tube' && anyRound)) add(sum([one.counts, one.counts]), one.rows, 2, seams);
  }
  return [...ways.values()];
}

interface Verdict {
  readonly way: Way;
  readonly misses: readonly number[];
  readonly density: Density;
}

const tolerances = (measure: Measure, context: Context, per: number, pieces: number): number => {
  const { cm, inches, stitches } = context.house.tolerance;
  return Math.max(measure.unit === 'in' ? inches : cm, (stitches * pieces) / per, stepOf(measure) / 2) + 0.01;
};

/** Whether one of the ways comes to the measure in every size: the usual case, answered first. */
function someWayFits(context: Context, measure: Measure, ways: readonly Way[], gauge: Gauge): boolean {
  const sizes = context.pattern.sizes.length;
  const stated = context.pattern.sizes.map((_, size) => valueAt(measure, size, sizes));
  return densities(gauge, 'stitches', measure.unit).some((density) => {
    const rooms = [1, 2, 3].map((pieces) => tolerances(measure, context, density.per, pieces));
    return ways.some((way) =>
      stated.every(
        (value, size) => value === null || Math.abs((way.counts[size]! - way.less) / density.per - value) <= rooms[way.pieces - 1]!,
      ),
    );
  });
}

function judge(context: Context, measure: Measure, ways: readonly Way[], gauge: Gauge): readonly Verdict[] {
  const sizes = context.pattern.sizes.map((_, size) => size);
  return densities(gauge, 'stitches', measure.unit).flatMap((density) => {
    const rooms = [1, 2, 3].map((pieces) => tolerances(measure, context, density.per, pieces));
    return ways.map((way) => {
      const room = rooms[way.pieces - 1]!;
      const misses = sizes.filter((size) => {
        const stated = valueAt(measure, size, sizes.length);
        return stated !== null && Math.abs((way.counts[size]! - way.less) / density.per - stated) > room;
      });
      return { way, misses, density };
    });
  });
}

/** A width is measured where the count stays for a while, not in the middle of a yoke. */
const steadyRows = 8;
/** So many sizes must agree before the rest is called odd. */
const oddOnes = (sizes: number): number => (sizes >= 5 ? 2 : sizes >= 3 ? 1 : 0);

function worded(context: Context, verdict: Verdict, measure: Measure, sizes: readonly number[]): string {
  const names = context.pattern.sizes;
  const { way, density } = verdict;
  return listed(
    sizes.map((size) => {
      const made = (way.counts[size]! - way.less) / density.per;
      const sts =
        way.less === 0 ? `${way.counts[size]!} sts` : `${way.counts[size]! - way.less} sts (${way.counts[size]!} less ${way.less})`;
      return `${sts} are ${rounded(made, measure.unit)} and not ${printed(valueAt(measure, size, names.length)!, measure.unit)}${names.length > 1 ? ` ${inSizes(names, [size])}` : ''}`;
    }),
  );
}

/** The one count a tube, a square or a body is worked at for most of its rows; null where none stands out. */
function mainCount(
  context: Context,
  girth: Girth,
  held: readonly Held[],
): { readonly counts: readonly number[]; readonly rows: number } | null {
  if (girth === 'body') return bodyCount(context, held);
  const able = girth === 'tube' ? held.filter((one) => inRounds(context, one)) : held;
  const total = able.reduce((rows, one) => rows + one.rows, 0);
  const alike = (one: Held): number =>
    able.filter((other) => other.counts.every((count, size) => count === one.counts[size])).reduce((rows, other) => rows + other.rows, 0);
  const [first] = [...able].sort((one, other) => alike(other) - alike(one));
  return first !== undefined && total >= 12 && alike(first) >= total * (girth === 'tube' ? 0.4 : 0.75) ? first : null;
}

/** A long stretch: a border is shorter. */
const longRows = 20;

/** Widest long stretch of the body in one piece, or of the back and as much again for the front. */
function bodyCount(context: Context, held: readonly Held[]): { readonly counts: readonly number[]; readonly rows: number } | null {
  const widest = (of: readonly Held[]): Held | null =>
    of.filter((one) => one.rows >= longRows).sort((one, other) => other.counts[0]! - one.counts[0]!)[0] ?? null;
  const body = widest(ofPiece(context, held, /\bbody\b/i));
  if (body !== null) return body;
  const back = widest(ofPiece(context, held, /^back\b/i));
  const front = widest(ofPiece(context, held, /^(?:left |right )?front\b/i));
  if (back === null || front === null) return null;
  const halves = front.counts.every((count, size) => count <= back.counts[size]! * 0.7);
  return { counts: sum(halves ? [back.counts, front.counts, front.counts] : [back.counts, back.counts]), rows: back.rows };
}

/** A measure of the body it is for: socks and hats are made smaller, mittens with room, and nobody says by how much. */
const ofTheWearer = (name: NamedMeasure): boolean =>
  name.kind !== 'finished' && /\b(?:head|foot|hand|palm|wrist|calf|leg|ankle)\b/i.test(name.name);
const speaksOfEase = (context: Context): boolean => /\bease\b/i.test(context.manuscript.source);

function check(context: Context, name: NamedMeasure, measure: Measure, girth: Girth, held: readonly Held[]): Finding | null {
  const gauges = context.pattern.front.gauges.filter((one) => one.stitches !== null);
  const buttoned =
    /button|bands?\b|overlap/i.test(name.name) || context.pattern.front.notions.some((one) => one.name === 'button' || one.name === 'zip');
  const ways = waysFor(
    context,
    girth,
    girth === 'upperArm' ? held.filter((one) => /sleeve/i.test(pieceTitle(context, one.piece))) : held,
    buttoned,
  );
  if (ways.length === 0 || gauges.some((gauge) => someWayFits(context, measure, ways, gauge))) return null;
  const verdicts = gauges.flatMap((gauge) => judge(context, measure, ways, gauge));
  if (verdicts.length === 0) return null;
  const steady = verdicts.filter((one) => one.way.rows >= steadyRows);
  if (steady.length === 0) return null;
  const best = steady.reduce((one, other) =>
    other.misses.length < one.misses.length || (other.misses.length === one.misses.length && other.way.rows > one.way.rows) ? other : one,
  );
  const sizes = context.pattern.sizes.length;
  const span = measure.span;
  if (best.misses.length <= oddOnes(sizes) && measure.values.length > 1) {
    const message = sentence(
      `At ${best.density.words},`,
      `${worded(context, best, measure, best.misses)}.`,
      'The other sizes agree. Which is right, the measure or the count?',
    );
    return found(context, widthAndGauge, span, message, {
      sizes: best.misses,
      stated: best.misses.map((size) => valueAt(measure, size, sizes)!),
    });
  }
  // No size agrees: worth saying only where there is no doubt which count is meant.
  const main = girth === 'tube' || girth === 'width' || girth === 'body' ? mainCount(context, girth, held) : null;
  const gauge = gauges.length === 1 ? gauges[0]! : null;
  if (main === null || gauge === null || steady.some((one) => one.misses.length <= sizes / 2)) return null;
  if (name.kind !== 'finished' && (girth === 'body' || ofTheWearer(name)) && speaksOfEase(context)) return null;
  const density = densities(gauge, 'stitches', measure.unit)[0]!;
  const all = context.pattern.sizes.map((_, size) => size);
  // Half or twice the measure is a misreading of this program's, not a slip of the gauge; so is any count behind unread words.
  const near = all.every((size) => {
    const share = main.counts[size]! / density.per / (valueAt(measure, size, sizes) ?? Number.NaN);
    if (ofTheWearer(name)) return /\b(?:head|foot)\b/i.test(name.name) && share > 1.04 && share < 1.3;
    return share > 0.75 && share < 1.33;
  });
  if (!near || context.pattern.reading.notRead.length > 0) return null;
  const verdict: Verdict = { way: { counts: main.counts, less: 0, rows: main.rows, pieces: 1 }, misses: all, density };
  const message = sentence(
    `At ${density.words},`,
    `${worded(context, verdict, measure, all.slice(0, 3))}.`,
    'Which is right: the gauge, the measure or the count?',
  );
  return found(context, widthAndGauge, span, message, { sizes: sizes > 1 ? all : [], also: [gauge.span] });
}

/** The name of a measure without its unit: "Finished chest, in", "Finished chest (cm)". */
const withoutUnit = (name: string): string =>
  name
    .replace(/[\s,(]*\b(?:cm|in|ins|inches)\b\)?\s*:?$/i, '')
    .trim()
    .toLowerCase();

/** Inches in a line of their own below the same measure in centimetres, worked out from it and rounded. */
function convertedFrom(context: Context, name: NamedMeasure, inches: Measure): boolean {
  const sizes = context.pattern.sizes;
  return context.pattern.front.measures.some((other) => {
    const cm = other.measures.find((each) => each.unit === 'cm');
    if (other === name || cm === undefined || withoutUnit(other.name) !== withoutUnit(name.name)) return false;
    return sizes.every((_, size) => {
      const [one, two] = [valueAt(inches, size, sizes.length), valueAt(cm, size, sizes.length)];
      return one === null || two === null || Math.abs(one * 2.54 - two) <= (stepOf(inches) * 2.54 + stepOf(cm)) / 2 + 0.01;
    });
  });
}

/** "To fit bust 81 cm, actual measurement 91 cm": the second measures what the first is for. */
function unnamedBody(context: Context, name: NamedMeasure): Girth | null {
  if (
    name.kind !== 'finished' ||
    !/^(?:actual|finished|knitted|garment)?\s?(?:measurements?|size)\s?(?:of garment)?$/i.test(name.name.trim())
  )
    return null;
  return context.pattern.front.measures.some((one) => one.kind === 'toFit' && /\b(?:bust|chest)\b/i.test(one.name)) ? 'body' : null;
}

export const widthAndGauge: Rule = {
  id: 'width-and-gauge',
  level: 'query',
  title: 'Stitches divided by gauge give the stated width',
  meaning: 'No count of the draft, with or without seam stitches and overlapping bands, comes to the stated width at the stated gauge.',
  reason: 'Whoever knits to gauge gets another size than the one chosen from the measurements.',
  needsReplay: true,
  wrong: {
    draft: `# Kelp Cowl

Finished measurements: 40 cm circumference

Tension: 24 sts and 32 rnds to 10 cm over st st

Cast on 120 sts. Join in the round.

Knit 40 rnds.

Cast off.
`,
  },
  right: {
    draft: `# Kelp Cowl

Finished measurements: 50 cm circumference

Tension: 24 sts and 32 rnds to 10 cm over st st

Cast on 120 sts. Join in the round.

Knit 40 rnds.

Cast off.
`,
  },
  check(context): readonly Finding[] {
    const held = heldCounts(context);
    // Among so many counts something always fits: a book of many patterns in one file is not judged by its widths.
    if (held.length === 0 || held.length > mostCounts || context.pattern.front.gauges.length === 0) return [];
    // Knitted from cuff to cuff the rows make the girth, and the stitches the length.
    const sideways = /\b(?:sideways|side to side|cuff to cuff)\b/i.test(context.manuscript.source);
    const wrongPairs = pairFaults(context.pattern.front.pairs).flatMap((fault) => [
      fault.pair.first.span.start,
      fault.pair.second.span.start,
    ]);
    return context.pattern.front.measures.flatMap((name) => {
      const girth = isSquare(name) ? 'width' : (girthOf(name) ?? unnamedBody(context, name));
      if (girth === null || (sideways && girth === 'body')) return [];
      const measure = name.measures.find((one) => one.unit === 'cm') ?? name.measures.find((one) => one.unit === 'in');
      if (measure === undefined || name.measures.some((one) => wrongPairs.includes(one.span.start))) return [];
      const one = check(context, name, measure, girth, held);
      if (one === null || (measure.unit === 'in' && convertedFrom(context, name, measure))) return [];
      // The twin in the other unit may have been the one worked out.
      const twin = name.measures.find((other) => other.unit !== measure.unit && (other.unit === 'cm' || other.unit === 'in'));
      return twin !== undefined && check(context, name, twin, girth, held) === null ? [] : [one];
    });
  },
};
