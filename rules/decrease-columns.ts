import type { Row, Span, Step } from '../grammar/tree.ts';
import type { Pattern } from '../src/pattern/pattern.ts';
import { labelOf } from './labels.ts';
import type { Context, Finding, Rule } from './rule.ts';
import { excerpt, listed, sectionTitle } from './telling.ts';
import { rowsOf } from './tree-walk.ts';
import { entryOf, stepsUse } from './use.ts';

interface Column {
  readonly row: Row;
  readonly section: number;
  readonly span: Span;
  /** Stitches of one repeat, before and after the row. */
  readonly width: number;
  /** Which stitch of the repeat the decrease becomes, counted from the edge of the fabric. */
  readonly at: number;
}

/** The one double decrease of a row's repeat, where the repeat keeps its stitches and everything before it can be counted. */
function columnOf(pattern: Pattern, row: Row, section: number): Column | null {
  const list = row.children.filter((step) => step.type !== 'remark' && step.type !== 'stated');
  const index = list.findIndex(
    (step) => step.type === 'repeat' && step.form !== 'run' && (step.extent?.kind === 'end' || step.extent?.kind === 'last'),
  );
  const repeat = list[index];
  if (repeat?.type !== 'repeat' || repeat.once.length > 0) return null;
  const [before, body] = [stepsUse(pattern, list.slice(0, index)), stepsUse(pattern, repeat.children)];
  if (before === null || body === null || body.takes !== body.makes) return null;
  const doubles = repeat.children.flatMap((step, at) => (isDouble(pattern, step) ? [at] : []));
  const [only, ...others] = doubles;
  if (only === undefined || others.length > 0) return null;
  const inside = stepsUse(pattern, repeat.children.slice(0, only));
  const step = repeat.children[only];
  if (inside === null || step === undefined) return null;
  return { row, section, span: step.span, width: body.makes, at: (before.makes + inside.makes) % body.makes };
}

const isDouble = (pattern: Pattern, step: Step): boolean =>
  step.type === 'work' && step.n === null && entryOf(pattern, step)?.kind === 'doubleDecrease';

/** Narrower repeats are too close together to tell a slip from another place. */
const narrowest = 6;
/** Further off it is another line of the motif. */
const nearest = 2;
const fewestRows = 3;

const apart = (one: Column, other: Column): number => {
  const steps = Math.abs(one.at - other.at);
  return Math.min(steps, one.width - steps);
};

/** The one row whose decrease stands beside the line that all the others make, with others of the line on both sides of it. */
function strayOf(columns: readonly Column[]): { stray: Column; line: readonly Column[] } | null {
  if (columns.length < fewestRows) return null;
  for (const [index, stray] of columns.entries()) {
    const line = columns.filter((each) => each !== stray);
    const [first] = line;
    if (first === undefined || index === 0 || index === columns.length - 1) continue;
    const off = apart(stray, first);
    if (off > 0 && off <= nearest && line.every((each) => each.at === first.at)) return { stray, line };
  }
  return null;
}

function ask(context: Context, { stray, line }: { stray: Column; line: readonly Column[] }): Finding {
  const [first] = line as [Column, ...Column[]];
  const names = line.flatMap((each) => labelOf(each.row) ?? []);
  return {
    rule: decreaseColumns.id,
    level: 'query',
    span: stray.span,
    section: sectionTitle(context, stray.section),
    row: labelOf(stray.row),
    sizes: [],
    message: `${excerpt(context, stray.span)} comes out as stitch ${stray.at + 1} of the repeat of ${stray.width}, and in ${listed(names.slice(0, 4))} the double decrease is stitch ${first.at + 1}. Shall they stand above each other?`,
    stated: null,
    replayed: null,
    fix: null,
    also: line.map((each) => each.span),
  };
}

export const decreaseColumns: Rule = {
  id: 'decrease-columns',
  level: 'query',
  title: 'Double decreases of a motif stand above each other',
  meaning: 'In all rows of the motif but one the double decrease is the same stitch of the repeat.',
  reason: 'The counts are right and the line of the motif has a kink; only the picture shows it, when the shawl is off the needles.',
  needsReplay: false,
  wrong: {
    draft:
      '# Razorbill Leaf\n\nCO 43 sts.\n\nRow 1 (RS): K1, *yo, k3, sk2p, k3, yo, k1; rep from * to last 2 sts, k2.\n\nRow 2 and all WS rows: Purl.\n\nRow 3: K1, *yo, k2, sk2p, k4, yo, k1; rep from * to last 2 sts, k2.\n\nRow 5: K1, *yo, k3, sk2p, k3, yo, k1; rep from * to last 2 sts, k2.\n\nRow 7: K1, *yo, k3, sk2p, k3, yo, k1; rep from * to last 2 sts, k2.\n\nRow 8: Purl.\n\nBO all sts.\n',
  },
  right: {
    draft:
      '# Razorbill Leaf\n\nCO 43 sts.\n\nRow 1 (RS): K1, *yo, k3, sk2p, k3, yo, k1; rep from * to last 2 sts, k2.\n\nRow 2 and all WS rows: Purl.\n\nRow 3: K1, *k1, yo, k2, sk2p, k2, yo, k2; rep from * to last 2 sts, k2.\n\nRow 5: K1, *k2, yo, k1, sk2p, k1, yo, k3; rep from * to last 2 sts, k2.\n\nRow 7: K1, *k3, yo, sk2p, yo, k4; rep from * to last 2 sts, k2.\n\nRow 8: Purl.\n\nBO all sts.\n',
  },
  check: (context): readonly Finding[] => {
    const { pattern } = context;
    const columns = rowsOf(pattern).flatMap(({ row, section }) => columnOf(pattern, row, section) ?? []);
    const sets = new Map<string, Column[]>();
    for (const column of columns) {
      if (column.width < narrowest) continue;
      const key = `${column.section} ${column.width}`;
      sets.set(key, [...(sets.get(key) ?? []), column]);
    }
    return [...sets.values()].flatMap((set) => {
      const found = strayOf(set);
      return found === null ? [] : [ask(context, found)];
    });
  },
};
