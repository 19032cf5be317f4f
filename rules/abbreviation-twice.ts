import { found } from './facts/blocks.ts';
import type { Finding, Rule } from './rule.ts';
import { excerpt, lineOf } from './telling.ts';

/** An explanation without its remarks on form: "Knit 2 sts together (1 st dec’d)." is "knit 2 together". */
const plain = (meaning: string): string =>
  meaning
    .toLowerCase()
    .replace(/\([^)]*\)/g, ' ')
    .replace(/\b(?:the|a|an|sts?|stitch(?:es)?|of|and|then)\b/g, ' ')
    .replace(/[^a-z0-9]+/g, ' ')
    .trim();

export const abbreviationTwice: Rule = {
  id: 'abbreviation-twice',
  level: 'query',
  title: 'An abbreviation has one meaning',
  meaning: 'The draft explains the same abbreviation twice, in different words.',
  reason: 'Whoever looks it up finds one of the two, and works another stitch than the next knitter.',
  needsReplay: false,
  wrong: {
    draft:
      '# Wrack Cap\n\n## Abbreviations\n\n- k: knit\n- ssk: slip 2 knitwise, knit them together through the back loops\n- ssk: slip 1, knit 1, pass slipped stitch over\n\n## Cap\n\nCO 20 sts.\n\nRow 1: Ssk, k to end.\n',
  },
  right: {
    draft:
      '# Wrack Cap\n\n## Abbreviations\n\n- k: knit\n- CO: cast on\n- st(s): stitch(es)\n- ssk: slip 2 knitwise, knit them together through the back loops\n\n## Cap\n\nCO 20 sts.\n\nRow 1: Ssk, k to end.\n',
  },
  check: (context): readonly Finding[] => {
    const { abbreviations } = context.pattern.front;
    return abbreviations.flatMap((entry, at): Finding[] => {
      const earlier = abbreviations.slice(0, at).find((other) => other.forms.some((form) => entry.forms.includes(form)));
      if (earlier === undefined || plain(earlier.meaning) === plain(entry.meaning)) return [];
      // One explanation may only be longer than the other.
      if (plain(earlier.meaning).includes(plain(entry.meaning)) || plain(entry.meaning).includes(plain(earlier.meaning))) return [];
      return [
        found(
          context,
          abbreviationTwice,
          entry.span,
          `“${entry.term}” is explained twice: ${excerpt(context, earlier.meaningSpan)} in line ${lineOf(context, earlier.span)} and ${excerpt(context, entry.meaningSpan)} here. Which holds?`,
          { also: [earlier.span] },
        ),
      ];
    });
  },
};
