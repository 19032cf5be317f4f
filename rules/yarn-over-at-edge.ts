import type { Step } from '../grammar/tree.ts';
import { labelOf } from './labels.ts';
import type { Context, Finding, Rule } from './rule.ts';
import { sectionTitle } from './telling.ts';
import { rowsOf } from './tree-walk.ts';
import { yarnOvers } from './use.ts';

/** The step with which the row ends, inside its last repeat if it ends in one. */
function lastStep(steps: readonly Step[]): Step | undefined {
  const last = steps.filter((step) => step.type !== 'remark' && step.type !== 'stated').at(-1);
  if (last?.type !== 'repeat' || last.form === 'run') return last;
  if (last.ending !== null) return lastStep(last.ending.children);
  return lastStep(last.children);
}

/** "*K1, yo; rep from * to end": a loop beside every stitch. */
function doublesAll(steps: readonly Step[]): boolean {
  const list = steps.filter((step) => step.type !== 'remark' && step.type !== 'stated');
  const [only] = list;
  if (list.length !== 1 || only?.type !== 'repeat' || only.form === 'run' || only.ending !== null) return false;
  const [plain, loop, ...more] = only.children.filter((step) => step.type !== 'remark');
  return more.length === 0 && plain?.type === 'work' && (plain.stitch === 'k' || plain.stitch === 'p') && loop?.type === 'work';
}

/** The first row of a cast-on: a tubular edge is begun so on half the stitches, and its last loop is worked in the next row. */
function straightAfterCastOn(context: Context, start: number): boolean {
  const { entries } = context.replay;
  const at = entries.findIndex((entry) => entry.textSpan.start === start);
  return (
    entries.slice(0, Math.max(0, at)).findLast((entry) => entry.label !== 'Row' || entry.takes.some((n) => (n ?? 0) > 0))?.node.type ===
    'castOn'
  );
}

export const yarnOverAtEdge: Rule = {
  id: 'yarn-over-at-edge',
  level: 'query',
  title: 'A flat row does not end with a yarn over',
  meaning: 'The last step of a row worked back and forth is a yarn over; only the turn holds it.',
  reason: 'It slips off, or becomes a loose loop at the edge; mostly a balancing stitch has been forgotten.',
  needsReplay: true,
  wrong: { draft: '# Foam Scarf\n\nCO 20 sts.\n\nRow 1 (RS): *K2tog, yo; rep from * to end.\n\nRow 2: Purl.\n\nBO all sts.\n' },
  right: { draft: '# Foam Scarf\n\nCO 20 sts.\n\nRow 1 (RS): K1, *yo, k2tog; rep from * to last st, k1.\n\nRow 2: Purl.\n\nBO all sts.\n' },
  check: (context): readonly Finding[] => {
    const round = new Set(context.replay.entries.filter((entry) => entry.unit === 'round').map((entry) => entry.textSpan.start));
    return rowsOf(context.pattern).flatMap(({ row, section }): Finding[] => {
      if (
        row.label === null ||
        row.label.unit === 'round' ||
        round.has(row.span.start) ||
        row.children.some((step) => step.type === 'needlePart')
      )
        return [];
      const last = lastStep(row.children);
      if (last === undefined || yarnOvers(context.pattern, last) === 0) return [];
      if (doublesAll(row.children) && straightAfterCastOn(context, row.span.start)) return [];
      return [
        {
          rule: yarnOverAtEdge.id,
          level: 'query',
          span: last.span,
          section: sectionTitle(context, section),
          row: labelOf(row),
          sizes: [],
          message: 'The row ends with a yarn over, and only the turn holds it. Is a stitch meant to follow?',
          stated: null,
          replayed: null,
          fix: null,
        },
      ];
    });
  },
};
