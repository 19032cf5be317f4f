import { deepestBrackets } from '../grammar/read.ts';
import { deepest, longestPassage } from '../src/manuscript/overlong.ts';
import type { Rule } from './rule.ts';
import { excerpt } from './telling.ts';

const words = {
  words: (shown: string) => `${shown} could not be read, so it was not checked, nor was what hangs on it. Check it by hand.`,
  long: () =>
    `This passage is longer than ${longestPassage} characters. One so long is not read, so neither it nor what hangs on it was checked. Give each row a paragraph of its own.`,
  brackets: (shown: string) =>
    `${shown} has more than ${deepestBrackets} brackets within brackets. What stands so deep is not read, so neither it nor what hangs on it was checked.`,
  work: (shown: string) => `${shown} asks for more rows or repeats than are worked here, so no count behind it was checked.`,
  deep: () =>
    `This line stands in more than ${deepest} quotations, lists or ::: blocks. One so deep is not read, so neither it nor what hangs on it was checked.`,
};

export const notRead: Rule = {
  id: 'not-read',
  level: 'style',
  title: 'Every step could be checked',
  meaning: 'The words instruct something that was not understood, so the step and the counts after it could not be checked.',
  reason: 'What is not checked is not proved right; a stated count behind it puts the checking on firm ground again.',
  needsReplay: true,
  wrong: { draft: '# Gale Swatch\n\nCO 20 sts.\n\nRow 1 (RS): K5, frobble the next 3 sts, k12.\nRow 2: Purl.\n\nBO all sts.\n' },
  right: { draft: '# Gale Swatch\n\nCO 20 sts.\n\nRow 1 (RS): K5, p3, k12.\nRow 2: Purl.\n\nBO all sts.\n' },
  check: (context) => {
    const gaps = context.pattern.reading.notRead.map((gap) => ({
      span: gap.span,
      message: words[gap.beyond ?? 'words'](excerpt(context, gap.span)),
      sizes: [] as readonly number[],
    }));
    const tooMuch = context.replay.observations
      .filter((met) => met.kind === 'tooLong')
      .map((met) => ({ span: met.span, message: words.work(excerpt(context, met.span)), sizes: met.sizes }));
    return [...gaps, ...tooMuch].map(({ span, message, sizes }) => ({
      rule: notRead.id,
      level: 'style' as const,
      span,
      section: null,
      row: null,
      sizes,
      message,
      stated: null,
      replayed: null,
      fix: null,
    }));
  },
};
