import { found } from './facts/blocks.ts';
import { type Place, type Wedge, wedgesOf } from './facts/turns.ts';
import { roots } from './observed.ts';
import type { Context, Finding, Rule } from './rule.ts';
import { inSizes, listed } from './telling.ts';

interface Slip {
  readonly place: Place;
  /** What is asked, without the sizes. */
  readonly asks: string;
}

const rests = (places: readonly Place[]): number[] => places.map((place) => place.rest);
const steps = (numbers: readonly number[]): number[] => numbers.slice(1).map((number, at) => number - (numbers[at] as number));
const oneSign = (numbers: readonly number[]): number =>
  numbers.every((number) => number > 0) ? 1 : numbers.every((number) => number < 0) ? -1 : 0;
const even = (numbers: readonly number[]): boolean => new Set(steps(numbers)).size <= 1;
const told = (places: readonly Place[]): string => listed(rests(places).map(String));

const edges = (wedge: Wedge): string =>
  wedge.ring
    ? `the turns at the end of the right-side rows lie ${told(wedge.rs)} sts past the beginning of the round, those of the wrong-side rows ${told(wedge.ws)} sts on its other side`
    : `the turns at the end of the right-side rows leave ${told(wedge.rs)} sts unworked, those of the wrong-side rows ${told(wedge.ws)}`;

/** One edge closes in while the other opens. */
function contrary(wedge: Wedge): Slip | null {
  if (wedge.rs.length < 2 || wedge.ws.length < 2) return null;
  const [one, two] = [oneSign(steps(rests(wedge.rs))), oneSign(steps(rests(wedge.ws)))];
  if (one === 0 || one + two !== 0) return null;
  const place = later(wedge.rs[1] as Place, wedge.ws[1] as Place);
  return {
    place,
    asks: `${edges(wedge)}: the rows grow longer at one end and shorter at the other. Is a number wrong?`,
  };
}

const later = (one: Place, two: Place): Place => (one.entry.span.start > two.entry.span.start ? one : two);

/** The two ends agree in all pairs of turns but one, or from one turn on no longer. */
function uneven(wedge: Wedge): Slip | null {
  const n = Math.min(wedge.rs.length, wedge.ws.length);
  if (n < 3 || Math.abs(wedge.rs.length - wedge.ws.length) > 1) return null;
  const [rs, ws] = [rests(wedge.rs), rests(wedge.ws)];
  const apart = Array.from({ length: n }, (_, at) => (rs[at] as number) - (ws[at] as number));
  const common = apart.filter((each) => each === apart[0]).length >= 2 ? apart[0] : apart[1];
  const odd = apart.flatMap((each, at) => (each === common ? [] : [at]));
  const [at] = odd;
  if (at === undefined || n - odd.length < 2) return null;
  const tail = odd.length > 1;
  if (tail && (odd[0] !== n - odd.length || new Set(odd.map((each) => apart[each])).size > 1)) return null;
  if (tail && (oneSign(steps(rs)) === 0 || oneSign(steps(ws)) !== oneSign(steps(rs)))) return null;
  const place =
    even(rs) && !even(ws) ? wedge.ws[at] : even(ws) && !even(rs) ? wedge.rs[at] : later(wedge.rs[at] as Place, wedge.ws[at] as Place);
  return { place: place as Place, asks: `${edges(wedge)}. Everywhere else the two ends keep step. Is a number wrong?` };
}

/** A turn between others that lie at even distances. */
function jumping(wedge: Wedge): Slip | null {
  for (const [side, places, others] of [
    ['right-side', wedge.rs, wedge.ws],
    ['wrong-side', wedge.ws, wedge.rs],
  ] as const) {
    const numbers = rests(places);
    if (numbers.length < 4) continue;
    for (let at = 1; at < numbers.length - 1; at += 1) {
      const middle = ((numbers[at - 1] as number) + (numbers[at + 1] as number)) / 2;
      const mended = numbers.map((number, position) => (position === at ? middle : number));
      if (even(numbers) || !even(mended) || mended[0] === mended[1]) continue;
      if (
        others.length > at &&
        (others[at] as Place).rest - (others[at - 1] as Place).rest === (numbers[at] as number) - (numbers[at - 1] as number)
      )
        continue;
      return {
        place: places[at] as Place,
        asks: `the turns of the ${side} rows ${wedge.ring ? 'lie' : 'leave'} ${told(places)} sts ${wedge.ring ? 'past the beginning of the round' : 'unworked'}; ${middle} in place of ${numbers[at]} would make the steps even. Is a number wrong?`,
      };
    }
  }
  return null;
}

/** In one size alone the steps are uneven. */
function unlike(wedges: readonly Wedge[]): { readonly wedge: Wedge; readonly slip: Slip } | null {
  if (wedges.length < 3) return null;
  for (const side of ['rs', 'ws'] as const) {
    if (wedges.some((wedge) => wedge[side].length < 3 || wedge[side].length !== wedges[0]?.[side].length)) continue;
    const odd = wedges.filter((wedge) => !even(rests(wedge[side])));
    const [wedge] = odd;
    if (odd.length !== 1 || wedge === undefined) continue;
    const numbers = rests(wedge[side]);
    const at = numbers.findIndex(
      (_, position) => even(numbers.filter((__, other) => other !== position)) || position === numbers.length - 1,
    );
    const other = wedges.find((each) => each !== wedge) as Wedge;
    return {
      wedge,
      slip: {
        place: wedge[side][at] as Place,
        asks: `the turns of the ${side === 'rs' ? 'right-side' : 'wrong-side'} rows leave ${told(wedge[side])} sts unworked; in all other sizes the steps are even (${told(other[side])}). Is a number of this size wrong?`,
      },
    };
  }
  return null;
}

/** The words at fault made no regular turn elsewhere in the wedge. */
const once = (wedge: Wedge, place: Place): boolean =>
  [...wedge.rs, ...wedge.ws].filter((each) => each.step.span.start === place.step.span.start).length === 1;

/** Whether something else is wrong in the rows of the wedge already. */
function troubled(context: Context, wedge: Wedge): boolean {
  const rows = [...wedge.rs, ...wedge.ws].map((place) => place.entry.textSpan);
  const from = Math.min(...rows.map((span) => span.start));
  const to = Math.max(...rows.map((span) => span.end));
  return roots(context).some((root) => root.met.certain && root.met.span.start >= from && root.met.span.start <= to);
}

export const turnPlaces: Rule = {
  id: 'turn-places',
  level: 'query',
  title: 'The turns of short rows move evenly',
  meaning:
    'Of the turns in a set of short rows one lies off the line: the two ends do not keep step, one end closes in while the other opens, or one distance breaks the series.',
  reason: 'The wedge comes out lopsided, and as every stitch stays on the needle no count shows it.',
  needsReplay: true,
  wrong: {
    draft:
      '# Sand Bank\n\nCO 40 sts.\n\nRow 1 (RS): K35, turn.\n\nRow 2: P30, turn.\n\nRow 3: K28, turn.\n\nRow 4: P26, turn.\n\nRow 5: K24, turn.\n\nRow 6: P23, turn.\n\nRow 7: Knit.\n\nRow 8: Purl.\n\nBO all sts.\n',
  },
  right: {
    draft:
      '# Sand Bank\n\nCO 40 sts.\n\nRow 1 (RS): K35, turn.\n\nRow 2: P30, turn.\n\nRow 3: K28, turn.\n\nRow 4: P26, turn.\n\nRow 5: K24, turn.\n\nRow 6: P22, turn.\n\nRow 7: K31.\n\nRow 8: Purl.\n\nBO all sts.\n',
  },
  check: (context): readonly Finding[] => {
    const wedges = wedgesOf(context).filter((wedge) => !troubled(context, wedge));
    const slips = new Map<Place['entry']['textSpan']['start'], { readonly slip: Slip; readonly sizes: number[] }>();
    const add = (wedge: Wedge, slip: Slip | null): void => {
      if (slip === null || !once(wedge, slip.place)) return;
      const at = slip.place.step.span.start;
      const known = slips.get(at);
      if (known === undefined) slips.set(at, { slip, sizes: [wedge.size] });
      else if (!known.sizes.includes(wedge.size)) known.sizes.push(wedge.size);
    };
    for (const wedge of wedges) add(wedge, contrary(wedge) ?? uneven(wedge) ?? jumping(wedge));
    const first = (wedge: Wedge): number => ([...wedge.rs, ...wedge.ws][0] as Place).step.span.start;
    for (const start of new Set(wedges.map(first))) {
      const odd = unlike(wedges.filter((wedge) => first(wedge) === start));
      if (odd !== null && ![...slips.values()].some(({ slip }) => slip.place.entry.section === odd.wedge.section)) add(odd.wedge, odd.slip);
    }
    return [...slips.values()].map(({ slip, sizes }) =>
      found(
        context,
        turnPlaces,
        slip.place.step.span,
        `${inSizes(context, sizes)}${slip.asks}`.replace(/^./, (letter) => letter.toUpperCase()),
        { sizes: context.pattern.sizes.length > 1 ? sizes : [] },
      ),
    );
  },
};
