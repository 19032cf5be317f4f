import type { Row } from '../grammar/tree.ts';
import type { Pattern } from '../src/pattern/pattern.ts';
import { labelOf } from './labels.ts';
import { roots } from './observed.ts';
import type { Finding, Rule } from './rule.ts';
import { repeatOf } from './stitch-row.ts';
import { counted, sectionTitle } from './telling.ts';
import { rowsOf } from './tree-walk.ts';
import { stepsUse, yarnOvers } from './use.ts';

/** Two rows of lace with at most one row between them. */
function neighbours(pattern: Pattern, one: Row, other: Row): boolean {
  const lace = (row: Row): boolean => repeatOf(row)?.children.some((step) => yarnOvers(pattern, step) > 0) === true;
  const [a, b] = [one.label?.numbers[0], other.label?.numbers[0]];
  return a !== undefined && b !== undefined && Math.abs(a - b) <= 2 && lace(one) && lace(other);
}

export const repeatWidth: Rule = {
  id: 'repeat-width',
  level: 'query',
  title: 'The rows of a set repeat over the same stitches',
  meaning:
    'All rows of a set have repeats of one width, and one row has a repeat of another that goes into it neither way; it happens to fit the count.',
  reason: 'The pattern of that row wanders away from the rows below it, and no count shows it.',
  needsReplay: true,
  wrong: {
    draft:
      '# Swell Cowl\n\nCO 120 sts. Join in the round.\n\nRnd 1: *K1, yo, k3, sk2p, k3, yo; rep from * around.\n\nRnd 2: Knit.\n\nRnd 3: *K2, yo, sk2p, k2, yo, k1; rep from * around.\n\nRnd 4: Knit.\n\nRnd 5: *K3, yo, k1, sk2p, k1, yo, k2; rep from * around.\n\nRnd 6: Knit.\n\nRnd 7: *K4, yo, sk2p, yo, k3; rep from * around.\n\nBO all sts.\n',
  },
  right: {
    draft:
      '# Swell Cowl\n\nCO 120 sts. Join in the round.\n\nRnd 1: *K1, yo, k3, sk2p, k3, yo; rep from * around.\n\nRnd 2: Knit.\n\nRnd 3: *K2, yo, k2, sk2p, k2, yo, k1; rep from * around.\n\nRnd 4: Knit.\n\nRnd 5: *K3, yo, k1, sk2p, k1, yo, k2; rep from * around.\n\nRnd 6: Knit.\n\nRnd 7: *K4, yo, sk2p, yo, k3; rep from * around.\n\nBO all sts.\n',
  },
  check: (context): readonly Finding[] => {
    const uses = rowsOf(context.pattern).flatMap(({ row, section }) => {
      const found = repeatOf(row);
      const use = found === null ? null : stepsUse(context.pattern, found.children);
      return use === null ? [] : [{ row, section, ...use }];
    });
    // A row that makes more of each repeat, or fewer, leaves the next rows repeats of that width.
    const leftSo = (section: number, before: Row, width: number): boolean =>
      uses.some(
        (use) => use.section === section && use.takes !== use.makes && use.makes === width && use.row.span.start < before.span.start,
      );
    const rows = rowsOf(context.pattern).flatMap(({ row, section }) => {
      if (row.label === null || row.label.numbers.length === 0 || row.label.name !== null) return [];
      const found = repeatOf(row);
      const use = found === null ? null : stepsUse(context.pattern, found.children);
      // Rows that change the count, as in a crown, repeat over fewer stitches each time.
      return use === null || use.takes <= 1 || use.takes !== use.makes || found === null
        ? []
        : [{ row, section, width: use.takes, span: found.step.span }];
    });
    const divides = (one: number, other: number): boolean => one % other === 0 || other % one === 0;
    return rows.flatMap(({ row, section, width, span }): Finding[] => {
      const others = rows.filter((each) => each.section === section && each.row !== row);
      const [first] = others;
      if (first === undefined) return [];
      const given = context.pattern.sections[section]?.multiple?.of ?? null;
      if (given !== null && given > 1 && given % width === 0) return [];
      // A multiple that another row bears out speaks for itself; without one the other rows must be of one mind.
      const witness = given !== null && given > 1 && others.some((each) => given % each.width === 0) ? given : null;
      if (
        witness === null &&
        (others.some((each) => each.width !== first.width) || (others.length < 2 && !neighbours(context.pattern, row, first.row)))
      )
        return [];
      // Of two rows that differ the later is named.
      if (witness === null && others.length === 1 && first.row.span.start > row.span.start) return [];
      if (divides(witness ?? first.width, width) || leftSo(section, row, width)) return [];
      if (roots(context).some((root) => root.met.node === row)) return [];
      return [
        {
          rule: repeatWidth.id,
          level: 'query',
          span,
          section: sectionTitle(context, section),
          row: labelOf(row),
          sizes: [],
          message: `${labelOf(row) ?? 'This row'} repeats over ${counted(width)}, ${witness === null ? (others.length === 1 ? `${labelOf(first.row) ?? 'the other row'} over ${first.width}` : `all other rows of the set over ${first.width}`) : `and the pattern is a multiple of ${witness}`}. Has a stitch been lost or put in?`,
          stated: null,
          replayed: null,
          fix: null,
        },
      ];
    });
  },
};
