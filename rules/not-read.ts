import type { Rule } from './rule.ts';
import { excerpt } from './telling.ts';

export const notRead: Rule = {
  id: 'not-read',
  level: 'style',
  title: 'Every step could be checked',
  meaning: 'The words instruct something that was not understood, so the step and the counts after it could not be checked.',
  reason: 'What is not checked is not proved right; a stated count behind it puts the checking on firm ground again.',
  needsReplay: false,
  wrong: { draft: '# Gale Swatch\n\nCO 20 sts.\n\nRow 1 (RS): K5, frobble the next 3 sts, k12.\nRow 2: Purl.\n\nBO all sts.\n' },
  right: { draft: '# Gale Swatch\n\nCO 20 sts.\n\nRow 1 (RS): K5, p3, k12.\nRow 2: Purl.\n\nBO all sts.\n' },
  check: ({ pattern, ...rest }) =>
    pattern.reading.notRead.map((gap) => ({
      rule: notRead.id,
      level: 'style' as const,
      span: gap.span,
      section: null,
      row: null,
      sizes: [],
      message: `${excerpt({ pattern, ...rest }, gap.span)} could not be read, so it was not checked, nor was what hangs on it. Check it by hand.`,
      stated: null,
      replayed: null,
      fix: null,
    })),
};
