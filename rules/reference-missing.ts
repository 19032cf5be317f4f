import { findingOf, rootsOf } from './observed.ts';
import type { Context, Finding, Rule } from './rule.ts';
import { excerpt, listed, sectionTitle } from './telling.ts';
import { statementsOf } from './tree-walk.ts';

const stems = (text: string): string[] =>
  text
    .toLowerCase()
    .split(/[^a-z0-9]+/)
    .filter((word) => word.length > 2)
    .map((word) => word.slice(0, Math.max(3, word.length - 1)));

/** "Make a second sock in the same way" speaks of the thing itself, or of the part it stands in. */
function speaksOfItself(context: Context, name: string, place: number): boolean {
  // "Wedge 2" is a part with that number, never the thing as a whole.
  if (/\d/.test(name)) return false;
  const titles = [
    context.pattern.title,
    ...context.pattern.sections.filter((section) => section.span.start <= place).map((section) => section.title),
  ].map(stems);
  const wanted = stems(name);
  return (
    wanted.length === 0 ||
    titles.some((title) => wanted.every((stem) => title.some((word) => word.startsWith(stem) || stem.startsWith(word))))
  );
}

/** Parts named for their rib, their rows or their chart: "in rib as given for Yoke". */
function namesMissing(context: Context): Finding[] {
  const { pattern } = context;
  const titles = pattern.sections.map((section) => stems(section.title));
  const known = (name: string, place: number, own: number): boolean => {
    // "Wedge 2" is a part with that number, and not the one that is being told.
    const numbers = name.match(/\d+/g) ?? [];
    const numbered = pattern.sections.some(
      (section, index) => index !== own && numbers.every((number) => section.title.split(/\D+/).includes(number)),
    );
    if (numbers.length > 0 && !numbered) return false;
    const wanted = stems(name);
    return (
      speaksOfItself(context, name, place) ||
      wanted.every((stem) => titles.some((title) => title.some((word) => word.startsWith(stem) || stem.startsWith(word))))
    );
  };
  return statementsOf(pattern).flatMap(({ statement, section }): Finding[] => {
    const name =
      statement.type === 'plain' || statement.type === 'until'
        ? statement.of
        : statement.type === 'refer' && statement.to === 'piece' && section >= 0
          ? statement.name
          : null;
    if (name === null || known(name, statement.span.start, section)) return [];
    if (rootsOf(context, 'referenceMissing').some((root) => root.met.span.start === statement.span.start)) return [];
    return [
      {
        rule: referenceMissing.id,
        level: 'query',
        span: statement.span,
        section: sectionTitle(context, section),
        row: null,
        sizes: [],
        message: `${excerpt(context, statement.span)} points at “${name}”, and no part of the draft has that name. Which part is meant?`,
        stated: null,
        replayed: null,
        fix: null,
      },
    ];
  });
}

export const referenceMissing: Rule = {
  id: 'reference-missing',
  level: 'error',
  title: 'A reference to another part leads somewhere',
  meaning: '“As given for Yoke” or “to **” points at a part or a mark that is not in the draft before it.',
  reason: 'The knitter has nothing to follow.',
  needsReplay: true,
  wrong: {
    draft:
      '# Slip Vest\n\n## Back\n\nCO 20 sts.\n\nRow 1 (RS): Knit.\nRow 2: Purl.\n\nBO all sts.\n\n## Front\n\nWork as given for Yoke.\n',
  },
  right: {
    draft:
      '# Slip Vest\n\n## Back\n\nCO 20 sts.\n\nRow 1 (RS): Knit.\nRow 2: Purl.\n\nBO all sts.\n\n## Front\n\nWork as given for Back.\n',
  },
  check: (context) => [
    ...namesMissing(context),
    ...rootsOf(context, 'referenceMissing')
      .filter((root) => !speaksOfItself(context, root.met.words['name'] ?? '', root.met.span.start))
      .map((root) => {
        const pieces = [
          ...new Set(
            context.pattern.sections
              .filter(
                (section) =>
                  section.kind === 'piece' &&
                  section !== context.pattern.sections[root.met.section] &&
                  section.span.start < root.met.span.start,
              )
              .map((section) => section.title),
          ),
        ]
          .filter((title) => title !== '')
          .slice(0, 6);
        const have = pieces.length > 0 ? ` The parts before it are ${listed(pieces)}.` : '';
        const { name } = root.met.words;
        return findingOf(context, root, {
          rule: referenceMissing.id,
          level: 'error',
          message: `${excerpt(context, root.met.span)} points at ${name ? `“${name}”` : 'a part'}, which the draft does not give before this.${have}`,
        });
      }),
  ],
};
