import type { Entry } from '../grammar/lexicon/entry.ts';
import type { Row, Work } from '../grammar/tree.ts';
import type { Pattern } from '../src/pattern/pattern.ts';
import { found } from './facts/blocks.ts';
import type { Finding, Rule } from './rule.ts';
import { excerpt, times } from './telling.ts';
import { rowsOf, stepsOf } from './tree-walk.ts';
import { entryOf, workUse } from './use.ts';

interface Named {
  readonly step: Work;
  readonly row: Row;
  readonly entry: Entry;
}

/** Decreases that take and make the same, lean the same way and show the same face do the same thing in the fabric. */
function actOf(pattern: Pattern, step: Work, entry: Entry): string | null {
  const use = workUse(pattern, step);
  if ((entry.kind !== 'decrease' && entry.kind !== 'doubleDecrease') || entry.lean === undefined || use === null) return null;
  // Worked through the back loops a decrease leans the other way.
  const lean = step.manner.includes('tbl') ? (entry.lean === 'left' ? 'right' : 'left') : entry.lean;
  return `${use.takes} ${use.makes} ${entry.face ?? ''} ${lean}`;
}

const nameOf = ({ entry, step }: Named): string => (step.manner.includes('tbl') ? `${entry.name} tbl` : entry.name);

export const twoNames: Rule = {
  id: 'two-names',
  level: 'style',
  title: 'One decrease has one name',
  meaning: 'Two stitches that do the same to the fabric (ssk beside skp) are both used, one of them seldom.',
  reason: 'A knitter looks for a difference that is not there; mostly two versions of the draft were put together.',
  needsReplay: false,
  wrong: {
    draft:
      '# Oarlock Cap\n\nCO 60 sts.\n\nRow 1 (RS): K1, ssk, k to end. 59 sts.\n\nRow 2: Purl.\n\nRow 3: K1, ssk, k to end. 58 sts.\n\nRow 4: Purl.\n\nRow 5: K1, ssk, k to end. 57 sts.\n\nRow 6: Purl.\n\nRow 7: K1, skp, k to end. 56 sts.\n\nBO all sts.\n',
  },
  right: {
    draft:
      '# Oarlock Cap\n\nCO 60 sts.\n\nRow 1 (RS): K1, ssk, k to end. 59 sts.\n\nRow 2: Purl.\n\nRow 3: K1, ssk, k to end. 58 sts.\n\nRow 4: Purl.\n\nRow 5: K1, ssk, k to end. 57 sts.\n\nRow 6: Purl.\n\nRow 7: K1, ssk, k to end. 56 sts.\n\nBO all sts.\n',
  },
  check: (context): readonly Finding[] => {
    const acts = new Map<string, Named[]>();
    for (const { row } of rowsOf(context.pattern)) {
      for (const step of stepsOf(row.children)) {
        if (step.type !== 'work' || (step.readings?.length ?? 0) > 1) continue;
        const entry = entryOf(context.pattern, step);
        const act = entry === undefined || entry.source === 'the draft' ? null : actOf(context.pattern, step, entry);
        if (act !== null && entry !== undefined) acts.set(act, [...(acts.get(act) ?? []), { step, row, entry }]);
      }
    }
    return [...acts.values()].flatMap((all): Finding[] => {
      const names = new Map<string, Named[]>();
      for (const each of all) names.set(nameOf(each), [...(names.get(nameOf(each)) ?? []), each]);
      const [most, ...others] = [...names.values()].sort((a, b) => b.length - a.length);
      const few = others.at(-1);
      const [usual, odd] = [most?.[0], few?.[0]];
      if (most === undefined || few === undefined || usual === undefined || odd === undefined || few.length * 3 > most.length) return [];
      // Both in one row are told apart on purpose.
      if (few.some((each) => most.some((other) => other.row === each.row))) return [];
      return [
        found(
          context,
          twoNames,
          odd.step.span,
          `${excerpt(context, odd.step.span)} here does what ${excerpt(context, usual.step.span)} does ${times(most.length)} elsewhere. Keep to one of them, unless the look is meant.`,
          { also: few.slice(1).map((each) => each.step.span) },
        ),
      ];
    });
  },
};
