import { findingOf, rootsOf, telling } from './observed.ts';
import type { Rule } from './rule.ts';
import { counted } from './telling.ts';

export const roundAfterTurns: Rule = {
  id: 'round-after-turns',
  level: 'query',
  title: 'Rounds go on from the beginning of the round with the right side facing',
  meaning:
    'After short rows the draft goes on with a round, and by then the wrong side faces, or the needles stand elsewhere than at the beginning of the round.',
  reason: 'The knitter cannot begin the round: she has to turn once more, or knit to the marker first.',
  needsReplay: true,
  wrong: {
    draft:
      '# Tarn Cap\n\nCO 40 sts. Join in the round.\n\nRnd 1: Knit.\n\nShort row 1 (RS): K10, turn.\n\nShort row 2 (WS): P20, turn.\n\nShort row 3 (RS): K25, turn.\n\nRnd 2: Knit.\n\nBO all sts.\n',
  },
  right: {
    draft:
      '# Tarn Cap\n\nCO 40 sts. Join in the round.\n\nRnd 1: Knit.\n\nShort row 1 (RS): K10, turn.\n\nShort row 2 (WS): P20, turn.\n\nShort row 3 (RS): K to beg of rnd.\n\nRnd 2: Knit.\n\nBO all sts.\n',
  },
  check: (context) =>
    rootsOf(context, 'turnInRound', 'notAtBeginning').map((root) => {
      const { head, n, one } = telling(context, root.met);
      const message =
        root.met.kind === 'turnInRound'
          ? `${head}${root.met.row ?? 'the round'} begins with the wrong side facing: the number of turns before it is odd. Is a turn missing, or one too many?`
          : `${head}${root.met.row ?? 'the round'} begins while ${counted(n('left'))} of the round before ${one('left') === 1 ? 'is' : 'are'} unworked. Is “knit to the beginning of the round” missing?`;
      return findingOf(context, root, { rule: roundAfterTurns.id, level: 'query', message });
    }),
};
