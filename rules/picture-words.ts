import { found } from './facts/blocks.ts';
import type { Finding, Rule } from './rule.ts';

const picture = /!\[([^\]\n]*)\]\([^)\n]+\)/g;
const empty = /^(?:\s*|(?:image|picture|photo(?:graph)?|img|fig(?:ure)?|chart|diagram|dsc)[\s_-]*\d*(?:\.\w{3,4})?)$/i;

export const pictureWords: Rule = {
  id: 'picture-words',
  level: 'style',
  title: 'Pictures are described in words',
  meaning: 'A picture stands in the draft with no description, or with one like “image 4”.',
  reason: 'Who cannot see it, or whose reader does not load it, misses the step.',
  needsReplay: false,
  wrong: { draft: '# Tide Cap\n\n![image 4](tide-cap.jpg)\n\nCO 84 sts.\n\nRow 1: Knit.\n' },
  right: {
    draft:
      '# Tide Cap\n\n![The crown seen from above: five lines of decreases meet in the centre](tide-cap.jpg)\n\nCO 84 sts.\n\nRow 1: Knit.\n',
  },
  check: (context): readonly Finding[] =>
    [...context.manuscript.source.matchAll(picture)].flatMap((match): Finding[] =>
      empty.test(match[1] ?? '')
        ? [
            found(
              context,
              pictureWords,
              { start: match.index, end: match.index + match[0].length },
              'This picture has no description that says what it shows. Put its step in words, for those who do not see it.',
            ),
          ]
        : [],
    ),
};
