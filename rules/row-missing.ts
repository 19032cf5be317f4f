import { findingOf, type Root, rootsOf } from './observed.ts';
import { unreadBetween } from './reading.ts';
import { missingNumbers } from './row-numbers.ts';
import type { Context, Finding, Rule } from './rule.ts';
import { counted, sectionTitle } from './telling.ts';

function say(context: Context, root: Root): Finding {
  const { met } = root;
  const number = met.numbers['row']?.[0] ?? null;
  const { name } = met.words;
  const of = name ? ` of ${name}` : '';
  const highest = Math.max(
    0,
    ...context.pattern.rows
      .filter(
        ({ section, label }) =>
          label.numbers.length > 0 &&
          (name ? section.title.toLowerCase().includes(name.toLowerCase()) : section === context.pattern.sections[met.section]),
      )
      .flatMap(({ label }) => label.numbers),
  );
  const later =
    number !== null &&
    context.pattern.rows.some(
      ({ section, label }) =>
        section === context.pattern.sections[met.section] &&
        label.name === null &&
        label.span.start > met.span.end &&
        label.numbers.includes(number),
    );
  const message =
    met.words['itself'] !== undefined
      ? `Row ${number} is to be worked as Row ${number}, which is itself. Which row is meant?`
      : later && !name
        ? `Row ${number} is called for here, and it stands only further on. Which row is meant?`
        : number === null
          ? `These rows${of} are called for, and the draft does not give them${name ? '' : ': fewer rows have been worked than are named'}.`
          : `Row ${number}${of} is called for, and it is not written anywhere${highest > 0 && number > highest ? `: the set has ${counted(highest, 'row')}` : ''}.`;
  return findingOf(context, root, {
    rule: rowMissing.id,
    level: context.pattern.reading.notRead.length === 0 ? 'error' : 'query',
    message,
  });
}

/** "Rep Rows 1–9" below a set of eight, where the words only say that it goes on. */
function declared(context: Context, known: ReadonlySet<number>): Finding[] {
  const { pattern } = context;
  return pattern.sections.flatMap((section, index) => {
    const numbers = new Set(
      pattern.rows.filter((each) => each.section === section && each.label.name === null).flatMap((each) => each.label.numbers),
    );
    const filler = pattern.rows.some((each) => each.section === section && each.label.andAll !== null);
    const highest = Math.max(0, ...numbers);
    if (
      numbers.size < 2 ||
      !numbers.has(1) ||
      unreadBetween(context, section.span.start, pattern.sections[index + 1]?.span.start ?? Number.POSITIVE_INFINITY)
    )
      return [];
    return section.statements.flatMap((statement): Finding[] => {
      if (
        statement.type !== 'repeatRows' ||
        statement.rows.kind !== 'numbers' ||
        statement.rows.of !== null ||
        statement.times !== null ||
        statement.until !== null ||
        statement.schedule.length > 0
      )
        return [];
      const missing = statement.rows.numbers.filter((number) => number > highest + (filler ? 1 : 0) && !known.has(number));
      const [first] = missing;
      if (first === undefined || !statement.rows.numbers.some((number) => numbers.has(number))) return [];
      return [
        {
          rule: rowMissing.id,
          level: 'error',
          span: statement.span,
          section: sectionTitle(context, index),
          row: null,
          sizes: [],
          message: `Row ${first} is called for, and it is not written anywhere: the set has ${counted(highest, 'row')}.`,
          stated: null,
          replayed: null,
          fix: null,
        },
      ];
    });
  });
}

export const rowMissing: Rule = {
  id: 'row-missing',
  level: 'error',
  title: 'Rows that are called for are written somewhere',
  meaning: '“Rep Rows 1–9” or “as Row 12” names a row that does not exist.',
  reason: 'The knitter searches the pattern for it and finds nothing.',
  needsReplay: true,
  wrong: {
    draft:
      '# Gannet Square\n\nCO 20 sts.\n\nRow 1 (RS): Knit.\nRow 2: Purl.\nRow 3: *K1, p1; rep from * to end.\nRow 4: Purl.\nRep Rows 1–6 twice more.\n\nBO all sts.\n',
  },
  right: {
    draft:
      '# Gannet Square\n\nCO 20 sts.\n\nRow 1 (RS): Knit.\nRow 2: Purl.\nRow 3: *K1, p1; rep from * to end.\nRow 4: Purl.\nRep Rows 1–4 twice more.\n\nBO all sts.\n',
  },
  check: (context) => {
    // A gap in the numbers is reported where it is; that the row is then missed is its consequence.
    const known = missingNumbers(context);
    // Where something of the section could not be read, the row may be in it.
    const unread = (root: Root): boolean =>
      context.pattern.reading.notRead.some(
        (gap) => gap.span.start >= (context.pattern.sections[root.met.section]?.span.start ?? 0) && gap.span.start < root.met.span.end,
      );
    const met = rootsOf(context, 'rowMissing')
      .filter((root) => !unread(root) && !known.has(root.met.numbers['row']?.[0] ?? -1))
      .map((root) => say(context, root));
    return [...met, ...declared(context, known).filter((finding) => !met.some((each) => each.span.start === finding.span.start))];
  },
};
