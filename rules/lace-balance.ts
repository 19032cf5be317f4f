import type { Row } from '../grammar/tree.ts';
import { labelOf } from './labels.ts';
import { roots } from './observed.ts';
import type { Context, Finding, Rule } from './rule.ts';
import { repeatOf } from './stitch-row.ts';
import { counted, listed, sectionTitle } from './telling.ts';
import { rowsOf, stepsOf } from './tree-walk.ts';
import { entryOf, stepsUse, workUse } from './use.ts';

interface Balance {
  readonly row: Row;
  readonly section: number;
  /** What one repeat adds (or, negative, loses). */
  readonly net: number;
  readonly added: number;
  readonly lost: number;
}

/** Rows that work openings or decreases in one repeat to their end. */
function lacyRows(context: Context): Balance[] {
  const { pattern } = context;
  return rowsOf(pattern).flatMap(({ row, section }): Balance[] => {
    const found = repeatOf(row);
    if (found === null || row.label === null || row.label.numbers.length === 0) return [];
    const use = stepsUse(pattern, found.children);
    if (use === null) return [];
    let added = 0;
    let lost = 0;
    for (const step of stepsOf(found.children)) {
      if (step.type !== 'work' || entryOf(pattern, step) === undefined) continue;
      const each = workUse(pattern, step);
      if (each === null) continue;
      added += Math.max(0, each.makes - each.takes);
      lost += Math.max(0, each.takes - each.makes);
    }
    return added + lost === 0 ? [] : [{ row, section, net: use.makes - use.takes, added, lost }];
  });
}

export const laceBalance: Rule = {
  id: 'lace-balance',
  level: 'query',
  title: 'Openings and decreases balance in every repeat',
  meaning: 'The lace rows of a set keep the count in each repeat, and one row gains or loses a stitch that no other row gives back.',
  reason: 'The next time the repeat does not fit, or the piece grows where it should be straight.',
  needsReplay: true,
  wrong: {
    draft:
      '# Petrel Scarf\n\nCO 26 sts.\n\nRow 1 (RS): K1, *yo, k2tog, k1, ssk, yo, k1; rep from * to last st, k1.\n\nRow 2: Purl.\n\nRow 3: K1, *k1, yo, k1, ssk, k1, yo, k1; rep from * to last st, k1.\n\nRow 4: Purl.\n\nRow 5: Knit.\n\nBO all sts.\n',
  },
  right: {
    draft:
      '# Petrel Scarf\n\nCO 26 sts.\n\nRow 1 (RS): K1, *yo, k2tog, k1, ssk, yo, k1; rep from * to last st, k1.\n\nRow 2: Purl.\n\nRow 3: K1, *k1, yo, k1, ssk, k2tog, yo; rep from * to last st, k1.\n\nRow 4: Purl.\n\nBO all sts.\n',
  },
  check: (context): readonly Finding[] => {
    const rows = lacyRows(context);
    const met = roots(context);
    return rows.flatMap((each): Finding[] => {
      if (each.net === 0 || each.added === 0 || each.lost === 0) return [];
      const set = rows.filter((other) => other.section === each.section);
      const others = set.filter((other) => other !== each);
      if (others.length === 0 || others.some((other) => other.net !== 0)) return [];
      // Where the count is stated, or the next row does not fit, that is the better place to say it.
      const said = met.some(
        (root) =>
          root.met.section === each.section &&
          root.met.span.start >= each.row.span.start &&
          !['readingNotDefault', 'readingsDiffer', 'sideDiffers'].includes(root.met.kind),
      );
      if (said || each.row.stated.length > 0) return [];
      const names = listed(others.slice(0, 4).map((other) => labelOf(other.row) ?? 'another row'));
      return [
        {
          rule: laceBalance.id,
          level: 'query',
          span: each.row.span,
          section: sectionTitle(context, each.section),
          row: labelOf(each.row),
          sizes: [],
          message: `Each repeat of ${labelOf(each.row) ?? 'this row'} adds ${each.added} and takes away ${each.lost}, so it ${each.net > 0 ? 'gains' : 'loses'} ${counted(Math.abs(each.net))}; ${names} ${others.length === 1 ? 'keeps' : 'keep'} the count. Is a yarn over or a decrease missing?`,
          stated: null,
          replayed: null,
          fix: null,
        },
      ];
    });
  },
};

/** Rows before a place in its section that do not balance though the others of the set do: evidence for a row that no longer fits. */
export function unbalancedBefore(
  context: Context,
  section: number,
  place: number,
): { readonly label: string; readonly net: number } | null {
  const rows = lacyRows(context).filter((each) => each.section === section);
  const odd = rows.filter((each) => each.net !== 0 && each.row.span.start < place && each.row.span.end <= place);
  const [only] = odd;
  return odd.length === 1 && only !== undefined && rows.length > 1 && rows.every((each) => each === only || each.net === 0)
    ? { label: labelOf(only.row) ?? 'An earlier row', net: only.net }
    : null;
}
