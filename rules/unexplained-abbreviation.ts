import { found } from './facts/blocks.ts';
import { explainedIn, type Use, usesOf } from './facts/terms.ts';
import { counted, listed } from './facts/wording.ts';
import type { Finding, Rule } from './rule.ts';

/** A list this long means to be complete; with fewer entries the draft explains only what is special. */
const completeList = 5;
/** From this many on, short words of the language are asked together. */
const together = 2;

const places = 'the list of abbreviations';

export const unexplainedAbbreviation: Rule = {
  id: 'unexplained-abbreviation',
  level: 'query',
  title: 'Every abbreviation the instructions use is explained',
  meaning: 'The draft has a list of abbreviations, and the instructions use one that is not in it.',
  reason: 'The same letters stand for different stitches in different houses; a knitter who does not know them stops here.',
  needsReplay: false,
  wrong: {
    draft: `# Kelp Square

Abbreviations: k = knit; p = purl; rep = repeat; RS = right side; st(s) = stitch(es); yo = yarn over

Cast on 21 sts.

Row 1 (RS): K1, *yo, ssk; rep from * to end.

Row 2: P to end.
`,
  },
  right: {
    draft: `# Kelp Square

Abbreviations: k = knit; p = purl; rep = repeat; RS = right side; ssk = slip 2 sts knitwise one by one, knit them together through the back loops; st(s) = stitch(es); yo = yarn over

Cast on 21 sts.

Row 1 (RS): K1, *yo, ssk; rep from * to end.

Row 2: P to end.
`,
  },
  check(context): readonly Finding[] {
    const entries = context.pattern.front.abbreviations.length;
    if (entries < completeList) return [];
    const explained = explainedIn(context);
    const missing = usesOf(context).filter((use) => !explained(use.term));
    const words = missing.filter((use) => use.sort === 'word');
    const each = words.length < together ? missing : missing.filter((use) => use.sort === 'working');
    const findings = each.map((use) => ask(use));
    if (words.length >= together) findings.push(askTogether(words));
    return findings;

    function ask(use: Use): Finding {
      return found(
        context,
        unexplainedAbbreviation,
        use.span,
        `"${use.term}" is used here and is not among the ${counted(entries, 'entry', 'entries')} of ${places}. Explain it there, or write it out.`,
      );
    }
    function askTogether(uses: readonly Use[]): Finding {
      const first = uses[0]!;
      return found(
        context,
        unexplainedAbbreviation,
        first.span,
        `${uses.length} short words are used and not in ${places}: ${listed(uses.map((use) => use.term))}. Are they left out on purpose?`,
        {
          also: uses.slice(1).map((use) => use.span),
        },
      );
    }
  },
};
