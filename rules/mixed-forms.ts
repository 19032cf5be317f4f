import { found } from './facts/blocks.ts';
import { countForms, labelForms, minority, repeatForms, type Seen } from './facts/forms.ts';
import { excerpt } from './facts/wording.ts';
import type { Context, Finding, Rule } from './rule.ts';

const shown: Readonly<Record<string, string>> = {
  'Row 1': '"Row 1"',
  '1st row': '"1st row"',
  star: 'a star and "rep from *"',
  bracket: 'brackets',
  dash: 'after a dash',
  sentence: 'as a sentence of its own',
};

/** The same, as what a house wants. */
const asked: Readonly<Record<string, string>> = {
  bracket: 'writes brackets',
  dash: 'puts them after a dash',
  sentence: 'gives each a sentence of its own',
};

function ask(context: Context, thing: string, seen: readonly Seen[], wanted: string | null): Finding | null {
  const mixed = minority(seen, wanted);
  const first = mixed?.odd[0];
  if (mixed === null || first === undefined) return null;
  const words = excerpt(context.manuscript.source, first.span, 32);
  const usual = shown[mixed.usual] ?? mixed.usual;
  const message =
    wanted === null
      ? `${thing}: "${words}" here, and ${usual} in ${mixed.usualCount} other places. Keep to one form.`
      : `${thing}: "${words}" here, and the house ${asked[mixed.usual] ?? `writes ${usual}`}.`;
  return found(context, mixedForms, first.span, message, { also: mixed.odd.slice(1).map((one) => one.span) });
}

export const mixedForms: Rule = {
  id: 'mixed-forms',
  level: 'style',
  title: 'Labels, repeats and counts are written one way',
  meaning: 'The draft writes row labels, repeats or counts in two forms, or not in the form of the house.',
  reason: 'The eye finds its row by the form; a second form looks like a second meaning.',
  needsReplay: false,
  wrong: {
    draft: `# Kelp Band

Cast on 21 sts.

Row 1: Knit.

Row 2: Purl.

3rd row: Knit.

Row 4: Purl.
`,
  },
  right: {
    draft: `# Kelp Band

Cast on 21 sts.

Row 1: Knit.

Row 2: Purl.

Row 3: Knit.

Row 4: Purl.
`,
  },
  check(context): readonly Finding[] {
    const { house } = context;
    return [
      ask(context, 'Row labels', labelForms(context), house.labels),
      ask(context, 'Repeats', repeatForms(context), house.repeats),
      ask(context, 'Counts', countForms(context), house.counts),
    ].filter((finding) => finding !== null);
  },
};
