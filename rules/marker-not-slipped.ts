import { sizeValue } from '../grammar/count.ts';
import type { Repeat, Row, Step } from '../grammar/tree.ts';
import type { Pattern } from '../src/pattern/pattern.ts';
import { labelOf } from './labels.ts';
import type { Finding, Rule } from './rule.ts';
import { excerpt, sectionTitle, times } from './telling.ts';
import { rowsOf } from './tree-walk.ts';
import { stepsUse } from './use.ts';

interface Passing {
  readonly row: Row;
  readonly section: number;
  /** The run that measures from the marker. */
  readonly run: Repeat;
  readonly slipped: boolean;
}

const toMarker = (step: Step): boolean =>
  step.type === 'repeat' && step.extent?.kind === 'place' && step.extent.place === 'marker' && step.extent.side !== 'past';

/** Every place of some steps at which the work goes up to a marker and past it; what only comes as far as the marker is none. */
function passings(pattern: Pattern, row: Row, section: number, steps: readonly Step[], around: boolean): Passing[] {
  const list = steps.filter((step) => step.type !== 'remark' && step.type !== 'stated' && step.type !== 'resolve');
  return list.flatMap((step, at): Passing[] => {
    if (step.type === 'repeat' && !toMarker(step)) return passings(pattern, row, section, step.children, step.form !== 'run');
    if (step.type !== 'repeat' || step.extent?.kind !== 'place') return [];
    const short = step.extent.n === null ? 0 : (sizeValue(step.extent.n.values, 0) ?? 0);
    let taken = 0;
    for (const next of list.slice(at + 1)) {
      if (next.type === 'marker') return [{ row, section, run: step, slipped: true }];
      // What is bound off, put aside or turned at the marker is another thing than passing it.
      if (next.type !== 'work' && next.type !== 'repeat' && next.type !== 'intoOne') return [];
      if (taken >= short && (next.type === 'repeat' || (stepsUse(pattern, [next])?.takes ?? 0) > 0))
        return [{ row, section, run: step, slipped: false }];
      const use = next.type === 'repeat' && toMarker(next) ? null : stepsUse(pattern, [next]);
      // A stitch that takes from both sides is another matter, and so is what cannot be counted.
      if (use === null || taken + use.takes > short) return [];
      taken += use.takes;
    }
    // Round the repeat the next pass begins: with the marker itself, or with what is worked past it.
    return around && taken >= short ? [{ row, section, run: step, slipped: list[0]?.type === 'marker' }] : [];
  });
}

export const markerNotSlipped: Rule = {
  id: 'marker-not-slipped',
  level: 'query',
  title: 'A marker that is passed is slipped in words, if the other rows do so',
  meaning: 'A row works up to a marker and past it without “sm”, while everywhere else in the draft the marker is slipped in words.',
  reason: 'Increases and decreases stand on one side of a marker or the other; without the word the knitter has to guess which.',
  needsReplay: false,
  wrong: {
    draft:
      '# Tern Wedge\n\nCO 40 sts.\n\nRow 1 (RS): K20, pm, k20.\n\nRow 2: P to m, sm, p to end.\n\nRow 3: K to 2 sts before m, k2tog, sm, k to end.\n\nRow 4: P to m, sm, p to end.\n\nRow 5: K to 2 sts before m, k2tog, k to end.\n\nRow 6: P to m, sm, p to end.\n\nBO all sts.\n',
  },
  right: {
    draft:
      '# Tern Wedge\n\nCO 40 sts.\n\nRow 1 (RS): K20, pm, k20.\n\nRow 2: P to m, sm, p to end.\n\nRow 3: K to 2 sts before m, k2tog, sm, k to end.\n\nRow 4: P to m, sm, p to end.\n\nRow 5: K to 2 sts before m, k2tog, sm, k to end.\n\nRow 6: Purl.\n\nBO all sts.\n',
  },
  check: (context): readonly Finding[] => {
    const { pattern } = context;
    const all = rowsOf(pattern).flatMap(({ row, section }) => passings(pattern, row, section, row.children, false));
    const slipped = all.filter((each) => each.slipped);
    const bare = all.filter((each) => !each.slipped);
    // Asked only where the draft slips its markers in words; a second row without the word is a habit.
    if (slipped.length < 2 || bare.length === 0 || new Set(bare.map((each) => each.row)).size > 1 || bare.length * 2 > slipped.length)
      return [];
    const [{ row, section, run }] = bare as [Passing, ...Passing[]];
    return [
      {
        rule: markerNotSlipped.id,
        level: 'query',
        span: { start: run.span.start, end: row.children.at(-1)?.span.end ?? run.span.end },
        section: sectionTitle(context, section),
        row: labelOf(row),
        sizes: [],
        message: `${excerpt(context, run.span)} comes to a marker, and the row goes on without slipping it; elsewhere the draft says so ${times(slipped.length)}. Where does the marker go, and is a “sm” missing?`,
        stated: null,
        replayed: null,
        fix: null,
      },
    ];
  },
};
