import { found, stretches } from './facts/blocks.ts';
import type { Finding, Rule } from './rule.ts';

const tight = /\b\d{1,4}\(\d{1,4}(?:,\d{1,4})+\)|\b\d{1,4} ?\(\d{1,4}(?:,\d{1,4})+\)/;

export const sizeListsSpaced: Rule = {
  id: 'size-lists-spaced',
  level: 'style',
  title: 'Size lists are spaced',
  meaning: 'The numbers of the sizes are run together: “84(92,100)”.',
  reason: 'Read aloud, or on a phone, they become one long number.',
  needsReplay: false,
  wrong: {
    draft: '# Tide Cap\n\n**Sizes:** S (M, L)\n\n**Finished circumference:** 48 (52, 56) cm\n\nCO 84(92,100) sts.\n\nRow 1: Knit.\n',
  },
  right: {
    draft: '# Tide Cap\n\n**Sizes:** S (M, L)\n\n**Finished circumference:** 48 (52, 56) cm\n\nCO 84 (92, 100) sts.\n\nRow 1: Knit.\n',
  },
  check: (context): readonly Finding[] => {
    if (context.pattern.sizes.length < 2) return [];
    const places = stretches(context).flatMap((stretch) => {
      const match = tight.exec(stretch.text);
      return match === null
        ? []
        : [{ start: stretch.start + match.index, end: stretch.start + match.index + match[0].length, words: match[0] }];
    });
    const [first, ...more] = places;
    if (first === undefined) return [];
    const spaced = first.words.replace(/ ?\(/, ' (').replace(/,/g, ', ');
    return [
      found(
        context,
        sizeListsSpaced,
        first,
        `“${first.words}” runs the sizes together${more.length === 0 ? '' : `, here and in ${more.length} other ${more.length === 1 ? 'place' : 'places'}`}. “${spaced}” can be read aloud.`,
        {
          also: more.map(({ start, end }) => ({ start, end })),
        },
      ),
    ];
  },
};
