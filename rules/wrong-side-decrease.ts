import { lexicon } from '../grammar/lexicon/index.ts';
import type { Row, Step, Work } from '../grammar/tree.ts';
import { labelOf } from './labels.ts';
import type { Context, Edit, Finding, Rule } from './rule.ts';
import { excerpt, sectionTitle } from './telling.ts';
import { rowsOf, sideOf, stepsOf } from './tree-walk.ts';
import { entryOf, workUse } from './use.ts';

/** The purled stitch that takes and makes the same and leans the same way, as the lexicon spells it. */
function purledTwin(context: Context, step: Work, printed: string): string | undefined {
  const use = workUse(context.pattern, step);
  const own = entryOf(context.pattern, step);
  // "k2tog" and its kin are told apart by their first letter alone.
  if (/^k\d/i.test(printed)) return `p${printed.slice(1)}`;
  return lexicon.find(
    (entry) =>
      entry.face === 'p' &&
      entry.kind === own?.kind &&
      entry.lean === own.lean &&
      entry.takes === use?.takes &&
      entry.makes === use.makes &&
      !/\s/.test(entry.name),
  )?.name;
}

const faceOf = (context: Context, step: Step): 'k' | 'p' | null => {
  if (step.type === 'repeat') {
    if (step.form !== 'run') return null;
    if (/^(?:k|knit)/i.test(step.verb ?? '')) return 'k';
    return /^(?:p|purl)/i.test(step.verb ?? '') ? 'p' : null;
  }
  if (step.type !== 'work') return null;
  const entry = entryOf(context.pattern, step);
  return entry?.kind === 'plain' && (entry.face === 'k' || entry.face === 'p') ? entry.face : null;
};

/** Knitted decreases of a row whose plain stitches are purled all along; one knitted stitch at each edge is a border. */
function knittedAmongPurls(context: Context, row: Row): readonly Work[] {
  const steps = stepsOf(row.children).filter((step) => step.type === 'work' || (step.type === 'repeat' && step.form === 'run'));
  const faces = steps.map((step) => faceOf(context, step));
  const inside = faces.slice(1, -1);
  if (faces.filter((face) => face === 'p').length < 2 || inside.includes('k')) return [];
  return steps.filter((step): step is Work => {
    if (step.type !== 'work' || (step.readings?.length ?? 0) > 1) return false;
    const entry = entryOf(context.pattern, step);
    return (entry?.kind === 'decrease' || entry?.kind === 'doubleDecrease') && entry.face === 'k' && entry.source !== 'the draft';
  });
}

export const wrongSideDecrease: Rule = {
  id: 'wrong-side-decrease',
  level: 'query',
  title: 'A decrease in a purled wrong-side row is purled as well',
  meaning: 'A wrong-side row purls all its stitches, and one of its decreases is a knitted one.',
  reason:
    'Knitted on the wrong side it shows as a bump in the smooth side of the fabric; mostly the words of a right-side row were copied.',
  needsReplay: true,
  wrong: {
    draft:
      '# Sprat Insertion\n\nCO 20 sts.\n\nRow 1 (RS): K4, k2tog, yo, k8, yo, ssk, k4.\n\nRow 2: P3, p2tog tbl, yo, p10, yo, k2tog, p3.\n\nBO all sts.\n',
  },
  right: {
    draft:
      '# Sprat Insertion\n\nCO 20 sts.\n\nRow 1 (RS): K4, k2tog, yo, k8, yo, ssk, k4.\n\nRow 2: P3, p2tog tbl, yo, p10, yo, p2tog, p3.\n\nBO all sts.\n',
  },
  check: (context): readonly Finding[] =>
    rowsOf(context.pattern).flatMap(({ row, section }): Finding[] => {
      if (row.label?.unit === 'round' || sideOf(context, row) !== 'WS') return [];
      const [first, ...more] = knittedAmongPurls(context, row);
      if (first === undefined) return [];
      const printed = context.manuscript.source.slice(first.span.start, first.span.end);
      const twin = purledTwin(context, first, printed);
      const edit: Edit | null = twin === undefined ? null : { span: first.span, text: twin };
      return [
        {
          rule: wrongSideDecrease.id,
          level: 'query',
          span: first.span,
          section: sectionTitle(context, section),
          row: labelOf(row),
          sizes: [],
          message: `${excerpt(context, first.span)} stands in a wrong-side row that is purled otherwise, and a knitted decrease there shows as a bump on the right side. Is ${twin === undefined ? 'a purled one' : twin} meant?`,
          stated: null,
          replayed: null,
          fix: null,
          ...(edit === null ? {} : { wouldFit: [`"${printed}" to "${edit.text}"`], edits: [edit] }),
          ...(more.length === 0 ? {} : { also: more.map((step) => step.span) }),
        },
      ];
    }),
};
