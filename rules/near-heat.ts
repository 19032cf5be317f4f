import { found, stretches } from './facts/blocks.ts';
import { denies, sentencesOf, warns } from './facts/child.ts';
import type { Finding, Rule } from './rule.ts';

const thing = /\b(?:pot ?holders?|oven (?:mitts?|gloves?|cloths?)|hot ?pads?|trivets?|pan holders?|kettle holders?)\b/i;
const melts = /\b(?:acrylic|polyester|nylon|polyamide|microfib(?:re|er)|synthetic)\b/i;

export const nearHeat: Rule = {
  id: 'near-heat',
  level: 'query',
  title: 'What is used near heat is not made of a fibre that melts',
  meaning: 'A pot holder or an oven glove is to be knitted in a yarn with man-made fibre.',
  reason: 'Acrylic and its kin melt on the hot pan and on the hand.',
  needsReplay: false,
  wrong: { draft: '# Galley Pot Holder\n\nYarn: 50 g of worsted weight acrylic\n\nCO 30 sts.\n\nRow 1: Knit.\n' },
  right: { draft: '# Galley Pot Holder\n\nYarn: 50 g of worsted weight cotton\n\nCO 30 sts.\n\nRow 1: Knit.\n' },
  check: (context): readonly Finding[] => {
    const opening = `${context.pattern.title}\n${stretches(context)
      .filter((one) => one.role === 'front')
      .slice(0, 3)
      .map((one) => one.text)
      .join('\n')}`;
    const named = thing.exec(opening);
    if (named === null) return [];
    const all = sentencesOf(context);
    const yarn = all.find((one) => melts.test(one.text) && !denies(one.text));
    const match = yarn === undefined ? null : melts.exec(yarn.text);
    if (yarn === undefined || match === null || all.some((one) => warns(one.text) && /\bheat|hot|melt|oven/i.test(one.text))) return [];
    const start = yarn.span.start + match.index;
    return [
      found(
        context,
        nearHeat,
        { start, end: start + match[0].length },
        `“${match[0]}” melts, and a ${named[0].toLowerCase().replace(/s$/, '')} touches hot things. Is another yarn meant, or should a caution stand here?`,
      ),
    ];
  },
};
