import type { Step } from '../grammar/tree.ts';
import type { Finding, Rule } from './rule.ts';
import { sectionTitle } from './telling.ts';
import { statementsOf, stepsOf } from './tree-walk.ts';

const marksStitch = (source: string, step: Step): boolean =>
  step.type === 'marker' &&
  /^(?:mark|place a (?:locking |removable )?marker in|put a marker in|hang)\b/i.test(source.slice(step.span.start, step.span.end));

export const strayMarker: Rule = {
  id: 'stray-marker',
  level: 'query',
  title: 'A marker that is placed is used',
  meaning: 'A marker is placed, and nothing after it speaks of a marker.',
  reason: 'Either a row that should work to it is missing, or the marker is left over from another version.',
  needsReplay: true,
  wrong: { draft: '# Thrift Strip\n\nCO 20 sts.\n\nRow 1 (RS): K6, pm, k14.\n\nRow 2: Purl.\n\nBO all sts.\n' },
  right: { draft: '# Thrift Strip\n\nCO 20 sts.\n\nRow 1 (RS): K6, pm, k14.\n\nRow 2: P to marker, sm, p6.\n\nBO all sts.\n' },
  check: (context): readonly Finding[] => {
    const { source } = context.manuscript;
    const placed = statementsOf(context.pattern).flatMap(({ statement, section }) => {
      const steps = statement.type === 'row' ? stepsOf(statement.children) : [statement as Step];
      // "Mark the middle st" marks a stitch: that is seen on the fabric, and nothing need speak of it again.
      return steps
        .filter((step) => !marksStitch(source, step))
        .flatMap((step) => (step.type === 'marker' && (step.op === 'place' || step.op === 'hang') ? [{ step, section }] : []));
    });
    // In a round the marker at its beginning is used without a word.
    if (context.replay.entries.some((entry) => entry.unit === 'round') || /\bin (the )?(rounds?|rnds?)\b/i.test(source)) return [];
    const last = placed.at(-1);
    if (last === undefined || last.step.type !== 'marker' || last.step.name === 'BOR' || last.step.atRow) return [];
    // Markers placed together are used together: only a draft in which nothing follows at all is asked about.
    const rest = source.slice(last.step.span.end);
    if (
      /\bmarkers?\b|\bmkrs?\b|\b[srp]?ms?\b|\bslm\b|\bbor\b|\bbeg(inning)? of (rnd|round)\b|\b(?:marked|cent(?:re|er)) (?:sts?|stitch)\b/i.test(
        rest.replace(/\b\d+([.,]\d+)? ?m\b/gi, ''),
      )
    )
      return [];
    return [
      {
        rule: strayMarker.id,
        level: 'query',
        span: last.step.span,
        section: sectionTitle(context, last.section),
        row: null,
        sizes: [],
        message: 'A marker is placed here, and nothing after it speaks of a marker. Is a row missing that works to it, or is it left over?',
        stated: null,
        replayed: null,
        fix: null,
      },
    ];
  },
};
