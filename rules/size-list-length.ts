import { printSized, type Sized } from '../grammar/count.ts';
import type { Span } from '../src/manuscript/manuscript.ts';
import type { Context, Finding, Rule } from './rule.ts';
import { counted, listed, sectionTitle } from './telling.ts';
import { numbersOfTree } from './tree-walk.ts';

interface List {
  readonly values: Sized;
  readonly span: Span;
  readonly section: number | null;
  readonly block: readonly number[] | null;
}

function frontLists(context: Context): List[] {
  const { front } = context.pattern;
  const list = (values: Sized, span: Span): List => ({ values, span, section: null, block: null });
  return [
    ...front.measures.flatMap((named) => named.measures.map((measure) => list(measure.values, measure.span))),
    ...front.yarns.flatMap((yarn) => [
      ...(yarn.balls === null ? [] : [list(yarn.balls, yarn.span)]),
      ...yarn.total.map((measure) => list(measure.values, measure.span)),
    ]),
    ...front.notions.flatMap((notion) => (notion.count === null ? [] : [list(notion.count, notion.span)])),
  ];
}

/** Where the steps of a list that is one short show a gap: the pair of values, if one step stands out. */
function gap(values: Sized): readonly [number, number] | null {
  const known = values.filter((value) => value !== null);
  if (known.length < 3) return null;
  const steps = known.slice(1).map((value, at) => value - (known[at] as number));
  const sorted = [...steps].sort((a, b) => Math.abs(a) - Math.abs(b));
  const usual = Math.abs(sorted[Math.floor((sorted.length - 1) / 2)] as number);
  const wide = steps.flatMap((step, at) => (Math.abs(step) >= usual * 1.6 && Math.abs(step) > usual ? [at] : []));
  const at = wide.length === 1 ? (wide[0] as number) : -1;
  return at < 0 ? null : [known[at] as number, known[at + 1] as number];
}

function message(context: Context, list: List, wanted: number): string {
  const { sizes } = context.pattern;
  const named = list.block !== null && list.block.length < sizes.length ? `, or ${list.block.length} for the sizes named here` : '';
  const head = `${printSized(list.values)} has ${counted(list.values.length, 'value')}, but there are ${wanted} sizes (${listed(sizes)})${named}.`;
  if (list.values.length > wanted) return `${head} ${counted(list.values.length - wanted, 'value')} too many.`;
  const missing = wanted - list.values.length;
  const between = missing === 1 ? gap(list.values) : null;
  const where =
    between === null
      ? 'Which size lacks its number cannot be told from the list alone.'
      : `The steps of the list leave the widest gap between ${between[0]} and ${between[1]}; else the last value is missing.`;
  return `${head} ${missing === 1 ? 'One value is' : `${missing} values are`} missing. ${where}`;
}

export const sizeListLength: Rule = {
  id: 'size-list-length',
  level: 'error',
  title: 'A list of sizes has a value for each size',
  meaning: 'A list such as 92 (100, 108) has fewer or more values than the draft has sizes.',
  reason: 'From the gap on, every size reads its neighbour’s number.',
  needsReplay: false,
  wrong: {
    draft:
      '# Harbour Band\n\nSizes: S (M, L, XL)\n\nTo fit chest: 80 (90, 100, 110) cm\n\nCO 40 (44, 48) sts.\n\nRow 1 (RS): Knit.\nRow 2: Purl.\n\nBO all sts.\n',
  },
  right: {
    draft:
      '# Harbour Band\n\nSizes: S (M, L, XL)\n\nTo fit chest: 80 (90, 100, 110) cm\n\nCO 40 (44, 48, 52) sts.\n\nRow 1 (RS): Knit.\nRow 2: Purl.\n\nBO all sts.\n',
  },
  check: (context): readonly Finding[] => {
    const { sizes, front } = context.pattern;
    if (sizes.length <= 1) return [];
    const declared = front.sizes !== null && front.sizes.from !== 'lists';
    const seen = new Set<number>();
    return [...frontLists(context), ...numbersOfTree(context.pattern)].flatMap((list): Finding[] => {
      const { length } = list.values;
      if (length === 1 || length === sizes.length || (list.block !== null && length === list.block.length) || seen.has(list.span.start))
        return [];
      seen.add(list.span.start);
      return [
        {
          rule: sizeListLength.id,
          level: declared ? 'error' : 'query',
          span: list.span,
          section: list.section === null ? null : sectionTitle(context, list.section),
          row: null,
          sizes: [],
          message: message(context, list, sizes.length),
          stated: length,
          replayed: null,
          fix: null,
        },
      ];
    });
  },
};
