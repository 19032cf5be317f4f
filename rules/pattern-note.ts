import { stated } from './multiples-named.ts';
import type { Finding, Rule } from './rule.ts';
import { counted, listed } from './telling.ts';

export const patternNote: Rule = {
  id: 'pattern-note',
  level: 'query',
  title: 'What the notes say of a stitch pattern is what its rows do',
  meaning:
    'A note gives the width or the height of the pattern repeat, and the written rows repeat over another number of stitches or rows.',
  reason: 'Knitters who change the size or place markers go by the note.',
  needsReplay: false,
  wrong: {
    draft:
      '# Wake Cowl\n\n## Notes\n\nThe lace is a multiple of 8 sts and 4 rnds.\n\n## Cowl\n\nCO 60 sts. Join in the round.\n\n### Wake lace\n\nRnd 1: *K1, yo, k2tog, k3; rep from * around.\n\nRnd 2: Knit.\n\nRnd 3: *K2, yo, k2tog, k2; rep from * around.\n\nRnd 4: Knit.\n\nBO all sts.\n',
  },
  right: {
    draft:
      '# Wake Cowl\n\n## Notes\n\nThe lace is a multiple of 6 sts and 4 rnds.\n\n## Cowl\n\nCO 60 sts. Join in the round.\n\n### Wake lace\n\nRnd 1: *K1, yo, k2tog, k3; rep from * around.\n\nRnd 2: Knit.\n\nRnd 3: *K2, yo, k2tog, k2; rep from * around.\n\nRnd 4: Knit.\n\nBO all sts.\n',
  },
  check: (context): readonly Finding[] =>
    stated(context).flatMap(({ note, section, widths, height }): Finding[] => {
      const title = context.pattern.sections[section]?.title ?? '';
      const base = { rule: patternNote.id, level: 'query' as const, span: note.span, section: null, row: null, sizes: [], fix: null };
      if (note.of !== null && widths.length > 0 && widths.every((width) => (note.of as number) % width !== 0)) {
        const each = [...new Set(widths)].sort((a, b) => a - b);
        return [
          {
            ...base,
            stated: note.of,
            replayed: each.length === 1 ? (each[0] as number) : null,
            message: `The note says ${counted(note.of)}, but the rows of ${title === '' ? 'the pattern' : title} repeat over ${listed(each.map(String))} ${each.length === 1 && each[0] === 1 ? 'st' : 'sts'}. Which is meant?`,
          },
        ];
      }
      if (note.rows !== null && height !== null && note.rows !== height) {
        return [
          {
            ...base,
            stated: note.rows,
            replayed: height,
            message: `The note says ${counted(note.rows, 'row')}, but ${title === '' ? 'the pattern' : title} is written in ${height}. Which is meant?`,
          },
        ];
      }
      return [];
    }),
};
