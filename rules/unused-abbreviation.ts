import { found, stretches } from './facts/blocks.ts';
import { listed } from './facts/wording.ts';
import type { Context, Finding, Rule } from './rule.ts';

const letter = /[A-Za-z]/;

/** Whether the word stands in the text on its own, or with a number behind it: `k` in "k5", `C6B`. */
function stands(text: string, word: string): boolean {
  for (let at = text.indexOf(word); at >= 0; at = text.indexOf(word, at + 1)) {
    if (!letter.test(text[at - 1] ?? ' ') && !letter.test(text[at + word.length] ?? ' ')) return true;
  }
  return false;
}

function unusedIn(context: Context) {
  // Every word outside the list counts, and a term may be used inside the meaning of another: "slip to cn".
  const texts = stretches(context)
    .filter((one) => one.role !== 'list')
    .map((one) => one.text.toLowerCase());
  const meanings = context.pattern.front.abbreviations.map((entry) => entry.meaning.toLowerCase());
  return context.pattern.front.abbreviations.filter((entry) => {
    const forms = [...new Set([...entry.forms, entry.term].map((form) => form.toLowerCase().replace(/[()]/g, '').trim()))];
    return !forms.some((form) => form === '' || [...texts, ...meanings].some((text) => stands(text, form) || stands(text, `${form}s`)));
  });
}

export const unusedAbbreviation: Rule = {
  id: 'unused-abbreviation',
  level: 'style',
  title: 'Every abbreviation explained is used',
  meaning: 'The list explains a term that stands nowhere else in the draft.',
  reason: 'A knitter looks for the stitch and wonders what is missing; often the list was taken over from another pattern.',
  needsReplay: false,
  wrong: {
    draft: `# Kelp Square

Abbreviations: k = knit; mb = make bobble; p = purl; st(s) = stitch(es)

Cast on 20 sts.

Row 1: K2, p16, k2.
`,
  },
  right: {
    draft: `# Kelp Square

Abbreviations: k = knit; p = purl; st(s) = stitch(es)

Cast on 20 sts.

Row 1: K2, p16, k2.
`,
  },
  check(context): readonly Finding[] {
    const unused = unusedIn(context);
    const first = unused[0];
    if (first === undefined) return [];
    const terms = listed(unused.map((entry) => `"${entry.term}"`));
    const message = `${terms} ${unused.length === 1 ? 'is' : 'are'} explained and used nowhere. Leave ${unused.length === 1 ? 'it' : 'them'} out, unless this is the house's standing list.`;
    return [found(context, unusedAbbreviation, first.span, message, { also: unused.slice(1).map((entry) => entry.span) })];
  },
};
