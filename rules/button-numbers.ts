import { type Sized, sizeValue } from '../grammar/count.ts';
import { found, inside, stretches } from './facts/blocks.ts';
import { numbersBefore } from './facts/numbers-told.ts';
import { figures, inSizes, sentence } from './facts/wording.ts';
import type { Finding, Rule } from './rule.ts';

const at = (values: Sized, size: number): number => sizeValue(values, size) ?? 0;

/** "two buttons to the back flap and two to the waist": the number is a part of all there are. */
const shared = (words: string): boolean =>
  /^[^.;\n]*?\bbuttons?\b[^.;\n]*\b(?:and|,) (?:the other )?(?:one|two|three|four|five|six|\d+|rest|others?)\b(?! (?:cm|mm|in|rows?|sts?)\b)/i.test(
    words,
  );

export const buttonNumbers: Rule = {
  id: 'button-numbers',
  level: 'query',
  title: 'As many buttons are listed as there are buttonholes',
  meaning: 'The materials list one number of buttons and the instructions make another number of buttonholes.',
  reason: 'A button too few is found out when the garment is finished and the shop has none left.',
  needsReplay: false,
  wrong: {
    draft: `# Kelp Jacket

Notions: 6 buttons, tapestry needle

## Band

Cast on 60 sts. There are 7 buttonholes in this band.

Row 1: Knit.
`,
  },
  right: {
    draft: `# Kelp Jacket

Notions: 7 buttons, tapestry needle

## Band

Cast on 60 sts. There are 7 buttonholes in this band.

Row 1: Knit.
`,
  },
  check(context): readonly Finding[] {
    const buttons = context.pattern.front.notions.filter((notion) => notion.name === 'button' && notion.count !== null);
    const first = buttons[0];
    if (first === undefined) return [];
    const parts = stretches(context);
    const inList = (start: number): boolean =>
      parts.some((part) => part.start <= start && start <= part.end && buttons.some((one) => inside(one.span, part)));
    const told = [
      ...numbersBefore(context, /^buttonholes?$/i, () => true),
      ...numbersBefore(context, /^buttons?$/i, (stretch) => stretch.role === 'work'),
    ].filter((one) => !inList(one.span.start) && !shared(context.manuscript.source.slice(one.span.start, one.span.start + 120)));
    const sizes = context.pattern.sizes.map((_, size) => size);
    // Some may be worked before a sentence counts the rest, so only the largest number of all is compared.
    const most = (size: number): number => Math.max(...told.map((one) => at(one.values, size)));
    if (told.length === 0) return [];
    const wrong = sizes.filter((size) => {
      const need = most(size);
      const each = buttons.map((one) => at(one.count!, size));
      return need > 1 && !each.includes(need) && each.reduce((sum, one) => sum + one, 0) !== need;
    });
    if (wrong.length === 0) return [];
    const needs = wrong.map(most);
    const has = wrong.map((size) => Math.max(...buttons.map((one) => at(one.count!, size))));
    const place = told.find((one) => at(one.values, wrong[0]!) === needs[0])!;
    const line = context.manuscript.place(place.span.start).line;
    const message = sentence(
      `${figures(has)} ${has.every((one) => one === 1) ? 'button is' : 'buttons are'} listed, and line ${line} speaks of ${figures(needs)}`,
      `${inSizes(context.pattern.sizes, wrong)}.`,
      'How many are there?',
    );
    return [
      found(context, buttonNumbers, first.span, message, {
        sizes: sizes.length > 1 ? wrong : [],
        stated: has,
        replayed: needs,
        also: [place.span],
      }),
    ];
  },
};
