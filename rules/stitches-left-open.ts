import type { Span, Step } from '../grammar/tree.ts';
import type { Finding, Rule } from './rule.ts';
import { excerpt, sectionTitle } from './telling.ts';
import { statementsOf, stepsOf } from './tree-walk.ts';

/** Words with which stitches that wait are spoken of again. */
const again =
  /\b(holders?|held|hold|waste yarn|spare (needle|yarn)|scrap yarn|threads?|graft|kitchener|(three|3)[- ]needle|pins?|live|remaining|rem|waiting|return|slip|place|rejoin|join|provisional|(sleeve|thumb|neck|underarm|instep|heel|shoulder|front|back|body|hood|strap|flap|gusset|pocket|lining|centre|center|collar)[a-z]* (sts|stitches)|across (the )?\d|sts of (the|one|each)|as (given|for)|same way|match|other side|second side)\b/i;

export const stitchesLeftOpen: Rule = {
  id: 'stitches-left-open',
  level: 'query',
  title: 'Stitches that are put aside are spoken of again',
  meaning: 'Stitches go onto a holder, and nothing after it says what becomes of them.',
  reason: 'The knitter ends with live stitches on a thread.',
  needsReplay: false,
  wrong: {
    draft: '# Lee Vest\n\nStitch holder.\n\nCO 40 sts.\n\nRow 1 (RS): K30, place last 10 sts on a holder.\n\nRow 2: Purl.\n\nBO all sts.\n',
  },
  right: {
    draft:
      '# Lee Vest\n\nStitch holder.\n\nCO 40 sts.\n\nRow 1 (RS): K30, place last 10 sts on a holder.\n\nRow 2: Purl.\n\nBO all sts.\n\nReturn 10 held sts to needle.\n\nRow 1 (RS): Knit.\n\nBO all sts.\n',
  },
  check: (context): readonly Finding[] => {
    const { source } = context.manuscript;
    const held = statementsOf(context.pattern).flatMap(({ statement, section }): { span: Span; section: number }[] => {
      const steps = statement.type === 'row' ? stepsOf(statement.children) : [statement as Step];
      return steps.flatMap((step) =>
        step.type === 'hold' || (step.type === 'turn' && step.holds !== null) ? [{ span: step.span, section }] : [],
      );
    });
    const last = held.at(-1);
    if (last === undefined || again.test(source.slice(last.span.end))) return [];
    return [
      {
        rule: stitchesLeftOpen.id,
        level: 'query',
        span: last.span,
        section: sectionTitle(context, last.section),
        row: null,
        sizes: [],
        message: `${excerpt(context, last.span)}: nothing after this says what becomes of these stitches. Are they to be bound off, grafted or worked on?`,
        stated: null,
        replayed: null,
        fix: null,
      },
    ];
  },
};
