import type { Work } from '../grammar/tree.ts';
import { found } from './facts/blocks.ts';
import { type Mirror, mirrorsOf } from './facts/mirrors.ts';
import { labelOf } from './labels.ts';
import { roots } from './observed.ts';
import type { Context, Finding, Rule } from './rule.ts';
import { excerpt } from './telling.ts';
import { rowsOf } from './tree-walk.ts';

interface Odd {
  readonly mirror: Mirror;
  readonly one: Work;
  readonly two: Work;
  readonly numbers: readonly [number, number];
}

const numberOf = (step: Work): number => step.n?.values[0] ?? 1;
/** Only numbers of plain stitches are compared: "ssk" has none to set against that of "k2tog". */
const same = (one: Work, two: Work): boolean =>
  one.n === null || two.n === null || one.stitch !== two.stitch || numberOf(one) === numberOf(two);

/** The one place at which the two halves differ, which is a number of plain stitches; null where they are alike or differ more. */
function oddOf(mirror: Mirror): Odd | null {
  const places = mirror.first.flatMap((one, at) => (same(one, mirror.second[at] as Work) ? [] : [at]));
  const [at] = places;
  if (at === undefined || places.length > 1) return null;
  const [one, two] = [mirror.first[at] as Work, mirror.second[at] as Work];
  return { mirror, one, two, numbers: [numberOf(one), numberOf(two)] };
}

const plainOnly = (mirror: Mirror): boolean => !mirror.shaped;

/** Another row of the draft whose halves are alike, with one of the two numbers in that place. */
function sibling(mirrors: readonly Mirror[], odd: Odd): Mirror | null {
  return (
    mirrors.find(
      (each) =>
        each.row !== odd.mirror.row &&
        each.at === odd.mirror.at &&
        (plainOnly(each) === plainOnly(odd.mirror) || each.section === odd.mirror.section) &&
        each.first.every((step, at) => same(step, each.second[at] as Work)) &&
        each.first.some((step) => step.stitch === odd.one.stitch && odd.numbers.includes(numberOf(step))),
    ) ?? null
  );
}

/** The same two numbers stand in another row, so they are meant. */
const meant = (odds: readonly Odd[], odd: Odd): boolean =>
  odds.some(
    (each) =>
      each.mirror.row !== odd.mirror.row &&
      [...each.numbers].sort((a, b) => a - b).join() === [...odd.numbers].sort((a, b) => a - b).join(),
  );

function flat(context: Context, mirror: Mirror): boolean {
  const { row } = mirror;
  return (
    row.label?.unit !== 'round' &&
    !context.replay.entries.some((entry) => entry.textSpan.start === row.span.start && entry.unit === 'round')
  );
}

export const edgeSymmetry: Rule = {
  id: 'edge-symmetry',
  level: 'query',
  title: 'The two edges of a row are alike, if the rest of it is',
  meaning:
    'A row that is the same from both ends, or on both sides of a marker, has one number of plain stitches here and another there, and no other row of the draft has that.',
  reason: '“Knit to last 3 sts” takes up the difference, so every count is right, and the border jumps by a stitch.',
  needsReplay: true,
  wrong: {
    draft:
      '# Gangway Scarf\n\nCO 30 sts.\n\nRow 1 (RS): Knit.\n\nRow 2: K3, p to last 3 sts, k3.\n\nRow 3: K3, yo, k to last 3 sts, yo, k3.\n\nRow 4: K4, p to last 3 sts, k3.\n\nBO all sts.\n',
  },
  right: {
    draft:
      '# Gangway Scarf\n\nCO 30 sts.\n\nRow 1 (RS): Knit.\n\nRow 2: K3, p to last 3 sts, k3.\n\nRow 3: K3, yo, k to last 3 sts, yo, k3.\n\nRow 4: K3, p to last 3 sts, k3.\n\nBO all sts.\n',
  },
  check: (context): readonly Finding[] => {
    const mirrors = rowsOf(context.pattern).flatMap(({ row, section }) => mirrorsOf(context.pattern, row, section));
    const odds = mirrors.flatMap((mirror) => oddOf(mirror) ?? []);
    const wrong = new Set(roots(context).map((root) => root.met.node));
    const rows = new Set<unknown>();
    return odds.flatMap((odd): Finding[] => {
      const { mirror, one, two } = odd;
      if (rows.has(mirror.row) || wrong.has(mirror.row) || meant(odds, odd)) return [];
      const like = sibling(mirrors, odd);
      // Without a row like it only shaping that stands opposite its mirror in flat work speaks clearly enough.
      if (like === null && !(mirror.shaped && mirror.at === 'edges' && flat(context, mirror))) return [];
      rows.add(mirror.row);
      const [before, after] = one.span.start < two.span.start ? [one, two] : [two, one];
      const where = mirror.at === 'edges' ? 'at one edge' : 'on one side of the marker';
      const other = mirror.at === 'edges' ? 'at the other' : 'on its other side';
      const label = like === null ? null : (labelOf(like.row) ?? 'another row');
      return [
        found(
          context,
          edgeSymmetry,
          before.span,
          `${excerpt(context, before.span)} stands ${where} and ${excerpt(context, after.span)} ${other}, in a row that is otherwise the same from both ${mirror.at === 'edges' ? 'ends' : 'sides'}${label === null ? '' : `; ${label} has the same number on both`}. Is one of the two wrong?`,
          { also: [after.span] },
        ),
      ];
    });
  },
};
