import type { Row, Step } from '../grammar/tree.ts';
import type { Pattern } from '../src/pattern/pattern.ts';
import { labelOf } from './labels.ts';
import type { Finding, Rule } from './rule.ts';
import { repeatOf } from './stitch-row.ts';
import { excerpt, sectionTitle } from './telling.ts';
import { rowsOf } from './tree-walk.ts';
import { entryOf } from './use.ts';

interface Pair {
  readonly left: Step;
  readonly right: Step;
  readonly mirrored: boolean;
}

/** What a step is for a mirror: its kind and number, not its lean. */
function shape(pattern: Pattern, step: Step): string | null {
  if (step.type === 'work') {
    const entry = entryOf(pattern, step);
    return entry === undefined
      ? null
      : `${entry.kind}${entry.face ?? ''}${entry.kind === 'plain' || entry.kind === 'yarnOver' ? (step.n?.values.join('/') ?? '1') : ''}`;
  }
  if (step.type === 'marker') return step.op;
  if (step.type === 'repeat' && step.form === 'run') return 'run';
  return null;
}

const leanOf = (pattern: Pattern, step: Step): 'left' | 'right' | 'centre' | undefined =>
  step.type === 'work' ? entryOf(pattern, step)?.lean : undefined;

/** Decreases that stand opposite each other in steps that are symmetrical about their middle; null where they are not. */
function pairsOf(pattern: Pattern, steps: readonly Step[]): Pair[] | null {
  const list = steps.filter((step) => step.type !== 'remark' && step.type !== 'stated');
  const shapes = list.map((step) => shape(pattern, step));
  if (list.length < 5 || shapes.includes(null)) return null;
  const pairs: Pair[] = [];
  for (let at = 0; at < list.length / 2; at += 1) {
    const other = list.length - 1 - at;
    if (shapes[at] !== shapes[other]) return null;
    if (at === other) continue;
    const [left, right] = [list[at] as Step, list[other] as Step];
    const [one, two] = [leanOf(pattern, left), leanOf(pattern, right)];
    if (one === undefined || two === undefined || one === 'centre' || two === 'centre') continue;
    pairs.push({ left, right, mirrored: one !== two });
  }
  return pairs.length === 0 ? null : pairs;
}

/** The symmetrical stretches of a row: the row itself, or its repeat with or without the first or last stitch of it. */
function stretches(row: Row): (readonly Step[])[] {
  const found = repeatOf(row);
  if (found === null) return [row.children];
  const children = found.children.filter((step) => step.type !== 'remark');
  return [children, children.slice(1), children.slice(0, -1)];
}

export const mirroredShaping: Rule = {
  id: 'mirrored-shaping',
  level: 'query',
  title: 'Left mirrors right',
  meaning:
    'In a row that is the same from both ends the two decreases opposite each other lean the same way, while in the other rows of the set they lean against each other.',
  reason: 'The counts are right and one side of the leaf, or of the raglan, looks ragged.',
  needsReplay: false,
  wrong: {
    draft:
      '# Leaf Strip\n\nCO 11 sts.\n\nRow 1 (RS): K2, yo, ssk, k3, k2tog, yo, k2.\n\nRow 2: Purl.\n\nRow 3: K3, yo, ssk, k1, k2tog, yo, k3.\n\nRow 4: Purl.\n\nRow 5: K1, yo, ssk, k5, k2tog, yo, k1.\n\nRow 6: Purl.\n\nRow 7: K2, yo, k2tog, k3, k2tog, yo, k2.\n\nRow 8: Purl.\n\nBO all sts.\n',
  },
  right: {
    draft:
      '# Leaf Strip\n\nCO 11 sts.\n\nRow 1 (RS): K2, yo, ssk, k3, k2tog, yo, k2.\n\nRow 2: Purl.\n\nRow 3: K3, yo, ssk, k1, k2tog, yo, k3.\n\nRow 4: Purl.\n\nRow 5: K1, yo, ssk, k5, k2tog, yo, k1.\n\nRow 6: Purl.\n\nBO all sts.\n',
  },
  check: (context): readonly Finding[] => {
    const { pattern } = context;
    const rows = rowsOf(pattern).flatMap(({ row, section }) => {
      const pairs =
        stretches(row)
          .map((steps) => pairsOf(pattern, steps))
          .find((each) => each !== null) ?? null;
      return pairs === null ? [] : [{ row, section, pairs }];
    });
    return rows.flatMap(({ row, section, pairs }): Finding[] => {
      const others = rows.filter((each) => each.section === section && each.row !== row).flatMap((each) => each.pairs);
      const mirrored = others.filter((pair) => pair.mirrored).length;
      const wrong = pairs.filter((pair) => !pair.mirrored);
      const [pair] = wrong;
      // Asked only where the set mirrors its decreases everywhere else.
      if (pair === undefined || mirrored < 3 || mirrored < others.length) return [];
      return [
        {
          rule: mirroredShaping.id,
          level: 'query',
          span: pair.right.span,
          section: sectionTitle(context, section),
          row: labelOf(row),
          sizes: [],
          message: `${excerpt(context, pair.left.span)} and ${excerpt(context, pair.right.span)} stand opposite each other in ${labelOf(row) ?? 'this row'} and lean the same way; in all ${mirrored} other places of these rows the two lean against each other. Is one of them meant to lean the other way?`,
          stated: null,
          replayed: null,
          fix: null,
        },
      ];
    });
  },
};
