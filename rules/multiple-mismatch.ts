import type { Observation } from '../src/replay/replay.ts';
import { rootsOf } from './observed.ts';
import type { Context, Finding, Rule } from './rule.ts';
import { aRepeat, counted, excerpt, lineOf, sectionTitle } from './telling.ts';

const first = (met: Observation, name: string): number | null => met.numbers[name]?.[0] ?? null;
const plus = (n: number): string => (n === 0 ? '' : n > 0 ? ` + ${n}` : ` − ${-n}`);

function say(context: Context, group: readonly Observation[]): Finding {
  const [met] = group as [Observation, ...Observation[]];
  const of = first(met, 'multipleOf') ?? 0;
  const edge = first(met, 'multiplePlus') ?? 0;
  const header = { start: first(met, 'multipleStart') ?? met.span.start, end: first(met, 'multipleEnd') ?? met.span.end };
  const fitsOf = first(met, 'fitsOf');
  const fitsPlus = first(met, 'fitsPlus');
  const base = {
    rule: multipleMismatch.id,
    level: 'error' as const,
    section: sectionTitle(context, met.section),
    sizes: [],
    replayed: null,
    fix: null,
  };
  if (fitsOf !== null && fitsPlus !== null) {
    return {
      ...base,
      span: header,
      row: null,
      stated: null,
      message: `The stitches are given as a multiple of ${of}${plus(edge)}, but every row fits a multiple of ${fitsOf}${plus(fitsPlus)}: the line that gives the multiple is the likely slip.`,
      also: [met.span],
    };
  }
  const count = aRepeat(first(met, 'perRepeat') ?? 0, first(met, 'plus') ?? 0);
  const changed = first(met, 'perRepeat') !== of || first(met, 'plus') !== edge;
  const now = changed ? `the rows before have made ${count}` : `there are ${aRepeat(of ?? 0, edge ?? 0)}`;
  const words = excerpt(context, met.span);
  const room = aRepeat(first(met, 'roomPerRepeat') ?? 0, first(met, 'roomPlus') ?? 0);
  const what =
    met.words['kind'] === 'leftOver'
      ? `${room} are left unworked`
      : met.words['kind'] === 'tooFew'
        ? `there are too few stitches for ${words}`
        : `${words} takes ${counted(first(met, 'takes') ?? 0)} each time and does not go into the ${room} that are there for it`;
  const from = changed ? ' Check the rows before it for a stitch lost or gained in each repeat.' : '';
  return {
    ...base,
    span: met.span,
    row: met.row,
    stated: null,
    message: `${met.row ?? 'The row'} does not fit the multiple: ${now}, and ${what}.${from}`,
    evidence: [
      `The multiple is given in line ${lineOf(context, header)}.`,
      ...(group.length > 1 ? [`${counted(group.length - 1, 'later row')} of the set ${group.length === 2 ? 'is' : 'are'} affected.`] : []),
    ],
    also: group.slice(1).map((each) => each.span),
  };
}

export const multipleMismatch: Rule = {
  id: 'multiple-mismatch',
  level: 'error',
  title: 'Rows of a stitch pattern fit its multiple',
  meaning:
    'The draft gives the multiple a stitch pattern is worked over, and a row does not come out on it, whatever the number of repeats.',
  reason: 'Whoever casts on by the multiple cannot work the row.',
  needsReplay: true,
  wrong: {
    draft:
      '# Stitch cards\n\n## Eyelet stitch pattern\n\nMultiple of 5 + 3.\n\nRow 1 (RS): P2, *k2tog, yo, k1, p2; rep from * to end.\n\nRow 2: K2, *p3, k2; rep from * to end.\n\nRep Rows 1 and 2.\n',
  },
  right: {
    draft:
      '# Stitch cards\n\n## Eyelet stitch pattern\n\nMultiple of 5 + 2.\n\nRow 1 (RS): P2, *k2tog, yo, k1, p2; rep from * to end.\n\nRow 2: K2, *p3, k2; rep from * to end.\n\nRep Rows 1 and 2.\n',
  },
  check: (context) => {
    const groups = new Map<number, Observation[]>();
    for (const { met } of rootsOf(context, 'multipleDiffers')) groups.set(met.section, [...(groups.get(met.section) ?? []), met]);
    return [...groups.values()].map((group) => say(context, group));
  },
};
